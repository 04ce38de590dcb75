"""Pictures of the work: what they say, that their sizes are the sheet's, and that each stands on a page."""

import math
import re
from itertools import combinations
from statistics import mean

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.core.drawing import Dimension, Label, Line
from calc.page.svg import length_of
from calc.reference import engine
from scripts.environment import ROOT
from scripts.mdx import place
from scripts.pictures import PICTURES, pen, picture, picture_html
from tests.figures import corners, faults
from tests.markup import classed, page, words

SHEETS = [
    engine.load(path.read_text(), path.name).name
    for path in sorted((ROOT / "calc/reference/engines").glob("*.toml"))
]
SYSTEMS = ("metric", "inch")
WEIGHT = 8000  # bytes of markup, on average: a phone in the shop has a slow line


def texts(svg, system: str) -> list:
    """The words that a reader of that unit system sees."""
    hidden = {"metric": "u-inch", "inch": "u-metric"}[system]
    return [e for e in svg.iter("text") if hidden not in e.get("class", "").split()]


def box(text) -> list:
    """Corners of the box that words take in a wide typeface, as that of many a Linux; turned ones as narrow
    as they are."""
    if text.get("transform"):
        return corners(text)
    x, y, wide = float(text.get("x")), float(text.get("y")), length_of(words(text))
    left = {"start": x, "middle": x - wide / 2, "end": x - wide}[text.get("text-anchor")]
    return [(left, y - 9), (left + wide, y + 2.6)]


def signs(svg) -> list:
    """Where the strokes of its ticks and crosses lie, each as corners."""
    strokes = [*classed(svg, "good"), *classed(svg, "bad")]
    return [
        [(float(x), float(y)) for x, y in re.findall(r"(-?[\d.]+) (-?[\d.]+)", e.get("d"))] for e in strokes
    ]


def apart(one, other, slack=0.5) -> bool:
    """Do two boxes, given by their corners, stand clear of each other?"""
    (ax, ay), (bx, by) = [tuple(zip(*box)) for box in (one, other)]
    return (
        max(ax) < min(bx) + slack
        or max(bx) < min(ax) + slack
        or max(ay) < min(by) + slack
        or max(by) < min(ay) + slack
    )


@pytest.mark.parametrize("sheet", SHEETS)
@pytest.mark.parametrize("name", PICTURES)
def test_a_picture_stands_on_its_paper_whatever_the_sheet_has(name, sheet):
    (figure,) = page(picture_html(name, name, sheet)).iter("figure")
    (svg,) = figure.iter("svg")
    assert not faults(svg)
    for system in SYSTEMS:
        boxes = [(words(e), box(e)) for e in texts(svg, system) if words(e)]
        for (one, a), (other, b) in combinations(boxes, 2):
            assert apart(a, b), f"{one!r} and {other!r} run into each other"
        for said, taken in boxes:
            assert all(apart(sign, taken) for sign in signs(svg)), f"{said!r} runs into a tick or a cross"


@pytest.mark.parametrize("name", PICTURES)
def test_a_picture_is_told_in_words(name):
    shown = picture(name)
    (figure,) = page(picture_html(name, name)).iter("figure")
    for system in SYSTEMS:
        said = shown.alt.plain(system)
        assert len(said.split()) >= 12 and said.endswith("."), said
        assert "{" not in said
    assert classed(figure, "visually-hidden") and figure.find("svg").get("aria-hidden") == "true"
    assert len(shown.title) >= 20 and not shown.title.endswith(".")


@pytest.mark.parametrize("name", PICTURES)
def test_right_and_wrong_are_words_and_shapes_and_not_only_colours(name):
    shown = picture(name)
    said = [s.words for s in shown.shapes if isinstance(s, Label) and isinstance(s.words, str)]
    signs = [s.style for s in shown.shapes if isinstance(s, Line)]
    ticks, crosses = signs.count("good"), signs.count("bad") / 2  # a cross is two strokes
    assert ticks == sum(w.startswith("Right: ") for w in said)
    assert crosses == sum(w.startswith("Wrong: ") for w in said)
    # what is wrong is told to those who do not see it, too
    alt = shown.alt.plain().lower()
    assert not crosses or "wrong" in alt or "cross" in alt
    assert not ticks or "right" in alt


