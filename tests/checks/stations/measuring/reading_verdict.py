"""Outside numbers for the verdict on a reading, asked of the calculator. All are worked anew in test_reading_verdict.py."""
from tests.checks import Check, Trend, asked

NORM = "scipy.stats.norm, cdf(b) − cdf(a) (JCGM 106, clause 7)"
CASES = {  # reading, U at k = 2, lower, upper, all mm
    "wide doubt, near the middle": (9.6, 0.5, 9.0, 10.0, 0.937003),
    "near the upper limit": (54.987, 0.004, 54.970, 54.990, 0.933193),
    "two standard uncertainties inside": (54.986, 0.004, 54.970, 54.990, 0.977250),
    "well inside": (54.992, 0.006, 54.980, 55.000, 0.996138),
    "both limits count": (85.498, 0.008, 85.490, 85.505, 0.937191),
    "outside": (54.993, 0.004, 54.970, 54.990, 0.066807),
}


def entries(y, U, low, high):
    return dict(reading=f"{y} mm", doubt=f"{U} mm", low=f"{low} mm", high=f"{high} mm")


CHECKS = [
    *(Check("reading-verdict", f"probability that it is within, {words}", entries(*case[:4]), case[4], 5e-7, asked("reading-verdict", "probability"), NORM, "library")
      for words, case in CASES.items()),
    Check("reading-verdict", "probability that it is within, on its only limit", dict(reading="55 mm", doubt="0.004 mm", low="", high="55 mm"), 0.5, 1e-12,
          asked("reading-verdict", "probability"), "half of a normal lies on either side of its middle", "limit"),
    Check("reading-verdict", "guard for 95 % on one side, U = 2u = 6 µm, µm", entries(54.992, 0.006, 54.980, 55.000), 4.934561, 5e-7,
          asked("reading-verdict", "guard", "µm"), "scipy.stats.norm.ppf(0.95)·u (ISO 14253-1, default rule)", "library"),
]

TRENDS = {
    "probability": Trend(rises="high", falls="low"),
    "margin": Trend(rises="high", falls="low"),
    "in_doubts": Trend(rises="high", falls="low"),
    "guard": Trend(rises="doubt proof", falls="coverage"),
    "deciding": Trend(rises="coverage", falls="proof"),
}
