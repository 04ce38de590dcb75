"""A plastic strip: its scale, what it can and cannot tell, refusals."""

import itertools

import numpy as np
import pytest

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.reference.engine import engine
from calc.stations.crank.bearing_clearance import bearing_clearance
from calc.stations.crank.strip_clearance import strip_clearance
from tests.checks.formulas.crushed_strip import SCALE
from tests.checks.stations.crank.strip_clearance import CHECKS

MM = 1e-3
SECTION = 0.0707  # mm²
WIDE = " | ".join(f"{c}; {SECTION / c!r}" for c in (0.01, 0.02, 0.05, 0.1, 0.2, 0.3))


def of(clearance, **entries):
    """A strip that keeps its section, crushed to that clearance in the fitted shells, in mm."""
    return strip_clearance(scale=WIDE, widest=f"{SECTION / clearance!r} mm", **entries)


def test_the_check_is_what_numpy_interpolates():
    gaps, widths = np.array(SCALE).T
    (row,) = [check for check in CHECKS if check.kind == "library"]
    assert 1 / np.interp(1.57, widths[::-1], 1 / gaps[::-1]) == pytest.approx(row.expected, abs=row.tolerance)
    assert strip_clearance()["read"] / MM == pytest.approx(row.expected, abs=row.tolerance)


# by the sizes: rods 0.028 to 0.074 mm, worn 0.120; the crush opens the big end by 0.004
VERDICTS = {
    "right": (0.055, "pass", "Clearance right by the strip: 0.051 mm"),
    "right, by no more than its doubt": (0.0421, "pass", "Clearance right"),
    "near the least": (0.0419, "unsure", "A strip cannot tell: 0.038 mm, limit 0.028 mm"),
    "on the least": (0.032, "unsure", "A strip cannot tell: 0.028 mm"),
    "under it, by less than the doubt": (0.0221, "unsure", "A strip cannot tell: 0.018 mm"),
    "too tight": (0.0219, "fail", "Too tight: 0.018 mm, at least 0.028 mm"),
    "perhaps loose": (0.0690, "attention", "Perhaps loose for fresh parts: 0.065 mm, 0.074 mm at most"),
    "loose for fresh parts": (0.100, "attention", "Perhaps loose for fresh parts: 0.096 mm"),
    "near worn": (0.115, "unsure", "A strip cannot tell: 0.111 mm, limit 0.120 mm"),
    "worn": (0.135, "fail", "Too loose: 0.131 mm, 0.120 mm allowed"),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    clearance, state, words = VERDICTS[name]
    verdict = of(clearance).verdict
    assert verdict.state == state and verdict.headline.plain().startswith(words), verdict.headline.plain()


def test_a_main_bearing_is_held_to_its_own_limits():
    assert of(0.081, bearing="main").verdict.state == "pass"
    assert of(0.050, bearing="main").verdict.state == "unsure"


def test_taper_is_told_and_both_ends_are_judged():
    tapered = of(0.046, narrowest=f"{SECTION / 0.067!r} mm")
    assert tapered.verdict.state == "attention" and tapered.verdict.headline.plain().startswith(
        "Tapered: 0.021 mm"
    )
    assert tapered["taper"] / MM == pytest.approx(0.021, abs=1e-9)
    assert of(0.046, narrowest=f"{SECTION / 0.135!r} mm").verdict.state == "fail"


@pytest.mark.parametrize("sheet", ["TS-16", "RC-40"])
@pytest.mark.parametrize("kind", ["main", "rod"])
def test_at_the_ends_of_the_sheets_limits_a_strip_says_that_it_cannot_tell_and_between_that_it_is_right(
    sheet, kind
):
    """A strip is out by ± 0.01 mm, so right on a limit it cannot tell (common practice, no source): there a gauge decides.
    In the middle it can, on both sheets."""
    features = engine(sheet).features
    limits = features["crankcase.main_clearance" if kind == "main" else "rod.bearing_clearance"]
    opens = features.get("crankcase.main_crush_opens" if kind == "main" else "rod.crush_opens")
    u = opens.nominal if opens else 0.0
    for clearance, states in (
        (limits.low, ("unsure",)),
        (limits.high, ("attention",)),
        ((limits.low + limits.high) / 2, ("pass",)),
        (limits.low - 11e-6, ("fail",)),
        (limits.wear + 11e-6, ("fail",)),
    ):
        width = SECTION / ((clearance + u) / MM)
        found = evaluate(
            strip_clearance,
            dict(bearing=kind, scale=WIDE, widest=f"{width!r} mm"),
            standing=Standing(engine(sheet)),
        )
        assert found.verdict.state in states, (clearance, found.verdict.headline.plain())


def test_the_sheet_has_what_the_crush_opens_each_bearing_by():
    features = engine("TS-16").features
    for kind, id in (("main", "crankcase.main_crush_opens"), ("rod", "rod.crush_opens")):
        found = bearing_clearance(read=f"{kind}-apart")
        assert found["fitted"] - found["tight"] == pytest.approx(features[id].nominal, abs=0.6e-6)


REFUSALS = [
    ("widest", dict(widest="2.90 mm"), "give a width within the scale of a thinner strip."),
    ("widest", dict(widest="0.90 mm"), "give a width within the scale of a thicker strip."),
    ("narrowest", dict(narrowest="1.60 mm"), "give 1.57 mm or less."),
    ("scale.2.2", dict(scale="0.025; 2.83 | 0.020; 1.86"), "give the marks as they are printed."),
    ("scale.2.2", dict(scale="0.025; 1.86 | 0.038; 1.86"), "give the marks as they are printed."),
    ("rod_high", dict(rod_low="0.05 mm", rod_high="0.04 mm"), "give 0.050 mm or more."),
    ("scale", dict(scale="0.025; 2.83"), None),
]


@pytest.mark.parametrize("field, entries, words", REFUSALS)
def test_refusal(field, entries, words):
    with pytest.raises(Refused) as refused:
        strip_clearance(**entries)
    error = refused.value.errors[0]
    assert error.field.startswith(field) and (words is None or error.sentence().endswith(words)), (
        error.sentence()
    )


def test_the_order_of_the_marks_does_not_matter():
    rows = [f"{c}; {w}" for c, w in SCALE]
    for order in itertools.islice(itertools.permutations(rows), 0, 120, 17):
        assert strip_clearance(scale=" | ".join(order))["read"] == pytest.approx(
            strip_clearance()["read"], rel=1e-12
        )


def test_nothing_is_judged_without_a_limit():
    read = dict(scale="0.025; 2.83 | 0.076; 0.93", widest="1.57 mm")
    assert evaluate(strip_clearance, read, standing=Standing(None)).verdict.state == "unjudged"


def test_inches_give_the_same():
    metric = evaluate(strip_clearance, dict(scale="0.0254; 2.54 | 0.0762; 0.889", widest="1.524 mm"))
    inch = evaluate(strip_clearance, dict(scale="0.001; 0.1 | 0.003; 0.035", widest="0.06"), "inch")
    for output in metric.outputs:
        assert inch[output] == pytest.approx(metric[output], rel=1e-9, abs=1e-12), output
