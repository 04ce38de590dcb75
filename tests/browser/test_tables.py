"""A table that says it can be sorted: by any column, both ways, in the reader's units."""

import re

import pytest
from playwright.sync_api import expect

from calc.reference.materials import MATERIALS
from tests.browser.conftest import DESKTOP, PHONE

pytestmark = pytest.mark.browser


def column(table, number: int) -> list[str]:
    return [row.inner_text().strip() for row in table.locator(f"tbody tr > :nth-child({number})").all()]


@pytest.mark.parametrize("units", ["metric", "inch"])
def test_materials_are_sorted_by_any_column_and_back(page, units):
    page.goto("measuring/fits/")
    page.locator(f"[data-units-choice={units}]").click()
    table = page.locator("table[data-sortable]")
    assert len(column(table, 1)) == len(MATERIALS)
    button = table.locator("thead th").nth(1).locator("button")
    for order, turned in (("ascending", False), ("descending", True)):
        button.focus()
        page.keyboard.press("Enter")
        expect(table.locator("thead th").nth(1)).to_have_attribute("aria-sort", order)
        numbers = [float(text) for text in column(table, 2)]
        assert numbers == sorted(numbers, reverse=turned) and len(set(numbers)) > 5
    table.locator("thead th button").first.click()
    names = column(table, 1)
    # by their first word: where signs and spaces stand is the browser's language's affair
    assert names == sorted(names, key=lambda name: re.match(r"\w+", name.casefold())[0]) and set(names) == {
        m.name for m in MATERIALS.values()
    }
    expect(table.locator("[aria-sort]")).to_have_count(1)


@pytest.mark.parametrize(
    "address, columns",
    [
        ("limits/", ["Size", "As made", "Wear limit"]),
        (
            "rods/resizing/",
            ["Rod", "Big end", "Small end", "Whole", "Off the big end's pad", "Off the small end's pad"],
        ),
    ],
)
def test_a_wide_table_stands_row_by_row_on_a_phone_and_is_a_table_to_assistive_technology_all_the_same(
    address, columns, page
):
    page.set_viewport_size(PHONE)
    page.goto(address)
    unfold(page)
    table = page.locator("table.by-row", has=page.locator("th", has_text=columns[-1])).first
    expect(table.locator("tbody tr").first.locator(":scope > *").nth(1)).to_have_css("display", "flow-root")
    assert table.evaluate("e => e.parentElement.scrollWidth <= e.parentElement.clientWidth")
    # What Chromium hands on: it reads the same as the table on a wide screen.
    narrow = heard(table)
    assert [name for role, name in narrow if role == "columnheader"] == columns
    assert sum(role == "row" for role, _ in narrow) == table.locator("tr").count()
    assert sum(role == "rowheader" for role, _ in narrow) == table.locator("tbody tr").count()
    page.set_viewport_size(DESKTOP)
    expect(table.locator("tbody tr").first.locator(":scope > *").nth(1)).to_have_css("display", "table-cell")
    filled = {"cell", "rowheader", "columnheader"}
    without_number = [(role, name.removeprefix("Rod ")) for role, name in narrow if role in filled and name]
    assert without_number == [(role, name) for role, name in heard(table) if role in filled and name]


def unfold(page) -> None:
    """Open all folds of a page."""
    page.locator("article details").evaluate_all("all => all.forEach((one) => (one.open = true))")


def heard(table) -> list[tuple[str, str]]:
    """Roles and names of a table's parts in the browser's own accessibility tree."""
    table.evaluate("e => e.id ||= 'heard'")
    asked = table.page.context.new_cdp_session(table.page)
    node = asked.send(
        "Runtime.evaluate", {"expression": f"document.getElementById('{table.get_attribute('id')}')"}
    )["result"]["objectId"]
    nodes = asked.send("Accessibility.queryAXTree", {"objectId": node})["nodes"]
    return [(n["role"]["value"], n.get("name", {}).get("value", "")) for n in nodes if not n["ignored"]]
