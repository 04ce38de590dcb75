"""The look in a real browser: the reader's units and scheme, found by the trade's words, led on from the front door."""

import json
import re

import pytest
from playwright.sync_api import expect

from calc.stations.index import find, ids
from tests.browser.conftest import PHONE, fresh_page

pytestmark = pytest.mark.browser


def test_units_are_switched_by_keyboard_and_kept(page, addresses):
    address = next(a for a in addresses if a.startswith("heads/"))
    page.goto("heads/seats/")
    size = page.locator(".outputs.main dd").first
    expect(size).to_contain_text(" mm", use_inner_text=True)
    page.locator("[data-units-choice=inch]").focus()
    page.keyboard.press("Enter")
    expect(size).to_contain_text(" in", use_inner_text=True)
    expect(size).not_to_contain_text("mm", use_inner_text=True)
    expect(page.get_by_role("button", name="in", exact=True)).to_have_attribute("aria-pressed", "true")
    page.goto(address)
    expect(page.get_by_role("button", name="in", exact=True)).to_have_attribute("aria-pressed", "true")
    assert page.evaluate("document.documentElement.dataset.units") == "inch"


def test_without_scripts_the_page_holds_metric_numbers(browser, server):
    with fresh_page(browser, base_url=server, java_script_enabled=False, service_workers="block") as page:
        page.goto("heads/seats/")
        expect(page.locator(".outputs.main dd").first).to_have_text(
            re.compile(r"^[−\d.]+ mm"), use_inner_text=True
        )


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_the_device_chooses_light_or_dark(scheme, browser, server):
    with fresh_page(browser, base_url=server, color_scheme=scheme, service_workers="block") as page:
        page.goto("")
        red = int(re.search(r"\d+", page.evaluate("getComputedStyle(document.body).backgroundColor"))[0])
        assert red > 200 if scheme == "light" else red < 60
        page.evaluate(
            "document.body.removeAttribute('data-md-color-media'); document.body.dataset.mdColorScheme = 'default'"
        )
        early = int(re.search(r"\d+", page.evaluate("getComputedStyle(document.body).backgroundColor"))[0])
        assert early == red, "before the theme's script has run, the page must have its colour already"


def test_search_finds_each_calculator_by_the_words_of_the_trade(page):
    page.goto("")
    field = page.get_by_placeholder("Search")
    field.click()
    for calculator in map(find, ids()):
        assert calculator.finds
        for words in (calculator.title, *calculator.finds):
            field.fill(words[:-1])
            field.press(words[-1])  # the theme searches when a key goes up
            expect(
                page.locator(f'.md-search-result__link[href*="#{calculator.id}-title"]').first, words
            ).to_be_visible(timeout=20_000)


def test_the_search_fails_on_no_beginning_of_a_word(page, site):
    """The theme's search tells of its own failure on the console and then finds nothing."""
    index = json.loads((site / "search/search_index.json").read_text(encoding="utf-8"))
    words = {
        word
        for entry in index["docs"]
        for word in re.findall(r"[a-z0-9]+", re.sub(r"<[^>]+>", " ", entry["text"]).lower())
    }
    starts = sorted({word[:length] for word in words for length in (1, 2, 3)})
    assert len(starts) > 1000
    failed = []
    page.on("console", lambda said: failed.append(said.text) if "Invalid query" in said.text else None)
    page.goto("")
    found = page.evaluate(
        """async ([starts, index]) => {
        const worker = new Worker(JSON.parse(document.querySelector("#__config").textContent).search);
        const answer = (kind, message) => new Promise((go) => {
            worker.onmessage = ({ data }) => data.type === kind && go(data.data);
            worker.postMessage(message);
        });
        const [SETUP, READY, QUERY, RESULT] = [0, 1, 2, 3];
        await answer(READY, { type: SETUP, data: { ...index, options: { suggest: false } } });
        let found = 0;
        for (const start of starts) found += Boolean((await answer(RESULT, { type: QUERY, data: start })).items.length);
        worker.terminate();
        return found;
    }""",
        [starts, index],
    )
    assert failed == []
    assert found > 1000, "of some words (“almost”, the 005 of 0.005) the search keeps nothing"


def test_the_menu_on_a_phone_leads_to_each_station_and_through_its_own(browser, server):
    """With and without scripts, from a page that has navigation at its side on a wide screen and from one that has not."""
    menu = ".md-sidebar--primary"
    for scripts in (True, False):
        with fresh_page(
            browser, base_url=server, viewport=PHONE, java_script_enabled=scripts, service_workers="block"
        ) as page:
            page.goto("")
            page.locator(".md-header__button[for=__drawer]").click()
            page.locator(menu).get_by_role("link", name="Stations").click()
            expect(page.get_by_role("heading", level=1)).to_have_text("Stations")
            page.locator("article").get_by_role("link", name="Heads", exact=True).click()
            expect(page.get_by_role("heading", level=1)).to_have_text("Heads")
            page.locator(".md-header__button[for=__drawer]").click()
            page.locator(menu).get_by_role("link", name="Guides").click()
            expect(page.get_by_role("heading", level=1)).to_have_text("Guides")
            inside = page.locator(f"{menu} [data-md-level='2']")
            expect(inside).to_have_count(1)  # of its own station only
            page.locator(".md-header__button[for=__drawer]").click()
            page.locator(f"{menu} [data-md-level='2'] > label.md-nav__title").click()
            expect(page.locator(menu).get_by_role("link", name="Threads")).to_be_in_viewport()
            expect(page.locator(f'{menu} a[href*="threads/"]')).to_have_count(1)


def test_a_wrong_address_leads_back(page):
    page.goto("nowhere/at/all/")
    page.wrong.clear()  # the browser tells of the 404 itself
    expect(page.get_by_role("heading", level=1)).to_have_text("This page is not here")
    page.get_by_role("link", name="start at the bench").click()
    expect(page.get_by_role("heading", level=1)).to_have_text("What did you measure?")


def test_the_front_door_leads_each_reader_on_in_one_tap(browser, server):
    with fresh_page(browser, base_url=server, viewport=PHONE, service_workers="block") as page:
        for words, title in (
            ("Check a number", "Check a number"),
            ("Stations", "Stations"),
            ("Job", "The job on the bench"),
            ("Box of parts", "I have a box of parts"),
        ):
            page.goto("")
            page.locator(".door", has=page.get_by_text(words, exact=True)).click()
            expect(page.get_by_role("heading", level=1)).to_have_text(title)
