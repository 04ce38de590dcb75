"""Serves a built site as a good static host does: right types, compressed, cached by content.

Used by `scripts.serve`, the browser tests and the benchmark. Localhost counts as safe for browsers, so
even working offline can be tried here.
"""

from __future__ import annotations

import gzip
import hashlib
import mimetypes
import os
import threading
from functools import lru_cache, partial
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path

import brotli

from scripts.runtime import headers

TYPES = {
    **SimpleHTTPRequestHandler.extensions_map,
    "": "application/octet-stream",
    ".html": "text/html; charset=utf-8",
    ".js": "text/javascript",
    ".json": "application/json",
    ".mjs": "text/javascript",
    ".svg": "image/svg+xml",
    ".wasm": "application/wasm",
    ".webmanifest": "application/manifest+json",
}
# What is not compressed already.
COMPRESSED = {
    ".css",
    ".html",
    ".js",
    ".json",
    ".mjs",
    ".svg",
    ".txt",
    ".wasm",
    ".webmanifest",
    ".xml",
    ".zip",
}
# where a site brings no headers of its own
SAFE = {"X-Content-Type-Options": "nosniff", "Referrer-Policy": "no-referrer", "X-Frame-Options": "DENY"}
QUALITY = 5  # of brotli: small enough, and the large files take half a second once


class Handler(SimpleHTTPRequestHandler):
    """Answers GET and HEAD from `directory`; compressed bodies are kept in `cache`."""

    protocol_version = "HTTP/1.1"
    extensions_map = TYPES

    def __init__(self, *args, cache: Path, quality: int = QUALITY, always: dict | None = None, **kwargs):
        self.cache, self.quality, self.always = cache, quality, always or {}
        super().__init__(*args, **kwargs)

    def send_head(self):
        path = Path(self.translate_path(self.path))
        address = self.path.partition("?")[0]
        if path.is_dir():
            if not address.endswith("/"):
                return self._answer(301, b"", {"Location": address + "/"})
            path /= "index.html"
        if not path.is_file() or not self._is_ours(path):
            return self._missing()
        digest = digest_of(path)
        tag = f'"{digest}"'
        headers = {"ETag": tag, "Cache-Control": _caching(address)}
        if self.headers.get("If-None-Match") == tag:
            return self._answer(304, b"", headers)
        headers["Content-Type"] = TYPES.get(path.suffix) or mimetypes.guess_type(path.name)[0] or TYPES[""]
        body = None
        if path.suffix in COMPRESSED:
            headers["Vary"] = "Accept-Encoding"
            accepted = self.headers.get("Accept-Encoding", "")
            for coding in ("br", "gzip"):
                if coding in accepted:
                    headers["Content-Encoding"] = coding
                    body = compressed(path, digest, coding, self.cache, self.quality)
                    break
        return self._answer(200, path.read_bytes() if body is None else body, headers)

    def _is_ours(self, path: Path) -> bool:
        """Does it lie in the site itself, and not under a name that is hidden? A link that leads out is not
        followed."""
        site = Path(self.directory).resolve()
        try:
            within = path.resolve().relative_to(site).parts
            named = Path(os.path.abspath(path)).relative_to(os.path.abspath(self.directory)).parts
        except ValueError:
            return False
        return not any(part.startswith(".") for part in (*within, *named))

    def _missing(self):
        page = Path(self.directory) / "404.html"
        if page.is_file():
            return self._answer(
                404, page.read_bytes(), {"Content-Type": TYPES[".html"], "Cache-Control": "no-cache"}
            )
        return self._answer(
            404, b"Not found.\n", {"Content-Type": "text/plain; charset=utf-8", "Cache-Control": "no-cache"}
        )

    def _answer(self, status: int, body: bytes, headers: dict[str, str]) -> None:
        self.send_response(status)
        for name, value in {**headers, **self.always}.items():
            self.send_header(name, value)
        if status != 304:
            self.send_header("Content-Length", str(len(body)))
        self.end_headers()
        if self.command != "HEAD":
            self.wfile.write(body)

    def log_message(self, *_):
        pass


class Server(ThreadingHTTPServer):
    daemon_threads = True

    def handle_error(self, request, client_address):
        """A browser that goes away in the middle of an answer is nothing to report."""


def server(
    site: Path,
    cache: Path,
    host: str = "127.0.0.1",
    port: int = 0,
    quality: int = QUALITY,
    handler: type[Handler] = Handler,
) -> Server:
    """A server for a built site, not started yet; port 0 takes a free one (`server_port` tells which)."""
    return Server(
        (host, port),
        partial(
            handler, directory=str(site), cache=cache, quality=quality, always=headers.read(site) or SAFE
        ),
    )


def compressed(path: Path, digest: str, coding: str, cache: Path, quality: int) -> bytes:
    """A file as it goes over the wire; made once for the same content."""
    kept = cache / f"{digest}.{coding}{quality}"
    if kept.exists():
        return kept.read_bytes()
    body = path.read_bytes()
    small = brotli.compress(body, quality=quality) if coding == "br" else gzip.compress(body, 6, mtime=0)
    cache.mkdir(parents=True, exist_ok=True)
    unfinished = cache / f"{kept.name}.{os.getpid()}.{threading.get_ident()}"
    unfinished.write_bytes(small)
    unfinished.replace(kept)
    return small


def compress_all(site: Path, cache: Path, quality: int) -> None:
    """Compress in advance what a browser may ask for."""
    for path in site.rglob("*"):
        if path.suffix in COMPRESSED and path.is_file():
            compressed(path, digest_of(path), "br", cache, quality)


def digest_of(path: Path) -> str:
    facts = path.stat()
    return _digest(path, facts.st_mtime_ns, facts.st_size)


def _caching(address: str) -> str:
    """Folders under runtime/ are named by what they hold, so they never change; all else is asked for
    anew."""
    return "public, max-age=31536000, immutable" if "/runtime/" in address else "no-cache"


@lru_cache(maxsize=4096)
def _digest(path: Path, changed: int, size: int) -> str:
    return hashlib.sha256(path.read_bytes()).hexdigest()
