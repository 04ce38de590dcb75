"""How much longer the bolt gets for each newton, as it is read."""

from calc.core.kinds import COMPLIANCE
from calc.core.working import PI, Number, form, step
from calc.formulas import rod_load
from calc.reference import sources
from calc.stations.rods.rod_bolt.asked import ENDS, In
from calc.stations.rods.rod_bolt.bolt import Bolt
from calc.stations.shared import thread_sizes as sizes
from calc.stations.shared.forms import SECTION

COMPLIANT = form(COMPLIANCE, 3)


def stretch_a_newton(i: In, bolt: Bolt) -> Number:
    """Of what lies free between head and nut, or over the bolt's ends."""
    free = step(
        "δ",
        "Stretch for each newton, as shank and free thread in series",
        COMPLIANT,
        rod_load.bolt_give(i.shank_length, bolt.shank_area, i.thread_length, bolt.area, i.stiffness),
        sources.BOLT_SPRINGS,
    )
    core = sizes.known("d_3", "Core of the thread", bolt.thread.root, sizes.standard(bolt.thread))
    nominal_area = step("A_N", "Area of the nominal diameter", SECTION, PI / 4 * bolt.nominal**2)
    core_area = step("A_3", "Area of the core", SECTION, PI / 4 * core**2)
    if i.read_over != ENDS:
        return free
    return step(
        "δ_L",
        "Over the ends, for each newton",
        COMPLIANT,
        free + rod_load.ends_give(bolt.nominal, nominal_area, core_area, i.stiffness),
        sources.VDI_2230,
    )
