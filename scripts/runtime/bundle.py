"""Puts the browser's Python into the built site.

    site/runtime/<python>/   changes with a new runtime
        pyodide.mjs pyodide.asm.mjs           its loader
        cold.wasm                             its program, for what the hot one leaves out
        python_stdlib.zip codes.zip           the library that calc needs, and what draws codes, as bytecode
        pyodide.asm.wasm                      its program, only for a start without the memory
    site/runtime/<calc>/     changes with every edit of a calculator
        hot.wasm                              of the program, what calculators were seen to run
        memory.wasm                           Python's memory with all in it that calculators need
        calc.zip                              the package as bytecode, without its calculators
        stations/<station>.zip                a station's calculators as bytecode

Both names are hashes of what lies inside, so both may be cached for ever, and a reader fetches after an
edit only the second. The build id is the two names joined: `<python>-<calc>`.
"""

from __future__ import annotations

import hashlib
import json
import os
import shutil
import subprocess
import tempfile
import zipfile
from importlib.util import find_spec
from pathlib import Path

from scripts import environment
from scripts.runtime import inside, split

HERE = Path(__file__).resolve().parent
CALC = environment.ROOT / "calc"
LOADER = "pyodide.asm.mjs"
RUNTIME_FILES = ("pyodide.mjs", LOADER, "pyodide.asm.wasm")
MADE_FILES = ("python_stdlib.zip", "pyodide-lock.json", "codes.zip")
CALC_FILES = ("calc.zip", "hot.wasm", "memory.wasm")
STATIONS = "stations"  # folder with a zip for each
# What browsers start Python from. Bytecode takes them longer than the memory; sources longer still, but
# nothing has to be made of them: they are for whoever edits.
MEMORY, BYTECODE, SOURCE = "memory", "bytecode", "source"
SCRIPTS = {"assets/js/idb.mjs": "idb/build/index.js"}  # place in the site: file in node_modules
START = tuple(f"docs/assets/js/{name}.mjs" for name in ("python", "program", "memory"))
STANDINS = HERE / "standins"  # for modules of the runtime that its start imports and no calculator needs
KEPT = 4  # every edit of a calculator makes another twenty megabytes


class BundleError(Exception):
    """The runtime could not be made; the message holds the words of the program that failed."""


def build(site_dir: Path, cache_dir: Path, calc: Path = CALC, start: str = MEMORY) -> str:
    """Write `site_dir`/runtime and the scripts that are others' work, and return the build id; takes from
    `cache_dir` what has been made before. `start` says what browsers start Python from."""
    package = packages(cache_dir) / "pyodide"
    made = {MEMORY: memory, BYTECODE: bytecode, SOURCE: source}[start](cache_dir, calc)
    woken = start == MEMORY
    python = _place(
        site_dir,
        [(program(cache_dir) if woken and name == LOADER else package) / name for name in RUNTIME_FILES]
        + [made / name for name in MADE_FILES]
        + ([program(cache_dir) / "cold.wasm"] if woken else [])
        + [HERE / "NOTICE.txt"],
    )
    calculators = _place(
        site_dir, [made / name for name in (CALC_FILES if woken else CALC_FILES[:1])], made / STATIONS
    )
    for name, file in SCRIPTS.items():
        licence = packages(cache_dir) / file.partition("/")[0] / "LICENSE"
        (site_dir / name).parent.mkdir(parents=True, exist_ok=True)
        (site_dir / name).write_bytes(
            b"/*\n" + licence.read_bytes() + b"*/\n" + (packages(cache_dir) / file).read_bytes()
        )
    return f"{python}-{calculators}"


def packages(cache_dir: Path, locked: Path = HERE) -> Path:
    """The folder node_modules with what package-lock.json in the folder `locked` names, installed once."""
    lock = [locked / "package.json", locked / "package-lock.json"]
    return (
        _make_once(cache_dir.resolve() / "npm" / _digest(lock), lambda folder: _install(lock, folder))
        / "node_modules"
    )


