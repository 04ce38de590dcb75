"""What is ordered for cylinders and pistons, by their sizes."""

from calc.stations.shared.orders.fit import Fit
from calc.stations.shared.orders.shim import Shim
from calc.stations.shared.orders.worn import Worn

PISTONS = Fit("Pistons with rings", "cylinder.bore", "piston.diameter", together=True)
SHIMS = Shim(
    "Shims under the cylinders",
    "crankcase.deck_height",
    "cylinder.shim",
    1,
    alike=(("1", "2"), ("3", "4")),
    most=2,
)
WORN = Worn(
    {
        "piston.diameter": "Pistons with rings",
        "piston.pin": "Piston pins",
        "piston.ring_gap": "Piston rings",
        "piston.ring_gap_second": "Piston rings",
        "piston.ring_gap_oil": "Piston rings",
    }
)
