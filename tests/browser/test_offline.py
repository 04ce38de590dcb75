"""Without signal: a whole edition or none, and a new one only when the reader says so."""

import re
import shutil

import brotli
import pytest
from playwright.sync_api import expect

from scripts.runtime import offline
from tests.browser.conftest import fresh_page, serving
from tests.browser.live import CALCULATOR, entry, reply, shows

pytestmark = pytest.mark.browser

READY = "Ready to work without signal."
OFFER = "[data-new-edition]"


@pytest.fixture
def copy(site, tmp_path):
    """A copy of the site that a test may change."""
    return shutil.copytree(site, tmp_path / "copy")


@pytest.fixture
def visit(browser, copy):
    """A page on the copy, and a function that stops its server."""
    with serving(copy) as (address, stop), fresh_page(browser, base_url=address) as page:
        yield page, stop


def kept(page):
    """Wait until all is kept on the device."""
    expect(page.locator("[data-offline-status]")).to_have_text(READY)


def new_edition(copy, title="Another title"):
    """Change the front page, and build the service worker anew."""
    front = copy / "index.html"
    text = front.read_text(encoding="utf-8")
    front.write_text(re.sub(r"<title>.*?</title>", f"<title>{title}</title>", text), encoding="utf-8")
    build_id = re.search(r'name="sizebook-build" content="([^"]+)"', text)[1]
    offline.write(copy, build_id)


def test_every_page_and_the_calculators_work_with_the_server_gone(visit, copy, address):
    page, stop = visit
    page.goto("")
    kept(page)
    stop()
    for path in sorted(copy.rglob("index.html")):
        folder = path.parent.relative_to(copy).as_posix()
        answered = page.goto("" if folder == "." else folder + "/")
        assert answered.ok and answered.from_service_worker, folder
    page.goto(address + "?from=a-poster#top")
    live = page.locator(f"live-calculator[data-calculator={CALCULATOR}]")
    entry(live, "ring_outside").fill("37.61")
    shows(live, reply(live)["html"]["verdict"])
    page.goto(address.rstrip("/"))
    assert page.url.endswith(address), "a folder without its slash leads to the page"
    page.goto(f"{address.rstrip('/')}#seat-fit")
    assert page.url.endswith(f"{address}#seat-fit"), "and to the place on it"


def test_a_new_edition_waits_for_the_readers_word_and_keeps_the_entries(visit, copy, address):
    page, _ = visit
    page.goto(address)
    kept(page)
    live = page.locator(f"live-calculator[data-calculator={CALCULATOR}]")
    entry(live, "ring_outside").fill("37.61")
    at_first = page.context.new_page()
    at_first.goto("")
    old = at_first.title()
    new_edition(copy)
    page.reload()
    expect(page.locator(OFFER)).to_contain_text("A new edition of this handbook is ready.")
    at_first.reload()
    assert at_first.title() == old, "until then every page comes from the edition at hand"
    page.evaluate("addEventListener('sizebook:before-reload', () => sessionStorage.setItem('told', 'yes'))")
    with page.expect_navigation():
        page.locator(OFFER).get_by_role("button", name="Change to it").click()
    expect(entry(live, "ring_outside")).to_have_value("37.61")
    assert page.evaluate("sessionStorage.getItem('told')") == "yes"
    expect(at_first).to_have_title("Another title")  # open pages of the old edition reload too
    page.goto("")
    assert page.title() == "Another title"
    editions = [name for name in page.evaluate("caches.keys()") if name.startswith("sizebook http")]
    assert len(editions) == 1, "the older edition is gone from the device"


def test_the_offer_can_be_put_off(visit, copy):
    page, _ = visit
    page.goto("")
    kept(page)
    old = page.title()
    new_edition(copy)
    page.reload()
    page.locator(OFFER).get_by_role("button", name="Later").click()
    expect(page.locator(OFFER)).to_have_count(0)
    page.reload()
    assert page.title() == old
    expect(page.locator(OFFER)).to_be_in_viewport()  # the next page asks again


def test_unchanged_files_are_not_fetched_again(visit, copy):
    page, _ = visit
    page.goto("")
    kept(page)
    new_edition(copy)
    asked = []
    page.context.on("request", lambda request: asked.append(request.url) if request.service_worker else None)
    page.reload()
    expect(page.locator(OFFER)).to_be_visible()
    fetched = [url for url in asked if not url.endswith("sw.js")]
    assert fetched == [page.url]


