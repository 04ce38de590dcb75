"""Every page against the axe rules (WCAG 2.2 A and AA, and axe's best practices): phone and desktop, light and dark, all unfolded."""
import pytest
from playwright.sync_api import expect

from scripts.environment import CACHE
from scripts.runtime import bundle
from tests.browser.conftest import DESKTOP, PHONE, fresh_page

pytestmark = pytest.mark.browser

VIEWS = [pytest.param(PHONE, "light", id="phone-light"), pytest.param(PHONE, "dark", id="phone-dark"),
         pytest.param(DESKTOP, "light", id="desktop-light"), pytest.param(DESKTOP, "dark", id="desktop-dark")]


@pytest.fixture(scope="session")
def axe() -> str:
    return (bundle.packages(CACHE) / "axe-core" / "axe.min.js").read_text(encoding="utf-8")


def violations(page, axe: str, rules: str = "") -> list[str]:
    """What axe finds on a page; `rules` names the one to run, all where it is empty."""
    page.evaluate("for (const d of document.querySelectorAll('details')) d.open = true")
    page.evaluate(axe)
    found = page.evaluate("rule => axe.run(document, { resultTypes: ['violations'], ...(rule && { runOnly: [rule] }) })", rules)
    return [f"{v['id']} ({v['impact']}): {v['help']}: {v['nodes'][0]['html'][:200]} [{len(v['nodes'])}] {v['nodes'][0].get('failureSummary', '')[:200]}"
            for v in found["violations"]]


@pytest.mark.parametrize("size, scheme", VIEWS)
def test_no_page_has_a_violation(size, scheme, axe, browser, server, site):
    addresses = sorted(path.parent.relative_to(site).as_posix().replace(".", "", 1) for path in site.rglob("index.html"))
    with fresh_page(browser, base_url=server, viewport=size, color_scheme=scheme, service_workers="block") as page:
        wrong = {}
        for address in addresses:
            page.goto(address)
            # dark differs from light in its colours alone
            if found := violations(page, axe, "color-contrast" if scheme == "dark" else ""):
                wrong[address] = found
        assert not wrong, "\n".join(f"{address}: {line}" for address, lines in wrong.items() for line in lines)


def test_a_refused_entry_and_a_live_result_have_none_either(axe, live):
    entry = live.locator("input[data-entry]").first
    for text, refused in (("37.48", False), ("nonsense", True)):
        entry.fill(text)
        if refused:
            expect(entry).to_have_attribute("aria-invalid", "true")
        else:
            expect(live.locator("[data-part=announce]")).not_to_be_empty()
        assert not violations(live.page, axe)


def test_the_rules_are_really_run(axe, page):
    page.goto("")
    page.evaluate("document.querySelector('main, article').insertAdjacentHTML('beforeend', '<img src=\"x.png\">')")
    page.provoked = True  # the picture is not there
    assert any("image-alt" in line for line in violations(page, axe))
