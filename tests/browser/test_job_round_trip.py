"""The whole way: measured on one device, printed, read off the paper by an independent decoder, opened on another device."""

import re

import numpy
import pypdfium2
import pytest
import zxingcpp
from playwright.sync_api import expect

from calc.job import codes, record, share
from calc.job.value import number
from calc.job.verdicts import judge
from tests.browser.conftest import PHONE, fresh_page
from tests.browser.jobs import (
    HANDBOOK,
    NAME,
    as_file,
    beside,
    calculator,
    entry,
    fresh,
    keep,
    raw_file,
    start,
    stored,
    with_job,
    with_own_address,
)
from tests.job.jobs import ordinary
from tests.job.orchard import orchard

pytestmark = pytest.mark.browser

PRINTER = 300  # dots to the inch, half of what a laser printer puts down


def printed(page, tmp_path, paper: str) -> pypdfium2.PdfDocument:
    expect(page.locator(".sheet svg").first).to_be_visible()
    page.pdf(path=tmp_path / f"{paper}.pdf", format=paper)
    return pypdfium2.PdfDocument(tmp_path / f"{paper}.pdf")


def decoded(sheet: pypdfium2.PdfDocument) -> list[str]:
    """The codes on the paper, as a scanner sees them: grey, from all pages."""
    return [
        code.text
        for paper in sheet
        for code in zxingcpp.read_barcodes(
            numpy.ascontiguousarray(paper.render(scale=PRINTER / 72, grayscale=True).to_numpy().squeeze())
        )
    ]


def sizes(job: dict) -> dict:
    """Every size as exact numbers: value and doubt, bit for bit."""
    return {
        key: tuple(float(x).hex() for x in number(job, reading))
        for key, reading in record.current(job).items()
    }


def verdicts(job: dict) -> list[tuple]:
    return [(row.feature, row.place, row.state, row.words.plain(), row.do.plain()) for row in judge(job)]


@pytest.fixture
def elsewhere(browser, server):
    """A page on another device, which has seen nothing of the first."""
    with fresh_page(browser, base_url=server, viewport=PHONE, service_workers="block") as page:
        yield page


def test_from_the_bench_by_paper_to_the_one_who_bolts_it_together_and_back(page, elsewhere, server, tmp_path):
    with_own_address(page)
    start(page, by="MK")
    page.goto("heads/seats/")
    fit = calculator(page, "seat-fit")
    keep(fit, "pocket_bore", "37.502 ± 0.003", place="1 intake")
    keep(fit, "ring_outside", "1.4806 in ± 0.0001 in")
    fit.locator(".job-strip [data-job-place='2 intake']").click()
    expect(entry(fit, "pocket_bore")).to_have_value("")
    keep(fit, "pocket_bore", "37.53", stage="received")
    keep(fit, "ring_outside", "37.60499999999999")
    entry(fit, "ring_outside").fill("37.64")
    beside(fit, "ring_outside").locator("summary", has_text="Correct as finished").click()
    beside(fit, "ring_outside").get_by_role("button", name="Misread before").click()
    expect(beside(fit, "ring_outside")).to_have_attribute("data-state", "filled")
    (here,) = stored(page)
    assert len(here["job"]["readings"]) == 5

    page.goto("job/sheet/")
    paper = printed(page, tmp_path, "A4")
    assert len(paper) == 2
    (link,) = decoded(paper)
    assert link == page.locator("#job-link").input_value() and link.startswith(f"{HANDBOOK}job/received/#")
    link = link.replace(HANDBOOK, server)

    asked = []
    elsewhere.on("request", lambda request: asked.append(request.url))
    elsewhere.goto(link)
    expect(elsewhere.locator("#job-now")).to_have_text(NAME)
    assert not [url for url in asked if link.partition("#")[2] in url], (
        "what the link carries reaches no server"
    )
    (there,) = stored(elsewhere)
    assert there["job"] == here["job"] and there["kind"] == "sheet"
    assert sizes(there["job"]) == sizes(here["job"]) and len(sizes(here["job"])) == 4
    assert verdicts(there["job"]) == verdicts(here["job"])
    shown = elsewhere.locator(".job-reading > details > summary .chip")
    page.goto("job/")
    expect(page.locator(".job-reading").first).to_be_visible()
    assert shown.all_inner_texts() == page.locator(".job-reading > details > summary .chip").all_inner_texts()

    # what comes next, each check with its calculator filled in, and an own reading
    elsewhere.locator(".job-check summary", has_text="Stem heights").click()
    heights = elsewhere.locator("live-calculator[data-calculator=stem-height]")
    expect(heights.locator(".verdict")).to_contain_text("Still to be read")
    expect(heights.locator(".job-strip-name")).to_have_text(f"Sheet: {NAME}")
    entry(heights, "heights.1.1").fill("45.05")
    beside(heights, "heights").get_by_role("button", name="Keep at assembly").click()
    expect(elsewhere.locator(".job-reading", has_text="Height of the stem tip")).to_contain_text(
        "45.05 mm", use_inner_text=True
    )
    (there,) = stored(elsewhere)
    assert there["job"]["readings"][-1] | {"at": ""} == {
        "feature": "head.stem_height",
        "place": "1 intake",
        "stage": "assembly",
        "text": "45.05 mm",
        "at": "",
        "by": "",
        "why": "",
    }
    assert there["job"]["readings"][:-1] == here["job"]["readings"]

    # sent back: it stands beside the shop's job, which nothing changes
    back = elsewhere.locator("#job-link").input_value()
    page.goto(back)
    expect(page.locator(".job-facts").first).to_contain_text("stands beside the job of the same name")
    held = {one["kind"]: one["job"] for one in stored(page)}
    assert held["job"] == here["job"] and held["sheet"] == there["job"]
    page.goto("job/")
    expect(page.locator("#job-now")).to_have_text(NAME)


