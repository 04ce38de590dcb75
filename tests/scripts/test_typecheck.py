"""The types of the site's own JavaScript hold, and what checks them finds a fault wherever one is."""

import re
import shutil
from pathlib import Path

import pytest

from scripts import environment
from scripts.typecheck.__main__ import faults

PLACES = ("docs/assets/js", "overrides", "scripts", "tests/scripts")  # where JavaScript of our own stands
WRONG = '\n/** @type {number} */ export const wrong = "text";\n'
# Wrong by what another module, a package or a page's markup is said to be.
ACROSS = {
    "docs/assets/js/live.mjs": 'runtime.ask({ call: "evaluat" }, "lane");',
    "docs/assets/js/job-sizes.mjs": "get(3);",
    "docs/assets/js/job.mjs": 'all().then(([first]) => first?.kind === "jobb");',
    "docs/assets/js/jobs.mjs": 'using((db) => db.get("job", ""));',
    "docs/assets/js/offline.mjs": 'document.querySelector("meta[name=a]").content;',
    "docs/assets/js/sizes.mjs": 'document.querySelector("[data-which]")?.checked;',
    "docs/assets/js/worker.mjs": 'tell({ state: "redy" });',
    "docs/assets/js/python.mjs": "add(await load(``), 1, new Uint8Array());",
    "scripts/runtime/sw.js": 'serve("", "");',
    "scripts/runtime/remember.mjs": "pack(1, {});",
    "scripts/nightly/same.mjs": "wakePython(1);",
}


def scripts(root) -> list[str]:
    """Every script of ours, by its path."""
    return sorted(path.relative_to(root).as_posix() for place in PLACES for path in (root / place).rglob("*") if path.suffix in (".js", ".mjs", ".cjs"))


def test_the_types_of_every_script_hold():
    assert faults() == ""


@pytest.fixture(scope="module")
def found_in_spoilt(tmp_path_factory) -> list[tuple[str, int]]:
    """File and line of what is found in a copy where a wrong line or two was added to each script."""
    root = tmp_path_factory.mktemp("spoilt")
    for place in PLACES:
        shutil.copytree(environment.ROOT / place, root / place, ignore=shutil.ignore_patterns("__pycache__"))
    for name in scripts(root):
        path = root / name
        path.write_text(path.read_text(encoding="utf-8") + WRONG + ACROSS.get(name, ""), encoding="utf-8")
    return [(file, int(line)) for file, line in re.findall(r"^(\S+?)\((\d+),\d+\): error TS", faults(root), re.MULTILINE)]


def lines_of(name: str) -> int:
    return len((environment.ROOT / name).read_text(encoding="utf-8").splitlines())


@pytest.mark.parametrize("name", scripts(environment.ROOT))
def test_no_script_is_left_out(name, found_in_spoilt):
    assert any(Path(file).name == Path(name).name and line == lines_of(name) + 2 for file, line in found_in_spoilt)


@pytest.mark.parametrize("name", ACROSS)
def test_what_is_wrong_by_another_module_or_the_markup_is_found(name, found_in_spoilt):
    assert (name, lines_of(name) + 3) in found_in_spoilt
