"""The pages of a job against the axe rules, filled and unfolded, on a phone and a desk; and the focus, which is never lost."""

import pytest
from playwright.sync_api import expect

from calc.job import codes, record
from tests.browser.conftest import DESKTOP, PHONE, fresh_page
from tests.browser.jobs import beside, calculator, entry, keep, with_job
from tests.browser.test_accessibility import COLOUR, OTHER_SCHEME, axe, begin, found, violations  # noqa: F401 (axe is a fixture)
from tests.job.jobs import ordinary

pytestmark = pytest.mark.browser


def in_both_schemes(page, axe) -> list[str]:  # noqa: F811
    """Violations of all rules in the page's scheme, and of those of colour in the other one; left as it was."""
    seen = violations(page, axe)
    body, before = page.locator("body"), page.evaluate("document.body.dataset.mdColorScheme")
    page.evaluate(OTHER_SCHEME)
    expect(body).not_to_have_attribute("data-md-color-scheme", before)
    begin(page, COLOUR)
    seen += found(page)
    page.evaluate(OTHER_SCHEME)
    expect(body).to_have_attribute("data-md-color-scheme", before)
    return seen


@pytest.mark.parametrize(
    "size, scheme", [(PHONE, "light"), (DESKTOP, "dark")], ids=["phone-light", "desktop-dark"]
)
def test_no_page_of_a_job_has_a_violation(size, scheme, axe, browser, server):  # noqa: F811
    with fresh_page(
        browser,
        base_url=server,
        viewport=size,
        color_scheme=scheme,
        reduced_motion="reduce",
        service_workers="block",
    ) as page:
        with_job(page, record.add_done(ordinary(), "One more"), "job/")
        expect(page.locator(".job-reading").first).to_be_visible()
        for fold in page.locator("job-view .job-reading > details").all()[:3]:
            fold.evaluate("e => e.open = true")
        page.locator(".job-fold > summary", has_text="Write down a size").click()
        page.locator("#write-feature").select_option("crank.main_journal")
        expect(page.locator("#write-text")).to_be_visible()
        assert not in_both_schemes(page, axe), "job"
        assert page.evaluate("document.documentElement.scrollWidth <= innerWidth")
        page.goto("job/sheet/")
        expect(page.locator(".sheet")).to_be_visible()
        assert not in_both_schemes(page, axe), "sheet"
        assert page.evaluate("document.documentElement.scrollWidth <= innerWidth")
        page.goto("job/received/#" + codes.links(ordinary(), "http://x/")[0].partition("#")[2])
        page.locator(".job-check summary", has_text="Main bearing clearance").click()
        expect(page.locator("job-view live-calculator .job-strip").first).to_be_visible()
        assert not in_both_schemes(page, axe), "received"
        assert page.evaluate("document.documentElement.scrollWidth <= innerWidth")


def test_a_calculator_with_a_job_has_none_either(axe, page):  # noqa: F811
    with_job(page, ordinary(), "heads/seats/")
    fit = calculator(page, "seat-fit")
    entry(fit, "pocket_bore").fill("37.51")
    expect(beside(fit, "pocket_bore")).to_have_attribute("data-state", "typed")
    page.wait_for_timeout(300)  # axe follows no page that changes while it looks
    assert not violations(page, axe)
    keep(fit, "pocket_bore", "37.51", place="1 intake")
    entry(fit, "pocket_bore").fill("37.52")
    expect(beside(fit, "pocket_bore")).to_have_attribute("data-state", "typed")
    assert not violations(page, axe)
