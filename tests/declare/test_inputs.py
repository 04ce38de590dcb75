"""What inputs take and how they refuse: empty ones, warm readings, grids with gaps, and entries that a page makes."""

import json

import pytest
from hypothesis import given as tried
from hypothesis import strategies as st

from calc.core.kinds import LENGTH, RATIO, TEMPERATURE, TEMPERATURE_DIFFERENCE
from calc.core.result import Refused
from calc.core.working import form
from calc.declare.calculator import (
    Answer,
    Inputs,
    Number,
    Output,
    Outputs,
    Rows,
    answer,
    calculator,
    choice,
    column,
    evaluate,
    given,
    grid,
    measured,
)
from calc.declare.quantity import with_unit
from calc.page.live import answer as page_answer
from calc.page.report import declaration_data, declaration_text, result_data
from calc.reference.materials import MATERIALS
from calc.stations.threads.engagement import engagement

SIZE, TEMP = form(LENGTH, 3), form(TEMPERATURE, 0)


class Sum(Outputs):
    total = Output("Total", "Σ", SIZE, main=True)


def sum_of(*numbers):
    numbers = [n for n in numbers if n is not None]
    return Sum.total(sum(numbers) + 0 * numbers[0])


DONE = ("pass", "Done", "Go on.")


class WarmIn(Inputs):
    bore: Number = measured(
        "Bore", "D", SIZE, tool="a bore gauge", hard="10 to 100 mm", of="metal", example="50 mm"
    )
    pin: Number = measured(
        "Pin", "d", SIZE, tool="a micrometer", hard="10 to 100 mm", of="forged-steel", example="40 mm"
    )
    metal: str = choice("Metal", {id: m.name for id, m in MATERIALS.items()}, default="al-si-t6")


@calculator("warm", "Warm", WarmIn, Sum, purpose="...")
def warm(i: WarmIn) -> Answer:
    return answer(Sum.total(i.bore - i.pin), verdict=DONE)


class SpareIn(Inputs):
    size: Number = given("Size", "x", SIZE, hard="0 to 100 mm", example="10 mm")
    low: Number | None = given("Lower limit", "L", SIZE, hard="0 to 100 mm", usual="5 to 50 mm")
    high: Number | None = given("Upper limit", "H", SIZE, hard="0 to 100 mm", example="20 mm")
    wall: Number | None = measured("Wall", "w", SIZE, tool="a micrometer", hard="1 to 9 mm", of="grey-iron")


@calculator("spare", "Spare", SpareIn, Sum, purpose="...")
def spare(i: SpareIn) -> Answer:
    return answer(sum_of(i.size, i.low, i.high, i.wall), verdict=DONE)


class RowsIn(Inputs):
    sizes: Rows = grid(
        "Sizes",
        ("top", "middle", "foot"),
        (
            column("A", "a", SIZE, hard="0 to 100 mm"),
            column("B", "b", SIZE, hard="-5 to 100 mm", usual="0 to 50 mm", optional=True),
            column("C", "c", SIZE, hard="0 to 100 mm"),
        ),
        least=1,
        tool="a micrometer",
        example="1; 2; 3 | 4; ; 6",
    )


@calculator("rows", "Rows", RowsIn, Sum, purpose="...")
def rows(i: RowsIn) -> Answer:
    return answer(sum_of(*(n for row in i.sizes if row for n in row)), verdict=DONE)


def refused(calculator, system="metric", **entries):
    with pytest.raises(Refused) as caught:
        evaluate(calculator, entries, system)
    return {error.field: str(error) for error in caught.value.errors}


def total(calculator, entries=None, system="metric"):
    return evaluate(calculator, entries or {}, system)["total"] * 1000


# entries that may be left out


