"""Lightening: mass and inertia by shells, what is left in each zone, verdicts, refusals."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import dblquad, quad
from scipy.optimize import brentq

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.reference.engine import engine
from calc.stations.flywheel.lighten import lighten
from tests.checks.stations.flywheel.lighten import CHECKS, PLATE

RHO = 7200.0
MM = 1e-3


def shells(a, b, t, power=1):
    return quad(lambda r: 2 * np.pi * RHO * r**power * t(r), a, b, epsabs=0, epsrel=1e-12)[0]


def test_the_outside_numbers_are_worked_again():
    def taper(r):
        return np.interp(r, (0.1, 0.135), (4e-3, 1e-2))

    def hole(power):
        return (
            6
            * RHO
            * 0.018
            * dblquad(
                lambda y, x: ((x + 0.115) ** 2 + y**2) ** (power / 2),
                -0.011,
                0.011,
                lambda x: -np.sqrt(0.011**2 - x**2),
                lambda x: np.sqrt(0.011**2 - x**2),
            )[0]
        )

    depth = brentq(lambda t: shells(0.105, 0.136, lambda r: t, 3) - 0.017, 1e-4, 0.05)
    worked = (
        1e3 * shells(0.1, 0.135, taper),
        shells(0.1, 0.135, taper, 3),
        1e3 * shells(0.1, 0.135, lambda r: 7e-3),
        1e3 * hole(0),
        hole(2),
        1e3 * depth,
        8600 - 1e3 * shells(0.105, 0.136, lambda r: depth),
    )
    for check, value in zip(CHECKS, worked):
        assert value == pytest.approx(check.expected, abs=check.tolerance), check.what


def judged(**entries):
    verdict = lighten(**entries).verdict
    return verdict.state, verdict.headline.plain()


@pytest.mark.parametrize(
    "entries, state, words",
    [
        ({}, "pass", "Enough is left: 8.06 % of the inertia goes"),
        (dict(engine_cuts=""), "pass", "Thick enough as it is; nothing is cut"),
        (dict(engine_cuts="140; 190; 1.5"), "pass", "Enough is left: "),
        (dict(engine_cuts="140; 190; 1.6"), "fail", "Too thin behind the face: 16.40 mm, 16.50 mm wanted"),
        (
            dict(engine_cuts="140; 190; 1", clutch_cuts="130; 205; 0.6"),
            "fail",
            "Too thin behind the face: 16.40 mm, 16.50 mm wanted",
        ),
        (dict(engine_cuts="60; 120; 4"), "pass", "Enough is left"),
        (dict(engine_cuts="60; 120; 4.5"), "fail", "Too thin at the root: 13.50 mm, 14.00 mm wanted"),
        (dict(engine_cuts="214; 244; 8"), "pass", "Enough is left"),
        (dict(engine_cuts="214; 245; 8"), "attention", "A cut goes under the ring gear's seat"),
        (dict(most_share="8 %"), "attention", "8.06 % of the inertia goes, more than 8"),
        (
            dict(holes="6", hole="12 mm", circle="150 mm"),
            "attention",
            "Holes: only where the maker allows them",
        ),
    ],
)
def test_verdict(entries, state, words):
    found = judged(**entries)
    assert found[0] == state and found[1].startswith(words), found


@pytest.mark.parametrize(
    "entries, field, words",
    [
        (dict(engine_cuts="214; 300; 5"), "engine_cuts.1.2", "outside the section"),
        (dict(engine_cuts="214; 210; 5"), "engine_cuts.1.2", "not more than where"),
        (dict(engine_cuts="214; 240; 5 | 230; 244; 5"), "engine_cuts.2.1", "inside the other cut"),
        (dict(engine_cuts="214; 240; 28"), "engine_cuts.1.3", "goes through"),
        (dict(engine_cuts="140; 180; 9", clutch_cuts="150; 190; 9"), "engine_cuts.1.3", "goes through"),
        (dict(wanted="0.09 kg·m²"), "wanted", "not less than it has"),
        (dict(holes="6"), "hole", "is empty"),
        (dict(holes="6", hole="12 mm", circle="270 mm"), "circle", "do not lie within"),
        (dict(section="40; 120; 18 | 130; 274; 18", engine_cuts=""), "section.2.1", "the ring before it"),
        (dict(section="120; 40; 18"), "section.1.2", "not more than where its ring begins"),
        (dict(section="150; 274; 18"), "section", "does not lie in it"),
        (dict(inertia="0.006 kg·m²"), "inertia", "no more than the cuts take off"),
        (dict(lining_inside="200 mm"), "lining_inside", "not less than its outside"),
        (dict(mass="3 mm"), "mass", "a length"),
    ],
)
def test_refusals(entries, field, words):
    with pytest.raises(Refused) as refused:
        lighten(**entries)
    (error,) = refused.value.errors
    assert error.field == field and words in str(error), str(error)


halves = st.integers(1, 20).map(lambda n: n / 2)


@given(halves, halves, st.integers(21, 60), st.integers(5, 60))
def test_a_tapered_cut_takes_off_what_its_shells_weigh(inside, outside, inner, wide):
    a, b = inner * MM, (inner + wide) * MM
    found = lighten(**PLATE | dict(engine_cuts=f"{2 * inner}; {2 * (inner + wide)}; {inside}; {outside}"))

    def t(r):
        return MM * (inside + (outside - inside) * (r - a) / (b - a))

    assert found["mass_off"] == pytest.approx(shells(a, b, t), rel=1e-9)
    assert found["inertia_off"] == pytest.approx(shells(a, b, t, 3), rel=1e-9)


@given(st.integers(110, 270), halves)
def test_two_cuts_side_by_side_are_one(middle, depth):
    one = lighten(**PLATE | dict(engine_cuts=f"100; 278; {depth}"))
    two = lighten(**PLATE | dict(engine_cuts=f"100; {middle}; {depth} | {middle}; 278; {depth}"))
    both = lighten(**PLATE | dict(engine_cuts=f"100; 278; {depth / 2}", clutch_cuts=f"100; 278; {depth / 2}"))
    for key in ("mass_left", "inertia_left", "face_left"):
        assert two[key] == pytest.approx(one[key], rel=1e-12) == both[key]


def test_the_depth_that_it_tells_gives_the_inertia_wanted():
    depth = lighten(wanted="0.0800 kg·m²", engine_cuts="214; 240; 3")["depth_wanted"]
    assert lighten(engine_cuts=f"214; 240; {depth / MM}")["inertia_left"] == pytest.approx(0.08, rel=1e-9)


def test_without_the_inertia_it_is_the_section_s_in_proportion_to_the_weight():
    section = [(20, 60, 18), (60, 106, 18), (106, 131, 28), (131, 137, 12)]
    mass, inertia = (
        sum(shells(a * MM, b * MM, lambda r: t * MM, power) for a, b, t in section) for power in (1, 3)
    )
    found = lighten(inertia="", mass="8000 g")
    assert found["section_mass"] == pytest.approx(mass) and found["inertia_before"] == pytest.approx(
        inertia * 8 / mass
    )
    assert abs(mass - 8.6) < 0.05 and abs(inertia - 0.0868) < 1e-4, "the sheet is of a piece"


def remarks(**entries):
    return " ".join(r.text.plain() for r in lighten(**entries).remarks)


def test_traps_are_told():
    assert "apart: look for a slip" in remarks(
        section="40; 120; 18 | 120; 212; 18 | 212; 262; 18 | 262; 274; 12"
    )
    assert "moves the clutch step" in remarks(clutch_cuts="212; 262; 0.3")
    assert "would have to add metal" in remarks(wanted="0.0860 kg·m²", clutch_cuts="212; 262; 5")
    assert "nothing is said about cuts under it" in remarks(seat="")
    assert "type where it is to lie" in remarks(wanted="0.08 kg·m²", engine_cuts="")


READ = dict(
    section="40; 120; 18 | 120; 212; 18 | 212; 262; 28 | 262; 274; 12",
    engine_cuts="214; 240; 6; 10",
    mass="8600 g",
)


def test_limits_come_from_the_engine_s_sheet_or_from_the_reader():
    def state(name, **more):
        return evaluate(lighten, READ | more, standing=Standing(engine(name) if name else None)).verdict.state

    own = dict(lining_inside="136", lining_outside="200", inertia="0.0868", material="grey-iron")
    assert state("TS-16") == "pass"
    assert state("RC-40", **own) == state("", **own) == "unjudged"
    assert state("RC-40", **own, face_least="16.5", root_least="14") == "pass"


@pytest.mark.parametrize(
    "what, thickness", [("low", 17.9), ("nominal", 18.0), ("high", 18.1), ("wear", 16.5)]
)
def test_a_flywheel_within_its_sheet_is_in_order_uncut(what, thickness):
    sheet = engine("TS-16")
    assert getattr(sheet.feature("flywheel.face_thickness"), what) == pytest.approx(thickness * MM)
    section = f"40; 120; 18 | 120; 212; {thickness} | 212; 262; 28 | 262; 274; 12"
    found = evaluate(lighten, READ | dict(section=section, engine_cuts=""), standing=Standing(sheet))
    assert found.verdict.state == "pass"


@pytest.mark.parametrize(
    "entries, what",
    [
        (dict(engine_cuts="140; 190; 1.45 ± 0.1"), "friction face"),
        (dict(engine_cuts="60; 120; 3.95 ± 0.1"), "root"),
        (dict(engine_cuts="214; 243.9 ± 0.5; 6"), "ring gear's seat"),
    ],
)
def test_a_doubt_that_reaches_a_limit_leaves_it_open(entries, what):
    found = lighten(**entries)
    assert found.verdict.state == "unsure" and what in found.verdict.headline.plain()


def test_inches_give_the_same():
    inch = evaluate(
        lighten,
        READ
        | dict(section="1.6; 4.8; 0.7 | 4.8; 8.4; 0.7 | 8.4; 10.8; 1.1", engine_cuts="8.6; 9.4; 0.25; 0.4"),
        "inch",
    )
    metric = evaluate(
        lighten,
        READ
        | dict(
            section="40.64; 121.92; 17.78 | 121.92; 213.36; 17.78 | 213.36; 274.32; 27.94",
            engine_cuts="218.44; 238.76; 6.35; 10.16",
        ),
    )
    for output in metric.outputs:
        assert inch[output] == pytest.approx(metric[output], rel=1e-9), output


def test_the_drawing_shows_what_is_cut_to_scale():
    (drawing,) = lighten().figures
    (cut,) = [s for s in drawing.shapes if getattr(s, "hatch", None) == "c"]
    xs, ys = zip(*cut.points)
    assert (min(xs), max(xs)) == pytest.approx((0, 10 * MM)) and (min(ys), max(ys)) == pytest.approx(
        (107 * MM, 120 * MM)
    )
