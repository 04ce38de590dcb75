"""The cuts on both sides: where they lie, how deep they are, and what they leave of each ring."""

from typing import NamedTuple

from calc.core.result import impossible
from calc.core.working import Number, constant
from calc.stations.flywheel.lighten.asked import In
from calc.stations.flywheel.section import Ring
from calc.stations.shared.forms import COARSE, ROUGH


class Cut(NamedTuple):
    """Diameters, and depths at both; `side` is that of the engine or the clutch, `name` its row."""

    side: str
    name: str
    inner: Number
    outer: Number
    inside: Number
    outside: Number

    def depth(self, diameter: Number) -> Number:
        if self.inside is self.outside:
            return self.inside
        slope = (self.outside - self.inside) / (self.outer - self.inner)
        return self.inside + slope * (diameter - self.inner)


class Left(NamedTuple):
    """The least thickness left in a zone, and the diameter at which it is found."""

    thickness: Number
    at: Number


def cuts_of(i: In, rings: list[Ring]) -> list[Cut]:
    """All cuts, each side by itself from the inside outwards; refuses one that lies outside the section
    or over
    another."""
    found: list[Cut] = []
    for side, rows in (("engine", i.engine_cuts), ("clutch", i.clutch_cuts)):
        field = f"{side}_cuts"
        own = [_cut(side, field, n, row, rings) for n, row in enumerate(rows, 1) if row is not None]
        own.sort(key=lambda cut: float(cut.inner))
        for one, two in zip(own, own[1:]):
            if two.inner < one.outer:
                raise impossible(
                    f"{field}.{two.name}.1",
                    "is {a}, inside the other cut on this side, that ends at {b}; give {b} or more",
                    a=two.inner,
                    b=one.outer,
                )
        found += own
    _refuse_cut_through(found, rings)
    return found


def _cut(side: str, field: str, n: int, row: tuple, rings: list[Ring]) -> Cut:
    inner, outer, inside, outside = row
    if inner >= outer:
        raise impossible(
            f"{field}.{n}.2", "is {b}, not more than where the cut begins, {a}; give more", a=inner, b=outer
        )
    for column, diameter in ((1, inner), (2, outer)):
        if diameter < rings[0].inner or diameter > rings[-1].outer:
            raise impossible(
                f"{field}.{n}.{column}",
                "is {d}, outside the section; give {a} to {b}",
                d=diameter,
                a=rings[0].inner,
                b=rings[-1].outer,
            )
    return Cut(side, str(n), inner, outer, inside, inside if outside is None else outside)


def _refuse_cut_through(cuts: list[Cut], rings: list[Ring]) -> None:
    left = least_left(rings, cuts, float(rings[0].inner), float(rings[-1].outer))
    if left.thickness <= 0:
        cut = next(c for c in cuts if float(c.inner) <= float(left.at) <= float(c.outer))
        raise impossible(
            f"{cut.side}_cuts.{cut.name}.3",
            "goes through: at {d} the cuts are deeper by {t} than what is there; give less",
            d=left.at,
            t=constant("", "", COARSE, -float(left.thickness)),
        )


def least_left(rings: list[Ring], cuts: list[Cut], low: float, high: float) -> Left:
    """Least thickness left between two diameters of the section, or at one. Between the edges of rings
    and cuts it
    runs straight, so that it is least at one of them."""
    edges = {low, high}
    for ends in (*((r.inner, r.outer) for r in rings), *((c.inner, c.outer) for c in cuts)):
        edges |= {e for e in map(float, ends) if low < e < high}
    at = sorted(edges) if high > low else [low, low]
    return min(
        (left for a, b in zip(at, at[1:]) for left in _at_both_ends(rings, cuts, a, b)),
        key=lambda x: float(x.thickness),
    )


def _at_both_ends(rings: list[Ring], cuts: list[Cut], a: float, b: float) -> list[Left]:
    """What is left at both ends of a stretch that no edge divides."""
    middle = (a + b) / 2
    over = [c for c in cuts if float(c.inner) <= middle <= float(c.outer)]
    found = []
    for ring in (r for r in rings if r.holds(middle)):
        for end in (a, b):
            diameter = constant("D", "Diameter", ROUGH, end)
            gone = [c.depth(diameter) for c in over]
            found.append(Left(ring.thickness - sum(gone) if gone else ring.thickness, diameter))
    return found