def test_a_sheet_that_comes_back_is_taken_over_at_one_tap_and_taken_back_as_any_reading(browser, server):
    tip = ("head.stem_height", "1 intake", "assembly")
    shop = record.add_reading(fresh(), *tip, "45.10 mm", "2026-11-25T10:00+01:00", "MK")
    sheet = record.add_reading(fresh(), *tip, "45.05 mm ± 0.02 mm", "2026-11-26T10:00+01:00", "AB")
    sheet = record.add_reading(
        sheet, "head.stem_height", "2 intake", "assembly", "1.772 in", "2026-11-26T10:02+01:00", "AB"
    )
    with fresh_page(
        browser, base_url=server, viewport=PHONE, has_touch=True, service_workers="block"
    ) as page:
        page.goto(codes.links(sheet, server)[0])  # on a device that has not the job
        expect(page.locator("#job-now")).to_have_text(NAME)
        assert page.locator(".job-returned").count() == 0
        with_job(page, shop)
        offered = page.locator(".job-returned")
        expect(offered).to_contain_text(
            re.compile(r"that came here \d.* has 2 readings that the job has not")
        )
        expect(offered.locator("li").first).to_contain_text(
            "45.05 mm ± 0.02 mm, instead of 45.10 mm at assembly, 26 Nov 10:00, AB", use_inner_text=True
        )
        page.goto(codes.links(sheet, server)[0])
        expect(offered).to_contain_text("belongs to the job Orchard frost fan on this device")
        offered.get_by_role("button", name="Take all 2 over into the job").tap()
        expect(offered).to_contain_text("all of its readings")
        expect(offered.locator("[data-job-taken]")).to_be_focused()
        held = {one["kind"]: one["job"] for one in stored(page)}
        assert held["sheet"] == sheet and held["job"]["readings"][:1] == shop["readings"]
        assert [(r["text"], r["by"]) for r in held["job"]["readings"][1:]] == [
            ("45.05 mm ± 0.02 mm", "AB"),
            ("1.772 in", "AB"),
        ]
        assert (
            held["job"]["readings"][1]["why"].startswith(f"From the sheet “{NAME}” that came back ")
            and held["job"]["readings"][2]["why"] == ""
        )

        page.goto("job/")
        row = page.locator(".job-reading", has_text="1 intake")
        row.locator("summary").first.tap()
        expect(row.locator(".job-history li")).to_have_count(2)
        expect(row.locator(".job-history")).to_contain_text("From the sheet")
        assert page.locator(".job-returned").count() == 0
        row.locator("summary", has_text="Correct it").tap()
        row.get_by_text("Misread before").tap()
        row.get_by_role("button", name="Take it back").tap()
        expect(row.locator("summary").first).to_contain_text(
            "taken back", use_inner_text=True
        )  # it has no size, but a reader sees that it was read
        expect(row.locator(".job-history li")).to_have_count(3)
        expect(row.locator(".job-history")).to_contain_text("Misread before")
        assert page.locator(".job-returned").count() == 0, "what was taken back is not offered again"
        expect(
            row.locator("summary", has_text="Put a size in its place")
        ).to_be_visible()  # unfolded, as it was
        row.get_by_label("Height of the stem tip above the spring's bed 1 intake, at assembly").fill("45.08")
        row.get_by_role("button", name="Correct", exact=True).tap()
        expect(row.locator("summary").first).to_contain_text("45.08 mm", use_inner_text=True)


