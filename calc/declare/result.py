"""A calculator evaluated once, as data: no HTML, no unit system chosen yet."""

from __future__ import annotations

from dataclasses import dataclass, field
from functools import cached_property
from typing import Any

from calc.core.result import Caution, Limit, Remark, Shown, Source, Table, Verdict
from calc.core.working import Number
from calc.declare.declaration import Declaration
from calc.declare.own_limits import OwnLimits
from calc.declare.standing import Standing
from calc.declare.taken import Taken
from calc.reference.engine import Engine


@dataclass(frozen=True)
class Result:
    """A calculator evaluated once."""

    calculator: Declaration
    taken: tuple[Taken, ...]
    outputs: dict[str, Number]
    verdict: Verdict
    working: tuple[Number, ...]
    remarks: tuple[Remark, ...]
    cautions: tuple[Caution, ...]
    sources: tuple[Source, ...]
    made: tuple[Shown, Shown] = (tuple, tuple)  # figures and tables, when they are looked at
    # expanded uncertainty (k = 2) of outputs, SI, where readings have one
    doubts: dict[str, float] = field(default_factory=dict)
    # of a reader's entries; None: what was not entered is the example's
    standing: Standing | None = None
    own: tuple[OwnLimits, ...] = ()
    next: tuple[str, ...] = ()  # names of the inputs that are to be read next
    decides: Limit | None = None  # what the verdict hangs on
    raised: tuple[Caution, ...] = ()  # of the cautions those that these very numbers call for

    @cached_property
    def figures(self) -> tuple[Any, ...]:
        """Raises `Refused` where they cannot be drawn."""
        return tuple(self.made[0]())

    @cached_property
    def tables(self) -> tuple[Table, ...]:
        """Raises `Refused` where they cannot be made."""
        return tuple(self.made[1]())

    def shown(self) -> Result:
        """Itself, with all that it shows made. Raises `Refused` where that cannot be."""
        _ = self.figures, self.tables
        return self

    @property
    def example(self) -> bool:
        """Is anything in it nothing but the example's?"""
        return self.standing is None and any(t.origin.kind == "example" for t in self.taken)

    @property
    def stand_ins(self) -> list[Taken]:
        """What was taken with all that the sheet allows it, and cannot turn the verdict."""
        return [t for t in self.taken if t.span and t.input.name not in self.next]

    @property
    def assumed(self) -> list[Taken]:
        """What was taken for a reason of common practice."""
        return [t for t in self.taken if t.origin.kind == "assumed" and t.origin.words]

    @property
    def sheet(self) -> Engine | None:
        """The engine's sheet that anything in it stands on, or None."""
        used = self.own or any(t.origin.kind == "sheet" for t in self.taken)
        return self.standing.sheet if self.standing and used else None

    def __getitem__(self, output: str) -> float:
        """SI value of an output."""
        return float(self.outputs[output])
