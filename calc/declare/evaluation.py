"""The one way to evaluate a calculator: entries in, a `Result` or what is wrong with them out."""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import replace
from math import isfinite
from typing import Any

from calc.core.apart import tell_apart
from calc.core.result import Answer, Limit, Refused, Remark, Verdict, as_text, say
from calc.core.working import Number, origins, steps_behind
from calc.declare import doubt
from calc.declare.deciding import deciding, held_by_itself
from calc.declare.declaration import Declaration, Values
from calc.declare.missed import awaited, fails_anyway, listed, told_without
from calc.declare.own_limits import OwnLimits, own_limits, told_of, worse
from calc.declare.quantity import Quantity
from calc.declare.range_walk import walk
from calc.declare.result import Result
from calc.declare.standing import Standing
from calc.declare.taken import MISSED, NONE, Taken
from calc.declare.taking import chosen_of, take_all

Inputs = tuple[Taken, ...]
Doubts = dict[str, float]


def evaluate(
    calculator: Declaration,
    entries: Mapping[str, str] | None = None,
    system: str = "metric",
    standing: Standing | None = None,
    later: bool = False,
) -> Result:
    """Evaluate with the reader's entries (texts, by input name).

    What is not entered takes the value of the worked example; with a `standing` it is worth what its
    declaration says of an unread input instead, and the verdict may be that something is still to be read, or
    not judged (see `calc.declare.standing`).

    A text without a unit is read in `system`'s unit. Beside an input's own entry there may be others, named
    with a point behind its name: the cells of a grid, the temperatures of a warm reading. Raises `Refused`
    with one sentence for each entry that cannot be used. `later` leaves figures and tables until they are
    looked at, for a reader who waits for the verdict; then what they refuse is raised there.
    """
    taken = take_all(calculator, entries or {}, system, standing)
    values = {t.input.name: t.value for t in taken}
    if standing is None:
        found = _told(calculator, taken, *_judged(calculator, values, taken))
    else:
        found = _standing_on(calculator, taken, values, standing)
    return found if later else found.shown()


def _standing_on(calculator: Declaration, taken: Inputs, values: Values, standing: Standing) -> Result:
    """The result where what nobody entered is worth what its declaration says."""
    own = own_limits(taken, standing, chosen_of(taken))
    if missed := [t for t in taken if t.origin is MISSED]:
        return _partly(calculator, taken, values, missed, standing, own)
    try:
        found, verdict, doubts = _judged(calculator, values, taken)
    except Refused as refusal:
        # What was read does not go together with what stands in for something unread: that is to be read.
        unread = {t.input.name: t for t in taken if _unread(t)}
        if not all(e.code == "impossible" and e.field in unread for e in refusal.errors):
            raise
        missed = [unread[e.field] for e in refusal.errors]
        return _partly(calculator, taken, values, missed, standing, own)
    turning: tuple[str, ...] = ()
    if spans := [t for t in taken if t.span]:
        walked = walk(
            calculator.elsewhere,
            lambda moved, answer: _weighed(calculator, moved, taken, answer)[0],
            values,
            spans,
            found,
            verdict,
        )
        doubts = {key: u for key, spread in walked.spread.items() if (u := doubts.get(key, 0.0) + spread)}
        if turning := walked.turning:
            verdict = _turned([t for t in spans if t.input.name in turning], standing)
    return _told(calculator, taken, found, verdict, doubts, standing, own, turning)


def _unread(t: Taken) -> bool:
    stands_in = not t.entered and t.origin.kind in ("sheet", "assumed") or t.value is None
    return stands_in and isinstance(t.input, Quantity)


def _turned(turning: list[Taken], standing: Standing) -> Verdict:
    """What is said where a size that nobody read can turn the verdict."""
    return Verdict(
        "awaited",
        listed([t.called for t in turning]),
        say(
            "Within what {sheet}’s sheet allows {it}, the verdict can be one or the other.",
            sheet=standing.sheet_name,
            it="it" if len(turning) == 1 else "them",
        ),
    )


def _judged(calculator: Declaration, values: Values, taken: Inputs) -> tuple[Answer, Verdict, Doubts]:
    """The calculator's answer, the verdict that the readings' doubts leave standing, and what they are worth
    in each output."""
    found = calculator.work(values)
    return found, *_weighed(calculator, values, taken, found)


