"""The lifter, its plunger unit and snap ring, and the way from the cam to the valve. The lifter's own frame:
y up from its foot, away from the cam."""

import math

from calc.core.drawing import Area, Circle, Line, Points, placed
from calc.page.engine.cam import lobe
from calc.page.engine.shapes import centre, halves, plate, turned
from calc.page.engine.sizes import Sizes
from calc.page.engine.view import Place, Solids, View


def length(s: Sizes) -> float:
    """From the foot to the body's end: the pushrod's seat lies a little inside."""
    return seat(s) + 0.25 * s("lifter.body")


def seat(s: Sizes) -> float:
    """The pushrod's seat over the foot."""
    return max(s("lifter.reach") - s("cam.base_circle") / 2, 1.5 * s("lifter.body"))


def _body_half(s: Sizes) -> tuple:
    r, hole = s("lifter.body") / 2, s("lifter.unit_hole") / 2
    top, floor = length(s), 0.42 * s("lifter.body")
    low, high = oil_groove(s)
    ring = top - s("lifter.lip")
    deep = s("lifter.groove") / 2
    return (
        (0, 0),
        (r, 0),
        (r, low),
        (0.96 * r, low),
        (0.96 * r, high),
        (r, high),
        (r, top),
        (hole, top),
        (hole, ring),
        (max(deep, hole), ring),
        (max(deep, hole), ring - s("lifter.groove_width")),
        (hole, ring - s("lifter.groove_width")),
        (hole, floor),
        (0, floor),
    )


def oil_groove(s: Sizes) -> tuple[float, float]:
    middle = 0.55 * length(s)
    return middle - s("lifter.oil_groove") / 2, middle + s("lifter.oil_groove") / 2


def lifter_cut(s: Sizes) -> Solids:
    """Cut through its axis: body, unit with its plunger, spring, ball and snap ring."""
    body = s("lifter.body")
    unit, bore, top = s("lifter.unit_outside") / 2, s("lifter.plunger_bore") / 2, length(s) - s("lifter.lip")
    floor, end = 0.42 * body, top - s("lifter.groove_width")
    plunger = min(s("lifter.plunger"), 2 * bore) / 2
    head = end - 0.02 * body
    land = head - s("lifter.plunger_land") - 0.25 * body
    low = max(land, floor + 0.3 * body)
    return (
        plate(-unit, floor, unit, end),
        Area(turned(_body_half(s)), "a"),
        plate(-unit, floor, unit, end, "c"),
        plate(-bore, floor + 0.08 * body, bore, end),
        Area(((-plunger, low), (plunger, low), (plunger, head), (-plunger, head)), "b"),
        Circle((0, low + 0.03 * body), 0.16 * body),
        plate(-0.3 * body, low + 0.2 * body, 0.3 * body, head - 0.22 * body),
        Area(turned(((0.28 * body, head), (0.2 * body, head - 0.14 * body), (0, head - 0.19 * body))), ""),
        *_zigzag(0.26 * body, floor + 0.08 * body, low),
        *(
            plate(
                k * (s("lifter.groove") / 2 - s("lifter.ring_breadth")),
                end,
                k * s("lifter.groove") / 2,
                end + s("lifter.ring"),
                "solid",
            )
            for k in (-1, 1)
        ),
        *_oil_hole(s),
    )


def _zigzag(r: float, low: float, high: float) -> Solids:
    step = (high - low) / 6
    return (Line(tuple((r * (-1) ** i, low + i * step) for i in range(7)), "thin"),)


def _oil_hole(s: Sizes) -> Solids:
    low, high = oil_groove(s)
    middle, d = (low + high) / 2, s("lifter.oil_hole") / 2
    inner = s("lifter.unit_hole") / 2
    return (plate(inner, middle - d, inner + s("lifter.oil_hole_length"), middle + d),)


