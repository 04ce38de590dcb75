"""Where the plunger of a hydraulic lifter stands, cold, while it warms up and running, and the pushrod that keeps it off both stops."""

from calc.core.conformance import past
from calc.core.drawing import Area, Axis, Dimension, Drawing, Label, Line, Plot, Series, box
from calc.core.result import impossible, note, say
from calc.core.working import constant, greatest, step
from calc.declare.calculator import (
    Answer,
    Inputs,
    Limit,
    Number,
    Output,
    Outputs,
    answer,
    calculator,
    choice,
    given,
    limit,
    measured,
    which_valve,
)
from calc.formulas.press_fit import free_strain
from calc.reference import cautions, sources
from calc.reference.materials import MATERIALS, REFERENCE
from calc.stations.shared.forms import ALPHA, COARSE, DEGREES_C, ROUGH, STRAIN, TIMES
from calc.stations.shared.growth import growth, reference_temperature

CASES, CYLINDERS, HEADS, VALVES = (
    ("mg-az91", "al-si-t6", "ductile-iron"),
    ("grey-iron", "al-si-t6"),
    ("al-si-t6", "al-si-cu-t6"),
    ("valve-steel", "austenitic-valve-steel"),
)


class Out(Outputs):
    top = Output("Left to the upper stop, at worst", "u_min", COARSE, main=True)
    bottom = Output("Left to the lower stop, at worst", "l_min", COARSE, main=True)
    pushrod_wanted = Output("Pushrod to fit", "L_w", COARSE, main=True)
    longer = Output("Longer than the one fitted by", "ΔL", COARSE)
    shim = Output("Shims under the rocker stand that do the same", "t_s", COARSE)
    change = Output("Pressed in more when running, by", "Δ_run", COARSE)
    running = Output("Pressed in, running", "p_run", COARSE)
    warming = Output("Pressed in, warming up", "p_warm", COARSE)
    left_cold = Output("Travel left below, cold", "l_cold", COARSE)
    left_running = Output("Travel left below, running", "l_run", COARSE)
    preload_least = Output("Pressed in cold, least that serves", "p_low", COARSE)
    preload_most = Output("Pressed in cold, most that serves", "p_high", COARSE)


def pressed_in(rods, tip, ratio, stand):
    """What the plunger is pressed in more, m: growth of cam, lifter and pushrod, and of the tip over the shaft through the rocker, less that of what
    carries the shaft. `tip` is how far the stem's tip rises over the rocker shaft, `ratio` the rocker's valve side over its other.
    """
    return rods + tip / ratio - stand


def shim_for(shorter, ratio):
    """Shims under the rocker stand that do what a pushrod shorter by that much does: the shaft goes up and the rocker turns about the stem's tip."""
    return shorter / (1 + 1 / ratio)


