"""The glossary's words: read from its page, marked once on every other page, and none without a use."""

import pytest
from markdown import Markdown

from calc.stations import index as stations
from scripts.mdx import DOCS, SizebookExtension, glossary, place
from scripts.mdx.handbook import Handbook

PAGE = """# Words

What the words mean.

## A to Z

Marking blue (blue, blued)
:   A thin paste. Wiped on one part,
    it marks the other.

Pilot (pilots)
:   A ground pin in the guide.
"""


@pytest.fixture
def convert(tmp_path):
    docs = tmp_path / "docs"
    docs.mkdir()
    (docs / "glossary.md").write_text(PAGE)
    (docs / "seats.md").write_text("/// calculator | seat-fit\n///\n")
    handbook = Handbook(type("Page", (), {"calculator_html": lambda *_: "<b>the pilot</b>"}), stations, docs)

    def convert(text, page="docs/heads/seats.md"):
        with place.page(page):
            extensions = [SizebookExtension(handbook), "tables", "admonition", "def_list", "attr_list"]
            return Markdown(extensions=extensions).convert(text)

    return convert


BUTTON = '<button class="word" popovertarget="word-{}" type="button">{}</button>'
PILOT, BLUE = BUTTON.format("pilot", "{}"), BUTTON.format("marking-blue", "{}")


def test_a_word_is_marked_where_it_first_stands_in_any_of_its_forms(convert):
    html = convert("Two pilots and\na *pilot*.\n\nSet in blue on the pilot.")
    assert html.startswith(
        f"<p>Two {PILOT.format('pilots')} and\na <em>pilot</em>.</p>\n"
        f"<p>Set in {BLUE.format('blue')} on the pilot.</p>"
    )


def test_a_point_behind_it_stays_with_it(convert):
    """A line could end before the point else, as it may beside any button."""
    assert f'<span class="word-end">{PILOT.format("pilot")}.”</span> It' in convert("“A pilot.” It turns.")


def test_it_is_marked_in_the_order_of_reading(convert):
    html = convert("Not `pilot` but *a pilot*, marking\nblue and blue, pilot.")
    assert html.startswith(
        f"<p>Not <code>pilot</code> but <em>a {PILOT.format('pilot')}</em>, "
        f"{BLUE.format('marking' + chr(10) + 'blue')} and blue, pilot.</p>"
    )


@pytest.mark.parametrize(
    "text",
    [
        "# The pilot",
        "[the pilot](seats.md)",
        "`pilot`",
        "    pilot = 1",
        "| Pilot |\n| --- |\n| 1 |",
        '!!! danger "A pilot that shakes"\n\n    It does.',
        "/// calculator | seat-fit\n///",
        "The copilot, a pilot-like pin.",
        "Read this.\n{ .pilot }",
    ],
)
def test_it_is_left_where_it_is_no_prose(convert, text):
    assert "popovertarget" not in convert(text)


def test_its_meaning_stands_at_the_end_of_the_page_with_a_link(convert):
    assert convert("Blued.").endswith(
        '<p class="note" data-search-exclude="" id="word-marking-blue" popover=""><strong>Marking blue</strong>'
        " A thin paste. Wiped on one part, it marks the other."
        ' <a href="../glossary.md#marking-blue">Glossary</a></p>'
    )


def test_on_the_glossarys_own_page_the_entries_have_anchors_and_nothing_is_marked(convert):
    html = convert(PAGE, "docs/glossary.md")
    assert '<dt id="marking-blue">Marking blue (blue, blued)</dt>' in html and '<dt id="pilot">' in html
    assert "popover" not in html


@pytest.mark.parametrize(
    ("page", "line", "words"),
    [
        (PAGE + "\nThroat (throats)\n\nVee\n:   A block.\n", 14, "“Throat .throats.” has no meaning"),
        (PAGE + "\nThroat\n:    \n", 14, "“Throat” has no meaning"),
        (PAGE + "\nThroat\n:   Below a *seat*.\n", 14, "the meaning of Throat .* plain text"),
        (PAGE + "\nBlue\n:   A colour.\n", 14, "Blue stands in the glossary under Marking blue too"),
    ],
)
def test_what_is_no_entry_is_refused(page, line, words, tmp_path):
    (tmp_path / "glossary.md").write_text(page)
    with pytest.raises(place.MarkdownError, match=rf"glossary\.md:{line}: .*{words}"):
        glossary.Glossary(tmp_path).entries


def test_without_a_glossary_nothing_is_marked(tmp_path):
    handbook = Handbook(None, stations, tmp_path)
    assert Markdown(extensions=[SizebookExtension(handbook)]).convert("A pilot.") == "<p>A pilot.</p>"


# --- The handbook's own ---


def test_every_word_is_used_on_a_page(pages):
    used = {button.get("popovertarget") for page in pages.values() for button in page.iter("button")}
    entries = glossary.Glossary(DOCS).entries.values()
    assert {entry.word for entry in entries if f"word-{entry.anchor}" not in used} == set()


def test_every_word_opens_a_meaning_that_stands_on_its_page_once(pages):
    for name, page in pages.items():
        opened = [button.get("popovertarget") for button in page.iter("button")]
        words = [id for id in opened if id.startswith("word-")]
        notes = [note.get("id") for note in page.iter("p") if note.get("class") == "note"]
        assert len(words) == len(set(words)), name
        assert sorted(notes) == sorted(set(opened)), name


def test_words_stand_in_the_order_of_the_alphabet():
    words = [entry.word.lower() for _, entry in glossary.read((DOCS / "glossary.md").read_text())]
    assert words == sorted(words)
