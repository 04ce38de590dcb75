"""Sizes read warm, against sympy, and the doubts against Monte Carlo with numpy."""

import sys

import numpy
import pytest
import sympy
from hypothesis import given
from hypothesis import strategies as st

from calc.formulas import warm_reading
from tests.checks.formulas.warm_reading import CASES

readings, alphas, temperatures = st.floats(1e-3, 3.0), st.floats(0.0, 50e-6), st.floats(253.0, 373.0)


@pytest.mark.parametrize("case", CASES)
def test_checks_are_what_sympy_solves(case):
    reading, part, gauge, part_C, gauge_C, stated = map(sympy.Rational, map(str, case))
    size = sympy.Symbol("L")
    (solved,) = sympy.solve(
        sympy.Eq(size * (1 + part / 10**6 * (part_C - 20)), reading * (1 + gauge / 10**6 * (gauge_C - 20))),
        size,
    )
    assert float(solved) == pytest.approx(float(stated), abs=5e-7)


@given(readings, alphas, alphas, temperatures, temperatures)
def test_the_size_warmed_again_is_what_the_gauge_spans(reading, part, gauge, part_K, gauge_K):
    size = warm_reading.at_reference(reading, part, gauge, part_K, gauge_K, 293.15)
    assert size * (1 + part * (part_K - 293.15)) == pytest.approx(
        reading * (1 + gauge * (gauge_K - 293.15)), rel=1e-12
    )
    # The usual short form leaves out the product of the strains alone: of tiny ones less than what the eight
    # roundings on both ways leave, half a last bit each.
    short = reading * (1 + gauge * (gauge_K - 293.15) - part * (part_K - 293.15))
    most = max(abs(part * (part_K - 293.15)), abs(gauge * (gauge_K - 293.15)))
    assert abs(size - short) <= (2.1 * most**2 + 4 * sys.float_info.epsilon) * reading


def test_strains_whose_product_is_less_than_a_last_bit_are_no_fault():
    """The one that a search met: a part of 5.96e-08 1/K read at 293 K."""
    test = test_the_size_warmed_again_is_what_the_gauge_spans.hypothesis.inner_test
    test(1.0, 5.960464477539063e-08, 0.0, 293.0, 253.0)


@given(readings, alphas, temperatures)
def test_at_20_degrees_nothing_is_corrected_and_no_expansion_counts(reading, part, gauge_K):
    assert warm_reading.at_reference(reading, part, 11.5e-6, 293.15, 293.15, 293.15) == reading
    assert warm_reading.expansion_doubt(reading, part, 0.1, 293.15, 293.15) == 0


def test_doubts_are_what_drawn_temperatures_and_expansions_give():
    """Monte Carlo, numpy, 200 000 draws: 90 mm of α 21.5 ± 5 % at 31 ± 1 °C, steel gauge at 24 ± 0.7 °C (standard uncertainties)."""
    rng = numpy.random.default_rng(2)
    n = 200_000

    def drawn(part, part_K, gauge_K):
        return 0.09 * (1 + 11.5e-6 * (gauge_K - 293.15)) / (1 + part * (part_K - 293.15))

    part_K, gauge_K, part = (
        rng.normal(304.15, 1, n),
        rng.normal(297.15, 0.7, n),
        rng.normal(21.5e-6, 0.05 * 21.5e-6, n),
    )
    assert warm_reading.temperature_doubt(0.09, 21.5e-6, 11.5e-6, 1, 0.7) == pytest.approx(
        drawn(21.5e-6, part_K, gauge_K).std(), rel=0.01
    )
    assert warm_reading.expansion_doubt(0.09, 21.5e-6, 0.05, 304.15, 293.15) == pytest.approx(
        drawn(part, 304.15, 297.15).std(), rel=0.01
    )
