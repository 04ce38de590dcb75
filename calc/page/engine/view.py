"""One drawing of an engine, and the places on it."""

from dataclasses import dataclass

from calc.core.drawing import Area, Circle, Line, Point

Solid = Area | Circle | Line
Solids = tuple[Solid, ...]

NOTE = "To scale; proportions where the sheet has no size."


@dataclass(frozen=True)
class Twin:
    """A part seen once more: mirrored in x or y or both (-1), then shifted, m."""

    x: int = 1
    y: int = 1
    shift: Point = (0.0, 0.0)

    def at(self, p: Point) -> Point:
        return self.x * p[0] + self.shift[0], self.y * p[1] + self.shift[1]


@dataclass(frozen=True)
class Place:
    """Where something is seen. `of` is the id of a size (or of what a part is made of), or the name of a view
    that shows a part larger; empty, it is a part that is only drawn. `words` stand beside it, a line or two
    of ten letters; `name` is what the sheet calls it. It is a point, or what lies between `at` and `end`;
    where that is measured beside the part, `edges` are the part's own x or y at both. `part` is the part's
    own outline, to be touched as well, and seen again at its `twins`.
    """

    of: str
    words: str
    at: Point
    end: Point | None = None
    part: Solids = ()
    twins: tuple[Twin, ...] = ()
    edges: tuple[float, ...] = ()
    name: str = ""

    @property
    def size(self) -> bool:
        """Is it a size, and no way to another view?"""
        return "." in self.of


@dataclass(frozen=True)
class View:
    """A drawing to scale, x to the right and y up, metres. `shapes` are painted in their order, then the
    parts of the places, then `over`. A `wide` view has its words above and below it, another beside it."""

    name: str
    title: str
    shapes: Solids
    places: tuple[Place, ...]
    over: Solids = ()
    wide: bool = False

    @property
    def sizes(self) -> tuple[str, ...]:
        """The ids of the sizes on it."""
        return tuple(place.of for place in self.places if place.size)
