"""The words of the trade: explained once, in the glossary, and marked where they first stand on a page.

The list is read from the glossary's own page. Below its first heading of the second level stands one entry
after the other, each with the other forms that the word is met in:

    Pilot (pilots)
    :   A ground pin that stands in the guide and carries the cutter. What it is for …

A marked word shows its meaning when it is tapped, without a script: it is a button that opens a popover,
which stands at the end of the page and links to the entry. So does the sign of common practice, `{cp}`.
"""

from __future__ import annotations

import posixpath
import re
import xml.etree.ElementTree as etree
from functools import cached_property
from itertools import groupby
from pathlib import Path
from typing import NamedTuple

from markdown.extensions.toc import slugify
from markdown.treeprocessors import Treeprocessor

from scripts.mdx import blocks, inline, place

PAGE = "glossary.md"
HEAD = re.compile(r"^(?P<word>[^()]+?)(?: \((?P<forms>[^()]+)\))?$")
MEANING = re.compile(r"^: {3}(?P<text>\S.*)$")
POINT = re.compile(r"[.,;:!?)”’]*")
MARKUP = re.compile(r"[][{}*`<>_]")

# Python-Markdown's inline forms stand at 20, `{ .class }` at 8; at 5 a page's anchors are gathered.
AFTER_ATTRIBUTES = 7

# Where a word stays as it is: what is pressed or looked up already, and what is a name of its own.
LEFT = {"a", "button", "summary", "code", "pre", "th", "dt", "h1", "h2", "h3", "h4", "h5", "h6"}


class Entry(NamedTuple):
    word: str
    forms: tuple[str, ...]  # the word itself first
    meaning: str

    @property
    def anchor(self) -> str:
        return slugify(self.word, "-")


class Glossary:
    """The entries of the glossary's page in `docs`; none where that has no such page."""

    def __init__(self, docs: Path):
        self.docs = docs

    @cached_property
    def entries(self) -> dict[str, Entry]:
        """By each of their forms, in small letters."""
        path = self.docs / PAGE
        if not path.exists():
            return {}
        with place.page(f"{self.docs.name}/{PAGE}"):
            return _by_form(read(path.read_text(encoding="utf-8")))

    @cached_property
    def pattern(self) -> re.Pattern:
        """Any form as a whole word, the longest first; a line may end within it."""
        longest_first = sorted(self.entries, key=len, reverse=True)
        words = "|".join(r"\s+".join(map(re.escape, form.split())) for form in longest_first)
        return re.compile(rf"(?<![\w-])(?:{words})(?![\w-])", re.IGNORECASE)

    def entry(self, found: str) -> Entry:
        return self.entries[" ".join(found.lower().split())]

    def link(self, entry: Entry) -> str:
        """To the entry, for the Markdown of the page in work."""
        here = posixpath.dirname(place.current_file())
        docs = self.docs.name if here else ""
        return f"{posixpath.relpath(posixpath.join(docs, PAGE), here or '.')}#{entry.anchor}"


def read(page: str) -> list[tuple[int, Entry]]:
    """The entries of the glossary's page, each with its line; a `MarkdownError` at what is none."""
    lines = list(enumerate(page.splitlines(), 1))
    first = next((n for n, line in lines if line.startswith("## ")), len(lines))
    paragraphs = groupby(lines[first - 1 :], key=lambda numbered: bool(numbered[1].strip()))
    found = [_entry(list(paragraph)) for filled, paragraph in paragraphs if filled]
    return [numbered for numbered in found if numbered]


def _entry(paragraph: list[tuple[int, str]]) -> tuple[int, Entry] | None:
    """The entry that a paragraph of the glossary's page is; None for a heading."""
    (number, first), *rest = paragraph
    if first.startswith("## ") and not rest:
        return None
    head, meaning = HEAD.match(first), MEANING.match(rest[0][1]) if rest else None
    if not head or not meaning:
        raise place.MarkdownError(
            number,
            f"“{first[:60]}” has no meaning; below a line “word (other forms)” stands one “:   its meaning”",
        )
    text = " ".join([meaning["text"], *(line.strip() for _, line in rest[1:])])
    if MARKUP.search(text):
        raise place.MarkdownError(
            number, f"the meaning of {head['word']} is shown on other pages too: write it as plain text"
        )
    forms = (head["word"], *(head["forms"] or "").split(", ")) if head["forms"] else (head["word"],)
    return number, Entry(head["word"], forms, text)


