"""Outside numbers for the oil hole, asked of the calculator. Those marked library are worked anew in test_oil_hole.py."""
from tests.checks import Check, Trend, asked

FLUIDS = "fluids library: friction factor and loss coefficient 1/C² in series, searched for the flow with scipy brentq"
OIL = dict(oil="points", cool_temperature="40 °C", cool_viscosity="100 mm²/s", warm_temperature="100 °C", warm_viscosity="11.5 mm²/s", density="880 kg/m³")
CASES = {  # hole and length in mm, kPa, °C, discharge coefficient
    "warm oil": (1.2, 1.7, 100, 70, 0.65),
    "cold oil": (1.0, 3.0, 300, 0, 0.62),
    "hot oil": (1.5, 2.0, 60, 120, 0.8),
}


def entries(hole, length, pressure, celsius, discharge):
    return OIL | dict(hole=f"{hole} mm", wall=f"{length} mm", pressure=f"{pressure} kPa", oil_temperature=f"{celsius} °C", discharge=f"{discharge}")


COLUMNS = (("flow", "flow, mm³/s", "mm³/s", 0.05), ("reynolds", "Reynolds number", "", 0.005), ("wall_share", "wall's share of the pressure", "", 5e-6))
FOUND = {
    "warm oil": (10802.42, 411.644, 0.0851352),
    "cold oil": (1609.494, 1.21480, 0.983807),
    "hot oil": (16870.02, 1950.277, 0.0272401),
}
CHECKS = [
    *(Check("oil-hole", f"{what} ({case})", entries(*CASES[case]), value, tolerance, asked("oil-hole", output, unit), FLUIDS, "library")
      for case, values in FOUND.items() for value, (output, what, unit, tolerance) in zip(values, COLUMNS, strict=True)),
    Check("oil-hole", "time that hole and gallery meet at 1200 1/min for 180°, ms", dict(speed="1200 1/min", meeting="180°"), 25.0, 1e-9, asked("oil-hole", "window", "ms"), "half a turn at twenty turns a second", "limit"),
]

TRENDS = {
    "fill_time": Trend(rises="sink wall plunger density", falls="hole pressure oil_temperature discharge"),
    "window": Trend(rises="meeting", falls="speed"),
    "share": Trend(
        rises="sink wall plunger speed density",
        falls="hole pressure oil_temperature meeting discharge",
    ),
    "running_time": Trend(
        rises="wall empty density",
        falls="hole pressure oil_temperature meeting discharge",
    ),
    "flow": Trend(rises="hole pressure oil_temperature discharge", falls="wall density"),
    "reynolds": Trend(rises="hole pressure oil_temperature discharge", falls="wall"),
    "wall_share": Trend(rises="wall"),
    "viscosity": Trend(rises="density", falls="oil_temperature"),
}
