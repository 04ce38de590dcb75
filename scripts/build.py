"""Build the whole site: pages, calculators in them, and what the browser needs to run them.

    python -m scripts.build [--site-dir DIR] [--force] [--strict]

Everything is made in a folder of its own, which takes the old site's place only when all went well. Where
Python's memory cannot be made, as after a change of the runtime's own program, the site is built without:
browsers then start from bytecode, which takes them longer. The build says so, and so does built-from.txt;
with `--strict` it fails.
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

from scripts import search, theme
from scripts.comments import without_comments
from scripts.environment import CACHE, ROOT, Missing, one_at_a_time
from scripts.mdx.place import MarkdownError, page

SITE = ROOT / "site"
SOURCES = ("calc", "docs", "overrides", "scripts", "tests", "mkdocs.yml")  # tests: their checks are printed
BUILT_FROM = "built-from.txt"
NO_MEMORY, DRAFT = "(browsers start from bytecode: Python's memory is missing)", "(a draft)"


class BuildFailed(Exception):
    """The site was not built; the message says why, and where."""


def build(site_dir: Path = SITE, force: bool = False, strict: bool = False, draft: bool = False) -> str:
    """Build the site unless it is up to date; returns the id of the build.

    The id is made from the sources, so the same sources always give the same one. `strict` refuses a build
    without Python's memory. A `draft` is made at once, for whoever edits: from sources, with no outside
    numbers worked.
    """
    site_dir = Path(site_dir)
    CACHE.mkdir(exist_ok=True)
    with one_at_a_time(CACHE / "build.lock"):
        build_id = sources_digest()
        there, lacks = built_from(site_dir).partition(" ")[::2]
        if force or there != build_id or (strict and lacks) or (lacks == DRAFT and not draft):
            _build_anew(site_dir, build_id, strict, draft)
    return build_id


def _build_anew(site_dir: Path, build_id: str, strict: bool, draft: bool) -> None:
    for left in CACHE.glob("site-*"):  # by a build that was ended
        shutil.rmtree(left, ignore_errors=True)
    with tempfile.TemporaryDirectory(prefix="site-", dir=CACHE) as work:
        fresh = Path(work) / "fresh"
        _pages(fresh, draft)
        check_pages(fresh)
        _theme(fresh)
        leave_out_comments(fresh)
        lacks = _runtime(fresh, strict, draft)
        (fresh / BUILT_FROM).write_text(f"{build_id} {lacks}".strip())
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
    """The id of the build that stands in a folder, and what it lacks; empty where there is none."""
    try:
        return (site_dir / BUILT_FROM).read_text()
    except OSError:
        return ""


def _pages(fresh: Path, draft: bool = False) -> None:
    from mkdocs.commands.build import build as mkdocs_build
    from mkdocs.config import load_config
    from mkdocs.exceptions import Abort, MkDocsException

    from scripts.mdx import checks

    log = logging.getLogger("mkdocs")
    if not log.handlers:
        handler = logging.StreamHandler()
        handler.setFormatter(logging.Formatter("%(levelname)s: %(message)s"))
        log.addHandler(handler)
    log.setLevel(logging.WARNING)
    checks.work_rows = not draft
    try:
        with page(""):  # the last page's name does not outlive the build
            mkdocs_build(load_config(str(ROOT / "mkdocs.yml"), site_dir=str(fresh), strict=True))
    except MarkdownError as error:
        raise BuildFailed(str(error)) from error
    except (Abort, MkDocsException) as error:
        raise BuildFailed(f"MkDocs stopped, see its warnings above ({error}).") from error


# --- what strict mode lets pass ---------------------------------------------

LEFTOVER = re.compile(r"^\s*/{3,}.*|\{(?:size|result|quantity|caution|handbook):[^}]*\}?", re.MULTILINE)

SUSPECT = re.compile(r"///|\{(?:size|result|quantity|caution|handbook):")  # else the page need not be parsed


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
        html = path.read_text(encoding="utf-8")
        if not SUSPECT.search(html):
            continue
        text = _Text()
        text.feed(html)
        if text.found:
            raise BuildFailed(
                f"{path.relative_to(folder)}: “{text.found[0].strip()[:80]}” was left as text; it is misspelt"
                " or not closed."
            )


def _theme(folder: Path) -> None:
    from calc.stations import index as stations

    wanted = {one.id: [one.title, *one.finds] for one in stations.every()}
    for id, words in search.found().items():
        wanted[id] = [*wanted.get(id, ()), *words]
    try:
        theme.change(folder, wanted)
    except theme.OtherTheme as error:
        raise BuildFailed(
            f"The theme is another one than that which scripts/theme.py changes. {error}"
        ) from error


def leave_out_comments(folder: Path) -> None:
    """From the pages' own scripts; what is others' work comes later and keeps its licence."""
    for path in (folder / "assets/js").glob("*.mjs"):
        path.write_text(without_comments(path.read_text(encoding="utf-8")), encoding="utf-8")


def _runtime(fresh: Path, strict: bool, draft: bool) -> str:
    """What the pages need to calculate in the browser and to work offline; the worker for that comes last, as
    it holds every file's digest. Returns what is missing, "" where nothing is."""
    from calc.job import codes
    from calc.stations import index
    from scripts.runtime import bundle, offline, split, stamp

    start = bundle.SOURCE if draft else bundle.MEMORY
    try:
        try:
            runtime_id = bundle.build(fresh, CACHE, start=start)
        except (bundle.BundleError, split.SplitError) as error:
            if strict or draft:
                raise
            start = bundle.BYTECODE
            runtime_id = bundle.build(fresh, CACHE, start=start)
            print(
                f"WARNING: built without Python's memory, so calculators start more slowly. {error}",
                file=sys.stderr,
            )
        stations = {id: name for name in index.STATIONS for id in index.station(name).CALCULATORS}
        runtime_id += f"-{scripts_digest(fresh)}"
        address = codes.address_in((ROOT / "mkdocs.yml").read_text(encoding="utf-8"))
        stamp.stamp(fresh, runtime_id, address, stations, start)
        offline.write(fresh, runtime_id)
    except (bundle.BundleError, split.SplitError, stamp.StampError, Missing, OSError) as error:
        raise BuildFailed(str(error)) from error
    return {bundle.MEMORY: "", bundle.BYTECODE: NO_MEMORY, bundle.SOURCE: DRAFT}[start]


