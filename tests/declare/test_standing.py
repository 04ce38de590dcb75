"""What a reader's entries stand on: no verdict over a number that nobody read and that it does not name, and none that such a number could turn."""

import itertools
import json
import random

import pytest

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.choice import Choice
from calc.declare.grid import Grid
from calc.declare.open_input import Open
from calc.declare.quantity import Quantity
from calc.declare.standing import Standing, allowed
from calc.declare.taken import Origin
from calc.page.verdict import verdict
from calc.reference.engine import engine
from calc.stations import index as stations
from tests.test_command import here

IDS = stations.ids()
SHEETS = {name: Standing(engine(name), "1 intake") for name in ("TS-16", "RC-40")}
# a rod at its least length, and a deck at its least, have none to give to the cut that they come for
WORKED_ON = {"big-end-resize": ("cuts.3",), "deck-cut": ("deck",)}
# the example's bores are 7 mm smaller than this engine's, and the verdict says so
OF_ANOTHER_ENGINE = {("cylinder-bore", "RC-40")}
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
    return (
        {}
        if declared.default_value is None
        else {
            declared.name: f"{declared.form.bare(declared.default_value, 'metric')} {declared.form.metric.symbol}"
        }
    )


def needed(calculator, standing) -> dict:
    """Entries for all that must be read there, of the example; for limits too that the sheet does not say."""
    entries = {}
    for _ in range(4):  # a choice may bring further inputs with it
        found = told(calculator.id, entries, standing)
        if found is None or found.verdict.state not in ("awaited", "unjudged") or not found.next:
            break
        for name in found.next:
            declared = calculator.input[name]
            more = (
                {declared.cells[place].name: text for place, text in declared.default_texts.items()}
                if isinstance(declared, Grid)
                else alone(declared)
            )
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
        unnamed = [
            t.input.name
            for t in found.taken
            if t.origin.kind not in NAMED
            and t not in found.stand_ins
            and t not in found.assumed
            and not (t.origin.kind == "sheet" and found.sheet)
            and not (isinstance(t.input, Choice) and t.origin.kind == "assumed")
        ]
        assert found.verdict.state == "fail" or not unnamed, (
            f"{declared.name} alone: {found.verdict.state}, over {unnamed}"
        )


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
    state = calculator.work(values).verdict.state
    chance = random.Random(f"{id} {sheet}")
    corners = list(itertools.product(*((t.span[0], sum(t.span) / 2, t.span[1]) for t in spans)))
    places = chance.sample(corners, min(len(corners), 400)) + [
        [chance.uniform(*t.span) for t in spans] for _ in range(200)
    ]
    for place in places:
        moved = {t.input.name: t.input.number(x) for t, x in zip(spans, place)}
        there = calculator.work(values | moved)
        assert there.verdict.state == state, f"{state} becomes {there.verdict.state} with {moved}"


@pytest.mark.parametrize("sheet", SHEETS)
@pytest.mark.parametrize("kind", ["intake", "exhaust"])
@pytest.mark.parametrize("id", IDS)
def test_parts_at_the_ends_of_the_sheets_own_limits_are_in_order(id, sheet, kind):
    """Every corner of the limits as made of the sizes that a verdict is about: either it passes, or sheet or check is wrong."""
    calculator, standing = stations.find(id), Standing(SHEETS[sheet].sheet, f"1 {kind}")
    if kind == "exhaust" and not any(getattr(i, "which", False) for i in calculator.inputs):
        return
    if (id, sheet) in OF_ANOTHER_ENGINE:
        return
    entries = needed(calculator, standing)
    found = told(id, entries, standing)
    if found is None:
        return
    chosen = {"valve": kind}
    ends = {}
    for i in calculator.inputs:
        if (
            isinstance(i, Quantity)
            and i.measured
            and i.name in entries
            and (feature := standing.feature(i, chosen))
            and None not in (feature.low, feature.high)
        ):
            ends[i.name] = [feature.entry("low"), feature.entry("high")]
        if isinstance(i, Grid):
            for c, column in enumerate(
                i.columns
            ):  # a set of parts alike: how far they may be apart is a limit of its own
                if (feature := standing.feature(i.cells[0, c], chosen, column.feature)) and None not in (
                    feature.low,
                    feature.high,
                ):
                    ends[f"{i.name}.{c + 1}"] = [feature.entry("low"), feature.entry("high")]
    if not ends or any(
        isinstance(i, Quantity)
        and i.measured
        and i.name in entries
        and i.feature
        and not standing.feature(i, chosen)
        for i in calculator.inputs
    ):
        return  # sizes of the example's engine beside this one's would be of no engine
    for name in WORKED_ON.get(id, ()):
        ends.pop(name, None)
    corners = list(itertools.product(*ends.values()))

    def spread(name, text):
        base, _, column = name.partition(".")
        return (
            {name: text}
            if not column
            else {
                cell: text for cell in entries if cell.startswith(f"{base}.") and cell.endswith(f".{column}")
            }
        )

    for corner in random.Random(id).sample(corners, min(len(corners), 64)):
        there = told(
            id,
            entries
            | {cell: text for name, end in zip(ends, corner) for cell, text in spread(name, end).items()},
            standing,
        )
        assert there is not None, f"refused at {corner}"
        assert there.verdict.state in ("pass", "awaited", "unjudged"), (
            f"{dict(zip(ends, corner))}: {there.verdict.headline.plain()}"
        )


