"""Words of the trade and the sign of common practice: their meaning where they are tapped, by thumb and by keyboard."""

import pytest
from playwright.sync_api import expect

from scripts.mdx import DOCS, glossary
from tests.browser.conftest import PHONE, fresh_page

pytestmark = pytest.mark.browser
PAGE = "heads/seats/"


def test_a_tap_shows_the_meaning_and_the_next_beside_it_puts_it_away_without_any_script(browser, server):
    phone = dict(viewport=PHONE, has_touch=True, java_script_enabled=False, service_workers="block")
    with fresh_page(browser, base_url=server, **phone) as page:
        page.goto(PAGE)
        word = page.locator("button.word").first
        entry = glossary.Glossary(DOCS).entry(word.inner_text())
        meaning, sign = page.get_by_text(entry.meaning), page.locator("#common-practice")
        expect(meaning).to_be_hidden()
        word.tap()
        expect(meaning).to_be_in_viewport(ratio=1)
        page.get_by_role("button", name="common practice").first.tap()
        expect(meaning).to_be_hidden()
        expect(sign).to_be_in_viewport(ratio=1)
        page.locator("h1").tap()
        expect(sign).to_be_hidden()


def test_by_keyboard_it_opens_leads_to_the_glossary_and_gives_the_focus_back(page):
    page.goto(PAGE)
    word = page.locator("button.word").first
    entry = glossary.Glossary(DOCS).entry(word.inner_text())
    word.focus()
    page.keyboard.press("Enter")
    expect(page.get_by_text(entry.meaning)).to_be_visible()
    page.keyboard.press("Escape")
    expect(page.get_by_text(entry.meaning)).to_be_hidden()
    expect(word).to_be_focused()
    page.keyboard.press("Enter")
    page.keyboard.press("Tab")
    page.keyboard.press("Enter")
    expect(page).to_have_url(f"{page.url.partition(PAGE)[0]}glossary/#{entry.anchor}")
    expect(page.get_by_text(entry.meaning)).to_be_in_viewport()


def test_on_paper_words_are_words_and_the_sign_has_its_legend(page):
    page.goto(PAGE)
    page.emulate_media(media="print")
    expect(page.locator("#common-practice")).to_be_visible()
    assert (
        page.evaluate(
            "[...document.querySelectorAll('.note')].filter((each) => each.checkVisibility()).length"
        )
        == 1
    )
    assert not page.evaluate(
        "[...document.querySelectorAll('button.word, .cp button')].some((each) => each.checkVisibility())"
    )
    expect(page.get_by_text("Figures marked")).to_contain_text("†", use_inner_text=True)
