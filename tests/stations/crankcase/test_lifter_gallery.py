"""A lifter bore at its gallery against quadrature; verdicts, refusals, and what the narrow part decides."""

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.integrate import quad

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.formulas import annular_gap
from calc.reference import engine
from calc.stations.crankcase.lifter_gallery import lifter_gallery

MM, UM, CM3_MIN = 1e-3, 1e-6, 1e-6 / 60


def by_quad(d, near, far, length, viscosity, pressure, offset):
    """m³/s: strips round the gap, the flow along each against ∫dx/c³."""

    def strip(t):
        shift = offset * math.cos(t)
        resists, _ = quad(lambda x: (near - shift + (far - near) * x / length) ** -3, 0, length, epsrel=1e-11)
        return pressure / (12 * viscosity * resists)

    return quad(strip, 0, 2 * math.pi, epsrel=1e-10, limit=200)[0] * d / 2


@pytest.mark.parametrize("mark, end, length", [("to_cam", 21.022, 14), ("to_tube", 21.034, 18)])
@pytest.mark.parametrize("aside", [0.0, 0.5, 0.8])
def test_quadrature_agrees(mark, end, length, aside):
    found = lifter_gallery(eccentricity=f"{aside}")
    near, far = (21.010 - 20.967) / 2 * MM, (end - 20.967) / 2 * MM
    wanted = by_quad(20.967 * MM, near, far, length * MM, found["viscosity"], 1e5, aside * 21.5 * UM)
    assert found[mark] == pytest.approx(wanted, rel=1e-7)


@settings(max_examples=30)
@given(st.floats(5, 60), st.floats(5, 60), st.floats(0, 0.97))
def test_aside_agrees_with_quadrature_for_any_taper(near, far, share):
    offset = share * min(near, far) * UM
    near, far = near * UM, far * UM
    wanted = by_quad(1.0, near, far, 1.0, 1.0, 1.0, offset) / by_quad(1.0, near, far, 1.0, 1.0, 1.0, 0.0)
    assert annular_gap.aside(near, far, offset) == pytest.approx(wanted, rel=1e-6)
    assert annular_gap.aside(near, near, share * near) == pytest.approx(
        annular_gap.eccentric(share), rel=1e-9
    )


def test_a_bell_mouth_leaks_as_its_narrow_part():
    even = dict(gallery="21.007 mm", cam_end="21.007 mm", lifter="20.967 mm")
    flared = lifter_gallery(**even, tube_end="21.057 mm", eccentricity="0")
    assert flared["alike_tube"] / MM == pytest.approx(0.05842, abs=5e-6)  # less than the mean of 0.065
    assert flared["alike_tube"] < 2 * 32.5 * UM


