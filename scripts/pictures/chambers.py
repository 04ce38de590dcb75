"""Chambers and ports, and how a head is tried for leaks."""

from __future__ import annotations

from calc.core.drawing import Area, Drawing
from scripts.pictures.pen import Shapes, arrow, bow, line, note, placed, rect, right, sketch, words, wrong
from scripts.pictures.sheet import Sheet


def chamber_filled(sheet: Sheet) -> Drawing:
    """The plate's hole at the highest place, and the bottom of the burette's curve."""
    bowl = tuple((x, y * 0.75 - 2) for x, y in bow((0, 0), 64, 180, 360))
    bubble = tuple((x, y * 0.6) for x, y in bow((-38, 0), 18, 180, 360))

    def chamber(lean: float, trapped: bool) -> Shapes:
        """A head, chamber up, closed by a plate with its hole to the right, liquid up to the plate."""
        return placed(
            (
                Area(((-84, 0), (-64, 0), *bowl, (64, 0), (84, 0), (84, -64), (-84, -64)), "a"),
                Area(((-64, 0), *bowl, (64, 0)), "", "liquid"),
                Area(bubble, "") if trapped else (),
                rect(-88, 0, 28, 7),
                rect(44, 0, 88, 7),
                line((28, 3), (44, 3)),
            ),
            0,
            0,
            lean,
        )

    def burette(eye: float) -> Shapes:
        curve_ = ((-9, 30), (-7, 26), (0, 24), (7, 26), (9, 30))
        return (
            Area(((-9, -44), *curve_, (9, -44)), "", "liquid"),
            line((-9, 66), (-9, -44)),
            line((9, 66), (9, -44)),
            *(line((-9, y), (-3, y), style="thin") for y in range(-36, 60, 10)),
            line((-24, 24), (52, 24 + eye), style="dim"),
            Area(((52, 24 + eye), (64, 31 + eye), (64, 17 + eye)), "solid"),
        )

    return sketch(
        "Hole at the highest place, eye level with the liquid's curve",
        "A chamber under its plate, and a burette, each twice. Right: the head is tilted a little so that"
        " the plate's hole lies highest, and no bubble is left. Wrong: the hole lies low, and a bubble"
        " stays under the plate. Right: the eye is level with the bottom of the liquid's curve. Wrong: the"
        " eye looks down on it and reads it too high.",
        placed((chamber(5, False), arrow((52, 56), (40, 14))), 90, 296, 0, 0.92),
        right(10, 208, "hole highest,", "no bubble"),
        placed(chamber(-5, True), 270, 296, 0, 0.92),
        note(206, 350, (236, 293), "bubble", anchor="middle"),
        wrong(190, 208, "a bubble stays"),
        placed(burette(0), 72, 106),
        right(10, 34, "level with the", "bottom of the curve"),
        placed(burette(32), 250, 106),
        wrong(190, 34, "eye too high"),
    )


def port_step(sheet: Sheet) -> Drawing:
    """A step may fall away in the flow, never face it."""

    def joint(before: float, behind: float) -> Shapes:
        """Two walls of a port at a joint in the middle, half as wide as given, flow to the right."""
        return (
            *(
                shape
                for s in (-1, 1)
                for shape in (
                    rect(-78, s * before, -1.5, s * 44, "b"),
                    rect(1.5, s * behind, 78, s * 44, "a"),
                )
            ),
            line((-1.5, -44), (-1.5, 44), style="thin"),
            *arrow((-66, 0), (-30, 0)),
        )

    def passes(y: float) -> Shapes:
        return arrow((-22, y), (10, y), (56, y + (4 if y > 0 else -4)))

    def turned_back(y: float) -> Shapes:
        s = 1 if y > 0 else -1
        return arrow((-30, y), (-10, y), (-6, y - s * 7), (-20, y - s * 12))

    return sketch(
        "At the joint a step may only fall away in the direction of the flow",
        "Four joints of a port and its manifold, flow from left to right. Intake, right: the manifold,"
        " first in the flow, is smaller than the head, and the step falls away. Intake, wrong: the manifold"
        " is larger, and the head's edge faces the flow. Exhaust, right: the pipe is larger than the head."
        " Exhaust, wrong: the pipe is smaller, and its edge faces the flow.",
        words(92, 314, "intake: manifold, head", anchor="middle"),
        words(268, 314, "exhaust: head, pipe", anchor="middle"),
        placed((joint(22, 28), passes(18), passes(-18)), 92, 256),
        right(12, 192, "head larger"),
        placed((joint(22, 28), passes(18), passes(-18)), 268, 256),
        right(190, 192, "pipe larger"),
        placed((joint(30, 20), turned_back(25), turned_back(-25)), 92, 126),
        wrong(12, 62, "head smaller:", "its edge faces", "the flow"),
        placed((joint(30, 20), turned_back(25), turned_back(-25)), 268, 126),
        wrong(190, 62, "pipe smaller:", "its edge faces", "the flow"),
    )


