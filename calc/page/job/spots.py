"""Which fields and results of a calculator measure a feature of a job's engine, and at which place.

A field that measures a feature stands for one place of it: a grid's rows name theirs, all others take the
place that is chosen once for the calculator. A result that is itself a size of the part (a rod's bend) has a
place likewise; its name here is that of the output behind "=".
"""

from collections.abc import Iterator
from dataclasses import dataclass

from calc.core.working import Number, origins
from calc.declare.calculator import Calculator
from calc.declare.choice import WHICH, for_chosen
from calc.declare.grid import Grid
from calc.declare.outputs import Output
from calc.declare.quantity import Quantity
from calc.reference.engine import Engine, Feature


@dataclass(frozen=True, eq=False)
class Spot:
    """A field, a cell of a grid, or a result, that measures a feature, and which place of it it stands for
    (None: the reader has not said). `named` is the feature as its calculator names it: for any valve,
    stem_{valve}."""

    entry: str
    declared: Quantity | Output
    feature: Feature
    place: str | None
    named: str

    @property
    def field(self) -> str:
        """The name of the field, or of the grid that it is a cell of."""
        return self.entry.partition(".")[0]

    @property
    def in_grid(self) -> bool:
        return "." in self.entry


class Typed(Spot):
    """What is read and typed in."""

    declared: Quantity


class WorkedOut(Spot):
    """A result."""

    declared: Output


def spots(calculator: Calculator, sheet: Engine | None, chosen: str, features: dict[str, str]) -> list[Typed]:
    """The fields that measure. `features` names what a field measures where its calculator does not say it,
    as on a check of one certain size."""
    if sheet is None:
        return []
    found: list[Typed] = []
    for declared in calculator.inputs:
        if isinstance(declared, Grid):
            found += _cells(declared, sheet)
        elif declared.measured and (named := features.get(declared.name, declared.feature)):
            known = [f for f in _twins(sheet, named) if f.form.kind == declared.form.kind]
            feature = next((f for f in known if _place(f, chosen) is not None), known[0] if known else None)
            if feature:
                found.append(Typed(declared.name, declared, feature, _place(feature, chosen), named))
    return found


def _cells(grid: Grid, sheet: Engine) -> Iterator[Typed]:
    for (r, c), cell in grid.cells.items():
        named, place = grid.columns[c].feature, grid.rows[r]
        feature = sheet.features.get(named)
        if feature and place in feature.places and feature.form.kind == cell.form.kind:
            yield Typed(cell.name, cell, feature, place, named)


def results(calculator: Calculator, sheet: Engine | None, chosen: str) -> list[WorkedOut]:
    """The results of a calculator that are sizes of the part."""
    if sheet is None:
        return []
    return [
        WorkedOut(f"={output.key}", output, feature, _place(feature, chosen), output.feature)
        for output in calculator.outputs
        if (feature := _of_the_valve(sheet, output.feature, chosen))
        and output.form
        and feature.form.kind == output.form.kind
    ]


def behind(calculator: Calculator, result: Number) -> list[str]:
    """The measured inputs that a result was worked out from, in the order of the form: fields, and grids of
    readings, of which the reader's own cells are all that counts once one is typed."""
    names = {number.key.partition(".")[0] for number in origins([result])}
    return [
        i.name
        for i in calculator.inputs
        if i.name in names and ((isinstance(i, Quantity) and i.measured) or (isinstance(i, Grid) and i.tool))
    ]


def measured(calculator: Calculator, sheet: Engine | None, features: dict[str, str]) -> set[str]:
    """The features that a calculator's fields measure, at whatever place."""
    if sheet is None:
        return set()
    return {f.id for spot in spots(calculator, sheet, "", features) for f in _twins(sheet, spot.named)}


def choices(calculator: Calculator, sheet: Engine | None, features: dict[str, str]) -> list[str]:
    """The places to choose from on a calculator, outside its grids: of the feature that has most, and what
    others have beside."""
    if sheet is None:
        return []
    places = [
        f.places
        for spot in (*spots(calculator, sheet, "", features), *results(calculator, sheet, ""))
        if not spot.in_grid
        for f in _twins(sheet, spot.named)
        if f.places
    ]
    every = dict.fromkeys(place for its in sorted(places, key=len, reverse=True) for place in its)
    with_valves = {_cylinder(place) for place in every if place != _cylinder(place)}
    found = [place for place in every if place not in with_valves]  # a cylinder is chosen with its valve
    return sorted(found, key=_cylinder) if all(place[:1].isdigit() for place in found) else found


def _twins(sheet: Engine, named: str) -> list[Feature]:
    """The features of a name: of stem_{valve}, which a calculator for any valve has, an intake's and an
    exhaust's."""
    ids = dict.fromkeys(for_chosen(named, {"valve": kind}) for kind in WHICH["valve"])
    return [sheet.features[id] for id in ids if id in sheet.features]


def _of_the_valve(sheet: Engine, named: str, chosen: str) -> Feature | None:
    """The feature of a result's name; of room_{valve} that of the valve that was chosen, and none before: an
    exhaust's must not be kept as an intake's."""
    kind = chosen.partition(" ")[2]
    if for_chosen(named, {}) != named and kind not in WHICH["valve"]:
        return None
    return sheet.features.get(for_chosen(named, {"valve": kind}))


def _place(feature: Feature, chosen: str) -> str | None:
    """The place of a feature for what was chosen on the calculator: valve "2 intake" belongs to cylinder
    "2"."""
    if not feature.places:
        return ""
    return next((place for place in (chosen, _cylinder(chosen)) if place in feature.places), None)


def _cylinder(place: str) -> str:
    return place.partition(" ")[0]
