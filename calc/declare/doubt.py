"""What the doubt of the readings is worth in a result.

Each reading is moved by its standard uncertainty, both ways, and the same function is worked again (the law
of propagation of uncertainty, GUM 5.1, with numerical sensitivities); no calculator knows about it. Readings
are taken as independent, and each limit is judged by itself.
"""

import math
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from typing import Any

from calc.core.conformance import COVERAGE, ROUNDING, decide, deciding_share, percent, probability, standard
from calc.core.result import Answer, Limit, Refused, Verdict, say
from calc.core.working import constant
from calc.declare.declaration import Values
from calc.declare.taken import Path, Taken

Work = Callable[[Values], Answer]
Spot = str | tuple[int, int]  # an output by its key, or a limit and its side


def weigh(
    work: Work, values: Values, taken: Iterable[Taken], found: Answer
) -> tuple[dict[str, float], Verdict]:
    """Expanded uncertainty of each output, and the verdict that the doubt leaves standing.

    `work(values)` evaluates; `found` is its answer for `values` themselves. Returns ({output: U}, Verdict).
    """
    squares = dict.fromkeys(_told(found), 0.0)
    for t in taken:
        for path, u in t.doubts:
            for place, change in _changes(work, values, t.input, path, u, found).items():
                squares[place] += change**2
    doubts = {place: math.sqrt(square) for place, square in squares.items()}
    return {n.key: COVERAGE * doubts[n.key] for n in found.numbers}, _verdict(found, doubts)


def _told(answer: Answer) -> dict[Spot, float]:
    """Outputs by key, and how far inside of each limit they lie by (which limit, which side)."""
    return {n.key: float(n) for n in answer.numbers} | _margins(answer)


def _margins(answer: Answer) -> dict[Spot, float]:
    return {
        (i, side): margin
        for i, limit in enumerate(answer.limits)
        for side, margin in enumerate(limit.margins())
        if margin is not None
    }


def _changes(
    work: Work, values: Values, declared: Any, path: Path, u: float, found: Answer
) -> dict[Spot, float]:
    """What one standard uncertainty of one reading changes.

    For an output the root mean square of both ways, which is the GUM's half difference along a straight line,
    and does not vanish where a result turns or has a kink (the largest of several readings). For a limit the
    larger of both: it is the way that hurts. Where a reading so far off lies outside the accepted range, or
    does not go together with the others, one way is enough; where neither does, the step is made smaller.
    """
    share = 1.0
    while True:
        moved = [
            answer for way in (1, -1) if (answer := _moved(work, values, declared, path, way * share * u))
        ]
        if moved or share < 1e-9:
            break
        share /= 8
    here, there = _told(found), [_told(answer) for answer in moved]
    changes = {
        place: [_change(here[place], told[place]) / share for told in there if place in told] or [0.0]
        for place in here
    }
    return {
        place: (
            max(map(abs, both))
            if isinstance(place, tuple)
            else math.sqrt(sum(x * x for x in both) / len(both))
        )
        for place, both in changes.items()
    }


def _change(before: float, after: float) -> float:
    # where a reading falls out of a result, or does not come into it, rounding alone is left
    return 0.0 if abs(after - before) <= ROUNDING * max(abs(before), abs(after)) else after - before


def _moved(work: Work, values: Values, declared: Any, path: Path, by: float) -> Answer | None:
    """The answer with a reading moved by so much; None where it is refused."""
    value = values[declared.name]
    number, reading = (declared.cells[path], value[path[0]][path[1]]) if path else (declared, value)
    try:
        number.check(float(reading) + by)
        return work({**values, declared.name: _shift(value, path, by)})
    except Refused:
        return None


def _shift(value: Any, path: Path, by: float) -> Any:
    if not path:
        return constant(value.symbol, value.label, value.form, float(value) + by, key=value.key)
    return tuple(_shift(part, path[1:], by) if i == path[0] else part for i, part in enumerate(value))


@dataclass(frozen=True)
class _Weighed:
    """A limit as the doubt leaves it: how far inside of it the number lies on both sides, in doubts."""

    limit: Limit
    outside: bool
    below: float
    above: float

    @property
    def decision(self) -> str:
        return decide(self.below, self.above)


def _verdict(found: Answer, doubts: dict[Spot, float]) -> Verdict:
    """The calculator's own verdict where the doubt cannot turn it, 'cannot tell' where it can (ISO
    14253-1)."""
    weighed = _weighed(found, doubts)
    to_fail, to_look = (
        [each for each in weighed if each.limit.level == level] for level in ("fail", "attention")
    )
    if any(each.decision == "out" for each in to_fail):
        return found.verdict
    looked_at = any(each.outside for each in to_look)
    if found.verdict.state == "fail":
        # else it fails by something that no doubt of these readings touches
        counted = to_fail if any(each.outside for each in to_fail) else []
    elif any(each.decision == "out" for each in to_look) or (
        found.verdict.state == "attention" and not looked_at
    ):
        counted = to_fail  # another look is called for in any case
    else:
        counted = weighed
    undecided = [each for each in counted if each.decision == "cannot tell"]
    return _cannot_tell(undecided) if undecided else found.verdict


def _weighed(found: Answer, doubts: dict[Spot, float]) -> list[_Weighed]:
    margins = _margins(found)
    weighed = []
    for i, limit in enumerate(found.limits):
        sides: tuple[Spot, Spot] = ((i, 0), (i, 1))
        below, above = (standard(margins.get(side), doubts.get(side, 0.0)) for side in sides)
        outside = any(margins.get(side, 0.0) < 0 for side in sides)
        weighed.append(_Weighed(limit, outside, below, above))
    return weighed


def _cannot_tell(undecided: list[_Weighed]) -> Verdict:
    """What is said of limits that the doubt leaves open: how sure the least sure is, and what doubt would
    tell."""
    told = [
        (probability(each.below, each.above), deciding_share(each.below, each.above), each.limit.words)
        for each in undecided
    ]
    sure, _, words = min(told)
    share = min(share for _, share, _ in told)
    if share < 0.01:
        again = say("It lies on the limit, where no doubt is small enough to tell. Treat it as not right.")
    else:
        again = say(
            "Measure again with less doubt: {share} of the present one would tell. Until then treat it as not"
            " right.",
            share=percent(share),
        )
    return Verdict(
        "unsure", say("Only {sure} sure that {words} is right", sure=percent(sure), words=words), again
    )
