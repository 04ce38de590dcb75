"""What to do valve by valve, and what is to be known beside the verdict."""

from calc.core.conformance import DUST, past
from calc.core.result import Remark, Table, note
from calc.core.working import Number, constant
from calc.stations.heads.stem_height.asked import In
from calc.stations.heads.stem_height.out_of_line import far_from_all_others
from calc.stations.heads.stem_height.stems import Stems, Valve
from calc.stations.shared.forms import COARSE


def remarks_on(i: In, stems: Stems) -> tuple[Remark | None, ...]:
    return (
        note(
            "Grinding a tip leaves its spring as it was; sinking a seat, or grinding the valve's face,"
            " lets the spring out by as much as the stem rises."
        ),
        (
            note(
                "A tip ground before stands less than {c} above its spring: then measure that valve by"
                " valve, or the fitted height itself.",
                c=i.tip_to_retainer,
            )
            if any(float(v.shim) for v in stems.valves)
            else None
        ),
        far_from_all_others(i, stems.valves),
    )


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
