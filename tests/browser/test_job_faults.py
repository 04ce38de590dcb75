"""Nothing is lost: two tabs at once, a crash, a full disk, forbidden storage, stored forms of other editions, a new edition."""

import json
import os
import re
import shutil
import signal
from contextlib import suppress
from pathlib import Path

import pytest
from playwright.sync_api import Error, expect

from calc.job import contents, files, record
from tests.browser.conftest import CHROMIUM, DESKTOP, PATIENCE, fresh_page, serving
from tests.browser.jobs import (
    HANDBOOK,
    NAME,
    beside,
    calculator,
    entry,
    fresh,
    keep,
    put,
    readings,
    start,
    stored,
    with_job,
    with_own_address,
)
from tests.browser.test_offline import OFFER, kept, new_edition
from tests.browser.test_runtime import WOKEN
from tests.job.jobs import ordinary

pytestmark = pytest.mark.browser

FORMS = Path(__file__).parents[1] / "job/forms"


def test_neither_of_two_tabs_loses_a_reading_and_each_shows_the_others(page):
    with_job(page, fresh(), "heads/seats/")
    other = page.context.new_page()
    other.goto("heads/seats/")
    one, two = calculator(page, "seat-fit"), calculator(other, "seat-fit")
    keep(one, "pocket_bore", "37.51", place="1 intake")
    two.locator(".job-strip [data-job-place='1 intake']").click()
    expect(entry(two, "pocket_bore")).to_have_value("37.51 mm")  # told by the first tab
    keep(two, "ring_outside", "37.61")
    expect(entry(one, "ring_outside")).to_have_value("37.61 mm")
    assert [r[3] for r in readings(page)] == ["37.51 mm", "37.61 mm"]


def test_changes_of_the_same_moment_are_all_kept(page):
    """Twelve additions from two tabs, none of which waits for another: whoever comes second is made anew on top of the first."""
    key = with_job(page, fresh(), "job/")
    expect(page.locator("#job-now")).to_be_visible()
    other = page.context.new_page()
    other.goto("job/")
    expect(other.locator("#job-now")).to_be_visible()
    begin = """([key, name]) => { globalThis.done = import(new URL('/assets/js/jobs.mjs', location)).then(({ ask, change }) => Promise.all(
        [1, 2, 3, 4, 5, 6].map((n) => change(key, async (job) => (await ask('job-done', { job, text: `${name} ${n}` })).job)))); }"""
    page.evaluate(begin, [key, "here"])
    other.evaluate(begin, [key, "there"])
    page.evaluate("done")
    other.evaluate("done")
    (held,) = stored(page)
    assert sorted(entry["text"] for entry in held["job"]["done"]) == sorted(
        f"{name} {n}" for name in ("here", "there") for n in range(1, 7)
    )
    assert held["rev"] == 13


def test_what_is_typed_into_a_form_outlives_a_reload_and_a_change_in_another_tab(page):
    key = with_job(page, fresh(), "job/")
    page.locator(".job-fold > summary", has_text="What was done").click()
    page.locator("#done-text").fill("Mains ground to the first")
    other = page.context.new_page()
    other.goto("about/")
    other.evaluate(
        "key => import(new URL('/assets/js/jobs.mjs', location)).then(({ ask, change }) => change(key, async (job) => (await ask('job-done', { job, text: 'Other' })).job))",
        key,
    )
    expect(page.locator(".job-done")).to_contain_text("Other")
    expect(page.locator("#done-text")).to_have_value("Mains ground to the first")
    page.reload()
    expect(page.locator(".job-done")).to_be_attached()
    expect(page.locator("#done-text")).to_have_value("Mains ground to the first")
    expect(page.locator("#done-text")).to_be_visible()  # the fold in which something was typed stands open
    page.get_by_role("button", name="Add").click()
    expect(page.locator(".job-done li")).to_have_count(2)
    expect(page.locator("#done-text")).to_have_value("")