def program(cache_dir: Path) -> Path:
    """The folder with what is made of the runtime's program, before anything is known of `calc`."""
    package = packages(cache_dir) / "pyodide"

    def take_apart(folder: Path) -> None:
        loader = (package / LOADER).read_text(encoding="utf-8")
        whole = split.trimmed((package / "pyodide.asm.wasm").read_bytes(), loader)
        (folder / LOADER).write_text(split.at_once(loader), encoding="utf-8")
        (folder / "trimmed.wasm").write_bytes(whole)
        (folder / "marked.wasm").write_bytes(split.marked(split.hot(whole)))
        (folder / "cold.wasm").write_bytes(split.cold(whole))

    recipe = [HERE / "package-lock.json", HERE / "split.py"]
    return _make_once(cache_dir.resolve() / "program" / _digest(recipe, [HERE]), take_apart)


def library(cache_dir: Path) -> Path:
    """Python's own library as it comes, but with our stand-ins."""
    standins = sorted(STANDINS.rglob("*.py"))

    def put_together(folder: Path) -> None:
        names = {path.relative_to(STANDINS).as_posix(): path for path in standins}
        with (
            zipfile.ZipFile(packages(cache_dir) / "pyodide/python_stdlib.zip") as stock,
            zipfile.ZipFile(folder / "library.zip", "w") as ours,
        ):
            for entry in stock.infolist():
                ours.writestr(
                    entry,
                    names[entry.filename].read_bytes() if entry.filename in names else stock.read(entry),
                )

    recipe = [HERE / "package-lock.json", *standins]
    made = _make_once(cache_dir.resolve() / "library" / _digest(recipe, [HERE]), put_together)
    return made / "library.zip"


def bytecode(cache_dir: Path, calc: Path = CALC) -> Path:
    """The folder with the library and `calc` as bytecode, made once for the same sources."""
    sources = sorted(p for p in calc.rglob("*") if p.is_file() and "__pycache__" not in p.parts)
    recipe = [HERE / name for name in ("package-lock.json", "compile.mjs", "inside.py", "rehearsal.py")]
    segno = _segno()
    digest = _digest(
        recipe + sorted(STANDINS.rglob("*.py")) + sources + sorted(segno.glob("*.py")),
        named_from=[calc.parent, HERE],
    )

    def compile_all(folder: Path) -> None:
        script = str(HERE / "compile.mjs")
        _run(
            [
                environment.node(),
                script,
                str(packages(cache_dir) / "pyodide"),
                str(library(cache_dir)),
                str(calc.resolve()),
                str(segno),
                str(folder),
            ],
            cwd=folder,
        )

    made = _make_once(cache_dir.resolve() / "bytecode" / digest, compile_all)
    _forget_all_but(KEPT, made.parent)
    return made


def source(cache_dir: Path, calc: Path = CALC) -> Path:
    """The folder with `calc` and what it stands on as sources: made at once, and anew each time."""
    folder = cache_dir.resolve() / "source"
    shutil.rmtree(folder, ignore_errors=True)
    (folder / STATIONS).mkdir(parents=True)
    files = package_files(calc)
    parts = inside.stations_of(files)
    for name, part in parts.items():
        (folder / STATIONS / f"{name}.zip").write_bytes(inside.zip_of(part))
    core = {n: content for n, content in files.items() if not any(n in part for part in parts.values())}
    (folder / "calc.zip").write_bytes(inside.zip_of(core))
    (folder / "codes.zip").write_bytes(inside.zip_of(package_files(_segno())))
    shutil.copyfile(library(cache_dir), folder / "python_stdlib.zip")
    shutil.copyfile(packages(cache_dir) / "pyodide/pyodide-lock.json", folder / "pyodide-lock.json")
    return folder


def package_files(package: Path) -> dict[str, bytes]:
    return {
        path.relative_to(package.parent).as_posix(): path.read_bytes()
        for path in sorted(package.rglob("*"))
        if path.is_file() and "__pycache__" not in path.parts
    }


