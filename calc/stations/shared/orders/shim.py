"""Shims: how thick they must be to bring a size within its limits."""

from dataclasses import dataclass, replace
from itertools import combinations, combinations_with_replacement

from calc.core.result import Text, say
from calc.core.working import Number, constant
from calc.job.sizes import Sizes, decision
from calc.reference.engine import Feature
from calc.stations.shared.orders.order import Because, Order, because
from calc.stations.shared.shim_choice import Stack, stacks

STAGES = ("assembly", "finished")  # what was before the work says nothing of the shims after it
MOST_LISTED = 3
_SAME = 1e-7  # m: shims that differ by less are of one thickness


@dataclass(frozen=True)
class Shim:
    """`sets` is the size that the `shim` sets; `way` is 1 where more makes that larger, −1 where smaller.

    `in_all`: several lie on top of each other, so that only their sum is known. `alike` are the places that
    get the same, as both cylinders under one head; `most` is how many may lie on top of each other.
    """

    part: str
    sets: str
    shim: str
    way: int
    in_all: bool = False
    alike: tuple[tuple[str, ...], ...] = ()
    most: int = 1

    def rows(self, sizes: Sizes, before: tuple[Order, ...] = ()) -> list[Order]:
        target, made = sizes.feature(self.sets), sizes.feature(self.shim)
        if target is None or made is None or target.low is None or target.high is None:
            return []
        known = {
            place: size
            for place in target.places or ("",)
            if (size := self._size_at(sizes, target, place)) is not None
        }
        rows = []
        for place, size in known.items():
            mates = tuple(known[mate] for mate in self._mates(place) if mate in known)
            if all(decision(*each, target.low, target.high) == "in" for each in (size, *mates)):
                continue
            fitted = self._fitted(sizes, target, made, place)
            rows.append(_Shimming(self, target, made, place, *size, mates).order(fitted))
        return together(rows)

    def _mates(self, place: str) -> tuple[str, ...]:
        """The other places that get the same."""
        return tuple(mate for group in self.alike if place in group for mate in group if mate != place)

    def _size_at(self, sizes: Sizes, target: Feature, place: str) -> tuple[float, float] | None:
        """Value and standard uncertainty, read or worked out."""
        read = sizes.best(self.sets, place, STAGES)
        if read is None and target.terms:
            return sizes.worked(target, place, STAGES)
        return (float(read.value), read.u) if read else None

    def _fitted(self, sizes: Sizes, target: Feature, made: Feature, place: str) -> list[float]:
        """The shims that a size was read with, where less of them makes it larger."""
        if self.way > 0 or not sizes.best(self.sets, place, STAGES):
            return []
        own = (place,) if place in made.places else () if target.places else made.places or ("",)
        return [float(found.value) for where in own if (found := sizes.best(self.shim, where, STAGES))]


