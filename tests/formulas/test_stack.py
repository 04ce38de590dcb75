"""Sums of sizes against scipy's Irwin–Hall and normal distributions, a convolution with numpy, and each other."""

import math

import numpy
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from scipy.stats import irwinhall, kstest, norm

from calc.formulas import stack

halves = st.lists(st.integers(0, 200).map(lambda um: um * 1e-6), min_size=1, max_size=8)
deviations = st.integers(-1800, 1800).map(lambda um: um * 1e-6)


@given(st.integers(1, 8), st.floats(-4.5, 4.5))
def test_equal_sizes_are_irwin_and_halls(n, x):
    """irwinhall(n) is the sum of n numbers from 0 to 1: of half width 0.5 about n/2. Steps of 2⁻³⁰ are exact in picometres as well as in floats."""
    x = round(x * 2**10) / 2**10
    assert stack.share_below(x, [0.5] * n, "uniform") == pytest.approx(irwinhall(n).cdf(x + n / 2), abs=1e-9)


@pytest.mark.parametrize(
    "widths", [(50, 20, 25, 50, 30), (100, 3, 1), (200, 200), (7, 11, 13, 17, 19, 23, 29, 31), (1, 200)]
)
def test_unequal_sizes_are_what_numpy_convolves(widths):
    """Each size as a comb of whole micrometres; the sum of combs is exact, and that of even sizes differs by the comb's own spread."""
    pitch = 0.1  # µm
    comb = numpy.array([1.0])
    for half in widths:
        n = round(2 * half / pitch)
        comb = numpy.convolve(comb, numpy.full(n, 1 / n))
    at = (numpy.arange(len(comb)) - (len(comb) - 1) / 2) * pitch
    for x in numpy.linspace(-sum(widths), sum(widths), 41):
        expected = numpy.interp(x, at + pitch / 2, numpy.cumsum(comb), left=0, right=1)
        assert stack.share_below(x * 1e-6, [h * 1e-6 for h in widths], "uniform") == pytest.approx(
            expected, abs=2e-3 if 1 in widths else 2e-4
        )


@given(halves, deviations)
def test_normal_sizes_are_a_normal(widths, x):
    assume(any(widths))
    sd = numpy.linalg.norm(widths) / 3
    assert stack.share_below(x, widths, "normal") == pytest.approx(norm.cdf(x, scale=sd), abs=1e-12)
    assert stack.share_within(x, math.inf, widths, "normal") == pytest.approx(
        norm.sf(x, scale=sd), rel=1e-9, abs=1e-300
    )


@given(halves, deviations, st.sampled_from(stack.SHAPES))
def test_it_is_a_distribution_with_the_middle_in_the_middle(widths, x, shape):
    assume(any(widths))
    below = stack.share_below(x, widths, shape)
    assert 0 <= below <= stack.share_below(x + 1e-6, widths, shape) <= 1
    assert below + stack.share_below(-x, widths, shape) == pytest.approx(1, abs=1e-9)
    if shape == "uniform":
        assert (
            stack.share_below(sum(widths) + 1e-12, widths, shape) == 1
            and stack.share_below(-sum(widths) - 1e-11, widths, shape) == 0
        )


@given(halves)
def test_worst_case_is_never_less_than_root_sum_of_squares(widths):
    assert stack.root_sum_square(widths) <= stack.worst(widths) * (1 + 1e-12)
    assert stack.root_sum_square(widths) >= max(widths) * (1 - 1e-12)


@given(halves, st.floats(0.5, 0.9999), st.sampled_from(stack.SHAPES))
def test_half_width_holds_its_share(widths, share, shape):
    assume(any(widths))
    w = stack.half_width(share, widths, shape)
    assert stack.share_within(-w, w, widths, shape) == pytest.approx(share, abs=1e-4)


