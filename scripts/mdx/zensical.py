"""What the theme makers' successor to MkDocs does otherwise with a page, put right where our forms meet it.

It runs no hooks, but names the page in work to the extensions of the Markdown. And it moves every link of a
page's HTML as one of the source, where MkDocs moves those of the Markdown only.
"""

from __future__ import annotations

import re
from pathlib import Path

from markdown.preprocessors import Preprocessor

from scripts.mdx import place

CONTEXT = "rendering_context"  # its own preprocessor, which holds the page
BEFORE_ALL = 100
UP = re.compile(r'( (?:href|src)=")\.\./("?)')  # one folder up, perhaps no farther


def register(md, docs: Path) -> None:
    """Where the successor makes the page, say which it is."""
    if CONTEXT in md.preprocessors:
        source = docs / md.preprocessors[CONTEXT].page.path
        md.preprocessors.register(_Enter(md, source, docs.parent), "sizebook_page", BEFORE_ALL)


class _Enter(Preprocessor):
    def __init__(self, md, source: Path, root: Path):
        super().__init__(md)
        self.source, self.root = source, root

    def run(self, lines: list[str]) -> list[str]:
        place.enter_source(self.source, self.root, "\n".join(lines))
        return lines


def links(md, html: str) -> str:
    """HTML whose links stand from the page's address, with the links that the maker of the page expects
    there."""
    if CONTEXT not in md.preprocessors or md.preprocessors[CONTEXT].page.path.endswith("index.md"):
        return html
    return UP.sub(lambda up: up[1] + ('index.md"' if up[2] else ""), html)
