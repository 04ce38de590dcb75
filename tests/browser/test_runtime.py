"""The worker that does not start, or dies: a plain sentence, a way to try again, no loop, nothing lost."""

import json
import re

import pytest
from playwright.sync_api import expect

from tests.browser.live import entry, message, opened, part, reply, shows

pytestmark = pytest.mark.browser

WASM = re.compile(r"/runtime/.*\.wasm$")
NEEDED = ("pyodide.mjs", "pyodide.asm.mjs", "pyodide.asm.wasm", "python_stdlib.zip", "calc.zip")


@pytest.mark.parametrize("name", NEEDED)
@pytest.mark.parametrize("how", ["gone", "cut"])
def test_whatever_is_missing_it_says_that_it_could_not_start(page, address, name, how):
    page.route(f"**/runtime/*/{name}", lambda route: route.abort() if how == "cut" else route.fulfill(status=404, body="Not found."))
    live = opened(page, address)
    entry(live, "ring_outside").fill("37.61")
    expect(part(live, "status")).to_contain_text("could not be started")
    page.provoked = True


def test_a_runtime_that_cannot_be_fetched_says_so_once_and_can_be_tried_again(page, address):
    asked = []
    page.route(WASM, lambda route: (asked.append(route.request.url), route.abort()))
    live = opened(page, address)
    ring = entry(live, "ring_outside")
    ring.fill("37.61")
    expect(part(live, "status")).to_contain_text("could not be started")
    expect(part(live, "verdict")).to_have_attribute("data-stale", "")
    expect(part(live, "stale")).to_be_hidden()  # its words are for an entry that was refused
    assert ring.input_value() == "37.61"
    page.wait_for_timeout(1500)
    assert len(asked) == 1, "it must not try again by itself"
    page.unroute(WASM)
    part(live, "status").get_by_role("button", name="Try again").click()
    shows(live, reply(live)["html"]["verdict"])
    expect(part(live, "status")).to_be_empty()
    page.provoked = True  # the failed request, told by the browser and by the runtime


def test_a_worker_that_fails_later_says_so_and_answers_after_a_retry(page, live):
    entry(live, "ring_outside").fill("37.61")
    shows(live, reply(live)["html"]["verdict"])
    calculators(page)[0].evaluate("setTimeout(() => { throw new Error('out of memory') })")
    expect(part(live, "status")).to_contain_text("out of memory")
    entry(live, "ring_outside").fill("37.62")
    part(live, "status").get_by_role("button", name="Try again").click()
    shows(live, reply(live)["html"]["verdict"])
    page.provoked = True


def test_a_worker_that_falls_silent_is_given_up_after_a_while(page, address):
    page.clock.install()
    live = opened(page, address)
    entry(live, "ring_outside").fill("37.61")
    shows(live, reply(live)["html"]["verdict"])
    calculators(page)[0].evaluate("self.close()")
    entry(live, "ring_outside").fill("37.62")
    page.clock.fast_forward("01:00")
    expect(part(live, "status")).to_contain_text("do not answer any more")
    part(live, "status").get_by_role("button", name="Try again").click()
    shows(live, reply(live)["html"]["verdict"])


def test_one_worker_serves_the_page_and_the_latest_request_wins(page, live):
    entry(live, "ring_outside").fill("37.61")
    shows(live, reply(live)["html"]["verdict"])
    answers = page.evaluate("""async () => {
        const { runtime } = await import(new URL('/assets/js/runtime.mjs', location));
        const ask = (text) => runtime.ask({ call: 'evaluate', calculator: 'seat-fit', entries: { ring_outside: text }, system: 'metric' });
        return Promise.all(['37.61', '37.62', '37.63'].map(ask));
    }""")
    assert [bool(a) for a in answers] == [False, False, True]
    assert answers[-1]["ok"]
    assert len(calculators(page)) == 1


def test_a_page_without_its_build_says_so(page, address):
    def without(route):
        answered = route.fetch()
        route.fulfill(response=answered, body=answered.text().replace("sizebook-build", "other"))

    page.route("**/" + address, without)
    page.goto(address)
    first = page.locator("live-calculator").first
    first.locator("input[data-entry]").first.fill("1")
    expect(first.locator("[data-part=status]")).to_contain_text("built without its calculators")


def calculators(page):
    """The workers that run Python; the theme's search has one too."""
    return [worker for worker in page.workers if worker.url.endswith("/assets/js/worker.mjs")]


def test_a_later_visit_wakes_the_memory_that_the_first_one_kept(page, live):
    ring = entry(live, "ring_outside")
    ring.fill("37.61")
    shows(live, reply(live)["html"]["verdict"])
    wait_until_kept(page)
    page.reload()
    shows(live, reply(live)["html"]["verdict"])
    ring.fill("37.61 kg")
    expect(message(live, "ring_outside")).to_have_text(reply(live)["errors"][0]["message"])
    assert page.evaluate(WOKEN)


def test_a_spoilt_memory_is_done_without_from_then_on(page, live):
    ring = entry(live, "ring_outside")
    wait_until_kept(page)
    page.evaluate("""async () => {
        const cache = await caches.open('sizebook memory');
        const [key] = await cache.keys();
        const { headers } = await cache.match(key);
        await cache.put(key, new Response(new Uint8Array(1000), { headers }));
    }""")
    page.reload()
    ring.fill("37.61")
    shows(live, reply(live)["html"]["verdict"])
    assert not page.evaluate(WOKEN)
    assert json.loads(page.evaluate("localStorage.getItem('sizebook:memory')"))[1] == "tried"


WOKEN = "import(new URL('/assets/js/runtime.mjs', location)).then(({ runtime }) => runtime.woken)"


def wait_until_kept(page):
    page.evaluate("""() => new Promise((kept) => {
        const look = () => /"kept"/.test(localStorage.getItem('sizebook:memory')) ? kept() : setTimeout(look, 50);
        look();
    })""")
