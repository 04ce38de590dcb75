"""Outside numbers for helical springs. Those marked library are worked anew in test_spring.py, but for springcalc's."""
from calc.formulas import spring
from tests.checks import Check

MM, GPA, MPA = 1e-3, 1e9, 1e6
CHAIN = "scipy eigh_tridiagonal: 4000 masses between springs, held at both ends"
WAHL = "Wahl, as in Shigley's Mechanical Engineering Design, from memory"
SPRINGCALC = "springcalc 0.1.24, CompressionSpring"
SIZES = {  # wire, mean diameter, active turns in mm, shear modulus in GPa
    "of 4 mm wire": (4.0, 27.0, 5.0, 79.3),
    "of 3.6 mm wire": (3.6, 22.4, 4.5, 78.5),
    "of 5.5 turns": (4.0, 27.0, 5.5, 79.5),
}
NAMES = ("wire_mm", "mean_mm", "active", "modulus_GPa")


def sizes(name, **more):
    return dict(zip(NAMES, SIZES[name], strict=True)) | more


def rate(wire_mm, mean_mm, active, modulus_GPa):
    return spring.rate(modulus_GPa * GPA, wire_mm * MM, mean_mm * MM, active) / 1000


def load(free_mm, height_mm, **s):
    return spring.load_at(height_mm * MM, 0.0, free_mm * MM, rate(**s) * 1000)


def stress(free_mm, height_mm, **s):
    wire, mean = s["wire_mm"] * MM, s["mean_mm"] * MM
    return spring.shear_stress(load(free_mm, height_mm, **s), wire, mean, spring.wahl(spring.index(wire, mean))) / MPA


def surge(density, **s):
    return spring.surge_frequency(rate(**s) * 1000, spring.active_mass(s["wire_mm"] * MM, s["mean_mm"] * MM, s["active"], density))


def wahl(index):
    return spring.wahl(index)


def endurance(amplitude, mean, amplitude_borne, mean_borne, shear_strength):
    return spring.endurance_share(amplitude, mean, amplitude_borne, mean_borne, shear_strength)


BRENTQ = "scipy brentq: how far both stresses may grow before they meet the line"
CHECKS = [
    Check("Helical spring", "rate, N/mm", sizes("of 5.5 turns"), 23.5, 0.05, rate, SPRINGCALC, "library"),
    Check("Helical spring", "load, N", sizes("of 5.5 turns", free_mm=50.0, height_mm=31.0), 446.5, 0.05, load, SPRINGCALC, "library"),
    Check("Helical spring", "shear stress, MPa", sizes("of 5.5 turns", free_mm=50.0, height_mm=31.0), 585.93, 0.02, stress, SPRINGCALC + " (π taken as 3.1416)", "library"),
    Check("Helical spring", "natural frequency, Hz", sizes("of 4 mm wire", density=7850.0), 392.53, 0.005, surge, CHAIN, "library"),
    Check("Helical spring", "natural frequency, Hz", sizes("of 3.6 mm wire", density=7850.0), 567.41, 0.005, surge, CHAIN, "library"),
    Check("Helical spring", "Wahl's factor", dict(index=6.0), 1.2525, 0.00005, wahl, WAHL, "handbook"),
    Check("Helical spring", "Wahl's factor", dict(index=10.0), 1.1448, 0.00005, wahl, WAHL, "handbook"),
    Check("Helical spring", "Wahl's factor of a nearly straight bar", dict(index=1e9), 1.0, 1e-8, wahl, "plain torsion", "limit"),
    Check("Helical spring", "share of endless life, stress 167 MPa about 505 MPa", dict(amplitude=167.0, mean=505.0, amplitude_borne=398.0, mean_borne=534.0, shear_strength=1206.0),
          0.6525455, 5e-8, endurance, BRENTQ, "library"),
    Check("Helical spring", "share of endless life at the stress that is just borne", dict(amplitude=241.0, mean=379.0, amplitude_borne=241.0, mean_borne=379.0, shear_strength=1000.0),
          1.0, 1e-12, endurance, "Goodman's line goes through that point", "limit"),
    Check("Helical spring", "share of strength under a steady stress", dict(amplitude=0.0, mean=500.0, amplitude_borne=241.0, mean_borne=379.0, shear_strength=1000.0),
          0.5, 1e-12, endurance, "stress over strength", "limit"),
]
