"""Bend and twist of a rod, from readings at both ends of an arbor in its small end."""

from calc.core.conformance import past
from calc.core.drawing import Area, Dimension, Drawing, Label, Line, box
from calc.core.kinds import ANGLE, LENGTH, RATIO
from calc.core.result import note, say, warning
from calc.core.working import atan, constant, form, sqrt, step
from calc.declare.calculator import (
    Answer,
    Inputs,
    Limit,
    Number,
    Output,
    Outputs,
    answer,
    calculator,
    limit,
    measured,
)
from calc.reference import cautions, sources

SIZE, FINE, SMALL, DEGREES = form(LENGTH, 2), form(LENGTH, 3), form(LENGTH, 1), form(ANGLE, 3)
OVER = 0.1  # m: bend and twist are told over 100 mm


class Out(Outputs):
    bend = Output("Bend over 100 mm", "f", FINE, main=True, feature="rod.bend")
    twist = Output("Twist over 100 mm", "g", FINE, main=True, feature="rod.twist")
    bend_angle = Output("Bend, as an angle", "φ_f", DEGREES)
    twist_angle = Output("Twist, as an angle", "φ_g", DEGREES)
    skew = Output("Angle between the two bores", "φ", DEGREES)
    lean = Output("Piston leans over its height by", "s", FINE)
    gauge_bend = Output("Gauge's own bend over the span", "o_f", FINE)
    gauge_twist = Output("Gauge's own twist over the span", "o_g", FINE)


def reading(label, symbol, **kw):
    return measured(
        label, symbol, SIZE, tool="a dial gauge on the arbor", hard="-5 to 5 mm", usual="-0.5 to 0.5 mm", **kw
    )


class In(Inputs):
    bend_left: Number = reading(
        "Upright, left end", "u_l", hint="Rod upright: the dial reads along the rod.", example="0.00 mm"
    )
    bend_right: Number = reading("Upright, right end", "u_r", example="0.02 mm")
    twist_left: Number = reading(
        "Laid over, left end", "v_l", hint="Rod on its side: the dial reads across it.", example="0.00 mm"
    )
    twist_right: Number = reading("Laid over, right end", "v_r", example="0.04 mm")
    span: Number = measured(
        "Distance between the readings",
        "L",
        SMALL,
        tool="a rule",
        hard="20 to 600 mm",
        usual="60 to 250 mm",
        example="150 mm",
    )
    bend_turned: Number | None = reading(
        "Upright, rod turned: right less left",
        "w_u",
        fold=True,
        hint="Rod turned end for end on its mandrel. Tells the gauge's own error apart.",
    )
    twist_turned: Number | None = reading("Laid over, rod turned: right less left", "w_v", fold=True)
    offset: Number | None = measured(
        "Small end out of the big end's middle, along the crank",
        "o",
        SIZE,
        tool="a height gauge, rod on its side on parallels under both ends",
        hard="0 to 10 mm",
        usual="0 to 1 mm",
        feature="rod.offset",
        hint="Half of what the two ends' faces stand unlike, where they are meant to be in line.",
    )
    piston_height: Number = measured(
        "Height of the piston",
        "h",
        SMALL,
        tool="a calliper",
        hard="10 to 250 mm",
        usual="40 to 110 mm",
        feature="piston.height",
        fold=True,
        assumed=("65 mm", "a usual piston; tells nothing but how far it leans"),
    )
    bend_new: Number = limit(
        "Bend over 100 mm, good",
        "f_n",
        SIZE,
        feature="rod.bend",
        which="high",
        hard="0.001 to 1 mm",
        usual="0.01 to 0.1 mm",
    )
    bend_worn: Number = limit(
        "Bend over 100 mm, limit",
        "f_w",
        SIZE,
        feature="rod.bend",
        which="wear",
        hard="0.001 to 1 mm",
        usual="0.02 to 0.2 mm",
    )
    twist_new: Number = limit(
        "Twist over 100 mm, good",
        "g_n",
        SIZE,
        feature="rod.twist",
        which="high",
        hard="0.001 to 1 mm",
        usual="0.01 to 0.15 mm",
    )
    twist_worn: Number = limit(
        "Twist over 100 mm, limit",
        "g_w",
        SIZE,
        feature="rod.twist",
        which="wear",
        hard="0.001 to 1 mm",
        usual="0.02 to 0.3 mm",
    )
    offset_new: Number | None = limit(
        "Out of line, good",
        "o_n",
        SIZE,
        feature="rod.offset",
        which="high",
        hard="0.001 to 5 mm",
        usual="0.05 to 0.5 mm",
    )
    offset_worn: Number | None = limit(
        "Out of line, limit",
        "o_w",
        SIZE,
        feature="rod.offset",
        which="wear",
        hard="0.001 to 5 mm",
        usual="0.1 to 1 mm",
    )


