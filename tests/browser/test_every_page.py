"""Every page of the built site, walked once: on narrow and wide screens, in forced colours, on paper, under its policy.

Each page is loaded once and looked at in one view after the other; each test below then reads what the walk noted of its own matter.
"""

import json
import re
from collections import defaultdict
from urllib.parse import urlsplit

import pypdfium2
import pytest
from playwright.sync_api import expect

from tests.browser.conftest import DESKTOP, PHONE, fresh_page
from tests.browser.live import CALCULATOR, entry, reply, shows

pytestmark = pytest.mark.browser

NARROW = {"width": 320, "height": 640}  # WCAG 2.2, 1.4.10 Reflow: 320 CSS px, which is 1280 px at 400 %
ZOOMED = {"width": 640, "height": 450}  # a desktop of 1280 x 900 at 200 %
SCREENS = (NARROW, PHONE, ZOOMED, DESKTOP)
PAPERS = {"A4": (210, 297), "Letter": (215.9, 279.4)}  # mm; ISO 216, ANSI/ASME Y14.1
MARGIN = 15  # mm at the sides, as print.css has it
POINTS = 72 / 25.4  # in a mm
TARGET = 44  # px, WCAG 2.2, 2.5.5

UNFOLD = "for (const d of document.querySelectorAll('details')) d.open = true"
NOTE_VIOLATIONS = """globalThis.broken = [];
    addEventListener('securitypolicyviolation', (e) => broken.push(`${e.violatedDirective} ${e.blockedURI}`))"""

# What must scroll sideways where it is wide: tables to look numbers up in, formulas, code (1.4.10 excepts them).
WIDE = ".reference .table-box, .md-typeset__scrollwrap, [data-part=working], pre"
# Elements that scroll or cut what they hold, and fields too narrow for their number.
CUT = """wide => [...document.querySelectorAll('main *, .units *')].filter(e => {
    if (e.scrollWidth <= e.clientWidth + 1 || !e.clientWidth || getComputedStyle(e).overflowX === 'visible' || !e.checkVisibility()) return false;
    return !e.closest('.visually-hidden, .md-sidebar, svg, thead') && !e.matches(wide);
}).map(e => `${e.outerHTML.slice(0, 110)} ${e.scrollWidth} > ${e.clientWidth}`)"""

TARGETS = ", ".join(
    (
        ".units button",
        ".md-header__button:not(.md-logo)",
        ".door",
        ":is(.station, .stations) li a",
        "main :is(button, input, select, textarea, summary)",
    )
)
SMALL = f"""targets => [...document.querySelectorAll(targets)].filter(e => e.checkVisibility()).flatMap(e => {{
    const {{ width, height }} = e.getBoundingClientRect();
    return Math.min(width, height) >= {TARGET} - 0.5 ? [] : [`${{width}} x ${{height}}: ${{e.outerHTML.slice(0, 120)}}`];
}})"""

# On paper: what can only be pressed is gone, nothing stands beyond the margin, all that is read is black on white.
ON_PAPER = """width => {
    const wrong = [];
    for (const e of document.querySelectorAll('body *')) {
        if (!e.checkVisibility() || e.closest('.visually-hidden, [hidden]')) continue;
        const box = e.getBoundingClientRect();
        if (!box.width || !box.height) continue;
        const what = e.outerHTML.slice(0, 110);
        if (e.matches('button:not(th button), nav, header.md-header, footer, [role=dialog], .keys, .units')) wrong.push(`can only be pressed: ${what}`);
        if (box.right > width + 1) wrong.push(`${box.right - width} px beyond the margin: ${what}`);
        const own = [...e.childNodes].some(n => n.nodeType === 3 && n.data.trim());
        const { color, fill, backgroundColor } = getComputedStyle(e);
        if (own && (e.closest('svg') ? fill : color) !== 'rgb(0, 0, 0)') wrong.push(`not black: ${color} ${what}`);
        if (!['rgba(0, 0, 0, 0)', 'rgb(255, 255, 255)'].includes(backgroundColor)) wrong.push(`not on white: ${backgroundColor} ${what}`);
    }
    return wrong;
}"""

