"""One walk over every calculator: its declaration, its example, and whatever a reader may enter.

What comes out for entries within the accepted ranges is a finite result or a refusal that says which entries do not go together;
for anything else one sentence that names the input and what is accepted. Never a trace, never a number that is none.
"""

import builtins
import json
import math
import re
from dataclasses import replace
from xml.etree import ElementTree

import mpmath
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc.core.reading import in_si, read
from calc.core.result import Limit, Refused, Text
from calc.core.writing import figures, from_unit, to_unit
from calc.declare.calculator import evaluate
from calc.declare.choice import Choice
from calc.declare.declaration import AtOdds
from calc.declare.open_input import Open
from calc.declare.quantity import Quantity
from calc.page.figure import figure
from calc.page.formula import line_text
from calc.page.report import result_data
from calc.page.result import SOURCE_KINDS
from calc.reference import engine
from calc.reference.materials import MATERIALS
from calc.stations import index as stations
from tests.entries import entries, numbers, written
from tests.figures import faults
from tests.formula_reader import Reader, Unreadable
from tests.sentences import check_sentence

every_calculator = pytest.mark.parametrize("id", stations.ids())
SYSTEMS = ("metric", "inch")


# declarations


@every_calculator
def test_it_is_declared_in_full(id):
    c = stations.find(id)
    assert (
        re.fullmatch(r"[a-z][a-z0-9]*(-[a-z0-9]+)*", c.id)
        and c.id == id
        and c.function.__name__ == id.replace("-", "_")
    )
    assert c.station in stations.STATIONS and c.title[0].isupper() and not c.title.endswith(".")
    assert c.purpose.endswith(("?", ".")) and c.finds and c.function.__doc__
    assert c.sources and all(s.kind in SOURCE_KINDS and s.text.endswith(".") for s in c.sources)
    assert all(caution.text.endswith(".") for caution in c.cautions)
    labels = [i.label for i in c.inputs]
    assert len(set(labels)) == len(labels) and all(
        label and not label.endswith((".", ":")) for label in labels
    )
    assert len({o.label for o in c.outputs}) == len(c.outputs) and all(o.label for o in c.outputs)
    assert 1 <= sum(o.main for o in c.outputs) <= 3
    assert not [i.name for i in c.inputs if i.name in ("title", "result", "hint", "message")]
    for i in c.inputs:
        assert not i.hint or i.hint.endswith((".", "?")), i.name
        assert not getattr(i, "tool", "") or not i.tool.endswith("."), i.name
        assert not getattr(i, "doubt_of", "") or i.doubt_of in c.input, i.name
        assert (
            not getattr(i, "of", "") or i.of in MATERIALS or set(c.input[i.of].options) <= set(MATERIALS)
        ), i.name
        assert not getattr(i, "by", "") or i.by in c.input, i.name


def quantities(calculator):
    """Every single number that may be entered: inputs and cells, with the value of the example."""
    return [each for i in calculator.inputs for each in numbers(i)]


@every_calculator
def test_the_example_lies_within_the_ranges_and_the_ranges_within_each_other(id):
    for i, example in quantities(stations.find(id)):
        low, high = i.hard_range
        assert low < high, i.name
        if i.usual:
            assert low <= i.usual_range[0] < i.usual_range[1] <= high, i.name
        if example is not None:
            least, most = i.usual_range or i.hard_range
            assert least <= example <= most, i.name


@every_calculator
def test_the_example_is_what_its_field_shows(id):
    """What is shown in the field, typed again, is the example to the last digit (in metric units; inches are rounded)."""
    for i, example in quantities(stations.find(id)):
        if example is not None:
            assert read(i.form.bare(example, "metric"), i.form.kind, i.form.metric).value == example, i.name
            inch = read(i.form.bare(example, "inch"), i.form.kind, i.form.inch).value
            step = 10.0 ** -i.form.places("inch") * float(i.form.inch.factor)
            assert abs(inch - example) <= 0.51 * step, i.name


@every_calculator
def test_features_are_on_the_demo_sheet_and_the_example_is_a_good_part(id):
    for i in stations.find(id).inputs:
        if i.feature and isinstance(i, Quantity):
            feature = engine.demo().feature(i.feature_for({}))
            assert feature.form.kind.dims == i.form.kind.dims, i.name
            if not i.default:
                assert i.default_value == getattr(feature, i.limit or "nominal"), i.name


