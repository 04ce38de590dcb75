"""What a reader's entries stand on: the engine's sheet, which of its parts is meant, and what a job filled in.

An input that nobody entered is worth what its declaration says (`calc.inputs.Quantity`): it is missed, comes from the sheet, stands in
with all that the sheet allows it, is assumed for a reason that is told, or does not count. What stands in must not decide: the
calculator is worked over its whole range, and where something in there turns the verdict, that input is the one to be read next.
"""

from dataclasses import dataclass, field
from itertools import product

from calc.core.conformance import COVERAGE
from calc.core.result import Refused, Text, Verdict, say
from calc.core.working import constant, origins
from calc.declare.inputs import ASSUMED, MISSED, NONE, READ, Choice, Grid, Origin, Quantity, Taken
from calc.reference.engine import Engine, Feature
from calc.reference.size import Held, hold, usable

SEVERITY = {"": 0, "pass": 0, "attention": 1, "unsure": 2, "fail": 3}


@dataclass(frozen=True)
class Standing:
    """`sheet`: the engine's, None where there is none. `which`: the part in hand, "exhaust" or "2 exhaust". `job`: the origin of each
    entry that a job filled in, by the entry's name."""

    sheet: Engine | None = None
    which: str = ""
    job: dict = field(default_factory=dict)

    @property
    def of_sheet(self) -> Origin:
        return Origin("sheet", f"{self.sheet.name}’s sheet")

    def feature(self, declared, chosen: dict, id: str = "") -> Feature | None:
        """What an input is a size of on this sheet."""
        found = (
            self.sheet.features.get(id or declared.feature_for(chosen))
            if self.sheet and (id or declared.feature)
            else None
        )
        return found if found and found.form.kind == declared.form.kind else None

    def origin(self, entry: str) -> Origin:
        return self.job.get(entry, READ)

    def unread(self, declared, chosen: dict) -> Taken:
        """An input that nobody entered; of one that is missed the value only keeps a place in the sums, and nothing that comes of it is told."""
        if len(declared.when) > 1 and chosen.get(declared.when[0], declared.when[1]) not in declared.when[1:]:
            return Taken(
                declared,
                {},
                declared.default if isinstance(declared, Choice) else self._kept(declared, chosen),
                False,
                origin=NONE,
            )
        if isinstance(declared, Choice):
            return self._unread_choice(declared, chosen)
        if not isinstance(declared, Quantity):
            return Taken(
                declared,
                {},
                declared.example(chosen) if isinstance(declared, Grid) else declared.default_value,
                False,
                origin=NONE if getattr(declared, "optional", False) else MISSED,
            )
        feature = self.feature(declared, chosen)
        value, origin, span = None, None, ()
        if declared.limit:
            value, origin = getattr(feature, declared.limit, None), self.sheet and self.of_sheet
        elif declared.must:
            pass
        elif feature and not declared.measured:
            value, origin = feature.nominal, self.of_sheet
        elif feature and declared.stands_in:
            value, origin, span = feature.nominal, self.of_sheet, allowed(feature, declared.stage)
        if value is None and declared.assumed:
            value, origin, span = declared.example(chosen), Origin("assumed", declared.assumed), ()
        if value is None and declared.optional:
            return Taken(declared, {}, None, False, origin=NONE)
        if value is None or not all(
            declared.hard_range[0] <= x <= declared.hard_range[1] for x in (value, *span)
        ):
            counts = len(declared.when) != 1 or declared.when[0] in chosen
            value, origin, span = (
                self._place_holder(declared, feature, chosen),
                MISSED if counts else NONE,
                (),
            )
        return Taken(
            declared,
            {},
            declared.number(value),
            False,
            origin=origin,
            span=span if span and span[0] < span[1] else (),
        )

    def _kept(self, declared, chosen):
        """What keeps the place of an input that does not count."""
        return (
            declared.example(chosen)
            if isinstance(declared, Grid)
            else (
                declared.number(self._place_holder(declared, self.feature(declared, chosen), chosen))
                if not declared.optional
                else None
            )
        )

    def _place_holder(self, declared, feature, chosen) -> float:
        low, high = declared.hard_range
        return (
            feature.nominal
            if feature and low <= feature.nominal <= high
            else declared.example(chosen) or (low + high) / 2
        )

    def _unread_choice(self, declared: Choice, chosen: dict) -> Taken:
        value, origin = declared.default, ASSUMED
        if declared.which:
            found = [id for id in declared.options if id in self.which.split()]
            value, origin = (found[0], READ) if found else (declared.default, MISSED)
        elif (
            declared.feature
            and self.sheet
            and (material := self.sheet.materials.get(declared.feature_for(chosen))) in declared.options
        ):
            value, origin = material, self.of_sheet
        elif declared.must or declared.feature and not declared.assumed:
            origin = MISSED
        elif declared.assumed:
            origin = Origin("assumed", declared.assumed)
        return Taken(declared, {}, value, False, origin=origin)


