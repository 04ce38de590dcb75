"""Sums of sizes whose spread is known."""
from calc.formulas import stack
from tests.checks import Check


def held(n, half_mm, within_mm):
    return stack.share_within(-within_mm, within_mm, [half_mm] * n, "uniform")


HALL = "scipy.stats.irwinhall({}).cdf"
CHECKS = [
    Check("Chain of sizes", "three even sizes of ± 0.05, share within ± 0.1", dict(n=3, half_mm=0.05, within_mm=0.1), 0.958333, 5e-7, held, HALL.format(3), "library"),
    Check("Chain of sizes", "four even sizes of ± 0.5, share within ± 1", dict(n=4, half_mm=0.5, within_mm=1.0), 0.916667, 5e-7, held, HALL.format(4), "library"),
    Check("Chain of sizes", "eight even sizes of ± 0.5, share within ± 2", dict(n=8, half_mm=0.5, within_mm=2.0), 0.987698, 5e-7, held, HALL.format(8), "library"),
    Check("Chain of sizes", "two even sizes, half width that holds 99.73 %, in half widths of one", dict(n=2), 1.896077, 5e-7,
          lambda n: stack.half_width(0.9973, [1.0] * n, "uniform"), "triangle: P(|S| > s) = (1 − s/2a)²", "limit"),
    Check("Chain of sizes", "standard deviation of three even sizes of ± 0.05", dict(n=3), 0.05, 1e-12,
          lambda n: stack.standard_deviation(stack.root_sum_square([0.05] * n), "uniform"), "a/√3 each, √n together", "limit"),
    Check("Chain of sizes", "root sum of squares of 0.05, 0.02, 0.03", dict(a=0.05, b=0.02, c=0.03), 0.061644, 5e-7, lambda **t: stack.root_sum_square(t.values()), "√0.0038", "limit"),
]
