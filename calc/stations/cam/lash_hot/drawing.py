"""Lash over the share of the way from cold to running heat."""

from calc.core.drawing import Axis, Plot, Series
from calc.core.result import say
from calc.stations.cam.lash_hot.asked import In
from calc.stations.cam.lash_hot.chains import Lash
from calc.stations.shared.forms import COARSE, SHARE


def warming(i: In, found: Lash) -> Plot:
    """As straight lines: all parts warm up together."""
    return Plot(
        "Lash as all parts warm up together",
        say("{a} cold, {b} when running.", a=i.lash, b=found.running),
        Axis("Of the way to running heat", SHARE),
        Axis("Lash at the valve", COARSE),
        (
            Series("", ((0.0, float(i.lash)), (1.0, float(found.running)))),
            Series("least running", ((0.0, float(i.least)), (1.0, float(i.least))), "limit"),
        ),
        ((1.0, float(found.running), "running"),),
    )
