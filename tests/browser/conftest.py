"""The built site in a real browser.

`SIZEBOOK_SITE` names a built site to test instead of building one, `SIZEBOOK_CHROMIUM` the browser.
"""

import os
import shutil
import threading
from contextlib import contextmanager
from pathlib import Path

import pytest
from playwright.sync_api import Error, expect, sync_playwright

from scripts import build, environment
from scripts.server import server as make_server
from tests.browser.live import CALCULATOR, opened

CHROMIUM = [
    *environment.HEADLESS,
    # Every test begins a Python anew: what the browser would compile a second time, faster, is not run long enough.
    "--js-flags=--liftoff-only",
]
PATIENCE = 60_000  # ms: a loaded machine starts the calculators slowly
PHONE = {"width": 390, "height": 844}
DESKTOP = {"width": 1280, "height": 900}

expect.set_options(timeout=PATIENCE)


@pytest.fixture(scope="session")
def site() -> Path:
    """The folder with the built site."""
    named = os.environ.get("SIZEBOOK_SITE")
    if named:
        return Path(named).resolve()
    build.build()
    return build.SITE


@contextmanager
def serving(folder: Path):
    """The address of a folder, served for the time being, and a function that stops the server."""
    running = make_server(folder, environment.CACHE / "compressed")
    threading.Thread(target=running.serve_forever, args=(0.05,), daemon=True).start()
    stopped = threading.Event()

    def stop():
        if not stopped.is_set():
            stopped.set()
            running.shutdown()
            running.server_close()

    try:
        yield f"http://localhost:{running.server_port}/", stop
    finally:
        stop()


@pytest.fixture(scope="session")
def server(site) -> str:
    """The address of the served site, with a slash at its end."""
    with serving(site) as (address, _):
        yield address


@pytest.fixture(scope="session")
def playwright_driver():
    with sync_playwright() as playwright:
        yield playwright


@pytest.fixture(scope="session")
def launch(playwright_driver):
    """Starts a browser; takes further arguments for its command line, and settings for Playwright."""
    path = os.environ.get("SIZEBOOK_CHROMIUM") or shutil.which("chromium")
    if not path:
        pytest.fail(
            "No Chromium: set SIZEBOOK_CHROMIUM, or run the tests with scripts/test.py, which installs it."
        )
    return lambda *arguments, **settings: playwright_driver.chromium.launch(
        executable_path=path, args=[*CHROMIUM, *arguments], **settings
    )


@pytest.fixture(scope="session")
def browser(launch):
    started = launch()
    yield started
    started.close()


@contextmanager
def fresh_page(browser, **settings):
    """A page of a browser that has seen nothing yet.

    Fails afterwards on any error that the page or its policy told of (`page.wrong`), unless the test says that it provoked
    them (`page.provoked = True`).
    """
    context = browser.new_context(**{"viewport": DESKTOP, **settings})
    context.set_default_timeout(PATIENCE)
    page = context.new_page()
    page.wrong, page.provoked = [], False
    page.on("pageerror", lambda error: page.wrong.append(f"{page.url}: {error}"))
    page.on(
        "console",
        lambda said: page.wrong.append(f"{page.url}: {said.text}") if said.type == "error" else None,
    )
    yield page
    try:
        context.close()
    except Error:
        pass  # a test may have closed it, or crashed its browser on purpose
    assert page.provoked or not page.wrong, "\n".join(page.wrong)


@pytest.fixture
def page(browser, server):
    """A fresh page that knows the site's address as its base, with nothing kept for offline use."""
    with fresh_page(browser, base_url=server, service_workers="block") as made:
        yield made


def without_sharing(page) -> None:
    """Python in a worker of the page's own, as in a browser where none outlives its page: what it fetches can be held or spoilt."""
    page.add_init_script("delete globalThis.SharedWorker")


@pytest.fixture
def own_python(page):
    without_sharing(page)


@pytest.fixture(scope="session")
def addresses(site) -> list[str]:
    """Every page of the built site, from the site's root: what is added to it is walked without being named anywhere."""
    found = sorted(
        path.relative_to(site).as_posix().removesuffix("index.html") for path in site.rglob("*.html")
    )
    assert len(found) > 25 and "" in found and "404.html" in found
    return found


@pytest.fixture(scope="session")
def with_calculators(site, addresses) -> list[str]:
    """Pages with calculators, by their station's first; all of them where SIZEBOOK_PAGES is "every", as it is each night."""
    found = [each for each in addresses if "<live-calculator" in text_of(site, each)]
    if os.environ.get("SIZEBOOK_PAGES") == "every":
        return found
    first = {each.partition("/")[0]: each for each in reversed(found)}
    assert len(first) > 4
    return sorted(first.values())


def text_of(site: Path, address: str) -> str:
    """The HTML of a page of the built site."""
    path = site / (address if address.endswith(".html") else f"{address}index.html")
    return path.read_text(encoding="utf-8")


@pytest.fixture(scope="session")
def address(site) -> str:
    """A page with the calculator that the tests use, from the site's root."""
    for path in sorted(site.rglob("index.html")):
        if f'data-calculator="{CALCULATOR}"' in path.read_text(encoding="utf-8"):
            return path.parent.relative_to(site).as_posix() + "/"
    raise AssertionError(f"no page of the site holds {CALCULATOR}")


@pytest.fixture
def live(page, address):
    return opened(page, address)
