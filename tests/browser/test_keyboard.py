"""The whole way by keyboard alone, as someone goes it who has no mouse or whose hands are not for one."""

import pytest
from playwright.sync_api import expect

from tests.browser.conftest import DESKTOP, PHONE, fresh_page
from tests.browser.live import CALCULATOR, entry, message, part, reply, shows

pytestmark = pytest.mark.browser

# What has the focus, what marks it, and whether anything that is fixed or sticky hides it (WCAG 2.2, 2.4.7 and 2.4.11).
FOCUSED = """() => {
    const e = document.activeElement;
    if (!e || e === document.body) return null;
    const box = (e.closest('.entry') ?? e).getBoundingClientRect(), mark = getComputedStyle(e.closest('.entry') ?? e);
    const top = Math.max(box.top, 0), bottom = Math.min(box.bottom, innerHeight);  // of what is larger than the screen, a part
    const seen = [0.1, 0.5, 0.9].map((x) => document.elementFromPoint(box.left + box.width * x, (top + bottom) / 2))
        .some((there) => there && (e.contains(there) || there.contains(e) || there.closest('label') === e.closest('label') && e.closest('label')));
    return {
        what: e.outerHTML.slice(0, 120), top: box.top, bottom: box.bottom, high: innerHeight, seen,
        marked: mark.outlineStyle !== 'none' && parseFloat(mark.outlineWidth) >= 2,
        place: e.compareDocumentPosition ? [...document.querySelectorAll('*')].indexOf(e) : 0,
    };
}"""


def press_until(page, target, key="Tab", most=60) -> list[dict]:
    """Press a key until an element has the focus; what had it on the way."""
    way = []
    for _ in range(most):
        page.keyboard.press(key)
        way.append(page.evaluate(FOCUSED))
        if target.evaluate("e => e === document.activeElement"):
            return way
    raise AssertionError(f"not reached with {most} keys: {[stop and stop['what'][:60] for stop in way]}")


def check(way) -> None:
    for stop in way:
        assert stop, "the focus is nowhere"
        assert stop["marked"], f"no mark of the focus: {stop['what']}"
        assert stop["seen"] and stop["bottom"] > 0 and stop["top"] < stop["high"], f"hidden: {stop}"


def test_from_the_front_door_to_a_corrected_result_and_back_to_the_example(page):
    page.goto("")
    # straight to the content
    skip = page.locator(".md-skip")
    check(press_until(page, skip, most=2))
    page.keyboard.press("Enter")
    page.wait_for_timeout(
        300
    )  # an eighth of a second after each jump the theme closes the search, and no hand is that fast
    # part, size or job; whose limits; then the parts
    check([page.keyboard.press("Tab") or page.evaluate(FOCUSED) for _ in range(3)])
    expect(page.locator("svg a[href^='#view-']:focus")).to_have_count(1)

    # search: its key, words, down to the calculator
    page.keyboard.press("/")
    field = page.get_by_placeholder("Search")
    expect(field).to_be_focused()
    page.keyboard.type("seat interference")
    found = page.locator(f'.md-search-result__link[href*="#{CALCULATOR}-title"]').first
    expect(found).to_be_visible()
    press_until(page, found, "ArrowDown", most=10)
    with page.expect_navigation():
        page.keyboard.press("Enter")
    live = page.locator(f"live-calculator[data-calculator={CALCULATOR}]")
    expect(live.locator("h3")).to_be_in_viewport()

    # the calculator is near: the address leads there, and so does the focus
    bore, ring = entry(live, "pocket_bore"), entry(live, "ring_outside")
    way = press_until(page, bore, most=12)
    check(way)
    example = part(live, "verdict").text_content()

    # type, be refused, correct
    page.keyboard.type("37.48 kg")
    expect(message(live, "pocket_bore")).to_be_visible()
    assert page.evaluate("document.activeElement.getAttribute('aria-describedby')").split()[0] == message(
        live, "pocket_bore"
    ).get_attribute("id")
    for _ in " kg":
        page.keyboard.press("Backspace")
    shows(live, reply(live)["html"]["verdict"])
    expect(message(live, "pocket_bore")).to_be_hidden()
    page.keyboard.press("Enter")
    expect(ring).to_be_focused()
    check([page.evaluate(FOCUSED)])

    entry(live, "valve").select_option("intake")
    page.keyboard.type("37.6")
    shows(live, reply(live)["html"]["verdict"])

    # the working, opened and closed
    working = live.locator("details[data-keep=working] > summary")
    check(press_until(page, working))
    page.keyboard.press("Enter")
    expect(live.locator("[data-part=working] li").first).to_be_visible()
    inside = live.locator("[data-part=working]")
    check(press_until(page, inside, most=2))  # a box that may scroll is reached

    # back to the example, from below
    check(press_until(page, live.locator("[data-reset]"), "Shift+Tab"))
    page.keyboard.press("Enter")
    expect(part(live, "verdict")).to_have_text(example.strip(), use_inner_text=False)
    expect(live.locator("[data-reset]")).to_be_focused()

    # the units, from wherever one is
    inch = page.locator("[data-units-choice=inch]")
    page.keyboard.press("Control+Home")
    page.evaluate("document.activeElement.blur()")
    press_until(page, inch, most=200)
    page.keyboard.press("Space")
    expect(inch).to_have_attribute("aria-pressed", "true")
    expect(bore).to_have_attribute("placeholder", bore.get_attribute("data-inch"))


@pytest.mark.parametrize(
    "size", [PHONE, DESKTOP, {"width": 640, "height": 450}], ids=["phone", "desktop", "desktop at 200 %"]
)
def test_the_focus_is_marked_never_hidden_and_goes_in_the_order_of_the_page(size, browser, server):
    with fresh_page(
        browser, base_url=server, viewport=size, reduced_motion="reduce", service_workers="block"
    ) as page:
        page.goto("heads/seats/")
        page.evaluate("for (const d of document.querySelectorAll('details')) d.open = true")
        entry(page.locator(f"live-calculator[data-calculator={CALCULATOR}]"), "pocket_bore").focus()
        for key in ("Tab", "Shift+Tab"):
            way = []
            for _ in range(30):
                page.keyboard.press(key)
                way.append(page.evaluate(FOCUSED))
            check(way)
            places = [stop["place"] for stop in way]
            assert places == sorted(places, reverse=key != "Tab") and len(set(places)) == len(places)
