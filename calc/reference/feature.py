"""What an engine's data sheet says: sizes with their limits, and what parts are made of."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field, replace
from difflib import get_close_matches
from zlib import crc32

from calc.core.working import Form, Number, constant
from calc.core.writing import to_unit

WHAT = ("nominal", "low", "high", "wear")


@dataclass(frozen=True)
class Step:
    """A size beside the standard one: what it is called ("0.25 mm undersize", "0.32 mm"), and how far from
    it, in SI."""

    name: str
    offset: float


STANDARD = Step("standard", 0.0)


@dataclass(frozen=True)
class Feature:
    """A size of an engine: SI values, `None` where the sheet gives none. `steps` are its other sizes, the
    nearest first."""

    id: str
    label: str
    form: Form
    nominal: float
    low: float | None
    high: float | None
    wear: float | None
    tool: str
    source: str
    follows: str = ""
    steps: tuple[Step, ...] = ()
    places: tuple[str, ...] = ()  # where an engine has several of it
    terms: tuple[tuple[float, str], ...] = ()  # what it follows from: (times, id of a feature)

    def at(self, step: Step) -> Feature:
        """The same feature at another of its sizes: nominal size, limits and wear limit all moved."""

        def moved(value: float | None) -> float | None:
            return None if value is None else value + step.offset

        return replace(
            self,
            nominal=self.nominal + step.offset,
            low=moved(self.low),
            high=moved(self.high),
            wear=moved(self.wear),
        )

    def nearest(self, value: float) -> Step:
        """Which of its sizes a reading is meant for: the one whose nominal size lies nearest."""
        return min((STANDARD, *self.steps), key=lambda step: abs(value - self.nominal - step.offset))

    @property
    def step(self) -> float | None:
        """By how much each undersize or oversize is past the one before, m; None where they are not even, or
        there are none."""
        sizes = (0.0, *(step.offset for step in self.steps))
        apart = [b - a for a, b in zip(sizes, sizes[1:])]
        if not apart or max(apart) - min(apart) > 1e-3 * abs(apart[0]):
            return None
        return abs(apart[0])

    @property
    def last(self) -> float | None:
        """How far the last undersize or oversize is from the standard size, m; None where there are none."""
        return abs(self.steps[-1].offset) if self.steps else None

    @property
    def text(self) -> str:
        """The nominal size as an entry, exactly."""
        return self.entry("nominal")

    def entry(self, what: str) -> str:
        """nominal, low, high or wear as an entry, exactly; empty where the sheet has none."""
        value = getattr(self, what)
        return (
            "" if value is None else f"{to_unit(value, self.form.metric)!r} {self.form.metric.symbol}".strip()
        )

    def number(self, what: str) -> Number:
        """nominal, low, high or wear as a Number that can be written."""
        value = getattr(self, what)
        if value is None:
            raise KeyError(f"{self.id} has no {what} on the sheet")
        return constant("", self.label, self.form, value)


@dataclass(frozen=True)
class Engine:
    """An engine family's sheet: its sizes, and of what its parts are made (`materials`: an id of
    calc/reference/materials.py, by the part's own). `source` says whose numbers these are."""

    name: str
    about: str
    features: dict[str, Feature]
    materials: dict[str, str] = field(default_factory=dict)
    source: str = ""

    @property
    def invented(self) -> bool:
        return self.source == "invented"

    def mark(self, ids: Iterable[str]) -> str:
        """Eight hexadecimal digits (CRC-32) that change with any size, limit or place of these features and
        of what follows from them alone; not with words, nor with what else stands on the sheet."""
        known = more = set(ids)
        while more:  # what follows may itself be followed from
            more = {
                f.id
                for f in self.features.values()
                if f.id not in known and f.terms and known.issuperset(id for _, id in f.terms)
            }
            known = known | more
        told = [
            (
                f.id,
                f.form.kind.name,
                f.nominal,
                f.low,
                f.high,
                f.wear,
                [step.offset for step in f.steps],
                f.places,
                f.terms,
            )
            for f in self.features.values()
            if f.id in known
        ]
        return f"{crc32(repr(told).encode()):08x}"

    def feature(self, id: str) -> Feature:
        try:
            return self.features[id]
        except KeyError:
            near = get_close_matches(id, self.features, 3)
            raise KeyError(
                f"{self.name} has no feature {id!r}; "
                + (f"nearest are {', '.join(near)}" if near else "see its data sheet")
            ) from None
