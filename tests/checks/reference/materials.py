"""Outside numbers for the table of materials: that our rounded values are those of the grades they claim to be."""
from calc.reference.materials import REFERENCE, material
from tests.checks import Check

KELVIN = 273.15
NIST = "NIST cryogenic material properties, fit of linear expansion"
# (L − L293)/L293 in 1e-5 as a polynomial of the temperature in K, as published.
NIST_FITS = {
    "aluminium alloy 6061": (-4.1277e2, -3.0389e-1, 8.7696e-3, -9.9821e-6, 0.0),
    "nickel steel": (-2.104e2, -5.699e-2, 5.072e-3, -1.381e-5, 1.897e-8),
    "copper–beryllium": (-3.1150e2, -4.4498e-1, 1.0133e-2, -2.4718e-5, 2.6277e-8),
    "austenitic steel": (-2.9554e2, -3.9811e-1, 9.2683e-3, -2.0261e-5, 1.7127e-8),
}


def nist_strain(name: str, temperature: float) -> float:
    return sum(c * temperature ** i for i, c in enumerate(NIST_FITS[name])) * 1e-5


def alpha(id):
    """Mean coefficient from 20 to 100 °C as a row of `inputs` cannot name the grade: one function a grade."""
    return lambda: material(id).mean_alpha(100 + KELVIN) * 1e6


def to(id):
    return lambda celsius: material(id).mean_alpha(celsius + KELVIN) * 1e6


def yields(id):
    return lambda celsius: material(id).yield_at(celsius + KELVIN) / 1e6


def shrinks(id):
    """Shrinkage from 20 °C, %."""
    return lambda celsius: -material(id).strain_at(celsius + KELVIN) * 100


def seen_too_large(length_mm, part_C):
    """Aluminium read with a steel gauge at 20 °C, µm."""
    return length_mm * 1e3 * material("al-si-t6").strain_at(part_C + KELVIN)


def nist_row(what, id, name, celsius, tolerance):
    return Check("Materials", f"{what}, shrinkage from 20 °C, %", dict(celsius=celsius),
                 round(-nist_strain(name, celsius + KELVIN) * 100, 4), tolerance, shrinks(id), f"{NIST}, {name}", "handbook")


EXPANSION = "expansion 20–100 °C, 1e-6/K"
CALLISTER = "Callister & Rethwisch, Fundamentals of Materials Science and Engineering, 3rd ed., table B.6"
EN_1561 = "EN 1561, informative annex, from memory"

CHECKS = [
    Check("Materials", f"Al–Si casting: {EXPANSION}", {}, 21.5, 0.3, alpha("al-si-t6"), CALLISTER + ", alloy 356.0", "handbook"),
    Check("Materials", f"magnesium AZ91: {EXPANSION}", {}, 26.0, 0.3, alpha("mg-az91"), CALLISTER + ", AZ91D", "handbook"),
    Check("Materials", f"ductile iron: {EXPANSION}", {}, 11.2, 0.3, alpha("ductile-iron"), CALLISTER + ", 60-40-18", "handbook"),
    Check("Materials", f"tin bronze: {EXPANSION}", {}, 18.0, 0.5, alpha("bronze"), CALLISTER + ", bearing bronze C93200", "handbook"),
    Check("Materials", f"brass: {EXPANSION}", {}, 20.5, 0.5, alpha("brass"), CALLISTER + ", free-cutting C36000", "handbook"),
    Check("Materials", "grey iron: expansion −100–20 °C, 1e-6/K", dict(celsius=-100.0), 10.0, 0.5, to("grey-iron"), EN_1561, "standard"),
    Check("Materials", "grey iron: expansion 20–200 °C, 1e-6/K", dict(celsius=200.0), 11.7, 0.1, to("grey-iron"), EN_1561, "standard"),
    Check("Materials", "grey iron: expansion 20–400 °C, 1e-6/K", dict(celsius=400.0), 13.0, 0.1, to("grey-iron"), EN_1561, "standard"),
    Check("Materials", "steel: expansion 20–300 °C, 1e-6/K", dict(celsius=300.0), 12.8, 0.2, to("forged-steel"),
          "ASM Metals Handbook vol. 1, low-carbon steel, from memory", "handbook"),
    Check("Materials", "Al–Si casting: expansion 20–300 °C, 1e-6/K", dict(celsius=300.0), 23.5, 0.3, to("al-si-t6"),
          "ASM Metals Handbook vol. 2, A356.0, from memory", "handbook"),
    *(Check("Materials", f"{words}: expansion 20–{celsius} °C, 1e-6/K", dict(celsius=float(celsius)), expected, 0.3, to(id), "EN 10090, informative table, from memory", "standard")
      for id, words, celsius, expected in (("valve-steel", "martensitic valve steel", 300, 11.2), ("valve-steel", "martensitic valve steel", 500, 11.5),
                                           ("austenitic-valve-steel", "austenitic valve steel", 500, 18.0))),
    nist_row("steel in dry ice", "forged-steel", "nickel steel", -78.5, 0.003),
    nist_row("steel in liquid nitrogen", "forged-steel", "nickel steel", -195.8, 0.005),
    # Less silicon expands more: 6061 has 23.6 where the casting has 21.5, so its shrinkage is taken down by that.
    Check("Materials", "Al–Si casting in liquid nitrogen, shrinkage from 20 °C, %", dict(celsius=-195.8), 0.389 * 21.5 / 23.6, 0.01,
          shrinks("al-si-t6"), f"{NIST}, aluminium alloy 6061, × 21.5/23.6 for the silicon", "handbook"),
    *(Check("Materials", "Al–Si–Cu casting, yield after conditioning, MPa", dict(celsius=celsius), expected, 0.12 * expected, yields("al-si-cu-t6"),
            "Modern Casting, July 2018, p. 39, table 2: A356 + 0.5 % Cu, T6", "handbook")
      for celsius, expected in ((20.0, 269.0), (150.0, 235.0), (200.0, 163.0), (250.0, 84.0), (300.0, 39.0))),
    *(Check("Materials", "Al–Si casting, yield after long heating, MPa", dict(celsius=celsius), expected, 0.02 * expected, yields("al-si-t6"),
            "typical of 356.0-T6 after 10 000 hours, aluminium handbooks, from memory", "handbook")
      for celsius, expected in ((150.0, 140.0), (205.0, 60.0), (260.0, 34.0))),
    Check("Materials", "Al–Si casting, yield at 20 °C, MPa", dict(celsius=20.0), 207.0, 10.0, yields("al-si-t6"),
          "ASM Metals Handbook vol. 2, A356.0-T61 permanent mould, from memory", "handbook"),
    Check("Materials", "shear modulus of spring steel, GPa", {}, 79.3, 0.5, lambda: material("spring-steel").shear_modulus / 1e9,
          "usual value for spring wire, from memory", "handbook"),
    Check("Materials", "50 mm of aluminium at 35 °C read with steel at 20 °C is too large by, µm", dict(length_mm=50.0, part_C=35.0),
          16.0, 0.5, seen_too_large, "d·α·ΔT with α 21.5", "limit"),
    Check("Materials", "size change at the reference temperature", {}, 0.0, 1e-15, lambda: material("al-si-t6").strain_at(REFERENCE),
          "ISO 1: sizes are stated at 20 °C", "standard"),
]
