"""Balancing in two planes: numpy's 2 × 2, rotors found again, refusals, doubt, both sheets and none."""

import cmath
import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.reference.engine import engine
from calc.stations.flywheel.balance_two_plane import balance_two_plane
from tests.checks.stations.flywheel.balance_two_plane import READ, ROTOR

GMM = 1e-6
TRIALS = 560 + 0j, 1200j


def turned(size, degrees):
    return cmath.rect(size, math.radians(degrees))


def rows(readings):
    """The grid's runs as complex readings at A and B."""
    cells = [[float(x) for x in row.split(";")] for row in readings.split("|")]
    return [np.array([turned(a, pa), turned(b, pb)]) for a, pa, b, pb in cells]


def shaken(answers, a, b, against=False):
    """What a set whose bearings answer so is read to do, in three runs."""
    told = []
    for more in ((0, 0), (TRIALS[0], 0), (0, TRIALS[1])):
        cells = []
        for z in answers @ np.array([a + more[0], b + more[1]]):
            way = -1 if against else 1
            cells += [f"{abs(z):.9f}", f"{way * math.degrees(cmath.phase(z)):.9f}"]
        told.append("; ".join(cells))
    return " | ".join(told)


def test_checks_are_the_solved_2_by_2():
    first, in_a, in_b = rows(READ["readings"])
    answers = np.array([(in_a - first) / TRIALS[0], (in_b - first) / TRIALS[1]]).T
    a, b = np.linalg.solve(answers, first)
    assert abs(a) / 70 == pytest.approx(5.971, abs=5e-4) and abs(b) / 120 == pytest.approx(5.081, abs=5e-4)
    assert np.degrees(np.angle(-a)) % 360 == pytest.approx(213.0, abs=0.05)
    assert np.degrees(np.angle(-b)) % 360 == pytest.approx(25.56, abs=5e-3)
    assert np.linalg.cond(answers) == pytest.approx(4.961286, abs=1e-6)


ANSWERS = np.array([[turned(0.05, 70), turned(0.02, 80)], [turned(0.015, -100), turned(0.06, 65)]])
angles, sizes = st.floats(0, 359), st.floats(10, 2000)


@given(sizes, angles, sizes, angles, st.booleans())
def test_a_set_is_found_again(size_a, at_a, size_b, at_b, against):
    a, b = turned(size_a, at_a), turned(size_b, at_b)
    found = balance_two_plane(readings=shaken(ANSWERS, a, b, against), sense="against" if against else "same")
    put_a = cmath.rect(found["mass_a"] * 70e-3 / GMM, found["place_a"])
    put_b = cmath.rect(found["mass_b"] * 120e-3 / GMM, found["place_b"])
    assert abs(put_a + a) < 1e-3 * (size_a + size_b) and abs(put_b + b) < 1e-3 * (size_a + size_b)
    assert found["condition"] == pytest.approx(np.linalg.cond(ANSWERS), rel=1e-4)
    left = ANSWERS @ np.array([a + put_a, b + put_b])
    assert max(abs(left)) < 1e-3 * max(abs(ANSWERS @ np.array([a, b]))) + 1e-3


VERDICTS = {
    "example": ("pass", "Balanced: 37.4 g·mm left in A, 90.3 g·mm in B", {}),
    "out": ("fail", "Out of balance in A: 418.0 g·mm, 95.1 g·mm permitted", READ),
    "out in B": (
        "fail",
        "Out of balance in B: 250.0 g·mm, 185.7 g·mm permitted",
        dict(readings=shaken(ANSWERS, turned(50, 10), turned(250, 130))),
    ),
    "a finer grade": ("fail", "Out of balance in B: 90.3 g·mm, 73.7 g·mm permitted", dict(grade="2.5 mm/s")),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    state, words, entries = VERDICTS[name]
    verdict = balance_two_plane(**entries).verdict
    assert (verdict.state, verdict.headline.plain()) == (state, words)


def test_what_to_add_is_told_for_both_planes():
    do = balance_two_plane(**READ).verdict.do.plain()
    assert "5.97 g in A at 213.0°" in do and "5.08 g in B at 25.6°" in do


ALIKE = np.array([[0.05, 0.05], [0.05, 0.0501]])
NEAR = np.array([[0.05, 0.04], [0.04, 0.05]])


def test_planes_that_do_nearly_the_same_are_warned_of():
    def warned(answers):
        told = balance_two_plane(readings=shaken(answers, turned(50, 10), turned(60, 100)))
        return any("nearly the same" in r.text.plain() for r in told.remarks)

    assert warned(NEAR) and not warned(ANSWERS)


REFUSALS = [
    ("readings.3.1", dict(readings=shaken(ALIKE, turned(50, 10), turned(60, 100))), "not told apart"),
    ("readings.2.1", dict(readings="7; 101; 5; 280 | 7; 101; 5; 280 | 32; 341; 14; 123"), "changed nothing"),
    ("readings.3.1", dict(readings="7; 101; 5; 280 | 32; 341; 14; 123 | 7; 101; 5; 280"), "changed nothing"),
    ("b_to_mass", dict(b_to_mass="400 mm"), "past plane A"),
    ("trial_a", dict(trial_a="8 mm"), "a length"),
    ("readings.1.1", {"readings.1.1": "3 kg"}, "a mass"),
]


@pytest.mark.parametrize("field, entries, words", REFUSALS)
def test_refusal(field, entries, words):
    with pytest.raises(Refused) as refused:
        balance_two_plane(**entries)
    (error,) = refused.value.errors
    assert error.field == field and words in error.sentence(), error.sentence()


def test_a_doubt_that_reaches_what_is_permitted_leaves_it_open():
    verdict = balance_two_plane(**{"readings.1.1": "8.35 ± 8 mm/s"}).verdict
    assert verdict.state == "unsure" and "the unbalance in" in verdict.headline.plain()


def test_inches_give_the_same():
    readings = shaken(ANSWERS, turned(300, 10), turned(200, 100))
    cells = [[float(x) for x in row.split(";")] for row in readings.split("|")]
    inch = " | ".join(f"{a / 25.4:.12f}; {pa}; {b / 25.4:.12f}; {pb}" for a, pa, b, pb in cells)
    lengths = {
        "trial_a_radius": 3,
        "trial_b_radius": 5,
        "radius_a": 3,
        "radius_b": 5,
        "planes_apart": 12,
        "b_to_mass": 4,
    }
    metric = balance_two_plane(readings=readings, **{n: f"{x * 25.4} mm" for n, x in lengths.items()})
    other = evaluate(
        balance_two_plane, dict(readings=inch, **{n: str(x) for n, x in lengths.items()}), "inch"
    )
    for output in metric.outputs:
        assert other[output] == pytest.approx(metric[output], rel=1e-6, abs=1e-9), output


def test_the_grade_comes_from_the_reader_s_own_sheet():
    told = READ | {n: ROTOR[n] for n in ("mass", "planes_apart", "b_to_mass")}
    told |= dict(readings=shaken(ANSWERS, turned(20, 10), turned(20, 100)))
    by = {
        name: evaluate(balance_two_plane, told, standing=Standing(engine(name) if name else None))
        for name in ("TS-16", "RC-40", "")
    }
    assert by["TS-16"].verdict.state == "pass", by["TS-16"].verdict.headline.plain()
    assert by["RC-40"].verdict.state == "unjudged" and by[""].verdict.state != "pass"
    assert evaluate(balance_two_plane, {}, standing=Standing(engine("TS-16"))).verdict.state == "awaited"
