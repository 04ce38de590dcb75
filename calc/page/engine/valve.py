"""Valve, guide and seat ring. Their own frame: the valve's axis, y up along its stem; `roof` is the height of
its edge."""

import math
from dataclasses import dataclass

from calc.core.drawing import Area, Line, Points, clip
from calc.page.engine.shapes import centre, halves, turned
from calc.page.engine.sizes import Sizes
from calc.page.engine.view import Place, Solids, View


def _valve_half(s: Sizes, kind: str) -> Points:
    """Right of the axis, from the middle of the head round to the tip; y from the edge of the face."""
    r, stem = s(f"head.valve_head_{kind}") / 2, s(f"valve.stem_{kind}") / 2
    angle, face, margin = s("head.valve_angle"), s("head.valve_face_width"), s(f"head.valve_margin_{kind}")
    inner, up = r - face * math.cos(angle), face * math.sin(angle)
    neck = up + (inner - 1.7 * stem) * 0.36
    tip = s("valve.length") - margin
    groove = tip - 0.55 * s("valve.tip_to_retainer")
    return (
        (0, -margin),
        (r, -margin),
        (r, 0),
        (inner, up),
        (1.7 * stem, neck),
        (1.15 * stem, neck + 1.6 * stem),
        (stem, neck + 3 * stem),
        (stem, groove - 0.6 * stem),
        (0.8 * stem, groove - 0.5 * stem),
        (0.8 * stem, groove + 0.1 * stem),
        (stem, groove + 0.2 * stem),
        (stem, tip - 0.15 * stem),
        (0.85 * stem, tip),
        (0, tip),
    )


def valve_seen(s: Sizes, kind: str, roof: float = 0.0) -> Solids:
    return (Area(turned(tuple((x, y + roof) for x, y in _valve_half(s, kind))), ""),)


@dataclass(frozen=True)
class Band:
    """The seat's band: radius and height of its inner edge, towards the port, and of its outer one, m."""

    inner: float
    top: float
    outer: float
    low: float


def band(s: Sizes, kind: str) -> Band:
    """It touches the valve's face, so its height follows from where the valve's edge is."""
    angle, width = s("head.seat_angle"), s(f"head.seat_width_{kind}")
    inner = s(f"head.seat_inner_{kind}") / 2
    outer = inner + width * math.cos(angle)
    low = (s(f"head.valve_head_{kind}") / 2 - outer) * math.tan(angle)
    return Band(inner, low + width * math.sin(angle), outer, low)


def ring_half(s: Sizes, kind: str) -> Points:
    """The seat ring right of the axis, cut by its three cones; y from the valve's edge, which lies with the
    ring's lower face."""
    outer, bore, high = (
        s(f"head.seat_ring_outside_{kind}") / 2,
        s(f"head.seat_ring_bore_{kind}") / 2,
        s("head.seat_pocket_depth"),
    )
    upper, throat, b = s("head.seat_upper_angle"), s("head.seat_throat_angle"), band(s, kind)
    deep = 2 * high
    return clip(
        (
            (2 * outer, b.low - (2 * outer - b.outer) * math.tan(upper)),
            (b.outer, b.low),
            (b.inner, b.top),
            (b.inner - (deep - b.top) / math.tan(throat), deep),
            (2 * outer, deep),
        ),
        bore,
        0.0,
        outer,
        high,
    )


def ring_cut(s: Sizes, kind: str, roof: float = 0.0) -> Solids:
    return halves(tuple((x, y + roof) for x, y in ring_half(s, kind)), "c")


def guide_cut(s: Sizes, low: float = 0.0) -> Solids:
    r, hole, long = s("guide.outside") / 2, s("guide.bore") / 2, s("guide.length")
    return halves(
        ((hole, low), (0.8 * r, low), (r, low + 0.06 * long), (r, low + long), (hole, low + long)), "c"
    )


