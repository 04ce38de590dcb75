"""The pages of sources: every calculator on its station's, each outside number under whom it concerns, old links led on."""

import re
import sys
from types import ModuleType, SimpleNamespace

import pytest
from markdown import Markdown

from calc.stations import index as stations
from scripts.mdx import SizebookExtension, checks, place
from tests.checks import Check


def html(station=""):
    """A page of sources as the build makes it."""
    markdown = Markdown(extensions=[SizebookExtension(), "attr_list", "md_in_html", "tables", "toc"])
    with place.page(f"docs/sources/{station or 'index'}.md"):
        return markdown.convert(f"/// checks | {station}\n///" if station else "/// checks\n///")


@pytest.fixture(scope="module")
def pages():
    return {name: html(name) for name in ("", *stations.STATIONS)}


def test_a_link_of_when_all_stood_on_one_page_finds_a_row_that_leads_on(pages):
    for station in stations.STATIONS:
        for calculator in map(stations.find, stations.station(station).CALCULATORS):
            anchor = re.sub(r"[^\w]+", "-", calculator.title.lower()).strip("-")  # as headings have it
            row = next(row for row in pages[""].split("<tr") if f'id="{anchor}"' in row)
            assert calculator.title in row
            assert f'href="{station}.md#{anchor}"' in row
            assert f'<h2 id="{anchor}"' in pages[station]
    for anchor in ("number-by-number", "what-all-of-them-share"):
        assert f'id="{anchor}"' in pages[""]


def test_the_table_at_a_glance_counts_what_the_stations_list(pages):
    counted = [
        sum(map(int, re.findall(r"(\d+) × ", row)))
        for row in pages[""].split("</table>")[0].split("<tr")
        if "× " in row or "none yet" in row
    ]
    listed = [
        int(count)
        for station in stations.STATIONS
        for count in re.findall(r"(\d+) outside numbers|No outside number yet()", pages[station])
        for count in [count[0] or 0]
    ]
    assert counted == listed and sum(listed) > 500


def test_a_station_that_is_not_there_is_refused():
    with pytest.raises(place.MarkdownError, match=r"docs/sources/haeds.md:1: .*did you mean heads"):
        html("haeds")


ROW = Check("Any", "a number", {}, 1.0, 0.1, lambda: 1.0, "by definition", "limit")


@pytest.fixture
def invented(monkeypatch):
    """A calculator in a folder of modules, two formula modules, each with one row."""

    def module(name, **names):
        made = ModuleType(name)
        made.__dict__.update(names)
        monkeypatch.setitem(sys.modules, name, made)
        return made

    near, far = module("calc.formulas.near"), module("calc.formulas.far")
    module("calc.stations.any.grip", near=near)
    module("calc.stations.any.grip.loads", far=far)
    module("calc.stations.any.gripping", other=module("calc.formulas.other"))
    tables = {
        name: name
        for name in (
            "calc.stations.any.grip",
            "calc.formulas.near",
            "calc.formulas.far",
            "calc.formulas.other",
        )
    }
    monkeypatch.setattr(checks.checks, "tables", lambda: tables)
    monkeypatch.setattr(checks.checks, "rows_of", lambda name: [name])
    monkeypatch.setattr(checks.checks, "every", lambda: [ROW])
    return SimpleNamespace(id="grip", function=SimpleNamespace(__module__="calc.stations.any.grip"))


def test_a_calculator_of_several_modules_has_the_numbers_of_all_that_they_use(invented):
    assert checks._rows(invented) == ["calc.stations.any.grip", "calc.formulas.near", "calc.formulas.far"]


def test_a_number_that_is_not_met_stops_the_build():
    with pytest.raises(ValueError, match=r"Any, a number: 1.0 does not meet 2.0"):
        checks._table([Check("Any", "a number", {}, 2.0, 0.1, lambda: 1.0, "by definition", "limit")])
