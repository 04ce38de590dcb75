"""What is asked of a case whose cylinder seats are cut."""

from calc.core.kinds import VOLUME
from calc.core.working import form
from calc.declare.calculator import Inputs, Number, choice, given, limit, measured
from calc.stations.shared.forms import COARSE, SIZE, TIMES

BOTH, ONE = "both", "one"
CC = form(VOLUME, 1)


class In(Inputs):
    cut: Number = given(
        "Cut off the seats, each side",
        "c",
        COARSE,
        hard="0 to 3 mm",
        usual="0 to 1 mm",
        hint="Done or planned, on each side that is cut.",
        example="0.15 mm",
    )
    sides: str = choice("Cut on", {BOTH: "both sides, alike", ONE: "one side only"}, default=BOTH)
    shim_more: Number = given(
        "Shims put in, more than before",
        "s",
        COARSE,
        hard="-3 to 5 mm",
        usual="-1 to 2 mm",
        hint="Minus where there is less than there was.",
        assumed=("0 mm", "the shims that were in it go in again"),
    )
    deck: Number = measured(
        "Deck height before the cut, least of the side",
        "t",
        COARSE,
        tool="a depth gauge, cylinder held down",
        hard="-3 to 10 mm",
        usual="0.5 to 2.5 mm",
        feature="crankcase.deck_height",
        stage="",
        hint="Piston at its top, below the cylinder's sealing face; minus where it stands above.",
    )
    chamber: Number = measured(
        "Chamber volume",
        "V",
        CC,
        tool="a burette and plate",
        hard="5 to 400 cm³",
        usual="30 to 120 cm³",
        feature="chamber.volume",
        stage="",
        fold=True,
        hint="With what a dished piston adds, less what a dome takes.",
    )
    bore: Number = measured(
        "Cylinder bore",
        "b",
        COARSE,
        tool="a bore gauge",
        hard="40 to 160 mm",
        usual="70 to 110 mm",
        feature="cylinder.bore",
        stage="",
        fold=True,
    )
    stroke: Number = measured(
        "Stroke",
        "s_t",
        COARSE,
        tool="a height gauge over the journals",
        hard="30 to 160 mm",
        usual="55 to 100 mm",
        feature="crank.stroke",
        stage="",
        fold=True,
    )
    seat_height: Number = measured(
        "Crank centre to seat before the cut",
        "H",
        COARSE,
        tool="a height gauge from a bar in the saddles",
        hard="40 to 250 mm",
        usual="70 to 150 mm",
        feature="crankcase.seat_height",
        stage="",
        fold=True,
    )
    gain: Number = given(
        "Ratio to be gained, if one is wanted",
        "ε_w",
        TIMES,
        hard="0 to 5",
        usual="0 to 2",
        fold=True,
        assumed=("0.30", "only for the cut that it would take"),
    )
    deck_low: Number = limit(
        "Deck height, least as made",
        "t_min",
        SIZE,
        feature="crankcase.deck_height",
        which="low",
        hard="0 to 5 mm",
        usual="0.5 to 2 mm",
    )
    deck_high: Number | None = limit(
        "Deck height, most as made",
        "t_max",
        SIZE,
        feature="crankcase.deck_height",
        which="high",
        hard="0 to 8 mm",
        usual="0.8 to 3 mm",
    )
    deck_touch: Number = given(
        "Deck height below which piston and head may meet",
        "t_0",
        COARSE,
        hard="0 to 3 mm",
        usual="0.5 to 1.2 mm",
        fold=True,
        assumed=("0.80 mm", "rods stretch, pistons rock, carbon grows; common practice, no source"),
    )
    ratio_most: Number | None = given(
        "Compression ratio, most for the fuel",
        "ε_max",
        TIMES,
        hard="4 to 16",
        usual="6.5 to 10",
        fold=True,
        hint="The engine maker's, for the fuel that it will burn.",
    )
