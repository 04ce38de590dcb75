"""Events from durations and centres, and back."""

import math
from typing import NamedTuple

from calc.core.result import impossible
from calc.core.working import Number, constant
from calc.reference import sources
from calc.stations.cam.valve_timing.asked import EVENTS, In
from calc.stations.cam.valve_timing.told import Out
from calc.stations.shared.forms import DEGREES

MOST_OVERLAP = math.radians(150)
DURATIONS = math.radians(150), math.radians(360)


class Timing(NamedTuple):
    """Events, durations and centres of both valves, rad of the crank, with the signs of their names."""

    in_opens: Number
    in_closes: Number
    ex_opens: Number
    ex_closes: Number
    in_duration: Number
    ex_duration: Number
    in_centre: Number
    ex_centre: Number
    overlap: Number
    separation: Number
    advance: Number


def timing_of(i: In) -> Timing:
    half = constant("π", "Half a turn", DEGREES, math.pi)
    if i.known == EVENTS:
        io, ic = Out.in_opens(i.intake_opens), Out.in_closes(i.intake_closes)
        eo, ec = Out.ex_opens(i.exhaust_opens), Out.ex_closes(i.exhaust_closes)
        d_i, d_e = Out.in_duration(io + half + ic, sources.TIMING), Out.ex_duration(eo + half + ec)
        for field, duration in (("intake_closes", d_i), ("exhaust_opens", d_e)):
            if not DURATIONS[0] <= float(duration) <= DURATIONS[1]:
                raise impossible(
                    field,
                    "makes this valve open for {d}; give events that leave 150 to 360° between them, minus"
                    " where one lies on the other side of its dead centre",
                    d=duration,
                )
        c_i, c_e = Out.in_centre(d_i / 2 - io, sources.TIMING), Out.ex_centre(d_e / 2 - ec)
    else:
        d_i, d_e = Out.in_duration(i.intake_duration), Out.ex_duration(i.exhaust_duration)
        c_i, c_e = Out.in_centre(i.intake_centre), Out.ex_centre(i.exhaust_centre)
        io, ic = Out.in_opens(d_i / 2 - c_i, sources.TIMING), Out.in_closes(d_i / 2 + c_i - half)
        eo, ec = Out.ex_opens(d_e / 2 + c_e - half), Out.ex_closes(d_e / 2 - c_e)
    overlap = Out.overlap(io + ec, sources.TIMING)
    if float(overlap) > MOST_OVERLAP:
        raise impossible(
            "intake_opens" if i.known == EVENTS else "intake_duration",
            "makes both valves open for {o} together; give less, or minus where an event lies on the other"
            " side of its dead centre",
            o=overlap,
        )
    separation = Out.separation((c_i + c_e) / 2)
    advance = Out.advance(separation - c_i)
    return Timing(io, ic, eo, ec, d_i, d_e, c_i, c_e, overlap, separation, advance)
