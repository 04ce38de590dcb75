"""A result that leaves the device and one that comes in: links between pages and the terminal, and whose entries are shown."""

import contextlib
import io

import pytest
from playwright.sync_api import expect

from calc.__main__ import main
from calc.page.link import Link, read, write
from calc.stations.index import find, ids
from tests.browser.conftest import PHONE, fresh_page
from tests.browser.jobs import NAME, fresh, with_job
from tests.browser.live import entry, fill_in, opened, part, reply, shows

pytestmark = pytest.mark.browser

LINK = Link(
    find("seat-fit"),
    {"pocket_bore": '1.4760"', "ring_outside": "1.4807", "valve": "exhaust", "pocket_bore.part": "70 °F"},
    "inch",
    "RC-40",
    "2 exhaust",
)
FRAGMENT = write(LINK)
STANDING = {"engine": "RC-40", "which": "2 exhaust", "job": {}}
NOTE = "[data-linked]"


def command(*arguments) -> str:
    out = io.StringIO()
    with contextlib.redirect_stdout(out):
        assert main(list(arguments)) == 0
    return out.getvalue()


def without_sharing(page):
    page.add_init_script("delete Navigator.prototype.share")


def shown_whole(live):
    """The link's entries, engine, part and units, and CPython's verdict on them."""
    expect(live.locator(NOTE)).to_contain_text("These entries came with a link.")
    for name, text in LINK.entries.items():
        expect(live.locator(f'[data-entry][name="{name}"]')).to_have_value(text)
    expect(live.locator("[data-engine-choice]")).to_have_value("RC-40")
    expect(live.page.locator("html")).to_have_attribute("data-units", "inch")
    shows(live, reply(live, "inch", STANDING)["html"]["verdict"])


def test_a_link_opens_its_result_and_the_readers_own_comes_back(page, address):
    live = opened(page, address)
    fill_in(live)
    verdict = part(live, "verdict")
    expect(verdict.locator(".verdict-state")).to_have_text("In order")
    page.goto("about/")
    live = opened(page, f"{address}#{FRAGMENT}")
    shown_whole(live)
    expect(live).to_be_in_viewport()
    page.reload()
    shown_whole(live)
    live.locator("[data-leave-link]").click()
    expect(entry(live, "pocket_bore")).to_have_value("37.505")
    expect(live.locator(NOTE)).to_have_count(0)
    expect(live.locator("[data-engine-choice]")).to_have_value("TS-16")
    expect(page.locator("html")).to_have_attribute("data-units", "metric")
    shows(live, reply(live)["html"]["verdict"])
    assert page.url.endswith("#seat-fit")


def test_what_is_made_of_a_link_stays_with_it_and_the_own_apart(page, address):
    live = opened(page, address)
    fill_in(live)
    page.goto("about/")
    live = opened(page, f"{address}#{FRAGMENT}")
    shown_whole(live)
    entry(live, "ring_outside").fill("1.4810")
    page.reload()
    expect(live.locator(NOTE)).to_be_visible()
    expect(entry(live, "ring_outside")).to_have_value("1.4810")
    page.goto("about/")
    page.go_back()
    expect(entry(live, "ring_outside")).to_have_value("1.4810")
    page.goto("about/")
    live = opened(page, address)
    expect(entry(live, "ring_outside")).to_have_value("37.61")
    expect(page.locator("html")).to_have_attribute("data-units", "metric")
    expect(live.locator("[data-engine-choice]")).to_have_value("TS-16")


def test_links_to_places_of_the_page_work_beside_it(page, address):
    live = opened(page, f"{address}#{FRAGMENT}")
    shown_whole(live)
    heading = page.locator("article h2[id]").first
    page.evaluate("id => { location.hash = id }", heading.get_attribute("id"))
    expect(heading).to_be_in_viewport()
    shown_whole(live)
    page.go_back()
    shown_whole(live)
    other = write(Link(LINK.calculator, {"pocket_bore": "37.5"}, "metric", "TS-16"))
    page.evaluate("hash => { location.hash = hash }", other)
    expect(entry(live, "pocket_bore")).to_have_value("37.5")
    expect(page.locator("html")).to_have_attribute("data-units", "metric")
    page.go_back()
    shown_whole(live)


@pytest.mark.parametrize(
    ("fragment", "why"),
    [
        (FRAGMENT[:-2], "damaged or was cut short"),
        (FRAGMENT.replace("1.4807", "1.4870"), "damaged or was cut short"),
        (FRAGMENT.replace("V=1", "V=2"), "made by a newer edition"),
    ],
)
def test_a_link_that_cannot_be_used_is_told_and_leaves_the_readers_own(page, address, fragment, why):
    live = opened(page, address)
    fill_in(live)
    page.goto("about/")
    live = opened(page, f"{address}#{fragment}")
    expect(live.locator(NOTE)).to_contain_text(why)
    expect(entry(live, "pocket_bore")).to_have_value("37.505")
    expect(page.locator("html")).to_have_attribute("data-units", "metric")
    shows(live, reply(live)["html"]["verdict"])


def test_a_link_of_no_calculator_is_told(page):
    page.goto("heads/#no-such?V=1&Units=metric&End=00000000")
    expect(page.locator(NOTE)).to_contain_text("damaged or was cut short")


def test_every_calculator_is_found_from_the_page_that_links_lead_to(page):
    page.goto("check-a-number/")
    hrefs = page.locator("article a").evaluate_all("all => all.map(({ hash }) => hash)")
    assert {f"#{id}" for id in ids()} <= set(hrefs)