# In forced colours: every line of a drawing stands out from the ground, and so does the word that tells the state.
CONTRAST = """
    const light = (rgb) => rgb.match(/[\\d.]+/g).slice(0, 3).map((c) => c / 255).map((c) => c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4)
        .reduce((sum, c, i) => sum + c * [0.2126, 0.7152, 0.0722][i], 0);
    const contrast = (a, b) => { const [x, y] = [light(a), light(b)].sort((p, q) => q - p); return (x + 0.05) / (y + 0.05); };
"""  # WCAG 2.2, relative luminance and contrast ratio
FORCED = (
    """() => {"""
    + CONTRAST
    + """
    const ground = getComputedStyle(document.body).backgroundColor, wrong = [];
    for (const e of document.querySelectorAll('.calculator svg :is(line, path, polyline, polygon, rect, circle)')) {
        if (e.closest('defs, clipPath, pattern')) continue;
        const { stroke, fill } = getComputedStyle(e);
        const paint = stroke === 'none' ? fill : stroke;
        if (/^rgb/.test(paint) && contrast(paint, ground) < 3 && !/^rgb/.test(fill)) wrong.push(`${paint} on ${ground}: ${e.outerHTML.slice(0, 110)}`);
    }
    for (const e of document.querySelectorAll('.calculator svg text')) {
        if (contrast(getComputedStyle(e).fill, ground) < 4.5) wrong.push(`${getComputedStyle(e).fill} on ${ground}: ${e.textContent}`);
    }
    for (const e of document.querySelectorAll('.verdict-state')) {
        const { color, backgroundColor } = getComputedStyle(e);
        if (contrast(color, backgroundColor) < 4.5 || !e.textContent) wrong.push(`${color} on ${backgroundColor}: ${e.textContent}`);
    }
    return wrong;
}"""
)


@pytest.fixture(scope="session")
def walk(launch, server, addresses, tmp_path_factory):
    """Matter → what the walk found wrong in it; and, from the browser's own log, every address that was asked for."""
    log = tmp_path_factory.mktemp("walk") / "net.json"
    found, looked = defaultdict(list), defaultdict(int)
    browser = launch(f"--log-net-log={log}", "--net-log-capture-mode=Default")

    def note(matter, address, wrong):
        looked[matter] += 1
        found[matter] += [f"{address or 'home'}: {line}" for line in wrong]

    with fresh_page(
        browser,
        base_url=server,
        viewport=PHONE,
        color_scheme="light",
        reduced_motion="reduce",
        service_workers="block",
    ) as page:
        page.add_init_script(NOTE_VIOLATIONS)
        page.add_init_script(
            "Object.defineProperty(NetworkInformation.prototype, 'saveData', { get: () => true })"
        )  # Python is looked at below
        for number, address in enumerate(addresses):
            page.goto(address)
            note("policy", address, [*page.evaluate("broken"), *wrong_policy(page)])
            paper = list(PAPERS)[number % 2]  # each page on one; the measures of both are looked at below
            note("printed", address, wrong_print(page, paper))
            page.evaluate(UNFOLD)
            for units in ("metric", "inch"):
                page.evaluate(
                    "units => document.querySelector(`[data-units-choice=${units}]`).click()", units
                )
                for size in SCREENS if units == "metric" else (NARROW, PHONE):
                    page.set_viewport_size(size)
                    width = page.evaluate("document.documentElement.scrollWidth")
                    note(
                        f"width {size['width']}",
                        address,
                        [f"{width} px wide, in {units} units"] if width > size["width"] else [],
                    )
                    if size in (NARROW, PHONE):
                        note(
                            "cut",
                            address,
                            [f"{size['width']} px, {units}: {line}" for line in page.evaluate(CUT, WIDE)],
                        )
                    if size is PHONE:
                        note("targets", address, page.evaluate(SMALL, TARGETS))
            for scheme in ("dark", "light"):
                page.emulate_media(forced_colors="active", color_scheme=scheme)
                note("forced", address, page.evaluate(FORCED))
            page.evaluate(
                "dispatchEvent(new Event('beforeprint')), dispatchEvent(new Event('afterprint'))"
            )  # told before it prints, as by the browser
            page.evaluate(UNFOLD)
            page.emulate_media(forced_colors="none", color_scheme="dark", media="print")
            page.evaluate("document.body.dataset.mdColorScheme = 'slate'")
            for name, (width, _) in PAPERS.items():
                px = int((width - 2 * MARGIN) / 25.4 * 96)
                page.set_viewport_size({"width": px, "height": 900})
                note("paper", address, [f"{name}: {line}" for line in page.evaluate(ON_PAPER, px)])
            page.emulate_media(color_scheme="light", media="null")
    asked_live(browser, server)
    browser.close()
    assert min(looked.values()) >= len(addresses)
    return found, asked(log)


def wrong_policy(page) -> list[str]:
    """What a page's own policy lacks (W3C CSP Level 3)."""
    written = page.evaluate(
        "[...document.querySelectorAll('meta[http-equiv=Content-Security-Policy]')].map(m => m.content)"
    )
    if len(written) != 1:
        return [f"{len(written)} policies"]
    allowed = {words[0]: words[1:] for words in (part.split() for part in written[0].split(";"))}
    wrong = [
        f"{what} {where}"
        for what, sources in allowed.items()
        for where in sources
        if not re.fullmatch(r"'(self|none|wasm-unsafe-eval|sha256-[\w+/=]{44})'|data:|blob:", where)
        and (what, where) != ("style-src", "'unsafe-inline'")
    ]
    wrong += [
        f"script-src {where}"
        for where in allowed.get("script-src", ["is missing"])
        if where in ("data:", "blob:", "is missing")
    ]
    for what, must in (
        ("default-src", "'self'"),
        ("object-src", "'none'"),
        ("base-uri", "'self'"),
        ("form-action", "'none'"),
        ("connect-src", "'self'"),
    ):
        if allowed.get(what) != [must]:
            wrong.append(f"{what} is {allowed.get(what)}")
    return wrong


