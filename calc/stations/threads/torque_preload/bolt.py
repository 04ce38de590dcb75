"""The bolt that is tightened: the sizes of its thread, what rubs, and where it yields."""

from typing import NamedTuple

from calc.core.result import impossible
from calc.core.working import PI, Number, constant, sqrt, step
from calc.formulas import bolt_torque
from calc.reference import sources
from calc.reference.standards.threads import THREADS, Thread, stress_area
from calc.stations.shared import bolts
from calc.stations.shared import thread_sizes as sizes
from calc.stations.shared.forms import FRICTION, SECTION, SIZE
from calc.stations.threads.torque_preload.asked import In


class Bolt(NamedTuple):
    thread: Thread
    nominal: Number
    area: Number
    stress_diameter: Number
    turned: bolts.Turned
    yields: Number


def bolt_of(i: In) -> Bolt:
    thread = THREADS[i.thread]
    pitch, nominal, pitch_diameter = sizes.basic(thread)
    area = constant("A_s", "Stress area", SECTION, stress_area(thread), sources.STRESS_AREA)
    stress_diameter = step("d_s", "Diameter of that area", SIZE, sqrt(4 * area / PI), sources.STRESS_AREA)
    bearing = bolts.rubs_on(i.bearing, nominal)
    in_thread, under_head = i.thread_friction, i.head_friction
    if i.nut_factor is not None:
        in_thread = under_head = _friction_meant(i.nut_factor, nominal, pitch, pitch_diameter, bearing)
    yields = bolts.yield_stress(i.strength, thread.d) if i.yields is None else i.yields
    return Bolt(
        thread,
        nominal,
        area,
        stress_diameter,
        bolts.Turned(pitch, pitch_diameter, bearing, in_thread, under_head),
        yields,
    )


def _friction_meant(
    nut_factor: Number, nominal: Number, pitch: Number, pitch_diameter: Number, bearing: Number
) -> Number:
    """Friction, the same in thread and under the nut, that a nut factor stands for; refuses one that leaves
    none."""
    friction = step(
        "µ",
        "Friction that the nut factor means",
        FRICTION,
        bolt_torque.friction_of(nut_factor, nominal, pitch, pitch_diameter, bearing),
        sources.ISO_16047,
    )
    if friction <= 0:
        raise impossible(
            "nut_factor", "is {k}, less than the slope of the thread alone takes; give more", k=nut_factor
        )
    return friction
