"""The curtain round an open valve: the narrowest way between its face and its seat, as a frustum.

Heywood's forms (Internal Combustion Engine Fundamentals, 6.3.2) take the valve's face as wide as the seat.
`width` is that of the seat seen along the stem (half of outer less inner diameter), the angle counts from the
plane square to the stem, in radians. Lengths in m, areas in m².
"""

from calc.core.working import PI, Value, cos, sin, sqrt, tan


def first_stage_lift(width: Value, angle: Value) -> Value:
    """Lift up to which the perpendicular from the valve's inner edge still meets the seat, m: w/(sin β·cos
    β)."""
    return width / (sin(angle) * cos(angle))


def curtain_low(lift: Value, outer: Value, width: Value, angle: Value) -> Value:
    """Frustum square to the seat, m²: π·L·cos β·(D − 2w + ½L·sin 2β). Lift from 0 to `first_stage_lift`."""
    return PI * lift * cos(angle) * (outer - 2 * width + lift / 2 * sin(2 * angle))


def curtain_high(lift: Value, outer: Value, width: Value, angle: Value) -> Value:
    """Frustum from the valve's inner edge to the seat's outer edge, m²: π·(D − w)·√((L − w·tan β)² + w²).
    From `first_stage_lift` on."""
    return PI * (outer - width) * sqrt((lift - width * tan(angle)) ** 2 + width**2)


def curtain(lift: Value, outer: Value, width: Value, angle: Value) -> Value:
    """The frustum of whichever stage the lift lies in, m²."""
    stage = curtain_low if lift <= first_stage_lift(width, angle) else curtain_high
    return stage(lift, outer, width, angle)


def crossover_lift(throat_area: Value, outer: Value, width: Value, angle: Value) -> Value:
    """Lift at which the curtain is as large as the throat, m: each stage solved for the lift."""
    if throat_area <= curtain_low(first_stage_lift(width, angle), outer, width, angle):
        inner, bend = outer / 2 - width, sin(angle) * cos(angle)
        return (sqrt(inner**2 + bend * throat_area / (PI * cos(angle))) - inner) / bend
    return sqrt((throat_area / (PI * (outer - width))) ** 2 - width**2) + width * tan(angle)
