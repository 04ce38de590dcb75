"""The declaration of a calculator, and evaluating it: what is taken, what is refused in which words, what is remarked on."""

import math
from fractions import Fraction

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from calc.core.kinds import ANGLE, LENGTH, RATIO, TEMPERATURE
from calc.core.result import Caution, Refused, Source, impossible, note, say, warning
from calc.core.working import constant, form, sqrt
from calc.declare import doubt
from calc.declare.calculator import (
    Answer,
    DeclarationError,
    Inputs,
    Limit,
    Number,
    Output,
    Outputs,
    Rows,
    answer,
    calculator,
    choice,
    column,
    evaluate,
    grid,
    measured,
)
from calc.declare.calculator import given as known
from calc.reference.engine import demo
from calc.reference.materials import MATERIALS
from calc.stations.index import find

SIZE, SHARE = form(LENGTH, 3), form(RATIO, 2)
RULE, TABLE = Source("rule", "A rule.", "analytic"), Source("table", "A table.", "handbook")
CARE, HEAT = Caution("care", "Take care."), Caution("heat", "It is hot.")


class Out(Outputs):
    gap = Output("Gap", "c", SIZE, main=True)
    share = Output("Share of the bore", "s", SHARE)


class RingGapIn(Inputs):
    bore: Number = measured(
        "Bore",
        "D",
        SIZE,
        tool="a bore gauge",
        hard="10 to 100 mm",
        usual="20 to 60 mm",
        feature="head.seat_pocket_intake",
    )
    ring: Number = measured(
        "Ring outside",
        "d",
        SIZE,
        tool="a micrometer",
        hard=("9 to 100 mm", "no such ring is made"),
        example="37.4 mm",
    )
    angle: Number = known(
        "Chamfer", "θ", form(ANGLE, 0), hard="1 to 89°", usual="15 to 45°", fold=True, example="30°"
    )
    heat: Number = known("Head", "T", form(TEMPERATURE, 0), hard="-20 to 300 °C", example="20 °C")
    kind: str = choice(
        "Kind of ring", {"plain": "A plain ring", "lipped": "A ring with a lip"}, default="plain"
    )


@calculator(
    "ring-gap",
    "Ring in a bore",
    RingGapIn,
    Out,
    purpose="Does the ring go in?",
    finds=("ring gap",),
    sources=(RULE,),
    cautions=(CARE,),
)
def ring_gap(i: RingGapIn) -> Answer:
    if i.ring >= i.bore:
        raise impossible(
            "ring",
            "is {ring}, not smaller than the bore {bore}; give less than {bore}",
            ring=i.ring,
            bore=i.bore,
        )
    gap = Out.gap(i.bore - i.ring, TABLE)
    return answer(
        gap,
        Out.share(gap / i.bore),
        verdict=("pass", say("Goes in: {g} left", g=gap), "Fit it."),
        remarks=(note("A {kind} ring.", kind=i.kind), warning("Hot.") if float(i.heat) > 473 else None),
        cautions=(HEAT,) if float(i.heat) > 473 else (),
    )


def sentences(system="metric", /, **entries):
    with pytest.raises(Refused) as refused:
        evaluate(ring_gap, entries, system)
    return [e.sentence(system) for e in refused.value.errors]


def codes(**entries):
    with pytest.raises(Refused) as refused:
        evaluate(ring_gap, entries)
    return [(e.field, e.code) for e in refused.value.errors]


# declaring


def declare(declared, kind=Number, outputs=Out, **more):
    class In(Inputs):
        if declared is not None:
            size: kind = declared

    @calculator("x", "X", In, outputs, purpose="...", **more)
    def f(i: In) -> Answer:
        raise AssertionError("not called")


LENGTH_INPUT = known("Size", "d", SIZE, hard="1 to 9 mm", example="2 mm")


@pytest.mark.parametrize(
    "make, words",
    [
        (lambda: declare(None), "x: no inputs"),
        (lambda: declare(2.5), "size is not declared with measured, given or choice"),
        (lambda: declare("measured(...)"), "size is not declared"),
        (
            lambda: declare(known("Size", "d", SIZE, hard="1 to 9 mm")),
            "x: size has neither an example nor a feature to take it from",
        ),
        (lambda: declare(LENGTH_INPUT, outputs=Outputs), "x: no outputs"),
        (
            lambda: declare(choice("Kind", {"a": "A", "b": "B"}, default="c"), str),
            "x: size begins with 'c', which is not one of a, b",
        ),
    ],
)
def test_a_wrong_declaration_is_named_where_it_stands(make, words):
    with pytest.raises(DeclarationError, match=words):
        make()