def scripts_digest(site_dir: Path) -> str:
    """A short digest of the pages' scripts: a Python that outlives its page serves pages of the same ones."""
    digest = hashlib.sha256()
    for path in sorted((site_dir / "assets/js").iterdir()):
        digest.update(path.read_bytes())
    return digest.hexdigest()[:8]


def _costs(site_dir: Path) -> str:
    """What a calculator costs whoever opens a page, as a table."""
    from scripts.runtime import bundle, costs

    (parts,) = (site_dir / "runtime").glob(f"*/{bundle.STATIONS}")
    memory = parts.with_name("memory.wasm")
    lines = [costs.table(costs.costs(parts, ROOT)), *([costs.told(memory)] if memory.exists() else [])]
    return "\n".join(lines)


def main() -> None:
    parser = argparse.ArgumentParser(prog="python -m scripts.build", description=__doc__.splitlines()[0])
    parser.add_argument("--site-dir", type=Path, default=SITE)
    parser.add_argument("--force", action="store_true", help="build even if nothing changed")
    parser.add_argument("--strict", action="store_true", help="fail where Python's memory cannot be made")
    parser.add_argument(
        "--draft", action="store_true", help="at once, from sources: what serve.py --watch shows"
    )
    chosen = parser.parse_args()
    try:
        before = built_from(chosen.site_dir)
        build_id = build(chosen.site_dir, chosen.force, chosen.strict, chosen.draft)
        print(f"Built {chosen.site_dir}, build {build_id}.")
        if not chosen.draft and (chosen.force or built_from(chosen.site_dir) != before):
            print(_costs(chosen.site_dir))
    except BuildFailed as error:
        sys.exit(f"Not built. {error}")


if __name__ == "__main__":
    main()
