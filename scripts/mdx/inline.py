"""The inline forms: what stands in a sentence but is kept elsewhere, or has to follow the reader's units.

    {size: head.seat_pocket_intake nominal}     a size from the engine's data sheet
    {result: seat-fit interference}             a number that a calculator worked out
    {quantity: 0.03 mm}                         a number of the page's own, such as a rule of thumb
    {caution: hot-head}                         a hazard, in the words that are used everywhere
    {handbook: version}                         which handbook this is
    {cp}                                        what stands before it is common practice, without a source

Every number is written in both unit systems. Not taken inside code. A new form is one function in `FORMS`.
"""

from __future__ import annotations

import xml.etree.ElementTree as etree
from collections.abc import Callable
from typing import NamedTuple

from markdown.inlinepatterns import InlineProcessor
from markdown.util import AtomicString

import calc
from calc.reference import engine
from scripts.mdx.handbook import Handbook
from scripts.mdx.place import Lines, MarkdownError

CP = "common-practice"  # the anchor of what a tap on the sign shows (glossary.py)
CP_SIGN = "†"
JOINED = "\u2060"  # word joiner: no line ends between the sign and what stands beside it
CP_MEANING = "Common practice, no source: the maker's figure replaces it."

SIZE_PARTS = ("nominal", "low", "high", "wear", "limits")

# Code spans are taken at 190 and escapes at 180; we come after both, so that neither is touched.
AFTER_CODE = 175


def size(handbook, feature: str, part: str = "nominal") -> str:
    """A part of a feature's size on the engine's data sheet, where another engine's stands while that is the
    reader's (sizes.mjs), and behind it a place for that of the job which is worked on."""
    if part not in SIZE_PARTS:
        raise ValueError(f"{part} is not a part of a size; give one of {', '.join(SIZE_PARTS)}")
    return (
        f"<span data-sheet-size='{feature} {part}'"
        f" data-engine='{engine.DEMO}'>{handbook.page.size_html(feature, part)}</span><span"
        f" data-job-said='{feature}' data-engine='{engine.DEMO}'></span>"
    )


def result(handbook, calculator: str, output: str) -> str:
    """A result of a calculator's worked example."""
    return handbook.page.result_html(calculator, output)


def quantity(handbook, number: str, unit: str) -> str:
    """A number that the page gives itself, in a metric unit."""
    return handbook.page.quantity_html(number, unit)


def caution(handbook, id: str) -> str:
    """A hazard of the work and what to do about it."""
    return handbook.page.caution_html(id)


def handbook_version(handbook, what: str) -> str:
    """The version of this handbook."""
    if what != "version":
        raise ValueError("write it as {handbook: version}")
    return calc.__version__


def common_practice(handbook) -> etree.Element:
    """The sign of what has no source but what shops do; a tap or a screen reader says so in words."""
    sign = etree.Element("span", {"class": "cp", "data-search-exclude": ""})
    sign.text = AtomicString(JOINED)
    button = etree.SubElement(
        sign, "button", {"type": "button", "popovertarget": CP, "aria-label": "common practice"}
    )
    button.text, button.tail = AtomicString(CP_SIGN), AtomicString(JOINED)
    return sign


class Form(NamedTuple):
    function: Callable[..., str | etree.Element]
    words: range  # how many it takes
    shape: str  # how it is written


FORMS = {
    "size": Form(size, range(1, 3), "{size: feature part}, part being one of " + ", ".join(SIZE_PARTS)),
    "result": Form(result, range(2, 3), "{result: calculator output}"),
    "quantity": Form(quantity, range(2, 3), "{quantity: number unit}, such as 0.03 mm"),
    "caution": Form(caution, range(1, 2), "{caution: name}"),
    "handbook": Form(handbook_version, range(1, 2), "{handbook: version}"),
    "cp": Form(common_practice, range(1), "{cp}"),
}


def register(md, handbook: Handbook, lines: Lines) -> None:
    """Give a Markdown converter the inline forms, filled from `handbook`."""
    md.inlinePatterns.register(_Form(md, handbook, lines), "sizebook_inline", AFTER_CODE)


class _Form(InlineProcessor):
    def __init__(self, md, handbook: Handbook, lines: Lines):
        super().__init__(r"\{(" + "|".join(FORMS) + r")(?::([^{}]*))?\}", md)
        self.handbook, self.lines = handbook, lines

    def handleMatch(self, m, data):
        form, words = FORMS[m[1]], (m[2] or "").split()
        try:
            if len(words) not in form.words:
                raise ValueError(f"write it as {form.shape}")
            html = form.function(self.handbook, *words)
        except (KeyError, ValueError) as error:
            problem = error.args[0] if error.args else error
            raise MarkdownError(self.lines.first(m[0]), f"{m[0]}: {problem}") from error
        if isinstance(html, etree.Element):
            return html, m.start(0), m.end(0)
        # One system is enough for the search, which would run the two together.
        html = html.replace('class="u-inch"', 'class="u-inch" data-search-exclude')
        return self.md.htmlStash.store(html), m.start(0), m.end(0)