def test_a_browser_killed_between_two_keystrokes_has_kept_the_reading(server, tmp_path, playwright_driver):
    def opened():
        path = os.environ.get("SIZEBOOK_CHROMIUM") or shutil.which("chromium")
        context = playwright_driver.chromium.launch_persistent_context(
            tmp_path / "profile",
            executable_path=path,
            args=CHROMIUM,
            base_url=server,
            viewport=DESKTOP,
            service_workers="block",
        )
        context.set_default_timeout(PATIENCE)
        return context, context.pages[0]

    context, page = opened()
    with_job(page, fresh(), "heads/seats/")
    keep(calculator(page, "seat-fit"), "pocket_bore", "37.51 ± 0.002", place="1 intake")
    entry(calculator(page, "seat-fit"), "ring_outside").fill("37.6")
    assert kill_browser(str(tmp_path / "profile"))
    with suppress(Error):
        context.close()
    context, page = opened()
    page.goto("about/")
    assert [r[3] for r in readings(page)] == ["37.51 ± 0.002 mm"]
    context.close()


def kill_browser(profile: str) -> int:
    """Kill, as a crash would, the very browser that runs on a profile of this test."""
    killed = 0
    for folder in Path("/proc").glob("[0-9]*"):
        try:
            command = (folder / "cmdline").read_bytes().decode().split("\0")
        except OSError:
            continue
        if f"--user-data-dir={profile}" in command:
            os.kill(int(folder.name), signal.SIGKILL)
            killed += 1
    return killed


def full(page, room: int):
    """Leave the site only so many bytes."""
    session = page.context.new_cdp_session(page)
    session.send(
        "Storage.overrideQuotaForOrigin", {"origin": page.evaluate("location.origin"), "quotaSize": room}
    )
    return session


def test_a_full_disk_is_told_with_the_export_offered_and_nothing_that_was_there_changes(page):
    with_job(page, ordinary(), "about/")
    before = stored(page)
    session = full(page, 1)
    page.goto("heads/seats/")
    # The browser remembers for half a minute how much room there was.
    page.evaluate("""async () => {
        const { keepPart } = await import(new URL('/assets/js/jobs.mjs', location));
        for (let full = false; !full; await new Promise((go) => setTimeout(go, 1000))) await keepPart('probe').catch(({ code }) => (full = code === 'full'));
    }""")
    fit = calculator(page, "seat-fit")
    entry(fit, "pocket_bore").fill("37.51")
    fit.locator(".job-strip [data-job-place='1 intake']").click()
    button = beside(fit, "pocket_bore").get_by_role("button", name="Keep as finished, 1 intake")
    button.click()
    message = beside(fit, "pocket_bore").locator("[data-job-message]")
    expect(message).to_contain_text("no room left, so this was not kept")
    assert entry(fit, "pocket_bore").input_value() == "37.51" and stored(page) == before
    with page.expect_download() as got:
        message.get_by_role("button", name="Export the job with this reading").click()
    exported = files.load(Path(got.value.path()).read_text(encoding="utf-8"))
    assert (
        exported["readings"][:-1] == ordinary()["readings"] and exported["readings"][-1]["text"] == "37.51 mm"
    )
    session.send(
        "Storage.overrideQuotaForOrigin", {"origin": page.evaluate("location.origin")}
    )  # room was made
    button.click()
    expect(beside(fit, "pocket_bore")).to_have_attribute("data-state", "filled")


def test_a_job_that_finds_no_room_can_be_taken_as_a_file(page):
    page.goto("job/")
    page.locator("#start-name").fill(NAME)
    full(page, 1)
    page.get_by_role("button", name="Start this job").click()
    message = page.locator("job-view [data-job-message]")
    expect(message).to_contain_text("no room left")
    expect(page.locator("#start-name")).to_have_value(NAME)
    with page.expect_download() as got:
        message.get_by_role("button", name=re.compile("^Export")).click()
    assert files.load(Path(got.value.path()).read_text(encoding="utf-8"))["name"] == NAME


