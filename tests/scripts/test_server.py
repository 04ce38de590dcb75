"""The server answers as HTTP has it (RFC 9110, RFC 9111), with the types that browsers insist on."""

import gzip
import http.client
import threading

import brotli
import pytest

from scripts.server import server

WASM = b"\0asm\1\0\0\0" * 200


@pytest.fixture
def site(tmp_path):
    folder = tmp_path / "site"
    for name, content in {
        "index.html": b"<p>Sizes</p>", "404.html": b"<p>Nothing here</p>", "heads/index.html": b"<p>Heads</p>",
        "assets/live.mjs": b"export const a = 1;" * 50, "runtime/0a1b/pyodide.asm.wasm": WASM,
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
        connection.request(method, path, headers={name.replace("_", "-"): value for name, value in headers.items()})
        answered = connection.getresponse()
        return answered.status, answered.headers, answered.read()

    yield ask
    connection.close()
    serving.shutdown()
    serving.server_close()


@pytest.mark.parametrize(("path", "kind"), [
    ("/", "text/html; charset=utf-8"), ("/heads/?from=poster", "text/html; charset=utf-8"),
    ("/assets/live.mjs", "text/javascript"), ("/runtime/0a1b/pyodide.asm.wasm", "application/wasm")])
def test_types(get, path, kind):
    status, headers, _ = get(path)
    assert (status, headers["Content-Type"]) == (200, kind)


@pytest.mark.parametrize(("accepted", "coding", "read"), [
    ("gzip, deflate, br", "br", brotli.decompress), ("gzip", "gzip", gzip.decompress), ("identity", None, bytes)])
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


def test_head_has_the_same_headers_and_no_body(get):
    _, with_body, body = get("/assets/live.mjs")
    _, without, nothing = get("/assets/live.mjs", method="HEAD")
    assert nothing == b"" and without["Content-Length"] == str(len(body)) == with_body["Content-Length"]
