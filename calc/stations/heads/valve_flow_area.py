"""The narrowest way past an open valve: the curtain round it or the throat under it, and whether the engine outruns it."""

import math

from calc.core.drawing import Area, Axis, Dimension, Drawing, Line, Plot, Series
from calc.core.kinds import ANGLE, AREA, LENGTH, RATIO, ROTATION, SPECIFIC_HEAT, SPEED, TEMPERATURE
from calc.core.result import impossible, note, say, warning
from calc.core.working import PI, constant, cos, form, least, sin, sqrt, step, tan
from calc.declare.calculator import (
    Answer,
    Inputs,
    Limit,
    Number,
    Output,
    Outputs,
    answer,
    calculator,
    given,
    measured,
    which_valve,
)
from calc.formulas.leak import AIR_CONSTANT
from calc.reference import cautions, sources

SIZE, FACE, METRES, TURNS, SHARE, INDEX = (
    form(LENGTH, 2),
    form(AREA, 0),
    form(SPEED, 1, "m/s", "ft/s"),
    form(ROTATION, 0),
    form(RATIO, 0, "%", "%"),
    form(RATIO, 2),
)
KAPPA = constant("κ", "Ratio of the specific heats of air", INDEX, 1.4, sources.SOUND)
AIR = constant("R", "Gas constant of air", form(SPECIFIC_HEAT, 1), AIR_CONSTANT, sources.SOUND)
INTAKE, EXHAUST = "intake", "exhaust"


class Out(Outputs):
    free = Output("Free area at the lift", "A", FACE, main=True)
    crossover = Output("Lift from which the throat decides", "L_x", SIZE, main=True)
    mach = Output("Inlet Mach index", "Z", INDEX, main=True)
    curtain = Output("Curtain area at the lift", "A_c", FACE)
    throat_area = Output("Throat less stem", "A_t", FACE)
    opened = Output("Free area ÷ throat", "a_r", SHARE)
    past = Output("Lift past the crossover", "L_p", SIZE)
    first_stage = Output("Lift at which the curtain leaves the seat's face", "L_1", SIZE)
    lift_ratio = Output("Lift ÷ valve head", "λ", form(RATIO, 3))
    throat_ratio = Output("Throat ÷ valve head", "τ", SHARE)
    piston_speed = Output("Mean piston speed", "S_p", METRES)
    speed_limit = Output("Engine speed at the Mach index allowed", "n_Z", TURNS)


def first_stage_lift(width, angle):
    """Lift up to which the perpendicular from the valve's inner edge still meets the seat, m: w/(sin β·cos β)."""
    return width / (sin(angle) * cos(angle))


def curtain_low(lift, outer, width, angle):
    """Frustum square to the seat, m²: π·L·cos β·(D − 2w + ½L·sin 2β). Lift from 0 to `first_stage_lift`; `width` is that of the
    seat seen along the stem (half of outer less inner diameter), the angle counts from the plane square to the stem.
    """
    return PI * lift * cos(angle) * (outer - 2 * width + lift / 2 * sin(2 * angle))


def curtain_high(lift, outer, width, angle):
    """Frustum from the valve's inner edge to the seat's outer edge, m²: π·(D − w)·√((L − w·tan β)² + w²). From `first_stage_lift` on."""
    return PI * (outer - width) * sqrt((lift - width * tan(angle)) ** 2 + width**2)


def crossover_lift(throat_area, outer, width, angle):
    """Lift at which the curtain is as large as the throat, m: each stage solved for the lift."""
    if throat_area <= curtain_low(first_stage_lift(width, angle), outer, width, angle):
        inner, bend = outer / 2 - width, sin(angle) * cos(angle)
        return (sqrt(inner**2 + bend * throat_area / (PI * cos(angle))) - inner) / bend
    return sqrt((throat_area / (PI * (outer - width))) ** 2 - width**2) + width * tan(angle)


