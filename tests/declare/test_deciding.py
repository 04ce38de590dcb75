"""What a verdict hangs on: the limit that failed, or of those that the headline speaks of the nearest."""

import pytest

from calc.core.kinds import FORCE, LENGTH
from calc.core.result import Limit, Verdict, as_text, say
from calc.core.working import Number, constant, form
from calc.declare.calculator import evaluate
from calc.declare.deciding import deciding, spare
from calc.declare.standing import Standing
from calc.reference.engine import demo
from calc.stations.index import find, ids

SIZE, LOAD = form(LENGTH, 3), form(FORCE, 0)


def length(mm: float) -> Number:
    return constant("", "", SIZE, mm / 1000)


def judged(state: str, headline, *limits: Limit) -> Limit | None:
    return deciding(
        Verdict(state, headline if not isinstance(headline, str) else as_text(headline), as_text("")), limits
    )


GRIP = Limit("the grip", length(0.042), low=length(0.015))
NEARER = Limit("the wall", length(1.02), low=length(1.0))
SHORT = Limit("the land", length(0.2), low=length(0.3))
LOOK = Limit("the room", length(0.1), low=length(0.4), level="attention")


def test_of_two_that_are_kept_the_nearer_decides():
    assert judged("pass", "Holds", GRIP, NEARER).words == "the wall"


def test_what_the_headline_speaks_of_goes_before_what_is_nearer():
    assert judged("pass", say("Holds: {d}", d=GRIP.number), GRIP, NEARER).words == "the grip"
    assert (
        judged("unsure", say("Only so sure that {words} is right", words="the grip"), GRIP, NEARER).words
        == "the grip"
    )


def test_what_failed_decides_whatever_else_is_near_or_named():
    assert judged("fail", say("{d}", d=GRIP.number), GRIP, LOOK, SHORT).words == "the land"
    assert judged("attention", "Look", SHORT, LOOK, GRIP).words == "the room"


def test_nothing_decides_where_there_is_no_verdict_or_no_bound():
    assert judged("awaited", "bore", GRIP) is None and judged("unjudged", "bore", GRIP) is None
    assert judged("pass", "Fine", Limit("the wear", length(1.0))) is None and judged("pass", "Fine") is None


def test_a_number_that_misses_its_limit_does_not_read_as_the_limit():
    found = judged("fail", "Short", Limit("the land", length(0.29996), low=length(0.3)))
    assert found.number.text() == "0.29996 mm" and found.low.text() == "0.300 mm"


@pytest.mark.parametrize(
    "limit, share",
    [
        (Limit("", length(9), high=length(10)), 0.1),
        (Limit("", length(11), high=length(10)), -1 / 11),
        (Limit("", length(10), low=length(5)), 0.5),
        (Limit("", length(3), low=length(1), high=length(5)), 1.0),  # in the middle
        (Limit("", length(4.5), low=length(1), high=length(5)), 0.25),
        (Limit("", length(2), low=0), 1.0),
        (Limit("", length(-2), low=0), -1.0),
    ],
)
def test_what_is_to_spare_is_a_share_of_what_the_number_lies_within(limit, share):
    assert spare(limit) == pytest.approx(share, rel=1e-12)


@pytest.mark.parametrize("id", ids())
def test_a_verdict_that_stands_on_limits_names_one_that_can_be_written_in_both_systems(id):
    calculator = find(id)
    found = evaluate(calculator)
    limits = calculator.work({t.input.name: t.value for t in found.taken}).limits
    assert (found.decides is not None) >= any((limit.low, limit.high) != (None, None) for limit in limits)
    if found.decides:
        for system in ("metric", "inch"):
            bounds = [b for b in (found.decides.low, found.decides.high) if b is not None]
            assert bounds and all(n.text(system) for n in (found.decides.number, *bounds))
        assert spare(found.decides) >= 0 or found.verdict.state != "pass"


def test_a_size_past_its_own_limits_decides_where_the_calculator_has_no_worse_to_say():
    read = {"valve": "intake", "pocket_bore": "37.530 mm", "ring_outside": "37.635 mm"}
    found = evaluate(find("seat-fit"), read, standing=Standing(demo()))
    bore = demo().feature("head.seat_pocket_intake")
    assert found.verdict.state == "fail" and found.decides.words == "Pocket bore"
    assert (float(found.decides.low), float(found.decides.high)) == (bore.low, bore.high)


def test_a_reading_stands_beside_both_of_its_limits():
    found = evaluate(
        find("reading-verdict"), {"reading": "55.010 mm", "low": "54.985 mm", "high": "55 mm"}
    ).decides
    assert (found.number.text(), found.low.text(), found.high.text()) == (
        "55.010 mm",
        "54.985 mm",
        "55.000 mm",
    )
