"""Which limit a verdict hangs on: the one that failed, or that is nearest to failing."""

from collections.abc import Container, Iterable
from dataclasses import replace
from math import inf
from typing import Any

from calc.core.kinds import LENGTH
from calc.core.result import Limit, Text, Verdict
from calc.core.working import Form, Number, constant, form, origins
from calc.declare.own_limits import OwnLimits

DISTANCE = form(LENGTH, 2)  # of a distance that no calculator tells by itself


def deciding(verdict: Verdict, limits: Iterable[Limit], read: Container[str] | None = None) -> Limit | None:
    """The limit that decided: of those that the number lies outside of, where the verdict is for that; else
    of all. Among them one that the headline speaks of, and of these the one with the least to spare; given
    the names of the inputs that were `read`, a number that comes of them first: what the sheet alone makes
    is no headline.

    None where a verdict does not hang on a number and its limit.
    """
    if verdict.state in ("awaited", "unjudged"):
        return None
    told = [(limit, shown) for limit in limits if (shown := _written(limit))]
    passed = [(limit, shown) for limit, shown in told if limit.level == verdict.state and spare(limit) < 0]

    def rank(one: tuple[Limit, Limit]) -> tuple[bool, bool, float]:
        limit, _ = one
        foreign = read is not None and not comes_of(limit.number, read)
        return foreign, not _quoted(limit, verdict.headline), spare(limit)

    return min(passed or told, key=rank)[1] if told else None


def comes_of(n: Number, read: Container[str]) -> bool:
    """Does a number stand on any of these inputs?"""
    return isinstance(n, Number) and any(
        origin.key.partition(".")[0] in read for origin in origins([n]) if origin.key and origin.op == "given"
    )


def held_by_itself(own: OwnLimits) -> Limit:
    """A size that was read, with its own limits on the engine's sheet."""
    low, high = own.held.limits
    return Limit(own.input.label, own.held.value, low, high)


def spare(limit: Limit) -> float:
    """How far inside of its nearer bound a number lies, as a share of half the distance between two bounds,
    or of the larger of number and bound; negative outside."""
    bounds = [None if bound is None else float(bound) for bound in (limit.low, limit.high)]
    low, high = bounds
    half = (high - low) / 2 if low is not None and high is not None and high > low else None
    shares = [
        margin / (half or max(abs(bound), abs(float(limit.number))) or 1.0)
        for margin, bound in zip(limit.margins(), bounds)
        if margin is not None and bound is not None
    ]
    return min(shares, default=inf)


def _quoted(limit: Limit, said: Any) -> bool:
    """Does a sentence hold the limit's number, or the words for it?"""
    if isinstance(said, Text):
        return any(_quoted(limit, part) for part in said.values.values())
    if isinstance(said, Number):
        return said.dims == limit.number.dims and float(said) == float(limit.number)
    return bool(said == limit.words)


def _written(limit: Limit) -> Limit | None:
    """The limit with numbers that can be shown, and do not read as a bound that they have passed; None where
    there is no bound, or no form to show it in."""
    bounds = limit.low, limit.high
    shape = next((shape for n in (limit.number, *bounds) if (shape := getattr(n, "form", None))), None)
    if shape is None and getattr(limit.number, "dims", None) == LENGTH.dims:
        shape = DISTANCE
    if shape is None or bounds == (None, None):
        return None
    low, high = (None if bound is None else _shaped(bound, shape) for bound in bounds)
    number = _shaped(limit.number, shape)
    shown = number.held_to(*(None if bound is None else float(bound) for bound in (low, high)))
    shown.key = number.key
    return replace(limit, number=shown, low=low, high=high)


def _shaped(n: Number | float, shape: Form) -> Number:
    """The number as it is, where it has a form of its own; else in this one."""
    if isinstance(n, Number) and n.form:
        return n
    return constant(getattr(n, "symbol", ""), getattr(n, "label", ""), shape, float(n))
