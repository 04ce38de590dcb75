"""The bow of a crank: fits by numpy and scipy, verdicts, refusals, doubt, both sheets and none."""

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import least_squares

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.reference.engine import engine
from calc.stations.crank.shaft_bow import shaft_bow
from tests.checks.stations.crank.shaft_bow import READ, dial

UM = 1e-6
EIGHTHS = np.radians(np.arange(0, 360, 45))


def parts(y, t=EIGHTHS):
    """Mean, once-round and twice-round part of readings, by least squares."""
    a = np.column_stack((np.ones_like(t), np.cos(t), np.sin(t), np.cos(2 * t), np.sin(2 * t)))
    return np.linalg.lstsq(a, np.array(y, float), rcond=None)[0]


def test_checks_are_the_least_squares():
    _, a, b, c, d = parts(READ)
    free = least_squares(
        lambda p: p[0] + p[1] * np.cos(EIGHTHS - p[2]) + p[3] * np.cos(2 * (EIGHTHS - p[4])) - np.array(READ),
        (10, 10, 2, 1, 0),
    ).x
    assert np.hypot(a, b) == pytest.approx(16.72, abs=0.005) == abs(free[1])
    assert np.degrees(np.arctan2(b, a)) == pytest.approx(137.7, abs=0.05)
    assert 4 * np.hypot(c, d) == pytest.approx(2.236, abs=5e-4)


def bowed(e, at=0.0, oval=0.0, along=0.0, mean=0.0):
    """Readings of that bow, oval (difference of diameters) and mean, µm."""
    t = np.degrees(EIGHTHS)
    return dial(mean + e * np.cos(np.radians(t - at)) + oval / 4 * np.cos(2 * np.radians(t - along)))


