"""What is asked of a reading and its limits."""

from calc.core.working import Number
from calc.declare.calculator import Inputs, choice, given, measured
from calc.stations.shared.forms import FINE, FINE_SHARE, SIZE, TIMES

ISO, SIMPLE, OTHER = "iso", "simple", "other"
RULES = {
    ISO: "ISO 14253-1: proven at 95 %",
    SIMPLE: "The reading alone, doubt not counted",
    OTHER: "Proven at another probability",
}


class In(Inputs):
    reading: Number = measured(
        "Reading",
        "y",
        SIZE,
        tool="the gauge that the size asks for",
        hard="-2000 to 2000 mm",
        must=True,
        example="54.993 mm",
    )
    low: Number | None = given(
        "Lower limit",
        "L",
        SIZE,
        hard="-2000 to 2000 mm",
        hint="One of the two is enough.",
        example="54.985 mm",
    )
    high: Number | None = given("Upper limit", "H", SIZE, hard="-2000 to 2000 mm", example="55.000 mm")
    doubt: Number = given(
        "Doubt of the reading, ±",
        "U",
        FINE,
        hard=("0.00001 to 10 mm", "no reading is without doubt"),
        doubt_of="reading",
        hint=(
            "Expanded, as calibration papers state it, or written behind the reading: 54.993 ± 0.004."
            " Unknown? Find it with “How good is this reading?”."
        ),
        example="0.003 mm",
    )
    rule: str = choice(
        "Decided by",
        RULES,
        fold=True,
        assumed=(ISO, "agreed where nothing else is"),
        hint="Agree on it before anybody measures.",
    )
    proof: Number = given(
        "Other probability",
        "P_w",
        FINE_SHARE,
        hard="60 to 99.99 %",
        usual="80 to 99.9 %",
        fold=True,
        when=("rule", OTHER),
        hint="Counts only where the rule is another probability.",
        example="99 %",
    )
    coverage: Number = given(
        "Coverage factor of the doubt",
        "k",
        TIMES,
        hard="1 to 5",
        usual="1.9 to 3.4",
        fold=True,
        assumed=("2", "as calibration papers state it"),
        hint="2 unless the paper says another; 1 where it states a standard uncertainty.",
    )