def test_the_lines_of_what_was_done_come_over_with_the_readings(page, server):
    shop = record.add_done(fresh(), "Mains ground 0.25 mm under")
    sheet = record.add_done(record.add_done(shop, "Oil pump gear renewed"), "Case bolted up")
    with_job(page, shop)
    page.goto(codes.links(sheet, server)[0])
    expect(page.locator("#job-now")).to_have_text(NAME)
    page.goto("job/")
    offered = page.locator(".job-returned")
    expect(offered).to_contain_text("has 2 lines of what was done that the job has not")
    expect(offered.locator("li")).to_have_text(["Done: Oil pump gear renewed", "Done: Case bolted up"])
    offered.get_by_role("button", name="Take all 2 over into the job").click()
    expect(offered).to_have_count(0)
    page.locator("summary", has_text="What was done (3)").click()
    expect(page.locator(".job-done li")).to_have_count(3)
    expect(page.locator(".job-done li").last).to_contain_text("Case bolted up")


def test_a_sheet_that_the_browser_has_cleared_meanwhile_is_told_as_that(page, server):
    """No other tab tells of it: the page still offers what it has not any more."""
    shop = record.add_done(fresh(), "Mains ground 0.25 mm under")
    with_job(page, shop)
    page.goto(codes.links(record.add_done(shop, "Case bolted up"), server)[0])
    expect(page.locator("#job-now")).to_have_text(NAME)
    page.goto("job/")
    press = page.get_by_role("button", name="Take it over into the job")
    expect(press).to_be_visible()
    page.evaluate(CLEAR_SHEETS)
    press.click()
    expect(page.locator("[data-job-message]").first).to_have_text(
        "This sheet is no longer on this device: it was removed, or the browser has cleared what it kept."
    )
    assert [one["job"] for one in stored(page)] == [shop]


CLEAR_SHEETS = """() => new Promise((done) => {
    const asked = indexedDB.open('sizebook');
    asked.onsuccess = () => {
        const change = asked.result.transaction('jobs', 'readwrite'), jobs = change.objectStore('jobs');
        jobs.getAll().onsuccess = ({ target }) => target.result.filter(({ kind }) => kind === 'sheet').forEach(({ key }) => jobs.delete(key));
        change.oncomplete = () => { asked.result.close(); done(); };
    };
})"""


def test_a_check_is_ticked_off_with_a_thumb_or_by_keyboard_and_stays_so(browser, server):
    with fresh_page(
        browser, base_url=server, viewport=PHONE, has_touch=True, service_workers="block"
    ) as page:
        page.goto(codes.links(orchard(), server)[0])
        missing = page.locator(".job-open")
        expect(missing).to_contain_text("Not checked yet: 17 of 20 checks")
        page.get_by_label("Your initials").fill("JP")
        page.get_by_label("Your initials").press("Tab")
        nuts, clean = (
            page.get_by_role("checkbox", name=f"Checked: {name}")
            for name in ("Rod nuts", "Every passage clean")
        )
        expect(nuts).not_to_be_checked()
        for box in (nuts, clean):
            width, height = (box.bounding_box()[side] for side in ("width", "height"))
            assert width >= 44 and height >= 44
        nuts.tap()
        expect(nuts).to_be_checked()
        clean.focus()
        page.keyboard.press("Space")
        expect(clean).to_be_checked()
        expect(clean).to_be_focused()
        expect(missing).to_contain_text("Not checked yet: 15 of 20 checks")
        (held,) = stored(page)
        assert [(entry["line"], entry["by"]) for entry in held["job"]["done"][-2:]] == [
            ("check-rods-nuts", "JP"),
            ("check-passages-clean", "JP"),
        ]
        page.reload()
        expect(nuts).to_be_checked()
        page.keyboard.press("Tab")
        nuts.focus()
        page.keyboard.press("Space")
        expect(nuts).not_to_be_checked()
        (held,) = stored(page)
        assert held["job"]["done"][-1] | {"at": ""} == {
            "line": "check-rods-nuts",
            "text": "",
            "at": "",
            "by": "JP",
        }

        # from what is missing to its check, which tells the way at home
        address = page.url
        missing.get_by_role("button", name="Crank end float").tap()
        check = page.locator("[data-job-check=crankcase-end-float]")
        expect(check).to_have_attribute("open", "")
        expect(check.locator("summary").first).to_be_focused()
        expect(check).to_contain_text("At home: Feeler gauges between flywheel and thrust bearing")
        expect(check.locator("summary").first).to_be_in_viewport()
        assert page.url == address, "the fragment names the sheet"


