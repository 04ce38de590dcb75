"""What the policy does not permit does not happen, in the page, in its worker and in the service worker. That every page has it and
keeps it: test_every_page.py."""

import threading
from http.server import BaseHTTPRequestHandler, HTTPServer

import pytest
from playwright.sync_api import expect

from scripts.runtime import headers
from tests.browser.conftest import fresh_page, serving, without_sharing
from tests.browser.live import opened, wait_for_state

pytestmark = pytest.mark.browser


def test_an_inline_script_that_is_not_the_sites_does_not_run(page):
    page.goto("")
    page.evaluate("""() => {
        const script = document.createElement('script');
        script.textContent = 'globalThis.ran = true';
        document.body.append(script);
    }""")
    assert page.evaluate("globalThis.ran") is None
    assert any("Content Security Policy" in said for said in page.wrong)
    page.provoked = True


@pytest.fixture
def foreign():
    """Another host, which lets everybody in and notes who came: (its address, the paths that it was asked for)."""
    asked = []

    class Open(BaseHTTPRequestHandler):
        def do_GET(self):
            asked.append(self.path)
            self.send_response(200)
            self.send_header("Access-Control-Allow-Origin", "*")
            self.send_header("Content-Type", "text/javascript" if self.path.endswith(".mjs") else "text/html")
            self.end_headers()
            self.wfile.write(b"")

        def log_message(self, *_):
            pass

    running = HTTPServer(("127.0.0.1", 0), Open)
    threading.Thread(target=running.serve_forever, args=(0.05,), daemon=True).start()
    yield f"http://127.0.0.1:{running.server_port}/", asked
    running.shutdown()
    running.server_close()


REFUSED = "(what) => Promise.resolve().then(what).then(() => 'it came', (error) => 'refused')"
WAYS = {  # from within the worker, {} is another host
    "fetch": "fetch('{}fetch')",
    "fetch of a request": "fetch(new Request('{}request', {{ mode: 'no-cors' }}))",
    "a request of old": "new Promise((done, fail) => {{ const asked = new XMLHttpRequest(); asked.open('GET', '{}old'); asked.onload = done; asked.onerror = fail; asked.send(); }})",
    "a socket": "new Promise((done, fail) => {{ const socket = new WebSocket('{}socket'.replace('http', 'ws')); socket.onopen = done; socket.onerror = fail; }})",
    "events": "new Promise((done, fail) => {{ const source = new EventSource('{}events'); source.onopen = done; source.onerror = fail; }})",
}


def worker_of(page, address):
    without_sharing(page)
    opened(page, address)
    page.evaluate(
        "import(new URL('/assets/js/runtime.mjs', location)).then(({ runtime }) => runtime.start())"
    )
    wait_for_state(page, "ready")
    return next(worker for worker in page.workers if worker.url.endswith("/assets/js/worker.mjs"))


@pytest.mark.parametrize("headed", [True, False], ids=["our server", "a host without headers"])
def test_the_worker_asks_no_other_host(site, browser, address, foreign, headed, monkeypatch):
    """Our server sends the policy beside the worker's script; on a host that sends none the worker holds itself to it, but for import()."""
    if not headed:
        monkeypatch.setattr(headers, "read", lambda site: {"X-Plain": "yes"})
    where, asked = foreign
    with serving(site) as (root, _), fresh_page(browser, base_url=root, service_workers="block") as page:
        worker = worker_of(page, address)
        ways = WAYS | ({"a module": "import('{}module.mjs')"} if headed else {})
        for name, way in ways.items():
            assert worker.evaluate(f"({REFUSED})(() => {way.format(where)})") == "refused", name
        assert asked == []
        assert worker.evaluate("fetch(location.href).then((answer) => answer.ok)"), "its own it may ask"
        page.provoked = True


def test_the_service_worker_asks_no_other_host(site, browser, foreign):
    where, asked = foreign
    with serving(site) as (root, _), fresh_page(browser, base_url=root) as page:
        page.goto("about/")
        expect(page.locator("[data-offline-status]")).to_have_text("Ready to work without signal.")
        worker = page.context.service_workers[0]
        assert worker.evaluate(f"fetch('{where}').then(() => 'it came', () => 'refused')") == "refused"
        assert asked == []
        page.provoked = True


def test_no_other_page_may_frame_the_site(site, browser, foreign):
    where, _ = foreign
    with serving(site) as (root, _), fresh_page(browser) as page:
        page.goto(where)
        page.evaluate(
            """root => { const frame = document.createElement('iframe'); frame.src = root; document.body.append(frame);
            return new Promise((done) => { frame.onload = frame.onerror = done; setTimeout(done, 5000); }); }""",
            root,
        )
        framed = [frame for frame in page.frames if frame != page.main_frame]
        assert all(
            "Sizebook" not in frame.content() for frame in framed if not frame.url.startswith("chrome-error")
        )
        assert any("frame" in said for said in page.wrong)
        page.provoked = True
