"""The engine's drawings: every size of every sheet has its one place, within a thumb's reach, and what is drawn is to scale."""

import itertools
import math
import re
import time
from dataclasses import replace
from pathlib import Path
from xml.etree import ElementTree

import pytest

from calc.page.engine import picture, place_of, views
from calc.page.engine.callouts import COLUMN, bounds, laid_out
from calc.reference import engine as sheets
from calc.reference.engine import engine
from tests import figures

FOLDER = Path(sheets.__file__).parent / "engines"
NAMES = [
    re.search(r'^name = "(.+)"', file.read_text(encoding="utf-8"), re.M)[1]
    for file in sorted(FOLDER.glob("*.toml"))
]
GROUPS = sorted({id.split(".")[0] for id in engine("TS-16").features})
VIEWS = [(name, view.name) for name in NAMES for view in views(engine(name))]


def view_of(name, view):
    return next(v for v in views(engine(name)) if v.name == view)


def svg_of(name, view, **given):
    """The picture, its paths told by places instead of steps."""
    svg = ElementTree.fromstring(picture(view_of(name, view), f"e-{view}", **given))
    for path in (e for e in svg.iter("path") if "-" not in e.get("class")):
        path.set("d", "".join(by_places(path.get("d"))))
    return svg


def by_places(steps):
    """A path of steps (M, l, h, v, a, z), each end of a step as its place; by SVG's own rules."""
    x = y = 0.0
    for letter, numbers in re.findall(r"([Mmlhvaz])([^Mmlhvaz]*)", steps):
        found = [float(n) for n in re.findall(r"-?(?:\d+\.?\d*|\.\d+)", numbers)]
        if letter == "z":
            yield "Z"
            continue
        dx, dy = {"h": (*found, 0), "v": (0, *found)}.get(letter, tuple(found[-2:]))
        x, y = (dx, dy) if letter == "M" else (x + dx, y + dy)
        yield f"{letter.upper() if letter in 'Mm' else 'L'}{x:.2f} {y:.2f}"


def test_there_are_sheets_to_draw():
    assert len(NAMES) >= 2 and len(VIEWS) > 20


@pytest.mark.parametrize("name", NAMES)
def test_every_size_and_every_material_is_a_place_of_one_view(name):
    sheet = engine(name)
    found = [id for view in views(sheet) for id in view.sizes]
    wanted = {*sheet.features, *sheet.materials}
    assert wanted - set(found) == set(), "these have no place"
    assert set(found) - wanted == set(), "these are not on the sheet"
    assert sorted(found) == sorted(set(found)), "these have two places"
    assert all(place_of(sheet, id).name for id in wanted)


def test_what_is_not_on_the_sheet_has_no_place():
    with pytest.raises(KeyError, match="no place"):
        place_of(engine("RC-40"), "cam.journal")


@pytest.mark.parametrize("name", NAMES)
def test_every_size_has_a_place_of_its_own(name):
    """One that only stands with its part, as those of a shop's own sheet may, wants a place in calc/page/engine."""
    sheet = engine(name)
    middles = {}
    for view in views(sheet):
        left, low, right, high = bounds(view)
        middles |= {p.of: p.at == ((left + right) / 2, (low + high) / 2) for p in view.places if p.size}
    assert [id for id, middle in middles.items() if middle] == []


def test_sizes_of_a_shops_own_stand_with_their_part():
    sheet = engine("RC-40")
    like = sheet.feature("rod.big_end_bore")
    own = {id: replace(like, id=id, label=label) for id, label in OWN.items()}
    more = replace(sheet, features={**sheet.features, **own})
    assert [place_of(more, id).name for id in OWN] == ["rod", "crank", "case"]
    for view in {place_of(more, id).name for id in OWN}:
        shown = next(v for v in views(more) if v.name == view)
        assert {c.place.of for c in laid_out(shown).callouts} == {p.of for p in shown.places}
    names = [p.words for v in views(more) for p in v.places if p.of in OWN]
    assert all(figures.width(line) <= COLUMN - 4 for words in names for line in words.split("\n")), names