def lifter_seen(s: Sizes) -> Solids:
    """From outside, as in the engine's own sections."""
    r, (low, high) = s("lifter.body") / 2, oil_groove(s)
    return (
        plate(-r, 0, r, length(s)),
        Line(((-r, low), (r, low)), "thin"),
        Line(((-r, high), (r, high)), "thin"),
    )


def pushrod_seen(s: Sizes, long: float) -> Solids:
    """From its seat in the lifter, y up."""
    r = 0.05 * s("cylinder.bore")
    return (
        plate(-r, 0.5 * r, r, long - 0.5 * r),
        Circle((0, 0.8 * r), 0.8 * r),
        Circle((0, long - 0.8 * r), 0.8 * r),
    )


def view(s: Sizes) -> View:
    r, hole, top = s("lifter.body") / 2, s("crankcase.lifter_bore") / 2, length(s)
    low, high = oil_groove(s)
    middle = (low + high) / 2
    case = halves(
        ((hole, 0.2 * top), (1.75 * hole, 0.2 * top), (1.75 * hole, 0.86 * top), (hole, 0.86 * top)), "b"
    )
    gallery = Circle((-1.4 * hole, middle), 0.24 * r)
    unit = s("lifter.unit_hole") / 2
    return View(
        "lifter",
        "Lifter in its bore, cut",
        (*case, plate(-1.4 * hole, middle - 0.1 * r, -hole, middle + 0.1 * r), gallery, *lifter_cut(s)),
        (
            Place("lifter.body", "Body", (-r, 0.1 * top), (r, 0.1 * top)),
            Place("crankcase.lifter_bore", "Bore in\nthe case", (-hole, 0.8 * top), (hole, 0.8 * top)),
            Place("lifter.clearance", "Clearance", (-hole, 0.68 * top)),
            Place("lifter.unit_hole", "Bore for\nthe unit", (-unit, 0.72 * top), (unit, 0.72 * top)),
            Place("lifter.unit_outside", "Unit,\noutside", (-unit, 0.36 * top), (unit, 0.36 * top)),
            Place("lifter.unit_clearance", "Unit,\nclearance", (unit, 0.46 * top)),
            Place("lifter.wall", "Wall", (unit, 0.92 * top), (r, 0.92 * top)),
            Place("lifter.oil_hole", "Oil hole", (r * 0.95, middle)),
            Place(
                "lifter.oil_hole_length",
                "Oil hole,\nlength",
                (unit, middle + 0.06 * top),
                (unit + s("lifter.oil_hole_length"), middle + 0.06 * top),
            ),
            Place("lifter.oil_groove", "Oil\ngroove", (-0.98 * r, low), (-0.98 * r, high)),
            Place("lifter.feed_angle", "Fed for", (-1.4 * hole, middle)),
            Place("lifter.oil_volume", "Oil that\nit takes", (-0.12 * r, 0.62 * top)),
            Place("crankcase.lifter_seal_cam", "Seals to\nthe cam", (-1.1 * hole, 0.3 * top)),
            Place("crankcase.lifter_seal_tube", "Seals to\nthe rod", (-1.1 * hole, 0.74 * top)),
            Place("lifter.alloy", "Material", (0.5 * r, 0.14 * top)),
            Place("plunger", "Plunger", (0.5 * r, 0.78 * top)),
            Place("snap-ring", "Snap ring", (0.8 * r, top - s("lifter.lip") - s("lifter.ring") / 2)),
        ),
        (centre((0, -0.05 * top), (0, 1.06 * top)),),
    )


def _plunger_half(s: Sizes, deep: float, head: float) -> Points:
    """Right of the axis, from the ball's seat at `deep` to the pushrod's cup at `head`."""
    bore, plunger, land = s("lifter.plunger_bore") / 2, s("lifter.plunger") / 2, s("lifter.plunger_land")
    return (
        (0.45 * bore, deep),
        (plunger, deep),
        (plunger, deep + land),
        (0.9 * plunger, deep + land + 0.08 * bore),
        (0.9 * plunger, head),
        (0.4 * bore, head),
        (0.35 * bore, head - 0.2 * bore),
        (0.12 * bore, head - 0.3 * bore),
        (0.12 * bore, head - 0.45 * bore),
        (0.6 * bore, head - 0.5 * bore),
        (0.6 * bore, deep + 0.4 * bore),
        (0.25 * bore, deep + 0.3 * bore),
        (0.25 * bore, deep + 0.12 * bore),
    )


