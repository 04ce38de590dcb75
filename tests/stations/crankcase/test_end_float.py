"""End float with three shims: every set by exact fractions, verdicts, refusals, and what is told when no set serves."""

import re
from fractions import Fraction
from itertools import combinations, combinations_with_replacement

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.reference import engine
from calc.stations.crankcase.end_float import end_float
from tests.checks.stations.crankcase.end_float import SOLD

MM = 1e-3


def by_fractions(room, shims, low, high, again):
    """Best distance from the middle and the number of unlike sets within the limits, sizes as texts in mm."""
    sizes = [Fraction(s) for s in shims]
    sets = {tuple(sorted(c)) for c in (combinations_with_replacement if again else combinations)(sizes, 3)}
    floats = [Fraction(room) - sum(c) for c in sets]
    low, high = Fraction(low), Fraction(high)
    return min(abs(f - (low + high) / 2) for f in floats), sum(low <= f <= high for f in floats)


VERDICTS = {
    "example": ("pass", "Fit 0.240 mm, 0.240 mm and 0.360 mm", {}),
    "on the lower limit": (
        "pass",
        "Fit 0.300 mm, 0.300 mm and 0.310 mm",
        dict(shims="0.30; 0.30; 0.31", float_read="0.50 mm", trial="0.24; 0.24", high="0.5 mm"),
    ),
    "loose": (
        "fail",
        "Too much float: 0.160 mm with the thickest three",
        dict(shims="0.30; 0.28; 0.30", float_read="0.56 mm"),
    ),
    "tight": (
        "fail",
        "Too little float: 0.020 mm with the thinnest three",
        dict(shims="0.24; 0.24; 0.24; 0.38", float_read="0.26 mm"),
    ),
    "gap": (
        "fail",
        "None of these sets fits: 0.140 mm at best",
        dict(shims="0.24; 0.26; 0.30; 0.50", float_read="0.46 mm"),
    ),
    "read again, right": ("pass", "End float right: 0.130 mm", dict(after="0.130 mm")),
    "read again, little": ("fail", "Too little float: 0.069 mm", dict(after="0.069 mm")),
    "read again, much": ("fail", "Too much float: 0.131 mm", dict(after="0.131 mm")),
    "little warm": (
        "attention",
        "Little float warm: 0.015 mm",
        dict(after="0.07 mm", case_temperature="150 °C", crank_temperature="100 °C"),
    ),
    "binds warm": ("fail", "Binds warm: −0.003 mm left", dict(after="0.07 mm", width="64.2 mm")),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    state, words, entries = VERDICTS[name]
    verdict = end_float(**entries).verdict
    assert (verdict.state, verdict.headline.plain()) == (state, words), verdict.do.plain()


@given(st.lists(st.integers(200, 400), min_size=3, max_size=9), st.integers(30, 900), st.booleans())
def test_every_set_is_tried(shims, read, again):
    texts = [f"{s / 1000:.3f}" for s in shims]
    found = end_float(
        float_read=f"{read / 1000:.3f} mm",
        trial="0.24; 0.24",
        stock="sold" if again else "drawer",
        shims="; ".join(texts),
        low="0.07 mm",
        high="0.13 mm",
    )
    off, fitting = by_fractions(f"{480 + read}/1000", texts, "0.07", "0.13", again)
    assert found["sets"] == fitting
    assert abs(found["float_then"] / MM - 0.1) == pytest.approx(float(off), abs=1e-9)
    assert (found.verdict.state == "fail") == (fitting == 0), found.verdict.headline.plain()


def test_both_trial_shims_stay_where_a_set_with_them_serves_as_well():
    found = end_float(**SOLD)
    assert [found[k] / MM for k in ("first", "second", "third")] == pytest.approx([0.24, 0.24, 0.36])
    other = end_float(**SOLD | dict(trial="0.26; 0.22"))
    assert 0.26 == pytest.approx(other["second"] / MM) or 0.26 == pytest.approx(other["first"] / MM)


@pytest.mark.parametrize("system", ["metric", "inch"])
@pytest.mark.parametrize("read", ["0.46 mm", "0.4613 mm", "0.4589 mm"])
def test_the_shim_that_is_advised_makes_a_set(system, read):
    drawer = dict(shims="0.24; 0.26; 0.30; 0.50", float_read=read)
    verdict = end_float(**drawer).verdict
    assert verdict.state == "fail"
    ends = re.search(r"A shim of (\S+ \S+) to (\S+ \S+) makes", verdict.do.plain(system)).groups()
    for end in ends:
        with_it = end_float(**drawer | dict(shims=f"{drawer['shims']}; {end}")).verdict
        assert with_it.state == "pass", (end, with_it.headline.plain())


def test_what_must_come_off_brings_the_thinnest_three_within():
    tight = dict(shims="0.24; 0.24; 0.24; 0.38", float_read="0.26 mm")
    do = end_float(**tight).verdict.do.plain()
    cut = float(re.search(r"([\d.]+) mm less in all", do)[1])
    assert cut == pytest.approx(0.05)
    assert end_float(**tight | dict(float_read=f"{0.26 + cut} mm")).verdict.state == "pass"


REFUSALS = [
    ("float_read", dict(float_read="0"), None),
    ("float_read", dict(float_read="-0.05 mm"), None),
    ("shims", dict(shims="0.24; 0.30"), "Shims to choose from: only 2 rows are filled; give at least 3."),
    ("low", dict(low="0.13 mm"), "End float, least: is 0.130 mm, not below the most, 0.130 mm; give less."),
    ("shims.1.1", dict(shims="0; 0.24; 0.24"), None),
    ("case_temperature", dict(case_temperature="400 °C"), None),
]


@pytest.mark.parametrize("field, entries, sentence", REFUSALS)
def test_refusal(field, entries, sentence):
    with pytest.raises(Refused) as refused:
        end_float(**entries)
    (error,) = refused.value.errors
    assert error.field == field and (sentence is None or error.sentence() == sentence), error.sentence()


READ = dict(float_read="0.46 mm", trial="0.24; 0.24", shims="0.24; 0.24; 0.26; 0.30; 0.34; 0.36")


@pytest.mark.parametrize("name, factor", [("TS-16", 1.0), ("RC-40", 1.0)])
def test_the_limits_are_those_of_the_engine(name, factor):
    sheet = engine.engine(name)
    float_ = sheet.features["crank.end_float"]
    for after, state in (
        (float_.low, "pass"),
        (float_.high, "pass"),
        (float_.low - 1e-6, "fail"),
        (float_.high + 1e-6, "fail"),
    ):
        entries = READ | dict(after=f"{after * factor!r} m")
        verdict = evaluate(end_float, entries, standing=Standing(sheet)).verdict
        assert verdict.state == state, (name, after, verdict.headline.plain())


def test_without_limits_nothing_is_judged():
    assert evaluate(end_float, READ, standing=Standing(None)).verdict.state == "unjudged"


def test_nothing_is_said_of_a_float_that_nobody_read():
    for missing in READ:
        entries = {name: text for name, text in READ.items() if name != missing}
        assert evaluate(end_float, entries, standing=Standing(engine.demo())).verdict.state == "awaited"


def test_a_doubt_that_reaches_the_limit_leaves_it_open():
    assert end_float(after="0.125 ± 0.010 mm").verdict.state == "unsure"
    assert end_float(after="0.100 ± 0.010 mm").verdict.state == "pass"
    assert end_float(float_read="0.487 ± 0.010 mm", shims="0.24; 0.24; 0.36").verdict.state == "unsure"


def test_inches_give_the_same():
    metric = evaluate(
        end_float,
        dict(float_read="0.4572 mm", trial="0.254; 0.254", shims="0.254; 0.2794; 0.3048; 0.3302; 0.3556"),
    )
    inch = evaluate(
        end_float,
        dict(float_read="0.018", trial="0.010; 0.010", shims="0.010; 0.011; 0.012; 0.013; 0.014"),
        "inch",
    )
    for output in metric.outputs:
        assert inch[output] == pytest.approx(metric[output], rel=1e-9, abs=1e-12), output


@given(st.integers(20, 150), st.integers(20, 150))
def test_a_warmer_saddle_takes_more_of_the_float(a, b):
    cool, warm = (end_float(case_temperature=f"{t} °C") for t in sorted((a, b)))
    assert warm["warm"] <= cool["warm"] and warm["float_then"] == cool["float_then"]
