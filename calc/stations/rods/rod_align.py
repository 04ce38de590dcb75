"""Bend and twist of a rod, from readings at both ends of an arbor in its small end."""
from calc.reference import cautions, sources
from calc.declare.calculator import Limit, Output, Outputs, answer, calculator, limit, measured, number
from calc.core.conformance import past
from calc.core.drawing import Area, Dimension, Drawing, Label, Line, box
from calc.core.kinds import ANGLE, LENGTH, RATIO
from calc.core.result import note, say, warning
from calc.core.working import atan, form, sqrt, step

SIZE, FINE, SMALL, DEGREES = form(LENGTH, 2), form(LENGTH, 3), form(LENGTH, 1), form(ANGLE, 3)
OVER = 0.1  # m: bend and twist are told over 100 mm


class Out(Outputs):
    bend = Output("Bend over 100 mm", "f", FINE, main=True, falls="span", feature="rod.bend")
    twist = Output("Twist over 100 mm", "g", FINE, main=True, falls="span", feature="rod.twist")
    bend_angle = Output("Bend, as an angle", "φ_f", DEGREES, falls="span")
    twist_angle = Output("Twist, as an angle", "φ_g", DEGREES, falls="span")
    skew = Output("Angle between the two bores", "φ", DEGREES, falls="span")
    lean = Output("Piston leans over its height by", "s", FINE, rises="piston_height", falls="span")
    gauge_bend = Output("Gauge's own bend over the span", "o_f", FINE, rises="bend_right bend_turned", falls="bend_left")
    gauge_twist = Output("Gauge's own twist over the span", "o_g", FINE, rises="twist_right twist_turned", falls="twist_left")


def reading(label, symbol, **kw):
    return measured(label, symbol, SIZE, tool="a dial gauge on the arbor", hard=("-5 mm", "5 mm"), usual=("-0.5 mm", "0.5 mm"), **kw)


@calculator(
    "rod-align", "Bend and twist of a rod", Out,
    purpose="Are the two bores of this rod parallel, and if not, is it bent or twisted past its limit?",
    finds=("bent rod", "twisted rod", "rod straightness", "rod alignment", "connecting rod parallelism", "rod gauge", "piston cocked"),
    sources=(sources.TWO_AXES, sources.REVERSAL, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.ROD_SCRAP, cautions.MAKER_FIRST, cautions.AIRCRAFT))