class In(Inputs):
    valve: str = which_valve("The Mach index is judged for the intake only.")
    lift: Number = measured(
        "Valve lift, full",
        "L",
        SIZE,
        tool="a dial gauge on the retainer",
        hard="0 to 30 mm",
        usual="5 to 15 mm",
        feature="valve.lift",
        stage="",
    )
    valve_head: Number = measured(
        "Valve head diameter",
        "D",
        SIZE,
        tool="a calliper",
        hard="10 to 80 mm",
        usual="25 to 55 mm",
        feature="head.valve_head_{valve}",
    )
    seat_inner: Number = measured(
        "Seat, inner edge",
        "D_i",
        SIZE,
        tool="a calliper on the dyed seat",
        hard="6 to 79 mm",
        usual="20 to 52 mm",
        feature="head.seat_inner_{valve}",
    )
    throat: Number = measured(
        "Throat under the seat",
        "D_t",
        SIZE,
        tool="a telescopic gauge, at the narrowest place",
        hard="5 to 79 mm",
        usual="18 to 50 mm",
        feature="port.throat_{valve}",
        stage="",
    )
    stem: Number = measured(
        "Stem in the throat",
        "D_s",
        SIZE,
        tool="a micrometer",
        hard="2 to 20 mm",
        usual="5 to 12 mm",
        feature="valve.stem_{valve}",
    )
    engine_speed: Number = given(
        "Engine speed",
        "n",
        TURNS,
        hard="100 1/ to 12000 1/min",
        usual="1500 1/ to 7500 1/min",
        feature="crank.top_speed",
        when=("valve", INTAKE),
    )
    seat_angle: Number = given(
        "Seat angle",
        "β",
        form(ANGLE, 1),
        hard="15 to 65°",
        usual="30 to 46°",
        feature="head.seat_angle",
        fold=True,
        hint="From the plane square to the stem.",
    )
    bore: Number = measured(
        "Cylinder bore",
        "b",
        SIZE,
        tool="a bore gauge",
        hard="40 to 160 mm",
        usual="70 to 110 mm",
        feature="cylinder.bore",
        fold=True,
        when=("valve", INTAKE),
    )
    stroke: Number = measured(
        "Stroke",
        "s",
        SIZE,
        tool="a height gauge over the journals",
        hard="30 to 160 mm",
        usual="55 to 100 mm",
        feature="crank.stroke",
        fold=True,
        when=("valve", INTAKE),
    )
    flow_coefficient: Number = given(
        "Flow coefficient, mean over the opening",
        "C_i",
        INDEX,
        hard="0.1 to 0.7",
        usual="0.28 to 0.45",
        fold=True,
        hint="Of the valve head's area. A flow bench tells.",
        assumed=("0.35", "0.3 to 0.4 for two valves; from memory"),
        when=("valve", INTAKE),
    )
    temperature: Number = given(
        "Air at the valve",
        "T",
        form(TEMPERATURE, 0),
        hard="-40 to 200 °C",
        usual="0 to 80 °C",
        fold=True,
        assumed=("40 °C", "warmed by the port; common practice, no source"),
        when=("valve", INTAKE),
    )
    most_mach: Number = given(
        "Mach index, most",
        "Z_max",
        INDEX,
        hard="0.1 to 1.5",
        usual="0.4 to 0.7",
        fold=True,
        assumed=("0.60", "filling falls off above it; common practice, no source"),
        when=("valve", INTAKE),
    )