VERDICTS = {
    "example": ("pass", "Straight: bow 0.014 mm, high at 144.4°", {}),
    "on a good one's limit": ("pass", "Straight: bow 0.020 mm, high at 0.0°", bowed(10)),
    "over it": ("attention", "Bow 0.025 mm: over a good crank's 0.020 mm", bowed(12.5, 30)),
    "on its limit": ("attention", "Bow 0.030 mm: over a good crank's 0.020 mm", bowed(15, 30)),
    "bent": ("fail", "Bowed: 0.040 mm full reading, 0.030 mm allowed", bowed(20, 200)),
    "oval, not bent": ("attention", "Straight, but 0.040 mm out of round", bowed(5, 0, 40, 30)),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    state, words, entries = VERDICTS[name]
    verdict = shaft_bow(**entries).verdict
    assert (verdict.state, verdict.headline.plain()) == (state, words), verdict.do.plain()


@given(st.floats(0.5, 200), st.floats(0, 359.9), st.floats(0, 100), st.floats(0, 180), st.floats(-300, 300))
def test_an_oval_never_reads_as_bow_nor_a_bow_as_oval(e, at, oval, along, mean):
    found = shaft_bow(**bowed(e, at, oval, along, mean))
    assert found["bow"] / UM == pytest.approx(e, abs=1e-2) and found["whole"] == pytest.approx(
        2 * found["bow"]
    )
    assert found["oval"] / UM == pytest.approx(oval, abs=1e-2)
    off = (math.degrees(found["high"]) - at + 180) % 360 - 180
    assert abs(off) * e < 0.1 and 0 <= found["high"] < 2 * math.pi + 1e-9


@given(st.lists(st.integers(-200, 200), min_size=8, max_size=8))
def test_any_eight_readings_are_fitted_as_numpy_does(y):
    found, (_, a, b, c, d) = shaft_bow(**dial(y)), parts(y)
    assert found["bow"] / UM == pytest.approx(np.hypot(a, b), abs=1e-4)
    assert found["oval"] / UM == pytest.approx(4 * np.hypot(c, d), abs=1e-4)


@given(st.lists(st.integers(-200, 200), min_size=8, max_size=8), st.integers(0, 7))
def test_the_mark_may_stand_anywhere(y, turned):
    here, there = shaft_bow(**dial(y)), shaft_bow(**dial(y[turned:] + y[:turned]))
    for output in ("bow", "oval", "total"):
        assert there[output] == pytest.approx(here[output], abs=1e-10), output


@given(st.floats(0.5, 100), st.floats(0, 359.9), st.floats(0, 50))
def test_four_readings_give_the_same_bow(e, at, oval):
    y = [e * math.cos(t - math.radians(at)) + oval / 4 * math.cos(2 * t) for t in EIGHTHS]
    four = shaft_bow(**dial([y[k] if k % 2 == 0 else None for k in range(8)]))
    assert four["bow"] / UM == pytest.approx(e, abs=1e-2)
    assert any("Four readings" in r.text.plain() for r in four.remarks)


def test_a_slip_of_the_dial_is_told():
    def warned(y):
        return [r.text.plain() for r in shaft_bow(**dial(y)).remarks if r.level == "warning"]

    assert not warned(READ)
    (told,) = warned([y + (20 if k == 3 else 0) for k, y in enumerate(READ)])
    assert told.startswith("The reading at 135° lies")


REFUSALS = [
    ("readings.2.1", dial([1, None, 3, 4, 5, 6, 7, 8]), "angles are not even"),
    ("readings.5.1", dial([1, 2, 3, 4, None, None, None, None]), "angles are not even"),
    ("readings.1.1", {"readings.1.1": "7 mm"}, "above 5"),
    ("readings", dial([1, None, 3, None, 5, None, None, None]), "at least 4"),
]


@pytest.mark.parametrize("field, entries, words", REFUSALS)
def test_refusal(field, entries, words):
    with pytest.raises(Refused) as refused:
        shaft_bow(**entries)
    (error,) = refused.value.errors
    assert error.field == field and words in error.sentence(), error.sentence()


def test_a_doubt_that_reaches_the_limit_leaves_it_open():
    """A bow of 0.0198 mm, each reading ± 0.003 mm: the bow is ± 0.003 too, and 0.02 is a good one's limit."""
    entries = " | ".join(f"{0.0099 * math.cos(t):.7f} ± 0.003 mm" for t in EIGHTHS)
    verdict = shaft_bow(readings=entries).verdict
    assert verdict.state == "unsure" and "bow" in verdict.headline.plain(), verdict.headline.plain()


def test_one_reading_that_slipped_never_bends_a_straight_crank():
    """A dial that drops into an oil hole at 90° reads as a bow and an oval; so far astray, nothing is said."""
    steady = [0.000, 0.003, 0.009, 0.012, 0.010, 0.006, 0.001, -0.002]
    slipped = [*steady[:2], 0.500, *steady[3:]]
    verdict = shaft_bow(readings=" | ".join(f"{x} mm" for x in slipped)).verdict
    assert verdict.state == "unsure" and "90°" in verdict.headline.plain(), verdict.headline.plain()
    assert shaft_bow(readings=" | ".join(f"{x} mm" for x in steady)).verdict.state == "pass"
    bent = [0.4 * math.cos(t) for t in EIGHTHS]
    bent[2] += 0.02
    assert shaft_bow(readings=" | ".join(f"{x:.4f} mm" for x in bent)).verdict.state == "fail"


def test_inches_give_the_same():
    rows = ("0.0000", "0.0001", "0.0004", "0.0005", "0.0004", "0.0002", "0.0000", "-0.0001")
    inch = evaluate(shaft_bow, dict(readings=" | ".join(rows)), "inch")
    metric = shaft_bow(readings=" | ".join(f"{float(x) * 25.4:.6f} mm" for x in rows))
    for output in metric.outputs:
        assert inch[output] == pytest.approx(metric[output], rel=1e-9, abs=1e-12), output


def test_limits_come_from_the_reader_s_own_sheet():
    by = {
        name: evaluate(shaft_bow, dial(READ), standing=Standing(engine(name) if name else None))
        for name in ("TS-16", "RC-40", "")
    }
    assert (
        by["TS-16"].verdict.state == "fail"
        and by["RC-40"].verdict.state == by[""].verdict.state == "unjudged"
    )
    assert evaluate(shaft_bow, {}, standing=Standing(engine("TS-16"))).verdict.state == "awaited"


def test_the_drawing_leans_to_the_high_side():
    drawing, plot = shaft_bow(**bowed(20, 90)).figures
    area = next(s for s in drawing.shapes if hasattr(s, "hatch") and s.hatch == "a")
    xs, ys = zip(*area.points)
    assert abs(max(xs) + min(xs)) < 1e-6 and max(ys) + min(ys) > 0.01
    assert len(plot.series[1].points) == 8 and "times as large" in drawing.exaggerated.plain()