def allowed(feature: Feature, stage: str) -> tuple:
    """Least and greatest that the sheet allows a part: as made, and down to its wear limit if it may have run."""
    known = [
        x
        for x in (
            (feature.low, feature.high)
            if stage == "finished"
            else (*usable(feature), feature.low, feature.high)
        )
        if x is not None
    ]
    return (min(feature.nominal, *known), max(feature.nominal, *known)) if known else ()


@dataclass(frozen=True)
class OwnLimits:
    """A size that was read, held against its own limits on the sheet."""

    input: object  # the quantity, or the cell of a grid
    feature: Feature
    held: Held


def own_limits(taken: tuple, standing: Standing, chosen: dict) -> tuple[OwnLimits, ...]:
    """Every size that was read, against the limits of the feature that it is a size of; one of an intake or exhaust valve not before it is
    said which."""
    found, open_choices = (
        [],
        [f"{{{t.input.name}}}" for t in taken if isinstance(t.input, Choice) and t.origin is MISSED],
    )

    def known(feature):
        return not any(which in feature for which in open_choices)

    for t in taken:
        if not t.entered or t.origin is MISSED and not isinstance(t.input, Grid):
            continue
        doubts = dict(t.doubts)
        if (
            isinstance(t.input, Quantity)
            and t.input.measured
            and t.value is not None
            and known(t.input.feature)
            and (feature := standing.feature(t.input, chosen))
        ):
            found.append(
                _own(t.input, feature, t.origin.stage or t.input.stage, t.value, doubts.get((), 0.0))
            )
        if isinstance(t.input, Grid):
            for (r, c), cell in t.input.cells.items():
                value = t.value[r] and t.value[r][c]
                if (
                    value is not None
                    and cell.name in t.read
                    and known(t.input.columns[c].feature)
                    and (feature := standing.feature(cell, chosen, t.input.columns[c].feature))
                ):
                    found.append(
                        _own(
                            cell,
                            feature,
                            standing.origin(cell.name).stage or cell.stage,
                            value,
                            doubts.get((r, c), 0.0),
                        )
                    )
    return tuple(one for one in found if one)


def _own(declared, feature, stage, value, u) -> OwnLimits | None:
    if not stage:
        return None
    number = constant(declared.symbol, declared.label, declared.form, float(value))
    return OwnLimits(declared, feature, hold(feature, stage, number, COVERAGE * u or None))


def never_better(verdict: Verdict, own: tuple[OwnLimits, ...], standing: Standing) -> Verdict:
    """The verdict, or that on the worst of the sizes in it by its own limits, where this is worse."""
    worst = max(own, key=lambda one: SEVERITY[one.held.state], default=None)
    if worst is None or SEVERITY[worst.held.state] <= SEVERITY.get(verdict.state, 1):
        return verdict
    headline = say(
        "{label} {size}: {words} of {sheet}",
        label=worst.input.label,
        size=worst.held.value,
        words=worst.held.words,
        sheet=standing.sheet.name,
    )
    if verdict.state == "awaited":
        return Verdict(
            worst.held.state,
            headline,
            say("{do} Still to be read: {rest}.", do=worst.held.do, rest=verdict.headline),
        )
    return Verdict(
        worst.held.state,
        headline,
        say("{do} Apart from that: {rest}.", do=worst.held.do, rest=verdict.headline),
    )


# --- What stands in ---------------------------------------------------------------------------------


@dataclass(frozen=True)
class Walked:
    """What the ranges of the sizes that stand in make of an answer: how far each output moves with them (SI), and the inputs that can
    turn the verdict (empty: nothing in their ranges turns it)."""

    spread: dict
    turning: tuple


def walk(work, judge, values: dict, spans: list[Taken], found, verdict: Verdict) -> Walked:
    """Work a calculator at the ends of every range: one size moved at a time, and all of them together the way that brings each limit
    nearest. `work(values)` is its answer and raises Refused, `judge(values, answer)` its verdict with the readings' doubts.
    """
    answers, flips = {}, []

    def moved(ends: dict):
        return {**values, **{name: declared.number(x) for name, (declared, x) in ends.items()}}

    def state(ends):
        try:
            answer = work(moved(ends))
            return answer, judge(moved(ends), answer).state
        except Refused:
            return None, "refused"

    for t in spans:
        for end in t.span:
            answers[t.input.name, end], said = state({t.input.name: (t.input, end)})
            if said != verdict.state and t.input.name not in flips:
                flips.append(t.input.name)
    if not flips:
        flips = _together(state, answers, spans, found, verdict)
    told = {n.key: float(n) for n in found.numbers}
    spread = {
        key: max(
            (
                abs(float(n) - value)
                for answer in answers.values()
                if answer
                for n in answer.numbers
                if n.key == key
            ),
            default=0.0,
        )
        for key, value in told.items()
    }
    return Walked(spread, tuple(flips))


