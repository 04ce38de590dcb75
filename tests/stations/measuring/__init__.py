"""Calculators of measuring, asked as a reader asks them: with texts."""

from calc.stations.index import find
from tests.stations import heads


def asked(id: str, output: str, unit: str = ""):
    """A function of entries that evaluates the calculator and gives one output, counted in `unit`; a bare ratio without one."""
    return heads.asked(id, output, unit) if unit else lambda **entries: find(id)(**entries)[output]
