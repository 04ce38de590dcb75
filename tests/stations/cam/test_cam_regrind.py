"""A lobe ground smaller: lobes drawn as points, sympy's derivatives, verdicts, refusals, limits of both engines and none."""

import math

import numpy as np
import pytest
import sympy
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import brentq

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.formulas import flat_foot, lobe
from calc.reference.engine import engine
from calc.stations.cam.cam_regrind import cam_regrind
from calc.stations.cam.cam_regrind.drawing import outline
from calc.stations.index import every
from tests.checks.stations.cam.cam_regrind import HEEL_WORN, LOBES, NOSE_WORN

MM = 1e-3
X, B = sympy.symbols("x b", positive=True)
LAWS = {
    "harmonic": (1 - sympy.cos(sympy.pi * X)) / 2,
    "cycloid": X - sympy.sin(2 * sympy.pi * X) / (2 * sympy.pi),
    "345": 10 * X**3 - 15 * X**4 + 6 * X**5,
    "4567": 35 * X**4 - 84 * X**5 + 70 * X**6 - 20 * X**7,
}


@pytest.mark.parametrize("law", LAWS)
def test_slope_and_bend_are_the_derivatives_of_rise(law):
    for order, ours in ((0, lobe.rise), (1, lobe.slope), (2, lobe.bend)):
        theirs = sympy.lambdify(X, sympy.diff(LAWS[law], X, order) if order else LAWS[law])
        for x in np.linspace(0, 1, 21):
            assert float(ours(law, float(x))) == pytest.approx(float(theirs(x)), abs=1e-9)


@pytest.mark.parametrize("given_, radius, away, face", LOBES)
def test_least_radius_and_foot_by_sympy(given_, radius, away, face):
    b = math.radians(given_["rise_deg"])
    x = np.linspace(0, 1, 200_001)
    law = LAWS[given_["law"]]
    s, s1, s2 = (sympy.lambdify(X, sympy.diff(law, X, n) if n else law, "numpy")(x) for n in range(3))
    rho = given_["radius_mm"] + given_["lift_mm"] * (s + s2 / b**2)
    assert rho.min() == pytest.approx(radius, abs=6e-4)
    assert (given_["lift_mm"] * s1 / b).max() == pytest.approx(away, abs=6e-4)
    assert 2 * away == pytest.approx(face, abs=2e-3)


def test_the_envelope_of_the_face_has_that_curvature():
    """Points of the drawn lobe, its curvature by differences: no formula of ours but the outline."""
    b = math.radians(80)
    x, y = np.array(outline(15.0, 8.2, b, "harmonic", 20_000)).T
    dx, dy = np.gradient(x), np.gradient(y)
    ddx, ddy = np.gradient(dx), np.gradient(dy)
    radius = (dx**2 + dy**2) ** 1.5 / np.abs(dx * ddy - dy * ddx)
    t = np.abs(np.arange(20_000) / 20_000 * 2 * math.pi - math.pi)
    assert radius[t < 0.95 * b].min() == pytest.approx(2.4438, rel=1e-3)


def test_the_same_lobe_on_a_smaller_circle_is_a_parallel_curve():
    b = math.radians(85)
    big, small = (np.array(outline(r, 6.4, b, "cycloid", 4000)) for r in (17.5, 17.0))
    assert np.hypot(*(big - small).T) == pytest.approx(0.5, abs=1e-9)


@pytest.mark.parametrize("told, expected", [(NOSE_WORN, 29.22), (HEEL_WORN, 29.40)])
def test_the_largest_circle_by_outlines(told, expected):
    """The new lobe's supporting lines nowhere nearer than pit and stock to those of the worn one."""
    mm = {name: float(value.removesuffix(" mm")) for name, value in told.items()}
    heel, worn = mm["heel"] / 2, mm["nose"] - mm["heel"]
    t = np.linspace(-math.pi, math.pi, 4001)
    share = np.where(np.abs(t) < 1.3, LAW(np.clip(1 - np.abs(t) / 1.3, 0, 1)), 0.0)

    def spare(radius):
        return (
            ((heel + worn * share) - (radius + mm["new_lift"] * share)).min() - mm.get("pit", 0) - mm["stock"]
        )

    assert 2 * brentq(spare, 5, 20) == pytest.approx(expected, abs=1e-6)
    assert cam_regrind(**told)["base"] / MM == pytest.approx(expected, abs=1e-6)


