"""Engine data sheets: one text file (TOML) for an engine family, that a machinist can read and edit.

    [engine]
    name = "TS-16"
    about = "..."

    [head.seat_pocket_intake]
    label = "Seat pocket bore, intake"
    nominal = "37.900 mm"
    low = "37.900 mm"
    high = "37.925 mm"
    tool = "bore gauge set in a ring"
    from = "invented"
"""
import os
import tomllib
from dataclasses import dataclass
from functools import cache

from calc.quantity import KINDS, quantity
from calc.working import Form, Number, form, given

DEMO = "TS-16"
_FILES = {"TS-16": "ts16.toml"}


@dataclass(frozen=True)
class Feature:
    """A size of an engine: SI values, `None` where the sheet gives none."""
    id: str
    label: str
    form: Form
    nominal: float
    low: float | None
    high: float | None
    wear: float | None
    tool: str
    source: str

    def number(self, what: str) -> Number:
        """nominal, low, high or wear as a Number that can be written."""
        value = getattr(self, what)
        if value is None:
            raise KeyError(f"{self.id} has no {what} on the sheet")
        return given("", self.label, self.form, value)


@dataclass(frozen=True)
class Engine:
    name: str
    about: str
    features: dict[str, Feature]

    def feature(self, id: str) -> Feature:
        try:
            return self.features[id]
        except KeyError:
            from difflib import get_close_matches
            near = get_close_matches(id, self.features, 3)
            raise KeyError(f"{self.name} has no feature {id!r}; " + (f"nearest are {', '.join(near)}" if near else "see its data sheet")) from None


@cache
def engine(name: str) -> Engine:
    """The engine family of that name."""
    path = os.path.join(os.path.dirname(__file__), "engines", _FILES[name])
    return load(__spec__.loader.get_data(path).decode())  # works from a folder and from a zip alike


def demo() -> Engine:
    """The invented engine that examples are worked on."""
    return engine(DEMO)


def load(text: str) -> Engine:
    """An engine from the text of its sheet."""
    sheet = tomllib.loads(text)
    head = sheet.pop("engine")
    features = {}
    for group, entries in sheet.items():
        for name, row in entries.items():
            id = f"{group}.{name}"
            kind = KINDS[row.get("kind", "length")]
            sizes = {what: quantity(row[what], kind) if what in row else None for what in ("nominal", "low", "high", "wear")}
            features[id] = Feature(id, row["label"], form(kind, row.get("decimals", 3)), **sizes, tool=row.get("tool", ""), source=row.get("from", ""))
    return Engine(head["name"], head["about"], features)
