"""Snap ring and groove: areas integrated, units by pint; verdicts, refusals, and what must always be so."""

import re
from math import pi, sqrt

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad

from calc.core.result import Refused
from calc.stations.lifters.ring_groove import ring_groove
from tests.checks.stations.lifters.ring_groove import CASES, COLUMNS, FOUND
from tests.corners import corners

u = pint.UnitRegistry()
STRENGTHS = {
    "steel body": (900 * u.MPa, 650 * u.MPa, 650 * u.MPa),
    "iron body, inches": (120 * u.ksi, 1.97 * 165 * u.MPa, 165 * u.MPa),
}  # iron bears 1.97 times as much pressed


@pytest.mark.parametrize("case", CASES)
def test_checks_are_what_integration_finds(case):
    size = {name: u(CASES[case][name]) for name in ("bore", "groove", "ring", "lip")}
    unit = size["bore"].units
    d, g, s, n = (size[name].magnitude for name in ("bore", "groove", "ring", "lip"))
    shear, pressed, pulled = STRENGTHS[case]
    areas = (
        quad(lambda t: d / 2 * s, 0, 2 * pi)[0],
        quad(lambda r: 2 * pi * r, d / 2, g / 2)[0],
        quad(lambda t: g / 2 * n, 0, 2 * pi)[0],
    )
    for area, stress, safety, stated, (output, _) in zip(
        areas, (shear, pressed, pulled / sqrt(3)), (3, 2, 2), FOUND[case], COLUMNS, strict=True
    ):
        assert (area * unit**2 * stress / safety).to("N").magnitude == pytest.approx(stated, abs=0.06), output


