"""A job on the device: started in two taps, filled from what is measured, shown wherever it is needed, corrected with a reason."""

import re
from pathlib import Path

import pytest
from playwright.sync_api import expect

from calc.job import files, record
from calc.reference.engine import engine
from tests.browser.conftest import PHONE, fresh_page
from tests.browser.jobs import (
    NAME,
    as_file,
    beside,
    calculator,
    entry,
    fresh,
    keep,
    raw_file,
    readings,
    start,
    stored,
    with_job,
)
from tests.browser.live import part, wait_for_state
from tests.job.jobs import ordinary

pytestmark = pytest.mark.browser


def test_two_taps_and_a_name_start_a_job(page):
    page.goto("")
    page.get_by_role("link", name="Job", exact=True).first.click()
    page.locator("#start-name").fill(NAME)
    page.get_by_role("button", name="Start this job").click()
    expect(page.locator("#job-now")).to_have_text(NAME)
    (held,) = stored(page)
    assert (held["kind"], held["job"]["name"], held["job"]["engine"], held["job"]["readings"]) == (
        "job",
        NAME,
        "TS-16",
        [],
    )
    page.reload()
    expect(page.locator("#job-now")).to_have_text(NAME)


def test_parts_are_ticked_or_written_and_the_words_are_what_is_kept(page):
    page.goto("job/")
    expect(page.locator("job-view[data-ready]")).to_be_visible()
    received = page.locator("#start-received")
    part = lambda word: (
        page.locator("#start-received")
        .locator("xpath=ancestor::div[contains(@class, 'job-received')]")
        .get_by_role("checkbox", name=word, exact=True)
    )
    received.press_sequentially("2 Heads, crankshaft")
    for word, is_it in (("heads", True), ("crank", True), ("rods", False), ("case", False)):
        expect(part(word)).to_be_checked(checked=is_it)
    part("rods").check()
    part("flywheel").check()
    expect(received).to_have_value("2 Heads, crankshaft, rods, flywheel")
    part("heads").uncheck()
    expect(received).to_have_value("crankshaft, rods, flywheel")
    received.fill("heads with valves, rods, flywheel")
    part("valves").click()  # the words say more than that, so they stay, and so does the tick
    expect(received).to_have_value("heads with valves, rods, flywheel")
    expect(part("valves")).to_be_checked()
    page.locator("#start-engine").select_option("RC-40")
    expect(part("flywheel")).to_be_hidden()  # its data sheet has none
    page.locator("#start-engine").select_option("TS-16")
    page.reload()  # a draft
    expect(received).to_have_value("heads with valves, rods, flywheel")
    expect(part("flywheel")).to_be_checked()
    page.locator("#start-name").fill(NAME)
    page.keyboard.press("Enter")
    expect(page.locator("#job-now")).to_have_text(NAME)
    assert stored(page)[0]["job"]["received"] == "heads with valves, rods, flywheel"
    page.locator(".job-fold > summary", has_text="Name, parts, remove").click()
    change = page.locator("form[data-job-call=change]")
    expect(change.get_by_role("checkbox", checked=True)).to_have_count(4)
    change.get_by_role("checkbox", name="cam").check()
    change.get_by_role("button", name="Change").click()
    expect(page.locator(".job-facts").first).to_contain_text("rods, flywheel, cam")


def test_without_a_job_a_calculator_loads_nothing_of_it_and_says_nothing_of_it(page):
    asked = []
    page.on("request", lambda request: asked.append(request.url))
    page.goto("heads/seats/")
    live = page.locator("live-calculator[data-calculator=seat-fit]")
    entry(live, "ring_outside").fill("37.61")
    expect(part(live, "announce")).not_to_be_empty()
    assert page.locator(".job-strip, .job-field").count() == 0
    page.goto("rods/resizing/")
    wait_for_state(page, "ready")
    assert (
        page.locator("[data-job-said]").count() > 5
        and page.locator("[data-job-said]:not(:empty)").count() == 0
    )
    assert not [
        url
        for url in asked
        if re.search(r"/(job|jobs|job-fields|job-sizes|idb)\.mjs|job\.css|codes\.zip", url)
    ]


