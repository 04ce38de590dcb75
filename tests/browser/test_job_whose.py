"""Whose it is: what is typed or pressed goes to the job, sheet, check and place that it was made for, whatever the page shows by the time it is stored."""

import re
from pathlib import Path

import pytest
from playwright.sync_api import expect

from calc.job import codes, files, record
from tests.browser.conftest import fresh_page
from tests.browser.jobs import beside, calculator, entry, fresh, put, readings, stored, with_job
from tests.browser.live import part
from tests.job.jobs import ordinary

pytestmark = pytest.mark.browser

NOW = "2026-11-25T10:00+01:00"
MODULE = "import(new URL('/assets/js/jobs.mjs', location))"
# Writing takes as long as on a worn phone.
SLOW = """() => {
    const put = IDBObjectStore.prototype.put;
    const { transaction } = IDBDatabase.prototype;
    globalThis.slow = 700;
    const { get } = IDBObjectStore.prototype;
    IDBObjectStore.prototype.get = function (...args) {
        const end = performance.now() + (this.transaction.mode === 'readwrite' ? globalThis.slow : 0);
        const asked = get.apply(this, args);
        if (performance.now() >= end) return asked;
        const spin = () => { if (performance.now() < end) get.call(this, args[0]).onsuccess = spin; };
        spin();
        return asked;
    };
}"""
HELD_BACK = """() => {  // what the worker is asked is answered late
    for (const { prototype } of [Worker, MessagePort]) {  // one of its own, or the one that all pages share
        const { postMessage } = prototype;
        prototype.postMessage = function (...args) { setTimeout(() => postMessage.apply(this, args), globalThis.late ?? 0); };
    }
}"""


def two_jobs(page, address: str = "job/") -> tuple[str, str]:
    """A device with two jobs; the first one is worked on."""
    page.goto("about/")
    second = put(page, files.dump({**fresh("Ice machine"), "id": "ice"}))
    first = put(page, files.dump(fresh("Orchard")))
    page.goto(address)
    return first, second


def work_on(page, key: str) -> None:
    page.evaluate(f"key => {MODULE}.then(({{ makeCurrent }}) => makeCurrent(key))", key)


def jobs(page) -> dict:
    return {held["job"]["name"]: held["job"] for held in stored(page)}


def unfold(page, words: str):
    page.locator(".job-fold > summary", has_text=words).click()


def test_a_draft_stays_with_the_job_that_it_was_typed_for(page):
    first, _ = two_jobs(page)
    expect(page.locator("#job-now")).to_have_text("Orchard")
    unfold(page, "Name, parts, remove")
    page.locator("#change-name").fill("Orchard, north field")
    unfold(page, "What was done")
    page.locator("#done-text").fill("Mains ground")
    unfold(page, "Write down a size here")
    page.locator("#write-feature").select_option("crank.main_journal")
    page.locator("[data-keep=write]").get_by_text("2", exact=True).click()
    page.locator("#write-text").fill("54.98")
    page.get_by_role("button", name="Work on this").click()
    expect(page.locator("#job-now")).to_have_text("Ice machine")
    expect(page.locator("#change-name")).to_have_value("Ice machine")
    expect(page.locator("#done-text")).to_have_value("")
    expect(page.locator("#write-feature")).to_have_value("")
    assert page.locator("#write-text").count() == 0
    unfold(page, "Name, parts, remove")
    page.locator("form[data-job-call=change]").get_by_role("button", name="Change").click()
    expect(page.locator("form[data-job-call=change]")).not_to_have_attribute("aria-busy", "true")
    assert sorted(jobs(page)) == ["Ice machine", "Orchard"]
    page.get_by_role("button", name="Work on this").click()
    expect(page.locator("#job-now")).to_have_text("Orchard")
    expect(page.locator("#change-name")).to_have_value("Orchard, north field")
    expect(page.locator("#done-text")).to_have_value("Mains ground")
    expect(page.locator("#write-text")).to_have_value("54.98")
    expect(page.locator("[data-keep=write] [name=place]:checked")).to_have_value("2")


