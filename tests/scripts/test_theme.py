"""What the build changes in the theme: all of it is found in the theme that is installed, and another one is refused."""

import json
import shutil
from pathlib import Path

import material
import pytest

from scripts import theme
from scripts.theme import CHANGES, OtherTheme

FILES = Path(material.__file__).parent / "templates"
PAGE = """<div data-md-component="search" role="dialog"></div>
<nav aria-labelledby="__nav_2_label"><label class="md-nav__title" for="__nav_2">
  <span class="md-nav__icon md-icon"></span>
  Heads
</label></nav>
<script id="__config" type="application/json">{"search.result.none": "No matching documents"}</script>
<script src="../assets/javascripts/bundle.0a1b2c3d.min.js"></script>"""
WANTED = {"seat-fit": ["Seat ring fit", "press fit"]}


@pytest.fixture
def site(tmp_path):
    """A site of one page with the installed theme's scripts."""
    for pattern in {change.file for change in CHANGES}:
        for path in FILES.glob(pattern):
            target = tmp_path / path.relative_to(FILES)
            target.parent.mkdir(parents=True, exist_ok=True)
            shutil.copy(path, target)
    (tmp_path / "index.html").write_text(PAGE)
    _index(tmp_path, "heads/#seat-fit-title")
    return tmp_path


def _index(folder, *locations):
    (folder / "search").mkdir(exist_ok=True)
    docs = [{"location": at, "title": "T", "text": "t"} for at in locations]
    (folder / "search/search_index.json").write_text(json.dumps({"config": {"lang": ["en"]}, "docs": docs}))


def test_the_installed_theme_is_changed_wherever_it_is_to_be(site):
    expected = {path: path.read_text(encoding="utf-8") for path in site.rglob("*.js")}
    for change in CHANGES:
        (path,) = site.glob(change.file)
        expected[path] = expected[path].replace(change.old, change.new)
    theme.change(site, WANTED)
    assert {path: path.read_text(encoding="utf-8") for path in expected} == expected
    html = (site / "index.html").read_text()
    assert 'role="dialog" aria-label="Search"' in html
    assert '<nav aria-label="Heads">' in html
    assert (
        '<script type="text/x-held" data-held src="../assets/javascripts/bundle.0a1b2c3d.min.js"></script>'
        in html
    )


@pytest.mark.parametrize("change", CHANGES, ids=lambda change: change.old[:20])
@pytest.mark.parametrize("times", [0, 2])
def test_a_script_that_is_written_otherwise_is_refused(change, times, site):
    (path,) = site.glob(change.file)
    text = path.read_text(encoding="utf-8")
    path.write_text(text.replace(change.old, change.old * times), encoding="utf-8")
    with pytest.raises(OtherTheme) as refused:
        theme.change(site, WANTED)
    assert str(refused.value) == f"{path.name} holds “{change.old}” {times} times, not once."


def test_a_script_of_another_name_is_refused(site):
    (path,) = site.glob(theme.SCRIPT)
    path.rename(path.with_name("main.js"))
    with pytest.raises(OtherTheme, match="There are 0 files"):
        theme.change(site, WANTED)


@pytest.mark.parametrize(
    ("old", "new", "said"),
    [
        ('role="dialog"', 'role="search"', "index.html holds “data-md-component=.* 0 times"),
        ("bundle.", "main.", "index.html holds 0 scripts"),
        ("<script src", '<script src="bundle/"></script><script async src', "index.html holds 0 scripts"),
        ("md-nav__title", "md-nav__heading", "index.html: .* misses a part of the navigation"),
        ("__nav_2_label", "nav-2", "No page holds “aria-labelledby"),
    ],
)
def test_a_page_that_is_written_otherwise_is_refused(old, new, said, site):
    (site / "index.html").write_text(PAGE.replace(old, new))
    with pytest.raises(OtherTheme, match=said):
        theme.change(site, WANTED)


def test_the_search_puts_a_calculator_above_the_prose(tmp_path):
    wanted = {**WANTED, "size-at-20": ["Size at 20 °C"], "job/sheet/": ["size sheet"]}
    _index(
        tmp_path,
        "heads/",
        "heads/#seat-fit-title",
        "heads/#seat-fit-2-title",
        "heads/#seat-fit",
        "heads/#the-title",
        "job/sheet/",
        "job/sheet/#the-sheet",
        "measuring/#size-at-20-title",  # its name ends as that of a second one would
    )
    theme.rank(tmp_path, wanted)
    index = json.loads((tmp_path / "search/search_index.json").read_text(encoding="utf-8"))
    assert index["config"] == {"lang": ["en"]}
    assert [entry.get("tags") for entry in index["docs"]] == [
        None,
        *(["Seat ring fit", "press fit"],) * 2,
        None,
        None,
        ["size sheet"],
        None,
        ["Size at 20 °C"],
    ]


def test_a_calculator_that_the_search_would_not_find_is_refused(site):
    _index(site, "heads/#seat-fit-heading")
    with pytest.raises(OtherTheme, match="neither a heading “#seat-fit-title”"):
        theme.change(site, WANTED)
