"""Pages against the axe rules (WCAG 2.2 A and AA, and axe's best practices), in the states in which a reader meets it.

What the walk covers, with everything unfolded, on the fewest pages that between them hold every kind of element; on every page of the
site where SIZEBOOK_PAGES is "every", as it is each night:

    phone      all rules, each calculator answering and saying how it read an entry     the rules of colour in the other scheme
    desktop    all rules, each calculator refusing every entry                          the rules of colour in the other scheme

An example's own state has no element that these have not. Light and dark differ in colour alone; from page to page they take turns in being the first, as
the theme keeps the one that was last.
What only repeats itself, formulas and the fourth and further rows of a table of checks, is looked at in the first of the four alone.
"""

import os
from contextlib import ExitStack
from html.parser import HTMLParser

import pytest

from calc.page.live import answer
from scripts.environment import CACHE
from scripts.runtime import bundle
from tests.browser.conftest import DESKTOP, PHONE, fresh_page, text_of

pytestmark = pytest.mark.browser

COLOUR = ["color-contrast", "link-in-text-block"]
REPEATED = "math, .checks tbody tr:nth-child(n+4)"
UNFOLD = "for (const d of document.querySelectorAll('details')) d.open = true"
SCHEME = "document.body.dataset.mdColorScheme"
OTHER_SCHEME = "document.querySelector('[data-md-component=palette] label:not([hidden])').click()"

# The page's own scripts carry the entries to CPython, which answers at once and word for word as the browser's Python does (test_live.py).
BY_CPYTHON = "Object.defineProperty(NetworkInformation.prototype, 'saveData', { get: () => true });"  # so Python is not started
ENTER = """async (change) => {
    const { runtime } = await import(new URL('/assets/js/runtime.mjs', location));
    const asked = [];
    runtime.ask = (request) => {
        const answered = answerOfCPython(JSON.stringify({ ...request, first: false })).then(JSON.parse);
        asked.push(answered);
        return answered;
    };
    const forms = document.querySelectorAll('live-calculator [data-form]');
    for (const form of forms) {
        for (const entry of form.querySelectorAll('input[data-entry]')) entry.value = change === 'comma' ? entry.value.replace('.', ',') : change;
        form.dispatchEvent(new Event('input', { bubbles: true }));
    }
    await Promise.all(asked);
    await new Promise((shown) => setTimeout(shown));
    return forms.length;
}"""


@pytest.fixture(scope="session")
def axe() -> str:
    return (bundle.packages(CACHE) / "axe-core" / "axe.min.js").read_text(encoding="utf-8")


def begin(page, rules=None, without="") -> None:
    """Let axe look at a page, which takes it a while; `rules` names those to run, all where it is left out."""
    page.evaluate(
        """([rules, without]) => {
        const where = without && document.querySelector(without) ? { exclude: [[without]] } : document;
        globalThis.looked = axe.run(where, { resultTypes: ['violations'], preload: false, ...(rules && { runOnly: rules }) });
    }""",
        [rules, without],
    )


def found(page) -> list[str]:
    """The violations that axe has found."""
    seen = page.evaluate("looked.then(({ violations }) => violations)")
    return [
        f"{v['id']} ({v['impact']}): {v['help']}: {v['nodes'][0]['html'][:200]} [{len(v['nodes'])}] {v['nodes'][0].get('failureSummary', '')[:200]}"
        for v in seen
    ]


def violations(page, axe: str) -> list[str]:
    page.evaluate(UNFOLD)
    page.evaluate(axe)
    begin(page)
    return found(page)


class Kinds(HTMLParser):
    """The kinds of elements on a page: what they are called, and each class that they bear."""

    def __init__(self, html: str):
        super().__init__()
        self.found: set[tuple[str, str]] = set()
        self.feed(html)

    def handle_starttag(self, tag, attrs):
        self.found |= {(tag, each) for each in ["", *(dict(attrs).get("class") or "").split()]}


def fewest(pages: dict[str, set]) -> list[str]:
    """Pages that between them hold whatever is on any: again and again that with most that is still missing."""
    missing, chosen = set().union(*pages.values()), []
    while missing:
        chosen.append(max(pages, key=lambda address: len(pages[address] & missing)))
        missing -= pages[chosen[-1]]
    return chosen


def test_the_fewest_pages_hold_every_kind():
    assert fewest({"a": {1, 2}, "b": {2, 3, 4}, "c": {1}, "d": {4}}) == ["b", "a"]


@pytest.fixture
def walked(site, addresses) -> list[str]:
    if os.environ.get("SIZEBOOK_PAGES") == "every":
        return addresses
    chosen = fewest({address: Kinds(text_of(site, address)).found for address in addresses})
    assert 5 < len(chosen) < len(addresses)
    return chosen


def test_no_page_has_a_violation(axe, browser, server, walked):
    wrong, calculators = [], 0
    with ExitStack() as opened:
        # Two pages abreast, as the machine has two cores.
        phone, desktop = pages = [
            opened.enter_context(
                fresh_page(
                    browser,
                    base_url=server,
                    viewport=size,
                    color_scheme="light",
                    reduced_motion="reduce",
                    service_workers="block",
                )
            )
            for size in (PHONE, DESKTOP)
        ]
        for page in pages:
            page.expose_function("answerOfCPython", answer)
            page.add_init_script(BY_CPYTHON)
            page.add_init_script(axe)
        for address in walked:
            for page in pages:
                page.goto(address)
                page.evaluate(UNFOLD)
            if phone.locator("live-calculator").count():
                calculators += phone.evaluate(ENTER, "comma")
                desktop.evaluate(ENTER, "nonsense")
                # The temperature of a reading is read once the reading is.
                assert (
                    desktop.locator(
                        "input[data-entry]:not([aria-invalid=true], [name$='.part'], [name$='.gauge'])"
                    ).count()
                    == 0
                ), address
            for rules in (None, COLOUR):
                for page in pages:
                    if rules:
                        before = page.evaluate(SCHEME)  # that of the page before: the theme keeps it
                        page.evaluate(OTHER_SCHEME)
                        assert page.evaluate(SCHEME) != before
                    begin(page, rules, "" if page is phone and not rules else REPEATED)
                for page, name in zip(pages, ("phone", "desktop")):
                    wrong += [
                        f"{address or 'home'}, {name}, {page.evaluate(SCHEME)}: {line}"
                        for line in found(page)
                    ]
        phone.provoked = desktop.provoked = True
    assert not wrong, "\n".join(wrong)
    assert calculators > len(walked) / 2


def test_the_rules_are_really_run(axe, page):
    page.goto("")
    page.evaluate(
        "document.querySelector('main, article').insertAdjacentHTML('beforeend', '<img src=\"x.png\">')"
    )
    page.provoked = True  # the picture is not there
    assert any("image-alt" in line for line in violations(page, axe))