# results


def check_result(calculator, found, system):
    """A result that can be shown: finite, whole sentences, figures on their paper."""
    for n in (*found.outputs.values(), *found.working):
        assert math.isfinite(n.value), n
        assert n.form.write(n.value, system)
    assert all(math.isfinite(u) for u in found.doubts.values())
    told = result_data(found, system)
    json.dumps(told, allow_nan=False)
    for text in (found.verdict.headline, found.verdict.do, *(r.text for r in found.remarks)):
        sentence = text.plain(system)
        assert sentence and sentence == sentence.strip() and "\n" not in sentence and "{" not in sentence, (
            sentence
        )
    assert found.verdict.do.plain(system).endswith((".", "?")), found.verdict.do.plain(system)
    assert not found.verdict.headline.plain(system).endswith("."), found.verdict.headline.plain(system)
    assert words(found.verdict.headline) <= 8, found.verdict.headline.plain(system)
    for remark in found.remarks:
        assert remark.text.plain(system).endswith((".", "?")), remark.text.plain(system)
        assert not remark.field or remark.field.partition(".")[0] in calculator.input
    for table in found.tables:
        assert all(len(row) == len(table.columns) for row in table.rows), table.title
        assert not table.states or len(table.states) == len(table.rows), table.title
    for i, shown in enumerate(found.figures):
        for svg in ElementTree.fromstring(f"<x>{figure(shown, f'f{i}')}</x>").iter("svg"):
            assert not faults(svg), (shown.title, faults(svg))


def words(text: Text) -> int:
    """A quantity with its unit is one word."""
    return len(re.sub(r"\{\w+\}", "x", text.template).split())


@every_calculator
def test_the_example_is_in_order(id):
    c = stations.find(id)
    found = evaluate(c)
    assert found.verdict.state == "pass", found.verdict.headline.plain()
    assert not [r.text.plain() for r in found.remarks if r.field]
    assert any(t.value is not None and not t.entered for t in found.taken)
    for system in SYSTEMS:
        check_result(c, found, system)
        assert {k: float(n) for k, n in evaluate(c, {}, system).outputs.items()} == {
            k: float(n) for k, n in found.outputs.items()
        }


# the working, read back as a reader with a pocket calculator would


def check_working(found, system):
    """Each line, worked out again from the numbers that it shows, contains its value within what their rounding leaves open."""
    for n in found.working:
        named = []
        units = {}
        clash = collect(n.args[0], system, named, units)
        unit = n.form.unit(system)
        assert n.symbol, f"{n.label} has no symbol"
        line = line_text(n, system)
        assert "  " not in line and "()" not in line and " = = " not in line, line
        parts = line.split(" = ")
        if clash or len(parts) < 4:
            continue
        try:
            band = Reader(units, half=True, rounded={text.lstrip("−") for text, pure in named if pure}).read(
                parts[-2]
            )
        except Unreadable as error:
            raise AssertionError(f"{line}: {error}") from None
        band = mpmath.iv.mpf(band)
        slack = 1e-9 * max(abs(n.value), abs(float(unit.offset)), 1e-30)
        assert band.a - slack <= n.value <= band.b + slack, f"{line}: {n.value} is not in {band}"


def collect(n, system, named, units) -> bool:
    """Gather what an expression shows; True where one sign stands for two units (°F of a temperature and of a difference)."""
    clash = False
    if n.op in ("given", "step"):
        if n.form:
            unit = n.form.unit(system)
            named.append((n.text(system), not unit.symbol))
            shown = {unit.symbol: (unit.factor, unit.offset)} if unit.symbol else {}
            clash = any(units.setdefault(s, u) != u for s, u in shown.items())
        return clash
    if n.op in ("in", "of"):
        if n.op == "in":
            named.append((figures(n.value, 5), True))
        unit = n.unit
        if unit.symbol:
            clash = units.setdefault(unit.symbol, (unit.factor, unit.offset)) != (unit.factor, unit.offset)
    return any([clash, *(collect(a, system, named, units) for a in n.args)])


@every_calculator
def test_the_working_of_the_example_holds_when_it_is_worked_again_by_hand(id):
    for system in SYSTEMS:
        check_working(evaluate(stations.find(id), {}, system), system)


