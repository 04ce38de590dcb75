"""Build the whole site: pages, calculators in them, and what the browser needs to run them.

    python -m scripts.build [--site-dir DIR] [--force]

Everything is made in a folder of its own, which takes the old site's place only when all went well.
"""

from __future__ import annotations

import argparse
import hashlib
import json
import logging
import re
import shutil
import sys
import tempfile
from html.parser import HTMLParser
from pathlib import Path

from scripts.comments import without_comments
from scripts.environment import CACHE, ROOT, Missing, one_at_a_time
from scripts.mdx.place import MarkdownError, page

SITE = ROOT / "site"
SOURCES = ("calc", "docs", "overrides", "scripts", "tests", "mkdocs.yml")  # tests: their checks are printed
BUILT_FROM = "built-from.txt"


class BuildFailed(Exception):
    """The site was not built; the message says why, and where."""


def build(site_dir: Path = SITE, force: bool = False) -> str:
    """Build the site unless it is up to date; returns the id of the build.

    The id is made from the sources, so the same sources always give the same one.
    """
    site_dir = Path(site_dir)
    CACHE.mkdir(exist_ok=True)
    with one_at_a_time(CACHE / "build.lock"):
        build_id = sources_digest()
        if force or built_from(site_dir) != build_id:
            _build_anew(site_dir, build_id)
    return build_id


def _build_anew(site_dir: Path, build_id: str) -> None:
    with tempfile.TemporaryDirectory(prefix="site-", dir=CACHE) as work:
        fresh = Path(work) / "fresh"
        _pages(fresh)
        check_pages(fresh)
        name_parts(fresh)
        rank_calculators(fresh, _wanted_words())
        mend_search(fresh)
        leave_out_comments(fresh)
        _runtime(fresh)
        (fresh / BUILT_FROM).write_text(build_id)
        if site_dir.exists():
            site_dir.rename(Path(work) / "old")
        site_dir.parent.mkdir(parents=True, exist_ok=True)
        shutil.move(fresh, site_dir)


def sources_digest() -> str:
    """A short digest of every file that the site is made from."""
    digest = hashlib.sha256()
    for name in SOURCES:
        top = ROOT / name
        for path in sorted(top.rglob("*")) if top.is_dir() else [top]:
            if path.is_file() and not any(part in ("__pycache__", "node_modules") for part in path.parts):
                digest.update(f"{path.relative_to(ROOT).as_posix()}\0".encode())
                digest.update(hashlib.sha256(path.read_bytes()).digest())
    return digest.hexdigest()[:12]


def built_from(site_dir: Path) -> str:
    """The id of the build that stands in a folder, empty where there is none."""
    try:
        return (site_dir / BUILT_FROM).read_text()
    except OSError:
        return ""


def _pages(fresh: Path) -> None:
    from mkdocs.commands.build import build as mkdocs_build
    from mkdocs.config import load_config
    from mkdocs.exceptions import Abort, MkDocsException

    log = logging.getLogger("mkdocs")
    if not log.handlers:
        handler = logging.StreamHandler()
        handler.setFormatter(logging.Formatter("%(levelname)s: %(message)s"))
        log.addHandler(handler)
    log.setLevel(logging.WARNING)
    try:
        with page(""):  # the last page's name does not outlive the build
            mkdocs_build(load_config(str(ROOT / "mkdocs.yml"), site_dir=str(fresh), strict=True))
    except MarkdownError as error:
        raise BuildFailed(str(error)) from error
    except (Abort, MkDocsException) as error:
        raise BuildFailed(f"MkDocs stopped, see its warnings above ({error}).") from error


# --- what strict mode lets pass ---------------------------------------------

LEFTOVER = re.compile(r"^\s*/{3,}.*|\{(?:size|result|quantity|caution|handbook):[^}]*\}?", re.MULTILINE)


class _Text(HTMLParser):
    """Collects a page's text that is not code, script or style."""

    QUIET = {"code", "pre", "script", "style", "textarea"}

    def __init__(self):
        super().__init__()
        self.quiet, self.found = 0, []

    def handle_starttag(self, tag, attrs):
        self.quiet += tag in self.QUIET

    def handle_endtag(self, tag):
        self.quiet -= tag in self.QUIET and self.quiet > 0

    def handle_data(self, data):
        if not self.quiet:
            self.found += LEFTOVER.findall(data)