@given(halves, deviations, deviations)
def test_share_between_two_deviations_is_scipys(widths, one, other):
    """Normal sizes of any widths; even ones alike, as Irwin and Hall have them. Either side, both, and none."""
    assume(any(widths))
    low, high = sorted((one, other))
    sd, n = numpy.linalg.norm(widths) / 3, len(widths)
    between = (
        norm.sf(low, scale=sd) - norm.sf(high, scale=sd)
        if low > 0
        else norm.cdf(high, scale=sd) - norm.cdf(low, scale=sd)
    )
    assert stack.share_within(low, high, widths, "normal") == pytest.approx(between, rel=1e-6, abs=1e-13)
    assert stack.share_within(-math.inf, high, widths, "normal") == pytest.approx(
        norm.cdf(high, scale=sd), rel=1e-9
    )
    alike, even = [200e-6] * n, irwinhall(n)
    below, above = (even.cdf(x / 400e-6 + n / 2) for x in (low, high))
    assert stack.share_within(low, high, alike, "uniform") == pytest.approx(above - below, abs=1e-8)
    assert stack.share_within(-math.inf, high, alike, "uniform") == pytest.approx(above, abs=1e-8)
    assert stack.share_within(low, math.inf, alike, "uniform") == pytest.approx(1 - below, abs=1e-8)
    assert (
        stack.share_within(-math.inf, math.inf, alike, "uniform")
        == stack.share_within(-math.inf, math.inf, widths, "normal")
        == 1
    )


@pytest.mark.parametrize("share", [0.5, 0.9, 0.9973, 0.9999])
def test_half_width_of_one_and_of_two_sizes_in_closed_form(share):
    """One normal size: scipy's quantile, h being 3σ. One even size: the share of h. Two alike: a triangle on 2h, of which 1 − (1 − w/2h)² lies within w."""
    h = 7e-6
    assert stack.half_width(share, [h], "normal") == pytest.approx(
        norm.ppf((1 + share) / 2) * h / 3, rel=1e-9
    )
    assert stack.half_width(share, [h], "uniform") == pytest.approx(
        share * h, rel=1e-6
    )  # in whole picometres
    assert stack.half_width(share, [h, h], "uniform") == pytest.approx(
        2 * h * (1 - math.sqrt(1 - share)), rel=1e-6
    )


def test_a_size_without_tolerance_only_shifts():
    assert stack.share_below(3e-6, [5e-6, 0.0, 7e-6], "uniform") == stack.share_below(
        3e-6, [5e-6, 7e-6], "uniform"
    )
    assert (
        stack.share_within(-1e-6, 1e-6, [0.0, 0.0], "uniform")
        == 1.0
        == stack.share_within(0.0, 1e-6, [0.0], "normal")
    )
    assert (
        stack.share_within(1e-9, 1e-6, [0.0, 0.0], "uniform")
        == 0.0
        == stack.share_within(-1e-6, -1e-9, [0.0, 0.0], "uniform")
    )
    assert stack.share_within(-1e-6, 0.0, [0.0], "uniform") == 1.0
    assert [
        stack.share_below(x, [0.0, 0.0], shape) for shape in stack.SHAPES for x in (-1e-6, 0.0, 1e-6)
    ] == [0.0, 1.0, 1.0] * 2


def test_a_tiny_tolerance_beside_a_wide_one_does_not_spoil_the_sum():
    """Floats would lose all digits here: 1 nm beside 50 mm, seven times."""
    widths = [0.05] + [1e-9] * 7
    assert stack.share_below(0.0123, widths, "uniform") == pytest.approx((0.0123 + 0.05) / 0.1, abs=1e-7)


@pytest.mark.parametrize("shape", stack.SHAPES)
def test_simulation_is_drawn_from_the_exact_distribution(shape):
    """Kolmogorov and Smirnov's test, scipy; the seed is fixed, so this cannot fail by chance."""
    widths = [50e-6, 20e-6, 25e-6, 30e-6]
    drawn = stack.simulate(widths, shape, 10_000)
    assert kstest(drawn, numpy.vectorize(lambda x: stack.share_below(x, widths, shape))).pvalue > 0.01
    assert numpy.std(drawn) == pytest.approx(
        stack.standard_deviation(stack.root_sum_square(widths), shape), rel=0.02
    )


def test_simulation_is_the_same_every_time_and_another_with_another_seed():
    """numpy's Mersenne Twister, seeded by array as Python's is, gives the same numbers; Python promises to keep them in all its versions."""
    first = stack.simulate([1.0], "uniform", 1000)
    assert (
        first
        == stack.simulate([1.0], "uniform", 1000)
        != stack.simulate([1.0], "uniform", 1000, seed=stack.SEED + 1)
    )
    assert first == pytest.approx(
        2 * numpy.random.RandomState([stack.SEED]).random_sample(1000) - 1, abs=1e-15
    )
    assert len(stack.simulate([1.0, 2.0], "normal", 5)) == 5
