"""What misses a limit does not read as right: where a verdict turns, the numbers in its sentences read apart.

Against the floats themselves: two numbers that differ by more than arithmetic leaves must not be written alike.
"""

import re
from decimal import Decimal
from itertools import combinations

import pytest

from calc.core.apart import tell_apart
from calc.core.conformance import DUST
from calc.core.kinds import LENGTH
from calc.core.result import Limit, Refused, Table, Text, note, say, warning
from calc.core.working import Form, Number, constant, form, steps_behind
from calc.declare.calculator import Answer, Inputs, Output, Outputs, answer, calculator, evaluate, given
from calc.stations import index as stations
from calc.stations.heads.valve_spring.remarks import ONE
from calc.stations.shared.forms import COARSE
from tests.entries import is_count, numbers, written

MM = form(LENGTH, 2)


def told(said):
    for value in said.values.values():
        yield from (
            told(value)
            if isinstance(value, Text)
            else [value] * (isinstance(value, Number) and isinstance(value.form, Form))
        )


def size(text):
    """What a person takes from it: 0.050 mm is 0.05 mm."""
    number = re.match(r"−?[0-9.]+", text)
    return (Decimal(number[0].replace("−", "-")), text[number.end() :]) if number else text


def alike(found):
    """Pairs of numbers that differ and read the same, in a verdict that is not in order or in a warning."""
    verdict = (
        [*told(found.verdict.headline), *told(found.verdict.do)]
        if found.verdict.state in ("fail", "attention")
        else []
    )
    for said in (verdict, *(list(told(r.text)) for r in found.remarks if r.level == "warning")):
        for a, b in combinations(said, 2):
            if (
                a.dims == b.dims
                and abs(float(a) - float(b)) > DUST * max(1.0, abs(float(a)))
                and any(size(a.text(s)) == size(b.text(s)) for s in ("metric", "inch"))
            ):
                yield a.text(), float(a), float(b)


def asked(c, entries):
    try:
        return evaluate(c, entries)
    except Refused:
        return None


def turns(c, declared, example):
    """Entries of one number, the others the example's, on both sides of where the verdict turns: by bisection, nearer than a size is written."""
    low, high = declared.hard_range
    unit = declared.form.metric

    def verdict(x):
        found = asked(c, {declared.name: written(x, unit)})
        return found and (found.verdict.state, found.verdict.headline.template)

    scan = sorted(
        {
            low,
            high,
            *(declared.usual_range or ()),
            *(x for x in (0.98 * example, example, 1.02 * example) if low <= x <= high),
        }
    )
    seen = [(x, verdict(x)) for x in scan]
    for (near, said), (far, other) in zip(seen, seen[1:]):
        if said != other and {(v or ("",))[0] for v in (said, other)} & {"fail", "attention"}:
            for _ in range(18):
                middle = (near + far) / 2
                near, far = (middle, far) if verdict(middle) == said else (near, middle)
            yield from (
                x
                for end, way in ((near, -1), (far, 1))
                for share in (0, 0.3)
                if low
                <= (x := end + way * share * 10.0**-declared.form.decimals * float(unit.factor))
                <= high
            )


@pytest.mark.parametrize("id", stations.ids())
def test_where_the_verdict_turns_no_two_numbers_read_alike(id):
    c = stations.find(id)
    for i in c.inputs:
        for declared, example in [
            pair for pair in numbers(i) if pair[1] is not None and not is_count(pair[0])
        ][:2]:  # cells of a grid are alike
            for x in turns(c, declared, example):
                entry = {declared.name: written(x, declared.form.metric)}
                if found := asked(c, entry):
                    assert not list(alike(found)), (
                        entry,
                        found.verdict.headline.plain(),
                        found.verdict.do.plain(),
                    )


# by hand


class Out(Outputs):
    left = Output("Left", "c", MM, main=True)


WANTED = constant("c_w", "Wanted", MM, 1e-3)


class In(Inputs):
    height: Number = given("Height", "h", form(LENGTH, 3), hard="0 to 50 mm", example="31 mm")
    state: Number = given("State", "s", MM, hard="0 to 9 mm", example="0 mm")


