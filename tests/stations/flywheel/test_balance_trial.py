"""Balancing by a trial mass: complex numbers and least squares as the other way, a shaken part found again."""

import cmath
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
from calc.stations.flywheel.balance_trial import balance_trial
from tests.checks.stations.flywheel.balance_trial import FOUR, VECTORS

GMM = 1e-6


def turned(size, degrees):
    return cmath.rect(size, math.radians(degrees))


def test_checks_are_complex_numbers():
    before, after, trial = turned(6.51, 34), turned(23.07, 355), turned(8 * 110, 20)
    own = before / ((after - before) / trial)
    assert abs(own) == pytest.approx(310.2, abs=0.05) and abs(own) / 110 == pytest.approx(2.82, abs=5e-3)
    assert np.degrees(np.angle(own)) == pytest.approx(71.81, abs=5e-3)
    assert np.degrees(np.angle(-own)) % 360 == pytest.approx(251.8, abs=0.05)


def test_checks_are_least_squares_of_four_amplitudes():
    read, trials = (
        np.array([6.8, 25.06, 24.55, 13.91]),
        1035 * np.array([0, 1, turned(1, 120), turned(1, 240)]),
    )

    def off(p):
        return abs(p[2] * (complex(p[0], p[1]) + trials)) * 1e-3 - read

    x, y, _ = least_squares(off, (100, 100, 20), xtol=1e-14, ftol=1e-14).x
    assert math.hypot(x, y) == pytest.approx(340.1, abs=0.05)
    assert math.degrees(math.atan2(y, x)) == pytest.approx(57.03, abs=0.005)


angles = st.floats(0, 359)


def shaken(own, answer, trial):
    """Readings with and without the trial mass, of a machine that answers so."""
    told = {}
    for z, name in ((answer * own, "before"), (answer * (own + trial), "with_trial")):
        told |= {name: f"{abs(z):.9f} mm/s", name + "_at": f"{math.degrees(cmath.phase(z)):.9f}°"}
    return told


@given(st.floats(20, 2000), angles, angles, angles, st.floats(0.002, 0.2), st.booleans())
def test_a_part_is_found_again_however_the_machine_lags(size, at, lag, trial_at, answer, against):
    own, trial = turned(size, at), turned(880, trial_at)
    told = shaken(own, turned(answer, lag), trial)
    if against:
        told |= {name: f"{-float(text[:-1]):.9f}°" for name, text in told.items() if name.endswith("_at")}
    found = balance_trial(
        **told, trial_at=f"{trial_at:.9f}°", sense="against" if against else "same", trial="8 g"
    )
    assert found["unbalance"] / GMM == pytest.approx(size, rel=1e-4)
    put = cmath.rect(found["correction"] * 110e-3 / GMM, found["place"])
    assert abs(put + own) < 1e-3 * size


@given(st.floats(20, 2000), angles, st.floats(0.002, 0.2))
def test_four_amplitudes_find_the_same_part(size, at, answer):
    own = turned(size, at)
    runs = [answer * abs(own + (880 * turned(1, a) if a is not None else 0)) for a in (None, 0, 120, 240)]
    told = dict(zip(("before", "at_0", "at_120", "at_240"), (f"{v:.9f} mm/s" for v in runs)))
    found = balance_trial(**told, method="amplitudes", trial="8 g")
    assert found["unbalance"] / GMM == pytest.approx(size, rel=1e-4)
    assert abs(cmath.rect(1, found["heavy"]) - turned(1, at)) < 1e-4
    assert found["answer"] / 1e-3 == pytest.approx(880 * answer, rel=1e-5)


@given(st.floats(20, 2000), angles)
def test_a_check_run_at_what_is_named_is_just_permitted(size, at):
    """The same machine, a part with what is permitted on it, reads what the calculator names."""
    answer = turned(0.02, 77)
    found = balance_trial(**shaken(turned(size, at), answer, turned(880, 20)), trial_at="20°", trial="8 g")
    permitted = found["permitted"] / GMM
    assert abs(answer) * permitted == pytest.approx(found["vibration"] / 1e-3, rel=1e-5)
    again = balance_trial(**shaken(turned(permitted * 1.001, at), answer, turned(880, 20)), trial_at="20°")
    assert again.verdict.state == "fail"


