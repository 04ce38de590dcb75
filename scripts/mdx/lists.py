"""The lists of calculators and write-ups: of a station, of all of them, and that in which a word or a size is
looked for; and the limits of an engine."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from html import escape

from calc.declare.choice import WHICH, for_chosen
from calc.declare.grid import Grid
from calc.reference import engine
from scripts.mdx.handbook import Handbook


@dataclass(frozen=True)
class Fold:
    """Markdown below a line that unfolds it; `beside` says in a few words what is in it."""

    id: str
    title: str
    beside: str
    content: str
    open: bool = False


ANY = ("reading-verdict", "round-and-taper")  # calculators for a size of any kind
FEW = 40  # calculators that stand in sight together: three screens of a phone hold no more lines


def station(handbook: Handbook, name: str) -> str:
    """Markdown: a station's write-ups and its calculators, in the order of the work."""
    pages = _write_ups(handbook, name)
    told = (
        f"**Write-ups**\n{{ .list-head }}\n\n{pages}\n\n**Calculators**\n{{ .list-head }}\n\n"
        if pages
        else ""
    )
    return f"{told}{_calculators(handbook, name)}"


def write_ups(handbook: Handbook) -> str:
    """Markdown: every station in the order of the work, with its write-ups below."""
    told = []
    for name, one in _stations(handbook):
        head = f"## [{one.TITLE}]({handbook.to(f'{name}/index.md')})"
        told.append(f"{head}\n\n{one.PURPOSE}\n\n{_write_ups(handbook, name)}")
    return "\n\n".join(told)


def calculators(handbook: Handbook) -> list[Fold]:
    """Every station with its calculators, unfolded while they are few."""
    known = list(_stations(handbook))
    few = sum(len(one.CALCULATORS) for _, one in known) <= FEW
    return [
        Fold(f"calculators-{name}", one.TITLE, one.PURPOSE, _calculators(handbook, name), few)
        for name, one in known
    ]


def limits(handbook: Handbook, groups: list[str], sheet: str) -> list[Fold]:
    """Groups of an engine's data sheet, each folded: 200 sizes are 25 screens of a phone."""
    folds = []
    for group in groups:
        rows = handbook.limits([group], sheet)
        table = "\n".join(
            [
                "| Size | As made | Wear limit |",
                "| --- | --- | --- |",
                *(_limits(*row, sheet) for row in rows),
            ]
        )
        title = group.replace("_", " ").capitalize()
        folds.append(Fold(f"limits-{group}", title, f"{len(rows)} sizes", table))
    return folds


def _limits(feature: engine.Feature, link: str, made: str, wear: str, sheet: str) -> str:
    """A row of the table: a size with its limits, linked to what judges it, and a place for the job's own."""
    name = f"[{feature.label}]({link})" if link else feature.label
    own = f"<span data-job-size='{feature.id}' data-engine='{sheet}'></span>"
    return f"| {name}<br><small>{feature.tool}</small>{own} | {made}{_also(feature)} | {wear} |"


def _also(feature: engine.Feature) -> str:
    """The other sizes that a feature is made or sold in, outwards from the standard one: also 0.25, 0.50 mm
    undersize."""
    names = [
        step.name
        for step in sorted(
            feature.steps,
            key=lambda step: step.offset,
            reverse=all(step.offset < 0 for step in feature.steps),
        )
    ]
    if not names:
        return ""
    ending = names[0].lstrip("0123456789.")
    if all(name.endswith(ending) for name in names):
        names = [name.removesuffix(ending) for name in names[:-1]] + names[-1:]
    return f"<br><small>also {', '.join(names)}</small>"


def index(handbook: Handbook) -> str:
    """Markdown: every calculator with the words that it is looked for by, every write-up, and every step that
    speaks of a size, each with the sizes that it is about."""
    lines = []
    for name, one in _stations(handbook):
        for id in one.CALCULATORS:
            calculator = handbook.stations.find(id)
            link = _link(
                calculator.title, handbook.link(id), sizes=_sizes(calculator), words=calculator.finds
            )
            lines.append(f"- {link} {one.TITLE}")
        for page in handbook.write_ups(name):
            lines.append(f"- {_link(page.title, handbook.to(page.path))} {one.TITLE}, write-up")
            for step in page.steps:
                if step.sizes:
                    link = _link(step.words, handbook.to(page.path, step.anchor), sizes=step.sizes)
                    lines.append(f"- {link} {page.title}")
    return "\n".join(lines)


def _stations(handbook: Handbook) -> Iterator[tuple]:
    for name in handbook.stations.STATIONS:
        yield name, handbook.stations.station(name)


def _write_ups(handbook: Handbook, station: str) -> str:
    return "\n".join(f"- [{page.title}]({handbook.to(page.path)})" for page in handbook.write_ups(station))


def _calculators(handbook: Handbook, station: str) -> str:
    return "\n".join(
        f"- {_link(title, handbook.link(id), words=finds)} <span>{purpose}</span>"
        for id, title, purpose, finds in handbook.calculators(station)
    )


def _link(title: str, to: str, sizes: tuple = (), words: tuple = ()) -> str:
    """A link that says what it is found by."""
    told = {"sizes": " ".join(sizes), "words": escape(" ".join(words))}
    marks = " ".join(f'data-{name}="{text}"' for name, text in told.items() if text)
    return f"[{title}]({to})" + (f"{{ {marks} }}" if marks else "")


def _sizes(calculator) -> tuple[str, ...]:
    """The features that a calculator measures, holds against or works out; of any valve, both kinds'. "*" of
    one that takes any."""
    if calculator.id in ANY:
        return ("*",)
    named = [i.feature for i in (*calculator.inputs, *calculator.outputs) if getattr(i, "feature", "")]
    named += [c.feature for i in calculator.inputs if isinstance(i, Grid) for c in i.columns if c.feature]
    valves = WHICH["valve"]
    return tuple(
        dict.fromkeys(
            id for name in named for kind in valves if "{" not in (id := for_chosen(name, {"valve": kind}))
        )
    )
