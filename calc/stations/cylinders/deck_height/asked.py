"""What is asked of the decks: both ends of each pin's axis, the shims that are in, those sold, the limits."""

from calc.core.kinds import RATIO
from calc.core.working import Number, form
from calc.declare.calculator import Inputs, Rows, choice, column, given, grid, limit, measured
from calc.stations.shared.forms import COARSE, ROUGH, SIZE

CYLINDERS = ("1", "2", "3", "4")
PAIRS = {"12": "1 and 2, 3 and 4", "13": "1 and 3, 2 and 4", "14": "1 and 4, 2 and 3"}


class In(Inputs):
    readings: Rows = grid(
        "Crown below the cylinder's face",
        rows=CYLINDERS,
        columns=(
            column("One end of the pin", "t_l", COARSE, hard="-3 to 15 mm", usual="0.2 to 4 mm"),
            column("Other end", "t_r", COARSE, hard="-3 to 15 mm", usual="0.2 to 4 mm"),
            column("Shims under it now", "s_0", COARSE, hard="0 to 10 mm", usual="0 to 3 mm", optional=True),
        ),
        least=1,
        tool="a depth gauge, or a dial gauge on a bridge, cylinder held down",
        hint="Over the pin's axis at both ends, piston at the top. Minus where the crown stands proud. Shims:"
        " empty for none.",
        example="1.02; 1.04 | 1.00; 1.03 | 1.19; 1.20 | 1.21; 1.18",
    )
    span: Number = measured(
        "Distance between the two readings",
        "L",
        ROUGH,
        tool="a rule",
        hard="10 to 190 mm",
        usual="40 to 120 mm",
        example="70 mm",
    )
    pairs: str = choice("Cylinders under one head", PAIRS, default="12")
    sold: Rows = grid(
        "Shims sold",
        rows=("first", "second", "third", "fourth", "fifth", "sixth"),
        columns=(column("Thickness", "s", COARSE, hard="0.02 to 5 mm", usual="0.1 to 2 mm"),),
        least=1,
        feature="cylinder.shim",
        fold=True,
        hint="As they lie when tight.",
        example="0.25 | 0.50 | 0.75 | 1.00",
    )
    most_shims: Number = given(
        "Shims on top of each other, at most",
        "n",
        form(RATIO, 0),
        hard="1 to 4",
        fold=True,
        assumed=("2", "more of them settle and leak oil; common practice, no source"),
    )
    wanted: Number = given(
        "Deck height wanted",
        "t_w",
        SIZE,
        hard="-3 to 15 mm",
        usual="0.2 to 4 mm",
        feature="crankcase.deck_height",
        fold=True,
    )
    most_spread: Number = given(
        "Decks of one head may be apart by",
        "Δ_max",
        COARSE,
        hard="0 to 2 mm",
        usual="0.02 to 0.2 mm",
        assumed=("0.05 mm", "common practice, no source"),
        fold=True,
    )
    low: Number = limit(
        "Deck height, least",
        "t_min",
        SIZE,
        feature="crankcase.deck_height",
        which="low",
        hard="-3 to 15 mm",
        usual="0.2 to 4 mm",
    )
    high: Number = limit(
        "Deck height, most",
        "t_max",
        SIZE,
        feature="crankcase.deck_height",
        which="high",
        hard="-3 to 15 mm",
        usual="0.2 to 4 mm",
    )
    good_slope: Number | None = limit(
        "Slope along the pin over 100 mm, good",
        "f_n",
        COARSE,
        feature="crankcase.deck_slope",
        which="high",
        hard="0.005 to 2 mm",
        usual="0.02 to 0.3 mm",
    )
    most_slope: Number | None = limit(
        "Slope along the pin over 100 mm, limit",
        "f_w",
        COARSE,
        feature="crankcase.deck_slope",
        which="wear",
        hard="0.005 to 2 mm",
        usual="0.02 to 0.3 mm",
    )
