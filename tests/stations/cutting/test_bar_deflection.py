"""A boring bar under its cut: the bending line solved, what is too slender, and what the bore loses."""

from pathlib import Path

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import solve_bvp

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.stations.cutting.bar_deflection import bar_deflection
from scripts.new_calculator import left_to_replace
from tests.checks.stations.cutting.bar_deflection import CHECKS, HOLLOW, SOLID


def bent(force, overhang, outside, inside=0.0, modulus=210e9):
    """Give at the free end, m: E·I·y'' = F·(L − x), held at x = 0, with the angle zero there."""
    stiff = modulus * np.pi / 64 * (outside**4 - inside**4)
    x = np.linspace(0, overhang, 41)
    found = solve_bvp(
        lambda x, y: np.vstack([y[1] * 1.0, force * (overhang - x) / stiff * 1e6]),
        lambda a, b: np.array([a[0], a[1]]),
        x,
        np.zeros((2, x.size)),
        tol=1e-9,
    )
    return found.sol(overhang)[0] * 1e-6


@pytest.mark.parametrize(
    "which, load", [(1, (60, 0.16, 0.04)), (3, (60, 0.24, 0.04)), (4, (80, 0.2, 0.05, 0.025))]
)
def test_the_outside_numbers_are_worked_again(which, load):
    assert bent(*load) * 1e6 == pytest.approx(CHECKS[which].expected, abs=CHECKS[which].tolerance)


@pytest.mark.parametrize(
    "entries, state, words",
    [
        (SOLID, "pass", "Stiff enough: bore 0.0062 mm smaller"),
        (SOLID | dict(bearable="0.006 mm"), "attention", "Bore comes out 0.0062 mm smaller"),
        (SOLID | dict(overhang="161 mm"), "attention", "Too slender: overhang 4.02 diameters, 4.0 usual"),
        (SOLID | dict(overhang="161 mm", bar="carbide"), "pass", "Stiff enough: bore 0.0023 mm smaller"),
        (HOLLOW, "pass", "Stiff enough: bore 0.0071 mm smaller"),
    ],
)
def test_verdict(entries, state, words):
    verdict = bar_deflection(**entries).verdict
    assert (verdict.state, verdict.headline.plain()) == (state, words)


@given(st.integers(10, 400), st.integers(6, 100))
def test_twice_the_overhang_gives_eight_times(overhang, diameter):
    short = bar_deflection(**SOLID | dict(overhang=f"{overhang} mm", diameter=f"{diameter} mm"))
    long = bar_deflection(**SOLID | dict(overhang=f"{2 * overhang} mm", diameter=f"{diameter} mm"))
    assert long["gives"] == pytest.approx(8 * short["gives"]) and short["smaller"] == pytest.approx(
        2 * short["gives"]
    )


@pytest.mark.parametrize("entries", [dict(overhang="158 ± 5 mm"), dict(diameter="40 ± 1 mm")])
def test_a_doubt_that_reaches_what_is_usual_leaves_it_open(entries):
    assert bar_deflection(**SOLID | entries).verdict.state == "unsure"


@pytest.mark.parametrize(
    "entries, field, words",
    [
        (dict(diameter="0"), "diameter", "below 2"),
        (dict(hollow="40 mm"), "hollow", "not less than the bar's diameter"),
        (dict(overhang="-1 mm"), "overhang", "below 2"),
        (dict(aside="0 %"), "aside", "below 5"),
    ],
)
def test_refusals(entries, field, words):
    with pytest.raises(Refused) as refused:
        bar_deflection(**SOLID | entries)
    (error,) = refused.value.errors
    assert error.field == field and words in str(error), str(error)


def test_inches_give_the_same():
    metric = evaluate(
        bar_deflection,
        SOLID | dict(diameter="38.1 mm", overhang="152.4 mm", depth="0.508 mm", feed="0.127 mm"),
    )
    inch = evaluate(
        bar_deflection, SOLID | dict(diameter="1.5", overhang="6", depth="0.02", feed="0.005"), "inch"
    )
    assert all(inch[key] == pytest.approx(metric[key], rel=1e-12) for key in metric.outputs)


def test_every_line_of_the_example_was_replaced():
    assert not [
        line
        for line in left_to_replace("cutting", "bar-deflection", Path(__file__).parents[3])
        if "docs/" not in line
    ]
