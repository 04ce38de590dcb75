"""Writes into every page of the built site which build it is, and what it may run.

The policy (Content-Security-Policy, W3C CSP Level 3) stands in the pages themselves, so that it holds on any
static host; what only a header can say, and a worker's own policy, is for the host (headers.py). Scripts come
from the site only; the theme's few inline scripts are allowed by the digest of their text. Styles may be
inline: the theme sets style attributes on elements, which cannot be allowed one by one. `wasm-unsafe-eval`
allows WebAssembly, and nothing else that its name suggests.
"""

from __future__ import annotations

import re
from html import escape
from html.parser import HTMLParser
from pathlib import Path

from scripts.runtime import headers
from scripts.runtime.offline import integrity

# A script of another type is data, which the policy does not touch (HTML, "prepare the script element").
SCRIPTS = re.compile(r"<script\b.*?</script[^>]*>", re.DOTALL | re.IGNORECASE)
RUN = {"", "module", "text/javascript", "application/javascript", "text/ecmascript", "application/ecmascript"}


class StampError(Exception):
    """A page that cannot be stamped; names it."""


def stamp(
    site_dir: Path,
    build_id: str,
    address: str = "",
    stations: dict[str, str] | None = None,
    start: str = "memory",
) -> None:
    """Write build id, site root, policy and the shop's own address into every page under `site_dir`, and the
    policy for hosts beside them. `stations` names each calculator's, by its id; `start` is what Python
    is started from."""
    pages = {path: path.read_text(encoding="utf-8") for path in sorted(site_dir.rglob("*.html"))}
    # One policy for all: a theme that swaps pages keeps the policy of the first and runs the scripts of the
    # next.
    policy = policy_for(pages.values())
    for path, html in pages.items():
        above = len(path.relative_to(site_dir).parts) - 1
        path.write_text(
            stamped(html, build_id, "../" * above or "./", policy, path, address, stations or {}, start),
            encoding="utf-8",
        )
    headers.write(site_dir, policy)


def stamped(
    html: str,
    build_id: str,
    root: str,
    policy: str,
    page: Path,
    address: str,
    stations: dict[str, str],
    start: str = "memory",
) -> str:
    """One page with its metas: as the first things in the head, since a policy holds for what follows it.

    A page with calculators says so there, and of which stations, for a script that runs before they are read.
    `address` is where others open the handbook, where the shop has set it.
    """
    metas = "".join(
        (
            f'<meta http-equiv="Content-Security-Policy" content="{policy}">',
            f'<meta name="sizebook-build" content="{build_id}">',
            f'<meta name="sizebook-start" content="{start}">' if start != "memory" else "",
            f'<meta name="sizebook-root" content="{root}">',
            f'<meta name="sizebook-address" content="{escape(address)}">' if address else "",
            (
                f'<meta name="sizebook-live" content="{" ".join(stations_on(html, stations))}">'
                if "<live-calculator" in html or "<job-view" in html
                else ""
            ),
        )
    )
    done, heads = re.subn(
        r"<head(\s[^>]*)?>(\s*<meta charset=[^>]*>)?",
        lambda head: head[0] + metas,
        html,
        count=1,
        flags=re.IGNORECASE,
    )
    if not heads:
        raise StampError(f"{page} has no <head>.")
    return done


def stations_on(html: str, stations: dict[str, str]) -> list[str]:
    """The stations whose calculators a page holds, in order of their names."""
    return sorted(
        {stations[id] for id in re.findall(r'<live-calculator [^>]*data-calculator="([^"]+)"', html)}
    )


def policy_for(pages) -> str:
    """The policy that lets every inline script of these pages run, and no other."""
    digests = sorted({integrity(text.encode()) for page in pages for text in inline_scripts(page)})
    allowed = {
        "default-src": "'self'",
        "script-src": " ".join(["'self'", "'wasm-unsafe-eval'", *(f"'{digest}'" for digest in digests)]),
        "style-src": "'self' 'unsafe-inline'",
        "img-src": "'self' data:",
        "connect-src": "'self'",
        "worker-src": "'self'",
        "object-src": "'none'",
        "base-uri": "'self'",
        "form-action": "'none'",
    }
    return "; ".join(f"{what} {where}" for what, where in allowed.items())


def inline_scripts(html: str) -> list[str]:
    """The text of every script that a page holds itself and that a browser would run."""
    found = _InlineScripts()
    html = html.replace("\r\n", "\n")  # as a browser reads it, before it takes the digest
    found.feed("".join(SCRIPTS.findall(html)))  # all else on a page takes the parser a hundred times as long
    found.close()
    return found.texts


class _InlineScripts(HTMLParser):
    def __init__(self):
        super().__init__()
        self.texts: list[str] = []
        self._inside = False

    def handle_starttag(self, tag, attrs):
        given = dict(attrs)
        self._inside = (
            tag == "script" and "src" not in given and (given.get("type") or "").strip().lower() in RUN
        )
        if self._inside:
            self.texts.append("")

    def handle_data(self, data):
        if self._inside:
            self.texts[-1] += data

    def handle_endtag(self, tag):
        self._inside = False
