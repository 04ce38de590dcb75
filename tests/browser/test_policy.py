"""Every page loads under its own policy, without a request to another host."""

import pytest

pytestmark = pytest.mark.browser


def test_no_page_breaks_its_policy_or_asks_another_host(page, site, server):
    page.add_init_script("globalThis.broken = []; addEventListener('securitypolicyviolation', (e) => broken.push(`${e.violatedDirective} ${e.blockedURI}`))")
    foreign = []
    page.on("request", lambda request: foreign.append(request.url) if not request.url.startswith((server, "data:", "blob:")) else None)
    pages = sorted(path.relative_to(site).as_posix() for path in site.rglob("index.html"))
    assert pages
    for name in pages:
        page.goto(name.removesuffix("index.html"), wait_until="load")
        assert page.evaluate("broken") == [], name
        assert page.evaluate("typeof __md_scope") == "object", "the theme's own inline script must have run"
    assert foreign == []


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