def test_a_correction_begun_for_one_job_does_not_stand_in_another(page):
    page.goto("about/")
    for name in ("Ice machine", "Orchard"):
        put(
            page,
            files.dump(
                record.add_reading(
                    {**fresh(name), "id": name[:3]},
                    "crank.main_journal",
                    "2",
                    "finished",
                    "54.98 mm",
                    NOW,
                    "MK",
                )
            ),
        )
    page.goto("job/")
    row = page.locator(".job-reading")
    row.locator("summary").first.click()
    row.locator("summary", has_text="Correct it").click()
    row.get_by_label("Main journal 2, as finished").fill("54.991")
    page.get_by_role("button", name="Work on this").click()
    expect(page.locator("#job-now")).to_have_text("Ice machine")
    expect(row.locator("[name=text]")).to_have_value("")


def test_what_is_typed_on_a_calculator_stays_with_its_job(page):
    _, second = two_jobs(page, "heads/seats/")
    fit = calculator(page, "seat-fit")
    expect(fit.locator(".job-strip-name")).to_have_text("Job: Orchard")
    entry(fit, "pocket_bore").fill("37.51")
    work_on(page, second)
    expect(fit.locator(".job-strip-name")).to_have_text("Job: Ice machine")
    expect(entry(fit, "pocket_bore")).to_have_value("")


def test_what_is_typed_on_a_check_stays_with_that_check_and_that_sheet(page, server):
    sheet, other = ordinary(), {**ordinary(), "id": "another", "name": "Ice machine"}
    page.goto(codes.links(sheet, server)[0])
    expect(page.locator("#job-now")).to_have_text(sheet["name"])

    def opened(title):
        fold = page.locator(".job-check > details", has_text=title)
        fold.locator("summary").first.click()
        return fold.locator("live-calculator")

    # three checks with one kind of calculator: of those that are open, the second becomes the first
    titles = [
        page.locator(".job-check > details > summary .job-label").nth(n).text_content()
        for n in range(page.locator(".job-check").count())
    ]
    assert {"Main bearing clearance", "Rod bearing clearance"} <= set(titles)
    mains = opened("Main bearing clearance")
    expect(mains.locator(".job-strip")).to_be_visible()  # it grows, and what is below it moves
    rods = opened("Rod bearing clearance")
    expect(rods.locator(".job-strip")).to_be_visible()
    entry(rods, "reading").fill("0.061")
    page.reload()
    expect(page.locator("#job-now")).to_be_visible()
    mains, rods = opened("Main bearing clearance"), opened("Rod bearing clearance")
    expect(entry(rods, "reading")).to_have_value("0.061")
    expect(entry(mains, "reading")).not_to_have_value("0.061")
    page.goto("about/")
    page.goto(codes.links(other, server)[0])
    expect(page.locator("#job-now")).to_have_text("Ice machine")
    rods = opened("Rod bearing clearance")
    expect(rods.locator(".job-strip")).to_be_visible()
    expect(entry(rods, "reading")).not_to_have_value("0.061")


def test_a_line_typed_while_another_is_being_kept_is_whole(page):
    page.add_init_script(f"({SLOW})()")
    with_job(page, fresh())
    unfold(page, "What was done")
    line = page.locator("#done-text")
    line.press_sequentially("Mains ground")
    line.press("Enter")
    page.keyboard.type("Rods resized", delay=100)
    page.keyboard.press("Enter")
    expect(page.locator(".job-done .job-line")).to_have_count(2)
    assert [line.text for line in record.done(stored(page)[0]["job"])] == ["Mains ground", "Rods resized"]
    expect(line).to_have_value("")
    page.reload()
    expect(page.locator("#job-now")).to_be_visible()
    expect(line).to_have_value("")


