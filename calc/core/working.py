"""Numbers that remember how they were made.

A calculator computes with `Number`: a float in SI units that carries its dimensions and the operations that
led to it. What the reader sees as working (formula, numbers put in, value) is read back from the very objects
that gave the result, so there is no second copy of a formula to drift. Adding a length to a pressure raises
`DimensionError` at once.

The functions of this module (`sqrt`, `tan`, `least`, ...) take plain floats as well, so that physics is
written once as plain functions on SI values, tested with floats and worked with Numbers.
"""

from __future__ import annotations

import itertools
import math
from collections.abc import Callable, Iterable, Iterator
from functools import cache, lru_cache
from typing import Any, SupportsFloat, Union, overload

# Whoever makes a number says how it is written: both are imported from here.
from calc.core.dimensions import PURE as PURE
from calc.core.dimensions import DimensionError as DimensionError
from calc.core.dimensions import Dims as Dims
from calc.core.dimensions import of_power, of_product, of_quotient
from calc.core.form import Form as Form
from calc.core.form import form as form
from calc.core.form import without_zeros
from calc.core.kinds import KINDS, Kind, Unit
from calc.core.writing import figures, to_unit

_made = itertools.count()


Value = Union["Number", float]
"""A plain float or a traced number: physics is written once for both."""


class Number:
    """A value in SI units with its dimensions and its origin.

    `op` is 'const', 'given' (an input or a constant with a name), 'step' (a named result; `args[0]` is its
    expression), or an operation on `args`. Named numbers show their symbol in later formulas.
    """

    __slots__ = ("args", "dims", "form", "key", "label", "op", "order", "source", "symbol", "unit", "value")
    bare = False  # whether it knows nothing but its value (`calc.core.bare`)
    __hash__ = None  # type: ignore[assignment]  # equal by value, and numbers of unlike kinds are not compared

    def __init__(
        self,
        value: SupportsFloat,
        dims: Dims = PURE,
        op: str = "const",
        args: tuple[Number, ...] = (),
        symbol: str = "",
        label: str = "",
        form: Form | None = None,
        source: Any = None,
        key: str = "",
        unit: Unit | None = None,
    ) -> None:
        self.value = float(value)
        self.dims = dims
        self.op = op
        self.args = args
        self.symbol = symbol
        self.label = label
        self.form = form
        self.source = source
        self.key = key
        self.unit = unit  # that an empirical formula counts in, of 'in' and 'of'
        self.order = next(_made)

    def applied(
        self, name: str, value: float, dims: Dims, args: tuple[Number, ...], unit: Unit | None = None
    ) -> Number:
        """What a function of that name makes of this one and others."""
        return Number(value, dims, name, args, unit=unit)

    def called(self, symbol: str, label: str, shape: Form, source: Any, key: str) -> Number:
        """The same as a named result."""
        if self.dims != shape.kind.dims and not _zero(self):
            raise DimensionError(f"{label}: the formula gives {self!r}, not a {shape.kind.name}")
        return Number(self.value, shape.kind.dims, "step", (self,), symbol, label, shape, source, key)

    def __add__(self, other: Value) -> Number:
        return _sum("+", self, other)

    def __radd__(self, other: Value) -> Number:
        return self if type(other) is int and other == 0 else _sum("+", other, self)  # sum() starts from 0

    def __sub__(self, other: Value) -> Number:
        return _sum("-", self, other)

    def __rsub__(self, other: Value) -> Number:
        return _sum("-", other, self)

    def __mul__(self, other: Value) -> Number:
        return _product(self, other)

    def __rmul__(self, other: Value) -> Number:
        return _product(other, self)

    def __truediv__(self, other: Value) -> Number:
        return _quotient(self, other)

    def __rtruediv__(self, other: Value) -> Number:
        return _quotient(other, self)

    def __neg__(self) -> Number:
        return Number(-self.value, self.dims, "neg", (self,))

    def __abs__(self) -> Number:
        return Number(abs(self.value), self.dims, "abs", (self,))

    def __pow__(self, power: Value) -> Number:
        if isinstance(power, Number):
            _need_pure("**", power)
            if self.dims != PURE:
                raise DimensionError("a quantity with a dimension was raised to a computed power")
            return Number(raised(self.value, power.value), PURE, "**", (self, power))
        return Number(raised(self.value, power), of_power(self.dims, power), "**", (self, _number(power)))

    def __rpow__(self, base: float) -> Number:
        _need_pure("**", self)
        return Number(raised(float(base), self.value), PURE, "**", (_number(base), self))

    # a Number compares by value, and only with its like
    def _other(self, other: Value) -> float:
        other = _number(other)
        _like("comparison", (self, other))
        return other.value

    def __lt__(self, other: Value) -> bool:
        return self.value < self._other(other)

    def __le__(self, other: Value) -> bool:
        return self.value <= self._other(other)

    def __gt__(self, other: Value) -> bool:
        return self.value > self._other(other)

    def __ge__(self, other: Value) -> bool:
        return self.value >= self._other(other)

    def __eq__(self, other: object) -> bool:
        return isinstance(other, (Number, int, float)) and self.value == self._other(other)

    def __float__(self) -> float:
        return self.value

    def __bool__(self) -> bool:
        return self.value != 0  # as a float is, so that plain and traced numbers take the same branch

    def __repr__(self) -> str:
        return f"Number({self.symbol or self.op}={self.value!r}, dims={self.dims})"

    def text(self, system: str = "metric") -> str:
        """The value as a person writes it, in one unit system. Only a pure number can do without a form."""
        if self.form:
            return self.form.write(self.value, system)
        _need_pure("writing", self)
        return figures(self.value, 6)

    def reads_as(self, other: Number) -> bool:
        """Is it written as another number is, in either unit system? 0.050 mm reads as 0.05 mm."""
        own, others = self.sure_form, other.sure_form
        return any(
            own.unit(system) == others.unit(system)
            and without_zeros(own.bare(self.value, system)) == without_zeros(others.bare(other.value, system))
            for system in ("metric", "inch")
        )

    def shown(self, decimals: int) -> Number:
        """The same number, written with other decimals."""
        return self._written(self.sure_form.with_decimals(decimals))

    def held_to(self, low: float | None, high: float | None) -> Number:
        """The same number; outside of these limits it is written so that it does not read as the one that it
        has passed."""
        if low is not None and self.value < low:
            return self._written(self.sure_form.apart_from(low))
        if high is not None and self.value > high:
            return self._written(self.sure_form.apart_from(high))
        return self

    @property
    def sure_form(self) -> Form:
        """Its form; TypeError where it has none."""
        if self.form is None:
            raise TypeError(f"{self!r} has no form to be written in")
        return self.form

    def _written(self, shape: Form) -> Number:
        return Number(self.value, self.dims, "given", (), self.symbol, self.label, shape)


