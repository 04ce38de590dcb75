"""The edit loop: an edited formula is on the served page by itself, and the page is told to load anew."""

import os
import re
import shutil
import signal
import subprocess
import time
from urllib.request import urlopen

import pytest

from scripts import environment
from scripts.watch import RELOAD, STATE, WORKER

PATIENCE = 180  # s, on a machine that does much else; by itself an edit takes less than five
FORMULA, PAGE = "calc/formulas/trigonometry.py", "measuring/trigonometry/"
OUTPUT = re.compile(r"Sizebook: (http://localhost:\d+/)")


@pytest.fixture
def checkout(tmp_path):
    """A copy of the sources, with the environment and the packages that are installed."""
    for name in ("calc", "docs", "overrides", "scripts", "tests"):
        shutil.copytree(
            environment.ROOT / name, tmp_path / name, ignore=shutil.ignore_patterns("__pycache__")
        )
    for name in ("mkdocs.yml", "CHANGELOG.md", "README.md", "DEVELOPERS.md", "pyproject.toml"):
        if (environment.ROOT / name).exists():
            shutil.copy(environment.ROOT / name, tmp_path)
    (tmp_path / ".venv").symlink_to(environment.VENV.resolve())
    (tmp_path / ".cache").mkdir()
    (tmp_path / ".cache/npm").symlink_to(environment.CACHE.resolve() / "npm")
    return tmp_path


def read(address: str) -> str:
    with urlopen(address, timeout=PATIENCE) as answer:
        return answer.read().decode()


def height(checkout) -> str:
    """What blocks the command says a sine bar wants in its example, from the sources as they stand."""
    command = [str(environment.PYTHON), "-m", "calc", "run", "sine-bar", "--example"]
    text = subprocess.run(command, cwd=checkout, capture_output=True, text=True, check=True).stdout
    return re.search(r"\d+\.\d{3} mm", text)[0].removesuffix(" mm")


def test_an_edited_formula_shows_on_the_open_page(checkout):
    command = [str(environment.PYTHON), "scripts/serve.py", "--watch", "--port", "0"]
    serving = subprocess.Popen(
        command,
        cwd=checkout,
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        text=True,
        start_new_session=True,
    )
    try:
        address = next(found[1] for line in serving.stdout if (found := OUTPUT.search(line)))
        before, state = height(checkout), read(address + STATE[1:])
        html = read(address + PAGE)
        assert before in html and f'src="{RELOAD}"' in html
        assert STATE in read(address + RELOAD[1:]) and "unregister" in read(address + WORKER[1:])
        path = checkout / FORMULA
        edited = path.read_text(encoding="utf-8").replace(
            "length * sin(angle)", "1.5 * length * sin(angle)", 1
        )
        path.write_text(edited, encoding="utf-8")
        after, began = height(checkout), time.monotonic()
        assert after != before
        while read(address + STATE[1:]) in (state, "") or after not in read(address + PAGE):
            assert time.monotonic() - began < PATIENCE
            time.sleep(0.2)
        print(f"{time.monotonic() - began:.1f} s")
        runtime = next((checkout / "site/runtime").glob("*/stations/measuring.zip")).read_bytes()
        assert b"calc/stations/measuring/sine_bar" in runtime
        path.write_text(edited.replace("def sine_height", "def sine height"), encoding="utf-8")
        told = []
        for line in serving.stdout:
            told.append(line)
            if line.startswith("What is served is as it was before."):
                break
        assert any("SyntaxError" in line for line in told) and after in read(address + PAGE)
    finally:
        os.killpg(serving.pid, signal.SIGTERM)
        serving.communicate()
