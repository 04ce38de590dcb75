"""What a way of fastening makes of the sheet."""

from typing import NamedTuple

from calc.core.result import Judged, Limit, Source
from calc.core.working import Number, constant, least, step
from calc.reference import sources
from calc.reference.standards.threads import Thread, stress_area
from calc.stations.shared import thread_sizes as sizes
from calc.stations.shared.forms import MPA, NEWTON, SECTION
from calc.stations.threads.sheet_insert.told import Out

NUT_FACTOR = 0.2  # dry; common practice, no source
# Pa, proof stress of a screw 8.8 up to 16 mm (ISO 898-1, from memory). What the sheet may bear beyond it, no
# usual screw does.
PROOF = 580e6


class Borne(NamedTuple):
    """The pull and the torque that the weaker of sheet and machine screw bears, and those of the screw."""

    pull: Number
    turn: Number
    screw: tuple[Number, Number]


class Made(NamedTuple):
    """`bore` is the hole through what sits in it; `fault` a verdict where it cannot be made, outside one of
    its own `limits`; `screw` the pull and the torque that a machine screw in it bears."""

    hole: Number
    across: Number
    bore: Number | float
    turns: Number
    pull: Number
    turn: Number
    limits: tuple[Limit, ...]
    fault: Judged | None
    screw: tuple[Number, Number] | None = None


def borne_by_both(
    thread: Thread, sheet_pull: Number, sheet_turn: Number, source: Source, turn_source: Source
) -> Borne:
    """Pull and torque that sheet and machine screw bear together."""
    proof = step(
        "F_8",
        "What a screw 8.8 bears, by its proof stress",
        NEWTON,
        constant("S_p", "Proof stress of a screw 8.8", MPA, PROOF, sources.BOLT_CLASSES)
        * constant("A_s", "Its stress area", SECTION, stress_area(thread), sources.STRESS_AREA),
    )
    twist = NUT_FACTOR * sizes.nominal(thread) * proof
    return Borne(
        Out.pull(least(sheet_pull, proof), source),
        Out.turn(least(sheet_turn, twist), turn_source),
        (proof, twist),
    )
