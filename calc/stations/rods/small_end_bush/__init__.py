"""Small-end bush: its grip in the rod, how far its bore closes, what it is honed to, and the pin's clearance
cold and running."""

from calc.core.result import note, warning
from calc.core.working import step
from calc.declare.calculator import Answer, answer, calculator
from calc.formulas import press_fit as fit
from calc.reference import cautions, sources
from calc.reference.materials import MATERIALS
from calc.stations.rods.small_end_bush.asked import PIN, ROD, In
from calc.stations.rods.small_end_bush.drawing import section
from calc.stations.rods.small_end_bush.grip import bush_in_rod
from calc.stations.rods.small_end_bush.pin import pin_in_bush, refuse_impossible_bores
from calc.stations.rods.small_end_bush.told import Out
from calc.stations.rods.small_end_bush.verdict import limits_of, verdict_on
from calc.stations.shared.forms import SIZE
from calc.stations.shared.growth import growth, reference_temperature
from calc.stations.shared.own_material import own_grade


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
    """Rod's eye and bush as two thick cylinders (Lamé, plane stress), both at one heat; the steel pin at its
    own.

    Bronze grows more than the rod, so that the bush grips harder when it runs, and what it cannot grow
    outwards closes its bore. Elastic; where one yields, what grip is gone for good is that of an elastic,
    then plastic ring, and pressure and closing are less than shown. A rolled bush with a joint is taken as a
    whole one.
    """
    bush, rod = (own_grade(MATERIALS[id], row) for id, row in zip((i.bush_material, ROD), i.own))
    hone = Out.hone(i.pin + i.wanted_clearance)
    refuse_impossible_bores(i, hone)
    reference = reference_temperature()
    outside = step("D_o", "Outside of the rod's eye at its thinnest", SIZE, i.rod_bore + 2 * i.rod_wall)
    bush_growth = growth(bush, i.rod_temperature, reference, "b", "bush", "rod_temperature")
    rod_growth = growth(rod, i.rod_temperature, reference, "r", "rod", "rod_temperature")
    pin_growth = growth(MATERIALS[PIN], i.pin_temperature, reference, "p", "pin", "pin_temperature")
    grip = bush_in_rod(i, bush, rod, outside, bush_growth, rod_growth)
    pin = pin_in_bush(i, hone, grip, bush_growth, pin_growth)
    return answer(
        hone,
        pin.clearance,
        pin.running,
        grip.interference,
        grip.hot.interference,
        grip.lost,
        grip.left,
        grip.pressure,
        pin.closing,
        pin.pressed,
        pin.to_hone,
        pin.wall,
        grip.used[0],
        grip.used[1],
        Out.force(fit.holding_force(grip.pressure, i.friction, i.rod_bore, i.length), sources.FRICTION_HOLD),
        *grip.serving,
        verdict=verdict_on(i, grip, pin),
        limits=limits_of(i, grip, pin),
        remarks=(
            None
            if i.honed is not None
            else note("The bore closes by {c}: hone after pressing, never before.", c=pin.closing),
            note(
                "A bush with a rolled joint presses less than a whole one: press it in, and trust only the"
                " bore that you measure afterwards."
            ),
            warning(
                "Past yield the real pressure is less than shown, and part of the interference is gone for"
                " good."
            )
            if grip.gives
            else None,
        ),
        figures=lambda: (section(i.rod_bore, i.bush_outside, pin.bore, i.pin, outside, pin.wall),),
    )
