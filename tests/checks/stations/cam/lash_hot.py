"""Outside numbers for lash, cold and running. Those marked library are worked anew in test_lash_hot.py."""
from calc.formulas.press_fit import free_strain
from calc.stations.cam.lash_hot.chains import lash_after
from tests.checks import Check, Trend, asked

CHAINS = "free expansion of two chains closed at the rocker; α of 26, 11, 21.5, 11.5 and 12·10⁻⁶/K, from memory"
E = 1e-6


def grown(length, alpha, rise):
    """mm, of a length in mm."""
    return length * free_strain(alpha * E, 293.15 + rise, 293.15)


def train(pushrod_alpha) -> float:
    """Case 60 mm of magnesium, cylinder 110 of iron, head 70 of aluminium; lifter 40 and pushrod 270 mm."""
    return grown(60, 26, 70) + grown(110, 11, 150) + grown(70, 21.5, 140) - grown(40, 11.5, 90) - grown(270, pushrod_alpha, 80)


def lash_at_heat(lash_mm) -> float:
    """Arms 40 and 36 mm; valve 112 mm against 72 mm of head."""
    return lash_after(lash_mm, train(11.5), grown(112, 12, 320) - grown(72, 21.5, 140), 40 / 36)


COLD = dict(lash="0.15 mm", case_temperature="20 °C", cylinder_temperature="20 °C", head_temperature="20 °C", valve_temperature="20 °C", rod_temperature="20 °C")
CHECKS = [
    Check("lash-hot", "pushrod's side opens by, mm", dict(pushrod_alpha=11.5), 0.2116, 6e-5, train, CHAINS, "limit"),
    Check("lash-hot", "the same with an aluminium pushrod, mm", dict(pushrod_alpha=23.0), -0.0368, 6e-5, train, CHAINS, "limit"),
    Check("lash-hot", "lash running from 0.15 mm cold, mm", dict(lash_mm=0.15), 0.1718, 1.2e-4, lash_at_heat, CHAINS, "limit"),
    Check("lash-hot", "lash with all at 20 °C, mm", COLD, 0.15, 1e-9, asked("lash-hot", "running", "mm"), "nothing grows", "limit"),
]

TRENDS = {
    "running": Trend(rises="lash case_temperature cylinder_temperature", falls="valve_temperature rod_temperature pushrod_expansion"),
    "frost": Trend(rises="lash pushrod_expansion"),
    "stem": Trend(rises="valve_temperature valve_length", falls="head_temperature"),
    "train": Trend(rises="case_temperature cylinder_temperature head_temperature", falls="rod_temperature pushrod_expansion"),
}
