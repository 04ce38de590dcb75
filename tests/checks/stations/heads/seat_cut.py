"""Outside numbers for cutting a seat, asked of the calculator. Those marked library are worked anew in test_seat_cut.py."""
from math import cos, radians, sin, tan

from tests.checks import Check, Trend, asked

LINES = "sympy geometry: the cones as lines in the section, edges by Line.intersection"
TRIANGLE = "right triangle"
RING = dict(ring_outside="48 mm", ring_height="8 mm", valve_face="4 mm", most_rise="5 mm")
FOURTH = dict(seat_angle="45°", valve_angle="45°", upper_angle="30°", throat_angle="60°")

# The published cases feed the seat cutter only: asked for the very band that this leaves, nothing is left to the other cutters.
FED = {  # entries, feed, outer and inner edge after it in mm
    "fed 0.1 mm": (RING | FOURTH | dict(seat_outer="40 mm", seat_inner="37.5 mm", ring_bore="35 mm", clean_up="0.1 mm"), 0.1, 40.4732, 37.2268),
    "fed 0.15 mm": (RING | FOURTH | dict(seat_outer="33 mm", seat_inner="31 mm", ring_bore="28 mm", clean_up="0.15 mm"), 0.15, 33.7098, 30.5902),
}


def to_the_band(entries, outer, inner):
    """Entries that ask for a band of these edges: the valve stands 0.7 mm over it, along its face."""
    return entries | dict(valve_head=f"{outer + 1.4 * cos(radians(45))!r} mm", from_edge="0.7 mm", band_width=f"{(outer - inner) / 2 / cos(radians(45))!r} mm")


def _fed(entries, feed, outer, inner):
    asked_for = to_the_band(entries, outer, inner)
    return (Check("seat-cut", "feed left for the upper cutter, mm", asked_for, 0.0, 0.00003, asked("seat-cut", "upper_feed", "mm"), LINES, "library"),
            Check("seat-cut", "feed left for the throat cutter, mm", asked_for, 0.0, 0.00003, asked("seat-cut", "throat_feed", "mm"), LINES, "library"),
            Check("seat-cut", "rise of the stem, mm", asked_for, feed, 1e-9, asked("seat-cut", "rise", "mm"), "the valve sinks by the feed", "limit"))


FLAT = dict(seat_angle="30°", valve_angle="30°", upper_angle="15°", ring_outside="48 mm")
UPPER = RING | FOURTH | dict(seat_outer="40 mm", seat_inner="37 mm", ring_bore="35 mm", clean_up="0 mm", valve_head=f"{39.526795 + 1.4 * cos(radians(45))!r} mm",
                             from_edge="0.7 mm", band_width="1 mm")

CHECKS = [
    *(check for case in FED.values() for check in _fed(*case)),
    Check("seat-cut", "width of the present band, mm", FED["fed 0.1 mm"][0] | dict(valve_head="41 mm"), 1.7678, 0.00005, asked("seat-cut", "present_width", "mm"), LINES, "library"),
    Check("seat-cut", "width of the present band, mm", FED["fed 0.15 mm"][0] | dict(valve_head="35 mm"), 1.4142, 0.00005, asked("seat-cut", "present_width", "mm"), LINES, "library"),
    Check("seat-cut", "upper cut that takes 0.473205 mm off the outer diameter, mm", UPPER, 0.1, 5e-7, asked("seat-cut", "upper_feed", "mm"),
          TRIANGLE + ", ΔD = 2a/(tan 45° − tan 30°)", "limit"),
    Check("seat-cut", "inner edge of a 45° band of 1.5 mm, 0.7 mm in on a 35 mm valve, mm", FOURTH, 35 - 1.4 * cos(radians(45)) - 2.12132, 0.00001,
          asked("seat-cut", "inner", "mm"), TRIANGLE + ", 2w·cos 45° = 2.12132 mm", "limit"),
    Check("seat-cut", "inner edge of a 30° band of 1.5 mm, 0.7 mm in on a 35 mm valve, mm", FLAT, 35 - 1.4 * cos(radians(30)) - 2.59808, 0.00001,
          asked("seat-cut", "inner", "mm"), TRIANGLE + ", 2w·cos 30° = 2.59808 mm", "limit"),
    Check("seat-cut", "rise of the stem for 0.08 mm ground square off the valve, mm", dict(clean_up="0 mm", face_ground="0.08 mm"), 0.113137, 5e-7,
          asked("seat-cut", "rise", "mm"), TRIANGLE + ", n/cos 45°", "limit"),
    Check("seat-cut", "valve's edge left, mm", dict(face_ground="0.08 mm", valve_margin="1.5 mm"), 1.5 - 0.113137, 5e-7, asked("seat-cut", "margin_left", "mm"), TRIANGLE + ", n/cos 45°", "limit"),
    Check("seat-cut", "where a 45° valve touches a 46° seat, mm", dict(seat_angle="46°"), 35 - 1.4 * cos(radians(45)), 1e-9, asked("seat-cut", "touch", "mm"),
          "the steeper seat closes outwards: its outer edge", "limit"),
    Check("seat-cut", "gap at the inner edge of that seat, mm", dict(seat_angle="46°"), 1.5 * sin(radians(1)), 1e-9, asked("seat-cut", "gap", "mm"), TRIANGLE + ", w·sin 1°", "limit"),
    Check("seat-cut", "feed into an uncut ring of 31 mm bore for a band from 34.0101 mm, flush with its face, mm", dict(seat_outer="31 mm", seat_inner="31 mm", seat_depth="0 mm"),
          (35 - 1.4 * cos(radians(45)) - 31) / 2 * tan(radians(45)), 1e-9, asked("seat-cut", "seat_feed", "mm"), TRIANGLE + ", (D − d)/2·tan 45°", "limit"),
]

TRENDS = {
    "outer": Trend(rises="valve_head valve_angle", falls="from_edge"),
    "inner": Trend(rises="valve_head seat_angle valve_angle", falls="band_width from_edge"),
    "rise": Trend(rises="face_ground clean_up least_depth", falls="seat_depth"),
    "seat_feed": Trend(rises="clean_up least_depth", falls="seat_depth"),
    "upper_feed": Trend(rises="clean_up least_depth"),
    "throat_feed": Trend(rises="clean_up least_depth"),
    "present_width": Trend(rises="seat_outer seat_angle", falls="seat_inner"),
    "room_inside": Trend(rises="valve_face seat_angle", falls="band_width from_edge valve_angle"),
    "upper_top": Trend(rises="seat_depth clean_up least_depth", falls="upper_angle"),
    "land": Trend(rises="ring_outside upper_angle", falls="seat_depth clean_up least_depth"),
    "below": Trend(rises="ring_height", falls="seat_depth clean_up least_depth"),
    "valve_depth": Trend(rises="seat_depth clean_up least_depth"),
    "touch": Trend(rises="valve_head", falls="from_edge"),
    "gap": Trend(rises="band_width"),
    "margin_left": Trend(rises="valve_margin", falls="face_ground"),
    "rise_total": Trend(rises="face_ground clean_up least_depth stem_risen", falls="seat_depth"),
}
