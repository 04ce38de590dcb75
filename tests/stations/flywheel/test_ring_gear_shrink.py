"""Ring gear: heat by a root of its growth, grip of two spinning rings, verdicts, refusals, both engines."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad
from scipy.optimize import brentq

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.formulas import rotating_disc
from calc.reference.engine import engine
from calc.stations.flywheel.ring_gear_shrink import ring_gear_shrink
from tests.checks.stations.flywheel.ring_gear_shrink import CHECKS, CHILLED, FIT

MM, MPA = 1e-3, 1e6


def ring(a, b, E, nu, rho, w):
    """How far both edges move out, (inner, outer), by the speed and by a unit of pressure on each."""

    def edge(inside, outside, spin):
        # u = A r + B/r − c r³; σ_r given at both edges
        c = (1 - nu**2) * rho * spin**2 / (8 * E)
        k = E / (1 - nu**2)
        M = np.array([[k * (1 + nu), -k * (1 - nu) / r**2] for r in (a, b)])
        A, B = np.linalg.solve(M, [-p + k * (3 + nu) * c * r**2 for p, r in ((inside, a), (outside, b))])
        return np.array([A * r + B / r - c * r**3 for r in (a, b)])

    return edge(0, 0, w), edge(1.0, 0, 0), edge(0, 1.0, 0)


def grip(rpm):
    w = 2 * np.pi * rpm / 60
    fly, gear = ring(0.025, 0.125, 110e9, 0.26, 7200, w), ring(0.125, 0.134, 207e9, 0.29, 7850, w)
    free = 0.2e-3 + fly[0][1] - gear[0][0]
    return free / (gear[1][0] - fly[2][1])


def heat(strain):
    """°C of steel whose mean expansion is 11.5 from 20 to 100 °C and grows by 4.5e-4 a kelvin."""
    return 20 + brentq(lambda t: 11.5e-6 / 1.036 * (1 + 4.5e-4 * t) * t - strain, 0, 400)


def test_the_outside_numbers_are_worked_again():
    p = grip(0)
    shape = (268**2 + 250**2) / (268**2 - 250**2)
    iron = 10.5e-6 / (1 + 80 * 6.2e-4)
    t = -80.0
    cold = iron * (1 + 5.0e-4 * t - 2.19e-6 * t * t) * t  # as the metals' table has it, below 20 °C
    worked = (
        p / MPA,
        p * shape / MPA,
        grip(6000) / MPA,
        0.12 * p * np.pi * 0.25 * 0.012 * 0.125,
        heat(0.65 / 249.6),
        heat(0.70 / 253.55),
        heat((0.70 + 254 * cold) / 253.55),
    )
    for check, value in zip(CHECKS, worked, strict=True):
        assert value == pytest.approx(check.expected, abs=check.tolerance), check.what


def test_the_teeth_pull_as_their_shells_do():
    w = 2 * np.pi * 75
    pulled = quad(lambda r: 0.5 * 7850 * w**2 * r * r, 0.134, 0.1385)[0] / 0.134
    assert rotating_disc.dead_weight(0.134, 0.1385, 0.5, 7850, 75.0) == pytest.approx(pulled)


@pytest.mark.parametrize(
    "entries, state, words",
    [
        ({}, "pass", "Heat it to 197 °C"),
        (dict(bore="255.75"), "fail", "Too loose: 0.25 mm, 0.26 mm wanted"),
        (dict(bore="255.65"), "fail", "Too tight: 0.35 mm, 0.34 mm allowed"),
        (dict(clearance="0.40"), "fail", "Too hot for its teeth: 2"),
        (dict(hottest="190"), "fail", "Too hot for its teeth: 196 °C, 190 °C allowed"),
        (dict(hottest="190", flywheel_temperature="-20"), "pass", "Heat it to 1"),
        (dict(chamfer="away"), "attention", "Turn it round: chamfers face the pinion"),
        (dict(heated="torch"), "attention", "Not with a torch: take an oven"),
        (dict(heated="plate"), "pass", "Heat it to 197 °C"),
        (dict(seat="256.00", bore="255.00", high="1.2", hottest="400"), "fail", "Ring gear yields: "),
        (dict(seat="256.00", bore="255.35", high="1.2", hottest="400"), "attention", "Pulled hard: "),
        (dict(speed="9000"), "attention", "At speed 4"),
        (dict(speed="13000"), "fail", "Loose at 13000 1/min"),
    ],
)
def test_verdict(entries, state, words):
    verdict = ring_gear_shrink(**entries).verdict
    assert verdict.state == state and verdict.headline.plain().startswith(words), verdict.headline.plain()


@pytest.mark.parametrize(
    "entries, field, words",
    [
        (dict(hub="256"), "hub", "not less than the seat"),
        (dict(root="256"), "root", "not more than the seat"),
        (dict(outside="260"), "outside", "less than under the teeth"),
        (dict(low="0.5"), "low", "more than the most"),
        (dict(seat="256 °C"), "seat", "a temperature"),
        (dict(clearance="0"), "clearance", "below 0.02"),
    ],
)
def test_refusals(entries, field, words):
    with pytest.raises(Refused) as refused:
        ring_gear_shrink(**entries)
    (error,) = refused.value.errors
    assert error.field == field and words in str(error), str(error)


READ = dict(seat="256.00", bore="255.70", chamfer="pinion", heated="oven")


@pytest.mark.parametrize("seat, bore", [("255.98", "255.72"), ("256.02", "255.68"), ("256.00", "255.70")])
def test_both_ends_of_the_sheet_s_limits_are_in_order(seat, bore):
    found = evaluate(ring_gear_shrink, READ | dict(seat=seat, bore=bore), standing=Standing(engine("TS-16")))
    assert found.verdict.state == "pass", found.verdict.headline.plain()


def test_without_limits_of_its_own_engine_it_is_not_judged():
    own = dict(
        hub="40",
        root="268",
        outside="277",
        width="12",
        material="grey-iron",
        gear_material="forged-steel",
        speed="4500",
    )
    for name in ("RC-40", ""):
        standing = Standing(engine(name) if name else None)
        assert evaluate(ring_gear_shrink, READ | own, standing=standing).verdict.state == "unjudged"
        told = READ | own | dict(low="0.26", high="0.34")
        assert evaluate(ring_gear_shrink, told, standing=standing).verdict.state == "pass"


@pytest.mark.parametrize(
    "entries, what",
    [(dict(bore="255.735 ± 0.02"), "interference"), (dict(hottest="197", bore="255.70 ± 0.02"), "heat")],
)
def test_a_doubt_that_reaches_a_limit_leaves_it_open(entries, what):
    found = ring_gear_shrink(**entries)
    assert found.verdict.state == "unsure" and what in found.verdict.headline.plain()


@given(st.integers(5, 60).map(lambda n: n / 100), st.integers(100, 7000))
def test_at_the_heat_that_it_tells_it_drops_on_with_the_clearance_wanted(interference, rpm):
    found = ring_gear_shrink(
        **FIT | dict(bore=f"{250 - interference:.2f}", low="0.01", high="2", speed=str(rpm), hottest="400")
    )
    t = found["heat"] - 293.15
    bore = (250 - interference) * (1 + 11.5e-6 / 1.036 * (1 + 4.5e-4 * t) * t)
    assert bore - 250 == pytest.approx(0.25, abs=1e-6)
    assert found["pressure_left"] == pytest.approx(
        max(0.0, found["pressure"] * (1 - found["lost"] / found["interference"])), rel=1e-9, abs=1
    )


def test_chilling_the_flywheel_saves_heat():
    warm, cold = (ring_gear_shrink(**CHILLED | dict(flywheel_temperature=t))["heat"] for t in ("20", "-60"))
    assert 55 < warm - cold < 75


def test_inches_give_the_same():
    metric = evaluate(
        ring_gear_shrink, READ | dict(seat="254.00", bore="253.746", root="266.7", outside="276.86")
    )
    inch = evaluate(
        ring_gear_shrink, READ | dict(seat="10", bore="9.99", root="10.5", outside="10.9"), "inch"
    )
    for output in metric.outputs:
        assert inch[output] == pytest.approx(metric[output], rel=1e-9), output


def test_the_drawing_shows_the_chamfer_on_the_side_that_was_told():
    def chamfer(side):
        (drawing,) = ring_gear_shrink(chamfer=side).figures
        (gear,) = [s for s in drawing.shapes if getattr(s, "hatch", None) == "b"]
        top = max(y for _, y in gear.points)
        return sorted(x for x, y in gear.points if y > top - 1e-9)

    assert min(chamfer("pinion")) > 1e-3 and min(chamfer("away")) == pytest.approx(0, abs=1e-12)
