"""The carrier: what the reader types is never lost, and a result never stands for other numbers unsaid."""

import pytest
from playwright.sync_api import expect

from tests.browser.live import entry, message, opened, part, reply, shows, wait_for_state

pytestmark = pytest.mark.browser


@pytest.mark.usefixtures("own_python")
def test_typed_before_python_is_there_is_answered_as_soon_as_it_is(page, address):
    held = []
    page.route("**/memory.wasm", lambda route: held.append(route))  # Python must not be faster than the test
    live = opened(page, address)
    entry(live, "ring_outside").fill("37.61")
    expect(part(live, "status")).to_contain_text("Starting the calculator")
    assert len(held) == 1
    held[0].continue_()
    shows(live, reply(live)["html"]["verdict"])
    expect(part(live, "status")).to_be_empty()
    expect(part(live, "stale")).to_be_hidden()
    assert entry(live, "ring_outside").input_value() == "37.61"


def test_browser_and_cpython_give_the_same_page(live):
    entry(live, "ring_outside").fill("1 31/64 in")
    expected = reply(live)
    for name in ("verdict", "result"):
        shows(live, expected["html"][name], name)


def test_refusal_stands_under_its_field_and_the_last_good_result_stays(live):
    entry(live, "ring_outside").fill("37.61")
    good = reply(live)["html"]["verdict"]
    shows(live, good)
    entry(live, "ring_outside").fill("37.61 kg")
    expect(message(live, "ring_outside")).to_have_text(reply(live)["errors"][0]["message"])
    expect(entry(live, "ring_outside")).to_have_attribute("aria-invalid", "true")
    described = entry(live, "ring_outside").get_attribute("aria-describedby").split()
    assert message(live, "ring_outside").get_attribute("id") in described
    shows(live, good)
    expect(part(live, "stale")).to_be_visible()
    expect(part(live, "result")).to_have_attribute("data-stale", "")
    for struck in (".verdict-state", ".verdict-do"):  # neither the word nor what to do is for this entry
        expect(live.locator(struck).first).to_have_css("text-decoration-line", "line-through")
    entry(live, "ring_outside").fill("37.61")
    expect(message(live, "ring_outside")).to_be_hidden()
    expect(entry(live, "ring_outside")).not_to_have_attribute("aria-invalid", "true")
    expect(part(live, "stale")).to_be_hidden()


def test_markup_that_is_typed_stays_text(live):
    entry(live, "ring_outside").fill("<img src=x onerror=alert(1)>")
    expect(message(live, "ring_outside")).to_be_visible()
    assert live.locator("img").count() == 0


def test_units_change_the_example_and_keep_the_meaning_of_what_was_typed(live):
    page = live.page
    bore, ring = entry(live, "pocket_bore"), entry(live, "ring_outside")
    ring.fill("37.61")
    page.click("[data-units-choice=inch]")
    assert ring.input_value() == "37.61 mm"
    assert bore.input_value() == ""
    expect(bore).to_have_attribute("placeholder", bore.get_attribute("data-inch"))
    expect(page.locator("[data-units-choice=inch]")).to_have_attribute("aria-pressed", "true")
    shows(live, reply(live, "inch")["html"]["verdict"])
    ring.fill("1.481")
    page.click("[data-units-choice=metric]")
    assert ring.input_value() == "1.481 in"
    assert bore.input_value() == ""
    expect(bore).to_have_attribute("placeholder", bore.get_attribute("data-metric"))


def test_unit_choice_is_kept_and_other_tabs_follow(live, address):
    page, other = live.page, live.page.context.new_page()
    other.goto(address)
    page.click("[data-units-choice=inch]")
    expect(other.locator("html")).to_have_attribute("data-units", "inch")
    page.reload()
    expect(page.locator("html")).to_have_attribute("data-units", "inch")
    bore = entry(live, "pocket_bore")
    expect(bore).to_have_attribute("placeholder", bore.get_attribute("data-inch"))
    expect(message(live, "pocket_bore")).to_be_hidden()


def test_entries_survive_a_reload_and_a_reset_forgets_them(live):
    page = live.page
    at_first = part(live, "verdict").text_content()
    entry(live, "ring_outside").fill("37.61")
    page.reload()
    expect(entry(live, "ring_outside")).to_have_value("37.61")
    shows(live, reply(live)["html"]["verdict"])
    live.locator("[data-reset]").click()
    expect(part(live, "verdict")).to_have_text(at_first.strip(), use_inner_text=False)
    page.reload()
    expect(entry(live, "ring_outside")).to_have_value("")
    expect(part(live, "verdict")).to_have_text(at_first.strip(), use_inner_text=False)


def test_quick_key_writes_at_the_caret_and_leaves_the_focus(live):
    ring = entry(live, "ring_outside")
    ring.fill("1.481")
    live.locator("[data-field]", has=live.page.locator("[name=ring_outside]")).locator(
        '[data-key=" in"]'
    ).click()
    expect(ring).to_be_focused()
    assert ring.input_value() == "1.481 in"
    shows(live, reply(live)["html"]["verdict"])


def test_what_the_reader_unfolded_stays_open(live):
    live.locator("details[data-keep=working] > summary").click()
    entry(live, "ring_outside").fill("37.61")
    shows(live, reply(live)["html"]["verdict"])
    expect(live.locator("details[data-keep=working]")).to_have_attribute("open", "")


def test_nothing_moves_when_the_calculator_comes_alive(page, address):
    # Layout Instability, WICG: the browser's own record, for what lies in the page's main part.
    page.add_init_script("""
        globalThis.moved = [];
        new PerformanceObserver((list) => {
            for (const { node } of list.getEntries().flatMap((shift) => shift.sources)) {
                const element = node?.closest ? node : node?.parentElement;
                if (!element || element.closest('main')) moved.push(element?.outerHTML.slice(0, 100));
            }
        }).observe({ type: 'layout-shift', buffered: true });
    """)
    page.goto(address)
    html = page.locator("live-calculator").first.inner_html()
    page.evaluate(
        "import(new URL('/assets/js/runtime.mjs', location)).then(({ runtime }) => runtime.start())"
    )
    wait_for_state(page, "ready")
    assert page.evaluate("moved") == []
    assert page.locator("live-calculator").first.inner_html() == html


def test_works_by_keyboard_alone(live):
    page = live.page
    entry(live, "pocket_bore").focus()
    page.keyboard.press("Control+A")
    page.keyboard.type("37.51")
    page.keyboard.press("Enter")
    shows(live, reply(live)["html"]["verdict"])
    assert page.url.endswith("/"), "Enter in a field must not leave the page"


def test_verdict_is_read_out_once_typing_rests(live):
    entry(live, "ring_outside").fill("37.61")
    expect(part(live, "announce")).to_have_text(reply(live)["html"]["announce"])
