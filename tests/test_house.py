"""How long a module, a function and a calculator may be: what is longer is more than one thing."""

import ast
import sys
from pathlib import Path
from statistics import median

import pytest

from calc.stations import index as stations

ROOT = Path(__file__).resolve().parent.parent
MODULES = sorted(path.relative_to(ROOT).as_posix() for path in (ROOT / "calc").rglob("*.py"))
MOST_LINES, MOST_OF_A_FUNCTION, MEDIAN = 400, 60, 200
# Tables, which are looked up in and not read through.
TABLES = {
    "calc/core/kinds.py": "units with their factors and spellings",
    "calc/reference/materials.py": "properties of materials",
    "calc/reference/sources.py": "books and standards",
}
# What may be missing where it runs: a sheet is printed without its code then.
OPTIONAL = {"calc/job/codes.py": {"segno"}}

# module of a calculator's folder: how what is wanted of it begins
HOLDS = {"asked": "class In(", "told": "class Out(", "verdict": "def verdict_on", "remarks": "def remarks_on"}


def text(module: str) -> str:
    return (ROOT / module).read_text(encoding="utf-8")


@pytest.mark.parametrize("module", MODULES)
def test_a_module_is_one_thing(module):
    lines = text(module).count("\n")
    assert (lines > MOST_LINES) == (module in TABLES), f"{lines} lines"


@pytest.mark.parametrize("module", MODULES)
def test_a_function_is_read_at_a_glance(module):
    long = {
        node.name: node.end_lineno - node.lineno + 1
        for node in ast.walk(ast.parse(text(module)))
        if isinstance(node, (ast.FunctionDef, ast.AsyncFunctionDef))
        and node.end_lineno - node.lineno >= MOST_OF_A_FUNCTION
    }
    assert not long


def test_a_calculator_reads_like_a_page_of_a_handbook():
    """Half of the modules that hold one have at most this many lines."""
    lines = [
        text(sys.modules[stations.find(id).function.__module__].__file__).count("\n") for id in stations.ids()
    ]
    assert len(lines) == len(stations.ids()) and median(lines) <= MEDIAN


def in_a_calculators_folder(name: str) -> list[str]:
    return [path.relative_to(ROOT).as_posix() for path in sorted(ROOT.glob(f"calc/stations/*/*/{name}.py"))]


@pytest.mark.parametrize("name, begins", HOLDS.items(), ids=HOLDS)
def test_what_a_calculators_folder_holds_is_found_by_its_name(name, begins):
    modules = in_a_calculators_folder(name)
    assert modules and not [module for module in modules if f"\n{begins}" not in text(module)]


@pytest.mark.parametrize("module", MODULES)
def test_the_package_needs_nothing_but_python(module):
    """It runs in a terminal, at build and in the browser as it stands."""
    names = set()
    for node in ast.walk(ast.parse(text(module))):
        if isinstance(node, ast.Import):
            names |= {alias.name for alias in node.names}
        elif isinstance(node, ast.ImportFrom):
            names.add(node.module)
    needed = {name.partition(".")[0] for name in names} - {*sys.stdlib_module_names, "calc"}
    assert needed == OPTIONAL.get(module, set())
