"""The worker that does not start, or dies: a plain sentence, a way to try again, no loop, nothing lost."""

import contextlib
import json
import re

import pytest
from playwright.sync_api import Error, expect

from calc.job.files import dump
from calc.page.live import answer
from scripts import environment
from scripts.runtime import bundle, split
from tests.browser.conftest import fresh_page, without_sharing
from tests.browser.live import CALCULATOR, entry, opened, part, reply, shows
from tests.job.jobs import ordinary

pytestmark = [
    pytest.mark.browser,
    pytest.mark.usefixtures("own_python"),
]  # shared by all pages: test_visit.py

WASM = re.compile(r"/runtime/.*/hot\.wasm$")
NEEDED = (
    "assets/js/worker.mjs",
    "assets/js/python.mjs",
    "assets/js/program.mjs",
    "assets/js/memory.mjs",
    "pyodide.mjs",
    "pyodide.asm.mjs",
    "pyodide-lock.json",
    "hot.wasm",
    "memory.wasm",
    "stations/heads.zip",
)


@pytest.mark.parametrize(
    "name, how",
    [
        *((name, "gone") for name in NEEDED),
        ("assets/js/worker.mjs", "cut"),
        ("hot.wasm", "cut"),
        ("pyodide.asm.mjs", "half"),
        ("stations/heads.zip", "cut"),
        ("stations/heads.zip", "half"),
    ],
)
def test_whatever_is_missing_it_says_that_it_could_not_start_and_starts_once_it_is_there(
    page, address, name, how
):
    """Every file on the way: the numbers worked at build time stay, what was typed stays, and one press tries again."""
    where = f"**/{name}" if name.startswith("assets/") else f"**/runtime/*/{name}"

    def spoil(route):
        if how == "cut":
            return route.abort()
        if how == "gone":
            return route.fulfill(status=404, body="Not found.")
        whole = route.fetch()
        with contextlib.suppress(Error):  # where the test has gone on meanwhile, and no longer spoils it
            route.fulfill(response=whole, body=whole.body()[: len(whole.body()) // 2])

    page.route(where, spoil)
    live = opened(page, address)
    built = part(live, "verdict").text_content(), part(live, "result").text_content()
    entry(live, "ring_outside").fill("37.61")
    status = part(live, "status")
    expect(status).to_contain_text(re.compile("could not be started|could not be fetched"))
    expect(status).to_contain_text("Your entries are kept")
    assert entry(live, "ring_outside").input_value() == "37.61"
    assert (part(live, "verdict").text_content(), part(live, "result").text_content()) == built
    page.unroute(where)
    status.get_by_role("button", name="Try again").click()
    shows(live, reply(live)["html"]["verdict"])
    expect(status).to_be_empty()
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


def test_a_fault_of_the_calculator_is_told_as_its_own(page, live):
    entry(live, "ring_outside").fill("37.61")
    shows(live, reply(live)["html"]["verdict"])
    calculators(page)[0].evaluate("() => { JSON.parse = () => { throw new Error('spoilt') } }")
    entry(live, "ring_outside").fill("37.62")
    expect(part(live, "status")).to_contain_text(
        "The calculator failed on these entries; that is its fault, not yours."
    )
    assert entry(live, "ring_outside").input_value() == "37.62"
    page.provoked = True  # the runtime prints what it was told


def test_a_worker_that_is_gone_is_told_within_five_seconds(page, address):
    page.clock.install()
    live = opened(page, address)
    entry(live, "ring_outside").fill("37.61")
    shows(live, reply(live)["html"]["verdict"])
    calculators(page)[0].evaluate("self.close()")
    entry(live, "ring_outside").fill("37.62")
    page.clock.fast_forward("00:05")
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


SIGN_IN = {
    "status": 200,
    "content_type": "text/html; charset=utf-8",
    "body": "<title>Sign in</title><form>Room and name</form>",
}


@pytest.mark.parametrize("name", ["calc.zip", "python_stdlib.zip"])
def test_a_sign_in_page_in_the_place_of_a_late_part_is_told_as_that(page, address, name):
    """A guest network answers everything with its own page: that is no fault of the calculator, and goes by once one has signed in."""
    page.route(f"**/runtime/*/{name}", lambda route: route.fulfill(**SIGN_IN))
    live = opened(page, address)
    entry(live, "ring_outside").fill("37.61")
    shows(live, reply(live)["html"]["verdict"])
    assert page.evaluate(LATE) == "failed"
    expect(part(live, "status")).to_contain_text(
        "the network answered with a page of its own, as one does that asks you to sign in"
    )
    page.unroute(f"**/runtime/*/{name}")
    part(live, "status").get_by_role("button", name="Try again").click()
    page.wait_for_function(
        "import(new URL('/assets/js/runtime.mjs', location)).then(({ runtime }) => runtime.state === 'ready')"
    )
    page.provoked = True


def test_a_part_that_a_new_edition_has_taken_away_says_to_reload(page, address):
    page.route("**/runtime/*/calc.zip", lambda route: route.fulfill(status=404, body="Not found."))
    live = opened(page, address)
    entry(live, "ring_outside").fill("37.61")
    shows(live, reply(live)["html"]["verdict"])
    assert page.evaluate(LATE) == "failed"
    expect(part(live, "status")).to_contain_text("because a new edition has taken its place; reload the page")
    page.provoked = True


# Something that needs a part which the first answers did without.
LATE = """import(new URL('/assets/js/runtime.mjs', location)).then(({ runtime }) => {
    const failed = new Promise((done) => runtime.addEventListener('state', () => done(runtime.state), { once: true }));
    return Promise.race([failed, runtime.ask({ call: 'job-sheet', job: '', system: 'metric', needs: ['codes'] }).then((reply) => JSON.stringify(reply))]);
})"""


def test_a_browser_without_webassembly_says_what_it_lacks(page, address):
    page.add_init_script("delete globalThis.WebAssembly")
    live = opened(page, address)
    entry(live, "ring_outside").fill("37.61")
    expect(part(live, "status")).to_contain_text("it has no WebAssembly")
    assert entry(live, "ring_outside").input_value() == "37.61"


def calculators(page):
    """The workers that run Python; the theme's search has one too."""
    return [worker for worker in page.workers if worker.url.endswith("/assets/js/worker.mjs")]


def test_the_memory_that_the_build_made_is_woken(page, live):
    entry(live, "ring_outside").fill("37.61")
    shows(live, reply(live)["html"]["verdict"])
    assert page.evaluate(WOKEN)


@pytest.mark.parametrize("name", ["memory.wasm", "hot.wasm"])
def test_a_browser_that_cannot_wake_it_starts_from_bytecode(page, address, name):
    page.route(
        f"**/runtime/*/{name}",
        lambda route: route.fulfill(body=b"\0asm\1\0\0\0", content_type="application/wasm"),
    )
    live = opened(page, address)
    entry(live, "ring_outside").fill("37.61")
    shows(live, reply(live)["html"]["verdict"])
    assert not page.evaluate(WOKEN)


@pytest.fixture(scope="module")
def all_cold() -> bytes:
    """The program with nothing in its hot part, so that the first call already asks for the other."""
    return split.hot((bundle.program(environment.CACHE) / "trimmed.wasm").read_bytes(), set())


def test_a_page_asks_for_the_calculators_of_its_stations_with_the_memory_and_for_no_others(page, address):
    held, asked = [], []
    page.on(
        "request", lambda request: "/stations/" in request.url and asked.append(request.url.split("/")[-1])
    )
    page.route("**/runtime/*/memory.wasm", lambda route: held.append(route))
    live = opened(page, address)
    entry(live, "ring_outside").fill("37.61")
    page.wait_for_function("performance.getEntriesByType('resource').length > 0")
    page.wait_for_timeout(500)
    assert held and asked == ["heads.zip"], "while the memory is still on its way"
    held[0].continue_()
    shows(live, reply(live)["html"]["verdict"])
    assert asked == ["heads.zip"]


def test_calculators_of_a_station_that_the_page_did_not_name_are_fetched_when_they_are_asked(page, live):
    """As the page of a job does, which may open any; the first time only."""
    entry(live, "ring_outside").fill("37.61")
    shows(live, reply(live)["html"]["verdict"])
    asked = []
    page.on(
        "request", lambda request: "/runtime/" in request.url and asked.append(request.url.split("/")[-1])
    )
    request = {
        "call": "evaluate",
        "calculator": "rod-weights",
        "anchor": "r",
        "entries": {},
        "system": "inch",
    }
    for _ in range(2):
        assert page.evaluate(ASK, request) == json.loads(answer(json.dumps(request)))
    assert asked == ["rods.zip"]
    # what rods check comes with the job, though Python has looked for it in vain
    sheet = {"call": "job-sheet", "job": dump(ordinary()), "key": None, "root": "", "system": "metric"}
    assert page.evaluate(ASK, {**sheet, "needs": ["codes"]}) == json.loads(answer(json.dumps(sheet)))
    page.route("**/stations/threads.zip", lambda route: route.abort())
    threads = {**request, "calculator": "tap-drill"}
    page.evaluate(ASK.replace("=> runtime.ask", "=> void runtime.ask"), threads)
    entry(live, "ring_outside").fill("37.62")
    expect(part(live, "status")).to_contain_text("a part of them could not be fetched")
    page.unroute("**/stations/threads.zip")
    part(live, "status").get_by_role("button", name="Try again").click()
    shows(live, reply(live)["html"]["verdict"])
    assert page.evaluate(ASK, threads) == json.loads(answer(json.dumps(threads)))
    page.provoked = True


ASK = """(request) => import(new URL('/assets/js/runtime.mjs', location)).then(({ runtime }) => runtime.ask(request))"""


def test_a_function_that_is_not_in_the_hot_part_is_fetched_when_it_is_called(page, address, all_cold):
    fetched = []
    page.on("request", lambda request: request.url.endswith("/cold.wasm") and fetched.append(request.url))
    page.route(
        "**/runtime/*/hot.wasm", lambda route: route.fulfill(body=all_cold, content_type="application/wasm")
    )
    live = opened(page, address)
    entry(live, "ring_outside").fill("37.61")
    shows(live, reply(live)["html"]["verdict"])
    assert page.evaluate(WOKEN)
    assert len(fetched) == 1


def test_a_function_that_cannot_be_fetched_says_so_and_can_be_tried_again(page, address, all_cold):
    page.route(
        "**/runtime/*/hot.wasm", lambda route: route.fulfill(body=all_cold, content_type="application/wasm")
    )
    page.route("**/runtime/*/cold.wasm", lambda route: route.abort())
    live = opened(page, address)
    entry(live, "ring_outside").fill("37.61")
    expect(part(live, "status")).to_contain_text("could not be")
    page.unroute("**/runtime/*/cold.wasm")
    part(live, "status").get_by_role("button", name="Try again").click()
    shows(live, reply(live)["html"]["verdict"])
    page.provoked = True


WOKEN = "import(new URL('/assets/js/runtime.mjs', location)).then(({ runtime }) => runtime.woken)"


HELD = "script[data-held]"  # the theme's script, while it waits


def test_the_calculators_begin_before_the_themes_script_but_not_for_long(page, address):
    order = []
    page.on("request", lambda request: order.append(request.url.split("/")[-1].split(".")[0]))
    live = opened(page, address)
    expect(page.locator(HELD)).to_have_count(0)
    assert order.index("worker") < order.index("bundle")
    page.reload()
    page.route("**/memory.wasm", lambda route: None)  # Python never gets there
    page.goto(address)
    expect(page.locator(HELD)).to_have_count(0)
    expect(live.page.locator("[data-md-component=search-query]")).to_be_visible()


def test_the_themes_script_does_not_wait_when_the_reader_reaches_for_something(page, address):
    page.clock.install()  # its patience does not run out
    page.route("**/memory.wasm", lambda route: None)
    live = opened(page, address)
    entry(live, "ring_outside").press("5")
    page.clock.run_for(100)
    expect(page.locator(HELD)).to_have_count(1)
    page.locator("[data-md-component=search-query]").press("a")
    expect(page.locator(HELD)).to_have_count(0)


def test_a_page_without_calculators_has_the_themes_script_at_once(page, address):
    page.clock.install()
    page.goto("about/")
    expect(page.locator(HELD)).to_have_count(0)


@pytest.mark.parametrize("path", ["sources/", "heads/seats/"])
def test_the_themes_script_finds_the_page_as_if_it_had_not_waited(page, path):
    """What it does once a page was read: it wraps the tables of the prose."""
    page.goto(path)
    expect(page.locator("article .md-typeset__scrollwrap").first).to_be_attached()


def test_the_theme_measures_the_headings_again_after_an_answer_was_painted_not_before(page, address):
    page.add_init_script("""
        const { get } = Object.getOwnPropertyDescriptor(HTMLElement.prototype, "offsetTop");
        globalThis.measured = 0;
        Object.defineProperty(HTMLElement.prototype, "offsetTop", { get() { measured++; return get.call(this); } });
    """)
    live = opened(page, address)
    expect(page.locator(HELD)).to_have_count(0)
    page.wait_for_load_state("networkidle")
    page.wait_for_timeout(1000)  # it has measured what it wanted to
    headings = page.locator("article h2").count()
    until_painted, height = live.evaluate("""async (live) => {
        const entry = live.querySelector("[name=ring_outside]");
        const answered = new Promise((go) => new MutationObserver(go).observe(live.querySelector("[data-part=result]"), { childList: true }));
        const before = document.body.offsetHeight;
        measured = 0;
        entry.value = "37.9 mm";
        entry.dispatchEvent(new Event("input", { bubbles: true }));
        await answered;
        await new Promise((go) => requestAnimationFrame(() => setTimeout(go)));
        return [measured, document.body.offsetHeight - before];
    }""")
    assert height, "else nothing is to be measured"
    assert until_painted < headings
    page.wait_for_timeout(1000)
    assert page.evaluate("measured") > headings


def test_a_slow_first_visit_that_is_left_and_taken_up_again(browser, server, address):
    """The line is slow, the reader goes on before Python is there, comes back, and types: nothing hangs, nothing typed is lost."""
    with fresh_page(
        browser, base_url=server
    ) as page:  # with its service worker, which is still fetching then
        without_sharing(page)
        page.route("**/runtime/**", lambda route: (page.wait_for_timeout(400), route.continue_()))
        live = opened(page, address)
        entry(live, "ring_outside").fill("37.61")
        page.goto("heads/guides/")
        page.goto("measuring/limits/")
        page.go_back()
        page.go_back()
        live = page.locator(f"live-calculator[data-calculator={CALCULATOR}]")
        expect(entry(live, "ring_outside")).to_have_value("37.61")
        entry(live, "pocket_bore").fill("37.505")
        shows(live, reply(live)["html"]["verdict"])
        page.provoked = True  # what was asked for is broken off as the page is left
