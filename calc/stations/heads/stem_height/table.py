"""What to do, valve by valve."""

from calc.core.conformance import DUST, past
from calc.core.result import Table
from calc.core.working import Number, constant
from calc.stations.heads.stem_height.asked import In
from calc.stations.heads.stem_height.stems import Stems, Valve
from calc.stations.shared.forms import COARSE


def valve_by_valve(i: In, stems: Stems) -> Table:
    def cell(x: Number) -> Number | str:
        return constant("", "", COARSE, float(x)) if abs(float(x)) > DUST else "–"

    def row(v: Valve) -> tuple:
        off = constant("", "", COARSE, float(v.level - i.wanted))
        return v.name, v.height, cell(v.tip), cell(v.sink), cell(v.shim), v.fitted, off

    def state(v: Valve) -> str:
        if past(i.low, v.level) or past(v.level, i.high):
            return "fail"
        work = any(abs(float(x)) > DUST for x in (v.tip, v.sink, v.shim))
        return "attention" if work else "pass"

    return Table(
        "Valve by valve, what to do",
        (
            "Valve",
            "Height",
            "Off the tip",
            "Sink seat",
            "Shim, − too short by",
            "Fitted height, then",
            "Off the height wanted",
        ),
        tuple(map(row, stems.valves)),
        tuple(map(state, stems.valves)),
    )