def test_a_calculator_that_returns_other_numbers_than_it_declares_is_named():
    class SwappedIn(Inputs):
        size: Number = LENGTH_INPUT

    @calculator("swapped", "S", SwappedIn, Out, purpose="...")
    def swapped(i: SwappedIn) -> Answer:
        return answer(Out.share(0.5 + 0 * i.size / i.size), Out.gap(i.size * 1), verdict=("pass", "a", "b"))

    with pytest.raises(
        DeclarationError, match=r"swapped: returned \['share', 'gap'\], declared \['gap', 'share'\]"
    ):
        evaluate(swapped)


def test_an_output_that_is_no_named_number_is_named():
    class PlainIn(Inputs):
        size: Number = LENGTH_INPUT

    @calculator("plain", "P", PlainIn, Out, purpose="...")
    def plain(i: PlainIn) -> Answer:
        return answer(Out.gap(i.size * 1), 0.5, verdict=("pass", "a", "b"))

    with pytest.raises(TypeError, match="named by its declaration"):
        evaluate(plain)


@pytest.mark.parametrize(
    "slip",
    [
        lambda: say("{bore} is large"),
        lambda: say("{bore:.2f} is large", bore=1),
        lambda: say("{0}"),
        lambda: say("a { b"),
    ],
)
def test_a_sentence_with_a_hole_in_it_fails_where_it_is_written(slip):
    with pytest.raises(KeyError):
        slip()


def test_a_verdict_is_one_of_four():
    with pytest.raises(ValueError, match="no verdict state 'ok'"):
        answer(verdict=("ok", "a", "b"))


# evaluating


def test_what_is_not_entered_takes_its_default_or_the_size_of_the_demo_engine():
    found = evaluate(ring_gap)
    pocket = demo().feature("head.seat_pocket_intake").nominal
    assert found["gap"] == pocket - 0.0374 and found["share"] == found["gap"] / pocket
    assert [(t.input.name, t.entered) for t in found.taken] == [
        (n, False) for n in ("bore", "ring", "angle", "heat", "kind")
    ]
    assert found.verdict.state == "pass" and found.verdict.headline.plain() == "Goes in: 0.100 mm left"
    assert evaluate(ring_gap, {})["gap"] == ring_gap()["gap"] == found["gap"]


@pytest.mark.parametrize(
    "system, text, millimetres",
    [
        ("metric", "38", Fraction(38)),
        ("metric", "38,5", Fraction("38.5")),
        ("metric", " 38.5 mm ", Fraction("38.5")),
        ("metric", "1.5 in", Fraction("38.1")),
        ("metric", "1 31/64 in", Fraction("37.703125")),
        ("metric", '1 31/64"', Fraction("37.703125")),
        ("metric", "3.85 cm", Fraction("38.5")),
        ("inch", "1.5", Fraction("38.1")),
        ("inch", "1 31/64", Fraction("37.703125")),
        ("inch", "38.5 mm", Fraction("38.5")),
        ("inch", "1500 thou", Fraction("38.1")),
    ],
)
def test_an_entry_is_read_in_the_readers_unit_or_in_the_one_that_it_names(system, text, millimetres):
    found = evaluate(ring_gap, {"bore": text}, system)
    assert float(found.taken[0].value) == float(
        millimetres / 1000
    )  # the inch is 25.4 mm exactly (NIST SP 811)
    assert found.taken[0].entered and not found.taken[1].entered and found.taken[0].text == text


def test_a_fraction_in_a_metric_field_is_inches_and_that_is_said():
    found = evaluate(ring_gap, {"bore": "1 31/64"})
    assert float(found.taken[0].value) == 0.037703125
    remarks = [r for r in found.remarks if r.field == "bore"]
    assert [r.level for r in remarks] == ["note"] and "inches" in remarks[0].text.plain()
    assert not [r for r in evaluate(ring_gap, {"bore": "1 31/64"}, "inch").remarks if r.field == "bore"]


