"""The share of yield that the bolt uses at the high end, as it is tightened and when running."""

from calc.core.working import Number, greatest, step
from calc.formulas import bolt_torque
from calc.reference import sources
from calc.stations.rods.rod_bolt.asked import TORQUE, In
from calc.stations.rods.rod_bolt.bolt import Bolt
from calc.stations.rods.rod_bolt.tightening import Tightening
from calc.stations.rods.rod_bolt.told import Out
from calc.stations.shared.forms import FRICTION, MPA


def yield_used(i: In, bolt: Bolt, made: Tightening, pull: Number) -> Number:
    """`pull` is that of the piston on each bolt."""
    twist = step(
        "κ",
        "Shear over tension, " + ("slippery thread" if i.known == TORQUE else "rough thread"),
        FRICTION,
        bolt_torque.twist(bolt.weakest_diameter, made.twisting),
        sources.VDI_2230,
    )
    tightening = step(
        "σ_M",
        "Stress while it is tightened, at most",
        MPA,
        bolt_torque.together(made.high / bolt.weakest, twist),
        sources.VDI_2230,
    )
    running = step(
        "σ_B",
        "Stress when running: half the twist is left",
        MPA,
        bolt_torque.running(
            (made.high + i.joint_share * pull) / bolt.weakest, twist, made.high / bolt.weakest
        ),
        sources.VDI_2230,
    )
    return Out.used(greatest(tightening, running) / bolt.yields, sources.VDI_2230)
