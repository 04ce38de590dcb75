"""The pages of sources and checks, from the very tables that the tests walk: it cannot claim more than they
prove."""

from __future__ import annotations

import sys
from collections import Counter
from types import ModuleType

from markdown.extensions.toc import slugify

from calc.page.html import el
from calc.page.result import SOURCE_KINDS, head_of, row_of
from tests import checks

SHORT = {
    "library": "reference library",
    "standard": "standard",
    "handbook": "handbook",
    "limit": "analytic limit",
}
# While somebody edits, a formula may well be wrong, and working all numbers would keep them waiting.
work_rows = True
COLUMNS = ("What", "For", "Expected", "Got", "Off by", "Source")


def at_a_glance(handbook) -> str:
    """Markdown: every calculator with what it was held against, the stations, and what belongs to no
    calculator alone.

    Each row has the anchor that its calculator had when all stations stood on this page.
    """
    glance = ["| Calculator | Outside numbers met | Rests on |", "| --- | --- | --- |"]
    stations, rest = [], checks.every()
    for station in handbook.stations.STATIONS:
        stations.append(f"- [{handbook.stations.station(station).TITLE}]({station}.md)")
        for c in _calculators(handbook, station):
            rows = _rows(c)
            rest = [row for row in rest if row not in rows]
            kinds = Counter(SHORT[row.kind] for row in rows)
            met = ", ".join(f"{count} × {kind}" for kind, count in kinds.most_common()) or "none yet"
            rests = ", ".join(dict.fromkeys(SOURCE_KINDS[s.kind] for s in c.sources))
            anchor = slugify(c.title, "-")
            here = f"[{c.title}]({handbook.link(c.id)}){{ #{anchor} }}"
            glance.append(f"| {here} | [{met}]({station}.md#{anchor}) | {rests} |")
    shared = [
        "### What all of them share",
        "",
        "Units, materials and the reading of entries.",
        "",
        _table(rest),
    ]
    return "\n".join([*glance, "", "## Number by number", "", *stations, "", *(shared if rest else [])])


def of_station(handbook, station: str) -> str:
    """Markdown: a station's calculators, each with its sources and every outside number that it meets."""
    parts = []
    for c in _calculators(handbook, station):
        link = f"[{c.title}]({handbook.link(c.id)})"
        parts += [f"## {link}", "", *(f"- {_source(s)}" for s in c.sources), "", _table(_rows(c)), ""]
    return "\n".join(parts)


def _calculators(handbook, station: str) -> list:
    """Those of a station that stand on a page. KeyError where there is no such station."""
    ids = [id for id, *_ in handbook.calculators(station)]
    return [handbook.stations.find(id) for id in ids if handbook.placed(id)]


def _source(source) -> str:
    memory = ", quoted from memory" if source.from_memory and source.kind in ("standard", "handbook") else ""
    return f"{source.text} *({SOURCE_KINDS[source.kind]}{memory})*"


def _rows(calculator) -> list[checks.Check]:
    """The rows of the calculator's own tables, and of the formula modules that its modules use."""
    used = _used_by(calculator.function.__module__)
    own = [row for name in checks.tables() if name in used for row in checks.rows_of(name)]
    return own + [row for row in checks.every() if row.subject == calculator.id and row not in own]


def _used_by(module: str) -> set[str]:
    """Names of a calculator's modules, all of them where it is a package, and of the project's modules that
    they name."""
    own = {name for name in sys.modules if name == module or name.startswith(f"{module}.")}
    return own | {
        value.__name__
        for name in own
        for value in vars(sys.modules[name]).values()
        if isinstance(value, ModuleType) and value.__name__.startswith("calc.")
    }


def _table(rows) -> str:
    """The rows folded away, worked anew; stops the build where one is not met."""
    if not work_rows:
        return "Left out while this is edited."
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
