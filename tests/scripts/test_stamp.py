"""The policy in the built pages. Digests are checked against the W3C's own example and by OpenSSL's SHA-256."""

import base64
import hashlib
import re
from html.parser import HTMLParser

import pytest

from scripts.runtime import headers, stamp

PAGE = "<!doctype html><html><head{attributes}><meta charset='utf-8'><title>Sizes</title></head><body>{body}</body></html>"


def site_of(tmp_path, pages: dict[str, str]):
    for name, body in pages.items():
        path = tmp_path / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(PAGE.format(attributes="", body=body), encoding="utf-8")
    stamp.stamp(tmp_path, "0a1b-2c3d", stations={"a": "rods", "b": "heads", "c": "rods"})
    return {name: metas((tmp_path / name).read_text(encoding="utf-8")) for name in pages}


class _Metas(HTMLParser):
    def __init__(self):
        super().__init__()
        self.found = {}

    def handle_starttag(self, tag, attrs):
        given = dict(attrs)
        if tag == "meta":
            self.found[given.get("name") or given.get("http-equiv") or "charset"] = given.get("content")


def metas(html: str) -> dict[str, str]:
    parser = _Metas()
    parser.feed(html)
    return parser.found


def directives(policy: str) -> dict[str, list[str]]:
    return {words[0]: words[1:] for words in (part.split() for part in policy.split(";"))}


def test_digest_of_the_published_example():
    # W3C CSP Level 3, "Usage of hash sources": <script>alert('Hello, world.');</script> is allowed by this value.
    digest = "sha256-qznLcsROx4GACP2dm0UCKCzCG+HiZ1guq6ZZDob/Tng="
    assert f"'{digest}'" in stamp.policy_for(["<script>alert('Hello, world.');</script>"])


def test_every_page_has_the_policy_of_all_pages(tmp_path):
    made = site_of(
        tmp_path, {"index.html": "<script>one()</script>", "heads/seats/index.html": "<script>two()</script>"}
    )
    policies = {page["Content-Security-Policy"] for page in made.values()}
    assert len(policies) == 1
    allowed = directives(policies.pop())
    for text in (b"one()", b"two()"):
        assert f"'sha256-{base64.b64encode(hashlib.sha256(text).digest()).decode()}'" in allowed["script-src"]
    assert "'unsafe-inline'" not in allowed["script-src"] and "'unsafe-eval'" not in allowed["script-src"]
    assert allowed["default-src"] == ["'self'"] and allowed["object-src"] == ["'none'"]


def test_root_leads_from_each_page_to_the_top(tmp_path):
    made = site_of(
        tmp_path, {"index.html": "", "404.html": "", "heads/index.html": "", "heads/seats/index.html": ""}
    )
    assert {name: page["sizebook-root"] for name, page in made.items()} == {
        "index.html": "./",
        "404.html": "./",
        "heads/index.html": "../",
        "heads/seats/index.html": "../../",
    }
    assert {page["sizebook-build"] for page in made.values()} == {"0a1b-2c3d"}


def test_only_a_page_with_calculators_says_that_it_has_some(tmp_path):
    made = site_of(
        tmp_path,
        {
            "index.html": "<p>live-calculator</p>",
            "heads/index.html": '<live-calculator id="x" data-calculator="b"></live-calculator>'
            '<live-calculator data-calculator="a"></live-calculator><live-calculator data-calculator="c">',
            "job/index.html": '<job-view data-calculator="a"></job-view>',
        },
    )
    assert {name: page.get("sizebook-live") for name, page in made.items()} == {
        "index.html": None,
        "heads/index.html": "heads rods",
        "job/index.html": "",
    }


def test_hosts_get_the_policy_of_the_pages_and_what_only_a_header_can_say(tmp_path):
    made = site_of(tmp_path, {"index.html": "<script>one()</script>"})
    policy = made["index.html"]["Content-Security-Policy"]
    found = headers.read(tmp_path)
    assert (
        found == headers.headers(policy)
        and found["Content-Security-Policy"] == f"{policy}; frame-ancestors 'none'"
    )
    assert '"' not in policy, "the value stands in quotes for two of the hosts"
    for name, words in (
        (headers.APACHE, 'Header always set {} "{}"'),
        (headers.NGINX, 'add_header {} "{}" always;'),
    ):
        text = (tmp_path / name).read_text(encoding="utf-8")
        assert all(words.format(*pair) in text for pair in found.items())
    assert (
        (tmp_path / headers.HOSTS).read_text(encoding="utf-8").startswith("/*\n  Content-Security-Policy: ")
    )


def test_the_shops_own_address_stands_in_every_page_where_it_is_set(tmp_path):
    assert "sizebook-address" not in site_of(tmp_path, {"index.html": ""})["index.html"]
    page = stamp.stamped(
        PAGE.format(attributes="", body=""), "x-y", "./", "", "a.html", 'https://tern-street.example/"x"/', {}
    )
    assert metas(page)["sizebook-address"] == 'https://tern-street.example/"x"/'


def test_policy_stands_before_everything_that_it_governs(tmp_path):
    site_of(tmp_path, {"index.html": ""})
    html = (tmp_path / "index.html").read_text(encoding="utf-8")
    assert re.search(r"<head><meta charset='utf-8'><meta http-equiv=\"Content-Security-Policy\"", html)


@pytest.mark.parametrize(
    "attributes", ["", ' type="module"', " type=text/javascript", " type='TEXT/JavaScript'", " defer"]
)
def test_scripts_that_run_are_found(attributes):
    assert stamp.inline_scripts(f"<script{attributes}>a < b && 'é'</script>") == ["a < b && 'é'"]


@pytest.mark.parametrize(
    "html",
    [
        '<script src="a.js"></script>',
        '<script type="application/json">{}</script>',
        "<p>script</p>",
        "<style>p{}</style>",
    ],
)
def test_what_does_not_run_needs_no_digest(html):
    assert stamp.inline_scripts(html) == []


def test_lines_end_as_the_browser_reads_them():
    assert stamp.inline_scripts("<script>one()\r\ntwo()</script>") == ["one()\ntwo()"]


def test_a_page_without_head_is_named():
    with pytest.raises(stamp.StampError, match="odd.html"):
        stamp.stamped("<p>No head</p>", "x-y", "./", "", "odd.html", "", {})
