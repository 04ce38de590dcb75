"""The verdict on a reading against scipy's normal distribution, every branch, the refusals, and what must always be so."""

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from scipy.stats import norm

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.reference import engine
from calc.stations.measuring.reading_verdict import reading_verdict
from tests.checks.stations.measuring.reading_verdict import CASES


@pytest.mark.parametrize("case", CASES)
def test_checks_are_what_scipy_finds(case):
    y, U, low, high, stated = CASES[case]
    assert norm.cdf(high, y, U / 2) - norm.cdf(low, y, U / 2) == pytest.approx(stated, abs=5e-7)


def test_the_example_has_the_limits_of_the_sheet():
    journal = engine.demo().feature("crank.main_journal")
    limits = {
        t.input.name: float(t.value) for t in reading_verdict().taken if t.input.name in ("low", "high")
    }
    assert limits == {"low": journal.low, "high": journal.high}


# Every verdict: state, words that stand in it, entries.
SURE = dict(low="54.985 mm", high="55.000 mm", doubt="0.003 mm")
VERDICTS = {
    "in": ("pass", "Within its limits, by 0.007 mm", {}),
    "under": ("fail", "Does not conform: 0.005 mm under the lower limit", dict(reading="54.980 mm")),
    "over": ("fail", "Does not conform: 0.005 mm over the upper limit", dict(reading="55.005 mm")),
    "inside, near the limit": ("unsure", "90 % likely to be within", dict(reading="54.987 mm")),
    "outside, near the limit": ("unsure", "25 % likely to be within", dict(reading="54.984 mm")),
    "on the limit": ("unsure", "50 % likely to be within", dict(reading="54.985 mm")),
    "doubt wider than the limits": ("unsure", "likely to be within", dict(doubt="0.5 mm")),
    "simple, well in": ("pass", "Within its limits, by 0.007 mm", dict(rule="simple")),
    "simple, near": (
        "attention",
        "Within on the reading alone, by 0.001 mm",
        dict(rule="simple", reading="54.986 mm"),
    ),
    "simple, on the limit": (
        "attention",
        "Within on the reading alone, by 0.000 mm",
        dict(rule="simple", reading="54.985 mm"),
    ),
    "simple, out by little": (
        "fail",
        "Does not conform: 0.001 mm under",
        dict(rule="simple", reading="54.984 mm"),
    ),
    "only a lower limit": ("pass", "Within its limits, by 0.027 mm", dict(high="", reading="55.012 mm")),
    "only an upper limit": ("pass", "Within its limits, by 0.100 mm", dict(low="", reading="54.900 mm")),
    "another probability, in": ("pass", "Within its limits, by 0.007 mm", dict(rule="other", proof="99.9 %")),
    "another probability, not enough": (
        "unsure",
        "99 % likely to be within",
        dict(rule="other", proof="99.9 %", reading="54.989 mm"),
    ),
    "another probability, less is enough": (
        "pass",
        "Within its limits, by 0.002 mm",
        dict(rule="other", proof="80 %", reading="54.987 mm"),
    ),
}


@pytest.mark.parametrize("case", VERDICTS)
def test_verdicts(case):
    state, words, given_here = VERDICTS[case]
    found = reading_verdict(**SURE | given_here).verdict
    assert (found.state, words in found.headline.plain()) == (state, True), found.headline.plain()


def test_the_rule_of_the_standard_and_an_agreed_one_part_ways():
    """U = 3 µm: at 95 % a reading is proven in from 1.645·1.5 = 2.47 µm inside, so 2.4 µm is not enough and 2.5 µm is."""
    assert reading_verdict(**SURE | dict(reading="54.9874 mm")).verdict.state == "unsure"
    assert reading_verdict(**SURE | dict(reading="54.9875 mm")).verdict.state == "pass"
    assert reading_verdict(**SURE | dict(reading="54.9826 mm")).verdict.state == "unsure"
    assert reading_verdict(**SURE | dict(reading="54.9825 mm")).verdict.state == "fail"


def test_on_the_limit_no_doubt_is_small_enough():
    found = reading_verdict(**SURE | dict(reading="54.985 mm"))
    assert found["deciding"] == 0 and "no gauge can tell" in found.verdict.do.plain()


def test_doubt_behind_the_reading_is_the_doubt():
    behind, own = (
        reading_verdict(reading="54.987 mm ± 0.002 mm"),
        reading_verdict(reading="54.987 mm", doubt="0.002 mm"),
    )
    assert {k: float(n) for k, n in behind.outputs.items()} == {k: float(n) for k, n in own.outputs.items()}
    assert behind.doubts == {}  # used, not carried on a second time
    assert any("±" in r.text.plain() for r in behind.remarks if r.field == "doubt")


def test_coverage_factor_divides():
    assert reading_verdict(doubt="0.006 mm", coverage="3")["probability"] == pytest.approx(
        reading_verdict(doubt="0.004 mm")["probability"], rel=1e-12
    )


