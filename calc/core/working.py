"""Numbers that remember how they were made.

A calculator computes with `Number`: a float in SI units that carries its dimensions and the operations that led to it.
What the reader sees as working (formula, numbers put in, value) is read back from the very objects that gave the result, so
there is no second copy of a formula to drift. Adding a length to a pressure raises `DimensionError` at once.

The functions of this module (`sqrt`, `tan`, `least`, ...) take plain floats as well, so that physics is written once as plain
functions on SI values, tested with floats and worked with Numbers.
"""

import itertools
import math
from dataclasses import dataclass, replace
from fractions import Fraction
from functools import cache, lru_cache

from calc.core.kinds import KINDS, TEMPERATURE_DIFFERENCE, Kind, Unit
from calc.core.spelling import unit_spelled
from calc.core.writing import decimals_for, stated, to_unit, write

PURE = (0, 0, 0, 0)  # dimensions as powers of metre, kilogram, second, kelvin
_made = itertools.count()


class DimensionError(TypeError):
    """A formula that adds, compares or names quantities of unlike dimensions: a fault of the formula, not of the reader."""


# A page writes the same few hundred values again on each keystroke, and exact conversion is what takes its time.
_stated = lru_cache(maxsize=4096)(stated)
_decimals_for = lru_cache(maxsize=1024)(decimals_for)


@dataclass(frozen=True)
class Form:
    """How a quantity is written: kind, decimals in the metric unit, and the two display units where not the kind's own. What lies
    `beside` a limit that it failed (SI) gets as many further decimals as it takes to differ from that limit, and no more.
    """

    kind: Kind
    decimals: int
    metric: Unit
    inch: Unit
    beside: float | None = None

    def unit(self, system: str) -> Unit:
        return self.inch if system == "inch" else self.metric

    def places(self, system: str) -> int:
        """Decimals in that system: as many as show a size no coarser than the metric ones do."""
        if system == "metric" or self.inch == self.metric:
            return self.decimals
        return _decimals_for(self.inch, self.decimals, self.metric)

    def write(self, value: float, system: str) -> str:
        """Value with its unit, as a person writes it: 37.90 mm, 45°, 12.5 %."""
        return _stated(value, self.unit(system), self._enough(value, system))

    def bare(self, value: float, system: str) -> str:
        """Value in that system's unit, without the unit."""
        return write(value, self.unit(system), self._enough(value, system))

    def _enough(self, value: float, system: str) -> int:
        """Decimals that show the value as another one than the limit beside it, as that is written usually and as it would be then."""
        unit, usual = self.unit(system), self.places(system)
        if (
            self.beside is None or f"{value:.12g}" == f"{self.beside:.12g}"
        ):  # what floats leave of two equal numbers tells nothing
            return usual
        limit = _without_zeros(write(self.beside, unit, usual))
        return next(
            (
                places
                for places in range(usual, usual + 12)
                if _without_zeros(write(value, unit, places))
                not in (limit, _without_zeros(write(self.beside, unit, places)))
            ),
            usual,
        )

    def apart_from(self, limit: float) -> "Form":
        return replace(self, beside=float(limit))

    @property
    def difference(self) -> "Form":
        """The form of a difference of two such quantities: a temperature's zero point falls out."""
        if self.beside is not None:
            return replace(self, beside=None).difference
        if not self.metric.offset and not self.inch.offset:
            return self
        kind = TEMPERATURE_DIFFERENCE
        return Form(kind, self.decimals, kind.metric, kind.inch)

    def with_decimals(self, decimals: int) -> "Form":
        return replace(self, decimals=decimals)


def _without_zeros(text: str) -> str:
    return text.rstrip("0").rstrip(".") if "." in text else text


def form(kind: Kind, decimals: int, metric: str | None = None, inch: str | None = None) -> Form:
    """Form of a kind, with other display units where named (units named by any spelling that the kind reads)."""

    def unit(name, usual):
        found = usual if name is None else unit_spelled(kind, name)
        if found is None:
            raise ValueError(f"{kind.name} has no unit {name!r}")
        return found

    chosen = unit(metric, kind.metric)
    return Form(
        kind,
        decimals,
        chosen,
        chosen if metric and inch is None and kind.inch == kind.metric else unit(inch, kind.inch),
    )


