"""What is asked of a snap ring and its groove."""

from calc.core.kinds import RATIO
from calc.core.working import Number, form
from calc.declare.calculator import Inputs, choice, given, limit, measured
from calc.reference.materials import MATERIALS
from calc.stations.lifters import BODIES
from calc.stations.shared.forms import COARSE, MPA, NEWTON, SIZE

TENTHS = form(RATIO, 1)


class In(Inputs):
    groove: Number = measured(
        "Groove, across its bottom",
        "D_g",
        COARSE,
        tool="a groove calliper",
        hard="4 to 80 mm",
        usual="10 to 36 mm",
        feature="lifter.groove",
        stage="finished",
    )
    bore: Number = measured(
        "Bore",
        "D",
        SIZE,
        tool="a small bore gauge",
        hard="4 to 80 mm",
        usual="10 to 32 mm",
        feature="lifter.unit_hole",
        stage="finished",
    )
    width: Number = measured(
        "Groove, width",
        "m",
        COARSE,
        tool="gauge blocks",
        hard="0.2 to 6 mm",
        usual="0.7 to 2.5 mm",
        feature="lifter.groove_width",
        stage="finished",
    )
    ring: Number = measured(
        "Ring, thickness",
        "s",
        COARSE,
        tool="a micrometer",
        hard="0.2 to 6 mm",
        usual="0.6 to 2.5 mm",
        feature="lifter.ring",
        stage="finished",
    )
    lip: Number = measured(
        "Lip outside the groove",
        "n",
        COARSE,
        tool="a depth gauge",
        hard="0.1 to 20 mm",
        usual="1 to 8 mm",
        feature="lifter.lip",
        stage="finished",
    )
    load: Number = given(
        "Load on the ring",
        "F",
        NEWTON,
        hard="1 to 20000 N",
        usual="50 to 3000 N",
        feature="lifter.ring_load",
        hint="Seat load of the valve spring times the rocker's ratio is on the safe side.",
        fold=True,
    )
    impact: Number = given(
        "Blows count as",
        "k",
        TENTHS,
        hard="1 to 20",
        usual="2 to 6",
        fold=True,
        assumed=("3.0", "common practice, no source"),
        hint="Times the load, for a valve train that floats.",
    )
    breadth: Number = measured(
        "Ring, breadth",
        "e",
        COARSE,
        tool="a calliper, from its outside to its inside",
        hard="0.2 to 10 mm",
        usual="0.8 to 4 mm",
        feature="lifter.ring_breadth",
        fold=True,
    )
    body: Number = measured(
        "Body, outside",
        "D_o",
        SIZE,
        tool="a micrometer",
        hard="5 to 100 mm",
        usual="12 to 40 mm",
        feature="lifter.body",
        fold=True,
    )
    body_material: str = choice(
        "Body, material",
        {id: MATERIALS[id].name for id in BODIES},
        feature="lifter.alloy",
        fold=True,
        example="forged-steel",
    )
    ring_shear: Number = given(
        "Shear strength of the ring",
        "τ_r",
        MPA,
        hard="100 to 2000 MPa",
        usual="600 to 1100 MPa",
        fold=True,
        assumed=("900 MPa", "hard spring steel, from memory"),
    )
    ring_safety: Number = given(
        "Safety of the ring",
        "S_r",
        TENTHS,
        hard="1 to 10",
        usual="2 to 4",
        fold=True,
        assumed=("3.0", "common practice, no source"),
    )
    groove_safety: Number = given(
        "Safety of groove and lip",
        "S_g",
        TENTHS,
        hard="1 to 10",
        usual="1.5 to 4",
        fold=True,
        assumed=("2.0", "common practice, no source"),
    )
    least_depth: Number = given(
        "Groove depth, least",
        "t_min",
        COARSE,
        hard="0.05 to 5 mm",
        usual="0.3 to 1.5 mm",
        fold=True,
        assumed=("0.50 mm", "a third of the ring's breadth; common practice, no source"),
    )
    least_wall: Number = limit(
        "Wall behind the groove, least",
        "w_min",
        COARSE,
        feature="lifter.groove_wall",
        which="wear",
        hard="0.1 to 10 mm",
        usual="0.6 to 3 mm",
    )
    least_overhang: Number = given(
        "Ring must stand out by, at least",
        "o_min",
        COARSE,
        hard="0.05 to 5 mm",
        usual="0.3 to 2 mm",
        fold=True,
        assumed=("0.60 mm", "common practice, no source"),
        hint="More than the chamfer of the part that it holds.",
    )
    least_play: Number = given(
        "Play of the ring, least",
        "c_min",
        COARSE,
        hard="0 to 0.5 mm",
        usual="0.02 to 0.1 mm",
        fold=True,
        assumed=("0.04 mm", "common practice, no source"),
    )
    most_play: Number = given(
        "Play of the ring, most",
        "c_max",
        COARSE,
        hard="0.01 to 2 mm",
        usual="0.1 to 0.4 mm",
        fold=True,
        assumed=("0.20 mm", "common practice, no source"),
    )
