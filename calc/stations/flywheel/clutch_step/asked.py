"""What is asked of a clutch's two faces: the step between them, the wall behind one, and what clamps."""

from typing import Any

from calc.core.kinds import COUNT, STIFFNESS
from calc.core.working import form
from calc.declare.calculator import Inputs, Number, Rows, choice, column, given, grid, limit, measured
from calc.stations.shared.forms import COARSE, FINE_SHARE, NEWTON, ROUGH, TIMES

BELOW, ABOVE = "below", "above"
COILS, DISC = "coils", "diaphragm"


def _disc(label: str, symbol: str, shape: Any, hard: str, usual: str, assumed: str) -> Any:
    return given(
        label,
        symbol,
        shape,
        hard=hard,
        usual=usual,
        when=("cover", DISC),
        fold=True,
        assumed=(assumed, "a usual diaphragm, for the share that its force changes by; read yours"),
    )


class In(Inputs):
    lies: str = choice(
        "The friction face lies",
        {BELOW: "below the cover's face", ABOVE: "above the cover's face"},
        must=True,
        example=BELOW,
    )
    steps: Rows = grid(
        "Step at three places",
        ("1", "2", "3"),
        (column("Step", "h", COARSE, hard="0 to 60 mm", usual="0.2 to 40 mm"),),
        tool="a depth micrometer over a straight edge",
        hint="A third of a turn apart, both faces clean.",
        example="10.02 | 10.01 | 10.03",
    )
    thickness: Number = measured(
        "Thickness behind the friction face, least",
        "t",
        COARSE,
        tool="a micrometer",
        hard="1 to 120 mm",
        usual="8 to 40 mm",
        feature="flywheel.face_thickness",
    )
    low: Number = limit(
        "Step, least",
        "h_min",
        COARSE,
        feature="flywheel.step",
        which="low",
        hard="0 to 60 mm",
        usual="0.2 to 40 mm",
    )
    high: Number = limit(
        "Step, most",
        "h_max",
        COARSE,
        feature="flywheel.step",
        which="high",
        hard="0 to 60 mm",
        usual="0.2 to 40 mm",
    )
    thinnest: Number = limit(
        "Behind the friction face, least",
        "t_min",
        COARSE,
        feature="flywheel.face_thickness",
        which="wear",
        hard="1 to 120 mm",
        usual="8 to 40 mm",
    )
    spread: Number = given(
        "The three may differ by",
        "Δ_a",
        COARSE,
        hard="0 to 1 mm",
        usual="0.02 to 0.1 mm",
        fold=True,
        assumed=("0.05 mm", "common practice, no source"),
    )
    cover: str = choice(
        "The cover clamps with", {DISC: "a diaphragm", COILS: "coil springs"}, must=True, example=DISC
    )
    springs: Number = given(
        "Coil springs",
        "n",
        form(COUNT, 0),
        hard="3 to 24",
        usual="6 to 12",
        when=("cover", COILS),
        example="9",
    )
    rate: Number = given(
        "Rate of one",
        "k",
        form(STIFFNESS, 1),
        hard="1 to 300 N/mm",
        usual="10 to 60 N/mm",
        when=("cover", COILS),
        example="24 N/mm",
    )
    load: Number = given(
        "Load of one, clamped as new",
        "F_1",
        NEWTON,
        hard="50 to 5000 N",
        usual="300 to 1200 N",
        when=("cover", COILS),
        example="620 N",
    )
    clamp: Number | None = given(
        "Clamp load of the cover as new",
        "F_c",
        NEWTON,
        hard="200 to 40000 N",
        usual="2000 to 9000 N",
        feature="flywheel.clamp_load",
        when=("cover", DISC),
        fold=True,
        hint="Empty: as the diaphragm's own sizes have it.",
    )
    outside: Number = _disc(
        "Diaphragm, where it presses", "D", ROUGH, "60 to 400 mm", "140 to 260 mm", "215 mm"
    )
    inside: Number = _disc(
        "Diaphragm, inside of its closed ring", "d", ROUGH, "40 to 380 mm", "110 to 220 mm", "170 mm"
    )
    thick: Number = _disc("Diaphragm, thickness", "s", COARSE, "0.8 to 8 mm", "1.8 to 3.5 mm", "2.6 mm")
    cone: Number = _disc("Height of its free cone", "c", COARSE, "0.5 to 20 mm", "2 to 8 mm", "4.5 mm")
    flattened: Number = _disc(
        "Pressed flat by, clamped as new", "f", COARSE, "0.5 to 20 mm", "2 to 8 mm", "4.6 mm"
    )
    most_change: Number = given(
        "Clamp load may change by",
        "q_a",
        FINE_SHARE,
        hard="1 to 30 %",
        usual="3 to 10 %",
        fold=True,
        assumed=("5 %", "common practice, no source"),
    )
    lining_outside: Number = given(
        "Lining, outside",
        "D_a",
        ROUGH,
        hard="60 to 500 mm",
        usual="150 to 300 mm",
        feature="flywheel.lining_outside",
        fold=True,
    )
    lining_inside: Number = given(
        "Lining, inside",
        "D_i",
        ROUGH,
        hard="20 to 480 mm",
        usual="100 to 220 mm",
        feature="flywheel.lining_inside",
        fold=True,
    )
    friction: Number = given(
        "Friction of the lining",
        "µ",
        TIMES,
        hard="0.05 to 0.8",
        usual="0.25 to 0.45",
        fold=True,
        assumed=("0.35", "dry organic lining on iron; common practice, no source"),
    )
