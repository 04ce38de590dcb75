"""The sign of common practice: quiet in the sentence, in words for whoever taps, listens or prints."""

import re

from markdown import Markdown

from calc.stations import index as stations
from scripts.mdx import DOCS, SizebookExtension
from scripts.mdx.handbook import Handbook

SIGN = (
    '<span class="cp" data-search-exclude="">\u2060<button aria-label="common practice"'
    ' popovertarget="common-practice" type="button">†</button>\u2060</span>'
)
LEGEND = (
    '<p class="note" data-search-exclude="" id="common-practice" popover=""><strong>†</strong> Common practice,'
    " no source: the maker's figure replaces it.</p>"
)


def converted(tmp_path, text):
    return Markdown(extensions=[SizebookExtension(Handbook(None, stations, tmp_path)), "tables"]).convert(
        text
    )


def test_the_sign_is_a_button_and_its_legend_stands_below_the_page_once(tmp_path):
    html = converted(tmp_path, "Keep off the head{cp}, *an hour{cp}*.\n\n| Time |\n| --- |\n| A day{cp} |")
    assert f"<p>Keep off the head{SIGN}, <em>an hour{SIGN}</em>.</p>" in html
    assert f"<td>A day{SIGN}</td>" in html
    assert html.count(LEGEND) == 1 and html.endswith(LEGEND)


def test_a_page_without_the_sign_has_no_legend(tmp_path):
    assert (
        converted(tmp_path, "`{cp}` is how it is written.")
        == "<p><code>{cp}</code> is how it is written.</p>"
    )


def test_the_sign_is_the_one_way_to_say_it_short():
    old = re.compile(r"\*cp\*|\(cp\b")
    assert [path.name for path in DOCS.rglob("*.md") if old.search(path.read_text(encoding="utf-8"))] == []


def test_paper_shows_the_legend():
    css = (DOCS / "assets/css/print.css").read_text()
    assert re.search(r"#common-practice \{\s*display: block;", css)
