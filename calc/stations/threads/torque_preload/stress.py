"""What the preload does to the bolt: pull and twist together as it is tightened, and hot with half the twist
left."""

from typing import NamedTuple

from calc.core.working import Number, greatest, step
from calc.formulas import bolt_torque
from calc.reference import sources
from calc.stations.shared.bolts import TARGET
from calc.stations.shared.clamped import hot_preload
from calc.stations.shared.forms import FRICTION, MPA
from calc.stations.threads.torque_preload.asked import In
from calc.stations.threads.torque_preload.bolt import Bolt
from calc.stations.threads.torque_preload.tightening import Tightening
from calc.stations.threads.torque_preload.told import Out


class Stress(NamedTuple):
    """`twist_slippery`: shear over tension at the slippery end. `hotter`: is it worse hot than while it is
    tightened? `most` and `torque_most` are those that use 90 % of yield."""

    meant: Number
    twist_slippery: Number
    hot: Number
    hotter: bool
    used: Number
    used_most: Number
    most: Number
    torque_most: Number


def stress_in(bolt: Bolt, made: Tightening, i: In) -> Stress:
    twist = step(
        "κ",
        "Shear over tension",
        FRICTION,
        bolt_torque.twist(bolt.stress_diameter, made.meant.thread),
        sources.VDI_2230,
    )
    twist_slippery = step(
        "κ_s",
        "Shear over tension, slippery thread",
        FRICTION,
        bolt_torque.twist(bolt.stress_diameter, made.slippery.thread),
        sources.VDI_2230,
    )
    meant = Out.stress(bolt_torque.together(made.preload / bolt.area, twist), sources.VDI_2230)
    hot = Out.hot(hot_preload(made.preload, i.clamped, i.hot, i.hot_force, made.high), sources.PRACTICE)
    tightening = step(
        "σ_s",
        "Stress with a slippery thread while it is tightened",
        MPA,
        bolt_torque.together(made.high / bolt.area, twist_slippery),
        sources.VDI_2230,
    )
    running = step(
        "σ_h",
        "Stress with a slippery thread, hot: half the twist is left",
        MPA,
        bolt_torque.running(hot / bolt.area, twist_slippery, made.high / bolt.area),
        sources.VDI_2230,
    )
    used = Out.used(meant / bolt.yields)
    used_most = Out.used_high(greatest(tightening, running) / bolt.yields, sources.VDI_2230)
    most = Out.most(TARGET * bolt.yields * bolt.area / bolt_torque.together(1, twist), sources.VDI_2230)
    torque_most = Out.torque_most(most * made.meant.nut, sources.ISO_16047)
    return Stress(meant, twist_slippery, hot, running > tightening, used, used_most, most, torque_most)