class Number:
    """A value in SI units with its dimensions and its origin.

    `op` is 'const', 'given' (an input or a constant with a name), 'step' (a named result; `args[0]` is its expression), or an
    operation on `args`. Named numbers show their symbol in later formulas.
    """

    __slots__ = ("value", "dims", "op", "args", "symbol", "label", "form", "source", "order", "key")

    def __init__(
        self, value, dims=PURE, op="const", args=(), symbol="", label="", form=None, source=None, key=""
    ):
        self.value, self.dims, self.op, self.args = float(value), dims, op, args
        self.symbol, self.label, self.form, self.source, self.key = symbol, label, form, source, key
        self.order = next(_made)

    # arithmetic
    def __add__(self, other):
        return _sum("+", self, other)

    def __radd__(self, other):
        return self if type(other) is int and other == 0 else _sum("+", other, self)  # sum() starts from 0

    def __sub__(self, other):
        return _sum("-", self, other)

    def __rsub__(self, other):
        return _sum("-", other, self)

    def __mul__(self, other):
        return _product(self, other)

    def __rmul__(self, other):
        return _product(other, self)

    def __truediv__(self, other):
        return _quotient(self, other)

    def __rtruediv__(self, other):
        return _quotient(other, self)

    def __neg__(self):
        return Number(-self.value, self.dims, "neg", (self,))

    def __abs__(self):
        return Number(abs(self.value), self.dims, "abs", (self,))

    def __pow__(self, power):
        if isinstance(power, Number):
            _need_pure("**", power)
            if self.dims != PURE:
                raise DimensionError("a quantity with a dimension was raised to a computed power")
            return Number(_power(self.value, power.value), PURE, "**", (self, power))
        return Number(_power(self.value, power), _times(self.dims, power), "**", (self, _number(power)))

    def __rpow__(self, base):
        _need_pure("**", self)
        return Number(_power(float(base), self.value), PURE, "**", (_number(base), self))

    # a Number compares by value, and only with its like
    def _other(self, other):
        other = _number(other)
        _like("comparison", (self, other))
        return other.value

    def __lt__(self, other):
        return self.value < self._other(other)

    def __le__(self, other):
        return self.value <= self._other(other)

    def __gt__(self, other):
        return self.value > self._other(other)

    def __ge__(self, other):
        return self.value >= self._other(other)

    def __eq__(self, other):
        return isinstance(other, (Number, int, float)) and self.value == self._other(other)

    __hash__ = None

    def __float__(self):
        return self.value

    def __bool__(self):
        return self.value != 0  # as a float is, so that plain and traced numbers take the same branch

    def __repr__(self):
        return f"Number({self.symbol or self.op}={self.value!r}, dims={self.dims})"

    def text(self, system: str = "metric") -> str:
        """The value as a person writes it, in one unit system. Only a pure number can do without a form."""
        if self.form:
            return self.form.write(self.value, system)
        _need_pure("writing", self)
        return figures(self.value, 6)

    def reads_as(self, other: "Number") -> bool:
        """Is it written as another number is, in either unit system? 0.050 mm reads as 0.05 mm."""
        return any(
            self.form.unit(system) == other.form.unit(system)
            and _without_zeros(self.form.bare(self.value, system))
            == _without_zeros(other.form.bare(other.value, system))
            for system in ("metric", "inch")
        )

    def shown(self, decimals: int) -> "Number":
        """The same number, written with other decimals."""
        return Number(
            self.value, self.dims, "given", (), self.symbol, self.label, self.form.with_decimals(decimals)
        )

    def held_to(self, low: float | None, high: float | None) -> "Number":
        """The same number; outside of these limits it is written so that it does not read as the one that it has passed."""
        limit = (
            low
            if low is not None and self.value < low
            else high
            if high is not None and self.value > high
            else None
        )
        return (
            self
            if limit is None
            else Number(
                self.value, self.dims, "given", (), self.symbol, self.label, self.form.apart_from(limit)
            )
        )


class _Pi(float):
    """π as a plain float that shows its letter when it meets a Number."""


PI = _Pi(math.pi)


def figures(value: float, digits: int) -> str:
    """A pure number with as many significant digits as are needed, `digits` at most: 0.8, −2, 2.5×10⁻⁶."""
    mantissa, e, power = f"{float(f'{value:.12g}'):.{digits}g}".partition("e")  # as `write` does it
    raised = "×10" + str(int(power)).translate(str.maketrans("0123456789-", "⁰¹²³⁴⁵⁶⁷⁸⁹⁻")) if e else ""
    return mantissa.replace("-", "−") + raised


def _number(x) -> Number:
    if isinstance(x, Number):
        return x
    return Number(x, op="given", symbol="π") if isinstance(x, _Pi) else Number(x)


def _zero(n: Number) -> bool:
    return n.op == "const" and n.value == 0


def _need_pure(what, *numbers):
    for n in numbers:
        if n.dims != PURE:
            raise DimensionError(f"{what} was given {n!r}, which has a dimension")


def _like(what, numbers):
    """Common dimensions of numbers that are added or compared; a plain 0 goes with any."""
    dims = {n.dims for n in numbers if not _zero(n)} or {PURE}
    if len(dims) > 1:
        raise DimensionError(f"{what} of unlike quantities: " + ", ".join(map(repr, numbers)))
    return dims.pop()


