"""The size that a warm part has at 20 °C, and what the doubt of the temperatures is worth."""

from calc.core.conformance import past
from calc.core.result import Judged, Remark, note, say, warning
from calc.core.working import Number, constant, sqrt
from calc.declare.calculator import Answer, Limit, answer, calculator
from calc.formulas import warm_reading
from calc.reference import cautions, sources
from calc.reference.materials import MATERIALS, REFERENCE
from calc.stations.measuring.size_at_20.asked import GAUGES, TEMP, In
from calc.stations.measuring.size_at_20.drawing import correction_over_warmth
from calc.stations.measuring.size_at_20.told import Out
from calc.stations.shared.forms import ALPHA, KELVINS

SOAKED = 5.0  # K between part and gauge, common practice: past it neither is at one temperature all through
UNLIKE = 3e-6  # 1/K: past it, 10 K are worth 3 µm in 100 mm


@calculator(
    "size-at-20",
    "Size at 20 °C",
    In,
    Out,
    purpose=(
        "What is the size at 20 °C, when part or gauge were warm, and how much do their temperatures leave"
        " open?"
    ),
    finds=(
        "temperature compensation",
        "thermal expansion correction",
        "warm part measures large",
        "reference temperature",
        "cold morning",
        "hot part from the washer",
    ),
    sources=(sources.SIZE_AT_20, sources.GAUGE_STEEL, sources.MATERIALS, sources.PRACTICE),
    cautions=(cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def size_at_20(i: In) -> Answer:
    """Free growth of part and gauge, each with its mean coefficient from 20 °C to its own temperature.

    The temperature is the same all through. Doubts are expanded ones, in and out; those of temperatures and
    expansion are independent.
    """
    part, gauge = MATERIALS[i.material], GAUGES[i.gauge][1]
    reference = constant("T_0", "Reference temperature", TEMP, REFERENCE, sources.SIZE_AT_20)
    alpha = constant(
        "α_p",
        f"Expansion of {part.name}, from 20 °C on",
        ALPHA,
        part.mean_alpha(i.part_temperature),
        sources.MATERIALS,
    )
    gauge_alpha = constant("α_g", "Expansion of the gauge", ALPHA, gauge, sources.GAUGE_STEEL)
    size = Out.size(
        warm_reading.at_reference(
            i.reading, alpha, gauge_alpha, i.part_temperature, i.gauge_temperature, reference
        ),
        sources.SIZE_AT_20,
    )
    correction = Out.correction(size - i.reading)
    temperature = Out.from_temperature(
        warm_reading.temperature_doubt(i.reading, alpha, gauge_alpha, i.part_doubt, i.gauge_doubt),
        sources.GUM,
    )
    expansion = Out.from_expansion(
        warm_reading.expansion_doubt(i.reading, alpha, i.alpha_doubt, i.part_temperature, reference),
        sources.GUM,
    )
    doubt = Out.doubt(sqrt(temperature**2 + expansion**2), sources.GUM)
    per_kelvin = Out.per_kelvin(i.reading * alpha * constant("", "", KELVINS, 1.0))
    return answer(
        size,
        correction,
        doubt,
        temperature,
        expansion,
        per_kelvin,
        verdict=_verdict_on(i.bearable, size, doubt, mostly_expansion=expansion > temperature),
        limits=(
            (Limit("the doubt of warmth", doubt, high=i.bearable, level="attention"),)
            if i.bearable is not None
            else ()
        ),
        remarks=_remarks_on(i, unlike=abs(float(alpha - gauge_alpha)) > UNLIKE),
        figures=lambda: (correction_over_warmth(i, correction),),
    )


def _verdict_on(bearable: Number | None, size: Number, doubt: Number, mostly_expansion: bool) -> Judged:
    if bearable is not None and past(doubt, bearable):
        advice = (
            "Let part and gauge lie side by side until both are near 20 °C: then their expansion counts for"
            " nothing."
            if mostly_expansion
            else "Read both temperatures better, or let part and gauge lie side by side for an hour."
        )
        return (
            "attention",
            say("Known to ± {u} only", u=doubt),
            say("You can bear ± {most}. {advice}", most=bearable, advice=advice),
        )
    return (
        "pass",
        say("{L} at 20 °C", L=size),
        say("Use this size, not the reading. Add ± {u} to the doubt of the gauge.", u=doubt),
    )


def _remarks_on(i: In, unlike: bool) -> tuple[Remark | None, ...]:
    apart = abs(float(i.part_temperature) - float(i.gauge_temperature))
    return (
        warning(
            "Part and gauge are {k} apart: neither is at one temperature all through. Let them lie side by"
            " side, then read both again.",
            k=constant("", "", KELVINS, apart),
        )
        if apart > SOAKED
        else None,
        note(
            "Lying side by side is not enough here: even when equally warm, part and gauge grow differently."
        )
        if unlike
        else None,
    )