def test_an_optional_entry_may_be_empty_by_itself_or_by_hand():
    assert total(spare) == pytest.approx(30)
    assert total(spare, {"low": "5", "high": " "}) == pytest.approx(15)
    assert total(spare, {"low": "0.5", "high": ""}, "inch") == pytest.approx(22.7)
    taken = {t.input.name: t for t in evaluate(spare, {"high": ""}).taken}
    assert (
        taken["high"].value is None
        and taken["high"].entered
        and taken["low"].value is None
        and not taken["low"].entered
    )


def test_what_is_not_optional_may_not_be_empty():
    assert refused(spare, size="") == {
        "size": "Size: nothing was given; give a length such as 37.48 mm, 1.4756 in or 1 31/64 in."
    }


def test_an_optional_entry_is_checked_like_any_other():
    assert refused(spare, low="200")["low"].startswith("Lower limit: 200.000 mm is above 100.000 mm")
    assert refused(spare, low="wide")["low"].startswith('Lower limit: "wide" is not a number')
    (remark,) = evaluate(spare, {"low": "60"}).remarks
    assert "look at it again before you trust" in remark.text.plain()  # it is no reading


def test_the_temperature_of_what_was_not_read_is_nothing():
    assert total(spare, {"wall.part": "40"}) == pytest.approx(30)
    assert 34.998 < total(spare, {"wall": "5", "wall.part": "40"}) < 35  # 5 mm of iron, 20 K warm


def test_an_empty_entry_is_told_as_such():
    data = result_data(evaluate(spare))
    assert data["inputs"]["low"]["value"] is None and data["inputs"]["high"]["text"] == "20.000 mm"
    told = declaration_data(spare)["inputs"]
    assert told["low"]["optional"] and told["low"]["default"] is None and not told["size"]["optional"]
    assert "may be left out" in declaration_text(spare)


# warm readings; ISO 1: L·(1 + α_g·(t_g − 20))/(1 + α_p·(t_p − 20))


def test_a_warm_part_is_brought_to_20_degrees():
    """50 mm of Al–Si at 35 °C with a steel gauge at 20 °C is about 16 µm large (handbook α 21 to 22·10⁻⁶/K, from memory)."""
    assert 50 - 40 - total(warm, {"bore.part": "35"}) == pytest.approx(0.016, abs=0.0005)
    alpha = 21.5e-6 / 1.04 * (1 + 5e-4 * 15)
    assert total(warm, {"bore.part": "35"}) == pytest.approx(50 / (1 + alpha * 15) - 40, abs=1e-9)


def test_a_warm_gauge_reads_small_and_equal_metals_at_equal_warmth_cancel():
    assert total(warm, {"bore.gauge": "30"}) == pytest.approx(50 * (1 + 11.5e-5) - 40, abs=1e-9)
    steel = MATERIALS["forged-steel"].mean_alpha(303.15)
    assert total(warm, {"pin.part": "30", "pin.gauge": "30"}) == pytest.approx(
        50 - 40 * (1 + 11.5e-5) / (1 + steel * 10), abs=1e-9
    )


def test_the_metal_that_is_chosen_counts_wherever_the_choice_stands():
    magnesium, iron = (
        total(warm, {"bore.part": "40", "metal": "mg-az91"}),
        total(warm, {"bore.part": "40", "metal": "grey-iron"}),
    )
    assert magnesium < iron < 10


def test_temperatures_are_read_in_the_readers_unit():
    assert total(warm, {"bore.part": "95", "bore": "50 mm", "pin": "40 mm"}, "inch") == pytest.approx(
        total(warm, {"bore.part": "35"}), abs=1e-9
    )
    assert total(warm, {"bore.part": "95 °F"}) == pytest.approx(total(warm, {"bore.part": "35 °C"}), abs=1e-9)
    assert total(warm, {"bore.part": " ", "bore.gauge": ""}) == pytest.approx(10)


def test_what_was_read_stands_in_the_working():
    lines = [n.label for n in evaluate(warm, {"bore.part": "35"}).working]
    assert "Bore at 20 °C" in lines and not any("20 °C" in n.label for n in evaluate(warm).working)


