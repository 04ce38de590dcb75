"""Permitted unbalance, arbor and part told apart, and holes: by complex numbers, quadrature and linear algebra."""

import cmath
import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad
from scipy.optimize import brentq

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.reference.engine import engine
from calc.stations.flywheel.balance import balance
from tests.checks.stations.flywheel.balance import ARBOR, RIM, ROTOR, TWO

GMM, MM, G = 1e-6, 1e-3, 1e-3
OUT = dict(reading="420 g·mm", turned="336 g·mm", turned_at="46°")
LONE = dict(reading="420 g·mm", turned="", turned_at="")


def taken(depth, radius, drill, point, density, rim):
    """Unbalance (g·mm) of a hole so deep to the tip (mm), slice by slice from the mouth."""
    height = drill / 2 / math.tan(math.radians(point) / 2)

    def slice_at(x):
        from_tip = depth - x
        half = min(drill / 2, from_tip * math.tan(math.radians(point) / 2))
        return density * 1e-3 * math.pi * half**2 * ((radius - x) if rim else radius)

    knee = max(0.0, depth - height)
    return quad(slice_at, 0, knee)[0] + quad(slice_at, knee, depth)[0]


@pytest.mark.parametrize("how, shoulder", [("rim", 2.5905), ("face", 2.5358)])
def test_checks_are_the_integral_along_the_hole(how, shoulder):
    tip = brentq(lambda z: taken(z, 138, 12, 118, 7.2, how == "rim") - 420, 0.1, 60, xtol=1e-12)
    assert tip - 6 / math.tan(math.radians(59)) == pytest.approx(shoulder, abs=5e-5)


def test_checks_are_two_directions_solved():
    d = np.radians([30, 75])
    one, two = np.linalg.solve(
        [np.cos(d), np.sin(d)], 180 * np.array([np.cos(np.radians(40)), np.sin(np.radians(40))])
    )
    assert one / 120 == pytest.approx(1.2167, abs=5e-5) and two / 120 == pytest.approx(0.36836, abs=5e-6)


def test_checks_are_part_and_arbor_as_complex_numbers():
    part, arbor = cmath.rect(300, math.radians(100)), cmath.rect(90, math.radians(10))
    for size, angle, z in (
        (ARBOR["reading"], ARBOR["at"], part + arbor),
        (ARBOR["turned"], ARBOR["turned_at"], part - arbor),
    ):
        assert abs(z) == pytest.approx(float(size.split()[0]), abs=5e-5)
        assert math.degrees(cmath.phase(z)) == pytest.approx(float(angle[:-1]), abs=5e-5)


@given(st.floats(5, 900), st.floats(60, 200), st.floats(10, 16), st.sampled_from(["rim", "face"]))
def test_the_hole_takes_out_what_it_is_for(moment, radius, drill, how):
    told = dict(reading=f"{moment:.4f} g·mm", radius=f"{radius:.3f} mm", drill=f"{drill:.3f} mm", how=how)
    found = balance(**LONE | told | dict(wall="150 mm"))
    out = taken(found["tip"] / MM, float(f"{radius:.3f}"), float(f"{drill:.3f}"), 118, 7.2, how == "rim")
    assert out == pytest.approx(float(f"{moment:.4f}"), rel=2e-5)
    assert found["tip"] >= found["shoulder"] >= 0


@given(st.floats(20, 900), st.floats(0, 359), st.floats(0, 400), st.floats(0, 359))
def test_turning_tells_part_from_arbor(own, at, arbor, arbor_at):
    part, error = cmath.rect(own, math.radians(at)), cmath.rect(arbor, math.radians(arbor_at))
    told = {}
    for z, size, angle in ((part + error, "reading", "at"), (part - error, "turned", "turned_at")):
        told |= {size: f"{abs(z):.6f} g·mm", angle: f"{math.degrees(cmath.phase(z)):.6f}°"}
    found = balance(**told, drill="20 mm", wall="150 mm")
    assert found["left"] / GMM == pytest.approx(own, abs=1e-3)
    assert found["arbor"] / GMM == pytest.approx(arbor, abs=1e-3)
    assert abs(cmath.rect(1, found["heavy"]) - cmath.rect(1, math.radians(at))) < 1e-4
    assert 0 <= found["heavy"] < 2 * math.pi + 1e-9


@given(st.floats(0, 359), st.floats(6, 170), st.floats(0.01, 0.99))
def test_two_places_add_up_to_one(first, apart, share):
    heavy = first + apart * share
    told = dict(
        reading="500 g·mm",
        at=f"{heavy % 360:.6f}°",
        first=f"{first:.6f}°",
        second=f"{first + apart - 360:.6f}°",
    )
    found = balance(**LONE | told, how="face", wall="150 mm", drill="20 mm", radius="100 mm")
    put = found["mass_one"] * cmath.rect(100 * MM, math.radians(first))
    put += found["mass_two"] * cmath.rect(100 * MM, math.radians(first + apart))
    assert abs(put / GMM - cmath.rect(500, math.radians(heavy))) < 0.01


