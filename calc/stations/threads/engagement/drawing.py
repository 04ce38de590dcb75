"""Force at which each thread strips over the length engaged, and that which breaks the bolt."""

from calc.core.drawing import Axis, Plot, Series
from calc.core.result import say
from calc.core.working import Number
from calc.reference.standards.threads import Thread
from calc.stations.shared.forms import KILONEWTON, ROUGH
from calc.stations.threads.engagement.asked import In
from calc.stations.threads.engagement.forces import Forces
from calc.stations.threads.engagement.shear import LEAST_TURNS


def force_over_length(i: In, thread: Thread, forces: Forces) -> Plot:
    L, breaks = float(i.length), float(forces.breaks)
    weaker = min(float(forces.hole_strips), float(forces.bolt_strips))
    start, end = LEAST_TURNS * thread.P, max(1.5 * L, min(1.5 * float(forces.wanted), 3 * thread.d))
    top = 1.2 * max(breaks, weaker * end / L)

    def line(force: Number) -> tuple:
        """Stripping force over length, as far as the figure goes."""
        until = max(min(end, top * L / float(force)), 1.01 * start)
        return tuple((x, float(force) * x / L) for x in (start, until))

    return Plot(
        "Force over length of engagement",
        say(
            "At {l} the hole's thread strips at {n}, the bolt's at {s}; the bolt breaks at {b}.",
            l=i.length,
            n=forces.hole_strips,
            s=forces.bolt_strips,
            b=forces.breaks,
        ),
        Axis("Full threads engaged", ROUGH),
        Axis("Force", KILONEWTON),
        (
            Series("hole strips", line(forces.hole_strips)),
            Series("bolt strips", line(forces.bolt_strips), "dashed"),
            Series("bolt breaks", ((start, breaks), (end, breaks)), "limit"),
        ),
        ((L, weaker, "yours"),),
    )
