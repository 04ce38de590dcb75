"""What is asked of a set of rods that is weighed end for end."""

from calc.declare.calculator import Inputs, Number, Rows, column, given, grid, limit, measured
from calc.stations.rods import RODS
from calc.stations.rods.rod_weights.told import GRAMS
from calc.stations.shared.forms import ROUGH


class In(Inputs):
    weights: Rows = grid(
        "Weights, other end hung level",
        rows=RODS,
        columns=(
            column(
                "Big end", "B", GRAMS, hard="20 to 5000 g", usual="150 to 1200 g", feature="rod.big_end_mass"
            ),
            column(
                "Small end",
                "S",
                GRAMS,
                hard="10 to 3000 g",
                usual="60 to 600 g",
                feature="rod.small_end_mass",
            ),
            column(
                "Whole",
                "W",
                GRAMS,
                hard="30 to 8000 g",
                usual="200 to 1800 g",
                optional=True,
                feature="rod.mass",
            ),
        ),
        least=2,
        tool="a balance",
        hint="Each with its cap, bolts and bush. Whole rod, to check, may stay empty.",
        example="399.6; 160.4; 560.0 | 400.1; 160.1; 560.2 | 399.8; 160.6; 560.4 | 399.5; 160.2; 559.7",
    )
    allowed: Number = given(
        "Ends may differ by",
        "Δ_a",
        GRAMS,
        hard="0 to 50 g",
        usual="0.2 to 5 g",
        assumed=("1.0 g", "common practice, no source"),
        hint="1 g at each end; common practice, no source.",
        fold=True,
    )
    most_big: Number = limit(
        "Big end's pad may lose, at most",
        "m_B",
        GRAMS,
        feature="rod.pad_loss_big_end",
        which="wear",
        hard="0 to 200 g",
        usual="0 to 20 g",
        hint="What the pad leaves: less, where it was ground before.",
    )
    most_small: Number = limit(
        "Small end's pad may lose, at most",
        "m_S",
        GRAMS,
        feature="rod.pad_loss_small_end",
        which="wear",
        hard="0 to 200 g",
        usual="0 to 12 g",
        hint="What the pad leaves: less, where it was ground before.",
    )
    centre_distance: Number = measured(
        "Centre distance",
        "L",
        ROUGH,
        tool="a rod gauge",
        hard="50 to 400 mm",
        usual="90 to 220 mm",
        feature="rod.centre_distance",
        fold=True,
    )
    beyond_big: Number = measured(
        "Big end's pad beyond its centre by",
        "e_b",
        ROUGH,
        tool="a rule",
        hard="0 to 120 mm",
        usual="15 to 70 mm",
        feature="rod.pad_beyond_big_end",
        fold=True,
    )
    beyond_small: Number = measured(
        "Small end's pad beyond its centre by",
        "e_s",
        ROUGH,
        tool="a rule",
        hard="0 to 80 mm",
        usual="5 to 40 mm",
        feature="rod.pad_beyond_small_end",
        fold=True,
    )
