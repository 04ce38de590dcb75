"""What is asked of a rod that is read for bend and twist."""

from typing import Any

from calc.declare.calculator import Inputs, Number, limit, measured
from calc.stations.shared.forms import COARSE, ROUGH


def _reading(label: str, symbol: str, **more: Any) -> Any:
    """Input: the dial at one end of the arbor, or over both."""
    return measured(
        label,
        symbol,
        COARSE,
        tool="a dial gauge on the arbor",
        hard="-5 to 5 mm",
        usual="-0.5 to 0.5 mm",
        **more,
    )


class In(Inputs):
    bend_left: Number = _reading(
        "Upright, left end", "u_l", hint="Rod upright: the dial reads along the rod.", example="0.00 mm"
    )
    bend_right: Number = _reading("Upright, right end", "u_r", example="0.02 mm")
    twist_left: Number = _reading(
        "Laid over, left end", "v_l", hint="Rod on its side: the dial reads across it.", example="0.00 mm"
    )
    twist_right: Number = _reading("Laid over, right end", "v_r", example="0.04 mm")
    span: Number = measured(
        "Distance between the readings",
        "L",
        ROUGH,
        tool="a rule",
        hard="20 to 600 mm",
        usual="60 to 250 mm",
        example="150 mm",
    )
    bend_turned: Number | None = _reading(
        "Upright, rod turned: right less left",
        "w_u",
        fold=True,
        hint="Rod turned end for end on its mandrel. This separates the gauge's own error from the rod's.",
    )
    twist_turned: Number | None = _reading("Laid over, rod turned: right less left", "w_v", fold=True)
    offset: Number | None = measured(
        "Small end out of the big end's middle, along the crank",
        "o",
        COARSE,
        tool="a height gauge, rod on its side on parallels under both ends",
        hard="0 to 10 mm",
        usual="0 to 1 mm",
        feature="rod.offset",
        hint="Half the difference between the two ends' faces, where they are meant to be in line.",
    )
    piston_height: Number = measured(
        "Height of the piston",
        "h",
        ROUGH,
        tool="a calliper",
        hard="10 to 250 mm",
        usual="40 to 110 mm",
        feature="piston.height",
        fold=True,
        assumed=("65 mm", "a usual piston; only for how far it leans"),
    )
    bend_new: Number = limit(
        "Bend over 100 mm, good",
        "f_n",
        COARSE,
        feature="rod.bend",
        which="high",
        hard="0.001 to 1 mm",
        usual="0.01 to 0.1 mm",
    )
    bend_worn: Number = limit(
        "Bend over 100 mm, limit",
        "f_w",
        COARSE,
        feature="rod.bend",
        which="wear",
        hard="0.001 to 1 mm",
        usual="0.02 to 0.2 mm",
    )
    twist_new: Number = limit(
        "Twist over 100 mm, good",
        "g_n",
        COARSE,
        feature="rod.twist",
        which="high",
        hard="0.001 to 1 mm",
        usual="0.01 to 0.15 mm",
    )
    twist_worn: Number = limit(
        "Twist over 100 mm, limit",
        "g_w",
        COARSE,
        feature="rod.twist",
        which="wear",
        hard="0.001 to 1 mm",
        usual="0.02 to 0.3 mm",
    )
    offset_new: Number | None = limit(
        "Out of line, good",
        "o_n",
        COARSE,
        feature="rod.offset",
        which="high",
        hard="0.001 to 5 mm",
        usual="0.05 to 0.5 mm",
    )
    offset_worn: Number | None = limit(
        "Out of line, limit",
        "o_w",
        COARSE,
        feature="rod.offset",
        which="wear",
        hard="0.001 to 5 mm",
        usual="0.1 to 1 mm",
    )
