"""Traced numbers: the same values as floats, dimensions checked, and the working that is read back from them."""

import math
import operator
from decimal import ROUND_HALF_EVEN, Decimal
from fractions import Fraction
from xml.etree import ElementTree

import mpmath
import pint
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from calc.core.kinds import (
    ANGLE,
    AREA,
    FORCE,
    KINDS,
    LENGTH,
    PRESSURE,
    RATIO,
    ROTATION,
    STRESS,
    TEMPERATURE,
    TIME,
    VOLUME,
)
from calc.core.working import (
    PI,
    DimensionError,
    acos,
    asin,
    atan,
    constant,
    cos,
    exp,
    form,
    greatest,
    in_unit,
    least,
    log,
    log10,
    of_unit,
    sin,
    sqrt,
    step,
    steps_behind,
    tan,
    tanh,
)
from calc.core.writing import figures, from_unit
from calc.page.formula import line_html, line_text
from tests.formula_reader import Reader, Unreadable, mathml_text

SHARE, MM = form(RATIO, 3), form(LENGTH, 3)
FUNCTIONS = {
    "sin": sin,
    "cos": cos,
    "tan": tan,
    "asin": asin,
    "acos": acos,
    "atan": atan,
    "exp": exp,
    "ln": log,
    "log": log10,
    "tanh": tanh,
    "√": sqrt,
    "abs": abs,
    "neg": operator.neg,
}
OPERATORS = {"+": operator.add, "-": operator.sub, "*": operator.mul, "/": operator.truediv}
EXTREMES = {"min": least, "max": greatest}


# expression trees, as plain data: ("x", thousandths) is a named number, ("c", text) a constant

leaves = st.one_of(
    st.tuples(st.just("x"), st.integers(-9999, 9999)),
    st.tuples(
        st.just("c"),
        st.sampled_from(["0", "1", "2", "-2", "0.8", "-0.125", "3.5", "101325", "2.5e-6", "-4e12", "π"]),
    ),
)


def _branches(inner):
    return st.one_of(
        st.tuples(st.sampled_from(sorted(OPERATORS)), inner, inner),
        st.tuples(st.sampled_from(sorted(FUNCTIONS)), inner),
        st.tuples(
            st.just("**"),
            inner,
            st.one_of(st.sampled_from([("c", "2"), ("c", "3"), ("c", "0.5"), ("c", "-1")]), inner),
        ),
        st.tuples(st.sampled_from(sorted(EXTREMES)), inner, inner, inner),
    )


trees = st.recursive(leaves, _branches, max_leaves=9)


def work(tree, leaf, constant, functions):
    """The value of a tree, with the leaves and the functions of one kind of arithmetic."""
    op, *args = tree
    if op == "x":
        return leaf(args[0])
    if op == "c":
        return constant(args[0])
    values = [work(a, leaf, constant, functions) for a in args]
    if op == "**":
        power = values[0] ** values[1]
        if isinstance(power, complex):  # floats would go on with it
            raise ValueError("math domain error")
        return power
    return (OPERATORS.get(op) or functions[op])(*values)


CALC = {**FUNCTIONS, **EXTREMES}


def plain_constant(text):
    return PI if text == "π" else float(text)


def as_float(tree):
    return work(tree, lambda k: k / 1000, plain_constant, CALC)


def as_number(tree, shape=SHARE):
    return work(tree, lambda k: constant(f"x_{k + 9999}", "", shape, k / 1000), plain_constant, CALC)


def exactly(tree):
    """The same tree in decimal arithmetic of 60 digits, from the digits that a reader sees.

    What floats have worked out among themselves, before it meets a named number, is a constant of ten digits.
    """
    if not symbols_of(tree):
        value = as_float(tree)
        share = Fraction(value / math.pi).limit_denominator(360)
        if share and math.isclose(share * math.pi, value, rel_tol=1e-15):
            return mpmath.pi * share.numerator / share.denominator
        return mpmath.mpf(f"{value:.10g}")
    op, *args = tree
    if op == "x":
        return mpmath.mpf(args[0]) / 1000
    values = [exactly(a) for a in args]
    return values[0] ** values[1] if op == "**" else (OPERATORS.get(op) or EXACT[op])(*values)


