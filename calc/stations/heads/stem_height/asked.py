"""What is asked of the stems: heights, lengths, limits, what may be ground and sunk, the springs' height."""

from calc.core.working import Number
from calc.declare.calculator import Inputs, Rows, column, given, grid, limit, measured
from calc.stations.heads import VALVES
from calc.stations.shared.forms import COARSE, ROUGH


class In(Inputs):
    heights: Rows = grid(
        "Stem heights",
        rows=VALVES,
        columns=(
            column(
                "Height", "H", COARSE, hard="5 to 150 mm", usual="25 to 80 mm", feature="head.stem_height"
            ),
            column(
                "Length of the valve",
                "L",
                ROUGH,
                hard="10 to 300 mm",
                usual="60 to 160 mm",
                optional=True,
                feature="valve.length",
            ),
        ),
        least=1,
        tool="a depth gauge",
        hint=(
            "From the spring's bed, without washers or shims, to the tip, valve pressed on its seat. An"
            " exhaust valve that has run is measured in its length too."
        ),
        example="45.05 | 44.98 | 45.10 | 45.02 | 44.96 | 45.08 | 45.00 | 45.06",
    )
    low: Number = limit(
        "Height allowed, least",
        "H_min",
        COARSE,
        feature="head.stem_height",
        which="low",
        hard="5 to 150 mm",
        usual="25 to 80 mm",
    )
    high: Number = limit(
        "Height allowed, most",
        "H_max",
        COARSE,
        feature="head.stem_height",
        which="high",
        hard="5 to 150 mm",
        usual="25 to 80 mm",
    )
    most_spread: Number = given(
        "May differ from each other by",
        "Δ_max",
        COARSE,
        hard="0 to 5 mm",
        usual="0.05 to 1 mm",
        assumed=("0.25 mm", "common practice, no source"),
        fold=True,
    )
    wanted: Number = given(
        "Height wanted",
        "H_w",
        COARSE,
        hard="5 to 150 mm",
        usual="25 to 80 mm",
        feature="head.stem_height",
        fold=True,
    )
    tip_most: Number = limit(
        "A tip may lose, at most",
        "t_a",
        COARSE,
        feature="valve.tip_ground",
        which="wear",
        hard="0 to 3 mm",
        usual="0.1 to 1 mm",
        hint=(
            "From now on: less by what was ground off before. Only the outermost skin is hard, and the rocker"
            " must clear keepers and retainer."
        ),
    )
    sink_most: Number = limit(
        "A seat may be sunk, at most",
        "z_a",
        COARSE,
        feature="head.seat_may_sink",
        which="nominal",
        hard="0 to 3 mm",
        usual="0 to 1 mm",
        hint=(
            "From now on: what ring, band and valve edge leave, as the cutting of a seat shows. 0 where no"
            " seat is to be touched."
        ),
    )
    length_most: Number | None = limit(
        "Valve's length, most",
        "L_max",
        ROUGH,
        feature="valve.length",
        which="high",
        hard="10 to 300 mm",
        usual="60 to 160 mm",
        hint="Of a new one. Counts where lengths are read.",
    )
    exhaust_higher: Number = given(
        "Exhaust stems stand higher by design by",
        "Δ_e",
        COARSE,
        hard="-20 to 20 mm",
        usual="-3 to 3 mm",
        fold=True,
        assumed=("0 mm", "both alike, unless the maker says"),
        hint="Minus where they stand lower. Limits and height wanted are the intake's.",
    )
    tip_to_retainer: Number = measured(
        "Tip above the spring's upper bearing",
        "c",
        COARSE,
        tool="a depth gauge, retainer and keepers on the valve",
        hard="0.5 to 40 mm",
        usual="3 to 20 mm",
        feature="valve.tip_to_retainer",
        fold=True,
        hint="As it is before the tip is ground.",
    )
    fitted_height: Number = given(
        "Fitted height of the spring wanted",
        "f_w",
        COARSE,
        hard="5 to 120 mm",
        usual="25 to 60 mm",
        feature="spring.installed_height",
        fold=True,
    )
    fitted_off: Number = given(
        "Fitted height may be off by, either way",
        "f_a",
        COARSE,
        hard="0 to 3 mm",
        usual="0.1 to 1 mm",
        fold=True,
        assumed=("0.3 mm", "common practice, no source"),
    )
