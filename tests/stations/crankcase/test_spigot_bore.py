"""Holes for larger cylinders: walls by points, clearances by corners, verdicts, refusals."""

from itertools import product

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.reference.engine import engine
from calc.stations.crankcase.spigot_bore import spigot_bore
from tests.checks.stations.crankcase.spigot_bore import FIT, STUDS
from tests.corners import corners

MM = 1e-3


def test_wall_is_the_least_distance_of_points():
    turn = np.linspace(0, 2 * np.pi, 200_001)
    away = np.hypot(97 / 2 * np.cos(turn) - 45.5, 97 / 2 * np.sin(turn) - 44.0) - 10.5 / 2
    assert spigot_bore(**STUDS)["wall"] / MM == pytest.approx(away.min(), abs=1e-6)


def test_clearances_are_those_of_the_corners():
    found = spigot_bore(**FIT)
    cold = [D - d for D, d in product((94.100, 94.135), (93.946, 94.000))]
    hot = [
        D * (1 + 26e-6 * 80) - d * (1 + 11e-6 * 100) for D, d in product((94.100, 94.135), (93.946, 94.000))
    ]
    for name, values, near in (("cold", cold, 1e-9), ("hot", hot, 1e-5)):
        assert found[f"{name}_least"] / MM == pytest.approx(min(values), abs=near)
        assert found[f"{name}_most"] / MM == pytest.approx(max(values), abs=near)