@pytest.mark.parametrize("times", [0, 0.1, 10])
@pytest.mark.parametrize("group", GROUPS)
def test_a_slip_on_the_sheet_is_drawn_all_the_same(group, times):
    """A sheet with a wrong decimal point is looked at to find it."""
    sheet = engine("TS-16")
    wrong = {
        id: replace(f, nominal=f.nominal * times) if id.startswith(group + ".") else f
        for id, f in sheet.features.items()
    }
    drawn = views(replace(sheet, features=wrong))
    assert len(drawn) == len(views(sheet))
    for view in drawn:
        assert ElementTree.fromstring(picture(view, "p")).get("viewBox")


@pytest.mark.parametrize("group", [*GROUPS, "no such"])
def test_a_sheet_of_one_group_only_is_drawn(group):
    """The rest of the engine is in proportion."""
    sheet = engine("TS-16")
    few = {id: f for id, f in sheet.features.items() if id.startswith(group + ".")}
    drawn = views(replace(sheet, features=few, materials={}))
    assert {id for view in drawn for id in view.sizes} == set(few)
    whole, every = (picture(views(e)[0], "p") for e in (replace(sheet, features=few), sheet))
    assert whole.count("<use") == every.count("<use"), "a part that is shown nowhere larger is still drawn"


OWN = {
    "rod.beam_thickness": "Thickness of the beam at its thinnest place",
    "crank.nose": "Nose",
    "gearbox.backlash": "Backlash of gears",
}


@pytest.mark.parametrize("name", NAMES)
def test_every_view_is_reached_from_another(name):
    drawn = views(engine(name))
    ways = {p.of for view in drawn for p in view.places if p.of and not p.size}
    assert ways <= {view.name for view in drawn}, "these ways lead nowhere"
    linked = {view.name for view in drawn if view.wide and view.name in ("end", "plan", "side")} | ways
    assert {view.name for view in drawn} - linked - {"seat-exhaust"} == set()


def crossed(one, other):
    def side(a, b, c):
        return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])

    (p, q), (r, s) = one, other
    return side(p, q, r) * side(p, q, s) < 0 and side(r, s, p) * side(r, s, q) < 0


@pytest.mark.parametrize("name, view", VIEWS)
def test_places_are_links_that_a_thumb_can_hit(name, view):
    sheet, shown = engine(name), laid_out(view_of(name, view))
    for c in shown.callouts:
        left, top, wide, high = c.box
        assert wide >= 44 and high >= 44, c.place
        assert left >= 0 and left + wide <= 360.01 and top >= -0.01 and top + high <= shown.height + 0.01, (
            c.place
        )
    for a, b in itertools.combinations(shown.callouts, 2):
        (al, at, aw, ah), (bl, bt, bw, bh) = a.box, b.box
        apart = al + aw <= bl + 0.01 or bl + bw <= al + 0.01 or at + ah <= bt + 0.01 or bt + bh <= at + 0.01
        assert apart, f"{a.place.of} and {b.place.of} lie over each other"
        assert not crossed((a.foot, a.tip), (b.foot, b.tip)), f"lines to {a.place.of} and {b.place.of} cross"
    links = [a for a in svg_of(name, view).iter("a") if a.get("class") != "part"]
    assert len(links) == len(shown.callouts)
    for a in links:
        id = a.get("data-feature")
        if id:
            assert a.get("href") == f"#size-{id}"
            assert id in sheet.materials or a.get("aria-label").endswith(sheet.feature(id).label)
        else:
            assert a.get("href").startswith("#view-") and a.get("aria-label")


