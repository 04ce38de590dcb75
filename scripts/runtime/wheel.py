"""Optional: `calc` as a wheel, for any other page that runs Pyodide (`pyodide.loadPackage(address)`).

    python -m scripts.runtime.wheel OUT [--compile]

The site does not need it. A wheel with bytecode starts sooner, and `pyodide py-compile` (package
pyodide-build) makes one; but it compiles with the Python that it runs on, so it serves only where that is
the runtime's own version. Elsewhere the source wheel works too.
"""

from __future__ import annotations

import argparse
import json
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

from scripts import environment
from scripts.runtime import bundle


class WheelError(Exception):
    """The wheel cannot be made; says why, and what would do."""


def source_wheel(out: Path) -> Path:
    """Build the wheel with pip into `out`; returns its path."""
    out.mkdir(parents=True, exist_ok=True)
    with tempfile.TemporaryDirectory() as copy:  # building leaves files beside the sources
        for name in ("pyproject.toml", "README.md", "LICENSE"):
            shutil.copy(environment.ROOT / name, copy)
        shutil.copytree(bundle.CALC, Path(copy) / "calc", ignore=shutil.ignore_patterns("__pycache__"))
        command = [
            sys.executable,
            "-m",
            "pip",
            "--disable-pip-version-check",
            "wheel",
            "--quiet",
            "--no-deps",
            "--wheel-dir",
            str(out),
            copy,
        ]
        done = subprocess.run(command, capture_output=True, text=True)
    if done.returncode:
        raise WheelError(f"pip could not build the wheel:\n{done.stdout}{done.stderr}")
    return max(out.glob("*.whl"), key=lambda path: path.stat().st_mtime)


def compiled_wheel(wheel: Path, runtime: tuple[int, int]) -> Path:
    """Compile a wheel with pyodide-build; returns the path of the one with bytecode, which then stands beside
    it."""
    host = sys.version_info[:2]
    if host != runtime:
        raise WheelError(
            f"pyodide-build compiles with the Python that it runs on: this is {host[0]}.{host[1]}, the"
            f" runtime is {runtime[0]}.{runtime[1]}, which would refuse the bytecode. Use the source wheel,"
            f" or Python {runtime[0]}.{runtime[1]}."
        )
    command = shutil.which("pyodide", path=str(Path(sys.executable).parent)) or shutil.which("pyodide")
    if not command:
        raise WheelError("The command pyodide is missing: pip install pyodide-build.")
    before = set(wheel.parent.iterdir())
    done = subprocess.run(
        [command, "py-compile", "--keep", "--silent", str(wheel)], capture_output=True, text=True
    )
    made = set(wheel.parent.iterdir()) - before
    if done.returncode or len(made) != 1:
        raise WheelError(f"pyodide py-compile failed:\n{done.stdout}{done.stderr}")
    return made.pop()


def runtime_python(cache_dir: Path) -> tuple[int, int]:
    """Version of the Python in the runtime."""
    lock = json.loads((bundle.packages(cache_dir) / "pyodide/pyodide-lock.json").read_text(encoding="utf-8"))
    major, minor, *_ = lock["info"]["python"].split(".")
    return int(major), int(minor)


def main() -> None:
    parser = argparse.ArgumentParser(
        prog="python -m scripts.runtime.wheel", description=__doc__.splitlines()[0]
    )
    parser.add_argument("out", type=Path, help="folder for the wheel")
    parser.add_argument("--compile", action="store_true", help="also one with bytecode, by pyodide-build")
    chosen = parser.parse_args()
    try:
        wheel = source_wheel(chosen.out)
        print(wheel)
        if chosen.compile:
            print(compiled_wheel(wheel, runtime_python(environment.CACHE)))
    except WheelError as error:
        sys.exit(str(error))


if __name__ == "__main__":
    main()