def test_what_is_refused_stands_there_again_and_what_was_typed_since_stays(page):
    page.add_init_script(f"({HELD_BACK})()")
    with_job(page, fresh())
    unfold(page, "Write down a size here")
    page.locator("#write-feature").select_option("crank.main_journal")
    form = page.locator("form[data-job-form=write]")
    form.get_by_text("2", exact=True).click()
    page.locator("#write-text").fill("54.98 kg")
    form.get_by_role("button", name="Keep").click()
    expect(form.locator("[data-message-for=text]")).to_contain_text("kg")
    expect(page.locator("#write-text")).to_have_value("54.98 kg")
    expect(form.locator("[name=place]:checked")).to_have_value("2")
    page.evaluate("globalThis.late = 800")
    page.locator("#write-text").press("Enter")
    page.keyboard.type("54.99", delay=40)
    expect(form.locator("[data-message-for=text]")).to_contain_text("Not kept: “54.98 kg”")
    expect(page.locator("#write-text")).to_have_value("54.99")
    assert readings(page) == []


def test_a_size_typed_right_after_another_was_kept_is_not_mixed_with_it(page):
    page.add_init_script(f"({SLOW})()")
    with_job(page, fresh(), "heads/seats/")
    fit = calculator(page, "seat-fit")
    fit.locator(".job-strip [data-job-place='1 intake']").click()
    field = entry(fit, "pocket_bore")
    field.fill("37.51")
    beside(fit, "pocket_bore").get_by_role("button", name="Keep as finished, 1 intake").click()
    field.press("Control+A")
    page.keyboard.type("37.53", delay=150)
    expect(beside(fit, "pocket_bore").locator("summary", has_text="Correct as finished")).to_be_visible()
    expect(field).to_have_value("37.53")
    assert [r[1:4] for r in readings(page)] == [("1 intake", "finished", "37.51 mm")]


def test_a_press_goes_to_the_job_that_was_shown_though_another_was_chosen_since(page):
    page.add_init_script(f"({HELD_BACK})()")
    _, second = two_jobs(page)
    expect(page.locator("#job-now")).to_have_text("Orchard")
    unfold(page, "What was done")
    page.locator("#done-text").fill("Mains ground")
    other = page.context.new_page()
    other.goto("job/")
    page.evaluate("globalThis.late = 600")
    work_on(other, second)
    page.wait_for_timeout(200)
    page.locator("#done-text").press("Enter")
    expect(page.locator("#job-now")).to_have_text("Ice machine")
    expect(page.locator("job-view [data-job-message]")).to_contain_text(
        "Another tab has gone over to Ice machine"
    )
    page.wait_for_timeout(2500)
    assert [line.text for line in record.done(jobs(page)["Orchard"])] == ["Mains ground"] and not jobs(page)[
        "Ice machine"
    ]["done"]


def test_a_keep_goes_to_the_place_and_the_job_that_it_was_pressed_for(page):
    page.add_init_script(f"({SLOW})()")
    page.add_init_script(f"({HELD_BACK})()")
    _, second = two_jobs(page, "heads/seats/")
    fit = calculator(page, "seat-fit")
    fit.locator(".job-strip [data-job-place='1 intake']").click()
    expect(fit.locator(".job-strip [data-job-place='1 intake']")).to_have_attribute("aria-pressed", "true")
    entry(fit, "pocket_bore").fill("37.51")
    page.evaluate("globalThis.late = 300")
    beside(fit, "pocket_bore").get_by_role("button", name="Keep as finished, 1 intake").click()
    fit.locator(".job-strip [data-job-place='2 intake']").click()
    page.wait_for_timeout(100)
    work_on(page, second)
    expect(fit.locator(".job-strip-name")).to_have_text("Job: Ice machine")
    page.wait_for_timeout(3000)
    assert [(r["place"], r["text"]) for r in jobs(page)["Orchard"]["readings"]] == [("1 intake", "37.51 mm")]
    assert jobs(page)["Ice machine"]["readings"] == []


