"""A calculator fits a phone's screen: the strip that stays in sight, the folds that remember, the pages' length."""

import re

import pypdfium2
import pytest
from playwright.sync_api import expect

from tests.browser.conftest import PHONE, fresh_page
from tests.browser.live import entry, fill_in, opened, part, reply, shows

pytestmark = pytest.mark.browser

KEYBOARD_UP = {"width": 390, "height": 450}
LANDSCAPE = {"width": 844, "height": 390}

# Of each entry, once it has the focus: whether it, its signs and the strip above it are all in sight, clear of each other.
FOCUS_EACH = """async () => {
    const wrong = [], header = () => document.querySelector('.md-header').getBoundingClientRect().bottom;
    let met = 0;
    for (const fold of document.querySelectorAll('live-calculator details')) fold.open = true;
    for (const live of document.querySelectorAll('live-calculator')) {
        for (const entry of live.querySelectorAll('[data-entry]')) {
            if (!entry.checkVisibility()) continue;
            document.activeElement?.blur();
            scrollTo(0, 0);
            entry.focus();
            await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
            met++;
            const box = entry.closest('.entry').getBoundingClientRect();
            const strip = live.querySelector('.verdict-head').getBoundingClientRect();
            const state = live.querySelector('.verdict-state').getBoundingClientRect();
            const keys = entry.closest('[data-field]').querySelector('.keys')?.getBoundingClientRect() ?? box;
            const told = `${live.id} ${entry.name}: `;
            if (state.top < header() - 1 || state.bottom > innerHeight) wrong.push(told + 'the state is out of sight');
            if (strip.bottom > box.top + 1) wrong.push(told + `the strip lies over it by ${strip.bottom - box.top}`);
            if (box.bottom > innerHeight || keys.bottom > innerHeight + 1) wrong.push(told + `it or its signs are below the screen, ${box.bottom} ${keys.bottom}`);
            if (strip.height > 75) wrong.push(told + `the strip is ${strip.height} high`);
        }
    }
    return { met, wrong };
}"""


@pytest.mark.parametrize("size", [KEYBOARD_UP, LANDSCAPE], ids=["keyboard up", "landscape"])
def test_with_a_keyboard_up_state_and_headline_stay_in_sight_over_each_field(
    size, browser, server, with_calculators
):
    with fresh_page(
        browser, base_url=server, viewport=size, reduced_motion="reduce", service_workers="block"
    ) as page:
        for address in with_calculators:
            page.goto(address)
            found = page.evaluate(FOCUS_EACH)
            assert found["met"] > 3 and not found["wrong"], f"{address}\n" + "\n".join(found["wrong"][:20])


def test_what_is_still_to_be_read_stays_in_sight_though_it_is_long(browser, server):
    """A list of many names is the longest headline that there is."""
    with fresh_page(browser, base_url=server, viewport=KEYBOARD_UP, service_workers="block") as page:
        page.goto("rods/resizing/")
        live = page.locator("live-calculator[data-calculator=rod-align]")
        entry(live, "offset").fill("0.1")
        expect(live.locator(".verdict")).to_have_class("verdict verdict-awaited")
        found = page.evaluate(FOCUS_EACH)
        assert not [each for each in found["wrong"] if each.startswith("rod-align")]


MOST_SCREENS = 20  # of a phone, for a whole procedure with its pictures and calculators


@pytest.mark.parametrize("address", ["lifters/solid-to-hydraulic/", "heads/seats/", "rods/resizing/"])
def test_a_long_write_up_with_its_calculators_is_no_more_screens_than_a_thumb_will_scroll(
    address, browser, server
):
    with fresh_page(browser, base_url=server, viewport=PHONE, service_workers="block") as page:
        page.goto(address)
        high = page.evaluate("document.documentElement.scrollHeight")
        assert high <= MOST_SCREENS * PHONE["height"], f"{high / PHONE['height']:.1f} screens"


def test_each_calculator_first_shows_verdict_limit_what_to_do_and_fields_and_all_else_folded(
    browser, server, with_calculators
):
    with fresh_page(browser, base_url=server, viewport=PHONE, service_workers="block") as page:
        for address in with_calculators:
            page.goto(address)
            for live in page.locator("live-calculator").all():
                places = [
                    live.locator(each).first.bounding_box()["y"]
                    for each in ("h3", ".verdict-state", ".outputs.main", ".verdict-do", ".fields", ".fold")
                ]
                folds = live.locator("details")
                assert places[:5] == sorted(places[:5])
                assert not folds.evaluate_all("all => all.filter((one) => one.open).length")
                for hidden in (".outputs:not(.main)", "figure", ".working", ".sources", ".finds", ".hint"):
                    assert not [each for each in live.locator(hidden).all() if each.is_visible()], hidden


