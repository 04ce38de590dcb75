"""The page of sources and checks, from the very tables that the tests walk: it cannot claim more than they prove."""

from __future__ import annotations

import sys
from collections import Counter

from calc.page.html import el
from calc.page.result import SOURCE_KINDS, head_of, row_of
from tests import checks

SHORT = {
    "library": "reference library",
    "standard": "standard",
    "handbook": "handbook",
    "limit": "analytic limit",
}
COLUMNS = ("What", "For", "Expected", "Got", "Off by", "Source")


def page(handbook) -> str:
    """Markdown: a table at a glance, then each calculator with its sources and every outside number that it meets."""
    calculators = [c for c in handbook.stations.every() if handbook.placed(c.id)]
    rows = {c.id: _rows(c) for c in calculators}
    glance = ["| Calculator | Outside numbers met | Rests on |", "| --- | --- | --- |"]
    parts = []
    for c in calculators:
        link = f"[{c.title}]({handbook.link(c.id)})"
        kinds = Counter(SHORT[check.kind] for check in rows[c.id])
        met = ", ".join(f"{count} × {kind}" for kind, count in kinds.most_common()) or "none yet"
        rests = ", ".join(dict.fromkeys(SOURCE_KINDS[s.kind] for s in c.sources))
        glance.append(f"| {link} | {met} | {rests} |")
        parts += [f"### {link}", "", *(f"- {_source(s)}" for s in c.sources), "", _table(rows[c.id]), ""]
    rest = [row for row in checks.every() if not any(row in found for found in rows.values())]
    parts += (
        [
            "### What all of them share",
            "",
            "Units, materials and the reading of entries.",
            "",
            _table(rest),
            "",
        ]
        if rest
        else []
    )
    return "\n".join([*glance, "", "## Number by number", "", *parts])


def _source(source) -> str:
    memory = ", quoted from memory" if source.from_memory and source.kind in ("standard", "handbook") else ""
    return f"{source.text} *({SOURCE_KINDS[source.kind]}{memory})*"


def _rows(calculator) -> list[checks.Check]:
    """The rows of the calculator's own table, and of the formula modules that its module uses."""
    module = sys.modules[calculator.function.__module__]
    used = {
        value.__name__
        for value in vars(module).values()
        if type(value) is type(sys) and value.__name__.startswith("calc.")
    }
    used.add(module.__name__)
    own = [row for name in checks.tables() if name in used for row in checks.rows_of(name)]
    return own + [row for row in checks.every() if row.subject == calculator.id and row not in own]


def _table(rows) -> str:
    """The rows folded away, worked anew; stops the build where one is not met."""
    lines = []
    for row in rows:
        got = float(row.got(**row.inputs))
        if not abs(got - row.expected) <= row.tolerance:
            raise ValueError(
                f"{row.subject}, {row.what}: {got} does not meet {row.expected} ± {row.tolerance}"
                f" ({row.source})"
            )
        inputs = ", ".join(
            (
                f"{name.replace('_', ' ')} {value:g}"
                if isinstance(value, (int, float))
                else f"{name.replace('_', ' ')} {value}"
            )
            for name, value in row.inputs.items()
        )
        lines.append(
            row_of(
                (
                    row.what,
                    inputs,
                    f"{row.expected:.8g}",
                    f"{got:.8g}",
                    f"{got - row.expected:.1e}",
                    row.source,
                ),
                COLUMNS,
            )
        )
    if not lines:
        return "No outside number yet: common practice or plain arithmetic."
    table = el(
        "div",
        el(
            "table",
            head_of(COLUMNS, True),
            el("tbody", *lines, role="rowgroup"),
            class_="numbers by-row",
            role="table",
            aria_label="Outside numbers",
        ),
        class_="table-box",
    )
    return el(
        "details",
        el("summary", f"{len(lines)} outside numbers"),
        table,
        class_="checks",
        data_search_exclude=True,
    ).replace("\n", " ")
