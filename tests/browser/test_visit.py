"""One Python for the pages of a visit: it outlives each of them, and no page gets what another one asked."""

import json
import re
import shutil

import pytest
from playwright.sync_api import Error, expect

from calc.page.live import answer
from tests.browser.conftest import fresh_page, serving
from tests.browser.live import CALCULATOR, entry, opened, part, reply, shows, wait_for_state

pytestmark = pytest.mark.browser

RODS = "rods/resizing/"
SEATS = [f"37.{n}" for n in range(590, 640)]
SHARES = [f"{n / 2} %" for n in range(100, 150)]
# Asks one after the other without waiting, each in a lane of its own, and gives the answers back: the verdict's, then the rest.
ASK_ALL = """([calculator, field, texts]) => import(new URL('/assets/js/runtime.mjs', location)).then(({ runtime }) =>
    Promise.all(texts.map(async (text) => {
        const told = [];
        const asked = { call: 'evaluate', calculator, anchor: 'here', first: true, entries: { [field]: text }, standing: null, system: 'metric', working: false };
        told.push(await runtime.ask(asked, Symbol(text), (first) => told.push(first)));
        return told;
    })))"""


@pytest.fixture
def copy(site, tmp_path):
    """A copy of the site that a test may change."""
    return shutil.copytree(site, tmp_path / "copy")


@pytest.fixture
def visit(browser, copy):
    with (
        serving(copy) as (address, _),
        fresh_page(browser, base_url=address, service_workers="block") as page,
    ):
        yield page


def pythons(page) -> list[str]:
    """The shared workers of the page's origin and browser context: one of a context that was closed may take a while to go."""
    origin = page.evaluate("location.origin")
    own = page.context.new_cdp_session(page).send("Target.getTargetInfo")["targetInfo"]["browserContextId"]
    found = page.context.browser.new_browser_cdp_session().send("Target.getTargets")["targetInfos"]
    return [
        each["targetId"]
        for each in found
        if each["type"] == "shared_worker"
        and each["url"].startswith(origin)
        and each["browserContextId"] == own
    ]


def works(page, address, ring="37.61"):
    """The seat's calculator answers on a page."""
    live = opened(page, address)
    entry(live, "ring_outside").fill(ring)
    shows(live, reply(live)["html"]["verdict"])
    return live


def told(calculator: str, field: str, text: str) -> list[dict]:
    """What CPython says to what ASK_ALL asks: the verdict's part, then the rest."""
    asked = {
        "call": "evaluate",
        "calculator": calculator,
        "anchor": "here",
        "first": True,
        "entries": {field: text},
        "standing": None,
        "system": "metric",
        "working": False,
    }
    return [json.loads(answer(json.dumps(asked))), json.loads(answer('{"call": "rest"}'))]


def spoil(copy, old: str, new: str) -> None:
    worker = copy / "assets/js/worker.mjs"
    text = worker.read_text(encoding="utf-8")
    assert text.count(old) == 1
    worker.write_text(text.replace(old, new), encoding="utf-8")


def test_the_next_page_of_a_visit_finds_the_python_of_the_last(page, address):
    works(page, address)
    (python,) = pythons(page)
    page.goto("about/")
    page.goto(RODS)
    wait_for_state(page, "ready")
    works(page, address, "37.62")
    assert pythons(page) == [python]
    assert page.workers == []


def test_two_pages_that_ask_at_once_get_their_own_answers(page, address):
    works(page, address)
    other = page.context.new_page()
    other.goto(RODS)
    wait_for_state(other, "ready")
    assert len(pythons(page)) == 1
    asked = {page: (CALCULATOR, "ring_outside", SEATS), other: ("tap-drill", "wanted", SHARES)}
    for each, given in asked.items():
        each.evaluate(f"(given) => {{ globalThis.told = ({ASK_ALL})(given); }}", list(given))
    for each, (calculator, field, texts) in asked.items():
        assert each.evaluate("told") == [told(calculator, field, text) for text in texts]


def test_a_page_that_goes_in_the_middle_leaves_the_others_their_answers(page, address):
    works(page, address)
    for _ in range(3):
        other = page.context.new_page()
        other.goto(address)
        wait_for_state(other, "ready")
        other.evaluate(f"(given) => {{ void ({ASK_ALL})(given); }}", [CALCULATOR, "ring_outside", SEATS])
        other.close()
    live = page.locator(f"live-calculator[data-calculator={CALCULATOR}]")
    entry(live, "ring_outside").fill("37.63")
    shows(live, reply(live)["html"]["verdict"])
    assert len(pythons(page)) == 1


def test_a_python_that_is_ended_is_told_to_every_page_and_begins_anew_when_asked(visit, copy, address):
    """As the system ends it when memory runs short: at once, not when the reader waits in vain."""
    spoil(copy, "port.onmessage = ({ data }) =>", "port.onmessage = ({ data }) => data.end ? self.close() :")
    live = works(visit, address)
    other = visit.context.new_page()
    there = works(other, address, "37.62")
    (ended,) = pythons(visit)
    assert end(visit)
    for each in (live, there):
        expect(part(each, "status")).to_contain_text("The calculators stopped: the browser has ended them.")
        expect(part(each, "status")).to_contain_text("Your entries are kept")
    part(live, "status").get_by_role("button", name="Try again").click()
    part(there, "status").get_by_role("button", name="Try again").click()
    for each, ring in ((live, "37.64"), (there, "37.65")):
        entry(each, "ring_outside").fill(ring)
        shows(each, reply(each)["html"]["verdict"])
    (begun,) = pythons(visit)
    assert begun != ended


