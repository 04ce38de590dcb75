"""What the comparison of two built sites tells."""

import pytest

from scripts import successor

PAGE = "<html><body><nav>{nav}</nav><article>{article}</article></body></html>"


@pytest.fixture
def sites(tmp_path):
    def write(name, pages, files=()):
        for path, html in pages.items():
            target = tmp_path / name / path
            target.parent.mkdir(parents=True, exist_ok=True)
            target.write_text(html)
        for path in files:
            (tmp_path / name / path).parent.mkdir(parents=True, exist_ok=True)
            (tmp_path / name / path).write_text("")
        return tmp_path / name

    return write


def test_articles_alike_but_for_white_space_order_and_the_theme_are_alike(sites):
    ours = sites(
        "ours",
        {"a/index.html": PAGE.format(nav="one", article='<h1 id="x" class="y">A\n  size</h1>')},
        ["assets/theme/1.css", "sw.js"],
    )
    theirs = sites(
        "theirs",
        {
            "a/index.html": PAGE.format(
                nav="two", article='<a id="__skip"></a><h1 class="y" id="x">A size</h1>'
            )
        },
        ["assets/theme/2.css", "assets/theme/3.css"],
    )
    assert successor.compare(ours, theirs) == {
        "pages": 1,
        "same": 1,
        "missing": [],
        "more": [],
        "differences": {},
        "only ours": {"assets/theme/": 1, "sw.js": 1},
        "only theirs": {"assets/theme/": 2},
    }


@pytest.mark.parametrize(
    ("theirs", "first"),
    [
        ("<h1>A size</h1><p>37.5 mm</p>", ("37.6 mm", "37.5 mm")),
        ("<h1>A size</h1>", ("<p>", "")),
        ("<h1>A size</h1><p>37.6 mm</p>/// caution", ("", "/// caution")),
        ("<h1 class='z'>A size</h1><p>37.6 mm</p>", ("<h1>", "<h1 class='z'>")),
    ],
)
def test_the_first_difference_is_told(theirs, first):
    ours = successor.article(PAGE.format(nav="", article="<h1>A size</h1><p>37.6 mm</p>"))
    assert successor.first_difference(ours, successor.article(PAGE.format(nav="", article=theirs))) == first


def test_a_page_that_one_lacks_is_told(sites):
    told = successor.compare(
        sites("ours", {"a/index.html": PAGE, "b/index.html": PAGE}),
        sites("theirs", {"a/index.html": PAGE, "c/index.html": PAGE}),
    )
    assert (told["missing"], told["more"]) == (["b/index.html"], ["c/index.html"])
