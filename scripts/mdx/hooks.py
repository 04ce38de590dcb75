"""The one thing that only a MkDocs hook can do: tell the Markdown extension which page is being converted."""

from pathlib import Path

from scripts.mdx import place

ROOT = Path(__file__).resolve().parents[2]


def on_page_markdown(markdown, page, **_):
    source = Path(page.file.abs_src_path)
    text = source.read_text(encoding="utf-8-sig")
    start = text.find(markdown)  # MkDocs has cut off the front matter
    place.enter_page(str(source.relative_to(ROOT)), text.count("\n", 0, max(start, 0)))
