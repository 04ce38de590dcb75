"""Bend and twist: bores as vectors in space, verdicts, refusals, and what turning the rod must show."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.reference.engine import engine
from calc.stations.rods.rod_align import rod_align
from tests.checks.stations.rods.rod_align import SLOPES, read

MM = 1e-3


@pytest.mark.parametrize("slopes", SLOPES)
def test_checks_are_the_angle_of_two_vectors(slopes):
    bend, twist, span = slopes
    big, small = np.array([1.0, 0, 0]), np.array([span, twist, bend])
    angle = np.degrees(np.arctan2(np.linalg.norm(np.cross(big, small)), big @ small))
    assert angle == pytest.approx(SLOPES[slopes], abs=1e-6)


VERDICTS = {
    "straight": ("pass", "Straight: bend 0.013 mm, twist 0.027 mm", {}),
    "on its limits": ("pass", "Straight: bend 0.030 mm, twist 0.050 mm", read(0.03, 0.05, 100)),
    "bent": ("fail", "Bent: 0.060 mm over 100.0 mm, 0.05 mm allowed", read(-0.06, 0.0, 100)),
    "twisted": ("fail", "Twisted: 0.090 mm over 100.0 mm, 0.08 mm allowed", read(0.01, 0.09, 100)),
    "a little bent": ("attention", "Bend 0.040 mm: over a good rod's 0.03 mm", read(0.04, 0.07, 100)),
    "a little twisted": ("attention", "Twist 0.070 mm: over a good rod's 0.05 mm", read(0.01, -0.07, 100)),
    "the gauge's fault": (
        "pass",
        "Straight: bend 0.010 mm, twist 0.027 mm",
        dict(bend_right="0.08 mm", span="150 mm", bend_turned="0.05 mm"),
    ),
    "ends in line": ("pass", "Straight: bend 0.013 mm, twist 0.027 mm", dict(offset="0.20 mm")),
    "a little out of line": (
        "attention",
        "Ends out of line: 0.25 mm, over a good rod's 0.20 mm",
        dict(offset="0.25 mm"),
    ),
    "out of line": ("fail", "Ends out of line: 0.45 mm, 0.40 mm allowed", dict(offset="0.45 mm")),
    "bent and out of line": (
        "fail",
        "Bent: 0.060 mm over 100.0 mm, 0.05 mm allowed",
        read(-0.06, 0.0, 100) | dict(offset="0.45 mm"),
    ),
    "limit under what is good": (
        "fail",
        "Bent: 0.030 mm over 100.0 mm, 0.02 mm allowed",
        read(0.03, 0, 100) | dict(bend_worn="0.02 mm"),
    ),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    state, words, entries = VERDICTS[name]
    verdict = rod_align(**entries).verdict
    assert (verdict.state, verdict.headline.plain()) == (state, words)


def test_no_rod_is_scrapped_for_the_gauge_s_fault():
    """By reversal: with the rod not turned, its reading still holds the gauge's own error."""
    bent, twisted = read(-0.06, 0.0, 100), read(0.01, 0.09, 100)
    for entries, turned in ((bent, dict(bend_turned="0.06 mm")), (twisted, dict(twist_turned="-0.09 mm"))):
        assert rod_align(**entries).verdict.do.plain().startswith("Turn the rod end for end and read again")
        assert rod_align(**entries, **turned).verdict.do.plain().startswith("Scrap it")


def test_gauge_out_of_true_is_told():
    def warned(**entries):
        return [r.text.plain() for r in rod_align(**entries).remarks if r.level == "warning"]

    assert not warned() and not warned(bend_turned="-0.01 mm")
    assert warned(bend_right="0.08 mm", bend_turned="0.06 mm") == [
        "The gauge itself is out by 0.070 mm over the span: have it put right, or always read both ways."
    ]


@pytest.mark.parametrize(
    "entries, field, words",
    [
        (dict(span="0"), "span", "below 20"),
        (dict(bend_left="7 mm"), "bend_left", "above 5"),
        (dict(twist_right="3 kg"), "twist_right", "a mass"),
        (dict(piston_height="-1 mm"), "piston_height", "below 10"),
    ],
)
def test_refusals(entries, field, words):
    with pytest.raises(Refused) as refused:
        rod_align(**entries)
    (error,) = refused.value.errors
    assert error.field == field and words in str(error), str(error)


hundredths = st.integers(-50, 50).map(lambda n: n / 100)


