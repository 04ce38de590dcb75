"""Drills before taps: verdicts, every thread, refusals, and that more thread wants a smaller drill."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.reference.standards.threads import THREADS, internal
from calc.stations.shared.thread_sizes import SIZES
from calc.stations.threads.tap_drill import tap_drill


def run(**entries):
    return evaluate(tap_drill, entries)


@pytest.mark.parametrize(
    "entries, state, headline, do",
    [
        ({}, "pass", "Drill 6.8 mm: 73.9 % of thread", "Within 6H: 6.647 mm to 6.912 mm. Turn back"),
        ({"size": "1/4-20", "drills": "inch"}, "pass", "Drill #7: 75.4 % of thread", "Within 2B"),
        ({"tap": "forming", "wanted": "65"}, "pass", "Drill 7.4 mm: 70.6 % of thread", "Within 7H"),
        ({"own": "6.9"}, "pass", "Your hole: 67.7 % of thread", ""),
        ({"own": "7.0"}, "fail", "Your hole: bore over 6H by 0.088 mm", "61.6 % of thread is left"),
        (
            {"own": "6.5"},
            "fail",
            "Your hole: bore under 6H by 0.147 mm",
            "breaks taps, and the bolt may bind at its root. Take 6.8 mm.",
        ),
        (
            {"size": "1/4-20", "tap": "forming", "wanted": "65", "drills": "inch"},
            "fail",
            "Drill #1: bore over 2B by 0.025 mm",
            "Choose the other list",
        ),
        ({"own": "6.91 ± 0.02"}, "unsure", "the bore is right", ""),
    ],
)
def test_verdicts(entries, state, headline, do):
    found = run(**entries)
    assert (
        found.verdict.state == state
        and headline in found.verdict.headline.plain()
        and do in found.verdict.do.plain()
    )


def test_a_drill_under_the_class():
    """No drill of that list within the class, and the nearest too small: 95 % of M3×0.5 wants 2.383 mm, 5H allows 2.459 to 2.571 mm."""
    assert (
        run(size="M3x0.5", wanted="95", fit="close").verdict.headline.plain()
        == "Drill 2.5 mm: 77.0 % of thread"
    )
    assert "Take 2.5 mm" in run(size="M3x0.5", own="2.4").verdict.do.plain()


@given(
    st.sampled_from(sorted(SIZES)),
    st.sampled_from([60, 65, 70, 75, 80]),
    st.sampled_from(["metric", "inch"]),
    st.sampled_from(["cutting", "forming"]),
)
def test_every_thread_has_a_drill(size, wanted, drills, tap):
    found, thread = run(size=size, wanted=str(wanted), drills=drills, tap=tap), THREADS[size]
    assert thread.d - 1.2 * thread.P < found["drill"] < thread.d - 0.3 * thread.P
    assert found["bore"] == pytest.approx(thread.d - 1.299038 * thread.P * found["share"], abs=1e-9)
    assert (found["bore"] < found["drill"]) if tap == "forming" else (found["bore"] == found["drill"])
    inside = found["bore_low"] - 1e-9 <= found["bore"] <= found["bore_high"] + 1e-9
    assert (found.verdict.state == "pass") == inside
    near = [state for state in found.tables[0].states]
    assert inside or "pass" not in near  # a drill within the class is taken where there is one


@given(st.sampled_from(sorted(SIZES)))
def test_more_thread_wants_no_larger_drill(size):
    drills = [run(size=size, wanted=str(wanted))["drill"] for wanted in (55, 65, 75, 85)]
    assert drills == sorted(drills, reverse=True)


def test_usual_metric_drills_are_nominal_less_pitch():
    """d − P, the common rule, is 77 % of thread: 1/1.299."""
    for size, thread in THREADS.items():
        if thread.system == "metric":
            assert run(size=size, wanted="77")["drill"] == pytest.approx(thread.d - thread.P, abs=0.051e-3)
            assert (
                internal(thread, "6H").minor.low <= thread.d - thread.P <= internal(thread, "6H").minor.high
            )


@pytest.mark.parametrize(
    "entries, field, words",
    [
        ({"own": "8"}, "own", "no hole for M8×1.25 coarse; give 6.250 mm to 7.750 mm"),
        ({"own": "5"}, "own", "no hole for"),
        ({"wanted": "20"}, "wanted", "below 30 %"),
        ({"size": "1/4-20", "fit": "coated"}, "fit", "6e is a metric class"),
        ({"drills": "hand"}, "drills", "is not a choice"),
        ({"own": "6.8 kg"}, "own", "a length belongs here"),
    ],
)
def test_refusals(entries, field, words):
    with pytest.raises(Refused) as refused:
        run(**entries)
    (error,) = refused.value.errors
    assert error.field == field and words in str(error)


def test_too_much_thread_is_warned_of():
    warned = [r.text.plain() for r in run(own="6.6").remarks if r.level == "warning"]
    assert any("breaks taps" in words for words in warned)
    assert not [r for r in run().remarks if r.level == "warning"]