@pytest.mark.parametrize(
    "text, chosen",
    [
        ("lipped", "lipped"),
        (" Lipped ", "lipped"),
        ("A ring with a lip", "lipped"),
        ("a plain ring", "plain"),
    ],
)
def test_an_option_is_taken_by_its_id_or_by_its_words(text, chosen):
    assert evaluate(ring_gap, {"kind": text}).taken[4].value == chosen


def test_results_come_in_declared_order_with_the_steps_and_sources_behind_them():
    found = evaluate(ring_gap)
    assert list(found.outputs) == ["gap", "share"]
    assert [s.key for s in found.working] == ["gap", "share"]
    assert found.sources == (RULE, TABLE) and found.cautions == (CARE,)
    assert evaluate(ring_gap, {"heat": "250"}).cautions == (HEAT, CARE)


def test_remarks_keep_their_order_taken_first_then_ranges_then_the_calculators_own():
    found = evaluate(ring_gap, {"bore": "2 39/64", "angle": "60", "heat": "250 °C"})
    assert [(r.level, r.field) for r in found.remarks] == [
        ("note", "bore"),
        ("warning", "bore"),
        ("warning", "angle"),
        ("note", ""),
        ("warning", ""),
    ]
    assert found.remarks[3].text.plain() == "A plain ring."


def test_a_value_outside_the_usual_is_remarked_on_where_it_was_entered():
    (bore,) = [r for r in evaluate(ring_gap, {"bore": "60.0001"}).remarks if r.field]
    assert (
        bore.text.plain()
        == "Bore 60.0001 mm is outside the usual 20.000 mm to 60.000 mm: measure again before you trust what follows."
    )
    assert bore.text.plain("inch").startswith("Bore 2.36221 in is outside the usual 0.78741 in to 2.36220 in")
    assert not [
        r for end in ("20", "60") for r in evaluate(ring_gap, {"bore": end, "ring": "19"}).remarks if r.field
    ]
    assert [r for r in evaluate(ring_gap, {"bore": "19.999", "ring": "18"}).remarks if r.field == "bore"]


# refusing


@pytest.mark.parametrize(
    "entries, expected",
    [
        ({"bore": ""}, "Bore: nothing was given; give a length such as 37.48 mm, 1.4756 in or 1 31/64 in."),
        (
            {"bore": "big"},
            'Bore: "big" is not a number; give a length such as 37.48 mm, 1.4756 in or 1 31/64 in.',
        ),
        (
            {"bore": "9.9"},
            "Bore: 9.900 mm is below 10.000 mm, past what this calculator can answer for; give 10.000 mm to 100.000 mm.",
        ),
        (
            {"bore": "9.9999999"},
            "Bore: 9.9999999 mm is below 10.000 mm, past what this calculator can answer for; give 10.000 mm to 100.000 mm.",
        ),
        (
            {"ring": "101"},
            "Ring outside: 101.000 mm is above 100.000 mm, past what this calculator can answer for (no such ring is made); give 9.000 mm to 100.000 mm.",
        ),
        (
            {"heat": "-30"},
            "Head: −30 °C is below −20 °C, past what this calculator can answer for; give −20 °C to 300 °C.",
        ),
        (
            {"bore": "30 kPa"},
            "Bore: kPa is a pressure, and a length belongs here; give a length such as 37.48 mm, 1.4756 in or 1 31/64 in.",
        ),
        ({"kind": "round"}, 'Kind of ring: "round" is not a choice; choose one of plain, lipped.'),
        ({"kind": ""}, "Kind of ring: is empty; choose one of plain, lipped."),
        ({"kind": "a\nb\x00"}, 'Kind of ring: "a b\ufffd" is not a choice; choose one of plain, lipped.'),
        (
            {"ring": "60", "bore": "50"},
            "Ring outside: is 60.000 mm, not smaller than the bore 50.000 mm; give less than 50.000 mm.",
        ),
        ({"bor": "50"}, '"bor" is not an input of ring-gap; the nearest is bore.'),
        ({"zzz": "50"}, '"zzz" is not an input of ring-gap; give one of bore, ring, angle, heat, kind.'),
    ],
)
def test_what_cannot_be_used_is_refused_in_one_sentence(entries, expected):
    assert sentences(**entries) == [expected]