class In(Inputs):
    preload: Number = measured(
        "Plunger pressed in, cold",
        "p",
        COARSE,
        tool="a dial gauge, lifter bled down, valve shut",
        hard="-5 to 20 mm",
        usual="0.3 to 5 mm",
        feature="lifter.preload",
        stage="",
        hint=(
            "Each valve by itself. 0 where the pushrod just touches the plunger on its upper stop, minus"
            " where it has play."
        ),
    )
    travel: Number = measured(
        "Plunger travel, stop to stop",
        "S",
        COARSE,
        tool="a dial gauge",
        hard="0.2 to 25 mm",
        usual="1 to 8 mm",
        feature="lifter.travel",
    )
    pushrod: Number = measured(
        "Pushrod fitted",
        "L_p",
        COARSE,
        tool="a height gauge",
        hard="20 to 600 mm",
        usual="80 to 350 mm",
        feature="lifter.pushrod",
        stage="",
    )
    valve: str = which_valve()
    case_material: str = choice(
        "Case, material",
        {id: MATERIALS[id].name for id in CASES},
        feature="crankcase.alloy",
        example="mg-az91",
    )
    case_length: Number = measured(
        "Case, cam to cylinder seat",
        "L_c",
        ROUGH,
        tool="a height gauge",
        hard="0 to 400 mm",
        usual="40 to 200 mm",
        feature="crankcase.seat_height",
        fold=True,
        hint="Along the cylinder.",
    )
    cylinder: Number = measured(
        "Cylinder, seat to head",
        "L_z",
        ROUGH,
        tool="a height gauge",
        hard="0 to 400 mm",
        usual="50 to 200 mm",
        feature="cylinder.length",
        fold=True,
    )
    head: Number = measured(
        "Head, sealing face to rocker shaft",
        "L_h",
        ROUGH,
        tool="a height gauge",
        hard="0 to 300 mm",
        usual="60 to 200 mm",
        feature="head.rocker_height",
        fold=True,
    )
    lifter: Number = given(
        "Cam centre to the pushrod's seat in the lifter",
        "L_l",
        ROUGH,
        hard="1 to 200 mm",
        usual="20 to 120 mm",
        feature="lifter.reach",
        fold=True,
        hint="Base circle's radius and body.",
    )
    valve_length: Number = measured(
        "Valve, seat to tip",
        "L_v",
        ROUGH,
        tool="a calliper",
        hard="10 to 300 mm",
        usual="60 to 160 mm",
        feature="valve.length",
        fold=True,
    )
    ratio: Number = given(
        "Rocker's ratio",
        "i",
        TIMES,
        hard="0.5 to 3",
        usual="0.9 to 1.8",
        feature="valve.rocker_ratio",
        fold=True,
        hint="Valve side over pushrod side.",
    )
    cylinder_material: str = choice(
        "Cylinder, material",
        {id: MATERIALS[id].name for id in CYLINDERS},
        fold=True,
        feature="cylinder.alloy",
        example="grey-iron",
    )
    head_material: str = choice(
        "Head, material",
        {id: MATERIALS[id].name for id in HEADS},
        fold=True,
        feature="head.alloy",
        example="al-si-t6",
    )
    valve_material: str = choice(
        "Valve, material",
        {id: MATERIALS[id].name for id in VALVES},
        fold=True,
        feature="valve.alloy_{valve}",
        example="valve-steel",
    )
    pushrod_expansion: Number = given(
        "Expansion of the pushrod",
        "α_p",
        ALPHA,
        hard="5 to 30 µm/(m·K)",
        usual="10 to 25 µm/(m·K)",
        feature="lifter.pushrod_expansion",
        fold=True,
        hint="Steel about 12, aluminium tube about 24.",
    )
    case_temperature: Number = given(
        "Case temperature, running",
        "T_c",
        DEGREES_C,
        hard="-40 to 180 °C",
        usual="50 to 130 °C",
        feature="crankcase.running_temperature",
        fold=True,
    )
    cylinder_temperature: Number = given(
        "Cylinder, running, mean",
        "T_z",
        DEGREES_C,
        hard="-40 to 300 °C",
        usual="90 to 220 °C",
        feature="cylinder.running_temperature",
        fold=True,
    )
    head_temperature: Number = given(
        "Head, running, mean",
        "T_h",
        DEGREES_C,
        hard="-40 to 300 °C",
        usual="90 to 220 °C",
        feature="head.running_temperature",
        fold=True,
    )
    valve_temperature: Number = given(
        "Valve, running, mean",
        "T_v",
        DEGREES_C,
        hard="-40 to 600 °C",
        usual="100 to 500 °C",
        feature="valve.running_temperature_{valve}",
        fold=True,
    )
    rod_temperature: Number = given(
        "Pushrod and lifter, running",
        "T_p",
        DEGREES_C,
        hard="-40 to 150 °C",
        usual="50 to 130 °C",
        feature="lifter.running_temperature",
        fold=True,
    )
    sinking: Number = limit(
        "Stem's tip may still rise by",
        "z_v",
        COARSE,
        feature="head.stem_rise",
        which="wear",
        hard="0 to 5 mm",
        usual="0.2 to 1.5 mm",
        hint="As the valve sinks into its seat, until its wear limit.",
    )
    wear: Number = limit(
        "Cam and lifter may still wear by",
        "z_c",
        COARSE,
        feature="cam.may_wear",
        which="nominal",
        hard="0 to 3 mm",
        usual="0 to 0.4 mm",
        hint="On the base circle and the foot.",
    )
    least_top: Number = given(
        "To the upper stop, least",
        "u_w",
        COARSE,
        hard="0 to 5 mm",
        usual="0.1 to 1 mm",
        fold=True,
        assumed=("0.30 mm", "common practice, no source"),
    )
    least_bottom: Number = given(
        "To the lower stop, least",
        "l_w",
        COARSE,
        hard="0 to 5 mm",
        usual="0.1 to 1.5 mm",
        fold=True,
        assumed=("0.50 mm", "common practice, no source"),
    )


