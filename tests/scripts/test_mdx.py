"""The Markdown forms: what each becomes, and how each kind of mistake is refused."""

from dataclasses import replace
from html import escape
from pathlib import Path
from types import SimpleNamespace

import pytest
from markdown import Markdown

from calc.core.result import InputError, Refused, say
from calc.reference import engine
from scripts.mdx import SizebookExtension, lists, place
from scripts.mdx.handbook import Handbook

PAIRS = Path(__file__).parent / "mdx"


class Page:
    """Stands in for `calc.page`: shows what it was asked for, and refuses as it does."""

    @staticmethod
    def calculator_html(id, presets, anchor, sheet=""):
        if id != "seat-fit":
            raise KeyError(f"there is no calculator {id!r}; nearest are seat-fit")
        for name, text in presets.items():
            if "furlong" in text:
                raise Refused(
                    [
                        InputError(
                            name,
                            "unknown-unit",
                            say("Pocket bore: furlong is not a length here; give mm or in."),
                        )
                    ]
                )
            if name.startswith("pockt"):
                raise Refused(
                    [
                        InputError(
                            name,
                            "unknown-input",
                            say(name + ": seat-fit has no such input; did you mean pocket_bore?"),
                        )
                    ]
                )
        words = " ".join(f"{name}={text}" for name, text in sorted(presets.items()))
        return f'<live-calculator id="{anchor}">{escape(words)}</live-calculator>'

    @staticmethod
    def size_html(feature, part):
        if feature != "head.pocket":
            raise KeyError(f"TS-16 has no feature {feature!r}; nearest are head.pocket")
        return f"<span>{feature} {part}</span>"

    @staticmethod
    def result_html(id, output):
        if output != "grip":
            raise KeyError(f"{id} has no output {output!r}; it has grip")
        return f"<span>{id} {output}</span>"

    @staticmethod
    def quantity_html(number, unit):
        if unit != "mm":
            raise KeyError(f"{unit!r} is not the symbol of a unit")
        return f"<span>{number} {unit}</span>"

    @staticmethod
    def caution_html(id):
        if id != "hot-head":
            raise KeyError(f"there is no caution {id!r}; there are hot-head")
        return "It burns."

    @staticmethod
    def table_html(name, anchor):
        if name != "iso-286 holes":
            raise KeyError(f"there is no table {name!r}; there are iso-286 holes")
        return f'<div id="{anchor}">{name}</div>'


class Stations:
    STATIONS = ("heads",)

    @staticmethod
    def station(name):
        return SimpleNamespace(CALCULATORS=("seat-fit",))

    @staticmethod
    def find(id):
        return SimpleNamespace(
            id=id, title="Seat ring fit", purpose="Whether the ring holds.", finds=("valve seat",)
        )


@pytest.fixture
def docs(tmp_path):
    (tmp_path / "heads").mkdir()
    (tmp_path / "heads/seats.md").write_text(
        "```\n/// calculator | shown-only\n```\n/// calculator | seat-fit\n///\n"
    )
    return tmp_path


@pytest.fixture
def convert(docs):
    handbook = Handbook(Page, Stations, docs)
    plain = {"pymdownx.highlight": {"use_pygments": True}}

    def convert(text):
        return Markdown(
            extensions=[
                SizebookExtension(handbook),
                "tables",
                "toc",
                "attr_list",
                "md_in_html",
                "pymdownx.highlight",
                "pymdownx.superfences",
            ],
            extension_configs=plain,
        ).convert(text)

    return convert


@pytest.mark.parametrize("source", sorted(PAIRS.glob("*.md")), ids=lambda path: path.stem)
def test_pair(source, convert):
    assert convert(source.read_text()).strip() == source.with_suffix(".html").read_text().strip()


