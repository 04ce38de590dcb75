"""What is ordered for heads and their valves, by their sizes."""

from calc.stations.shared.orders.fit import Fit
from calc.stations.shared.orders.shim import Shim
from calc.stations.shared.orders.worn import Worn

SEAT_RINGS_INTAKE = Fit("Seat rings, intake", "head.seat_pocket_intake", "head.seat_ring_outside_intake")
SEAT_RINGS_EXHAUST = Fit("Seat rings, exhaust", "head.seat_pocket_exhaust", "head.seat_ring_outside_exhaust")
GUIDES = Fit("Valve guides", "head.guide_hole", "guide.outside")
VALVES_INTAKE = Fit("Valves, intake", "guide.bore", "valve.stem_intake")
VALVES_EXHAUST = Fit("Valves, exhaust", "guide.bore", "valve.stem_exhaust")
SPRING_SHIMS = Shim("Shims under the springs", "spring.installed_height", "spring.shim", -1)
WORN = Worn(
    {
        "head.valve_margin_intake": "Valves, intake",
        "head.valve_margin_exhaust": "Valves, exhaust",
        "valve.stem_intake": "Valves, intake",
        "valve.stem_exhaust": "Valves, exhaust",
        "guide.bore": "Valve guides",
        "spring.free_length": "Valve springs",
        "spring.seat_load": "Valve springs",
        "spring.open_load": "Valve springs",
    }
)
