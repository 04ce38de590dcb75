"""The copy of a calculator that is spoilt is the same calculator, declared another way."""

import importlib.util

import pytest

from calc.declare.calculator import evaluate
from calc.stations import index as stations
from scripts import environment
from scripts.nightly import mutants


@pytest.mark.parametrize("id", ["seat-fit", "stack-up", "rod-bolt"])
def test_a_calculator_declared_below_its_function_is_the_same(id, tmp_path):
    calculator = stations.find(id)
    path = environment.ROOT / (calculator.function.__module__.replace(".", "/") + ".py")
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
        path
        for files, _ in mutants.GROUPS.values()
        for pattern in files
        for path in environment.ROOT.glob(pattern)
    }
    for folder in ("formulas", "standards", *stations.STATIONS):
        assert set((environment.ROOT / "calc" / folder).glob("*.py")) <= spoilt
    assert all((environment.ROOT / test).exists() for _, tests in mutants.GROUPS.values() for test in tests)


def test_what_is_no_calculator_is_left_as_it_is():
    assert mutants.undecorated("def area(d):\n    return d * d\n") == "def area(d):\n    return d * d\n"
