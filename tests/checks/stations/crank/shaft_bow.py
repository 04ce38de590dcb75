"""Outside numbers for the bow of a crank, asked of the calculator. Those marked library are worked anew in test_shaft_bow.py."""
from math import cos, radians

from tests.checks import Check, asked

FIT = "scipy least_squares and numpy lstsq of mean, once-round and twice-round part"
MADE = "readings made of orthogonal parts: the oval must not read as bow"
READ = (0, 11, 23, 30, 24, 12, 2, -5)  # µm at 0, 45 … 315°
TWO_PARTS = tuple(12 * cos(radians(t - 70)) + 4 * cos(2 * radians(t - 20)) for t in range(0, 360, 45))  # µm


def dial(values):
    """Readings in µm, None where one is left out."""
    return dict(readings=" | ".join("" if y is None else f"{y / 1000:.12f} mm" for y in values))


CHECKS = [
    *(Check("shaft-bow", f"{what} of 0 11 23 30 24 12 2 −5 µm at 45° steps, {unit}", dial(READ), value, tolerance, asked("shaft-bow", output, unit), FIT, "library")
      for output, what, unit, value, tolerance in (("bow", "axis off by", "µm", 16.72, 0.005), ("high", "high side", "°", 137.7, 0.05), ("oval", "out of round", "µm", 2.236, 0.0005), ("total", "reading in all", "µm", 35.0, 1e-6))),
    *(Check("shaft-bow", f"{what} of 12·cos(t − 70°) + 4·cos 2(t − 20°) µm, {unit}", dial(TWO_PARTS), value, tolerance, asked("shaft-bow", output, unit), MADE, "limit")
      for output, what, unit, value, tolerance in (("bow", "axis off by", "µm", 12.0, 1e-4), ("high", "high side", "°", 70.0, 1e-4), ("oval", "out of round", "µm", 16.0, 1e-3), ("total", "reading in all", "µm", 27.79, 0.005))),
    Check("shaft-bow", "axis off by, of the same at 0, 90, 180 and 270° alone, µm", dial(y if n % 2 == 0 else None for n, y in enumerate(TWO_PARTS)), 12.0, 1e-4, asked("shaft-bow", "bow", "µm"), MADE, "limit"),
]