class _Pi(float):
    """π as a plain float that shows its letter when it meets a Number."""


PI = _Pi(math.pi)


def _number(x: Value) -> Number:
    if isinstance(x, Number):
        return x
    if type(x) is int:
        return _whole(x)
    return Number(x, op="given", symbol="π") if isinstance(x, _Pi) else Number(x)


_whole = lru_cache(maxsize=64)(Number)  # the 2 of a formula is the same 2 each time


def _zero(n: Number) -> bool:
    return n.op == "const" and n.value == 0


def _need_pure(what: str, *numbers: Number) -> None:
    for n in numbers:
        if n.dims != PURE:
            raise DimensionError(f"{what} was given {n!r}, which has a dimension")


def _like(what: str, numbers: tuple[Number, ...]) -> Dims:
    """Common dimensions of numbers that are added or compared; a plain 0 goes with any."""
    common = numbers[0].dims
    if all(n.dims == common for n in numbers):
        return common
    dims = {n.dims for n in numbers if not _zero(n)} or {PURE}
    if len(dims) > 1:
        raise DimensionError(f"{what} of unlike quantities: " + ", ".join(map(repr, numbers)))
    return dims.pop()


def _sum(op: str, a: Value, b: Value) -> Number:
    a, b = a if type(a) is Number else _number(a), b if type(b) is Number else _number(b)
    dims = a.dims if a.dims == b.dims else _like(op, (a, b))
    return Number(a.value + b.value if op == "+" else a.value - b.value, dims, op, (a, b))


def raised(base: float, power: float) -> float:
    """As floats do it, but a root of a negative number is an error instead of a complex number."""
    value: float | complex = base**power
    if isinstance(value, complex):
        raise ValueError("math domain error")
    return value


def _product(a: Value, b: Value) -> Number:
    a, b = a if type(a) is Number else _number(a), b if type(b) is Number else _number(b)
    return Number(a.value * b.value, of_product(a.dims, b.dims), "*", (a, b))


def _quotient(a: Value, b: Value) -> Number:
    a, b = a if type(a) is Number else _number(a), b if type(b) is Number else _number(b)
    return Number(a.value / b.value, of_quotient(a.dims, b.dims), "/", (a, b))


class PureFunction:
    """A function of one pure number that takes plain and traced ones alike, written with that name in the
    working (angles in radians)."""

    def __init__(self, name: str, plain: Callable[[float], float]) -> None:
        self.name, self.plain = name, plain

    @overload
    def __call__(self, x: float) -> float: ...
    @overload
    def __call__(self, x: Number) -> Number: ...
    @overload
    def __call__(self, x: Value) -> Value: ...
    def __call__(self, x: Value) -> Value:
        if not isinstance(x, Number):
            return self.plain(x)
        _need_pure(self.name, x)
        return x.applied(self.name, self.plain(x.value), PURE, (x,))