def rod_align(
    *,  # so that sizes of the engine and sizes of the example may stand in the order of the work
    bend_left: reading("Upright, left end", "u_l", hint="Rod upright: the dial reads along the rod.") = "0.00 mm",
    bend_right: reading("Upright, right end", "u_r") = "0.02 mm",
    twist_left: reading("Laid over, left end", "v_l", hint="Rod on its side: the dial reads across it.") = "0.00 mm",
    twist_right: reading("Laid over, right end", "v_r") = "0.04 mm",
    span: measured("Distance between the readings", "L", SMALL, tool="a rule", hard=("20 mm", "600 mm"), usual=("60 mm", "250 mm")) = "150 mm",
    bend_turned: reading("Upright, rod turned: right less left", "w_u", optional=True, fold=True, hint="Rod turned end for end on its mandrel. Tells the gauge's own error apart.") = "",
    twist_turned: reading("Laid over, rod turned: right less left", "w_v", optional=True, fold=True) = "",
    offset: measured("Small end out of the big end's middle, along the crank", "o", SIZE, tool="a height gauge, rod on its side on parallels under both ends", hard=("0 mm", "10 mm"), usual=("0 mm", "1 mm"),
                     feature="rod.offset", optional=True, hint="Half of what the two ends' faces stand unlike, where they are meant to be in line.") = "",
    piston_height: measured("Height of the piston", "h", SMALL, tool="a calliper", hard=("10 mm", "250 mm"), usual=("40 mm", "110 mm"), feature="piston.height", fold=True, assumed="a usual piston; tells nothing but how far it leans") = "65 mm",
    bend_new: limit("Bend over 100 mm, good", "f_n", SIZE, feature="rod.bend", which="high", hard=("0.001 mm", "1 mm"), usual=("0.01 mm", "0.1 mm")),
    bend_worn: limit("Bend over 100 mm, limit", "f_w", SIZE, feature="rod.bend", which="wear", hard=("0.001 mm", "1 mm"), usual=("0.02 mm", "0.2 mm")),
    twist_new: limit("Twist over 100 mm, good", "g_n", SIZE, feature="rod.twist", which="high", hard=("0.001 mm", "1 mm"), usual=("0.01 mm", "0.15 mm")),
    twist_worn: limit("Twist over 100 mm, limit", "g_w", SIZE, feature="rod.twist", which="wear", hard=("0.001 mm", "1 mm"), usual=("0.02 mm", "0.3 mm")),
    offset_new: limit("Out of line, good", "o_n", SIZE, feature="rod.offset", which="high", hard=("0.001 mm", "5 mm"), usual=("0.05 mm", "0.5 mm"), optional=True),
    offset_worn: limit("Out of line, limit", "o_w", SIZE, feature="rod.offset", which="wear", hard=("0.001 mm", "5 mm"), usual=("0.1 mm", "1 mm"), optional=True),
):
    """Slope of the small end's axis against the big end's in two planes, told over 100 mm.

    Bend is the slope in the plane of rod and crank, twist that across it. Turned end for end the rod shows its own slope with the
    other sign, and the gauge's with the same: half the difference is the rod, half the sum the gauge.
    """
    over = number("l_0", "Length that it is told over", SMALL, OVER)

    def slope(symbol, words, left, right, turned, gauge):
        difference = step(f"d_{symbol}", f"Right less left, {words}", FINE, right - left)
        own = step(f"D_{symbol}", f"The rod's share of it, {words}", FINE, (difference - turned) / 2, sources.REVERSAL) if turned is not None else difference
        told = gauge((difference + turned) / 2, sources.REVERSAL) if turned is not None else gauge(0.0)
        return step(f"m_{symbol}", f"Slope, {words}", form(RATIO, 6), own / span, sources.TWO_AXES), told
    u, gauge_bend = slope("u", "upright", bend_left, bend_right, bend_turned, Out.gauge_bend)
    v, gauge_twist = slope("v", "laid over", twist_left, twist_right, twist_turned, Out.gauge_twist)
    bend, twist = Out.bend(abs(u) * over), Out.twist(abs(v) * over)
    lean = Out.lean(abs(u) * piston_height)

    if bend_new > bend_worn:
        bend_new = bend_worn
    if twist_new > twist_worn:
        twist_new = twist_worn
    def bad(turned):
        scrap = "crap it, unless the maker allows a rod to be straightened: cold, and crack-tested after. Look at its piston and cylinder too."
        return "Turn the rod end for end and read again: the gauge's own error is still in this. If it stays, s" + scrap if turned is None else "S" + scrap
    if past(bend, bend_worn):
        verdict = ("fail", say("Bent: {f} over {l}, {w} allowed", f=bend, l=over, w=bend_worn), bad(bend_turned))
    elif past(twist, twist_worn):
        verdict = ("fail", say("Twisted: {g} over {l}, {w} allowed", g=twist, l=over, w=twist_worn), bad(twist_turned))
    elif offset is not None and offset_worn is not None and past(offset, offset_worn):
        verdict = ("fail", say("Ends out of line: {o}, {w} allowed", o=offset, w=offset_worn), "Measure again, on parallels that were tried against each other. If it stays, scrap it: the rod presses its big end against the cheek and its piston against one side.")
    elif past(bend, bend_new) or past(twist, twist_new):
        words, what, new = ("Bend", bend, bend_new) if past(bend, bend_new) else ("Twist", twist, twist_new)
        verdict = ("attention", say(words + " {x}: over a good rod's {n}", x=what, n=new), "It may run, and it wears its shells at one end. Clean bores and arbors, turn the rod end for end, and read again before you decide.")
    elif offset is not None and offset_new is not None and past(offset, offset_new):
        verdict = ("attention", say("Ends out of line: {o}, over a good rod's {n}", o=offset, n=offset_new), "It may run, and wears its sides. Look for shiny cheeks and a pin that wandered to one side, and whether the rod is meant to be offset: the maker says.")
    else:
        verdict = ("pass", say("Straight: bend {f}, twist {g}", f=bend, g=twist), "Write both down by the rod's number. Read again after the small end is honed.")
    worst = max((gauge_bend, gauge_twist), key=lambda g: abs(float(g)))
    return answer(
        bend, twist, Out.bend_angle(atan(abs(u)), sources.TWO_AXES), Out.twist_angle(atan(abs(v)), sources.TWO_AXES), Out.skew(atan(sqrt(u ** 2 + v ** 2)), sources.TWO_AXES), lean, gauge_bend, gauge_twist,
        verdict=verdict,
        limits=(Limit("the bend", bend, high=bend_worn), Limit("the twist", twist, high=twist_worn),
                Limit("the bend", bend, high=bend_new, level="attention"), Limit("the twist", twist, high=twist_new, level="attention"),
                *((Limit("the ends' offset", offset, high=offset_worn), Limit("the ends' offset", offset, high=offset_new, level="attention")) if offset is not None else ())),
        remarks=(
            note("Without a reading of the rod turned end for end, the gauge's own error counts as the rod's.") if bend_turned is None or twist_turned is None else None,
            warning("The gauge itself is out by {o} over the span: have it put right, or always read both ways.", o=number("", "", FINE, abs(float(worst)))) if abs(float(worst)) > float(bend_new * span / over) else None,
            note("Whether both ends are in line was not read: a rod can be straight and yet stand beside its place.") if offset is None else None,
            warning("No limit is known for ends out of line: {o} is not judged.", o=offset) if offset is not None and offset_worn is None else None,
            note("Bend makes the piston lean by {s} along the crank; twist does not, it turns the pin.", s=lean)),
        figures=(views(u, v, span, bend, twist),))


