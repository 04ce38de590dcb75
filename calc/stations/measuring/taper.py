"""A cone by its small end, its ratio, its taper per foot or the angle of a side: all of them from any one, and how to gauge it."""

import math

from calc.core.drawing import Area, Dimension, Drawing, Label, Line, arc
from calc.core.kinds import ANGLE, LENGTH, RATIO, SLOPE
from calc.core.reading import quantity
from calc.core.result import impossible, note, say
from calc.core.working import constant, form
from calc.declare.calculator import (
    Answer,
    Inputs,
    Limit,
    Number,
    Output,
    Outputs,
    answer,
    any_of,
    calculator,
    given,
    measured,
)
from calc.formulas import trigonometry as trig
from calc.reference import sources
from calc.stations.shared.forms import COARSE, FINE_DEGREES, ROUGH, SIZE

MINUTES = form(ANGLE, 2, "′")
STEEPEST = quantity("60°", ANGLE)
PLANNED = 0.03  # m of blocks, where none are told: what the reading over them would be
dms = trig.degrees_minutes_seconds


class Out(Outputs):
    small = Output("Small end", "d", SIZE, main=True)
    side = Output("Angle of a side to the axis", "α", FINE_DEGREES, main=True)
    one_in = Output("Ratio 1 : x, this is x", "x", form(RATIO, 3))
    per_foot = Output("Taper on the diameter", "C", form(SLOPE, 3, "mm/100 mm", "in/ft"))
    over_low = Output("Over rollers on the plate", "M_1", SIZE)
    over_high = Output("Over rollers on the blocks", "M_2", SIZE)


class In(Inputs):
    large: Number = given("Large end", "D", SIZE, hard="0.5 to 1000 mm", example="30 mm")
    length: Number = given(
        "Length between the ends", "L", COARSE, hard="0.5 to 2000 mm", hint="Along the axis.", example="60 mm"
    )
    by: Number = any_of(
        "Small end, or the taper",
        "",
        (LENGTH, RATIO, SLOPE, ANGLE),
        bare=LENGTH,
        hint=(
            "A diameter; or, with its unit, ratio 1:10, taper per foot 0.6 in/ft, or angle of one side to the"
            " axis 2.86°."
        ),
        example="24 mm",
    )
    roller: Number = given(
        "Rollers for gauging",
        "w",
        SIZE,
        hard="0.5 to 100 mm",
        fold=True,
        assumed=("10 mm", "any pair that is alike"),
        hint="Their diameter; both alike.",
    )
    blocks: Number | None = given(
        "Blocks under the upper rollers", "H", SIZE, hard="1 to 500 mm", fold=True, example="30 mm"
    )
    read_low: Number | None = measured(
        "Read over rollers on the plate",
        "R_1",
        SIZE,
        tool="a micrometer, small end down",
        hard="1 to 1500 mm",
        fold=True,
    )
    read_high: Number | None = measured(
        "Read over rollers on the blocks", "R_2", SIZE, tool="a micrometer", hard="1 to 1500 mm", fold=True
    )
    allowed: Number = given(
        "Side may be off by",
        "Δ",
        MINUTES,
        hard="0.02 to 120′",
        fold=True,
        assumed=("1′", "common practice, no source"),
        hint="Common practice, no source.",
    )


