"""What holds in all tests. How hard the property tests try: `quick` tries the same examples on every machine and run, `thorough` many new ones, and `mutants`
those of `quick` without looking for the simplest that fails.

    SIZEBOOK_HYPOTHESIS=thorough python3 scripts/test.py tests/test_every_calculator.py
"""

import os

from hypothesis import HealthCheck, Phase, settings

from calc.core.conformance import DUST
from calc.declare import calculator
from calc.stations import index as stations
from tests.entries import numbers

settings.register_profile(
    "quick",
    deadline=None,
    derandomize=True,
    report_multiple_bugs=False,
    suppress_health_check=[HealthCheck.too_slow],
)
settings.register_profile(
    "thorough",
    deadline=None,
    max_examples=2000,
    report_multiple_bugs=False,
    suppress_health_check=[HealthCheck.too_slow],
)
settings.register_profile("mutants", settings.get_profile("quick"), phases=[Phase.explicit, Phase.generate])
settings.load_profile(os.environ.get("SIZEBOOK_HYPOTHESIS", "quick"))


# Verdicts and the limits behind them, whatever a test asks a calculator: what is called a fail lies outside one of the limits to fail that
# it returns, and what passes within them all. A doubt turns a verdict by its limits only (calc/declare/doubt.py): a fail that none of them knows
# would stay a firm one, however near. Of two calculators the verdict is about the doubt itself.
ABOUT_DOUBT = ("reading-verdict", "gauge-uncertainty")
work = calculator._work


def work_and_look(declared, values):
    found = work(declared, values)
    margins = [(margin, limit) for limit in found.limits for margin in limit.margins() if margin is not None]
    outside, on = (
        [limit.words for margin, limit in margins if margin < -DUST],
        any(margin <= DUST for margin, limit in margins if limit.level == "fail"),
    )
    measured = any(
        getattr(number, "measured", False)
        for i in declared.inputs
        if values[i.name] is not None
        for number, _ in numbers(i)
    )
    state, headline = found.verdict.state, found.verdict.headline.plain()
    if declared.id in stations.ids() and declared.id not in ABOUT_DOUBT:
        assert state != "pass" or not outside, f"{declared.id}: “{headline}”, outside {outside}"
        assert state != "fail" or on or not measured, f"{declared.id}: “{headline}”, within all its limits"
    return found


calculator._work = work_and_look
