"""All that the build changes in the theme's own files, each with its reason: no other place rewrites them.

The theme offers blocks to fill (`overrides/`). What they cannot do is changed here, after the pages are made.
A theme that is written otherwise stops the build: what is looked for must stand exactly where it is expected.
"""

from __future__ import annotations

import json
import re
from pathlib import Path
from typing import NamedTuple

from scripts import search


class OtherTheme(Exception):
    """The theme is another one than that which is changed; says where what was looked for."""


class Change(NamedTuple):
    """`old`, which stands once in one file, becomes `new`."""

    file: str  # as a pattern: the theme's names hold digests
    old: str
    new: str


SCRIPT = "assets/javascripts/bundle.*.min.js"
SEARCH = "assets/javascripts/workers/search.*.min.js"

# Text of the script: what is written short becomes what is meant.
SPELT = "".join(
    f"e=e.replace(/\\b{re.escape(short).replace('/', '[/]')}\\b/gi,{json.dumps(meant)});"
    for short, meant in search.short().items()
)

CHANGES = (
    # theme.mjs runs the script when the browser has long said that the page was read, and gives this sign
    # instead.
    Change(SCRIPT, 'document,"DOMContentLoaded",{once:!0}', 'document,"sizebook:read",{once:!0}'),
    # The script measures every heading again when an answer changes the page's height, and the answer's paint
    # would wait for that.
    Change(SCRIPT, "new ResizeObserver(", "new StillObserver("),
    # The search is fetched and its index made only once the reader reaches for it: the way of pages that are
    # opened as files becomes the way of all, the worker begins with its first message (theme.mjs), and words
    # are marked only on a page that a search has led to.
    Change(SCRIPT, 'location.protocol!=="file:"', "!1"),
    Change(SCRIPT, "new Worker(", "new LateWorker("),
    Change(
        SCRIPT,
        '("search.highlight")?',
        '("search.highlight")&&new URLSearchParams(location.search).has("h")?',
    ),
    # Where nothing is found, what was looked for is named: so a slip of the finger is seen.
    Change(SCRIPT, 'f.length?Me("search.result.none")', 'f.length?Me("search.result.none",f)'),
    Change(SEARCH, "search(e){if(e=e.replace(", f"search(e){{{SPELT}if(e=e.replace("),
    # The search's library (lunr) tells the nodes of its tree of words by a letter and the number of the node
    # behind it, without a mark between, so that letter 1 before node 23 reads like 1 before 2 and 3 before …:
    # where words hold digits, unlike nodes are then taken for one, words arise that no page has, and a search
    # that meets one of them finds nothing.
    Change(SEARCH, "e=e+s+o.id}return e", 'e=e+s+o.id+","}return e'),
)

NOTHING = "No matching documents"
NOTHING_HERE = (
    "Nothing here about “#”. What is known to be missing stands under About; or look through Check a number."
)
LESS = 0.85  # of what is not here: found by its own words, but behind what is here where they share one
DIALOG = 'data-md-component="search" role="dialog"'
RUN = re.compile(r'<script src="([^"]*assets/javascripts/bundle\.[^"]*)">')
TITLE = re.compile(
    r'<label class="md-nav__title" for="(__nav_[\d_]+)">\s*<span[^>]*></span>\s*(.*?)\s*</label>', re.DOTALL
)
# of a calculator; a second one on a page has a number behind its id
HEADING = re.compile(r"#((.+?)(?:-\d+)?)-title$")
NAMED_BY_TITLE = 'aria-labelledby="__nav_'


def change(folder: Path, wanted: dict[str, list[str]]) -> None:
    """Change the theme's files of a site that was just built.

    `wanted`: id of a calculator, or address of a page → the words that it is looked for by. OtherTheme where
    something is missing.
    """
    for one in CHANGES:
        change_file(folder, one)
    change_pages(folder)
    rank(folder, wanted)


def change_file(folder: Path, one: Change) -> None:
    files = sorted(folder.glob(one.file))
    if len(files) != 1:
        raise OtherTheme(f"There are {len(files)} files {one.file}, not one.")
    text = files[0].read_text(encoding="utf-8")
    files[0].write_text(_once(text, one.old, one.new, files[0].name), encoding="utf-8")


def change_pages(folder: Path) -> None:
    """Of each page name the search, name the navigation by what no width hides, hold the theme's script."""
    nested = 0
    for path in sorted(folder.rglob("*.html")):
        name = path.relative_to(folder).as_posix()
        html = path.read_text(encoding="utf-8")
        html = _once(html, DIALOG, f'{DIALOG} aria-label="Search"', name)
        html = _once(html, NOTHING, NOTHING_HERE, name)
        html = held(html, name)
        nested += html.count(NAMED_BY_TITLE)
        path.write_text(named(html, name), encoding="utf-8")
    if not nested:
        raise OtherTheme(f"No page holds “{NAMED_BY_TITLE}”, by which the parts of the navigation are named.")


def held(html: str, page: str) -> str:
    """The theme's script as data of no kind that a browser knows: theme.mjs runs it when it is its turn.

    It takes longer to begin than all else on a page.
    """
    html, found = RUN.subn(r'<script type="text/x-held" data-held src="\1">', html)
    if found != 1:
        raise OtherTheme(f"{page} holds {found} scripts “{RUN.pattern}”, not one.")
    return html


def named(html: str, page: str) -> str:
    """A station's pages in the navigation, named by their title itself: a wide screen hides their label."""
    for id, title in TITLE.findall(html):
        html = html.replace(f'aria-labelledby="{id}_label"', f'aria-label="{title}"')
    if NAMED_BY_TITLE in html:
        raise OtherTheme(f"{page}: “{TITLE.pattern}” misses a part of the navigation.")
    return html


def rank(folder: Path, wanted: dict[str, list[str]]) -> None:
    """Let the search put a calculator, or a page, above prose that uses the words that it is looked for by.

    They become tags, which the theme's search counts most.
    """
    path = folder / "search/search_index.json"
    index = json.loads(path.read_text(encoding="utf-8"))
    found = set()
    for entry in index["docs"]:
        at = entry["location"]
        heading = HEADING.search(at)
        names = (at, *heading.groups()) if heading else (at,)
        if id := next((id for id in names if id in wanted), ""):
            entry["tags"] = wanted[id]
            if id.startswith(search.NOT_HERE):
                entry["boost"] = LESS
            found.add(id)
    if missing := sorted(wanted.keys() - found):
        raise OtherTheme(f"The search's index has neither a heading “#{missing[0]}-title” nor such a page.")
    path.write_text(json.dumps(index, ensure_ascii=False, separators=(",", ":")), encoding="utf-8")


def _once(text: str, old: str, new: str, file: str) -> str:
    if (found := text.count(old)) != 1:
        raise OtherTheme(f"{file} holds “{old}” {found} times, not once.")
    return text.replace(old, new)
