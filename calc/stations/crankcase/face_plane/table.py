"""Place by place: how far above or below the best plane, and what a cut takes there."""

from calc.core.result import Table
from calc.core.working import constant
from calc.stations.crankcase.face_plane.asked import In
from calc.stations.crankcase.face_plane.face import Face
from calc.stations.shared.forms import SIZE


def place_by_place(i: In, face: Face) -> Table:
    lowest = min(h for _, _, h in face.points)
    return Table(
        "Place by place",
        ("Place", "Above the best plane", "Above the lowest place", "Cut takes there"),
        tuple(
            (
                name,
                constant("", "", SIZE, h - face.plane.at(x, y)),
                constant("", "", SIZE, h - lowest),
                constant("", "", SIZE, h - lowest + float(i.allowance)),
            )
            for name, (x, y, h) in zip(face.names, face.points)
        ),
    )
