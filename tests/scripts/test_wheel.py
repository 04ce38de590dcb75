"""The optional wheel, in the stock runtime: it must answer as CPython does here."""

import json
import subprocess
import sys
import zipfile
from pathlib import Path

import pytest

from calc.page.live import answer
from scripts import environment
from scripts.runtime import bundle, wheel

REQUEST = json.dumps(
    {"call": "evaluate", "calculator": "seat-fit", "entries": {"ring_outside": "37.61"}, "system": "metric"}
)


@pytest.fixture(scope="module")
def source(tmp_path_factory) -> Path:
    return wheel.source_wheel(tmp_path_factory.mktemp("wheel"))


def ask_stock_runtime(path: Path) -> str:
    done = subprocess.run(
        [
            environment.node(),
            Path(__file__).with_name("wheel.mjs"),
            bundle.packages(environment.CACHE) / "pyodide",
            path,
        ],
        input=REQUEST,
        capture_output=True,
        text=True,
        timeout=600,
    )
    assert done.returncode == 0, done.stderr[-2000:]
    return done.stdout


def test_source_wheel_answers_as_cpython(source):
    assert source.name.endswith("-py3-none-any.whl")
    assert json.loads(ask_stock_runtime(source)) == json.loads(answer(REQUEST))


def test_an_installed_package_prints_a_sheet(source, tmp_path):
    """With its style and its engines' sheets: what no .py holds must be in the package too."""
    with zipfile.ZipFile(source) as packed:
        packed.extractall(tmp_path)
    job = environment.ROOT / "tests/job/orchard.json"
    told = [
        subprocess.run(
            [sys.executable, "-m", "calc", "sheet", str(job)],
            cwd=folder,
            env={"PYTHONPATH": str(folder), "PYTHONUTF8": "1"},
            capture_output=True,
            text=True,
            encoding="utf-8",
            check=True,
        ).stdout
        for folder in (tmp_path, environment.ROOT)
    ]
    assert told[0] == told[1] and "@page sheet" in told[0]
    version = subprocess.run(
        [sys.executable, "-m", "calc", "--version"], cwd=tmp_path, capture_output=True, text=True, check=True
    ).stdout
    assert source.name.startswith(f"sizebook-{version.split()[1]}-")


def test_another_python_than_the_runtimes_is_refused(source):
    major, minor = sys.version_info[:2]
    with pytest.raises(
        wheel.WheelError, match=rf"this is {major}\.{minor}, the runtime is {major}\.{minor + 1}"
    ):
        wheel.compiled_wheel(source, (major, minor + 1))


def test_wheel_compiled_by_pyodide_build_answers_as_cpython(source):
    runtime = wheel.runtime_python(environment.CACHE)
    if sys.version_info[:2] != runtime:
        pytest.skip(
            f"pyodide-build compiles with its own Python, and the runtime's is {runtime[0]}.{runtime[1]}"
        )
    pytest.importorskip("pyodide_build", reason="pyodide-build is not installed; it is optional")
    compiled = wheel.compiled_wheel(source, runtime)
    with zipfile.ZipFile(compiled) as packed:
        assert any(name.endswith(".pyc") for name in packed.namelist())
    assert json.loads(ask_stock_runtime(compiled)) == json.loads(answer(REQUEST))
