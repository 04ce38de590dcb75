"""Parts that are sold to the size of what they go on or into."""

from dataclasses import dataclass
from typing import NamedTuple

from calc.core.conformance import COVERAGE
from calc.core.result import Text, say
from calc.core.working import Number, constant
from calc.job.sizes import Read, Sizes, decision
from calc.reference.engine import STANDARD, Feature, Step
from calc.reference.size import cleaned_up, made_to, usable
from calc.stations.shared.orders.order import Because, Order, because
from calc.stations.shared.orders.shell import clearance_left, housings

AT_HAND = ("finished", "assembly")  # a part read so is there already


@dataclass(frozen=True)
class Fit:
    """A part that goes on or into `by`, and whose own size is `ordered`; a shell goes into a `housing` too.

    `always`: renewed with every overhaul, so standard ones are ordered too; `together`: all places are
    machined to one size.
    """

    part: str
    by: str
    ordered: str
    housing: str = ""
    always: bool = False
    together: bool = False

    def rows(self, sizes: Sizes, before: tuple[Order, ...] = ()) -> list[Order]:
        by, ordered = sizes.feature(self.by), sizes.feature(self.ordered)
        if by is None or ordered is None:
            return []
        found = self._found(sizes, by, ordered)
        rows, found = self._to_be_machined(by, found)
        outer = housings(sizes, self.housing, found)
        alike: dict[tuple, list[str]] = {}
        for place, each in found.items():
            alike.setdefault((each.steps, each.state, outer[place]), []).append(place)
        for (steps, state, outside), places in alike.items():
            why = because(by, [found[place].because for place in places])
            if state != "pass":
                rows.append(_undecided(self.part, steps, state, places, why))
            elif steps[0].offset or self.always:
                rows.append(self._of_a_size(sizes, ordered, steps[0], outside, places, why))
        return rows

    def _found(self, sizes: Sizes, by: Feature, ordered: Feature) -> "dict[str, _Found]":
        """What fits at each place.

        Left out are places of another kind (an exhaust guide takes no intake valve), and parts at hand.
        """
        return {
            place: _fitting(by, read)
            for place in sizes.places(by)
            if (not ordered.places or place in ordered.places)
            and not sizes.best(self.ordered, place, AT_HAND)
            and (read := sizes.best(self.by, place))
        }

    def _to_be_machined(
        self, by: Feature, found: "dict[str, _Found]"
    ) -> "tuple[list[Order], dict[str, _Found]]":
        """Rows of what is worn, to the size that it still cleans up to, and what was found elsewhere."""
        received = [place for place, each in found.items() if each.stage == "received"]
        worn = [place for place in received if found[place].state == "fail"]
        if not worn:
            return [], found
        past = received if self.together else worn
        groups = [past] if self.together else [[place] for place in past]
        rows = [_after_machining(self.part, by, {place: found[place] for place in group}) for group in groups]
        return rows, {place: each for place, each in found.items() if place not in past}

    def _of_a_size(
        self, sizes: Sizes, ordered: Feature, step: Step, outer: Step, places: list[str], why: Text
    ) -> Order:
        name, offset = step.name, step.offset
        if self.housing:  # a shell's wall is half of what journal and housing leave
            name += f", outside {outer.name}" if outer.offset else ""
            offset = (outer.offset - step.offset) / 2
        size = constant("", ordered.label, ordered.form, ordered.nominal + offset)
        state, do = "pass", say("{what} {size}.", what=ordered.label, size=size)
        leaves = None
        if self.housing:
            leaves = clearance_left(sizes, self.by, self.ordered, self.housing, float(size), places)
        if leaves:
            state, words = leaves
            do = say("{do} {words}", do=do, words=words)
        return Order(self.part, say("{name}", name=name), tuple(places), why, state, do)


class _Found(NamedTuple):
    """What fits at a place: `steps` are the sizes that may be right, one where that is sure."""

    steps: tuple[Step, ...]
    state: str
    value: Number
    u: float
    stage: str

    @property
    def because(self) -> Because:
        return Because(self.value, self.stage)


def _fitting(by: Feature, read: Read) -> _Found:
    value, u, stage = read
    fits = [
        (step, now)
        for step in (STANDARD, *by.steps)
        if (now := decision(float(value), u, *_limits(by.at(step), stage))) != "out"
    ]
    sure = [step for step, now in fits if now == "in"][:1]
    if sure:
        return _Found(tuple(sure), "pass", value, u, stage)
    if fits:
        return _Found(tuple(step for step, _ in fits), "unsure", value, u, stage)
    near = by.at(made_to(by, float(value), stage, COVERAGE * u))
    return _Found((), "fail", value.held_to(*_limits(near, stage)), u, stage)


def _limits(feature: Feature, stage: str) -> tuple[float | None, float | None]:
    """What a size must lie within: as made, or, as received, no worse than worn."""
    return usable(feature) if stage == "received" else (feature.low, feature.high)


def _undecided(part: str, steps: tuple[Step, ...], state: str, places: list[str], why: Text) -> Order:
    """Nothing can be ordered: none fits, or the doubt of the readings leaves it open."""
    if state == "fail":
        size = say("no size fits")
        do = say(
            "It lies between the sizes that are made. Measure again; if it is so, machine to the next size"
            " before anything is ordered."
        )
    elif len(steps) > 1:
        size = say(" or ".join(step.name for step in steps))
        do = say("Cannot tell which: measure again with less doubt before ordering.")
    else:
        size = say("{name}, if it is in limits", name=steps[0].name)
        do = say(
            "Cannot tell whether it is within the limits of that size: measure again with less doubt before"
            " ordering."
        )
    return Order(part, size, tuple(places), why, state, do)


def _after_machining(part: str, by: Feature, found: dict[str, _Found]) -> Order:
    """What fits once worn parts are machined: the nearest size that the most worn still cleans up to."""
    shaft = any(step.offset < 0 for step in by.steps)
    way = -1 if shaft else 1
    value, U = max(
        ((float(each.value), COVERAGE * each.u) for each in found.values()),
        key=lambda told: way * told[0] + told[1],
    )
    step = cleaned_up(by, value, U, not shaft)
    why = because(by, [each.because for each in found.values()])
    if step is None:
        return Order(
            part,
            say("no size fits"),
            tuple(found),
            why,
            "fail",
            say(
                "Worn past its limit, and past every size that is made: it is done, or is built up by a"
                " specialist."
            ),
        )
    low, high = (
        constant("", by.label, by.form, end) for end in (by.at(step).low, by.at(step).high) if end is not None
    )
    return Order(
        part,
        say("{name}, once machined to it", name=step.name),
        tuple(found),
        why,
        "attention",
        say(
            "Worn past its limit. The nearest size that still cleans up: {low} to {high}. Order after it is"
            " machined and measured.",
            low=low,
            high=high,
        ),
    )
