"""Outside numbers for seat cutting. Those marked library are worked anew in test_seat_geometry.py."""
from math import radians

from calc.formulas import seat_geometry as seat
from tests.checks import Check

LINES = "sympy geometry: the three cones as lines in the section, edges by Line.intersection"
TRIANGLE = "right triangle"
CUTS = ("outer_mm", "inner_mm", "seat_deg", "upper_deg", "throat_deg", "feed_mm")
SEATS = {
    "intake, fed 0.1 mm": (40.0, 37.5, 45.0, 30.0, 60.0, 0.10),
    "exhaust, fed 0.15 mm": (33.0, 31.0, 45.0, 30.0, 60.0, 0.15),
    "30° seat, 15° and 60°, fed 0.1 mm": (40.0, 37.0, 30.0, 15.0, 60.0, 0.10),
    "45° seat, 30° and 75°, fed 0.2 mm": (36.0, 34.0, 45.0, 30.0, 75.0, 0.20),
}


def cuts(name):
    return dict(zip(CUTS, SEATS[name], strict=True))


def width(outer_mm, inner_mm, seat_deg, **_):
    return seat.slant_width(outer_mm, inner_mm, radians(seat_deg))


def new_outer(outer_mm, seat_deg, upper_deg, feed_mm, **_):
    return outer_mm + seat.outer_shift(feed_mm, radians(seat_deg), radians(upper_deg))


def new_inner(inner_mm, seat_deg, throat_deg, feed_mm, **_):
    return inner_mm - seat.inner_shift(feed_mm, radians(seat_deg), radians(throat_deg))


def new_width(**c):
    return seat.slant_width(new_outer(**c), new_inner(**c), radians(c["seat_deg"]))


def span(width_mm, angle_deg):
    return 40.0 - seat.inner_for_width(40.0, width_mm, radians(angle_deg))


def rise_of_band(width_mm, angle_deg):
    return seat.height(40.0, seat.inner_for_width(40.0, width_mm, radians(angle_deg)), radians(angle_deg))


def upper_cut(feed_mm, seat_deg, upper_deg):
    return -seat.outer_shift(feed_mm, radians(seat_deg), radians(upper_deg))


def ground_valve(removed_mm, angle_deg):
    return seat.stem_rise(0.0, removed_mm, radians(angle_deg))


def _library(name, width_before, outer, inner, width_after):
    rows = (("width of the band before, mm", width_before, width, 0.00005), ("outer diameter after, mm", outer, new_outer, 0.00005),
            ("inner diameter after, mm", inner, new_inner, 0.00005), ("width of the band after, mm", width_after, new_width, 0.00005))
    return [Check("Seat cutting", what, cuts(name), expected, tolerance, got, LINES, "library")
            for what, expected, got, tolerance in rows]


CHECKS = [
    *_library("intake, fed 0.1 mm", 1.7678, 40.4732, 37.2268, 2.2956),
    *_library("exhaust, fed 0.15 mm", 1.4142, 33.7098, 30.5902, 2.2059),
    *_library("30° seat, 15° and 60°, fed 0.1 mm", 1.7321, 40.6464, 36.8268, 2.2053),
    *_library("45° seat, 30° and 75°, fed 0.2 mm", 1.4142, 36.9464, 33.8536, 2.1870),
    Check("Seat cutting", "what a band spans in diameter, mm", dict(width_mm=1.5, angle_deg=45.0), 2.1213, 0.00005, span, TRIANGLE, "limit"),
    Check("Seat cutting", "what a band spans in diameter, mm", dict(width_mm=1.5, angle_deg=30.0), 2.5981, 0.00005, span, TRIANGLE, "limit"),
    Check("Seat cutting", "height of a band, mm", dict(width_mm=1.5, angle_deg=30.0), 0.75, 1e-9, rise_of_band, TRIANGLE + ": half, at 30°", "limit"),
    Check("Seat cutting", "change of the outer diameter by an upper cut, mm", dict(feed_mm=0.10, seat_deg=45.0, upper_deg=30.0),
          -0.473205, 5e-7, upper_cut, TRIANGLE + ", −2a/(tan 45° − tan 30°)", "limit"),
    Check("Seat cutting", "change of the outer diameter where the seat runs out in a flat face, mm", dict(feed_mm=-0.10, seat_deg=30.0, upper_deg=0.0),
          0.2 / 0.57735027, 5e-7, upper_cut, TRIANGLE + ", 2z/tan 30°", "limit"),
    Check("Seat cutting", "rise of the stem when 0.08 mm is ground square off the valve face, mm", dict(removed_mm=0.08, angle_deg=45.0),
          0.113137, 5e-7, ground_valve, TRIANGLE + ", n/cos 45°", "limit"),
]
