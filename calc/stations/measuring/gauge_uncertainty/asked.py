"""What is asked of a gauge and its readings."""

from calc.core.working import Number
from calc.declare.calculator import Inputs, Rows, choice, column, given, grid, measured
from calc.reference.materials import MATERIALS
from calc.stations.shared.forms import FINE, KELVINS, ROUGH, SIZE, TIMES

MEAN, ONE = "mean", "one"


class In(Inputs):
    readings: Rows = grid(
        "Readings",
        rows=tuple(map(str, range(1, 11))),
        columns=(column("Reading", "x", SIZE, hard="-2000 to 2000 mm"),),
        least=2,
        tool="the gauge lifted off and set anew each time",
        hint="All at the same place of the same part. Five are good, ten are better.",
        example="54.992 | 54.994 | 54.993 | 54.993 | 54.995",
    )
    tolerance: Number = given(
        "Tolerance to be judged with it",
        "T",
        SIZE,
        hard="0.0001 to 100 mm",
        hint="Upper less lower limit.",
        example="0.015 mm",
    )
    resolution: Number = given(
        "Smallest step of the gauge",
        "r",
        FINE,
        hard="0.00001 to 1 mm",
        usual="0.0001 to 0.02 mm",
        hint="What you can read: half a division if you estimate halves.",
        example="0.001 mm",
    )
    calibration: Number = given(
        "Doubt of the gauge, ±",
        "U_g",
        FINE,
        hard="0 to 1 mm",
        usual="0.0005 to 0.03 mm",
        hint="From its calibration paper, or its permitted error.",
        example="0.002 mm",
    )
    master: Number | None = given(
        "Doubt of ring or block that it is set to, ±",
        "U_m",
        FINE,
        hard="0 to 1 mm",
        hint="For a gauge that is set before it is used.",
    )
    size: Number = measured(
        "Size of the part",
        "L",
        ROUGH,
        tool="whatever is at hand",
        hard="0.1 to 2000 mm",
        hint="The whole size, for all of it grows with warmth; a gauge may show a difference only.",
        example="55.0 mm",
    )
    apart: Number = given(
        "Part and gauge may differ by, ±",
        "Δ",
        KELVINS,
        hard="0 to 40 K",
        usual="0.2 to 5 K",
        fold=True,
        assumed=("1 K", "after a while side by side; common practice, no source"),
        hint="After an hour side by side 0.5 K; held in the hand 3 K and more; common practice, no source.",
    )
    off: Number = given(
        "Both may be off 20 °C by, ±",
        "θ",
        KELVINS,
        hard="0 to 40 K",
        usual="0.5 to 15 K",
        fold=True,
        assumed=("3 K", "a heated shop; common practice, no source"),
        hint="Uncorrected. Zero if you bring the size to 20 °C.",
    )
    material: str = choice(
        "Material of the part", {id: m.name for id, m in MATERIALS.items()}, must=True, example="forged-steel"
    )
    reported: str = choice(
        "What is written down",
        {MEAN: "The mean of these readings", ONE: "One reading, taken like these"},
        default=MEAN,
    )
    coverage: Number = given(
        "Coverage factor of both papers",
        "k_g",
        TIMES,
        hard="1 to 4",
        usual="1.7 to 3.2",
        fold=True,
        assumed=("2", "as calibration papers state it"),
        hint="2 unless the paper says another.",
    )