def test_a_refusal_speaks_the_readers_units():
    assert sentences("inch", bore="0.3") == [
        "Bore: 0.30000 in is below 0.39371 in, past what this calculator can answer for; give 0.39371 in to 3.93700 in."
    ]
    assert sentences("inch", ring="2", bore="1") == [
        "Ring outside: is 2.00000 in, not smaller than the bore 1.00000 in; give less than 1.00000 in."
    ]


def test_every_bad_entry_is_told_in_the_order_of_the_form():
    assert codes(kind="x", heat="1e9", bore="", nonsense="1", ring="3 mm") == [
        ("nonsense", "unknown-input"),
        ("bore", "empty"),
        ("ring", "out-of-range"),
        ("heat", "out-of-range"),
        ("kind", "unknown-choice"),
    ]


def test_the_refusal_itself_says_it_all():
    with pytest.raises(Refused, match="^Bore: nothing .* Ring outside: .*such ring.*$"):
        evaluate(ring_gap, {"bore": "", "ring": "101"})


@given(
    st.floats(-1, 1).map(lambda x: 10 * math.copysign(abs(x) ** 8, x)),
    st.sampled_from(["metric", "inch"]),
    st.sampled_from(["ring", "angle", "heat"]),
)
def test_a_range_is_told_so_that_its_ends_can_be_typed_and_what_was_got_lies_outside(off, system, name):
    """However little the limit is missed by, value and limit are told apart, and the limit as told is itself accepted."""
    declared = ring_gap.input[name]
    low, high = declared.hard_range
    value = low + off if off < 0 else high + off
    assume(value < low or value > high)
    with pytest.raises(Refused) as refused:
        declared.check(value)
    sentence = refused.value.errors[0].sentence(system)
    got, rest = sentence.split(": ", 1)[1].split(" is below " if off < 0 else " is above ")
    ends = rest.rstrip(".").split("; give ")[1].split(" to ")
    limit = rest.split(", past")[0]
    assert limit == ends[0 if off < 0 else 1] != got
    for end in ends:
        declared.check(declared._read(end, system).value)
    if declared.form.kind is LENGTH:
        told = Fraction(got.split()[0].replace("−", "-"))
        assert told < Fraction(limit.split()[0]) if off < 0 else told > Fraction(limit.split()[0])


class One(Outputs):
    y = Output("Y", "y", SHARE)


@pytest.mark.parametrize(
    "function",
    [
        lambda x: x / (x - 2),
        lambda x: sqrt(x - 3),
        lambda x: (x - 3) ** 0.5,
        lambda x: 10.0 ** (x * 1e4),
        lambda x: x * 1e308 * 10 - x,
    ],
)
def test_arithmetic_that_fails_is_told_as_a_sentence_not_as_a_trace(function):
    class FailsIn(Inputs):
        x: Number = known("Share", "x", SHARE, hard="0 to 9", example="2")

    @calculator("fails", "F", FailsIn, One, purpose="...")
    def fails(i: FailsIn) -> Answer:
        return answer(One.y(function(i.x)), verdict=("pass", "a", "b"))

    with pytest.raises(
        Refused,
        match=r"^Share: these entries together give no answer \(\w+\); give sizes nearer to the usual ones\.$",
    ) as refused:
        evaluate(fails)
    assert refused.value.errors[0].code == "no-answer"


def test_an_endless_number_on_the_way_is_no_answer_either():
    class WayIn(Inputs):
        x: Number = known("Share", "x", SHARE, hard="0 to 9", example="2")

    @calculator("way", "W", WayIn, One, purpose="...")
    def way(i: WayIn) -> Answer:
        from calc.core.working import step

        return answer(One.y(1 / step("z", "Z", SHARE, i.x * 1e308 * 1e308)), verdict=("pass", "a", "b"))

    with pytest.raises(Refused, match="no answer"):
        evaluate(way)


class ShownIn(Inputs):
    x: Number = known("Share", "x", SHARE, hard="0 to 9", example="2")


def showing(figures):
    """A calculator whose figures are made so."""

    @calculator("showing", "S", ShownIn, One, purpose="...")
    def shows(i: ShownIn) -> Answer:
        return answer(One.y(i.x * 2), verdict=("pass", "a", "b"), figures=figures)

    return shows