LAW = sympy.lambdify(X, LAWS["4567"], "numpy")


def ground(heel=29.30, lift=8.20, taper=0.020, **more):
    return (
        dict(
            how="ground",
            nose=f"{heel + lift + taper / 2:.4f} mm",
            other=f"{heel + lift - taper / 2:.4f} mm",
            heel=f"{heel} mm",
            base_made="30 mm",
            nose_radius="6 mm",
        )
        | more
    )


VERDICTS = {
    "a worn lobe": ("pass", "Grind to 29.30 mm, lift 8.20 mm", {}),
    "pitted deep": ("fail", "Hardened layer left: 0.95 mm", dict(pit="0.5 mm")),
    "through the skin": ("fail", "Hardened layer gone", dict(pit="1.5 mm", core="20 mm", journal="22 mm")),
    "down to the journal": ("fail", "Base circle too small: 25.30 mm", dict(pit="2 mm")),
    "no journal under the foot": (
        "attention",
        "Nose sharp: 2.65 mm",
        dict(pit="3 mm", reach="core", hard_depth="8 mm", base_made="30 mm", nose_radius="6 mm"),
    ),
    "ground right": ("pass", "This lobe serves: 8.20 mm on 29.30 mm", ground()),
    "lift too small": ("fail", "Lift too small: 8.10 mm", ground(lift=8.10)),
    "another lobe": ("attention", "More lift than this engine's cam: 8.60 mm", ground(lift=8.60)),
    "no taper": ("fail", "Lobe has too little taper: 0.004 mm", ground(taper=0.004)),
    "too much": ("fail", "Lobe has too much taper: 0.060 mm", ground(taper=0.060)),
    "much gone": ("attention", "1.05 mm off the base circle's radius", ground(27.90, hard_depth="2.4 mm")),
    "adjuster at its third's end": (
        "pass",
        "This lobe serves: 8.20 mm on 28.50 mm",
        ground(28.50, screwed="0.25 mm"),
    ),
    "adjuster past it": (
        "attention",
        "Adjuster then 1.05 mm off its middle",
        ground(28.50, screwed="0.30 mm"),
    ),
    "plunger": (
        "pass",
        "This lobe serves: 8.20 mm on 29.30 mm",
        ground(lifters="hydraulic", preload="1.8 mm"),
    ),
    "plunger out": (
        "attention",
        "Plunger then pressed in 1.10 mm",
        ground(lifters="hydraulic", preload="1.45 mm"),
    ),
    "a law too hard": ("fail", "This lobe cannot be ground so small", dict(law="cycloid", flank="72°")),
    "foot too narrow": (
        "fail",
        "Lifter's foot too small: 18.00 mm",
        dict(law="harmonic", flank="80°", foot="18 mm"),
    ),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    state, words, entries = VERDICTS[name]
    verdict = cam_regrind(**entries).verdict
    assert (verdict.state, verdict.headline.plain()) == (state, words)


@given(st.integers(2800, 3050), st.integers(300, 900), st.integers(300, 900), st.integers(0, 40))
def test_the_new_lobe_lies_within_the_worn_one_and_touches_it(heel, worn, lift, pit):
    told = dict(
        nose=f"{(heel + worn) / 100} mm",
        heel=f"{heel / 100} mm",
        new_lift=f"{lift / 100} mm",
        pit=f"{pit / 100} mm",
    )
    found = cam_regrind(**told)
    spare_heel = heel / 200 - found["base"] / MM / 2
    spare_nose = (heel / 2 + worn) / 100 - (found["base"] / MM / 2 + found["lift"] / MM)
    assert min(spare_heel, spare_nose) == pytest.approx(pit / 100 + 0.10, abs=1e-9)


def test_what_follows_names_each_number_s_calculator():
    titles = {calculator.title for calculator in every()}
    rows = cam_regrind().tables[0].rows
    assert len(rows) == 9 and {name for row in rows for name in row[2].split("; ")} <= titles


def test_a_wide_base_circle_counts_the_other_way():
    found = cam_regrind(**ground(30.40))
    assert (
        found["make_up"] / MM == pytest.approx(-0.20)
        and "Nothing is to be made up" in found.verdict.do.plain()
    )
    assert any("larger than as made" in r.text.plain() for r in found.remarks)


@pytest.mark.parametrize(
    "entries, field, words",
    [
        (dict(nose="29.98"), "nose", "not more than across the heel"),
        (ground() | dict(other="21 mm"), "other", "no lift over a heel"),
        (dict(new_lift="24 mm"), "new_lift", "no base circle"),
        (dict(pit="6 mm"), "pit", "above 5"),
        (dict(heel="30 kg"), "heel", "a mass"),
    ],
)
def test_refusals(entries, field, words):
    with pytest.raises(Refused) as refused:
        cam_regrind(**entries)
    error = refused.value.errors[0]
    assert error.field == field and words in str(error), str(error)


def test_inches_give_the_same():
    metric = evaluate(
        cam_regrind, dict(nose="38.1 mm", heel="30.48 mm", base_made="30.48 mm", new_lift="7.62 mm")
    )
    inch = evaluate(cam_regrind, dict(nose="1.5", heel="1.2", base_made="1.2", new_lift="0.3"), "inch")
    for output in metric.outputs:
        assert inch[output] == pytest.approx(metric[output], rel=1e-9, abs=1e-12), output


def test_limits_come_from_the_engine_s_sheet_or_from_the_reader():
    told = ground(lift_made="8.20 mm", flank="75°", ratio="1.1", lash="0.15 mm", screwed="0 mm")
    by = {
        name: evaluate(cam_regrind, told, standing=Standing(engine(name) if name else None)).verdict.state
        for name in ("TS-16", "RC-40", "")
    }
    assert by == {"TS-16": "pass", "RC-40": "unjudged", "": "unjudged"}
    found = evaluate(
        cam_regrind, told | dict(lift_low="8.1 mm", lift_high="8.3 mm"), standing=Standing(engine("RC-40"))
    )
    assert found.verdict.state == "pass"
    assert any("Not judged" in r.text.plain() and "hardness" in r.text.plain() for r in found.remarks)
    assert evaluate(cam_regrind, {}, standing=Standing(engine("TS-16"))).verdict.state == "awaited"


@pytest.mark.parametrize("lift", ["low", "high"])
@pytest.mark.parametrize("taper", ["low", "high"])
def test_both_ends_of_the_sheet_are_in_order(lift, taper):
    sheet = engine("TS-16")
    h = getattr(sheet.feature("cam.lobe_lift"), lift) / MM
    t = getattr(sheet.feature("cam.lobe_taper"), taper) / MM
    told = ground(29.30, h, t, screwed="0 mm")
    assert evaluate(cam_regrind, told, standing=Standing(sheet)).verdict.state == "pass"


@pytest.mark.parametrize(
    "entries, what",
    [
        (ground() | dict(heel="29.30 ± 0.08 mm"), "the lobe's lift"),
        (ground(taper=0.012) | dict(other="37.494 ± 0.004 mm"), "the lobe's taper"),
        (dict(pit="0.42 ± 0.06 mm"), "the hardened layer left"),
    ],
)
def test_a_doubt_that_reaches_a_limit_leaves_it_open(entries, what):
    found = cam_regrind(**entries)
    assert found.verdict.state == "unsure" and what in found.verdict.headline.plain()


def test_a_point_is_no_lobe():
    assert (
        flat_foot.radius_at(
            "cycloid", 15.0, 8.2, math.radians(72), flat_foot.sharpest("cycloid", math.radians(72))
        )
        < 0
    )
