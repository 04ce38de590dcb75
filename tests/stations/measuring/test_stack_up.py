"""A chain of sizes: against draws with numpy, its verdicts and refusals, and what must always be so."""

import numpy
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.stats import norm

from calc.core.kinds import LENGTH
from calc.core.reading import in_si
from calc.core.result import Refused
from calc.reference import engine
from calc.stations.measuring.stack_up import stack_up
from calc.stations.measuring.stack_up.told import RUNS

MM = 1e-3


def test_the_example_is_the_deck_height_of_the_sheet():
    sheet = engine.demo()
    found, deck = stack_up(), sheet.feature("crankcase.deck_height")
    assert (found["least_gap"], found["greatest_gap"]) == (pytest.approx(deck.low), pytest.approx(deck.high))
    names = (
        "crankcase.seat_height",
        "cylinder.length",
        "crank.throw",
        "rod.centre_distance",
        "piston.compression_height",
    )
    for row, name in zip(found.taken[0].value, names):
        size, plus, minus, _ = map(float, row)
        part = sheet.feature(name)
        assert (size - minus, size + plus) == (pytest.approx(part.low), pytest.approx(part.high)), name


def test_a_lopsided_chain_is_what_numpy_draws():
    """Four sizes, one lopsided, one the wrong way round; a million draws."""
    rows = [(20.0, 0.06, 0.0, 1), (5.0, 0.02, 0.02, -1), (7.5, 0.01, 0.03, -1), (7.0, -0.01, 0.05, -1)]
    rng = numpy.random.default_rng(3)
    drawn = sum(way * rng.uniform(size - minus, size + plus, 1_000_000) for size, plus, minus, way in rows)
    found = stack_up(chain="|".join(";".join(map(str, row)) for row in rows), low="0.50", high="0.62")
    assert found["gap"] == pytest.approx(drawn.mean() * MM, abs=1e-7) and found["deviation"] == pytest.approx(
        drawn.std() * MM, rel=2e-3
    )
    share = ((drawn >= 0.50) & (drawn <= 0.62)).mean()
    assert found["within"] == pytest.approx(share, abs=2e-3)
    assert abs(found["simulated"] - found["within"]) < 4 * found["error"]
    assert found["error"] == pytest.approx((share * (1 - share) / RUNS) ** 0.5, rel=0.05)
    assert found["least_gap"] == pytest.approx(0.48 * MM) and found["greatest_gap"] == pytest.approx(
        0.66 * MM
    )  # 20 − 5.02 − 7.51 − 6.99, 20.06 − 4.98 − 7.47 − 6.95


VERDICTS = {
    "worst case fits": ("pass", "Always fits: 1.025 mm to 1.375 mm", {}),
    "exactly": ("pass", "Always fits: 1.025 mm to 1.375 mm", dict(low="1.025", high="1.375")),
    "only a least gap": ("pass", "Always fits: 1.025 mm to 1.375 mm", dict(high="")),
    "only a greatest gap": ("pass", "Always fits: 1.025 mm to 1.375 mm", dict(low="")),
    "nearly": ("attention", "All but one in 7\u202f300 fit", dict(low="1.05", high="1.35")),
    "not enough": ("fail", "Too few fit: 98.39 %", dict(low="1.1", high="1.35")),
    "not enough, in the middle": ("fail", "Too few fit: 96.79 %", dict(low="1.1", high="1.3")),
    "enough as agreed": ("attention", "All but one in 31 fit", dict(low="1.1", high="1.3", wanted="95 %")),
    "never": ("fail", "Too few fit: 0.00 %", dict(low="2", high="")),
    "nothing to judge by": ("attention", "Gap from 1.025 mm to 1.375 mm", dict(low="", high="")),
    "no tolerance at all": (
        "pass",
        "Always fits: 1.000 mm to 1.000 mm",
        dict(chain="5; 0; 0; 1 | 4; 0; 0; -1"),
    ),
}


@pytest.mark.parametrize("case", VERDICTS)
def test_verdicts(case):
    state, words, entries = VERDICTS[case]
    found = stack_up(**entries).verdict
    assert (found.state, found.headline.plain()) == (state, words)


def test_the_middle_is_moved_before_anything_is_tightened():
    assert "widen the gap by 0.025 mm" in stack_up(low="1.1", high="1.35").verdict.do.plain()
    assert "narrow the gap by 0.025 mm" in stack_up(low="1.05", high="1.3").verdict.do.plain()
    assert "Size 1, ± 0.050 mm, has the most to give" in stack_up(low="1.1", high="1.3").verdict.do.plain()


def test_measured_sizes_with_doubts_instead_of_tolerances():
    """Two sizes good to ± 0.01 each: the gap to ± 0.0141, and 0.008 inside the limit is Φ(0.008/0.00707) = 87.1 % sure."""
    found = stack_up(chain="101.708 ± 0.01; 0; 0; 1 | 100.7 ± 0.01; 0; 0; -1", high="")
    assert found.doubts["gap"] == pytest.approx(0.0141421 * MM, rel=1e-5)
    assert (
        found.verdict.state == "unsure" and "87 % sure that the least gap" in found.verdict.headline.plain()
    )
    assert norm.cdf(0.008 / 0.00707107) == pytest.approx(0.871, abs=5e-4)