@pytest.mark.parametrize(
    "entries, field, words",
    [
        (
            {"bore.part": "200"},
            "bore.part",
            "Bore: part temperature 200 °C is no temperature to measure at; give −60 °C to 150 °C.",
        ),
        (
            {"bore.gauge": "-80"},
            "bore.gauge",
            "Bore: gauge temperature −80 °C is no temperature to measure at",
        ),
        ({"bore.part": "warm"}, "bore.part", 'Bore: part temperature: "warm" is not a number'),
        (
            {"bore.part": "5 mm"},
            "bore.part",
            "Bore: part temperature: mm is a length, and a temperature belongs here",
        ),
        ({"bore.room": "20"}, "bore.room", "is not an input of warm"),
        ({"metal.part": "20"}, "metal.part", "is not an input of warm"),
    ],
)
def test_a_temperature_is_refused_by_the_name_of_its_reading(entries, field, words):
    sentences = refused(warm, **entries)
    assert list(sentences) == [field] and words in sentences[field]


@tried(st.integers(10, 100), st.integers(-60, 150), st.integers(-60, 150), st.sampled_from(sorted(MATERIALS)))
def test_a_warm_reading_warmed_again_is_what_was_read(bore, part, gauge, metal):
    entries = {
        "bore": f"{bore} mm",
        "bore.part": f"{part} °C",
        "bore.gauge": f"{gauge} °C",
        "metal": metal,
        "pin": "10 mm",
    }
    try:
        at_20 = total(warm, entries) + 10
    except Refused:
        assert bore in (10, 100)  # brought out of the range that is accepted
        return
    warmed = at_20 * (1 + MATERIALS[metal].strain_at(part + 273.15)) / (1 + 11.5e-6 * (gauge - 20))
    assert warmed == pytest.approx(bore, rel=1e-12)


# grids with gaps


def test_cells_of_an_optional_column_may_be_empty():
    assert total(rows) == pytest.approx(16)
    (value,) = (t.value for t in evaluate(rows).taken)
    assert [[n and float(n) for n in row] if row else None for row in value] == [
        [0.001, 0.002, 0.003],
        [0.004, None, 0.006],
        None,
    ]
    assert result_data(evaluate(rows))["inputs"]["sizes"]["rows"][1][1] is None


def test_a_zero_is_not_an_empty_cell():
    assert total(rows, {"sizes": "0; 0; 0"}) == 0
    assert (
        result_data(evaluate(rows, {"sizes": "0; 0; 0"}))["inputs"]["sizes"]["rows"][0][1]["text"]
        == "0.000 mm"
    )


@pytest.mark.parametrize(
    "text, expected",
    [
        ("1; 2; 3", 6),
        ("1;;3", 4),
        ("1\t2\t3\r\n4\t\t6\r\n", 16),
        ("\n1;2;3", 6),
        ("1;2;3;|4;5;6;;|", 21),
        ("1 mm; 0.1 in; 3|", 6.54),
        ("1,5; 2; 3", 6.5),
        (" 1 ; 2 ; 3 | | ", 6),
    ],
)
def test_texts_as_they_are_pasted(text, expected):
    assert total(rows, {"sizes": text}) == pytest.approx(expected)


@pytest.mark.parametrize(
    "entries, field, words",
    [
        (
            {"sizes": ";2;3"},
            "sizes.1.1",
            "Sizes, top, A: is empty; give a length, or leave the whole row empty.",
        ),
        ({"sizes": "1;2"}, "sizes.1.3", "Sizes, top, C: is empty"),
        ({"sizes.3.2": "5"}, "sizes.3.1", "Sizes, foot, A: is empty"),
        ({"sizes": ""}, "sizes", "Sizes: no row is filled; give at least 1."),
        ({"sizes": "1;2;3;4"}, "sizes", "Sizes: has 1 rows of up to 4; give 1 to 3 rows of 3."),
        (
            {"sizes": "1;2;3|1;2;3|1;2;3|1;2;3"},
            "sizes",
            "Sizes: has 4 rows of up to 3; give 1 to 3 rows of 3.",
        ),
        ({"sizes.2.2": "-6"}, "sizes.2.2", "Sizes, middle, B: −6.000 mm is below −5.000 mm"),
        ({"sizes.2.2": "5 kg"}, "sizes.2.2", "Sizes, middle, B: kg is a mass, and a length belongs here"),
    ],
)
def test_a_bad_cell_is_named(entries, field, words):
    sentences = refused(rows, **entries)
    assert list(sentences) == [field] and sentences[field].startswith(words), sentences


