"""Flywheels: where metal may come off, how one is set up, and the corners of a cut."""

from __future__ import annotations

from calc.core.drawing import Area, Drawing, Points
from scripts.pictures.pen import (
    Shapes,
    arrow,
    bow,
    centre,
    line,
    note,
    placed,
    rect,
    right,
    sketch,
    words,
    wrong,
)
from scripts.pictures.sheet import Sheet
from scripts.pictures.tools import dial


def _half(sheet: Sheet) -> tuple[Points, Points]:
    """Section above the axis and the ring gear, mm: x along the axis, engine's side at 0."""
    bore, seat = sheet.mm("flywheel.register", 40) / 2, sheet.mm("flywheel.gear_seat", 256) / 2
    face, step = sheet.mm("flywheel.face_thickness", 18), sheet.mm("flywheel.step", 10)
    gear, top = sheet.mm("flywheel.gear_width", 12), sheet.mm("flywheel.outside", 277) / 2
    recess = sheet.mm("flywheel.lining_outside", 200) / 2 + 6
    rim = (
        (0, bore),
        (0, seat),
        (gear, seat),
        (gear, seat + 3),
        (face + step, seat + 3),
        (face + step, recess),
        (face, recess),
        (face, bore),
    )
    return rim, ((0, seat), (gear, seat), (gear, top), (0, top))


def zones(sheet: Sheet) -> Drawing:
    """Half of the section: cut here, leave that alone."""
    rim, gear = _half(sheet)
    cut = rect(0, 107, 8, 120, "c")
    whole = (Area(rim, "a"), Area(gear, "b"), cut, centre((-14, 0), (44, 0)))
    bad = (
        Area(rim, "a"),
        Area(gear, "b"),
        rect(0, 112, 8, 127, "c"),
        rect(0, 24, 8, 60, "c"),
        centre((-14, 0), (44, 0)),
    )
    return sketch(
        "Cut outside the friction face and inside the ring gear's seat, on the engine's side",
        "Half of a flywheel's section above its axis, twice, the engine's side left. Right: a groove"
        " between the"
        " friction face and the seat of the ring gear. Wrong: a cut that leaves a thin wall under the"
        " ring gear, and"
        " one at the root beside the crank.",
        placed(whole, 56, 20),
        note(112, 86, (78, 100), "friction face:", "leave it thick"),
        right(34, 176, "at the rim"),
        placed(bad, 232, 20),
        note(272, 138, (238, 140), "thin wall", "under the gear"),
        note(272, 64, (236, 60), "at the root"),
        wrong(204, 176, "in these places"),
        scale="to scale",
        sizes=sheet,
    )


def set_up(sheet: Sheet) -> Drawing:
    """On a mandrel in the register, and in a chuck on the ring gear."""
    rim, gear = _half(sheet)

    def wheel(times: float) -> Shapes:
        both: list = []
        for way in (1, -1):
            both += [
                Area(tuple((x, way * y) for x, y in part), hatch) for part, hatch in ((rim, "a"), (gear, "b"))
            ]
        return placed((*both, centre((-46, 0), (52, 0))), times=times)

    mandrel = (rect(-34, -15, 0, 15, "c"), rect(0, -8.5, 14, 8.5, "c"), rect(8, -14, 13, 14))
    chuck = (rect(-34, -66, -20, 66, "c"), rect(-20, 56, 7, 66, "c"), rect(-20, -66, 7, -56, "c"))
    return sketch(
        "Set it up by its register, and try register and seating face with a dial",
        "A flywheel in the lathe, cut, twice. Right: it sits on a mandrel that fits its register,"
        " clamped against the"
        " face that sits on the crank, and a dial reads the rim. Wrong: it is held by a chuck on its"
        " ring gear, which"
        " runs true to nothing.",
        placed((wheel(0.42), mandrel), 70, 76),
        placed((line((0, 0), (0, 10)), *dial(0, 20, 10, 20)), 84, 132),
        right(20, 176, "by its register"),
        placed((wheel(0.42), chuck), 250, 76),
        wrong(200, 176, "by its ring gear"),
    )