def check_pages(folder: Path) -> None:
    """Fail where a block or an inline form was left on a page as text, which MkDocs does not mind."""
    for path in sorted(folder.rglob("*.html")):
        text = _Text()
        text.feed(path.read_text(encoding="utf-8"))
        if text.found:
            raise BuildFailed(
                f"{path.relative_to(folder)}: “{text.found[0].strip()[:80]}” was left as text; it is misspelt"
                " or not closed."
            )


def name_parts(folder: Path) -> None:
    """Give names to the parts of a page that the theme leaves without one, or names by a label that is hidden at that width."""
    for path in folder.rglob("*.html"):
        html = path.read_text(encoding="utf-8")
        html = html.replace(
            'data-md-component="search" role="dialog"',
            'data-md-component="search" role="dialog" aria-label="Search"',
        )
        for id, title in re.findall(
            r'<label class="md-nav__title" for="(__nav_[\d_]+)">\s*<span[^>]*></span>\s*(.*?)\s*</label>',
            html,
            re.DOTALL,
        ):
            html = html.replace(f'aria-labelledby="{id}_label"', f'aria-label="{title}"')
        path.write_text(html, encoding="utf-8")


AMBIGUOUS, PARTED = "e=e+s+o.id}return e", 'e=e+s+o.id+","}return e'


def _wanted_words() -> dict[str, list[str]]:
    """What each calculator is looked for by, by its id."""
    from calc.stations import index as stations

    return {id: [stations.find(id).title, *stations.find(id).finds] for id in stations.ids()}


def rank_calculators(folder: Path, wanted: dict[str, list[str]]) -> None:
    """Let the search put a calculator above the pages and the prose that use the words that it is looked for by: as tags, which
    the theme's search counts most."""
    path = folder / "search/search_index.json"
    index = json.loads(path.read_text(encoding="utf-8"))
    for entry in index["docs"]:
        heading = re.search(r"#(.+?)(-\d+)?-title$", entry["location"])
        if heading and heading[1] in wanted:
            entry["tags"] = wanted[heading[1]]
    path.write_text(json.dumps(index, ensure_ascii=False, separators=(",", ":")), encoding="utf-8")


def mend_search(folder: Path) -> None:
    """Part what the search's library (lunr) tells the nodes of its tree of words by: a letter and the number of the node behind it.

    It writes them without a mark between, so that letter 1 before node 23 reads like 1 before 2 and 3 before …: where words hold
    digits, unlike nodes are then taken for one, words arise that no page has, and a search that meets one of them finds nothing.
    """
    workers = list(folder.glob("assets/javascripts/workers/search.*.min.js"))
    found = [
        (path, text) for path in workers if (text := path.read_text(encoding="utf-8")).count(AMBIGUOUS) == 1
    ]
    if len(found) != 1:
        raise BuildFailed(
            f"The search of the theme is another one than that which is mended: “{AMBIGUOUS}” is not in it"
            " exactly once."
        )
    path, text = found[0]
    path.write_text(text.replace(AMBIGUOUS, PARTED), encoding="utf-8")


def leave_out_comments(folder: Path) -> None:
    """From the pages' own scripts; what is others' work comes later and keeps its licence."""
    for path in (folder / "assets/js").glob("*.mjs"):
        path.write_text(without_comments(path.read_text(encoding="utf-8")), encoding="utf-8")


def _runtime(fresh: Path) -> None:
    """What the pages need to calculate in the browser and to work offline; the worker for that comes last, as it holds every file's digest."""
    from calc.job import codes
    from scripts.runtime import bundle, offline, split, stamp

    try:
        runtime_id = bundle.build(fresh, CACHE)
        stamp.stamp(fresh, runtime_id, codes.address_in((ROOT / "mkdocs.yml").read_text(encoding="utf-8")))
        offline.write(fresh, runtime_id)
    except (bundle.BundleError, split.SplitError, stamp.StampError, Missing, OSError) as error:
        raise BuildFailed(str(error)) from error


def main() -> None:
    parser = argparse.ArgumentParser(prog="python -m scripts.build", description=__doc__.splitlines()[0])
    parser.add_argument("--site-dir", type=Path, default=SITE)
    parser.add_argument("--force", action="store_true", help="build even if nothing changed")
    chosen = parser.parse_args()
    try:
        print(f"Built {chosen.site_dir}, build {build(chosen.site_dir, chosen.force)}.")
    except BuildFailed as error:
        sys.exit(f"Not built. {error}")


if __name__ == "__main__":
    main()