BORED = dict(bored_small="98.100 mm", bored_large="98.120 mm")
VERDICTS = {
    "hole wider than they want": (
        "fail",
        "Hole too wide already: 98.152 mm, 98.151 mm at most",
        dict(old_bore="98.152 mm"),
    ),
    "hole of their size": (
        "attention",
        "Nothing to bore: the smallest hole is 98.151 mm",
        dict(old_bore="98.151 mm"),
    ),
    "smaller cylinders": (
        "fail",
        "Hole too wide already: 94.118 mm, 90.189 mm at most",
        dict(register_small="90 mm", register_large="90.02 mm"),
    ),
    "to be bored": ("pass", "Bore to 98.085 mm to 98.151 mm", {}),
    "bored": ("pass", "Fits: 0.115 mm cold at least, 0.195 mm running", BORED),
    "at both its ends": (
        "pass",
        "Fits: 0.100 mm cold at least, 0.180 mm running",
        dict(bored_small="98.085 mm", bored_large="98.151 mm"),
    ),
    "tight": (
        "fail",
        "Register tight: 0.065 mm, 0.100 mm wanted",
        dict(bored_small="98.050 mm", bored_large="98.120 mm"),
    ),
    "loose": (
        "fail",
        "Register loose: 0.208 mm, 0.189 mm allowed",
        dict(bored_small="98.100 mm", bored_large="98.170 mm"),
    ),
    "too little wall": (
        "fail",
        "Wall to a stud hole: 2.89 mm, 3.00 mm wanted",
        dict(stud_along="80.97 mm", stud_up="80.85 mm"),
    ),
    "thin wall": (
        "attention",
        "Thin wall to a stud hole: 3.66 mm",
        dict(stud_along="82 mm", stud_up="82 mm"),
    ),
    "little land": ("fail", "Case between two holes: 18.8 mm, 20.0 mm wanted", dict(spacing="117 mm")),
    "unlike cylinders": (
        "attention",
        "No one hole fits all these cylinders",
        dict(register_small="97.850 mm"),
    ),
    "seizes as it warms up": (
        "fail",
        "Register seizes, case still cool: −0.018 mm",
        dict(clearance_low="0.03 mm"),
    ),
    "seizes running": (
        "fail",
        "Register seizes, running: −0.068 mm",
        dict(clearance_low="0.03 mm", case_temperature="20 °C", case_warming="20 °C"),
    ),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    state, words, entries = VERDICTS[name]
    verdict = spigot_bore(**entries).verdict
    assert (verdict.state, verdict.headline.plain()) == (state, words)


def test_a_case_at_every_corner_of_its_sheet_with_its_own_cylinders_is_in_order():
    for register, bore, along, up, hole, spacing in corners(
        "cylinder.register",
        "crankcase.spigot_bore",
        "crankcase.stud_along",
        "crankcase.stud_up",
        "crankcase.stud_hole",
        "crankcase.cylinder_spacing",
    ):
        read = dict(
            register_small=register,
            register_large=register,
            bored_small=bore,
            bored_large=bore,
            stud_along=along,
            stud_up=up,
            stud_hole=hole,
            spacing=spacing,
        )
        found = evaluate(spigot_bore, read, standing=Standing(engine("TS-16")))
        assert found.verdict.state == "pass", (read, found.verdict.headline.plain())


@given(st.integers(93_900, 98_200), st.integers(0, 80))
def test_a_hole_bored_as_told_fits_every_cylinder_cold(small, more):
    registers = dict(register_small=f"{small / 1000} mm", register_large=f"{(small + more) / 1000} mm")
    told = spigot_bore(**registers)
    for size in ("bore_least", "bore_most"):
        D = f"{told[size] / MM:.6f} mm"
        found = spigot_bore(**registers, bored_small=D, bored_large=D)
        assert found["cold_least"] / MM > 0.1 - 1e-6 and found["cold_most"] / MM < 0.189 + 1e-6


def test_a_circle_of_studs_is_the_square_s_own():
    square = spigot_bore(stud_along="88 mm", stud_up="66 mm")
    circle = spigot_bore(pattern="circle", stud_circle="110 mm")
    assert circle["wall"] == pytest.approx(square["wall"], abs=1e-12)


@pytest.mark.parametrize(
    "entries, field, words",
    [
        (dict(bored_small="98.1 mm"), "bored_large", "is empty"),
        (dict(register_small="98.0 mm"), "register_large", "and the smallest 98.000 mm"),
        (
            dict(bored_small="97.9 mm", bored_large="98.1 mm"),
            "bored_small",
            "smaller than the largest register",
        ),
        (dict(stud_along="60 mm", stud_up="60 mm"), "stud_hole", "leaves no metal"),
        (dict(spacing="98 mm"), "spacing", "leaves no metal"),
        (dict(clearance_low="0.2 mm"), "clearance_low", "not below the most"),
        (dict(wall_good="2 mm"), "wall_good", "less than the least wall"),
        (dict(case_temperature="300 °C"), "case_temperature", "above 200"),
    ],
)
def test_refusals(entries, field, words):
    with pytest.raises(Refused) as refused:
        spigot_bore(**entries)
    (error,) = refused.value.errors
    assert error.field == field and words in str(error), str(error)


def test_limits_come_from_the_engine_s_sheet_or_from_the_reader():
    told = {
        "stud_along": "88",
        "stud_up": "88",
        "stud_hole": "10.5",
        "spacing": "123.2",
        "old_bore": "94.118",
        "register_small": "97.962",
        "register_large": "97.985",
        "case_material": "mg-az91",
        "foot_material": "grey-iron",
    }
    typed = dict(wall_good="4", wall_least="3", clearance_low="0.1", clearance_high="0.189")
    by = {
        name: evaluate(spigot_bore, told, standing=Standing(engine(name) if name else None))
        for name in ("TS-16", "RC-40", "")
    }
    assert by["TS-16"].verdict.state == "pass"
    assert by["RC-40"].verdict.state == by[""].verdict.state == "unjudged"
    assert evaluate(spigot_bore, told | typed, standing=Standing(engine("RC-40"))).verdict.state == "pass"
    assert evaluate(spigot_bore, {}, standing=Standing(engine("TS-16"))).verdict.state == "awaited"


@pytest.mark.parametrize(
    "entries, what",
    [
        (dict(stud_along="80.97 ± 0.5 mm", stud_up="80.85 mm"), "wall"),
        (dict(bored_small="98.090 ± 0.02 mm", bored_large="98.12 mm"), "clearance cold"),
        (dict(bored_small="98.1 mm", bored_large="98.148 ± 0.02 mm"), "clearance cold"),
    ],
)
def test_a_doubt_that_reaches_a_limit_leaves_it_open(entries, what):
    found = spigot_bore(**entries)
    assert found.verdict.state == "unsure" and what in found.verdict.headline.plain()


def test_inches_give_the_same():
    metric = dict(
        register_small="96.52 mm",
        register_large="96.52 mm",
        stud_along="88.9 mm",
        stud_up="88.9 mm",
        stud_hole="10.16 mm",
    )
    inch = dict(register_small="3.8", register_large="3.8", stud_along="3.5", stud_up="3.5", stud_hole="0.4")
    first, second = evaluate(spigot_bore, metric), evaluate(spigot_bore, inch, "inch")
    for output in first.outputs:
        assert second[output] == pytest.approx(first[output], rel=1e-9, abs=1e-12), output


def test_drawing_is_to_scale():
    (drawing,) = spigot_bore().figures
    hole = next(s for s in drawing.shapes if hasattr(s, "radius"))
    assert hole.radius == pytest.approx(98.151e-3 / 2) and not drawing.exaggerated
