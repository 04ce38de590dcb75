"""Units whose values are defined or printed elsewhere; whole kinds are compared with pint in test_units.py."""
from calc.declare.calculator import evaluate
from calc.stations.index import find
from tests.checks import Check

NIST = "NIST SP 811, appendix B, from memory"
DEFINED = "NIST SP 811, appendix B: exact by definition"


def converted(unit):
    """Reads one number out of the calculator's own table, with the entry made of the row's inputs."""
    def got(**inputs):
        (name, number), = inputs.items()
        table = evaluate(find("units"), {"value": f"{number} {UNITS[name]}"}).tables[0]
        return float(dict(table.rows)[unit].replace("−", "-").replace("×10⁻⁵", "e-5"))
    return got


UNITS = {"inch": "in", "thou": "thou", "lbf": "lbf", "kgf": "kgf", "psi": "psi", "lbf_ft": "lbf·ft", "lbf_in": "lbf·in", "inHg": "inHg", "mmHg": "mmHg", "hp": "hp",
         "US_gal": "US gal", "cubic_inch": "in³", "degF": "°F", "bar": "bar"}


def _row(inputs, unit, expected, tolerance, source=NIST, kind="standard"):
    (name, _), = inputs.items()
    return Check("units", f"{UNITS[name]} in {unit}", inputs, expected, tolerance, converted(unit), source, kind)


CHECKS = [
    _row({"inch": 1}, "mm", 25.4, 1e-9, DEFINED),
    _row({"inch": 1.484375}, "mm", 37.703125, 1e-9, "1 31/64 in: 95/64 × 25.4 mm, exact arithmetic", "limit"),
    _row({"thou": 1.5}, "mm", 0.0381, 1e-12, DEFINED),
    _row({"lbf": 1}, "N", 4.448221615, 5e-10), _row({"kgf": 1}, "N", 9.80665, 1e-9, DEFINED),
    _row({"psi": 1}, "Pa", 6894.757293, 5e-7), _row({"bar": 2.5}, "psi", 36.25943443, 5e-9, "2.5·10⁵ Pa / 6894.757293 Pa", "limit"),
    _row({"lbf_ft": 1}, "N·m", 1.355817948, 5e-10), _row({"lbf_in": 1}, "N·m", 0.1129848290, 5e-11),
    _row({"inHg": 1}, "Pa", 3386.389, 5e-4), _row({"mmHg": 1}, "Pa", 133.3224, 5e-5),
    _row({"hp": 1}, "W", 745.6998716, 5e-8), _row({"US_gal": 1}, "L", 3.785411784, 5e-10, DEFINED), _row({"cubic_inch": 1}, "cm³", 16.387064, 1e-9, DEFINED),
    _row({"degF": 68}, "°C", 20, 1e-9, DEFINED), _row({"degF": -40}, "°C", -40, 1e-9, "the two scales meet at −40", "limit"),
]