@pytest.mark.parametrize("paper", ["A4", "Letter"])
def test_an_ordinary_job_is_one_leaf_whose_code_is_the_job(paper, page, tmp_path):
    with_own_address(page)
    with_job(page, ordinary(), "job/sheet/")
    sheet = printed(page, tmp_path, paper)
    assert decoded([sheet[0]]) == decoded(sheet)
    (link,) = decoded(sheet)
    job = share.decode(link.partition(f"#{codes.FORM}")[2])
    assert job == ordinary() and sizes(job) == sizes(ordinary())


def test_the_printed_sheet_has_black_ink_and_nothing_of_the_page(page, tmp_path):
    page.emulate_media(color_scheme="dark")
    with_job(page, ordinary(), "job/sheet/")
    sheet = printed(page, tmp_path, "A4")
    text = sheet[0].get_textpage().get_text_range()
    for words in ("Size sheet", ordinary()["name"], "Check before closing up", "Not checked", "Signature"):
        assert words in text
    for words in ("Print", "Export", "Check a number", "offline", "signal"):
        assert words not in text, words
    colours = sheet[0].render(scale=1).to_numpy()
    assert (colours.max(axis=2).astype(int) - colours.min(axis=2) < 12).all(), (
        "only black, white and what lies between"
    )
    assert (colours > 250).mean() > 0.6


def test_a_job_too_large_for_one_code_opens_once_all_of_its_codes_were_read(
    page, elsewhere, server, tmp_path
):
    with_own_address(page)
    job = ordinary()
    for line in range(12):
        job = record.add_done(
            job, f"{line}: " + " ".join(f"{(line * 7919 + n * 104729) % 1000003:x}" for n in range(45))
        )
    with_job(page, job, "job/sheet/")
    links = decoded(printed(page, tmp_path, "A4"))
    assert len(links) > 1 and set(links) == set(codes.links(job, HANDBOOK))
    for n, link in enumerate(reversed(links), 1):
        tab = elsewhere.context.new_page()  # a phone opens each code in a tab of its own
        tab.goto(link.replace(HANDBOOK, server))
        if n < len(links):
            expect(tab.locator("job-view")).to_contain_text(f"{n} of {len(links)} codes read")
        else:
            expect(tab.locator("#job-now")).to_have_text(job["name"])
    elsewhere.goto("job/received/")
    assert [held["job"] for held in stored(elsewhere)] == [job]


def test_the_same_link_twice_is_one_sheet_and_a_file_of_it_too(page):
    link = codes.links(ordinary(), "http://x/")[0].partition("#")[2]
    page.goto(f"job/received/#{link}")
    expect(page.locator("#job-now")).to_be_visible()
    expect(page.get_by_role("link", name="Print the size sheet")).to_be_visible()  # kept
    (first,) = stored(page)
    page.goto("about/")
    page.goto(f"job/received/#{link}")
    expect(page.locator("#job-now")).to_be_visible()
    assert page.url.endswith(link) and [held["key"] for held in stored(page)] == [first["key"]]
    page.locator("input[type=file]").set_input_files(as_file(ordinary()))
    expect(page.locator(".job-list")).to_have_count(0)
    assert len(stored(page)) == 1


DAMAGED = {
    "a character": lambda c: c[:200] + ("A" if c[200] != "A" else "B") + c[201:],
    "cut short": lambda c: c[:-9],
    "newer": lambda c: "v1.7" + c[4:],
    "words": lambda c: "v1.hello",
}


