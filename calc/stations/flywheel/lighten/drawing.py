"""Half of the flywheel's section, to scale, with what the cuts take off."""

from collections.abc import Iterator

from calc.core.drawing import Area, Dimension, Drawing, Label, Line, Points
from calc.core.result import say
from calc.stations.flywheel.lighten.asked import In
from calc.stations.flywheel.lighten.cuts import Cut
from calc.stations.flywheel.lighten.sums import Sums
from calc.stations.flywheel.lighten.verdict import Found
from calc.stations.flywheel.section import Ring


def half_section(i: In, rings: list[Ring], cuts: list[Cut], sums: Sums, found: Found) -> Drawing:
    """The axis lies at the bottom; the engine's side is left."""
    outside = float(rings[-1].outer) / 2
    left = min(ring.begins for ring in rings)
    right = max(ring.begins + float(ring.thickness) for ring in rings)
    shapes: list = [Area(_box(ring), "a") for ring in rings]
    shapes += [Area(points, "c") for cut in cuts for points in _taken(cut, rings)]
    shapes += [
        Line(((left - 0.1 * outside, 0), (right + 0.1 * outside, 0)), "centre"),
        Label((left, 1.12 * outside), "engine", "middle"),
        Label((right + 0.16 * outside, 1.12 * outside), "clutch", "middle"),
    ]
    shapes.append(_thickness(found, rings, cuts))
    return Drawing(
        "Half of the section, and what is cut",
        say(
            "Half of the flywheel's section above its axis, engine's side left. Close hatching is what"
            " the cuts"
            " take off, {m}; {j} of the moment of inertia goes with it.",
            m=sums.told[2],
            j=sums.share,
        ),
        tuple(shapes),
    )


def _box(ring: Ring) -> Points:
    a, b = float(ring.inner) / 2, float(ring.outer) / 2
    z, end = ring.begins, ring.begins + float(ring.thickness)
    return ((z, a), (end, a), (end, b), (z, b))


def _taken(cut: Cut, rings: list[Ring]) -> Iterator[Points]:
    """What a cut takes off each ring that it crosses."""
    for ring in rings:
        low, high = (max(float(cut.inner), float(ring.inner)), min(float(cut.outer), float(ring.outer)))
        if low >= high:
            continue
        deep = [_depth(cut, d) for d in (low, high)]
        face = ring.begins if cut.side == "engine" else ring.begins + float(ring.thickness)
        way = 1 if cut.side == "engine" else -1
        yield (
            (face, low / 2),
            (face + way * deep[0], low / 2),
            (face + way * deep[1], high / 2),
            (face, high / 2),
        )


def _depth(cut: Cut, diameter: float) -> float:
    share = (diameter - float(cut.inner)) / float(cut.outer - cut.inner)
    return float(cut.inside) + share * (float(cut.outside) - float(cut.inside))


def _thickness(found: Found, rings: list[Ring], cuts: list[Cut]) -> Dimension:
    """What is left behind the friction face, where it is thinnest."""
    at, thickness = float(found.face.at), found.face.thickness
    ring = next(r for r in rings if r.holds(at))
    gone = sum(_depth(c, at) for c in cuts if c.side == "engine" and float(c.inner) <= at <= float(c.outer))
    start = ring.begins + gone
    return Dimension((start, at / 2), (start + float(thickness), at / 2), thickness, 0.0, "t_F")
