"""Sizes that advice names, against decimal arithmetic: on the right side as they are read, and by less than the last digit."""

from decimal import ROUND_CEILING, ROUND_FLOOR, Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.core.advice import at_least, at_most
from calc.core.kinds import LENGTH
from calc.core.working import form

INCH = Decimal("25.4")  # mm, exact (NIST SP 811, B.8)
DIGITS = {
    "metric": (Decimal("0.01"), Decimal(1)),
    "inch": (Decimal("0.0001"), INCH),
}  # the last digit, and its unit in mm


@pytest.mark.parametrize("system", DIGITS)
@pytest.mark.parametrize("told, turn", [(at_least, ROUND_CEILING), (at_most, ROUND_FLOOR)])
@given(st.integers(1, 10**9))
def test_it_is_rounded_to_its_own_side(system, told, turn, nanometres):
    digit, unit = DIGITS[system]
    mm = Decimal(nanometres) / 10**6
    assert Decimal(told(float(mm) * 1e-3, form(LENGTH, 2)).text(system).split()[0]) == (mm / unit).quantize(
        digit, turn
    )


def test_what_floats_leave_of_a_round_size_adds_no_digit():
    """17.52 + 2 · 0.5 is 18.52, and a float a little more; 0.3 is, as 3 · 0.1, a little more too."""
    assert (
        at_least(17.52e-3 + 2 * 0.5e-3, form(LENGTH, 2)).text()
        == at_least(18.52e-3 + 1e-17, form(LENGTH, 2)).text()
        == "18.52 mm"
    )
    assert at_most(0.3e-3 - 1e-19, form(LENGTH, 2)).text() == "0.30 mm"
