"""Builds the pages with the theme makers' successor to MkDocs, from the same mkdocs.yml, and tells what
differs: `python3 scripts/successor.py`.

The theme's makers have announced its end. As long as this finds nothing in the articles, moving is a matter
of scripts/build.py, which then calls the successor, and scripts/theme.py, which changes files of the theme as
it is now.

Results stand in .cache/successor.json. Ends with 1 where a page is missing or its article differs.
"""

from __future__ import annotations

import json
import os
import re
import shutil
import subprocess
import sys
import tempfile
from html.parser import HTMLParser
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
if __name__ == "__main__":
    sys.path[0] = str(ROOT)  # run as a file, this folder stands first

from scripts import environment  # noqa: E402

RESULTS = environment.CACHE / "successor.json"

FOR_THE_SEARCH = ("data-search-exclude",)  # the successor takes it off once it has read it


class _Article(HTMLParser):
    """What stands in a page's article: tags with their attributes in order of name, and text without its
    white space."""

    def __init__(self):
        super().__init__()
        self.inside, self.found = 0, []

    def handle_starttag(self, tag, attrs):
        self.inside += tag == "article"
        if self.inside and not (tag == "a" and ("id", "__skip") in attrs):
            kept = (f" {name}={value!r}" for name, value in sorted(attrs) if name not in FOR_THE_SEARCH)
            self.found.append(f"<{tag}{''.join(kept)}>")

    def handle_endtag(self, tag):
        self.inside -= tag == "article"

    def handle_data(self, data):
        if self.inside and data.strip():
            self.found.append(" ".join(data.split()))


def article(html: str) -> list[str]:
    """The article's tags and texts, one after the other."""
    parser = _Article()
    parser.feed(html)
    return parser.found


def first_difference(ours: list[str], theirs: list[str]) -> tuple[str, str] | None:
    """The first tag or text in which two articles differ, "" where one has ended; None where they are
    alike."""
    for pair in zip(ours, theirs):
        if pair[0] != pair[1]:
            return pair
    if len(ours) == len(theirs):
        return None
    end = min(len(ours), len(theirs))
    return "".join(ours[end : end + 1]), "".join(theirs[end : end + 1])


def compare(ours: Path, theirs: Path) -> dict:
    """Pages that only one of two built sites has, first differences by page, and files that only one has (of
    the theme, in the main)."""
    pages, files = (
        [
            {path.relative_to(site).as_posix() for path in site.rglob(f"*{ending}") if path.is_file()}
            for site in (ours, theirs)
        ]
        for ending in (".html", "")
    )
    differences = {}
    for page in sorted(pages[0] & pages[1]):
        found = first_difference(
            *(article((site / page).read_text(encoding="utf-8")) for site in (ours, theirs))
        )
        if found:
            differences[page] = found
    return {
        "pages": len(pages[0]),
        "same": len(pages[0] & pages[1]) - len(differences),
        "missing": sorted(pages[0] - pages[1]),
        "more": sorted(pages[1] - pages[0]),
        "differences": differences,
        "only ours": _folders(files[0] - files[1]),
        "only theirs": _folders(files[1] - files[0]),
    }


def _folders(files: set[str]) -> dict[str, int]:
    """How many files a folder, the file itself at the top; the theme's names hold digests, which say
    nothing."""
    counts = {}
    for file in sorted(files):
        folder = re.sub(r"/[^/]+$", "/", file)
        counts[folder] = counts.get(folder, 0) + 1
    return counts


def build(folder: Path) -> Path:
    """The site as the successor makes it, in a copy of the sources."""
    from scripts.build import SOURCES  # not at the top: it needs what `main` installs

    for name in SOURCES:
        source = ROOT / name
        if source.is_dir():
            shutil.copytree(
                source, folder / name, ignore=shutil.ignore_patterns("__pycache__", "node_modules")
            )
        else:
            shutil.copy(source, folder / name)
    command = [sys.executable, "-m", "zensical", "build", "--strict", "--config-file", "mkdocs.yml"]
    done = subprocess.run(
        command, cwd=folder, env={**os.environ, "PYTHONPATH": str(folder)}, capture_output=True, text=True
    )
    if done.returncode or not (folder / "site/index.html").exists():
        sys.exit(f"The successor did not build the site:\n{done.stdout}{done.stderr}")
    return folder / "site"


def main() -> None:
    try:
        environment.enter("scripts.successor", "site", "successor")
    except environment.Missing as missing:
        sys.exit(str(missing))
    from importlib.metadata import version

    from scripts import build as with_mkdocs

    with_mkdocs.build()
    with tempfile.TemporaryDirectory(prefix="successor-", dir=environment.CACHE) as folder:
        told = {"successor": version("zensical"), **compare(with_mkdocs.SITE, build(Path(folder)))}
    environment.put(RESULTS, json.dumps(told, indent=1))
    print(
        f"Zensical {told['successor']}: {told['pages']} pages, the articles of {told['same']} the same,"
        f" {len(told['differences'])} differ, {len(told['missing'])} are missing."
    )
    for page in told["missing"]:
        print(f"  missing: {page}")
    for page, (ours, theirs) in told["differences"].items():
        print(f"  {page}: {ours[:100]!r} is {theirs[:100]!r} there")
    for side in ("only ours", "only theirs"):
        print(
            f"  {side}: "
            + ", ".join(
                f"{folder} ({count})" if folder.endswith("/") else folder
                for folder, count in told[side].items()
            )
        )
    sys.exit(bool(told["missing"] or told["differences"]))


if __name__ == "__main__":
    main()
