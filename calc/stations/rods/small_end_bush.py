"""Small-end bush: its grip in the rod, how far its bore closes, what it is honed to, and the pin's clearance cold and running."""

import math

from calc.core.advice import at_least, at_most
from calc.core.conformance import past
from calc.core.drawing import Area, Dimension, Drawing, Line, arc
from calc.core.kinds import FORCE, LENGTH, RATIO, ROUGHNESS, STRESS, TEMPERATURE
from calc.core.result import impossible, note, say, warning
from calc.core.working import constant, form, greatest, least, step
from calc.declare.calculator import (
    Answer,
    Inputs,
    Limit,
    Number,
    Output,
    Outputs,
    Rows,
    answer,
    calculator,
    choice,
    given,
    limit,
    measured,
)
from calc.formulas import press_fit as fit
from calc.reference import cautions, sources
from calc.reference.materials import MATERIALS, REFERENCE
from calc.stations.shared.growth import growth, reference_temperature
from calc.stations.shared.honing import bored_first, plan
from calc.stations.shared.own_material import own_grade, own_values
from calc.stations.shared.ring_in_wall import (
    Joint,
    Part,
    at_heat,
    bearing_interference,
    bore_moved,
    compliance,
    poissons_ratio,
    stiffness,
    window,
)
from calc.stations.shared.yielding import lost_and_room

SIZE, FINE, SMALL, TEMP, MPA, SHARE, TIMES = (
    form(LENGTH, 3),
    form(LENGTH, 4),
    form(LENGTH, 1),
    form(TEMPERATURE, 0),
    form(STRESS, 1),
    form(RATIO, 0, "%", "%"),
    form(RATIO, 2),
)
BUSHES, ROD, PIN = ("bronze", "aluminium-bronze", "copper-nickel-silicon"), "forged-steel", "bearing-steel"


class Out(Outputs):
    hone = Output("Hone the bush to", "D_H", SIZE, main=True)
    clearance = Output("Pin clearance, cold", "c", SIZE, main=True)
    clearance_hot = Output("Pin clearance, running", "c_hot", SIZE, main=True)
    interference = Output("Interference of the bush", "δ", SIZE)
    interference_hot = Output("Interference left, running", "δ_hot", SIZE)
    grip_lost = Output("Interference gone for good once it has run", "δ_lost", FINE)
    grip_left = Output("Interference left after that, least", "δ_left", SIZE)
    pressure = Output("Contact pressure, cold", "p", MPA)
    closing = Output("Bore closes when pressed in by", "ΔD", SIZE)
    bore_pressed = Output("Bore once pressed in", "D_1", SIZE)
    to_hone = Output("To hone off, on the diameter", "a", SIZE)
    wall = Output("Wall of the bush once honed", "t", SIZE)
    bush_used = Output("Bush: share of its yield used", "U_b", SHARE)
    rod_used = Output("Rod: share of its yield used", "U_r", SHARE)
    force = Output("Force that presses the bush in", "F", form(FORCE, 0))
    bush_wanted = Output("Bush outside that holds in this rod, least", "D_want", SIZE)
    bush_most = Output("Bush outside that this rod bears, most", "D_most", SIZE)


