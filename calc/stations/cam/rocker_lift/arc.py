"""The rocker's way from shut to full lift: angles, lift, ratios, sweep."""

from typing import NamedTuple

from calc.core.result import impossible
from calc.core.working import Number, Value, step
from calc.formulas import rocker
from calc.reference import sources
from calc.stations.cam.rocker_lift.asked import In
from calc.stations.cam.rocker_lift.told import Out
from calc.stations.shared.forms import COARSE, TENTHS_OF_DEGREE


class Arc(NamedTuple):
    shut: Number
    opened: Number
    pushrod: Number
    pad_lift: Number  # without lash
    lift: Number
    ratios: tuple[Number, Number, Number]  # over the whole lift, its first and its last tenth
    sweep: Number
    up: Number


def arc_of(i: In) -> Arc:
    height = step("y_p", "Pad's middle above the shaft's", COARSE, i.tip + i.pad)
    if abs(float(height)) >= 0.9 * float(i.valve_arm):
        raise impossible(
            "tip",
            "brings the pad {y} over the shaft, which an arm of {l} does not stand at; give less",
            y=height,
            l=i.valve_arm,
        )
    shut = Out.shut(rocker.arm_for(height, i.valve_arm), sources.ROCKER)
    pushrod = Out.pushrod(rocker.pushrod_for(shut, i.cup, i.pushrod_arm, i.offset, i.depth), sources.ROCKER)

    def arm(rise: Number) -> Value:
        return rocker.arm_at(pushrod, i.cup, i.pushrod_arm, i.offset, i.depth - rise)

    try:
        at_lift, first, last = arm(i.lobe_lift), arm(i.lobe_lift / 10), arm(0.9 * i.lobe_lift)
    except ValueError:
        raise _too_far(i) from None
    back = abs(float(arm(0 * i.lobe_lift)) - float(shut)) > 1e-6  # it stands on the loop's other branch
    if back or float(at_lift) <= -1.2 or float(last) <= float(at_lift):
        raise _too_far(i)
    opened = Out.opened(at_lift, sources.ROCKER)
    early = step("α_a", "Valve arm after a tenth of the lobe's lift", TENTHS_OF_DEGREE, first)
    late = step("α_b", "Valve arm before its last tenth", TENTHS_OF_DEGREE, last)
    pad_lift = step("L_p0", "Pad goes down by", COARSE, rocker.valve_lift(shut, opened, i.valve_arm))
    tenth = step("h_10", "A tenth of the lobe's lift", COARSE, i.lobe_lift / 10)
    ratios = (
        Out.ratio(pad_lift / i.lobe_lift),
        Out.ratio_first(rocker.valve_lift(shut, early, i.valve_arm) / tenth),
        Out.ratio_last(rocker.valve_lift(late, opened, i.valve_arm) / tenth),
    )
    return Arc(
        shut,
        opened,
        pushrod,
        pad_lift,
        Out.lift(pad_lift - i.lash),
        ratios,
        Out.sweep(rocker.sweep(shut, opened, i.valve_arm), sources.ROCKER),
        Out.up(height - pad_lift / 2),
    )


def _too_far(i: In):
    return impossible(
        "lobe_lift",
        "of {h} is more than this rocker can follow: an arm of {l}, the lifter {d} below and {x} beside it;"
        " measure them again",
        h=i.lobe_lift,
        l=i.pushrod_arm,
        d=i.depth,
        x=i.offset,
    )


def along(i: In, arc: Arc, steps: int = 40) -> list[tuple[float, float, float]]:
    """Lobe lift, valve lift without lash and contact off its place when shut, m, over the whole lift."""
    found = []
    cup, rod, offset, depth, valve = (
        float(n) for n in (i.cup, i.pushrod_arm, i.offset, i.depth, i.valve_arm)
    )
    for n in range(steps + 1):
        rise = float(i.lobe_lift) * n / steps
        arm = rocker.arm_at(float(arc.pushrod), cup, rod, offset, depth - rise)
        lift = rocker.valve_lift(float(arc.shut), arm, valve)
        found.append(
            (rise, float(lift), float(rocker.valve_lift(1.5707963 - float(arc.shut), 1.5707963 - arm, valve)))
        )
    return found
