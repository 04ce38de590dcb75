"""Is the table a lobe's, and is that lobe good, worn or another one?"""

import math

from calc.core.conformance import past
from calc.core.result import Judged, Remark, note, say, warning
from calc.core.working import Number, constant
from calc.declare.calculator import Limit
from calc.stations.cam.lift_table.asked import CRANK, In
from calc.stations.cam.lift_table.faults import FLANK, JUMP, SLIP, Fault
from calc.stations.cam.lift_table.lobe import RUNOUT, Lobe, wheel_at
from calc.stations.shared.forms import COARSE, TENTHS_OF_DEGREE


def _angle(rad: float) -> Number:
    return constant("", "", TENTHS_OF_DEGREE, rad)


def _place(i: In, lobe: Lobe, n: int) -> Number:
    return _angle(wheel_at(i, lobe.curve.angles[n]))


def good(i: In) -> Number:
    """The least lift of a new lobe; no less than that of a worn one."""
    return i.worn if i.worn > i.lift_low else i.lift_low


def verdict_on(i: In, lobe: Lobe) -> Judged:
    if lobe.fault and lobe.fault.kind != FLANK:
        return _of_the_reading(i, lobe, lobe.fault)
    if past(i.worn, lobe.lift):
        return (
            "fail",
            say("Worn: lifts {l}, {w} allowed", l=lobe.lift, w=i.worn),
            "Read heel and nose once more, with a micrometer. If it stays, have the cam reground or renew it,"
            " and its lifters' feet with it.",
        )
    if lobe.fault or lobe.falls is not None:
        n = lobe.fault.row if lobe.fault else lobe.falls or 0
        return (
            "attention",
            say("Not smooth at {a}", a=_place(i, lobe, n)),
            "Look at that place with a lamp and read it again at half the step, turned the same way. If it"
            " stays, it is the lobe: pitted, worn in a step or ground rough. Regrind it.",
        )
    if past(abs(lobe.ends), RUNOUT):
        return (
            "attention",
            say("Heel does not come back: {d} off", d=lobe.ends),
            "See that the dial's tip and stand hold, and read on round the heel. If it runs out, measure the"
            " cam's bow at its middle journal.",
        )
    return _of_the_lobe(i, lobe)


def _of_the_reading(i: In, lobe: Lobe, fault: Fault) -> Judged:
    at = _place(i, lobe, fault.row)
    if fault.kind == SLIP:
        return (
            "attention",
            say("Look at {a} again", a=at),
            say(
                "That reading stands {o} off what its neighbours make, and they are smooth without it. If it"
                " stays, it is a pit or a burr.",
                o=constant("", "", COARSE, abs(fault.off)),
            ),
        )
    if fault.kind == JUMP:
        turned = abs(fault.shift) * (2 if i.wheel == CRANK else 1)
        return (
            "attention",
            say("Wheel jumped by {s} at {a}", s=_angle(turned), a=at),
            "From there on every lift fits the lobe at another angle: the hand turned back and the backlash"
            " was taken up, or the wheel or its pointer slipped. It is no fault of the lobe. Clamp the wheel"
            " and read all of it again, turned one way.",
        )
    return (
        "attention",
        say("Dial moved by {s} at {a}", s=constant("", "", COARSE, abs(fault.shift)), a=at),
        "From there on all lifts are off by as much, the heel too. Clamp stand and tip, and read again.",
    )


def _of_the_lobe(i: In, lobe: Lobe) -> Judged:
    if past(good(i), lobe.lift):
        return (
            "attention",
            say("Lifts {l}, less than a new one's {m}", l=lobe.lift, m=good(i)),
            "It may run on with its own lifters, each on its own lobe. Hold the other lobes beside it.",
        )
    if past(lobe.lift, i.lift_high):
        return (
            "attention",
            say("Lifts {l}, more than the sheet's {m}", l=lobe.lift, m=i.lift_high),
            "It is another cam, or the heel was ground smaller. See what springs, guides and pistons allow.",
        )
    for much, bound in ((False, i.duration_low), (True, i.duration_high)):
        if bound is not None and (past(lobe.duration, bound) if much else past(bound, lobe.duration)):
            return (
                "attention",
                say("Open for {d}, the sheet says {m}", d=lobe.duration, m=bound),
                "See that wheel and checking lift are what was said. If they are, it is another cam, or one"
                " that was reground to another shape.",
            )
    return (
        "pass",
        say("A good lobe: lifts {l}, open for {d}", l=lobe.lift, d=lobe.duration),
        "Write both on its tag. Read the next lobe from its own heel.",
    )


def limits_of(i: In, lobe: Lobe) -> tuple[Limit, ...]:
    limits = [
        Limit("the lift", lobe.lift, low=i.worn),
        Limit("the lift", lobe.lift, low=good(i), level="attention"),
        Limit("the lift", lobe.lift, high=i.lift_high, level="attention"),
    ]
    if i.duration_low is not None:
        limits.append(Limit("the duration", lobe.duration, low=i.duration_low, level="attention"))
    if i.duration_high is not None:
        limits.append(Limit("the duration", lobe.duration, high=i.duration_high, level="attention"))
    return tuple(limits)


def remarks_on(i: In, lobe: Lobe) -> tuple[Remark | None, ...]:
    missing = sorted(set(range(lobe.rows[0], lobe.rows[-1])) - set(lobe.rows))
    doubt = lobe.doubts[0][2]
    near = min(abs(float(lobe.lift) - float(x)) for x in (i.worn, good(i), i.lift_high))
    uneven = abs(float(lobe.peak) - float(lobe.centre))
    return (
        note(
            "Duration is told at {c} of lift at the lifter, in degrees of the crank and without lash. At"
            " another lift, or at the valve, it is another number.",
            c=i.checking,
        ),
        warning(
            "The lift is known to ± {u} only, and its limit is as near: read across heel and nose with a"
            " micrometer before it is judged.",
            u=doubt,
        )
        if near < float(doubt)
        else None,
        note(
            "{n} rows are empty between the first and the last; the curve goes on over them, and its doubt"
            " grows there.",
            n=str(len(missing)),
        )
        if missing
        else None,
        note(
            "The nose lies {d} of the wheel off the centre: the flanks are not alike. Time the cam by the"
            " one that its card names.",
            d=_angle(uneven),
        )
        if uneven > math.radians(1)
        else None,
    )