def _weighed(calculator: Declaration, values: Values, taken: Inputs, found: Answer) -> tuple[Verdict, Doubts]:
    if not any(t.doubts for t in taken):
        return found.verdict, {}
    doubts, verdict = doubt.weigh(calculator.elsewhere, values, taken, found)
    return verdict, doubts


def _told(
    calculator: Declaration,
    taken: Inputs,
    found: Answer,
    verdict: Verdict,
    doubts: Doubts,
    standing: Standing | None = None,
    own: tuple[OwnLimits, ...] = (),
    to_read: tuple[str, ...] = (),
) -> Result:
    worst = worse(verdict, own)
    if worst and standing:
        verdict = told_of(worst, verdict, standing)
    if verdict.state not in ("unsure", "awaited"):  # a number in doubt is told no finer than its doubt
        found = tell_apart(replace(found, verdict=verdict))
        verdict = found.verdict
    remarks = [Remark("note", as_text(n), t.input.name) for t in taken for n in t.notes]
    remarks += [r for t in taken if t.entered for r in t.input.usual_remarks(t)]
    steps = steps_behind(found.numbers)
    if not all(isfinite(n.value) for n in steps):
        raise calculator.no_answer("endless")
    idle = _idle(taken, found.numbers)
    steps = [n for n in steps if n.order not in idle]
    used = [s.source for s in steps if s.source]
    return Result(
        calculator,
        taken,
        {n.key: n for n in found.numbers if n.order not in idle},
        verdict,
        tuple(steps),
        (*remarks, *found.remarks),
        tuple(dict.fromkeys((*found.cautions, *calculator.cautions))),
        tuple(dict.fromkeys((*calculator.sources, *used))),
        (found.figures, found.tables),
        doubts,
        standing,
        own,
        to_read,
        _hangs_on(verdict, found, taken, standing, worst),
        tuple(found.cautions),
    )


def _hangs_on(
    verdict: Verdict, found: Answer, taken: Inputs, standing: Standing | None, worst: OwnLimits | None
) -> Limit | None:
    if worst:
        return held_by_itself(worst)
    read = None if standing is None else {t.input.name for t in taken if t.entered}
    return deciding(verdict, found.decides or found.limits, read)


def _idle(taken: Inputs, numbers: Iterable[Number]) -> set[int]:
    """What does not count keeps its place in the sums only: that, and all that comes of it, is not told. By
    the order in which numbers were made, which a copy keeps; what led to a number is older than the
    number."""
    idle = {n.order for t in taken if t.origin is NONE for n in _numbers(t.value)}
    if idle:
        for n in sorted(origins(numbers), key=lambda n: n.order):
            if any(each.order in idle for each in n.args):
                idle.add(n.order)
    return idle


def _numbers(value: Any) -> Iterator[Number]:
    """The numbers of an input's value: its own, or those of a grid's cells. An output may have an input's
    name, as a torque that is given or found."""
    if isinstance(value, tuple):
        for each in value:
            yield from _numbers(each)
    elif isinstance(value, Number):
        yield value


def _partly(
    calculator: Declaration,
    taken: Inputs,
    values: Values,
    missed: list[Taken],
    standing: Standing,
    own: tuple[OwnLimits, ...],
) -> Result:
    """What can be told while something is missed: the outputs that do not need it, each size by its own
    limits, and what is to be read."""

    def judge(moved: Values, answer: Answer) -> Verdict:
        return _weighed(calculator, moved, taken, answer)[0]

    verdict = fails_anyway(missed, calculator.work, judge, values) or awaited(missed, standing)
    numbers = told_without(missed, {name for t in taken for name in t.read}, calculator, values)
    doubts: Doubts = {}
    if numbers and any(t.doubts for t in taken):
        weighed, _ = doubt.weigh(calculator.elsewhere, values, taken, calculator.elsewhere(values))
        doubts = {n.key: weighed[n.key] for n in numbers}
    to_read = tuple(t.input.name for t in missed)
    return _told(calculator, taken, Answer(numbers, verdict), verdict, doubts, standing, own, to_read)
