"""How the test command spreads the tests over the machine's cores."""

import os
import subprocess
import sys

import pytest

from scripts import environment
from scripts import test as command


@pytest.mark.parametrize(
    "argument, names",
    [
        ("tests/scripts/test_test.py", True),
        ("tests/scripts/test_test.py::test_what_names_tests", True),
        ("tests/scripts", True),
        ("-q", False),
        ("seat", False),
    ],
)
def test_what_names_tests(argument, names, monkeypatch):
    monkeypatch.chdir(environment.ROOT)
    assert command.names_tests(argument) is names


def test_every_core_has_its_process_and_what_is_said_otherwise_counts(tmp_path):
    """Each process writes its name into a file; pytest takes the last of two numbers."""
    (tmp_path / "test_each.py").write_text(
        "import os, pathlib, time, pytest\n"
        "@pytest.mark.parametrize('n', range(8))\n"
        "def test_it(n):\n"
        "    pathlib.Path(os.environ['PYTEST_XDIST_WORKER']).touch()\n"
        "    time.sleep(0.05)\n"
    )
    for more, count in (([], os.cpu_count()), (["-n", "3"], 3)):
        for old in tmp_path.glob("gw*"):
            old.unlink()
        arguments = [*command.processes(), *more, "-p", "no:cacheprovider", "-q"]
        done = subprocess.run(
            [sys.executable, "-m", "pytest", *arguments], cwd=tmp_path, capture_output=True, text=True
        )
        assert done.returncode == 0, done.stdout + done.stderr
        assert len(list(tmp_path.glob("gw*"))) == min(count, 8)


def test_a_page_that_crashes_is_begun_anew_once_and_nothing_else_is_tried_again(tmp_path):
    (tmp_path / "test_each.py").write_text(
        "import pathlib, pytest\n"
        "HERE = pathlib.Path(__file__).parent\n"
        "@pytest.mark.parametrize('words', ['Page.evaluate: Target crashed', 'no such size'])\n"
        "def test_it(words):\n"
        "    marks = HERE / words.partition(':')[0]\n"
        "    first = not marks.exists()\n"
        "    marks.touch()\n"
        "    if first:\n"
        "        raise RuntimeError(words)\n"
        "def test_always():\n"
        "    raise RuntimeError('Page.evaluate: Target crashed')\n"
    )
    how = ["-c", environment.ROOT / "pyproject.toml", "--rootdir", tmp_path, "-p", "no:cacheprovider", "-q"]
    ran = subprocess.run(
        [sys.executable, "-m", "pytest", *how, tmp_path], capture_output=True, text=True, check=False
    )
    assert "2 failed, 1 passed, 2 rerun" in ran.stdout, ran.stdout[-1500:]