def view(s: Sizes) -> View:
    """The valve by itself; the guide that it is rocked in, dashed."""
    kind = "intake"
    long, stem = s("valve.length"), s(f"valve.stem_{kind}") / 2
    margin, r = s(f"head.valve_margin_{kind}"), s(f"head.valve_head_{kind}") / 2
    tip = long - margin
    top = tip - s("valve.rock_tip")
    low, g = top - s("guide.length"), s("guide.outside") / 2
    guide = tuple(Line(((k * g, low), (k * g, top)), "hidden") for k in (-1, 1)) + tuple(
        Line(((-g, y), (g, y)), "hidden") for y in (low, top)
    )
    return View(
        "valve",
        "Valve; dashed, the guide that it is rocked in",
        valve_seen(s, kind),
        (
            Place("valve.length", "Length", (-1.15 * r, -margin), (-1.15 * r, tip), edges=(-r, -stem)),
            Place("valve.stem_intake", "Stem,\nintake", (-stem, 0.55 * low), (stem, 0.55 * low)),
            Place("valve.stem_exhaust", "Stem,\nexhaust", (-stem, 0.75 * low), (stem, 0.75 * low)),
            Place("valve.rock_tip", "Tip out of\nthe guide", (1.6 * g, top), (1.6 * g, tip), edges=(g, stem)),
            Place("guide.rock_lever", "Guide to\ndial", (1.15 * r, low), (1.15 * r, -margin), edges=(g, r)),
            Place("valve.tip_ground", "Ground\noff the tip", (0, tip)),
            Place("valve.stem_running_temperature_intake", "Stem, hot,\nintake", (0, low + 0.06 * long)),
            Place(
                "valve.stem_running_temperature_exhaust",
                "Stem, hot,\nexhaust",
                (0.3 * stem, low + 0.02 * long),
            ),
            Place("valve.lean", "Lean to the\ncylinder", (0, 1.02 * tip)),
            Place("valve.mass_intake", "Mass,\nintake", (0, 0.45 * low)),
            Place("valve.mass_exhaust", "Mass,\nexhaust", (0, 0.3 * low)),
            Place("valve.way_intake", "Way to\npiston, in", (-0.8 * r, -margin)),
            Place("valve.way_exhaust", "Way to\npiston, ex", (0.8 * r, -margin)),
            Place("valve.room_intake", "Room left,\nintake", (-0.45 * r, -margin)),
            Place("valve.room_exhaust", "Room left,\nexhaust", (0.45 * r, -margin)),
            Place("valve.edge_room", "Edge to\nits pocket", (r, -0.5 * margin)),
            Place("valve.alloy_intake", "Material,\nintake", (-0.6 * r, 0.3 * margin)),
            Place("valve.alloy_exhaust", "Material,\nexhaust", (0.6 * r, 0.3 * margin)),
            Place("valve.running_temperature_intake", "Running,\nintake", (-0.25 * r, 0.2 * r)),
            Place("valve.running_temperature_exhaust", "Running,\nexhaust", (0.25 * r, 0.2 * r)),
        ),
        (*guide, centre((0, -0.06 * long), (0, 1.04 * tip))),
    )