def test_a_correction_of_a_size_that_another_tab_has_corrected_meanwhile_is_not_kept(page):
    key = with_job(
        page, record.add_reading(fresh(), "crank.main_journal", "2", "finished", "54.98 mm", NOW, "MK")
    )
    row = page.locator(".job-reading")
    row.locator("summary").first.click()
    row.locator("summary", has_text="Correct it").click()
    row.get_by_label("Main journal 2, as finished").fill("54.991")
    row.get_by_text("Misread before").click()
    # another tab was faster, and this one has not heard of it yet
    page.evaluate(
        f"""key => {{ globalThis.BroadcastChannel = undefined; return {MODULE}.then(async ({{ get, ask }}) => {{
        const {{ text }} = await get(key);
        const {{ job }} = await ask('job-add', {{ job: text, feature: 'crank.main_journal', place: '2', stage: 'finished', text: '54.985', why: 'Measured again' }});
        const asked = indexedDB.open('sizebook');
        await new Promise((done) => asked.onsuccess = () => {{
            const jobs = asked.result.transaction('jobs', 'readwrite').objectStore('jobs');
            jobs.get(key).onsuccess = ({{ target: {{ result }} }}) => jobs.put({{ ...result, text: job, rev: result.rev + 1 }}).onsuccess = () => {{ asked.result.close(); done(); }};
        }});
    }}) }}""",
        key,
    )
    row.get_by_role("button", name="Correct", exact=True).click()
    expect(row.locator("[data-message-for=text]")).to_contain_text(
        "another tab has read this size anew meanwhile (54.985 mm)"
    )
    assert [r[3] for r in readings(page)] == ["54.98 mm", "54.985 mm"]


def test_a_double_tap_strikes_one_line_and_it_can_be_put_back(page):
    job = fresh()
    for line in ("Mains ground", "Rods resized", "Case lapped"):
        job = record.add_done(job, line)
    with_job(page, job)
    unfold(page, "What was done")
    page.locator(".job-line", has_text="Mains ground").get_by_role(
        "button", name=re.compile("Strike")
    ).dblclick()
    expect(page.locator(".job-line s")).to_have_text(["Mains ground"])
    page.wait_for_timeout(800)
    expect(page.locator(".job-line s")).to_have_text(["Mains ground"])
    page.locator(".job-line summary", has_text="Struck").click()
    page.wait_for_timeout(500)
    page.get_by_role("button", name="Put back: Mains ground").click()
    expect(page.locator(".job-line s")).to_have_count(0)


def test_two_tabs_strike_the_line_that_each_of_them_names(page):
    job = fresh()
    for line in ("Mains ground", "Rods resized", "Case lapped"):
        job = record.add_done(job, line)
    with_job(page, job)
    other = page.context.new_page()
    other.goto("job/")
    for tab in (page, other):
        unfold(tab, "What was done")
    for tab, line in (
        (page, "Mains ground"),
        (other, "Rods resized"),
    ):  # pressed at once; the view may be drawn anew meanwhile
        tab.evaluate(
            """line => setTimeout(() => [...document.querySelectorAll('.job-line')].find((one) => one.textContent.includes(line)).querySelector('[data-job-call="strike"]').click(), 100)""",
            line,
        )
    for tab in (page, other):
        expect(tab.locator(".job-line s")).to_have_text(["Mains ground", "Rods resized"])


# --- The customer's link ---------------------------------------------------------------------------

FORBIDDEN = "IDBFactory.prototype.open = function () { throw new DOMException('The operation is insecure.', 'SecurityError') }"


def test_a_link_is_shown_by_a_browser_that_keeps_nothing(page, server):
    page.add_init_script(FORBIDDEN)
    link = codes.links(ordinary(), server)[0]
    page.goto(link)
    expect(page.locator("#job-now")).to_have_text(ordinary()["name"])
    expect(page.locator("job-view [data-job-message]")).to_contain_text(
        "is shown from its link and is not kept on this device"
    )
    expect(page.locator(".job-check").first).to_be_visible()
    assert page.url == link
    page.locator(".job-check summary", has_text="Main bearing clearance").click()
    check = page.locator("live-calculator")
    entry(check, "reading").fill("0.061")
    expect(part(check, "announce")).not_to_be_empty()
    with page.expect_download() as got:
        page.get_by_role("button", name="Export as a file").click()
    assert files.load(Path(got.value.path()).read_text(encoding="utf-8")) == ordinary()


