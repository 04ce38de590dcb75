"""The head with one valve, cut through the valve's axis. Its own frame: y up from the face that the cylinder
seals on, x to the side of the pushrods."""

import math
from dataclasses import dataclass

from calc.core.drawing import Area, Circle, Line, Points, arc
from calc.page.engine.shapes import centre, combed, plate, turned
from calc.page.engine.sizes import Sizes
from calc.page.engine.spring import on_its_bed
from calc.page.engine.valve import guide_cut, ring_cut, valve_seen
from calc.page.engine.view import Place, Solids, View


@dataclass(frozen=True)
class Levels:
    """Heights over the sealing face, m."""

    roof: float  # of the chamber, where the valve's edge lies
    port: float  # top of the seat ring
    bed: float  # of the spring
    tip: float  # of the stem
    shaft: float  # of the rocker
    cover: float


def levels(s: Sizes) -> Levels:
    roof = 1.1 * s("chamber.volume") / (math.pi / 4 * s("chamber.mouth") ** 2)
    tip = roof + s("valve.length")
    shaft = max(s("head.rocker_height"), tip - 0.05 * s("cylinder.bore"))
    return Levels(
        roof,
        roof + s("head.seat_pocket_depth"),
        tip - s("head.stem_height"),
        tip,
        shaft,
        shaft + 0.24 * s("cylinder.bore"),
    )


def rocker_shaft(s: Sizes) -> tuple[float, float]:
    """Its place, and the pushrod's end of the rocker."""
    arm = 0.3 * s("cylinder.bore")
    return arm, arm * (1 + 1 / s("valve.rocker_ratio"))


def casting(s: Sizes) -> Points:
    """The head's outline, with its fins."""
    at, bore = levels(s), s("cylinder.bore")
    wide, core, skirt = 0.74 * bore, 0.55 * bore, 0.62 * bore
    low, high = 0.12 * bore, at.bed - 0.1 * bore
    right = combed(core, wide, low, high, 0.095 * bore)
    mouth, out = s("chamber.mouth") / 2, 0.55 * bore
    edge = (
        (mouth, 0.0),
        (out, 0.0),
        (out, -0.09 * bore),
        (skirt, -0.09 * bore),
        (skirt, 0.06 * bore),
        *right,
        (core, at.bed - 0.06 * bore),
        (0.66 * bore, at.bed - 0.06 * bore),
        (0.66 * bore, at.bed),
    )
    return (*edge, *((-x, y) for x, y in reversed(edge)), (-mouth * 0.92, at.roof), (mouth * 0.92, at.roof))


def port(s: Sizes, kind: str = "intake", side: int = -1) -> Area:
    """The port from its throat to its flange, to the left where `side` is -1."""
    at, bore = levels(s), s("cylinder.bore")
    t, high = s(f"port.throat_{kind}") / 2, s(f"port.height_{kind}")
    roof = min(at.port + high * 1.1, at.bed - 0.13 * bore)
    floor = max(roof - high, at.port + 0.04 * bore)
    r = min(2 * t, roof - at.port) * 0.75
    outer = arc((t - r, roof - r), r, 0, math.pi / 2, 6)
    points = (
        (t, at.port),
        *outer,
        (-0.74 * bore, roof),
        (-0.74 * bore, floor),
        (-t - 0.05 * bore, floor),
        (-t, floor - 0.05 * bore),
        (-t, at.port),
    )
    return Area(tuple((x * -side, y) for x, y in points), "")


def rocker(s: Sizes) -> Solids:
    at, (arm, end) = levels(s), rocker_shaft(s)
    bore = s("cylinder.bore")
    r, nose = 0.13 * bore, 0.05 * bore
    body = (
        (-nose, at.tip),
        (nose, at.tip),
        (arm - r, at.shaft - 0.5 * r),
        (arm, at.shaft - r),
        (end - nose, at.shaft - 1.5 * nose),
        (end + nose, at.shaft - nose),
        (end + nose, at.shaft + 0.6 * nose),
        (arm, at.shaft + r),
        (-nose, at.tip + 1.5 * nose),
    )
    return Area(body, ""), Circle((arm, at.shaft), 0.62 * r, "a")


def cover(s: Sizes) -> Solids:
    """The rockers' cover: sheet metal, and the room under it."""
    at, bore = levels(s), s("cylinder.bore")
    wide, thick, soft = 0.66 * bore, 0.025 * bore, 0.12 * bore
    outer = (
        (wide + 0.04 * bore, at.bed),
        (wide + 0.04 * bore, at.bed + thick),
        (wide, at.bed + thick),
        (wide, at.cover - soft),
        (wide - soft, at.cover),
    )
    inner = (
        (wide - thick, at.bed),
        (wide - thick, at.cover - soft - 0.4 * thick),
        (wide - soft - 0.4 * thick, at.cover - thick),
    )
    return Area(turned(outer), "solid"), Area(turned(inner), "")


def body(s: Sizes, kind: str = "intake") -> Solids:
    return (Area(casting(s), "b"), port(s, kind))


def valve_group(s: Sizes, kind: str = "intake") -> Solids:
    """Ring, guide and valve in their places."""
    at = levels(s)
    return (*ring_cut(s, kind, at.roof), *guide_cut(s, guide_low(s)), *valve_seen(s, kind, at.roof))


