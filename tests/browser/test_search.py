"""The search: nothing of it is fetched until the reader reaches for it, and nothing typed meanwhile is lost."""

import re

import pytest
from playwright.sync_api import expect

from tests.browser.conftest import DESKTOP, PHONE, fresh_page, serving
from tests.browser.live import wait_for_state

pytestmark = pytest.mark.browser

FIELD = "[data-md-component=search-query]"
FOUND = ".md-search-result__link"


def asked(page) -> list[str]:
    """What is asked for of the search from now on."""
    found = []
    page.on(
        "request",
        lambda request: found.append(request.url.rpartition("/")[2]) if "search" in request.url else None,
    )
    return found


def opened(page, address="about/"):
    """A page whose theme has begun and is at rest."""
    page.goto(address)
    expect(page.locator("script[data-held]")).to_have_count(0)
    if page.locator("live-calculator").count():  # Playwright waits for a shared worker for ever
        wait_for_state(page, "ready")
    else:
        page.wait_for_load_state("networkidle")


def tap_field(page):
    page.locator(FIELD).click()


def press_key(page):
    page.keyboard.press("/")


def tap_sign(page):
    page.locator(".md-header__button[for=__search]").click()


@pytest.mark.parametrize(
    ("size", "reach"),
    [
        (DESKTOP, tap_field),
        (DESKTOP, press_key),
        (DESKTOP, lambda page: page.keyboard.press("s")),
        (DESKTOP, lambda page: page.keyboard.press("f")),
        (DESKTOP, lambda page: page.locator(FIELD).focus()),
        (PHONE, tap_sign),
    ],
    ids=["tap", "/", "s", "f", "focus", "phone"],
)
def test_the_search_is_fetched_when_it_is_reached_for_not_before(size, reach, browser, server):
    with fresh_page(browser, base_url=server, viewport=size, service_workers="block") as page:
        requests = asked(page)
        opened(page)
        assert requests == [] and page.workers == []
        reach(page)
        expect(page.locator(FIELD)).to_be_focused()
        page.keyboard.type("valve seat")
        expect(page.locator(FOUND).first).to_be_visible()
        assert page.locator(FIELD).input_value() == "valve seat"
        assert sum(name == "search_index.json" for name in requests) == 1
        assert len(page.workers) == 1


def test_what_is_typed_while_the_search_is_fetched_is_looked_for_once_it_is_there(page):
    held = []
    page.route("**/search_index.json", lambda route: held.append(route))
    opened(page)
    press_key(page)
    page.keyboard.type("seat interference")
    page.wait_for_timeout(300)
    assert len(held) == 1
    expect(page.locator(FOUND)).to_have_count(0)
    held[0].continue_()
    expect(page.locator(f'{FOUND}[href*="#seat-fit-title"]').first).to_be_visible()
    assert page.locator(FIELD).input_value() == "seat interference"


def test_words_are_marked_on_a_page_that_a_search_led_to_and_only_there(page):
    requests = asked(page)
    opened(page, "heads/seats/")
    assert requests == [] and page.locator("article mark").count() == 0
    tap_field(page)
    page.keyboard.type("seat")
    link = page.locator(f'{FOUND}[href*="heads/seats/"]').first
    expect(link).to_have_attribute("href", re.compile(r"\?h=seat"))
    page.goto(link.get_attribute("href"))
    expect(page.locator("article mark").first).to_be_attached()


def test_it_finds_without_signal_too(browser, site):
    with serving(site) as (address, stop), fresh_page(browser, base_url=address) as page:
        page.goto("about/")
        expect(page.locator("[data-offline-status]")).to_have_text("Ready to work without signal.")
        stop()
        opened(page, "heads/")
        press_key(page)
        page.keyboard.type("seat interference")
        expect(page.locator(f'{FOUND}[href*="#seat-fit-title"]').first).to_be_visible()


LEAK = ("heads/leak-testing/", "lifters/solid-to-hydraulic/", "cylinders/leak-down/")
TORQUE = ("limits/", "threads/torque/")
PISTON = "cam/timing/#valve-to-piston-title"
WANTED = {  # what is typed → where it is told, of which one must be among the first three pages
    "leakdown": LEAK,
    "leak down": LEAK,
    "leak-down": LEAK,
    "lapping": ("heads/seats/",),
    "lap in": ("heads/seats/",),
    "lapped": ("heads/seats/",),
    "torque of the head nuts": TORQUE,
    "head torque": TORQUE,
    "head nut torque": TORQUE,
    "size sheet": ("job/sheet/",),
    "sheet/code": ("job/sheet/",),
    "sheet code": ("job/sheet/",),
    "valve to piston": (PISTON,),
    "valve-to-piston": (PISTON,),
    "piston to valve": (PISTON,),
    "V/P": (PISTON,),
    "v/p clearance": (PISTON,),
}


def typed(page, words):
    """What is said of the words, which are looked for once and as a whole."""
    page.locator(FIELD).click(click_count=3)
    page.keyboard.press("Backspace")
    expect(page.locator(FOUND)).to_have_count(0)
    page.keyboard.insert_text(words)
    page.keyboard.press("End")  # the search looks for what stands there when a key goes up
    meta = page.locator(".md-search-result__meta")
    expect(meta).to_contain_text(re.compile("matching document|Nothing here"))
    return meta


def test_what_readers_call_it_is_among_the_first_three(page, server):
    opened(page)
    tap_field(page)
    for words, places in WANTED.items():
        typed(page, words)
        pages = page.locator(".md-search-result__item")
        first = [
            re.sub(r"[?]h=[^#]*", "", href.removeprefix(server))
            for item in pages.all()[:3]
            for href in item.locator(FOUND).evaluate_all(
                "all => all.filter((a) => a.checkVisibility()).map((a) => a.href)"
            )
        ]
        assert set(places) & set(first), f"{words}: {first}"


def test_what_is_not_here_is_said_plainly(page):
    opened(page)
    tap_field(page)
    typed(page, "jetting")
    said = page.locator(f'{FOUND}[href*="#not-here-carburettor"]')
    expect(said).to_contain_text("not here yet")
    said.click()
    heading = page.locator("#not-here-carburettor-and-ignition-title")
    expect(heading).to_be_in_viewport()
    told = page.locator("#not-here-carburettor-and-ignition-title + p")
    expect(told).to_contain_text("Nothing here about carburettor and ignition yet")
    expect(told.locator("a")).to_have_count(1)


def test_where_nothing_is_found_it_names_what_was_looked_for(page):
    opened(page)
    tap_field(page)
    meta = typed(page, "<b>xyzzy</b>")
    expect(meta).to_have_text(re.compile("^Nothing here about “<b>xyzzy</b>”[.]"))
    assert page.locator(FOUND).count() == 0
