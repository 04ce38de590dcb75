"""A station is added by the steps of DEVELOPERS.md, whatever its name: command, imports and pages then know it."""

import os
import subprocess
import sys
from pathlib import Path

import pytest

from scripts import new_calculator

NAME, TITLE = "oil", "Oil"  # also the name of a module of formulas
ID, CALCULATOR = "gallery-room", "Room in a gallery"
PACKAGE = f'''\
"""Oil: what it loses on its way through the engine."""

TITLE = "{TITLE}"
PURPOSE = "What the oil loses on its way."
CALCULATORS = ()
'''
PAGES = {
    f"docs/{NAME}/index.md": f"# {TITLE}\n\n/// station | {NAME}\n///\n",
    f"docs/{NAME}/galleries.md": "# Galleries\n",
    f"docs/sources/{NAME}.md": f"# Sources and checks: oil\n\n/// checks | {NAME}\n///\n",
}
NAV = {  # what stands there: what comes after it
    "      - learn-a-job.md\n": f"      - {TITLE}:\n          - {NAME}/index.md\n          - {NAME}/galleries.md\n",
    "          - sources/index.md\n": f"          - {TITLE}: sources/{NAME}.md\n",
}


def put(path: Path, text: str) -> None:
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_text(text, encoding="utf-8")


def change(path: Path, old: str, new: str) -> None:
    text = path.read_text(encoding="utf-8")
    assert text.count(old) == 1, f"{old!r} in {path}"
    path.write_text(text.replace(old, new), encoding="utf-8")


@pytest.fixture(scope="module")
def tree(shared_tree) -> Path:
    """A copy of the handbook with one station more, which has one calculator."""
    put(shared_tree / "calc/stations" / NAME / "__init__.py", PACKAGE)
    change(shared_tree / "calc/stations/index.py", "STATIONS = (", f'STATIONS = ("{NAME}", ')
    for path, text in PAGES.items():
        put(shared_tree / path, text)
    for line, more in NAV.items():
        change(shared_tree / "mkdocs.yml", line, line + more)
    new_calculator.lay(NAME, ID, CALCULATOR, root=shared_tree)
    return shared_tree


def ran(tree: Path, *command) -> str:
    """What a command says in the copy; fails where it does."""
    done = subprocess.run(
        command, cwd=tree, capture_output=True, text=True, env={**os.environ, "PYTHONPATH": str(tree)}
    )
    assert done.returncode == 0, done.stdout[-3000:] + done.stderr[-3000:]
    return done.stdout


def test_the_command_names_its_calculator(tree):
    listed = ran(tree, sys.executable, "-m", "calc", "list").splitlines()
    assert any(line.split(maxsplit=2) == [ID, NAME, CALCULATOR] for line in listed)
    assert "Runs with" in ran(tree, sys.executable, "-m", "calc", "run", ID, "--example")


def test_its_imports_are_held_without_a_list(tree):
    """It may use what stands below it, and a station that it looks into is found."""
    lint = Path(sys.executable).with_name("lint-imports")
    assert "0 broken" in ran(tree, lint, "--no-cache")
    package = tree / "calc/stations" / NAME / "__init__.py"
    package.write_text(f"{PACKAGE}\nfrom calc.stations.rods import rod_bolt\n", encoding="utf-8")
    done = subprocess.run([lint, "--no-cache"], cwd=tree, capture_output=True, text=True)
    package.write_text(PACKAGE.replace("()", f'("{ID}",)'), encoding="utf-8")
    assert (
        done.returncode and f"calc.stations.{NAME} is not allowed to import calc.stations.rods" in done.stdout
    )


def test_its_pages_are_built_and_its_sources_listed(tree):
    ran(tree, sys.executable, "-m", "mkdocs", "build", "--strict", "--quiet", "--site-dir", tree / "site")
    station = (tree / "site" / NAME / "index.html").read_text(encoding="utf-8")
    assert f'href="galleries/#{ID}"' in station
    listed = (tree / "site/learn-a-job/index.html").read_text(encoding="utf-8")
    assert f'href="../{NAME}/galleries/"' in listed
    sources = (tree / "site/sources" / NAME / "index.html").read_text(encoding="utf-8")
    assert CALCULATOR in sources and "difference of two sizes, by hand" in sources
    assert f'href="{NAME}/"' in (tree / "site/sources/index.html").read_text(encoding="utf-8")
