"""Play round the gear."""

from calc.core.drawing import Axis, Plot, Series
from calc.core.kinds import RATIO
from calc.core.result import say
from calc.core.working import form
from calc.stations.cam.mesh_backlash.asked import DIAL, In
from calc.stations.cam.mesh_backlash.mesh import Mesh
from calc.stations.shared.forms import SIZE


def round_the_gear(i: In, mesh: Mesh) -> Plot:
    scale = float(i.radius) / float(i.dial_radius) if i.how == DIAL else 1.0
    read = (
        [(float(n), float(row[0]) * scale) for n, row in enumerate(i.readings, 1) if row is not None]
        if i.how == DIAL
        else [(1.0, float(mesh.mean)), (2.0, float(mesh.mean))]
    )
    ends = (read[0][0], read[-1][0])
    return Plot(
        "Play round the gear",
        say("From {a} to {b}.", a=mesh.least, b=mesh.most),
        Axis("Place", form(RATIO, 0)),
        Axis("Backlash on the pitch circle", SIZE),
        (
            Series("", tuple(read), "points" if i.how == DIAL else "line"),
            Series("least", tuple((x, float(i.low)) for x in ends), "limit"),
            Series("most when new", tuple((x, float(i.high)) for x in ends), "limit"),
        ),
    )