EXACT = {
    "sin": mpmath.sin,
    "cos": mpmath.cos,
    "tan": mpmath.tan,
    "asin": mpmath.asin,
    "acos": mpmath.acos,
    "atan": mpmath.atan,
    "exp": mpmath.exp,
    "ln": mpmath.log,
    "log": mpmath.log10,
    "tanh": mpmath.tanh,
    "√": mpmath.sqrt,
    "abs": abs,
    "neg": operator.neg,
    "min": min,
    "max": max,
}


@pytest.fixture(autouse=True)
def sixty_digits():
    with mpmath.workdps(60):
        yield


@given(trees)
def test_values_are_those_of_plain_floats_bit_for_bit(tree):
    try:
        expected = as_float(tree)
    except (ArithmeticError, ValueError) as error:
        with pytest.raises(type(error)):
            as_number(tree)
        return
    got = as_number(tree)
    assert math.isnan(expected) and math.isnan(float(got)) or float(got).hex() == float(expected).hex()


# the working, read back


def readable(tree):
    """A tree whose every part is a moderate number, so that 60 digits leave no doubt."""
    if not all(readable(a) for a in tree[1:] if isinstance(a, tuple)):
        return False
    try:
        value = as_float(tree)
        return abs(value) < 1e15 and isinstance(exactly(tree), mpmath.mpf)
    except (ArithmeticError, ValueError):
        return False


def shown(expression):
    return step("y", "result", form(RATIO, 3), expression)


def halves(n, system="metric"):
    """Formula in symbols and with numbers put in, as plain text."""
    parts = line_text(n, system).split(" = ")
    return parts[1], parts[2] if len(parts) == 4 else parts[1]


def maths(n):
    return ElementTree.fromstring(f"<all>{line_html(n)}</all>").findall("div/math")


def close(a, b):
    return abs(a - b) <= mpmath.mpf(10) ** -25 * max(1, abs(b))


def traced(tree):
    """The tree as the expression of a step, or give up where it is out of reach of floats or shows a value as zero."""
    assume(readable(tree))
    try:
        number = shown(as_number(tree))
    except (ArithmeticError, ValueError):
        assume(False)
    assume(math.isfinite(number.value) and number.args[0].op not in ("const", "given"))
    return number


def symbols_of(tree):
    """The named numbers of a tree with their values."""
    if tree[0] == "x":
        return {f"x_{tree[1] + 9999}": mpmath.mpf(tree[1]) / 1000}
    return {name: value for a in tree[1:] if isinstance(a, tuple) for name, value in symbols_of(a).items()}


@given(trees)
def test_the_line_with_numbers_put_in_gives_the_value_when_worked_out_by_hand(tree):
    _, numbers = halves(traced(tree))
    assert close(Reader().read(numbers), exactly(tree)), numbers


@given(trees)
def test_the_formula_in_symbols_gives_the_value(tree):
    formula, _ = halves(traced(tree))
    assert close(Reader(symbols=symbols_of(tree)).read(formula), exactly(tree)), formula


@given(trees, st.sampled_from(["metric", "inch"]))
def test_mathml_is_well_formed_and_says_the_same(tree, system):
    formula, numbers, value = maths(traced(tree))
    reader = Reader(symbols=symbols_of(tree))
    for row in (formula, numbers):
        text = mathml_text(row, system).removeprefix("y").removeprefix(" = ")
        assert close(reader.read(text), exactly(tree)), text
    assert mathml_text(value, system).startswith(" = ")


