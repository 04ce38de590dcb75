"""Where the plunger of a hydraulic lifter stands, cold, while it warms up and running, and the pushrod that keeps it off both stops."""

from calc.core.conformance import past
from calc.core.result import impossible, note, say
from calc.core.working import constant, greatest, step
from calc.declare.calculator import Answer, Limit, answer, calculator
from calc.formulas.press_fit import free_strain
from calc.reference import cautions, sources
from calc.reference.materials import MATERIALS, REFERENCE
from calc.stations.lifters.plunger_travel.asked import In
from calc.stations.lifters.plunger_travel.chain import pressed_in, shim_for
from calc.stations.lifters.plunger_travel.drawing import columns, warm_up
from calc.stations.lifters.plunger_travel.told import Out
from calc.stations.shared.forms import COARSE, STRAIN
from calc.stations.shared.growth import growth, reference_temperature


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
