"""What misses a limit does not read as right: numbers get the decimals that it takes to tell them apart."""

import math
from collections.abc import Hashable, Iterator
from copy import copy
from dataclasses import fields, is_dataclass, replace
from functools import cache
from itertools import combinations
from typing import Any, cast

from calc.core.conformance import DUST
from calc.core.result import Answer, Limit, Remark, Verdict
from calc.core.working import Dims, Form, Number, origins

_Apart = tuple[float, float, Dims | None]  # a number, what it must not be read as (SI), their dimensions


def tell_apart(answer: Answer) -> Answer:
    """The same answer, in which what misses a limit does not read as right, nor one number as another that it
    stands beside: wherever these numbers stand, they get the decimals that it takes to differ, their distance
    those that it takes to differ from nothing. The answer given keeps its own numbers, as a constant of a
    calculator's may be one of them."""
    apart = [*_missed(answer.limits), *_alike(answer)]
    if not apart:
        return answer
    shown = tuple(answer.figures()), tuple(answer.tables())
    numbers = {id(number): number for number in _numbers((answer, shown))}
    forms = {key: shape for key, number in numbers.items() if (shape := _finer(number, apart)) != number.form}
    made: dict[int, Number] = {}
    # what led to a number is older than the number
    for number in sorted(origins(numbers.values()), key=lambda n: n.order):
        if id(number) in forms or not made.keys().isdisjoint(map(id, number.args)):
            made[id(number)] = own = copy(number)
            own.args = tuple(made.get(id(n), n) for n in number.args)
            own.form = forms.get(id(number), number.form)
    figures, tables = _with(shown, made)
    new: Answer = _with(answer, made)
    return replace(new, figures=lambda: figures, tables=lambda: tables)


def _missed(limits: tuple[Limit, ...]) -> list[_Apart]:
    """Each number that lies outside of a limit, with the limit (SI) and the dimensions of both."""
    return [
        (float(limit.number), float(bound), getattr(limit.number, "dims", None))
        for limit in limits
        for bound, margin in zip((limit.low, limit.high), limit.margins())
        if bound is not None and margin is not None and margin < -DUST
    ]


def _alike(answer: Answer) -> list[_Apart]:
    """Each two numbers that differ and read the same where one is too much or too little beside the other:
    within a verdict that is not simply in order, and within a warning."""
    told: list[Verdict | Remark] = [remark for remark in answer.remarks if remark.level == "warning"]
    if answer.verdict.state != "pass":
        told.insert(0, answer.verdict)
    return [
        (float(a), float(b), a.dims)
        for said in told
        for a, b in combinations([n for n in _numbers(said) if n.form], 2)
        if a.dims == b.dims and abs(float(a) - float(b)) > DUST * max(1.0, abs(float(a))) and a.reads_as(b)
    ]


def _finer(number: Number, apart: list[_Apart]) -> Form | None:
    """The form that tells a number from the one that it must not be read as, the nearest where there are
    several; its own where there is none."""
    if number.form is None:
        return None
    value = float(number)
    others: list[float] = []
    for what, bound, dims in apart:
        if dims in (None, number.dims):
            others += (
                [bound] * (value == what)
                + [what] * (value == bound)
                + [0.0] * math.isclose(abs(value), abs(what - bound), rel_tol=1e-9)
            )
    return (
        number.form.apart_from(min(others, key=lambda other: abs(value - other))) if others else number.form
    )


def _numbers(said: Any) -> Iterator[Number]:
    """Every number that stands somewhere in what a calculator says."""
    if isinstance(said, Number):
        yield said
    else:
        for part in _within(said).values():
            yield from _numbers(part)


def _with(said: Any, made: dict[int, Number]) -> Any:
    """The same with other numbers, {id: number}, in their places."""
    if isinstance(said, Number):
        return made.get(id(said), said)
    new = {key: other for key, part in _within(said).items() if (other := _with(part, made)) is not part}
    if not new:
        return said
    if isinstance(said, dict):
        return said | new
    if isinstance(said, (tuple, list)):
        parts = [new.get(i, part) for i, part in enumerate(said)]
        return type(said)._make(parts) if hasattr(said, "_make") else type(said)(parts)
    return replace(said, **new)


_PLAIN = {float, int, bool, str, type(None)}
_POINTS = {"Point", "Points"}  # of a drawing are thousands of plain numbers


def _within(said: Any) -> dict[Any, Any]:
    """What stands in something that is said, and may hold numbers."""
    if isinstance(said, (tuple, list)):
        return {i: part for i, part in enumerate(said) if type(part) not in _PLAIN}
    if isinstance(said, dict):
        return said
    return {
        name: part
        for name in _names(cast(Hashable, type(said)))
        if type(part := getattr(said, name)) not in _PLAIN
    }


@cache
def _names(kind: Any) -> tuple[str, ...]:
    if not is_dataclass(kind) or kind is Form:
        return ()
    return tuple(f.name for f in fields(kind) if f.type not in _POINTS)
