"""What is ordered for rods, by their sizes."""

from calc.stations.shared.orders.fit import Fit
from calc.stations.shared.orders.worn import Worn

BIG_END_SHELLS = Fit(
    "Rod bearing shells",
    "crank.rod_journal",
    "rod.shell_wall",
    "rod.big_end_bore",
    always=True,
    together=True,
)
SMALL_END_BUSHES = Fit("Small-end bushes", "rod.small_end_bore", "rod.bush_outside")
WORN = Worn({"rod.bush_bore": "Small-end bushes"})
