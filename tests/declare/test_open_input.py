"""An input of any kind: what is taken for what, and how its example stands in the form."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.core.kinds import ANGLE, FORCE, LENGTH, MASS, RATIO
from calc.core.reading import read
from calc.core.result import Refused
from calc.core.writing import stated
from calc.declare.calculator import (
    Answer,
    Inputs,
    Number,
    Output,
    Outputs,
    answer,
    any_of,
    calculator,
    choice,
    evaluate,
)
from calc.page.entries import entry_fields
from calc.page.report import declaration_data, declaration_text, result_data

KINDS = (LENGTH, RATIO, ANGLE, MASS, FORCE)


class Out(Outputs):
    it = Output("It", "x", None, main=True)


class ThingIn(Inputs):
    value: Number = any_of("Value", "q", KINDS, by="kind", bare=LENGTH, hint="Anything.", example="24 mm")
    kind: str = choice("Kind", {"unit": "by its unit", "mass": "a mass", "force": "a force"}, default="unit")


@calculator("thing", "Thing", ThingIn, Out, purpose="...")
def thing(i: ThingIn) -> Answer:
    return answer(Out.it(i.value, form=i.value.form), verdict=("pass", i.value.form.kind.name, "Do."))


class StrictIn(Inputs):
    value: Number = any_of("Value", "q", KINDS, example="2.5 kg")


@calculator("strict", "Strict", StrictIn, Out, purpose="...")
def strict(i: StrictIn) -> Answer:
    return answer(Out.it(i.value, form=i.value.form), verdict=("pass", i.value.form.kind.name, "Do."))


def taken(entries, system="metric", of=thing):
    found = evaluate(of, entries, system)
    return (
        found.verdict.headline.plain(),
        found.outputs["it"].text(system),
        [r.text.plain() for r in found.remarks],
    )


@pytest.mark.parametrize(
    "text, kind, shown",
    [
        ("37.5 mm", "length", "37.5 mm"),
        ("1:10", "ratio", "0.1"),
        ("12 %", "ratio", "12 %"),
        ("5° 30'", "angle", "5.5°"),
        ("35 lbf", "force", "35 lbf"),
        ("1 31/64 in", "length", "1.484375 in"),
        ("24", "length", "24 mm"),
    ],
)
def test_the_unit_says_what_it_is(text, kind, shown):
    assert taken({"value": text}) == (kind, shown, [])
    if text != "24":
        assert taken({"value": text}, "inch") == (kind, shown, [])


def test_a_bare_number_is_of_the_bare_kind_in_the_readers_unit():
    assert taken({"value": "24"}, "inch") == ("length", "24 in", [])


def test_another_meaning_is_told_and_a_choice_settles_it():
    assert taken({"value": "35 lb"}) == ("mass", "35 lb", ["Took lb as a mass; it may be a force too."])
    assert taken({"value": "35 lb", "kind": "mass"}) == ("mass", "35 lb", [])
    assert taken({"value": "35 lb", "kind": "force"}) == (
        "force",
        "35 lbf",
        ["Took lb as pounds-force (lbf)."],
    )
    assert taken({"value": "35", "kind": "mass"}, "inch")[:2] == ("mass", "35 oz")


@pytest.mark.parametrize(
    "of, entries, words",
    [
        (
            thing,
            {"value": "3 bar"},
            "bar is a pressure, and a length belongs here; give a length, ratio, angle, mass or force, such as 37.48 mm",
        ),
        (thing, {"value": ""}, "nothing was given"),
        (thing, {"value": "3 mm 4"}, "more than one number"),
        (thing, {"value": "24 mm", "kind": "mass"}, "a mass belongs here"),
        (
            strict,
            {"value": "24"},
            "names no unit that is known here; give a number with its unit, such as 37.48 mm",
        ),
        (strict, {"value": "3 bar"}, "names no unit that is known here"),
    ],
)
def test_refusals_name_the_field_and_what_is_accepted(of, entries, words):
    with pytest.raises(Refused) as refused:
        evaluate(of, entries)
    (error,) = refused.value.errors
    assert (
        error.field == "value"
        and str(error).startswith("Value: ")
        and words in str(error)
        and str(error).endswith(".")
    )


def test_the_example_stands_in_the_form_with_its_unit_in_either_system():
    declared = thing.input["value"]
    assert (declared.default_text("metric"), declared.default_text("inch")) == ("24 mm", "0.9449 in")
    assert strict.input["value"].default_text("inch") == "2.5 kg"  # typed in a unit of its own: left as it is
    html = entry_fields(thing, evaluate(thing).taken, "a", {"value": "25 mm"})
    assert (
        'data-metric="24 mm"' in html
        and 'data-inch="0.9449 in"' in html
        and 'data-preset="25 mm"' in html
        and "data-unit-metric" not in html.split("<select")[0]
    )
    assert 'inputmode="decimal"' not in html  # letters are typed here


def test_report():
    shown = declaration_data(thing)
    assert shown["inputs"]["value"] == {
        "label": "Value",
        "symbol": "q",
        "hint": "Anything.",
        "feature": None,
        "type": "open",
        "kinds": [k.name for k in KINDS],
        "default": "24 mm",
        "assumed": None,
        "limit": None,
        "stands_in": False,
        "when": None,
    }
    assert shown["outputs"]["it"] == {
        "label": "It",
        "symbol": "x",
        "kind": "any",
        "unit": None,
        "unit_inch": None,
        "decimals": None,
        "main": True,
    }
    assert "value" in declaration_text(thing)
    assert result_data(evaluate(thing, {"value": "5°"}))["outputs"]["it"]["text"] == "5°"


def test_a_doubt_comes_along():
    found = evaluate(thing, {"value": "24 mm ± 0.01"})
    assert found.doubts["it"] == pytest.approx(1e-5)


@given(
    st.sampled_from(KINDS).flatmap(
        lambda kind: st.tuples(st.just(kind), st.sampled_from([u for u in kind.units if u.symbol]))
    ),
    st.floats(0.01, 999).map(lambda x: round(x, 2)),
)
def test_what_is_written_with_its_symbol_is_taken_in_some_kind_that_has_it(pair, number):
    kind, unit = pair
    text = stated(float(unit.factor) * number, unit, 2)
    name, _, remarks = taken({"value": text})
    assert name == kind.name or any(kind.name in r for r in remarks)
    if name == kind.name:
        assert evaluate(thing, {"value": text})["it"] == pytest.approx(read(text, kind).value, rel=1e-12)
