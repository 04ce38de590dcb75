"""What is asked of any shaft in any bore."""

from typing import Any

from calc.core.result import impossible
from calc.core.working import Number
from calc.declare.calculator import Inputs, Rows, choice, given, measured
from calc.reference.materials import MATERIALS
from calc.stations.shared.forms import DEGREES_C, SIZE
from calc.stations.shared.own_material import own_values

# of the bore: sizes further apart are not of one pair
STRANGE = 0.1


def _size(label: str, symbol: str, tool: str, **more: Any) -> Any:
    return measured(label, symbol, SIZE, tool=tool, hard="0.5 to 500 mm", usual="3 to 150 mm", **more)


def _limit(label: str, symbol: str, example: str, hint: str = "") -> Any:
    return given(label, symbol, SIZE, hard="-1 to 5 mm", usual="-0.2 to 0.5 mm", hint=hint, example=example)


def _metal(label: str, example: str) -> Any:
    return choice(label, {id: m.name for id, m in MATERIALS.items()}, must=True, example=example)


def _running(label: str, symbol: str) -> Any:
    return given(
        label,
        symbol,
        DEGREES_C,
        hard="-60 to 500 °C",
        usual="-30 to 250 °C",
        assumed=("100 °C", "as hot as the oil; common practice, no source"),
    )


class In(Inputs):
    bore: Number = _size(
        "Bore, least reading",
        "D",
        "a bore gauge set in a ring",
        must=True,
        of="bore_metal",
        example="25.028 mm",
        hint="In two directions and at both ends.",
    )
    shaft: Number = _size(
        "Shaft, largest reading", "d", "a micrometer", must=True, of="shaft_metal", example="24.988 mm"
    )
    bore_most: Number | None = _size(
        "The same bore, largest reading",
        "D_most",
        "a bore gauge set in a ring",
        hint="For the loosest place.",
    )
    shaft_least: Number | None = _size("The same shaft, smallest reading", "d_least", "a micrometer")
    low: Number | None = _limit(
        "Clearance, least", "c_min", "0.027 mm", "From the maker's sheet. Less than nothing for a press fit."
    )
    high: Number | None = _limit("Clearance, most", "c_max", "0.061 mm")
    bore_metal: str = _metal("Bore is of", "mg-az91")
    shaft_metal: str = _metal("Shaft is of", "forged-steel")
    bore_temperature: Number = _running("Bore, running", "T_D")
    shaft_temperature: Number = _running("Shaft, running", "T_d")
    low_running: Number | None = _limit("Clearance running, least", "c_run", "", "Where the maker tells one.")
    own: Rows = own_values("bore", "shaft")


def refuse_what_does_not_go_together(i: In) -> None:
    """Raises where readings are turned round, limits crossed, or the sizes not of one pair."""
    if i.bore_most is not None and i.bore_most < i.bore:
        raise impossible(
            "bore_most",
            "is {m}, less than the least reading of that bore, {l}; give {l} or more",
            m=i.bore_most,
            l=i.bore,
        )
    if i.shaft_least is not None and i.shaft_least > i.shaft:
        raise impossible(
            "shaft_least",
            "is {s}, more than the largest reading of that shaft, {l}; give {l} or less",
            s=i.shaft_least,
            l=i.shaft,
        )
    if i.low is not None and i.high is not None and i.high < i.low:
        raise impossible("high", "is {h}, less than the least, {l}; give {l} or more", h=i.high, l=i.low)
    for name, size, other, of in (
        ("shaft", i.shaft, i.bore, "bore"),
        ("bore_most", i.bore_most, i.bore, "least reading"),
        ("shaft_least", i.shaft_least, i.shaft, "largest reading"),
    ):
        if size is not None and abs(float(size - other)) > STRANGE * float(other):
            raise impossible(
                name,
                "is {s}, and the " + of + " {o}: more than a tenth apart; give sizes of one pair",
                s=size,
                o=other,
            )
