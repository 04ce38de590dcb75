"""The bench as it stands in the page: every size of the sheet once, with the limits that the sheet's own text says."""

import json
import re

import pytest

from calc.page import bench_page
from calc.page.bench import bench_html, views_html
from calc.page.live import answer
from calc.reference.engine import engine
from tests.markup import page as parsed
from tests.page.test_size import SHEETS, told


@pytest.fixture(scope="module", params=SHEETS)
def bench(request):
    name = request.param
    return name, parsed(f"<main>{bench_html(name, {})}</main>")


def rows(tree) -> dict:
    return {li.get("id"): li for li in tree.iter("li") if (li.get("id") or "").startswith("size-")}


def test_every_size_of_the_sheet_has_one_line_and_one_place_on_a_drawing(bench):
    name, tree = bench
    every = [li.get("id") for li in tree.iter("li") if li.get("id")]
    assert len(every) == len(set(every))
    assert set(every) == {f"size-{id}" for id in told(name)}
    places = [a.get("data-feature") for a in tree.iter("a") if a.get("data-feature")]
    assert sorted(places) == sorted(told(name))


def test_each_line_tells_the_limits_of_the_sheets_text(bench):
    name, tree = bench
    system = {"TS-16": "u-metric", "RC-40": "u-inch"}[name]  # each in the units that its file is written in
    seen = 0
    for id, line in told(name).items():
        if line.get("kind") or "follows" in line:
            continue
        spans = [s for s in rows(tree)[f"size-{id}"].iter("span") if s.get("class") == system]
        shown = (
            [float(number) for number in re.findall(r"\d+\.?\d*", "".join(spans[0].itertext()))]
            if spans
            else []
        )
        for what in ("low", "high", "wear"):
            if what in line:
                value = float(line[what].split()[0])
                assert any(abs(value - number) < 1e-9 for number in shown), (id, what, shown)
                seen += 1
    assert seen > 60


def test_what_a_panel_needs_stands_with_each_size(bench):
    name, tree = bench
    box = next(e for e in tree.iter("div") if e.get("data-bench") == name)
    places, tools = json.loads(box.get("data-places")), json.loads(box.get("data-tools"))
    sheet = engine(name)
    for id, row in rows(tree).items():
        line, feature = told(name)[id[5:]], sheet.features.get(id[5:])
        if feature is None:
            assert "material" in line and row.get("data-places") is None
            continue
        assert places[int(row.get("data-places"))] == list(feature.places)
        assert (tools[int(row.get("data-tool"))] if row.get("data-tool") else "") == line.get("tool", "")
        both = {"low", "wear"} <= line.keys() or {"high", "wear"} <= line.keys()
        if "follows" not in line:
            assert (row.get("data-worn") is not None) == both, id


def test_a_size_leads_to_what_it_makes(bench):
    name, tree = bench
    found = rows(tree)
    for id, line in told(name).items():
        for part in re.findall(r"[a-z_]+\.[a-z0-9_]+", line.get("follows", "")):
            assert id in found[f"size-{part}"].get("data-others").split()
            assert part in found[f"size-{id}"].get("data-others").split()


def test_another_engine_comes_with_all_its_drawings():
    reply = json.loads(answer(json.dumps({"call": "bench", "engine": "RC-40"})))
    assert reply["ok"] and reply["html"]["bench"] == bench_html("RC-40", {})
    assert "data-drawn" not in reply["html"]["bench"]


@pytest.mark.parametrize("name", ["", "XX-1"])
def test_an_engine_without_a_sheet_is_told(name):
    reply = json.loads(answer(json.dumps({"call": "bench", "engine": name})))
    assert not reply["ok"] and "no data sheet" in reply["errors"][0]["message"]


def test_parts_are_drawn_elsewhere_in_room_of_their_own():
    html = bench_page("TS-16", "limits/drawings/")
    drawn = re.findall(
        r'data-drawn="limits/drawings/#view-([\w-]+)" style="aspect-ratio:([\d.]+)/([\d.]+)"', html
    )
    there = views_html((), "TS-16", "../../")
    assert len(drawn) > 10
    for name, width, height in drawn:
        at = there.index(f'id="view-{name}"')
        assert f'viewBox="0 0 {width} {height}"' in there[at : at + 200]


def test_a_view_leads_to_the_bench():
    alone = views_html(("head",), "TS-16", "../")
    assert (
        'href="../#size-head.alloy"' in alone and 'href="../#view-guide"' in alone and 'href="#' not in alone
    )
    with pytest.raises(KeyError, match="there is no view 'hed' of TS-16; there are end, "):
        views_html(("hed",), "TS-16", "../")