def test_every_bad_cell_is_told_at_once():
    assert set(refused(rows, sizes="x;2;3|4;y;6")) == {"sizes.1.1", "sizes.2.2"}


def test_cells_emptied_one_by_one_leave_the_row_out():
    assert total(rows, {"sizes.1.1": "", "sizes.1.2": "", "sizes.1.3": ""}) == pytest.approx(10)
    assert "sizes.1.1" in refused(rows, **{"sizes.1.1": ""})


def test_a_cell_outside_the_usual_is_named():
    (remark,) = evaluate(rows, {"sizes.1.2": "60"}).remarks
    assert (
        remark.text.plain().startswith("Sizes, top, B 60.000 mm is outside the usual")
        and remark.field == "sizes.1.2"
    )


# what a page enters by itself means the same in either unit system


@pytest.mark.parametrize(
    "text, shape, stated",
    [
        ("37.5", SIZE, "37.5 mm"),
        ("37.5 mm", SIZE, "37.5 mm"),
        ("1 31/64 in", SIZE, "1 31/64 in"),
        ("1 1/2", SIZE, "1 1/2"),
        ("", SIZE, ""),
        ("0", SIZE, "0"),
        ("25", TEMP, "25 °C"),
        ("77 °F", TEMP, "77 °F"),
        ("5", form(TEMPERATURE_DIFFERENCE, 0), "5 K"),
        ("0.3", form(RATIO, 2), "0.3"),
        ("5 ± 0.1", SIZE, "5 ± 0.1 mm"),
    ],
)
def test_a_preset_names_its_unit(text, shape, stated):
    assert with_unit(text, shape) == stated


def test_presets_of_a_grid_speak_of_every_cell_or_of_one():
    declared = rows.input["sizes"]
    whole = declared.preset({"sizes": "7; 8; 9"})
    assert (
        whole[0, 1] == "8" and whole[1, 0] == "" and len(whole) == 9
    )  # the example's second row is not to come back
    assert declared.preset({"sizes.2.1": "5", "sizes_b.1.1": "3"}) == {(1, 0): "5"}
    assert declared.preset({"sizes": "7;8;9", "sizes.1.2": "1"})[0, 1] == "1"


@pytest.mark.parametrize("text", ["M8×1.25", "m8 × 1.25", "M8 x 1.25", "M8X1.25", "M8×1.25 coarse"])
def test_a_thread_is_the_same_with_either_cross(text):
    assert engagement(size=text).taken[0].value == "M8x1.25"


@pytest.mark.parametrize(
    "text, first", [("M8", "M8x1.25, M8x1"), ("m10", "M10x1.5"), ("1/4", "1/4-20, 1/4-28")]
)
def test_a_thread_begun_is_told_on(text, first):
    """The coarse pitch first, and no M18 for an M8."""
    with pytest.raises(Refused) as refused:
        engagement(size=text)
    assert f"such as {first}" in str(refused.value.errors[0])


# A number read off the other kind of tool


class WornIn(Inputs):
    bore: Number = measured(
        "Bore",
        "D",
        SIZE,
        tool="a bore gauge",
        hard="10 to 100 mm",
        usual="30 to 50 mm",
        of="forged-steel",
        example="40 mm",
    )
    heat: Number = given("Heat", "T", TEMP, hard="-40 to 350 °C", usual="150 to 210 °C", example="180 °C")
    shims: Rows = grid(
        "Shims",
        ("1", "2"),
        (column("Shim", "s", SIZE, hard="0 to 60 mm", usual="30 to 50 mm"),),
        tool="a micrometer",
        example="40 mm | 41 mm",
    )


