"""Outside numbers for the leak-down, asked of the calculator. Worked anew in test_plunger_leak.py."""
from tests.checks import Check, Trend, asked

FILM = "scipy: viscosity by root of ASTM D341, local film integrated round the gap, and solve_ivp of the plunger's way down"
VG = dict(oil="points", cool_temperature="40 °C", cool_viscosity="100 mm²/s", warm_temperature="100 °C", warm_viscosity="11.5 mm²/s", density="880 kg/m³")
CASES = {
    "half off, 70 °C": VG | dict(bore="16.012 mm", plunger="16.000 mm", length="20 mm", load="500 N", travel="3 mm", eccentricity="0.5", oil_temperature="70 °C", most_time="600 s"),
    "touching, 120 °C": VG | dict(bore="16.012 mm", plunger="16.000 mm", length="20 mm", load="500 N", travel="3 mm", eccentricity="1", oil_temperature="120 °C"),
    "in the middle, test oil": dict(bore="12.006 mm", plunger="12.000 mm", length="9 mm", load="220 N", travel="1 mm", eccentricity="0", oil="iso-vg-10", oil_temperature="40 °C", density="860 kg/m³"),
}
COLUMNS = (("time", "leak-down time, s", "s", 5e-4), ("leakage", "leak under the load, mm³/s", "mm³/s", 5e-5), ("viscosity", "viscosity, mPa·s", "mPa·s", 5e-5))
FOUND = {
    "half off, 70 °C": (91.9681, 6.55864, 23.5941),
    "touching, 120 °C": (12.9037, 46.7452, 6.01892),
    "in the middle, test oil": (52.1274, 2.16963, 8.45209),
}

CHECKS = [
    *(Check("plunger-leak", f"{what} ({case})", CASES[case], value, max(tolerance, 2e-5 * value), asked("plunger-leak", output, unit), FILM, "library")
      for case, values in FOUND.items() for value, (output, what, unit, tolerance) in zip(values, COLUMNS, strict=True)),
    Check("plunger-leak", "touching side over middle, times", dict(eccentricity="0"), 2.5, 1e-9, lambda **e: asked("plunger-leak", "time_centred", "s")(**e) / asked("plunger-leak", "time_touching", "s")(**e),
          "∫(1 + cos θ)³ dθ/2π = 1 + 3/2", "limit"),
]

TRENDS = {
    "time": Trend(rises="plunger travel length density", falls="bore oil_temperature load eccentricity"),
    "clearance": Trend(rises="bore", falls="plunger"),
    "leakage": Trend(rises="bore oil_temperature load eccentricity", falls="plunger length density"),
    "pressure": Trend(rises="load", falls="plunger"),
    "viscosity": Trend(rises="density", falls="oil_temperature"),
    "time_centred": Trend(rises="plunger travel length density", falls="bore oil_temperature load"),
    "time_touching": Trend(rises="plunger travel length density", falls="bore oil_temperature load"),
    "clearance_least": Trend(
        rises="travel length density",
        falls="oil_temperature load eccentricity most_time",
    ),
    "clearance_most": Trend(
        rises="travel length density",
        falls="oil_temperature load eccentricity least_time",
    ),
    "sink": Trend(
        rises="bore running_temperature eccentricity running_load open_angle",
        falls="plunger length speed density",
    ),
    "reynolds": Trend(rises="bore oil_temperature load eccentricity", falls="plunger length"),
}
