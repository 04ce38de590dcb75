"""Each size that was read, held against its own limits on the engine's sheet: no verdict is better than
these."""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

from calc.core.conformance import COVERAGE
from calc.core.result import Text, Verdict, say
from calc.core.working import constant
from calc.declare.choice import Choice
from calc.declare.grid import Grid
from calc.declare.quantity import Quantity
from calc.declare.standing import Standing
from calc.declare.taken import MISSED, Taken
from calc.reference.engine import Feature
from calc.reference.size import Held, hold

SEVERITY = {"": 0, "pass": 0, "attention": 1, "unsure": 2, "fail": 3}


@dataclass(frozen=True)
class OwnLimits:
    """A size that was read, held against its own limits on the sheet."""

    input: Quantity  # or the cell of a grid
    feature: Feature
    held: Held


@dataclass(frozen=True)
class _Size:
    """A size that was read: of what input, by which feature's id, how large, with which standard doubt (SI),
    at which stage."""

    input: Quantity
    feature: str
    value: float
    doubt: float
    stage: str


def own_limits(taken: tuple[Taken, ...], standing: Standing, chosen: dict[str, str]) -> tuple[OwnLimits, ...]:
    """Every size that was read, against the limits of the feature that it is a size of; one of an intake or
    exhaust valve not before it is said which."""
    undecided = [f"{{{t.input.name}}}" for t in taken if isinstance(t.input, Choice) and t.origin is MISSED]
    found = []
    for t in taken:
        for size in _sizes(t, standing):
            if any(which in size.feature for which in undecided):
                continue
            own_id = "" if size.input.feature else size.feature  # a cell's feature stands with its column
            feature = standing.feature(size.input, chosen, own_id)
            if feature and size.stage:
                found.append(_held(size, feature))
    return tuple(found)


def _sizes(t: Taken, standing: Standing) -> Iterator[_Size]:
    """What was read in an input: one size, or those in the cells of a grid."""
    if not t.entered:
        return
    doubts = dict(t.doubts)
    declared: Any = t.input
    if (
        isinstance(declared, Quantity)
        and declared.measured
        and t.value is not None
        and t.origin is not MISSED
    ):
        stage = t.origin.stage or declared.stage
        yield _Size(declared, declared.feature, float(t.value), doubts.get((), 0.0), stage)
    if isinstance(declared, Grid):
        for (r, c), cell in declared.cells.items():
            value = t.value[r] and t.value[r][c]
            if value is not None and cell.name in t.read:
                stage = standing.origin(cell.name).stage or cell.stage
                yield _Size(cell, declared.columns[c].feature, float(value), doubts.get((r, c), 0.0), stage)


def _held(size: _Size, feature: Feature) -> OwnLimits:
    declared = size.input
    number = constant(declared.symbol, declared.label, declared.form, size.value)
    return OwnLimits(declared, feature, hold(feature, size.stage, number, COVERAGE * size.doubt or None))


def worse(verdict: Verdict, own: tuple[OwnLimits, ...]) -> OwnLimits | None:
    """The worst of the sizes in a verdict by its own limits, where this is worse than the verdict."""
    worst = max(own, key=lambda one: SEVERITY[one.held.state], default=None)
    if worst is None or SEVERITY[worst.held.state] <= SEVERITY.get(verdict.state, 1):
        return None
    return worst


def told_of(worst: OwnLimits, verdict: Verdict, standing: Standing) -> Verdict:
    """The verdict on a size by its own limits, in place of one that is better."""
    headline = say(
        "{label} {size}: {words} of {sheet}",
        label=worst.input.label,
        size=worst.held.value,
        words=worst.held.words,
        sheet=standing.sheet_name,
    )
    return Verdict(worst.held.state, headline, _and_the_rest(worst.held.do, verdict))


def _and_the_rest(do: Text, verdict: Verdict) -> Text:
    if verdict.state == "awaited":
        return say("{do} Still to be read: {rest}.", do=do, rest=verdict.headline)
    return say("{do} Apart from that: {rest}.", do=do, rest=verdict.headline)
