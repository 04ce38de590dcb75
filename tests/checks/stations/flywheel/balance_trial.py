"""Outside numbers for balancing by a trial mass, asked of the calculator. Those marked library are worked anew in test_balance_trial.py."""
from tests.checks import Check, Trend, asked

COMPLEX = "numpy: complex influence coefficient; readings rounded to 0.01 mm/s and 1°, made from 310 g·mm at 72°"
SQUARES = "scipy: least_squares over the unbalance's two parts and the machine's answer, of all four amplitudes"
OPPOSITE = "a trial mass that cancels the unbalance leaves nothing: it is the correction itself"

VECTORS = dict(method="phase", before="6.51 mm/s", before_at="34°", with_trial="23.07 mm/s", with_trial_at="355°", trial="8 g", trial_at="20°", trial_radius="110 mm", radius="110 mm", sense="same")
FOUR = dict(method="amplitudes", before="6.8 mm/s", trial="9 g", trial_radius="115 mm", at_0="25.06 mm/s", at_120="24.55 mm/s", at_240="13.91 mm/s", radius="115 mm")
CANCELLED = VECTORS | dict(with_trial="0 mm/s", with_trial_at="0°", trial="3 g", trial_at="200°")

CHECKS = [
    Check("balance-trial", "mass to add, 6.51 mm/s at 34°, with 8 g at 20° 23.07 mm/s at 355°, g", VECTORS, 2.82, 5e-3, asked("balance-trial", "correction", "g"), COMPLEX, "library"),
    Check("balance-trial", "its place, °", VECTORS, 251.8, 0.05, asked("balance-trial", "place", "°"), COMPLEX, "library"),
    Check("balance-trial", "unbalance that was there, g·mm", VECTORS, 310.2, 0.05, asked("balance-trial", "unbalance", "g·mm"), COMPLEX, "library"),
    Check("balance-trial", "the same by the part that the readings were made from, g·mm", VECTORS, 310.0, 1.0, asked("balance-trial", "unbalance", "g·mm"), COMPLEX, "limit"),
    Check("balance-trial", "heavy spot, °", VECTORS, 71.81, 5e-3, asked("balance-trial", "heavy", "°"), COMPLEX, "library"),
    Check("balance-trial", "four amplitudes without phase: unbalance, g·mm", FOUR, 340.1, 0.3, asked("balance-trial", "unbalance", "g·mm"), SQUARES, "library"),
    Check("balance-trial", "of those, heavy spot, °", FOUR, 57.03, 0.03, asked("balance-trial", "heavy", "°"), SQUARES, "library"),
    Check("balance-trial", "of those, mass to add, g", FOUR, 2.957, 3e-3, asked("balance-trial", "correction", "g"), SQUARES, "library"),
    Check("balance-trial", "trial mass of 3 g after which nothing is read: mass to add, g", CANCELLED, 3.0, 1e-9, asked("balance-trial", "correction", "g"), OPPOSITE, "limit"),
    Check("balance-trial", "the same, its place, °", CANCELLED, 200.0, 1e-6, asked("balance-trial", "place", "°"), OPPOSITE, "limit"),
]

TRENDS = {
    "correction": Trend(rises="trial trial_radius", falls="radius"),
    "unbalance": Trend(rises="trial trial_radius"),
    "permitted": Trend(rises="mass grade", falls="speed"),
    "vibration": Trend(rises="mass grade", falls="speed trial trial_radius"),
}