@pytest.mark.parametrize("sheet", SHEETS)
@pytest.mark.parametrize("name", PICTURES)
def test_sizes_are_those_of_the_sheet_and_to_one_scale_where_it_says_so(name, sheet):
    shown = picture(name, sheet)
    known = [f for f in engine.engine(sheet).features.values()]
    sizes = [s for s in shown.shapes if isinstance(s, Dimension)]
    for size in sizes:
        assert any(
            size.number.value in (f.nominal, f.low, f.high, f.wear)
            and size.number.text() == f.form.write(size.number.value, "metric")
            for f in known
        ), f"{size.number!r} is not on the sheet of {sheet}"
    if sizes and "not to scale" not in str(shown.exaggerated):
        scales = [math.dist(s.start, s.end) / s.number.value for s in sizes]
        assert max(scales) == pytest.approx(min(scales), rel=1e-6)
    if sizes:
        assert f"sizes of {sheet}" in str(shown.exaggerated)


def test_what_shows_no_size_of_a_sheet_is_not_to_its_scale():
    """RC-40's sheet has no height of a stem (rc40.toml)."""
    assert "height to scale" in str(picture("stem-height", "TS-16").exaggerated)
    assert picture("stem-height", "RC-40").exaggerated == "not to scale"


def test_a_picture_follows_the_sheet_that_it_is_given():
    def lengths(sheet):
        return [s.number.value for s in picture("valve-rocked", sheet).shapes if isinstance(s, Dimension)]

    assert 0.046 in lengths("TS-16")  # guide.length of ts16.toml, 46.0 mm
    assert pytest.approx(1.81 * 0.0254) in lengths("RC-40")  # of rc40.toml, 1.81 in
    assert 0.046 not in lengths("RC-40")


def used() -> set[str]:
    return {
        found[1]
        for path in (ROOT / "docs").rglob("*.md")
        for line in place.outside_fences(path.read_text(encoding="utf-8").splitlines())
        if (found := re.match(r" *///+ *drawing *\| *([\w-]+) *$", line))
    }


def test_every_picture_stands_on_a_page():
    assert used() == set(PICTURES)


def test_a_picture_weighs_little():
    weights = {name: len(picture_html(name, name).encode()) for name in PICTURES}
    assert mean(weights.values()) <= WEIGHT, weights
    assert max(weights.values()) <= 2 * WEIGHT, weights


def test_an_unknown_picture_is_refused_with_those_that_there_are():
    with pytest.raises(KeyError, match=r"no picture 'bore-gauge-rockd'; did you mean bore-gauge-rocked\?"):
        picture("bore-gauge-rockd")
    with pytest.raises(KeyError, match=r"no picture 'x'; there are .*bore-gauge-rocked"):
        picture("x")
    with pytest.raises(KeyError, match="no data sheet for 'RC-41'"):
        picture("bore-gauge-rocked", "RC-41")


@given(st.floats(-50, 50), st.floats(-50, 50), st.floats(-180, 180), st.floats(0.2, 5), st.booleans())
def test_what_is_placed_keeps_its_shape(x, y, turn, times, flip):
    """Lengths grow by `times`, 0, 0 comes to x, y, and only mirroring turns an outline over."""
    outline = ((0.0, 0.0), (30.0, 0.0), (30.0, 10.0))
    (moved,) = pen.placed(pen.line(*outline), x, y, turn, times, flip)
    a, b, c = moved.points
    assert a == pytest.approx((x, y), abs=1e-9)
    assert math.dist(a, b) == pytest.approx(30 * times) and math.dist(b, c) == pytest.approx(10 * times)
    cross = (b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0])
    assert cross == pytest.approx((-1 if flip else 1) * 300 * times**2)