@given(st.data(), st.sampled_from(["metric", "inch"]))
def test_quantities_carry_their_units_into_the_line(data, system):
    """Lengths and areas: the units stand where an outsider needs them to get metres and square metres."""
    shapes = {"a": form(LENGTH, 3), "b": form(LENGTH, 3), "c": form(LENGTH, 3), "S": form(AREA, 3)}
    numbers, exact = {}, {}
    for symbol, shape in shapes.items():
        thousandths, unit = data.draw(st.integers(-99999, 99999).filter(bool)), shape.unit(system)
        exact[symbol] = Fraction(thousandths, 1000) * unit.factor
        numbers[symbol] = constant(symbol, "", shape, from_unit(thousandths / 1000, unit))
    a, b, c, S = numbers.values()
    A, B, C, T = exact.values()
    mm, mm2 = (shapes[s].unit(system) for s in "aS")
    name, expression, shape, expected = data.draw(
        st.sampled_from(
            [
                ("squares", a**2 - b * c, AREA, A**2 - B * C),
                ("difference", a - (b - c), LENGTH, A - (B - C)),
                ("opposite", a + -b, LENGTH, A - B),
                ("opposites", -(2 * a) - -b, LENGTH, -2 * A + B),
                ("quotient", S / b - c, LENGTH, T / B - C),
                ("product of a quotient", a * (b / c), LENGTH, A * B / C),
                ("quotient of a product", S / (b * c), RATIO, T / (B * C)),
                ("quotient of a quotient", a / (b / c), LENGTH, A * C / B),
                ("power of a quotient", (a / b) ** 3 * c, LENGTH, (A / B) ** 3 * C),
                ("power of a quantity", sqrt(a**2) + (abs(b) ** 0.5) ** 2, LENGTH, abs(A) + abs(B)),
                (
                    "counted in a unit",
                    of_unit(3 * in_unit(a, mm) - 2, LENGTH, mm) - c,
                    LENGTH,
                    3 * A - 2 * mm.factor - C,
                ),
                (
                    "counted in a unit, squared",
                    of_unit(in_unit(a, mm) ** 2, AREA, mm2) + S,
                    AREA,
                    (A / mm.factor) ** 2 * mm2.factor + T,
                ),
                ("as it was counted", 2 * of_unit(in_unit(a, mm), LENGTH, mm), LENGTH, 2 * A),
            ]
        )
    )
    worked = step("y", name, form(shape, 3), expression)
    reader = Reader(
        {u.symbol: (u.factor, u.offset) for u in (mm, mm2)},
        {k: mpmath.mpf(v.numerator) / v.denominator for k, v in exact.items()},
    )
    want = mpmath.mpf(expected.numerator) / expected.denominator
    assert abs(float(worked) - want) <= 1e-12 * sum(abs(v) for v in (*exact.values(), expected))
    for text in (
        *halves(worked, system),
        *(mathml_text(row, system).removeprefix("y").removeprefix(" = ") for row in maths(worked)[:2]),
    ):
        assert close(reader.read(text), want), text


def test_a_temperature_below_zero_is_bracketed_behind_a_sign():
    cold, warm = (constant(s, "", form(TEMPERATURE, 0), t + 273.15) for s, t in (("t_1", -10), ("t_2", 20)))
    n = step("d", "", form(KINDS["temperature difference"], 0), warm - cold)
    assert line_text(n, "metric") == "d = t_2 − t_1 = 20 °C − (−10 °C) = 30 K"
    assert line_text(n, "inch") == "d = t_2 − t_1 = 68 °F − 14 °F = 54 °F"
    assert mathml_text(maths(n)[1], "metric") == " = 20\u00a0°C − (−10\u00a0°C)"


def test_a_quantity_counted_in_a_unit_and_made_of_it_again():
    """An empirical rule for degrees Fahrenheit and one for inches, by hand."""
    warm = constant("T", "", form(TEMPERATURE, 0), 293.15)
    assert float(in_unit(warm, TEMPERATURE.inch)) == in_unit(293.15, TEMPERATURE.inch) == 68.0
    assert float(
        of_unit(in_unit(warm, TEMPERATURE.inch) + 9, TEMPERATURE, TEMPERATURE.inch)
    ) == pytest.approx(298.15, abs=1e-9)
    assert (
        of_unit(77.0, TEMPERATURE, TEMPERATURE.inch) == pytest.approx(298.15, abs=1e-9)
        and of_unit(2.0, LENGTH, LENGTH.inch) == 0.0508
    )
    with pytest.raises(DimensionError):
        of_unit(2.0, LENGTH, PRESSURE.metric)


x, y, z = (constant(letter, "", SHARE, value) for letter, value in (("x", 2.0), ("y", 3.0), ("z", -5.0)))
d, D = (constant(letter, "", form(LENGTH, 1), value) for letter, value in (("d", 0.01), ("D", 0.02)))


