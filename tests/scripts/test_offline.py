"""What the service worker is told to keep. How it keeps it is tested in the browser."""

import base64
import json
import re
import subprocess

import pytest

from scripts.runtime import offline

BUILD = "0a1b-2c3d"


@pytest.fixture
def site(tmp_path):
    for name in (
        "index.html",
        "heads/seats/index.html",
        "assets/js/live.mjs",
        "assets/js/live.mjs.map",
        "sitemap.xml",
        "assets/a b.svg",
        "assets/javascripts/lunr/min/lunr.da.min.js",
        "runtime/0a1b/pyodide.asm.mjs",
        "runtime/2c3d/calc.zip",
    ):
        path = tmp_path / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(name)
    return tmp_path


def listed(site) -> tuple[str, dict[str, str]]:
    text = (site / "sw.js").read_text()
    build = re.search(r'^const BUILD = "(.*)";', text, re.MULTILINE)[1]
    return build, json.loads(re.search(r"^const FILES = (\{.*?\});", text, re.MULTILINE | re.DOTALL)[1])


def test_pages_assets_and_runtime_are_listed_and_nothing_else(site):
    offline.write(site, BUILD)
    assert sorted(listed(site)[1]) == [
        "assets/a%20b.svg",
        "assets/js/live.mjs",
        "heads/seats/index.html",
        "index.html",
        "runtime/0a1b/pyodide.asm.mjs",
        "runtime/2c3d/calc.zip",
    ]


def test_digests_are_those_of_openssl(site):
    offline.write(site, BUILD)
    _, files = listed(site)
    digest = subprocess.run(
        ["openssl", "dgst", "-sha256", "-binary", site / "index.html"], capture_output=True, check=True
    ).stdout
    assert files["index.html"] == "sha256-" + base64.b64encode(digest).decode()


def test_the_same_files_give_the_same_worker_and_another_file_another_edition(site):
    offline.write(site, BUILD)
    first, text = listed(site)[0], (site / "sw.js").read_text()
    offline.write(site, BUILD)
    assert (site / "sw.js").read_text() == text, "the worker itself is not among the files"
    (site / "index.html").write_text("changed")
    offline.write(site, BUILD)
    assert listed(site)[0] != first
    assert first.startswith(BUILD + "-")


@pytest.mark.parametrize("name", ["index.html", "runtime/0a1b/pyodide.asm.mjs", "runtime/2c3d/calc.zip"])
def test_a_site_that_would_not_work_offline_is_refused(site, name):
    (site / name).unlink()
    with pytest.raises(FileNotFoundError, match=re.escape(name)):
        offline.write(site, BUILD)
