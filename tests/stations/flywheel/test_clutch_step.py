"""Clutch step: which face is cut, what the spring does, verdicts and limits."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import dblquad, quad

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.reference.engine import engine
from calc.stations.flywheel.clutch_step import clutch_step
from tests.checks.stations.flywheel.clutch_step import COILS, DISC


def energy(flattened, outside=0.1075, inside=0.085, thick=2.6e-3, cone=4.5e-3):
    """Hoop strain energy of a coned disc whose section turns about its neutral point, stiff in itself."""
    wide = outside - inside
    middle = wide / np.log(outside / inside)
    start = cone / wide
    turned = start - flattened / wide

    def density(y, r):
        moved = (r - middle) * (np.cos(turned) - np.cos(start)) + y * (np.sin(start) - np.sin(turned))
        return 206e9 / (1 - 0.3**2) / 2 * (moved / r) ** 2 * 2 * np.pi * r

    return dblquad(density, inside, outside, -thick / 2, thick / 2, epsabs=1e-10)[0]


def test_the_disc_s_force_is_the_slope_of_its_energy():
    step = 1e-5
    before, after = ((energy(f + step) - energy(f - step)) / 2 / step for f in (4.6e-3, 4.2e-3))
    found = clutch_step(**DISC)
    assert found["before"] == pytest.approx(before, rel=0.01) and found["after"] == pytest.approx(
        after, rel=0.01
    )
    assert found["change"] == pytest.approx(after / before - 1, abs=1e-3)


def test_the_lining_by_its_rings():
    """Worn in, pressure times radius is even: torque = ∫µ·p·r·dA over force = ∫p·dA."""
    radius = quad(lambda r: r, 0.068, 0.1)[0] / quad(lambda r: 1.0, 0.068, 0.1)[0]
    assert clutch_step(**DISC)["radius"] == pytest.approx(radius)
    assert 2 * 0.35 * 4300 * radius == pytest.approx(252.84, abs=5e-3)


def three(step):
    return f"{step} | {step} | {step}"


@pytest.mark.parametrize(
    "entries, state, words, do",
    [
        ({}, "pass", "Step right: 10.02 mm", "comes off the cover's face as well"),
        (
            dict(steps=three("10.30")),
            "fail",
            "Step 10.30 mm: 9.95 mm to 10.05 mm allowed",
            "Cut 0.30 mm off the cover's",
        ),
        (dict(steps=three("9.70")), "fail", "Step 9.70 mm", "Cut 0.30 mm off the friction face"),
        (dict(steps=three("9.70"), thickness="16.7"), "fail", "Step 9.70 mm", "Scrap it, or find out"),
        (dict(thickness="16.4"), "fail", "Too thin: 16.40 mm behind the face", "Scrap it"),
        (dict(steps="9.98 | 10.00 | 10.04"), "attention", "Step differs by 0.06 mm", "face runs out"),
        (dict(lies="above", steps=three("9.70")), "fail", "Step 9.70 mm", "Cut 0.30 mm off the cover's"),
        (
            dict(lies="above", steps=three("10.30")),
            "fail",
            "Step 10.30 mm",
            "Cut 0.30 mm off the friction face",
        ),
        (dict(low="9", high="11", steps=three("10.6")), "attention", "Clamp load off by 6.", "middle"),
    ],
)
def test_verdict(entries, state, words, do):
    verdict = clutch_step(**entries).verdict
    assert (verdict.state, verdict.headline.plain()[: len(words)]) == (state, words)
    assert do in verdict.do.plain()


def test_coils_lose_and_a_diaphragm_past_its_hump_gains():
    assert clutch_step(**COILS)["change"] < 0 < clutch_step(**DISC)["change"]
    assert any("sign of the change" in r.text.plain() for r in clutch_step(**DISC).remarks)


@given(st.integers(900, 1100).map(lambda n: n / 100), st.sampled_from(["below", "above"]))
def test_after_the_cut_that_it_tells_the_step_is_right(step, lies):
    found = clutch_step(lies=lies, steps=three(f"{step:.2f}"), thickness="20")
    cover, face = found["cut_cover"] * 1e3, found["cut_face"] * 1e3
    assert min(cover, face) == 0
    way = 1 if lies == "below" else -1
    assert step - way * cover + way * face == pytest.approx(10.0, abs=1e-9)


@pytest.mark.parametrize("step", ["9.95", "10.00", "10.05"])
def test_both_ends_of_the_sheet_s_limits_are_in_order(step):
    told = dict(lies="below", steps=three(step), thickness="16.5", cover="diaphragm")
    assert evaluate(clutch_step, told, standing=Standing(engine("TS-16"))).verdict.state == "pass"


def test_without_limits_of_its_own_engine_it_is_not_judged():
    told = dict(
        lies="below",
        steps=three("10.00"),
        thickness="18",
        cover="coils",
        springs="9",
        rate="24",
        load="620",
        lining_outside="200",
        lining_inside="136",
    )
    for name in ("RC-40", ""):
        standing = Standing(engine(name) if name else None)
        assert evaluate(clutch_step, told, standing=standing).verdict.state == "unjudged"
        own = told | dict(low="9.95", high="10.05", thinnest="16.5")
        assert evaluate(clutch_step, own, standing=standing).verdict.state == "pass"


@pytest.mark.parametrize(
    "entries, what",
    [
        (dict(steps="10.04 ± 0.03 | 10.04 ± 0.03 | 10.04 ± 0.03"), "step"),
        (dict(thickness="16.55 ± 0.1"), "thickness"),
    ],
)
def test_a_doubt_that_reaches_a_limit_leaves_it_open(entries, what):
    found = clutch_step(**entries)
    assert found.verdict.state == "unsure" and what in found.verdict.headline.plain()


@pytest.mark.parametrize(
    "entries, field, words",
    [
        (dict(low="10.1"), "low", "not less than the most"),
        (dict(lining_inside="200"), "lining_inside", "not less than its outside"),
        (dict(inside="215"), "inside", "not less than where it presses"),
        (COILS | dict(load="60", rate="200"), "cover", "would not clamp"),
        (dict(thickness="3 kg"), "thickness", "a mass"),
    ],
)
def test_refusals(entries, field, words):
    with pytest.raises(Refused) as refused:
        clutch_step(**entries)
    (error,) = refused.value.errors
    assert error.field == field and words in str(error), str(error)


def test_inches_give_the_same():
    own = dict(cover="diaphragm", lies="below", low="0.39 in", high="0.41 in")
    metric = evaluate(clutch_step, own | dict(steps="10.16 | 10.16 | 10.16", thickness="17.78"))
    inch = evaluate(clutch_step, own | dict(steps="0.4 | 0.4 | 0.4", thickness="0.7"), "inch")
    for output in metric.outputs:
        assert inch[output] == pytest.approx(metric[output], rel=1e-9, abs=1e-12), output


def test_the_drawing_has_the_step_to_scale():
    for lies, way in (("below", 1), ("above", -1)):
        (drawing,) = clutch_step(lies=lies, steps=three("10.00")).figures
        (cut,) = [s for s in drawing.shapes if getattr(s, "hatch", None) == "a"]
        heights = sorted({round(y, 9) for _, y in cut.points} - {0.0, 0.018})
        assert heights == [pytest.approx(0.018 + way * 0.010)]