def plunger_view(s: Sizes) -> View:
    """The plunger in its unit, with room to move."""
    bore, unit = s("lifter.plunger_bore") / 2, s("lifter.unit_outside") / 2
    plunger, land, travel, preload = (
        s("lifter.plunger") / 2,
        s("lifter.plunger_land"),
        s("lifter.travel"),
        s("lifter.preload"),
    )
    deep = travel + 0.6 * bore
    head = deep + land + 0.7 * bore
    stop = head + preload
    top = stop + 0.3 * bore
    walls = halves(((bore, 0.0), (unit * 1.0, 0.0), (unit, top), (bore, top)), "c")
    floor = plate(-unit, -0.35 * bore, unit, 0, "c")
    ring = tuple(
        plate(k * 0.55 * bore, stop, k * unit * 1.02, stop + s("lifter.ring"), "solid") for k in (-1, 1)
    )
    return View(
        "plunger",
        "Plunger in its unit, cut",
        (
            floor,
            *walls,
            *halves(_plunger_half(s, deep, head), "b"),
            Circle((0, deep + 0.02 * bore), 0.28 * bore),
            *_zigzag(0.6 * bore, 0, deep - 0.2 * bore),
            *ring,
        ),
        (
            Place("lifter.plunger", "Plunger", (-plunger, deep + 0.3 * land), (plunger, deep + 0.3 * land)),
            Place("lifter.plunger_bore", "Plunger's\nbore", (-bore, 0.6 * deep), (bore, 0.6 * deep)),
            Place("lifter.plunger_clearance", "Clearance", (bore, deep + 0.6 * land)),
            Place("lifter.plunger_clearance_pressed", "Clearance,\npressed in", (-bore, deep + 0.75 * land)),
            Place(
                "lifter.plunger_land",
                "Length\nthat seals",
                (1.4 * unit, deep),
                (1.4 * unit, deep + land),
                edges=(plunger, plunger),
            ),
            Place(
                "lifter.travel",
                "Travel,\nstops",
                (-1.35 * unit, head + preload - travel),
                (-1.35 * unit, head + preload),
            ),
            Place("lifter.preload", "Pressed\nin, cold", (0.75 * plunger, head), (0.75 * plunger, stop)),
            Place("lifter.leak_down", "Leak-down\ntime", (-0.5 * bore, 0.3 * deep)),
            Place("lifter.leak_down_load", "Load of\nthe test", (0, head - 0.28 * bore)),
            Place("lifter.leak_down_travel", "Travel\ntimed", (-0.7 * plunger, deep)),
        ),
        (centre((0, -0.5 * bore), (0, top + 0.2 * bore)),),
    )


