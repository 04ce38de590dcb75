"""The steps of a procedure count through, whatever stands between them."""

import re

from markdown import Markdown

from calc.stations import index as stations
from scripts.mdx import SizebookExtension
from scripts.mdx.handbook import Handbook


def numbers(page):
    """Of each section of a page: its heading, and the numbers that its lists of steps show."""
    heading, shown = "", []
    for element in page:
        if re.fullmatch("h[1-6]", element.tag):
            yield heading, shown
            heading, shown = "".join(element.itertext()), []
        elif element.tag == "ol":
            first = int(element.get("start", 1))
            shown += range(first, first + len(element.findall("li")))
    yield heading, shown


def test_a_list_begins_with_the_number_that_it_is_given(tmp_path):
    handbook = Handbook(None, stations, tmp_path)
    html = Markdown(extensions=[SizebookExtension(handbook)]).convert(
        "1. Cut.\n2. Read.\n\nThen\n\n3. Type.\n"
    )
    assert '<ol start="3">' in html and html.count("<ol>") == 1


def test_the_steps_of_every_section_count_through(pages):
    wrong = {
        f"{name}: {heading}": shown
        for name, page in pages.items()
        for heading, shown in numbers(page)
        if shown != list(range(1, len(shown) + 1))
    }
    assert not wrong


def test_numbered_headings_count_through(pages):
    for name, page in pages.items():
        told = [int(m[1]) for h in page.iter("h2") if (m := re.match(r"(\d+)\. ", "".join(h.itertext())))]
        assert told == list(range(1, len(told) + 1)), name