@calculator(
    "plunger-travel",
    "Plunger in its travel",
    In,
    Out,
    purpose="Does the plunger stay off both its stops, cold, hot and worn, and what pushrod puts it there?",
    finds=(
        "lifter preload",
        "pushrod length",
        "hydraulic lifter adjustment",
        "plunger depth",
        "valve held open",
        "rocker stand shim",
        "lifter bottoms",
        "thermal growth of the valve train",
    ),
    sources=(
        sources.VALVE_TRAIN_GROWTH,
        sources.THERMAL,
        sources.MATERIALS,
        sources.PRACTICE,
        sources.INVENTED,
    ),
    cautions=(cautions.SPRING, cautions.BREAK_IN, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def plunger_travel(i: In) -> Answer:
    """A chain along the cylinder: case, cylinder and head carry the rocker shaft away from the cam, lifter and pushrod follow it.

    The tip of the stem is taken to stand as high over the seat as the shaft does. Each part has one mean temperature. Warming up:
    cylinder, head and valve hot, while case, lifter and pushrod are still cold. Tilt of the pushrod is left out (under 1 %).
    """
    if past(i.preload, i.travel):
        raise impossible(
            "preload",
            "is {p}, more than the travel, {s}, which is all that the plunger goes; give {s} or less",
            p=i.preload,
            s=i.travel,
        )
    reference = reference_temperature()
    case, barrel, top, stem = (
        growth(MATERIALS[material], temperature, reference, letter, words, field)
        for material, temperature, letter, words, field in (
            (i.case_material, i.case_temperature, "c", "case", "case_temperature"),
            (i.cylinder_material, i.cylinder_temperature, "z", "cylinder", "cylinder_temperature"),
            (i.head_material, i.head_temperature, "h", "head", "head_temperature"),
            (i.valve_material, i.valve_temperature, "v", "valve", "valve_temperature"),
        )
    )
    body = growth(
        MATERIALS["forged-steel"], i.rod_temperature, reference, "l", "cam and lifter", "rod_temperature"
    )
    rod = step(
        "ε_p",
        "Growth of the pushrod",
        STRAIN,
        free_strain(i.pushrod_expansion, i.rod_temperature, reference),
        sources.THERMAL,
    )
    rods = step("g_p", "Pushrod, lifter and cam grow by", COARSE, i.pushrod * rod + i.lifter * body)
    tip = step("g_v", "Stem's tip rises over the rocker shaft by", COARSE, i.valve_length * (stem - top))
    above = step("g_h", "Cylinder and head grow by", COARSE, i.cylinder * barrel + i.head * top)
    stand = step("g_c", "All that carries the rocker shaft grows by", COARSE, i.case_length * case + above)
    change = Out.change(pressed_in(rods, tip, i.ratio, stand), sources.VALVE_TRAIN_GROWTH)
    early = step(
        "Δ_warm",
        "Pressed in more while warming up, by",
        COARSE,
        pressed_in(0.0, tip, i.ratio, above),
        sources.VALVE_TRAIN_GROWTH,
    )
    running, warming = Out.running(i.preload + change), Out.warming(i.preload + early)
    left_cold, left_running = Out.left_cold(i.travel - i.preload), Out.left_running(i.travel - running)
    sunk = step("z_p", "Plunger goes down as the valve sinks, by", COARSE, i.sinking / i.ratio)
    up, down = (
        step("d_u", "Goes up from cold, at most", COARSE, greatest(-change, -early, 0.0)),
        step("d_l", "Goes down from cold, at most", COARSE, greatest(change, early, 0.0)),
    )
    upper, lower = Out.top(i.preload - up - i.wear), Out.bottom(left_cold - down - sunk)
    low, high = (
        Out.preload_least(up + i.wear + i.least_top),
        Out.preload_most(i.travel - down - sunk - i.least_bottom),
    )
    serves = not past(low, i.preload) and not past(
        i.preload, high
    )  # the pushrod at hand: then no other is named
    aim = step("p_w", "Pressed in cold, wanted", COARSE, i.preload if serves else (low + high) / 2)
    longer = Out.longer(aim - i.preload)
    wanted, shim = Out.pushrod_wanted(i.pushrod + longer), Out.shim(shim_for(greatest(-longer, 0.0), i.ratio))

    def short(x):
        return constant("", "", COARSE, -float(x))

    if low > high:
        cure = say(
            "No pushrod serves: {s} of travel is too little for what moves. Take a unit with more travel, or"
            " a pushrod that grows as the case does.",
            s=i.travel,
        )
    elif float(shim) > 0:
        cure = say(
            "A pushrod of {L} brings it to the middle, or shims of {t} under the rocker stand.",
            L=wanted,
            t=shim,
        )
    else:
        cure = say("A pushrod of {L} brings it to the middle.", L=wanted)
    if not past(i.travel, i.preload):
        verdict = (
            "fail",
            "Stands on its lower stop, cold",
            say(
                "There it holds the valve open, and the valve burns. How much too long the rod is does not"
                " show: measure again with a pushrod of {L}.",
                L=wanted,
            ),
        )
    elif upper <= 0:
        verdict = (
            "fail",
            say("Reaches the upper stop: {x} short", x=short(upper)),
            say("There it takes up no lash and ticks. {cure}", cure=cure),
        )
    elif lower <= 0:
        verdict = (
            "fail",
            say("Reaches the lower stop: {x} short", x=short(lower)),
            say("There it holds the valve open, and the valve burns. {cure}", cure=cure),
        )
    elif past(i.least_top, upper):
        verdict = (
            "attention",
            say("Near the upper stop: {x} left", x=upper),
            say("Measure again. {cure}", cure=cure),
        )
    elif past(i.least_bottom, lower):
        verdict = (
            "attention",
            say("Near the lower stop: {x} left", x=lower),
            say("Measure again. {cure}", cure=cure),
        )
    else:
        verdict = (
            "pass",
            say("Stays off both stops: {a}, {b} left", a=upper, b=lower),
            (
                "The pushrod at hand serves: fit it, and order no other. Measure every valve: seats, tips and"
                " stands differ."
            ),
        )
    return answer(
        upper,
        lower,
        wanted,
        longer,
        shim,
        change,
        running,
        warming,
        left_cold,
        left_running,
        low,
        high,
        verdict=verdict,
        limits=(
            Limit("what is left to the upper stop", upper, low=0.0),
            Limit("what is left to the lower stop", lower, low=0.0),
            Limit("what is left to the upper stop", upper, low=i.least_top, level="attention"),
            Limit("what is left to the lower stop", lower, low=i.least_bottom, level="attention"),
        ),
        remarks=(
            note("Cold it may be pressed in by {a} to {b}.", a=low, b=high) if low <= high else None,
            (
                note(
                    "Running, the plunger comes up by {d}: the case and cylinder grow more than the pushrod.",
                    d=short(change),
                )
                if change < 0
                else note(
                    "Running, the plunger goes down by {d}: the pushrod and valve grow more than what carries"
                    " the rockers.",
                    d=change,
                )
            ),
        ),
        figures=(
            columns(i.travel, i.preload, warming, running),
            warm_up(
                float(i.preload),
                float(i.travel),
                float(REFERENCE),
                float(i.head_temperature),
                float(change),
                float(early),
                running,
            ),
        ),
    )


def columns(travel, cold, warming, running) -> Drawing:
    """The plunger in its travel, three times: cold, warming up, running."""
    S = float(travel)
    wide, gap, thick = 0.55 * S, 1.5 * S, 0.35 * S
    shapes = [Line(((-0.5 * gap, 0), (2.5 * gap, 0))), Line(((-0.5 * gap, -S), (2.5 * gap, -S)))]
    for n, (depth, words) in enumerate(((cold, "cold"), (warming, "warming up"), (running, "running"))):
        x, y = n * gap, -min(max(float(depth), 0.0), S)
        shapes += [
            Area(box(x - wide / 2, y - thick, x + wide / 2, y), "b"),
            Line(((x, y), (x, 0.3 * S)), "centre"),
            Label((x, 0.75 * S), words),
            Label((x, 0.42 * S), say("{d}", d=depth)),
        ]
    shapes.append(Dimension((2.5 * gap, -S), (2.5 * gap, 0), travel, -0.3 * S, "S"))
    return Drawing(
        "Top of the plunger between its stops, upper and lower line",
        say(
            "Pressed in by {a} cold, {b} while warming up and {c} when running.", a=cold, b=warming, c=running
        ),
        tuple(shapes),
    )


def warm_up(preload, travel, cold, hot, change, early, running) -> Plot | None:
    """Depth of the plunger as the head warms up: all together, and with the case still cold. Growth is drawn as a straight line."""
    if abs(hot - cold) < 1:
        return None  # a head that stays cold has nothing to show
    ends = (cold, hot)
    return Plot(
        "Plunger as the engine warms up",
        say("Pressed in by {r} when running; 0 is the upper stop.", r=running),
        Axis("Head", DEGREES_C),
        Axis("Pressed in", COARSE),
        (
            Series("", ((cold, preload), (hot, preload + change))),
            Series("case still cold", ((cold, preload), (hot, preload + early)), "dashed"),
            Series("upper stop", tuple((t, 0.0) for t in ends), "limit"),
            Series("lower stop", tuple((t, travel) for t in ends), "limit"),
        ),
        ((hot, preload + change, "running"),),
    )