@calculator("worn", "Worn", WornIn, Sum, purpose="...")
def worn(i: WornIn) -> Answer:
    return answer(Sum.total(i.bore + sum(shim for (shim,) in i.shims) + 0 * i.bore), verdict=DONE)


@pytest.mark.parametrize(
    "name, typed, system, suggestion",
    [
        ("bore", "1.4756", "metric", "1.4756 in"),
        ("bore", "37.48", "inch", "37.48 mm"),
        ("bore", " 1,4756 ", "metric", "1,4756 in"),
        ("bore", "1.4756 ± 0.0002", "metric", "1.4756 ± 0.0002 in"),
        ("heat", "380", "metric", "380 °F"),
        ("shims.2.1", "37.48", "inch", "37.48 mm"),
        ("bore", "1.4756 mm", "metric", ""),
        ("bore", "0.3", "metric", ""),
        ("bore", "0.6", "metric", ""),
        ("bore", "500 in", "metric", ""),
        ("bore", "200", "inch", ""),  # in the other unit it is not usual either
    ],
)
def test_a_bare_number_that_is_refused_and_usual_in_the_other_unit_is_offered_in_it(
    name, typed, system, suggestion
):
    with pytest.raises(Refused) as refused:
        evaluate(worn, {name: typed}, system)
    (error,) = refused.value.errors
    assert error.code == "out-of-range" and error.suggestion == suggestion
    assert error.sentence(system).endswith(f", or {suggestion} if that was meant.") == bool(suggestion)
    if suggestion:
        again = evaluate(worn, {name: error.suggestion}, system)  # typed, it is taken and usual
        assert not [r for r in again.remarks if r.level == "warning"]


@pytest.mark.parametrize(
    "name, typed, system, suggestion",
    [
        ("shims.1.1", "1.4756", "metric", "1.4756 in"),
        ("heat", "340", "metric", "340 °F"),
        ("heat", "340 °C", "metric", ""),
        ("shims.1.1", "2", "metric", ""),
        ("bore", "60", "metric", ""),
    ],
)
def test_an_unusual_bare_number_that_is_usual_in_the_other_unit_is_asked_after(
    name, typed, system, suggestion
):
    (remark,) = (r for r in evaluate(worn, {name: typed}, system).remarks if r.level == "warning")
    assert remark.suggestion == suggestion and remark.text.plain(system).endswith(
        f"Did you mean {suggestion}?"
    ) == bool(suggestion)
    if suggestion:
        assert not [r for r in evaluate(worn, {name: suggestion}, system).remarks if r.level == "warning"]


def test_what_was_typed_in_another_unit_is_told_as_it_was_typed():
    with pytest.raises(Refused) as refused:
        evaluate(worn, {"heat": "27 K"})
    assert (
        str(refused.value.errors[0])
        == 'Heat: "27 K" (−246 °C) is below −40 °C, past what this calculator can answer for; give −40 °C to 350 °C.'
    )
    with pytest.raises(Refused) as refused:
        evaluate(worn, {"bore": "0.3 in"})
    assert str(refused.value.errors[0]).startswith('Bore: "0.3 in" (7.620 mm) is below 10.000 mm')
    assert "above absolute zero" in evaluate(worn, {"heat": "450 K"}).remarks[0].text.plain()


def test_the_page_is_handed_what_may_have_been_meant():
    reply = json.loads(
        page_answer(
            json.dumps(
                {
                    "call": "evaluate",
                    "calculator": "seat-fit",
                    "entries": {"pocket_bore": "1.4756"},
                    "system": "metric",
                    "working": False,
                }
            )
        )
    )
    (error,) = reply["errors"]
    assert error["suggestion"] == "1.4756 in" and error["field"] == "pocket_bore"
