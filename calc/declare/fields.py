"""What the fields of a calculator's `Inputs` are declared with.

Each gives the field of a class, whose annotation is what the calculator's function gets: `Number`, or `Number
| None` for one that may stay empty; `str` for a choice; `Rows` for a grid. So they say `Any`, as the standard
library's own `dataclasses.field` does.
"""

import re
from collections.abc import Iterable, Mapping
from typing import Any

from calc.core.working import Form
from calc.declare.choice import Choice
from calc.declare.grid import Column, Grid
from calc.declare.quantity import Quantity

Hard = str | tuple[str, str]
"""A range that an entry must lie in, "5 to 120 mm"; where it is told with its reason, ("5 to 120 mm",
"why")."""


def measured(
    label: str,
    symbol: str,
    shape: Form,
    *,
    tool: str,
    hard: Hard,
    usual: str = "",
    example: str = "",
    feature: str = "",
    of: str = "",
    hint: str = "",
    fold: bool = False,
    must: bool = False,
    stands_in: bool | None = None,
    assumed: str | tuple[str, str] = "",
    stage: str = "received",
    when: tuple[str, ...] = (),
) -> Any:
    """An input that is read off a part with a tool. `hard` and `usual` are ranges, "5 to 120 mm"; `example`
    is the worked example's entry."""
    default, why = _first(example, assumed)
    return Quantity(
        label,
        symbol,
        shape,
        hard_ends(hard),
        ends(usual),
        tool,
        feature,
        of,
        hint,
        fold,
        must=must,
        stands_in=bool(feature and fold and not must) if stands_in is None else stands_in,
        assumed=why,
        stage=stage,
        when=when,
        default=default,
    )


def given(
    label: str,
    symbol: str,
    shape: Form,
    *,
    hard: Hard,
    usual: str = "",
    example: str = "",
    feature: str = "",
    hint: str = "",
    fold: bool = False,
    doubt_of: str = "",
    must: bool = False,
    assumed: str | tuple[str, str] = "",
    when: tuple[str, ...] = (),
) -> Any:
    """An input that is chosen, known or read from a drawing; with a `feature`, a value that the engine's
    sheet knows. What is `assumed` is told with its reason: ("0.12", "oiled; common practice, no source"); the
    reason alone where the example has the sheet's value."""
    default, why = _first(example, assumed)
    return Quantity(
        label,
        symbol,
        shape,
        hard_ends(hard),
        ends(usual),
        feature=feature,
        hint=hint,
        fold=fold,
        doubt_of=doubt_of,
        must=must,
        assumed=why,
        when=when,
        default=default,
    )


def _first(example: str, assumed: str | tuple[str, str]) -> tuple[str, str]:
    """The entry that stands first, and the reason why it is assumed."""
    return (example, assumed) if isinstance(assumed, str) else assumed


def limit(
    label: str,
    symbol: str,
    shape: Form,
    *,
    feature: str,
    which: str,
    hard: Hard,
    usual: str = "",
    hint: str = "",
    fold: bool = True,
    when: tuple[str, ...] = (),
) -> Any:
    """An input that a number is held to: `which` (low, high, wear, nominal, or step and last of its
    undersizes) of a feature. It comes from the engine's sheet or from the reader, never from a default:
    where neither says it, nothing is judged by it."""
    return Quantity(
        label,
        symbol,
        shape,
        hard_ends(hard),
        ends(usual),
        feature=feature,
        hint=hint,
        fold=fold,
        limit=which,
        when=when,
    )


def choice(
    label: str,
    options: Mapping[str, str] | Iterable[tuple[str, str]],
    *,
    default: str = "",
    example: str = "",
    hint: str = "",
    fold: bool = False,
    exact: bool = False,
    must: bool = False,
    assumed: tuple[str, str] | tuple[()] = (),
    feature: str = "",
    when: tuple[str, ...] = (),
) -> Any:
    """An input chosen from named options, {id: words}. A question put to the calculator has a `default`; a
    fact about the part that `must` be chosen, or that the engine's sheet knows, an `example`; what is
    `assumed` is told with its reason, (id, why)."""
    first, why = assumed or (default or example, "")
    return Choice(label, dict(options), hint, fold, exact, must, why, feature, when=when, default=first)


def which_valve(hint: str = "", when: tuple[str, ...] = ()) -> Any:
    """Intake or exhaust: declared as the input `valve`, it fills {valve} in the features of the other
    inputs."""
    options = {"intake": "intake", "exhaust": "exhaust"}
    return Choice("Valve", options, hint, must=True, which=True, when=when, default="intake")


def column(
    label: str,
    symbol: str,
    shape: Form,
    *,
    hard: Hard,
    usual: str = "",
    optional: bool = False,
    feature: str = "",
    stage: str = "received",
) -> Column:
    """A column of a grid; `stage` as for what is measured."""
    return Column(label, symbol, shape, hard_ends(hard), ends(usual), optional, feature, stage)


def grid(
    label: str,
    rows: Iterable[str],
    columns: Iterable[Column],
    *,
    example: str = "",
    least: int | None = None,
    tool: str = "",
    feature: str = "",
    hint: str = "",
    fold: bool = False,
    when: tuple[str, ...] = (),
) -> Any:
    """Rows of readings: `rows` are their names, `columns` what is read in each; all rows must be filled
    unless `least` says fewer."""
    rows, columns = tuple(rows), tuple(columns)
    needed = len(rows) if least is None else least
    return Grid(label, rows, columns, needed, tool, feature, hint, fold, when, default=example)


_ALONE = re.compile(r"[-−]?[\d.,/ ]+")


def ends(span: str) -> tuple[str, ...]:
    """Both ends of a range with their units: "5 to 120 mm" is ("5 mm", "120 mm"). Nothing for no range."""
    if not span:
        return ()
    low, between, high = span.partition(" to ")
    if not between:
        raise ValueError(f"{span!r} is no range; write it as 5 to 120 mm")
    return low + _ALONE.sub("", high, count=1) if _ALONE.fullmatch(low) else low, high


def hard_ends(span: Hard) -> tuple[str, ...]:
    """The same; behind it, where a range is told with its reason, that."""
    return ends(span) if isinstance(span, str) else (*ends(span[0]), span[1])
