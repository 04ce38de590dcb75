"""What the policy does not permit does not happen. That every page has it and keeps it: test_every_page.py."""

import pytest

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
