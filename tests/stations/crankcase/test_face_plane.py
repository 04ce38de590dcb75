"""A face's plane: the narrowest zone and the resting plane by linear programming, verdicts, refusals, invariance."""

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import linprog

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.formulas import best_fit
from calc.reference.engine import engine
from calc.stations.crankcase.face_plane import face_plane
from tests.checks.stations.crankcase.face_plane import FACES, WIDE, face

MM = 1e-3


def places(heights):
    turns = [2 * math.pi * k / len(heights) for k in range(len(heights))]
    return [(WIDE / 2 * math.sin(t), WIDE / 2 * math.cos(t), h) for t, h in zip(turns, heights)]


def narrowest(points):
    """Width of the narrowest zone, by linear programming: unknowns start, two slopes, half the width."""
    rows = [[1, x, y] for x, y, _ in points]
    A = [[*(sign * v for v in row), -1] for row in rows for sign in (1, -1)]
    b = [sign * h for _, _, h in points for sign in (1, -1)]
    found = linprog([0, 0, 0, 1], A_ub=A, b_ub=b, bounds=[(None, None)] * 3 + [(0, None)], method="highs")
    return 2 * found.fun


def resting(points):
    """Height over the middle of the lowest plane that no point stands above, by linear programming."""
    x0, y0 = np.mean([p[0] for p in points]), np.mean([p[1] for p in points])
    A = [[-1, -x, -y] for x, y, _ in points]
    found = linprog(
        [1, x0, y0], A_ub=A, b_ub=[-h for *_, h in points], bounds=[(None, None)] * 3, method="highs"
    )
    return found.fun, (x0, y0)


@pytest.mark.parametrize("name", FACES)
def test_flatness_is_that_of_linear_programming(name):
    heights = FACES[name]
    assert face_plane(**face(heights))["flatness"] / MM == pytest.approx(narrowest(places(heights)), abs=1e-7)


spots = st.lists(
    st.tuples(st.integers(-50, 50), st.integers(-50, 50), st.integers(-40, 40)),
    min_size=4,
    max_size=8,
    unique_by=lambda p: p[:2],
)


def spread_out(points):
    xy = np.array([p[:2] for p in points], float)
    return np.linalg.matrix_rank(xy - xy.mean(0), tol=1.0) == 2


@given(spots.filter(spread_out))
def test_the_best_plane_of_any_places_is_that_of_linear_programming(points):
    floats = [tuple(map(float, p)) for p in points]
    plane = best_fit.best_plane(floats)
    assert plane.width == pytest.approx(narrowest(points), abs=1e-6)
    off = [h - plane.at(x, y) for x, y, h in floats]
    assert max(off) == pytest.approx(-min(off), abs=1e-9) and 2 * max(off) == pytest.approx(
        plane.width, abs=1e-9
    )


@given(spots.filter(spread_out))
def test_the_resting_plane_of_any_places_is_that_of_linear_programming(points):
    height, middle = resting(points)
    plane = best_fit.resting_plane([tuple(map(float, p)) for p in points], middle)
    assert plane.at(*middle) == pytest.approx(height, abs=1e-6)
    assert max(h - plane.at(x, y) for x, y, h in points) == pytest.approx(0, abs=1e-6)


