"""Decision rules: scipy's normal distribution in both tails, the three answers, and the doubt that would decide."""

import math

import mpmath
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from scipy.stats import norm

from calc.core.conformance import (
    PROOF,
    accepted,
    decide,
    deciding_share,
    past,
    percent,
    phi,
    probability,
    probability_within,
    quantile,
    standard,
)

INF = math.inf
margins = st.floats(-40, 40)


@given(margins)
def test_phi_is_scipys_in_both_tails(x):
    assert phi(x) == pytest.approx(norm.cdf(x), rel=1e-12, abs=0)


@given(st.floats(0.5, 1 - 1e-12))
def test_quantile_is_scipys(p):
    assert quantile(p) == pytest.approx(norm.isf(1 - p), rel=1e-9, abs=1e-15)
    assert phi(quantile(p)) == pytest.approx(p, abs=1e-15)


@given(margins, margins)
def test_probability_keeps_its_digits_in_the_tails(below, above):
    """mpmath with 400 digits, where nothing cancels."""
    assume(below + above > 1e-3)  # limits the right way up
    with mpmath.workdps(400):
        whole = float(mpmath.ncdf(mpmath.mpf(above)) - mpmath.ncdf(-mpmath.mpf(below)))
    assert probability(below, above) == pytest.approx(whole, rel=1e-10, abs=1e-300)
    assert probability(below, above) == pytest.approx(probability(above, below), rel=1e-9)


def test_without_doubt_a_limit_belongs_to_what_it_allows():
    assert [probability_within(x, 0.0, 9.0, 10.0) for x in (8.999, 9.0, 9.5, 10.0, 10.001)] == [0, 1, 1, 1, 0]
    assert probability_within(5.0, 0.0, None, None) == 1 == probability_within(5.0, 0.1, None, None)
    assert (
        standard(None, 0.1) == INF == standard(0.0, 0.0) == standard(-0.0, 0.0)
        and standard(-1e-9, 0.0) == -INF
    )


def test_what_floats_leave_of_two_equal_numbers_is_past_no_limit():
    """Decimals say 0.12, 0.3 and 430.2 exactly; floats a last bit more. In metres, newtons and pure numbers."""
    for size, limit in ((8.08e-3 - 7.96e-3, 0.12e-3), (0.1 + 0.2, 0.3), (330.1 + 100.1, 430.2)):
        assert size > limit and not past(size, limit) and not past(limit, size)
    assert past(0.121e-3, 0.12e-3) and past(430.2 + 1e-6, 430.2) and not past(0.119e-3, 0.12e-3)
    assert standard(-1e-19, 0.0) == INF


def test_without_doubt_a_certainty_is_proven():
    """Probabilities of 1 and 0 exactly, and a whole certainty asked for."""
    assert (
        decide(INF, INF, proof=1.0) == "in"
        and decide(-INF, INF, proof=1.0) == decide(INF, -INF, proof=1.0) == "out"
    )


@pytest.mark.parametrize(
    "below, above, answer",
    [
        (1.65, INF, "in"),
        (1.64, INF, "cannot tell"),
        (0.0, INF, "cannot tell"),
        (-1.64, INF, "cannot tell"),
        (-1.65, INF, "out"),
        (INF, 1.65, "in"),
        (INF, -1.65, "out"),
        (INF, INF, "in"),
        (INF, -INF, "out"),
        (1.65, 3.0, "cannot tell"),
        (1.66, 3.0, "in"),  # both limits count: 0.95053 − 0.00135 and 0.95154 − 0.00135
        (1.95, 1.95, "cannot tell"),
        (1.97, 1.97, "in"),
        (
            0.1,
            0.1,
            "cannot tell",
        ),  # nearly no probability between them, but nothing proves that it is outside
        (-0.5, 0.6, "cannot tell"),
    ],
)
def test_three_answers(below, above, answer):
    """At 95 %: 1.645 on one side, 1.960 where both sides are equally near (tables of the normal distribution)."""
    assert decide(below, above) == answer


@given(margins, margins, st.floats(0.6, 0.999))
def test_in_and_out_are_never_both_proven(below, above, proof):
    assume(below + above > 1e-3)
    p = probability(below, above)
    answer = decide(below, above, proof)
    assert (answer == "in") == (p >= proof)
    if answer == "out":
        assert p <= 1 - proof + 1e-12 and min(below, above) < 0


@given(st.floats(-20, 20), st.one_of(st.just(INF), st.floats(0.01, 40)), st.floats(0.6, 0.999))
def test_the_deciding_share_is_where_the_answer_turns(nearer, width, proof):
    """Limits `width` apart, the reading `nearer` above the lower one."""
    below, above = nearer, width - nearer
    assume(abs(min(below, above)) > 1e-3)
    share = deciding_share(below, above, proof)
    just_less, just_more = ((below / s, above / s) for s in (share * 0.9999, share * 1.0001))
    assert decide(*just_less, proof) == ("in" if min(below, above) > 0 else "out")
    assert decide(*just_more, proof) == "cannot tell"


def test_on_a_limit_no_doubt_decides():
    assert deciding_share(0.0, INF) == 0 == deciding_share(5.0, 0.0) and deciding_share(INF, INF) == INF


@given(st.floats(1e-6, 2.0), st.floats(0.01, 10.0), st.floats(0.6, 0.999))
def test_accepted_readings_are_those_that_are_in(u, width, proof):
    zone = accepted(u, 5.0, 5.0 + width, proof)
    if zone is None:
        assert decide(width / 2 / u, width / 2 / u, proof) != "in"
        return
    low, high = zone
    assert low + high == pytest.approx(10 + width) and low <= high

    def answer(y):
        return decide((y - 5) / u, (5 + width - y) / u, proof)

    assert answer(low + 1e-6 * u) == answer(high - 1e-6 * u) == "in" or high - low < 3e-6 * u
    assert answer(low - 1e-3 * u) == answer(high + 1e-3 * u) == "cannot tell"


def test_one_limit_is_guarded_by_the_one_sided_quantile():
    assert accepted(0.002, 9.0, None) == (pytest.approx(9.0 + 1.644854 * 0.002), None)
    assert accepted(0.002, None, 10.0) == (None, pytest.approx(10.0 - 1.644854 * 0.002))
    assert PROOF == 0.95


def test_equal_up_to_what_floats_leave():
    assert not past(0.1 + 0.2, 0.3) and not past(51.998e-3 - 51.990e-3, 0.008e-3) and past(0.3 + 1e-9, 0.3)


@pytest.mark.parametrize(
    "share, text",
    [(0.9499, "94 %"), (0.95, "95 %"), (0.29, "29 %"), (0.999999, "99 %"), (1.0, "100 %"), (0.0, "0 %")],
)
def test_per_cent_are_rounded_down(share, text):
    assert percent(share).text() == text == percent(share).text("inch")


@pytest.mark.parametrize("half", [1.65, 1.8, 1.95])
def test_no_reading_is_proven_between_limits_that_either_alone_would_let_pass(half):
    """At the middle scipy gives Φ(h) − Φ(−h) < 95 %, though Φ(h) is above it."""
    assert norm.cdf(half) - norm.cdf(-half) < PROOF < norm.cdf(half)
    assert accepted(1.0, -half, half) is None and accepted(1.0, -2.0, 2.0) is not None
