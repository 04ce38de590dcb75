"""What is asked of the rings of a piston: gap, width and groove, the bore that they stand in, and how hot
they
run."""

from typing import Any

from calc.core.working import Number
from calc.declare.calculator import Inputs, Rows, column, given, grid, limit, measured
from calc.stations.shared.forms import ALPHA, COARSE, DEGREES_C, SIZE

RINGS = ("top", "second", "oil")
BORES, USUAL = "20 to 200 mm", "60 to 130 mm"


def _gap(ring: str, end: str, which: str, words: str) -> Any:
    return limit(
        f"Gap of the {ring} ring, {words}",
        f"s_{ring[0]},{which}",
        COARSE,
        feature=f"piston.ring_gap{end}",
        which=which,
        hard="0 to 5 mm",
        usual="0.15 to 1.5 mm",
    )


def _side(ring: str, end: str, which: str, words: str) -> Any:
    return limit(
        f"Side clearance of the {ring} ring, {words}",
        f"f_{ring[0]},{which}",
        SIZE,
        feature=f"piston.ring_side_clearance{end}",
        which=which,
        hard="0 to 1 mm",
        usual="0.01 to 0.2 mm",
    )


class In(Inputs):
    rings: Rows = grid(
        "Rings",
        rows=RINGS,
        columns=(
            column("Gap", "s", COARSE, hard="0 to 5 mm", usual="0.15 to 1.5 mm"),
            column("Ring, width", "h", SIZE, hard="0.5 to 10 mm", usual="1 to 6 mm", optional=True),
            column("Groove, width", "H", SIZE, hard="0.5 to 10 mm", usual="1 to 6 mm", optional=True),
        ),
        least=1,
        tool="feeler gauges; a micrometer; a ring and feelers in the groove",
        hint=(
            "Gap: ring pushed down square with a piston, below where the rings run, barrel cold. Of an oil"
            " ring"
            " in parts: its rails."
        ),
        example="0.38; 1.984; 2.040 | 0.35; 1.984; 2.030 | 0.32; 3.984; 4.020",
    )
    bore: Number = measured(
        "Bore where the gap was read",
        "D",
        SIZE,
        tool="a bore gauge set in a ring",
        hard=BORES,
        usual=USUAL,
        feature="cylinder.bore",
        stands_in=True,
        stage="",
        example="88.010 mm",
    )
    smallest: Number | None = measured(
        "Bore where it is smallest, if elsewhere",
        "D_k",
        SIZE,
        tool="a bore gauge set in a ring",
        hard=BORES,
        usual=USUAL,
        hint="At the bottom of the stroke, as a rule: the ends meet there first.",
    )
    largest: Number | None = measured(
        "Bore where it is most worn",
        "D_g",
        SIZE,
        tool="a bore gauge set in a ring",
        hard=BORES,
        usual=USUAL,
        hint="Just below the ridge. Each millimetre of wear opens the gap by π millimetres.",
        example="88.060 mm",
    )
    bore_running: Number = given(
        "Barrel, running",
        "t_z",
        DEGREES_C,
        hard="20 to 350 °C",
        usual="80 to 250 °C",
        feature="cylinder.running_temperature",
        fold=True,
        assumed=("170 °C", "an air-cooled barrel; common practice, no source"),
    )
    ring_running: Number = given(
        "Rings, running",
        "t_r",
        DEGREES_C,
        hard="20 to 400 °C",
        usual="100 to 300 °C",
        feature="piston.ring_running_temperature",
        fold=True,
        assumed=("230 °C", "60 K over the barrel; common practice, no source"),
        hint="The top ring's; the others run cooler, and keep more of their gap.",
    )
    bore_expansion: Number = given(
        "Expansion of the barrel",
        "α_z",
        ALPHA,
        hard="8 to 28 µm/(m·K)",
        feature="cylinder.expansion",
        fold=True,
        assumed=("11.0 µm/(m·K)", "grey iron, from memory; an aluminium barrel has about 21"),
    )
    ring_expansion: Number = given(
        "Expansion of the rings",
        "α_r",
        ALPHA,
        hard="8 to 28 µm/(m·K)",
        feature="piston.ring_expansion",
        fold=True,
        assumed=("12.0 µm/(m·K)", "iron or steel rings, from memory"),
    )
    spare: Number = given(
        "Gap that is to be left when hot",
        "s_h",
        COARSE,
        hard="0 to 1 mm",
        usual="0.05 to 0.3 mm",
        fold=True,
        assumed=("0.10 mm", "common practice, no source"),
    )
    top_low: Number | None = _gap("top", "", "low", "least")
    top_high: Number | None = _gap("top", "", "high", "most as made")
    top_worn: Number | None = _gap("top", "", "wear", "worn out at")
    second_low: Number | None = _gap("second", "_second", "low", "least")
    second_high: Number | None = _gap("second", "_second", "high", "most as made")
    second_worn: Number | None = _gap("second", "_second", "wear", "worn out at")
    oil_low: Number | None = _gap("oil", "_oil", "low", "least")
    oil_high: Number | None = _gap("oil", "_oil", "high", "most as made")
    oil_worn: Number | None = _gap("oil", "_oil", "wear", "worn out at")
    top_side_low: Number | None = _side("top", "", "low", "least")
    top_side_high: Number | None = _side("top", "", "high", "most as made")
    top_side_worn: Number | None = _side("top", "", "wear", "worn out at")
    second_side_low: Number | None = _side("second", "_second", "low", "least")
    second_side_high: Number | None = _side("second", "_second", "high", "most as made")
    second_side_worn: Number | None = _side("second", "_second", "wear", "worn out at")
    oil_side_low: Number | None = _side("oil", "_oil", "low", "least")
    oil_side_high: Number | None = _side("oil", "_oil", "high", "most as made")
    oil_side_worn: Number | None = _side("oil", "_oil", "wear", "worn out at")