sin = PureFunction("sin", math.sin)
cos = PureFunction("cos", math.cos)
tan = PureFunction("tan", math.tan)
asin = PureFunction("asin", math.asin)
acos = PureFunction("acos", math.acos)
atan = PureFunction("atan", math.atan)
exp = PureFunction("exp", math.exp)
log = PureFunction("ln", math.log)
log10 = PureFunction("log10", math.log10)
tanh = PureFunction("tanh", math.tanh)


@overload
def sqrt(x: float) -> float: ...
@overload
def sqrt(x: Number) -> Number: ...
@overload
def sqrt(x: Value) -> Value: ...
def sqrt(x: Value) -> Value:
    """Square root; halves the dimensions."""
    if not isinstance(x, Number):
        return math.sqrt(x)
    return x.applied("sqrt", math.sqrt(x.value), of_power(x.dims, 0.5), (x,))


class Extreme:
    """The least or greatest of several like quantities, plain or traced."""

    def __init__(self, name: str, plain: Callable[[Iterable[float]], float]) -> None:
        self.name, self.plain = name, plain

    @overload
    def __call__(self, *xs: float) -> float: ...
    @overload
    def __call__(self, x: Number, /, *xs: Value) -> Number: ...
    @overload
    def __call__(self, *xs: Value) -> Value: ...
    def __call__(self, *xs: Value) -> Value:
        if not any(isinstance(x, Number) for x in xs):
            return self.plain(float(x) for x in xs)
        numbers = tuple(map(_number, xs))
        value = self.plain(n.value for n in numbers)
        if bare := [n for n in numbers if n.bare]:
            return bare[0].applied(self.name, value, PURE, numbers)
        return Number(value, _like(self.name, numbers), self.name, numbers)


least = Extreme("least", min)
greatest = Extreme("greatest", max)


@overload
def in_unit(x: float, unit: Unit) -> float: ...
@overload
def in_unit(x: Number, unit: Unit) -> Number: ...
@overload
def in_unit(x: Value, unit: Unit) -> Value: ...
def in_unit(x: Value, unit: Unit) -> Value:
    """Pure number that x counts in a unit, for empirical formulas that are stated in one."""
    if not isinstance(x, Number):
        return to_unit(x, unit)
    if not x.bare and x.dims not in _dims_of(unit):
        raise DimensionError(f"{x!r} cannot be counted in {unit.symbol or 'parts of one'}")
    return x.applied("in", to_unit(x.value, unit), PURE, (x,), unit)


@cache
def _dims_of(unit: Unit) -> set[Dims]:
    return {kind.dims for kind in KINDS.values() if unit in kind.units}


@overload
def of_unit(x: float, kind: Kind, unit: Unit) -> float: ...
@overload
def of_unit(x: Number, kind: Kind, unit: Unit) -> Number: ...
@overload
def of_unit(x: Value, kind: Kind, unit: Unit) -> Value: ...
def of_unit(x: Value, kind: Kind, unit: Unit) -> Value:
    """The reverse: the quantity that a pure number of that unit makes."""
    if unit not in kind.units:
        raise DimensionError(f"{kind.name} has no unit {unit.symbol}")
    value = float(x) * float(unit.factor) + float(unit.offset)
    if not isinstance(x, Number):
        return value
    _need_pure("of_unit", x)
    return x.applied("of", value, kind.dims, (x,), unit)


def constant(
    symbol: str, label: str, shape: Form, value: SupportsFloat, source: Any = None, key: str = ""
) -> Number:
    """A named number that was not computed: an input, a property of a material, a constant."""
    return Number(value, shape.kind.dims, "given", (), symbol, label, shape, source, key)


def step(
    symbol: str, label: str, shape: Form, expression: Value, source: Any = None, key: str = ""
) -> Number:
    """Name a result, so that it becomes a line of the working and shows as its symbol from there on."""
    return _number(expression).called(symbol, label, shape, source, key)


def origins(numbers: Iterable[Number]) -> Iterator[Number]:
    """Every number that led to these, they among them, each once."""
    seen: set[int] = set()
    stack = list(numbers)
    while stack:
        n = stack.pop()
        if id(n) not in seen:
            seen.add(id(n))
            stack.extend(n.args)
            yield n


def steps_behind(numbers: Iterable[Number]) -> list[Number]:
    """Every named result that led to these numbers, in the order in which they were worked."""
    return sorted(
        (n for n in origins(numbers) if n.op == "step" and n.args[0].op not in ("const",)),
        key=lambda n: n.order,
    )
