"""A table that says it can be sorted: by any column, both ways, in the reader's units."""
import re

import pytest
from playwright.sync_api import expect

from calc.materials import MATERIALS

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
    assert names == sorted(names, key=lambda name: re.match(r"\w+", name.casefold())[0]) and set(names) == {m.name for m in MATERIALS.values()}
    expect(table.locator("[aria-sort]")).to_have_count(1)
