"""What a reader's entries stand on: the engine's sheet, which of its parts is meant, and what a job filled
in.

An input that nobody entered is worth what its declaration says (`calc.declare.quantity.Quantity`): it is
missed, comes from the sheet, stands in with all that the sheet allows it, is assumed for a reason that is
told, or does not count. What stands in must not decide: the calculator is worked over its whole range
(`calc.declare.range_walk`), and where something in there turns the verdict, that input is the one to be read
next.
"""

from dataclasses import dataclass, field
from typing import Any

from calc.declare.choice import Choice
from calc.declare.grid import Grid
from calc.declare.quantity import Quantity
from calc.declare.taken import ASSUMED, MISSED, NONE, READ, Origin, Taken
from calc.reference.engine import Engine, Feature
from calc.reference.size import usable

Told = tuple[float | None, Origin | None, tuple[float, ...]]
"""A value (SI; None: nobody knows it), where it comes from, and all that it may be where it stands in."""


@dataclass(frozen=True)
class Standing:
    """`sheet`: the engine's, None where there is none. `which`: the part in hand, "exhaust" or "2 exhaust".
    `job`: the origin of each entry that a job filled in, by the entry's name."""

    sheet: Engine | None = None
    which: str = ""
    job: dict[str, Origin] = field(default_factory=dict)

    @property
    def sheet_name(self) -> str:
        return self.sheet.name if self.sheet else ""

    @property
    def of_sheet(self) -> Origin:
        return Origin("sheet", f"{self.sheet_name}’s sheet")

    def feature(self, declared: Any, chosen: dict[str, str], id: str = "") -> Feature | None:
        """What an input is a size of on this sheet."""
        found = (
            self.sheet.features.get(id or declared.feature_for(chosen))
            if self.sheet and (id or declared.feature)
            else None
        )
        return found if found and found.form.kind == declared.form.kind else None

    def origin(self, entry: str) -> Origin:
        return self.job.get(entry, READ)

    def unread(self, declared: Any, chosen: dict[str, str]) -> Taken:
        """An input that nobody entered; of one that is missed the value only keeps a place in the sums, and
        nothing that comes of it is told."""
        if len(declared.when) > 1 and chosen.get(declared.when[0], declared.when[1]) not in declared.when[1:]:
            kept = declared.default if isinstance(declared, Choice) else self._kept(declared, chosen)
            return Taken(declared, {}, kept, False, origin=NONE)
        if isinstance(declared, Choice):
            return self._unread_choice(declared, chosen)
        if isinstance(declared, Quantity):
            return self._unread_quantity(declared, chosen)
        if isinstance(declared, Grid) and (sold := self._sizes(declared)):
            return Taken(declared, {}, sold, False, origin=self.of_sheet)
        value = declared.example(chosen) if isinstance(declared, Grid) else declared.default_value
        origin = NONE if getattr(declared, "optional", False) else MISSED
        return Taken(declared, {}, value, False, origin=origin)

    def _unread_quantity(self, declared: Quantity, chosen: dict[str, str]) -> Taken:
        feature = self.feature(declared, chosen)
        value, origin, span = self._by_sheet(declared, feature)
        if value is None and declared.assumed:
            value, origin, span = declared.example(chosen), Origin("assumed", declared.assumed), ()
        if value is None and declared.optional:
            return Taken(declared, {}, None, False, origin=NONE)
        low, high = declared.hard_range
        if value is None or origin is None or not all(low <= x <= high for x in (value, *span)):
            counts = len(declared.when) != 1 or declared.when[0] in chosen
            value, origin, span = (
                self._place_holder(declared, feature, chosen),
                MISSED if counts else NONE,
                (),
            )
        moves = len(span) == 2 and span[0] < span[1]
        number = declared.number(value)
        return Taken(declared, {}, number, False, origin=origin, span=span if moves else ())

    def _by_sheet(self, declared: Quantity, feature: Feature | None) -> Told:
        """What the engine's sheet says of an input, where it may say it."""
        if declared.limit:
            return getattr(feature, declared.limit, None), self.of_sheet if self.sheet else None, ()
        if declared.must or not feature:
            return None, None, ()
        if not declared.measured:
            return feature.nominal, self.of_sheet, ()
        if declared.stands_in:
            return feature.nominal, self.of_sheet, allowed(feature, declared.stage)
        return None, None, ()

    def _sizes(self, declared: Grid) -> Any:
        """The sizes in which the sheet says that a part is sold, as rows of a grid that asks for them; None
        where it says none, or more than there are rows."""
        feature = self.sheet.features.get(declared.feature) if self.sheet and declared.feature else None
        if feature is None or feature.form.kind != declared.columns[0].form.kind:
            return None
        sizes = sorted({feature.nominal, *(feature.nominal + step.offset for step in feature.steps)})
        return declared.filled_with(sizes) if len(sizes) <= len(declared.rows) else None

    def _kept(self, declared: Any, chosen: dict[str, str]) -> Any:
        """What keeps the place of an input that does not count."""
        if isinstance(declared, Grid):
            return declared.example(chosen)
        if declared.optional:
            return None
        return declared.number(self._place_holder(declared, self.feature(declared, chosen), chosen))

    def _place_holder(self, declared: Quantity, feature: Feature | None, chosen: dict[str, str]) -> float:
        low, high = declared.hard_range
        if feature and low <= feature.nominal <= high:
            return feature.nominal
        return declared.example(chosen) or (low + high) / 2

    def _unread_choice(self, declared: Choice, chosen: dict[str, str]) -> Taken:
        value, origin = declared.default, ASSUMED
        if declared.which:
            found = [id for id in declared.options if id in self.which.split()]
            value, origin = (found[0], READ) if found else (declared.default, MISSED)
        elif (material := self._material(declared, chosen)) and material in declared.options:
            value, origin = material, self.of_sheet
        elif declared.must or declared.feature and not declared.assumed:
            origin = MISSED
        elif declared.assumed:
            origin = Origin("assumed", declared.assumed)
        return Taken(declared, {}, value, False, origin=origin)

    def _material(self, declared: Choice, chosen: dict[str, str]) -> str:
        """What the sheet says that a part is made of, by id; empty where it does not."""
        if not declared.feature or not self.sheet:
            return ""
        return self.sheet.materials.get(declared.feature_for(chosen), "")


def allowed(feature: Feature, stage: str) -> tuple[float, ...]:
    """Least and greatest that the sheet allows a part: as made, and down to its wear limit if it may have
    run."""
    made = (feature.low, feature.high)
    known = [x for x in (made if stage == "finished" else (*usable(feature), *made)) if x is not None]
    return (min(feature.nominal, *known), max(feature.nominal, *known)) if known else ()
