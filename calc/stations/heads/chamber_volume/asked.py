"""What is asked of the chambers: readings, limits, a cut that is planned, the liquid and its warmth."""

from calc.core.kinds import TEMPERATURE_DIFFERENCE
from calc.core.working import Number, form
from calc.declare.calculator import Inputs, Rows, choice, column, given, grid, limit, measured
from calc.stations.heads.chamber_volume.told import CC, FACE
from calc.stations.shared.forms import COARSE, ROUGH

CHAMBERS = ("1", "2", "3", "4")
MATCH, WANTED = "match", "wanted"
LIQUIDS = {"water": "water with a drop of soap", "paraffin": "paraffin, or thin oil", "spirit": "spirit"}


class In(Inputs):
    readings: Rows = grid(
        "Burette readings",
        rows=CHAMBERS,
        columns=(
            column(
                "Filled with", "V", CC, hard="5 to 400 cm³", usual="25 to 120 cm³", feature="chamber.volume"
            ),
        ),
        least=1,
        tool="a burette, under a clear plate with a hole",
        hint="To the tenth. Plug and valves fitted, head level, no bubble left.",
        example="55.9 | 56.2 | 55.8 | 56.1",
    )
    low: Number = limit(
        "Volume allowed, least",
        "V_low",
        CC,
        feature="chamber.volume",
        which="low",
        hard="5 to 400 cm³",
        usual="25 to 120 cm³",
    )
    high: Number = limit(
        "Volume allowed, most",
        "V_high",
        CC,
        feature="chamber.volume",
        which="high",
        hard="5 to 400 cm³",
        usual="25 to 120 cm³",
    )
    most_spread: Number = given(
        "May differ from each other by",
        "ΔV_max",
        CC,
        hard="0 to 20 cm³",
        usual="0.1 to 3 cm³",
        assumed=("0.5 cm³", "about a hundredth; common practice, no source"),
        fold=True,
    )
    cut: Number = given(
        "Cut off the sealing step",
        "t",
        COARSE,
        hard="0 to 5 mm",
        usual="0 to 1 mm",
        hint="That is planned.",
        assumed=("0 mm", "no cut is planned"),
    )
    aim: str = choice(
        "Grind out", {MATCH: "to match the largest", WANTED: "to the volume wanted"}, default=MATCH
    )
    wanted: Number = given(
        "Volume wanted",
        "V_w",
        CC,
        hard="5 to 400 cm³",
        usual="25 to 120 cm³",
        feature="chamber.volume",
        fold=True,
    )
    mouth: Number = measured(
        "Chamber's mouth, across",
        "D_m",
        ROUGH,
        tool="a calliper, at the sealing step",
        hard="20 to 200 mm",
        usual="60 to 120 mm",
        feature="chamber.mouth",
        fold=True,
    )
    mouth_area: Number | None = measured(
        "Area of the mouth",
        "A_m",
        FACE,
        tool="squared paper under a print of its edge",
        hard="300 to 31000 mm²",
        usual="2500 to 11000 mm²",
        fold=True,
        hint="For a mouth that is not round. Empty: that of a circle.",
    )
    most_cut: Number = limit(
        "Sealing step may be cut by, at most",
        "t_max",
        COARSE,
        feature="chamber.step_cut",
        which="wear",
        hard="0 to 5 mm",
        usual="0 to 1.5 mm",
        hint="Since new: take off what is gone already.",
    )
    liquid: str = choice("Liquid", LIQUIDS, fold=True, assumed=("water", "counts only where it warmed"))
    warming: Number = measured(
        "Liquid warmed in the chamber by",
        "ΔT",
        form(TEMPERATURE_DIFFERENCE, 0),
        tool="a thermometer in burette and chamber",
        hard="-40 to 40 K",
        usual="-5 to 5 K",
        fold=True,
        hint="Minus where it cooled.",
        assumed=("0 K", "as warm as the head"),
    )