def test_a_name_that_is_missing_is_told_under_its_field(page):
    page.goto("job/")
    page.get_by_role("button", name="Start this job").click()
    expect(page.locator("#start-name-message")).to_contain_text("Give the job a name")
    expect(page.locator("#start-name")).to_be_focused()
    assert stored(page) == []


def test_what_is_kept_on_one_calculator_is_filled_in_on_another_with_where_it_came_from(page):
    with_job(page, fresh(), "heads/seats/")
    fit = calculator(page, "seat-fit")
    keep(fit, "pocket_bore", "37.512 ± 0.002", place="2 intake")
    assert readings(page) == [
        ("head.seat_pocket_intake", "2 intake", "finished", "37.512 ± 0.002 mm", "MK", "")
    ]
    shrink = calculator(page, "seat-shrink")
    expect(entry(shrink, "pocket_bore")).to_have_value("37.512 ± 0.002 mm")
    expect(beside(shrink, "pocket_bore").locator(".job-from")).to_have_text(
        re.compile(rf"^From the job {NAME}: finished, \d+ \w+, MK\.$")
    )
    expect(beside(shrink, "pocket_bore").locator(".chip")).to_have_text("In order")
    # and so after a reload, where it is for the place that was chosen
    page.reload()
    expect(entry(calculator(page, "seat-fit"), "pocket_bore")).to_have_value("37.512 ± 0.002 mm")
    fit.locator(".job-strip [data-job-place='3 intake']").click()
    expect(entry(fit, "pocket_bore")).to_have_value("")


def test_a_reading_is_worked_with_as_soon_as_it_is_filled_in(page):
    with_job(page, fresh(), "heads/seats/")
    keep(calculator(page, "seat-fit"), "ring_outside", "37.52", place="1 intake")
    at_first = page.locator("live-calculator[data-calculator=seat-fit] [data-part=verdict]").inner_text()
    page.reload()
    expect(part(calculator(page, "seat-fit"), "verdict")).to_have_text(at_first, use_inner_text=True)
    assert "Not in order" in at_first


def test_which_one_must_be_said_before_it_is_kept(page):
    with_job(page, fresh(), "heads/seats/")
    fit = calculator(page, "seat-fit")
    entry(fit, "pocket_bore").fill("37.50")
    expect(beside(fit, "pocket_bore").locator("[data-job-keep]")).to_have_count(0)
    beside(fit, "pocket_bore").locator("[data-job-place='4 intake']").click()
    beside(fit, "pocket_bore").get_by_role("button", name="Keep as received, 4 intake").click()
    expect(beside(fit, "pocket_bore")).to_have_attribute("data-state", "filled")
    assert readings(page)[0][:4] == ("head.seat_pocket_intake", "4 intake", "received", "37.50 mm")


def test_on_an_exhaust_valve_the_size_is_that_of_the_exhaust(page):
    with_job(page, fresh(), "heads/seats/")
    keep(calculator(page, "seat-fit"), "pocket_bore", "33.50", place="1 exhaust")
    assert readings(page)[0][:2] == ("head.seat_pocket_exhaust", "1 exhaust")


def test_a_bare_number_takes_the_unit_that_the_field_shows(page):
    with_job(page, fresh(), "heads/seats/")
    page.click("[data-units-choice=inch]")
    keep(calculator(page, "seat-fit"), "pocket_bore", "1 31/64", place="1 intake")
    assert readings(page)[0][3] == "1 31/64 in"


def test_what_the_calculator_refuses_is_not_kept(page):
    with_job(page, fresh(), "heads/seats/")
    fit = calculator(page, "seat-fit")
    entry(fit, "pocket_bore").fill("37.5 kg")
    fit.locator(".job-strip [data-job-place='1 intake']").click()
    beside(fit, "pocket_bore").locator("[data-job-keep=finished]").click()
    expect(beside(fit, "pocket_bore").locator("[data-job-message]")).to_contain_text("kg")
    assert readings(page) == [] and entry(fit, "pocket_bore").input_value() == "37.5 kg"


