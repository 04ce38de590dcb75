"""What is asked: the new cylinders' registers, the holes, the studs round them, alloys, heat, and limits."""

from typing import Any

from calc.core.result import impossible
from calc.declare.calculator import Inputs, Number, Rows, choice, given, limit, measured
from calc.stations.shared.asked import material_of
from calc.stations.shared.forms import COARSE, DEGREES_C, ROUGH, SIZE
from calc.stations.shared.own_material import own_values

SQUARE, CIRCLE = "square", "circle"
CASES = ("mg-az91", "al-si-t6", "al-si-cu-t6")
FEET = ("grey-iron", "forged-steel", "al-si-t6", "al-si-cu-t6")
APART = 1e-3  # m: readings of one set further apart are not of one set


def _bore(words: str, symbol: str, hint: str = "") -> Any:
    return measured(
        words,
        symbol,
        SIZE,
        tool="a bore gauge set in a ring, case bolted up",
        hard="40 to 180 mm",
        usual="70 to 130 mm",
        hint=hint,
    )


def _register(words: str, symbol: str, example: str, hint: str = "") -> Any:
    return measured(
        words,
        symbol,
        SIZE,
        tool="a micrometer, in two directions",
        hard="40 to 180 mm",
        usual="70 to 130 mm",
        of="foot_material",
        example=example,
        hint=hint,
    )


def _studs(words: str, symbol: str, which: str) -> Any:
    return measured(
        words,
        symbol,
        COARSE,
        tool="a calliper over two studs, less one stud",
        hard="40 to 250 mm",
        usual="60 to 140 mm",
        feature=f"crankcase.stud_{which}",
        when=("pattern", SQUARE),
        hint="Centre to centre, of two neighbours.",
    )


class In(Inputs):
    register_small: Number = _register(
        "New cylinders' register, smallest",
        "d_s",
        "97.962 mm",
        "Of the whole set, where it goes into the case.",
    )
    register_large: Number = _register("New cylinders' register, largest", "d_l", "97.985 mm")
    old_bore: Number = measured(
        "Hole in the case, as it is, smallest",
        "D_0",
        SIZE,
        tool="a bore gauge, case bolted up",
        hard="40 to 180 mm",
        usual="70 to 130 mm",
        feature="crankcase.spigot_bore",
        stage="",
        fold=True,
    )
    bored_small: Number | None = _bore(
        "Hole once bored, smallest",
        "D_s",
        "Empty until a hole is bored; then clearances are of these readings.",
    )
    bored_large: Number | None = _bore("Hole once bored, largest", "D_l")
    pattern: str = choice(
        "Studs stand",
        {SQUARE: "in a square or oblong", CIRCLE: "on a circle, its diameter known"},
        default=SQUARE,
    )
    stud_along: Number = _studs("Studs apart, along the crank", "a", "along")
    stud_up: Number = _studs("Studs apart, up and down", "b", "up")
    stud_circle: Number = measured(
        "Circle of the studs, diameter",
        "C",
        COARSE,
        tool="a calliper over two opposite studs, less one stud",
        hard="50 to 300 mm",
        usual="90 to 180 mm",
        when=("pattern", CIRCLE),
        hint="Across the whole circle, not from its middle.",
        example="124.45 mm",
    )
    stud_hole: Number = measured(
        "Stud hole, widest",
        "d_h",
        COARSE,
        tool="a calliper, stud out",
        hard="4 to 30 mm",
        usual="8 to 18 mm",
        feature="crankcase.stud_hole",
        hint="With an insert: the hole that was tapped for it. A thread reaches farther than its drill.",
    )
    spacing: Number = measured(
        "Cylinders of one side, centres apart",
        "e",
        ROUGH,
        tool="a calliper over both holes",
        hard="60 to 300 mm",
        usual="90 to 160 mm",
        feature="crankcase.cylinder_spacing",
        fold=True,
    )
    wall_good: Number = limit(
        "Wall to a stud hole, good",
        "w_g",
        COARSE,
        feature="crankcase.spigot_wall",
        which="low",
        hard="1 to 20 mm",
        usual="3 to 8 mm",
    )
    wall_least: Number = limit(
        "Wall to a stud hole, least",
        "w_min",
        COARSE,
        feature="crankcase.spigot_wall",
        which="wear",
        hard="0.5 to 20 mm",
        usual="2 to 6 mm",
    )
    land_least: Number | None = limit(
        "Case between two holes, least",
        "l_min",
        ROUGH,
        feature="crankcase.land",
        which="wear",
        hard="1 to 60 mm",
        usual="5 to 30 mm",
    )
    clearance_low: Number = limit(
        "Clearance of a register, least",
        "c_a",
        SIZE,
        feature="cylinder.register_clearance",
        which="low",
        hard="0 to 1 mm",
        usual="0.01 to 0.2 mm",
    )
    clearance_high: Number = limit(
        "Clearance of a register, most",
        "c_b",
        SIZE,
        feature="cylinder.register_clearance",
        which="high",
        hard="0.005 to 1.5 mm",
        usual="0.05 to 0.3 mm",
    )
    case_material: str = material_of("Case, alloy", CASES, feature="crankcase.alloy", example="mg-az91")
    foot_material: str = material_of(
        "Cylinder, material", FEET, feature="cylinder.alloy", example="grey-iron"
    )
    own: Rows = own_values("case", "cylinder")
    case_temperature: Number = given(
        "Case at the hole, running",
        "T_c",
        DEGREES_C,
        hard="-60 to 200 °C",
        usual="60 to 130 °C",
        feature="crankcase.running_temperature",
        fold=True,
        assumed="common practice, no source",
    )
    foot_temperature: Number = given(
        "Cylinder's foot, running",
        "T_f",
        DEGREES_C,
        hard="-60 to 250 °C",
        usual="70 to 160 °C",
        feature="cylinder.foot_running_temperature",
        fold=True,
        hint="It runs hotter than the case round it.",
        assumed="common practice, no source",
    )
    case_warming: Number = given(
        "Case at the hole, while the cylinders are first hot",
        "T_w",
        DEGREES_C,
        hard="-60 to 200 °C",
        usual="20 to 80 °C",
        fold=True,
        hint="Cylinders are hot in a minute or two, a case takes a quarter of an hour.",
        assumed=("40 °C", "common practice, no source"),
    )


def refuse_what_does_not_go_together(i: In) -> None:
    for small, large, words in (
        ("register_small", "register_large", "register"),
        ("bored_small", "bored_large", "hole"),
    ):
        a, b = getattr(i, small), getattr(i, large)
        if (a is None) != (b is None):
            raise impossible(
                small if a is None else large,
                "is empty, and the other end of the " + words + "s was read; give both, or leave both empty",
            )
        if a is not None and (a > b or float(b - a) > APART):
            raise impossible(large, "is {b}, and the smallest {a}; give {a} to a millimetre more", a=a, b=b)
    if i.clearance_low >= i.clearance_high:
        raise impossible(
            "clearance_low",
            "is {a}, not below the most, {b}; give less",
            a=i.clearance_low,
            b=i.clearance_high,
        )
    if i.wall_good < i.wall_least:
        raise impossible(
            "wall_good",
            "is {a}, less than the least wall, {b}; give {b} or more",
            a=i.wall_good,
            b=i.wall_least,
        )
