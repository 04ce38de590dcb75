"""Numbers without their working: the very same floats, whatever is done with them."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.core.bare import bare
from calc.core.kinds import LENGTH
from calc.core.working import Number, constant, form, greatest, in_unit, least, of_unit, sin, sqrt, step

MM = form(LENGTH, 2)
PLAIN = {
    "+": lambda a, b: a + b,
    "-": lambda a, b: a - b,
    "*": lambda a, b: a * b,
    "/": lambda a, b: a / b,
    "**": lambda a, b: abs(a) ** b,
    "**2": lambda a, b: a**2 - b**3,
    "with numbers": lambda a, b: (2 - a) * 3 / (1 + abs(b)) + 0.5 - 2 ** (b / 8) - -a,
    "least": lambda a, b: least(a, b, 1) + greatest(b, 2, a) + greatest(abs(a), abs(b)),
    "functions": lambda a, b: sqrt(abs(a)) + sin(b),
    "units": lambda a, b: of_unit(a * 0 + b, LENGTH, LENGTH.metric) / 1e-3,
    "compared": lambda a, b: (
        (a < b) + 2 * (a <= b) + 4 * (a > b) + 8 * (a >= 2) + 16 * (a == b) + 32 * bool(a)
    ),
}
sizes = st.floats(-9, 9).filter(lambda x: abs(x) > 1e-6)


def ways(a: float, b: float):
    """Two numbers as plain floats, with their working, without, and one of each."""
    full = Number(a), Number(b)
    without = bare(constant("a", "A", MM, a)), bare(constant("b", "B", MM, b))
    return (a, b), full, without, (full[0], without[1]), (without[0], full[1])


@pytest.mark.parametrize("what", PLAIN)
@given(sizes, sizes)
def test_every_operation_gives_the_float_that_floats_give(what, a, b):
    def done(x, y):
        try:
            return repr(float(PLAIN[what](x, y)))
        except ArithmeticError as error:
            return type(error).__name__

    plain, *others = ways(a, b)
    assert [done(*pair) for pair in others] == [done(*plain)] * len(others)


def test_a_named_one_can_be_told_of_as_its_limits_are_and_one_in_a_grid_as_well():
    size = bare(constant("d", "Size", MM, 0.0123456, key="size"))
    found = step("h", "Half", MM, size / 2, key="half")
    assert (found.key, found.symbol, found.label, found.text("metric"), found.args) == (
        "half",
        "h",
        "Half",
        "6.17 mm",
        (),
    )
    assert found.held_to(0.006173, None).text("metric") == "6.1728 mm"
    assert in_unit(size, LENGTH.metric).value == pytest.approx(12.3456)
    rows = bare(((constant("", "", MM, 1.0), None), None))
    assert float(rows[0][0]) == 1.0 and rows[0][0].bare and rows[0][1] is rows[1] is None
    assert bare("intake") == "intake" and bare(None) is None


def test_roots_of_what_is_below_zero_are_refused_alike():
    for x in (Number(-2.0), bare(constant("", "", MM, -2.0))):
        for root in (sqrt, lambda x: x**0.5):
            with pytest.raises(ValueError, match="math domain error"):
                root(x)
    assert math.isclose(float(sum([bare(constant("", "", MM, 1.0))] * 3)), 3)