class In(Inputs):
    pin: Number = measured(
        "Piston pin, largest",
        "d",
        SIZE,
        tool="a micrometer, where it runs in the bush",
        hard="8 to 60 mm",
        usual="14 to 40 mm",
        feature="piston.pin",
        of=PIN,
    )
    bush_outside: Number = measured(
        "Bush outside",
        "D_b",
        SIZE,
        tool="a micrometer",
        hard="9 to 80 mm",
        usual="16 to 50 mm",
        feature="rod.bush_outside",
        of="bush_material",
        stage="finished",
    )
    rod_bore: Number = measured(
        "Small-end bore without bush",
        "D_s",
        SIZE,
        tool="a bore gauge set in a ring",
        hard="9 to 80 mm",
        usual="16 to 50 mm",
        feature="rod.small_end_bore",
        of=ROD,
        stage="finished",
    )
    supplied_bore: Number = measured(
        "Bore of the bush, as it comes",
        "D_0",
        SIZE,
        tool="a small bore gauge",
        hard="6 to 60 mm",
        usual="13 to 40 mm",
        feature="rod.bush_supplied_bore",
        stage="",
        hint="A rolled bush: measure it in a ring.",
    )
    honed: Number | None = measured(
        "Bore as honed, smallest",
        "D_read",
        SIZE,
        tool="a bore gauge set in a ring",
        hard="6 to 60 mm",
        usual="13 to 40 mm",
        hint="Empty until it is honed; then the clearances are of this reading.",
    )
    wanted_clearance: Number = given(
        "Pin clearance wanted",
        "c_w",
        SIZE,
        hard="0.001 to 0.2 mm",
        usual="0.005 to 0.03 mm",
        feature="rod.pin_clearance",
    )
    rod_wall: Number = measured(
        "Least wall of the rod's eye",
        "w",
        SMALL,
        tool="a calliper, at the thinnest place",
        hard="1 to 30 mm",
        usual="2.5 to 10 mm",
        feature="rod.small_end_wall",
        stage="",
        fold=True,
    )
    length: Number = measured(
        "Length of the fit",
        "b",
        SMALL,
        tool="a calliper",
        hard="5 to 80 mm",
        usual="15 to 40 mm",
        feature="rod.small_end_length",
        fold=True,
    )
    least_cold: Number = limit(
        "Pin clearance of a fresh bush, least",
        "c_cold",
        SIZE,
        feature="rod.pin_clearance",
        which="low",
        hard="0 to 0.1 mm",
        usual="0.003 to 0.02 mm",
    )
    most_clearance: Number = limit(
        "Pin clearance of a fresh bush, most",
        "c_max",
        SIZE,
        feature="rod.pin_clearance",
        which="high",
        hard="0.005 to 0.3 mm",
        usual="0.01 to 0.06 mm",
    )
    least_clearance: Number = given(
        "Pin clearance running, least",
        "c_min",
        SIZE,
        hard="0 to 0.1 mm",
        usual="0.003 to 0.02 mm",
        fold=True,
        assumed=("0.005 mm", "room for oil; common practice, no source"),
    )
    least_wall: Number = given(
        "Wall of the bush, least",
        "t_min",
        SIZE,
        hard="0.2 to 10 mm",
        usual="0.8 to 3 mm",
        fold=True,
        assumed=("1.0 mm", "common practice, no source"),
    )
    least_grip: Number = given(
        "Interference wanted, least",
        "δ_min",
        SIZE,
        hard="0 to 0.2 mm",
        usual="0.003 to 0.05 mm",
        fold=True,
        hint="Roughness pressed flat.",
        assumed=("0.010 mm", "common practice, no source"),
    )
    bush_material: str = choice(
        "Bush, material",
        {id: MATERIALS[id].name for id in BUSHES},
        feature="rod.bush_alloy",
        fold=True,
        example="bronze",
    )
    own: Rows = own_values("bush", "rod")
    rod_temperature: Number = given(
        "Rod's eye and bush, running",
        "T_r",
        TEMP,
        hard="-60 to 300 °C",
        usual="60 to 200 °C",
        feature="rod.small_end_running_temperature",
        fold=True,
        assumed="common practice, no source",
    )
    pin_temperature: Number = given(
        "Pin temperature, running",
        "T_p",
        TEMP,
        hard="-60 to 150 °C",
        usual="60 to 150 °C",
        feature="piston.pin_running_temperature",
        fold=True,
        assumed="common practice, no source",
    )
    bush_roughness: Number = given(
        "Roughness of the bush, Rz",
        "Rz_b",
        form(ROUGHNESS, 1),
        hard="0 to 40 µm",
        usual="0 to 16 µm",
        fold=True,
        assumed=("4 µm", "turned fine; common practice, no source"),
    )
    bore_roughness: Number = given(
        "Roughness of the rod's bore, Rz",
        "Rz_s",
        form(ROUGHNESS, 1),
        hard="0 to 40 µm",
        usual="0 to 16 µm",
        fold=True,
        assumed=("4 µm", "bored fine; common practice, no source"),
    )
    friction: Number = given(
        "Friction of bush in rod",
        "µ",
        TIMES,
        hard="0.02 to 0.6",
        usual="0.06 to 0.25",
        fold=True,
        hint="Oiled about 0.1.",
        assumed=("0.12", "common practice, no source"),
    )