def test_a_reading_that_equals_the_example_can_be_kept_too(page):
    with_job(page, fresh(), "heads/seats/")
    fit = calculator(page, "seat-fit")
    keep(fit, "pocket_bore", entry(fit, "pocket_bore").get_attribute("data-metric"), place="1 intake")
    assert readings(page)[0][3] == "37.500 mm"


def test_a_correction_says_why_and_the_one_before_stays_in_the_history(page):
    with_job(page, fresh(), "heads/seats/")
    fit = calculator(page, "seat-fit")
    keep(fit, "pocket_bore", "37.512", place="1 intake")
    entry(fit, "pocket_bore").fill("37.502")
    field = beside(fit, "pocket_bore")
    expect(field.get_by_role("button", name="Keep as finished, 1 intake")).to_have_count(0)
    field.locator("summary", has_text="Correct as finished").click()
    field.get_by_role("button", name="Misread before").click()
    expect(field).to_have_attribute("data-state", "filled")
    assert [(r[3], r[5]) for r in readings(page)] == [("37.512 mm", ""), ("37.502 mm", "Misread before")]
    page.goto("job/")
    page.locator(".job-reading summary").first.click()
    history = page.locator(".job-history li")
    expect(history).to_have_count(2)
    expect(history.nth(0)).to_contain_text(re.compile(r"37\.502 mm.*MK: Misread before"), use_inner_text=True)
    expect(history.nth(1).locator("s")).to_contain_text("37.512 mm", use_inner_text=True)


def test_a_correction_on_the_jobs_page_and_taking_back(page):
    job = record.add_reading(
        record.new("abc", NAME, "TS-16", "crank", "2026-11-20T08:00+01:00"),
        "crank.main_journal",
        "2",
        "finished",
        "54.99 mm",
        "2026-11-20T08:00+01:00",
        "RB",
    )
    with_job(page, job)
    row = page.locator(".job-reading")
    row.locator("summary").first.click()
    row.locator("summary", has_text="Correct it").click()
    row.get_by_label("Main journal 2, as finished").fill("54.991")
    row.get_by_role("button", name="Correct", exact=True).click()
    expect(row.locator("[data-message-for=why]")).to_contain_text("say why")
    expect(row.get_by_label("Main journal 2, as finished")).to_have_value("54.991")
    row.get_by_text("Measured again", exact=True).click()
    row.get_by_role("button", name="Correct", exact=True).click()
    expect(row.locator(".job-size")).to_contain_text("54.991 mm", use_inner_text=True)
    row.get_by_label("Or in your own words").fill("wrong crank on the bench")
    row.get_by_role("button", name="Take it back").click()
    expect(row.locator(".job-size")).to_have_text("taken back")
    expect(row.locator(".job-history li")).to_have_count(3)
    assert [(r[3], r[5]) for r in readings(page)] == [
        ("54.99 mm", ""),
        ("54.991 mm", "Measured again"),
        ("", "wrong crank on the bench"),
    ]


def test_a_grid_is_kept_with_one_tap_and_filled_by_its_places(page):
    with_job(page, fresh(), "heads/chambers-and-ports/")
    live = calculator(page, "chamber-volume")
    live.locator("details[data-keep=rows-readings] summary").click()
    for row, text in ((1, "55.9"), (3, "56.3")):
        entry(live, f"readings.{row}.1").fill(text)
    beside(live, "readings").get_by_role("button", name="Keep as finished").click()
    expect(beside(live, "readings")).to_have_attribute("data-state", "filled")
    assert [r[:4] for r in readings(page)] == [
        ("chamber.volume", "1", "finished", "55.9 cm³"),
        ("chamber.volume", "3", "finished", "56.3 cm³"),
    ]
    page.reload()
    live = calculator(page, "chamber-volume")
    expect(entry(live, "readings.3.1")).to_have_value("56.3 cm³")
    expect(entry(live, "readings.2.1")).to_have_value(
        ""
    )  # no number of the example stands among sizes of the job
    expect(beside(live, "readings").locator(".job-from")).to_contain_text("2 readings, finished")


