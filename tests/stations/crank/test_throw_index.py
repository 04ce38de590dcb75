"""Throws and angles: pins turned as complex numbers, verdicts, refusals, doubt, both sheets and none."""

import math
from cmath import exp, phase

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import least_squares

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.reference.engine import engine
from calc.stations.crank.throw_index import throw_index
from tests.checks.stations.crank.throw_index import (
    AGAINST_FIRST,
    AXIS,
    LEVEL,
    PINS,
    THROWS,
    heights,
    standing,
)

MM = 1e-3
SIDES = (1, -1, -1, 1)  # of pins 1 to 4, turned level, pin 1 on the right


def crank(errors, throws=(34.5,) * 4, pins=PINS):
    """Heights over a crank whose pins stand so many degrees against the clock from their places, pin 1 on the right."""
    rows = []
    for side, error, r, d in zip(SIDES, errors, throws, pins):
        at = side * r * exp(1j * math.radians(error))
        rows.append((AXIS + r + d / 2, AXIS - r + d / 2, AXIS + at.imag + d / 2))
    return heights(rows)


def errors_of(found):
    """Each pin's angle against pin 1, late positive, from the table's words."""
    told = []
    for row in found.tables[0].rows:
        cell = row[3]
        words = cell if isinstance(cell, str) else cell.plain() if hasattr(cell, "plain") else cell.text()
        told.append(
            0.0 if words == "the first" else float(words.split("°")[0]) * (-1 if "early" in words else 1)
        )
    return told


def test_checks_are_the_arcsines():
    level = [math.degrees(math.asin((h - d / 2 - AXIS) / r)) for h, d, r in zip(LEVEL, PINS, THROWS)]
    angles = [a if side < 0 else -a for a, side in zip(level, SIDES)]  # pin 1 lies left there
    assert [a - angles[0] for a in angles] == pytest.approx(AGAINST_FIRST, abs=5e-5)


def test_checks_are_pins_in_the_plane():
    turned = np.arcsin(0.0200 / 34.51) + np.arcsin(0.100 / 34.50)
    assert abs(34.51 * np.exp(1j * turned) - 34.5) == pytest.approx(0.1204276, abs=5e-8)


def test_heights_at_many_angles_give_the_same_throw_and_angle():
    """Another way to read a pin: heights at ten angles of a dividing head, fitted; made from 34.512 mm and 0.35°, rounded to 1 µm."""
    dial = np.array([80, 85, 90, 95, 100, 260, 265, 270, 275, 280])
    read = np.array(
        [180.019, 180.393, 180.506, 180.357, 179.945, 111.971, 111.597, 111.484, 111.633, 112.045]
    )
    fit = least_squares(lambda p: p[0] + p[1] * np.sin(np.radians(dial + p[2])) - read, (146, 34, 0)).x
    assert fit[1] == pytest.approx(34.5119, abs=5e-5) and fit[2] == pytest.approx(0.351556, abs=5e-6)
    found = throw_index(**crank((0, fit[2], 0, 0), (fit[1],) * 4))
    assert found["index"] == pytest.approx(math.radians(fit[2]), abs=1e-8)
    assert found["longest"] / MM == pytest.approx(2 * fit[1], abs=1e-6)


