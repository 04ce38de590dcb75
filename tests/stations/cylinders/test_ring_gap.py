"""Ring gaps against circles and roots; verdicts, refusals, limits of both sheets, and what must always be so."""

import math
import re
from itertools import product

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from scipy.optimize import brentq

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.reference.engine import engine
from calc.stations.cylinders.ring_gap import ring_gap
from tests.checks.stations.cylinders.ring_gap import IRON, WANTED

MM = 1e-3


def on(sheet, **entries):
    return evaluate(ring_gap, entries, standing=Standing(engine(sheet) if sheet else None))


def plain(found):
    return found.verdict.headline.plain()


def hot_gap(cold, bore=88.010, tz=170, tr=220, az=11e-6, ar=11.5e-6):
    """Ends of an arc as points on the grown circle: the angle that the ring leaves open, in mm along it."""
    radius = bore / 2 * (1 + az * (tz - 20))
    angle = (2 * math.pi * bore / 2 - cold) * (1 + ar * (tr - 20)) / radius
    return (2 * math.pi - angle) * radius


def test_checks_are_the_arc_and_its_roots():
    assert ring_gap(**IRON)["hot"] / MM == pytest.approx(hot_gap(0.38), abs=1e-9)
    assert ring_gap(**IRON)["closes"] / MM == pytest.approx(brentq(hot_gap, 0, 1), abs=1e-9)
    left = brentq(lambda c: hot_gap(c, 92.0, 180, 240, 11e-6, 12e-6) - 0.10, 0, 1)
    found = ring_gap(**WANTED)
    assert found["wanted"] / MM == pytest.approx(left, abs=1e-9)
    assert found["share"] * 1000 == pytest.approx(1000 * left / 92, abs=1e-7)


