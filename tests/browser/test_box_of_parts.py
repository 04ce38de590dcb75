"""The page for whoever has a box of parts: every kind of part, one thumb, no script needed to read it, all of it on paper."""

import pypdfium2
import pytest
from playwright.sync_api import expect

from calc.job.parts import PARTS
from tests.browser.conftest import PHONE, fresh_page

pytestmark = pytest.mark.browser

SCREENS = 6  # of a phone, with all parts folded


@pytest.fixture
def phone(browser, server):
    with fresh_page(
        browser, base_url=server, viewport=PHONE, has_touch=True, service_workers="block"
    ) as page:
        page.goto("box-of-parts/")
        yield page


def test_it_is_short_and_each_part_is_two_taps_away(phone):
    page = phone
    assert page.evaluate("document.documentElement.scrollHeight / innerHeight") <= SCREENS
    assert page.evaluate("document.documentElement.scrollWidth <= innerWidth")
    folds = page.locator("details.part")
    titles = folds.locator("summary h2").all_inner_texts()
    assert len(titles) == 10
    for part in PARTS:
        assert any(part.named_in(title) for title in titles), part.word
    links = page.locator(".jump a")
    for link in links.all():
        assert link.bounding_box()["height"] >= 44
        assert page.locator(link.get_attribute("href")).count() == 1
    page.locator(".jump a[href='#rods']").tap()
    rods = folds.filter(has=page.locator("#rods"))
    expect(rods).to_have_attribute("open", "")
    expect(rods.locator("summary")).to_be_in_viewport()
    rods.locator("summary").tap()
    expect(rods).not_to_have_attribute("open", "")
    page.locator(".jump a[href='#rods']").tap()  # the address has not changed
    expect(rods).to_have_attribute("open", "")


def test_every_check_says_what_passes_and_what_to_do_when_it_does_not(phone):
    checks = phone.locator("details.part > dl > dt").count()
    words = phone.locator("details.part > dl > dd").evaluate_all("all => all.map(e => e.textContent)")
    assert len(words) == checks > 40
    for said in words:
        assert "Passes:" in said or "ot at home" in said or "The shop lays it" in said, said
        assert "If " in said, said


def test_without_a_script_it_is_read_and_unfolded_all_the_same(browser, server):
    with fresh_page(browser, base_url=server, viewport=PHONE, java_script_enabled=False) as page:
        page.goto("box-of-parts/")
        fold = page.locator("details.part").first
        fold.locator("summary").click()
        expect(fold.get_by_text("The sealing face.")).to_be_visible()


def test_on_paper_all_of_it_is_unfolded(phone, tmp_path):
    phone.pdf(path=tmp_path / "box.pdf", format="A4")
    paper = pypdfium2.PdfDocument(tmp_path / "box.pdf")
    text = " ".join(page.get_textpage().get_text_range() for page in paper)
    for words in (
        "The sealing face",
        "The keepers",
        "The pin",
        "Bearing clearance",
        "Oil the webs",
        "Timing",
        "Balance",
        "How deep?",
    ):
        assert words in text, words


def test_no_caution_stands_twice(phone):
    said = phone.locator(".admonition p:not(.admonition-title)").evaluate_all(
        "all => all.map(e => e.textContent.trim())"
    )
    assert len(said) == len(set(said)) >= 7
