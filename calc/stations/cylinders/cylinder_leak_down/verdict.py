"""Does the cylinder hold its air, and if not, where does it go and what comes next?"""

from calc.core.conformance import past
from calc.core.result import Judged, Limit, say
from calc.stations.cylinders.cylinder_leak_down.asked import (
    COLD,
    EXHAUST,
    FILLER,
    INTAKE,
    JOINT,
    NEIGHBOUR,
    NOWHERE,
    In,
)
from calc.stations.cylinders.cylinder_leak_down.leak import Leak

AT = {
    INTAKE: "the intake valve",
    EXHAUST: "the exhaust valve",
    FILLER: "the rings",
    NEIGHBOUR: "the neighbour",
    JOINT: "the head's joint",
}
NEXT = {
    NOWHERE: "Listen through a hose at carburettor, exhaust, oil filler and the neighbour's plug hole, and"
    " brush soap water round the joint of head and cylinder. Type where the air comes out.",
    INTAKE: "See that the valve has its lash, and that the piston is on its compression stroke. Tap the stem"
    " once through the rocker, turn the engine over, test again. If it stays, the head comes off: guide, then"
    " seat.",
    EXHAUST: "See that the valve has its lash. Tap the stem once through the rocker, turn the engine over,"
    " test again: carbon on a seat does this. If it stays, the head comes off, before the valve burns"
    " through.",
    FILLER: "Turn the engine over ten times and test again: ring gaps may stand in line. If it stays, measure"
    " bore, grooves and gaps. A squirt of oil proves little here: in a lying cylinder it runs to the lower"
    " side.",
    NEIGHBOUR: "Air goes from one cylinder to the other: the head is cracked between them, or does not sit."
    " Take it off and have it tested.",
    JOINT: "Tighten the head's nuts in their order, cold, to the sheet's torque, and test again. If it stays,"
    " the sealing step or the cylinder's face is marked.",
}


def verdict_on(i: In, found: Leak) -> Judged:
    return (
        _no_leak_seen(i)
        or _leaks(i, found)
        or _more_than_good(i, found)
        or _in_the_wrong_place(i, found)
        or (
            "pass",
            say("Tight: {p} left, {limit} is good", p=found.standard, limit=i.good),
            "Test the others alike, and write down supply, pressure left, orifice and where air was heard."
            " One that differs is worth more than any number.",
        )
    )


def limits_of(i: In, found: Leak) -> tuple[Limit, ...]:
    return (
        Limit("the pressure left", found.standard, low=i.worn),
        Limit("the pressure left", found.standard, low=i.good, level="attention"),
    )


def _no_leak_seen(i: In) -> Judged | None:
    """Rings always let something by: gauges that read alike show that nothing flows."""
    if past(i.supply - i.left, i.gauge_doubt):
        return None
    return (
        "unsure",
        say("No leak at all: {a} and {b}", a=i.supply, b=i.left),
        "No engine is so tight. See that the fitting has its valve core out, that the hose is open, and that"
        " both gauges fall when the plug hole is opened.",
    )


def _leaks(i: In, found: Leak) -> Judged | None:
    if not past(i.worn, found.standard):
        return None
    headline = say("Leaks: {p} left, {limit} allowed", p=found.standard, limit=i.worn)
    if i.engine == COLD:
        return (
            "unsure",
            headline,
            say(
                "Cold rings and valves leak more than warm ones. Run it until it is warm, and test again at"
                " once. {next}",
                next=NEXT[i.heard],
            ),
        )
    return "fail", headline, NEXT[i.heard]


def _more_than_good(i: In, found: Leak) -> Judged | None:
    if not past(i.good, found.standard):
        return None
    return (
        "attention",
        say("Leaks a little: {p} left, {limit} good", p=found.standard, limit=i.good),
        say(
            "Nothing is taken apart for this alone. Compare it with the other cylinders, and test again after"
            " a run. {next}",
            next=NEXT[i.heard],
        ),
    )


def _in_the_wrong_place(i: In, found: Leak) -> Judged | None:
    """Rings may let a little by; a valve or a joint must not be heard."""
    if i.heard in (NOWHERE, FILLER):
        return None
    return (
        "attention",
        say("Little, but at " + AT[i.heard] + ": {p} left", p=found.standard),
        say("Rings may let a little by, this place should not. {next}", next=NEXT[i.heard]),
    )
