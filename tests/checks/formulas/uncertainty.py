"""Worked numbers of the GUM (JCGM 100:2008), from memory; its rounding sets the tolerances."""
from calc.formulas import uncertainty as gum
from tests.checks import Check

TEMPERATURES = (96.90, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07,
                100.33, 100.42, 100.68, 100.95, 101.11, 101.20, 101.57, 101.84, 102.36, 102.72)  # table 1, °C
# Annex H.1, end-gauge calibration: standard uncertainties in nm and degrees of freedom, in the order of table H.1.
H1 = {"standard": (25.0, 18), "difference": (9.7, 25.6), "expansion": (2.9, 50), "temperature": (16.6, 2)}
GUM = "GUM (JCGM 100:2008), {}, from memory"


def spread(**_):
    return gum.spread(TEMPERATURES, gum.mean(TEMPERATURES))


def combined(**parts):
    return gum.combined(parts.values())


def freedom(**parts):
    """Degrees of freedom of the GUM's own components, by name."""
    return gum.effective_freedom(gum.combined(parts.values()), [(u, H1[name][1]) for name, u in parts.items()])


PARTS = {name: u for name, (u, _) in H1.items()}
CHECKS = [
    Check("Uncertainty", "mean of 20 readings, °C", {"n": 20}, 100.145, 0.0005, lambda n: gum.mean(TEMPERATURES), GUM.format("4.4.3, table 1"), "standard"),
    Check("Uncertainty", "spread of 20 readings, °C", {"n": 20}, 1.489, 0.0005, spread, GUM.format("4.4.3, table 1"), "standard"),
    Check("Uncertainty", "uncertainty of the mean of 20 readings, °C", {"s": 1.489, "n": 20}, 0.333, 0.0005, gum.of_mean, GUM.format("4.4.3"), "standard"),
    Check("Uncertainty", "copper's expansion within ± 0.40, 10⁻⁶/K", {"half_width": 0.40}, 0.23, 0.005, gum.rectangular, GUM.format("4.3.7, example 1"), "standard"),
    Check("Uncertainty", "a digital step of 1", {"division": 1.0}, 0.29, 0.005, gum.resolution, GUM.format("F.2.2.1"), "standard"),
    Check("Uncertainty", "end gauge, combined, nm", PARTS, 32, 0.5, combined, GUM.format("H.1.4"), "standard"),
    Check("Uncertainty", "end gauge, effective degrees of freedom", PARTS, 16.7, 0.3, freedom, GUM.format("H.1.6"), "standard"),
    Check("Uncertainty", "end gauge, factor for 99 % and 16 degrees of freedom", {"probability": 0.99, "freedom": 16}, 2.92, 0.005, gum.coverage_factor, GUM.format("H.1.6"), "standard"),
    Check("Uncertainty", "end gauge, product of the doubts of expansion and temperature, nm", {"length": 50e6, "part_alpha": 0, "gauge_alpha": 0, "alpha_half_width": 1e-6 / 2 ** 0.5, "off": 0.41 * 3 ** 0.5},
          11.7, 0.2, gum.room_warmth, GUM.format("H.1.7: 50 mm · 0.58·10⁻⁶/°C · 0.41 °C"), "standard"),
    *(Check("Uncertainty", f"Student's t, {percent} %, {freedom} degrees of freedom", {"probability": percent / 100, "freedom": freedom}, t, 0.005, gum.coverage_factor, GUM.format("table G.2"), "standard")
      for percent, freedom, t in ((95, 1, 12.71), (95, 2, 4.30), (95, 4, 2.78), (95, 10, 2.23), (95, 20, 2.09), (95, 100, 1.984), (99, 5, 4.03), (99, 10, 3.17))),
]