def test_a_fold_is_found_as_it_was_left_when_the_calculator_is_met_again(page, address):
    live = opened(page, address)
    numbers = live.locator("details[data-keep=numbers]")
    numbers.locator("summary").click()
    expect(numbers.locator("dl")).to_be_visible()
    page.reload()
    expect(live.locator("details[data-keep=numbers]")).to_have_attribute("open", "")
    expect(live.locator("details[data-keep=figures]")).not_to_have_attribute("open", "")
    other = page.locator("live-calculator[data-calculator=seat-cut] details[data-keep=numbers]")
    expect(other).not_to_have_attribute("open", "")  # of this calculator, not of all
    live.locator("details[data-keep=numbers] summary").click()
    page.reload()
    expect(live.locator("details[data-keep=numbers]")).not_to_have_attribute("open", "")


def test_a_fold_stays_open_while_entries_change(page, address):
    live = opened(page, address)
    live.locator("details[data-keep=figures] summary").click()
    fill_in(live)
    shows(live, reply(live)["html"]["verdict"])
    expect(live.locator("figure").first).to_be_visible()


def test_rows_of_a_grid_come_with_the_one_above_them_or_all_at_once(page):
    page.goto("rods/resizing/")
    live = page.locator("live-calculator[data-calculator=big-end-resize]")

    def cell(name):
        return live.locator(f'[data-entry][name="{name}"]')

    rows = live.locator("fieldset", has_text="Bores before the cut").locator("tbody tr")
    expect(rows).to_have_count(4)
    assert [row.is_visible() for row in rows.all()] == [True, False, False, False]
    cell("bores.1.1").fill("56.03")
    assert [row.is_visible() for row in rows.all()] == [True, True, False, False]
    live.locator("details[data-keep=rows-bores] summary").click()
    assert all(row.is_visible() for row in rows.all())
    cell("bores.4.1").fill("56.03")
    live.locator("details[data-keep=rows-bores] summary").click()
    assert [row.is_visible() for row in rows.all()] == [True, True, False, True]  # what was typed is in sight


def test_without_scripts_all_that_is_folded_is_there_to_be_opened(browser, server):
    with fresh_page(browser, base_url=server, java_script_enabled=False, service_workers="block") as page:
        page.goto("heads/seats/")
        live = page.locator("live-calculator[data-calculator=seat-fit]")
        for name, shown in (
            ("working", ".sources li"),
            ("care", "li"),
            ("about", ".finds"),
            ("figures", "figcaption"),
        ):
            fold = live.locator(f"details[data-keep={name}]")
            fold.locator("summary").first.click()
            expect(fold.locator(shown).first).to_be_visible()


def test_a_danger_of_these_very_numbers_stands_in_full_and_that_of_an_example_in_a_line(page):
    page.goto("heads/leak-testing/")
    live = page.locator("live-calculator[data-calculator=leak-test]")
    expect(live.locator(".cautions")).to_have_count(0)
    expect(live.locator("details[data-keep=raised] summary")).to_contain_text("vacuum")
    for name, text in (("start", "60"), ("end", "59.5"), ("time", "60"), ("volume", "250")):
        entry(live, name).fill(text)
    entry(live, "valve").select_option("intake")
    expect(live.locator(".cautions")).to_be_visible()
    expect(part(live, "result")).to_contain_text("can implode")


def test_paper_has_all_that_a_screen_folds_but_the_working(browser, server, with_calculators):
    """What was printed before anything was folded: purpose, every number, drawing, table and caution."""
    with fresh_page(browser, base_url=server, viewport=PHONE, service_workers="block") as page:
        for address in with_calculators:
            page.goto(address)
            told = page.locator(
                "live-calculator :is(.purpose, .output dt, figcaption, caption, .care li, .remarks li)"
            ).all_text_contents()
            assert len(told) > 5
            sheets = pypdfium2.PdfDocument(page.pdf(format="A4"))
            printed = letters("".join(sheet.get_textpage().get_text_range() for sheet in sheets))
            missing = [words for words in told if letters(first_words(words)) not in printed]
            assert not missing, (address, missing)
            assert "workingsources" not in printed


def first_words(text: str) -> str:
    """As far as no size and no line's end can come between."""
    return re.split(r"[\d_±−]", text)[0][:24]


def letters(text: str) -> str:
    return re.sub(r"[^a-z]", "", text.lower())