def test_a_warm_reading_is_kept_with_its_temperatures(page):
    with_job(page, fresh(), "heads/seats/")
    fit = calculator(page, "seat-fit")
    fit.locator("details.warm > summary").click()
    entry(fit, "pocket_bore.part").fill("35")
    keep(fit, "pocket_bore", "37.52", place="1 intake")
    (held,) = stored(page)
    kept = held["job"]["readings"][0]
    assert (kept["text"], kept["part"], kept["of"]) == (
        "37.52 mm",
        "35 °C",
        engine("TS-16").materials["head.alloy"],
    )
    page.reload()
    expect(entry(calculator(page, "seat-fit"), "pocket_bore.part")).to_have_value("35 °C")


def test_what_was_typed_is_never_overwritten_and_can_be_given_back(page):
    with_job(page, fresh(), "heads/seats/")
    keep(calculator(page, "seat-fit"), "pocket_bore", "37.51", place="1 intake")
    shrink = calculator(page, "seat-shrink")
    entry(shrink, "pocket_bore").fill("37.49")
    page.reload()
    expect(beside(calculator(page, "seat-shrink"), "pocket_bore")).to_have_attribute("data-state", "typed")
    expect(entry(shrink, "pocket_bore")).to_have_value("37.49")
    beside(shrink, "pocket_bore").get_by_role("button", name="Fill it in").click()
    expect(entry(shrink, "pocket_bore")).to_have_value("37.51 mm")
    shrink.locator("[data-reset]").click()
    expect(entry(shrink, "pocket_bore")).to_have_value("")


def test_a_table_of_limits_tells_what_the_job_holds_of_a_size(page):
    with_job(page, ordinary(), "limits/")
    page.locator("article details").evaluate_all("all => all.forEach((one) => (one.open = true))")
    journal = page.locator("[data-job-size='crank.main_journal']")
    expect(journal).to_contain_text(
        re.compile(r"north field, finished\s+1 54\.\d+ mm ± 0\.004 mm"), use_inner_text=True
    )
    expect(page.locator("[data-job-size='valve.lift']")).to_be_empty()
    page.goto("limits/rc-40/")
    page.evaluate(
        "import(new URL('/assets/js/jobs.mjs', location)).then(async ({ ask, current, get }) => ask('job-sizes', { job: (await get(current())).text }))"
    )
    assert page.locator(".job-sizes").count() == 0  # of another engine


def test_a_sentence_tells_what_the_job_holds_of_its_size_in_both_units_and_on_paper(page):
    with_job(page, ordinary(), "rods/resizing/")
    bore, clearance = (
        page.locator(f"p:not(:has(p)) [data-job-said='{id}']").last
        for id in ("rod.big_end_bore", "rod.bearing_clearance")
    )
    expect(bore).to_have_text(
        re.compile(r"\[Orchard frost fan, north field: 56\.\d+ to 56\.\d+ mm, finished, all 4\]"),
        use_inner_text=True,
    )
    expect(clearance).to_contain_text("worked out", use_inner_text=True)
    expect(page.locator("[data-job-said='rod.twist']")).to_be_empty()
    page.locator("[data-units-choice='inch']").first.click()
    expect(bore).to_have_text(re.compile(r"field: 2\.2\d+ to 2\.2\d+ in, finished"), use_inner_text=True)
    page.emulate_media(media="print")
    expect(bore).to_be_visible()
    page.evaluate(
        "import(new URL('/assets/js/jobs.mjs', location)).then(({ makeCurrent }) => makeCurrent(null))"
    )
    expect(bore).to_be_empty()


def test_a_sentence_names_the_job_once(page):
    with_job(
        page,
        record.add_reading(
            ordinary(), "piston.pin", "1", "received", "21.997 mm ± 0.002 mm", "2026-11-25T14:15+01:00", "MK"
        ),
        "measuring/fits/",
    )
    told = page.locator(".job-said")
    expect(told).to_have_count(2)
    expect(told.first).to_contain_text("north field", use_inner_text=True)
    expect(told.last).not_to_contain_text("north field", use_inner_text=True)


