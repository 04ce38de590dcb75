"""Does the valve follow its lobe up to the engine's highest speed?"""

from calc.core.conformance import past
from calc.core.result import Judged, Remark, Text, note, say
from calc.declare.calculator import Limit
from calc.stations.cam.valve_float.asked import In
from calc.stations.cam.valve_float.leaving import Leaving


def verdict_on(i: In, found: Leaving) -> Judged:
    if past(1.0, found.margin):
        return (
            "fail",
            say("Floats at {n}, under {t}", n=found.speed, t=i.top_speed),
            say(
                "The valve may meet the piston and pound its seat. Do not turn the engine above {n}. {cure}",
                n=found.speed,
                cure=_cure(found),
            ),
        )
    if past(i.margin, found.margin):
        return (
            "attention",
            say("Little margin: floats at {n}", n=found.speed),
            say("A sagged spring or one missed shift is enough. {cure}", cure=_cure(found)),
        )
    return (
        "pass",
        say("Follows its lobe up to {n}", n=found.speed),
        "Read every spring: the weakest of the set counts. See that none is bound at full lift.",
    )


def _cure(found: Leaving) -> Text:
    return say(
        "Renew springs that have sagged, or shim them to their loads where no coil then binds at full"
        " lift; springs of {F} at full lift would do."
        " More load wears lobe and foot: see first what they bear. Lighter retainers and pushrods do the same"
        " without it.",
        F=found.load_wanted,
    )


def limits_of(i: In, found: Leaving) -> tuple[Limit, ...]:
    return (
        Limit("the margin over the highest speed", found.margin, low=1.0),
        Limit("the margin over the highest speed", found.margin, low=i.margin, level="attention"),
    )


def remarks_on(i: In, found: Leaving) -> tuple[Remark | None, ...]:
    return (
        note(
            "The lobe is taken as smooth and all that moves as stiff. A worn or roughly ground flank, a"
            " whippy pushrod or a spring in surge throws the valve off sooner."
        ),
        note("Inertia grows with the square of the speed: a tenth more speed wants a fifth more spring."),
        note("A hydraulic lifter pumps up as soon as the valve floats, and then holds it open for a while."),
    )
