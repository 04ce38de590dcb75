"""The bench: from the first page to the verdict on any size of the sheet in three taps and one screen of scrolling."""

import json

import brotli
import pytest
from playwright.sync_api import expect

from calc.page.live import answer
from calc.reference.engine import engine
from tests.browser.conftest import PHONE, fresh_page, text_of
from tests.browser.jobs import fresh, stored, with_job
from tests.browser.test_accessibility import axe  # noqa: F401 (a fixture)
from tests.browser.test_job_access import in_both_schemes
from tests.page.test_size import told

pytestmark = pytest.mark.browser

# Goes the reader's way to each size: the part, the size on its drawing, the field. Before each tap, and for the verdict, it scrolls as
# far as it must; only what can really be touched there is tapped. Python's own time is not counted here, it is awake.
WALK = """async ([features, texts]) => {
    const HEADER = document.querySelector('.md-header').getBoundingClientRect().height;
    const frame = () => new Promise(requestAnimationFrame);
    const until = async (look, what) => {
        const end = performance.now() + 20_000;
        for (;;) {
            const found = look();
            if (found) return found;
            if (performance.now() > end) throw new Error(`waited for ${what}`);
            await frame();
        }
    };
    const wrong = [], far = {};
    for (const id of features) {
        let taps = 0, scrolled = 0;
        const reach = (element) => {
            const { top, bottom } = element.getBoundingClientRect();
            const by = top < HEADER ? top - HEADER : bottom > innerHeight ? bottom - innerHeight : 0;
            scrolled += Math.abs(by);
            scrollBy({ top: by, behavior: 'instant' });
        };
        const tap = (element) => {
            reach(element);
            const { left, top, width, height } = element.getBoundingClientRect();
            if (Math.min(width, height) < 43.5) wrong.push(`${id}: a target of ${width} × ${height}`);
            const there = document.elementFromPoint(left + width / 2, top + height / 2);
            const link = element.closest('a');
            if (!there || (link ? there.closest('a') !== link : there !== element)) wrong.push(`${id}: covered by ${there?.outerHTML.slice(0, 80)}`);
            taps++;
            (there ?? element).dispatchEvent(new MouseEvent('click', { bubbles: true, cancelable: true }));
            if (element.matches('input')) element.focus();
        };
        location.hash = '#engine';
        scrollTo({ top: 0, behavior: 'instant' });
        await frame();
        const line = document.getElementById(`size-${id}`);
        const part = line.closest('.bench-part');
        const door = document.querySelector(`.bench-parts a[href="#${part.querySelector('h2').id}"]`);
        await until(() => door.getClientRects().length, 'the whole engine');
        tap(door);
        const hit = await until(() => part.querySelector(`svg a[data-feature="${id}"] .hit`), `the drawing of ${id}`);
        tap(hit);
        const panel = await until(() => document.querySelector('.size-panel') ?? null, `the panel of ${id}`);
        if (location.hash !== `#size-${id}`) wrong.push(`${id}: at ${location.hash}`);
        const field = panel.querySelector('[data-entry]');
        tap(field);
        field.value = texts[id];
        field.dispatchEvent(new Event('input', { bubbles: true }));
        const verdict = await until(() => panel.querySelector('.verdict'), `a verdict on ${id}`);
        reach(verdict);
        far[id] = [taps, Math.round(scrolled), verdict.textContent];
        field.value = '';
        field.dispatchEvent(new Event('input', { bubbles: true }));
    }
    return { wrong, far };
}"""


def on_limit(name: str, id: str) -> str:
    """What is typed: the lower limit of the sheet's own text, or else its nominal size."""
    line = told(name)[id]
    return line.get("low") or line.get("high") or engine(name).feature(id).text


def test_any_size_is_three_taps_and_a_screen_from_its_verdict(browser, server):
    with fresh_page(browser, base_url=server, viewport=PHONE, service_workers="block") as page:
        page.goto("")
        for name in ("TS-16", "RC-40"):
            page.evaluate("location.hash = '#engine'")
            page.locator(".bench-tools [data-engine-choice]").select_option(name)
            expect(page.locator(f".bench[data-bench='{name}']")).to_be_attached()
            features = list(engine(name).features)
            texts = {id: on_limit(name, id) for id in features}
            seen = page.evaluate(WALK, [features, texts])
            assert seen["wrong"] == []
            assert set(seen["far"]) == set(features)
            assert {id: taps for id, (taps, _, _) in seen["far"].items() if taps != 3} == {}
            assert {id: px for id, (_, px, _) in seen["far"].items() if px > PHONE["height"]} == {}
            for id, (_, _, said) in seen["far"].items():
                if "low" in told(name)[id]:
                    assert said.startswith("In order"), (id, said)


def typed(page, text: str) -> None:
    page.locator("#size-text").fill(text)


