"""Outside numbers for fins. Those marked library are worked anew in test_fin_cooling.py."""
from calc.formulas.fins import fin_area, fin_efficiency, fin_number, overall_efficiency
from tests.checks import Check, Trend, asked


def efficiency(h, k, thickness_mm, length_mm):
    return fin_efficiency(fin_number(h, k, thickness_mm * 1e-3, length_mm * 1e-3))


def overall(h, k, thickness_mm, length_mm, pitch_mm, count, width_mm):
    fins = count * fin_area(thickness_mm * 1e-3, length_mm * 1e-3, width_mm * 1e-3)
    return overall_efficiency(efficiency(h, k, thickness_mm, length_mm), fins, fins + count * (pitch_mm - thickness_mm) * width_mm * 1e-6)


THICK, IRON = dict(h=60, k=160, thickness_mm=2, length_mm=25), dict(h=90, k=50, thickness_mm=3, length_mm=30)
BVP = "scipy solve_bvp of the fin's temperature, tip insulated at the corrected length"
AIR = "scipy solve_bvp of the fin, and solve_ivp of the air that warms along it"
CHECKS = [
    Check("fin-cooling", "efficiency of a fin", THICK, 0.92327, 0.000005, efficiency, BVP, "library"),
    Check("fin-cooling", "efficiency of a poorer fin", IRON, 0.73068, 0.000005, efficiency, BVP, "library"),
    Check("fin-cooling", "efficiency of a third", dict(h=60, k=160, thickness_mm=2.5, length_mm=25), 0.93635, 0.000005, efficiency, BVP, "library"),
    Check("fin-cooling", "efficiency of the first, as a ring of huge radius", THICK, 0.923225, 0.0001, efficiency, "the ht library's Kern and Kraus, Do 40 m, where the curve is worth 0.00005", "library"),
    Check("fin-cooling", "efficiency of the second, as a ring of huge radius", IRON, 0.730462, 0.0003, efficiency, "the ht library's Kern and Kraus, Do 28.3 m, where the curve is worth 0.0002", "library"),
    Check("fin-cooling", "efficiency of the first with a tip that sheds heat", THICK, 0.923275, 0.00001, efficiency, "scipy solve_bvp with a convecting tip; the corrected length stands for it", "library"),
    Check("fin-cooling", "12 such fins and their wall", THICK | dict(pitch_mm=5, count=12, width_mm=200), 0.92746, 0.000005, overall, f"{BVP}; areas added", "library"),
    Check("fin-cooling", "10 of the poorer and their wall", IRON | dict(pitch_mm=7, count=10, width_mm=150), 0.74676, 0.000005, overall, f"{BVP}; areas added", "library"),
    Check("fin-cooling", "efficiency at m·L of 5", dict(x=5.0), 0.199982, 0.0000005, fin_efficiency, "tanh(5)/5: hardly the end of a long fin", "limit"),
    Check("fin-cooling", "efficiency of a fin that conducts without loss", dict(x=1e-6), 1.0, 1e-9, fin_efficiency, "as hot as its root all over", "limit"),
    Check("fin-cooling", "heat of 14 fins of 2 by 22 mm, W", dict(), 932.185, 0.005, asked("fin-cooling", "heat_this", "W"), AIR, "library"),
    Check("fin-cooling", "heat of 15 fins of 2 by 24 mm, W", dict(), 996.961, 0.005, asked("fin-cooling", "heat_other", "W"), AIR, "library"),
    Check("fin-cooling", "the second over the first, %", dict(), 6.94890, 0.00005, asked("fin-cooling", "change", "%"), AIR, "library"),
    Check("fin-cooling", "the same with a fan that gives no more pressure, %", dict(), 5.29478, 0.00005, asked("fin-cooling", "change_least", "%"), f"{AIR}, as fast as Blasius friction lets it", "library"),
    Check("fin-cooling", "coefficient at which they are alike, W/(m²·K)", dict(), 51.8841, 0.00005, asked("fin-cooling", "even", "W/(m²·K)"), f"scipy brentq over {AIR}", "library"),
]

TRENDS = {
    "change": Trend(rises="air_other"),
    "change_least": Trend(rises="air_other"),
    "heat_this": Trend(rises="fins air width hotter speed", falls="path"),
    "heat_other": Trend(rises="fins air air_other width hotter speed", falls="path"),
    "warmer_this": Trend(rises="air hotter", falls="speed"),
    "warmer_other": Trend(rises="air air_other hotter", falls="speed"),
    "speed_other": Trend(rises="speed"),
    "efficiency_this": Trend(falls="fins.3 air"),
    "efficiency_other": Trend(falls="fins.3 air air_other"),
    "overall_this": Trend(rises="fins.4", falls="fins.3 air"),
    "overall_other": Trend(rises="fins.4", falls="fins.3 air air_other"),
    "area_this": Trend(rises="fins width"),
    "area_other": Trend(rises="fins width"),
    "effective_this": Trend(rises="fins width", falls="air"),
    "effective_other": Trend(rises="fins width", falls="air air_other"),
    "even": Trend(rises="air"),
}
