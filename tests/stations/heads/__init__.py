"""Calculators of the heads, asked as a reader asks them: with texts."""

from calc.core.spelling import unit_spelled
from calc.core.writing import to_unit
from calc.declare.calculator import evaluate
from calc.stations.index import find


def asked(id: str, output: str, unit: str):
    """A function of entries that evaluates the calculator and gives one output, counted in `unit`."""

    def got(**entries) -> float:
        calculator = find(id)
        return to_unit(
            evaluate(calculator, entries)[output], unit_spelled(calculator.output[output].form.kind, unit)
        )

    return got