def test_a_reading_is_judged_as_the_terminal_judges_it_and_outlives_a_reload(page):
    page.set_viewport_size(PHONE)
    page.goto("#size-guide.bore")
    typed(page, "8.030")
    verdicts = page.locator(".size-panel .verdict")
    expect(verdicts).to_have_count(2)
    asked = {
        "call": "size",
        "engine": "TS-16",
        "feature": "guide.bore",
        "stage": "finished",
        "text": "8.030",
        "system": "metric",
    }
    page.locator(".size-stages label", has_text="New").click()
    expect(verdicts).to_have_count(1)
    html = json.loads(answer(json.dumps(asked)))["html"]["verdict"]
    assert page.locator(".size-panel [data-part=verdict]").inner_html() == html
    page.reload()
    expect(page.locator("#size-text")).to_have_value("8.030")
    expect(verdicts).to_have_count(2)
    page.locator("[data-units-choice=inch]").click()
    expect(page.locator("#size-text")).to_have_value("8.030 mm")
    typed(page, "5 kg")
    expect(page.locator("#size-message")).to_contain_text("Guide bore, fitted and reamed:")
    expect(page.locator("#size-text")).to_have_value("5 kg")
    expect(verdicts).to_have_count(0)


def test_each_place_keeps_its_own_reading(page):
    page.goto("#size-crank.rod_journal")
    page.locator("#size-place").select_option("1")
    typed(page, "51.99")
    page.locator("#size-place").select_option("2")
    expect(page.locator("#size-text")).to_have_value("")
    typed(page, "51.9")
    page.locator("#size-place").select_option("1")
    expect(page.locator("#size-text")).to_have_value("51.99")


def test_back_closes_what_was_opened(page):
    page.goto("")
    page.locator(".bench-parts a", has_text="Crank").click()
    expect(page.locator("#view-crank")).to_be_visible()
    page.locator("#size-crank\\.rod_journal > a").click()
    expect(page.locator(".size-panel")).to_be_visible()
    page.go_back()
    expect(page.locator(".size-panel")).to_have_count(0)
    expect(page.locator("#view-crank")).to_be_visible()
    page.go_back()
    expect(page.locator(".bench-whole")).to_be_visible()
    expect(page.locator("#view-crank")).to_be_hidden()


def test_words_find_sizes_calculators_and_write_ups(page):
    page.goto("")
    page.locator("#find").fill("rod journal")
    shown = page.locator(".sizes > li:visible")
    expect(shown).to_have_count(2)
    page.locator("#find").fill("valve rock")  # of none of its own words alone
    expect(page.locator(".index li:visible a", has_text="Guide")).not_to_have_count(0)
    page.locator("#find").fill("no such word")
    expect(page.locator("[data-not-found]")).to_be_visible()
    page.locator("#find").fill("big-end bore")
    page.locator(".sizes > li:visible a").first.click()
    expect(page.locator(".size-panel")).to_be_visible()
    expect(page.locator("#find")).to_have_value("")
    page.goto("")
    expect(page.locator("[data-lately] a").first).to_have_text("Big-end bore, bolted up")


def test_words_find_a_calculator_by_what_it_is_looked_for(page):
    page.goto("check-a-number/")
    page.locator("#find").fill("ovality")
    expect(page.locator(".stations li:visible")).to_have_count(1)
    expect(page.locator(".stations li:visible")).to_contain_text("Round and straight")
    page.locator("#find").fill("")
    assert page.locator(".stations li:not([hidden])").count() > 30


def test_it_reads_before_any_script(browser, server):
    with fresh_page(
        browser, base_url=server, viewport=PHONE, java_script_enabled=False, service_workers="block"
    ) as page:
        page.goto("")
        expect(page.locator(".bench-whole svg")).to_be_visible()
        page.locator(".bench-parts a", has_text="Crank").click()
        expect(page.locator(".bench-whole svg")).to_be_hidden()
        expect(page.locator("#size-crank\\.rod_journal")).to_contain_text("51.985 to 52.000 mm")
        page.locator("#size-crank\\.rod_journal > a").click()
        expect(page.locator("#size-crank\\.rod_journal")).to_be_in_viewport()
        expect(page.locator(".index")).to_be_hidden()


def test_another_engine_never_shows_the_limits_of_the_first(page):
    page.add_init_script("localStorage.setItem('sizebook:engine', 'RC-40')")
    page.goto("#size-crank.rod_journal")
    expect(page.locator(".size-limits .u-metric")).to_contain_text(
        "50.785 to 50.800 mm"
    )  # 1.9994 to 2.0000 in
    expect(page.locator("#size-spring\\.wire")).to_have_count(0)


