"""Outside numbers for balancing in two planes, asked of the calculator. Those marked library are worked anew in test_balance_two_plane.py."""
from tests.checks import Check, Trend, asked

MATRIX = "numpy: complex 2 × 2 of influence coefficients, linalg.solve; readings of a rigid rotor on springs and dampers, rounded to 0.01 mm/s and 1°, made from 420 g·mm at 33° and 610 g·mm at 205°"
SHARED = "ISO 21940-11, from memory: the whole in inverse proportion to the distance from the centre of mass"

READ = dict(readings="63.15; 88; 46.88; 265 | 82.54; 78; 73.13; 258 | 87.27; 16; 46.65; 194", trial_a="8 g", trial_a_radius="70 mm", trial_a_at="0°", trial_b="10 g", trial_b_radius="120 mm", trial_b_at="90°", radius_a="70 mm", radius_b="120 mm", sense="same")
ROTOR = dict(mass="14.5 kg", grade="6.3 mm/s", speed="5500 1/min", planes_apart="310 mm", b_to_mass="105 mm")
B_ALONE = dict(method="phase", before="46.88 mm/s", before_at="265°", with_trial="46.65 mm/s", with_trial_at="194°", trial="10 g", trial_at="90°", trial_radius="120 mm", radius="120 mm", sense="same")

CHECKS = [
    Check("balance-two-plane", "mass to add in A, g", READ, 5.971, 5e-4, asked("balance-two-plane", "mass_a", "g"), MATRIX, "library"),
    Check("balance-two-plane", "place in plane A, °", READ, 213.0, 0.05, asked("balance-two-plane", "place_a", "°"), MATRIX, "library"),
    Check("balance-two-plane", "mass to add in B, g", READ, 5.081, 5e-4, asked("balance-two-plane", "mass_b", "g"), MATRIX, "library"),
    Check("balance-two-plane", "place in plane B, °", READ, 25.56, 5e-3, asked("balance-two-plane", "place_b", "°"), MATRIX, "library"),
    Check("balance-two-plane", "unbalance in A by what it was made from, g·mm", READ, 420.0, 4.0, asked("balance-two-plane", "unbalance_a", "g·mm"), MATRIX, "limit"),
    Check("balance-two-plane", "condition of the 2 × 2", READ, 4.961286, 1e-5, asked("balance-two-plane", "condition", ""), "numpy: linalg.cond", "library"),
    Check("balance-two-plane", "plane B by itself would want, wrongly, g", B_ALONE, 8.631, 5e-4, asked("balance-trial", "correction", "g"), MATRIX, "library"),
    Check("balance-two-plane", "permitted in A, G 6.3, 14.5 kg at 5500 1/min, g·mm", ROTOR, 53.721, 5e-3, asked("balance-two-plane", "permitted_a", "g·mm"), SHARED, "standard"),
    Check("balance-two-plane", "permitted in B, g·mm", ROTOR, 104.88, 1e-2, asked("balance-two-plane", "permitted_b", "g·mm"), SHARED, "standard"),
]

TRENDS = {
    "mass_a": Trend(rises="trial_a trial_a_radius", falls="radius_a"),
    "mass_b": Trend(rises="trial_b trial_b_radius", falls="radius_b"),
    "unbalance_a": Trend(rises="trial_a trial_a_radius"),
    "unbalance_b": Trend(rises="trial_b trial_b_radius"),
    "permitted_a": Trend(rises="mass grade b_to_mass", falls="speed planes_apart"),
    "permitted_b": Trend(rises="mass grade planes_apart", falls="speed b_to_mass"),
}
