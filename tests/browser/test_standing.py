"""Whose number is it: typed alone, no entry of any calculator makes a verdict over numbers that nobody read and that it does not name."""

import pytest
from playwright.sync_api import expect

from calc.page import size_html
from tests.browser.jobs import fresh, with_job
from tests.browser.live import entry, part, plain, wait_for_state

pytestmark = pytest.mark.browser

# Types each single entry of each calculator, waits for its answer (a request behind it in the worker's queue), and tells what stands under a green verdict.
ALONE = """async () => {
    const { runtime } = await import(new URL('/assets/js/runtime.mjs', location));
    const wrong = [];
    let typed = 0;
    for (const live of document.querySelectorAll('live-calculator')) {
        for (const entry of live.querySelectorAll('[data-entry]')) {
            if (entry.matches('select') || !entry.placeholder.trim()) continue;
            const text = entry.placeholder;
            entry.value = text;
            entry.dispatchEvent(new Event('input', { bubbles: true }));
            await runtime.ask({ call: 'sizes', engine: '', sizes: [] }, Symbol('behind'));
            await new Promise(requestAnimationFrame);
            typed++;
            const said = live.querySelector('.verdict');
            if (said.matches('.verdict-example')) wrong.push(`${live.id} ${entry.name}: still the example`);
            if (said.matches('.verdict-pass, .verdict-attention')) {
                const named = [...live.querySelectorAll('.granted [data-field-link]')].map((link) => link.dataset.fieldLink);
                const sheet = /^Limits: |[.] Limits: /.test(live.querySelector('.granted')?.textContent ?? '');
                for (const field of live.querySelectorAll('[data-field]')) {
                    const name = field.querySelector('[data-origin]')?.dataset.origin, { from } = field.dataset;
                    if (!name || ['read', 'none', 'idle'].includes(from)) continue; // idle: none, as another choice stands
                    const question = field.querySelector('[data-question]');
                    if (!(named.includes(name) || from === 'sheet' && sheet || question)) wrong.push(`${live.id} ${entry.name}: ${said.textContent} over ${name}, ${from}`);
                }
            }
            entry.value = '';
            entry.dispatchEvent(new Event('input', { bubbles: true }));
        }
    }
    return { typed, wrong };
}"""


def test_no_single_entry_makes_a_verdict_over_numbers_that_nobody_read(page, with_calculators):
    """Each entry of all calculators is walked in tests/declare/test_standing.py; here what the page makes of the answer."""
    typed = 0
    for address in with_calculators:
        page.goto(address)
        found = page.evaluate(ALONE)
        assert found["wrong"] == [], address
        typed += found["typed"]
    assert typed > 8 * len(with_calculators)


def test_an_untouched_page_shows_an_example_in_no_colour_of_a_verdict(page, address):
    page.goto(address)
    for verdict in page.locator("live-calculator .verdict").all():
        assert "verdict-example" in verdict.get_attribute("class")
        expect(verdict.locator(".verdict-state")).to_have_text("Example")
        colours = verdict.evaluate(
            "e => [getComputedStyle(e).borderTopColor,"
            " getComputedStyle(document.documentElement).getPropertyValue('--pass')]"
        )
        assert colours[0] not in colours[1]


def test_what_is_to_be_read_next_is_a_tap_away(page, address):
    page.goto(address)
    live = page.locator("live-calculator[data-calculator=seat-fit]")
    entry(live, "pocket_bore").fill("37.505")
    verdict = part(live, "verdict")
    expect(verdict.locator(".verdict-state")).to_have_text("Still to be read")
    verdict.locator("[data-field-link=ring_outside]").click()
    expect(entry(live, "ring_outside")).to_be_focused()


def test_another_engine_brings_its_own_limits_and_nothing_of_the_first(page):
    page.goto("heads/guides/")
    live = page.locator("live-calculator[data-calculator=guide-fit]").first
    entry(live, "guide_bore").fill("0.3452 in")
    entry(live, "stem").fill("0.3406 in")
    live.locator("[data-engine-choice]").select_option("RC-40")
    live.locator("[data-which]").select_option("intake")
    expect(part(live, "verdict")).to_contain_text("RC-40")
    expect(part(live, "verdict").locator(".verdict-state")).to_have_text("Not in order")
    expect(part(live, "verdict")).not_to_contain_text("TS-16")
    page.reload()
    expect(part(live, "verdict")).to_contain_text("RC-40")


def known(page) -> list:
    return page.locator("[data-sheet-size]").evaluate_all(
        "all => [...new Set(all.map((e) => e.dataset.sheetSize))]"
    )


def on_sheet(id: str, name: str) -> str:
    """A size of a sentence as another engine's sheet has it, empty where it has not."""
    try:
        return size_html(*id.split(" "), name)
    except KeyError:
        return ""


def test_a_job_of_another_engine_never_shows_a_limit_of_the_examples(page, with_calculators):
    job = fresh() | {"engine": "RC-40"}
    with_job(page, job, "about/")
    for address in with_calculators:
        page.goto(address)
        for live in page.locator("live-calculator").all():
            expect(live.locator(".verdict-example")).to_have_count(0)
            assert "TS-16" not in live.inner_text(), f"{address} {live.get_attribute('id')}"
        own = {id: on_sheet(id, "RC-40") for id in known(page)}
        for said in page.locator("[data-sheet-size]").all():
            id = said.get_attribute("data-sheet-size")
            expect(said).to_have_text(
                plain(page, own[id]) if own[id] else "(not on RC-40’s sheet)", use_inner_text=False
            )


@pytest.mark.usefixtures("own_python")
def test_the_engine_that_is_chosen_last_counts_whatever_is_answered_later(page, address):
    """Two choices while Python is still on its way: the answer for the first comes when nobody asks for it any more."""
    held = []
    page.route("**/runtime/*/memory.wasm", lambda route: held.append(route))
    page.goto(address)
    sentences = page.locator("[data-sheet-size]")
    first = sentences.all_inner_texts()
    assert first
    choice = page.locator("[data-engine-choice]").first
    choice.select_option("RC-40")
    page.wait_for_function("import(new URL('/assets/js/sizes.mjs', location)).then(() => true)")
    choice.select_option("TS-16")
    for route in held:
        route.continue_()
    wait_for_state(page, "ready")
    page.evaluate(
        "import(new URL('/assets/js/runtime.mjs', location)).then(({ runtime }) => runtime.ask({ call:"
        " 'sizes', engine: '', sizes: [] }, 'behind'))"
    )
    assert sentences.all_inner_texts() == first
