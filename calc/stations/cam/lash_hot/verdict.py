"""Does the valve still shut when the engine is hot, and in frost?"""

from calc.core.conformance import past
from calc.core.result import Judged, Remark, note, say
from calc.core.working import constant
from calc.declare.calculator import Limit
from calc.stations.cam.lash_hot.asked import In
from calc.stations.cam.lash_hot.chains import Lash
from calc.stations.shared.forms import COARSE


def verdict_on(i: In, found: Lash) -> Judged:
    for lash, when, what in (
        (found.running, "running", "It does not seat, and burns."),
        (found.frost, "in frost", "The engine does not start, or burns the valve while it warms up."),
    ):
        if lash <= 0:
            return (
                "fail",
                say("Held open " + when + ": {s} too little", s=constant("", "", COARSE, abs(float(lash)))),
                say(
                    what + " Set {c} cold or more, never less than the maker says, if the cam's ramps allow"
                    " it; if not, take pushrods that grow as the cylinders do.",
                    c=found.cold,
                ),
            )
    if past(i.least, found.running):
        return (
            "attention",
            say("Little lash running: {s}, {l} wanted", s=found.running, l=i.least),
            say(
                "Set {c} cold or more, never less than the maker says. A sinking seat closes the rest.",
                c=found.cold,
            ),
        )
    if past(found.running, i.most):
        return (
            "attention",
            say("Much lash running: {s}, {m} told", s=found.running, m=i.most),
            "It ticks, and the lobe strikes the foot beyond its ramp. Never set it tighter cold than the"
            " maker says; pushrods that grow more, as aluminium ones do, bring it down.",
        )
    return (
        "pass",
        say("Stays shut: {s} running, {f} in frost", s=found.running, f=found.frost),
        "Set it cold, at room heat, after a night's rest. Set it again after the first hours: seats settle.",
    )


def limits_of(i: In, found: Lash) -> tuple[Limit, ...]:
    return (
        Limit("the lash when running", found.running, low=0.0),
        Limit("the lash in frost", found.frost, low=0.0),
        Limit("the lash when running", found.running, low=i.least, level="attention"),
        Limit("the lash when running", found.running, high=i.most, level="attention"),
    )


def remarks_on(i: In, found: Lash) -> tuple[Remark | None, ...]:
    return (
        note(
            "Temperatures are means that nobody reads exactly: take this to within {d} at best.",
            d=constant("", "", COARSE, 0.00005),
        ),
        note(
            "In the first minute a valve is hot while head and cylinder are not yet: lash is least then, and"
            " no sum of means shows it. Do not load a cold engine."
        ),
        note("An exhaust valve takes less lash than it leaves: read both kinds.")
        if i.valve == "intake"
        else None,
    )
