"""The copy of a calculator that is spoilt is the same calculator, declared another way."""

import importlib.util
import sys
from pathlib import Path

import pytest

from calc.declare.calculator import evaluate
from calc.stations import index as stations
from scripts import environment
from scripts.nightly import mutants


def module_of(calculator) -> Path:
    return Path(sys.modules[calculator.function.__module__].__file__)


@pytest.mark.parametrize("id", ["seat-fit", "stack-up", "rod-bolt"])
def test_a_calculator_declared_below_its_function_is_the_same(id, tmp_path):
    calculator = stations.find(id)
    path = module_of(calculator)
    source = mutants.undecorated(path.read_text(encoding="utf-8"))
    assert "\n@calculator" not in source and f"\n{calculator.function.__name__} = calculator(" in source
    copy = tmp_path / path.name
    copy.write_text(source, encoding="utf-8")
    spec = importlib.util.spec_from_file_location(calculator.function.__module__, copy)
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    made = getattr(module, calculator.function.__name__)
    assert {key: n.value for key, n in evaluate(made).outputs.items()} == {
        key: n.value for key, n in evaluate(calculator).outputs.items()
    }


def test_every_module_of_formulas_belongs_to_a_group_and_every_group_has_its_tests():
    spoilt = {
        path for files, _ in mutants.GROUPS.values() for path in mutants.spoilt_in(environment.ROOT, files)
    }
    stand_in = [f"stations/{name}" for name in stations.STATIONS]
    for folder in ("formulas", "reference/standards", *stand_in):
        modules = set((environment.ROOT / "calc" / folder).rglob("*.py"))
        assert modules and modules <= spoilt
    assert all((environment.ROOT / test).exists() for _, tests in mutants.GROUPS.values() for test in tests)


def test_what_is_spoilt_stands_in_a_copy_with_the_outside_numbers_beside_it_only(tmp_path, monkeypatch):
    monkeypatch.setattr(mutants, "FOLDER", tmp_path)
    box = mutants.prepare("rods")
    for id in stations.station("rods").CALCULATORS:
        path = box / module_of(stations.find(id)).relative_to(environment.ROOT)
        assert "\n@calculator" not in path.read_text(encoding="utf-8"), path
    tables = [path for path in (box / "tests/checks").rglob("*.py") if path.name != "__init__.py"]
    assert tables and {path.parent.name for path in tables} == {"rods"}


def test_what_is_no_calculator_is_left_as_it_is():
    assert mutants.undecorated("def area(d):\n    return d * d\n") == "def area(d):\n    return d * d\n"
