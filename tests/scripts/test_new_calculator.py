"""A new calculator as it is laid: whole, entered, found by everything that walks the calculators, and plainly not done."""

import os
import re
import subprocess
import sys
from pathlib import Path

import pytest

from scripts import environment, new_calculator

ID, TITLE = "rocker-play", "Play of a rocker"


def test_what_is_laid_passes_all_that_walks_the_calculators_but_says_that_it_is_an_example(tree):
    new_calculator.lay("heads", ID, TITLE, root=tree)
    walks = (
        "tests/test_every_calculator.py",
        "tests/test_trends.py",
        "tests/test_checks.py",
        "tests/test_told_apart.py",
    )
    ran = subprocess.run(
        [sys.executable, "-m", "pytest", "-q", "-p", "no:cacheprovider", "-p", "no:xdist", "tests/stations/heads/test_rocker_play.py",
         *walks, "-k", "rocker-play or rocker_play"],
        cwd=tree, capture_output=True, text=True, env={**os.environ, "PYTHONPATH": str(tree)},
    )  # fmt: skip
    failed = re.findall(r"^FAILED \S+::(\w+)", ran.stdout, re.MULTILINE)
    assert failed == ["test_every_line_of_the_example_was_replaced"], ran.stdout[-3000:]
    assert int(re.search(r"(\d+) passed", ran.stdout)[1]) > 15
    listed = subprocess.run(
        [sys.executable, "-m", "calc", "list"], cwd=tree, capture_output=True, text=True, check=True
    ).stdout
    assert ID in listed and TITLE in listed


def test_what_is_laid_is_formatted(tree):
    *laid, _, _ = new_calculator.lay("heads", ID, TITLE, root=tree)
    ruff = Path(sys.executable).with_name("ruff")
    code = [path for path in laid if "checks" not in path.parts]
    assert not subprocess.run(
        [ruff, "format", "--diff", *code], cwd=tree, capture_output=True, text=True
    ).stdout
    assert not subprocess.run(
        [ruff, "check", "--quiet", *code], cwd=tree, capture_output=True, text=True
    ).stdout


def test_what_is_left_to_replace_is_named(tree):
    new_calculator.lay("heads", ID, TITLE, root=tree)
    left = new_calculator.left_to_replace("heads", ID, tree)
    assert "calc/stations/heads/rocker_play.py:1" in left
    assert any(place.startswith("docs/heads/") for place in left)
    for path in {tree / place.partition(":")[0] for place in left}:
        path.write_text(
            path.read_text(encoding="utf-8").replace(new_calculator.MARK, "Done"), encoding="utf-8"
        )
    assert not new_calculator.left_to_replace("heads", ID, tree)


def test_what_is_left_to_replace_is_named_in_a_calculator_that_has_become_a_folder(tree):
    module, *_ = new_calculator.lay("heads", ID, TITLE, root=tree)
    folder = module.with_suffix("")
    folder.mkdir()
    module.rename(folder / "__init__.py")
    assert "calc/stations/heads/rocker_play/__init__.py:1" in new_calculator.left_to_replace(
        "heads", ID, tree
    )


@pytest.mark.parametrize(
    "station, id, words",
    [
        ("head", ID, "no station 'head'; give one of"),
        ("heads", "Rocker Play", "cannot be an id"),
        ("heads", "rocker-test", "takes for a test"),
        ("heads", "seat-fit", "already"),
    ],
)
def test_what_cannot_be_laid_is_refused_and_nothing_is_written(tree, station, id, words):
    before = sorted(path for path in tree.rglob("*.py"))
    with pytest.raises(ValueError, match=re.escape(words)):
        new_calculator.lay(station, id, TITLE, root=tree)
    assert sorted(path for path in tree.rglob("*.py")) == before


def test_no_mark_of_a_laid_example_is_left_in_the_handbook():
    for path in (*environment.ROOT.glob("calc/**/*.py"), *environment.ROOT.glob("docs/**/*.md")):
        assert new_calculator.MARK not in path.read_text(encoding="utf-8"), path
