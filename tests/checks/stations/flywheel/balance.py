"""Outside numbers for permitted unbalance and drilled holes, asked of the calculator. Those marked library are worked anew in test_balance.py."""
from tests.checks import Check, Trend, asked

SOLVE = "numpy: linalg.solve of the two directions; the vectors add back to 180 g·mm at 40°"
QUAD = "scipy: quad of the drill's section along the hole, each slice at its own radius, and brentq"
SHARED = "ISO 21940-11, from memory: whole unbalance shared in inverse proportion to the distance from the centre of mass; both add up to the whole"
G63 = "e·ω = 6.3 mm/s: 14.5 kg × 6.3 mm/s ÷ (2π × 5500/60 1/s)"
INDEX = "numpy: complex readings of a known part on a known arbor, 300 g·mm at 100° and 90 g·mm at 10°, rounded to a ten-thousandth"
STEP_THROUGH = "volume of a cylinder: 420 g·mm ÷ 138 mm ÷ (7.2 g/cm³ × π/4 × 12² mm²)"

TWO = dict(reading="180 g·mm", at="40°", turned="", turned_at="", first="30°", second="75°", radius="120 mm", how="face")
ROTOR = dict(mass="14.5 kg", grade="6.3 mm/s", speed="5500 1/min")
RIM = dict(reading="420 g·mm", at="0°", turned="", turned_at="", radius="138 mm", drill="12 mm", point="118°", material="grey-iron", how="rim", wall="40 mm")
ARBOR = dict(reading="313.2092 g·mm", at="83.3008°", turned="313.2092 g·mm", turned_at="116.6992°")
WIDE = dict(planes_apart="310 mm", plane="share")

CHECKS = [
    Check("balance", "of 180 g·mm at 40°, off at 30°, radius 120 mm, g", TWO, 1.2167, 5e-5, asked("balance", "mass_one", "g"), SOLVE, "library"),
    Check("balance", "the same, off at 75°, g", TWO, 0.36836, 5e-6, asked("balance", "mass_two", "g"), SOLVE, "library"),
    Check("balance", "permitted, G 6.3, 14.5 kg at 5500 1/min, g·mm", ROTOR, 158.61, 5e-3, asked("balance", "permitted", "g·mm"), G63, "limit"),
    Check("balance", "plane 205 mm from the centre of mass, the other 105 mm, of that, g·mm", ROTOR | WIDE | dict(other_to_mass="105 mm"), 53.721, 5e-3, asked("balance", "permitted", "g·mm"), SHARED, "standard"),
    Check("balance", "the other plane, of that, g·mm", ROTOR | WIDE | dict(other_to_mass="205 mm"), 104.88, 1e-2, asked("balance", "permitted", "g·mm"), SHARED, "standard"),
    Check("balance", "420 g·mm into a rim of 138 mm radius, 12 mm drill: to the shoulder, mm", RIM, 2.5905, 5e-5, asked("balance", "shoulder", "mm"), QUAD, "library"),
    Check("balance", "the same, to the tip, mm", RIM, 6.1957, 5e-5, asked("balance", "tip", "mm"), QUAD, "library"),
    Check("balance", "the same, into a face at 138 mm: to the shoulder, mm", RIM | dict(how="face"), 2.5358, 5e-5, asked("balance", "shoulder", "mm"), QUAD, "library"),
    Check("balance", "part's own where part and arbor were mixed, g·mm", ARBOR, 300.0, 1e-3, asked("balance", "left", "g·mm"), INDEX, "library"),
    Check("balance", "the arbor's, of that, g·mm", ARBOR, 90.0, 1e-3, asked("balance", "arbor", "g·mm"), INDEX, "library"),
]

TRENDS = {
    "permitted": Trend(rises="mass grade", falls="speed"),
    "mass_one": Trend(),
    "through": Trend(falls="wall"),
    "offset": Trend(falls="mass"),
}
