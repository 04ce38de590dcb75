"""Build the site and serve it: `python3 scripts/serve.py [--port N] [--host ADDRESS]`.

Needs nothing but Python and the package registry: what is missing is installed into `.venv`.
"""

from __future__ import annotations

import argparse
import functools
import http.server
import socket
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
# Run as a file, this folder stands first, and test.py in it would hide the standard library's `test`.
sys.path[0] = str(ROOT)

from scripts import environment  # noqa: E402

TYPES = {
    **http.server.SimpleHTTPRequestHandler.extensions_map,
    ".js": "text/javascript",
    ".mjs": "text/javascript",
    ".json": "application/json",
    ".svg": "image/svg+xml",
    ".wasm": "application/wasm",
    ".webmanifest": "application/manifest+json",
}
# Worth compressing on the wire; what is left is compressed already.
COMPRESSED = {".bin", ".css", ".html", ".js", ".json", ".mjs", ".svg", ".txt", ".wasm", ".xml", ".zip"}


@functools.lru_cache(maxsize=256)
def _brotli(path: Path, stamp: tuple[int, int]) -> bytes:
    import brotli

    return brotli.compress(path.read_bytes(), quality=5)


class Handler(http.server.SimpleHTTPRequestHandler):
    """Serves the built site as a good static host does: right types, compressed, asked for anew each time."""

    protocol_version = "HTTP/1.1"
    extensions_map = TYPES

    def send_head(self):
        path = Path(self.translate_path(self.path))
        if path.is_dir() and self.path.split("?")[0].endswith("/"):
            path /= "index.html"
        if path.suffix not in COMPRESSED or not path.is_file() or "br" not in self.headers.get("Accept-Encoding", ""):
            return super().send_head()
        facts = path.stat()
        tag = f'"{facts.st_mtime_ns:x}-{facts.st_size:x}"'
        if self.headers.get("If-None-Match") == tag:
            self.send_response(304)
            self.send_header("ETag", tag)
            self.end_headers()
            return None
        body = _brotli(path, (facts.st_mtime_ns, facts.st_size))
        self.send_response(200)
        self.send_header("Content-Type", self.guess_type(path))
        self.send_header("Content-Encoding", "br")
        self.send_header("Vary", "Accept-Encoding")
        self.send_header("Content-Length", str(len(body)))
        self.send_header("ETag", tag)
        self.end_headers()
        if self.command != "HEAD":
            self.wfile.write(body)
        return None

    def end_headers(self):
        self.send_header("Cache-Control", "no-cache")
        super().end_headers()

    def send_error(self, code, message=None, explain=None):
        page = Path(self.directory) / "404.html"
        if code != 404 or not page.is_file():
            return super().send_error(code, message, explain)
        body = page.read_bytes()
        self.send_response(404)
        self.send_header("Content-Type", "text/html; charset=utf-8")
        self.send_header("Content-Length", str(len(body)))
        self.end_headers()
        if self.command != "HEAD":
            self.wfile.write(body)

    def log_message(self, *_):
        pass


class Server(http.server.ThreadingHTTPServer):
    daemon_threads = True

    def handle_error(self, request, client_address):
        if not isinstance(sys.exc_info()[1], ConnectionError):  # a reader who left is no fault
            super().handle_error(request, client_address)


def server(site: Path, host: str = "127.0.0.1", port: int = 0) -> Server:
    """A server for a built site; port 0 takes a free one (`server_port` tells which)."""
    return Server((host, port), functools.partial(Handler, directory=str(site)))


def _lan_address() -> str:
    """This machine's address in its own network, as far as it can be told (nothing is sent)."""
    with socket.socket(socket.AF_INET, socket.SOCK_DGRAM) as probe:
        try:
            probe.connect(("192.0.2.1", 9))  # an address kept for documentation
            return probe.getsockname()[0]
        except OSError:
            return socket.gethostname()


def main() -> None:
    parser = argparse.ArgumentParser(prog="scripts/serve.py", description=__doc__.splitlines()[0])
    parser.add_argument("--port", type=int, default=8000)
    parser.add_argument("--host", default="127.0.0.1", help="0.0.0.0 lets other devices in the network in")
    chosen = parser.parse_args()
    try:
        environment.enter("scripts.serve", "site")
    except environment.Missing as missing:
        sys.exit(str(missing))

    from scripts.build import SITE, BuildFailed, build

    try:
        build()
    except BuildFailed as error:
        sys.exit(f"The site was not built. {error}")
    try:
        serving = server(SITE, chosen.host, chosen.port)
    except OSError as error:
        sys.exit(f"Port {chosen.port} on {chosen.host} cannot be used ({error.strerror}); choose another with --port.")
    everywhere = chosen.host in ("0.0.0.0", "::")
    print(f"Sizebook: http://{'localhost' if everywhere or chosen.host == '127.0.0.1' else chosen.host}:{serving.server_port}/")
    if everywhere:
        print(f"In this network: http://{_lan_address()}:{serving.server_port}/")
        print("Other devices can read and calculate there; to work with no signal they need https (see README.md).")
    print("Stop with Ctrl-C.", flush=True)
    try:
        serving.serve_forever()
    except KeyboardInterrupt:
        print()


if __name__ == "__main__":
    main()
