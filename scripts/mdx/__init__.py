"""Markdown forms that put calculators and sizes into a page: a Python-Markdown extension.

`/// calculator | id` and its like are blocks (`blocks.py`), `{size: …}` and `{result: …}` are inline
forms (`inline.py`); what they render comes from `calc` (`handbook.py`). The glossary's words are marked where
they first stand (`glossary.py`). Anything that is not understood stops the build with the file, the line and
what would be accepted (`place.py`).
"""

from pathlib import Path

from markdown import Extension

from scripts.mdx import blocks, glossary, inline, place, tables, zensical
from scripts.mdx.handbook import Handbook

DOCS = Path(__file__).resolve().parents[2] / "docs"


class SizebookExtension(Extension):
    """The blocks and inline forms, filled from `handbook`: by default from `calc` and the pages in `docs`."""

    def __init__(self, handbook: Handbook | None = None, **settings):
        self.handbook = handbook
        super().__init__(**settings)

    def extendMarkdown(self, md):
        lines = place.Lines()
        handbook = self.handbook or _own_handbook()
        zensical.register(md, DOCS)
        inline.register(md, handbook, lines)
        blocks.register(md, handbook, lines)
        tables.register(md)
        glossary.register(md, handbook.docs)
        _count_on(md)


def _count_on(md) -> None:
    """Let a list begin with the number that it is given: steps count on behind a calculator between them."""
    md.parser.blockprocessors["olist"].LAZY_OL = False


def _own_handbook() -> Handbook:
    from calc import page
    from calc.stations import index as stations

    return Handbook(page, stations, DOCS)


def makeExtension(**settings):
    return SizebookExtension(**settings)
