"""On the home screen: the browser takes the manifest without a complaint, and the bench opens in its own window without signal."""

import json
import os
import re
import shutil
from urllib.parse import urljoin

import pytest
import yaml
from playwright.sync_api import expect

from scripts import icons
from scripts.environment import ROOT
from tests.browser.conftest import CHROMIUM, PHONE, fresh_page, serving

pytestmark = pytest.mark.browser


def manifest(page):
    """As the browser has read it: where it lies, what it complains of, its text."""
    return page.context.new_cdp_session(page).send("Page.getAppManifest")


def colour(css: str, scheme: str) -> str:
    """The paper of the light or the dark look."""
    start = css.index('[data-md-color-scheme="slate"]') if scheme == "dark" else 0
    return re.search(r"--paper: (#[0-9a-f]{6});", css[start:])[1]


def test_the_browser_takes_the_manifest_of_every_kind_of_page_without_a_complaint(page, server, address):
    for where in ("", address, "job/"):
        page.goto(where)
        found = manifest(page)
        assert found["errors"] == []
        assert found["url"] == f"{server}manifest.webmanifest"
    assert page.goto("manifest.webmanifest").headers["content-type"].startswith("application/manifest+json")


def test_it_says_what_the_site_says_of_itself(page, server):
    page.goto("")
    told = json.loads(manifest(page)["data"])
    # its own tags are of no matter here
    settings = (ROOT / "mkdocs.yml").read_text(encoding="utf-8").partition("\ntheme:")[0]
    site = yaml.safe_load(settings)
    css = (ROOT / "docs/assets/css/sizebook.css").read_text(encoding="utf-8")
    assert told["name"] == told["short_name"] == site["site_name"]
    assert told["description"] == site["site_description"]
    assert told["display"] == "standalone"
    assert told["theme_color"] == told["background_color"] == colour(css, "light")
    assert urljoin(server + "manifest.webmanifest", told["start_url"]) == server, "the bench"
    for shortcut in told["shortcuts"]:
        page.goto(shortcut["url"])
        assert shortcut["name"].lower() in page.title().lower()


def test_its_icons_are_what_it_says_of_them(page):
    page.goto("")
    listed = json.loads(manifest(page)["data"])["icons"]
    assert {icon.get("purpose", "any") for icon in listed} == {"any", "maskable"}
    for icon in listed:
        width = page.evaluate(
            "src => new Promise((done, fail) => { const image = new Image(); image.src = src; image.onerror = fail;"
            " image.onload = () => done([image.naturalWidth, image.naturalHeight]); })",
            f"/{icon['src']}",
        )
        assert icon["sizes"] == "any" or icon["sizes"] == "x".join(map(str, width)), icon["src"]


PIXELS = """([one, other]) => Promise.all([one, other].map(async (bytes) => {
    const image = await createImageBitmap(new Blob([new Uint8Array(bytes)], { type: 'image/png' }));
    const canvas = new OffscreenCanvas(image.width, image.height);
    const context = canvas.getContext('2d');
    context.drawImage(image, 0, 0);
    return context.getImageData(0, 0, image.width, image.height).data;
})).then(([a, b]) => [a.length === b.length, a.reduce((sum, x, i) => sum + (Math.abs(x - b[i]) > 32), 0) / a.length])"""


def test_the_icons_are_drawn_from_the_mark(browser, page, tmp_path):
    icons.draw(browser, tmp_path)
    page.goto("about/")
    for name in icons.ICONS:
        same_size, unlike = page.evaluate(
            PIXELS, [list((folder / name).read_bytes()) for folder in (tmp_path, icons.IMAGES)]
        )
        assert same_size and unlike < 0.002, name


def test_no_mask_cuts_the_mark(page, browser):
    """All that is not the ground lies within a circle of 0.8 of the width (W3C, Web Application Manifest, safe zone)."""
    page.goto("about/")
    far = page.evaluate(
        """async (src) => {
        const image = await createImageBitmap(await (await fetch(src)).blob());
        const canvas = new OffscreenCanvas(image.width, image.height), middle = image.width / 2;
        const context = canvas.getContext('2d');
        context.drawImage(image, 0, 0);
        const { data } = context.getImageData(0, 0, image.width, image.height);
        let far = 0;
        for (let i = 0; i < data.length; i += 4) {
            if (Math.abs(data[i] - data[0]) < 40) continue;
            const x = (i / 4) % image.width, y = Math.floor(i / 4 / image.width);
            far = Math.max(far, Math.hypot(x - middle, y - middle) / middle);
        }
        return far;
    }""",
        "/assets/img/icon-maskable-512.png",
    )
    assert 0.5 < far <= 0.8


def test_it_can_be_installed_and_opens_in_its_own_window_without_signal(playwright_driver, site, tmp_path):
    """A profile of its own: a private window is never one that a page can be installed from."""
    path = os.environ.get("SIZEBOOK_CHROMIUM") or shutil.which("chromium")

    def visit(*arguments):
        return playwright_driver.chromium.launch_persistent_context(
            str(tmp_path / "profile"), executable_path=path, args=[*CHROMIUM, *arguments], viewport=PHONE
        )

    with serving(site) as (address, stop):
        with visit() as context:
            page = context.new_page()
            page.goto(address)
            expect(page.locator("[data-offline-status]")).to_have_text("Ready to work without signal.")
            devtools = context.new_cdp_session(page)
            assert devtools.send("Page.getInstallabilityErrors")["installabilityErrors"] == []
            told = json.loads(manifest(page)["data"])
        stop()
        start = urljoin(f"{address}manifest.webmanifest", told["start_url"])
        with visit(f"--app={start}") as context:  # the window that an icon opens
            (page,) = context.pages
            expect(page.locator("article h1")).to_be_visible()
            assert page.url == address
            assert page.evaluate("matchMedia('(display-mode: standalone)').matches")
            assert page.evaluate("Boolean(navigator.serviceWorker.controller)")
            for name in ("manifest.webmanifest", *(icon["src"] for icon in told["icons"])):
                assert page.evaluate("path => fetch(path).then(({ ok }) => ok)", f"/{name}"), name


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_the_windows_bar_has_the_colour_of_the_paper(browser, server, scheme):
    css = (ROOT / "docs/assets/css/sizebook.css").read_text(encoding="utf-8")
    with fresh_page(browser, base_url=server, color_scheme=scheme, service_workers="block") as page:
        page.route("**/bundle.*.js", lambda route: route.abort())  # before the theme's script
        page.goto("about/")
        metas = page.locator("meta[name=theme-color]").evaluate_all(
            "all => all.filter(({ media }) => matchMedia(media).matches).map(({ content }) => content)"
        )
        assert metas == [colour(css, scheme)]
        page.provoked = True
    with fresh_page(browser, base_url=server, color_scheme=scheme, service_workers="block") as page:
        page.goto("about/")
        bar = page.locator("meta[name=theme-color]")
        expect(bar).to_have_count(1)
        expect(bar).to_have_attribute("content", colour(css, scheme))
        page.locator("label[for^=__palette]:visible").click()
        other = {"light": "dark", "dark": "light"}[scheme]
        expect(bar).to_have_attribute("content", colour(css, other))
