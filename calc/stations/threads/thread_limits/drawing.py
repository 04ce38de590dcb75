"""Both threads cut along the axis over two pitches; deviations drawn larger than they are, by as much as
makes them plain."""

from calc.core.drawing import Area, Drawing, Label, Line
from calc.core.result import say
from calc.reference.standards.threads import HEIGHT, Limits, Thread, Zone
from calc.stations.shared.drawings import Points
from calc.stations.shared.thread_sizes import length, tolerance_of

ENLARGED = 2  # more, and the widest tolerances would eat up the thread


def profile(thread: Thread, hole: Limits, bolt: Limits) -> Drawing:
    P, H = thread.P, HEIGHT * thread.P
    low, high = -0.95 * H, 1.05 * H
    bolt_near, bolt_far = _outlines(thread, bolt.pitch, bolt.major)
    hole_near, hole_far = _outlines(thread, hole.pitch, hole.minor)
    shapes = (
        Area((*bolt_far, (2 * P, low), (0, low)), "a"),
        Area((*bolt_near, *reversed(bolt_far)), "c"),
        Area((*hole_far, (2 * P, high), (0, high)), "b"),
        Area((*hole_near, *reversed(hole_far)), "c"),
        Line(bolt_near),
        Line(hole_near),
        Line(((-0.1 * P, 0), (2.1 * P, 0)), "centre"),
        Label((-0.12 * P, high - 0.15 * H), f"hole {hole.name}", "end"),
        Label((-0.12 * P, low + 0.05 * H), f"bolt {bolt.name}", "end"),
        Label((-0.12 * P, -0.04 * H), "pitch line", "end"),
    )
    return Drawing(
        "Threads and their tolerances",
        say(
            "Hole {h} above, bolt {b} below, cut along the axis; the closely hatched bands are the"
            " tolerances: {tb} on the bolt's pitch diameter, {th} on the hole's.",
            h=hole.name,
            b=bolt.name,
            tb=length(tolerance_of(bolt.pitch)),
            th=length(tolerance_of(hole.pitch)),
        ),
        shapes,
        f"play and tolerances drawn {ENLARGED} times as large as they are",
    )


def _outlines(thread: Thread, pitch: Zone, crest: Zone) -> tuple[Points, Points]:
    """At most material and at least; a crest's deviation is the pitch diameter's."""
    near = pitch.deviation
    return (
        _outline(thread, pitch.inward, near, near),
        _outline(thread, pitch.inward, near + tolerance_of(pitch), near + tolerance_of(crest)),
    )


def _outline(thread: Thread, way: int, pitch: float, crest: float) -> Points:
    """Points of a thread whose pitch and crest diameters lie so far within (`way` −1, a bolt) or outside (+1,
    a hole) their basic sizes."""
    P, H = thread.P, HEIGHT * thread.P
    flank, plain = way * ENLARGED * pitch / 2, way * ENLARGED * crest / 2
    root_moved, tip_moved = (flank, plain) if way < 0 else (plain, flank)
    points = []
    for i in range(65):
        x = 2 * P * i / 64
        sharp = H / 2 - H * abs((x / P) % 1 - 0.5) * 2  # height of the sharp triangle over the pitch line
        points.append((x, min(max(sharp + flank, -H / 4 + root_moved), 3 * H / 8 + tip_moved)))
    return tuple(points)
