"""What only MkDocs hooks can do: check the data sheets that mkdocs.yml names, and tell the Markdown extension
which page is being converted."""

from pathlib import Path

from mkdocs.exceptions import PluginError

from calc.reference import engine
from scripts.mdx import place

ROOT = Path(__file__).resolve().parents[2]


def on_config(config, **_):
    for name in config.extra.get("engines", ()):
        try:
            engine.engine(name)
        except (engine.SheetError, KeyError) as error:
            raise PluginError(f"mkdocs.yml, extra.engines: {error.args[0]}") from error


def on_page_markdown(markdown, page, **_):
    place.enter_source(Path(page.file.abs_src_path), ROOT, markdown)
