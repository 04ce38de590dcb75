"""What is asked: bore, unit, body and plunger, how the unit is held, and the limits of hone, wall and
clearances."""

from calc.declare.calculator import Inputs, Number, Rows, choice, given, limit, measured
from calc.stations.lifters import BODIES
from calc.stations.shared import honing
from calc.stations.shared.asked import material_of
from calc.stations.shared.forms import COARSE, FINE, SIZE
from calc.stations.shared.own_material import own_values

SLIP, PRESS = "slip", "press"
UNIT = "bearing-steel"


class In(Inputs):
    bore: Number = measured(
        "Body's bore, as it is, largest",
        "D",
        SIZE,
        tool="a small bore gauge set in a ring",
        hard="4 to 60 mm",
        usual="10 to 32 mm",
        of="body_material",
        example="17.480 mm",
    )
    unit_outside: Number = measured(
        "Plunger unit, outside",
        "D_u",
        SIZE,
        tool="a micrometer",
        hard="4 to 60 mm",
        usual="10 to 32 mm",
        feature="lifter.unit_outside",
        of=UNIT,
        stage="finished",
    )
    body: Number = measured(
        "Body, outside, smallest",
        "D_o",
        SIZE,
        tool="a micrometer",
        hard="6 to 80 mm",
        usual="12 to 40 mm",
        feature="lifter.body",
        of="body_material",
    )
    fit_wanted: str = choice(
        "The unit is", {SLIP: "slipped in, held by a snap ring", PRESS: "pressed in"}, default=SLIP
    )
    runout: Number = measured(
        "Runout of the bore",
        "r",
        COARSE,
        tool="a dial gauge in the bore, body turned in a vee block",
        hard="0 to 2 mm",
        usual="0 to 0.1 mm",
        hint="Full reading.",
        example="0.03 mm",
    )
    slip: Number = given(
        "Clearance wanted, slipped in",
        "C_w",
        SIZE,
        hard="0.002 to 0.2 mm",
        usual="0.008 to 0.04 mm",
        feature="lifter.unit_clearance",
        fold=True,
        when=("fit_wanted", SLIP),
    )
    least_slip: Number = limit(
        "Clearance allowed, slipped in, least",
        "C_w,min",
        SIZE,
        feature="lifter.unit_clearance",
        which="low",
        hard="0 to 0.2 mm",
        usual="0.002 to 0.03 mm",
        when=("fit_wanted", SLIP),
    )
    most_slip: Number = limit(
        "Clearance allowed, slipped in, most",
        "C_w,max",
        SIZE,
        feature="lifter.unit_clearance",
        which="high",
        hard="0.002 to 0.3 mm",
        usual="0.01 to 0.06 mm",
        when=("fit_wanted", SLIP),
    )
    grip: Number = given(
        "Interference wanted, pressed in",
        "δ_w",
        SIZE,
        hard="0.001 to 0.1 mm",
        usual="0.002 to 0.02 mm",
        fold=True,
        when=("fit_wanted", PRESS),
        assumed=("0.005 mm", "common practice, no source"),
    )
    tolerance: Number = given(
        "Bore may be off by, either way",
        "b",
        SIZE,
        hard="0.001 to 0.05 mm",
        usual="0.002 to 0.01 mm",
        fold=True,
        when=("fit_wanted", PRESS),
        assumed=("0.005 mm", "what a careful hone holds; common practice, no source"),
    )
    most_hone: Number = given(
        "Hone takes off at most",
        "a_max",
        SIZE,
        hard="0.005 to 0.5 mm",
        usual="0.02 to 0.1 mm",
        fold=True,
        assumed=(honing.MOST, honing.WHY),
    )
    least_hone: Number = given(
        "Left for the hone, at least",
        "a_min",
        SIZE,
        hard="0.002 to 0.2 mm",
        usual="0.01 to 0.05 mm",
        fold=True,
        assumed=(
            honing.LEAST,
            "less does not clean up what the boring tool left; common practice, no source",
        ),
    )
    least_wall: Number = limit(
        "Wall, least",
        "w_min",
        COARSE,
        feature="lifter.wall",
        which="wear",
        hard="0.2 to 10 mm",
        usual="0.8 to 3 mm",
    )
    body_material: str = material_of("Body, material", BODIES, feature="lifter.alloy", example="forged-steel")
    own: Rows = own_values("body", "unit")
    plunger_bore: Number = measured(
        "Plunger's bore in the unit",
        "D_b",
        FINE,
        tool="an air or bore gauge set in a ring",
        hard="2 to 58 mm",
        usual="6 to 30 mm",
        feature="lifter.plunger_bore",
        stage="",
        fold=True,
    )
    plunger: Number = measured(
        "Plunger",
        "D_p",
        FINE,
        tool="a comparator set with gauge blocks",
        hard="2 to 58 mm",
        usual="6 to 30 mm",
        feature="lifter.plunger",
        stage="",
        fold=True,
    )
    least_plunger: Number = limit(
        "Plunger clearance, least",
        "C_p,min",
        FINE,
        feature="lifter.plunger_clearance_pressed",
        which="low",
        hard="0.0005 to 0.05 mm",
        usual="0.002 to 0.015 mm",
    )
    lifter_hole: Number = measured(
        "Lifter bore in the case",
        "D_c",
        SIZE,
        tool="a small bore gauge set in a ring",
        hard="6 to 81 mm",
        usual="12 to 41 mm",
        feature="crankcase.lifter_bore",
        fold=True,
    )
    least_case: Number = given(
        "Clearance in the case, least",
        "C_c,min",
        SIZE,
        hard="0 to 0.2 mm",
        usual="0.01 to 0.05 mm",
        fold=True,
        assumed=("0.020 mm", "room for oil; common practice, no source"),
    )
