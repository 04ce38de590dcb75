"""Standard uncertainties and coverage factors against scipy and numpy."""

import math

import numpy
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.stats import t as student

from calc.formulas import uncertainty as gum

sizes = st.lists(st.floats(-1.0, 1.0), min_size=2, max_size=10)
small = st.floats(1e-9, 1e-3)


@given(st.floats(0.5, 0.9999), st.floats(1.0, 1e6))
def test_coverage_factor_is_scipys(probability, freedom):
    assert gum.coverage_factor(probability, freedom) == pytest.approx(
        student.ppf((1 + probability) / 2, freedom), rel=1e-7
    )


def test_one_and_two_degrees_of_freedom_in_closed_form():
    """Limit: a Cauchy variable, and t = √2·q/√(1 − q²) for two."""
    for probability in (0.5, 0.95, 0.9999):
        assert gum.coverage_factor(probability, 1) == pytest.approx(
            math.tan(probability * math.pi / 2), rel=1e-10
        )
    assert gum.coverage_factor(0.95, 2) == pytest.approx(
        math.sqrt(2) * 0.95 / math.sqrt(1 - 0.95**2), rel=1e-10
    )


@given(st.floats(0.5, 0.9999))
def test_many_degrees_of_freedom_are_a_normal(probability):
    assert gum.coverage_factor(probability, gum.ENOUGH) == pytest.approx(
        student.ppf((1 + probability) / 2, math.inf), rel=1e-5
    )


@given(sizes)
def test_mean_and_spread_are_numpys(readings):
    assert gum.mean(readings) == pytest.approx(numpy.mean(readings), abs=1e-12)
    assert gum.spread(readings, gum.mean(readings)) == pytest.approx(numpy.std(readings, ddof=1), abs=1e-12)


@given(st.lists(small, min_size=1, max_size=7))
def test_combined_is_the_length_of_the_vector(parts):
    assert gum.combined(parts) == pytest.approx(numpy.linalg.norm(parts), rel=1e-12)


@given(small, small, st.integers(1, 30))
def test_effective_freedom_lies_between_its_parts_and_all_of_them(u, other, freedom):
    """Limits: one part alone keeps its own; two alike add up; a part that is sure of itself only raises it."""
    assert gum.effective_freedom(u, [(u, freedom)]) == pytest.approx(freedom)
    assert gum.effective_freedom(u * math.sqrt(2), [(u, freedom), (u, freedom)]) == pytest.approx(2 * freedom)
    assert gum.effective_freedom(math.hypot(u, other), [(u, freedom)]) >= freedom * (1 - 1e-9)
    assert (
        gum.effective_freedom(other, [(0.0, freedom)]) == gum.ENOUGH == gum.effective_freedom(u, [(u, 1e9)])
    )


def test_rectangular_is_the_deviation_of_evenly_spread_numbers():
    """numpy: a million numbers, evenly spaced between ± 1."""
    assert gum.rectangular(1.0) == pytest.approx(numpy.std(numpy.linspace(-1, 1, 1_000_001)), rel=1e-5)


def test_warm_room_is_what_drawn_temperatures_and_expansions_give():
    """Monte Carlo with numpy: α_p = 21 ± 1, α_g = 11.5 ± 1 (10⁻⁶/K), room within ± 4 K, 100 mm; and with one material for both."""
    rng = numpy.random.default_rng(1)
    n = 400_000
    off = rng.uniform(-4, 4, n)
    for part in (21e-6, 11.5e-6):
        alphas = [a + rng.uniform(-1e-6, 1e-6, n) for a in (part, 11.5e-6)]
        drawn = 0.1 * (alphas[0] - alphas[1]) * off
        assert gum.room_warmth(0.1, part, 11.5e-6, 1e-6, 4.0) == pytest.approx(drawn.std(), rel=0.01)
    apart = rng.uniform(-1.5, 1.5, n)
    assert gum.unequal_warmth(0.1, 21e-6, 1.5) == pytest.approx((0.1 * 21e-6 * apart).std(), rel=0.01)
