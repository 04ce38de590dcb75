"""What is asked of a part that was read on a balancing machine or on ways, and where metal may come off."""

import math

from calc.core.result import impossible
from calc.declare.calculator import Inputs, Number, choice, given, measured
from calc.stations.flywheel.grade import MOMENT, grade_limit, rotor_mass, top_speed
from calc.stations.shared.asked import material_of
from calc.stations.shared.forms import COARSE, DEGREES, ROUGH

HEAVY, LIGHT = "heavy", "light"
WHOLE, SHARE = "whole", "share"
RIM, FACE = "rim", "face"
IRONS = ("grey-iron", "ductile-iron", "forged-steel")
LEAST_APART = math.radians(5)  # two holes that stand closer are one hole
AROUND = "-360 to 360°"


class In(Inputs):
    mass: Number = rotor_mass("Part, with all that turns with it on the machine", "8.60 kg")
    reading: Number = measured(
        "Unbalance read",
        "U_1",
        MOMENT,
        tool="a balancing machine, or ways and putty",
        hard="0 to 20000 g·mm",
        usual="0 to 3000 g·mm",
        hint="Mass times the radius at which it acts: 3 g of putty at 120 mm are 360 g·mm.",
        example="124 g·mm",
    )
    at: Number = measured(
        "At the angle",
        "φ_1",
        DEGREES,
        tool="the machine's scale",
        hard=AROUND,
        hint="From a mark on the part, always in the same sense.",
        example="40°",
    )
    shows: str = choice(
        "What stands there",
        {HEAVY: "the heavy spot: metal comes off", LIGHT: "the light spot: where a mass is missing"},
        default=HEAVY,
    )
    turned: Number | None = measured(
        "Part turned by 180° on its arbor: unbalance",
        "U_2",
        MOMENT,
        tool="the same machine",
        hard="0 to 20000 g·mm",
        usual="0 to 3000 g·mm",
        hint="The arbor stays in the machine as it is. This tells the part's own from the arbor's.",
        example="66 g·mm",
    )
    turned_at: Number | None = measured(
        "Turned: at the angle",
        "φ_2",
        DEGREES,
        tool="the machine's scale",
        hard=AROUND,
        hint="From the same mark on the part, which now stands on the other side of the arbor.",
        example="52°",
    )
    how: str = choice(
        "Drilled", {RIM: "into the rim, towards the axis", FACE: "into a face, along the axis"}, default=RIM
    )
    radius: Number = given(
        "Radius of the rim, or of the holes in the face",
        "R",
        ROUGH,
        hard="10 to 500 mm",
        usual="40 to 200 mm",
        example="130 mm",
    )
    drill: Number = given(
        "Drill, diameter", "D", COARSE, hard="1 to 40 mm", usual="5 to 16 mm", example="10 mm"
    )
    wall: Number = measured(
        "Metal behind the drill's mouth",
        "t",
        ROUGH,
        tool="a calliper",
        hard="2 to 200 mm",
        usual="8 to 60 mm",
        hint="From the surface down to the next hollow, thread or face.",
        example="24 mm",
    )
    first: Number | None = given(
        "First of two places where it may be drilled",
        "α_1",
        DEGREES,
        hard=AROUND,
        fold=True,
        hint="Both empty: one hole at the heavy spot itself.",
    )
    second: Number | None = given("Second of them", "α_2", DEGREES, hard=AROUND, fold=True)
    left_behind: Number = given(
        "Metal to be left under the drill's tip",
        "t_r",
        ROUGH,
        hard="0.5 to 50 mm",
        usual="3 to 10 mm",
        fold=True,
        assumed=("5 mm", "common practice, no source"),
    )
    point: Number = given(
        "Drill's point angle",
        "θ",
        DEGREES,
        hard="60 to 175°",
        usual="90 to 140°",
        fold=True,
        assumed=("118°", "a usual twist drill"),
    )
    material: str = material_of("Material where it is drilled", IRONS, example="grey-iron", fold=True)
    plane: str = choice(
        "Reading is for",
        {WHOLE: "the whole part, as a disc", SHARE: "one of two planes"},
        default=WHOLE,
        fold=True,
    )
    planes_apart: Number = given(
        "Distance of the two planes",
        "L",
        ROUGH,
        hard="20 to 1500 mm",
        usual="100 to 500 mm",
        fold=True,
        when=("plane", SHARE),
        example="310 mm",
    )
    other_to_mass: Number = given(
        "From the other plane to the centre of mass",
        "c",
        ROUGH,
        hard="0 to 1500 mm",
        usual="30 to 400 mm",
        fold=True,
        when=("plane", SHARE),
        example="105 mm",
        hint="Where it lies level on a knife edge, read from the plane that is not asked for here.",
    )
    speed: Number = top_speed()
    grade: Number = grade_limit()


def refuse_impossible(i: In) -> None:
    """Raises where one of a pair is missing, or where two sizes cannot be together."""
    for one, other, name, what in (
        (i.turned, i.turned_at, "turned_at", "the angle read with the part turned"),
        (i.turned_at, i.turned, "turned", "the unbalance read with the part turned"),
        (i.first, i.second, "second", "the second place"),
        (i.second, i.first, "first", "the first place"),
    ):
        if one is not None and other is None:
            raise impossible(name, f"is empty; give {what} too, or leave both empty")
    if i.left_behind >= i.wall:
        raise impossible(
            "left_behind",
            "is {r}, no less than the metal that is there, {t}; give less than {t}",
            r=i.left_behind,
            t=i.wall,
        )
    if i.plane == SHARE and i.other_to_mass > i.planes_apart:
        raise impossible(
            "other_to_mass",
            "is {c}, past the plane asked for, {L} away; give at most {L}",
            c=i.other_to_mass,
            L=i.planes_apart,
        )
