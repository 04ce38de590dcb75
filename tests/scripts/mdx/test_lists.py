"""Lists of calculators and write-ups, and in which of them a size is found."""

import re
from types import SimpleNamespace

import pytest
from markdown import Markdown

from calc.reference.engine import engine
from calc.stations import index as stations
from scripts.mdx import DOCS, SizebookExtension, lists, place
from scripts.mdx.handbook import Handbook
from scripts.mdx.write_ups import Step, write_up

PAGE = """\
---
title: "Guides: new ones"
---

# Guides

Its bore is {size: guide.bore limits}.

## 1. Read

The stem is {size: valve.stem_intake low}, the bore {size: guide.bore}.

```
## No heading {size: guide.length}
```

## 1. Read

Nothing.
"""


@pytest.fixture
def handbook() -> Handbook:
    return Handbook(None, stations, DOCS)


def links(markdown: str) -> list[tuple[str, str]]:
    return re.findall(r"\[([^]]+)\]\(([^)]+)\)", markdown)


def test_a_page_is_read_heading_by_heading(tmp_path):
    (tmp_path / "guides.md").write_text(PAGE)
    read = write_up(tmp_path, "guides.md")
    assert (read.path, read.title) == ("guides.md", "Guides: new ones")
    assert read.steps == (
        Step("guides", "Guides", ("guide.bore",)),
        Step("1-read", "1. Read", ("valve.stem_intake", "guide.bore")),
        Step("1-read_1", "1. Read", ()),
    )


def test_anchors_are_those_that_the_converter_gives(tmp_path):
    """By Python-Markdown's own extension, on every write-up of the handbook."""
    found = 0
    for path in [page.path for page in Handbook(None, stations, DOCS).write_ups()]:
        text = (DOCS / path).read_text(encoding="utf-8")
        headings = "\n\n".join(
            line for line in place.outside_fences(text.splitlines()) if line.startswith("#")
        )
        md = Markdown(extensions=["toc", "attr_list"])
        html = md.convert(headings)
        assert [step.anchor for step in write_up(DOCS, path).steps] == re.findall(
            r'<h[1-3] id="([^"]+)"', html
        )
        found += 1
    assert found > 10


def test_write_ups_stand_in_the_order_of_the_navigation(handbook):
    heads = [page.path for page in handbook.write_ups("heads")]
    order = (DOCS.parent / "mkdocs.yml").read_text(encoding="utf-8")
    assert heads and heads == sorted(heads, key=order.index)
    every = [page.path for page in handbook.write_ups()]
    on_disk = [
        p.relative_to(DOCS).as_posix() for name in stations.STATIONS for p in (DOCS / name).glob("*.md")
    ]
    assert sorted(every) == sorted(path for path in on_disk if not path.endswith("index.md"))


def test_every_station_lists_its_write_ups_and_calculators(handbook):
    with place.page("docs/learn-a-job.md"):
        listed = dict(links(lists.write_ups(handbook)))
    assert set(listed.values()) == {f"{name}/index.md" for name in stations.STATIONS} | {
        page.path for page in handbook.write_ups()
    }
    with place.page("docs/check-a-number.md"):
        folds = lists.calculators(handbook)
    assert [fold.title for fold in folds] == [stations.station(name).TITLE for name in stations.STATIONS]
    assert [len(links(fold.content)) for fold in folds] == [
        len(stations.station(name).CALCULATORS) for name in stations.STATIONS
    ]


def test_calculators_are_folded_where_they_are_many(handbook, monkeypatch):
    monkeypatch.setattr(lists, "FEW", 1000)
    few = lists.calculators(handbook)
    monkeypatch.setattr(lists, "FEW", 10)
    assert all(fold.open for fold in few) and not any(fold.open for fold in lists.calculators(handbook))


def test_a_size_is_found_in_what_measures_it_and_in_what_speaks_of_it(handbook):
    with place.page("docs/index.md"):
        lines = lists.index(handbook).splitlines()
    about = [line for line in lines if re.search(r'data-sizes="[^"]*\bguide\.bore\b', line)]
    assert any("heads/guides.md#guide-fit" in line for line in about)
    stems = [line for line in lines if "valve.stem_exhaust" in line]
    assert any("guide-fit" in line for line in stems), "a field for any valve is one for both kinds"
    assert any('data-sizes="*"' in line and "#round-and-taper" in line for line in lines)
    assert "{" not in "".join(re.findall(r'data-sizes="([^"]*)"', "\n".join(lines)))


@pytest.mark.parametrize(
    ("here", "page", "address"),
    [
        ("docs/index.md", "limits/drawings.md", "limits/drawings/"),
        ("docs/limits/drawings.md", "index.md", "../../"),
        ("docs/heads/index.md", "index.md", "../"),
        ("docs/about.md", "heads/index.md", "../heads/"),
        ("", "limits/index.md", "limits/"),
    ],
)
def test_an_address_is_that_of_the_page_as_it_is_built(handbook, here, page, address):
    """Each page becomes a folder of its name, as MkDocs does by itself (use_directory_urls)."""
    with place.page(here):
        assert handbook.address(page) == address


def test_limits_are_folded_by_groups(handbook):
    book = SimpleNamespace(limits=lambda groups, sheet: [])
    folds = lists.limits(book, ["head", "crankcase"], "TS-16")
    assert [(fold.id, fold.title, fold.beside) for fold in folds] == [
        ("limits-head", "Head", "0 sizes"),
        ("limits-crankcase", "Crankcase", "0 sizes"),
    ]


def test_a_fold_holds_a_table_that_is_laid_out_by_row(tmp_path):
    from calc import page

    html = Markdown(extensions=["tables", SizebookExtension(Handbook(page, stations, tmp_path))]).convert(
        "/// limits | flywheel torque\n///\n"
    )
    assert html.count("<details") == html.count('class="limits table-box"') == 2
    assert 'id="limits-torque"' in html and "open=" not in html
    sizes = [id for id in engine("TS-16").features if id.startswith(("flywheel.", "torque."))]
    assert html.count('data-head="As made"') == len(sizes) > 5


def test_unknown_lists_are_refused(handbook):
    md = Markdown(extensions=[SizebookExtension(handbook)])
    with pytest.raises(place.MarkdownError, match="give write-ups, or nothing"):
        md.convert("/// stations | writeups\n///\n")
