"""Outside numbers for the room between valve and piston. Those marked library are worked anew in test_valve_to_piston.py."""
import math

from calc.formulas.lobe import POLY_4567
from calc.stations.cam.valve_to_piston.nearest import Train, angle_of_least
from tests.checks import Check, Trend, asked

SEARCH = "scipy minimize_scalar over exact slider-crank and exact law; a grid of 3001 agrees"
MM = 1e-3


def engine(throw, way, lean, centre):
    """A lobe of 8.20 mm, 75° each side at the cam, ratio 1.1, lash 0.15 mm, rod 137 mm; sizes in mm and °."""
    return dict(how="lobe", valve="intake", throw=f"{throw} mm", way=f"{way} mm", lean=f"{lean}°", centre=f"{centre}°", rod="137 mm",
                lobe_lift="8.2 mm", flank="75°", ratio="1.1", lash_read="0.15 mm", law=POLY_4567)


def nearest_at(throw_mm, way_mm, lean_deg, centre_deg) -> float:
    """Crank angle of the least way, degrees after top dead centre, by the calculator's own search."""
    train = Train(way_mm * MM, throw_mm * MM, 137 * MM, math.radians(lean_deg), 8.2 * MM, math.radians(75), math.radians(centre_deg), 1.1, 0.15 * MM)
    return math.degrees(angle_of_least(POLY_4567, train))


UPRIGHT, LEANING = (34.5, 4.2, 0.0, 108.0), (36.0, 3.6, 9.0, 106.0)  # throw, way, lean, middle -> least way in mm, crank angle
LEAST = {UPRIGHT: (3.1993, 6.7893), LEANING: (2.4356, 6.764)}
NAMES = ("throw_mm", "way_mm", "lean_deg", "centre_deg")
CHECKS = [
    *(Check("valve-to-piston", "least way along the valve, mm", engine(*case), found[0], 5e-5, asked("valve-to-piston", "least", "mm"), SEARCH, "library") for case, found in LEAST.items()),
    *(Check("valve-to-piston", "crank after top dead centre where it is least, °", dict(zip(NAMES, case)), found[1], 1e-3, nearest_at, SEARCH, "library") for case, found in LEAST.items()),
    Check("valve-to-piston", "2 mm of clay under a valve that leans by 30°, mm", dict(how="clay", clay="2 mm", lean="30°"), 2.3094011, 1e-6, asked("valve-to-piston", "least", "mm"), "2/cos 30° = 4/√3", "limit"),
    Check("valve-to-piston", "least of 3.00, 2.00, 3.00 mm at −10, 0, 10°, mm", dict(how="dial", ways="-10; 3 | 0; 2 | 10; 3"), 2.0, 1e-9, asked("valve-to-piston", "least", "mm"), "a parabola's own lowest point", "limit"),
    Check("valve-to-piston", "least of 1 + (θ − 7°)²/100 read at 0, 5, 10, 15°, mm", dict(how="dial", ways="0; 1.49 | 5; 1.04 | 10; 1.09 | 15; 1.64"), 1.0, 1e-9, asked("valve-to-piston", "least", "mm"), "a parabola's own lowest point", "limit"),
]

TRENDS = {
    "least": Trend(rises="way throw lean centre clay lash_read", falls="rod lobe_lift flank ratio"),
    "running": Trend(rises="way throw lean centre clay", falls="rod lobe_lift flank ratio adds"),
    "taken": Trend(rises="lash_read adds"),
}