@calculator(
    "valve-flow-area",
    "Valve flow area",
    In,
    Out,
    purpose=(
        "How far must the valve lift before the throat decides, and does the engine run faster than the valve"
        " can fill it?"
    ),
    finds=(
        "curtain area",
        "valve lift",
        "throat area",
        "inlet Mach index",
        "valve size",
        "flow past the valve",
        "more lift",
        "port throat",
    ),
    sources=(sources.CURTAIN, sources.MACH_INDEX, sources.SOUND, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def valve_flow_area(i: In) -> Answer:
    """Geometry of cones, and air as an ideal gas. Heywood's forms take the valve's face as wide as the seat, and lie no more than 2 % above
    the smallest frustum for seats of 30° and steeper, up to a lift of a quarter of the seat's inner edge.

    A face that reaches in past the seat makes the curtain a few per cent smaller at low lift. The flow is less than the area
    says: by its coefficient, that a flow bench gives. The Mach index is judged for the intake only.
    """
    if i.seat_inner >= i.valve_head:
        raise impossible(
            "seat_inner",
            "is {i}, not smaller than the valve head, {v}, so that the valve falls through; give less"
            " than {v}",
            i=i.seat_inner,
            v=i.valve_head,
        )
    if i.throat > i.seat_inner:
        raise impossible(
            "throat",
            "is {t}, wider than the seat's inner edge, {i}, and the narrowest place counts; give {i} or less",
            t=i.throat,
            i=i.seat_inner,
        )
    if i.stem >= i.throat:
        raise impossible(
            "stem", "is {s}, not smaller than the throat, {t}; give less than {t}", s=i.stem, t=i.throat
        )
    width = step("w", "Seat seen along the stem", SIZE, (i.valve_head - i.seat_inner) / 2)
    first = Out.first_stage(first_stage_lift(width, i.seat_angle), sources.CURTAIN)
    curtain = Out.curtain(
        (curtain_low if i.lift <= first else curtain_high)(i.lift, i.valve_head, width, i.seat_angle),
        sources.CURTAIN,
    )
    throat_area = Out.throat_area(PI / 4 * (i.throat**2 - i.stem**2), sources.CURTAIN)
    free = Out.free(least(curtain, throat_area))
    crossover = Out.crossover(crossover_lift(throat_area, i.valve_head, width, i.seat_angle), sources.CURTAIN)
    opened = Out.opened(free / throat_area)
    piston_speed = Out.piston_speed(2 * i.stroke * i.engine_speed)
    sound = step("a", "Speed of sound in that air", METRES, sqrt(KAPPA * AIR * i.temperature), sources.SOUND)
    mach = Out.mach(
        (i.bore / i.valve_head) ** 2 * piston_speed / (i.flow_coefficient * sound), sources.MACH_INDEX
    )
    speed_limit = Out.speed_limit(i.engine_speed * i.most_mach / mach)

    fills = i.valve == INTAKE
    if fills and mach > i.most_mach:
        verdict = (
            "fail",
            say("Outruns the valve: Mach index {z}, {m} allowed", z=mach, m=i.most_mach),
            say(
                "Above {n} the cylinder no longer fills. A larger valve or a better flow coefficient raises"
                " that; lift " + ("up to {x} helps." if i.lift < crossover else "past {x} does not."),
                n=speed_limit,
                x=crossover,
            ),
        )
    elif i.lift < crossover:
        verdict = (
            "attention",
            say("Opens to {a} of its throat", a=opened),
            say(
                "More lift still gives area, up to {x}. Check coil bind, guide seal and piston before you ask"
                " for it.",
                x=crossover,
            ),
        )
    else:
        verdict = (
            "pass",
            (
                say("Throat decides from {x}, index {z}", x=crossover, z=mach)
                if fills
                else say("Throat decides from {x}", x=crossover)
            ),
            say(
                "More lift than that buys little. If more flow is wanted, look at the throat and at the turn"
                " above it, and at the seat's cuts."
            ),
        )
    return answer(
        free,
        crossover,
        mach,
        curtain,
        throat_area,
        opened,
        Out.past(i.lift - crossover),
        first,
        Out.lift_ratio(i.lift / i.valve_head),
        Out.throat_ratio(i.throat / i.valve_head),
        piston_speed,
        speed_limit,
        verdict=verdict,
        limits=(
            *((Limit("the Mach index", mach, high=i.most_mach),) if fills else ()),
            Limit("the opening", i.lift, low=crossover, level="attention"),
        ),
        remarks=(
            (
                warning(
                    "The throat is {t} of the valve head. Past 0.92 no wall is left under the seat to turn"
                    " the gas in; common practice, no source.",
                    t=constant("", "", INDEX, float(i.throat / i.valve_head)),
                )
                if float(i.throat) > 0.92 * float(i.valve_head)
                else (
                    note(
                        "The throat is {t} of the valve head; 0.85 to 0.90 is usual, common practice, no"
                        " source.",
                        t=constant("", "", INDEX, float(i.throat / i.valve_head)),
                    )
                    if float(i.throat) < 0.80 * float(i.valve_head)
                    else None
                )
            ),
            note(
                "Lift past the crossover still helps a little: the valve gets there sooner and stays longer,"
                " and its head stands clear of the flow."
            ),
            (
                None
                if fills
                else note(
                    "For the exhaust only areas and crossover count: what leaves the cylinder is hot and"
                    " leaves under pressure. Leave index and engine speed aside."
                )
            ),
        ),
        figures=(
            _plot(
                i.lift, free, crossover, float(throat_area), *map(float, (i.valve_head, width, i.seat_angle))
            ),
            _drawing(i.lift, i.valve_head, i.seat_inner, i.throat, i.stem, float(width), float(i.seat_angle)),
        ),
    )


def _curtain(lift, outer, width, angle) -> float:
    return (curtain_low if lift <= first_stage_lift(width, angle) else curtain_high)(
        lift, outer, width, angle
    )


def _plot(lift, free, crossover, throat_area, outer, width, angle) -> Plot:
    x, top = float(crossover), float(lift)
    end = 1.15 * max(x, top)
    points = tuple((end * i / 60, _curtain(end * i / 60, outer, width, angle)) for i in range(61))
    return Plot(
        "Area over the lift",
        say(
            "The curtain grows until it is as large as the throat at {x}; at {l} the free area is {a}.",
            x=crossover,
            l=lift,
            a=free,
        ),
        Axis("Lift", SIZE),
        Axis("Area", FACE),
        (Series("curtain", points), Series("throat", ((0.0, throat_area), (end, throat_area)), "dashed")),
        (
            (x, throat_area, "crossover"),
            (top, _curtain(top, outer, width, angle), "full lift" if abs(top - x) > 0.06 * end else ""),
        ),
    )


def _drawing(lift, valve_head, seat_inner, throat, stem, width, angle) -> Drawing:
    """Valve at its lift over the seat; the narrowest line of the curtain on both sides."""
    up, outer, inner, bowl, rod = (
        float(lift),
        float(valve_head) / 2,
        float(seat_inner) / 2,
        float(throat) / 2,
        float(stem) / 2,
    )
    rise = width * math.tan(angle)
    edge = min(0.05 * outer, 2e-3)
    deep = -0.75 * outer
    seat = (
        (outer, rise),
        (outer * 1.35, rise),
        (outer * 1.35, deep),
        (bowl, deep),
        (bowl, -min(inner - bowl, 0.2 * outer) - 0.03 * outer),
        (inner, 0.0),
    )
    neck = min(1.6 * rod, 0.8 * inner)
    valve = (
        (0, up + rise + edge),
        (outer, up + rise + edge),
        (outer, up + rise),
        (inner, up),
        (neck, up - 0.25 * (inner - neck)),
        (rod, up - 0.25 * (inner - neck) - 1.5 * (neck - rod)),
        (rod, deep),
        (0, deep),
    )
    run = min(up * math.sin(angle) * math.cos(angle), width)
    foot = (inner + run, run * math.tan(angle))

    def left(points):
        return tuple((-px, py) for px, py in points)

    gap = ((inner, up), foot)
    return Drawing(
        "Valve at full lift",
        say(
            "Section through seat and valve: valve {v} across, lifted by {l}, throat {t}.",
            v=valve_head,
            l=lift,
            t=throat,
        ),
        (
            Area(seat, "a"),
            Area(left(seat), "a"),
            Area((*valve, *left(valve)[::-1]), ""),
            Line(gap, "band"),
            Line(left(gap), "band"),
            Line(((0, up + rise + edge + 0.15 * outer), (0, deep - 0.1 * outer)), "centre"),
            Dimension((-outer, up + rise + edge), (outer, up + rise + edge), valve_head, 0.22 * outer, "D"),
            Dimension((-bowl, deep), (bowl, deep), throat, -0.2 * outer, "D_t"),
            *((Dimension((outer, rise), (outer, up + rise), lift, -0.5 * outer, "L"),) if up > 0 else ()),
        ),
        "to scale; the shape of neck and throat is drawn only roughly",
    )
