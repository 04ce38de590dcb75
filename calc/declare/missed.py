"""What can be said while something is still to be read, or a limit is not known."""

from collections.abc import Callable
from itertools import product
from typing import Any

from calc.core.result import Answer, Refused, Text, Verdict, say
from calc.core.working import Number, constant, origins
from calc.declare.choice import Choice
from calc.declare.declaration import Declaration, Values
from calc.declare.grid import Grid
from calc.declare.quantity import Quantity
from calc.declare.standing import Standing
from calc.declare.taken import Taken


def awaited(missed: list[Taken], standing: Standing) -> Verdict:
    """What is still to be read before a verdict can be given; of limits that nobody knows: that nothing is
    judged by them."""
    names = listed([t.called for t in missed])
    if not _limits_alone(missed):
        return Verdict(
            "awaited",
            names,
            say("No verdict yet: read what is named above. Numbers that hold already are shown."),
        )
    if standing.sheet is None:
        return Verdict(
            "unjudged",
            say("no engine’s sheet says {names}", names=names),
            say("Choose the engine, or type the limit from its maker’s data. Then it can be judged."),
        )
    return Verdict(
        "unjudged",
        say("{sheet}’s sheet does not say {names}", sheet=standing.sheet_name, names=names),
        say("Type it from the maker’s data. Then it can be judged."),
    )


def _limits_alone(missed: list[Taken]) -> bool:
    return all(getattr(t.input, "limit", "") for t in missed)


def listed(names: list[str]) -> Text:
    return say("{all}", all="; ".join(names))


def told_without(
    missed: list[Taken], read: set[str], calculator: Declaration, values: Values
) -> tuple[Number, ...]:
    """The outputs that come of something that was `read` (names) and need nothing of what is missed: neither
    by how they were worked, nor by which way the calculator took."""
    names = {t.input.name for t in missed} | {
        cell.name for t in missed if isinstance(t.input, Grid) for cell in t.input.cells.values()
    }
    try:
        here = calculator.work(values)
        elsewhere = [
            calculator.elsewhere({**values, **{t.input.name: _elsewhere(t, share) for t in missed}})
            for share in (0.05, 0.02)
        ]
    except Refused:
        return ()
    others = [{n.key: float(n) for n in there.numbers} for there in elsewhere]

    def needs_none(n: Number) -> bool:
        behind = {origin.key for origin in origins([n]) if origin.op != "step" or origin.key in read}
        same = all(other.get(n.key) == float(n) for other in others)
        return same and names.isdisjoint(behind) and bool(read & behind)

    return tuple(n for n in here.numbers if needs_none(n))


def _elsewhere(t: Taken, share: float) -> Any:
    """Another value in the place of one that is missed: some share of its range off."""
    if isinstance(t.input, Choice):
        options = list(t.input.options)
        return options[-1] if t.value != options[-1] else options[0]
    if isinstance(t.input, Grid):
        # none of its rows as they stand, nor alike: what was read of it is not the whole either
        return tuple(
            row
            and tuple(
                cell and t.input.cells[r, c].number(float(cell) * (1 + share * (r + 1 + c)))
                for c, cell in enumerate(row)
            )
            for r, row in enumerate(t.value)
        )
    if not isinstance(t.input, Quantity):
        moved = float(t.value) * (1 + share)
        return constant(t.value.symbol, t.value.label, t.value.form, moved, key=t.value.key)
    low, high = t.input.usual_range or t.input.hard_range
    value = float(t.value)
    return t.input.number(value + (high - value if high - value > value - low else low - value) * share)


def fails_anyway(
    missed: list[Taken],
    work: Callable[[Values], Answer],
    judge: Callable[[Values, Answer], Verdict],
    values: Values,
) -> Verdict | None:
    """A fail that no limit which nobody knows could mend: the same with each of them at both ends of all that
    they may be."""
    if not _limits_alone(missed):
        return None
    said, verdict = set(), None
    for ends in product(*(t.input.hard_range for t in missed)):
        moved = {**values, **{t.input.name: t.input.number(x) for t, x in zip(missed, ends, strict=True)}}
        try:
            verdict = judge(moved, work(moved))
        except Refused:
            return None
        said.add((verdict.state, verdict.headline.template))
    return verdict if verdict and len(said) == 1 and verdict.state == "fail" else None