def test_figures_are_made_once_and_for_a_reader_who_waits_after_the_verdict():
    made = []
    drawing = showing(lambda: [made.append("drawn") or "a figure"])
    found = evaluate(drawing, {"x": "2.5 ± 0.1"}, later=True)  # worked three times for its doubt
    assert found.doubts["y"] == pytest.approx(0.2) and not made
    assert found.figures == found.figures == ("a figure",) and made == ["drawn"]
    assert evaluate(drawing).figures and made == ["drawn"] * 2


def test_what_cannot_be_drawn_is_no_answer_at_the_latest_when_it_is_looked_at():
    undrawn = showing(lambda: [1 / 0])
    with pytest.raises(Refused, match="no answer"):
        evaluate(undrawn)
    found = evaluate(undrawn, later=True)
    with pytest.raises(Refused, match="no answer"):
        _ = found.figures


def test_a_fault_of_the_calculator_is_not_hidden_as_a_readers_fault():
    class SlipIn(Inputs):
        x: Number = known("Share", "x", SHARE, hard="0 to 9", example="2")

    @calculator("slip", "S", SlipIn, One, purpose="...")
    def slip(i: SlipIn) -> Answer:
        raise impossible("y", "is wrong; give another")

    with pytest.raises(KeyError):
        evaluate(slip)


# grids


class Sum(Outputs):
    total = Output("Total", "Σ", SIZE)


class LashIn(Inputs):
    gaps: Rows = grid(
        "Lash",
        ("1 in", "1 ex", "2 in"),
        (
            column("Cold", "c", SIZE, hard="0 to 1 mm", usual="0.05 to 0.3 mm"),
            column("Warm", "w", SIZE, hard="0 to 1 mm"),
        ),
        least=2,
        tool="feelers",
        example="0.1; 0.2 | 0.1; 0.2 | 0.15 mm; 6 thou",
    )


@calculator("lash", "Lash", LashIn, Sum, purpose="...")
def lash(i: LashIn) -> Answer:
    return answer(Sum.total(sum(n for row in i.gaps if row for n in row)), verdict=("pass", "a", "b"))


@pytest.mark.parametrize(
    "text, total",
    [
        ("0.1;0.2|0.1;0.2|0.1;0.2", "0.9"),
        ("0.1\t0.2\n0.1\t0.2\n", "0.6"),
        ("0.1;0.2||0.1;0.2", "0.6"),
        ("4 thou; 0.2 | 0,1; 1/64 in", "0.798475"),
        ("0.1;0.2|0.1;0.2|;", "0.6"),
    ],
)
def test_rows_are_read_as_they_are_pasted(text, total):
    assert evaluate(lash, {"gaps": text})["total"] * 1000 == pytest.approx(float(total), abs=1e-12)


def test_one_cell_may_be_entered_alone_and_the_example_keeps_its_units_on_an_inch_page():
    assert evaluate(lash)["total"] * 1000 == pytest.approx(0.9024, abs=1e-12)
    assert evaluate(lash, {}, "inch")["total"] == evaluate(lash)["total"]
    assert evaluate(lash, {"gaps.1.2": "0.5"})["total"] * 1000 == pytest.approx(1.2024, abs=1e-12)
    assert evaluate(lash, {"gaps.1.2": "0.01"}, "inch")["total"] * 1000 == pytest.approx(
        0.9024 - 0.2 + 0.254, abs=1e-12
    )


@pytest.mark.parametrize(
    "entries, field, words",
    [
        ({"gaps": "0.1;0.2|0.1;x|0.1;0.2"}, "gaps.2.2", 'Lash, 1 ex, Warm: "x" is not a number'),
        ({"gaps": "0.1;0.2|0.1;2|0.1;0.2"}, "gaps.2.2", "Lash, 1 ex, Warm: 2.000 mm is above 1.000 mm"),
        (
            {"gaps": "0.1;0.2|0.1"},
            "gaps.2.2",
            "Lash, 1 ex, Warm: is empty; give a length, or leave the whole row empty.",
        ),
        (
            {"gaps": "0.1;0.2"},
            "gaps",
            "Lash: only 1 rows are filled; give at least 2.|Lash: only one row is filled; give at least 2.",
        ),
        ({"gaps": ""}, "gaps", "Lash: no row is filled; give at least 2."),
        ({"gaps": "1|2|3|4"}, "gaps", "Lash: has 4 rows of up to 1; give 2 to 3 rows of 2."),
        ({"gaps": "1;2;3|1;2;3"}, "gaps", "Lash: has 2 rows of up to 3; give 2 to 3 rows of 2."),
        ({"gaps.4.1": "1"}, "gaps.4.1", '"gaps.4.1" is not an input of lash; the nearest is gaps.'),
        ({"gaps.1.1": "1 kPa"}, "gaps.1.1", "Lash, 1 in, Cold: kPa is a pressure"),
    ],
)
def test_a_bad_cell_is_named_by_its_row_and_column(entries, field, words):
    with pytest.raises(Refused) as refused:
        evaluate(lash, entries)
    (error,) = refused.value.errors
    assert error.field == field and any(error.sentence().startswith(w) for w in words.split("|"))


