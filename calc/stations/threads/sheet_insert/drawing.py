"""The sheet and what sits in it, cut through the axis; the sheet's upper face is at 0."""

from calc.core.drawing import Dimension, Drawing, Label, Line
from calc.core.result import say
from calc.stations.shared.drawings import Points, on_both_sides
from calc.stations.threads.sheet_insert.asked import CLINCH, COLLAR, RIVET, SCREW, WAYS, In
from calc.stations.threads.sheet_insert.made import Made

NAMES = {COLLAR: "pilot hole", SCREW: "hole"}


def section(i: In, made: Made) -> Drawing:
    t, hole, across = float(i.thickness), float(made.hole), float(made.across)
    wide, above = 1.4 * across + 4 * t, 0.5 * across
    # how far it reaches under the sheet's upper face
    reach = {RIVET: t + 1.2 * hole, CLINCH: t + 0.6 * hole, COLLAR: float(i.height) * t, SCREW: t + hole}[
        i.way
    ]
    if i.way == COLLAR:
        width = Dimension((-across / 2, -reach), (across / 2, -reach), made.across, -0.5 * across, "D_a")
    else:
        width = Dimension((-hole / 2, -reach), (hole / 2, -reach), made.hole, -0.5 * across, "D_h")
    return Drawing(
        WAYS[i.way],
        say(
            "Section: sheet of {t}, " + NAMES.get(i.way, "hole") + " {h}, {a} across what sits in it.",
            t=i.thickness,
            h=made.hole,
            a=made.across,
        ),
        (
            *on_both_sides(*_faces(i.way, t, hole, across, float(made.bore), wide, reach)),
            Line(((0, above), (0, -reach - 0.3 * across)), "centre"),
            width,
            Label((-wide, above), say("sheet {t}", t=i.thickness), "start", (-0.8 * wide, 0)),
        ),
        "" if i.way == COLLAR else "hole and sheet to scale, the rest as a sketch",
    )


def _faces(
    way: str, t: float, hole: float, across: float, bore: float, wide: float, reach: float
) -> tuple[tuple[Points, str], ...]:
    """Cut faces right of the axis: the sheet, and what sits in it."""
    a, r, b = across / 2, hole / 2, bore / 2
    if way == COLLAR:
        return ((((b, 0), (wide, 0), (wide, -t), (a, -t), (a, -reach), (b, -reach)), "a"),)
    sheet = ((r, 0), (wide, 0), (wide, -t), (r, -t))
    nut: Points
    if way == RIVET:
        nut = (
            (b, 0.12 * hole),
            (a, 0.12 * hole),
            (a, 0),
            (r, 0),
            (r, -t),
            (a, -t),
            (a, -t - 0.3 * hole),
            (r, -t - 0.4 * hole),
            (r, -reach),
            (b, -reach),
        )
    elif way == CLINCH:
        nut = ((b, 0), (r, 0), (r, -t), (a, -t), (a, -reach), (b, -reach))
    else:
        nut = (
            (0, 0.4 * across),
            (1.6 * b, 0.4 * across),
            (1.9 * a, 0),
            (b, 0),
            (b, -reach),
            (0, -reach - 0.6 * b),
        )
    return (sheet, "a"), (nut, "b")