@pytest.mark.parametrize("name, view", VIEWS)
def test_words_stand_within_their_targets(name, view):
    written = dict.fromkeys(view_of(name, view).sizes, "00.000 mm")
    for given in ({}, {"written": written}):
        svg = svg_of(name, view, **given)
        anchors = {a: g.get("text-anchor") for g in svg.iter("g") for a in g.findall("a")}
        for a in svg.iter("a"):
            if a.get("class") == "part":
                continue
            hit = next(e for e in a.iter("path") if e.get("class") == "hit").get("d")
            xs, ys = zip(*[(float(x), float(y)) for x, y in re.findall(r"(-?[\d.]+) (-?[\d.]+)", hit)])
            text = a.find("text")
            x, y = float(text.get("x")), float(text.get("y"))
            lines = [("".join(e.itertext()), float(e.get("dy"))) for e in text.findall("tspan")]
            for line, down in ((text.text, 0.0), *lines):
                y += down
                wide = figures.width(line)
                left = {"start": x, "middle": x - wide / 2, "end": x - wide}[anchors[a]]
                told = f"{line!r} of {a.get('href')}"
                assert left >= min(xs) - 0.5 and left + wide <= max(xs) + 0.5, f"{told} is too long"
                assert y - 0.75 * 12 >= min(ys) - 1 and y + 0.22 * 12 <= max(ys) + 1, (
                    f"{told} is too low or high"
                )


@pytest.mark.parametrize("name, view", VIEWS)
def test_drawings_stand_on_their_paper(name, view):
    svg = svg_of(name, view)
    for a in svg.iter("a"):
        for text in a.findall("text"):
            a.remove(text)  # looked at above, line by line
    assert not figures.faults(svg)


@pytest.mark.parametrize("name", NAMES)
def test_the_rod_is_to_scale(name):
    """Its two bores and how far they lie apart, measured on the paper with a rule, are in the sheet's proportion."""
    sheet, svg = engine(name), svg_of(name, "rod")
    round_ = [(float(e.get("cx")), float(e.get("cy")), float(e.get("r"))) for e in svg.iter("circle")]
    big = max(round_, key=lambda c: c[2])
    small = min(round_, key=lambda c: c[1] + c[2] * 1e-3)
    bush = min((c for c in round_ if abs(c[1] - small[1]) < 0.2), key=lambda c: c[2])
    apart = big[1] - small[1]
    assert big[2] * 2 / apart == pytest.approx(
        sheet.feature("rod.big_end_bore").nominal / sheet.feature("rod.centre_distance").nominal,
        abs=0.2 / apart,
    )
    assert bush[2] * 2 / apart == pytest.approx(
        sheet.feature("rod.bush_bore").nominal / sheet.feature("rod.centre_distance").nominal, abs=0.2 / apart
    )


@pytest.mark.parametrize("name", NAMES)
def test_what_is_measured_between_arrows_is_to_scale(name):
    """Every size that is shown between two arrows: how far these lie apart, against the sheet."""
    sheet, wrong, checked = engine(name), {}, 0
    for view in views(sheet):
        at, scale = laid_out(view).at, laid_out(view).scale
        for place in view.places:
            if place.size and place.end and sheet.feature(place.of).form.kind.name == "length":
                (x1, y1), (x2, y2) = at(place.at), at(place.end)
                drawn, wanted = math.hypot(x2 - x1, y2 - y1), sheet.feature(place.of).nominal * scale
                checked += 1
                if drawn != pytest.approx(wanted, rel=0.01, abs=0.15):
                    wrong[place.of] = drawn, wanted
    assert not wrong
    assert checked > len(sheet.features) / 3


@pytest.mark.parametrize("name", NAMES)
def test_sizes_are_written_at_their_places(name):
    sheet = engine(name)
    view = place_of(sheet, "rod.centre_distance")
    number = sheet.feature("rod.centre_distance").number("nominal")
    svg = ElementTree.fromstring(picture(view, "p", written={"rod.centre_distance": number}))
    (link,) = [a for a in svg.iter("a") if a.get("class") != "part"]
    words = ["".join(e.itertext()) for e in link.iter("tspan") if (e.get("class") or "").startswith("u-")]
    assert words == [number.text("metric"), number.text("inch")]


@pytest.mark.parametrize("name", NAMES)
def test_every_view_of_an_engine_together_is_light_and_quick(name):
    picture(views(engine(name))[0], "warm")
    begun = time.perf_counter()
    drawn = [picture(view, view.name) for view in views(engine(name))]
    assert time.perf_counter() - begun < 1
    # the whole engine three times, and its parts as far as there are sizes to show on them
    assert sum(len(svg.encode()) for svg in drawn) < 45_000 + 560 * len(engine(name).features)