def test_what_is_looked_for_is_looked_for_in_the_lists_of_an_engine_that_is_chosen_later_too(page):
    page.goto("")
    page.locator("[data-find]").fill("torque")
    page.locator(".bench-tools [data-engine-choice]").select_option("RC-40")
    expect(page.locator(".bench[data-bench='RC-40']")).to_be_attached()
    assert not [each for each in page.locator(".sizes > li").all() if each.is_visible()]
    page.locator("[data-find]").fill("rod journal")
    expect(page.locator(".sizes > li:not([hidden])")).to_have_count(1)


def test_an_engine_without_a_sheet_is_told(page):
    page.goto("")
    page.locator(".bench-tools [data-engine-choice]").select_option("")
    expect(page.locator(".bench-none")).to_be_visible()
    expect(page.locator(".bench-whole")).to_be_hidden()


def test_a_job_comes_first_and_keeps_a_reading_at_one_tap(page):
    with_job(page, fresh(), "")
    unread = page.locator("[data-unread] a")
    expect(unread.first).to_contain_text("Seat pocket bore, intake")
    expect(page.locator(".engine-choice")).to_be_hidden()
    page.goto("#size-crank.rod_journal")
    page.locator("#size-place").select_option("2")
    typed(page, "51.990")
    page.locator("[data-part=job] [data-job-keep=finished]").click()
    expect(page.locator("[data-part=job] .job-kept")).to_contain_text("In order")
    expect(page.locator("[data-part=job] .job-held li")).to_have_count(1)
    kept = stored(page)[0]["job"]["readings"][-1]
    assert (kept["feature"], kept["place"], kept["stage"], kept["text"]) == (
        "crank.rod_journal",
        "2",
        "finished",
        "51.990 mm",
    )
    page.goto("")
    expect(page.locator("[data-lately] a").first).to_have_text("Rod journal")


def test_its_states_have_no_violation(axe, page):  # noqa: F811
    page.set_viewport_size(PHONE)
    with_job(page, fresh(), "")
    expect(page.locator("[data-unread] a").first).to_be_visible()
    wrong = in_both_schemes(page, axe)
    page.goto("#size-guide.bore")
    expect(page.locator(".bench-part svg:visible")).not_to_have_count(0)
    page.locator("#size-place").select_option("2 intake")
    typed(page, "8.030")
    expect(page.locator(".size-panel .verdict")).to_have_count(2)
    assert wrong + in_both_schemes(page, axe) == []


# --- What leads there --------------------------------------------------------------------------------


def test_six_doors_at_most(page):
    """However many stations there are: they stand below theirs."""
    page.set_viewport_size({"width": 1280, "height": 900})
    page.goto("")
    doors = page.locator(".md-tabs__link")
    assert doors.count() <= 6
    names = [text.strip() for text in doors.all_inner_texts()]
    assert names == ["Bench", "Check a number", "Stations", "Job", "Limits", "About"]
    page.goto("heads/guides/")
    assert page.locator(".md-tabs__link").count() == doors.count()


@pytest.mark.parametrize("address, screens", [("check-a-number/", 3), ("limits/", 6), ("limits/rc-40/", 6)])
def test_lists_are_few_screens_of_a_phone(page, address, screens):
    page.set_viewport_size(PHONE)
    page.goto(address)
    assert page.evaluate("document.documentElement.scrollHeight") <= screens * PHONE["height"]


def test_limits_are_a_jump_away_and_whole_on_paper(page):
    page.set_viewport_size(PHONE)
    page.goto("limits/")
    page.locator(".jump a", has_text="Torque").click()
    expect(page.locator("#limits-torque td").first).to_be_in_viewport()
    page.emulate_media(media="print")
    page.evaluate("dispatchEvent(new Event('beforeprint'))")
    expect(page.locator(".limits tbody tr:visible")).to_have_count(len(engine("TS-16").features))


def test_every_address_of_before_stays(site):
    """Those of the first edition's navigation."""
    for address in (
        "check-a-number/",
        "learn-a-job/",
        "box-of-parts/",
        "about/",
        "job/",
        "job/sheet/",
        "job/received/",
        "measuring/taking-a-size/",
        "heads/",
        "heads/seats/",
        "rods/resizing/",
        "lifters/solid-to-hydraulic/",
        "threads/inserts/",
        "limits/",
        "limits/rc-40/",
        "sources/",
        "sources/heads/",
    ):
        assert text_of(site, address)


def test_the_first_page_stays_light(site):
    """Reading it takes no calculator and no drawing of a part. Each size of the sheet is a line of it: 600 bytes with all round it, a sixth of
    that on the line."""
    html, sizes = text_of(site, "").encode(), len(engine("TS-16").features)
    assert b"<live-calculator" not in html
    assert len(html) <= 600 * sizes
    assert len(brotli.compress(html, quality=11)) <= 100 * sizes
