"""What is said of a shaft in its bore: what is read against the limits that were told, then how it runs."""

from typing import NamedTuple

from calc.core.conformance import past
from calc.core.result import Judged, Limit, Remark, note, say, warning
from calc.core.working import Number, constant
from calc.stations.crankcase.pair_clearance.asked import In
from calc.stations.shared.forms import SIZE


class Found(NamedTuple):
    tight: Number
    loose: Number
    running: Number


def verdict_on(i: In, f: Found) -> Judged:
    return _cold(i, f) or _running(i, f) or _open(i, f) or _right(f)


def limits_of(i: In, f: Found) -> tuple[Limit, ...]:
    return (
        *((Limit("the tightest clearance", f.tight, low=i.low),) if i.low is not None else ()),
        *((Limit("the loosest clearance", f.loose, high=i.high),) if i.high is not None else ()),
        *(
            (Limit("the clearance running", f.running, low=i.low_running),)
            if i.low_running is not None
            else ()
        ),
        *((Limit("the clearance running", f.running, low=0),) if f.tight > 0 else ()),
    )


def _cold(i: In, f: Found) -> Judged | None:
    if i.low is not None and past(i.low, f.tight):
        return (
            "fail",
            say("Too tight: {c}, at least {low}", c=f.tight, low=i.low),
            "Clean both and measure again at one heat. If it stays, look which of the two is out of its own"
            " limits, and change or work that one.",
        )
    if i.high is not None and past(f.loose, i.high):
        return (
            "fail",
            say("Too loose: {c}, at most {high}", c=f.loose, high=i.high),
            "Measure both again, where they run and where nothing ran: the difference tells which of them"
            " has worn. Renew the one that is out of its own limits, by a bush or an oversize where there"
            " is one.",
        )
    return None


def _running(i: In, f: Found) -> Judged | None:
    if f.tight > 0 and not past(f.running, 0):
        return (
            "fail",
            say("Seizes running: {c} left", c=f.running),
            say("It has {c} cold, and heat takes more. Look at both temperatures first.", c=f.tight),
        )
    if i.low_running is not None and past(i.low_running, f.running):
        return (
            "fail",
            say("Too tight running: {c}, at least {low}", c=f.running, low=i.low_running),
            "Look at both temperatures and metals. If they are right, it needs more room cold.",
        )
    return None


def _open(i: In, f: Found) -> Judged | None:
    """Where no limit, or only one of them, was told."""
    if i.low is not None and i.high is not None:
        return None
    missing = (
        "limit"
        if i.low is None and i.high is None
        else "least clearance"
        if i.low is None
        else "most clearance"
    )
    return (
        "unjudged",
        say("{c} cold, {r} running; no " + missing + " told", c=f.tight, r=f.running),
        "Type what the maker's sheet allows this pair; until then nothing is judged.",
    )


def _right(f: Found) -> Judged:
    if f.tight <= 0:
        return (
            "pass",
            say("Press fit right: {d} of interference", d=constant("", "", SIZE, -float(f.tight))),
            say("Running it has {r}. How hard it grips, the calculator of that fit tells.", r=f.running),
        )
    return (
        "pass",
        say("Clearance right: {c} cold, {r} running", c=f.tight, r=f.running),
        "Oil it and try it by hand, all the way round and from end to end.",
    )


def remarks_on(i: In, f: Found) -> tuple[Remark | None, ...]:
    return (
        (
            note(
                "One reading of each tells one place. A bore is read in two directions and at both ends, a"
                " shaft where it runs and where it does not."
            )
            if i.bore_most is None or i.shaft_least is None
            else None
        ),
        (
            warning(
                "Loose when running: it has {c} cold, and {r} running. Where that fit must hold, look at"
                " its grip.",
                c=f.tight,
                r=f.running,
            )
            if f.tight <= 0 < f.running
            else None
        ),
        (
            note("Each part is counted at one temperature; one that is hot at one end only grows less.")
            if abs(float(i.bore_temperature) - float(i.shaft_temperature)) > 30
            else None
        ),
    )
