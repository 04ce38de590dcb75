"""Outside numbers for bearing shells in their housing. Those marked library are worked anew in test_shell_fit.py."""
from calc.formulas import press_fit as fit
from calc.formulas import shell_fit
from tests.checks import Check

MM, GPA, MPA = 1e-3, 1e9, 1e6
RINGS = "numpy 2.4.6, constants of both rings from four equations; quadratic finite elements agree within 0.3 %"
BVP = "scipy solve_bvp on u″ + u′/r − u/r² = 0 in shell and housing, with free thermal strain"
SHELL = (207.0, 0.29)
EYE = dict(bore=58.0, wall=1.970, outside=80.0, proud=0.030, E=205.0, nu=0.29)  # the check says "steel": 205 GPa is what its numbers are of
CASE = dict(bore=65.0, wall=2.500, outside=110.0, proud=0.035, E=45.0, nu=0.35)
SOFT = dict(bore=65.010, wall=2.000, outside=100.0, crush=0.060, E=45.0, nu=0.35)
HOT = dict(housing_strain=26e-6 * 60, shell_strain=11.5e-6 * 75)


def pressed(bore, wall, outside, E, nu, proud=0.0, crush=None, housing_strain=0.0, shell_strain=0.0):
    """Pressure (Pa), and the housing's and the wall's move (m)."""
    D, w, d_o = bore * MM, wall * MM, outside * MM
    grip = shell_fit.interference(proud * MM) if crush is None else crush * MM
    give = fit.joint_compliance(D - 2 * w, D, d_o, SHELL[0] * GPA, SHELL[1], E * GPA, nu)
    p = fit.contact_pressure(fit.interference_at(grip, D, shell_strain, housing_strain), D, give)
    return p, shell_fit.housing_opens(p, D, d_o, E * GPA, nu), shell_fit.wall_thickens(p, D, w, SHELL[0] * GPA, SHELL[1])


def pressure(**x):
    return pressed(**x)[0] / MPA


def bore_of(housing_strain=0.0, shell_strain=0.0, **x):
    _, opened, thickened = pressed(**x, housing_strain=housing_strain, shell_strain=shell_strain)
    return shell_fit.fitted_bore(x["bore"] * MM, x["wall"] * MM, opened, thickened, housing_strain, shell_strain) / MM


def journal_room(journal, journal_strain=0.0, **x):
    return bore_of(**x) - journal * (1 + journal_strain)


CHECKS = [
    *(row for words, case, values in (
        ("steel eye", EYE, (0.0191, 3.898, -57.37, 12.53, 3.866)),
        ("magnesium case", CASE, (0.02228, 3.036, -39.46, 6.293, 10.62)),
    ) for row in (
        Check("Bearing shells", f"interference 2a/π, {words}, mm", case, values[0], 5e-6, lambda **x: shell_fit.interference(x["proud"] * MM) / MM, "two excesses of a on the circumference", "limit"),
        Check("Bearing shells", f"grip, {words}, MPa", case, values[1], 1e-3, pressure, RINGS, "library"),
        Check("Bearing shells", f"mean hoop in the shell, {words}, MPa", case, values[2], 1e-2, lambda **x: shell_fit.mean_hoop(pressed(**x)[0], x["bore"] * MM, x["wall"] * MM) / MPA, RINGS, "library"),
        Check("Bearing shells", f"hoop at the housing's bore, {words}, MPa", case, values[3], 6e-3, lambda **x: fit.outer_joint_hoop(pressed(**x)[0], x["bore"] * MM, x["outside"] * MM) / MPA, RINGS, "library"),
        Check("Bearing shells", f"housing opens by, {words}, µm", case, values[4], 5e-3, lambda **x: pressed(**x)[1] * 1e6, RINGS, "library"),
    )),
    Check("Bearing shells", "fitted bore, soft case, cold, mm", SOFT, 61.0368, 5e-5, bore_of, RINGS, "library"),
    Check("Bearing shells", "grip, soft case, cold, MPa", SOFT, 6.72165, 5e-6, pressure, RINGS, "library"),
    Check("Bearing shells", "fitted bore, soft case, 60 K and 75 K warmer, mm", SOFT | HOT, 61.1145, 5e-5, bore_of, RINGS, "library"),
    Check("Bearing shells", "grip, soft case, 60 K and 75 K warmer, MPa", SOFT | HOT, 1.64182, 5e-6, pressure, RINGS, "library"),
    Check("Bearing shells", "clearance on a journal of 60.955 mm, cold, mm", SOFT | dict(journal=60.955), 0.08178, 5e-6, journal_room, RINGS, "library"),
    Check("Bearing shells", "clearance on that journal 80 K warmer, mm", SOFT | HOT | dict(journal=60.955, journal_strain=11.5e-6 * 80), 0.1034, 5e-5, journal_room, RINGS, "library"),
    Check("Bearing shells", "simple sum without crush, hot, mm", SOFT | HOT | dict(crush=0.0, journal=60.955, journal_strain=11.5e-6 * 80), 0.09689, 5e-6, journal_room, "each part grown by its own expansion", "limit"),
]