def test_a_browser_that_lets_nothing_be_kept_says_so(page):
    page.add_init_script(
        "IDBFactory.prototype.open = function () { throw new DOMException('The operation is insecure.', 'SecurityError') }"
    )
    page.goto("job/")
    expect(page.locator("job-view [data-job-message]")).to_contain_text(
        "does not let the handbook keep anything"
    )
    page.locator("#start-name").fill(NAME)
    page.get_by_role("button", name="Start this job").click()
    expect(page.locator("job-view [data-job-message]")).to_contain_text(
        "does not let the handbook keep anything"
    )
    expect(page.locator("#start-name")).to_have_value(NAME)


def test_a_job_of_a_newer_form_is_left_as_it_is_and_said(page):
    newer = (FORMS / "form-99.json").read_text(encoding="utf-8")
    with_job(page, newer)
    expect(page.locator(".job-list")).to_contain_text("newer")
    assert stored(page)[0]["text"] == newer
    with page.expect_download() as got:
        page.get_by_role("button", name="Export as it is").click()
    assert Path(got.value.path()).read_text(encoding="utf-8") == newer
    page.goto("heads/seats/")
    expect(page.locator("p.job-strip").first).to_contain_text("newer")
    assert stored(page)[0]["text"] == newer


def test_a_job_of_an_older_form_is_read_and_brought_to_todays_with_its_next_change(page):
    older = (FORMS / "form-0.json").read_text(encoding="utf-8")
    with_job(page, older)
    expect(page.locator("#job-now")).to_have_text(files.load(older)["name"])
    assert stored(page)[0]["text"] == older, "looking changes nothing"
    page.locator(".job-fold > summary", has_text="What was done").click()
    page.locator("#done-text").fill("Ground")
    page.get_by_role("button", name="Add").click()
    expect(page.locator(".job-done li")).to_have_count(1)
    assert json.loads(stored(page)[0]["text"])["version"] == contents.VERSION
    kept = stored(page)[0]["job"]
    assert [line.text for line in record.done(kept)] == ["Ground"] and kept["readings"] == files.load(older)[
        "readings"
    ]


def test_a_damaged_job_is_said_and_the_others_are_there(page):
    page.goto("about/")
    put(page, files.dump(fresh("Whole")))
    damaged = files.dump(ordinary())[:900]
    with_job(page, damaged)
    expect(page.locator(".job-list")).to_have_count(2)
    expect(page.locator("job-view")).to_contain_text("cut short")
    expect(page.locator(".job-list strong")).to_have_text(["Whole"])
    assert damaged in [held["text"] for held in stored(page)]


def test_a_store_of_a_newer_edition_is_untouched_and_said(page):
    page.goto("about/")
    page.evaluate(
        "() => new Promise((done) => { const asked = indexedDB.open('sizebook', 7); asked.onupgradeneeded = () => asked.result.createObjectStore('later'); asked.onsuccess = () => { asked.result.close(); done(); } })"
    )
    page.goto("job/")
    expect(page.locator("job-view [data-job-message]")).to_contain_text("stored by a newer edition")
    assert page.evaluate("indexedDB.databases().then((all) => all.map(({ version }) => version))") == [7]


def test_a_job_removed_in_another_tab_is_not_written_again(page):
    key = with_job(page, fresh(), "heads/seats/")
    fit = calculator(page, "seat-fit")
    entry(fit, "pocket_bore").fill("37.51")
    fit.locator(".job-strip [data-job-place='1 intake']").click()
    other = page.context.new_page()
    other.goto("about/")
    other.evaluate(
        "key => import(new URL('/assets/js/jobs.mjs', location)).then(({ remove }) => remove(key))", key
    )
    expect(page.locator(".job-strip")).to_have_count(0)
    assert entry(fit, "pocket_bore").input_value() == "37.51" and stored(page) == []


