"""What a page tells, heading by heading, and which sizes it speaks of there: a size leads to its work."""

from __future__ import annotations

import re
from dataclasses import dataclass
from pathlib import Path

from markdown.extensions.toc import slugify, unique

from scripts.mdx import place

TITLE = re.compile(r"\A---\n(?:.*\n)*?title: *\"?(?P<title>.*?)\"?\n")
HEADING = re.compile(r"^#{1,3} +(?P<words>.*?) *(?:\{[^{}]*\})?$")
SIZE = re.compile(r"\{size: *(?P<feature>\S+?)[ }]")


@dataclass(frozen=True)
class Step:
    """A heading with the features that are named below it."""

    anchor: str
    words: str
    sizes: tuple[str, ...]


@dataclass(frozen=True)
class WriteUp:
    """A page by its path below the folder of the pages."""

    path: str
    title: str
    steps: tuple[Step, ...]


def write_up(docs: Path, path: str) -> WriteUp:
    """A page, read as it stands."""
    text = (docs / path).read_text(encoding="utf-8")
    title = TITLE.match(text)
    found: list[tuple[str, list[str]]] = []
    for line in place.outside_fences(text.splitlines()):
        if heading := HEADING.match(line):
            found.append((heading["words"], []))
        elif found:
            found[-1][1].extend(match["feature"] for match in SIZE.finditer(line))
    anchors: set[str] = set()
    steps = [
        Step(unique(slugify(words, "-"), anchors), words, tuple(dict.fromkeys(sizes)))
        for words, sizes in found
    ]
    return WriteUp(path, title["title"] if title else path, tuple(steps))