def test_a_link_that_is_opened_keeps_its_code_and_opens_again_after_the_browser_was_cleared(page, server):
    link = codes.links(ordinary(), server)[0]
    page.goto(link)
    expect(page.locator("#job-now")).to_have_text(ordinary()["name"])
    assert page.url == link
    expect(page.get_by_role("link", name="Print the size sheet")).to_be_visible()  # it is kept by now
    assert [held["kind"] for held in stored(page)] == ["sheet"]
    page.goto("about/")
    page.evaluate("() => new Promise((done) => { indexedDB.deleteDatabase('sizebook').onsuccess = done })")
    page.goto(link)
    expect(page.locator("#job-now")).to_have_text(ordinary()["name"])
    expect(page.get_by_role("link", name="Print the size sheet")).to_be_visible()
    assert [held["job"] for held in stored(page)] == [ordinary()]


def test_the_address_of_a_sheet_that_is_gone_says_so(page):
    page.goto("job/received/#0d9f2b1c-not-here")
    expect(page.locator("job-view [data-job-message]")).to_contain_text(
        "This sheet is no longer on this device"
    )
    page.goto("about/")
    page.goto("job/sheet/#0d9f2b1c-not-here")
    expect(page.locator("job-view [data-job-message]")).to_contain_text(
        "The job of this size sheet is no longer on this device"
    )


def test_a_link_of_a_newer_edition_says_so(page):
    page.goto("job/received/#v2.ABCDEF")
    expect(page.locator("job-view [data-job-message]")).to_contain_text(
        "made by a newer edition of this handbook"
    )
    assert stored(page) == []


def test_copied_is_said_only_when_it_was(browser, server):
    for spoil, words in (
        (
            "navigator.clipboard.writeText = async () => { throw new DOMException('no', 'NotAllowedError') }; document.execCommand = () => false",
            "Not copied",
        ),
        (
            "Object.defineProperty(navigator, 'clipboard', { value: undefined }); document.execCommand = () => false",
            "Not copied",
        ),
        (
            "Object.defineProperty(navigator, 'clipboard', { value: undefined }); document.execCommand = (what) => what === 'copy'",
            "Copied",
        ),
    ):
        with fresh_page(browser, base_url=server, service_workers="block") as page:
            page.add_init_script(spoil)
            with_job(page, fresh(), "job/sheet/")
            page.get_by_role("button", name="Copy the link").click()
            expect(page.locator("[data-job-do=copy]")).to_contain_text(re.compile(rf"^{words}"))


# --- What the browser may do ------------------------------------------------------------------------


def test_a_job_that_the_browser_has_cleared_is_told_of(page):
    with_job(page, fresh(), "about/")
    page.evaluate("() => new Promise((done) => { indexedDB.deleteDatabase('sizebook').onsuccess = done })")
    page.goto("job/")
    expect(page.locator("job-view [data-job-message]")).to_contain_text(
        "The job that was worked on here is no longer on this device"
    )
    expect(page.locator("#start-name")).to_be_visible()


def test_a_store_that_cannot_be_read_is_told_of(page):
    page.add_init_script(
        "IDBObjectStore.prototype.getAll = function () { throw new DOMException('Internal error.', 'UnknownError') }"
    )
    page.goto("job/")
    expect(page.locator("job-view [data-job-message]")).to_contain_text("cannot be read or written just now")


def test_an_older_tab_that_blocks_the_store_is_named(page):
    page.add_init_script("""const { open } = IDBFactory.prototype;
        IDBFactory.prototype.open = function (...args) { const asked = open.apply(this, args); return asked; }""")
    page.goto("about/")
    page.evaluate(
        "() => new Promise((done) => { const asked = indexedDB.open('held', 1); asked.onsuccess = () => { globalThis.holds = asked.result; done(); }; })"
    )
    other = page.context.new_page()
    other.add_init_script("""const { open } = IDBFactory.prototype;
        IDBFactory.prototype.open = function (name) { return open.call(this, 'held', 2); }""")  # a later edition meets a tab that does not let go
    other.goto("job/")
    expect(other.locator("job-view [data-job-message]")).to_contain_text(
        "Another tab of this handbook, of an older edition, holds the jobs"
    )


def test_the_browser_fills_in_no_form_of_a_job(page):
    with_job(page, ordinary())
    expect(page.locator("#job-now")).to_be_visible()
    forms = page.locator("job-view form[data-job-form]")
    assert forms.count() > 10
    assert [
        form
        for form in forms.evaluate_all("all => all.map((form) => [form.dataset.jobForm, form.autocomplete])")
        if form[1] != "off"
    ] == []


