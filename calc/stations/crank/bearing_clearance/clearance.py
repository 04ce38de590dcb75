"""The clearance of a bearing: by its sizes, as a gauge finds it in the fitted shells, and running."""

from typing import NamedTuple

from calc.core.working import Number, step
from calc.reference import sources
from calc.reference.materials import MATERIALS
from calc.stations.crank.bearing_clearance.asked import Bearing, In
from calc.stations.crank.bearing_clearance.told import Out
from calc.stations.crank.shell_grip import Held, Seat, Told, held
from calc.stations.shared.forms import SIZE
from calc.stations.shared.growth import growth, reference_temperature

TOLD = Told(None, Out.left_hot, Out.grip, Out.grip_hot, Out.opened)


class Clearance(NamedTuple):
    """`tight` and `loose` are sums of the sizes of parts that lie apart, as the engine's sheet counts them;
    `fitted` has in it what the shells' grip opens the housing by."""

    bearing: Bearing
    held: Held
    known: bool  # is it known how hard the shells grip?
    tight: Number
    loose: Number
    fitted: Number
    running: Number
    running_loose: Number


def clearance_of(i: In, b: Bearing) -> Clearance:
    """Of the tightest combination: least bore, thickest shell, largest journal; and of the loosest."""
    bore = step("D_j", "Housing round the shells", SIZE, b.bore + 2 * b.wall) if b.fitted else b.bore
    seat = Seat(
        bore,
        b.wall,
        b.proud,
        b.wall_round,
        MATERIALS[b.metal],
        MATERIALS[b.shell_metal],
        (b.temperature, i.shell_temperature),
        (b.field("temperature"), "shell_temperature"),
    )
    grip = held(seat, TOLD)
    moved = grip.cold.opened - grip.cold.thickened
    if b.fitted:
        fitted = Out.fitted(b.bore - b.journal, sources.CLEARANCE_SUM)
        tight = Out.tight(fitted - moved, sources.CLEARANCE_SUM)
        loose = Out.loose(b.bore_most - moved - b.journal_least, sources.CLEARANCE_SUM)
    else:
        tight = Out.tight(b.bore - 2 * b.wall - b.journal, sources.CLEARANCE_SUM)
        loose = Out.loose(b.bore_most - 2 * b.wall_least - b.journal_least, sources.CLEARANCE_SUM)
        fitted = Out.fitted(tight + moved, sources.CLEARANCE_SUM)
    journal_grows = growth(
        MATERIALS[i.journal_metal],
        i.journal_temperature,
        reference_temperature(),
        "j",
        "journal",
        "journal_temperature",
    )
    # what heat does to housing, shells and journal, beside what it does to the grip
    warm = step(
        "Δ",
        "Clearance gained by heat",
        SIZE,
        bore * grip.housing_grows
        - 2 * b.wall * grip.shell_grows
        - b.journal * journal_grows
        + (grip.hot.opened - grip.hot.thickened),
        sources.THERMAL,
    )
    return Clearance(
        b,
        grip,
        seat.known,
        tight,
        loose,
        fitted,
        Out.running(tight + warm, sources.CLEARANCE_SUM),
        Out.running_loose(loose + warm, sources.CLEARANCE_SUM),
    )
