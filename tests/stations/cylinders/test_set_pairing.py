"""Pairing against linear assignment and all choices; verdicts, refusals, limits of both sheets, and what must always be so."""

from itertools import combinations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import linear_sum_assignment

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.reference.engine import engine
from calc.stations.cylinders.set_pairing import set_pairing
from calc.stations.cylinders.set_pairing.choosing import pairing, together
from tests.checks.stations.cylinders.set_pairing import FIVE, RODS, SPRINGS


def on(sheet, **entries):
    return evaluate(set_pairing, entries, standing=Standing(engine(sheet) if sheet else None))


def assigned(bores, parts, wanted):
    """Worst deviation and sum of squares: pairs worse than a threshold are forbidden, the threshold lowered as far as it goes."""
    off = np.abs(np.subtract.outer(bores, parts) - wanted)
    best = None
    for most in sorted(set(off.ravel()), reverse=True):
        cost = np.where(off <= most + 1e-12, off**2, 1e6)
        rows, columns = linear_sum_assignment(cost)
        if cost[rows, columns].max() >= 1e6:
            break
        best = off[rows, columns].max(), (off[rows, columns] ** 2).sum(), columns
    return best


def spread(rows, chosen):
    picked = np.array([rows[k] for k in chosen])
    return (picked.max(axis=0) - picked.min(axis=0)).max()


sizes = st.integers(0, 60).map(lambda n: 88 + n / 1000)


@given(
    st.lists(sizes, min_size=1, max_size=4), st.lists(sizes, min_size=4, max_size=6), st.floats(-0.02, 0.06)
)
def test_a_pairing_is_that_of_linear_assignment(bores, parts, wanted):
    chosen = pairing(bores, parts, wanted)
    off = np.array([abs(b - parts[k] - wanted) for b, k in zip(bores, chosen)])
    worst, squares, _ = assigned(bores, parts, wanted)
    assert len(set(chosen)) == len(bores)
    assert off.max() == pytest.approx(worst, abs=1e-9) and (off**2).sum() == pytest.approx(squares, abs=1e-9)


@given(st.lists(st.tuples(st.integers(0, 99), st.integers(0, 99)), min_size=4, max_size=8), st.integers(2, 4))
def test_a_set_is_the_closest_of_all(rows, count):
    chosen = together(rows, count)
    least = min(spread(rows, each) for each in combinations(range(len(rows)), count))
    assert len(set(chosen)) == count and spread(rows, chosen) == least


def test_checks_are_the_librarys():
    bores, parts = ([float(x) for x in FIVE[name].split(" | ")] for name in ("bores", "parts"))
    *_, columns = assigned(bores, parts, 0.049)
    clearances = [b - parts[k] for b, k in zip(bores, columns)]
    found = set_pairing(**FIVE)
    assert found["tight"] * 1000 == pytest.approx(min(clearances), abs=1e-9)
    assert found["loose"] * 1000 == pytest.approx(max(clearances), abs=1e-9)
    for entries, name, unit in ((RODS, "masses", 1e-3), (SPRINGS, "forces", 1)):
        rows = [[float(x) for x in row.split("; ")] for row in entries[name].split(" | ")]
        least = min(spread(rows, each) for each in combinations(range(len(rows)), 4))
        assert set_pairing(**entries)[name] / unit == pytest.approx(least, abs=1e-9)


GOOD = dict(bores=FIVE["bores"], parts=FIVE["parts"])
VERDICTS = {
    "pairs": (GOOD, "pass", "Pairs: clearance 0.049 mm to 0.051 mm"),
    "a bore too small": (
        GOOD | dict(bores="88.012 | 87.985"),
        "fail",
        "No pairing serves: bore 2 has 0.030 mm",
    ),
    "a bore too large": (
        GOOD | dict(bores="88.060 | 88.012"),
        "fail",
        "No pairing serves: bore 1 has 0.095 mm",
    ),
    "rods": (RODS, "pass", "They belong together: 0.9 g apart"),
    "rods too far apart": (RODS | dict(masses_apart="0.5 g"), "attention", "The closest differ by 0.9 g"),
    "springs": (SPRINGS, "pass", "They belong together: 9 N apart"),
    "chambers": (
        dict(what="volumes", volumes="56.0 | 55.8 | 57.9 | 56.1 | 56.2"),
        "pass",
        "They belong together: 0.4 cm³ apart",
    ),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    entries, state, headline = VERDICTS[name]
    verdict = on("TS-16", **entries).verdict
    assert (verdict.state, verdict.headline.plain()) == (state, headline)


def test_parts_at_the_ends_of_the_sheet_pair():
    """The smallest bore with the largest piston and the other way round are in order, as the sheet's clearance follows from both."""
    sheet = engine("TS-16").features
    for bore, piston in (("low", "high"), ("high", "low")):
        b, p = (
            f"{getattr(sheet[id], end)!r} m"
            for id, end in (("cylinder.bore", bore), ("piston.diameter", piston))
        )
        assert on("TS-16", bores=f"{b} | {b}", parts=f"{p} | {p}").verdict.state == "pass"


def test_limits_are_those_of_the_engine_in_hand():
    inch = dict(bores="3.7504 in | 3.7506 in", parts="3.7482 in | 3.7484 in")
    assert on("RC-40", **inch).verdict.state == "pass"
    assert on("", **inch).verdict.state == "unjudged"
    assert on("", **inch, low="0.001 in", high="0.003 in").verdict.state == "pass"


def test_what_is_told_is_that_pairing():
    found = on("TS-16", **GOOD)
    rows = found.tables[0].rows
    bores = dict(zip("1234", map(float, FIVE["bores"].split(" | "))))
    parts = dict(zip("ABCDE", map(float, FIVE["parts"].split(" | "))))
    assert len({part for _, part, _ in rows}) == 4
    for bore, part, clearance in rows:
        assert float(clearance) * 1000 == pytest.approx(bores[bore] - parts[part], abs=1e-9)
        assert f"{part} into {bore}" in found.verdict.do.plain()


def test_a_doubt_that_reaches_a_limit_leaves_it_open():
    assert on("TS-16", bores="88.000 ± 0.004 mm | 88.010", parts="87.963 | 87.963").verdict.state == "unsure"
    assert on("TS-16", bores="88.010 ± 0.004 mm | 88.010", parts="87.960 | 87.960").verdict.state == "pass"


@pytest.mark.parametrize(
    "entries, field, words",
    [
        (dict(GOOD, parts="87.955 | 87.963"), "parts", "at least as many parts"),
        (RODS | dict(count="7"), "count", "give at most so many"),
        (
            RODS | dict(masses="399.6; 160.4 | 400.9 | 399.8; 160 | 399; 160"),
            "masses.2.2",
            "for all of them, or for none",
        ),
        (dict(GOOD, low="0.1 mm", high="0.05 mm"), "low", "more than the most"),
        (dict(GOOD, bores="880"), "bores.1.1", "above 300"),
    ],
)
def test_refusals(entries, field, words):
    with pytest.raises(Refused) as refused:
        set_pairing(**entries)
    error = refused.value.errors[0]
    assert error.field == field and words in str(error), str(error)


def test_inches_give_the_same():
    metric = evaluate(
        set_pairing, dict(bores="88.9 | 88.9254", parts="88.8492 | 88.8746", low="0.0254", high="0.1016")
    )
    inch = evaluate(
        set_pairing, dict(bores="3.5 | 3.501", parts="3.498 | 3.499", low="0.001", high="0.004"), "inch"
    )
    for output in ("tight", "loose"):
        assert inch[output] == pytest.approx(metric[output], abs=1e-10), output