def _sum(op, a, b):
    a, b = _number(a), _number(b)
    return Number(a.value + b.value if op == "+" else a.value - b.value, _like(op, (a, b)), op, (a, b))


def _power(base, power):
    """As floats do it, but a root of a negative number is an error instead of a complex number."""
    value = base**power
    if isinstance(value, complex):
        raise ValueError("math domain error")
    return value


def _times(dims, power):
    """Dimensions of a power, exact: the cube of a cube root is the whole again."""
    power = Fraction(power).limit_denominator(1000)
    return tuple(d * power for d in dims)


def _product(a, b):
    a, b = _number(a), _number(b)
    return Number(a.value * b.value, tuple(x + y for x, y in zip(a.dims, b.dims)), "*", (a, b))


def _quotient(a, b):
    a, b = _number(a), _number(b)
    return Number(a.value / b.value, tuple(x - y for x, y in zip(a.dims, b.dims)), "/", (a, b))


def pure_function(name, plain):
    """A function of one pure number that takes plain and traced ones alike, written with that name in the working."""

    def function(x):
        if not isinstance(x, Number):
            return plain(x)
        _need_pure(name, x)
        return Number(plain(x.value), PURE, name, (x,))

    function.__name__ = name
    function.__doc__ = f"{name} of a plain or traced number (angles in radians)."
    return function


sin = pure_function("sin", math.sin)
cos = pure_function("cos", math.cos)
tan = pure_function("tan", math.tan)
asin = pure_function("asin", math.asin)
acos = pure_function("acos", math.acos)
atan = pure_function("atan", math.atan)
exp = pure_function("exp", math.exp)
log = pure_function("ln", math.log)
log10 = pure_function("log10", math.log10)
tanh = pure_function("tanh", math.tanh)


def sqrt(x):
    """Square root; halves the dimensions."""
    if not isinstance(x, Number):
        return math.sqrt(x)
    return Number(math.sqrt(x.value), _times(x.dims, 0.5), "sqrt", (x,))


def _extreme(name, plain):
    def function(*xs):
        if not any(isinstance(x, Number) for x in xs):
            return plain(xs)
        numbers = tuple(map(_number, xs))
        return Number(plain(n.value for n in numbers), _like(name, numbers), name, numbers)

    function.__name__ = name
    function.__doc__ = f"The {name} of several like quantities."
    return function


least = _extreme("least", min)
greatest = _extreme("greatest", max)


def in_unit(x, unit: Unit):
    """Pure number that x counts in a unit, for empirical formulas that are stated in one."""
    if not isinstance(x, Number):
        return to_unit(x, unit)
    if x.dims not in _dims_of(unit):
        raise DimensionError(f"{x!r} cannot be counted in {unit.symbol or 'parts of one'}")
    return Number(to_unit(x.value, unit), PURE, "in", (x,), form=unit)


@cache
def _dims_of(unit: Unit) -> set:
    return {kind.dims for kind in KINDS.values() if unit in kind.units}


def of_unit(x, kind: Kind, unit: Unit):
    """The reverse: the quantity that a pure number of that unit makes."""
    if unit not in kind.units:
        raise DimensionError(f"{kind.name} has no unit {unit.symbol}")
    value = float(x) * float(unit.factor) + float(unit.offset)
    if not isinstance(x, Number):
        return value
    _need_pure("of_unit", x)
    return Number(value, kind.dims, "of", (x,), form=unit)


def constant(symbol: str, label: str, shape: Form, value: float, source=None, key="") -> Number:
    """A named number that was not computed: an input, a property of a material, a constant."""
    return Number(value, shape.kind.dims, "given", (), symbol, label, shape, source, key)


def step(symbol: str, label: str, shape: Form, expression, source=None, key="") -> Number:
    """Name a result, so that it becomes a line of the working and shows as its symbol from there on."""
    expression = _number(expression)
    if expression.dims != shape.kind.dims and not _zero(expression):
        raise DimensionError(f"{label}: the formula gives {expression!r}, not a {shape.kind.name}")
    return Number(expression.value, shape.kind.dims, "step", (expression,), symbol, label, shape, source, key)


def origins(numbers):
    """Every number that led to these, they among them, each once."""
    seen, stack = set(), list(numbers)
    while stack:
        n = stack.pop()
        if id(n) not in seen:
            seen.add(id(n))
            stack.extend(n.args)
            yield n


def steps_behind(numbers) -> list[Number]:
    """Every named result that led to these numbers, in the order in which they were worked."""
    return sorted(
        (n for n in origins(numbers) if n.op == "step" and n.args[0].op not in ("const",)),
        key=lambda n: n.order,
    )
