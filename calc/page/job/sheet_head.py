"""The size sheet above its sizes: whose engine it is, when it was read and by whom, and what its limits rest
on."""

from collections import Counter

from calc import __version__
from calc.job.record import current, sheet_changed
from calc.job.verdicts import CHANGED
from calc.page.html import Html, el
from calc.page.job.pieces import count, in_words
from calc.page.job.sheet_marks import day
from calc.reference.engine import Engine


def head(job: dict, engine: Engine | None) -> Html:
    facts = (
        ("Engine", job["engine"]),
        ("Parts", job["received"]),
        ("Shop", job["by"]),
        ("Job", job["id"]),
        ("Started", day(job["started"])),
        ("Measured", _measured(job)),
        ("Made with", f"Sizebook {__version__}"),
    )
    return el(
        "header",
        el("div", el("p", "Size sheet", class_="sheet-kind"), el("h1", job["name"]), class_="sheet-title"),
        el("dl", *(el("div", el("dt", name), el("dd", value)) for name, value in facts if value)),
        el("p", _rests_on(job, engine), class_="sheet-warning"),
    )


def _rests_on(job: dict, engine: Engine | None) -> str:
    """Whose limits these are, and what whoever trusts them must know."""
    if engine is None:
        return (
            f"This handbook has no data sheet of {job['engine']}: the readings stand here as they were taken,"
            " and none is judged."
        )
    told = {feature.source for feature in engine.features.values()}
    limits = "Invented limits." if "invented" in told else f"Limits from {', '.join(sorted(told))}."
    return " ".join(filter(None, (f"{limits} {engine.about}", CHANGED if sheet_changed(job) else "")))


def _measured(job: dict) -> str:
    """When the readings that count were taken, and how many by whom: 2026-11-18 to 2026-11-24 by MK
    (31 sizes) and RB (9 sizes)."""
    readings = list(current(job).values())
    if not readings:
        return "nothing yet"
    days = sorted(day(reading["at"]) for reading in readings)
    hands = Counter(reading["by"] for reading in readings)
    named = [f"{by} ({count(n, 'size')})" for by, n in hands.items() if by]
    unnamed = [f"{count(hands[''], 'size')} without a name"] if hands[""] else []
    return (
        days[0]
        + (f" to {days[-1]}" if days[-1] != days[0] else "")
        + (f" by {in_words(named)}" if named else "")
        + ("; " if named and unnamed else ", " if unnamed else "")
        + in_words(unnamed)
    )