@pytest.mark.parametrize(
    "expression, symbols, numbers",
    [
        (x - (y - z), "x − (y − z)", "2.000 − (3.000 − (−5.000))"),
        (x + z, "x + z", "2.000 + (−5.000)"),
        (-x * y, "−x·y", "−2.000·3.000"),
        (x * -y, "x·(−y)", "2.000·(−3.000)"),
        (-(x + y), "−(x + y)", "−(2.000 + 3.000)"),
        (-z, "−z", "−(−5.000)"),
        ((-x) ** 2, "(−x)^2", "(−2.000)^2"),
        (-(x**2), "−x^2", "−2.000^2"),
        ((x**y) ** 2, "(x^y)^2", "(2.000^3.000)^2"),
        (x ** (y**2), "x^(y^2)", "2.000^(3.000^2)"),
        (x**-1, "x^−1", "2.000^−1"),
        (x ** (1 / 3), "x^(1/3)", "2.000^(1/3)"),
        (x ** (-2 / 3), "x^(−2/3)", "2.000^(−2/3)"),
        (x**0.333, "x^0.333", "2.000^0.333"),
        (x**1.5, "x^1.5", "2.000^1.5"),
        (x**z, "x^z", "2.000^(−5.000)"),
        (x / (y * z), "x/(y·z)", "2.000/(3.000·(−5.000))"),
        (x / y / z, "x/y/z", "2.000/3.000/(−5.000)"),
        (x / (y / z), "x/(y/z)", "2.000/(3.000/(−5.000))"),
        ((x / y) ** 2, "(x/y)^2", "(2.000/3.000)^2"),
        (sqrt(x + y) * abs(z - x), "√(x + y)·|z − x|", "√(2.000 + 3.000)·|−5.000 − 2.000|"),
        (least(x, y + z), "min(x; y + z)", "min(2.000; 3.000 + (−5.000))"),
        (log10(x) + log(y), "log(x) + ln(y)", "log(2.000) + ln(3.000)"),
        (PI * x**2 / 4, "π·x^2/4", "π·2.000^2/4"),
        (2 * PI / x, "2·π/x", "2·π/2.000"),
        (x / (2 * PI), "x/(2·π)", "2.000/(2·π)"),
        (x * (PI / 180), "x·π/180", "2.000·π/180"),
        (x - (-PI / 4), "x − (−π/4)", "2.000 − (−π/4)"),
        (x * 1.0, "x·1", "2.000·1"),
        (2.5e-6 * x, "2.5×10⁻⁶·x", "2.5×10⁻⁶·2.000"),
        (x**2.5e-6, "x^(2.5×10⁻⁶)", "2.000^(2.5×10⁻⁶)"),
        (x - -2, "x − (−2)", "2.000 − (−2)"),
        (d / D, "d/D", "10.0 mm/20.0 mm"),
        ((d / D) ** 2, "(d/D)^2", "(10.0 mm/20.0 mm)^2"),
        (in_unit(d, LENGTH.metric) ** 0.5, "(d/mm)^0.5", "10^0.5"),
        (in_unit(d + D, LENGTH.metric) * 2, "(d + D)/mm·2", "30·2"),
        (in_unit(constant("n", "", form(ROTATION, 0), 50.0), ROTATION.metric) / 9, "n/(1/min)/9", "3000/9"),
    ],
)
def test_how_formulas_are_written(expression, symbols, numbers):
    formula, put_in = halves(shown(expression))
    assert (formula, put_in) == (symbols, numbers)


@pytest.mark.parametrize(
    "expression, symbols, numbers",
    [
        (d**2, "d^2", "(10.0 mm)^2"),
        (of_unit(3 * in_unit(d, LENGTH.metric) ** 2, AREA, AREA.metric), "(3·(d/mm)^2) mm²", "(3·10^2) mm²"),
    ],
)
def test_how_areas_are_written(expression, symbols, numbers):
    assert halves(step("y", "", form(AREA, 0), expression)) == (symbols, numbers)


def test_a_number_without_a_symbol_shows_its_value_among_the_symbols():
    assert (
        line_text(step("y", "", MM, constant("", "", MM, 0.002) + d), "metric")
        == "y = 2.000 mm + d = 2.000 mm + 10.0 mm = 12.000 mm"
    )


def test_mathml_escapes_what_is_written_in_symbols_and_units():
    hostile = constant("<b>&", "", SHARE, 1.0)
    html = line_html(step('"><script>_<i>', "", SHARE, hostile + 1))
    tree = ElementTree.fromstring(html)
    assert {node.tag for node in tree.iter()} <= {"div", "math", "mrow", "mi", "mn", "mo", "msub", "mtext"}
    assert "<b>&" in "".join(tree.itertext()) and "<script>" in "".join(tree.itertext())


