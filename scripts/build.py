"""Build the whole site: pages, calculators in them, and what the browser needs to run them.

    python -m scripts.build [--site-dir DIR] [--force]

Everything is made in a folder of its own, which takes the old site's place only when all went well.
"""

from __future__ import annotations

import argparse
import hashlib
import logging
import re
import shutil
import sys
import tempfile
from html.parser import HTMLParser
from pathlib import Path
from typing import ClassVar

from scripts import theme
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
        _theme(fresh)
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

    QUIET: ClassVar = {"code", "pre", "script", "style", "textarea"}

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


def _theme(folder: Path) -> None:
    from calc.stations import index as stations

    found = {id: stations.find(id) for id in stations.ids()}
    try:
        theme.change(folder, {id: [one.title, *one.finds] for id, one in found.items()})
    except theme.OtherTheme as error:
        raise BuildFailed(
            f"The theme is another one than that which scripts/theme.py changes. {error}"
        ) from error


def leave_out_comments(folder: Path) -> None:
    """From the pages' own scripts; what is others' work comes later and keeps its licence."""
    for path in (folder / "assets/js").glob("*.mjs"):
        path.write_text(without_comments(path.read_text(encoding="utf-8")), encoding="utf-8")


def _runtime(fresh: Path) -> None:
    """What the pages need to calculate in the browser and to work offline; the worker for that comes last, as
    it holds every file's digest."""
    from calc.job import codes
    from calc.stations import index
    from scripts.runtime import bundle, offline, split, stamp

    try:
        runtime_id = bundle.build(fresh, CACHE)
        stations = {id: name for name in index.STATIONS for id in index.station(name).CALCULATORS}
        address = codes.address_in((ROOT / "mkdocs.yml").read_text(encoding="utf-8"))
        stamp.stamp(fresh, runtime_id, address, stations)
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
