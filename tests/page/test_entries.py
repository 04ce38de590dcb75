"""The form's markup: what a reader's browser sends must give back what was worked out when the page was built."""

import re
from html import unescape

import pytest

from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.page import calculator_html
from calc.page.entries import entry_fields
from calc.reference.engine import demo
from calc.stations.index import find


def fields(html):
    """{name: attributes} of every entry."""
    return {
        re.search(r' name="([^"]*)"', tag)[1]: {
            k: unescape(v) for k, v in re.findall(r' ([\w-]+)="([^"]*)"', tag)
        }
        for tag in re.findall(r"<(?:input|select)[^>]*data-entry[^>]*>", html)
    }


def sent(entries):
    """What the browser sends of what a page fills in (as entries.mjs has it)."""
    return {name: at["data-preset"] for name, at in entries.items() if at.get("data-preset")}


CASES = [
    ("seat-fit", {"pocket_bore": "37.48", "pocket_bore.part": "26"}),
    ("reading-verdict", {"low": "", "reading": "54.99 ± 0.004 mm"}),
    ("round-and-taper", {"diameters": "51.99; 51.98 | 51.99; 51.99 | | 51.97; 51.98", "low": "51.95"}),
    ("round-and-taper", {"diameters.2.1": "51.990"}),
    ("stack-up", {"chain": "10; 0.1; 0.1; 1 | 9; 0.1; 0; -1", "low": "0.5", "high": ""}),
    ("gauge-uncertainty", {"readings": "10.001; 10.003", "master": "0.001"}),
]


@pytest.mark.parametrize("id, presets", CASES)
@pytest.mark.parametrize("system", ["metric", "inch"])
def test_what_a_page_fills_in_means_the_same_in_either_system(id, presets, system):
    standing = Standing(demo())
    built = evaluate(find(id), presets, standing=standing)
    live = evaluate(find(id), sent(fields(calculator_html(id, presets, filled=standing))), system, standing)
    assert {k: float(n) for k, n in live.outputs.items()} == pytest.approx(
        {k: float(n) for k, n in built.outputs.items()}, rel=1e-12
    )
    assert live.verdict.headline.plain() == built.verdict.headline.plain()


def test_an_example_is_a_hint_and_nothing_is_filled_in():
    entries = fields(calculator_html("reading-verdict", {"low": "50 mm"}))
    assert (
        entries["low"]["placeholder"] == entries["low"]["data-metric"] == "50.000"
        and entries["low"]["data-inch"] == "1.96850"
    )
    assert not any("value" in at or "data-preset" in at for at in entries.values())


def test_an_empty_entry_is_shown_empty_and_said_to_be_allowed():
    html = calculator_html("reading-verdict", {"low": ""})
    low = fields(html)["low"]
    assert (
        low["data-metric"] == low["data-inch"] == ""
        and low["placeholder"] == " "
        and "May be left empty." in html
    )


def test_cells_show_the_example_in_both_systems_and_gaps_as_gaps():
    entries = fields(calculator_html("round-and-taper"))
    assert (
        entries["diameters.1.1"]["data-metric"] == "51.994"
        and entries["diameters.1.1"]["data-inch"] == "2.04701"
    )
    assert entries["diameters.1.3"]["data-metric"] == "" == entries["diameters.4.1"]["data-inch"]
    assert entries["diameters.2.2"]["aria-label"] == "Diameters at stations, 2, Across B"


def test_the_unit_of_a_column_stands_above_it_and_signs_that_a_keypad_lacks_below():
    html = calculator_html("stack-up")
    heads = re.search(r"<thead>(.*?)</thead>", html)[1]
    assert heads.count('<span class="u-metric">mm</span>') == 3  # the way has none
    grid = html[html.index("<fieldset") : html.index("</fieldset>")]
    assert 'data-key="−"' in grid and 'data-key="/"' in grid
    cells = grid[grid.index("<tbody") :]  # each with its own, for where the screen is too narrow for columns
    assert (
        cells.count('class="unit"') == cells.count('data-unit-metric="mm"') > 3
        and 'data-head="Minus"' in cells
    )
    plain = calculator_html("round-and-taper")
    grid = plain[plain.index("<fieldset") : plain.index("</fieldset>")]
    assert 'data-key="−"' not in grid and 'data-key=" ± "' in grid


def test_rows_that_count_with_another_choice_only_are_put_away():
    """As single fields are: the readings of a dial, where the lobe is asked for."""
    calculator = find("valve-to-piston")
    for how, idle in (("lobe", True), ("dial", False)):
        fields = str(entry_fields(calculator, evaluate(calculator, {"how": how}).taken, "a", {}))
        (rows,) = re.findall(r"<fieldset[^>]*>", fields)
        assert ('data-from="idle"' in rows) == idle
