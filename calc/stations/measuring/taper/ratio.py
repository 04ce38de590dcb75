"""Diameter per length of a cone, from whatever was given of it."""

import math

from calc.core.kinds import ANGLE, LENGTH
from calc.core.reading import in_si
from calc.core.result import impossible
from calc.core.working import Value, constant
from calc.formulas import trigonometry as trig
from calc.stations.measuring.taper.asked import In
from calc.stations.shared.forms import COARSE, SIZE

STEEPEST = in_si("60°", ANGLE)


def ratio_of(i: In) -> Value:
    """Raises where what was given is no cone, or one that comes to a point before its small end."""
    assert i.by.form, "what is entered has a form"
    kind = i.by.form.kind
    if kind is LENGTH:
        return _from_ends(i)
    if kind is ANGLE and not 0 < float(i.by) <= STEEPEST:
        raise impossible("by", "is {a}; give the angle of one side to the axis, over 0° up to 60°", a=i.by)
    if kind is not ANGLE and not 0 < float(i.by) <= 2 * math.tan(STEEPEST):
        raise impossible("by", "is {c}; give a taper over 0 up to 3:1, such as 1:10 or 0.6 in/ft", c=i.by)
    ratio = trig.ratio_of_angle(i.by) if kind is ANGLE else i.by
    point = float(i.large) / float(ratio)
    if point <= float(i.length):
        raise impossible(
            "length",
            "is {L}, and this taper comes to a point after {point}; give less than {point}",
            L=i.length,
            point=constant("", "", COARSE, point),
        )
    return ratio


def _from_ends(i: In) -> Value:
    if not 0 < i.by < i.large:
        raise impossible(
            "by",
            "is {d}, no small end of this cone; give more than 0 and less than the large end, {D}",
            d=i.by,
            D=i.large,
        )
    return trig.cone_ratio(i.large, constant("d_g", "Small end, as given", SIZE, float(i.by)), i.length)
