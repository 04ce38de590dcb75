"""The doubt of a reading against numpy and scipy, its verdicts and refusals, and what must always be so."""

import numpy
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.stats import t as student

from calc.core.result import Refused
from calc.stations.measuring.gauge_uncertainty import gauge_uncertainty
from tests.checks.stations.measuring.gauge_uncertainty import FIVE, REPEATS_ONLY

UM = 1e-6


def test_the_example_worked_with_numpy_and_scipy():
    """Five readings, step 1 µm, gauge ± 2 µm (k = 2), 55 mm of steel within 1 K of the gauge and 3 K of 20 °C."""
    s = numpy.std([54.992, 54.994, 54.993, 54.993, 54.995], ddof=1) * 1000
    alpha = 11.7 / (1 + 80 * 4.5e-4)  # 10⁻⁶/K, forged steel at 20 °C
    room = 55e-3 * 3 / 3**0.5 * numpy.hypot(alpha - 11.5, 2**0.5 / 3**0.5)
    parts = [s / 5**0.5, 1 / 12**0.5, 1.0, 55e-3 * alpha / 3**0.5, room]
    total = numpy.linalg.norm(parts)
    freedom = total**4 / (parts[0] ** 4 / 4)
    found = gauge_uncertainty()
    assert found["standard"] / UM == pytest.approx(total, rel=1e-9)
    assert found["freedom"] == pytest.approx(freedom, rel=1e-9)
    assert found["expanded"] / UM == pytest.approx(student.ppf(0.975, freedom) * total, rel=1e-7)
    assert found["expanded"] / UM == pytest.approx(2.40560, abs=5e-6)  # as the page of checks has it
    shown = [float(row[2]) / UM for row in found.tables[0].rows]
    assert shown == pytest.approx(parts, rel=1e-9)
    assert sum(float(row[1]) for row in found.tables[0].rows) == pytest.approx(1.0)
    assert all(float(row[3]) / float(row[4]) == pytest.approx(float(row[2])) for row in found.tables[0].rows)


def test_a_gauge_that_is_set_adds_its_master_and_one_more_step():
    """Two readings go into a difference: one on the master, one on the part."""
    plain, with_master = gauge_uncertainty(), gauge_uncertainty(master="0.0012 mm")
    added = (0.6 * UM) ** 2 + (1 * UM) ** 2 / 12
    assert with_master["standard"] ** 2 - plain["standard"] ** 2 == pytest.approx(added, rel=1e-9)


def test_one_reading_doubts_more_than_the_mean_of_five():
    one = gauge_uncertainty(readings=FIVE, reported="one", **REPEATS_ONLY)
    mean = gauge_uncertainty(readings=FIVE, **REPEATS_ONLY)
    assert one["standard"] / mean["standard"] == pytest.approx(5**0.5, rel=1e-4)
    assert one["factor"] == pytest.approx(mean["factor"], rel=1e-3)
    do = gauge_uncertainty(reported="one").verdict.do.plain()
    assert "behind the one reading" in do and "54.99" not in do  # the mean is not what is written down


VERDICTS = {
    "good": ("pass", "Good to ± 0.0024 mm", {}),
    "coarse": ("attention", "Coarse: takes 30 % of the tolerance", dict(tolerance="0.008 mm")),
    "hopeless": ("fail", "Too coarse: takes 60 % of the tolerance", dict(tolerance="0.004 mm")),
}


@pytest.mark.parametrize("case", VERDICTS)
def test_verdicts(case):
    state, words, entries = VERDICTS[case]
    found = gauge_uncertainty(**entries).verdict
    assert (found.state, found.headline.plain()) == (state, words)


def test_hopeless_is_where_no_reading_can_be_accepted():
    """A normal of u between limits T apart holds 95 % from T = 2·1.96·u on."""
    u = gauge_uncertainty()["standard"]
    assert gauge_uncertainty(tolerance=f"{u * 2 * 1.97!r} m").verdict.state == "attention"
    assert gauge_uncertainty(tolerance=f"{u * 2 * 1.95!r} m").verdict.state == "fail"


@pytest.mark.parametrize(
    "entries, words",
    [
        (dict(calibration="0.02 mm"), "Take a gauge with a better paper"),
        (dict(readings="54.98; 55.01; 54.99"), "the same drag"),
        (dict(resolution="0.02 mm"), "Read a finer gauge"),
        (dict(apart="8 K"), "side by side"),
        (dict(off="20 K", material="mg-az91"), "bring the size to 20 °C"),
        (dict(master="0.02 mm"), "better ring or block"),
    ],
)
def test_the_largest_source_says_what_to_do(entries, words):
    assert words in gauge_uncertainty(**entries).verdict.do.plain()


def test_remarks():
    def said(**entries):
        return " ".join(r.text.plain() for r in gauge_uncertainty(**entries).remarks)

    assert (
        "All readings are alike" in said(readings="54.99; 54.99; 54.99")
        and "All readings are alike" not in said()
    )
    assert "With 2 readings" in said(readings="54.98; 54.99")
    assert "which is right" in said(size="40 mm") and "which is right" not in said(
        readings="0.002; 0.004", size="40 mm"
    )


REFUSALS = {
    "one reading": (
        dict(readings="54.993"),
        "readings",
        "Readings: only one row is filled; give at least 2.",
    ),
    "none": (dict(readings=""), "readings", "Readings: no row is filled; give at least 2."),
    "eleven": (dict(readings=";".join(["1"] * 11)), "readings", "give 2 to 10 rows of 1"),
    "not a number": ({"readings.3.1": "?"}, "readings.3.1", 'Readings, 3: "?" is not a number'),
    "no step": (dict(resolution="0 mm"), "resolution", "past what this calculator can answer for"),
}


@pytest.mark.parametrize("case", REFUSALS)
def test_refusals(case):
    wrong, field, words = REFUSALS[case]
    with pytest.raises(Refused) as refused:
        gauge_uncertainty(**wrong)
    (error,) = refused.value.errors
    assert error.field == field and words in str(error), str(error)


steps = st.lists(st.integers(-9, 9), min_size=2, max_size=10)


@given(steps, st.integers(0, 30))
def test_any_further_doubt_makes_more_of_it(readings, more):
    texts = dict(readings=";".join(f"{50 + r / 1000:.3f}" for r in readings))
    plain = gauge_uncertainty(**texts)
    for name, unit in (("calibration", "µm"), ("apart", "K"), ("off", "K"), ("master", "µm")):
        low, high = (
            gauge_uncertainty(**texts, **{name: f"{x} {unit}"})["standard"] for x in (more, more + 1)
        )
        assert low < high, name
    assert plain["expanded"] >= 1.959 * plain["standard"] and 1.959 < plain["factor"] <= 12.71
    assert plain["mean"] == pytest.approx(numpy.mean([50 + r / 1000 for r in readings]) / 1000, abs=1e-12)


def test_share_of_the_tolerance_is_the_expanded_doubt_over_it():
    """U/T, as the rule of ten to one counts it."""
    found = gauge_uncertainty(tolerance="0.020 mm")
    assert found["of_tolerance"] == pytest.approx(found["expanded"] / 20e-6)
