"""The inline forms: a size from the engine's data sheet, and a number that a calculator worked out.

    {size: head.seat_pocket_intake nominal}     {result: seat-fit interference}

Both are written in both unit systems. Not taken inside code. A new form is one function in `FORMS`.
"""

from __future__ import annotations

import re
from collections.abc import Callable

from markdown.inlinepatterns import InlineProcessor

from scripts.mdx.handbook import Handbook
from scripts.mdx.place import Lines, MarkdownError

SIZE_PARTS = ("nominal", "low", "high", "wear", "limits")

# Code spans are taken at 190 and escapes at 180; we come after both, so that neither is touched.
AFTER_CODE = 175


def size(handbook, feature: str, part: str = "nominal") -> str:
    """A part of a feature's size on the engine's data sheet."""
    if part not in SIZE_PARTS:
        raise ValueError(f"{part} is not a part of a size; give one of {', '.join(SIZE_PARTS)}")
    return handbook.page.size_html(feature, part)


def result(handbook, calculator: str, output: str) -> str:
    """A result of a calculator's worked example."""
    return handbook.page.result_html(calculator, output)


FORMS: dict[str, tuple[Callable[..., str], str]] = {
    "size": (size, "{size: feature part}, part being one of " + ", ".join(SIZE_PARTS)),
    "result": (result, "{result: calculator output}"),
}


def register(md, handbook: Handbook, lines: Lines) -> None:
    """Give a Markdown converter the inline forms, filled from `handbook`."""
    md.inlinePatterns.register(_Form(md, handbook, lines), "sizebook_inline", AFTER_CODE)


class _Form(InlineProcessor):
    def __init__(self, md, handbook: Handbook, lines: Lines):
        super().__init__(r"\{(" + "|".join(FORMS) + r"):([^{}]*)\}", md)
        self.handbook, self.lines = handbook, lines

    def handleMatch(self, m, data):
        function, shape = FORMS[m[1]]
        words = m[2].split()
        least = 2 if m[1] == "result" else 1
        try:
            if not least <= len(words) <= 2:
                raise ValueError(f"write it as {shape}")
            html = function(self.handbook, *words)
        except (KeyError, ValueError) as error:
            problem = error.args[0] if error.args else error
            raise MarkdownError(self.lines.first(m[0]), f"{m[0]}: {problem}") from error
        return self.md.htmlStash.store(html), m.start(0), m.end(0)