def views(u, v, span, bend, twist) -> Drawing:
    """The rod seen along the crank's throw, and from above: mandrel below, arbor above, its slope drawn larger."""
    L = float(span)
    steepest = max(abs(float(u)), abs(float(v)), 1e-9)
    times = max(1, min(int(0.16 / steepest), 100_000))
    half, thick, tall = L / 2, L * 0.035, L * 0.9

    def bar(x, y, slope, hatch, long=1.0):
        return Area(tuple((x + a * half * long, y + a * half * long * slope + b * thick) for a, b in ((-1, -1), (1, -1), (1, 1), (-1, 1))), hatch)
    across, top = L * 1.45, tall / 2
    su, sv = float(u) * times, float(v) * times
    return Drawing(
        "How the arbor stands", say("Left, the rod upright: the arbor's end stands {f} off over {span}. Right, from above: it crosses the mandrel by {g} over {span}.", f=bend, g=twist, span=number("", "", form(LENGTH, 0), OVER)),
        (Area(box(-0.07 * L, 0, 0.07 * L, tall), ""), bar(0, 0, 0.0, "a", 0.8), bar(0, tall, su, "b"), Line(((-half, tall), (half, tall)), "hidden"), Line(((0, -0.12 * L), (0, tall + 0.2 * L)), "centre"),
         Dimension((-half, tall + abs(su) * half), (half, tall + abs(su) * half), span, 0.18 * L, "L"),
         bar(across, top, 0.0, "a", 0.8), bar(across, top, sv, "b"), Line(((across - half, top), (across + half, top)), "hidden"),
         Label((0, -0.3 * L), say("bend {f}", f=bend)), Label((across, -0.3 * L), say("twist {g}", g=twist))),
        say("slopes drawn {n} times as steep", n=str(times)))
