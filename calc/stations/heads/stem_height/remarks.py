"""What is to be known beside the verdict."""

from calc.core.result import Remark, note
from calc.stations.heads.stem_height.asked import In
from calc.stations.heads.stem_height.out_of_line import far_from_all_others
from calc.stations.heads.stem_height.stems import Stems


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
