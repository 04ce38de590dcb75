"""Runs inside the runtime itself, under Node at build time: finds what is imported, and makes its bytecode.

Bytecode must come from the very Python that will run it, and only a running Python can say what an
import really brings in. So the stock runtime works through everything that `calc` can be asked,
entries that are refused included, and what was imported by then is what is packed.
"""

import ast
import io
import json
import py_compile
import sys
import zipfile
from importlib import import_module
from pathlib import Path

# Imported from inside a function, or by the interpreter itself, only when something goes wrong or
# grows large: no run through the calculators can be relied on to reach them.
LATE = (
    "_ast_unparse",  # inspect: a default or annotation shown in a message
    "_pylong",       # the interpreter: reading or writing an integer of thousands of digits
    "_strptime",     # the interpreter: time.strptime
    "difflib",       # "did you mean"
    "traceback",     # the text of a fault
)
# `python -m calc` belongs to the command line, not to the browser.
COMMAND = "__main__"
# A reader types anything; each of these goes into every entry once.
TYPED = ("", "  ", "abc", "0", "-1", "1e400", "nan", "37,9", "1 2 3", "1 31/64 in", "5 kg", "9" * 5000)
EPOCH = (1980, 1, 1, 0, 0, 0)


def make(calc: str, out: str) -> None:
    """Write python_stdlib.zip and calc.zip into `out` from the package folder `calc`."""
    sys.dont_write_bytecode = True
    sys.path.insert(0, str(Path(calc).parent))
    import_all(Path(calc))
    rehearse()
    Path(out, "python_stdlib.zip").write_bytes(zip_of(library_files()))
    Path(out, "calc.zip").write_bytes(zip_of(calc_files(Path(calc))))


def import_all(calc: Path) -> None:
    for path in sorted(calc.rglob("*.py")):
        if path.stem == COMMAND:
            continue
        parts = path.relative_to(calc.parent).with_suffix("").parts
        import_module(".".join(parts[:-1] if parts[-1] == "__init__" else parts))
        for name in imports_anywhere(path):
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


def rehearse() -> None:
    """Ask every calculator for its example, and with every entry spoilt, in both unit systems."""
    from calc import stations
    from calc.page.live import answer

    def ask(calculator, entries, system):
        answer(json.dumps({"call": "evaluate", "calculator": calculator.id, "entries": entries, "system": system}))

    for calculator in stations.every():
        for system in ("metric", "inch"):
            ask(calculator, {}, system)
            ask(calculator, {"no such entry": "1"}, system)
            for entry in calculator.inputs:
                for text in TYPED:
                    ask(calculator, {entry.name: text}, system)


def library_files() -> dict[str, bytes]:
    """What was imported from the zipped standard library (not built in, not frozen, not `calc`), as bytecode."""
    archive = next(entry for entry in sys.path if entry.endswith(".zip"))
    origins = [getattr(getattr(module, "__spec__", None), "origin", None) or "" for module in sys.modules.values()]
    paths = [origin.removeprefix(archive + "/") for origin in origins if origin.startswith(archive + "/")]
    with zipfile.ZipFile(archive) as library:
        return {path + "c": bytecode(library.read(path), path) for path in paths}


def calc_files(calc: Path) -> dict[str, bytes]:
    """The package as it is packed: modules as bytecode, its data as they are."""
    files = {}
    for path in sorted(p for p in calc.rglob("*") if p.is_file() and "__pycache__" not in p.parts):
        name = path.relative_to(calc.parent).as_posix()
        if path.suffix != ".py":
            files[name] = path.read_bytes()
        elif path.stem != COMMAND:
            files[name + "c"] = bytecode(path.read_bytes(), name)
    return files


def bytecode(source: bytes, name: str) -> bytes:
    """A .pyc that is loaded without a look at its source, which the browser has not got."""
    Path("/tmp/module.py").write_bytes(source)
    py_compile.compile(
        "/tmp/module.py", "/tmp/module.pyc", dfile=name, doraise=True,
        invalidation_mode=py_compile.PycInvalidationMode.UNCHECKED_HASH,
    )
    return Path("/tmp/module.pyc").read_bytes()


def zip_of(files: dict[str, bytes]) -> bytes:
    """A stored zip, the same for the same files: the host compresses it better as a whole."""
    buffer = io.BytesIO()
    with zipfile.ZipFile(buffer, "w", zipfile.ZIP_STORED) as archive:
        for name in sorted(files):
            archive.writestr(zipfile.ZipInfo(name, EPOCH), files[name])
    return buffer.getvalue()
