"""What is ordered for lifters, by their sizes."""

from calc.stations.shared.orders.fit import Fit
from calc.stations.shared.orders.worn import Worn

LIFTERS = Fit("Lifters", "crankcase.lifter_bore", "lifter.body")
WORN = Worn({"lifter.body": "Lifters"})
