"""What is asked of a cam that is timed by a degree wheel and one dial."""

from typing import Any

from calc.core.kinds import COUNT
from calc.core.working import form
from calc.declare.calculator import Inputs, Number, given, limit, measured, which_valve
from calc.stations.shared.forms import ROUGH, TENTHS_OF_DEGREE


def _wheel(label: str, symbol: str, example: str, hint: str = "") -> Any:
    return measured(
        label,
        symbol,
        TENTHS_OF_DEGREE,
        tool="a degree wheel on the crank",
        hard="0 to 360°",
        example=example,
        hint=hint,
    )


def _centre(label: str, symbol: str, which: str) -> Any:
    return limit(
        label,
        symbol,
        TENTHS_OF_DEGREE,
        feature="cam.centre_{valve}",
        which=which,
        hard="60 to 150°",
        usual="95 to 125°",
    )


class In(Inputs):
    valve: str = which_valve("Whose lobe the dial stands on.")
    stop_before: Number = _wheel(
        "Wheel at the piston stop, turned one way",
        "θ_a",
        "37.6°",
        "The wheel's numbers rise as the engine turns. The stop holds the piston short of its top.",
    )
    stop_after: Number = _wheel("Wheel at the piston stop, turned the other way", "θ_b", "319.0°")
    opening: Number = _wheel(
        "Wheel at a lift, opening",
        "θ_o",
        "350.5°",
        "Both at the same lift of the dial, half the lobe's or less, come to from the same side.",
    )
    closing: Number = _wheel("Wheel at the same lift, closing", "θ_c", "222.3°")
    wanted: Number = _centre("Centre wanted", "C_w", "nominal")
    low: Number = _centre("Centre, least", "C_min", "low")
    high: Number = _centre("Centre, most", "C_max", "high")
    teeth: Number | None = given(
        "Teeth of the cam's gear", "z", form(COUNT, 0), hard="10 to 200", usual="30 to 80", fold=True
    )
    radius: Number | None = given(
        "Cam's middle to its key or dowel",
        "R",
        ROUGH,
        hard="3 to 100 mm",
        usual="8 to 40 mm",
        fold=True,
        hint="Tells the offset key or dowel that brings it right.",
    )
