"""The size sheet above its sizes: whose engine it is, when it was read and by whom, and what its limits rest
on."""

from collections import Counter

from calc import __version__
from calc.job.record import current, sheet_changed
from calc.job.verdicts import CHANGED
from calc.page.html import Html, el
from calc.page.job.sheet_marks import day
from calc.reference.engine import Engine


def head(job: dict, engine: Engine | None) -> Html:
    days, hands = _read_by(job)
    facts = (
        ("Engine", job["engine"]),
        ("Received", job["received"] or "not told"),
        ("Shop", job["by"] or "not told"),
        ("Job", job["id"]),
        ("Handbook", f"Sizebook {__version__}"),
        ("Started", day(job["started"])),
        ("Read", days),
        ("By", hands),
    )
    return el(
        "header",
        el("div", el("p", "Size sheet", class_="sheet-kind"), el("h1", job["name"])),
        el("dl", *(el("div", el("dt", name), el("dd", value)) for name, value in facts)),
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


def _read_by(job: dict) -> tuple[str, str]:
    """When the readings that count were taken, and how many by whom: 2026-11-18 to 2026-11-24, MK (31),
    RB (9)."""
    readings = list(current(job).values())
    if not readings:
        return "nothing yet", "nobody"
    days = sorted(day(reading["at"]) for reading in readings)
    hands = Counter(reading["by"] or "not signed" for reading in readings)
    return (
        days[0] if days[0] == days[-1] else f"{days[0]} to {days[-1]}",
        ", ".join(f"{by} ({n})" for by, n in hands.items()),
    )
