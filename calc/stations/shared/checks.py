"""A check that whoever bolts the engine together must make; those of one size, and of a nut's torque."""

import re
from dataclasses import dataclass, field

from calc.core.result import Text, as_text, say
from calc.job.view import View, limits_written, written
from calc.reference.engine import Feature
from calc.reference.standards.threads import THREADS

CYLINDERS = ("1", "2", "3", "4")
VALVES = tuple(f"{n} {kind}" for n in CYLINDERS for kind in ("intake", "exhaust"))


@dataclass(frozen=True)
class Check:
    """One check, from the job's own sizes.

    `entries` fill its calculator with the job's readings and the sheet's limits, those of `place` where there
    are several: the one nearest to its limits. `open` names the inputs that are still to be read off the
    parts. `features` are the sizes that it is about; `state` and `said` what the job's own readings of them
    say ("" and None where there are none). `asks` are those of them that answer it, () where no size does;
    `unread` the places at which none is told of those yet, of `places` in all.

    `home` is the way with what a household has, `shop` what it takes a workshop for: at least one is told,
    and what has `shop` is not settled at home. `setting` is what a nut is tightened to. `id` names the check
    wherever it stands (calc.stations.index).
    """

    title: str
    why: str
    do: Text
    tool: str = ""
    calculator: str | None = None
    entries: dict = field(default_factory=dict)
    open: tuple = ()
    features: tuple = ()
    state: str = ""
    said: Text | None = None
    place: str = ""
    home: str = ""
    shop: str = ""
    asks: tuple = ()
    unread: tuple = ()
    places: int = 0
    setting: Text | None = None
    id: str = ""


def asked(view: View, *ids: str) -> dict:
    """What a check that these sizes answer says of them: which they are, and what is still to be read."""
    unread, places = view.unread(*ids)
    return {"asks": ids, "unread": unread, "places": places}


def size_check(
    view: View, title: str, why: str, do: str, main: str, *features: str, home: str = "", shop: str = ""
) -> Check | None:
    """A check of one size against its limits: the worst place is filled in, or the reading left to take.

    A size among `features` that does not go into the main one answers the check beside it.
    """
    feature = view.feature(main)
    if feature is None or (feature.low, feature.high) == (None, None):
        return None
    row = view.worst(main)
    entries = sheet_limits(feature)
    if row is not None:  # its limits are those of the size that it was made to
        entries = limits_written(row.low, row.high, feature.form) | {
            "reading": written(float(row.value), row.U, feature.form)
        }
    # what it follows from is in it
    beside = [id for id in features if id not in {part for _, part in feature.terms}]
    state, said = view.judged(main, *beside)
    return Check(
        title,
        why,
        as_text(do),
        feature.tool,
        "reading-verdict",
        entries,
        ("reading",) if row is None else () if row.U else ("doubt",),
        (main, *features),
        state,
        said,
        row.place if row is not None else "",
        home,
        shop,
        **asked(view, main, *(beside if feature.terms else ())),
    )


TORQUE_WRENCH = (
    "A torque wrench: parts shops lend one. Put a stripe of paint on each nut when it is tight, and go round"
    " once more."
)


def torque_check(view: View, title: str, why: str, do: str, id: str, clamped: str = "other") -> Check | None:
    """A nut to be tightened: its torque, and the thread that its name tells. The class is on the bolt."""
    feature = view.feature(id)
    if feature is None:
        return None
    thread = _thread(feature.label)
    return Check(
        title,
        why,
        say(do, torque=_span(feature)),
        feature.tool,
        "torque-preload" if thread else None,
        {"torque": feature.text, "thread": thread, "clamped": clamped} if thread else {},
        ("strength",) if thread else (),
        (id,),
        home=TORQUE_WRENCH,
        setting=_span(feature),
    )


def sheet_limits(feature: Feature) -> dict[str, str]:
    """What the sheet allows, as the entries `low` and `high`."""
    return limits_written(feature.low, feature.high, feature.form)


def as_rows(rows: list[list[str]]) -> str:
    """Rows of cells as one entry."""
    return " | ".join("; ".join(row) for row in rows)


def _span(feature: Feature) -> Text:
    if feature.low is None or feature.high is None:
        return say("{n}", n=feature.number("nominal"))
    return say("{low} to {high}", low=feature.number("low"), high=feature.number("high"))


def _thread(label: str) -> str:
    """The thread that a label names, as the calculators call it.

    "Rod nut, M9×1" is "M9x1", a bare "M10" its coarse one.
    """
    found = re.search(r"\bM(\d+(?:\.\d+)?)(?:\s?[x×]\s?(\d+(?:\.\d+)?))?", label)
    if not found:
        return ""
    named = (
        f"M{found[1]}x{found[2]}"
        if found[2]
        else next((name for name in THREADS if name.startswith(f"M{found[1]}x")), "")
    )
    return named if named in THREADS else ""
