"""Sizes that no drawing knows, of a shop's own sheet: they stand with the part that they are named after."""

from dataclasses import replace
from textwrap import wrap

from calc.core.drawing import Point
from calc.page.engine.callouts import bounds
from calc.page.engine.view import Place, View
from calc.reference.engine import Engine

LETTERS = 11  # on a line beside a drawing
HOME = {"chamber": "head", "port": "ports", "crankcase": "case", "torque": "case"}


def with_the_rest(views: list[View], engine: Engine) -> list[View]:
    """The views, each with those sizes of its part that have no place of their own; a part that is not drawn
    has its sizes with the case."""
    placed = {id for view in views for id in view.sizes}
    names = {view.name for view in views}
    rest: dict[str, list[str]] = {}
    for id in (*engine.features, *engine.materials):
        if id not in placed:
            group = id.split(".")[0]
            home = HOME.get(group, group)
            rest.setdefault(home if home in names else "case", []).append(id)
    return [_with(view, rest[view.name], engine) if view.name in rest else view for view in views]


def _with(view: View, ids: list[str], engine: Engine) -> View:
    left, low, right, high = bounds(view)
    middle: Point = ((left + right) / 2, (low + high) / 2)
    added = tuple(Place(id, _words(id, engine), middle) for id in ids)
    return replace(view, places=(*view.places, *added), wide=False)


def _words(id: str, engine: Engine) -> str:
    """The first words of a size's label, on two lines."""
    label = engine.features[id].label if id in engine.features else id.split(".")[1].replace("_", " ")
    lines = wrap(label, LETTERS, max_lines=2, placeholder="…")
    return "\n".join(lines)