def test_a_cell_outside_the_usual_is_remarked_on_by_name():
    (remark,) = evaluate(lash, {"gaps.2.1": "0.5"}).remarks
    assert remark.text.plain().startswith(
        "Lash, 1 ex, Cold 0.500 mm is outside the usual 0.050 mm to 0.300 mm"
    )


# readings with a doubt; GUM (JCGM 100:2008) 5.1.2: squares of sensitivity × standard uncertainty add


class Area(Outputs):
    area = Output("Product", "A", SHARE)
    ratio = Output("Quotient", "q", SHARE)


class TwoReadingsIn(Inputs):
    a: Number = measured("A", "a", SHARE, tool="a rule", hard="1 to 100", example="20")
    b: Number = measured("B", "b", SHARE, tool="a rule", hard="1 to 100", example="10")


# It passes whatever its limits say: what the doubt makes of that is looked at.
@calculator("two-readings", "T", TwoReadingsIn, Area, purpose="...", about_doubt=True)
def two_readings(i: TwoReadingsIn) -> Answer:
    return answer(
        Area.area(i.a * i.b),
        Area.ratio(i.a / i.b),
        verdict=("pass", "In", "Fit it."),
        limits=(Limit("the product", i.a * i.b, low=190, high=None),),
    )


@given(st.floats(2, 90), st.floats(2, 90), st.floats(0.001, 0.2), st.floats(0.001, 0.2))
def test_doubt_is_carried_as_the_gum_says(a, b, ua, ub):
    found = evaluate(two_readings, {"a": f"{a!r} ± {ua!r}", "b": f"{b!r} ± {ub!r}"})
    product, quotient = (
        a * b * math.hypot(ua / a, ub / b),
        a / b * math.hypot(ua / a, ub / b),
    )  # relative doubts of product and quotient
    assert found.doubts["area"] == pytest.approx(product, rel=1e-9)
    assert found.doubts["ratio"] == pytest.approx(
        quotient, rel=0.02
    )  # the quotient is not linear: second order in ub/b ≤ 0.1


def test_no_doubt_no_change():
    found = evaluate(two_readings, {"a": "20", "b": "10"})
    assert found.doubts == {} and found.verdict.state == "pass"


@pytest.mark.parametrize(
    "a, state, sure",
    [
        ("20 ± 0.1", "pass", ""),  # 200 ± 1 against 190: 20 standard doubts inside
        (
            "20 ± 1.2",
            "pass",
            "",
        ),  # 200 ± 12: 1.667 standard doubts inside, 95.2 % (table of the normal distribution)
        ("20 ± 1.23", "unsure", "9"),  # 1.626: 94.8 %
        ("20 ± 2", "unsure", "84 %"),  # one standard doubt inside: 84.1 %
        ("18 ± 0.8", "pass", ""),  # 180 ± 8: 2.5 outside, so the calculator's own verdict stands
    ],
)
def test_a_verdict_stands_where_the_doubt_leaves_95_per_cent(a, state, sure):
    found = evaluate(two_readings, {"a": a, "b": "10"})
    assert found.verdict.state == state
    assert sure in found.verdict.headline.plain()


def test_a_doubt_that_would_leave_what_goes_together_is_taken_from_the_other_side():
    found = evaluate(
        ring_gap, {"bore": "37.4 ± 0.2", "ring": "37.35"}
    )  # moved down by 0.1 the ring would not go in
    assert found.doubts["gap"] == pytest.approx(0.0002, rel=1e-9)
    assert doubt.COVERAGE == 2


class Known(Outputs):
    size = Output("Size", "L", SIZE)
    doubt = Output("Doubt", "U", SIZE)


