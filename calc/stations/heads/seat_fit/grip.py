"""The ring in its pocket: what grip it has at each heat, what of that is lost for good, and which ring would
serve."""

from typing import NamedTuple

from calc.core.working import Number, greatest, least, step
from calc.formulas import press_fit as fit
from calc.reference import sources
from calc.stations.heads.seat_fit.asked import In
from calc.stations.heads.seat_fit.heats import Case, four_heats
from calc.stations.heads.seat_fit.told import Out
from calc.stations.shared.forms import SIZE
from calc.stations.shared.ring_in_wall import Joint, Window, bearing_interference


class Grip(NamedTuple):
    """`left` is the least that is left of all, at the heat called `when`."""

    cold: Case
    warming: Case
    running: Case
    stopped: Case
    interference: Number
    hot: Number
    stop: Number
    lost: Number
    spare: Number
    left: Number
    when: str
    pressure: Number
    pressure_hot: Number
    ring_used: Number
    head_used: Number
    serving: Window

    @property
    def cases(self) -> tuple[Case, ...]:
        return self.cold, self.warming, self.running, self.stopped

    @property
    def hardest(self) -> Case:
        """The heat at which the least is to spare."""
        return min(self.cases, key=lambda case: float(case.spare))

    @property
    def warming_presses_hardest(self) -> bool:
        of_all = max(float(self.ring_used), float(self.head_used))
        of_warming = max(float(self.warming.ring_used), float(self.warming.head_used))
        return self.hardest is self.warming or of_warming >= of_all


def grip_in_pocket(i: In, joint: Joint) -> Grip:
    """What yields in one heat is gone in all of them."""
    grip = Out.interference(i.ring_outside - i.pocket_bore)
    loss, bearing = bearing_interference(grip, i.ring_roughness, i.pocket_roughness)
    cold, _, running, stopped = cases = four_heats(i, joint, bearing)
    lost = Out.lost(greatest(*(case.lost for case in cases)))
    spare = Out.spare(least(*(case.spare for case in cases)))
    hot = Out.interference_hot(running.bears - lost)
    stop = Out.interference_stopped(stopped.bears - lost)
    left, when = min(
        (
            (step("δ_1", "Interference left of all, at least", SIZE, case.bears - lost), case.heat.when)
            for case in cases
        ),
        key=lambda pair: float(pair[0]),
    )
    pressure = Out.pressure(
        fit.contact_pressure(bearing - cold.lost, i.pocket_bore, cold.heat.give), sources.LAME
    )
    pressure_hot = Out.pressure_hot(fit.contact_pressure(hot, i.pocket_bore, running.heat.give), sources.LAME)
    ring_used = Out.ring_used(greatest(*(case.ring_used for case in cases)), sources.MISES)
    head_used = Out.head_used(greatest(*(case.head_used for case in cases)), sources.MISES)
    serving = Window(
        Out.ring_wanted(
            i.pocket_bore + loss + i.least_grip + greatest(*(bearing - case.bears for case in cases[1:]), 0.0)
        ),
        Out.ring_most(
            i.pocket_bore + loss + least(*(case.begins + (bearing - case.bears) for case in cases))
        ),
    )
    return Grip(
        *cases,
        grip,
        hot,
        stop,
        lost,
        spare,
        left,
        when,
        pressure,
        pressure_hot,
        ring_used,
        head_used,
        serving,
    )
