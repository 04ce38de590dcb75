"""What stands in for a size that nobody read must not decide: a calculator worked over all that the sheet
allows such sizes."""

from collections.abc import Callable
from dataclasses import dataclass

from calc.core.result import Answer, Refused, Verdict
from calc.declare.declaration import Values
from calc.declare.quantity import Quantity
from calc.declare.taken import Taken

Ends = dict[str, tuple[Quantity, float]]
"""Which inputs are moved, by name, each to one end of its range (SI)."""


@dataclass(frozen=True)
class Walked:
    """What the ranges of the sizes that stand in make of an answer: how far each output moves with them (SI),
    and the inputs that can turn the verdict (empty: nothing in their ranges turns it)."""

    spread: dict[str, float]
    turning: tuple[str, ...]


@dataclass(frozen=True)
class _Walk:
    """A calculator on its way: `work(values)` is its answer and raises Refused, `judge(values, answer)` its
    verdict with the readings' doubts; `found` and `verdict` are what it says where it stands."""

    work: Callable[[Values], Answer]
    judge: Callable[[Values, Answer], Verdict]
    values: Values
    found: Answer
    verdict: Verdict

    def moved_to(self, ends: Ends) -> tuple[Answer | None, bool]:
        """The answer with inputs moved, None where it is refused, and whether that turns the verdict."""
        values = {**self.values, **{name: declared.number(x) for name, (declared, x) in ends.items()}}
        try:
            answer = self.work(values)
            return answer, self.judge(values, answer).state != self.verdict.state
        except Refused:
            return None, True


def walk(
    work: Callable[[Values], Answer],
    judge: Callable[[Values, Answer], Verdict],
    values: Values,
    spans: list[Taken],
    found: Answer,
    verdict: Verdict,
) -> Walked:
    """Work a calculator at the ends of every range: one size moved at a time, and all of them together the
    way that brings each limit nearest. `work(values)` is its answer and raises Refused, `judge(values,
    answer)` its verdict with the readings' doubts."""
    way = _Walk(work, judge, values, found, verdict)
    alone: dict[tuple[str, float], Answer | None] = {}
    turning: list[str] = []
    for t in spans:
        for end in t.span:
            alone[t.input.name, end], turns = way.moved_to({t.input.name: (t.input, end)})
            if turns and t.input.name not in turning:
                turning.append(t.input.name)
    answers = list(alone.values())
    if not turning:
        turning = _together(way, alone, spans, answers)
    spread = {n.key: _furthest(n.key, float(n), answers) for n in found.numbers}
    return Walked(spread, tuple(turning))


def _furthest(key: str, value: float, answers: list[Answer | None]) -> float:
    """How far an output lies from its value in any of these answers."""
    there = (n for answer in answers if answer for n in answer.numbers if n.key == key)
    return max((abs(float(n) - value) for n in there), default=0.0)


def _together(
    way: _Walk,
    alone: dict[tuple[str, float], Answer | None],
    spans: list[Taken],
    answers: list[Answer | None],
) -> list[str]:
    """The inputs that turn the verdict by moving at once, the way that brings one of the limits nearest; none
    where all of them together leave twice the room that they take of it one by one. Adds to `answers` those
    that it works."""
    declared = {t.input.name: t.input for t in spans}
    seen = set()
    for limit in range(len(way.found.limits)):
        for side in (0, 1):
            here = _margin(way.found, limit, side)
            if here is None:
                continue
            corner, gained = _corner(alone, spans, limit, side, here)
            if len(corner) < 2 or corner in seen or 2 * gained < abs(here):
                continue
            seen.add(corner)
            answer, turns = way.moved_to({name: (declared[name], end) for name, end in corner})
            answers.append(answer)
            if turns:
                return [name for name, _ in corner]
    return []


def _corner(
    alone: dict[tuple[str, float], Answer | None], spans: list[Taken], limit: int, side: int, here: float
) -> tuple[tuple[tuple[str, float], ...], float]:
    """The end of each range that brings one side of a limit nearest, and how much nearer all of them bring
    it, one by one (SI). A limit that is met may be missed, one that is missed may be met."""
    towards, gained, corner = (1 if here >= 0 else -1), 0.0, []
    for t in spans:
        margins = {end: _margin(alone[t.input.name, end], limit, side) for end in t.span}
        known = {end: towards * margin for end, margin in margins.items() if margin is not None}
        if len(known) < len(margins) or known[t.span[0]] == known[t.span[1]]:
            continue
        nearest = min(known, key=known.__getitem__)
        gained += max(0.0, towards * here - known[nearest])
        corner.append((t.input.name, nearest))
    return tuple(corner), gained


def _margin(answer: Answer | None, limit: int, side: int) -> float | None:
    if answer is None or limit >= len(answer.limits):
        return None
    return answer.limits[limit].margins()[side]