def wrong_print(page, paper: str) -> list[str]:
    """What is wrong with a page as it is printed, folded as the reader left it."""
    headings = {
        " ".join(text.split())
        for text in page.locator("h1, h2, h3, dt, summary, .admonition-title").all_text_contents()
    }
    printed = pypdfium2.PdfDocument(page.pdf(format=paper))
    # The theme unfolds everything while it prints; the working is to stay folded all the same.
    wrong = (
        ["the working is printed, though nobody unfolded it"]
        if any("Working" in sheet.get_textpage().get_text_bounded().splitlines() for sheet in printed)
        else []
    )
    for number, sheet in enumerate(printed, 1):
        text, width = sheet.get_textpage(), sheet.get_width()
        # left, bottom, right, top in points from the lower left corner; below the margin stands the page's number
        boxes = [
            box
            for box in map(text.get_rect, range(text.count_rects()))
            if box[3] > POINTS * 14 and box[2] > box[0]
        ]
        if not boxes:
            wrong.append(f"page {number} of {len(printed)} is empty")
            continue
        lowest = min(boxes, key=lambda box: box[1])
        last = " ".join(text.get_text_bounded(0, lowest[1], width, lowest[3]).split())
        if number < len(printed) and last in headings:
            wrong.append(f"“{last}” stands alone at the foot of page {number}")
        left, right = min(box[0] for box in boxes), max(box[2] for box in boxes)
        if left < POINTS * (MARGIN - 1) or right > width - POINTS * (MARGIN - 1):
            wrong.append(f"page {number}: text from {left:.0f} to {right:.0f} pt on {width:.0f} pt")
    return wrong


def asked_live(browser, server) -> None:
    """What else makes requests: the search, a calculator at work and its kept memory, everything kept for use without signal."""
    with fresh_page(browser, base_url=server) as page:
        page.goto("heads/seats/")
        live = page.locator(f"live-calculator[data-calculator={CALCULATOR}]")
        entry(live, "ring_outside").fill("37.61")
        shows(live, reply(live)["html"]["verdict"])
        field = page.get_by_placeholder("Search")
        field.click()
        field.press_sequentially("seat")
        expect(page.locator(".md-search-result__link").first).to_be_visible()
        expect(page.locator("[data-offline-status]")).to_have_text("Ready to work without signal.")
        page.reload()
        shows(live, reply(live)["html"]["verdict"])


def asked(log) -> list[str]:
    """Every address that a page, worker or service worker of the site asked for, from the browser's own log of its network."""
    recorded = json.loads(log.read_text(encoding="utf-8"))
    kinds = {number: name for name, number in recorded["constants"]["logEventTypes"].items()}
    started = [
        event["params"]
        for event in recorded["events"]
        if kinds[event["type"]] == "URL_REQUEST_START_JOB" and "url" in event.get("params", {})
    ]
    return [params["url"] for params in started if params.get("initiator", "").startswith("http")]


@pytest.mark.parametrize("size", SCREENS, ids=lambda size: str(size["width"]))
def test_no_page_is_wider_than_the_screen(size, walk):
    assert not walk[0][f"width {size['width']}"]


def test_no_number_and_no_word_is_cut_on_a_phone(walk):
    assert not walk[0]["cut"], "\n".join(walk[0]["cut"][:20])


def test_targets_are_large_enough_for_a_thumb(walk):
    assert not walk[0]["targets"], "\n".join(walk[0]["targets"][:20])


def test_drawings_plots_and_states_show_in_forced_colours(walk):
    assert not walk[0]["forced"], "\n".join(walk[0]["forced"][:20])


def test_paper_holds_every_page_black_on_white_with_nothing_to_press(walk):
    assert not walk[0]["paper"], "\n".join(walk[0]["paper"][:20])


def test_what_is_printed_is_whole_and_no_heading_stands_alone(walk):
    assert not walk[0]["printed"], "\n".join(walk[0]["printed"][:20])


def test_every_page_has_its_policy_and_keeps_it(walk):
    assert not walk[0]["policy"], "\n".join(walk[0]["policy"][:20])


def test_no_page_and_no_worker_asks_another_host(walk, server):
    urls = walk[1]
    parts = [urlsplit(url) for url in urls]
    assert {part.netloc for part in parts if part.scheme in ("http", "https")} == {urlsplit(server).netloc}
    # the log holds what it is asked about: pages, workers, Python, search and service worker
    for known in (
        "/assets/js/worker.mjs",
        ".wasm",
        "search_index.json",
        "/sw.js",
        "/calc.zip",
        "/heads/seats/",
    ):
        assert any(known in url for url in urls), known