@calculator(
    "taper",
    "Taper",
    In,
    Out,
    purpose="What angle, ratio and small end does this taper have, and what must it read over rollers?",
    finds=(
        "cone",
        "taper per foot",
        "taper ratio 1 in 10",
        "half angle",
        "compound slide angle",
        "taper over rollers",
    ),
    sources=(sources.TRIANGLE, sources.PRACTICE),
)
def taper(i: In) -> Answer:
    """Straight cone: ratio (D − d)/L = 2·tan α. Rollers lie against the cone, which stands on its small end."""
    ratio = Out.per_foot(_ratio(i.large, i.length, i.by), sources.TRIANGLE)
    small = Out.small(trig.small_end(i.large, ratio, i.length), sources.TRIANGLE)
    side = Out.side(trig.side_angle(ratio), sources.TRIANGLE)
    if i.blocks is None and i.read_low is not None and i.read_high is not None:
        raise impossible(
            "blocks",
            "is empty, and the taper that was read hangs on it; give what the upper rollers stood on",
        )
    raised = (
        constant("H", "Blocks under the upper rollers, as an example", SIZE, PLANNED)
        if i.blocks is None
        else i.blocks
    )
    over_low = Out.over_low(trig.over_rollers(small, side, i.roller), sources.TRIANGLE)
    over_high = Out.over_high(trig.over_raised_rollers(over_low, side, raised), sources.TRIANGLE)
    limits = ()
    if i.read_low is not None and i.read_high is not None:
        if i.read_high <= i.read_low:
            raise impossible(
                "read_high",
                "is {high}, not more than {low} on the plate; stand the cone on its small end, and give more"
                " than {low}",
                high=i.read_high,
                low=i.read_low,
            )
        off = constant(
            "",
            "",
            MINUTES,
            float(trig.side_angle_over_rollers(i.read_low, i.read_high, i.blocks)) - float(side),
        )
        limits = (Limit("the taper", off, low=-float(i.allowed), high=float(i.allowed)),)
        made = dms(float(side) + float(off))
        if abs(float(off)) <= float(i.allowed):
            verdict = (
                "pass",
                say("Taper right: side at {a}", a=made),
                say("It is {d} off. Try it with blue for contact before you call it good.", d=off),
            )
        else:
            verdict = (
                "fail",
                say(
                    "Taper {way} by {d}",
                    way="too steep" if float(off) > 0 else "too slow",
                    d=constant("", "", MINUTES, abs(float(off))),
                ),
                say(
                    "The side stands at {made} and should stand at {a}. Turn the slide by the difference and"
                    " cut again.",
                    made=made,
                    a=dms(side),
                ),
            )
    elif i.read_low is not None or i.read_high is not None:
        given_one, missing = ("read_low", "the blocks") if i.read_high is None else ("read_high", "the plate")
        raise impossible(
            given_one,
            "is given alone, and one reading has no angle; give the one over rollers on {missing} too",
            missing=missing,
        )
    else:
        verdict = (
            "pass",
            say("Set the slide to {a}", a=dms(side)),
            say(
                "Small end {d}. Prove it over rollers of {w}: {low} on the plate, {high} on {H} of blocks.",
                w=i.roller,
                d=small,
                low=over_low,
                high=over_high,
                H=raised,
            ),
        )
    reach = trig.roller_contact(float(side), float(i.roller), float(raised))
    return answer(
        small,
        side,
        Out.one_in(1 / ratio),
        ratio,
        over_low,
        over_high,
        verdict=verdict,
        limits=limits,
        remarks=(
            note(
                "A side stands at {a}; between the sides there are {both}.",
                a=dms(side),
                both=dms(2 * float(side)),
            ),
            (
                note(
                    "The raised rollers would touch {reach} up, and the cone is {L} long: take smaller"
                    " rollers or fewer blocks before you gauge it.",
                    reach=constant("", "", ROUGH, reach),
                    L=i.length,
                )
                if reach > float(i.length)
                else None
            ),
            note(
                "A cone is set by angle and by where it stands: angle right and too small at the large end is"
                " still a wrong fit. Measure one diameter too."
            ),
        ),
        figures=(
            _drawing(
                float(i.large) / 2,
                float(small) / 2,
                float(i.length),
                float(side),
                i.large,
                small,
                i.length,
                side,
            ),
        ),
    )


def _ratio(large, length, by):
    """Diameter per length, from whatever was given of the cone."""
    kind = by.form.kind
    if kind is LENGTH:
        if not 0 < by < large:
            raise impossible(
                "by",
                "is {d}, no small end of this cone; give more than 0 and less than the large end, {D}",
                d=by,
                D=large,
            )
        return trig.cone_ratio(large, constant("d_g", "Small end, as given", SIZE, float(by)), length)
    if kind is ANGLE and not 0 < float(by) <= STEEPEST:
        raise impossible("by", "is {a}; give the angle of one side to the axis, over 0° up to 60°", a=by)
    if kind is not ANGLE and not 0 < float(by) <= 2 * math.tan(STEEPEST):
        raise impossible("by", "is {c}; give a taper over 0 up to 3:1, such as 1:10 or 0.6 in/ft", c=by)
    ratio = trig.ratio_of_angle(by) if kind is ANGLE else by
    point = float(large) / float(ratio)
    if point <= float(length):
        raise impossible(
            "length",
            "is {L}, and this taper comes to a point after {point}; give less than {point}",
            L=length,
            point=constant("", "", COARSE, point),
        )
    return ratio


def _drawing(R, r, L, a, large, small, length, side) -> Drawing:
    """The cone to scale, its axis level."""
    reach = L * 0.12
    return Drawing(
        "Taper",
        say(
            "A cone {L} long from {D} down to {d}; a side stands at {a} to the axis.",
            L=length,
            D=large,
            d=small,
            a=side,
        ),
        (
            Area(((0, -R), (L, -r), (L, r), (0, R)), "", "cut"),
            Line(((-reach, 0), (L + reach, 0)), "centre"),
            Line(((L, r), (L * 0.1, r)), "thin"),
            Line(arc((L, r), L * 0.75, math.pi - a, math.pi), "thin"),
            Label((L * 0.28, r - max(R * 0.2, reach * 0.5)), say("α {a}", a=side)),
            Dimension((0, -R), (0, R), large, reach, "D"),
            Dimension((L, r), (L, -r), small, reach, "d"),
            Dimension((0, -R), (L, -R), length, -max(reach, R * 0.2), "L"),
        ),
    )
