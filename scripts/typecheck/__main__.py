"""Checks the types of the site's own JavaScript: `python -m scripts.typecheck`.

The modules carry their types in JSDoc comments; TypeScript reads them and writes nothing. Shapes that several
modules share are in `shapes.ts`, what the pages' markup holds in `page.ts`. What runs in a page, in a worker
and under Node knows other things, so each is a program of its own.
"""

from __future__ import annotations

import json
import subprocess
import sys
import tempfile
from pathlib import Path

from jinja2 import Template

from scripts import environment
from scripts.runtime import bundle

HERE = Path(__file__).resolve().parent
PROGRAMS = ("page", "worker", "node")


def faults(root: Path = environment.ROOT) -> str:
    """What TypeScript finds wrong in the JavaScript of `root`, a fault a line; "" where nothing is."""
    compiler, runtime = (bundle.packages(environment.CACHE, folder) for folder in (HERE, bundle.HERE))
    # Where packages lie is known only here. Two are known by their types alone: idb is put among the modules
    # by the build, and Pyodide comes from a folder that is named when it is imported.
    known = {
        "typeRoots": [str(compiler / "@types"), str(runtime / "@types")],
        "paths": {
            "idb": [str(runtime / "idb/build/index.d.ts")],
            "pyodide": [str(runtime / "pyodide/pyodide.d.ts")],
        },
    }
    found = ""
    with tempfile.TemporaryDirectory() as folder:
        for name in PROGRAMS:
            config = {"extends": str(root / "scripts/typecheck" / f"{name}.json"), "compilerOptions": known}
            if name == "page":
                config["files"] = [str(_early(root, Path(folder)))]
            (Path(folder) / f"{name}.json").write_text(json.dumps(config), encoding="utf-8")
            done = subprocess.run(
                [
                    environment.node(),
                    compiler / "typescript/bin/tsc",
                    "--project",
                    Path(folder) / f"{name}.json",
                ],
                cwd=root,
                capture_output=True,
                text=True,
                check=False,
            )
            if done.returncode and not done.stdout:
                raise RuntimeError(f"TypeScript could not be run: {done.stderr[-500:]}")
            found += done.stdout
    return found


def _early(root: Path, folder: Path) -> Path:
    """The script of a page's head, which is a template, as a page has it; its lines stay where they are."""
    path = folder / "early.js"
    template = Template((root / "overrides/early.js").read_text(encoding="utf-8"))
    path.write_text(template.render(config={"extra": {"engines": ["TS-16"]}}), encoding="utf-8")
    return path


if __name__ == "__main__":
    sys.exit(faults() or None)