VERDICTS = {
    "example": ("pass", "Alike within 0.008 mm, angles within 0.063°", {}),
    "on its limit": ("pass", "Alike within 0.000 mm, angles within 0.150°", crank((0, 0.1499999, 0, 0))),
    "over a good one's": ("attention", "Pin 2 0.200° late, over 0.15°", crank((0, 0.2, 0, 0))),
    "out of its angle": ("fail", "Pin 3 0.300° early, 0.25° allowed", crank((0, 0, -0.3, 0))),
    "runs the other way": (
        "fail",
        "Pin 3 0.300° late, 0.25° allowed",
        crank((0, 0, -0.3, 0)) | dict(turns="counter"),
    ),
    "throws differ": (
        "attention",
        "Throws differ by 0.060 mm, 0.050 mm allowed",
        dict(crank((0,) * 4, (34.48, 34.5, 34.52, 34.54)), throw_high="34.55 mm"),
    ),
    "another stroke": (
        "fail",
        "Throw of pin 1 34.900 mm: 34.475 mm to 34.525 mm",
        crank((0,) * 4, (34.9,) * 4),
    ),
    "one short": (
        "fail",
        "Throw of pin 2 34.460 mm: 34.475 mm to 34.525 mm",
        crank((0,) * 4, (34.5, 34.46, 34.5, 34.5)),
    ),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    state, words, entries = VERDICTS[name]
    verdict = throw_index(**entries).verdict
    assert (verdict.state, verdict.headline.plain()) == (state, words), verdict.do.plain()


angles = st.floats(-0.2, 0.2)


@given(st.lists(angles, min_size=4, max_size=4), st.floats(-3, 3), st.booleans())
def test_how_the_crank_was_clamped_does_not_matter(errors, clamped, clockwise):
    """Against pin 1 every angle comes back, however far off level the crank was clamped, and turned round it changes its sign."""
    found = throw_index(**crank([e + clamped for e in errors]), turns="clock" if clockwise else "counter")
    wanted = [(e - errors[0]) * (1 if clockwise else -1) for e in errors]
    assert errors_of(found) == pytest.approx(wanted, abs=6e-4)
    assert found["index"] == pytest.approx(max(abs(math.radians(w)) for w in wanted), abs=1e-7)


@given(st.lists(angles, min_size=4, max_size=4))
def test_read_from_the_other_side_it_is_the_same(errors):
    right = throw_index(**crank(errors))
    rows = [[float(x.split()[0]) for x in row.split(";")] for row in crank(errors)["heights"].split("|")]
    turned = [(top, bottom, top + bottom - level) for top, bottom, level in rows]  # by half a turn
    left = throw_index(**heights(turned), side="left")
    for output in right.outputs:
        assert left[output] == pytest.approx(right[output], abs=1e-9), output


@given(
    st.lists(st.floats(-0.6, 0.6), min_size=3, max_size=3),
    st.lists(st.floats(34.48, 34.52), min_size=3, max_size=3),
)
def test_the_way_back_is_the_distance_of_two_points(errors, throws):
    found = throw_index(**crank((0, *errors), (34.5, *throws)))
    off = max(abs(r * exp(1j * math.radians(e)) - 34.5) for e, r in zip(errors, throws))
    assert found["shift"] / MM == pytest.approx(off, abs=1e-6)
    assert found["diameter"] == pytest.approx(2 * found["shift"])


def test_blocks_pins_and_the_plate_drop_out():
    found, higher = (
        throw_index(**standing(LEVEL)),
        throw_index(**standing([h + 0.5 for h in LEVEL], pins=[d + 1 for d in PINS])),
    )
    for output in found.outputs:
        assert higher[output] == pytest.approx(found[output], abs=1e-9), output
    assert phase(exp(1j * found["index"])) == pytest.approx(found["index"])


def test_pin_1_is_told_where_it_is_the_odd_one():
    def warned(errors):
        return [r.text.plain() for r in throw_index(**crank(errors)).remarks if r.level == "warning"]

    assert warned((0.2, 0, 0, 0)) == [
        "The other three agree, and all stand 0.200° off pin 1: it is pin 1 that is out."
    ]
    assert not warned((0, 0.2, 0, 0)) and not warned((0, 0, 0, 0))


REFUSALS = [
    ("throw_low", dict(throw_low="35 mm"), "not below the most"),
    ("heights.2.1", {"heights.2.1": "111 mm"}, "not above the height"),
    ("heights.3.3", {"heights.3.3": "175 mm"}, "turn the throws level"),
    ("heights.1.1", {"heights.1.1": "9 mm"}, "below 20"),
    ("heights.4.2", {"heights.4.2": "3 kg"}, "a mass"),
]


@pytest.mark.parametrize("field, entries, words", REFUSALS)
def test_refusal(field, entries, words):
    with pytest.raises(Refused) as refused:
        throw_index(**entries)
    (error,) = refused.value.errors
    assert error.field == field and words in error.sentence(), error.sentence()


@pytest.mark.parametrize(
    "cell, text, what",
    [("heights.4.3", "146.075 ± 0.02 mm", "angle"), ("heights.1.1", "180.547 ± 0.01 mm", "longest throw")],
)
def test_a_doubt_that_reaches_a_limit_leaves_it_open(cell, text, what):
    verdict = throw_index(**{cell: text}).verdict
    assert verdict.state == "unsure" and what in verdict.headline.plain(), verdict.headline.plain()


def test_inches_give_the_same():
    rows = [
        (7.1061, 4.3894, 5.7480),
        (7.1062, 4.3893, 5.7490),
        (7.1063, 4.3891, 5.7470),
        (7.1060, 4.3893, 5.7492),
    ]
    inch = evaluate(throw_index, dict(heights=" | ".join("; ".join(map(str, row)) for row in rows)), "inch")
    metric = throw_index(**heights([[x * 25.4 for x in row] for row in rows]))
    for output in metric.outputs:
        assert inch[output] == pytest.approx(metric[output], rel=1e-7, abs=1e-9), output


def test_limits_come_from_the_reader_s_own_sheet():
    read = crank((0, 0.1, 0, 0))
    by = {
        name: evaluate(throw_index, read, standing=Standing(engine(name) if name else None))
        for name in ("TS-16", "RC-40", "")
    }
    assert (
        by["TS-16"].verdict.state == "pass"
        and by["RC-40"].verdict.state == by[""].verdict.state == "unjudged"
    )
    assert evaluate(throw_index, {}, standing=Standing(engine("TS-16"))).verdict.state == "awaited"


@pytest.mark.parametrize("end", ["low", "high"])
def test_both_ends_of_the_sheet_s_throw_are_in_order(end):
    throw = getattr(engine("TS-16").feature("crank.throw"), end) / MM
    assert throw_index(**crank((0,) * 4, (throw,) * 4)).verdict.state == "pass"
