"""What is renewed, not re-machined, once it is past its wear limit."""

from dataclasses import dataclass

from calc.core.conformance import COVERAGE
from calc.core.result import say
from calc.core.working import Number
from calc.job.sizes import Sizes, decision
from calc.reference.engine import Feature, Step
from calc.reference.size import made_to, usable, wears_upwards
from calc.stations.shared.orders.order import Because, Order, because


@dataclass(frozen=True)
class Worn:
    """{size that wears: the part that is renewed with it}."""

    parts: dict[str, str]

    def rows(self, sizes: Sizes, before: tuple[Order, ...] = ()) -> list[Order]:
        """Parts past their wear limit, but for those that are bought new to another part's size already."""
        bought = {
            (row.part, place)
            for row in before
            if row.state == "pass" and not row.worn
            for place in row.places
        }
        return [
            row
            for id, part in self.parts.items()
            if (feature := sizes.feature(id)) and feature.wear is not None
            for row in _worn(sizes, part, feature, {place for what, place in bought if what == part})
        ]


def _worn(sizes: Sizes, part: str, feature: Feature, bought: set[str]) -> list[Order]:
    found: dict[tuple[str, Step], list[tuple[str, Number]]] = {}
    for place in sizes.places(feature, ("received",)):
        read = sizes.best(feature.id, place, ("received",))
        if read is None or place in bought or sizes.best(feature.id, place, ("finished", "assembly")):
            continue
        step = made_to(feature, float(read.value), "received", COVERAGE * read.u)
        there = feature.at(step)
        ends = (None, there.wear) if wears_upwards(feature) else (there.wear, None)
        now = decision(float(read.value), read.u, *ends)
        if now != "in":
            value = read.value.held_to(*usable(there)) if now == "out" else read.value
            found.setdefault((now, step), []).append((place, value))
    return [_renewed(part, feature.at(step), step, now, read) for (now, step), read in found.items()]


def _renewed(part: str, feature: Feature, step: Step, now: str, read: list[tuple[str, Number]]) -> Order:
    past = now == "out"
    wear = feature.number("wear")
    return Order(
        part,
        say("new, {name}", name=step.name) if step.offset else say("new"),
        tuple(place for place, _ in read if place),
        because(feature, [Because(value, "received") for _, value in read]),
        "pass" if past else "unsure",
        say("Past the wear limit of {wear}.", wear=wear)
        if past
        else say(
            "Cannot tell whether it is past the wear limit of {wear}: measure again with less doubt.",
            wear=wear,
        ),
        worn=True,
    )
