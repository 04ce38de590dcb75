"""Pages as the theme makers' successor makes them: with its own name for the page in work, and every link moved as one of the source."""

from types import SimpleNamespace

import pytest
from markdown import Extension, Markdown
from markdown.preprocessors import Preprocessor

import scripts.mdx
from scripts.mdx import SizebookExtension, place, zensical
from scripts.mdx.handbook import Handbook


class Context(Extension):
    """Registers what the successor registers: a preprocessor that holds the page."""

    def __init__(self, path):
        super().__init__()
        self.path = path

    def extendMarkdown(self, md):
        held = Preprocessor(md)
        held.page = SimpleNamespace(path=self.path)
        held.run = lambda lines: lines
        md.preprocessors.register(held, zensical.CONTEXT, 0)


HTML = '<div><link href="../../assets/job.css"><a href="../">Jobs</a><a href="#here">here</a><p title=\'="../\'>up</p></div>'
PAGE = SimpleNamespace(job_html=lambda view: HTML)
STATIONS = SimpleNamespace(
    STATIONS=("heads",),
    station=lambda name: SimpleNamespace(CALCULATORS=["grip"]),
    find=lambda id: SimpleNamespace(id=id, title="Grip", purpose="Holds.", finds=()),
)


@pytest.fixture
def convert(tmp_path, monkeypatch):
    docs = tmp_path / "docs"
    monkeypatch.setattr(scripts.mdx, "DOCS", docs)
    (docs / "heads").mkdir(parents=True)
    (docs / "heads/seats.md").write_text("/// calculator | grip\n///\n")
    handbook = Handbook(PAGE, STATIONS, docs)

    def convert(path, markdown, maker=True):
        (docs / path).write_text(f"---\ntitle: Any\n---\n{markdown}")
        extensions = [Context(path)] if maker else []
        with place.page(""):
            return Markdown(extensions=[*extensions, SizebookExtension(handbook)]).convert(markdown)

    return convert


def test_a_station_links_from_its_own_page(convert):
    assert 'href="seats.md#grip"' in convert("heads/index.md", "/// station | heads\n///")
    assert 'href="heads/seats.md#grip"' in convert("index.md", "/// station | heads\n///")


def test_a_mistake_is_told_with_the_line_of_the_file(convert):
    with pytest.raises(
        place.MarkdownError, match=r"^docs/heads/index.md:6: /// station: .*did you mean heads"
    ):
        convert("heads/index.md", "# Heads\n\n/// station | haeds\n///")


def test_html_links_from_the_source_where_the_page_stands_a_folder_below_it(convert):
    moved = HTML.replace("../../assets", "../assets").replace('href="../"', 'href="index.md"')
    assert convert("heads/job.md", "/// job | sheet\n///") == moved
    assert convert("heads/index.md", "/// job | sheet\n///") == HTML
    assert convert("heads/job.md", "/// job | sheet\n///", maker=False) == HTML


def test_a_picture_is_the_same_whoever_makes_the_page(convert):
    block = "/// drawing | bore-gauge-rocked\n    engine: RC-40\n///"
    assert "<svg" in convert("heads/job.md", block) == convert("heads/job.md", block, maker=False)
