"""The page: right markup, every label tied to its field, both unit systems, and the same results live as when it was built."""

import json
import math
import re

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from calc.core.drawing import Area, Axis, Dimension, Drawing, Label, Line, Plot, Series, arc, box
from calc.core.kinds import LENGTH, RATIO, TEMPERATURE
from calc.core.reading import read
from calc.core.result import Refused, Text, say
from calc.core.working import constant, form
from calc.core.writing import from_unit
from calc.declare.calculator import evaluate
from calc.declare.choice import Choice
from calc.declare.grid import Grid
from calc.declare.open_input import Open
from calc.declare.quantity import Quantity
from calc.declare.standing import Standing
from calc.page import calculator_html, live_first, live_rest
from calc.page.figure import figure
from calc.page.html import children, el
from calc.page.live import answer
from calc.page.plot import _tick, ticks
from calc.reference.engine import demo
from calc.stations import index as stations
from tests.figures import faults, width
from tests.markup import classed, inside, page, words

IDS = stations.ids()
SIZE, SHARE, TEMP = form(LENGTH, 3), form(RATIO, 2), form(TEMPERATURE, 0)


def live(id, entries=None, system="metric", **more):
    def refuse(word):
        raise AssertionError(f"{word} in JSON")

    return json.loads(
        answer(
            json.dumps(
                {"call": "evaluate", "calculator": id, "entries": entries or {}, "system": system, **more}
            )
        ),
        parse_constant=refuse,
    )


def presets(calculator):
    """Entries that differ from the example but are as good: the first number a hair larger, in its inch unit."""
    for i in calculator.inputs:
        if isinstance(i, Open):
            return {i.name: "1 1/2 in"}
        if isinstance(i, Grid):
            return {i.cells[0, 0].name: near(i.cells[0, 0].form, i.default_value[0][0])}
        if isinstance(i, Quantity) and i.default_value is not None:
            return {i.name: near(i.form, i.default_value)}
    for i in calculator.inputs:
        if isinstance(i, Choice):
            return {
                i.name: next(
                    option
                    for option in i.options
                    if option != i.default and takes(calculator, {i.name: option})
                )
            }
    raise AssertionError(f"{calculator.id} has nothing to enter")


def takes(calculator, entries) -> bool:
    try:
        return bool(evaluate(calculator, entries))
    except Refused:
        return False


def near(shape, value):
    return f"{shape.bare(float(value) * 1.0001, 'inch')} {shape.inch.symbol}"


# markup


@pytest.mark.parametrize("id", IDS)
def test_two_of_a_calculator_on_one_page_are_right_markup_with_ids_of_their_own(id):
    body = page(calculator_html(id), calculator_html(id, presets(stations.find(id)), "second"))
    ids = [e.get("id") for e in body.iter() if e.get("id")]
    assert len(ids) == len(set(ids)) and all(re.fullmatch(r"[A-Za-z][\w.-]*(?: [\w-]+)*", i) for i in ids)
    for e in body.iter():
        for attribute in ("for", "aria-labelledby", "aria-describedby"):
            for target in (
                (e.get(attribute) or "").split() if attribute != "for" else filter(None, [e.get("for")])
            ):
                assert target in ids, (
                    f"{attribute} of <{e.tag} {e.get('id')}> points at {target}, which is not there"
                )


@pytest.mark.parametrize("id", IDS)
def test_ids_and_references_have_no_space_in_them(id):
    """A reference is a list of ids with spaces between, so an id with a space in it cannot be found."""
    body = page(calculator_html(id))
    assert not [e.get("id") for e in body.iter() if " " in (e.get("id") or "")]


