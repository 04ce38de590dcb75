"""The look in a real browser: fits every width, large enough to hit, readable on paper, found by the trade's words."""

import json
import re

import pytest
from playwright.sync_api import expect

from calc.stations import find, ids
from tests.browser.conftest import DESKTOP, PHONE, fresh_page

pytestmark = pytest.mark.browser

NARROW = {"width": 320, "height": 640}  # WCAG 2.2, 1.4.10 Reflow: 320 CSS px, which is 1280 px at 400 %
ZOOMED = {"width": 640, "height": 450}  # a desktop of 1280 x 900 at 200 %
TARGET = 44  # px, WCAG 2.2, 2.5.5

TARGETS = ", ".join((
    ".units button", ".md-header__button:not(.md-logo)", ".door", ":is(.station, .stations) li a",
    ".calculator :is(button, input, select, summary)",
))


def open_all(page):
    page.evaluate("for (const d of document.querySelectorAll('details')) d.open = true")


@pytest.mark.parametrize("size", [NARROW, PHONE, ZOOMED, DESKTOP], ids=lambda size: str(size["width"]))
def test_no_page_is_wider_than_the_screen(size, browser, server, addresses):
    with fresh_page(browser, base_url=server, viewport=size, service_workers="block") as page:
        for address in addresses:
            page.goto(address)
            open_all(page)
            assert page.evaluate("document.documentElement.scrollWidth") <= size["width"], address


def test_targets_are_large_enough_for_a_thumb(browser, server, addresses):
    with fresh_page(browser, base_url=server, viewport=PHONE, service_workers="block") as page:
        met = 0
        for address in addresses:
            page.goto(address)
            open_all(page)
            for box in page.evaluate(
                """targets => [...document.querySelectorAll(targets)].filter(e => e.checkVisibility()).map(e => {
                    const { width, height } = e.getBoundingClientRect();
                    return { width, height, what: e.outerHTML.slice(0, 120) };
                })""", TARGETS,
            ):
                met += 1
                assert min(box["width"], box["height"]) >= TARGET - 0.5, (address, box)
        assert met > 20


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
        expect(page.locator(".outputs.main dd").first).to_have_text(re.compile(r"^[−\d.]+ mm"), use_inner_text=True)


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_the_device_chooses_light_or_dark(scheme, browser, server):
    with fresh_page(browser, base_url=server, color_scheme=scheme, service_workers="block") as page:
        page.goto("")
        red = int(re.search(r"\d+", page.evaluate("getComputedStyle(document.body).backgroundColor"))[0])
        assert red > 200 if scheme == "light" else red < 60
        page.evaluate("document.body.removeAttribute('data-md-color-media'); document.body.dataset.mdColorScheme = 'default'")
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
            expect(page.locator(f'.md-search-result__link[href*="#{calculator.id}-title"]').first, words).to_be_visible(timeout=20_000)


def test_the_search_fails_on_no_beginning_of_a_word(page, site):
    """The theme's search tells of its own failure on the console and then finds nothing."""
    index = json.loads((site / "search/search_index.json").read_text(encoding="utf-8"))
    words = {word for entry in index["docs"] for word in re.findall(r"[a-z0-9]+", re.sub(r"<[^>]+>", " ", entry["text"]).lower())}
    starts = sorted({word[:length] for word in words for length in (1, 2, 3)})
    assert len(starts) > 1000
    failed = []
    page.on("console", lambda said: failed.append(said.text) if "Invalid query" in said.text else None)
    page.goto("")
    found = page.evaluate("""async ([starts, index]) => {
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
    }""", [starts, index])
    assert failed == []
    assert found > 1000, "of some words (“almost”, the 005 of 0.005) the search keeps nothing"


@pytest.mark.parametrize(("paper", "width"), [("A4", 680), ("Letter", 703)])
def test_paper_holds_the_result_and_nothing_else(paper, width, browser, server):
    """Width between the margins of 15 mm: 180 mm and 8.5 in − 30 mm at 96 px to the inch."""
    with fresh_page(browser, base_url=server, viewport={"width": width, "height": 900}, color_scheme="dark", service_workers="block") as page:
        page.goto("heads/seats/")
        open_all(page)
        page.emulate_media(media="print")
        live = page.locator("live-calculator").first
        for gone in (".md-header", ".md-sidebar--primary", ".units", ".md-footer", ".keys", ".reset"):
            assert not any(e.is_visible() for e in page.locator(gone).all()), gone
        for kept in (".verdict-state", ".verdict-do", ".outputs.main dd", "input[data-entry]", ".drawing svg", ".cautions"):
            expect(live.locator(kept).first).to_be_visible()
        assert page.evaluate("getComputedStyle(document.body).color") == "rgb(0, 0, 0)"
        wide = live.evaluate(
            "(e, width) => [...e.querySelectorAll('*')].filter(x => x.checkVisibility() && !x.closest('.visually-hidden') && x.getBoundingClientRect().right > width + 1)"
            ".map(x => x.outerHTML.slice(0, 100))", width)
        assert wide == []


def test_a_wrong_address_leads_back(page):
    page.goto("nowhere/at/all/")
    page.wrong.clear()  # the browser tells of the 404 itself
    expect(page.get_by_role("heading", level=1)).to_have_text("This page is not here")
    page.get_by_role("link", name="start at the bench").click()
    expect(page.get_by_role("heading", level=1)).to_have_text("Sizebook")


def test_the_front_door_leads_each_reader_on_in_one_tap(browser, server):
    with fresh_page(browser, base_url=server, viewport=PHONE, service_workers="block") as page:
        for words, title in (("Check a number", "Check a number"), ("Learn a job", "Learn a job"), ("I have a box of parts", "I have a box of parts")):
            page.goto("")
            door = page.locator(".door", has_text=words)
            door.click()
            expect(page.get_by_role("heading", level=1)).to_have_text(title)
