"""Engine data sheets: one text file (TOML) for an engine family, that a machinist can read and edit.

    [engine]
    name = "TS-16"
    about = "..."
    from = "invented"

    [crank]
    main_journal = { label = "Main journal", nominal = "54.993 mm", low = "54.985 mm", wear = "54.960 mm" }

    [crankcase]
    main_bore = { label = "Main bearing bore", nominal = "55.065 mm", low = "55.050 mm", high = "55.080 mm" }
    main_clearance = { label = "Main clearance", follows = "crankcase.main_bore - crank.main_journal" }

A feature may also say its `kind` (length if not said), the `tool` that it is read with, `decimals` shown in
the metric unit, and `from` where its values come from. One that an engine has several of says its `places`: a
list such as ["1", "2", "3"], or the name of a list that stands under [places]:

    [places]
    mains = ["1", "2", "3"]

What follows from features with places has those that all of them share.

Sizes beside the standard one, to which a part is re-machined or in which it is sold, stand in a list; all
limits move with them:

    main_journal = { ..., undersizes = ["0.25 mm", "0.50 mm"] }     smaller by so much: journals
    main_housing = { ..., oversizes = ["0.50 mm"] }                 larger by so much: bores, shell walls
    end_float_shim = { ..., sizes = ["0.24 mm", "0.32 mm"] }        shims and the like, each by its own size

What a part is made of is no size, and stands beside them by its id in calc/reference/materials.py:

    alloy = { label = "Head, alloy", material = "al-si-t6" }
"""

import re
from dataclasses import dataclass, field
from typing import Any

from calc.reference.feature import Engine, Feature
from calc.reference.sheet_row import Row, Wrong, check_places, feature, is_words, material

FEATURE = re.compile(r"[a-z_][a-z0-9_]*\.[a-z0-9_]+")  # what may name one: group.name
LONGEST_NAME = 80


class SheetError(ValueError):
    """A data sheet that cannot be used: file, line and reason in one sentence."""


def load(text: str, file: str = "sheet") -> Engine:
    """An engine from the text of its sheet. Raises SheetError with file, line and reason."""
    sheet = _Sheet(text, file)
    data = sheet.parsed()
    head = sheet.head(data.pop("engine", None))
    places = sheet.places(data.pop("places", {}))
    rows = sheet.rows(data)
    materials = {id: material(row, sheet.wrong_at(id)) for id, row in rows.items() if "material" in row}
    sizes = {id: row for id, row in rows.items() if id not in materials}
    features = _Features(sheet, sizes, head["from"], places)
    return Engine(
        head["name"], head["about"], {id: features.made(id) for id in sizes}, materials, head["from"]
    )


@dataclass(frozen=True)
class _Sheet:
    """The text of a sheet, and the errors that are told with the line that they are in."""

    text: str
    file: str

    def wrong(self, group: str, name: str, reason: str) -> SheetError:
        what = f"{group}.{name} " if name else ""
        return SheetError(f"{self.file}, line {_line(self.text, group, name)}: {what}{reason}.")

    def wrong_at(self, id: str) -> Wrong:
        group, name = id.split(".", 1)
        return lambda reason: self.wrong(group, name, reason)

    def parsed(self) -> dict[str, Any]:
        import tomllib  # takes a tenth of what a start takes, and many a start reads no sheet

        try:
            return tomllib.loads(self.text)
        except tomllib.TOMLDecodeError as error:
            problem, _, where = str(error).removesuffix(")").rpartition(" (at ")
            raise SheetError(
                f'{self.file}, {where}: not a line of a sheet ({problem}); write name = {{ label = "...",'
                ' nominal = "..." }.'
            ) from None

    def head(self, head: Any) -> dict[str, str]:
        if isinstance(head, dict) and all(is_words(head.get(key)) for key in ("name", "about", "from")):
            return head
        raise self.wrong(
            "engine", "", "[engine] must say name, about and from (whose numbers these are), as texts"
        )

    def places(self, lists: Any) -> dict[str, Any]:
        if not isinstance(lists, dict):
            reason = (
                'places is not a group of lists; write [places] above lines such as mains = ["1", "2", "3"]'
            )
            raise self.wrong("places", "", reason)
        for name, listed in lists.items():
            check_places(listed, self.wrong_at(f"places.{name}"))
        return lists

    def rows(self, groups: dict[str, Any]) -> dict[str, Row]:
        """Every line by the id of what it says."""
        found = {}
        for group, entries in groups.items():
            if not isinstance(entries, dict):
                reason = f"{group} is not a group of features; write [{group}] above its features"
                raise self.wrong(group, "", reason)
            for name, row in entries.items():
                if not isinstance(row, dict):
                    reason = 'is not a feature; write name = { label = "...", nominal = "..." }'
                    raise self.wrong(group, name, reason)
                id = f"{group}.{name}"
                if not FEATURE.fullmatch(id) or len(id) > LONGEST_NAME:
                    reason = (
                        "has a name that cannot be used; give small letters, digits and _, up to"
                        f" {LONGEST_NAME} with its group's"
                    )
                    raise self.wrong(group, name, reason)
                found[id] = row
        return found


@dataclass(frozen=True)
class _Features:
    """The features of a sheet, each made when it is first asked for: one may follow from others below it."""

    sheet: _Sheet
    rows: dict[str, Row]
    source: str
    places: dict[str, Any]
    done: dict[str, Feature] = field(default_factory=dict)
    begun: list[str] = field(default_factory=list)

    def made(self, id: str) -> Feature:
        if id in self.done:
            return self.done[id]
        wrong = self.sheet.wrong_at(id)
        if id in self.begun:
            way = ", ".join(self.begun)
            raise wrong(f"follows from itself by way of {way}; give one of them a size of its own")
        self.begun.append(id)
        self.done[id] = feature(id, self.rows[id], self.source, self.places, self._other, wrong)
        self.begun.pop()
        return self.done[id]

    def _other(self, id: str) -> Feature | None:
        return self.made(id) if id in self.rows else None


def _line(text: str, group: str, name: str = "") -> int:
    """Where a feature stands in the text, counted from 1; 1 where it is not found."""
    inside = False
    for number, line in enumerate(text.splitlines(), 1):
        head = re.match(r"\s*\[([^\]]+)\]", line)
        if head:
            inside = head[1].strip() == group
            if inside and not name or head[1].strip() == f"{group}.{name}":
                return number
        elif name and inside and re.match(rf"\s*{re.escape(name)}\s*=", line):
            return number
    return 1