@pytest.mark.parametrize("id", IDS)
def test_every_field_has_a_label_a_place_for_its_message_and_the_name_of_an_input(id):
    calculator = stations.find(id)
    body = page(calculator_html(id))
    labels = {e.get("for") for e in body.iter("label")}
    entries = [e for e in body.iter() if e.get("data-entry") is not None]
    assert {e.tag for e in entries} <= {"input", "select"}
    messages = {e.get("data-message-for") for e in body.iter()}
    names = [e.get("name") for e in entries]
    assert len(names) == len(set(names))
    for e in entries:
        assert e.get("id") in labels or e.get("aria-label"), e.get("name")
        base, _, part = e.get("name").partition(".")
        assert base in calculator.input and (not part or part in calculator.input[base].parts)
        assert {e.get("name"), base} & messages
        assert e.get("aria-describedby")
    assert {n.partition(".")[0] for n in names} == set(calculator.input)
    for label in body.iter("label"):
        assert words(label)


@pytest.mark.parametrize("id", IDS)
def test_every_button_has_words_and_every_figure_a_caption_and_a_description(id):
    body = page(calculator_html(id))
    for button in body.iter("button"):
        assert (words(button) or button.get("aria-label")) and button.get("type") in ("button", "reset")
    for shown in body.iter("figure"):
        assert words(shown.find("figcaption")) and words(classed(shown, "visually-hidden")[0])
        assert shown.find("svg").get("aria-hidden") == "true"


@pytest.mark.parametrize("id", IDS)
def test_the_parts_that_live_results_go_into_are_there_once(id):
    body = page(calculator_html(id))
    parts = [e.get("data-part") for e in body.iter() if e.get("data-part")]
    assert sorted(parts) == sorted(["verdict", "stale", "status", "result", "working", "announce"])


# units