@pytest.mark.parametrize("spoil", DAMAGED.values(), ids=DAMAGED)
def test_a_damaged_link_is_refused_with_the_reason_and_keeps_nothing(spoil, page):
    page.goto("job/received/#" + spoil(codes.links(ordinary(), "http://x/")[0].partition("#")[2]))
    expect(page.locator("job-view [data-job-message]")).to_contain_text(
        re.compile(r"(damaged|newer|no code of a job)")
    )
    assert stored(page) == []
    expect(page.locator("input[type=file]")).to_be_visible()


def test_a_damaged_file_is_refused_on_the_assemblers_page_too(page):
    page.goto("job/received/")
    page.locator("input[type=file]").set_input_files(raw_file('{"format": "sizebook-job"'))
    expect(page.locator(".job-file .message")).to_contain_text("cut short")
    assert stored(page) == []


EVIL = "</script><img src=x onerror=\"document.title='broken in'\"><svg onload=\"document.title='broken in'\">&'\""


def test_markup_stays_text_on_the_sheet_and_through_the_link(page, elsewhere):
    job = record.new("evil", EVIL, "TS-16", EVIL, "2026-11-25T08:00+01:00", EVIL[:60])
    job = record.add_done(job, EVIL)
    job = record.add_reading(
        job, "head.stem_height", "1 intake", "finished", "45.0 mm", "2026-11-25T08:00+01:00", EVIL[:60]
    )
    job = record.add_reading(
        job, "head.stem_height", "1 intake", "finished", "45.1 mm", "2026-11-25T08:00+01:00", EVIL[:60], EVIL
    )
    with_job(page, job, "job/sheet/")
    expect(page.locator(".sheet h1")).to_have_text(EVIL)
    assert page.locator(".sheet :is(img, script), .sheet [onload], .sheet [onerror]").count() == 0
    elsewhere.goto(page.locator("#job-link").input_value())
    expect(elsewhere.locator("#job-now")).to_have_text(EVIL)
    for fold in elsewhere.locator("job-view details").all():
        fold.evaluate("e => e.open = true")
    expect(elsewhere.locator("live-calculator").first).to_be_attached()
    assert elsewhere.locator("job-view :is(img, script), job-view [onload], job-view [onerror]").count() == 0
    assert "broken in" not in page.title() + elsewhere.title()


def test_without_what_draws_codes_the_sheet_stands_and_the_link_carries_the_job(page):
    page.route("**/codes.zip", lambda route: route.abort())
    with_job(page, fresh(), "job/sheet/")
    expect(page.locator(".sheet")).to_be_visible()
    assert page.locator(".sheet-foot svg[class], .sheet-foot figure svg").count() == 0
    assert share.decode(page.locator("#job-link").input_value().partition(f"#{codes.FORM}")[2]) == fresh()
    page.provoked = True


def test_what_is_kept_on_a_check_is_judged_there_and_nothing_moves_away(browser, server):
    with fresh_page(
        browser, base_url=server, viewport=PHONE, has_touch=True, service_workers="block"
    ) as page:
        page.goto(codes.links(orchard(), server)[0])
        expect(
            page.locator("[data-job-view]")
        ).to_be_hidden()  # what stands there is for whoever has no sheet
        expect(page.locator("#job-now")).to_be_visible()
        page.locator(".job-check summary", has_text="Stem heights").tap()
        heights = calculator(page, "stem-height")
        entry(heights, "heights.1.1").fill("45.30")
        button = beside(heights, "heights").get_by_role("button", name="Keep at assembly")
        button.scroll_into_view_if_needed()
        stood = button.bounding_box()["y"]
        button.tap()
        kept = beside(heights, "heights")
        expect(kept).to_have_attribute("data-state", "filled")
        expect(kept).to_contain_text("1 intake: 0.10 mm over the upper limit", use_inner_text=True)
        expect(entry(heights, "heights.1.1")).to_be_focused()
        assert abs(kept.bounding_box()["y"] - stood) < PHONE["height"] / 2, (
            "the answer is where the thumb was"
        )
        verdict = heights.locator(".verdict")
        expect(heights.locator("[data-part=announce]")).not_to_be_empty()  # the last answer is there
        # all at once, as a later answer would put others in their place
        edge, *sizes = verdict.evaluate(
            """verdict => [verdict, ...[...verdict.querySelectorAll("dd")].filter((size) => size.checkVisibility())]
                .map((part) => part.getBoundingClientRect()).map(({ left, right }) => [left, right])"""
        )
        assert sizes and all(left >= edge[0] and right <= edge[1] for left, right in sizes)