VERDICTS = {
    "example": ("pass", "Leave it: 0.043 mm at the gallery, 1.77 % leaks", {}),
    "on its wear limit": (
        "pass",
        "Leave it: 0.100 mm at the gallery, 15.65 % leaks",
        dict(gallery="21.050 mm", cam_end="21.050 mm", tube_end="21.050 mm", lifter="20.950 mm"),
    ),
    "worn": (
        "fail",
        "Worn: 0.101 mm at the gallery, 0.100 mm allowed",
        dict(gallery="21.050 mm", cam_end="21.05 mm", lifter="20.949 mm"),
    ),
    "worn at an end only": (
        "attention",
        "Bell mouth: 0.101 mm at one end, 0.100 mm allowed",
        dict(tube_end="21.068 mm"),
    ),
    "at an end on its wear limit": (
        "pass",
        "Leave it: 0.043 mm at the gallery, 2.26 % leaks",
        dict(tube_end="21.067 mm"),
    ),
    "starves": (
        "fail",
        "Starves the bearings: 39.13 % leaks at the lifters",
        dict(
            gallery="21.050 mm",
            cam_end="21.050 mm",
            tube_end="21.050 mm",
            lifter="20.950 mm",
            pump="1400 cm³/min",
        ),
    ),
    "much": (
        "attention",
        "Much leaks at the lifters: 27.39 %",
        dict(
            gallery="21.050 mm",
            cam_end="21.050 mm",
            tube_end="21.050 mm",
            lifter="20.950 mm",
            pump="2000 cm³/min",
        ),
    ),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    state, words, entries = VERDICTS[name]
    verdict = lifter_gallery(**entries).verdict
    assert (verdict.state, verdict.headline.plain()) == (state, words), verdict.do.plain()


REFUSALS = [
    (
        "gallery",
        dict(gallery="20.967 mm"),
        "Lifter bore, at the gallery: is 20.967 mm, not larger than the lifter, 20.967 mm, so that it does not go in; give more.",
    ),
    (
        "tube_end",
        dict(tube_end="22 mm"),
        "Lifter bore, at the pushrod's end: is 22.000 mm, far wider than the lifter of 20.967 mm; measure both again, and give less.",
    ),
    ("fair", dict(fair="35 %"), None),
    ("oil_temperature", dict(oil_temperature="200 °C"), None),
    ("eccentricity", dict(eccentricity="1.1"), None),
]


@pytest.mark.parametrize("field, entries, sentence", REFUSALS)
def test_refusal(field, entries, sentence):
    with pytest.raises(Refused) as refused:
        lifter_gallery(**entries)
    (error,) = refused.value.errors
    assert error.field == field and (sentence is None or error.sentence() == sentence), error.sentence()


READ = dict(gallery="21.010", cam_end="21.022", tube_end="21.034", lifter="20.967")


def in_hand(name="TS-16", **entries):
    return evaluate(lifter_gallery, entries, standing=Standing(engine.engine(name)))


def test_all_corners_of_the_sheet_are_in_order():
    sizes = engine.demo().features
    for bore in ("low", "high"):
        for body in ("low", "high"):
            at = getattr(sizes["crankcase.lifter_bore"], bore)
            told = dict(gallery=at, cam_end=at, tube_end=at, lifter=getattr(sizes["lifter.body"], body))
            verdict = in_hand(**{name: f"{size!r} m" for name, size in told.items()}).verdict
            assert verdict.state == "pass", verdict.headline.plain()


def test_no_flow_of_the_pump_on_the_sheet_is_not_judged_by_the_example_s():
    read = dict(
        gallery="0.8440 in",
        cam_end="0.8441 in",
        tube_end="0.8443 in",
        lifter="0.8425 in",
        cam_length="14 mm",
        tube_length="18 mm",
    )
    assert in_hand("RC-40", **read).verdict.state == "unjudged"


def test_nothing_is_said_of_a_bore_that_nobody_read():
    for missing in READ:
        assert (
            in_hand(**{name: text for name, text in READ.items() if name != missing}).verdict.state
            == "awaited"
        )
    assert in_hand(**READ).verdict.state == "pass"


def test_a_doubt_that_reaches_the_wear_limit_leaves_it_open():
    worn = dict(cam_end="21.05", tube_end="21.05", lifter="20.953")
    assert lifter_gallery(gallery="21.050 ± 0.006 mm", **worn).verdict.state == "unsure"
    assert lifter_gallery(gallery="21.040 ± 0.006 mm", **worn).verdict.state == "pass"


@given(st.integers(0, 99), st.integers(0, 99))
def test_further_aside_leaks_more(a, b):
    less, more = (lifter_gallery(eccentricity=f"{e} %") for e in sorted((a, b)))
    assert more["leak"] >= less["leak"] * (1 - 1e-12) and more["clearance"] == less["clearance"]


def test_inches_give_the_same():
    metric = evaluate(
        lifter_gallery,
        dict(gallery="21.0058 mm", cam_end="21.0312 mm", tube_end="21.0566 mm", lifter="20.955 mm"),
    )
    inch = evaluate(
        lifter_gallery, dict(gallery="0.827", cam_end="0.828", tube_end="0.829", lifter="0.825"), "inch"
    )
    for output in metric.outputs:
        assert inch[output] == pytest.approx(metric[output], rel=1e-8, abs=1e-15), output
