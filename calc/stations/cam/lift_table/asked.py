"""What is asked of a lobe whose lift is read all round."""

import math

from calc.core.result import impossible
from calc.declare.calculator import Inputs, Number, Rows, choice, column, given, grid, limit
from calc.stations.shared.forms import COARSE, DEGREES, SIZE, TENTHS_OF_DEGREE, TURNS

ROWS = 73  # a whole turn of the cam every 5°, or a lobe of 144° every 2°
CAM, CRANK = "cam", "crank"
_LIFTS = "-2 to 30 mm"


class In(Inputs):
    lifts: Rows = grid(
        "Lifts",
        rows=tuple(map(str, range(1, ROWS + 1))),
        columns=(
            column("Lift", "h", SIZE, hard=_LIFTS, usual="-0.2 to 14 mm"),
            column("Another lobe", "h'", SIZE, hard=_LIFTS, usual="-0.2 to 14 mm", optional=True),
        ),
        least=8,
        tool="a dial gauge on the lifter, and a degree wheel",
        hint=(
            "From the heel over the nose to the heel, always turned one way; a column copied from a"
            " spreadsheet goes into the first cell. A reading that is missing leaves its row empty."
        ),
        example=(
            "-0.002 | -0.002 | 0.001 | 0.011 | 0.123 | 0.394 | 0.891 | 1.604 | 2.516"
            " | 3.554 | 4.645 | 5.687 | 6.595 | 7.312 | 7.799 | 8.076 | 8.186 | 8.200"
            " | 8.183 | 8.081 | 7.801 | 7.310 | 6.597 | 5.686 | 4.644 | 3.555 | 2.517"
            " | 1.603 | 0.889 | 0.400 | 0.128 | 0.015 | -0.001 | 0.005 | -0.003"
        ),
    )
    wheel: str = choice(
        "The wheel stands on",
        {CAM: "the cam", CRANK: "the crank, which turns twice as far"},
        must=True,
        example=CAM,
    )
    every: Number = given(
        "From one reading to the next",
        "Δθ",
        TENTHS_OF_DEGREE,
        hard="0.5 to 20°",
        usual="1 to 10°",
        must=True,
        example="5°",
        hint="On the wheel, empty rows counted.",
    )
    first: Number = given(
        "Wheel at the first row",
        "θ_1",
        TENTHS_OF_DEGREE,
        hard="-720 to 720°",
        fold=True,
        assumed=("0°", "the wheel set to nought there"),
    )
    checking: Number = given(
        "Checking lift, at the lifter",
        "h_c",
        COARSE,
        hard="0.02 to 15 mm",
        usual="0.1 to 2 mm",
        feature="cam.checking_lift",
        hint="At which the duration is told. The maker's card names it; another lift, another number.",
    )
    speed: Number = given(
        "Engine speed",
        "n",
        TURNS,
        hard="100 1/ to 12000 1/min",
        usual="1500 1/ to 7500 1/min",
        feature="crank.top_speed",
        fold=True,
    )
    reading: Number = given(
        "Doubt of one lift, ±",
        "U_h",
        SIZE,
        hard="0 to 0.5 mm",
        usual="0.001 to 0.03 mm",
        fold=True,
        assumed=("0.01 mm", "a dial of hundredths; common practice, no source"),
    )
    angle: Number = given(
        "Doubt of one angle of the wheel, ±",
        "U_θ",
        TENTHS_OF_DEGREE,
        hard="0 to 5°",
        usual="0 to 1°",
        fold=True,
        assumed=("0.1°", "a large wheel with a wire for a pointer; common practice, no source"),
    )
    lift_low: Number = limit(
        "Lobe lift, least of a new one",
        "h_min",
        COARSE,
        feature="cam.lobe_lift",
        which="low",
        hard="1 to 25 mm",
        usual="4 to 14 mm",
    )
    lift_high: Number = limit(
        "Lobe lift, most",
        "h_max",
        COARSE,
        feature="cam.lobe_lift",
        which="high",
        hard="1 to 25 mm",
        usual="4 to 14 mm",
    )
    worn: Number = limit(
        "Lobe lift, worn",
        "h_w",
        COARSE,
        feature="cam.lobe_lift",
        which="wear",
        hard="1 to 25 mm",
        usual="4 to 14 mm",
    )
    duration_low: Number | None = limit(
        "Duration at the checking lift, least",
        "D_min",
        DEGREES,
        feature="cam.duration",
        which="low",
        hard="60 to 400°",
    )
    duration_high: Number | None = limit(
        "Duration at the checking lift, most",
        "D_max",
        DEGREES,
        feature="cam.duration",
        which="high",
        hard="60 to 400°",
    )


def read_of(i: In) -> list[tuple[int, Number, Number | None]]:
    """Rows that were read, from 0, with the lift and that of the other lobe. Raises where they are more than
    a turn."""
    rows: list[tuple[int, Number, Number | None]] = [
        (n, row[0], row[1]) for n, row in enumerate(i.lifts) if row is not None
    ]
    turn = 360 if i.wheel == CAM else 720
    span = (rows[-1][0] - rows[0][0]) * float(i.every)
    if span > math.radians(turn) + 1e-6:
        raise impossible(
            "every",
            f"of {{s}} over these rows is more than a turn of the cam, {turn}° of this wheel; give less, or"
            " say that the wheel stands elsewhere",
            s=i.every,
        )
    return rows
