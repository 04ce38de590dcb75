"""Outside numbers for a stud that heat pulls: bars assembled node by node, worked anew in tests/formulas/test_hot_stud.py."""
from calc.formulas import hot_stud
from tests.checks import Check

BARS = "numpy: assembled matrix of bars with thermal loads; springs in series agree"
GPA, MM, MM2 = 1e9, 1e-3, 1e-6
STUD = ((20 * MM, 58.0 * MM2, 205 * GPA, 11.5e-6), (165 * MM, 50.3 * MM2, 205 * GPA, 11.5e-6))
CLAMPED = ((110 * MM, 900 * MM2, 110 * GPA, 11e-6), (60 * MM, 700 * MM2, 71 * GPA, 21.5e-6), (15 * MM, 1200 * MM2, 45 * GPA, 26e-6))
HOT = dict(thread_K=75.0, shank_K=110.0, cylinder_K=170.0, head_K=160.0, case_K=80.0)
FROST = dict.fromkeys(HOT, -40.0)


def preload(cold_N: float, thread_K: float, shank_K: float, cylinder_K: float, head_K: float, case_K: float) -> float:
    stud = [(*part, warm) for part, warm in zip(STUD, (thread_K, shank_K))]
    clamped = [(*part, warm) for part, warm in zip(CLAMPED, (cylinder_K, head_K, case_K))]
    return hot_stud.preload(cold_N, stud, clamped)


def rate(of: tuple) -> float:
    """N/mm."""
    return 1 / hot_stud.give(part[:3] for part in of) / 1e3


CHECKS = [
    Check("Hot stud", "stiffness of a stud of 20 and 165 mm, N/mm", {}, 56549, 0.5, lambda: rate(STUD), BARS, "library"),
    Check("Hot stud", "stiffness of cylinder, head and case, N/mm", {}, 385190, 5, lambda: rate(CLAMPED), BARS, "library"),
    Check("Hot stud", "preload of 14000 N, hot, N", dict(cold_N=14000.0) | HOT, 24716, 0.5, preload, BARS, "library"),
    Check("Hot stud", "change, N", dict(cold_N=0.0) | HOT, 10716, 0.5, preload, BARS, "library"),
    Check("Hot stud", "preload of 14000 N at −20 °C, N", dict(cold_N=14000.0) | FROST, 12496, 0.5, preload, BARS, "library"),
    Check("Hot stud", "preload where nothing gets warm, N", dict(cold_N=14000.0) | dict.fromkeys(HOT, 0.0), 14000, 1e-6, preload, "nothing grows", "limit"),
]
