"""Verdicts and the limits behind them: what a calculator calls a fail lies outside one of the limits that it returns, and what it lets
pass within them all. A doubt turns a verdict by its limits only (calc/doubt.py); a fail that none of them knows stays a firm one, however near."""
import pytest
from hypothesis import given

from calc import stations
from calc.calculator import _take, _work
from calc.conformance import DUST
from calc.result import Refused
from tests.entries import entries, numbers

OWN_WAY = {"reading-verdict": "weighs the doubt itself, by ISO 14253-1", "gauge-uncertainty": "is about the doubt itself"}


def measured(values, calculator) -> bool:
    """Was anything measured, so that a doubt may stand behind it?"""
    return any(getattr(number, "measured", False) for i in calculator.inputs if values[i.name] is not None for number, _ in numbers(i))


@pytest.mark.parametrize("id", [id for id in stations.ids() if id not in OWN_WAY])
def test_what_fails_lies_outside_a_limit_and_what_passes_within_all(id):
    calculator = stations.find(id)

    @given(entries(calculator))
    def sweep(asked):
        try:
            values = {t.input.name: t.value for t in _take(calculator, {name: text.split("±")[0] for name, text in asked.items()}, "metric")}
            found = _work(calculator, values)
        except Refused:
            return
        outside = [limit.words for limit in found.limits if any(margin is not None and margin < -DUST for margin in limit.margins())]
        state, headline = found.verdict.state, found.verdict.headline.plain()
        assert state != "pass" or not outside, (headline, outside)
        assert state != "fail" or outside or not measured(values, calculator), headline
    sweep()