@pytest.mark.parametrize(
    "value, digits, text",
    [
        (0.8, 10, "0.8"),
        (-2.0, 10, "−2"),
        (101325.0, 10, "101325"),
        (2.5e-6, 10, "2.5×10⁻⁶"),
        (-1e12, 10, "−1×10¹²"),
        (1 / 3, 5, "0.33333"),
        (123456.0, 5, "1.2346×10⁵"),
        (0.0, 5, "0"),
    ],
)
def test_figures(value, digits, text):
    assert figures(value, digits) == text


# dimensions

UNITS = {
    "length": "mm",
    "area": "mm**2",
    "volume": "cm**3",
    "pressure": "kPa",
    "stress": "MPa",
    "force": "N",
    "torque": "N*m",
    "stiffness": "N/mm",
    "compliance": "um/kN",
    "mass": "g",
    "density": "kg/m**3",
    "moment of inertia": "kg*m**2",
    "time": "s",
    "speed": "m/s",
    "acceleration": "m/s**2",
    "frequency": "Hz",
    "power": "kW",
    "energy": "J",
    "thermal expansion": "um/m/K",
    "specific heat": "J/kg/K",
    "thermal conductivity": "W/m/K",
    "heat transfer coefficient": "W/m**2/K",
    "flow rate": "cm**3/min",
    "mass flow rate": "g/s",
    "dynamic viscosity": "mPa*s",
    "kinematic viscosity": "mm**2/s",
    "leak rate": "Pa*m**3/s",
    "second moment of area": "mm**4",
    "unbalance": "g*mm",
    "pressure change rate": "kPa/min",
    "angle": "deg",
    "ratio": "dimensionless",
    "specific fuel consumption": "g/kW/hour",
    "thread count": "1/mm",
    "heat per degree": "W/K",
}
pint_units = pint.UnitRegistry(cache_folder=None)


def dims_of(quantity):
    return tuple(
        pytest.approx(quantity.dimensionality.get(d, 0))
        for d in ("[length]", "[mass]", "[time]", "[temperature]")
    )


factors = st.tuples(
    st.sampled_from(sorted(UNITS)), st.floats(0.5, 50), st.sampled_from([-3, -2, -1, -0.5, 0.5, 1, 1, 2, 1.5])
)


@given(st.lists(factors, min_size=1, max_size=6), st.booleans())
def test_dimensions_of_products_are_those_that_pint_finds(rows, rooted):
    ours, theirs = 1, pint_units.Quantity(1.0)
    for i, (kind, amount, power) in enumerate(rows):
        unit = pint_units.Unit(UNITS[kind])
        n = constant("q", "", form(KINDS[kind], 3), KINDS[kind].metric.factor * Fraction(amount)) ** power
        q = pint_units.Quantity(amount, unit).to_base_units() ** power
        ours, theirs = (ours / n, theirs / q) if i % 2 else (ours * n, theirs * q)
    if rooted:
        ours, theirs = sqrt(ours), theirs**0.5
    assert tuple(map(float, ours.dims)) == dims_of(theirs)
    assert float(ours) == pytest.approx(theirs.to_base_units().magnitude, rel=1e-9)


@given(st.lists(st.sampled_from(sorted(UNITS)), min_size=2, max_size=2))
def test_only_quantities_of_like_dimensions_add_and_compare(kinds):
    a, b = (constant("q", "", form(KINDS[k], 3), 2.0) for k in kinds)
    alike = pint_units.Unit(UNITS[kinds[0]]).is_compatible_with(UNITS[kinds[1]])
    for combine in (
        operator.add,
        operator.sub,
        operator.lt,
        operator.le,
        operator.gt,
        operator.ge,
        operator.eq,
        least,
        greatest,
    ):
        if alike:
            combine(a, b)
        else:
            with pytest.raises(DimensionError):
                combine(a, b)


length, area, pressure, pure = (
    constant(k.name, "", form(k, 3), 2.0) for k in (LENGTH, AREA, PRESSURE, RATIO)
)