def _together(state, answers, spans, found, verdict) -> list:
    """The inputs that turn the verdict by moving at once, the way that brings one of the limits nearest; none where all of them together
    leave twice the room that they take of it one by one."""
    declared, seen = {t.input.name: t.input for t in spans}, set()
    for limit in range(len(found.limits)):
        for side in (0, 1):
            here = _margin(found, limit, side)
            if here is None:
                continue
            towards, gained = (
                (1 if here >= 0 else -1),
                0.0,
            )  # a limit that is met may be missed, one that is missed may be met
            corner = []
            for t in spans:
                margins = {end: _margin(answers[t.input.name, end], limit, side) for end in t.span}
                if None in margins.values() or margins[t.span[0]] == margins[t.span[1]]:
                    continue
                nearest = min(margins, key=lambda end: towards * margins[end])
                gained += max(0.0, towards * (here - margins[nearest]))
                corner.append((t.input.name, nearest))
            if len(corner) < 2 or tuple(corner) in seen or 2 * gained < abs(here):
                continue
            seen.add(tuple(corner))
            answers[tuple(corner)], said = state({name: (declared[name], end) for name, end in corner})
            if said != verdict.state:
                return [name for name, _ in corner]
    return []


def _margin(answer, limit: int, side: int) -> float | None:
    if answer is None or limit >= len(answer.limits):
        return None
    return answer.limits[limit].margins()[side]


# --- What is missed -----------------------------------------------------------------------------------


def awaited(missed: list[Taken], standing: Standing) -> Verdict:
    """What is still to be read before a verdict can be given; of limits that nobody knows: that nothing is judged by them."""
    if any(not getattr(t.input, "limit", "") for t in missed):
        return Verdict(
            "awaited",
            listed([t.called for t in missed]),
            say("No verdict yet: read what is named above. Numbers that hold already are shown."),
        )
    names = listed([t.called for t in missed])
    if standing.sheet is None:
        return Verdict(
            "unjudged",
            say("no engine’s sheet says {names}", names=names),
            say("Choose the engine, or type the limit from its maker’s data. Then it can be judged."),
        )
    return Verdict(
        "unjudged",
        say("{sheet}’s sheet does not say {names}", sheet=standing.sheet.name, names=names),
        say("Type it from the maker’s data. Then it can be judged."),
    )


def listed(names: list[str]) -> Text:
    return say("{all}", all="; ".join(names))


def told_without(missed: list[Taken], read: set, work, values: dict) -> tuple:
    """The outputs that come of something that was `read` (names) and need nothing of what is missed: neither by how they were worked, nor
    by which way the calculator took."""
    names = {t.input.name for t in missed} | {
        cell.name for t in missed if isinstance(t.input, Grid) for cell in t.input.cells.values()
    }
    try:
        here, *elsewhere = (
            work(values),
            *(
                work({**values, **{t.input.name: _elsewhere(t, share) for t in missed}})
                for share in (0.05, 0.02)
            ),
        )
    except Refused:
        return ()
    others = [{n.key: float(n) for n in there.numbers} for there in elsewhere]
    behind = {
        n.key: {origin.key for origin in origins([n]) if origin.op != "step" or origin.key in read}
        for n in here.numbers
    }
    return tuple(
        n
        for n in here.numbers
        if all(other.get(n.key) == float(n) for other in others)
        and names.isdisjoint(behind[n.key])
        and read & behind[n.key]
    )


def _elsewhere(t: Taken, share: float):
    """Another value in the place of one that is missed: some share of its range off."""
    if isinstance(t.input, Choice):
        return list(t.input.options)[-1] if t.value != list(t.input.options)[-1] else list(t.input.options)[0]
    if isinstance(
        t.input, Grid
    ):  # none of its rows as they stand, nor alike: what was read of it is not the whole either
        return tuple(
            row
            and tuple(
                cell and t.input.cells[r, c].number(float(cell) * (1 + share * (r + 1 + c)))
                for c, cell in enumerate(row)
            )
            for r, row in enumerate(t.value)
        )
    if not isinstance(t.input, Quantity):
        return constant(
            t.value.symbol, t.value.label, t.value.form, float(t.value) * (1 + share), key=t.value.key
        )
    low, high = t.input.usual_range or t.input.hard_range
    value = float(t.value)
    return t.input.number(value + (high - value if high - value > value - low else low - value) * share)


def fails_anyway(missed: list[Taken], work, judge, values: dict) -> Verdict | None:
    """A fail that no limit which nobody knows could mend: the same with each of them at both ends of all that they may be."""
    if any(not getattr(t.input, "limit", "") for t in missed):
        return None
    said = set()
    for ends in product(*(t.input.hard_range for t in missed)):
        moved = {**values, **{t.input.name: t.input.number(x) for t, x in zip(missed, ends)}}
        try:
            verdict = judge(moved, work(moved))
        except Refused:
            return None
        said.add((verdict.state, verdict.headline.template))
    return verdict if len(said) == 1 and verdict.state == "fail" else None
