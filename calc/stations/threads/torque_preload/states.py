"""What the same torque makes in other states of thread and face."""

from calc.core.result import Table, say
from calc.core.working import constant
from calc.formulas import bolt_torque
from calc.stations.shared.bolts import TARGET
from calc.stations.shared.forms import KILONEWTON, SHARE
from calc.stations.threads.torque_preload.bolt import Bolt

STATES = (
    ("A: wax or molybdenum paste", 0.04, 0.10),
    ("B: oiled or greased", 0.08, 0.16),
    ("C: dry, as it came", 0.14, 0.24),
)  # VDI 2230-1, table A5, from memory


def other_states(torque: float, bolt: Bolt) -> Table:
    rows = tuple(_row(torque, bolt, *state) for state in STATES)
    return Table(
        "The same torque in other states",
        ("Thread and face", "Friction", "Preload", "Share of yield, at most"),
        rows,
        tuple(
            "fail" if float(used) > 1 else "attention" if float(used) > TARGET else "pass"
            for *_, used in rows
        ),
    )


def _row(torque: float, bolt: Bolt, words: str, slick: float, stiff: float) -> tuple:
    least, most = (_preload(torque, bolt, friction) for friction in (stiff, slick))
    return (
        words,
        f"{slick:.2f} to {stiff:.2f}",
        say("{a} to {b}", a=constant("", "", KILONEWTON, least), b=constant("", "", KILONEWTON, most)),
        constant("", "", SHARE, _used(most, bolt, slick)),
    )


def _preload(torque: float, bolt: Bolt, friction: float) -> float:
    thread, bearing = bolt.thread, float(bolt.turned.bearing)
    lever = bolt_torque.lever(thread.P, thread.pitch_diameter, bearing, friction, friction)
    return torque / float(lever)


def _used(preload: float, bolt: Bolt, friction: float) -> float:
    """Share of yield while it is tightened so."""
    lever = bolt_torque.thread_lever(bolt.thread.P, bolt.thread.pitch_diameter, friction)
    twist = bolt_torque.twist(float(bolt.stress_diameter), lever)
    stress = bolt_torque.together(preload / float(bolt.area), twist)
    return float(stress) / float(bolt.yields)