@given(hundredths, hundredths, hundredths)
def test_turning_tells_rod_from_gauge(rod, gauge, offset):
    """The rod's slope turns round, the gauge's stays, and where the dial is set to zero does not matter."""
    found = rod_align(
        bend_left=f"{offset} mm",
        bend_right=f"{offset + rod + gauge:.2f} mm",
        bend_turned=f"{gauge - rod:.2f} mm",
        span="100 mm",
    )
    assert (found["bend"] / MM, found["gauge_bend"] / MM) == (
        pytest.approx(abs(rod), abs=1e-9),
        pytest.approx(gauge, abs=1e-9),
    )
    laid_over = rod_align(
        twist_left=f"{offset} mm",
        twist_right=f"{offset + rod + gauge:.2f} mm",
        twist_turned=f"{gauge - rod:.2f} mm",
        span="100 mm",
    )
    assert (laid_over["twist"], laid_over["gauge_twist"]) == (
        pytest.approx(found["bend"], abs=1e-12),
        pytest.approx(found["gauge_bend"], abs=1e-12),
    )


@pytest.mark.parametrize(
    "turned, told",
    [
        ({}, True),
        (dict(bend_turned="0"), True),
        (dict(twist_turned="0"), True),
        (dict(bend_turned="0", twist_turned="0"), False),
    ],
)
def test_a_rod_that_was_not_turned_both_ways_is_told(turned, told):
    assert any("turned end for end, the gauge" in r.text.plain() for r in rod_align(**turned).remarks) == told


@given(hundredths, hundredths)
def test_bend_and_twist_are_judged_apart_and_neither_by_its_sign(bend, twist):
    found, mirrored = rod_align(**read(bend, twist, 100)), rod_align(**read(-bend, -twist, 100))
    assert found["bend"] == mirrored["bend"] == pytest.approx(abs(bend) * MM) and found["twist"] == mirrored[
        "twist"
    ] == pytest.approx(abs(twist) * MM)
    assert (
        found["skew"] >= max(found["bend_angle"], found["twist_angle"]) - 1e-15
        and found.verdict.state == mirrored.verdict.state
    )


def test_level_arbor_has_no_bend_and_no_twist():
    found = rod_align(**read(0, 0, 100))
    assert not any(found[o] for o in ("bend", "twist", "skew", "lean"))


@pytest.mark.parametrize(
    "entries, what", [(read("0.045 ± 0.01", 0, 100), "the bend"), (read(0, "0.075 ± 0.01", 100), "the twist")]
)
def test_a_doubt_that_reaches_the_limit_leaves_it_open(entries, what):
    found = rod_align(**entries)
    assert found.verdict.state == "unsure" and what in found.verdict.headline.plain()


def test_inches_give_the_same():
    metric = evaluate(rod_align, dict(bend_right="0.0254 mm", twist_right="0.0508 mm", span="152.4 mm"))
    inch = evaluate(rod_align, dict(bend_right="0.001", twist_right="0.002", span="6"), "inch")
    for output in metric.outputs:
        assert inch[output] == pytest.approx(metric[output], rel=1e-9, abs=1e-12), output


def test_drawing_leans_as_the_rod_does():
    (drawing,) = rod_align(**read(0.03, 0.0, 100)).figures
    arbor = [s for s in drawing.shapes if getattr(s, "hatch", None) == "b"]
    (left, right), (left2, right2) = ((min(s.points), max(s.points)) for s in arbor)
    assert (
        right[1] > left[1] + 0.01
        and abs(right2[1] - left2[1]) < 0.008
        and "times as steep" in drawing.exaggerated.plain()
    )


def test_limits_of_a_rod_come_from_its_engine_s_sheet_or_from_the_reader():
    told = read(0.01, 0.02, 100)
    by = {
        name: evaluate(rod_align, told, standing=Standing(engine(name) if name else None))
        for name in ("TS-16", "RC-40", "")
    }
    assert by["TS-16"].verdict.state == "pass"
    assert all(
        by[name].verdict.state == "unjudged"
        and "bend over 100 mm, limit" in by[name].verdict.headline.plain()
        for name in ("RC-40", "")
    )
    typed = dict(bend_new="0.03", bend_worn="0.05", twist_new="0.05", twist_worn="0.08")
    assert evaluate(rod_align, told | typed, standing=Standing(engine("RC-40"))).verdict.state == "pass"
    out = evaluate(rod_align, told | typed | dict(offset="0.5"), standing=Standing(engine("RC-40")))
    assert any("not judged" in r.text.plain() for r in out.remarks if r.level == "warning")
    assert (
        evaluate(rod_align, told | dict(offset="0.5"), standing=Standing(engine("TS-16"))).verdict.state
        == "fail"
    )
    assert evaluate(rod_align, {}, standing=Standing(engine("TS-16"))).verdict.state == "awaited"


@pytest.mark.parametrize(
    "entries, what",
    [
        (dict(offset="0.19 ± 0.05 mm"), "offset"),
        (dict(bend_right="0.043 ± 0.01 mm"), "bend"),
        (dict(offset="0.38 ± 0.05 mm"), "offset"),
    ],
)
def test_a_doubt_that_reaches_a_limit_leaves_it_open(entries, what):
    found = rod_align(**entries)
    assert found.verdict.state == "unsure" and what in found.verdict.headline.plain()
