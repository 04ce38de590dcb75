"""Runs inside the runtime itself, under Node at build time: finds what is imported, and makes its bytecode.

Bytecode must come from the very Python that will run it, and only a running Python can say what an
import really brings in. So the stock runtime works through everything that `calc` can be asked,
entries that are refused included, and what was imported by then is what is packed.
"""

import ast
import io
import json
import marshal
import re
import sys
import zipfile
from importlib import import_module
from importlib.util import MAGIC_NUMBER
from pathlib import Path

# Imported from inside a function, or by the interpreter itself, only when something goes wrong or
# grows large: no run through the calculators can be relied on to reach them.
LATE = (
    "_ast_unparse",  # inspect: a default or annotation shown in a message
    "_pylong",  # the interpreter: reading or writing an integer of thousands of digits
    "_strptime",  # the interpreter: time.strptime
    "difflib",  # "did you mean"
    "traceback",  # the text of a fault
)
# Run by Python before all else: while everything is being imported, a look for garbage finds none, and
# takes a tenth of the start. `python.mjs` turns it on again.
FIRST = {"sitecustomize.py": b"import gc\ngc.disable()\n"}
# `python -m calc` belongs to the command line, not to the browser.
COMMAND = "__main__"
# What draws the codes of a size sheet: packed by itself, and fetched only when a sheet is asked for.
CODES = "segno"
# A module of a station's calculators, and the station. What it says of itself (`__init__`) belongs to the
# core, as does what stations share; what it checks and orders comes with the job, which asks all stations at
# once.
CALCULATORS = re.compile(r"calc\.stations\.(?!shared\b)(\w+)\.(?!(__init__|checks|orders)$)")
EPOCH = (1980, 1, 1, 0, 0, 0)


def make(calc: str, out: str) -> None:
    """Write python_stdlib.zip, calc.zip, a zip for each station, core.json and codes.zip into `out`, from the
    package folder `calc` and its neighbour segno."""
    sys.dont_write_bytecode = True
    sys.path.insert(0, str(Path(calc).parent))
    Path(out, "core.json").write_text(json.dumps(core(), indent=0))
    import_all(Path(calc))
    from rehearsal import rehearse

    rehearse()
    library = library_files()
    Path(out, "python_stdlib.zip").write_bytes(zip_of(library))
    files = package_files(Path(calc), {COMMAND})
    parts = stations_of(files)
    Path(out, "calc.zip").write_bytes(
        zip_of({n: files[n] for n in files if not any(n in p for p in parts.values())})
    )
    Path(out, "stations").mkdir()
    for name, part in parts.items():
        Path(out, "stations", f"{name}.zip").write_bytes(zip_of(part))
    codes = import_module(CODES)
    beyond = {name: code for name, code in library_files().items() if name not in library}
    Path(out, "codes.zip").write_bytes(
        zip_of(beyond | package_files(Path(codes.__file__).parent, {"cli", "helpers"}))
    )


def core() -> list[str]:
    """What Python must have imported to work any calculator, without the calculators: in the order in which
    it is first asked for."""
    before = set(sys.modules)
    import_module("calc.page.live")
    import_module("calc.stations.index").every()
    return [name for name in sys.modules if name not in before and not CALCULATORS.match(name)]


def stations_of(files: dict[str, bytes]) -> dict[str, dict[str, bytes]]:
    """Of the files of `calc`, those with each station's calculators, by the station's name."""
    parts: dict[str, dict[str, bytes]] = {}
    for name, content in files.items():
        if found := CALCULATORS.match(re.sub(r"\.pyc?$", "", name).replace("/", ".")):
            parts.setdefault(found[1], {})[name] = content
    return parts


def import_all(calc: Path) -> None:
    for path in sorted(calc.rglob("*.py")):
        if path.stem == COMMAND:
            continue
        parts = path.relative_to(calc.parent).with_suffix("").parts
        import_module(".".join(parts[:-1] if parts[-1] == "__init__" else parts))
        for name in imports_anywhere(path):
            if name != CODES:
                import_module(name)
    for name in LATE:
        import_module(name)


def imports_anywhere(path: Path):
    """The modules that a file imports on any path through it, inside functions too."""
    for node in ast.walk(ast.parse(path.read_bytes())):
        if isinstance(node, ast.Import):
            yield from (alias.name for alias in node.names)
        elif isinstance(node, ast.ImportFrom) and not node.level:
            yield node.module


def library_files() -> dict[str, bytes]:
    """What was imported from the zipped standard library (not built in, not frozen, not `calc`), as
    bytecode."""
    archive = next(entry for entry in sys.path if entry.endswith(".zip"))
    origins = [
        getattr(getattr(module, "__spec__", None), "origin", None) or "" for module in sys.modules.values()
    ]
    paths = [origin.removeprefix(archive + "/") for origin in origins if origin.startswith(archive + "/")]
    with zipfile.ZipFile(archive) as library:
        sources = FIRST | {path: library.read(path) for path in paths}
    return {path + "c": bytecode(source, path, optimize=2) for path, source in sources.items()}


def package_files(package: Path, left_out: set[str]) -> dict[str, bytes]:
    """A package as it is packed: modules as bytecode, its data as they are."""
    files = {}
    for path in sorted(p for p in package.rglob("*") if p.is_file() and "__pycache__" not in p.parts):
        name = path.relative_to(package.parent).as_posix()
        if path.suffix not in (".py", ".pyi", ".typed"):
            files[name] = path.read_bytes()
        elif path.suffix == ".py" and path.stem not in left_out:
            files[name + "c"] = bytecode(path.read_bytes(), name)
    return files


def bytecode(source: bytes, name: str, optimize: int = 0) -> bytes:
    """A .pyc without line numbers, a third smaller, that is loaded without a look at its source.

    A fault then names file and function only; for its line, give the same entries to `python -m calc`.
    `optimize=2` leaves docstrings and assertions out.
    """
    code = without_lines(compile(source, name, "exec", dont_inherit=True, optimize=optimize))
    unchecked = (1).to_bytes(4, "little") + bytes(8)  # PEP 552: named by a hash, which nobody is to check
    return MAGIC_NUMBER + unchecked + marshal.dumps(code)


def without_lines(code):
    inner = tuple(
        without_lines(constant) if isinstance(constant, type(code)) else constant
        for constant in code.co_consts
    )
    return code.replace(co_consts=inner, co_linetable=b"")


def zip_of(files: dict[str, bytes]) -> bytes:
    """A stored zip, the same for the same files: the host compresses it better as a whole."""
    buffer = io.BytesIO()
    with zipfile.ZipFile(buffer, "w", zipfile.ZIP_STORED) as archive:
        for name in sorted(files):
            archive.writestr(zipfile.ZipInfo(name, EPOCH), files[name])
    return buffer.getvalue()