def test_a_server_that_is_half_updated_gives_no_edition_at_all(visit, copy):
    page, _ = visit
    # The worker's list is older than the page that it names: their digests differ.
    front = copy / "index.html"
    whole = front.read_text(encoding="utf-8")
    front.write_text(whole.replace("<title>", "<title>Half "), encoding="utf-8")
    page.goto("")
    expect(page.locator("[data-offline-status]")).to_contain_text("Not ready to work without signal")
    assert (
        page.evaluate(
            "navigator.serviceWorker.getRegistrations().then((all) => all.filter((r) => r.active).length)"
        )
        == 0
    )
    # The next visit, with the update complete, makes up for it.
    front.write_text(whole, encoding="utf-8")
    page.reload()
    kept(page)
    page.provoked = True  # the browser tells of the digest that did not match


def test_a_half_updated_server_leaves_the_edition_at_hand_alone(visit, copy):
    page, _ = visit
    page.goto("")
    kept(page)
    old = page.title()
    new_edition(copy, "New")
    front = copy / "index.html"
    front.write_text(front.read_text(encoding="utf-8").replace("New", "Newer"), encoding="utf-8")
    page.reload()
    page.evaluate("navigator.serviceWorker.getRegistration().then((r) => r.update()).catch(() => {})")
    page.wait_for_timeout(2000)
    expect(page.locator(OFFER)).to_have_count(0)
    page.reload()
    assert page.title() == old
    page.provoked = True


# Every file that the page's service worker keeps, as it comes when it is asked for: path → its digest.
SERVED = """async (paths) => {
    const digest = async (path) => {
        const answer = await fetch(new URL(path, origin));
        const sum = await crypto.subtle.digest('SHA-256', await answer.arrayBuffer());
        return [path, answer.ok && 'sha256-' + btoa(String.fromCharCode(...new Uint8Array(sum)))];
    };
    return Object.fromEntries(await Promise.all(paths.map(digest)));
}"""


def test_a_build_that_takes_anothers_place_in_the_middle_of_a_visit_is_never_mixed_with_it(
    browser, site, tmp_path, address
):
    """Two whole builds that differ in every page, script, style and in the calculators; the second replaces the first while it is read."""
    first, second = (shutil.copytree(site, tmp_path / name) for name in ("first", "second"))
    for path in second.rglob("*"):
        if path.suffix in (".html", ".mjs", ".css") and "runtime" not in path.relative_to(second).parts:
            mark = {".html": "<!-- second -->", ".mjs": "\n// second\n", ".css": "\n/* second */\n"}[
                path.suffix
            ]
            path.write_text(path.read_text(encoding="utf-8") + mark, encoding="utf-8")
    build_id = re.search(
        r'name="sizebook-build" content="([^"]+)"', (first / "index.html").read_text(encoding="utf-8")
    )[1]
    python, calc, *_ = build_id.split("-")
    renamed = f"{python}-{'0' * len(calc)}"  # other calculators lie under another name, and the old ones are gone from the server
    (second / "runtime" / calc).rename(second / "runtime" / ("0" * len(calc)))
    for path in second.rglob("*.html"):
        path.write_text(path.read_text(encoding="utf-8").replace(build_id, renamed), encoding="utf-8")
    offline.write(second, renamed)
    listed = {name: offline.files(folder) for name, folder in (("first", first), ("second", second))}
    assert sum(listed["first"].get(path) != digest for path, digest in listed["second"].items()) > 30
    served = tmp_path / "served"
    first.rename(served)
    with serving(served) as (root, _), fresh_page(browser, base_url=root) as page:
        page.goto(address)
        kept(page)
        served.rename(tmp_path / "gone")
        second.rename(served)
        # what is kept answers, all of the first build, though its server has none of it any more
        assert page.evaluate(SERVED, list(listed["first"])) == listed["first"]
        live = page.locator(f"live-calculator[data-calculator={CALCULATOR}]")
        entry(live, "ring_outside").fill("37.61")
        shows(live, reply(live)["html"]["verdict"])
        page.reload()
        expect(page.locator(OFFER)).to_be_visible()
        assert page.evaluate(SERVED, list(listed["first"])) == listed["first"], "while the second waits, too"
        with page.expect_navigation():
            page.locator(OFFER).get_by_role("button", name="Change to it").click()
        page.wait_for_load_state()
        assert page.evaluate(SERVED, list(listed["second"])) == listed["second"]
        assert page.locator("meta[name=sizebook-build]").get_attribute("content") == renamed
        expect(entry(live, "ring_outside")).to_have_value("37.61")
        shows(live, reply(live)["html"]["verdict"])