def test_a_minus_with_its_sign_is_asked_after():
    """Plus 0.05 and minus −0.05 leave no tolerance at all, where ± 0.05 was meant. Both limits over the size are told likewise: +0.05 +0.02."""

    def warned(chain):
        return [r.text.plain() for r in stack_up(chain=chain).remarks if r.level == "warning"]

    assert not warned("10; 0.05; 0.05; 1 | 9; 0.05; 0; -1")
    assert warned("10; 0.05; -0.05; 1 | 9; 0.05; 0.05; -1 | 1; 0.05; -0.02; 1")[0].startswith(
        "Of size 1 and 3 the minus is below zero"
    )


def test_root_sum_of_squares_is_named_for_what_it_holds():
    """Monte Carlo with numpy: of five even sizes ± the root sum of squares holds less than 99.73 %."""
    rng = numpy.random.default_rng(4)
    halves = numpy.array([0.05, 0.02, 0.025, 0.05, 0.03])
    held = (abs(rng.uniform(-halves, halves, (400_000, 5)).sum(axis=1)) <= numpy.linalg.norm(halves)).mean()
    said = next(r for r in stack_up().remarks if "Root sum" in r.text.plain()).text.values["p"]
    assert float(said) == pytest.approx(held, abs=2e-3)
    assert not any("Root sum" in r.text.plain() for r in stack_up(shape="normal").remarks)


def test_simulation_is_the_same_every_time():
    once, again = stack_up(low="1.1", shape="normal"), stack_up(low="1.1", shape="normal")
    assert once["simulated"] == again["simulated"] and 0 < once["simulated"] < 1


REFUSALS = {
    "one size": (dict(chain="5; 0; 0; 1"), "chain", "Chain: only one row is filled; give at least 2."),
    "half a way": (
        dict(chain="5; 0; 0; 1 | 5; 0; 0; 0.5"),
        "chain",
        "Chain: row 2 has the way 0.5; give 1 where the size opens the gap, −1 where it closes it.",
    ),
    "no way": ({"chain.2.4": "0"}, "chain", "row 2 has the way 0;"),
    "limits of a size upside down": (
        {"chain.2.3": "-0.05"},
        "chain",
        "row 2 has plus 0.020 mm and minus −0.050 mm, its upper limit under its lower one",
    ),
    "a size without its tolerance": (
        dict(chain="5; 0; 0; 1 | 5"),
        "chain.2.2",
        "Chain, 2, Plus: is empty; give a length, or leave the whole row empty.",
    ),
    "limits of the gap upside down": (
        dict(low="1.5"),
        "low",
        "Gap, at least: is 1.500 mm, not below 1.400 mm; give less than 1.400 mm.",
    ),
    "nine sizes": (dict(chain="|".join(["5; 0; 0; 1"] * 9)), "chain", "give 2 to 8 rows of 4"),
}


@pytest.mark.parametrize("case", REFUSALS)
def test_refusals(case):
    wrong, field, words = REFUSALS[case]
    with pytest.raises(Refused) as refused:
        stack_up(**wrong)
    (error,) = refused.value.errors
    assert error.field == field and words in str(error), str(error)


rows = st.lists(
    st.tuples(st.integers(1, 60), st.integers(0, 300), st.integers(0, 300), st.sampled_from([1, -1])),
    min_size=2,
    max_size=8,
)


def text(chain):
    return "|".join(f"{size}; {plus / 1000}; {minus / 1000}; {way}" for size, plus, minus, way in chain)


@given(rows, st.sampled_from(["uniform", "normal"]))
def test_the_order_of_the_chain_does_not_matter_and_turning_it_round_mirrors_it(chain, shape):
    there, shuffled = (
        stack_up(chain=text(chain), shape=shape, low="", high=""),
        stack_up(chain=text(chain[::-1]), shape=shape, low="", high=""),
    )
    back = stack_up(
        chain=text([(size, plus, minus, -way) for size, plus, minus, way in chain]),
        shape=shape,
        low="",
        high="",
    )
    for output in ("gap", "least_gap", "greatest_gap", "root", "deviation", "most"):
        assert shuffled[output] == pytest.approx(there[output], abs=1e-12), output
    assert back["greatest_gap"] == pytest.approx(-there["least_gap"], abs=1e-12)


@given(rows, st.sampled_from(["uniform", "normal"]), st.integers(-3000, 3000), st.integers(1, 3000))
def test_share_and_simulation_agree_and_worst_case_bounds_them(chain, shape, start, width):
    middle = sum(way * (size + (plus - minus) / 2000) for size, plus, minus, way in chain)
    low, high = f"{middle + start / 5000:.4f} mm", f"{middle + (start + width) / 5000:.4f} mm"
    found = stack_up(chain=text(chain), shape=shape, low=low, high=high)
    assert abs(found["simulated"] - found["within"]) < 5.5 * found["error"]
    if in_si(low, LENGTH) <= found["least_gap"] and found["greatest_gap"] <= in_si(high, LENGTH):
        assert found.verdict.state == "pass" and found["within"] > 0.997


def test_standard_error_is_that_of_a_counted_share():
    """Binomial, √(p(1 − p)/n), with two hits and two misses added (Agresti and Coull, from memory): not 0 where all fit."""
    for low, high in (("1.10 mm", "1.30 mm"), ("0.90 mm", "1.50 mm")):
        found = stack_up(low=low, high=high)
        p = (found["simulated"] * RUNS + 2) / (RUNS + 4)
        assert found["error"] == pytest.approx((p * (1 - p) / RUNS) ** 0.5) and found["error"] > 0