def test_removing_asks_twice_and_says_what_would_be_lost(page):
    with_job(page, fresh())
    page.locator(".job-fold > summary", has_text="Name, parts, remove").click()
    page.locator("summary", has_text="Remove this job from the device").click()
    expect(page.locator("job-view")).to_contain_text("what is removed now is gone for good")
    page.get_by_role("button", name="Remove it").click()
    expect(page.locator("#start-name")).to_be_visible()
    assert stored(page) == []


def test_a_new_edition_finds_the_jobs_of_the_one_before(site, browser, tmp_path):
    copy = shutil.copytree(site, tmp_path / "copy")
    with serving(copy) as (address, _), fresh_page(browser, base_url=address) as page:
        with_job(page, ordinary(), "job/")
        kept(page)
        expect(page.locator("#job-now")).to_be_visible()
        page.locator(".job-fold > summary", has_text="What was done").click()
        page.locator("#done-text").fill("half a line")
        new_edition(copy)
        page.reload()
        with page.expect_navigation():
            page.locator(OFFER).get_by_role("button", name="Change to it").click()
        expect(page.locator("#job-now")).to_have_text(ordinary()["name"])
        expect(page.locator("#done-text")).to_have_value("half a line")
        assert [held["job"] for held in stored(page)] == [ordinary()]


def test_without_signal_a_job_goes_from_bench_to_sheet_to_checks(site, browser):
    with serving(site) as (address, stop), fresh_page(browser, base_url=address) as page:
        with_own_address(page)
        page.goto("")
        kept(page)
        stop()
        start(page)
        page.goto("heads/seats/")
        keep(calculator(page, "seat-fit"), "pocket_bore", "37.51", place="1 intake")
        page.goto("job/sheet/")
        expect(
            page.locator(".sheet-foot svg").first
        ).to_be_visible()  # what draws codes is on the device as well
        page.goto(page.locator("#job-link").input_value().replace(HANDBOOK, address))
        expect(page.locator(".job-check").first).to_be_visible()


def test_the_browser_is_asked_to_keep_it_with_the_first_job_and_its_answer_is_shown(page):
    page.add_init_script("""globalThis.asked = 0;
        navigator.storage.persist = async () => { asked++; return globalThis.granted = true };
        navigator.storage.persisted = async () => Boolean(globalThis.granted);""")
    start(page)
    assert page.evaluate("asked") == 1
    expect(page.locator(".job-safety")).to_contain_text(
        re.compile("keeps this job until you remove it|may clear this job")
    )
    page.reload()
    expect(page.locator(".job-safety")).to_contain_text("may clear this job")
    expect(page.locator(".job-safety")).to_contain_text("seven days")


@pytest.mark.usefixtures("own_python")
def test_a_worker_that_dies_loses_no_job_and_can_be_started_again(page):
    with_job(page, fresh(), "job/")
    expect(page.locator("#job-now")).to_be_visible()
    page.locator(".job-fold > summary", has_text="What was done").click()
    worker = next(w for w in page.workers if w.url.endswith("/assets/js/worker.mjs"))
    worker.evaluate("setTimeout(() => { throw new Error('out of memory') })")
    expect(page.locator("job-view [data-job-status]")).to_contain_text("out of memory")
    page.locator("#done-text").fill("Ground")
    page.get_by_role("button", name="Add").click()
    page.locator("job-view").get_by_role("button", name="Try again").click()
    expect(page.locator(".job-done li")).to_have_count(1)
    assert [entry["text"] for entry in stored(page)[0]["job"]["done"]] == ["Ground"]
    page.provoked = True


def test_a_python_woken_from_its_kept_memory_knows_jobs_too(page):
    """Its memory was taken before anybody asked about a job: what that needs comes late."""
    with_own_address(page)
    with_job(page, ordinary(), "heads/seats/")
    page.goto("job/sheet/")
    expect(page.locator(".sheet-foot svg").first).to_be_visible()
    assert page.evaluate(WOKEN)
    page.goto("heads/seats/")
    keep(calculator(page, "seat-fit"), "pocket_bore", "37.51", place="1 intake")
    assert page.evaluate(WOKEN) and readings(page)[-1][3] == "37.51 mm"
