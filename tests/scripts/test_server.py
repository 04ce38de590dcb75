"""The server answers as HTTP has it (RFC 9110, RFC 9111), with the types that browsers insist on."""

import gzip
import http.client
import threading

import brotli
import pytest

from scripts.runtime import headers
from scripts.server import server

WASM = b"\0asm\1\0\0\0" * 200


@pytest.fixture
def site(tmp_path):
    folder = tmp_path / "site"
    for name, content in {
        "index.html": b"<p>Sizes</p>",
        "404.html": b"<p>Nothing here</p>",
        "heads/index.html": b"<p>Heads</p>",
        "assets/live.mjs": b"export const a = 1;" * 50,
        "runtime/0a1b/pyodide.asm.wasm": WASM,
    }.items():
        path = folder / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(content)
    (tmp_path / "secret.txt").write_text("not part of the site")
    return folder


@pytest.fixture
def get(site, tmp_path):
    serving = server(site, tmp_path / "cache")
    threading.Thread(target=serving.serve_forever, args=(0.05,), daemon=True).start()
    connection = http.client.HTTPConnection("127.0.0.1", serving.server_port, timeout=30)

    def ask(path, method="GET", **headers):
        connection.request(
            method, path, headers={name.replace("_", "-"): value for name, value in headers.items()}
        )
        answered = connection.getresponse()
        return answered.status, answered.headers, answered.read()

    yield ask
    connection.close()
    serving.shutdown()
    serving.server_close()


@pytest.mark.parametrize(
    ("path", "kind"),
    [
        ("/", "text/html; charset=utf-8"),
        ("/heads/?from=poster", "text/html; charset=utf-8"),
        ("/assets/live.mjs", "text/javascript"),
        ("/runtime/0a1b/pyodide.asm.wasm", "application/wasm"),
    ],
)
def test_types(get, path, kind):
    status, headers, _ = get(path)
    assert (status, headers["Content-Type"]) == (200, kind)


@pytest.mark.parametrize(
    ("accepted", "coding", "read"),
    [
        ("gzip, deflate, br", "br", brotli.decompress),
        ("gzip", "gzip", gzip.decompress),
        ("identity", None, bytes),
    ],
)
def test_compressed_as_the_browser_accepts(get, accepted, coding, read):
    for _ in range(2):  # made, then taken from the cache
        _, headers, body = get("/runtime/0a1b/pyodide.asm.wasm", Accept_Encoding=accepted)
        assert headers["Content-Encoding"] == coding
        assert headers["Vary"] == "Accept-Encoding"
        assert read(body) == WASM


def test_asked_again_it_answers_that_nothing_changed_until_it_has(get, site):
    _, headers, _ = get("/")
    assert headers["Cache-Control"] == "no-cache"
    status, _, body = get("/", If_None_Match=headers["ETag"])
    assert (status, body) == (304, b"")
    (site / "index.html").write_bytes(b"<p>Other sizes</p>")
    status, _, body = get("/", If_None_Match=headers["ETag"])
    assert (status, body) == (200, b"<p>Other sizes</p>")


def test_what_is_named_by_its_content_is_kept_for_ever(get):
    _, headers, _ = get("/runtime/0a1b/pyodide.asm.wasm")
    assert "immutable" in headers["Cache-Control"]


def test_wrong_addresses(get):
    status, headers, body = get("/nowhere/")
    assert (status, body) == (404, b"<p>Nothing here</p>")
    assert headers["Cache-Control"] == "no-cache"
    status, headers, _ = get("/heads")
    assert (status, headers["Location"]) == (301, "/heads/")
    for path in ("/../secret.txt", "/%2e%2e/secret.txt", "/assets/../../secret.txt"):
        assert get(path)[0] == 404, path


def test_what_lies_outside_or_is_hidden_is_not_served(get, site, tmp_path):
    """A link that leads out of the site, to a file or a folder; names that begin with a dot; and a link within the site, which is."""
    (site / "out.txt").symlink_to(tmp_path / "secret.txt")
    (site / "outside").symlink_to(tmp_path)
    (site / "within.mjs").symlink_to(site / "assets/live.mjs")
    for name in (".htaccess", ".git/config", "assets/.env"):
        (site / name).parent.mkdir(exist_ok=True)
        (site / name).write_text("hidden")
    (site / "seen.txt").symlink_to(site / ".git/config")
    for path in (
        "/out.txt",
        "/outside/secret.txt",
        "/outside/",
        "/.htaccess",
        "/.git/config",
        "/%2egit/config",
        "/assets/.env",
        "/seen.txt",
    ):
        assert get(path)[0] == 404, path
    assert get("/within.mjs")[0] == 200


def test_every_answer_has_the_headers_of_the_site(site, tmp_path, monkeypatch):
    """What is missing, what has moved and what has not changed, too. The directives are those of W3C CSP Level 3."""
    headers.write(site, "default-src 'self'")
    serving = server(site, tmp_path / "cache")
    threading.Thread(target=serving.serve_forever, args=(0.05,), daemon=True).start()
    connection = http.client.HTTPConnection("127.0.0.1", serving.server_port, timeout=30)
    connection.request("GET", "/")
    tag = (first := connection.getresponse()).headers["ETag"]
    first.read()
    for path, more, status in (
        ("/", {}, 200),
        ("/", {"If-None-Match": tag}, 304),
        ("/heads", {}, 301),
        ("/nowhere", {}, 404),
        ("/assets/live.mjs", {}, 200),
    ):
        connection.request("GET", path, headers=more)
        answered = connection.getresponse()
        answered.read()
        assert answered.status == status
        assert answered.headers["Content-Security-Policy"] == "default-src 'self'; frame-ancestors 'none'"
        assert (
            answered.headers["X-Content-Type-Options"],
            answered.headers["Referrer-Policy"],
            answered.headers["X-Frame-Options"],
        ) == ("nosniff", "no-referrer", "DENY")
    connection.close()
    serving.shutdown()
    serving.server_close()


def test_a_site_that_brings_no_headers_is_served_with_those_that_harm_nothing(get):
    _, found, _ = get("/")
    assert (found["X-Content-Type-Options"], found["Referrer-Policy"], found["X-Frame-Options"]) == (
        "nosniff",
        "no-referrer",
        "DENY",
    )


def test_head_has_the_same_headers_and_no_body(get):
    _, with_body, body = get("/assets/live.mjs")
    _, without, nothing = get("/assets/live.mjs", method="HEAD")
    assert nothing == b"" and without["Content-Length"] == str(len(body)) == with_body["Content-Length"]
