"""Writes the service worker that keeps the whole site on the reader's device (`sw.js`, its source).

It must be written last: it holds the digest of every other file.
"""

from __future__ import annotations

import base64
import hashlib
import json
from pathlib import Path
from urllib.parse import quote

from scripts.comments import without_comments
from scripts.runtime import headers

SOURCE = Path(__file__).with_name("sw.js")
WORKER = "sw.js"
# Not asked for by any page: for search engines, developers and languages that the site has not got.
LEFT_OUT = (
    "sitemap.xml",
    "sitemap.xml.gz",
    "robots.txt",
    "built-from.txt",
    "assets/javascripts/lunr/",
    *headers.FILES,
)
LEFT_OUT_SUFFIXES = (".map", ".br", ".gz")


def write(site_dir: Path, build_id: str) -> None:
    """Write `site_dir`/sw.js for the files that stand there."""
    held = files(site_dir)
    python, calc, *_ = build_id.split("-")
    for needed in ("index.html", f"runtime/{python}/pyodide.asm.mjs", f"runtime/{calc}/calc.zip"):
        if needed not in held:
            raise FileNotFoundError(f"{needed} is not in {site_dir}: the site would not work offline.")
    listing = json.dumps(held, indent=0, sort_keys=True)
    build = f"{build_id}-{hashlib.sha256(listing.encode()).hexdigest()[:12]}"
    worker = without_comments(SOURCE.read_text(encoding="utf-8"))
    for blank, filled in (
        ('const BUILD = "";', f'const BUILD = "{build}";'),
        ("const FILES = {};", f"const FILES = {listing};"),
    ):
        if worker.count(blank) != 1:
            raise ValueError(f"{SOURCE.name} must hold “{blank}” exactly once.")
        worker = worker.replace(blank, filled)
    (site_dir / WORKER).write_text(worker, encoding="utf-8")


def files(site_dir: Path) -> dict[str, str]:
    """What is kept offline: path in an address → integrity, as browsers check it."""
    return {
        quote(name): integrity(path.read_bytes())
        for path in sorted(site_dir.rglob("*"))
        if path.is_file() and not _is_left_out(name := path.relative_to(site_dir).as_posix())
    }


def integrity(content: bytes) -> str:
    """Subresource Integrity, W3C: the algorithm and the digest in base 64."""
    return "sha256-" + base64.b64encode(hashlib.sha256(content).digest()).decode()


def _is_left_out(name: str) -> bool:
    return name == WORKER or name.startswith(LEFT_OUT) or name.endswith(LEFT_OUT_SUFFIXES)