REFUSED = {
    "unknown table": (
        "# Fits\n\n/// table | iso-286 wholes\n///\n",
        3,
        ["no table 'iso-286 wholes'", "there are iso-286 holes"],
    ),
    "a table with an option": (
        "/// table | iso-286 holes\n    rows: 3\n///\n",
        2,
        ["rows is not an option of /// table, which has none"],
    ),
    "unknown picture": (
        "# Seats\n\n/// drawing | blue-band\n///\n",
        3,
        ["no picture 'blue-band'", "did you mean blue-bands?"],
    ),
    "an option that a picture does not take": (
        "/// drawing | blue-bands\n    engin: RC-40\n///\n",
        2,
        ["engin is not an option of /// drawing; it takes engine"],
    ),
    "a picture for an engine without a sheet": (
        "/// drawing | blue-bands\n    engine: RC-41\n///\n",
        1,
        ["no data sheet for 'RC-41'"],
    ),
    "unknown calculator": ("# Seats\n\n/// calculator | seat-fitt\n///\n", 3, ["seat-fitt", "seat-fit"]),
    "no calculator named": ("/// calculator\n///\n", 1, ["no calculator ''"]),
    "unknown input, on the line of the input": (
        "/// calculator | seat-fit\n    pocket_bore: 37 mm\n    pockt_bore: 37 mm\n///\n",
        3,
        ["pockt_bore", "did you mean pocket_bore?"],
    ),
    "unknown unit, on the line of the input": (
        "/// calculator | seat-fit\n    pocket_bore: 37 furlong\n///\n",
        2,
        ["furlong", "give mm or in"],
    ),
    "the same option twice": (
        "/// calculator | seat-fit\n    pocket_bore: 37 mm\n    pocket_bore: 38 mm\n///\n",
        3,
        ["pocket_bore is given twice, first on line 2"],
    ),
    "an option without a value": (
        "/// calculator | seat-fit\n    pocket_bore 37 mm\n///\n",
        2,
        ["“pocket_bore 37 mm”", "name: value"],
    ),
    "an option that is not indented": (
        "/// calculator | seat-fit\npocket_bore: 37 mm\n///\n",
        2,
        ["four spaces in"],
    ),
    "misspelt block": (
        "text\n\n/// calculater | seat-fit\n///\n",
        3,
        ["no block called calculater", "did you mean calculator?"],
    ),
    "block with a name of two words": (
        "/// the calculator | seat-fit\n///\n",
        1,
        ["does not open a block", "/// name | argument"],
    ),
    "block that is never closed": (
        "/// calculator | seat-fit\n    pocket_bore: 37 mm\n\n",
        1,
        ["not closed"],
    ),
    "text where only options belong": (
        "/// calculator | seat-fit\n\nSome prose.\n\n///\n",
        3,
        ["“Some prose.”"],
    ),
    "closed by too many slashes": ("/// calculator | seat-fit\n////\n", 2, ["a line /// closes"]),
    "unknown station": ("/// station | head\n///\n", 1, ["no station 'head'", "did you mean heads?"]),
    "option of a block without options": (
        "/// station | heads\n    sort: yes\n///\n",
        2,
        ["sort", "has none"],
    ),
    "unknown feature": (
        "```\n{size: head.pockt low}\n```\nNot `{size: head.pockt low}`\n\nbut {size: head.pockt low}.\n",
        6,
        ["head.pockt", "head.pocket"],
    ),
    "unknown part of a size": (
        "{size: head.pocket middle}",
        1,
        ["middle", "nominal, low, high, wear, limits"],
    ),
    "size without a feature": ("{size: }", 1, ["write it as {size: feature part}"]),
    "unknown output": ("\n\nAbout {result: seat-fit gripp}.", 3, ["gripp", "it has grip"]),
    "result without an output": ("{result: seat-fit}", 1, ["write it as {result: calculator output}"]),
    "quantity without a unit": ("Within {quantity: 0.03}.", 1, ["write it as {quantity: number unit}"]),
    "quantity in no unit": ("Within {quantity: 0.03 mn}.", 1, ["'mn'"]),
    "unknown caution": ("\n{caution: hot-had}", 2, ["hot-had", "there are hot-head"]),
}


@pytest.mark.parametrize(("text", "line", "words"), REFUSED.values(), ids=REFUSED)
def test_refused(text, line, words, convert):
    with place.page("docs/heads/seats.md"), pytest.raises(place.MarkdownError) as refused:
        convert(text)
    said = str(refused.value)
    assert said.startswith(f"docs/heads/seats.md:{line}: "), said
    for word in words:
        assert word in said


def test_line_is_counted_in_the_file_not_below_the_front_matter(convert):
    with (
        place.page("docs/heads/seats.md", lines_above=4),
        pytest.raises(place.MarkdownError, match=r"^docs/heads/seats\.md:5: "),
    ):
        convert("/// calculator | nothing\n///")


def test_line_is_given_without_a_page(convert):
    with pytest.raises(place.MarkdownError, match="^line 2: "):
        convert("\n/// calculator | nothing\n///")


def test_station_names_the_calculator_that_stands_on_no_page(docs, convert):
    (docs / "heads/seats.md").write_text("nothing")
    with (
        place.page("docs/heads/index.md"),
        pytest.raises(place.MarkdownError, match="seat-fit stands on no page"),
    ):
        convert("/// station | heads\n///")


@pytest.mark.parametrize(
    ("page", "link"),
    [
        ("docs/index.md", "heads/seats.md#seat-fit"),
        ("docs/heads/index.md", "seats.md#seat-fit"),
        ("docs/rods/index.md", "../heads/seats.md#seat-fit"),
    ],
)
def test_station_links_from_where_it_stands(page, link, tmp_path):
    docs = tmp_path / "docs"
    (docs / "heads").mkdir(parents=True)
    (docs / "heads/seats.md").write_text("/// calculator | seat-fit\n///\n")
    with place.page(page):
        assert Handbook(Page, Stations, docs).link("seat-fit") == link


def test_a_heading_never_takes_the_anchor_of_a_calculator(convert):
    html = convert("/// calculator | seat-fit\n///\n\n## Seat-fit\n")
    assert html.count('id="seat-fit"') == 1
    assert '<h2 id="seat-fit_1">' in html


def test_limits_tell_the_other_sizes_outwards_from_the_standard_one():
    journal, shim, bore = (
        engine.demo().features[id] for id in ("crank.main_journal", "cylinder.shim", "crank.bow")
    )
    assert lists._also(journal) == "<br><small>also 0.25, 0.50, 0.75, 1.00 mm undersize</small>"
    assert lists._also(shim) == "<br><small>also 0.50, 0.75, 1.00 mm</small>" and lists._also(bore) == ""
    both = replace(
        journal, steps=(engine.Step("0.25 mm oversize", 0.00025), engine.Step("0.25 mm undersize", -0.00025))
    )
    assert lists._also(both) == "<br><small>also 0.25 mm undersize, 0.25 mm oversize</small>"
