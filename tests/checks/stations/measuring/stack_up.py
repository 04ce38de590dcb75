"""Outside numbers for a chain of sizes, asked of the calculator."""
from tests.checks import Check, Trend, asked

THREE = dict(chain="|".join(["10; 0.05; 0.05; 1"] * 3), low="29.9", high="30.1")
PLAIN = dict(chain="10; 0.05; 0.05; 1 | 10; 0.02; 0.02; 1 | 10; 0.03; 0.03; -1")

CHECKS = [
    Check("stack-up", "three even sizes of ± 0.05, share within ± 0.1", THREE, 0.958333, 5e-7, asked("stack-up", "within"), "scipy.stats.irwinhall(3).cdf", "library"),
    Check("stack-up", "the same, simulated", THREE, 0.958333, 0.006, asked("stack-up", "simulated"), "scipy.stats.irwinhall(3).cdf; three standard errors of 10 000", "library"),
    Check("stack-up", "its standard deviation, mm", THREE, 0.05, 1e-9, asked("stack-up", "deviation", "mm"), "a/√3 each, √3 together", "limit"),
    Check("stack-up", "four even sizes of ± 0.5, share within ± 1", dict(chain="|".join(["10; 0.5; 0.5; 1"] * 4), low="39", high="41"), 0.916667, 5e-7, asked("stack-up", "within"),
          "scipy.stats.irwinhall(4).cdf", "library"),
    Check("stack-up", "± 0.05, ± 0.02, ± 0.03, root sum of squares, mm", PLAIN, 0.061644, 5e-7, asked("stack-up", "root", "mm"), "√0.0038", "limit"),
    Check("stack-up", "the same, greatest gap, mm", PLAIN, 10.1, 1e-9, asked("stack-up", "greatest_gap", "mm"), "10 + 0.05 + 0.02 + 0.03", "limit"),
    Check("stack-up", "two even sizes of ± 1 mm, 99.73 % within ±, mm", dict(chain="10; 1; 1; 1 | 10; 1; 1; -1"), 1.896077, 5e-7, asked("stack-up", "most", "mm"),
          "triangle: P(|S| > s) = (1 − s/2a)²", "limit"),
    Check("stack-up", "two normal sizes of ± 1 mm, 99.73 % within ±, mm", dict(chain="10; 1; 1; 1 | 10; 1; 1; -1", shape="normal"), 1.414200, 5e-6, asked("stack-up", "most", "mm"),
          "scipy.stats.norm.ppf(0.99865)·√2/3", "library"),
]

TRENDS = {
    "least_gap": Trend(falls="chain.2 chain.3"),
    "greatest_gap": Trend(rises="chain.2 chain.3"),
    "within": Trend(rises="high", falls="low"),
    "root": Trend(rises="chain.2 chain.3"),
    "deviation": Trend(rises="chain.2 chain.3"),
    "most": Trend(rises="chain.2 chain.3"),
    "simulated": Trend(rises="high", falls="low"),
}
