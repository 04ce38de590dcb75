"""What holds in all tests. How hard the property tests try: `quick` tries the same examples on every machine and run, `thorough` many new ones, and `mutants`
those of `quick` without looking for the simplest that fails.

    SIZEBOOK_HYPOTHESIS=thorough python3 scripts/test.py tests/test_every_calculator.py
"""

import os

from hypothesis import HealthCheck, Phase, settings

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