# --- Beside the fields of a calculator ---------------------------------------------------------------


def test_what_was_typed_at_one_place_does_not_stand_at_another(page):
    with_job(page, fresh(), "heads/seats/")
    fit = calculator(page, "seat-fit")
    place = lambda which: fit.locator(f".job-strip [data-job-place='{which}']")
    entry(fit, "pocket_bore").fill("37.51")  # before it is said which one it is
    place("1 intake").click()
    expect(place("1 intake")).to_have_attribute("aria-pressed", "true")
    expect(entry(fit, "pocket_bore")).to_have_value("37.51")
    place("2 intake").click()
    expect(place("2 intake")).to_have_attribute("aria-pressed", "true")
    expect(entry(fit, "pocket_bore")).to_have_value("")
    page.reload()
    expect(place("2 intake")).to_have_attribute("aria-pressed", "true")
    expect(entry(fit, "pocket_bore")).to_have_value("")
    place("1 intake").click()
    expect(entry(fit, "pocket_bore")).to_have_value("37.51")


def test_readings_of_one_rod_make_no_bend_of_another(page):
    with_job(page, fresh(), "rods/resizing/")
    align = calculator(page, "rod-align")
    place = lambda which: align.locator(f".job-strip [data-job-place='{which}']")
    place("3").click()
    expect(place("3")).to_have_attribute("aria-pressed", "true")
    entry(align, "bend_right").fill("0.03")
    place("4").click()
    expect(place("4")).to_have_attribute("aria-pressed", "true")
    expect(entry(align, "bend_right")).to_have_value("")


def test_a_fraction_and_a_power_of_ten_keep_their_meaning_when_the_units_turn(page):
    page.goto("heads/seats/")
    fit = page.locator("live-calculator[data-calculator=seat-fit]")
    for typed, turned in (
        ("1 1/2", "1 1/2 in"),
        ("3.79e1", "3.79e1 mm"),
        ("37.5", "37.5 mm"),
        ("1.48 in", "1.48 in"),
    ):
        page.locator("[data-units-choice=metric]").first.click()
        entry(fit, "pocket_bore").fill(typed)
        page.locator("[data-units-choice=inch]").first.click()
        expect(entry(fit, "pocket_bore")).to_have_value(turned)


def test_enter_that_ends_a_composed_word_stays_in_its_field(page):
    page.goto("heads/seats/")
    field = entry(page.locator("live-calculator[data-calculator=seat-fit]"), "pocket_bore")
    field.focus()
    field.evaluate(
        "e => e.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', isComposing: true, bubbles: true, cancelable: true }))"
    )
    expect(field).to_be_focused()
    field.evaluate(
        "e => e.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true, cancelable: true }))"
    )
    expect(field).not_to_be_focused()


def test_a_calculator_says_that_its_job_was_cleared(page):
    with_job(page, fresh(), "about/")
    page.evaluate("() => new Promise((done) => { indexedDB.deleteDatabase('sizebook').onsuccess = done })")
    page.goto("heads/seats/")
    expect(page.locator("p.job-strip").first).to_contain_text("no longer on this device")


def test_what_was_kept_at_a_place_that_was_left_meanwhile_is_no_draft_there(page):
    page.add_init_script(f"({SLOW})()")
    with_job(page, fresh(), "heads/seats/")
    fit = calculator(page, "seat-fit")
    place = lambda which: fit.locator(f".job-strip [data-job-place='{which}']")
    place("1 intake").click()
    expect(place("1 intake")).to_have_attribute("aria-pressed", "true")
    entry(fit, "pocket_bore").fill("37.51")
    beside(fit, "pocket_bore").get_by_role("button", name="Keep as finished, 1 intake").click()
    place("2 intake").click()
    expect(place("2 intake")).to_have_attribute("aria-pressed", "true")
    page.wait_for_timeout(2000)
    place("1 intake").click()
    expect(beside(fit, "pocket_bore")).to_have_attribute("data-state", "filled")
    expect(entry(fit, "pocket_bore")).to_have_value("37.51 mm")