@calculator(
    "rod-align",
    "Bend and twist of a rod",
    In,
    Out,
    purpose="Are the two bores of this rod parallel, and if not, is it bent or twisted past its limit?",
    finds=(
        "bent rod",
        "twisted rod",
        "rod straightness",
        "rod alignment",
        "connecting rod parallelism",
        "rod gauge",
        "piston cocked",
    ),
    sources=(sources.TWO_AXES, sources.REVERSAL, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.ROD_SCRAP, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def rod_align(i: In) -> Answer:
    """Slope of the small end's axis against the big end's in two planes, told over 100 mm.

    Bend is the slope in the plane of rod and crank, twist that across it. Turned end for end the rod shows its own slope with the
    other sign, and the gauge's with the same: half the difference is the rod, half the sum the gauge.
    """
    bend_new = i.bend_new
    twist_new = i.twist_new
    over = constant("l_0", "Length that it is told over", SMALL, OVER)

    def slope(symbol, words, left, right, turned, gauge):
        difference = step(f"d_{symbol}", f"Right less left, {words}", FINE, right - left)
        own = (
            step(
                f"D_{symbol}",
                f"The rod's share of it, {words}",
                FINE,
                (difference - turned) / 2,
                sources.REVERSAL,
            )
            if turned is not None
            else difference
        )
        told = gauge((difference + turned) / 2, sources.REVERSAL) if turned is not None else gauge(0.0)
        return step(f"m_{symbol}", f"Slope, {words}", form(RATIO, 6), own / i.span, sources.TWO_AXES), told

    u, gauge_bend = slope("u", "upright", i.bend_left, i.bend_right, i.bend_turned, Out.gauge_bend)
    v, gauge_twist = slope("v", "laid over", i.twist_left, i.twist_right, i.twist_turned, Out.gauge_twist)
    bend, twist = Out.bend(abs(u) * over), Out.twist(abs(v) * over)
    lean = Out.lean(abs(u) * i.piston_height)

    if bend_new > i.bend_worn:
        bend_new = i.bend_worn
    if twist_new > i.twist_worn:
        twist_new = i.twist_worn

    def bad(turned):
        scrap = (
            "crap it, unless the maker allows a rod to be straightened: cold, and crack-tested after. Look at"
            " its piston and cylinder too."
        )
        return (
            "Turn the rod end for end and read again: the gauge's own error is still in this. If it stays, s"
            + scrap
            if turned is None
            else "S" + scrap
        )

    if past(bend, i.bend_worn):
        verdict = (
            "fail",
            say("Bent: {f} over {l}, {w} allowed", f=bend, l=over, w=i.bend_worn),
            bad(i.bend_turned),
        )
    elif past(twist, i.twist_worn):
        verdict = (
            "fail",
            say("Twisted: {g} over {l}, {w} allowed", g=twist, l=over, w=i.twist_worn),
            bad(i.twist_turned),
        )
    elif i.offset is not None and i.offset_worn is not None and past(i.offset, i.offset_worn):
        verdict = (
            "fail",
            say("Ends out of line: {o}, {w} allowed", o=i.offset, w=i.offset_worn),
            (
                "Measure again, on parallels that were tried against each other. If it stays, scrap it: the"
                " rod presses its big end against the cheek and its piston against one side."
            ),
        )
    elif past(bend, bend_new) or past(twist, twist_new):
        words, what, new = ("Bend", bend, bend_new) if past(bend, bend_new) else ("Twist", twist, twist_new)
        verdict = (
            "attention",
            say(words + " {x}: over a good rod's {n}", x=what, n=new),
            (
                "It may run, and it wears its shells at one end. Clean bores and arbors, turn the rod end for"
                " end, and read again before you decide."
            ),
        )
    elif i.offset is not None and i.offset_new is not None and past(i.offset, i.offset_new):
        verdict = (
            "attention",
            say("Ends out of line: {o}, over a good rod's {n}", o=i.offset, n=i.offset_new),
            (
                "It may run, and wears its sides. Look for shiny cheeks and a pin that wandered to one side,"
                " and whether the rod is meant to be offset: the maker says."
            ),
        )
    else:
        verdict = (
            "pass",
            say("Straight: bend {f}, twist {g}", f=bend, g=twist),
            "Write both down by the rod's number. Read again after the small end is honed.",
        )
    worst = max((gauge_bend, gauge_twist), key=lambda g: abs(float(g)))
    return answer(
        bend,
        twist,
        Out.bend_angle(atan(abs(u)), sources.TWO_AXES),
        Out.twist_angle(atan(abs(v)), sources.TWO_AXES),
        Out.skew(atan(sqrt(u**2 + v**2)), sources.TWO_AXES),
        lean,
        gauge_bend,
        gauge_twist,
        verdict=verdict,
        limits=(
            Limit("the bend", bend, high=i.bend_worn),
            Limit("the twist", twist, high=i.twist_worn),
            Limit("the bend", bend, high=bend_new, level="attention"),
            Limit("the twist", twist, high=twist_new, level="attention"),
            *(
                (
                    Limit("the ends' offset", i.offset, high=i.offset_worn),
                    Limit("the ends' offset", i.offset, high=i.offset_new, level="attention"),
                )
                if i.offset is not None
                else ()
            ),
        ),
        remarks=(
            (
                note(
                    "Without a reading of the rod turned end for end, the gauge's own error counts as the"
                    " rod's."
                )
                if i.bend_turned is None or i.twist_turned is None
                else None
            ),
            (
                warning(
                    "The gauge itself is out by {o} over the span: have it put right, or always read both"
                    " ways.",
                    o=constant("", "", FINE, abs(float(worst))),
                )
                if abs(float(worst)) > float(bend_new * i.span / over)
                else None
            ),
            (
                note(
                    "Whether both ends are in line was not read: a rod can be straight and yet stand beside"
                    " its place."
                )
                if i.offset is None
                else None
            ),
            (
                warning("No limit is known for ends out of line: {o} is not judged.", o=i.offset)
                if i.offset is not None and i.offset_worn is None
                else None
            ),
            note(
                "Bend makes the piston lean by {s} along the crank; twist does not, it turns the pin.", s=lean
            ),
        ),
        figures=(views(u, v, i.span, bend, twist),),
    )


def views(u, v, span, bend, twist) -> Drawing:
    """The rod seen along the crank's throw, and from above: mandrel below, arbor above, its slope drawn larger."""
    L = float(span)
    steepest = max(abs(float(u)), abs(float(v)), 1e-9)
    times = max(1, min(int(0.16 / steepest), 100_000))
    half, thick, tall = L / 2, L * 0.035, L * 0.9

    def bar(x, y, slope, hatch, long=1.0):
        return Area(
            tuple(
                (x + a * half * long, y + a * half * long * slope + b * thick)
                for a, b in ((-1, -1), (1, -1), (1, 1), (-1, 1))
            ),
            hatch,
        )

    across, top = L * 1.45, tall / 2
    su, sv = float(u) * times, float(v) * times
    return Drawing(
        "How the arbor stands",
        say(
            "Left, the rod upright: the arbor's end stands {f} off over {span}. Right, from above: it crosses"
            " the mandrel by {g} over {span}.",
            f=bend,
            g=twist,
            span=constant("", "", form(LENGTH, 0), OVER),
        ),
        (
            Area(box(-0.07 * L, 0, 0.07 * L, tall), ""),
            bar(0, 0, 0.0, "a", 0.8),
            bar(0, tall, su, "b"),
            Line(((-half, tall), (half, tall)), "hidden"),
            Line(((0, -0.12 * L), (0, tall + 0.2 * L)), "centre"),
            Dimension((-half, tall + abs(su) * half), (half, tall + abs(su) * half), span, 0.18 * L, "L"),
            bar(across, top, 0.0, "a", 0.8),
            bar(across, top, sv, "b"),
            Line(((across - half, top), (across + half, top)), "hidden"),
            Label((0, -0.3 * L), say("bend {f}", f=bend)),
            Label((across, -0.3 * L), say("twist {g}", g=twist)),
        ),
        say("slopes drawn {n} times as steep", n=str(times)),
    )
