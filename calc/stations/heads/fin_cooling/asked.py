"""What is asked: the fins of both castings, their alloys, the air, and the gain that is wanted."""

from calc.core.kinds import COUNT, SPEED
from calc.core.working import form
from calc.declare.calculator import Inputs, Number, Rows, column, given, grid, measured
from calc.stations.heads.fin_cooling.told import AIR, PERCENT
from calc.stations.shared.asked import material_of
from calc.stations.shared.forms import COARSE, ROUGH, WHOLE_KELVINS

CASTINGS = ("This one", "The other")
ALLOYS = ("al-si-t6", "al-si-cu-t6", "mg-az91", "grey-iron", "ductile-iron")


class In(Inputs):
    fins: Rows = grid(
        "Fins",
        rows=CASTINGS,
        columns=(
            column("Count", "N", form(COUNT, 0), hard="1 to 200", usual="5 to 40"),
            column("Thick", "t", COARSE, hard="0.3 to 20 mm", usual="1 to 4 mm"),
            column("Long", "L", ROUGH, hard="1 to 150 mm", usual="8 to 50 mm"),
            column("Gap", "g", COARSE, hard="0.3 to 100 mm", usual="2 to 10 mm"),
        ),
        least=2,
        tool="a calliper, half way up the fin",
        hint="Thickness and gap at half length, where a fin tapers. Long: from root to tip.",
        example="14; 2.00; 22.0; 4.50 | 15; 2.00; 24.0; 4.00",
    )
    air: Number = given(
        "Air's coefficient, this one",
        "h_1",
        AIR,
        hard="5 to 500 W/(m²·K)",
        usual="20 to 150 W/(m²·K)",
        assumed=("60 W/(m²·K)", "with a fan; common practice, no source"),
        hint="40 to 80 W/(m²·K) with a fan.",
    )
    air_other: Number | None = given(
        "Air's coefficient, the other",
        "h_2",
        AIR,
        hard="5 to 500 W/(m²·K)",
        usual="20 to 150 W/(m²·K)",
        hint="Empty: the same. With closer fins it is less.",
        example="57 W/(m²·K)",
    )
    alloy: str = material_of("Alloy, this one", ALLOYS, example="al-si-t6", must=True, fold=False)
    alloy_other: str = material_of("Alloy, the other", ALLOYS, example="al-si-t6", must=True, fold=False)
    width: Number = measured(
        "Fins run along the wall for",
        "W",
        ROUGH,
        tool="a rule, all round the finned part",
        hard="10 to 2000 mm",
        usual="80 to 600 mm",
        example="200 mm",
    )
    path: Number | None = given(
        "Air flows along them for",
        "W_a",
        ROUGH,
        hard="5 to 2000 mm",
        usual="40 to 400 mm",
        fold=True,
        hint="Half of the way round, where the air parts round a cylinder. Empty: all of it.",
    )
    speed: Number = given(
        "Air between this one's fins",
        "v",
        form(SPEED, 1),
        hard="0.5 to 80 m/s",
        usual="3 to 25 m/s",
        fold=True,
        assumed=("10 m/s", "with a fan; common practice, no source"),
    )
    hotter: Number = given(
        "Wall at the roots hotter than the entering air by",
        "ΔT",
        WHOLE_KELVINS,
        hard="1 to 500 K",
        usual="50 to 250 K",
        fold=True,
        assumed=("150 K", "common practice, no source; only for the watts"),
    )
    least_gain: Number = given(
        "Gain wanted, at least",
        "Δ_min",
        PERCENT,
        hard="0 to 500 %",
        usual="2 to 50 %",
        fold=True,
        assumed=("5 %", "less is not worth a casting; common practice, no source"),
    )
