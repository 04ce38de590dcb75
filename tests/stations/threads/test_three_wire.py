"""Readings over wires: verdicts with and without doubt, refusals, and what does not depend on the wire."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.reference.standards.threads import THREADS
from calc.stations.shared.thread_sizes import SIZES
from calc.stations.threads.three_wire import three_wire


def run(**entries):
    return evaluate(three_wire, entries)


@pytest.mark.parametrize(
    "entries, state, headline, do",
    [  # M10×1.5 6g: pitch diameter 8.862 to 8.994 mm (ISO 965-2)
        ({}, "pass", "Pitch diameter within 6g: 8.927 mm", "8.862 mm to 8.994 mm are allowed"),
        ({"reading": "10.31"}, "fail", "Pitch diameter over 6g by 0.015 mm", "plating"),
        ({"reading": "10.15"}, "fail", "Pitch diameter under 6g by 0.013 mm", "fit a new one"),
        ({"reading": "10.292 ± 0.006"}, "unsure", "the pitch diameter is right", "Measure again"),
        ({"reading": "10.293", "wire": "0.8660 ± 0.002"}, "unsure", "the pitch diameter is right", ""),
        ({"reading": "10.23 ± 0.006"}, "pass", "within 6g", ""),
    ],
)
def test_verdicts(entries, state, headline, do):
    found = run(**entries)
    assert (
        found.verdict.state == state
        and headline in found.verdict.headline.plain()
        and do in found.verdict.do.plain()
    )


def test_the_doubt_of_the_wire_counts_three_times():
    """Two independent doubts of 4 µm and 1 µm: √(4² + 3²) = 5 µm (GUM, sum of squares)."""
    assert run(reading="10.228 ± 0.004", wire="0.8660 ± 0.001").doubts["pitch_diameter"] == pytest.approx(
        5e-6, rel=2e-3
    )


@given(st.sampled_from(sorted(SIZES)), st.floats(0.52, 1.0), st.floats(0.05, 0.95))
def test_limits_of_the_reading_are_those_of_the_pitch_diameter_whatever_the_wire(size, share, place):
    thread = THREADS[size]
    wire = max(share * thread.P, 0.51 * thread.P)
    first = run(
        size=size,
        wire=f"{wire * 1e3:.6f} mm",
        reading=f"{(thread.pitch_diameter + 3 * wire - 0.866 * thread.P) * 1e3:.6f} mm",
    )
    reading = first["low"] + place * (first["high"] - first["low"])
    found = run(size=size, wire=f"{wire * 1e3:.6f} mm", reading=f"{reading * 1e3:.9f} mm")
    assert found.verdict.state == "pass"
    assert (
        found["best"] == pytest.approx(thread.P / 2 / 0.8660254, rel=1e-6) and 0 < found["lead"] < 0.02 * wire
    )


@pytest.mark.parametrize(
    "entries, field, words",
    [
        (
            {"wire": "0.5"},
            "wire",
            "too thin to stand out of M10×1.5 coarse; give 0.7575 mm to 1.5150 mm, best 0.8660 mm",
        ),
        ({"wire": "1.6"}, "wire", "too thick for the flanks"),
        (
            {"reading": "12"},
            "reading",
            "far from what M10×1.5 coarse reads; measure again with 10.163 mm to 10.295 mm in mind",
        ),
        ({"reading": "-1"}, "reading", "below 2"),
        ({"wire": ""}, "wire", "nothing was given"),
        (
            {"size": "1/4-20", "fit": "coated", "wire": "0.73", "reading": "6.5"},
            "fit",
            "6e is a metric class",
        ),
    ],
)
def test_refusals(entries, field, words):
    with pytest.raises(Refused) as refused:
        run(**entries)
    (error,) = refused.value.errors
    assert error.field == field and words in str(error)


def test_remarks_on_lead_and_wire():
    def said(**entries):
        return " ".join(r.text.plain() for r in run(**entries).remarks)

    assert "less than a micrometer shows" in said() and "touches away from the pitch line" not in said()
    assert "touches away from the pitch line" in said(wire="0.95", reading="10.48")
    assert "The lead matters here" in said(size="M24x3", wire="1.732 mm", reading="24.6")
