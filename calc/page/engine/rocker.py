"""The rocker on its shaft, between stem and pushrod, and the pushrod in its tube below."""

import math

from calc.core.drawing import Area, Circle, Line
from calc.page.engine.shapes import centre, plate
from calc.page.engine.sizes import Sizes
from calc.page.engine.view import Place, View


def view(s: Sizes) -> View:
    """Its own frame: the shaft's middle, the valve shut. The pushrod and its tube are cut short."""
    valve, rod = s("rocker.arm_valve"), s("rocker.arm_pushrod")
    shaft, bush, tip = s("rocker.shaft") / 2, s("rocker.bush") / 2, s("rocker.tip_over_shaft")
    boss, nose, stem = 1.55 * bush, 0.14 * valve, s("valve.stem_intake") / 2
    cup = math.atan2(tip, valve) - s("rocker.cup_angle")
    x, y = rod * math.cos(cup), -rod * math.sin(cup)
    low = -1.6 * valve
    body = (
        (-valve - nose, tip),
        (-valve + nose, tip),
        (-boss, -0.35 * boss),
        (0.0, -boss),
        (boss, -0.5 * boss),
        (x - nose, y),
        (x + nose, y),
        (x + nose, y + 1.6 * nose),
        (boss, 0.7 * boss),
        (0.0, boss),
        (-boss, 0.8 * boss),
        (-valve - nose, tip + 1.8 * nose),
    )
    thin, wide = 0.5 * stem, 1.6 * stem
    return View(
        "rocker",
        "Rocker with stem and pushrod, the valve shut",
        (
            plate(-valve - stem, low, -valve + stem, tip),
            plate(x - wide, low, x - 0.85 * wide, 0.62 * low, "solid"),
            plate(x + 0.85 * wide, low, x + wide, 0.62 * low, "solid"),
            plate(x - thin, low, x + thin, y),
            Area(body, ""),
            Circle((0, 0), bush, "c"),
            Circle((0, 0), shaft, "a"),
            Line(((0, 0), (-1.2 * valve, 0)), "thin"),
        ),
        _places(s, x, y, low),
        (
            centre((-valve, 1.05 * low), (-valve, 2.2 * nose)),
            centre((0, low), (0, 1.9 * boss)),
            centre((x, 1.05 * low), (x, 1.4 * boss)),
        ),
    )


def _places(s: Sizes, x: float, y: float, low: float) -> tuple[Place, ...]:
    """`x` and `y` are the cup's, `low` where stem and pushrod are cut off."""
    valve, rod = s("rocker.arm_valve"), s("rocker.arm_pushrod")
    shaft, bush, tip = s("rocker.shaft") / 2, s("rocker.bush") / 2, s("rocker.tip_over_shaft")
    boss, nose, stem = 1.55 * bush, 0.14 * valve, s("valve.stem_intake") / 2
    wide = 1.6 * stem
    return (
        Place(
            "rocker.arm_valve", "Arm to\nthe valve", (-valve, 1.7 * boss), (0, 1.7 * boss), edges=(tip, boss)
        ),
        Place("rocker.arm_pushrod", "Arm to\npushrod", (0, 1.4 * boss), (rod, 1.4 * boss), edges=(boss, y)),
        Place("rocker.cup_angle", "Cup above\nthe line", (x, y + 0.4 * nose)),
        Place(
            "rocker.tip_over_shaft",
            "Tip above\nthe shaft",
            (-1.2 * valve, 0),
            (-1.2 * valve, tip),
            edges=(0, -valve),
        ),
        Place("rocker.sweep", "Pad's\nsweep", (-valve + 0.5 * stem, tip)),
        Place("rocker.contact_run", "Contact\nruns", (-valve - 0.5 * stem, tip)),
        Place("rocker.shaft", "Shaft", (-shaft * 0.7071, -shaft * 0.7071), (shaft * 0.7071, shaft * 0.7071)),
        Place("rocker.bush", "Bush,\nhoned", (-bush, 0)),
        Place("rocker.clearance", "Clearance\non shaft", (0.2 * bush, -bush)),
        Place("rocker.adjuster", "Adjuster's\ntravel", (x, y + 1.2 * nose)),
        Place("rocker.felt_mass", "Felt at\nthe valve", (-0.55 * valve, 0.3 * tip)),
        Place("rocker.pushrod_mass", "Pushrod,\nmass", (x, 0.5 * low)),
        Place("head.seat_to_shaft", "Seat up\nto shaft", (0, 0.35 * low)),
        Place("rocker.pushrod_bow", "Bow of the\npushrod", (x, 0.3 * low)),
        Place("rocker.tube_length", "Tube,\nlength", (x + wide, 0.8 * low)),
        Place(
            "rocker.lifter_offset",
            "Across to\nlifter",
            (0, 0.5 * low),
            (s("rocker.lifter_offset"), 0.5 * low),
        ),
        Place("rocker.lifter_depth", "Down to\nlifter", (0, 0.75 * low)),
    )