def guide_low(s: Sizes) -> float:
    """The guide stands a little out of the spring's bed."""
    return levels(s).bed + 0.08 * s("cylinder.bore") - s("guide.length")


def springs(s: Sizes) -> Solids:
    return on_its_bed(s, levels(s).bed)


def view(s: Sizes) -> View:
    at, bore, mouth = levels(s), s("cylinder.bore"), s("chamber.mouth") / 2
    kind = "intake"
    return View(
        "head",
        "Head, cut through a valve, with its rocker",
        (*cover(s), *body(s, kind), *springs(s), *valve_group(s, kind), *rocker(s), *_nut(s)),
        (
            Place(
                "chamber.mouth", "Chamber\nmouth", (-mouth, -0.16 * bore), (mouth, -0.16 * bore), edges=(0, 0)
            ),
            Place("chamber.volume", "Chamber\nvolume", (0.35 * mouth, 0.45 * at.roof)),
            Place("chamber.step_cut", "Cut off\nthe step", (0.53 * bore, 0)),
            Place(
                "head.rocker_height",
                "Height of\nthe shaft",
                (0.86 * bore, 0),
                (0.86 * bore, at.shaft),
                edges=(0.62 * bore, 0.4 * bore),
            ),
            Place("head.alloy", "Alloy", (0.5 * bore, 0.5 * at.bed)),
            Place("head.running_temperature", "Running\nheat", (-0.5 * bore, 0.2 * bore)),
            Place("torque.head_nut", "Head nut,\ntorque", (-0.6 * bore, at.bed + 0.08 * bore)),
            Place("ports", "Ports", (-0.7 * bore, at.port + 0.2 * bore)),
            Place("guide", "Guide", (0.06 * bore, guide_low(s) + 0.4 * s("guide.length"))),
            Place("valve", "Valve", (0.0, at.port + 0.06 * bore)),
            Place("seat-intake", "Seat", (0.22 * bore, at.roof + 0.02 * bore)),
            Place("stem", "Stem and\nspring", (-0.2 * bore, at.bed + 0.2 * bore)),
            Place("pushrod", "Rocker", (0.3 * bore, at.shaft)),
        ),
        (centre((0, -0.2 * bore), (0, at.cover + 0.06 * bore)),),
    )


def _nut(s: Sizes) -> Solids:
    """The nut of a head stud, on the spring's side of the head."""
    at, bore, x = levels(s), s("cylinder.bore"), -0.58 * s("cylinder.bore")
    return (
        plate(x - 0.09 * bore, at.bed, x + 0.09 * bore, at.bed + 0.025 * bore),
        plate(x - 0.075 * bore, at.bed + 0.025 * bore, x + 0.075 * bore, at.bed + 0.12 * bore),
        plate(x - 0.045 * bore, at.bed + 0.12 * bore, x + 0.045 * bore, at.bed + 0.17 * bore),
    )


def ports_view(s: Sizes) -> View:
    """The ports' mouths at the manifolds, each with its manifold's; below them their throats."""
    shapes: list = []
    places: list[Place] = []
    for kind, side in (("intake", -1), ("exhaust", 1)):
        wide, high = s(f"port.width_{kind}") / 2, s(f"port.height_{kind}") / 2
        other_wide, other_high = s(f"port.manifold_width_{kind}") / 2, s(f"port.manifold_height_{kind}") / 2
        throat = s(f"port.throat_{kind}") / 2
        x, gap = side * 1.45 * s("port.width_intake") / 2, 0.25 * high
        low = -high - throat - 5 * gap
        flange = 1.35
        shapes += [
            plate(x - flange * wide, -flange * high, x + flange * wide, flange * high, "b"),
            Area(_soft(x, wide, high), ""),
            Line((*_soft(x, other_wide, other_high), _soft(x, other_wide, other_high)[0]), "hidden"),
            Circle((x, low), 1.28 * throat, "b"),
            Circle((x, low), throat),
            centre((x - 1.4 * wide, 0), (x + 1.4 * wide, 0)),
            centre((x, low - 1.4 * throat), (x, 1.5 * high)),
        ]
        name = kind.capitalize()
        places += [
            Place(f"port.width_{kind}", f"{name},\nwidth", (x - wide, 0.3 * high), (x + wide, 0.3 * high)),
            Place(
                f"port.height_{kind}",
                f"{name},\nheight",
                (x + side * 0.3 * wide, -high),
                (x + side * 0.3 * wide, high),
            ),
            Place(
                f"port.manifold_width_{kind}",
                "Manifold,\nwidth",
                (x - other_wide, -0.45 * high),
                (x + other_wide, -0.45 * high),
            ),
            Place(
                f"port.manifold_height_{kind}",
                "Manifold,\nheight",
                (x + side * 0.6 * wide, -other_high),
                (x + side * 0.6 * wide, other_high),
            ),
            Place(f"port.throat_{kind}", f"{name},\nthroat", (x - throat, low), (x + throat, low)),
        ]
    return View("ports", "Ports at the manifolds, and their throats", tuple(shapes), tuple(places))


def _soft(x: float, wide: float, high: float) -> Points:
    cut = 0.35 * min(wide, high)
    left, bottom, right, top = x - wide, -high, x + wide, high
    return (
        (right, top - cut),
        (right - cut, top),
        (left + cut, top),
        (left, top - cut),
        (left, bottom + cut),
        (left + cut, bottom),
        (right - cut, bottom),
        (right, bottom + cut),
    )
