"""The bolt that holds the cap: its thread and shank, what rubs as it is tightened, and where it yields."""

from typing import NamedTuple

from calc.core.working import PI, Number, constant, least, sqrt, step
from calc.reference import sources
from calc.reference.standards.threads import THREADS, Thread, stress_area
from calc.stations.rods.rod_bolt.asked import In
from calc.stations.shared import bolts
from calc.stations.shared import thread_sizes as sizes
from calc.stations.shared.forms import SECTION, SIZE


class Bolt(NamedTuple):
    """`weakest` is the smaller area of thread and shank, `weakest_diameter` that of a circle of it."""

    thread: Thread
    nominal: Number
    area: Number
    shank_area: Number
    weakest: Number
    weakest_diameter: Number
    turned: bolts.Turned
    yields: Number


def bolt_of(i: In) -> Bolt:
    thread = THREADS[i.thread]
    pitch, nominal, pitch_diameter = sizes.basic(thread)
    area = constant("A_s", "Stress area of the thread", SECTION, stress_area(thread), sources.STRESS_AREA)
    shank_area = step("A_S", "Area of the shank", SECTION, PI / 4 * i.shank**2)
    weakest = step("A_0", "The smaller area of the two", SECTION, least(area, shank_area))
    diameter = step("d_0", "Diameter of that area", SIZE, sqrt(4 * weakest / PI), sources.VDI_2230)
    bearing = bolts.rubs_on(i.bearing, nominal)
    return Bolt(
        thread,
        nominal,
        area,
        shank_area,
        weakest,
        diameter,
        bolts.Turned(pitch, pitch_diameter, bearing, i.thread_friction, i.head_friction),
        bolts.yield_stress(i.strength, thread.d),
    )