GOOD = "0.38; 1.984; 2.040 | 0.35; 1.984; 2.030 | 0.32; 3.984; 4.020"
VERDICTS = {
    "in order": (dict(), "pass", "Gaps right: 0.32 mm cold, 0.11 mm hot"),
    "butts": (dict(rings="0.15; 1.984; 2.040"), "fail", "Top ring butts when hot, by 0.06 mm"),
    "small": (dict(rings="0.27; 1.984; 2.040"), "attention", "Top ring's gap small: 0.27 mm, 0.30 mm wanted"),
    "worn": (dict(rings="0.60; 1.984; 2.040"), "attention", "Top ring's gap wide: 0.60 mm, 0.45 mm as made"),
    "worn out": (
        dict(rings="1.10; 1.984; 2.040"),
        "fail",
        "Top ring's gap too wide: 1.10 mm, 0.95 mm allowed",
    ),
    "loose": (
        dict(rings="0.38; 1.97; 2.060"),
        "attention",
        "Top ring a little loose: 0.090 mm, 0.072 mm as made",
    ),
    "groove worn": (
        dict(rings="0.38; 1.97; 2.10"),
        "fail",
        "Top ring loose in its groove: 0.130 mm, 0.120 mm allowed",
    ),
    "tight": (
        dict(rings="0.38; 1.99; 2.01"),
        "attention",
        "Top ring tight in its groove: 0.020 mm, 0.040 mm wanted",
    ),
    "read in the worn part": (
        dict(rings="0.40; 1.984; 2.040", bore="88.090", smallest="88.010"),
        "fail",
        "Top ring butts when hot, by 0.06 mm",
    ),
    "the worst of three": (
        dict(rings="0.38; 1.984; 2.040 | 0.35; 1.984; 2.030 | 0.15; 3.984; 4.020"),
        "fail",
        "Oil ring butts when hot, by 0.06 mm",
    ),
    "an aluminium barrel": (
        dict(bore_expansion="21 µm/(m·K)"),
        "pass",
        "Gaps right: 0.32 mm cold, 0.50 mm hot",
    ),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    entries, state, headline = VERDICTS[name]
    found = on("TS-16", **dict(rings=GOOD, bore="88.010") | entries)
    assert (found.verdict.state, plain(found)) == (state, headline)


def test_the_ends_of_the_sheets_own_limits_are_in_order():
    sheet = engine("TS-16").features
    for bore, gap, ring, groove in product(("low", "high"), repeat=4):
        rows = [
            "; ".join(
                f"{getattr(sheet[f'piston.{what}{end}'], which)!r} m"
                for what, which in (("ring_gap", gap), ("ring_width", ring), ("groove", groove))
            )
            for end in ("", "_second", "_oil")
        ]
        for more in (0.0, 0.5e-3, 1.0e-3):
            found = on(
                "TS-16", rings=" | ".join(rows), bore=f"{getattr(sheet['cylinder.bore'], bore) + more!r} m"
            )
            assert found.verdict.state == "pass", (rows, plain(found))


def test_limits_are_those_of_the_engine_in_hand():
    inch = dict(rings="0.015 in", bore="3.7504 in")
    assert on("RC-40", **inch).verdict.state == "unjudged"
    assert on("", **inch).verdict.state == "unjudged"
    assert on("RC-40", **inch | dict(rings="0.002 in")).verdict.state == "fail", "butting needs no sheet"
    assert on("RC-40", **inch, top_low="0.012 in", top_high="0.018 in").verdict.state == "pass"
    part = on(
        "", **inch | dict(rings="0.015 in; 0.0780 in; 0.0800 in"), top_low="0.012 in", top_high="0.018 in"
    )
    assert part.verdict.state == "unjudged", "nobody knows the side clearance"


@pytest.mark.parametrize("system", ["metric", "inch"])
@pytest.mark.parametrize("gap", ["0.05", "0.12", "0.17"])
def test_the_gap_that_is_told_serves_when_it_is_read(system, gap):
    told = on("TS-16", rings=f"{gap}; 1.984; 2.040", bore="88.010").verdict
    size, unit = re.search(r"gap to ([\d.]+) (mm|in)", told.do.plain(system)).groups()
    again = on("TS-16", rings=f"{size} {unit}; 1.984; 2.040", bore="88.010")
    assert told.state == "fail" and again.verdict.state == "pass", plain(again)


def test_a_doubt_that_reaches_a_limit_leaves_it_open():
    assert on("TS-16", rings="0.31 ± 0.02 mm", bore="88.010").verdict.state == "unsure"
    assert on("TS-16", rings="0.38 ± 0.02 mm", bore="88.010").verdict.state == "pass"


@given(st.floats(0.3, 0.9), st.floats(0, 0.15), st.floats(87, 93))
def test_the_ring_is_as_long_everywhere(gap, wear, bore):
    """Read at the worn top or at the bottom, the gap at the bottom comes out alike."""
    worn = gap + math.pi * wear
    assume(worn < 5)
    below = ring_gap(rings=f"{gap!r}", bore=f"{bore!r}", smallest="", largest=f"{bore + wear!r}")
    above = ring_gap(rings=f"{worn!r}", bore=f"{bore + wear!r}", smallest=f"{bore!r}", largest="")
    for name in ("gap", "hot", "top", "wanted"):
        assert above[name] == pytest.approx(below[name], abs=1e-9), name


@pytest.mark.parametrize(
    "entries, field, words",
    [
        (dict(rings="0.38; 2.05; 2.04"), "rings.1.2", "narrower than its groove"),
        (dict(rings="0.10", bore="88.1", smallest="88.0"), "rings.1.1", "would meet there cold"),
        (dict(bore="88.0", largest="91.0"), "largest", "more than 0.3 mm apart"),
        (dict(bore="880"), "bore", "above 200"),
        (dict(rings="38"), "rings.1.1", "above 5"),
    ],
)
def test_refusals(entries, field, words):
    with pytest.raises(Refused) as refused:
        ring_gap(**entries)
    error = refused.value.errors[0]
    assert error.field == field and words in str(error), str(error)


def test_inches_give_the_same():
    metric = evaluate(ring_gap, dict(rings="0.381; 1.9812; 2.032", bore="88.9", largest="88.9762"))
    inch = evaluate(ring_gap, dict(rings="0.015; 0.078; 0.080", bore="3.5", largest="3.503"), "inch")
    for output in metric.outputs:
        assert inch[output] == pytest.approx(metric[output], rel=1e-9, abs=1e-11), output
