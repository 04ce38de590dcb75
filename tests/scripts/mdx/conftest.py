"""The handbook's own pages, converted as the build does it, with a word in place of each calculator."""

import xml.etree.ElementTree as etree
from pathlib import Path

import pytest
import yaml
from markdown import Markdown

from calc.stations import index as stations
from scripts.mdx import DOCS, SizebookExtension, place
from scripts.mdx.handbook import Handbook
from tests import markup

WORKED = "sources"  # these pages work every outside number anew and hold no prose


class Stub:
    """Stands in for `calc.page`: whatever is asked for, something stands there."""

    def __getattr__(self, _):
        return lambda *_: "<span>something</span>"


class Loader(yaml.SafeLoader):
    """Reads mkdocs.yml, whatever of MkDocs's own it names."""


Loader.add_multi_constructor("!", lambda *_: None)


def converter(handbook: Handbook) -> Markdown:
    """With the extensions that mkdocs.yml names."""
    named = yaml.load((DOCS.parent / "mkdocs.yml").read_text(), Loader)["markdown_extensions"]
    names, configs = [], {}
    for one in named:
        name, config = next(iter(one.items())) if isinstance(one, dict) else (one, {})
        names.append(SizebookExtension(handbook) if name == "scripts.mdx" else name)
        configs[name] = config
    return Markdown(extensions=["toc", *names], extension_configs=configs)


def convert(md: Markdown, path: Path) -> etree.Element:
    """A page's HTML, as a browser takes it."""
    with place.page(path.relative_to(DOCS.parent).as_posix()):
        html = md.reset().convert(path.read_text(encoding="utf-8").split("---\n", 2)[2])
    return markup.page(html).find("main")


@pytest.fixture(scope="session")
def pages() -> dict[str, etree.Element]:
    """Name of each page → its HTML."""
    md = converter(Handbook(Stub(), stations, DOCS))
    paths = (path for path in sorted(DOCS.rglob("*.md")) if path.parent.name != WORKED)
    return {path.relative_to(DOCS).as_posix(): convert(md, path) for path in paths}