def memory(cache_dir: Path, calc: Path = CALC) -> Path:
    """The folder with the bytecode, Python's memory with it imported, and the part of the program that runs
    then; made once."""
    made, parts = bytecode(cache_dir, calc), program(cache_dir)
    recipe = [HERE / name for name in ("package-lock.json", "remember.mjs", "rehearsal.py", "split.py")] + [
        environment.ROOT / name for name in START
    ]

    def remember(folder: Path) -> None:
        script = str(HERE / "remember.mjs")
        _run(
            [
                environment.node(),
                script,
                str(packages(cache_dir) / "pyodide"),
                str(made),
                str(parts / "trimmed.wasm"),
                str(parts / "marked.wasm"),
                str(folder),
            ],
            cwd=folder,
        )
        seen = json.loads((folder / "seen.json").read_text())
        (folder / "hot.wasm").write_bytes(split.hot((parts / "trimmed.wasm").read_bytes(), set(seen)))
        for name in (*MADE_FILES, "calc.zip"):
            shutil.copyfile(made / name, folder / name)
        shutil.copytree(made / STATIONS, folder / STATIONS)

    done = _make_once(
        cache_dir.resolve()
        / "memory"
        / _digest(
            recipe
            + [made / name for name in ("calc.zip", "core.json", "python_stdlib.zip")]
            + sorted((made / STATIONS).iterdir())
        ),
        remember,
    )
    _forget_all_but(KEPT, done.parent)
    return done


def _segno() -> Path:
    """The folder of the library that draws codes."""
    found = find_spec("segno")
    if found is None:
        raise BundleError(
            "segno is not installed, which draws the codes of a size sheet; it is in"
            " scripts/requirements/site.txt."
        )
    return Path(found.origin).parent


def _install(lock: list[Path], folder: Path) -> None:
    for file in lock:
        shutil.copy(file, folder)
    # No package needs its install script; the environment's certificates are kept for registries behind a
    # proxy.
    _run(
        [*environment.npm(environment.node()), "ci", "--ignore-scripts", "--no-audit", "--no-fund"],
        cwd=folder,
    )


def _make_once(folder: Path, make) -> Path:
    """`folder`, filled by `make` where it does not exist; never left half made."""
    if folder.exists():
        return folder
    folder.parent.mkdir(parents=True, exist_ok=True)
    with tempfile.TemporaryDirectory(dir=folder.parent, ignore_cleanup_errors=True) as unfinished:
        make(Path(unfinished))
        try:
            os.rename(unfinished, folder)
        except OSError:
            if not folder.exists():  # else another build was faster, with the same result
                raise
    return folder


def _forget_all_but(newest: int, folder: Path) -> None:
    for old in sorted(folder.iterdir(), key=lambda path: path.stat().st_mtime, reverse=True)[newest:]:
        shutil.rmtree(old, ignore_errors=True)


def _run(command: list[str], cwd: Path) -> None:
    done = subprocess.run(command, cwd=cwd, capture_output=True, text=True)
    if done.returncode:
        # Node prints the line that failed, which in a packed file is the whole file: keep the end.
        words = "\n".join(line[:500] for line in (done.stdout + done.stderr).splitlines()[-40:])
        raise BundleError(f"{' '.join(command)} failed:\n{words}")


def _place(site_dir: Path, files: list[Path], parts: Path | None = None) -> str:
    """Copy files, and those of the folder `parts` with it, into a folder of the site that is named by their
    content; returns the name."""
    inside = sorted(parts.iterdir()) if parts else []
    name = _digest(files + inside, [parts.parent] if parts else [])
    folder = site_dir / "runtime" / name
    folder.mkdir(parents=True, exist_ok=True)
    for file in files + inside:
        place = folder / (file.relative_to(parts.parent) if file in inside else file.name)
        place.parent.mkdir(exist_ok=True)
        shutil.copyfile(file, place)
    return name


def _digest(files: list[Path], named_from: list[Path] = ()) -> str:
    """Short hash of names and contents."""
    total = hashlib.sha256()
    for file in files:
        base = next((b for b in named_from if file.is_relative_to(b)), file.parent)
        total.update(file.relative_to(base).as_posix().encode() + b"\0")
        total.update(hashlib.sha256(file.read_bytes()).digest())
    return total.hexdigest()[:12]