def guide_view(s: Sizes) -> View:
    """The guide in the head, with the stem in it."""
    r, hole, long = s("guide.outside") / 2, s("guide.bore") / 2, s("guide.length")
    wall = max(s("head.guide_wall"), 0.4 * r)
    stem = s("valve.stem_intake") / 2
    low, bed = 0.12 * long, 0.82 * long
    head = (
        (s("head.guide_hole") / 2, low),
        (r + wall, low),
        (r + 1.5 * wall, 0.4 * long),
        (r + 1.5 * wall, bed),
        (s("head.guide_hole") / 2, bed),
    )
    body = turned(((stem, -0.12 * long), (stem, 1.1 * long)))
    return View(
        "guide",
        "Valve guide in the head, with the stem in it",
        (*halves(head, "b"), *guide_cut(s), Area(body, "")),
        (
            Place("guide.length", "Length", (r + 1.8 * wall, 0), (r + 1.8 * wall, long), edges=(0.8 * r, r)),
            Place("guide.outside", "Outside", (-r, 0.94 * long), (r, 0.94 * long)),
            Place("head.guide_hole", "Hole in\nthe head", (-r, 0.72 * long), (r, 0.72 * long)),
            Place("guide.interference", "Grip in\nthe head", (-r, 0.5 * long)),
            Place("head.guide_wall", "Least wall", (r, 0.2 * long), (r + wall, 0.2 * long)),
            Place("guide.bore", "Bore,\nreamed", (-hole, 0.36 * long), (hole, 0.36 * long)),
            Place("guide.supplied_bore", "New guide,\nits bore", (-hole, 0.06 * long), (hole, 0.06 * long)),
            Place("guide.clearance_intake", "Clearance,\nintake", (-hole, 0.2 * long)),
            Place("guide.clearance_exhaust", "Clearance,\nexhaust", (hole, 0.1 * long)),
            Place("guide.alloy", "Alloy", ((r + hole) / 2, 0.87 * long)),
            Place("guide.running_temperature_intake", "Guide, hot,\nintake", ((r + hole) / 2, 0.56 * long)),
            Place("guide.running_temperature_exhaust", "Guide, hot,\nexhaust", ((r + hole) / 2, 0.4 * long)),
            Place("head.guide_running_temperature_intake", "Head, hot,\nintake", (r + wall, 0.74 * long)),
            Place("head.guide_running_temperature_exhaust", "Head, hot,\nexhaust", (r + wall, 0.6 * long)),
        ),
        (centre((0, -0.18 * long), (0, 1.16 * long)),),
    )


def seat_view(s: Sizes, kind: str) -> View:
    """Ring, pocket and valve of one kind of valve."""
    outer, pocket, bore = (
        s(f"head.{x}_{kind}") / 2 for x in ("seat_ring_outside", "seat_pocket", "seat_ring_bore")
    )
    high, r = s("head.seat_pocket_depth"), s(f"head.valve_head_{kind}") / 2
    margin = s(f"head.valve_margin_{kind}")
    wall, up = 0.6 * s("head.seat_pocket_wall"), 4.6 * high
    head = (
        (pocket, 0),
        (outer + wall, 0),
        (outer + wall, up),
        (0.96 * bore, up),
        (0.96 * bore, 1.4 * high),
        (bore, high),
        (pocket, high),
    )
    valve = clip(turned(_valve_half(s, kind)), -2 * r, -high, 2 * r, up + 0.3 * high)
    b = band(s, kind)
    return View(
        f"seat-{kind}",
        f"Seat ring, {kind}: in its pocket, with the valve on it",
        (*halves(head, "b"), *ring_cut(s, kind), Area(valve, "")),
        (
            Place(f"head.seat_pocket_{kind}", "Pocket\nbore", (-pocket, 1.12 * high), (pocket, 1.12 * high)),
            Place(
                f"head.seat_ring_outside_{kind}", "Ring\noutside", (-outer, 0.72 * high), (outer, 0.72 * high)
            ),
            Place(f"head.seat_interference_{kind}", "Ring's\ngrip", (-outer, 0.3 * high)),
            Place(f"head.seat_ring_bore_{kind}", "Ring bore", (-bore, 1.6 * high), (bore, 1.6 * high)),
            Place(f"head.seat_inner_{kind}", "Seat,\ninner edge", (-b.inner, b.top), (b.inner, b.top)),
            Place(f"head.seat_width_{kind}", "Seat,\nwidth", ((b.inner + b.outer) / 2, (b.top + b.low) / 2)),
            Place(
                f"head.valve_head_{kind}",
                "Valve\nhead",
                (-r, -margin - 0.5 * high),
                (r, -margin - 0.5 * high),
                edges=(-margin, -margin),
            ),
            Place(f"head.valve_margin_{kind}", "Edge,\nthickness", (r, -margin), (r, 0)),
            Place(f"head.seat_ring_alloy_{kind}", "Ring,\nmaterial", (-(outer + bore) / 2, 0.85 * high)),
            Place(f"head.seat_ring_temperature_{kind}", "Ring,\nrunning", ((outer + bore) / 2, 0.85 * high)),
            Place(f"head.seat_ring_warming_{kind}", "Ring,\nwarming", ((outer * 2 + bore) / 3, 0.55 * high)),
            Place("seat-cut", "Angles,\nlarger", (-(b.inner + b.outer) / 2, (b.top + b.low) / 2)),
            Place(f"head.pocket_temperature_{kind}", "Head,\nrunning", (outer + 0.5 * wall, 0.8 * high)),
        ),
        (centre((0, -margin - 0.8 * high), (0, up + 0.6 * high)),),
    )