def test_several_jobs_one_is_worked_on(page):
    start(page, "First")
    start(page, "Second")
    expect(page.locator(".job-list strong")).to_have_text(["First"])
    page.get_by_role("button", name="Work on this").click()
    expect(page.locator("#job-now")).to_have_text("First")
    page.goto("heads/seats/")
    expect(calculator(page, "seat-fit").locator(".job-strip-name")).to_have_text("Job: First")


def test_export_and_import_carry_the_whole_job(page, browser, server):
    with_job(page, ordinary())
    expect(page.locator(".job-safety")).to_contain_text("Not exported yet")
    with page.expect_download() as got:
        page.get_by_role("button", name="Export", exact=True).click()
    assert got.value.suggested_filename == "sizebook-orchard-frost-fan-north-field.json"
    assert files.load(Path(got.value.path()).read_text(encoding="utf-8")) == ordinary()
    expect(page.locator(".job-safety")).to_contain_text("nothing has changed since")
    with fresh_page(browser, base_url=server, service_workers="block") as other:
        other.goto("job/")
        other.locator("input[type=file]").set_input_files(got.value.path())
        expect(other.locator("#job-now")).to_have_text(ordinary()["name"])
        assert [held["job"] for held in stored(other)] == [ordinary()]
        other.locator("input[type=file]").set_input_files(got.value.path())
        expect(other.locator(".job-file .message")).to_contain_text("on this device already")
        assert len(stored(other)) == 1


REFUSED = {
    "foreign": ('{"name": "something else"}', "no job of this handbook"),
    "not JSON": ("Sizes:\n54.99", "not JSON"),
    "cut short": (files.dump(ordinary())[:2000], "cut short"),
    "changed": (files.dump(ordinary()).replace("54.", "55.", 1), "check sum"),
    "newer": ('{"format": "sizebook-job", "version": 7}', "newer handbook"),
    "not text": (b"\x89PNG\xff\xfe", "not JSON"),
    "empty": ("", "is empty"),
}


@pytest.mark.parametrize("text, why", REFUSED.values(), ids=REFUSED)
def test_a_file_that_is_no_job_is_refused_with_the_reason_and_changes_nothing(text, why, page):
    with_job(page, fresh())
    expect(page.locator("#job-now")).to_be_visible()
    before = stored(page)
    page.locator("input[type=file]").set_input_files(raw_file(text))
    expect(page.locator(".job-file .message")).to_contain_text(why)
    assert stored(page) == before


def test_another_state_of_the_same_job_stands_beside_it(page):
    with_job(page, ordinary())
    page.locator("input[type=file]").set_input_files(as_file(record.add_done(ordinary(), "One more line")))
    expect(page.locator(".job-list > li")).to_have_count(1)
    expect(page.locator(".job-list")).to_contain_text("came here")
    assert sorted(len(held["job"]["done"]) for held in stored(page)) == [4, 5]
    assert ordinary() in [held["job"] for held in stored(page)]


def test_an_engine_without_a_sheet_here_keeps_its_readings_unjudged(page):
    text = files.dump(ordinary() | {"engine": "Own-77"})
    with_job(page, text)
    expect(page.locator(".job-note")).to_contain_text("no data sheet of Own-77")
    expect(page.locator(".job-reading").first).to_contain_text("not judged")
    page.goto("heads/seats/")
    live = page.locator("live-calculator[data-calculator=seat-fit]")
    entry(live, "ring_outside").fill("37.61")
    expect(part(live, "announce")).not_to_be_empty()
    assert page.locator(".job-field").count() == 0
    assert stored(page)[0]["text"] == text


EVIL = "<img src=x onerror=\"document.title='broken in'\"><script>document.title='broken in'</script>'\"&"


