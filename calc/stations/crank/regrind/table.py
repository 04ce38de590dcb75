"""Journal by journal: its form, and at what it cleans up."""

from calc.core.conformance import past
from calc.core.result import Table
from calc.stations.crank.regrind.journal import Journal
from calc.stations.crank.regrind.lot import GRIND, STAY, Lot


def journal_by_journal(*lots: Lot) -> Table:
    rows, states = [], []
    for lot in lots:
        for j in lot.each:
            name = f"{'Main' if lot.field == 'mains' else 'Rod journal'} {j.name}"
            rows.append((name, j.smallest, j.largest, j.round, j.taper, j.clean))
            states.append(_state(lot, j))
    columns = ("Journal", "Smallest", "Largest", "Out of round", "Taper", "Cleans up at")
    return Table("Journal by journal", columns, tuple(rows), tuple(states))


def _state(lot: Lot, j: Journal) -> str:
    if lot.state == STAY:
        return "pass"
    if lot.state != GRIND:
        return "attention"
    if not lot.serves:
        last = lot.sizes.last
        return "fail" if last is not None and past(lot.sizes.low - last, j.clean) else "attention"
    return "attention" if past(lot.high, j.clean) else "pass"