@pytest.mark.parametrize("id", IDS)
def test_every_quantity_stands_in_both_unit_systems(id):
    body = page(calculator_html(id))
    for parent in body.iter():
        systems = [
            next((c for c in ("u-metric", "u-inch") if c in e.get("class", "").split()), None) for e in parent
        ]
        shown = [s for s in systems if s]
        assert shown == ["u-metric", "u-inch"] * (len(shown) // 2)
    found = evaluate(stations.find(id))
    for shown in classed(body, "output"):
        n = found.outputs[shown.get("data-output")]
        for system in ("metric", "inch"):
            assert inside(shown.find("dd"), system).startswith(" ".join(n.text(system).split()))


WRITTEN_OUT = re.compile(r"[0-9]\s?(?:mm|µm|in|thou|°C|°F|MPa|ksi|kPa|psi|GPa|lbf|N·m|cm³|in³|µin)(?![\w·/])")
NAMES = re.compile(
    r"(?:at|off|from) 2?0 °C|[Dd]rill [0-9][0-9./ ]* (?:mm|in)\b"
)  # of a reference state, of a tool: not readings


@pytest.mark.parametrize("id", IDS)
def test_a_sentence_carries_its_quantities_as_numbers_not_as_words_of_one_system(id):
    if any(isinstance(i, Open) for i in stations.find(id).inputs):
        pytest.skip("writes one quantity in many units by its nature")
    found = evaluate(stations.find(id))
    texts = [
        found.verdict.headline,
        found.verdict.do,
        *(r.text for r in found.remarks),
        *(f.alt for f in found.figures),
        *(f.title for f in found.figures),
        # drills and sets of blocks go by their size in their own unit
        *(
            cell
            for t in found.tables
            for row in (t.columns, *t.rows)
            if not re.match("Metric|Inch", str(row[0]))
            for head, cell in zip(t.columns, row)
            if head != "Drill"
        ),
    ]
    for text in texts:
        for part in text.parts() if isinstance(text, Text) else [text]:
            if isinstance(part, str):
                assert not WRITTEN_OUT.search(NAMES.sub("", part)), part


@pytest.mark.parametrize("id", IDS)
def test_fields_are_empty_with_the_example_as_a_hint_in_both_systems_and_name_their_units(id):
    calculator = stations.find(id)
    fields = {e.get("name"): e for e in page(calculator_html(id)).iter() if e.get("data-entry") is not None}
    for i in calculator.inputs:
        if isinstance(i, Quantity):
            e = fields[i.name]
            assert e.get("value") is None and e.get("placeholder") == (e.get("data-metric") or " ")
            assert e.get("data-metric") == i.default_text("metric") and e.get("data-inch") == i.default_text(
                "inch"
            )
            assert (e.get("data-unit-metric"), e.get("data-unit-inch")) == (
                i.form.metric.symbol,
                i.form.inch.symbol,
            )


# live


def inner(html, part):
    """What stands in a part of the page, as it was written."""
    start = re.search(rf'<(\w+) data-part="{part}"[^>]*>', html)
    depth, at = 1, start.end()
    while depth:
        tag = re.compile(rf"<(/?){start[1]}\b[^>]*>").search(html, at)
        depth += -1 if tag[1] else 1
        at = tag.end()
    return html[start.end() : tag.start()]


@pytest.mark.parametrize("system", ["metric", "inch"])
@pytest.mark.parametrize("id", IDS)
def test_what_was_built_is_what_comes_live(id, system):
    built = calculator_html(id)
    reply = live(id, {}, system)
    assert reply["ok"] and reply["errors"] == [] and reply["notes"] == {}
    for part in ("verdict", "result", "working"):
        assert reply["html"][part] == inner(built, part)
    assert reply["html"]["announce"] == evaluate(stations.find(id)).verdict.headline.plain(system)


@pytest.mark.parametrize("system", ["metric", "inch"])
@pytest.mark.parametrize("id", IDS)
def test_what_a_page_enters_by_itself_means_the_same_live_in_either_system(id, system):
    calculator = stations.find(id)
    for given_presets in (
        presets(calculator),
        {name: text.split()[0] for name, text in presets(calculator).items()},
    ):
        try:
            built = calculator_html(id, given_presets, "p", filled=Standing(demo()))
        except Refused:
            continue  # the bare number was not meant in millimetres
        sent = {
            e.get("name"): e.get("data-preset")
            for e in page(built).iter()
            if e.get("data-preset") is not None
        }
        assert sent
        reply = live(id, sent, system, anchor="p", standing={"engine": "TS-16"})
        assert reply["ok"]
        for part in ("verdict", "result", "working"):
            assert reply["html"][part] == inner(built, part)


def test_the_working_comes_only_where_it_is_open():
    assert (
        "working" not in live("seat-fit", working=False)["html"]
        and "working" in live("seat-fit", working=True)["html"]
    )


def test_a_note_on_how_an_entry_was_read_comes_for_its_field():
    reply = live("seat-fit", {"ring_outside": "1 31/64"})
    assert list(reply["notes"]) == ["ring_outside"] and "inches" in reply["notes"]["ring_outside"]


@pytest.mark.parametrize(
    "system, words_", [("metric", "5.000 mm is below 10.000 mm"), ("inch", "5.00000 in is above 3.54330 in")]
)
def test_live_refusals_speak_the_readers_units(system, words_):
    reply = live("seat-fit", {"pocket_bore": "5", "depth": ""}, system)
    assert (
        not reply["ok"]
        and reply["html"] == {}
        and [e["field"] for e in reply["errors"]] == ["pocket_bore", "depth"]
    )
    assert words_ in reply["errors"][0]["message"] and reply["errors"][1]["code"] == "empty"


HOSTILE = [
    "<script>alert(1)</script>",
    '"><img src=x onerror=alert(1)>',
    "37.5 mm<b>",
    "&lt;b&gt;",
    "' onfocus='x",
    "${x}",
    "{bore}",
    "37.5\u202emm",
    "\x00",
    "]]>",
    "37.5 mm -->",
]


@pytest.mark.parametrize("text", HOSTILE)
@pytest.mark.parametrize("name", ["pocket_bore", "ring_material", "<b>", "pocket_bore.part"])
def test_hostile_entries_come_back_as_words_or_not_at_all(name, text):
    reply = live("seat-fit", {name: text})
    assert not reply["ok"] and reply["html"] == {} and len(reply["errors"]) == 1
    message = reply["errors"][0]["message"]
    assert message.endswith(".") and message.isprintable() and len(message) <= 300
    with pytest.raises(Refused):
        calculator_html("seat-fit", {name: text})


def test_words_in_an_anchor_stay_in_their_attribute():
    body = page(calculator_html("seat-fit", {}, 'x" onload="y'))
    assert not [e for e in body.iter() if e.get("onload") is not None]


def test_text_is_escaped_where_it_is_written():
    html = el(
        "p",
        "<b> & \"'",
        el("br"),
        ["a<", None, False, ("b",)],
        title='"<&',
        hidden=True,
        lang=None,
        class_="c",
        data_x_=1,
    )
    assert html == '<p title="&quot;&lt;&amp;" hidden class="c" data-x="1">&lt;b&gt; &amp; "\'<br>a&lt;b</p>'
    assert (
        children(say("{x} < {n}", x="<i>", n=constant("", "", SIZE, 0.01)))
        == '&lt;i&gt; &lt; <span class="u-metric">10.000 mm</span><span class="u-inch">0.39370 in</span>'
    )


def test_nothing_but_text_and_known_results_can_be_a_calculators_answer():
    with pytest.raises(KeyError, match="no calculator"):
        live("no-such-thing")
    found = evaluate(stations.find("seat-fit"))
    parts = live_first(found, "a", "metric") | live_rest(found, "a", True)
    assert list(parts) == ["verdict", "announce", "result", "working"]
    assert all(type(text) in (str, type(children())) for text in parts.values())


@pytest.mark.parametrize("working", [True, False])
def test_the_verdict_may_come_first_and_all_else_behind_it(working):
    whole = live("seat-fit", {"pocket_bore": "37,900"}, working=working)
    first = live("seat-fit", {"pocket_bore": "37,900"}, working=working, first=True)
    rest = json.loads(answer(json.dumps({"call": "rest"})))
    assert first.pop("more") and "more" not in rest and "more" not in whole
    assert (
        list(first["html"]) == ["verdict", "announce"]
        and list(rest["html"]) == ["result", "working"][: 1 + working]
    )
    assert first["html"] | rest["html"] == whole["html"]
    assert first["notes"] == rest["notes"] == whole["notes"] != {}
    assert "more" not in live("seat-fit", {"pocket_bore": "x"}, first=True)  # a refusal is whole


def test_a_drawing_that_fails_is_refused_behind_the_verdict(monkeypatch):
    def fails(*_):
        raise ZeroDivisionError

    monkeypatch.setattr("calc.stations.heads.seat_fit.section", fails)
    assert live("seat-fit", first=True)["ok"]
    for late in (json.loads(answer(json.dumps({"call": "rest"}))), live("seat-fit")):
        assert not late["ok"] and [e["code"] for e in late["errors"]] == ["no-answer"]


# figures


def drawn(shown):
    body = page(figure(shown, "f"))
    return list(body.iter("svg"))


@pytest.mark.parametrize("id", IDS)
def test_figures_of_the_example_stand_on_their_paper(id):
    for svg in page(calculator_html(id)).iter("svg"):
        assert not faults(svg)


finite = st.floats(-1e6, 1e6, allow_nan=False)


@given(finite, st.floats(0, 1).map(lambda x: x**6 * 1e6), st.integers(3, 8))
def test_ticks_are_round_and_cover_the_range(low, extent, about):
    high = low + extent
    found = ticks(low, high, about)
    pitch = (found[-1] - found[0]) / (len(found) - 1)
    assert 2 <= len(found) <= about + 3
    assert found[0] <= low + pitch * 1e-6 and found[-1] >= high - pitch * 1e-6
    power = 10.0 ** math.floor(math.log10(pitch * 1.0001))
    round_pitch = min((power * m for m in (1, 2, 5, 10)), key=lambda p: abs(p - pitch))
    assert pitch == pytest.approx(round_pitch, rel=1e-6)
    pitch = round_pitch
    assert all(b - a == pytest.approx(pitch, rel=1e-6) for a, b in zip(found, found[1:]))
    assert all(abs(x / pitch - round(x / pitch)) < 1e-3 for x in found)
    # what is written is the value, and no two alike
    labels = [_tick(x, found) for x in found]
    assert len(set(labels)) == len(labels)
    assert all(
        float(text.replace("−", "-")) == pytest.approx(x, abs=pitch * 1e-3) for text, x in zip(labels, found)
    )


@given(finite)
def test_a_flat_curve_lies_between_its_ticks(level):
    for noise in (0.0, abs(level) * 1e-16, abs(level) * 1e-13):
        found = ticks(level - noise, level + noise)
        assert found[0] < level < found[-1] and len(found) <= 9


points = st.lists(st.tuples(st.floats(0.001, 0.5), st.floats(200, 900)), min_size=1, max_size=30)


@given(points, points, st.sampled_from(["line", "dashed", "limit", "points"]), st.booleans())
def test_plots_stand_on_their_paper(curve, other, style, marked):
    plot = Plot(
        "Plot",
        say("What is seen."),
        Axis("Size", SIZE),
        Axis("Head", TEMP),
        (Series("", tuple(sorted(curve))), Series("limit", tuple(sorted(other)), style)),
        ((*curve[0], "running"),) if marked else (),
    )
    (svg,) = drawn(plot)
    assert not faults(svg)
    for system in ("metric", "inch"):
        (group,) = classed(svg, f"u-{system}")
        row = [e for e in group.iter("text") if e.get("text-anchor") == "middle"][:-1]
        spans = [
            (float(e.get("x")) - width(words(e)) / 2, float(e.get("x")) + width(words(e)) / 2) for e in row
        ]
        assert all(b[0] - a[1] > 2 for a, b in zip(spans, spans[1:])), "labels of the axis touch"


@given(
    st.lists(st.tuples(st.floats(-1, 1), st.floats(-1, 1)), min_size=2, max_size=2, unique=True),
    st.floats(-0.5, 0.5),
    st.floats(1e-4, 10),
    st.sampled_from(["", "D_p", "h"]),
)
def test_dimensions_and_labels_stand_on_the_paper(ends, away, scale, name):
    (x1, y1), (x2, y2) = [(x * scale, y * scale) for x, y in ends]
    n = constant("d", "", SIZE, math.hypot(x2 - x1, y2 - y1))
    assume(n.value > 1e-6)
    drawing = Drawing(
        "Drawing",
        say("Seen."),
        (
            Area(box(-scale, -scale, scale, scale), "a"),
            Area(box(-scale / 2, -scale / 2, scale / 2, scale / 2), "c"),
            Line(arc((0, 0), scale / 3, 0, 6.283), "centre"),
            Dimension((x1, y1), (x2, y2), n, away * scale, name),
            Label((x1, y1), "a", target=(x2, y2)),
            Label((0, 0), say("{n} deep", n=n)),
        ),
    )
    (svg,) = drawn(drawing)
    assert not faults(svg)


def numbers(path) -> list[tuple[float, float]]:
    return [(float(x), float(y)) for x, y in re.findall(r"(-?[\d.]+) (-?[\d.]+)", path.get("d"))]


def scales(group):
    """Value → place on the paper along both axes, read off the numbers beside the grid's lines by two of them."""
    texts = [e for e in group.iter("text")]
    ends = [end for path in classed(group, "grid") for end in numbers(path)]
    lines = list(zip(ends[::2], ends[1::2], strict=True))
    upright = sorted({a[0] for a, b in lines if a[0] == b[0]})
    level = sorted({a[1] for a, b in lines if a[1] == b[1]})
    below = [e for e in texts if e.get("text-anchor") == "middle"][:-1]
    beside = [e for e in texts if e.get("text-anchor") == "end"][: len(level)]
    assert len(below) == len(upright) and len(beside) == len(level)
    found = []
    for places, written, at in ((upright, below, "x"), (level, beside, "y")):
        for place in places:
            assert (
                min(abs(float(e.get(at)) - (4 if at == "y" else 0) - place) for e in written) < 12
            )  # each line has its number near it
        values = [float(words(e).replace("−", "-")) for e in written]
        ends = (places[0], places[-1]) if at == "x" else (places[-1], places[0])
        found.append(
            lambda v, a=values[0], b=values[-1], p=ends[0], q=ends[1]: p + (v - a) / (b - a) * (q - p)
        )
    return found


@given(points, st.booleans())
def test_a_curve_runs_where_the_numbers_on_the_axes_say(curve, dots):
    curve = sorted(curve)
    plot = Plot(
        "Plot",
        say("What is seen."),
        Axis("Size", SIZE),
        Axis("Head", TEMP),
        (Series("", tuple(curve), "points" if dots else "line"),),
        ((*curve[0], "here"),),
    )
    (svg,) = drawn(plot)
    for system, (fx, fy) in {
        "metric": (1000, lambda t: t - 273.15),
        "inch": (1 / 0.0254, lambda t: t * 1.8 - 459.67),
    }.items():
        (group,) = classed(svg, f"u-{system}")
        across, up = scales(group)
        placed = (
            [(float(e.get("cx")), float(e.get("cy"))) for e in classed(group, "point")]
            if dots
            else numbers(classed(group, "curve")[0])
        )
        (mark,) = classed(group, "mark")
        for (x, y), (px, py) in zip(
            [*curve, curve[0]], [*placed, (float(mark.get("cx")), float(mark.get("cy")))], strict=True
        ):
            assert px == pytest.approx(across(x * fx), abs=0.02) and py == pytest.approx(up(fy(y)), abs=0.02)
        assert words(group).endswith(f"Size, {SIZE.unit(system).symbol}Head, {TEMP.unit(system).symbol}")


def test_a_drawing_is_to_scale_with_x_to_the_right_and_y_up():
    plate, slot = box(0, 0, 0.08, 0.04), box(0.01, 0.02, 0.03, 0.03)
    (svg,) = drawn(
        Drawing(
            "T",
            say("Seen."),
            (
                Area(plate, "a"),
                Line(slot),
                Dimension((0.01, 0.02), (0.03, 0.02), constant("d", "", SIZE, 0.02), 0.03, "d"),
            ),
        )
    )
    (outline,) = classed(svg, "ground")
    (left, foot), _, (right, head), _ = numbers(outline)
    scale = (right - left) / 0.08
    assert right > left and head < foot and foot - head == pytest.approx(0.04 * scale, abs=0.02)
    inner = numbers(classed(svg, "outline")[0])
    for (x, y), (px, py) in zip(slot, inner):
        assert (px, py) == (
            pytest.approx(left + x * scale, abs=0.02),
            pytest.approx(foot - y * scale, abs=0.02),
        )
    # the dimension line runs 30 mm off to the left of its direction, as long as what it measures, arrow tips at its ends
    (x1, y1), (x2, y2) = numbers(classed(svg, "dim")[0])
    assert y1 == y2 == pytest.approx(foot - 0.05 * scale, abs=0.02) and (x1, x2) == (
        pytest.approx(left + 0.01 * scale, abs=0.02),
        pytest.approx(left + 0.03 * scale, abs=0.02),
    )
    tips = [numbers(e) for e in classed(svg, "arrow")]
    assert [t[0] for t in tips] == [(x1, y1), (x2, y2)]
    assert all(p[0] > x1 for p in tips[0][1:]) and all(
        p[0] < x2 for p in tips[1][1:]
    )  # and they point outwards, lines between them
    assert all(sum(p[1] for p in t[1:]) / 2 == pytest.approx(y1, abs=0.02) for t in tips)
    # its number stands over its middle, just above the line
    for text in svg.iter("text"):
        assert (
            float(text.get("x")) == pytest.approx((x1 + x2) / 2, abs=0.02)
            and 3 < y1 - float(text.get("y")) < 6
            and text.get("transform") is None
        )
    # extension lines from the part, a little past the dimension line
    for (x, y), line in zip(((0.01, 0.02), (0.03, 0.02)), classed(svg, "thin")):
        (sx, sy), (ex, ey) = numbers(line)
        assert (
            (sx, sy) == (pytest.approx(left + x * scale, abs=0.02), pytest.approx(foot - y * scale, abs=0.02))
            and ex == sx
            and y1 - ey == pytest.approx(3, abs=0.02)
        )


def test_a_dimension_too_short_for_arrows_has_them_outside_and_one_upright_is_read_from_the_right():
    shapes = (
        Area(box(0, 0, 0.08, 0.04), "a"),
        Dimension((0, 0), (0.002, 0), constant("d", "", SIZE, 0.002), 0.0, ""),
        Dimension((0.08, 0), (0.08, 0.04), constant("h", "", SIZE, 0.04), -0.01, "h"),
    )
    (svg,) = drawn(Drawing("T", say("Seen."), shapes))
    short, tall = [numbers(e) for e in classed(svg, "dim")]
    arrows = [numbers(e) for e in classed(svg, "arrow")]
    assert arrows[0][0][0] - short[0][0] == pytest.approx(14, abs=0.02) and short[1][0] - arrows[1][0][
        0
    ] == pytest.approx(14, abs=0.02)
    assert all(p[0] < arrows[0][0][0] for p in arrows[0][1:]) and all(
        p[0] > arrows[1][0][0] for p in arrows[1][1:]
    )
    (ground,) = classed(svg, "ground")
    assert tall[0][0] == tall[1][0] > max(x for x, _ in numbers(ground))  # moved off to the right
    turned = [e for e in svg.iter("text") if e.get("transform")]
    assert turned and all(e.get("transform").startswith("rotate(-90 ") for e in turned)


def test_a_part_that_is_cut_away_is_drawn_as_nothing():
    (svg,) = drawn(Drawing("T", say("Seen."), (Area(box(0, 0, 1, 1), "a"), Area((), "b"))))
    assert not faults(svg) and len(classed(svg, "ground")) == 1 and len(list(svg.iter("pattern"))) == 1


def test_a_name_with_a_subscript_is_set_low():
    (svg,) = drawn(
        Drawing(
            "T", say("Seen."), (Area(box(0, 0, 1, 1), "a"), Label((0.5, 0.5), "D_p wide", target=(0.1, 0.1)))
        )
    )
    (text,) = svg.iter("text")
    assert [(e.text, e.get("dy")) for e in text] == [("p", "3"), (" wide", "-3")] and text.text == "D"
    (leader,) = classed(svg, "thin")
    assert numbers(leader)[1][0] == float(text.get("x"))


# the form


def form_of(id, given_presets=None):
    return page(calculator_html(id, given_presets)).find(".//form")


def test_signs_that_a_number_pad_lacks_fit_what_is_asked_for():
    fields = {
        e.find(".//*[@data-entry]").get("name"): e
        for e in form_of("seat-fit").iter()
        if e.get("data-field") is not None
    }

    def keys(name):
        return [b.get("data-key") for b in fields[name].iter("button")]

    # read with a tool, so it may carry a doubt; of its units each is a sign where a bare number is the other's
    assert keys("pocket_bore") == ["/", " ", " ± ", " in", " mm", " thou"]
    units = [b for b in fields["pocket_bore"].iter("button") if b.get("class")]
    assert [(b.get("class"), words(b)) for b in units] == [("u-metric", "in"), ("u-inch", "mm")]
    assert (
        keys("ring_temperature")[0] == "−"
        and " ± " not in keys("ring_temperature")
        and {" °C", " °F"} <= set(keys("ring_temperature"))
    )
    assert keys("friction") == [] == keys("ring_material")


@pytest.mark.parametrize("id", IDS)
def test_no_sign_stands_for_a_unit_that_a_bench_does_not_read(id):
    signs = {b.get("data-key") for b in form_of(id).iter("button") if b.get("data-key")}
    assert not signs & {
        f" {unit}" for unit in ("m", "cm", "km", "MN", "mN", "daN", "ppm", "rad", "Pa", "hPa")
    }


def test_what_rarely_changes_and_warm_readings_are_folded():
    folds = {e.get("data-keep"): e for e in form_of("seat-fit").iter("details")}
    assert (
        list(folds) == ["more", "warm"]
        and words(folds["more"].find("summary"))
        == f"{sum(i.fold for i in stations.find('seat-fit').inputs)} more that rarely change"
    )
    assert (
        {e.get("name") for e in folds["warm"].iter("input")}
        == {
            f"{i.name}.{part}"
            for i in stations.find("seat-fit").inputs
            if isinstance(i, Quantity)
            for part in i.parts
        }
        != set()
    )
    assert all(e.get("value") is None and e.get("placeholder") == " " for e in folds["warm"].iter("input"))
    assert not [e for e in form_of("units").iter("details")]


def test_a_grid_has_a_field_for_every_cell_in_order_and_its_unit_over_the_column():
    i = next(i for i in stations.find("chamber-volume").inputs if isinstance(i, Grid))
    table = form_of("chamber-volume").find(".//table")
    rows = table.findall("tbody/tr")
    assert [[e.get("name") for e in row.iter("input")] for row in rows] == [
        [f"{i.name}.{r}.{c}" for c in range(1, len(i.columns) + 1)] for r in range(1, len(i.rows) + 1)
    ]
    assert [words(row.find("th")) for row in rows] == list(i.rows)
    heads = table.findall("thead/tr/th")
    assert len(heads) == len(i.columns) and all(
        column.form.unit(s).symbol in inside(head, s)
        for head, column in zip(heads, i.columns)
        for s in ("metric", "inch")
    )
    cell = i.cells[0, 0]
    first = page(
        calculator_html(
            "chamber-volume", {cell.name: near(cell.form, i.default_value[0][0])}, filled=Standing()
        )
    ).find(".//table//input")
    assert read(first.get("data-preset"), cell.form.kind).value == pytest.approx(
        i.default_value[0][0] * 1.0001, rel=1e-3
    )  # in whole thousandths of a cubic inch


def test_a_drawing_says_whether_it_is_to_scale():
    shapes = (Area(box(0, 0, 1, 1), "a"),)
    assert "to scale" in figure(Drawing("T", say("Seen."), shapes), "f")
    assert "to scale" not in figure(Drawing("T", say("Seen."), shapes, "gaps drawn 50 times too wide"), "f")


def test_what_looks_at_figures_finds_what_is_wrong():
    right = '<svg viewBox="0 0 360 100"><path d="M1 2L3 4Z"/><text x="10" y="50" text-anchor="start">a</text></svg>'
    for old, new in (
        ("M1 2", "Mnan 2"),
        ("M1 2", "M-20 2"),
        ("L3 4", "L3 104"),
        ('"10"', '"-4"'),
        (">a<", f">{'a' * 60}<"),
        (">a<", ">{a}<"),
        ("0 0 360 100", "0 0 inf 100"),
        ("M1 2", "M1 2 3"),
        ('text-anchor="start"', 'text-anchor="start" transform="rotate(-90 10 50)"'),
    ):
        assert not faults(page(right).find("main/svg"))
        changed = right.replace(old, new)
        assert changed != right
        if "rotate" in new:
            assert not faults(page(changed).find("main/svg"))
            changed = changed.replace(">a<", f">{'a' * 12}<")
        assert faults(page(changed).find("main/svg")), new


def test_the_length_of_words_is_that_of_the_font():
    assert width("Fit it") == pytest.approx(
        (611 + 222 + 278 + 278 + 222 + 278) * 12 / 1000
    )  # Adobe's metrics of Helvetica, from memory
    assert from_unit(1, LENGTH.inch) == 0.0254


@pytest.mark.parametrize("read, shown", [("main-apart", "main_housing"), ("rod-fitted", "rod_fitted")])
def test_a_field_that_counts_only_with_another_choice_goes_and_comes_as_one_chooses(read, shown):
    """Of a worked example too: of a bearing's sizes those of the other bearing stand in nobody's way."""
    asked = {
        "call": "evaluate",
        "calculator": "bearing-clearance",
        "entries": {"read": read},
        "system": "metric",
    }
    told = json.loads(answer(json.dumps(asked)))["origins"]
    idle = {name for name, place in told.items() if place["from"] == "idle"}
    assert {"main_housing", "main_fitted", "rod_housing", "rod_fitted"} - idle == {shown}