VERDICTS = {
    "holds": ("pass", "Holds 9957 N, 885 N come", {}),
    "groove gives way": ("fail", "Groove gives way: 121 % of what it bears", dict(load="4 kN")),
    "ring shears": (
        "fail",
        "Ring shears: 121 % of what it bears",
        dict(load="4 kN", ring="0.60 mm", width="0.70 mm", groove="19.00 mm", body="22 mm"),
    ),
    "lip shears": ("fail", "Lip shears: 219 % of what it bears", dict(load="4 kN", lip="0.50 mm")),
    "holds too little": ("fail", "Ring holds too little: 0.56 mm stands out", dict(breadth="1.10 mm")),
    "hides": ("fail", "Ring holds too little: −0.04 mm stands out", dict(breadth="0.50 mm")),
    "shallow": ("fail", "Groove shallow: 0.44 mm, 0.50 mm wanted", dict(groove="18.40 mm")),
    "depth on its limit": (
        "pass",
        "Holds 9199 N, 885 N come",
        dict(groove="18.52 mm"),
    ),  # (18.52 − 17.52)/2 = 0.50, as decimals
    "lip on its limit": (
        "pass",
        "Holds 9199 N, 885 N come",
        dict(groove="18.52 mm", lip="1.50 mm"),
    ),  # three depths of 0.50
    "wall on its limit": (
        "attention",
        "Lip short: 2.8 times the depth",
        dict(groove="18.967 mm"),
    ),  # (20.967 − 18.967)/2 = 1.00: not the wall
    "thin": (
        "fail",
        "Wall behind it thin: 0.78 mm, 1.00 mm wanted",
        dict(groove="19.40 mm", breadth="1.80 mm"),
    ),
    "tight": ("attention", "Ring tight in its groove: 0.03 mm", dict(ring="1.07 mm")),
    "loose": ("attention", "Ring loose in its groove: 0.25 mm", dict(ring="0.85 mm")),
    "short lip": ("attention", "Lip short: 2.8 times the depth", dict(lip="1.50 mm")),
    "near": ("attention", "Little to spare: 90 % used", dict(load="3 kN")),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    state, words, entries = VERDICTS[name]
    verdict = ring_groove(**entries).verdict
    assert (verdict.state, verdict.headline.plain()) == (state, words)


def test_groove_that_is_advised_is_deep_enough():
    """As it is read, in either unit system: bore and twice the depth, 18.520 and 18.523, never a little less."""
    assert "Cut it to 18.52 mm across its bottom" in ring_groove(groove="18.40 mm").verdict.do.plain()
    for bore in ("17.520 mm", "17.523 mm"):
        for system in ("metric", "inch"):
            told = re.search(
                r"Cut it to ([\d.]+ \w+) across",
                ring_groove(bore=bore, groove="18.40 mm").verdict.do.plain(system),
            )[1]
            assert ring_groove(bore=bore, groove=told).verdict.state == "pass", told


REFUSALS = [
    (
        "groove",
        dict(groove="17.5 mm"),
        "Groove, across its bottom: is 17.50 mm, not larger than the bore, 17.520 mm; give more.",
    ),
    (
        "groove",
        dict(groove="21 mm"),
        "Groove, across its bottom: is 21.00 mm, through the body's outside, 20.967 mm; give less.",
    ),
    (
        "breadth",
        dict(breadth="9.3 mm"),
        "Ring, breadth: is 9.30 mm, half of the groove's 18.60 mm or more, so that the ring has no hole; give less.",
    ),
    (
        "ring",
        dict(ring="1.10 mm"),
        "Ring, thickness: is 1.10 mm, and does not go into a groove of 1.10 mm; give less.",
    ),
    (
        "most_play",
        dict(least_play="0.3 mm"),
        "Play of the ring, most: is 0.20 mm, not more than the least, 0.30 mm; give more.",
    ),
]


@pytest.mark.parametrize("field, entries, sentence", REFUSALS)
def test_refusal(field, entries, sentence):
    with pytest.raises(Refused) as refused:
        ring_groove(**entries)
    assert [(e.field, e.sentence()) for e in refused.value.errors] == [(field, sentence)]


def test_brittle_body_is_said_to_be_one():
    assert any(
        "breaks without warning" in r.text.plain() for r in ring_groove(body_material="grey-iron").remarks
    )
    assert not any("breaks" in r.text.plain() for r in ring_groove().remarks)


@given(st.floats(18.0, 19.5), st.floats(0.5, 1.0), st.floats(1, 4), st.floats(1.05, 1.9))
def test_laws(groove, ring, lip, k):
    """Ring with its thickness, lip with its length, groove with its ring-shaped area; what it bears is the least of the three."""
    entries = dict(groove=f"{groove!r} mm", ring=f"{ring!r} mm", width="2.0 mm", lip=f"{lip!r} mm")
    found = ring_groove(**entries)
    assert ring_groove(**entries | dict(ring=f"{ring * k!r} mm"))["ring_capacity"] == pytest.approx(
        k * found["ring_capacity"]
    )
    assert ring_groove(**entries | dict(lip=f"{lip * k!r} mm"))["lip_capacity"] == pytest.approx(
        k * found["lip_capacity"]
    )
    assert (
        ring_groove(**entries | dict(groove=f"{groove + 0.2!r} mm"))["groove_capacity"]
        > found["groove_capacity"]
    )
    assert found["capacity"] == min(found[o] for o, _ in COLUMNS)
    assert ring_groove(**entries, load=f"{295 * k!r} N")["used"] == pytest.approx(k * found["used"])


def test_doubt_of_the_groove_can_leave_it_open():
    assert ring_groove(groove="18.55 ± 0.06 mm").verdict.state == "unsure"


def test_every_pair_that_the_sheet_allows_is_in_order():
    for sizes in corners(
        "lifter.groove",
        "lifter.unit_hole",
        "lifter.groove_width",
        "lifter.ring",
        "lifter.lip",
        "lifter.ring_breadth",
        "lifter.body",
    ):
        found = ring_groove(**dict(zip(("groove", "bore", "width", "ring", "lip", "breadth", "body"), sizes)))
        assert found.verdict.state == "pass", (sizes, found.verdict.headline.plain())


def test_a_doubt_that_may_make_the_ring_loose_leaves_it_open():
    assert ring_groove(ring="0.92 ± 0.005 mm").verdict.state == "pass"
    found = ring_groove(ring="0.92 ± 0.04 mm")
    assert found.verdict.state == "unsure" and "play" in found.verdict.headline.plain()
