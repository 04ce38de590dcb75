"""Fins: what must always be so of one, and of a finned wall. Beside scipy they stand in the calculator's table of outside numbers."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.formulas.fins import coefficient_for, fin_efficiency, fin_number, shed, unwarmed, warmed

fins = st.tuples(
    st.integers(1, 60), st.floats(0.5e-3, 8e-3), st.floats(2e-3, 0.1), st.floats(1e-3, 0.02), st.just(0.2)
)
coefficients, conductivities = st.floats(5, 300), st.sampled_from([35, 50, 65, 150, 200])


@given(coefficients, conductivities, st.floats(0.5e-3, 8e-3), st.floats(2e-3, 0.1))
def test_efficiency_lies_between_none_and_all_and_falls_with_length(h, k, t, length):
    short, long = (fin_efficiency(fin_number(h, k, t, x)) for x in (length, 1.1 * length))
    assert 0 < long < short < 1
    assert (
        fin_efficiency(fin_number(h, 10 * k, t, length))
        > short
        > fin_efficiency(fin_number(2 * h, k, t, length))
    )


@given(fins, coefficients, conductivities)
def test_coefficient_for_is_the_reverse_of_what_is_shed(sizes, h, k):
    assert coefficient_for(shed(*sizes, h, k), *sizes, k) == pytest.approx(h, rel=1e-9)


@given(fins, coefficients, conductivities)
def test_a_longer_fin_never_sheds_less(sizes, h, k):
    count, t, length, gap, width = sizes
    assert shed(count, t, 1.05 * length, gap, width, h, k) >= shed(*sizes, h, k) * (1 - 1e-12)


@given(st.floats(0.1, 50), st.floats(5, 200))
def test_warming_takes_some_of_the_heat_and_is_taken_out_again(conductance, capacity):
    """Limits: air that takes up endless heat stays cold; no air carries off more than its own warming to the wall's heat."""
    found = warmed(conductance, capacity)
    assert 0 < found < min(conductance, capacity) * (1 + 1e-12)
    if found < 0.99 * capacity:
        assert unwarmed(found, capacity) == pytest.approx(conductance, rel=1e-9)
    assert warmed(conductance, 1e6 * conductance) == pytest.approx(conductance, rel=1e-5)