class AsksDoubtIn(Inputs):
    size: Number = measured("Size", "L", SIZE, tool="a rule", hard="1 to 99 mm", example="20 mm")
    doubt: Number = known(
        "Doubt of the size", "U", SIZE, hard="0 to 1 mm", doubt_of="size", example="0.01 mm"
    )


@calculator("asks-doubt", "A", AsksDoubtIn, Known, purpose="...")
def asks_doubt(i: AsksDoubtIn) -> Answer:
    return answer(Known.size(i.size * 1), Known.doubt(i.doubt * 1), verdict=("pass", "a", "b"))


def test_a_doubt_that_is_asked_for_may_stand_behind_the_reading_instead():
    assert evaluate(asks_doubt)["doubt"] == evaluate(asks_doubt, {"size": "21"})["doubt"] == 1e-5
    found = evaluate(asks_doubt, {"size": "21 ± 0.04"})
    assert found["doubt"] == pytest.approx(4e-5, rel=1e-12) and found["size"] == 0.021
    assert set(found.doubts.values()) <= {0.0}  # taken there, and carried no further
    assert ["doubt"] == [r.field for r in found.remarks if "Size" in r.text.plain()]
    for entries, code in (
        ({"size": "21 ± 0.04", "doubt": "0.02"}, "twice"),
        ({"size": "21 ± 2"}, "out-of-range"),
    ):
        with pytest.raises(Refused) as refused:
            evaluate(asks_doubt, entries)
        assert [(e.field, e.code) for e in refused.value.errors] == [("doubt", code)]


class Warm(Outputs):
    size = Output("Size at 20 °C", "L_20", form(LENGTH, 5))


class ReadWarmIn(Inputs):
    bore: Number = measured(
        "Bore", "D_b", form(LENGTH, 5), tool="a bore gauge", hard="1 to 99 mm", of="al-si-t6", example="50 mm"
    )


@calculator("read-warm", "R", ReadWarmIn, Warm, purpose="...")
def read_warm(i: ReadWarmIn) -> Answer:
    return answer(Warm.size(i.bore * 1), verdict=("pass", "a", "b"))


def test_a_warm_reading_is_brought_to_20_degrees_and_the_working_says_how():
    """50 mm of aluminium at 35 °C read with steel at 20 °C is about 16 µm large (coefficients of handbooks: 21 to 22 against 11.5)."""
    assert evaluate(read_warm, {"bore.part": "20", "bore.gauge": "20"})["size"] == pytest.approx(
        0.05, abs=1e-15
    )
    assert evaluate(read_warm, {"bore.part": "35"})["size"] == pytest.approx(0.05 - 16e-6, abs=0.8e-6)
    assert evaluate(read_warm, {"bore.gauge": "95 °F"})["size"] == pytest.approx(
        0.05 + 8.6e-6, abs=0.2e-6
    )  # the gauge grew, and reads small
    assert (
        evaluate(read_warm, {"bore.part": "95"}, "inch")["size"]
        == evaluate(read_warm, {"bore.part": "95 °F"})["size"]
    )
    found = evaluate(read_warm, {"bore.part": "35", "bore": "50"})
    assert found.working[0].label == "Bore at 20 °C" and found.working[0].symbol == "D_b"
    assert {"α_part", "α_gauge", "t_part", "t_gauge", "T_0", "D_b,read"} == _symbols(found.working[0])
    # 50 mm × α × 1 K of part and gauge, as squares (GUM 5.1.2)
    doubts = evaluate(
        read_warm, {"bore": "50", "bore.part": "20 °C ± 1 K", "bore.gauge": "20 °C ± 1 K"}
    ).doubts
    assert doubts["size"] == pytest.approx(
        0.05 * math.hypot(MATERIALS["al-si-t6"].alpha_20, 11.5e-6), rel=1e-3
    )


def _symbols(n):
    return {a.symbol for a in n.args if a.symbol}.union(*(_symbols(a) for a in n.args))


