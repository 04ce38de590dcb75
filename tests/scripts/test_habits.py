"""What holds before a commit holds in the tests too: lint, format, types and the floors that imports cross."""

import os
import re
import shutil
import subprocess

import pytest
import yaml
from hypothesis import settings

from scripts import environment

HOOKS = {
    hook["id"]: hook
    for repo in yaml.safe_load((environment.ROOT / ".pre-commit-config.yaml").read_text(encoding="utf-8"))[
        "repos"
    ]
    for hook in repo["hooks"]
}


def run(hook: str, root=environment.ROOT) -> tuple[int, str]:
    """Exit code of a hook's command in a folder, and what it says."""
    program, *arguments = HOOKS[hook]["entry"].split()
    done = subprocess.run(
        [environment.ROOT / program, *arguments], cwd=root, capture_output=True, text=True, timeout=120
    )
    return done.returncode, done.stdout + done.stderr


@pytest.mark.parametrize("hook", HOOKS)
def test_it_holds(hook):
    code, said = run(hook)
    assert code == 0, said


@pytest.mark.parametrize("hook", HOOKS)
def test_nothing_is_fetched_for_a_hook(hook):
    found = HOOKS[hook]
    assert found["language"] == "system" and found["entry"].startswith(".venv/bin/")
    assert not found["pass_filenames"]


@pytest.fixture
def copy(tmp_path):
    """What is type-checked, with its configuration, to be spoilt."""
    for folder in ("calc", "scripts/pictures"):
        shutil.copytree(
            environment.ROOT / folder, tmp_path / folder, ignore=shutil.ignore_patterns("__pycache__")
        )
    for file in ("pyproject.toml", "scripts/__init__.py"):
        shutil.copy(environment.ROOT / file, tmp_path / file)
    return tmp_path


def append(path, line):
    path.parent.mkdir(exist_ok=True)
    with path.open("a", encoding="utf-8") as file:
        file.write(f"\n{line}\n")


@pytest.mark.parametrize(
    "file, line, contract",
    [
        ("calc/core/kinds.py", "import calc.page.html", "An import goes down only"),
        ("calc/formulas/oil.py", "import calc.reference.size", "An import goes down only"),
        ("calc/attic/__init__.py", "", "An import goes down only"),
        ("calc/stations/rods/__init__.py", "import calc.stations.threads", "Stations share what"),
        ("calc/stations/cams/__init__.py", "import calc.stations.rods", "Stations share what"),
        ("calc/stations/shared/forms.py", "import calc.stations.rods", "Stations share what"),
        ("calc/formulas/oil.py", "import calc.formulas.leak", "No two modules need each other"),
    ],
)
def test_an_arrow_up_a_circle_and_a_folder_that_is_not_listed_are_found(file, line, contract, copy):
    append(copy / file, line)
    if "circle" in contract or contract.startswith("No two"):
        append(copy / "calc/formulas/leak.py", "import calc.formulas.oil")
    code, said = run("imports", copy)
    assert code == 1 and re.search(rf"{contract}[^\n]* BROKEN|not listed", said), said


def test_a_wrong_type_is_found(copy):
    append(copy / "calc/core/kinds.py", 'WRONG: int = "text"')
    append(copy / "calc/page/html.py", "def wrong():\n    return 1 + 'text'")
    code, said = run("types", copy)
    assert code == 1 and "calc/core/kinds.py" in said and "calc/page/html.py" in said


def test_the_tests_ask_the_same_each_time():
    """New examples are for scripts/nightly; what fails here fails for everybody."""
    assert settings.get_profile("quick").derandomize
    assert "SIZEBOOK_HYPOTHESIS" in os.environ or settings().derandomize