def _by_form(entries: list[tuple[int, Entry]]) -> dict[str, Entry]:
    found: dict[str, Entry] = {}
    for number, entry in entries:
        for form in entry.forms:
            if form.lower() in found:
                raise place.MarkdownError(
                    number, f"{form} stands in the glossary under {found[form.lower()].word} too"
                )
            found[form.lower()] = entry
    return found


def register(md, docs: Path) -> None:
    """Let a Markdown converter mark the words of the glossary in `docs`."""
    md.treeprocessors.register(_Marked(md, Glossary(docs)), "sizebook_words", AFTER_ATTRIBUTES)


class _Marked(Treeprocessor):
    def __init__(self, md, glossary: Glossary):
        super().__init__(md)
        self.glossary = glossary

    def run(self, root):
        if place.current_file() == f"{self.glossary.docs.name}/{PAGE}":
            for term in root.iter("dt"):
                term.set("id", self.glossary.entry(HEAD.match(term.text)["word"]).anchor)
            return
        marked: dict[str, Entry] = {}
        if self.glossary.entries:
            self._mark(root, marked)
        root.extend(self._note(entry) for entry in marked.values())
        if any(button.get("popovertarget") == inline.CP for button in root.iter("button")):
            root.append(_popover(inline.CP, inline.CP_SIGN, inline.CP_MEANING))

    def _mark(self, element: etree.Element, marked: dict[str, Entry]) -> None:
        """Mark what is not marked yet, in the order in which it is read."""
        children = list(element)
        place_for = 0
        for button in self._split(element, "text", marked):
            element.insert(place_for, button)
            place_for += 1
        for child in children:
            place_for += 1
            if not _is_left(child):
                self._mark(child, marked)
            for button in self._split(child, "tail", marked):
                element.insert(place_for, button)
                place_for += 1

    def _split(self, element: etree.Element, part: str, marked: dict[str, Entry]) -> list[etree.Element]:
        """Cut an element's text or tail before each word to be marked: the words as buttons, each with the
        text behind it."""
        text, buttons, start = getattr(element, part) or "", [], 0
        for found in self.glossary.pattern.finditer(text):
            entry = self.glossary.entry(found[0])
            if entry.anchor in marked:
                continue
            marked[entry.anchor] = entry
            _continue(element, part, buttons, text[start : found.start()])
            point = POINT.match(text, found.end())[0]
            buttons.append(_button(entry, found[0], point))
            start = found.end() + len(point)
        if buttons:
            buttons[-1].tail = text[start:]
        return buttons

    def _note(self, entry: Entry) -> etree.Element:
        note = _popover(f"word-{entry.anchor}", entry.word, entry.meaning + " ")
        link = etree.SubElement(note, "a", {"href": self.glossary.link(entry)})
        link.text = "Glossary"
        return note


def _button(entry: Entry, word: str, point: str) -> etree.Element:
    """A word as a button; with the point behind it, where a line must not end between them."""
    button = etree.Element(
        "button", {"type": "button", "class": "word", "popovertarget": f"word-{entry.anchor}"}
    )
    button.text = word
    if not point:
        return button
    held = etree.Element("span", {"class": "word-end"})
    held.append(button)
    button.tail = point
    return held


def _continue(element: etree.Element, part: str, buttons: list[etree.Element], text: str) -> None:
    if buttons:
        buttons[-1].tail = text
    else:
        setattr(element, part, text)


def _is_left(element: etree.Element) -> bool:
    classes = element.get("class", "").split()
    return (
        element.tag in LEFT or "admonition-title" in classes or not blocks.BLOCKS.keys().isdisjoint(classes)
    )


def _popover(id: str, name: str, meaning: str) -> etree.Element:
    """What a tap shows, at the end of the page: one paragraph, which the search leaves out whole."""
    note = etree.Element("p", {"id": id, "class": "note", "popover": "", "data-search-exclude": ""})
    strong = etree.SubElement(note, "strong")
    strong.text, strong.tail = name, f" {meaning}"
    return note