def corners(sheet: Sheet) -> Drawing:
    """The bottom corner of a groove: round, and sharp with a crack."""

    def block(outline: Points) -> Shapes:
        return (Area(((-60, -46), (60, -46), (60, 40), *outline, (-60, 40)), "a"),)

    round_ = (
        (30, 40),
        (30, 10),
        *bow((10, 10), 20, 0, -90)[0:],
        (-10, -10),
        *bow((-10, 10), 20, 270, 180),
        (-30, 40),
    )
    sharp = ((30, 40), (30, -10), (-30, -10), (-30, 40))
    return sketch(
        "Round every inner corner: a crack begins in a sharp one",
        "A groove in a flywheel, cut, twice. Right: both bottom corners are large rounds and the edges"
        " are broken."
        " Wrong: the corners are sharp, and a crack runs from one of them into the web.",
        placed(block(round_), 84, 58),
        right(8, 112, "round, by 3 mm"),
        placed((block(sharp), line((30, -10), (37, -22), (35, -31), (44, -44), style="band")), 268, 58),
        wrong(208, 112, "a sharp corner"),
        words(232, -5, "and it cracks"),
    )


def gear_side(sheet: Sheet) -> Drawing:
    """Rim and ring gear, cut, with the pinion: chamfers towards it, and away from it."""
    rim = (Area(((0, 0), (56, 0), (56, 40), (34, 40), (34, 30), (0, 30)), "a"),)
    teeth = ((0, 30), (34, 30), (34, 78), (16, 78), (0, 62))
    pinion = (rect(-70, 62, -26, 92), arrow((-22, 77), (-4, 77)))
    turned = tuple((34 - x, y) for x, y in teeth)
    return sketch(
        "The chamfered ends of the teeth face the starter's pinion",
        "Rim and ring gear, cut, twice; the pinion comes from the left. Right: the ends of the teeth"
        " that it meets are"
        " chamfered. Wrong: the ring gear lies the other way round, and the pinion strikes square ends.",
        placed((rim, Area(teeth, "b"), pinion), 92, 10),
        words(25, 83, "pinion"),
        right(16, 122, "chamfers to it"),
        placed((rim, Area(turned, "b"), pinion), 266, 10),
        words(199, 83, "pinion"),
        wrong(194, 122, "square ends to it"),
    )


def gear_heated(sheet: Sheet) -> Drawing:
    """In an oven, hot all round; and with a torch, hot in one place."""
    oven = (rect(-74, -30, 74, 44), rect(-62, -22, 62, -18, "solid"), rect(-52, -18, 52, -8, "b"))
    flame = ((0, 0), (-5, 10), (0, 30), (5, 10))
    torch = (
        rect(-56, -18, 56, -8, "b"),
        placed((Area(flame, ""), rect(-5, 30, 5, 60, "c")), -38, -6),
        line((-62, -18), (62, -18)),
    )
    return sketch(
        "Heat it in an oven: all round, and not past what its teeth bear",
        "A ring gear that is heated, twice. Right: it lies flat in an oven, with a probe on it. Wrong: a"
        " torch heats it in"
        " one place, where its teeth go soft, and the other side stays cold.",
        placed(oven, 88, 44),
        note(84, 64, (118, 31), "probe", anchor="middle"),
        right(16, 106, "in an oven"),
        placed(torch, 272, 44),
        note(270, 66, (236, 32), "soft here"),
        note(296, 8, (322, 31), "cold here", anchor="middle"),
        wrong(200, 106, "with a torch"),
    )


def faces(sheet: Sheet) -> Drawing:
    """Both faces cut alike, and one alone; the dashed line is where they lay before."""

    def rim(face: float, cover: float) -> Shapes:
        return (
            Area(((0, 0), (120, 0), (120, cover), (76, cover), (76, face), (0, face)), "a"),
            line((0, 40), (76, 40), style="hidden"),
            line((76, 64), (120, 64), style="hidden"),
        )

    return sketch(
        "What comes off the friction face comes off the cover's face as well",
        "Part of a flywheel's section, twice, the old faces as hidden lines. Right: friction face and"
        " cover's face are cut by"
        " as much. Wrong: only the friction face was cut, and the step has grown.",
        placed(rim(33, 57), 20, 10),
        words(16, 62, "friction face"),
        words(98, 84, "cover"),
        right(20, 112, "both alike"),
        placed(rim(33, 64), 206, 10),
        words(202, 62, "friction face"),
        words(286, 84, "cover"),
        wrong(206, 112, "one alone"),
        scale="cuts exaggerated",
    )