def test_a_cache_that_cannot_be_opened_lets_the_line_answer(visit, copy):
    """A full or broken disk under a service worker: every page failed, though there was a line."""
    page, _ = visit
    page.goto("")
    kept(page)
    worker = page.context.service_workers[0]
    worker.evaluate("void (caches.open = () => Promise.reject(new Error('disk')))")
    worker.evaluate("opened = null")
    answered = page.goto("about/")
    assert answered.ok and page.title()
    page.provoked = True


MOBILE = "Object.defineProperty(navigator, 'connection', { value: { type: 'cellular', saveData: false } })"
PARTLY = "Calculators, the bench and the pages that you open work without signal."


def test_on_a_mobile_line_what_calculates_and_what_was_opened_is_kept(visit, copy, address):
    """Less than 8 MB for whoever opens one page; what is not here says so, and comes from no other edition."""
    page, stop = visit
    page.add_init_script(MOBILE)
    page.goto(address)
    status = page.locator("[data-offline-status]")
    expect(status).to_contain_text(PARTLY)
    there = set(page.evaluate(KEPT_PATHS))
    pages = {path for path in there if path.endswith("index.html")}
    assert pages == {"index.html", f"{address}index.html"}
    assert sum(wire(copy / path) for path in there if (copy / path).is_file()) < 8e6
    page.goto("rods/resizing/")
    expect(status).to_contain_text(PARTLY)
    front = copy / "about/index.html"
    whole = front.read_text(encoding="utf-8")
    front.write_text(whole.replace("<title>", "<title>Newer "), encoding="utf-8")
    page.goto("about/")
    expect(page.locator("h1")).to_have_text("Not on this device yet")
    front.write_text(whole, encoding="utf-8")
    (
        copy / "heads/guides/index.html"
    ).unlink()  # a connection that is kept open would answer after the server has gone
    stop()
    page.goto("heads/guides/")
    expect(page.locator("h1")).to_have_text("Not on this device yet")
    page.get_by_role("link", name="Go to the bench").click()
    expect(page).to_have_title(re.compile("Sizebook"))
    page.goto(address)
    live = page.locator(f"live-calculator[data-calculator={CALCULATOR}]")
    entry(live, "ring_outside").fill("37.61")
    shows(live, reply(live)["html"]["verdict"])
    page.provoked = True  # what could not be fetched


def test_the_rest_is_fetched_over_a_mobile_line_when_the_reader_says_so(visit, address):
    page, stop = visit
    page.add_init_script(MOBILE)
    page.goto(address)
    page.get_by_role("button", name="Fetch them now").click()
    kept(page)
    stop()
    page.goto("heads/guides/")
    expect(page.locator("h1")).not_to_contain_text("Not on this device")


KEPT_PATHS = """async () => {
    const [name] = (await caches.keys()).filter((each) => each.startsWith('sizebook http'));
    return (await (await caches.open(name)).keys()).map(({ url }) => decodeURIComponent(new URL(url).pathname.slice(1)));
}"""


def wire(path) -> int:
    """Bytes of a file as a host sends it that compresses, though not at its best."""
    return len(brotli.compress(path.read_bytes(), quality=9))


def test_plain_http_says_what_it_needs(launch, server):
    # Chromium takes localhost for safe without https, but no other name.
    browser = launch("--host-resolver-rules=MAP sizebook.test 127.0.0.1")
    try:
        with fresh_page(browser) as page:
            page.goto(server.replace("localhost", "sizebook.test"))
            expect(page.locator("[data-offline-status]")).to_have_text(
                "Not available offline here: needs https."
            )
    finally:
        browser.close()
