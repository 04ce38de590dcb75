"""Back and forward to a page that the browser kept whole: it must show what other pages stored since.

By the HTML Standard events of storage wait until such a page is shown again, and in Chromium they do. Not every browser
is as thorough: here they are lost on the way.
"""

import pytest
from playwright.sync_api import expect

from calc.job.files import dump
from tests.browser.conftest import fresh_page
from tests.browser.jobs import calculator, fresh, put, with_job
from tests.browser.live import entry, opened, part, wait_for_state
from tests.job.jobs import ordinary

SEATS, RODS = "heads/seats/", "rods/resizing/"
SIZES = ":is([data-job-size], [data-job-said]):not(:empty)"


@pytest.fixture(scope="module")
def keeping(launch):
    """A browser as readers have it; the one of the other tests is told to keep no pages."""
    started = launch(ignore_default_args=["--disable-back-forward-cache"])
    yield started
    started.close()


@pytest.fixture
def page(keeping, server):
    with fresh_page(keeping, base_url=server, service_workers="block") as made:
        made.add_init_script(
            "addEventListener('storage', (event) => event.isTrusted && event.stopImmediatePropagation(), true)"
        )
        yield made


def left(page) -> None:
    """Mark a page, so that coming back to it can be told from loading it again, and go on to another."""
    wait_for_state(page, "ready")
    expect(page.locator("script[data-held]")).to_have_count(0)
    page.evaluate("globalThis.left = true")
    page.goto("measuring/limits/")


def back(page, address: str) -> None:
    page.evaluate("history.back()")  # Playwright's own would wait for a load, which does not come
    page.wait_for_url(f"**/{address}", wait_until="commit")
    why = page.evaluate("JSON.stringify(performance.getEntriesByType('navigation')[0].notRestoredReasons)")
    assert page.evaluate("globalThis.left"), f"the browser did not keep the page: {why}"


def test_units_changed_on_another_page(page):
    live = opened(page, SEATS)
    entry(live, "ring_outside").fill("37.61 mm")
    expect(part(live, "verdict")).not_to_be_empty()
    left(page)
    page.get_by_role("button", name="in", exact=True).click()
    back(page, SEATS)
    expect(page.locator("html")).to_have_attribute("data-units", "inch")
    expect(page.locator("[data-units-choice=inch]")).to_have_attribute("aria-pressed", "true")
    expect(entry(live, "ring_outside")).to_have_value("37.61 mm")


def test_a_job_begun_on_another_page(page):
    opened(page, RODS)
    left(page)
    put(page, dump(ordinary()))
    back(page, RODS)
    calculator(page, "big-end-resize")
    expect(page.locator(SIZES).first).to_be_visible()


# What jobs.mjs tells by its channel makes Chromium load a kept page anew; another browser may not. Here the storage changes without it.
def test_another_job_taken_up_on_another_page(page):
    first, second = fresh(), {**ordinary(), "name": "Ice machine"}
    page.goto("about/")
    key = put(page, dump(second))
    put(page, dump(first))
    page.goto(RODS)
    live = calculator(page, "big-end-resize")
    expect(live.locator(".job-strip")).to_contain_text(first["name"])
    left(page)
    page.evaluate("key => localStorage.setItem('sizebook:job', key)", key)
    back(page, RODS)
    expect(live.locator(".job-strip")).to_contain_text("Ice machine")
    expect(page.locator(SIZES).first).to_be_visible()


def test_a_job_let_go_on_another_page(page):
    with_job(page, ordinary(), RODS)
    live = calculator(page, "big-end-resize")
    expect(page.locator(SIZES).first).to_be_visible()
    left(page)
    page.evaluate("localStorage.removeItem('sizebook:job')")
    back(page, RODS)
    expect(live.locator(".job-strip")).to_have_count(0)
    expect(page.locator(SIZES)).to_have_count(0)