@dataclass(frozen=True)
class _Shimming:
    """A size that is out of its limits, or may be, at one place: its value and standard uncertainty (SI);
    `mates` are those of the places that get the same shims."""

    shim: Shim
    target: Feature
    made: Feature
    place: str
    value: float
    u: float
    mates: tuple[tuple[float, float], ...] = ()

    def order(self, fitted: list[float]) -> Order:
        """`fitted` are the shims that it was measured with (m), where known: one of them is exchanged."""
        found = self._exchanged(fitted) if fitted else self._in_all() if self.shim.in_all else self._added()
        return found or self._no_single_one()

    @property
    def doubtful(self) -> bool:
        return self.with_shims(0.0) == "cannot tell"

    @property
    def short(self) -> float:
        """How much thicker the shims must be in all (m)."""
        values = [self.value, *(value for value, _ in self.mates)]
        return self.shim.way * (self.target.nominal - sum(values) / len(values))

    @property
    def there(self) -> list[float]:
        """The sizes that are made (m)."""
        return sorted({self.made.nominal, *(self.made.nominal + step.offset for step in self.made.steps)})

    @property
    def stacks(self) -> dict[float, Stack]:
        """What may lie there, by its thickness (m), of the fewest shims."""
        found: dict[float, Stack] = {}
        for stack in stacks(self.there, self.shim.most):
            if stack and not any(abs(sum(stack) - thick) < _SAME for thick in found):
                found[sum(stack)] = stack
        return found

    def with_shims(self, thicker: float) -> str:
        """Are it and its mates within their limits with shims so much thicker (m)?"""
        found = {self._alone(thicker), *(self._decided(*mate, thicker) for mate in self.mates)}
        return found.pop() if len(found) == 1 else "out" if "out" in found else "cannot tell"

    def _alone(self, thicker: float) -> str:
        return self._decided(self.value, self.u, thicker)

    def _decided(self, value: float, u: float, thicker: float) -> str:
        return decision(value + self.shim.way * thicker, u, self.target.low, self.target.high)

    def _exchanged(self, fitted: list[float]) -> Order | None:
        """As few of those fitted as it takes, for sizes that are made: every set is tried."""
        for count in range(1, len(fitted) + 1):
            choices = [
                (abs(self.short - (sum(new) - sum(old))), old, new)
                for old in combinations(sorted(fitted), count)
                for new in combinations_with_replacement(self.there, count)
                if self.with_shims(sum(new) - sum(old)) == "in"
            ]
            if choices:
                _, old, new = min(choices)
                return self._order(
                    say(
                        "{new} in place of {old}",
                        new=self._listed(list(new), " and "),
                        old=self._listed(list(old), " and "),
                    ),
                    "unsure" if self.doubtful else "pass",
                    say(f"Measure again once {'it is' if count == 1 else 'they are'} in."),
                )
        return None

    def _in_all(self) -> Order:
        # how much thicker they may be
        ends = sorted(
            self.shim.way * (end - self.value)
            for end in (self.target.low, self.target.high)
            if end is not None
        )
        least, most = (0.0, max(map(abs, ends))) if ends[0] < 0 < ends[1] else sorted(map(abs, ends))
        return self._order(
            say(
                "{by} " + ("thicker" if self.short > 0 else "thinner") + " in all",
                by=self._size(abs(self.short)),
            ),
            "unsure" if self.doubtful else "pass",
            say(
                "By {least} to {most}. There are {list}: measure those fitted, and exchange.",
                least=self._size(least),
                most=self._size(most),
                list=self._listed(self.there),
            ),
        )

    def _added(self) -> Order | None:
        choices = [
            (round(abs(self.short - new) / _SAME), new) for new in self.stacks if self.with_shims(new) == "in"
        ]
        if not choices:
            return None
        _, new = min(choices)
        if self.doubtful:
            return self._order(
                say("{new} or none", new=self._stacked(new)),
                "unsure",
                say("Cannot tell whether one is needed: measure again with less doubt before ordering."),
            )
        then = constant("", self.target.label, self.target.form, self.value + self.shim.way * new)
        return self._order(self._stacked(new), "pass", say("Brings it to {then}.", then=then))

    def _no_single_one(self) -> Order:
        if self.mates and any(self._alone(new) == "in" for new in (0.0, *self.stacks)):
            return self._order(
                say("none serves both"),
                "unsure" if any(self.with_shims(new) == "cannot tell" for new in self.stacks) else "fail",
                say(
                    "Both under one head get the same, and they are too unlike. Measure again; then change"
                    " about the parts that cause it."
                ),
            )
        if self.short <= 0:
            return self._order(
                say("none helps"),
                "fail",
                say(
                    "Even without a shim there is {by} too much. Machine or exchange the part that causes"
                    " it.",
                    by=self._size(abs(self.short)),
                ),
            )
        between = [new for new in self.stacks if self.with_shims(new) == "cannot tell"][:MOST_LISTED]
        if between:
            return self._order(
                say(
                    " or ".join(f"{{s{n}}}" for n in range(len(between))),
                    **{f"s{n}": self._stacked(new) for n, new in enumerate(between)},
                ),
                "unsure",
                say(
                    "Cannot tell whether that brings it into its limits: measure again with less doubt before"
                    " ordering."
                ),
            )
        return self._order(
            say("{by}, which is not made", by=self._size(self.short)),
            "fail",
            say(
                "There are {list}: have one made, or exchange the part that causes it.",
                list=self._listed(self.there),
            ),
        )

    def _order(self, size: Text, state: str, do: Text) -> Order:
        told = constant("", self.target.label, self.target.form, self.value)
        if not self.doubtful:
            told = told.held_to(self.target.low, self.target.high)
        why = because(self.target, [Because(told, "finished")])
        return Order(self.shim.part, size, (self.place,) if self.place else (), why, state, do)

    def _size(self, thickness: float) -> Number:
        return constant("", self.made.label, self.made.form, thickness)

    def _stacked(self, thickness: float) -> Text:
        """A stack in words: "0.75 mm + 1.00 mm"."""
        return self._listed(list(self.stacks[thickness]), " + ")

    def _listed(self, thicknesses: list[float], last: str = ", ") -> Text:
        names = [f"{{s{n}}}" for n in range(len(thicknesses))]
        return say(
            ", ".join(names[:-1]) + last * (len(names) > 1) + names[-1],
            **{f"s{n}": self._size(thickness) for n, thickness in enumerate(thicknesses)},
        )


def together(rows: list[Order]) -> list[Order]:
    """Rows of the same part and size as one."""
    made: dict[tuple, list[Order]] = {}
    for row in rows:
        made.setdefault((row.part, row.size.plain(), row.state), []).append(row)
    return [alike[0] if len(alike) == 1 else _as_one(alike) for alike in made.values()]


def _as_one(rows: list[Order]) -> Order:
    why = say(
        "; ".join(f"{{r{n}}}" for n in range(len(rows))),
        **{f"r{n}": row.because for n, row in enumerate(rows)},
    )
    return replace(rows[0], places=tuple(place for row in rows for place in row.places), because=why)