def end(page, how="end") -> bool:
    """Say a word to the page's Python that only a spoilt worker knows."""
    return page.evaluate(
        """(how) => {
            const build = document.querySelector('meta[name="sizebook-build"]').content.split('-');
            const folder = (name) => new URL(`/runtime/${name}/`, location).href;
            const name = JSON.stringify({ runtime: folder(build[0]), calc: folder(build[1]), scripts: build[2], memory: true });
            const { port } = new SharedWorker(new URL('/assets/js/worker.mjs', location), { type: 'module', name, extendedLifetime: true });
            port.start();
            port.postMessage({ [how]: true });
            return true;
        }""",
        how,
    )


def test_a_fault_of_the_worker_is_told_to_every_page(visit, copy, address):
    spoil(
        copy, "port.onmessage = ({ data }) =>", "port.onmessage = ({ data }) => data.end ? fault.call.me() :"
    )
    live = works(visit, address)
    other = visit.context.new_page()
    there = works(other, address)
    end(visit)
    for each in (live, there):
        expect(part(each, "status")).to_contain_text("The calculators could not go on")
    part(there, "status").get_by_role("button", name="Try again").click()
    entry(there, "ring_outside").fill("37.66")
    shows(there, reply(there)["html"]["verdict"])
    visit.provoked = True


def test_a_python_that_hangs_is_left_for_one_of_the_pages_own(visit, copy, address):
    """It cannot be ended from a page: this tab goes on without it."""
    spoil(copy, "port.onmessage = ({ data }) =>", "port.onmessage = ({ data }) => { while (data.end); return")
    worker = copy / "assets/js/worker.mjs"
    text = worker.read_text(encoding="utf-8")
    worker.write_text(re.sub(r"(while \(data\.end\); return .*);\n", r"\1 };\n", text), encoding="utf-8")
    visit.clock.install()
    live = works(visit, address)
    end(visit)
    entry(live, "ring_outside").fill("37.67")
    visit.clock.fast_forward("00:16")
    expect(part(live, "status")).to_contain_text("The calculators do not answer any more.")
    part(live, "status").get_by_role("button", name="Try again").click()
    shows(live, reply(live)["html"]["verdict"])
    assert len(visit.workers) == 1
    works(visit, address, "37.68")


def test_a_page_that_crashes_takes_no_other_with_it_for_good(page, address):
    works(page, address)
    other = page.context.new_page()
    live = works(other, address, "37.62")
    page.provoked = True
    crash(page)
    entry(live, "ring_outside").fill("37.69")
    again = part(live, "status").get_by_role("button", name="Try again")
    verdict = re.compile(".")
    expect(again.or_(part(live, "verdict").get_by_text(verdict)).first).to_be_visible()
    if again.is_visible():
        again.click()
    shows(live, reply(live)["html"]["verdict"])


def crash(page) -> None:
    try:
        page.goto("chrome://crash")
    except Error:  # it is what was asked for
        pass


def test_what_one_page_lacks_the_others_go_on_without(visit, copy, address):
    """A station's calculators that are missing are told to the page that wants them."""
    (rods,) = copy.glob("runtime/*/stations/rods.zip")
    away = rods.rename(rods.with_suffix(".away"))
    live = works(visit, address)
    other = visit.context.new_page()
    other.goto(RODS)
    there = other.locator("live-calculator[data-calculator=rod-weights]")
    there.locator("input[data-entry]").first.fill("500")
    status = there.locator("[data-part=status]")
    expect(status).to_contain_text("a part of them is not there any more")
    entry(live, "ring_outside").fill("37.62")
    shows(live, reply(live)["html"]["verdict"])
    away.rename(rods)
    status.get_by_role("button", name="Try again").click()
    expect(status).to_be_empty()
    expect(there.locator("[data-part=verdict]")).not_to_have_attribute("data-stale", "")
    assert len(pythons(visit)) == 1
    visit.provoked = True


def test_a_python_that_cannot_start_is_told_and_started_once_it_can(visit, copy, address):
    """Every page hears why; one that comes later tries for itself."""
    script = copy / "assets/js/python.mjs"
    away = script.rename(script.with_suffix(".away"))
    live = opened(visit, address)
    entry(live, "ring_outside").fill("37.61")
    expect(part(live, "status")).to_contain_text("could not be started")
    away.rename(script)
    part(live, "status").get_by_role("button", name="Try again").click()
    shows(live, reply(live)["html"]["verdict"])
    visit.provoked = True


def test_a_new_edition_has_a_python_of_its_own(visit, copy, address):
    """Also where only the pages' scripts are others: a page never speaks with the worker of another edition."""
    works(visit, address)
    (old,) = pythons(visit)
    for page in copy.rglob("*.html"):
        text = page.read_text(encoding="utf-8")
        page.write_text(
            re.sub(r'(name="sizebook-build" content="\w+-\w+)-\w+', r"\1-0a1b2c3d", text), encoding="utf-8"
        )
    works(visit, address, "37.62")
    assert {*pythons(visit)} > {old}


def test_without_signal_a_python_from_before_brings_what_it_has_not_got_yet(browser, copy, address):
    """It began before anything was kept on the device; a page of another station comes after the signal has gone."""
    with serving(copy) as (base, stop), fresh_page(browser, base_url=base) as page:
        works(page, address)
        expect(page.locator("[data-offline-status]")).to_have_text("Ready to work without signal.")
        (python,) = pythons(page)
        stop()
        page.goto(RODS)
        wait_for_state(page, "ready")
        assert pythons(page) == [python]
        asked = {"call": "evaluate", "calculator": "rod-weights", "entries": {}, "system": "metric"}
        ask = "(asked) => import(new URL('/assets/js/runtime.mjs', location)).then(({ runtime }) => runtime.ask(asked))"
        assert page.evaluate(ask, asked) == json.loads(answer(json.dumps(asked)))
