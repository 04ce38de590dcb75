"""Calculators of the heads, asked as a reader asks them: with texts."""
from calc.calculator import evaluate
from calc.quantity import to_unit
from calc.stations import find


def asked(id: str, output: str, unit: str):
    """A function of entries that evaluates the calculator and gives one output, counted in `unit`."""
    def got(**entries) -> float:
        calculator = find(id)
        return to_unit(evaluate(calculator, entries)[output], calculator.output[output].form.kind.find(unit))
    return got
