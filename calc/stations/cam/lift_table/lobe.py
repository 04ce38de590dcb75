"""The lobe behind a table of lifts: its numbers with what each may be off by its readings."""

import math
from typing import NamedTuple

from calc.core.kinds import LIFT_ACCELERATION
from calc.core.result import impossible
from calc.core.working import PI, Number, constant, form, step
from calc.formulas.lift_curve import Curve, Told
from calc.reference import sources
from calc.stations.cam.lift_table.asked import CAM, In, read_of
from calc.stations.cam.lift_table.faults import NEIGHBOURS, Fault, fault_in
from calc.stations.cam.lift_table.told import PER_DEGREE, Out
from calc.stations.shared.forms import SIZE, TENTHS_OF_DEGREE

RUNOUT = 0.03e-3  # m: ends of the heel that differ by more are no one heel; common practice, no source
HEEL = 0.02e-3 * 180 / math.pi  # m/rad: steeper than a ramp, so that the table begins on the flank
# a polynomial through eight neighbours leaves as much of a smooth lobe's lift, read every 5°; it goes down
# with the square of the step. Found on cycloid and polynomial lobes with flanks of 58 to 80°.
BENDS, AT = 0.004, math.radians(5)

_BEND = form(LIFT_ACCELERATION, 5)


class Lobe(NamedTuple):
    """`doubts` are label, number and what it may be off, `rows` which rows were read, `base` the dial on the
    heel (m), `falls` the reading at which it falls before the nose."""

    lift: Number
    duration: Number
    centre: Number
    peak: Number
    opening: Number
    closing: Number
    velocity: Number
    acceleration: Number
    deceleration: Number
    ends: Number
    doubts: tuple[tuple[str, Number, Number], ...]
    curve: Curve
    rows: tuple[int, ...]
    base: float
    fault: Fault | None
    falls: int | None


def wheel_at(i: In, cam: float) -> float:
    """Wheel's angle, rad, where the cam has turned so far from the first row."""
    return float(i.first) + cam * (1 if i.wheel == CAM else 2)


def lobe_of(i: In) -> Lobe:
    read = read_of(i)
    per_row = float(i.every) / (1 if i.wheel == CAM else 2)
    rows = tuple(n for n, _, _ in read)
    lifts = [float(h) for _, h, _ in read]
    pointer = float(i.angle) / (1 if i.wheel == CAM else 2)
    curve = Curve([n * per_row for n in rows], lifts, float(i.reading), pointer)
    _refuse_ends_on_a_flank(rows, curve)
    ends = Out.ends(read[-1][1] - read[0][1])
    low = min((read[0], read[-1]), key=lambda row: float(row[1]))[1]
    heel = (read[0][1] + read[-1][1]) / 2 if abs(float(ends)) <= RUNOUT else low
    base = step("h_0", "Dial on the heel", SIZE, heel)
    return _told(i, curve, rows, base, ends)


def _told(i: In, curve: Curve, rows: tuple[int, ...], base: Number, ends: Number) -> Lobe:
    at, top = curve.extreme(0)
    nose = constant("h_n", "Dial on the nose, by the curve", SIZE, top.value)
    lift = Out.lift(nose - base, sources.LIFT_CURVE)
    high = Told(top.value, math.hypot(top.doubt, float(i.reading)))
    try:
        opens, closes = curve.crossings(float(base) + float(i.checking))
    except ValueError:
        raise impossible(
            "checking",
            "is {c}, which the lobe, lifting {l}, does not pass on both sides within the table; give less",
            c=i.checking,
            l=lift,
        ) from None
    turn = 1 if i.wheel == CAM else 2
    o = constant("θ_o", "Cam where it opens to the checking lift", TENTHS_OF_DEGREE, opens.value)
    c = constant("θ_c", "Cam where it closes to it", TENTHS_OF_DEGREE, closes.value)
    n = constant("θ_t", "Cam at the nose, by the curve", TENTHS_OF_DEGREE, at)
    both = math.hypot(opens.doubt, closes.doubt)
    up, down = curve.extreme(1)[1], curve.extreme(1, -1)[1]
    hard, soft = curve.extreme(2)[1], curve.extreme(2, -1)[1]
    opening = Out.opening(constant("s_1", "Slope of the curve, opening", PER_DEGREE, up.value))
    closing = Out.closing(constant("s_2", "Slope of the curve, closing", PER_DEGREE, -down.value))
    steep = up if up.value >= -down.value else Told(-down.value, down.doubt)
    omega = PI * i.speed  # the cam turns half as fast as the crank
    w = float(omega)
    bend = constant("b", "Sharpest bend up", _BEND, hard.value)
    over = constant("b_n", "Sharpest bend over the nose", _BEND, -soft.value)
    duration, centre = Out.duration(2 * (c - o)), Out.centre(i.first + turn * (o + c) / 2)
    velocity = Out.velocity(constant("s", "Steepest", PER_DEGREE, steep.value) * omega)
    rising, nosing = Out.acceleration(bend * omega**2), Out.deceleration(over * omega**2)
    doubts = (
        _row(lift, high.doubt),
        _row(duration, 2 * both),
        _row(centre, turn * both / 2),
        _row(opening, up.doubt),
        _row(closing, down.doubt),
        _row(velocity, steep.doubt * w),
        _row(rising, hard.doubt * w**2),
        _row(nosing, soft.doubt * w**2),
    )
    return Lobe(
        lift,
        duration,
        centre,
        Out.peak(i.first + turn * n),
        opening,
        closing,
        velocity,
        rising,
        nosing,
        ends,
        doubts,
        curve,
        rows,
        float(base),
        _fault(curve),
        _falls(curve),
    )


def _row(number: Number, doubt: float) -> tuple[str, Number, Number]:
    return number.label, number, constant("", "", number.sure_form, doubt)


def _refuse_ends_on_a_flank(rows: tuple[int, ...], curve: Curve) -> None:
    for row, a, b in ((rows[0], 0, 1), (rows[-1], -2, -1)):
        slope = (curve.lifts[b] - curve.lifts[a]) / (curve.angles[b] - curve.angles[a])
        if abs(slope) > HEEL:
            raise impossible(
                f"lifts.{row + 1}.1",
                "stands on the flank, so that nothing tells where the heel lies; give rows that begin and end"
                " where the dial stands still",
            )


def _allowed(curve: Curve) -> list[float]:
    """What each reading may stand off its neighbours' curve, m."""
    top, angles, found = max(curve.lifts) - min(curve.lifts), curve.angles, []
    for n, doubt in enumerate(curve.doubts):
        near = angles[max(0, n - NEIGHBOURS) : n + NEIGHBOURS + 1]
        gap = max(b - a for a, b in zip(near, near[1:]))
        found.append(2.5 * doubt + BENDS * top * (gap / AT) ** 2)
    return found


def _fault(curve: Curve) -> Fault | None:
    """None too where there are too few readings to foretell one by eight others."""
    if len(curve.angles) <= 2 * NEIGHBOURS + 4:
        return None
    return fault_in(curve.angles, curve.lifts, _allowed(curve))


def _falls(curve: Curve) -> int | None:
    """The reading at which lift falls before the nose, or rises behind it, by more than its doubt."""
    top = max(range(len(curve.lifts)), key=curve.lifts.__getitem__)
    for n, (a, b) in enumerate(zip(curve.lifts, curve.lifts[1:])):
        back = a - b if n < top else b - a
        if back > math.hypot(curve.doubts[n], curve.doubts[n + 1]) * 1.25:
            return n + 1 if n < top else n
    return None