def ring_view(s: Sizes) -> View:
    """The snap ring in its groove, one side larger."""
    r, hole, deep = s("lifter.body") / 2, s("lifter.unit_hole") / 2, s("lifter.groove") / 2
    wide, lip, ring, breadth = (
        s("lifter.groove_width"),
        s("lifter.lip"),
        s("lifter.ring"),
        s("lifter.ring_breadth"),
    )
    low = -2.2 * lip
    body = (
        (hole, low),
        (r, low),
        (r, wide + lip),
        (hole, wide + lip),
        (hole, wide),
        (deep, wide),
        (deep, 0),
        (hole, 0),
    )
    inner = deep - breadth
    unit = plate(inner - 1.2 * breadth, low, s("lifter.unit_outside") / 2, 0, "c")
    return View(
        "snap-ring",
        "Snap ring in its groove, one side",
        (Area(body, "a"), unit, plate(inner, 0, deep, ring, "b")),
        (
            Place(
                "lifter.ring",
                "Ring,\nthickness",
                (inner - 0.3 * breadth, 0),
                (inner - 0.3 * breadth, ring),
                edges=(inner, inner),
            ),
            Place(
                "lifter.ring_breadth",
                "Ring,\nbreadth",
                (inner, ring + 0.35 * lip),
                (deep, ring + 0.35 * lip),
                edges=(ring, ring),
            ),
            Place("lifter.ring_load", "Load on\nthe ring", (inner + 0.2 * breadth, 0)),
            Place("lifter.groove", "Groove,\nacross", (deep, 0.3 * wide)),
            Place(
                "lifter.groove_width",
                "Groove,\nwidth",
                (deep + 0.3 * (r - deep), 0),
                (deep + 0.3 * (r - deep), wide),
            ),
            Place("lifter.groove_depth", "Groove,\ndepth", (hole, -0.35 * lip), (deep, -0.35 * lip)),
            Place("lifter.groove_wall", "Wall\nbehind it", (deep, -1.2 * lip), (r, -1.2 * lip)),
            Place("lifter.lip", "Lip", (r + 0.25 * lip, wide), (r + 0.25 * lip, wide + lip), edges=(hole, r)),
        ),
    )


def way_view(s: Sizes) -> View:
    """Cam, lifter, pushrod and rocker in a row, y up."""
    base, reach, long = s("cam.base_circle") / 2, s("lifter.reach"), s("lifter.pushrod")
    bore, arm = s("cylinder.bore"), 0.3 * s("cylinder.bore")
    short = arm / s("valve.rocker_ratio")
    top = reach + long
    rocker = (
        (short * -0.2, top),
        (short * 0.2, top),
        (short, top - 0.12 * bore),
        (short + arm * 0.85, top - 0.08 * bore),
        (short + arm * 1.1, top - 0.02 * bore),
        (short + arm * 1.1, top + 0.06 * bore),
        (short, top + 0.14 * bore),
        (short * -0.2, top + 0.08 * bore),
    )
    stem = s("valve.stem_intake") / 2
    tip = top - 0.06 * bore
    x = short + arm
    valve = plate(x - stem, tip - 0.6 * bore, x + stem, tip)
    return View(
        "pushrod",
        "From the cam to the valve: lifter, pushrod and rocker",
        (
            Area(lobe(s, -math.pi / 2), ""),
            *placed(lifter_seen(s), (0, base)),
            *placed(pushrod_seen(s, long), (0, reach)),
            valve,
            Area(rocker, ""),
            Circle((short, top), 0.08 * bore, "a"),
        ),
        (
            Place(
                "lifter.reach",
                "Cam to\npushrod",
                (-0.3 * bore, 0),
                (-0.3 * bore, reach),
                edges=(-0.5 * base, -0.05 * bore),
            ),
            Place(
                "lifter.pushrod",
                "Pushrod,\nlength",
                (-0.3 * bore, reach),
                (-0.3 * bore, top),
                edges=(-0.05 * bore, -0.05 * bore),
            ),
            Place("lifter.pushrod_expansion", "Pushrod,\nexpansion", (0, reach + 0.6 * long)),
            Place("lifter.running_temperature", "Pushrod,\nrunning", (0, reach + 0.35 * long)),
            Place("lifter.running_load", "Load on\nthe lifter", (0.1 * bore, base)),
            Place("lifter.mass", "Lifter,\nmass", (-0.1 * bore, base + 0.3 * length(s))),
            Place("lifter.lash_hot", "Lash,\nrunning", (x, tip + 0.02 * bore)),
            Place("lifter.lash", "Lash", (x, tip)),
            Place("rocker", "Rocker,\nlarger", (-0.5 * short, top)),
            Place("valve.rocker_ratio", "Rocker,\nratio", (short, top)),
            Place("lifter", "Lifter", (0.1 * bore, base + 0.5 * length(s))),
            Place("cam", "Cam", (0, -0.4 * base)),
        ),
        (centre((0, -1.8 * base), (0, top + 0.2 * bore)),),
    )