@every_calculator
def test_a_symbol_means_one_thing_in_a_working(id):
    found, seen = {}, set()
    stack = list(evaluate(stations.find(id)).working)
    while stack:
        n = stack.pop()
        if builtins.id(n) not in seen:
            seen.add(builtins.id(n))
            stack.extend(n.args)
            if n.op in ("given", "step") and n.symbol:
                found.setdefault(n.symbol, {}).setdefault(n.value, n.label)
    assert not {symbol: meanings for symbol, meanings in found.items() if len(meanings) > 1}


# sweeps


def check_refusal(calculator, refused, system, codes):
    for error in refused.errors:
        assert error.code in codes, f"{error.code}: {error.sentence(system)}"
        check_sentence(calculator, error.field, error.sentence(system))


OPEN = [
    "wrong-kind",
    "unknown-unit",
    "not-a-number",
]  # of an input of any kind: it and the choice beside it must agree


def has_open(calculator) -> bool:
    return any(isinstance(i, Open) for i in calculator.inputs)


@every_calculator
def test_whatever_is_entered_within_the_ranges_gives_a_result_or_says_what_does_not_go_together(id):
    c = stations.find(id)

    @settings(max_examples=max(40, settings.default.max_examples // 2))
    @given(entries(c), st.sampled_from(SYSTEMS))
    def sweep(asked, system):
        try:
            found = evaluate(c, asked, system)
        except Refused as refused:
            beside = any("±" in text for text in asked.values()) or any("." in name for name in asked)
            check_refusal(
                c,
                refused,
                system,
                {
                    "impossible",
                    *(["out-of-range", "twice", "empty", "too-few"] if beside else []),
                    *OPEN * has_open(c),
                },
            )
            return
        check_result(c, found, system)
        check_working(found, system)

    sweep()


@every_calculator
def test_one_step_outside_a_range_is_refused_and_its_end_is_not(id):
    c = stations.find(id)
    for i in c.inputs:
        if not isinstance(i, Quantity):
            continue
        for limit, outwards in zip(i.hard_range, (-math.inf, math.inf)):
            unit = i.form.metric
            assert i.take({"": written(limit, unit)}, "metric", {}).value is not None
            beyond = math.nextafter(limit, outwards) if abs(limit) > 1e-29 else math.copysign(1e-12, outwards)
            if from_unit(to_unit(beyond, unit), unit) != beyond or i.form.kind.name == "count":
                beyond = (
                    limit + math.copysign(max(abs(limit), 1e-6) * 1e-6, outwards)
                    if i.form.kind.name != "count"
                    else limit + math.copysign(1, outwards)
                )
            with pytest.raises(Refused) as refused:
                i.take({"": written(beyond, unit)}, "metric", {})
            assert [e.code for e in refused.value.errors] == ["out-of-range"]
            for system in SYSTEMS:
                check_sentence(c, refused.value.errors[0].field, refused.value.errors[0].sentence(system))


@every_calculator
def test_every_option_of_every_choice_gives_a_result_or_says_why_not(id):
    c = stations.find(id)
    for i in c.inputs:
        if isinstance(i, Choice):
            for option in i.options:
                try:
                    check_result(c, evaluate(c, {i.name: option}), "metric")
                except Refused as refused:
                    check_refusal(c, refused, "metric", {"impossible", *OPEN * has_open(c)})


def test_the_walk_covers_what_is_registered():
    assert len(stations.ids()) == len(set(stations.ids())) >= 4
    for name in stations.STATIONS:
        package = stations.station(name)
        assert package.TITLE and package.PURPOSE and package.CALCULATORS
    assert (
        in_si(
            "1 in",
            next(
                iter(
                    {
                        i.form.kind
                        for i, _ in quantities(stations.find("seat-fit"))
                        if i.form.kind.name == "length"
                    }
                )
            ),
        )
        == 0.0254
    )


@pytest.mark.parametrize(
    "entries, limits, words",
    [
        ({"ring_outside": "37.40 mm"}, (), "within all its limits"),
        ({}, (Limit("the ring", 1.0, low=2.0),), "outside of its limits of the ring"),
    ],
)
def test_a_verdict_that_is_at_odds_with_its_limits_is_told_and_not_shown(entries, limits, words):
    """By hand: a ring smaller than its pocket fails, the example passes; the limits say otherwise."""
    c = stations.find("seat-fit")
    spoilt = replace(c, function=lambda i: replace(c.function(i), limits=limits))
    with pytest.raises(AtOdds, match=re.escape(words)):
        evaluate(spoilt, entries)