VERDICTS = {
    "example": ("pass", "Balanced: 94.5 g·mm left of 115.0 g·mm permitted", "Leave it so", {}),
    "out of balance": (
        "fail",
        "Out of balance: 377.5 g·mm, 115.0 g·mm permitted",
        "Drill to three quarters",
        OUT,
    ),
    "not turned": ("fail", "Out of balance: 420.0 g·mm, 115.0 g·mm permitted", "Turn the part by 180°", LONE),
    "balanced": (
        "pass",
        "Balanced: 90.0 g·mm left of 115.0 g·mm permitted",
        "Leave it so",
        LONE | dict(reading="90 g·mm"),
    ),
    "the arbor's fault": (
        "pass",
        "Balanced: 30.0 g·mm left of 115.0 g·mm permitted",
        "Leave it so",
        dict(reading="230 g·mm", at="40°", turned="170 g·mm", turned_at="220°"),
    ),
    "too deep": (
        "fail",
        "Out of balance: 377.5 g·mm, 115.0 g·mm permitted",
        "Do not drill it so",
        OUT | dict(wall="11 mm"),
    ),
    "a coarser grade": (
        "pass",
        "Balanced: 377.5 g·mm left of 730.0 g·mm permitted",
        "Leave it so",
        OUT | dict(grade="40 mm/s"),
    ),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    state, words, do, entries = VERDICTS[name]
    verdict = balance(**entries).verdict
    assert (verdict.state, verdict.headline.plain()) == (state, words)
    assert verdict.do.plain().startswith(do)


def test_a_mass_counted_where_one_is_missing_stands_opposite():
    heavy, light = balance(**LONE), balance(**LONE, shows="light")
    assert light["heavy"] - heavy["heavy"] == pytest.approx(math.pi)
    assert light["left"] == pytest.approx(heavy["left"])


def test_an_arbor_out_by_more_than_is_permitted_is_told():
    def warned(**entries):
        return [r.text.plain() for r in balance(**entries).remarks if r.level == "warning"]

    assert not warned()
    (said,) = warned(reading="330 g·mm", at="40°", turned="70 g·mm", turned_at="220°")
    assert said.startswith("Arbor and machine alone show 200.0 g·mm")


def test_so_little_that_the_point_alone_takes_it():
    found = balance(**LONE | dict(reading="30 g·mm", grade="1 mm/s", turned="30 g·mm", turned_at="40°"))
    assert found["shoulder"] == 0 and "the point of the drill alone" in found.verdict.do.plain()


REFUSALS = [
    ("turned_at", dict(turned_at=""), "is empty; give the angle"),
    ("turned", dict(turned=""), "is empty; give the unbalance"),
    ("second", dict(first="30°"), "is empty; give the second"),
    ("first", dict(second="30°"), "is empty; give the first"),
    ("second", dict(first="30°", second="32°"), "too nearly in line"),
    ("second", dict(first="30°", second="212°"), "too nearly in line"),
    ("second", dict(first="90°", second="150°"), "does not lie between"),
    ("left_behind", dict(left_behind="24 mm"), "no less than the metal"),
    ("other_to_mass", dict(plane="share", other_to_mass="400 mm"), "past the plane"),
    (
        "drill",
        dict(reading="9000 g·mm", at="0°", turned="", turned_at="", radius="20 mm", drill="3 mm"),
        "reach the axis",
    ),
    ("mass", dict(mass="8.6 mm"), "a length"),
    ("grade", dict(grade="900 mm/s"), "above 400"),
]


@pytest.mark.parametrize("field, entries, words", REFUSALS)
def test_refusal(field, entries, words):
    with pytest.raises(Refused) as refused:
        balance(**entries)
    (error,) = refused.value.errors
    assert error.field == field and words in error.sentence(), error.sentence()


def test_a_doubt_that_reaches_what_is_permitted_leaves_it_open():
    verdict = balance(**LONE | dict(reading="105 ± 20 g·mm")).verdict
    assert verdict.state == "unsure" and "the unbalance" in verdict.headline.plain()


def test_on_what_is_permitted_it_is_in_order():
    most = balance(**LONE)["permitted"] / GMM
    assert balance(**LONE | dict(reading=f"{most:.9f} g·mm")).verdict.state == "pass"
    assert balance(**LONE | dict(reading=f"{most * 1.001:.9f} g·mm")).verdict.state == "fail"


def test_inches_give_the_same():
    metric = balance(
        **LONE
        | dict(mass="8.6 kg", reading="360.0389 g·mm", radius="127 mm", drill="9.525 mm", wall="25.4 mm")
    )
    inch = evaluate(
        balance, LONE | dict(mass="18.9597546", reading="0.5", radius="5", drill="0.375", wall="1"), "inch"
    )
    for output in metric.outputs:
        assert inch[output] == pytest.approx(metric[output], rel=1e-6, abs=1e-9), output


def test_the_grade_comes_from_the_reader_s_own_sheet():
    told = dict(LONE, mass="8.6 kg", reading="60 g·mm", at="0°", radius="130 mm", drill="10 mm", wall="24 mm")
    by = {
        name: evaluate(balance, told, standing=Standing(engine(name) if name else None))
        for name in ("TS-16", "RC-40", "")
    }
    assert by["TS-16"].verdict.state == "pass", by["TS-16"].verdict.headline.plain()
    assert by["RC-40"].verdict.state == "unjudged" and by[""].verdict.state != "pass"
    assert evaluate(balance, {}, standing=Standing(engine("TS-16"))).verdict.state == "awaited"


def test_checked_parts_are_of_one_wheel():
    """Rows that share their rotor give the same permitted unbalance however it is drilled."""
    assert balance(**ROTOR | RIM)["permitted"] == balance(**ROTOR | TWO)["permitted"]
