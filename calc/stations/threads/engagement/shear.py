"""The areas that shear where one of the two threads strips, both parts at least material."""

from typing import NamedTuple

from calc.core.result import impossible
from calc.core.working import Number
from calc.formulas import screw_threads
from calc.reference import sources
from calc.reference.standards.threads import Thread
from calc.stations.shared.forms import COARSE
from calc.stations.shared.thread_sizes import known, least_and_most, length, nominal, pair, pitch, standard
from calc.stations.threads.engagement.asked import In
from calc.stations.threads.engagement.told import Out

LEAST_TURNS = 1.5  # fewer full turns are no thread: the formulas want whole ones


class Shear(NamedTuple):
    thread: Thread
    nominal: Number
    pitch: Number
    hole_area: Number
    bolt_area: Number


def shear_of(i: In) -> Shear:
    """Refuses a length that is no thread."""
    thread, hole, bolt = pair(i.size, i.fit)
    if float(i.length) < LEAST_TURNS * thread.P:
        raise impossible(
            "length",
            "is {l}, fewer than one and a half turns of {thread}, which is no thread; give at least {least}",
            l=i.length,
            thread=thread.words,
            least=length(LEAST_TURNS * thread.P, COARSE),
        )
    source, d, P = standard(thread), nominal(thread), pitch(thread)
    major = known("d_min", "Bolt's outside, least", least_and_most(bolt.major)[0], source)
    pitch_least = known("d_2,min", "Bolt's pitch diameter, least", least_and_most(bolt.pitch)[0], source)
    minor = known("D_1,max", "Hole's bore, most", least_and_most(hole.minor)[1], source)
    pitch_most = known("D_2,max", "Hole's pitch diameter, most", least_and_most(hole.pitch)[1], source)
    return Shear(
        thread,
        d,
        P,
        Out.hole_area(screw_threads.hole_shear_area(P, i.length, major, pitch_most), sources.H28),
        Out.bolt_area(screw_threads.bolt_shear_area(P, i.length, pitch_least, minor), sources.H28),
    )