def guide_boss(sheet: Sheet) -> Drawing:
    """The boss rounded like a boat, and one that was cut off."""

    def port(boss: Shapes, guide: float) -> Shapes:
        return (
            rect(-80, 40, 80, 62, "a"),
            *boss,
            rect(-8, guide, 8, 62, "b"),
            rect(-3.5, -58, 3.5, 74),
            rect(-80, -50, -4, -62, "a"),
            rect(4, -50, 80, -62, "a"),
            *arrow((-76, 0), (-46, 0)),
        )

    boat = Area(((-64, 41), (-40, 34), (-16, 6), (-10, 0), (10, 0), (18, 6), (52, 34), (72, 41)), "a")
    return sketch(
        "Round the boss off along the flow, and leave its length",
        "A guide boss in the roof of a port, seen from the side, flow from the left, twice. Right: it runs"
        " out to both sides like the nose and tail of a boat and keeps its length. Wrong: boss and guide"
        " are cut off at the roof, and the stem is held by what is left.",
        placed(port((boat,), -8), 92, 130),
        right(10, 40, "nose and tail", "long, length left"),
        placed(port((), 40), 268, 130),
        wrong(188, 40, "cut off: the guide", "is short, the stem", "rocks and stays hot"),
    )


def sealing_step(sheet: Sheet) -> Drawing:
    """The cylinder bears on the step, and on no fin."""

    def mouth(fin: float) -> Shapes:
        """The edge of a chamber, mouth down, and the cylinder under it; the fin hangs down by that."""
        head = ((-70, 66), (80, 66), (80, 44), (40, 44), (40, 0), (14, 0), (14, 6), (8, 12), (-70, 40))
        return (
            Area(head, "a"),
            rect(52, fin, 80, 44, "a"),
            Area(((14, -64), (40, -64), (40, -26), (80, -26), (80, -12), (40, -12), (40, 0), (14, 0)), "b"),
            rect(-70, -64, 14, -30, "c"),
        )

    return sketch(
        "After the cut the cylinder bears on the step, and on no fin",
        "The rim of a chamber on its cylinder, cut, twice. Right: the cylinder's face bears on the sealing"
        " step, and the fins of head and cylinder stand clear of each other. Wrong: after the cut a fin of"
        " the head touches the cylinder, and the step no longer seals.",
        placed((mouth(2), line((14, 0), (40, 0), style="band")), 90, 130),
        note(92, 208, (112, 130), "sealing step", anchor="end"),
        right(8, 40, "on the step,", "fins stand clear"),
        placed((mouth(-12), line((52, -12), (80, -12), style="band")), 268, 130),
        note(300, 208, (332, 118), "fin touches", anchor="end"),
        wrong(188, 40, "on a fin,", "the step leaks"),
    )


def leak_ways(sheet: Sheet) -> Drawing:
    """Vacuum in the port draws the valve shut, air in the port pushes it open."""

    def head(up: float) -> Shapes:
        """A valve in its seat, chamber above, port below, the valve lifted by that."""
        half = ((44, 12), (44, 6), (30, -8), (8, -16), (4, -30), (4, -96))
        outline = (*half, *((-x, y) for x, y in reversed(half)))
        valve = Area(tuple((x, y + up) for x, y in outline), "")
        return (
            Area(((47, 9), (32, -6), (32, -34), (80, -34), (80, 22), (47, 22)), "a"),
            rect(5, -88, 80, -70, "a"),
            Area(
                ((-47, 9), (-32, -6), (-32, -70), (-5, -70), (-5, -88), (-80, -88), (-80, 22), (-47, 22)), "a"
            ),
            valve,
        )

    return sketch(
        "Vacuum draws the valve shut, air pushes it open",
        "A valve on its seat, chamber above and port below, twice. Left: a cup on the port draws air out, and"
        " the valve is drawn onto its seat. Right: air is let into the port, and the valve is pushed off its"
        " seat unless its own spring is fitted.",
        placed((head(0), arrow((0, 44), (0, 20)), arrow((56, -52), (88, -52))), 84, 156),
        words(10, 40, "vacuum in the port:", "drawn shut"),
        placed((head(9), arrow((18, 24), (18, 48)), arrow((86, -52), (54, -52))), 270, 156),
        words(182, 40, "air in the port: pushed", "open, if its own spring", "does not hold it"),
    )
