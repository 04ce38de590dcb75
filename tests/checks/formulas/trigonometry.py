"""Outside numbers for sine bars, pitch circles and cones."""
from math import radians

from calc.formulas import trigonometry as trig
from tests.checks import Check

SINES = "table of sine-bar constants in machinists' handbooks, from memory"
HEXAGON = "a hexagon's side is the radius of its circle"
POLYGON = "side of a regular polygon in a circle of radius 1, tables of polygons in handbooks, from memory"
ISO_1119 = "ISO 1119, angles between the sides of standard cones, from memory"
ISO_297 = "ISO 297, 7/24 taper of tool shanks, 16°35′39.4″ between the sides, from memory"
HANDBOOK = "table of tapers per foot and their angles in machinists' handbooks, from memory"


def sine_height(length_mm, degrees, minutes=0):
    return trig.sine_height(length_mm, radians(degrees + minutes / 60))


def sine_degrees(length_mm, height_mm):
    from math import degrees
    return degrees(trig.sine_angle(length_mm, height_mm))


def chord(circle_mm, holes):
    return trig.chord(circle_mm, holes)


def between_sides(one_in):
    from math import degrees
    return degrees(2 * trig.side_angle(1 / one_in))


def between_sides_per_foot(inches_per_foot):
    from math import degrees
    return degrees(2 * trig.side_angle(inches_per_foot / 12))


def dms(degrees, minutes, seconds):
    return degrees + minutes / 60 + seconds / 3600


CHECKS = [
    Check("Sine bar", "blocks, mm", {"length_mm": 100, "degrees": 5, "minutes": 30}, 9.58458, 0.000005, sine_height, SINES, "handbook"),
    Check("Sine bar", "blocks, mm", {"length_mm": 100, "degrees": 12.5}, 21.644, 0.0005, sine_height, SINES, "handbook"),
    Check("Sine bar", "blocks, in", {"length_mm": 5, "degrees": 30}, 2.5, 1e-9, sine_height, "sin 30° is a half", "limit"),
    Check("Sine bar", "blocks, mm", {"length_mm": 100, "degrees": 45}, 70.71068, 0.000005, sine_height, SINES, "handbook"),
    Check("Sine bar", "angle, °", {"length_mm": 100, "height_mm": 50}, 30, 1e-9, sine_degrees, "sin 30° is a half", "limit"),
    Check("Pitch circle", "centre to centre of neighbours, mm", {"circle_mm": 120, "holes": 6}, 60, 1e-9, chord, HEXAGON, "limit"),
    Check("Pitch circle", "centre to centre of neighbours, mm", {"circle_mm": 100, "holes": 2}, 100, 1e-9, chord, "two holes lie a diameter apart", "limit"),
    Check("Pitch circle", "centre to centre of neighbours, mm", {"circle_mm": 2, "holes": 3}, 1.7320508, 5e-8, chord, POLYGON, "handbook"),
    Check("Pitch circle", "centre to centre of neighbours, mm", {"circle_mm": 2, "holes": 5}, 1.1755705, 5e-8, chord, POLYGON, "handbook"),
    Check("Pitch circle", "centre to centre of neighbours, mm", {"circle_mm": 2, "holes": 12}, 0.5176381, 5e-8, chord, POLYGON, "handbook"),
    *(Check("Taper", "angle between the sides, °", {"one_in": x}, dms(*angle), 0.06 / 3600, between_sides, ISO_1119, "standard")
      for x, angle in ((3, (18, 55, 28.7)), (5, (11, 25, 16.3)), (10, (5, 43, 29.3)), (20, (2, 51, 51.1)), (50, (1, 8, 45.2)), (100, (0, 34, 22.6)))),
    Check("Taper", "angle between the sides, °", {"one_in": 24 / 7}, dms(16, 35, 39.4), 0.06 / 3600, between_sides, ISO_297, "standard"),
    Check("Taper", "angle between the sides, °", {"inches_per_foot": 0.6}, dms(2, 51, 51), 0.6 / 3600, between_sides_per_foot, HANDBOOK, "handbook"),
    Check("Taper", "angle between the sides, °", {"inches_per_foot": 3.5}, dms(16, 35, 39), 0.6 / 3600, between_sides_per_foot, HANDBOOK, "handbook"),
]