def test_a_worn_part_stands_in_down_to_its_wear_limit_and_a_finished_one_does_not():
    bore = engine("TS-16").feature("cylinder.bore")
    assert allowed(bore, "received") == (bore.low, bore.wear) and allowed(bore, "finished") == (
        bore.low,
        bore.high,
    )


# What the walk over all calculators does not show

TS16 = SHEETS["TS-16"]


def test_a_size_past_its_own_limit_is_never_in_order_however_well_it_fits():
    fits = {
        "pocket_bore": "37.480 mm",
        "ring_outside": "37.585 mm",
        "valve": "intake",
    }  # each 0.010 mm under its least; the grip is the nominal one
    assert evaluate(stations.find("seat-fit"), fits).verdict.state == "pass"
    found = told("seat-fit", fits, TS16)
    assert (
        found.verdict.state == "fail" and "under the lower limit of TS-16" in found.verdict.headline.plain()
    )
    assert "Apart from that: Holds" in found.verdict.do.plain()


def test_what_the_job_read_as_received_is_held_to_wear_and_as_finished_to_what_was_made():
    bore = {
        "guide_bore": "8.040 mm",
        "stem": "7.960 mm",
        "valve": "intake",
    }  # as made up to 8.015, worn from 8.060

    def of(stage):
        standing = Standing(TS16.sheet, "1 intake", {"guide_bore": Origin("job", "MK", stage)})
        (own,) = [own for own in told("guide-fit", bore, standing).own if own.input.name == "guide_bore"]
        return own.held.state

    assert of("received") == "pass" and of("finished") == "fail"


def test_where_no_sheet_knows_the_limit_nothing_is_judged_and_what_was_read_is_told():
    found = told(
        "guide-fit",
        needed(stations.find("guide-fit"), Standing(None, "1 intake")),
        Standing(None, "1 intake"),
    )
    assert found.verdict.state in ("pass", "attention")  # all limits typed: they are the reader's
    missing = {
        name: text
        for name, text in needed(stations.find("guide-fit"), Standing(None, "1 intake")).items()
        if name != "worn_clearance"
    }
    found = told("guide-fit", missing, Standing(None, "1 intake"))
    assert (
        found.verdict.state == "unjudged"
        and found.next == ("worn_clearance",)
        and "clearance" in found.outputs
    )


def test_a_limit_that_nobody_knows_mends_no_fail():
    entries = needed(stations.find("guide-fit"), Standing(None, "1 exhaust")) | {
        "stem": "7.999 mm",
        "guide_bore": "8.000 mm",
    }
    del entries["worn_clearance"]  # whatever it is: a hot stem this tight seizes
    found = told("guide-fit", entries, Standing(None, "1 exhaust"))
    assert found.verdict.state == "fail", found.verdict.headline.plain()


def test_the_part_in_hand_chooses_sizes_materials_and_limits():
    sizes = {
        "stem": "7.945 mm",
        "guide_bore": "7.990 mm",
    }  # an exhaust stem this tight seizes hot; an intake's does not
    states = {
        kind: told("guide-fit", sizes, Standing(TS16.sheet, f"1 {kind}")) for kind in ("intake", "exhaust")
    }
    assert states["intake"]["clearance_hot"] > states["exhaust"]["clearance_hot"]
    assert [t.value for t in states["exhaust"].taken if t.input.name == "valve"] == ["exhaust"]
    assert told("guide-fit", sizes, Standing(TS16.sheet)).next == ("valve",)


