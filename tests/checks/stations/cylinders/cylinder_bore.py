"""Outside numbers for cylinder bores, asked of the calculator. Those marked library are worked anew in test_cylinder_bore.py."""
from tests.checks import Check, Trend, asked


def bores(*each):
    """Entries of bores that read alike at all heights but for the top, across the pin: (top, elsewhere), mm."""
    return " | ".join(f"{top}; {rest} | {rest}; {rest} | {rest}; {rest}" for top, rest in each)


def alike(*sizes):
    return bores(*((d, d) for d in sizes))


COLD = dict(barrel_temperature="20 °C", gauge_temperature="20 °C")
FOUR = COLD | dict(bores=alike(88.182, 88.204, 88.471, 88.160), axis="free")
WARM = dict(bores=alike(88.034), barrel_temperature="62 °C", gauge_temperature="20 °C", barrel_expansion="11 µm/(m·K)")
HOT = COLD | dict(bores=alike(88.010), pistons="87.960", barrel_expansion="11 µm/(m·K)", piston_expansion="20.5 µm/(m·K)", barrel_running="160 °C", skirt_running="170 °C")
WORN = COLD | dict(bores=bores((88.075, 88.010)))
RATIONAL = "exact rational arithmetic over sizes and oversizes"
EXACT = "free expansion, exact division"

CHECKS = [
    Check("cylinder-bore", "oversize of bores clean at 88.182, 88.204, 88.471, 88.160, mm", FOUR, 0.5, 1e-9, asked("cylinder-bore", "oversize", "mm"), RATIONAL, "library"),
    Check("cylinder-bore", "finished bore, least, mm", FOUR, 88.5, 1e-9, asked("cylinder-bore", "finish_low", "mm"), RATIONAL, "library"),
    Check("cylinder-bore", "finished bore, most, mm", FOUR, 88.518, 1e-9, asked("cylinder-bore", "finish_high", "mm"), RATIONAL, "library"),
    Check("cylinder-bore", "to hone off the worst, mm", FOUR, 0.038, 1e-9, asked("cylinder-bore", "stock", "mm"), RATIONAL, "library"),
    Check("cylinder-bore", "88.034 mm read at 62 °C, at 20 °C, mm", WARM, 87.99335, 5e-6, asked("cylinder-bore", "largest", "mm"), EXACT, "limit"),
    Check("cylinder-bore", "too large by, mm", WARM, 0.04065293, 5e-9, asked("cylinder-bore", "warm", "mm"), EXACT, "limit"),
    Check("cylinder-bore", "plain expansion, iron barrel, clearance running, mm", HOT, -0.084942, 5e-7, asked("cylinder-bore", "hot", "mm"), "free expansion, skirt taken as free", "limit"),
    Check("cylinder-bore", "plain expansion, aluminium barrel, clearance running, mm", HOT | dict(barrel_expansion="20.5 µm/(m·K)"), 0.032112, 5e-7,
          asked("cylinder-bore", "hot", "mm"), "free expansion, skirt taken as free", "limit"),
    Check("cylinder-bore", "piston heat at which plain expansion closes it, °C", HOT, 122.89, 0.005, asked("cylinder-bore", "closes", "°C"), "scipy brentq on both growths", "library"),
    Check("cylinder-bore", "cleans up with the axis free, largest read 88.075, mm", WORN | dict(axis="free"), 88.075, 1e-9, asked("cylinder-bore", "clean", "mm"),
          "scipy linprog, smallest circle round a bore worn by 0.055 and 0.010 mm on either side", "library"),
    Check("cylinder-bore", "cleans up about the old axis at the latest, largest read 88.075, mm", WORN, 88.140, 1e-9, asked("cylinder-bore", "clean", "mm"),
          "all of the wear on one side: 88.010 + 2 · 0.065; on the two sides of that bore it is 88.12", "limit"),
]

TRENDS = {
    "largest": Trend(rises="bores gauge_temperature", falls="barrel_temperature"),
    "smallest": Trend(rises="bores gauge_temperature", falls="barrel_temperature"),
    "warm": Trend(rises="barrel_temperature", falls="gauge_temperature"),
    "hot": Trend(rises="barrel_running", falls="skirt_running"),
    "closes": Trend(rises="barrel_running"),
}
