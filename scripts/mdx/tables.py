"""Tables of the Markdown laid out row by row on a narrow screen: limits, troubles, what to have ready.

They get what `calc.page.result.table` writes itself: each cell carries its column's name for the eye, and the
parts say what they are, since some browsers go by the layout.
"""

import xml.etree.ElementTree as etree

from markdown.treeprocessors import Treeprocessor

AFTER_INLINE = 15  # Python-Markdown's inline forms stand at 20
FOLDED = {"trouble", "ready"}  # each row under its head
BOXES = {"limits", *FOLDED}
ROLES = {
    "table": "table",
    "thead": "rowgroup",
    "tbody": "rowgroup",
    "tr": "row",
    "th": "columnheader",
    "td": "cell",
}


def register(md) -> None:
    md.treeprocessors.register(_ByRow(md), "sizebook_tables", AFTER_INLINE)


class _ByRow(Treeprocessor):
    def run(self, root):
        for box in root.iter("div"):
            kinds = set(box.get("class", "").split())
            if BOXES & kinds:
                box.set("class", f"{box.get('class')} table-box" + " unfolds" * bool(FOLDED & kinds))
                for table in box.iter("table"):
                    _by_row(table)
                    if FOLDED & kinds:
                        _fold(table)


def _by_row(table: etree.Element) -> None:
    names = ["".join(cell.itertext()) for cell in table.find("thead/tr")]
    table.set("class", "by-row")
    for part in table.iter():
        if part.tag in ROLES:
            part.set("role", ROLES[part.tag])
    for row in table.findall("tbody/tr"):
        first, *rest = row
        first.tag = "th"
        first.set("scope", "row")
        first.set("role", "rowheader")
        for cell, name in zip(rest, names[1:]):
            cell.set("data-head", name)


def _fold(table: etree.Element) -> None:
    """Each row's head as a fold that holds nothing: where rows stand below each other, the style sheet shows
    the cells of those whose fold is open."""
    for head in table.findall("tbody/tr/th"):
        words, parts = head.text, list(head)
        head.text = None
        for part in parts:
            head.remove(part)
        summary = etree.SubElement(etree.SubElement(head, "details"), "summary")
        summary.text = words
        summary.extend(parts)