def test_markup_in_any_text_stays_text(page):
    job = record.new("evil", EVIL, "TS-16", EVIL, "2026-11-25T08:00+01:00", EVIL[:60])
    job = record.add_done(job, EVIL)
    job = record.add_reading(
        job,
        "head.seat_pocket_intake",
        "1 intake",
        "finished",
        "37.51 mm",
        "2026-11-25T08:00+01:00",
        EVIL[:60],
    )
    job = record.add_reading(
        job,
        "head.seat_pocket_intake",
        "1 intake",
        "finished",
        "37.50 mm",
        "2026-11-25T08:00+01:00",
        EVIL[:60],
        EVIL,
    )
    with_job(page, job)
    expect(page.locator("#job-now")).to_have_text(EVIL)
    for fold in page.locator("job-view details").all():
        fold.evaluate("e => e.open = true")
    page.goto("heads/seats/")
    expect(calculator(page, "seat-fit").locator(".job-strip-name")).to_contain_text("<img src=x")
    page.locator(".job-strip [data-job-place='1 intake']").first.click()
    expect(beside(calculator(page, "seat-fit"), "pocket_bore").locator(".job-from")).to_contain_text(
        "<script>"
    )
    assert (
        page.locator("job-view img, job-view script, live-calculator img, live-calculator script").count()
        == 0
    )
    assert "broken in" not in page.title()


def test_one_thumb_on_a_phone(browser, server):
    """Every target 44 px or more, nothing wider than the screen, and the way from reading to kept without a keyboard but the digits."""
    with fresh_page(
        browser, base_url=server, viewport=PHONE, has_touch=True, service_workers="block"
    ) as page:
        with_job(page, fresh(), "heads/seats/")
        fit = calculator(page, "seat-fit")
        fit.locator(".job-strip [data-job-place='1 intake']").tap()
        entry(fit, "pocket_bore").tap()
        page.keyboard.type("37.505")
        button = beside(fit, "pocket_bore").get_by_role("button", name="Keep as finished, 1 intake")
        expect(button).to_be_in_viewport(ratio=1)
        button.tap()
        expect(beside(fit, "pocket_bore")).to_have_attribute("data-state", "filled")
        small_targets(page, "live-calculator :is(.job-strip, .job-field) :is(button, a, summary, input)")
        page.goto("job/")
        expect(page.locator(".job-reading")).to_have_count(1)
        page.evaluate("for (const d of document.querySelectorAll('job-view details')) d.open = true")
        small_targets(
            page,
            "job-view :is(button, select, summary, .go, .way, .job-pick, input:not([type=hidden], [type=radio]))",
        )


def small_targets(page, targets: str):
    found = page.evaluate(
        """targets => [...document.querySelectorAll(targets)].filter(e => e.checkVisibility()).map(e => {
        const { width, height } = e.getBoundingClientRect();
        return [Math.min(width, height), e.outerHTML.slice(0, 100)];
    })""",
        targets,
    )
    assert len(found) > 3
    assert [what for size, what in found if size < 43.5] == []
    assert page.evaluate("document.documentElement.scrollWidth <= innerWidth")


def test_by_keyboard_alone(page):
    page.goto("job/")
    page.locator("#start-name").focus()
    page.keyboard.type(NAME)
    page.keyboard.press("Enter")
    expect(page.locator("#job-now")).to_have_text(NAME)
    page.goto("heads/seats/")
    fit = calculator(page, "seat-fit")
    fit.locator(".job-strip [data-job-place='2 intake']").focus()
    page.keyboard.press("Enter")
    expect(fit.locator(".job-strip [data-job-place='2 intake']")).to_have_attribute("aria-pressed", "true")
    expect(fit.locator(".job-strip [data-job-place='2 intake']")).to_be_focused()
    entry(fit, "pocket_bore").focus()
    page.keyboard.press("Control+A")
    page.keyboard.type("37.505")
    for _ in range(3):
        page.keyboard.press("Tab")
        if page.evaluate("document.activeElement.dataset.jobKeep") == "finished":
            break
    page.keyboard.press("Enter")
    expect(beside(fit, "pocket_bore")).to_have_attribute("data-state", "filled")
    assert readings(page)[0][:4] == ("head.seat_pocket_intake", "2 intake", "finished", "37.505 mm")
    assert page.evaluate("document.activeElement !== document.body"), "the focus is not lost with the button"