@calculator("bound", "Bound", In, Out, purpose="...")
def bound(i: In) -> Answer:
    left = Out.left(i.height - constant("L", "Bound at", MM, 30e-3))
    short = WANTED - left
    if left >= WANTED:
        return answer(left, verdict=("pass", say("{left} left", left=left), "Fit it."))
    return answer(
        left,
        verdict=(
            "attention",
            say("Near bound: {left} left", left=left),
            say(
                "{wanted} were wanted. Take out {short}.",
                wanted=WANTED,
                short=constant("", "", MM, float(short)),
            ),
        ),
        remarks=(note("{left} of {wanted}.", left=left, wanted=WANTED),),
        tables=lambda: (Table("All", ("Left", "Wanted"), ((left, say("{wanted}", wanted=WANTED)),)),),
    )


def test_attention_is_told_apart_wherever_its_numbers_stand():
    """By hand: 30.998 − 30 is 0.998 mm, which two decimals write as the 1.00 mm that were wanted."""
    found = evaluate(bound, {"height": "30.998"})
    assert (
        found.verdict.headline.plain() == "Near bound: 0.998 mm left"
        and found.verdict.do.plain() == "1.00 mm were wanted. Take out 0.002 mm."
    )
    assert (
        found.outputs["left"].text() == "0.998 mm" and found.remarks[0].text.plain() == "0.998 mm of 1.00 mm."
    )
    assert found.tables[0].rows[0][0].text() == "0.998 mm" and [n.text() for n in found.working] == [
        "0.998 mm"
    ]
    assert (
        evaluate(bound, {"height": "30.9"}).verdict.headline.plain() == "Near bound: 0.90 mm left"
    )  # no digits where none are needed


def test_of_two_limits_it_is_told_from_the_nearer():
    left = Out.left(constant("h", "Height", MM, 50.04e-6) + 0)
    two = (Limit("it", left, high=50e-6), Limit("it", left, high=30e-6, level="attention"))
    for limits in (two, two[::-1]):
        assert (
            tell_apart(
                answer(left, verdict=("fail", say("{left}", left=left), "Do."), limits=limits)
            ).verdict.headline.plain()
            == "0.05004 mm"
        )


def test_what_is_in_order_keeps_its_digits():
    assert evaluate(bound, {"height": "31.002"}).verdict.headline.plain() == "1.00 mm left"


def test_numbers_of_the_calculator_stay_as_they_are():
    """A constant of a module once written finer would be so in every later answer."""
    before = ONE.form, WANTED.form
    for height in ("30.998", "30.9999", "30.99999"):
        evaluate(bound, {"height": height})
    evaluate(stations.find("valve-spring"), {"shim": "0.6300000010099849 mm"})
    evaluate(stations.find("valve-spring"), {"loads.1.1": "231.99999999976762 N"})
    assert (ONE.form, WANTED.form) == before == (COARSE, MM)


def test_the_answer_given_is_left_alone_and_the_working_is_carried_along():
    left = Out.left(constant("h", "Height", MM, 30.998e-3) - constant("L", "Bound at", MM, 30e-3))
    twice = Out.left(left * 2)
    given_answer = answer(
        left,
        twice,
        verdict=(
            "fail",
            say("{left} left", left=left),
            say("{all} of {wanted}.", all=say("Only {left}", left=left), wanted=WANTED),
        ),
        limits=(Limit("what is left", left, low=WANTED),),
        remarks=(warning("{left} left.", left=left),),
    )
    new = tell_apart(given_answer)
    assert left.form == MM and given_answer.verdict.headline.plain() == "1.00 mm left"
    assert (
        new.verdict.headline.plain() == "0.998 mm left"
        and new.verdict.do.plain() == "Only 0.998 mm of 1.00 mm."
        and new.remarks[0].text.plain() == "0.998 mm left."
    )
    assert [n.text() for n in new.numbers] == ["0.998 mm", "2.00 mm"] and new.limits[0].number is new.numbers[
        0
    ]
    assert [n.text() for n in steps_behind(new.numbers)] == [
        "0.998 mm",
        "2.00 mm",
    ]  # each step once: what follows from a number follows from its copy
    assert [float(n) for n in new.numbers] == [float(n) for n in given_answer.numbers]
    passing = answer(left, verdict=("pass", say("{left}", left=left), "Do."))
    assert tell_apart(passing) is passing