@pytest.mark.parametrize(
    "wrong",
    [
        lambda: length + pressure,
        lambda: length - 1,
        lambda: 1 + length,
        lambda: length + area,
        lambda: least(length, pure),
        lambda: greatest(length, 1.0),
        lambda: sin(length),
        lambda: exp(pressure),
        lambda: log(length),
        lambda: length**pure,
        lambda: 2**length,
        lambda: pure**length,
        lambda: length < 1,
        lambda: length == 1.0,
        lambda: sum([length, 1]),
        lambda: length < pressure * 0,
        lambda: in_unit(pressure, LENGTH.metric),
        lambda: of_unit(length, LENGTH, LENGTH.metric),
        lambda: of_unit(pure, LENGTH, PRESSURE.metric),
        lambda: step("y", "Name", form(PRESSURE, 1), length),
        lambda: step("y", "Name", form(AREA, 1), length**2.5),
        lambda: (length**2).text(),
    ],
)
def test_a_formula_with_wrong_dimensions_is_refused(wrong):
    with pytest.raises(DimensionError):
        wrong()


def test_the_message_names_what_was_added_and_the_result_that_it_was_for():
    with pytest.raises(DimensionError, match="length.*pressure"):
        length + pressure
    with pytest.raises(DimensionError, match="Wall.*not a length"):
        step("w", "Wall", form(LENGTH, 2), pressure)


def test_a_plain_zero_goes_with_every_quantity():
    assert (
        greatest(length, 0.0) == length
        and length > 0
        and 0 < length
        and not length == 0  # noqa: SIM201  # both ways of asking are tried
        and length - 0 == length
    )
    assert step("y", "None at all", form(PRESSURE, 1), 0.0).dims == PRESSURE.dims


def test_roots_and_powers_keep_dimensions_exact():
    assert ((length ** (1 / 3)) ** 3).dims == LENGTH.dims
    assert ((length**0.1) ** 10).dims == LENGTH.dims
    assert sqrt(area).dims == LENGTH.dims and sqrt(sqrt(area) ** 2 * area).dims == AREA.dims


def test_a_root_of_a_negative_number_is_an_error_not_a_complex_number():
    for root in (lambda: z**0.5, lambda: z ** (x / 4), lambda: (-2) ** (x / 4), lambda: sqrt(z)):
        with pytest.raises(ValueError):
            root()


def test_truth_is_that_of_the_value():
    assert bool(x) and not (x - 2)


def test_a_sum_over_a_list_shows_no_zero():
    assert (
        line_text(step("s", "", MM, sum([d, D, d])), "metric")
        == "s = d + D + d = 10.0 mm + 20.0 mm + 10.0 mm = 40.000 mm"
    )


def test_numbers_do_not_hash():
    with pytest.raises(TypeError):
        {x: 1}


# steps


def test_steps_come_in_the_order_in_which_they_were_worked_each_once():
    first = step("a", "first", MM, d + D)
    second = step("b", "second", MM, first * 2)
    constant = step("k", "constant", SHARE, 3.0)
    unused = step("u", "unused", MM, d - D)
    third = step("c", "third", MM, first + second * constant)
    assert [s.label for s in steps_behind([third, second])] == ["first", "second", "third"]
    assert [s.label for s in steps_behind([unused])] == ["unused"]


def test_a_step_shows_as_its_symbol_and_its_own_value_from_there_on():
    first = step("a", "first", form(LENGTH, 1), d + D)
    assert line_text(step("b", "second", MM, first * 2), "metric") == "b = a·2 = 30.0 mm·2 = 60.000 mm"


def test_a_step_that_only_renames_is_written_once():
    first = step("a", "first", form(LENGTH, 1), d + D)
    assert line_text(step("b", "again", MM, first), "metric") == "b = a = 30.000 mm"
    assert len(maths(step("b", "again", MM, first))) == 2


def test_deep_chains_of_steps_are_walked_without_recursion():
    n = d
    for i in range(3000):
        n = step(f"s_{i}", "", MM, n * 1.0)
    assert len(steps_behind([n])) == 3000


@pytest.mark.parametrize("make", [lambda: form(LENGTH, 2, "furlong"), lambda: form(LENGTH, 2, inch="kPa")])
def test_a_form_in_an_unknown_unit_is_refused(make):
    with pytest.raises(ValueError, match="length has no unit"):
        make()