@calculator(
    "small-end-bush",
    "Small-end bush and pin",
    In,
    Out,
    purpose=(
        "Does this bush hold in the rod, what must it be honed to for this pin, and is the pin free, cold and"
        " running?"
    ),
    finds=(
        "wrist pin bush",
        "gudgeon pin bush",
        "small end bush",
        "piston pin clearance",
        "pin bushing",
        "bush interference",
        "hone the small end",
        "loose bush",
        "tight pin",
    ),
    sources=(
        sources.LAME,
        sources.MISES,
        sources.THERMAL,
        sources.PIN_CLEARANCE,
        sources.MATERIALS,
        sources.PRACTICE,
        sources.INVENTED,
    ),
    cautions=(cautions.PRESS_TRAPPED, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def small_end_bush(i: In) -> Answer:
    """Rod's eye and bush as two thick cylinders (Lamé, plane stress), both at one heat; the steel pin at its own.

    Bronze grows more than the rod, so that the bush grips harder when it runs, and what it cannot grow outwards closes its bore.
    Elastic; where one yields, what grip is gone for good is that of an elastic, then plastic ring, and pressure and closing are less than
    shown. A rolled bush with a joint is taken as a whole one.
    """
    if i.honed is None and i.wanted_clearance > i.most_clearance:
        raise impossible(
            "wanted_clearance",
            "is {w}, more than a fresh bush may have, {m}; give less",
            w=i.wanted_clearance,
            m=i.most_clearance,
        )
    bush, rod = (own_grade(MATERIALS[id], row) for id, row in zip((i.bush_material, ROD), i.own))
    steel = MATERIALS[PIN]
    final = Out.hone(i.pin + i.wanted_clearance)
    for size, name, words in (
        (i.supplied_bore, "supplied_bore", "is"),
        (i.honed, "honed", "is"),
        (final, "pin", "needs a bore of"),
    ):
        for other, of in ((i.bush_outside, "the bush's outside"), (i.rod_bore, "the rod's bore")):
            if size is not None and size >= other:
                raise impossible(
                    name, words + " {s}, not smaller than " + of + ", {o}; give less", s=size, o=other
                )
    bore = final if i.honed is None else i.honed
    reference = reference_temperature()
    outside = step("D_o", "Outside of the rod's eye at its thinnest", SIZE, i.rod_bore + 2 * i.rod_wall)
    bush_growth = growth(bush, i.rod_temperature, reference, "b", "bush", "rod_temperature")
    rod_growth = growth(rod, i.rod_temperature, reference, "r", "rod", "rod_temperature")
    pin_growth = growth(steel, i.pin_temperature, reference, "p", "pin", "pin_temperature")

    # pressed in as it comes: the thinner the bush is honed, the less it presses, so this is the harder case
    shapes = (
        step("s_b", "Shape of the bush", TIMES, fit.inner_shape(i.supplied_bore, i.rod_bore), sources.LAME),
        step("s_r", "Shape of the rod's eye", TIMES, fit.outer_shape(i.rod_bore, outside), sources.LAME),
    )
    joint = Joint(
        Part(bush, "b", "bush"), Part(rod, "r", "rod"), i.supplied_bore, i.rod_bore, outside, shapes
    )
    parts = joint.ring, joint.wall
    ratios = poissons_ratio(parts[0]), poissons_ratio(parts[1])
    cold_moduli = stiffness(parts[0]), stiffness(parts[1])
    hot_moduli = tuple(stiffness(part, i.rod_temperature, ",hot", ", running") for part in parts)
    cold_give = compliance(shapes, cold_moduli, ratios)
    hot_give = compliance(shapes, hot_moduli, ratios)
    grip = Out.interference(i.bush_outside - i.rod_bore)
    loss, bearing = bearing_interference(grip, i.bush_roughness, i.bore_roughness)
    warm = Out.interference_hot(
        fit.interference_at(bearing, i.rod_bore, bush_growth, rod_growth), sources.THERMAL
    )
    pressure = Out.pressure(fit.contact_pressure(bearing, i.rod_bore, cold_give), sources.LAME)
    pressure_hot = step(
        "p_hot",
        "Contact pressure, running",
        MPA,
        fit.contact_pressure(warm, i.rod_bore, hot_give),
        sources.LAME,
    )

    at = i.rod_temperature, i.rod_temperature
    cold = at_heat(joint, "cold", "cold", (REFERENCE, REFERENCE), bearing, cold_give, cold_moduli)
    hot = at_heat(joint, "hot", "hot", at, warm, hot_give, hot_moduli)
    bush_used, rod_used = (
        out(greatest(pressure / cold.begins[n], pressure_hot / hot.begins[n]), sources.MISES)
        for n, out in enumerate((Out.bush_used, Out.rod_used))
    )
    bush_wanted, bush_most = window(joint, loss, i.least_grip, cold, hot, Out.bush_wanted, Out.bush_most)
    gone, room = lost_and_room(joint, cold, hot)
    lost = Out.grip_lost(gone)
    left = Out.grip_left(least(bearing, warm) - lost)

    closing = Out.closing(
        -fit.inner_bore_change(pressure, i.supplied_bore, i.rod_bore, cold_moduli[0]), sources.LAME
    )
    pressed = Out.bore_pressed(i.supplied_bore - closing)
    stock = final - pressed
    to_hone = Out.to_hone(greatest(stock, 0.0))
    wall = Out.wall((i.rod_bore - bore) / 2)
    clearance = Out.clearance(bore - i.pin)
    # once honed it is a thinner bush: its bore moves with the change of grip as that one's does
    thin = step("s_b,h", "Shape of the bush, honed", TIMES, fit.inner_shape(bore, i.rod_bore), sources.LAME)
    moved = [
        bore_moved(
            f"u{tag}",
            f"Bore of the honed bush moved by its grip{words}",
            joint._replace(bore=bore),
            heat.interference,
            compliance((thin, shapes[1]), heat.moduli, ratios),
            heat.moduli[0],
        )
        for tag, words, heat in (("_c", "", cold), ("_h", ", running", hot))
    ]
    running = Out.clearance_hot(
        bore * (1 + bush_growth) + (moved[1] - moved[0]) - i.pin * (1 + pin_growth), sources.PIN_CLEARANCE
    )

    _, when = min((bearing, "cold"), (warm, "when running"), key=lambda pair: float(pair[0]))
    part, share = ("Rod", rod_used) if rod_used > bush_used else ("Bush", bush_used)
    gives = share > 1
    small, large = math.ceil(float(bush_wanted) * 1e6) / 1e6, math.floor(float(bush_most) * 1e6) / 1e6
    other = (
        say(
            "For this rod take a bush of {w} to {m}.",
            w=at_least(bush_wanted, SIZE),
            m=at_most(bush_most, SIZE),
        )
        if small <= large
        else say(
            "No bush of this alloy serves this rod: what holds already overloads it. Look for a stronger one,"
            " or a thicker wall."
        )
    )
    do_not = say("Do not fit this bush. {other}", other=other)
    done = i.honed is not None
    tight = (
        (clearance, i.least_cold, "cold")
        if past(i.least_cold, clearance)
        else (running, i.least_clearance, "when running")
    )
    binds = min((clearance, "cold"), (running, "when running"), key=lambda pair: float(pair[0]))
    bored = not done and bored_first(to_hone)
    if grip <= 0:
        verdict = (
            "fail",
            say("Falls out: bush {d} under the bore", d=constant("", "", SIZE, -float(grip))),
            do_not,
        )
    elif left <= 0 and not gives:
        verdict = ("fail", say("Comes loose: {d} left " + when, d=left), do_not)
    elif room < 0:
        verdict = (
            "fail",
            say(part + " gives way: {d} too much", d=constant("", "", SIZE, -float(room))),
            do_not,
        )
    elif past(i.least_grip, left):
        verdict = (
            "fail",
            say("Little grip: {d} left " + when, d=left),
            say("Measure both again. If it stays, do not fit this bush. {other}", other=other),
        )
    elif past(i.least_wall, wall):
        verdict = (
            "fail",
            say("Bush too thin: {t} of wall", t=wall),
            (
                "The rod's eye was bored too small for this pin, or the pin is too large. Bore the eye for a"
                " thicker bush if its own wall allows."
            ),
        )
    elif binds[0] <= 0:
        verdict = (
            "fail",
            say("Pin seizes: {c} left " + binds[1], c=binds[0]),
            (
                "Hone larger. If the bore was not meant to be so small, look at the pin: is it the right one,"
                " and round?"
            ),
        )
    elif done and past(clearance, i.most_clearance):
        verdict = (
            "fail",
            say("Pin too loose: {c}, {m} allowed", c=clearance, m=i.most_clearance),
            "Try the largest pin of the set. If that is loose too, press a new bush in and hone again.",
        )
    elif gives:
        verdict = (
            "attention",
            say(part + " yields a little: {d} lost", d=lost),
            say(
                "{left} of grip are left for good, and it holds. Measure both again. {other}",
                left=left,
                other=other,
            ),
        )
    elif past(tight[1], tight[0]):
        verdict = (
            "attention",
            say("Pin tight " + tight[2] + ": {c} left", c=tight[0]),
            say("{least} are wanted. Hone larger by what is missing.", least=tight[1]),
        )
    elif not done and stock <= 0:
        verdict = (
            "attention",
            say("Nothing to hone: bore already {d} larger", d=constant("", "", SIZE, -float(stock))),
            "Take a bush that comes with a smaller bore, or measure this one again once it is in.",
        )
    elif done:
        verdict = (
            "pass",
            say("Pin free: {c} cold, {h} when running", c=clearance, h=running),
            "Wash bush and oil hole, oil the pin, push it through by hand. Tag pin and rod together.",
        )
    else:
        verdict = (
            "pass",
            say("Press it in, bore, then hone to {D}" if bored else "Press it in, then hone to {D}", D=final),
            (
                say(
                    "Press it in with its oil hole over the rod's. Only then measure: {a} are to come off."
                    " {how} Measure each pin first.",
                    a=to_hone,
                    how=plan(final, SIZE),
                )
                if bored
                else say(
                    "Press it in with its oil hole over the rod's. Only then measure, and hone out {a};"
                    " measure each pin first.",
                    a=to_hone,
                )
            ),
        )
    return answer(
        final,
        clearance,
        running,
        grip,
        warm,
        lost,
        left,
        pressure,
        closing,
        pressed,
        to_hone,
        wall,
        bush_used,
        rod_used,
        Out.force(fit.holding_force(pressure, i.friction, i.rod_bore, i.length), sources.FRICTION_HOLD),
        bush_wanted,
        bush_most,
        verdict=verdict,
        limits=(
            Limit("the grip left", left, low=i.least_grip),
            Limit("what bush and rod bear", room, low=0),
            Limit("the pin's freedom", binds[0], low=0),
            Limit("the wall of the bush", wall, low=i.least_wall),
            *(
                (Limit("the pin clearance", clearance, high=i.most_clearance),)
                if done
                else (Limit("what is left to hone", stock, low=0, level="attention"),)
            ),
            Limit("the bush's stress", bush_used, high=1, level="attention"),
            Limit("the rod's stress", rod_used, high=1, level="attention"),
            Limit("the pin's clearance cold", clearance, low=i.least_cold, level="attention"),
            Limit("the pin's clearance running", running, low=i.least_clearance, level="attention"),
        ),
        remarks=(
            (
                note("The bore closes by {c}: hone after pressing, never before.", c=closing)
                if not done
                else None
            ),
            note(
                "A bush with a rolled joint presses less than a whole one: press it in, and trust only the"
                " bore that you measure afterwards."
            ),
            (
                warning(
                    "Past yield the real pressure is less than shown, and part of the interference is gone"
                    " for good."
                )
                if gives
                else None
            ),
        ),
        figures=(section(i.rod_bore, i.bush_outside, bore, i.pin, outside, wall),),
    )


def section(rod_bore, bush_outside, bore, pin, outside, wall) -> Drawing:
    """Small end seen along the pin."""
    joint, inside, eye = float(rod_bore) / 2, float(bore) / 2, float(outside) / 2
    radius = min(float(pin), float(bore)) / 2
    shank = 0.45 * eye

    def disc(r, hatch):
        return Area(arc((0, 0), r, 0, 2 * math.pi), hatch)

    return Drawing(
        "Bush in the small end",
        say(
            "Small end seen along the pin: rod bore {s}, bush outside {b}, bore of the bush {D}, pin {d},"
            " wall of the bush {t}.",
            s=rod_bore,
            b=bush_outside,
            D=bore,
            d=pin,
            t=wall,
        ),
        (
            disc(eye, "a"),
            disc(joint, "b"),
            disc(inside, ""),
            disc(radius, ""),
            *(Line(((side * shank, -0.9 * eye), (side * 0.9 * shank, -1.5 * eye))) for side in (-1, 1)),
            Line(((-1.2 * eye, 0), (1.2 * eye, 0)), "centre"),
            Line(((0, -1.6 * eye), (0, 1.15 * eye)), "centre"),
            Dimension((-inside, 0), (inside, 0), bore, 1.2 * eye, "D_H"),
            Dimension((-joint, 0), (joint, 0), rod_bore, 1.5 * eye, "D_s"),
            Dimension((-radius, 0), (radius, 0), pin, -1.75 * eye, "d"),
        ),
    )