def test_what_was_worn_as_received_is_told_beside_the_size_that_has_taken_its_place(page):
    job = record.add_reading(
        fresh(), "crank.main_journal", "1", "received", "54.955 mm", "2026-11-25T10:00+01:00", "MK"
    )  # worn at 54.960
    with_job(
        page,
        record.add_reading(
            job, "crank.main_journal", "1", "finished", "54.742 mm", "2026-11-25T11:00+01:00", "MK"
        ),
    )
    row = page.locator(".job-reading")
    expect(row.locator("summary .job-stage").first).to_have_text("finished, was worn")
    expect(row.locator("summary .chip").first).to_have_text("In order")
    row.locator("summary").first.click()
    expect(row).to_contain_text("As received: Worn past its limit by 0.005 mm.", use_inner_text=True)


def test_a_result_that_is_a_size_of_the_part_is_kept_once_all_of_it_was_read(page):
    with_job(page, fresh(), "rods/resizing/")
    align = calculator(page, "rod-align")
    bend = beside(align, "'=bend'")
    expect(bend).to_have_attribute("data-state", "example")
    assert not bend.get_by_role("button", name="Keep").first.is_visible()
    entry(align, "bend_left").fill("0.00")  # as the example has it, but read
    entry(align, "bend_right").fill("0.03 ± 0.005")
    expect(bend).to_contain_text(
        "can be kept for the job once all of it is read: Upright, left end, Upright, right end, Distance between the readings",
        use_inner_text=True,
    )
    entry(align, "span").fill("150")
    expect(bend).to_have_attribute("data-state", "typed")
    expect(beside(align, "'=twist'")).to_have_attribute("data-state", "partly")
    align.locator(".job-strip [data-job-place='3']").click()
    bend.get_by_role("button", name="Keep as received, 3").click()
    expect(bend).to_contain_text("The job has 0.020 mm ± 0.0033 mm (received", use_inner_text=True)
    expect(bend.locator(".chip").first).to_have_text("In order")
    assert readings(page) == [("rod.bend", "3", "received", "0.020 mm ± 0.0033 mm", "MK", "")]
    assert page.evaluate("document.activeElement !== document.body"), "the focus is not lost with the button"
    entry(align, "bend_right").fill("0.06")
    bend.locator("summary", has_text="Correct as received").click()
    bend.get_by_role("button", name="Misread before").click()
    expect(bend).to_contain_text("The job has 0.040 mm (received", use_inner_text=True)
    page.reload()
    expect(beside(calculator(page, "rod-align"), "'=bend'")).to_be_visible()
    assert readings(page)[-1][3:] == ("0.040 mm", "MK", "Misread before")


def test_sizes_written_down_one_after_the_other_are_judged_on_the_spot_and_the_choice_stays(page):
    with_job(page, fresh())
    page.locator("summary", has_text="Write down a size here").click()
    page.locator("#write-feature").select_option(label="Main journal")
    form = page.locator("[data-keep=write]")
    for place, text, state in (("1", "54.99", "In order"), ("2", "54.98", "Not in order")):
        form.get_by_text(place, exact=True).click()
        page.locator("#write-text").fill(text)
        form.get_by_role("button", name="Keep").click()
        expect(form.locator(".job-kept")).to_contain_text(
            re.compile(rf"Kept: Main journal {place}, {text} mm as finished\. {state}"), use_inner_text=True
        )
        expect(page.locator("#write-text")).to_have_value("")
        expect(page.locator("#write-feature")).to_have_value("crank.main_journal")
    expect(form.locator(".job-kept")).to_contain_text("Do not fit it")
    # read once more: it is asked why, there where it can be said
    form.get_by_text("2", exact=True).click()
    page.locator("#write-text").fill("54.986")
    expect(form.get_by_text("Misread before")).to_be_hidden()
    form.get_by_role("button", name="Keep").click()
    expect(form.locator("[data-message-for=why]")).to_contain_text("say why")
    form.get_by_text("Misread before").click()
    form.get_by_role("button", name="Keep").click()
    expect(form.locator(".job-kept")).to_contain_text("In order")
    assert [r[1:4:2] + r[5:] for r in readings(page)] == [
        ("1", "54.99 mm", ""),
        ("2", "54.98 mm", ""),
        ("2", "54.986 mm", "Misread before"),
    ]


