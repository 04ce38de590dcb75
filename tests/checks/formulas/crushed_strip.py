"""Outside numbers for crushed strips. Those marked library are worked anew in test_crushed_strip.py."""
from calc.formulas.crushed_strip import gap
from tests.checks import Check

# invented scale of a strip 0.30 mm thick that keeps its section
SCALE = ((0.025, 2.83), (0.038, 1.86), (0.051, 1.39), (0.064, 1.10), (0.076, 0.93))
# marks are printed to 0.01 mm of width, which is 0.2 µm of gap
SECTION = "constant section: gap times width of 0.0707 mm², the section of a strip 0.30 mm thick"
CHECKS = [
    Check("Crushed strip", "gap of a strip 1.5708 mm wide, mm", dict(width=1.5708), 0.04507, 5e-6, lambda width: gap(width, SCALE), "straight line in 1/gap over the width, by numpy.interp", "library"),
    Check("Crushed strip", "the same, true, mm", dict(width=1.5708), 0.045, 1e-4, lambda width: gap(width, SCALE), SECTION, "limit"),
    Check("Crushed strip", "the same by a monotone cubic, mm", dict(width=1.5708), 0.04513, 1e-4, lambda width: gap(width, SCALE), "scipy PchipInterpolator", "library"),
    Check("Crushed strip", "gap of 1.45 mm, mm", dict(width=1.45), 0.0487, 2e-4, lambda width: gap(width, SCALE), SECTION, "limit"),
    Check("Crushed strip", "gap of 1.25 mm, mm", dict(width=1.25), 0.0565, 1e-4, lambda width: gap(width, SCALE), SECTION, "limit"),
    Check("Crushed strip", "taper between both, mm", dict(wide=1.45, narrow=1.25), 0.0078, 2e-4, lambda wide, narrow: gap(narrow, SCALE) - gap(wide, SCALE), SECTION, "limit"),
]