ROUND = (0.010, 0.014, 0.018, 0.016, 0.020, 0.012, 0.008, 0.006)
PARTING = dict(face="parting", layout="anywhere", reads="height")
CORNERS = "0; 0; 0 | 0; 300; 0 | {h}; 300; 200 | 0; 0; 200"
VERDICTS = {
    "flat": ("pass", "Flat within 0.005 mm, tilted by 0.011 mm", {}),
    "tilted": ("fail", "Seat tilted: 0.060 mm, 0.050 mm allowed", face((0.06, 0.03, 0.0, 0.03))),
    "a little tilted": ("attention", "Seat tilted: 0.030 mm, 0.025 mm is good", face(FACES["four, tilted"])),
    "twisted": ("fail", "Seat out of flat: 0.045 mm, 0.040 mm allowed", face((0.045, 0.0, 0.045, 0.0))),
    "on both limits": ("pass", "Flat within 0.020 mm, tilted by 0.000 mm", face(FACES["four, twisted"])),
    "one corner of a parting face": (
        "attention",
        "Joint out of flat: 0.050 mm, 0.030 mm is good",
        PARTING | dict(readings=CORNERS.format(h=0.1)),
    ),
    "the same, more": (
        "fail",
        "Joint out of flat: 0.100 mm, 0.060 mm allowed",
        PARTING | dict(readings=CORNERS.format(h=0.2)),
    ),
    "a good parting face": ("pass", "Flat within 0.010 mm", PARTING | dict(readings=CORNERS.format(h=0.02))),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    state, words, entries = VERDICTS[name]
    verdict = face_plane(**entries).verdict
    assert (verdict.state, verdict.headline.plain()) == (state, words)


def test_a_burr_leans_what_rests_on_it_more_than_the_zone():
    """And what rests on it lies higher over the lowest place: three places decide there, all of them here."""
    found = face_plane(**face(FACES["eight, one burr"]))
    assert found["resting_tilt"] > found["tilt"] and found["resting_deep"] > found["flatness"]
    assert found["cut"] / MM == pytest.approx(0.07)


@settings(max_examples=60)
@given(st.lists(st.integers(-30, 30), min_size=4, max_size=8), st.integers(-40, 40), st.integers(-40, 40))
def test_a_tilt_of_the_whole_changes_no_flatness(heights, right, up):
    tilted = [h + right * x / WIDE + up * y / WIDE for x, y, h in places([h / 1.0 for h in heights])]
    first, second = (face_plane(**face([f"{h / 1000:.9f}" for h in hs])) for hs in (heights, tilted))
    assert first["flatness"] == pytest.approx(second["flatness"], abs=1e-11)


@settings(max_examples=40)
@given(st.lists(st.integers(-30, 30), min_size=4, max_size=8))
def test_depths_are_heights_the_other_way(heights):
    up = face_plane(**face([h / 1000 for h in heights]))
    down = face_plane(**(face([-h / 1000 for h in heights]) | dict(reads="depth")))
    for output in up.outputs:
        assert up[output] == pytest.approx(down[output], abs=1e-12), output


def test_it_falls_towards_the_lowest_place():
    """The third of four places, a half turn from the first."""
    assert math.degrees(face_plane(**face(FACES["four, tilted"]))["downhill"]) == pytest.approx(180)
    assert math.degrees(face_plane(**face((0.0, 0.02, 0.04, 0.02)))["downhill"]) % 360 == pytest.approx(
        0, abs=1e-6
    )


def test_places_by_x_and_y_are_those_of_the_circle():
    rows = " | ".join(f"{h}; {x:.12f}; {y:.12f}" for x, y, h in places(ROUND))
    by_circle = face_plane(**face(ROUND))
    by_places = face_plane(layout="anywhere", readings=rows, reads="height")
    for output in by_circle.outputs:
        assert by_places[output] == pytest.approx(by_circle[output], rel=1e-6, abs=1e-9), output


@pytest.mark.parametrize(
    "entries, field, words",
    [
        (dict(readings="1 | 2 | 3"), "readings", "at least 4"),
        (dict(layout="anywhere"), "readings.1.2", "place 1 has no x"),
        (PARTING | dict(readings="0; 0; 0 | 0; 1; 1 | 0; 2; 2 | 0; 3; 3"), "readings.1.2", "lie in one line"),
        (dict(tilt_most="0.01 mm"), "tilt_most", "less than what is good"),
        (dict(allowance="-1 mm"), "allowance", "below 0"),
    ],
)
def test_refusals(entries, field, words):
    with pytest.raises(Refused) as refused:
        face_plane(**entries)
    (error,) = refused.value.errors
    assert error.field == field and words in str(error), str(error)


def test_limits_come_from_the_engine_s_sheet_or_from_the_reader():
    told = face((0.002, 0.0, 0.002, 0.0, 0.002, 0.0))
    typed = dict(seat_flat_good="0.02", seat_flat_most="0.04", tilt_good="0.02", tilt_most="0.04")
    by = {
        name: evaluate(face_plane, told, standing=Standing(engine(name) if name else None))
        for name in ("TS-16", "RC-40", "")
    }
    assert by["TS-16"].verdict.state == "pass"
    assert by["RC-40"].verdict.state == by[""].verdict.state == "unjudged"
    assert evaluate(face_plane, told | typed, standing=Standing(engine("RC-40"))).verdict.state == "pass"
    assert evaluate(face_plane, {}, standing=Standing(engine("TS-16"))).verdict.state == "awaited"


@pytest.mark.parametrize(
    "entries, what",
    [
        (face(("0.021 ± 0.004", 0.0, 0.02, 0.0)), "flatness"),
        (face(("0.049 ± 0.005", 0.0245, 0.0, 0.0245)), "tilt"),
    ],
)
def test_a_doubt_that_reaches_a_limit_leaves_it_open(entries, what):
    found = face_plane(**entries)
    assert found.verdict.state == "unsure" and what in found.verdict.headline.plain()


def test_inches_give_the_same():
    metric = evaluate(
        face_plane, dict(readings="0.0254 | 0 | 0.0127 | 0.0508", across="101.6 mm", allowance="0.0127 mm")
    )
    inch = evaluate(
        face_plane, dict(readings="0.001 | 0 | 0.0005 | 0.002", across="4", allowance="0.0005"), "inch"
    )
    for output in metric.outputs:
        assert inch[output] == pytest.approx(metric[output], rel=1e-9, abs=1e-12), output


def test_four_places_are_told_to_be_few():
    four = face_plane(**face(FACES["four, tilted"]))
    assert any("read eight" in r.text.plain() for r in four.remarks)
    assert not any("read eight" in r.text.plain() for r in face_plane().remarks)


def test_hundredths_typed_as_millimetres_cut_nothing():
    rows = "10 mm | 14 mm | 18 mm | 16 mm | 20 mm | 12 mm | 8 mm | 6 mm"
    verdict = face_plane(readings=rows).verdict
    assert verdict.state == "unsure" and "Cut" not in verdict.do.plain(), verdict.do.plain()
    jacked = "0 mm; 0 mm; 0 mm | 2 mm; 100 mm; 0 mm | 2 mm; 100 mm; 200 mm | 0 mm; 0 mm; 200 mm"
    assert face_plane(face="parting", layout="anywhere", readings=jacked).verdict.state == "pass"


def test_a_place_left_out_between_others_is_asked_for():
    with pytest.raises(Refused) as refused:
        face_plane(readings="0.010 | 0.014 | 0.018 | 0.016 | 0.020 | 0.012 |  | 0.006")
    (error,) = refused.value.errors
    assert error.field == "readings.7.1" and "is empty between others" in error.sentence()