def cut_view(s: Sizes) -> View:
    """The intake seat's cuts on one side, larger, the valve lowered off it."""
    kind = "intake"
    outer, bore, r = (
        s(f"head.seat_ring_outside_{kind}") / 2,
        s(f"head.seat_ring_bore_{kind}") / 2,
        s(f"head.valve_head_{kind}") / 2,
    )
    high, wall, b = s("head.seat_pocket_depth"), s("head.seat_pocket_wall"), band(s, kind)
    right, up, drop = outer + wall, 1.6 * high, 0.55 * high
    head = ((outer, 0), (right, 0), (right, up), (bore, up), (bore, high), (outer, high))
    half = clip(_valve_half(s, kind), bore - 1.3 * high, -high, 2 * r, 1.3 * high)
    valve = tuple((x, y - drop) for x, y in half)
    return View(
        "seat-cut",
        "Seat and valve face, larger, the valve off its seat",
        (
            Area(head, "b"),
            Area(ring_half(s, kind), "c"),
            Area(valve, ""),
            Line(((b.inner, b.top), (b.outer, b.low)), "band"),
        ),
        _cut_places(s, kind, drop),
    )


def _cut_places(s: Sizes, kind: str, drop: float) -> tuple[Place, ...]:
    outer, bore = s(f"head.seat_ring_outside_{kind}") / 2, s(f"head.seat_ring_bore_{kind}") / 2
    high, wall, b = s("head.seat_pocket_depth"), s("head.seat_pocket_wall"), band(s, kind)
    upper, throat, angle = (
        math.tan(s("head.seat_upper_angle")),
        math.tan(s("head.seat_throat_angle")),
        s("head.valve_angle"),
    )
    r, face, off = s(f"head.valve_head_{kind}") / 2, s("head.valve_face_width"), 0.12 * high
    across, deep = face * math.cos(angle), face * math.sin(angle)
    return (
        Place("head.seat_angle", "Seat,\nangle", ((b.inner + b.outer) / 2, (b.top + b.low) / 2)),
        Place(
            "head.seat_upper_angle",
            "Cut above,\nangle",
            (b.outer + b.low / upper / 2, b.low / 2) if b.low > 0 else (b.outer, 0),
        ),
        Place(
            "head.seat_throat_angle",
            "Throat\ncut, angle",
            (0.5 * (b.inner + bore), b.top + 0.5 * (b.inner - bore) * throat),
        ),
        Place("head.valve_angle", "Valve\nface, angle", (r - 0.2 * across, 0.2 * deep - drop)),
        Place(
            "head.valve_face_width",
            "Valve\nface, width",
            (r - off, -off - drop),
            (r - across - off, deep - off - drop),
        ),
        Place("head.seat_may_sink", "Seat may\nsink", (b.outer, b.low)),
        Place(
            "head.seat_pocket_depth", "Pocket\ndepth", (outer + 0.25 * wall, 0), (outer + 0.25 * wall, high)
        ),
        Place("head.seat_pocket_wall", "Least wall", (outer, 1.25 * high), (outer + wall, 1.25 * high)),
        Place("head.pocket_warming", "Head,\nwarming", (outer + 0.65 * wall, 0.6 * high)),
    )
