"""Where a lobe's centre lies from top dead centre, of four readings of a wheel."""

import math
from typing import NamedTuple

from calc.core.result import impossible
from calc.core.working import PI, Number, Value, constant, least, sin, step
from calc.reference import sources
from calc.stations.cam.cam_phase.asked import In
from calc.stations.cam.cam_phase.told import Out
from calc.stations.shared.forms import COARSE, DEGREES, TENTHS_OF_DEGREE

TURN = 2 * math.pi
SAME = math.radians(1)


class Phase(NamedTuple):
    """Angles in rad of the crank but `turn`, of the cam; `teeth` is how many whole teeth the error is nearest
    to, None where the gear's are not told."""

    centre: Number
    late: Number
    turn: Number
    top: Number
    tooth: Number | None
    shift: Number | None
    teeth: int | None
    room: Number

    @property
    def off(self) -> Number:
        """How far it is off at the crank, either way."""
        return constant("", "", TENTHS_OF_DEGREE, abs(float(self.late)))

    @property
    def cam(self) -> Number:
        """The same at the cam."""
        return constant("", "", TENTHS_OF_DEGREE, abs(float(self.turn)))


def _turns(n: int) -> Number:
    return constant("", "", DEGREES, n * TURN)


def within(number: Number, low: float) -> Number:
    """The same direction, from `low` up to a turn more."""
    whole = math.floor((float(number) - low) / TURN + 1e-12)
    return number - _turns(whole) if whole else number


def tooth_at_crank(teeth: Value) -> Value:
    """What one tooth of the cam's gear is at the crank, rad; the cam turns half as far."""
    return 4 * PI / teeth


def across(radius: Value, late: Value) -> Value:
    """How far a key or dowel on that radius (m) moves, straight across, for an error `late` at the crank."""
    return 2 * radius * sin(late / 4)


def phase_of(i: In) -> Phase:
    if i.low > i.high:
        raise impossible("low", "is {l}, more than the most, {h}; give less", l=i.low, h=i.high)
    for field, other, a, b in (
        ("stop_after", "stop_before", i.stop_before, i.stop_after),
        ("closing", "opening", i.opening, i.closing),
    ):
        apart = (float(b) - float(a)) % TURN
        if min(apart, TURN - apart) < SAME:
            raise impossible(
                field,
                "is {b}, the same as " + ("the other way" if other == "stop_before" else "opening") + ", {a};"
                " give where the wheel stands on the other side",
                a=a,
                b=b,
            )
    # the stop holds the piston near its top: the middle of the shorter way between its two readings
    between = within(i.stop_after - i.stop_before, -math.pi)
    top = Out.top(within(i.stop_before + between / 2, 0), sources.TIMING)
    # from opening on to closing, over 0 and over half a turn if need be
    open_for = within(i.closing - i.opening, 0)
    middle = i.opening + open_for / 2
    after = within(middle - top, -math.pi)
    centre = Out.centre(after if i.valve == "intake" else -after, sources.TIMING)
    if float(centre) <= 0:
        raise impossible(
            "opening",
            "puts the centre of this lobe {c} on the wrong side of top dead centre; give the other lobe, or"
            " opening and closing the other way about",
            c=constant("", "", TENTHS_OF_DEGREE, -float(centre)),
        )
    late = Out.late(centre - i.wanted if i.valve == "intake" else i.wanted - centre)
    turn = Out.turn(late / 2)
    tooth = (
        None
        if i.teeth is None
        else step("θ_z", "One tooth, at the crank", TENTHS_OF_DEGREE, tooth_at_crank(i.teeth))
    )
    shift = (
        None
        if i.radius is None
        else step("x", "Offset key, straight across", COARSE, across(i.radius, abs(late)))
    )
    teeth = None if tooth is None else round(float(late) / float(tooth))
    room = Out.room(least(centre - i.low, i.high - centre))
    return Phase(centre, late, turn, top, tooth, shift, teeth, room)