def test_display_units():
    assert [form(STRESS, 1).write(1e6, s) for s in ("metric", "inch")] == ["1.0 MPa", "0.15 ksi"]
    percent = form(RATIO, 0, "%")
    assert [percent.write(0.4, s) for s in ("metric", "inch")] == ["40 %", "40 %"]
    assert form(VOLUME, 1, "L").write(0.001, "inch") == "61 in³" and form(TIME, 0).write(30, "inch") == "30 s"
    assert (
        form(ANGLE, 0).write(math.pi / 4, "metric") == "45°"
        and form(FORCE, 0).write(100, "inch") == "22.5 lbf"
    )


# what an outsider's reader of formulas finds wrong, so that the checks above can fail


@pytest.mark.parametrize(
    "text", ["a − −b", "2·−3", "37.5 mm^2", "1 + ", "(1 + 2", "1 2", "sin 3", "a + b)", "a ^ 2"]
)
def test_the_reader_of_formulas_is_strict(text):
    with pytest.raises(Unreadable):
        Reader({"mm": (Fraction(1, 1000), 0)}, {"a": mpmath.mpf(1), "b": mpmath.mpf(1)}).read(text)


def test_the_reader_of_formulas_works_as_one_does_by_hand():
    read = Reader({"mm": (Fraction(1, 1000), 0), "°C": (1, Fraction("273.15"))}, {"a": mpmath.mpf(3)}).read
    assert (
        read("2 + 3·4") == 14
        and read("8/4/2") == 1
        and read("−2^2") == -4
        and read("(−2)^2") == 4
        and read("2·a^2") == 18
    )
    assert read("8 − 3 − 2") == 3 and read("√(16)") == 4 and read("|1 − 3|") == 2 and read("min(1; −2)") == -2
    assert close(read("(37.5 mm)^2"), mpmath.mpf("0.0375") ** 2) and close(
        read("20 °C − (−10 °C)"), mpmath.mpf(30)
    )
    assert read("2.5×10⁻⁶·4") == mpmath.mpf("1e-5") and close(read("a/mm"), mpmath.mpf(3000))


@pytest.mark.parametrize("system", ["metric", "inch"])
@given(limit=st.integers(1, 200_000_000), off=st.integers(-2_000_000, 2_000_000), fine=st.booleans())
def test_what_failed_a_limit_is_written_apart_from_it_and_no_longer_than_that_takes(system, limit, off, fine):
    """Against decimals rounded by the standard library, half to even (ISO 80000-1, rule A). Sizes in nanometres; a limit of whole micrometres, or a finer one."""
    limit = limit if fine else limit // 1000 * 1000
    assume(off and limit + off > 0)
    value, unit, usual = (limit + off) / 1e9, MM.unit(system), MM.places(system)
    shown = MM.apart_from(limit / 1e9).bare(value, system)

    def rounded(nanometres, places):
        return (Decimal(nanometres) / Decimal(int(unit.factor * 10**9 * 10)) * 10).quantize(
            Decimal(1).scaleb(-places), ROUND_HALF_EVEN
        )

    places = len(shown.partition(".")[2])
    if Decimal(shown) == rounded(
        limit, usual
    ):  # only where the limit itself is finer than it is written: then it is the one to be written longer
        assert rounded(limit + off, 12 - 2) == rounded(limit, usual)
        return
    assert Decimal(shown) == rounded(limit + off, places) != rounded(limit, places) and places >= usual
    for fewer in range(usual, places):
        assert rounded(limit + off, fewer) in (rounded(limit, fewer), rounded(limit, usual)) or not rounded(
            limit + off, fewer
        )


def test_what_is_no_further_from_its_limit_than_floats_leave_is_written_as_ever():
    assert (
        MM.apart_from(0.052).write(0.1 + 0.2 - 0.248, "metric") == "52.000 mm" and 0.1 + 0.2 - 0.248 != 0.052
    )
    told = constant("", "Bore", MM, 0.0520004)
    assert [
        told.held_to(*limits).text()
        for limits in ((None, 0.052), (0.05, 0.052), (0.053, None), (None, None), (0.052, 0.053))
    ] == ["52.0004 mm", "52.0004 mm", "52.000 mm", "52.000 mm", "52.000 mm"]
    assert (
        told.held_to(None, 0.052).form.difference == MM
        and told.held_to(None, 0.052).text("inch") == "2.04726 in"
    )
