"""The grip of a pair of shells, and the stress that it puts into shell and housing."""

from typing import NamedTuple

from calc.core.working import PI, Number, greatest, least, step
from calc.formulas import press_fit as fit
from calc.formulas import shell_fit
from calc.reference import sources
from calc.reference.materials import MATERIALS
from calc.stations.crank.shell_crush.asked import In, Pair
from calc.stations.crank.shell_crush.told import Out
from calc.stations.crank.shell_grip import Held, Seat, Told, held
from calc.stations.shared.forms import SIZE
from calc.stations.shared.ring_in_wall import Part, stiffness, strength

TOLD = Told(Out.interference, Out.left_hot, Out.grip, Out.grip_hot, Out.opened)
STEEL = ("forged-steel",)


class Grip(NamedTuple):
    pair: Pair
    held: Held
    hoop: Number
    rigid: Number
    housing_hoop: Number
    shell_used: Number
    housing_used: Number

    @property
    def left(self) -> Number:
        """The lesser of the interference cold and running."""
        return min((self.held.cold.interference, self.held.hot.interference), key=float)


def grip_of(i: In, p: Pair) -> Grip:
    """Stress where the grip is hardest, cold or running; strength where it is hot."""
    proud = greatest(step("a", "Mean of both halves", SIZE, (p.one + p.other) / 2), 0.0)
    housing, shell = MATERIALS[p.metal], MATERIALS[p.shell_metal]
    seat = Seat(
        p.housing,
        p.wall,
        proud,
        p.wall_round,
        housing,
        shell,
        (p.temperature, i.shell_temperature),
        (p.field("temperature"), "shell_temperature"),
    )
    grip = held(seat, TOLD)
    hardest = greatest(grip.cold.pressure, grip.hot.pressure)
    hoop = Out.hoop(shell_fit.mean_hoop(hardest, p.housing, p.wall), sources.SHELL_CRUSH)
    E = stiffness(Part(shell, "s", "shells"))
    rigid = Out.rigid(-2 * E * proud / (PI * p.housing), sources.SHELL_CRUSH)
    housing_hoop = Out.housing_hoop(fit.outer_joint_hoop(hardest, p.housing, grip.outside), sources.LAME)
    at = min(shell.yield_20, shell.compressive_yield_at(i.shell_temperature))
    bears = strength(Part(shell, "s,20", "shells"), at)
    if p.shell_metal in STEEL:
        bears = least(bears, i.soft)
    wall = strength(Part(housing, "h", "housing"), housing.yield_at(p.temperature))
    return Grip(
        p,
        grip,
        hoop,
        rigid,
        housing_hoop,
        Out.shell_used(-hoop / bears),
        Out.housing_used(housing_hoop / wall),
    )