def test_a_job_of_another_engine_is_judged_by_its_own_wear_limit():
    entries = {"guide_bore": "0.3452 in", "stem": "0.3406 in"}  # 0.0046 in apart, of at most 0.0045 in
    found = told("guide-fit", entries, SHEETS["RC-40"])
    assert found.verdict.state == "fail" and found.sheet.name == "RC-40" and found.sheet.invented
    assert told("guide-fit", entries | {"guide_bore": "0.3450 in"}, SHEETS["RC-40"]).verdict.state != "fail"


def test_what_can_turn_the_verdict_is_the_one_to_be_read_next():
    """A bore of the case that the sheet leaves wide open: in the least of them the body would stick."""
    from dataclasses import replace

    sheet, entries = TS16.sheet, needed(stations.find("lifter-bore"), TS16)
    bore = replace(sheet.features["crankcase.lifter_bore"], low=20.96e-3)
    wide = Standing(replace(sheet, features=sheet.features | {bore.id: bore}), "1 intake")
    assert told("lifter-bore", entries, TS16).verdict.state == "pass"
    found = told("lifter-bore", entries, wide)
    assert (
        found.verdict.state == "awaited"
        and found.next == ("lifter_hole",)
        and "lifter bore in the case" in found.verdict.headline.plain()
    )


def test_an_output_moves_by_as_much_as_what_stands_in_can_move_it():
    found = told("seat-fit", {"pocket_bore": "37.505 mm", "ring_outside": "37.610 mm"}, TS16)
    values = {t.input.name: t.value for t in found.taken}
    forces = []
    for ends in itertools.product(*(t.span for t in found.stand_ins)):
        answer = found.calculator.work(
            values | {t.input.name: t.input.number(x) for t, x in zip(found.stand_ins, ends)}
        )
        forces += [float(n) for n in answer.numbers if n.key == "pressure"]
    assert found.doubts["pressure"] >= 0.8 * (max(forces) - min(forces)) / 2


@pytest.mark.parametrize(
    "id, entry",
    [
        ("big-end-resize", {"bores.1.1": "56.5 mm"}),
        ("stack-up", {"chain.1.1": "101.70 mm"}),
        ("stack-up", {}),
        ("rod-align", {}),
        ("stem-height", {}),
    ],
)
def test_nothing_of_the_example_is_told_while_a_grid_is_not_whole(id, entry):
    """Its other rows are the example's: what they make together with one that was read is nobody's."""
    found = told(id, entry, TS16)
    assert found.verdict.state in ("awaited", "fail") and not found.outputs, {
        key: n.text() for key, n in found.outputs.items()
    }


@pytest.mark.parametrize(
    "id", [id for id in IDS if any(isinstance(i, Grid) for i in stations.find(id).inputs)]
)
def test_a_cell_alone_is_worked_or_asks_for_the_rest(id):
    """Wherever it stands, beyond the example's rows too: there nothing stands in for the rest of its row. A grid that the sheet fills
    asks for nothing."""
    for grid in (i for i in stations.find(id).inputs if isinstance(i, Grid) and i.least and not i.feature):
        for cell in grid.cells.values():
            low, high = cell.hard_range
            found = told(id, {cell.name: cell.form.bare(max(low, min(1e-3, high)), "metric")}, TS16)
            assert found is None or grid.name in found.next or found.verdict.state == "fail" or found.outputs


def test_what_the_sheet_alone_makes_is_no_headline():
    """A guide in the head cannot be measured outside: its grip is as made, and stands below."""
    found = told("guide-fit", {"stem": "7.94 mm", "guide_bore": "8.01 mm"}, TS16)
    html = verdict(found, "a")
    assert "The larger of the two clearances" in html and "interference" in found.outputs
    assert not any(found.outputs["interference"].text(system) in html for system in ("metric", "inch"))


@pytest.mark.parametrize("id", IDS)
def test_the_command_takes_nothing_from_the_example_unless_it_is_told_to(id):
    """Each entry alone: what is missing is named and the status is 2, or every value says where it comes from."""
    for declared in stations.find(id).inputs:
        for name, text in alone(declared).items():
            ran = here("run", id, f"{name}={text}", "--engine", "TS-16", "--place", "1 intake", "--json")
            told = json.loads(ran.stdout)
            if ran.returncode == 2:
                assert all(
                    error["code"] in ("unread", "no-limit", "impossible") for error in told["errors"]
                ), told
            else:
                assert not told["example"] and "example" not in {
                    i["origin"]["from"] for i in told["inputs"].values()
                }, (name, told["verdict"])
