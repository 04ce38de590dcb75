"""Outside numbers for stress in a spinning disc, flat, stepped and tapered."""
from calc.formulas import rotating_disc
from tests.checks import Check

BVP = "scipy 1.17.1: solve_bvp of the rotating disc in plane stress, thickness h(r)"
MATCHED = "numpy 2.4.6: ring constants matched at the steps; quadratic finite elements agree within 0.4 %"
IRON = dict(density=7150.0, nu=0.26)
STEPS_1 = ((20, 60, 30), (60, 105, 10), (105, 140, 28))
STEPS_2 = ((30, 110, 14), (110, 140, 30))


def taper(inner, outer, at_inner, at_outer, rings=200):
    """A straight taper as many thin steps, mm."""
    wide = (outer - inner) / rings
    return tuple((inner + n * wide, inner + (n + 1) * wide, at_inner + (at_outer - at_inner) * (n + 0.5) / rings) for n in range(rings))


def spun(steps, turns, density, nu, E=110.0):
    return rotating_disc.spinning([(a / 1e3, b / 1e3, h / 1e3) for a, b, h in steps], density, turns / 60, E * 1e9, nu)


def stress(steps, what):
    def got(turns, density, nu):
        disc = spun(steps, turns, density, nu)
        return {"bore": disc.at(steps[0][0] / 1e3, 0).hoop, "rim": disc.at(steps[-1][1] / 1e3).hoop, "peak": disc.greatest_hoop().hoop, "growth": 1e12 * disc.at(steps[-1][1] / 1e3).growth}[what] / 1e6

    return got


def radial(steps):
    def got(turns, density, nu):
        disc = spun(steps, turns, density, nu)
        (a, b, _), = steps
        return disc.at((a * b) ** 0.5 / 1e3).radial / 1e6

    return got


def flat(what):
    def got(inner, outer, turns, density, nu):
        worked = rotating_disc.flat_bore_hoop if what == "bore" else rotating_disc.flat_rim_hoop
        return worked(inner / 1e3, outer / 1e3, density, turns / 60, nu) / 1e6

    return got


def _row(what, steps, turns, expected, tolerance, which, source, kind, of=IRON):
    return Check("Spinning disc", what, dict(turns=turns, **of), expected, tolerance, stress(steps, which), source, kind)


FLAT = ((30, 140, 20),)
CHECKS = [
    Check("Spinning disc", "hoop at the bore, flat, radius 30 to 140 mm, 6000 1/min, MPa", dict(inner=30, outer=140, turns=6000, **IRON), 45.56, 0.005, flat("bore"), BVP, "library"),
    Check("Spinning disc", "hoop at the rim, the same, MPa", dict(inner=30, outer=140, turns=6000, **IRON), 12.306, 5e-4, flat("rim"), BVP, "library"),
    Check("Spinning disc", "greatest radial stress, the same, MPa", dict(turns=6000, **IRON), 13.918, 5e-4, radial(FLAT), BVP, "library"),
    Check("Spinning disc", "hoop at the bore, flat, radius 50 to 135 mm, 7000 1/min, steel, MPa", dict(inner=50, outer=135, turns=7000, density=7800, nu=0.3), 64.852, 5e-4, flat("bore"), BVP, "library"),
    Check("Spinning disc", "hoop at the rim, the same, MPa", dict(inner=50, outer=135, turns=7000, density=7800, nu=0.3), 22.012, 5e-4, flat("rim"), BVP, "library"),
    Check("Spinning disc", "in the middle without a bore, radius 140 mm, 6000 1/min, MPa", dict(turns=6000, **IRON), 22.545, 5e-4, stress(((0, 140, 20),), "peak"), "(3 + ν)/8·ρ·ω²·R²", "limit"),
    Check("Spinning disc", "with a bore of 0.002 mm: twice that, MPa", dict(turns=6000, **IRON), 45.09, 5e-3, stress(((0.001, 140, 20),), "bore"), "the smallest hole doubles it", "limit"),
    _row("thin ring, radius 130 to 131 mm, 6000 1/min, MPa", ((130, 131, 5),), 6000, 48.071, 0.5, "bore", "ρ·ω²·r² of a thin ring, at its middle", "limit"),
    _row("tapered, 30 mm thick at radius 30 to 12 mm at 138 mm, 6500 1/min, hoop at the bore, MPa", taper(30, 138, 30, 12), 6500, 39.683, 0.13, "bore", BVP, "library"),
    _row("the same, hoop at the rim, MPa", taper(30, 138, 30, 12), 6500, 11.292, 0.04, "rim", BVP, "library"),
    _row("stepped 30, 10 and 28 mm thick, 6000 1/min, outside grows on the radius, µm", STEPS_1, 6000, 17.737, 5e-4, "growth", MATCHED, "library"),
    _row("stepped 14 and 30 mm thick, 6500 1/min, the same, µm", STEPS_2, 6500, 24.555, 5e-4, "growth", MATCHED, "library"),
]
