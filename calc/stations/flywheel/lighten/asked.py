"""What is asked of a flywheel that is to be made lighter: its section, the cuts, and what must be left."""

from typing import Any

from calc.core.kinds import COUNT, INERTIA, MASS
from calc.core.working import form
from calc.declare.calculator import Inputs, Number, Rows, column, given, grid, limit, measured
from calc.stations.flywheel.section import section_of
from calc.stations.shared.asked import material_of
from calc.stations.shared.forms import COARSE, ROUGH, SHARE

GRAMS, TURNED = form(MASS, 0), form(INERTIA, 5)
IRONS = ("grey-iron", "ductile-iron", "forged-steel")


def _cuts(side: str, example: str, hint: str = "") -> Any:
    return grid(
        f"Cuts on the {side}'s side",
        ("1", "2", "3"),
        (
            column("From diameter", "D_1", ROUGH, hard="0 to 900 mm", usual="40 to 400 mm"),
            column("To diameter", "D_2", ROUGH, hard="5 to 900 mm", usual="60 to 450 mm"),
            column("Depth, inside", "a_1", COARSE, hard="0 to 100 mm", usual="0 to 20 mm"),
            column("Depth, outside", "a_2", COARSE, hard="0 to 100 mm", usual="0 to 20 mm", optional=True),
        ),
        least=0,
        hint=hint,
        example=example,
    )


class In(Inputs):
    section: Rows = section_of(
        "Thickness where it is least; the ring gear is the last ring.",
        "40; 120; 18 | 120; 212; 18 | 212; 262; 28 | 262; 274; 12",
    )
    engine_cuts: Rows = _cuts(
        "engine",
        "214; 240; 6; 10",
        "From the face as it is now. Depth outside may stay empty: the cut is as deep all over.",
    )
    clutch_cuts: Rows = _cuts("clutch", "")
    mass: Number = measured(
        "Flywheel as it is, with its ring gear",
        "m",
        GRAMS,
        tool="a balance",
        hard="500 to 60000 g",
        usual="3000 to 20000 g",
        feature="flywheel.mass",
        stage="",
    )
    inertia: Number | None = given(
        "Its moment of inertia, where known",
        "J",
        TURNED,
        hard="0.0005 to 5 kg·m²",
        usual="0.02 to 0.5 kg·m²",
        feature="flywheel.inertia",
        fold=True,
        hint="Empty: from the section, in proportion to what it weighs.",
    )
    wanted: Number | None = given(
        "Moment of inertia wanted",
        "J_w",
        TURNED,
        hard="0.0002 to 5 kg·m²",
        usual="0.02 to 0.5 kg·m²",
        fold=True,
        hint="Tells how deep the first cut on the engine's side would be, flat.",
    )
    holes: Number | None = given(
        "Holes drilled through", "n", form(COUNT, 0), hard="1 to 60", usual="3 to 12", fold=True
    )
    hole: Number | None = given(
        "Diameter of these holes", "d", COARSE, hard="1 to 100 mm", usual="6 to 40 mm", fold=True
    )
    circle: Number | None = given(
        "Pitch circle of these holes", "D_h", ROUGH, hard="10 to 800 mm", usual="60 to 300 mm", fold=True
    )
    material: str = material_of("Flywheel, material", IRONS, feature="flywheel.alloy", example="grey-iron")
    lining_inside: Number = given(
        "Friction face, inside",
        "D_f",
        ROUGH,
        hard="10 to 800 mm",
        usual="90 to 250 mm",
        feature="flywheel.lining_inside",
        fold=True,
    )
    lining_outside: Number = given(
        "Friction face, outside",
        "D_F",
        ROUGH,
        hard="20 to 900 mm",
        usual="150 to 350 mm",
        feature="flywheel.lining_outside",
        fold=True,
    )
    seat: Number | None = given(
        "Ring gear's seat",
        "D_s",
        ROUGH,
        hard="50 to 900 mm",
        usual="180 to 400 mm",
        feature="flywheel.gear_seat",
        fold=True,
    )
    under_seat: Number = given(
        "Metal to be left under the ring gear's seat",
        "w_s",
        ROUGH,
        hard="0 to 60 mm",
        usual="4 to 20 mm",
        fold=True,
        assumed=("6 mm", "common practice, no source"),
    )
    face_least: Number = limit(
        "Behind the friction face, least",
        "t_f",
        COARSE,
        feature="flywheel.face_thickness",
        which="wear",
        hard="1 to 100 mm",
        usual="8 to 40 mm",
    )
    root_least: Number = limit(
        "At the root, least",
        "t_r",
        COARSE,
        feature="flywheel.root_thickness",
        which="wear",
        hard="1 to 100 mm",
        usual="8 to 40 mm",
    )
    most_share: Number = given(
        "Share of the inertia that may go",
        "q",
        SHARE,
        hard="1 to 95 %",
        usual="10 to 50 %",
        fold=True,
        assumed=("40 %", "common practice, no source"),
    )