@pytest.mark.parametrize(
    "entries, field, words",
    [
        (
            {"bore.part": "warm"},
            "bore.part",
            'Bore: part temperature: "warm" is not a number; give a temperature such as',
        ),
        (
            {"bore.part": "200"},
            "bore.part",
            "Bore: part temperature 200 °C is no temperature to measure at; give −60 °C to 150 °C.",
        ),
        (
            {"bore.gauge": "-61"},
            "bore.gauge",
            "Bore: gauge temperature −61 °C is no temperature to measure at; give −60 °C to 150 °C.",
        ),
        ({"bore.gauge": "20 mm"}, "bore.gauge", "Bore: gauge temperature: mm is a length"),
        ({"bore.air": "20"}, "bore.air", '"bore.air" is not an input of read-warm; the nearest is bore.'),
    ],
)
def test_a_bad_temperature_beside_a_reading_is_named(entries, field, words):
    with pytest.raises(Refused) as refused:
        evaluate(read_warm, entries)
    (error,) = refused.value.errors
    assert error.field == field and error.sentence().startswith(words)


class MayBeEmptyIn(Inputs):
    size: Number | None = measured("Size", "L", SIZE, tool="a rule", hard="1 to 99 mm")
    doubt: Number | None = known("Doubt", "U", SIZE, hard="0 to 1 mm", example="0.01 mm")


@calculator("may-be-empty", "M", MayBeEmptyIn, Known, purpose="...")
def may_be_empty(i: MayBeEmptyIn) -> Answer:
    return answer(
        Known.size(i.size * 1 if i.size is not None else 0.0),
        Known.doubt(i.doubt * 1 if i.doubt is not None else 0.0),
        verdict=("pass", "a", "b"),
    )


def test_what_may_be_left_empty_is_none_or_its_example():
    assert [t.value if t.value is None else float(t.value) for t in evaluate(may_be_empty).taken] == [
        None,
        1e-5,
    ]
    found = evaluate(may_be_empty, {"size": "5", "doubt": " "})
    assert [t.value if t.value is None else float(t.value) for t in found.taken] == [0.005, None] and found[
        "size"
    ] == 0.005
    with pytest.raises(Refused, match="^Size: 0.500 mm is below 1.000 mm"):
        evaluate(may_be_empty, {"size": "0.5"})


def test_number_makes_a_constant_that_shows_its_symbol():
    n = constant("α", "Expansion", SHARE, 0.5, RULE)
    assert n.symbol == "α" and n.text() == "0.50" and n.source is RULE


@pytest.mark.parametrize(
    "id, entries, words, shown",
    [  # by hand: what lies beyond, and the fewest decimals that tell it from the limit; a limit finer than it is usually written is told in full
        (
            "rod-align",
            {"bend_left": "0 mm", "bend_right": "0.05004 mm", "span": "100 mm"},
            ("0.05004 mm", "0.05 mm allowed"),
            {"bend": "0.05004 mm"},
        ),
        (
            "chamber-volume",
            {"readings": "56.502 cm³ | 56 cm³ | 56 cm³ | 56.2 cm³"},
            ("56.502 cm³",),
            {"largest": "56.502 cm³", "smallest": "56.0 cm³"},
        ),
        ("valve-spring", {"least_seat": "247.3 N"}, ("247 N", "247.3 N"), {}),
        ("ring-groove", {"least_overhang": "0.9604 mm"}, ("0.96 mm", "0.9604 mm"), {}),
        (
            "insert-install",
            {"preload": "28.34 kN", "length": "2", "slip": "1"},
            ("bears 42.48 kN of 42.51 kN",),
            {},
        ),  # 1.5 × 28.34
        (
            "reading-verdict",
            {"reading": "55.00003 mm", "doubt": "0.00001 mm"},
            ("0.00003 mm over the upper limit",),
            {"margin": "−0.00003 mm"},
        ),
    ],
)
def test_a_number_that_failed_a_limit_does_not_read_as_one_that_did_not(id, entries, words, shown):
    result = evaluate(find(id), entries)
    told = f"{result.verdict.headline.plain()}. {result.verdict.do.plain()}"
    assert result.verdict.state == "fail" and all(word in told for word in words)
    assert {key: result.outputs[key].text() for key in shown} == shown


def test_inputs_that_two_calculators_share_stand_first_on_both_forms():
    class Lipped(RingGapIn):
        lip: Number = known("Lip", "l", SIZE, hard="0 to 5 mm", example="1 mm")

    assert [i.name for i in Lipped.all()] == [*(i.name for i in RingGapIn.all()), "lip"]
    assert "lip" not in [i.name for i in RingGapIn.all()]  # its base keeps its own
