"""What a reader's entries stand on: no verdict over a number that nobody read and that it does not name, and none that such a number could turn."""
import itertools
import random

import pytest

from calc import stations
from calc.calculator import _work, evaluate
from calc.engine import engine
from calc.inputs import Choice, Grid, Quantity
from calc.open_input import Open
from calc.result import Refused
from calc.standing import Standing, allowed

IDS = stations.ids()
SHEETS = {name: Standing(engine(name), "1 intake") for name in ("TS-16", "RC-40")}
WORKED_ON = {"big-end-resize": ("cuts.3",)}  # a rod at its least length has none to give to the cut that it comes for
NAMED = ("read", "job", "none")  # origins that need no word: the reader's own, and what does not count


def told(id, entries, standing, system="metric"):
    """The result, or None where the entries are refused."""
    try:
        return evaluate(stations.find(id), entries, system, standing)
    except Refused:
        return None


def alone(declared) -> dict:
    """An entry for one input, as its example has it."""
    if isinstance(declared, Grid):
        return {declared.cells[place].name: text for place, text in list(declared.default_texts.items())[:1]}
    if isinstance(declared, Choice):
        return {declared.name: declared.default}
    if isinstance(declared, Open):
        return {declared.name: declared.default}
    return {} if declared.default_value is None else {declared.name: f"{declared.form.bare(declared.default_value, 'metric')} {declared.form.metric.symbol}"}


def needed(calculator, standing) -> dict:
    """Entries for all that must be read there, of the example; for limits too that the sheet does not say."""
    entries = {}
    for _ in range(4):  # a choice may bring further inputs with it
        found = told(calculator.id, entries, standing)
        if found is None or found.verdict.state not in ("awaited", "unjudged") or not found.next:
            break
        for name in found.next:
            declared = calculator.input[name]
            more = {declared.cells[place].name: text for place, text in declared.default_texts.items()} if isinstance(declared, Grid) else alone(declared)
            entries |= more
    return entries


@pytest.mark.parametrize("sheet", [*SHEETS, None])
@pytest.mark.parametrize("id", IDS)
def test_a_single_entry_gives_no_verdict_over_numbers_that_nobody_read(id, sheet):
    calculator, standing = stations.find(id), SHEETS.get(sheet, Standing())
    for declared in calculator.inputs:
        found = told(id, alone(declared), standing)
        if found is None or found.verdict.state in ("awaited", "unjudged"):
            continue
        unnamed = [t.input.name for t in found.taken if t.origin.kind not in NAMED and t not in found.stand_ins and t not in found.assumed
                   and not (t.origin.kind == "sheet" and found.sheet) and not (isinstance(t.input, Choice) and t.origin.kind == "assumed")]
        assert found.verdict.state == "fail" or not unnamed, f"{declared.name} alone: {found.verdict.state}, over {unnamed}"


@pytest.mark.parametrize("sheet", SHEETS)
@pytest.mark.parametrize("id", IDS)
def test_nothing_of_another_engine_is_in_what_is_told(id, sheet):
    """Of each input that the sheet does not know, nothing is taken from the invented engine of the examples."""
    calculator, standing = stations.find(id), SHEETS[sheet]
    for t in evaluate(calculator, {}, standing=standing).taken:
        if t.origin.kind == "sheet" and isinstance(t.input, Quantity):
            feature = standing.sheet.features[t.input.feature_for({"valve": "intake"})]
            assert float(t.value) == getattr(feature, t.input.limit or "nominal")
        assert t.origin.kind != "example"


@pytest.mark.parametrize("sheet", SHEETS)
@pytest.mark.parametrize("id", IDS)
def test_what_stands_in_turns_no_verdict_anywhere_in_its_range(id, sheet):
    """The ends, the middles and two hundred places between, by brute force."""
    calculator, standing = stations.find(id), SHEETS[sheet]
    found = told(id, needed(calculator, standing), standing)
    if found is None or not found.stand_ins or found.verdict.state in ("awaited", "unjudged"):
        return
    values, spans = {t.input.name: t.value for t in found.taken}, found.stand_ins
    state = _work(calculator, values).verdict.state
    chance = random.Random(f"{id} {sheet}")
    corners = list(itertools.product(*((t.span[0], sum(t.span) / 2, t.span[1]) for t in spans)))
    places = chance.sample(corners, min(len(corners), 400)) + [[chance.uniform(*t.span) for t in spans] for _ in range(200)]
    for place in places:
        moved = {t.input.name: t.input.number(x) for t, x in zip(spans, place)}
        there = _work(calculator, values | moved)
        assert there.verdict.state == state, f"{state} becomes {there.verdict.state} with {moved}"


@pytest.mark.parametrize("sheet", SHEETS)
@pytest.mark.parametrize("kind", ["intake", "exhaust"])
@pytest.mark.parametrize("id", IDS)
def test_parts_at_the_ends_of_the_sheets_own_limits_are_in_order(id, sheet, kind):
    """Every corner of the limits as made of the sizes that a verdict is about: either it passes, or sheet or check is wrong."""
    calculator, standing = stations.find(id), Standing(SHEETS[sheet].sheet, f"1 {kind}")
    if kind == "exhaust" and not any(getattr(i, "which", False) for i in calculator.inputs):
        return
    entries = needed(calculator, standing)
    found = told(id, entries, standing)
    if found is None:
        return
    chosen = {"valve": kind}
    ends = {}
    for i in calculator.inputs:
        if isinstance(i, Quantity) and i.measured and i.name in entries and (feature := standing.feature(i, chosen)) and None not in (feature.low, feature.high):
            ends[i.name] = [feature.entry("low"), feature.entry("high")]
        if isinstance(i, Grid):
            for c, column in enumerate(i.columns):  # a set of parts alike: how far they may be apart is a limit of its own
                if (feature := standing.feature(i.cells[0, c], chosen, column.feature)) and None not in (feature.low, feature.high):
                    ends[f"{i.name}.{c + 1}"] = [feature.entry("low"), feature.entry("high")]
    if not ends or any(isinstance(i, Quantity) and i.measured and i.name in entries and i.feature and not standing.feature(i, chosen) for i in calculator.inputs):
        return  # sizes of the example's engine beside this one's would be of no engine
    for name in WORKED_ON.get(id, ()):
        ends.pop(name, None)
    corners = list(itertools.product(*ends.values()))

    def spread(name, text):
        base, _, column = name.partition(".")
        return {name: text} if not column else {cell: text for cell in entries if cell.startswith(f"{base}.") and cell.endswith(f".{column}")}
    for corner in random.Random(id).sample(corners, min(len(corners), 64)):
        there = told(id, entries | {cell: text for name, end in zip(ends, corner) for cell, text in spread(name, end).items()}, standing)
        assert there is not None, f"refused at {corner}"
        assert there.verdict.state in ("pass", "awaited", "unjudged"), f"{dict(zip(ends, corner))}: {there.verdict.headline.plain()}"


def test_a_worn_part_stands_in_down_to_its_wear_limit_and_a_finished_one_does_not():
    bore = engine("TS-16").feature("cylinder.bore")
    assert allowed(bore, "received") == (bore.low, bore.wear) and allowed(bore, "finished") == (bore.low, bore.high)
