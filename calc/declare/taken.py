"""What every input is, and an input as it was taken: its value, and where that comes from."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

from calc.core.result import Remark

Path = tuple[int, ...]
"""Where a number stands in an input's value: nowhere further, (), or the row and column of a grid's cell."""


class Input:
    """What every input of a calculator has; see `calc.declare.quantity`, `choice`, `grid` and
    `open_input`."""

    name: str  # in entries; the field's in its class of `Inputs`
    label: str
    hint: str
    fold: bool  # shown only when asked for
    feature: str
    when: tuple[str, ...]  # a choice, and which of its options make this input count
    default: str

    @property
    def measured(self) -> bool:
        """Is it read off a part with a tool?"""
        return False

    @property
    def parts(self) -> tuple[str, ...]:
        """Names behind the input's own that an entry may have."""
        return ()

    @property
    def default_value(self) -> Any:
        """Value of the worked example."""
        raise NotImplementedError

    def default_text(self, system: str) -> str:
        """The example's entry as it stands in the form's field in that system, without unit."""
        raise NotImplementedError

    def take(self, texts: dict[str, str], system: str, chosen: dict[str, str]) -> Taken:
        """Read the entry and what is told beside it; raises `Refused`."""
        raise NotImplementedError

    def filled(self, texts: dict[str, str]) -> tuple[str, ...]:
        """Names of the entries among its `texts`, by part name, that are not empty."""
        return tuple(
            f"{self.name}.{part}" if part else self.name for part, text in texts.items() if text.strip()
        )

    def usual_remarks(self, taken: Taken) -> Iterable[Remark]:
        """What is said of a value that is possible, but not usual."""
        return ()


@dataclass(frozen=True)
class Origin:
    """Where a value comes from. `kind`: read (typed now), job (when, by whom), sheet (the engine's), assumed
    (common practice, for a reason), example (nothing but the demonstration), missed (still to be read), none
    (does not count). `words` say which, by whom or why; `stage` is that of a job's reading."""

    kind: str
    words: str = ""
    stage: str = ""


READ, EXAMPLE, MISSED, ASSUMED, NONE = (
    Origin(kind) for kind in ("read", "example", "missed", "assumed", "none")
)


@dataclass(frozen=True)
class Taken:
    """An input as it was taken: its entry texts by part name, the value, whether the reader entered it, its
    standard doubt, where it comes from, and of one that stands in all that the engine's sheet allows it
    (least and greatest, SI)."""

    input: Any  # an `Input`
    texts: dict[str, str]
    value: Any  # Number, text of a choice, rows of a grid; None where it stays empty
    entered: bool
    notes: tuple[str, ...] = ()
    doubts: tuple[tuple[Path, float], ...] = ()  # path into the value, standard uncertainty in SI
    doubt_told: bool = False  # a doubt stood behind its ±, be it none
    origin: Origin = EXAMPLE
    span: tuple[float, ...] = ()
    meant: tuple[
        tuple[Path, str], ...
    ] = ()  # path into the value, what an unusual number may have been, to type

    @property
    def called(self) -> str:
        """What it is called within a sentence; of a grid that is not whole, the cell that comes next."""
        words: str = self.notes[0] if self.notes and self.origin is MISSED else self.input.label
        return words[:1].lower() + words[1:]

    @property
    def read(self) -> tuple[str, ...]:
        """Names of the entries that were filled: its own, or cells of a grid, all of them where it was filled
        as a whole."""
        names: tuple[str, ...] = self.input.filled(self.texts)
        return names

    @property
    def text(self) -> str:
        return self.texts.get("", "")
