"""Finish that a feed leaves: what cannot be, what leaves no room for wear, and what no sum knows."""

from pathlib import Path

import pytest

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.stations.cutting.boring_finish import boring_finish
from scripts.new_calculator import left_to_replace

GOOD = dict(feed="0.08 mm", nose="0.4 mm", end_edge="10°", wanted="1.6 µm")


@pytest.mark.parametrize(
    "entries, state, words",
    [
        ({}, "pass", "Can be: the feed leaves Ra 0.514 µm"),
        (dict(feed="0.10 mm"), "attention", "Just: the feed alone leaves Ra 0.804 µm"),
        (dict(feed="0.15 mm"), "fail", "Cannot be: the feed leaves Ra 1.82 µm"),
        (dict(wanted="0.4 µm"), "fail", "Cannot be: the feed leaves Ra 0.51 µm"),
        (dict(feed="0.15 mm", nose="0.8 mm"), "attention", "Just: the feed alone leaves Ra 0.90 µm"),
    ],
)
def test_verdict(entries, state, words):
    verdict = boring_finish(**GOOD | entries).verdict
    assert (verdict.state, verdict.headline.plain()) == (state, words.replace("0.514", "0.51"))


def test_the_feed_that_is_advised_serves_when_it_is_typed_again():
    found = boring_finish(**GOOD | dict(feed="0.3 mm"))
    assert found.verdict.state == "fail"
    advised = found.verdict.do.plain().split()[1]
    assert boring_finish(**GOOD | dict(feed=f"{advised} mm")).verdict.state == "attention"


def test_an_end_edge_that_cuts_too_is_told():
    def told(**entries):
        return any("end edge cuts too" in r.text.plain() for r in boring_finish(**GOOD | entries).remarks)

    assert told(feed="0.3 mm", end_edge="5°") and not told()


@pytest.mark.parametrize(
    "entries, field, words",
    [
        (dict(nose="0"), "nose", "below 0.02"),
        (dict(feed="0.9 mm"), "feed", "more than twice the nose"),
        (dict(wanted="0"), "wanted", "below 0.01"),
        (dict(end_edge="90°"), "end_edge", "above 80"),
    ],
)
def test_refusals(entries, field, words):
    with pytest.raises(Refused) as refused:
        boring_finish(**GOOD | entries)
    (error,) = refused.value.errors
    assert error.field == field and words in str(error), str(error)


def test_inches_give_the_same():
    metric = evaluate(boring_finish, dict(feed="0.0762 mm", nose="0.79375 mm", wanted="1.6 µm"))
    inch = evaluate(boring_finish, dict(feed="0.003 in", nose="1/32 in", wanted="63 µin"), "inch")
    assert inch["mean"] == pytest.approx(metric["mean"], rel=1e-12)


def test_every_line_of_the_example_was_replaced():
    assert not [
        line
        for line in left_to_replace("cutting", "boring-finish", Path(__file__).parents[3])
        if "docs/" not in line
    ]
