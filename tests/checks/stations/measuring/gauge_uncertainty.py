"""Outside numbers for the doubt of a reading, asked of the calculator."""
from tests.checks import Check, Trend, asked

G2 = "GUM (JCGM 100:2008), table G.2, from memory"
REPEATS_ONLY = dict(resolution="0.00001 mm", calibration="0 mm", apart="0 K", off="0 K")
FIVE = "10.001; 10.002; 10.003; 10.004; 10.005"
TEN = "10.001; 10.002; 10.003; 10.004; 10.005; 10.006; 10.007; 10.008; 10.009; 10.010"

CHECKS = [
    Check("gauge-uncertainty", "factor of five repeats that are all there is", dict(readings=FIVE, **REPEATS_ONLY), 2.78, 0.005, asked("gauge-uncertainty", "factor"), G2, "standard"),
    Check("gauge-uncertainty", "factor of ten repeats that are all there is", dict(readings=TEN, **REPEATS_ONLY), 2.26, 0.005, asked("gauge-uncertainty", "factor"), G2, "standard"),
    Check("gauge-uncertainty", "spread of 1 … 5 µm, µm", dict(readings=FIVE), 2.5 ** 0.5, 1e-6, asked("gauge-uncertainty", "spread", "µm"), "s² = n(n + 1)/12 of the first n whole numbers", "limit"),
    Check("gauge-uncertainty", "spread of 1 … 10 µm, µm", dict(readings=TEN), (110 / 12) ** 0.5, 1e-6, asked("gauge-uncertainty", "spread", "µm"), "s² = n(n + 1)/12 of the first n whole numbers", "limit"),
    Check("gauge-uncertainty", "expanded doubt of the example, µm", {}, 2.40560, 5e-6, asked("gauge-uncertainty", "expanded", "µm"),
          "numpy for the budget, scipy.stats.t for the factor; see test_gauge_uncertainty.py", "library"),
    Check("gauge-uncertainty", "gauge paper alone, U = 3 µm at k = 2, µm",
          dict(readings="10; 10", calibration="0.003 mm", resolution="0.00001 mm", apart="0 K", off="0 K"), 1.5 * 1.959964, 1e-4, asked("gauge-uncertainty", "expanded", "µm"),
          "a normal of 1.5 µm, 95 % of it", "limit"),
]

TRENDS = {
    "mean": Trend(rises="readings"),
    "of_tolerance": Trend(falls="tolerance"),
    "standard": Trend(rises="resolution calibration master size apart off", falls="coverage"),
    "freedom": Trend(rises="resolution calibration master size apart off", falls="coverage"),
    "factor": Trend(rises="coverage", falls="resolution calibration master size apart off"),
}