def test_what_is_typed_into_the_form_for_writing_down_survives_another_choice_and_a_reload(page):
    with_job(page, fresh())
    page.locator("summary", has_text="Write down a size here").click()
    page.locator("#write-feature").select_option(label="Rod journal")
    page.locator("[data-keep=write]").get_by_text("4", exact=True).click()
    page.locator("#write-text").fill("51.99")
    page.locator("#write-feature").select_option(label="Main journal")
    expect(page.locator("[data-keep=write] [name=place]")).to_have_count(3)
    expect(page.locator("#write-text")).to_have_value("51.99")
    page.locator("[data-keep=write]").get_by_text("2", exact=True).click()
    page.reload()
    expect(
        page.locator("#write-text")
    ).to_be_visible()  # unfolded, though the reader had not done so on this page
    expect(page.locator("#write-text")).to_have_value("51.99")
    expect(page.locator("#write-feature")).to_have_value("crank.main_journal")
    expect(page.locator("[data-keep=write] [name=place]:checked")).to_have_value("2")


def test_whoever_started_a_job_is_at_its_beginning(browser, server):
    with fresh_page(
        browser, base_url=server, viewport=PHONE, has_touch=True, service_workers="block"
    ) as page:
        start(page)
        expect(page.locator("#job-now")).to_be_focused()
        expect(page.locator("#job-now")).to_be_in_viewport(ratio=1)


def test_taking_back_without_a_reason_asks_for_it_where_it_is_given(page):
    with_job(
        page,
        record.add_reading(
            fresh(), "crank.main_journal", "2", "finished", "54.98 mm", "2026-11-25T10:00+01:00", "MK"
        ),
    )
    row = page.locator(".job-reading")
    row.locator("summary").first.click()
    row.locator("summary", has_text="Correct it").click()
    row.get_by_role("button", name="Take it back").click()
    expect(row.locator("[data-message-for=why]")).to_contain_text("without a reason")
    expect(row.locator("[name=why]").first).to_be_focused()
    expect(row.locator("[data-message-for=text]")).to_be_hidden()


def test_no_word_of_a_pick_stands_over_its_edge(browser, server):
    with fresh_page(browser, base_url=server, viewport=PHONE, service_workers="block") as page:
        with_job(page, ordinary())
        expect(page.locator("#job-now")).to_be_visible()
        page.evaluate("for (const d of document.querySelectorAll('job-view details')) d.open = true")
        assert page.locator(".job-pick:visible").count() > 20
        assert (
            page.evaluate("""[...document.querySelectorAll('.job-pick')].filter((pick) => pick.checkVisibility()).filter((pick) => {
            const words = document.createRange();
            words.selectNodeContents(pick);
            const [inner, outer] = [words.getBoundingClientRect(), pick.getBoundingClientRect()];
            return [...words.getClientRects()].some(({ left, right }) => left < outer.left - 2.5 || right > outer.right + 2.5);
        }).map((pick) => pick.textContent)""")
            == []
        )


def test_what_stands_on_a_filled_ground_can_be_read_in_the_readers_own_colours(browser, server):
    with fresh_page(browser, base_url=server, forced_colors="active", service_workers="block") as page:
        with_job(page, fresh())
        expect(page.locator("#job-now")).to_be_visible()
        page.locator("summary", has_text="Write down a size here").click()
        page.locator("#write-feature").select_option(label="Main journal")
        for filled in (
            page.locator(".go", has_text="Size sheet"),
            page.locator("[data-keep=write] .job-pick:has(:checked)"),
        ):
            ground, words, adjust = filled.evaluate(
                "e => { const s = getComputedStyle(e); return [s.backgroundColor, s.color, s.forcedColorAdjust] }"
            )
            assert ground != words and adjust == "none", (
                "else the browser lays the page's own ground behind the words, in their colour"
            )
