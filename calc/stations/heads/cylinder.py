"""The cylinder below a head, as every calculator of the gas through it asks for it."""

from typing import Any

from calc.declare.calculator import measured
from calc.stations.shared.forms import COARSE


def cylinder_bore(when: tuple[str, ...] = ()) -> Any:
    """Input: the cylinder's bore."""
    return measured(
        "Cylinder bore",
        "b",
        COARSE,
        tool="a bore gauge",
        hard="40 to 160 mm",
        usual="70 to 110 mm",
        feature="cylinder.bore",
        fold=True,
        when=when,
    )


def stroke(when: tuple[str, ...] = ()) -> Any:
    """Input: the piston's stroke."""
    return measured(
        "Stroke",
        "s",
        COARSE,
        tool="a height gauge over the journals",
        hard="30 to 160 mm",
        usual="55 to 100 mm",
        feature="crank.stroke",
        fold=True,
        when=when,
    )
