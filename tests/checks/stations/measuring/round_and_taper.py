"""Outside numbers for round and straight, asked of the calculator: bodies whose widths are known."""
from math import cos, pi, radians

from tests.checks import Check, Trend, asked


def width(support, degrees):
    """Width of a convex body across a direction: its support function both ways (mm)."""
    a = radians(degrees)
    return support(a) + support(a + pi)


def oval(a):
    return (26.010 ** 2 * cos(a) ** 2 + 26.000 ** 2 * (1 - cos(a) ** 2)) ** 0.5  # ellipse of half axes 26.010 and 26.000


def three_cornered(a):
    return 26.0 + 0.010 * cos(3 * a)


def stations(support, *growth):
    """Four directions at each station, the body growing by so much on the diameter (mm)."""
    return "|".join(";".join(f"{width(support, d) + more:.9f}" for d in (0, 90, 45, 135)) for more in growth)


FREE = dict(low="", high="", round_limit="", taper_limit="")

CHECKS = [
    Check("round-and-taper", "ellipse of axes 52.020 and 52.000, out of round, mm", dict(diameters=stations(oval, 0, 0), **FREE), 0.020, 1e-8, asked("round-and-taper", "out_of_round", "mm"),
          "an ellipse's least and greatest widths are its axes", "limit"),
    Check("round-and-taper", "cone that grows by 5 µm a station, taper, mm", dict(diameters=stations(oval, 0, 0.005, 0.010), **FREE), 0.010, 1e-8, asked("round-and-taper", "taper", "mm"),
          "every direction of a cone grows alike", "limit"),
    Check("round-and-taper", "three-cornered body of constant width, out of round, mm", dict(diameters=stations(three_cornered, 0, 0), **FREE), 0.0, 1e-8,
          asked("round-and-taper", "out_of_round", "mm"), "h(φ) + h(φ + π) = 2R for h = R + a·cos 3φ: two-point gauges see nothing", "limit"),
]

TRENDS = {
    "taper_100": Trend(falls="length"),
    "mean": Trend(rises="diameters"),
    "largest": Trend(rises="diameters"),
    "smallest": Trend(rises="diameters"),
}