def test_a_doubt_past_the_limits_accepts_nothing():
    """JCGM 106: where 2Φ(T/2u) − 1 < 0.95 not even the middle is accepted; T = 15 µm: from U = 15/1.96 = 7.65 µm on."""
    assert not any("no reading at all" in r.text.plain() for r in reading_verdict(doubt="0.0076 mm").remarks)
    found = reading_verdict(doubt="0.0077 mm", reading="54.9925 mm")
    assert found.verdict.state == "unsure" and any(
        "no reading at all" in r.text.plain() for r in found.remarks
    )
    assert "no reading" in [cell if isinstance(cell, str) else "" for cell in found.tables[0].rows[0]]


REFUSALS = {
    "no limit": (
        dict(low="", high=""),
        "low",
        "Lower limit: is empty, and so is the upper limit; give at least one of them.",
    ),
    "upside down": (
        dict(low="55.1 mm"),
        "low",
        "Lower limit: is 55.100 mm, not below the upper limit 55.000 mm; give less than 55.000 mm.",
    ),
    "equal": (dict(low="55 mm"), "low", "not below the upper limit"),
    "no doubt": (dict(doubt="0 mm"), "doubt", "no reading is without doubt"),
    "doubt told as none": (
        dict(reading="54.986 ± 0"),
        "doubt",
        "Doubt of the reading, ±: is told as none behind the ± of Reading, and no reading is without one; give 0.0001 mm or more.",
    ),
    "doubt given twice": (
        dict(reading="54.99 ± 0.01", doubt="0.004"),
        "doubt",
        "is given here and behind the ± of Reading; give it in one place",
    ),
    "doubt empty": (dict(doubt=""), "doubt", "nothing was given"),
    "nonsense limit": (dict(high="tight"), "high", '"tight" is not a number'),
}


@pytest.mark.parametrize("case", REFUSALS)
def test_refusals(case):
    wrong, field, words = REFUSALS[case]
    with pytest.raises(Refused) as refused:
        reading_verdict(**wrong)
    (error,) = refused.value.errors
    assert error.field == field and words in str(error), str(error)


microns = st.integers(-40, 40)
doubts = st.integers(1, 60)


def with_doubt(y, U_mm):
    return reading_verdict(
        reading=f"{50 + y / 1000:.3f} mm", low="49.990 mm", high="50.010 mm", doubt=f"{U_mm:.12f} mm"
    )


def at(y, U):
    return with_doubt(y, U / 1000)


@given(microns, doubts)
def test_a_decision_is_never_against_the_probability(y, U):
    found = at(y, U)
    p = found["probability"]
    assert p == pytest.approx(
        norm.cdf(50.010, 50 + y / 1000, U / 2000) - norm.cdf(49.990, 50 + y / 1000, U / 2000), abs=1e-9
    )
    assert (found.verdict.state == "pass") == (p >= 0.95)
    if found.verdict.state == "fail":
        assert p <= 0.05 and abs(y) > 10


@given(microns, doubts)
def test_the_doubt_that_is_named_decides_and_a_larger_one_does_not(y, U):
    found = at(y, U)
    named = found["deciding"] * 1000
    assume(abs(y) != 10 and named > 1e-3)
    decided = with_doubt(y, named * 0.999).verdict.state
    assert decided == ("pass" if abs(y) < 10 else "fail")
    assert with_doubt(y, named * 1.001).verdict.state == "unsure"


@given(microns, doubts)
def test_mirrored_readings_are_judged_alike(y, U):
    assert at(y, U)["probability"] == pytest.approx(at(-y, U)["probability"], abs=1e-9)
    assert at(y, U).verdict.state == at(-y, U).verdict.state


@given(microns, doubts)
def test_inches_give_the_same(y, U):
    metric = at(y, U)
    inch = reading_verdict(
        reading=f"{(50 + y / 1000) / 25.4!r} in",
        low=f"{49.99 / 25.4!r} in",
        high=f"{50.01 / 25.4!r} in",
        doubt=f"{U / 25400!r} in",
    )
    assert inch["probability"] == pytest.approx(metric["probability"], abs=1e-7)


@pytest.mark.parametrize(
    "reading, inside", [("54.987", 2e-6), ("54.998", 2e-6), ("54.9925", 7.5e-6), ("55.001", -1e-6)]
)
def test_margin_is_the_distance_to_the_nearer_limit_and_counted_in_doubts(reading, inside):
    found = reading_verdict(reading=f"{reading} mm", low="54.985 mm", high="55.000 mm", doubt="0.004 mm")
    assert (found["margin"], found["in_doubts"]) == (pytest.approx(inside), pytest.approx(inside / 4e-6))


def test_limits_are_the_readers_own_and_one_of_them_is_enough():
    """No limit stands in for one that was not typed: not the example's, nor an engine's."""
    for sheet in ("TS-16", "RC-40"):
        standing = Standing(engine.engine(sheet))
        waits = evaluate(reading_verdict, dict(reading="54.99 ± 0.003"), standing=standing).verdict
        assert (waits.state, waits.headline.plain()) == ("awaited", "lower limit")
        for one in (dict(low="54.985"), dict(high="55")):
            assert (
                evaluate(
                    reading_verdict, dict(reading="54.99 ± 0.003") | one, standing=standing
                ).verdict.state
                == "pass"
            )
        assert (
            evaluate(
                reading_verdict, dict(reading="54.99", low="54.985"), standing=standing
            ).verdict.headline.plain()
            == "doubt of the reading, ±"
        )
