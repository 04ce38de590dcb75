"""Shear areas, shares of thread and readings over wires that stand elsewhere."""
from calc.formulas import screw_threads as screw
from calc.reference.standards.threads import INCH, THREADS, external, internal
from tests.checks import Check

LIBRARY = "screw_thread_lib 0.0.6 (PyPI), {} with its own ASME B1.1-2019 sizes"
WIRES = "Machinery's Handbook, M = E + 3W − 0.86603·P, from memory"
TAPS = "Machinery's Handbook, tap drill sizes, from memory"


def hole_area_in2(thread, length_in):
    t = THREADS[thread]
    return screw.hole_shear_area(t.P, length_in * INCH, external(t, "2A").major.low, internal(t, "2B").pitch.high) / INCH ** 2


def bolt_area_in2(thread, length_in):
    t = THREADS[thread]
    return screw.bolt_shear_area(t.P, length_in * INCH, external(t, "2A").pitch.low, internal(t, "2B").minor.high) / INCH ** 2


def over_wires(pitch_diameter, pitch, wire):
    return screw.over_wires(pitch_diameter, pitch, wire, 3)


CHECKS = [
    *(Check("Shear area of threads", "hole's, 2A/2B, in²", {"thread": thread, "length_in": 0.5}, expected, 5.1e-6 if expected < 1 else 5e-5, hole_area_in2, LIBRARY.format("ASn_min_FEDSTD_2a"), "library")
      for thread, expected in (("1/4-20", 0.26949), ("1/2-13", 0.56174))),
    *(Check("Shear area of threads", "bolt's, 2A/2B, in²", {"thread": thread, "length_in": 0.5}, expected, 5.1e-6, bolt_area_in2, LIBRARY.format("ASs_min_FEDSTD_4a"), "library")
      for thread, expected in (("1/4-20", 0.18398), ("1/2-13", 0.38947))),
    Check("Three wires", "best wire of a pitch of 1.5 mm, mm", {"pitch": 1.5}, 0.86603, 5e-6, screw.best_wire, WIRES, "handbook"),
    Check("Three wires", "reading over M10×1.5 without lead, mm", {"pitch_diameter": 9.02572, "pitch": 1.5, "wire": 0.8660254}, 10.32476, 1.1e-5, over_wires, WIRES, "handbook"),
    Check("Three wires", "reading over M6×1 without lead, mm", {"pitch_diameter": 5.35048, "pitch": 1.0, "wire": 0.57735}, 6.21651, 1.1e-5, over_wires, WIRES, "handbook"),
    Check("Tap drill", "75 % of ¼-20, in", {"nominal": 0.25, "pitch": 0.05, "share": 0.75}, 0.2013, 5e-5, lambda nominal, pitch, share: screw.drill_for(nominal, pitch, share, screw.FULL_CUT), TAPS, "handbook"),
    Check("Tap drill", "65 % of ¼-20 for a forming tap, D − 0.0068·65/20, in", {"nominal": 0.25, "pitch": 0.05, "share": 0.65}, 0.2279, 5e-5,
          lambda nominal, pitch, share: screw.drill_for(nominal, pitch, share, screw.FULL_FORMED), TAPS, "handbook"),
]