VERDICTS = {
    "example": ("pass", "Balanced: 92.4 g·mm of 115.0 g·mm permitted", "Take the trial mass off", {}),
    "out": (
        "fail",
        "Out of balance: 310.2 g·mm, 115.0 g·mm permitted",
        "Take the trial mass off. Add 2.82 g at 251.8°",
        VECTORS,
    ),
    "out, four runs": (
        "fail",
        "Out of balance: 340.1 g·mm, 115.0 g·mm permitted",
        "Take the trial mass off. Add 2.96 g at 237.0°",
        FOUR,
    ),
    "four runs disagree": (
        "fail",
        "Out of balance: 366.8 g·mm, 115.0 g·mm permitted",
        "The four runs do not agree",
        FOUR | dict(before="8.8 mm/s"),
    ),
    "four runs disagree, small": (
        "attention",
        "Small, 89.8 g·mm of 115.0 g·mm permitted, but the four runs disagree",
        "Read all four again",
        dict(method="amplitudes", before="3.2 mm/s"),
    ),
    "a finer grade": (
        "fail",
        "Out of balance: 92.4 g·mm, 45.6 g·mm permitted",
        "Take",
        dict(grade="2.5 mm/s"),
    ),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    state, words, do, entries = VERDICTS[name]
    verdict = balance_trial(**entries).verdict
    assert (verdict.state, verdict.headline.plain()) == (state, words)
    assert verdict.do.plain().startswith(do), verdict.do.plain()


def told_of(**entries):
    return " ".join(r.text.plain() for r in balance_trial(**entries).remarks)


def test_a_trial_mass_of_a_wrong_size_is_told():
    small = shaken(turned(300, 72), turned(0.02, 0), turned(20, 20)) | dict(trial="0.1818 g", trial_at="20°")
    large = shaken(turned(10, 72), turned(0.02, 0), turned(880, 20)) | dict(trial_at="20°")
    assert "Take a larger one" in told_of(**small) and "smaller one" in told_of(**large)
    assert "larger one" not in told_of(**VECTORS) and "smaller one" not in told_of(**VECTORS)


REFUSALS = [
    ("before", dict(before="0 mm/s"), "nothing to balance"),
    ("with_trial", dict(with_trial="1.90 mm/s", with_trial_at="34°"), "changed next to nothing"),
    (
        "at_0",
        dict(method="amplitudes", at_0="1 mm/s", at_120="1 mm/s", at_240="1 mm/s"),
        "no more on the whole",
    ),
    ("trial", dict(trial="8 mm"), "a length"),
    ("trial", dict(trial="0 g"), "below 0.01"),
    ("radius", dict(radius="1 mm"), "below 5"),
]


@pytest.mark.parametrize("field, entries, words", REFUSALS)
def test_refusal(field, entries, words):
    with pytest.raises(Refused) as refused:
        balance_trial(**entries)
    (error,) = refused.value.errors
    assert error.field == field and words in error.sentence(), error.sentence()


def test_a_doubt_that_reaches_what_is_permitted_leaves_it_open():
    verdict = balance_trial(before="2.2 ± 0.4 mm/s").verdict
    assert verdict.state == "unsure" and "the unbalance" in verdict.headline.plain()


def test_inches_give_the_same():
    metric = balance_trial(
        **VECTORS
        | dict(
            before="6.35 mm/s",
            with_trial="22.86 mm/s",
            trial_radius="101.6 mm",
            radius="101.6 mm",
            trial="28.349523125 g",
        )
    )
    inch = evaluate(
        balance_trial,
        VECTORS | dict(before="0.25", with_trial="0.9", trial_radius="4", radius="4", trial="1"),
        "inch",
    )
    for output in metric.outputs:
        assert inch[output] == pytest.approx(metric[output], rel=1e-6, abs=1e-9), output


def test_the_grade_comes_from_the_reader_s_own_sheet():
    told = VECTORS | dict(mass="8.6 kg", before="1.5 mm/s")
    by = {
        name: evaluate(balance_trial, told, standing=Standing(engine(name) if name else None))
        for name in ("TS-16", "RC-40", "")
    }
    assert by["TS-16"].verdict.state == "pass", by["TS-16"].verdict.headline.plain()
    assert by["RC-40"].verdict.state == "unjudged" and by[""].verdict.state != "pass"
    assert evaluate(balance_trial, {}, standing=Standing(engine("TS-16"))).verdict.state == "awaited"
