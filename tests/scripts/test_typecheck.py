"""The types of the site's own JavaScript hold, and what checks them finds a fault wherever one is."""

import json
import re
import shutil
import subprocess
from pathlib import Path

import pytest

from scripts import environment
from scripts.comments import without_comments
from scripts.runtime import bundle
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
    return sorted(
        path.relative_to(root).as_posix()
        for place in PLACES
        for path in (root / place).rglob("*")
        if path.suffix in (".js", ".mjs", ".cjs")
    )


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
    return [
        (file, int(line))
        for file, line in re.findall(r"^(\S+?)\((\d+),\d+\): error TS", faults(root), re.MULTILINE)
    ]


def lines_of(name: str) -> int:
    return len((environment.ROOT / name).read_text(encoding="utf-8").splitlines())


@pytest.mark.parametrize("name", scripts(environment.ROOT))
def test_no_script_is_left_out(name, found_in_spoilt):
    assert any(
        Path(file).name == Path(name).name and line == lines_of(name) + 2 for file, line in found_in_spoilt
    )


@pytest.mark.parametrize("name", ACROSS)
def test_what_is_wrong_by_another_module_or_the_markup_is_found(name, found_in_spoilt):
    assert (name, lines_of(name) + 3) in found_in_spoilt


# Prints each script as TypeScript reads it, comments left out; on stdin is {name: script}.
PRINT = """
const ts = require(process.argv[1]);
const scripts = JSON.parse(require("fs").readFileSync(0, "utf8"));
const options = { compilerOptions: { target: "ESNext", module: "ESNext", removeComments: true }, reportDiagnostics: true };
const read = (text) => { const { outputText, diagnostics } = ts.transpileModule(text, options); return [outputText, diagnostics.length]; };
console.log(JSON.stringify(Object.fromEntries(Object.entries(scripts).map(([name, text]) => [name, read(text)]))));
"""


def test_without_its_comments_every_script_is_the_same_program_on_the_same_lines():
    served = {
        name: (environment.ROOT / name).read_text(encoding="utf-8")
        for name in scripts(environment.ROOT)
        if name.startswith("docs/") or name.endswith("/sw.js")
    }
    bare = {name: without_comments(text) for name, text in served.items()}
    compiler = bundle.packages(environment.CACHE, environment.ROOT / "scripts/typecheck") / "typescript"
    before, after = (
        json.loads(
            subprocess.run(
                [environment.node(), "--eval", PRINT, compiler],
                input=json.dumps(some),
                capture_output=True,
                text=True,
                check=True,
            ).stdout
        )
        for some in (served, bare)
    )
    assert before == after and not any(faulty for _, faulty in after.values())
    for name, text in served.items():
        assert "/**" not in bare[name] and len(bare[name].split("\n")) == len(text.split("\n"))
        assert not re.search(r"^\s*//", bare[name], re.MULTILINE)