def test_what_the_terminal_prints_opens_on_the_page_and_the_other_way_round(browser, server, address):
    given = ("pocket_bore=1.4760 in", "ring_outside=1.4807", "valve=exhaust")
    printed = command(
        "run", "seat-fit", *given, "--units", "inch", "--engine", "TS-16", "--share", "--site", server
    )
    link = printed.rstrip("\n").rpartition("\n")[2].strip()
    with fresh_page(
        browser, base_url=server, permissions=["clipboard-read", "clipboard-write"], service_workers="block"
    ) as page:
        without_sharing(page)
        page.goto(link)
        page.wait_for_url(f"**/{address}#*")
        live = page.locator("live-calculator[data-calculator=seat-fit]")
        expect(live.locator(NOTE)).to_be_visible()
        expect(live.locator(".verdict-state")).not_to_have_text("Example")
        shows(live, reply(live, "inch")["html"]["verdict"])
        live.locator("[data-share]").click()
        expect(live.locator("[data-shared]")).to_have_text("The link of this result is copied.")
        copied = page.evaluate("navigator.clipboard.readText()")
    assert copied.startswith(f"{server}{address}#")
    assert read(copied) == read(link)
    assert command("run", "seat-fit", "--link", copied) == printed.partition("\n\nLink")[0] + "\n"


def test_the_devices_own_sheet_gets_title_verdict_and_link(page, address):
    page.add_init_script(
        "Navigator.prototype.share = (what) => { globalThis.given = what; return Promise.resolve(); }"
    )
    live = opened(page, address)
    fill_in(live)
    shows(live, reply(live)["html"]["verdict"])
    live.locator("[data-share]").click()
    given = _until(page, "globalThis.given")
    assert given["title"] == "Seat ring in its pocket"
    assert given["text"].startswith("Seat ring in its pocket. In order: Holds")
    assert read(given["url"]).entries["pocket_bore"] == "37.505"
    assert live.locator("[data-shared]").count() == 0


def _until(page, expression):
    """The page's policy forbids to wait for a text that is evaluated there."""
    for _ in range(600):
        if found := page.evaluate(expression):
            return found
        page.wait_for_timeout(100)
    raise AssertionError(expression)


def test_without_sheet_and_clipboard_the_link_is_shown_selected_until_an_entry_changes(page, address):
    without_sharing(page)
    page.add_init_script("Object.defineProperty(Navigator.prototype, 'clipboard', { get: () => undefined })")
    live = opened(page, address)
    fill_in(live)
    live.locator("[data-share]").click()
    field = live.locator("[data-shared] input")
    expect(field).to_be_focused()
    assert field.evaluate("e => e.value.slice(e.selectionStart, e.selectionEnd)") == field.input_value()
    assert read(field.input_value()).entries["ring_outside"] == "37.61"
    entry(live, "ring_outside").fill("37.62")
    expect(field).to_have_count(0)


def test_what_cannot_be_worked_out_is_not_shared(page, address):
    without_sharing(page)
    live = opened(page, address)
    entry(live, "pocket_bore").fill("thirty")
    live.locator("[data-share]").click()
    expect(live.locator("[data-shared]")).to_contain_text("Pocket bore")


def test_nothing_of_a_link_reaches_the_server(page, address):
    asked = []
    page.on("request", lambda request: asked.append(request.url.partition("#")[0]))
    live = opened(page, f"{address}?from=a-poster#{FRAGMENT}")
    shown_whole(live)
    assert len(asked) > 10
    assert not [url for url in asked if "1.4760" in url or "RC-40" in url or "seat-fit" in url]


def test_whoever_keeps_nothing_opens_a_link_too(browser, server, address):
    with fresh_page(browser, base_url=server, viewport=PHONE, service_workers="block") as page:
        page.add_init_script("""for (const kept of ['localStorage', 'sessionStorage'])
            Object.defineProperty(globalThis, kept, { get() { throw new DOMException('forbidden', 'SecurityError'); } })""")
        live = opened(page, f"{address}#{FRAGMENT}")
        shown_whole(live)
        page.provoked = True  # the theme's own script tells that it may keep nothing


def test_a_job_gives_its_numbers_and_takes_none_of_a_link(page, address):
    """What came with a link is nobody's reading: the job neither fills it nor keeps it, and comes back with the own entries."""
    without_sharing(page)
    page.add_init_script("Object.defineProperty(Navigator.prototype, 'clipboard', { get: () => undefined })")
    with_job(page, fresh(), address)
    live = page.locator("live-calculator[data-calculator=seat-fit]")
    strip = live.locator(".job-strip")
    expect(strip).to_contain_text(NAME)
    fill_in(live)
    expect(part(live, "verdict").locator(".verdict-state")).to_have_text("In order")
    live.locator("[data-share]").click()
    shared = live.locator("[data-shared] input").input_value()
    assert read(shared).entries["pocket_bore"] == "37.505" and read(shared).engine == "TS-16"
    assert not any(word in shared for word in NAME.split())
    page.goto("about/")
    live = opened(page, f"{address}#{FRAGMENT}")
    shown_whole(live)
    expect(strip).to_have_count(0)
    live.locator("[data-leave-link]").click()
    expect(strip).to_contain_text(NAME)
    expect(entry(live, "ring_outside")).to_have_value("37.61")
