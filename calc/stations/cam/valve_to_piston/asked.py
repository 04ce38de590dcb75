"""What is asked of a valve that comes near the piston: its way and the lobe, or readings."""

from typing import Any

from calc.declare.calculator import (
    Inputs,
    Number,
    Rows,
    choice,
    column,
    given,
    grid,
    limit,
    measured,
    which_valve,
)
from calc.formulas.lobe import LAWS, POLY_4567
from calc.stations.shared.forms import COARSE, DEGREES, SIZE, TENTHS_OF_DEGREE, TIMES

LOBE, DIAL, CLAY = "lobe", "dial", "clay"
ROWS = ("1", "2", "3", "4", "5", "6", "7")


def _of_the_lobe(label: str, symbol: str, shape: Any, **more: Any) -> Any:
    return given(label, symbol, shape, fold=True, when=("how", LOBE), **more)


class In(Inputs):
    how: str = choice(
        "Found by",
        {
            LOBE: "the valve's way at top dead centre and the lobe",
            DIAL: "a dial, the valve pushed down at several crank angles",
            CLAY: "clay on the piston, the engine turned over once",
        },
        default=LOBE,
    )
    valve: str = which_valve("Each valve by itself; the exhaust valve is hotter and wants more room.")
    way: Number = measured(
        "Way of the valve to the piston at top dead centre",
        "w",
        COARSE,
        tool="a dial gauge, light springs, the shut valve pushed down",
        hard="0 to 40 mm",
        usual="1 to 15 mm",
        feature="valve.way_{valve}",
        stage="",  # the room that it leaves is judged; a way by itself is neither made nor scrapped
        hint="Along the valve, from its seat until it touches.",
        when=("how", LOBE),
    )
    ways: Rows = grid(
        "Way left to the piston",
        rows=ROWS,
        columns=(
            column("Crank", "θ", TENTHS_OF_DEGREE, hard="-120 to 120°", usual="-60 to 60°"),
            column("Way left", "w", COARSE, hard="0 to 40 mm", usual="0.5 to 15 mm"),
        ),
        least=3,
        tool="a degree wheel, and a dial gauge on the valve's retainer",
        hint=(
            "Crank after top dead centre, minus for before it, in rising order. At each angle push the valve"
            " on from where its lobe holds it until it touches: that way is written down."
        ),
        example="-5; 3.72 | 0; 3.42 | 5; 3.24 | 10; 3.26 | 15; 3.49",
        when=("how", DIAL),
    )
    clay: Number = measured(
        "Clay at its thinnest, under the valve's head",
        "t",
        COARSE,
        tool="a calliper, the clay cut through",
        hard="0 to 40 mm",
        usual="0.5 to 15 mm",
        example="3.20 mm",
        hint="Square to the piston's crown, that is along the cylinder.",
        when=("how", CLAY),
    )
    lash_read: Number = given(
        "Lash while it was read",
        "s_r",
        COARSE,
        hard="0 to 2 mm",
        usual="0 to 0.3 mm",
        feature="lifter.lash",
        hint="At the valve. 0 where lash was taken up, or with a solid checking lifter without lash.",
    )
    edge: Number | None = measured(
        "Clay beside the valve's edge, at its thinnest",
        "e",
        COARSE,
        tool="a calliper, the clay cut through",
        hard="0 to 30 mm",
        usual="0.3 to 10 mm",
        feature="valve.edge_room",
        hint="From the edge to the wall of its pocket. Empty where the crown has no pocket.",
    )
    lean: Number = given(
        "Valve's axis to the cylinder's",
        "φ",
        TENTHS_OF_DEGREE,
        hard="0 to 45°",
        usual="0 to 30°",
        feature="valve.lean",
        fold=True,
    )
    throw: Number = _of_the_lobe(
        "Throw", "r", SIZE, hard="5 to 150 mm", usual="25 to 60 mm", feature="crank.throw"
    )
    rod: Number = _of_the_lobe(
        "Rod, centre to centre",
        "l",
        COARSE,
        hard="40 to 500 mm",
        usual="90 to 250 mm",
        feature="rod.centre_distance",
    )
    lobe_lift: Number = _of_the_lobe(
        "Lobe lift", "h", COARSE, hard="1 to 25 mm", usual="4 to 14 mm", feature="cam.lobe_lift"
    )
    flank: Number = _of_the_lobe(
        "Lobe, base circle to nose, at the cam",
        "β",
        DEGREES,
        hard="30 to 120°",
        usual="50 to 90°",
        feature="cam.flank_angle",
    )
    centre: Number = _of_the_lobe(
        "Lobe's middle from top dead centre, at the crank",
        "C",
        TENTHS_OF_DEGREE,
        hard="60 to 160°",
        usual="95 to 125°",
        feature="cam.centre_{valve}",
        hint="After it for the intake, before it for the exhaust; as the cam is timed in this engine.",
    )
    ratio: Number = _of_the_lobe(
        "Rocker's ratio", "i", TIMES, hard="0.5 to 3", usual="0.9 to 1.8", feature="valve.rocker_ratio"
    )
    law: str = choice(
        "The lobe's law",
        LAWS,
        fold=True,
        assumed=(POLY_4567, "a smooth lobe; common practice, no source"),
        when=("how", LOBE),
    )
    adds: Number = given(
        "Float and stretch at top speed take",
        "f",
        COARSE,
        hard="0 to 3 mm",
        usual="0 to 1 mm",
        fold=True,
        assumed=(
            "0.25 mm",
            "a valve that leaves its lobe a little, a rod that stretches; common practice, no source",
        ),
        hint="Of a valve that floats, much more: see that it does not.",
    )
    wanted: Number = limit(
        "Least room, wanted",
        "m_n",
        COARSE,
        feature="valve.room_{valve}",
        which="low",
        hard="0 to 10 mm",
        usual="0.5 to 4 mm",
    )
    needed: Number = limit(
        "Least room, limit",
        "m_w",
        COARSE,
        feature="valve.room_{valve}",
        which="wear",
        hard="0 to 10 mm",
        usual="0.5 to 3 mm",
    )
    edge_wanted: Number | None = limit(
        "Room beside the edge, wanted",
        "e_n",
        COARSE,
        feature="valve.edge_room",
        which="low",
        hard="0 to 10 mm",
        usual="0.3 to 4 mm",
    )
    edge_needed: Number | None = limit(
        "Room beside the edge, limit",
        "e_w",
        COARSE,
        feature="valve.edge_room",
        which="wear",
        hard="0 to 10 mm",
        usual="0.3 to 3 mm",
    )
