"""Limits of threads: every verdict, every size and class, refusals, the drawing."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.reference.standards.threads import THREADS
from calc.stations.shared.thread_sizes import FITS, SIZES
from calc.stations.threads.thread_limits import thread_limits


def run(**entries):
    return evaluate(thread_limits, entries)


# M8×1.25: 6g outside 7.760 to 7.972, pitch 7.042 to 7.160; 6H bore 6.647 to 6.912, pitch 7.188 to 7.348 (ISO 965-2)


@pytest.mark.parametrize(
    "entries, state, headline, do",
    [
        ({}, "pass", "6g: pitch diameter 7.042 mm to 7.160 mm", "Outside 7.760 mm to 7.972 mm."),
        ({"part": "hole"}, "pass", "6H: pitch diameter 7.188 mm to 7.348 mm", "Bore 6.647 mm to 6.912 mm."),
        ({"crest_read": "7.90"}, "pass", "Outside within 6g: 7.900 mm", "type it too"),
        ({"crest_read": "7.90", "pitch_read": "7.10"}, "pass", "Both diameters within 6g", "go gauge"),
        ({"pitch_read": "7.042"}, "pass", "Pitch diameter within 6g", ""),
        ({"pitch_read": "7.160"}, "pass", "Pitch diameter within 6g", ""),
        ({"pitch_read": "7.041"}, "fail", "Pitch diameter too small by 0.001 mm", "Fit a new one"),
        ({"pitch_read": "7.161"}, "fail", "Pitch diameter too large by 0.001 mm", "run a die"),
        (
            {"crest_read": "7.70", "pitch_read": "7.20"},
            "fail",
            "Outside too small by 0.060 mm",
            "Fit a new one",
        ),  # what cannot be mended is told first
        ({"part": "hole", "crest_read": "6.60"}, "fail", "Bore too small by 0.047 mm", "tap or drill it"),
        (
            {"part": "hole", "pitch_read": "7.40"},
            "fail",
            "Pitch diameter too large by 0.052 mm",
            "wire thread insert",
        ),
        ({"pitch_read": "7.158 ± 0.01"}, "unsure", "the pitch diameter is right", "Measure again"),
    ],
)
def test_verdicts(entries, state, headline, do):
    found = run(**entries)
    assert (
        found.verdict.state == state
        and headline in found.verdict.headline.plain()
        and do in found.verdict.do.plain()
    )
    assert len(found.tables) == (2 if any("read" in name for name in entries) else 1)


@given(st.sampled_from(sorted(SIZES)), st.sampled_from(sorted(FITS)), st.sampled_from(["bolt", "hole"]))
def test_every_size_and_class_gives_limits_in_order_or_says_that_there_are_none(size, fit, part):
    try:
        found = run(size=size, fit=fit, part=part)
    except Refused as refused:
        assert fit in ("loose", "coated") and [e.field for e in refused.errors] == ["fit"]
        return
    assert found["pitch_low"] < found["pitch_high"] and found["crest_low"] < found["crest_high"]
    assert -2.6e-6 <= found["tightest"] < found["loosest"]  # inch limits are rounded to 0.0001 in
    beyond = THREADS[size].P
    assert (
        found["crest_high"] <= THREADS[size].d
        if part == "bolt"
        else found["crest_low"] >= THREADS[size].d - 1.1 * beyond
    )


@given(st.sampled_from(sorted(SIZES)), st.sampled_from(["bolt", "hole"]))
def test_usual_play_lies_between_close_and_loose(size, part):
    play = [run(size=size, fit=fit, part=part)["loosest"] for fit in ("close", "usual")]
    assert play[0] < play[1]


@pytest.mark.parametrize(
    "entries, field, words",
    [
        ({"crest_read": "9"}, "crest_read", "far from the 8.000 mm of M8×1.25 coarse"),
        ({"pitch_read": "8.0"}, "pitch_read", "far from the 7.188 mm"),
        ({"size": "M13"}, "size", "is not a choice"),
        ({"size": "1/4-20", "fit": "coated"}, "fit", "6e is a metric class"),
        ({"size": "10-24", "fit": "loose"}, "fit", "1B/1A is not defined for so small a thread"),
        ({"size": "M4x0.7", "fit": "loose"}, "fit", "7H/8g is not defined"),
        ({"pitch_read": "0"}, "pitch_read", "below 2"),
    ],
)
def test_refusals(entries, field, words):
    with pytest.raises(Refused) as refused:
        run(**entries)
    (error,) = refused.value.errors
    assert error.field == field and words in str(error)


def test_the_drawing_says_how_much_it_exaggerates():
    (figure,) = run().figures
    assert "2 times as large as they are" in figure.exaggerated
    assert "0.118 mm on the bolt's pitch diameter, 0.160 mm on the hole's" in figure.alt.plain()
