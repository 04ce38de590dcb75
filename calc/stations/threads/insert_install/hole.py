"""The hole that is tapped for the insert: its thread, by the insert's outside, and the drill before it."""

from typing import NamedTuple

from calc.core.result import impossible
from calc.core.working import Number
from calc.reference import sources
from calc.reference.standards import drills
from calc.reference.standards.threads import HEIGHT, THREADS, Thread, external, internal
from calc.stations.shared import thread_sizes as sizes
from calc.stations.shared.forms import COARSE
from calc.stations.threads.insert_install.asked import UNTOLD, WIRE, In
from calc.stations.threads.insert_install.told import Out

# Pitches over the basic minor diameter: common practice, no source; nearer, and the tap binds.
DRILL_OVER = 0.02


class Hole(NamedTuple):
    """`nominal` is the stud's diameter. `play_major` and `play_pitch` are what the pair's limits take off the
    thread's outside and add to the hole's pitch diameter at most."""

    nominal: Number
    stud_pitch: Number
    major: Number
    pitch: Number
    play_major: Number
    play_pitch: Number
    pitch_diameter: Number
    minor: Number
    drill: Number


def hole_of(i: In) -> Hole:
    stud = THREADS[i.thread]
    stud_pitch, nominal = sizes.pitch(stud), sizes.nominal(stud)
    if i.kind == WIRE:
        major, pitch = Out.major(nominal + 1.5 * HEIGHT * stud_pitch, sources.STI), stud_pitch
        play_major, play_pitch = _play(stud)
    else:
        major, pitch, play_major, play_pitch = _solid(stud, i.outside)
    pitch_diameter = Out.pitch_diameter(major - 0.75 * HEIGHT * pitch, sources.STI)
    minor = Out.minor(major - 1.25 * HEIGHT * pitch, sources.STI)
    if i.edge <= major / 2:
        raise impossible(
            "edge",
            "is {e}, and the tapped hole of {D} would cut into the edge; give more than {r}",
            e=i.edge,
            D=major,
            r=sizes.length(major / 2, COARSE),
        )
    drill = sizes.known(
        "D_s",
        "Next drill that is sold",
        _next_drill(float(minor), float(pitch), stud.system),
        sources.DRILLS,
        COARSE,
    )
    return Hole(
        nominal,
        stud_pitch,
        major,
        pitch,
        play_major,
        play_pitch,
        pitch_diameter,
        minor,
        Out.drill(drill, sources.DRILLS),
    )


def _solid(stud: Thread, outside: str) -> tuple[Number, Number, Number, Number]:
    """Basic major diameter and pitch of the thread on a solid insert's outside, and the play of its
    limits."""
    if outside == UNTOLD:
        raise impossible(
            "outside",
            "is not told, and a solid insert may have any; choose what its packet says, such as M14x1.5",
        )
    thread = THREADS[outside]
    if thread.root <= stud.d:
        raise impossible(
            "outside",
            "is {o}, which leaves no wall round {i}; choose a larger one",
            o=thread.words,
            i=stud.words,
        )
    source = sizes.standard(thread)
    pitch = sizes.known("P_o", "Pitch of the insert's outside", thread.P, source)
    nominal = sizes.known("D_o", "Nominal diameter of the insert's outside", thread.d, source)
    return Out.major(nominal, source), pitch, *_play(thread)


def _play(thread: Thread) -> tuple[Number, Number]:
    """What the limits of the usual pair take off the outside, and add to the hole's pitch diameter, at
    most."""
    hole_class, bolt_class = sizes.CLASSES["usual"][thread.system]
    outside_least, _ = sizes.least_and_most(external(thread, bolt_class).major)
    _, pitch_most = sizes.least_and_most(internal(thread, hole_class).pitch)
    source = sizes.standard(thread)
    return (
        sizes.known(
            "a_d", f"Outside under its nominal size, {bolt_class} at most", thread.d - outside_least, source
        ),
        sizes.known(
            "a_2",
            f"Hole's pitch diameter over its nominal size, {hole_class} at most",
            pitch_most - thread.pitch_diameter,
            source,
        ),
    )


def _next_drill(minor: float, pitch: float, system: str) -> float:
    """The next drill a fiftieth of the pitch or more over the basic minor diameter, m; that size itself, to
    be bored, where none is so large."""
    sold = drills.LISTS["metric" if system == "metric" else "inch"]
    wanted = minor + DRILL_OVER * pitch
    return next((drill.size for drill in sold if drill.size >= wanted - 1e-9), wanted)
