"""End weights: rods as beams with masses taken off, verdicts, refusals, and what matching must leave."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.reference.engine import engine
from calc.stations.rods.rod_weights import rod_weights
from calc.stations.rods.rod_weights.pads import off_pads
from tests.checks.stations.rods.rod_weights import SETS, pair

G = 1e-3


def reactions(masses, L):
    """Balance readings at x = 0 (big end) and x = L of point masses (m, x): forces and moments solved."""
    total, moment = sum(m for m, _ in masses), sum(m * x for m, x in masses)
    return np.linalg.solve([[1.0, 1.0], [0.0, L]], [total, moment])


@pytest.mark.parametrize("name", SETS)
def test_checks_bring_the_beam_to_the_other_rods_readings(name):
    (b1, s1, b2, s2, L, eb, es), (m_b, m_s) = SETS[name]
    after = reactions([(b1, 0), (s1, L), (-m_b, -eb), (-m_s, L + es)], L)
    assert after == pytest.approx([b2, s2], abs=2e-5)
    per_gram = np.column_stack([reactions([(1, -eb)], L), reactions([(1, L + es)], L)])
    assert np.linalg.solve(per_gram, [b1 - b2, s1 - s2]) == pytest.approx([m_b, m_s], abs=1e-6)


tenths = st.integers(0, 60).map(lambda n: n / 10)
sets = st.lists(st.tuples(tenths, tenths), min_size=2, max_size=4)


def entered(over):
    return dict(
        weights=" | ".join(f"{400 + b:.1f}; {160 + s:.1f}" for b, s in over),
        most_big="100 g",
        most_small="100 g",
    )


@given(sets)
def test_all_are_alike_once_the_metal_is_off_and_the_lightest_ends_lose_least(over):
    found = rod_weights(**entered(over))
    for output in ("big_after", "small_after", "whole_after"):
        assert found[output] / G == pytest.approx(0, abs=1e-6)
    assert found["lightest"] / G == pytest.approx(
        560 + min(b for b, _ in over) + min(s for _, s in over), abs=1e-6
    )
    assert found["spread_big"] / G == pytest.approx(
        max(b for b, _ in over) - min(b for b, _ in over), abs=1e-9
    )


@given(tenths, tenths, st.floats(0, 0.6), st.floats(0, 0.4))
def test_metal_off_is_never_put_on_and_adds_up_to_what_the_ends_are_over(b, s, beta, sigma):
    m_b, m_s = off_pads(b, s, beta, sigma)
    assert m_b >= 0 and m_s >= 0 and m_b + m_s == pytest.approx(b + s)
    assert (m_b * (1 + beta) - m_s * sigma, m_s * (1 + sigma) - m_b * beta) == (
        pytest.approx(b, abs=1e-9),
        pytest.approx(s, abs=1e-9),
    )


@given(st.integers(200, 900), st.integers(80, 400), st.integers(2, 4))
def test_equal_rods_lose_nothing(big, small, n):
    found = rod_weights(weights=" | ".join([f"{big}; {small}"] * n))
    assert (
        found["off_big"] == found["off_small"] == found["spread_whole"] == 0 and found.verdict.state == "pass"
    )


VERDICTS = {
    "alike": ("pass", "Alike: big 0.6 g, small 0.5 g apart", {}),
    "right on the limit": (
        "pass",
        "Alike: big 1.0 g, small 0.0 g apart",
        dict(weights="400; 160 | 401; 160"),
    ),  # 0.401 − 0.400 is a last bit over 0.001
    "a tenth over": (
        "attention",
        "Apart by 1.1 g: take off as listed",
        dict(weights="400; 160 | 401.1; 160"),
    ),
    "big ends apart": (
        "attention",
        "Apart by 3.0 g: take off as listed",
        dict(weights="403; 160 | 400; 160 | 401; 160.5 | 400; 160"),
    ),
    "small ends apart": (
        "attention",
        "Apart by 2.0 g: take off as listed",
        dict(weights="400; 162 | 400; 160"),
    ),
    "another forging": (
        "fail",
        "Pads run out: 10.1 g stay apart",
        dict(weights="420; 160 | 400; 160", most_big="8 g"),
    ),
    "no pad at the small end": (
        "fail",
        "Pads run out: 3.0 g stay apart",
        dict(weights="400; 163 | 400; 160", most_small="0 g", most_big="0 g"),
    ),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    state, words, entries = VERDICTS[name]
    verdict = rod_weights(**entries).verdict
    assert (verdict.state, verdict.headline.plain()) == (state, words)


def test_each_rod_is_judged_in_its_row():
    (table,) = rod_weights(weights="420; 160 | 400; 160 | | 402; 160").tables
    assert (
        [row[0] for row in table.rows] == ["1", "2", "4"]
        and table.states == ("fail", "pass", "attention")
        and table.rows[1][4:] == ("–", "–")
    )


def test_ends_that_do_not_make_up_the_whole_are_asked_after():
    def warned(**entries):
        return [r.text.plain() for r in rod_weights(**entries).remarks if r.level == "warning"]

    assert not warned() and not warned(weights="400; 160; 560.9 | 400; 160")
    assert warned(weights="400; 160; 563 | 400; 160; 560") == [
        "Both ends of rod 1 together are 3.0 g off the whole: weigh again, level, hung at the bores' centres."
    ]


@pytest.mark.parametrize(
    "entries, field, words",
    [
        (dict(weights="400; 160"), "weights", "only one row is filled; give at least 2"),
        ({"weights.1.2": ""}, "weights.1.2", "is empty"),
        ({"weights.2.1": "3 mm"}, "weights.2.1", "a length"),
        (dict(centre_distance="0"), "centre_distance", "below 50"),
        (dict(most_big="-1 g"), "most_big", "below 0"),
    ],
)
def test_refusals(entries, field, words):
    with pytest.raises(Refused) as refused:
        rod_weights(**entries)
    (error,) = refused.value.errors
    assert error.field == field and words in str(error), str(error)


def test_a_doubt_that_reaches_the_limit_leaves_it_open():
    found = rod_weights(weights="400.9 ± 0.4; 160 | 400; 160")
    assert found.verdict.state == "unsure" and "end weights" in found.verdict.headline.plain()


def test_inches_and_ounces_give_the_same():
    metric = evaluate(rod_weights, pair(403.98070, 161.59228, 396.89332, 158.75733, 137.16, 40.64, 17.78))
    inch = evaluate(
        rod_weights,
        dict(
            weights="14.25; 5.7 | 14; 5.6",
            centre_distance="5.4",
            beyond_big="1.6",
            beyond_small="0.7",
            most_big="3",
            most_small="3",
        ),
        "inch",
    )
    for output in ("off_big", "off_small", "spread_big", "spread_small", "lightest"):
        assert inch[output] == pytest.approx(metric[output], rel=1e-4, abs=1e-7), output


def test_what_the_pads_may_lose_and_where_they_lie_comes_from_the_engine_s_sheet_alone():
    weights = dict(weights="402; 161 | 399.6; 160.4")
    known, unknown = (
        evaluate(rod_weights, weights, standing=Standing(engine(name))).verdict for name in ("TS-16", "RC-40")
    )
    assert known.state == "attention" and (
        unknown.state,
        "pad beyond its centre" in unknown.headline.plain(),
    ) == ("awaited", True)
    typed = evaluate(
        rod_weights,
        weights | dict(beyond_big="40 mm", beyond_small="20 mm"),
        standing=Standing(engine("RC-40")),
    ).verdict
    assert typed.state == "unjudged" and "pad may lose" in typed.headline.plain()


def test_a_doubt_that_reaches_what_is_allowed_leaves_it_open():
    found = rod_weights(**{"weights": "400; 160 | 401.0 ± 0.4 g; 160"})
    assert found.verdict.state == "unsure" and "spread of end weights" in found.verdict.headline.plain()
