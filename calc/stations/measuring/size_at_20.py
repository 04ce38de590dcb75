"""The size that a warm part has at 20 °C, and what the doubt of the temperatures is worth."""

from calc.core.conformance import past
from calc.core.drawing import Axis, Plot, Series
from calc.core.kinds import TEMPERATURE
from calc.core.result import note, say, warning
from calc.core.working import constant, form, sqrt
from calc.declare.calculator import (
    Answer,
    Inputs,
    Limit,
    Number,
    Output,
    Outputs,
    answer,
    calculator,
    choice,
    given,
    measured,
)
from calc.formulas import warm_reading
from calc.reference import cautions, sources
from calc.reference.materials import MATERIALS, REFERENCE
from calc.stations.shared.forms import ALPHA, DEGREES_C, FINE, KELVINS, SHARE, SIZE

TEMP = form(TEMPERATURE, 1)
# 1/K, mean between about 10 and 40 °C; all but steel typical of gauge makers' papers, from memory
GAUGES = {
    "steel": ("Steel", warm_reading.GAUGE_ALPHA),
    "carbide": ("Hard metal", 4.5e-6),
    "ceramic": ("Zirconia ceramic", 9.5e-6),
    "compensated": ("Shows as if it were at 20 °C", 0.0),
}
SOAKED = 5.0  # K between part and gauge, common practice: past it neither is at one temperature all through
UNLIKE = 3e-6  # 1/K: past it, 10 K are worth 3 µm in 100 mm


class Out(Outputs):
    size = Output("Size at 20 °C", "L_20", SIZE, main=True)
    correction = Output("Correction", "c", SIZE, main=True)
    doubt = Output("Doubt of warmth, ±", "U", FINE, main=True)
    from_temperature = Output("Of it from the temperatures, ±", "U_t", FINE)
    from_expansion = Output("Of it from the part's expansion, ±", "U_α", FINE)
    per_kelvin = Output("One kelvin of the part is worth", "c_1", FINE)


class In(Inputs):
    reading: Number = measured(
        "Reading",
        "L",
        SIZE,
        tool="the gauge that the size asks for",
        hard="0.01 to 3000 mm",
        must=True,
        example="37.500 mm",
    )
    part_temperature: Number = measured(
        "Temperature of the part",
        "t_p",
        TEMP,
        tool="a contact thermometer on bare metal",
        hard="-40 to 150 °C",
        usual="5 to 45 °C",
        example="27 °C",
    )
    gauge_temperature: Number = measured(
        "Temperature of the gauge",
        "t_g",
        TEMP,
        tool="the same thermometer",
        hard="-40 to 150 °C",
        usual="5 to 45 °C",
        hint="Or of the ring or block that it was set to just before.",
        example="22 °C",
    )
    material: str = choice(
        "Material of the part", {id: m.name for id, m in MATERIALS.items()}, must=True, example="al-si-t6"
    )
    gauge: str = choice(
        "Material of the gauge",
        {id: words for id, (words, _) in GAUGES.items()},
        fold=True,
        assumed=("steel", "as most gauges are"),
    )
    part_doubt: Number = given(
        "Doubt of the part's temperature, ±",
        "U_p",
        KELVINS,
        hard="0 to 40 K",
        usual="0.1 to 10 K",
        fold=True,
        doubt_of="part_temperature",
        assumed=("1 K", "a contact thermometer; common practice, no source"),
        hint="Or written behind it: 27 ± 1.",
    )
    gauge_doubt: Number = given(
        "Doubt of the gauge's temperature, ±",
        "U_g",
        KELVINS,
        hard="0 to 40 K",
        usual="0.1 to 10 K",
        fold=True,
        doubt_of="gauge_temperature",
        assumed=("1 K", "the same thermometer; common practice, no source"),
    )
    alpha_doubt: Number = given(
        "Doubt of the part's expansion, ±",
        "U_r",
        SHARE,
        hard="0 to 50 %",
        usual="1 to 15 %",
        fold=True,
        assumed=("5 %", "between castings of one alloy; common practice, no source"),
        hint="A few per cent between castings of one alloy.",
    )
    bearable: Number | None = given(
        "Doubt that you can bear, ±",
        "U_max",
        FINE,
        hard="0.0001 to 10 mm",
        hint="A quarter of the tolerance at most; common practice.",
        example="0.005 mm",
    )


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
    """Free growth of part and gauge, each with its mean coefficient from 20 °C to its own temperature, the same all through.

    Doubts are expanded ones, in and out; those of temperatures and expansion are independent.
    """
    part = MATERIALS[i.material]
    reference = constant("T_0", "Reference temperature", TEMP, REFERENCE, sources.SIZE_AT_20)
    alpha = constant(
        "α_p",
        f"Expansion of {part.name}, from 20 °C on",
        ALPHA,
        part.mean_alpha(i.part_temperature),
        sources.MATERIALS,
    )
    gauge_alpha = constant("α_g", "Expansion of the gauge", ALPHA, GAUGES[i.gauge][1], sources.GAUGE_STEEL)
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
    apart = abs(float(i.part_temperature) - float(i.gauge_temperature))
    if i.bearable is not None and past(doubt, i.bearable):
        advice = (
            "Let part and gauge lie side by side until both are near 20 °C: then their expansion counts for"
            " nothing."
            if expansion > temperature
            else "Read both temperatures better, or let part and gauge lie side by side for an hour."
        )
        verdict = (
            "attention",
            say("Known to ± {u} only", u=doubt),
            say("You can bear ± {most}. {advice}", most=i.bearable, advice=advice),
        )
    else:
        verdict = (
            "pass",
            say("{L} at 20 °C", L=size),
            say("Use this size, not the reading. Add ± {u} to the doubt of the gauge.", u=doubt),
        )
    return answer(
        size,
        correction,
        doubt,
        temperature,
        expansion,
        per_kelvin,
        verdict=verdict,
        limits=(
            (Limit("the doubt of warmth", doubt, high=i.bearable, level="attention"),)
            if i.bearable is not None
            else ()
        ),
        remarks=(
            (
                warning(
                    "Part and gauge are {k} apart: neither is at one temperature all through. Let them lie"
                    " side by side, then read both again.",
                    k=constant("", "", KELVINS, apart),
                )
                if apart > SOAKED
                else None
            ),
            (
                note(
                    "Lying side by side is not enough here: even as warm as each other, part and gauge grow"
                    " unlike."
                )
                if abs(float(alpha - gauge_alpha)) > UNLIKE
                else None
            ),
        ),
        figures=(
            _plot(
                float(i.reading),
                part,
                GAUGES[i.gauge][1],
                float(i.part_temperature),
                float(i.gauge_temperature),
                correction,
            ),
        ),
    )


def _plot(reading, part, gauge_alpha, part_temperature, gauge_temperature, correction) -> Plot:
    """Correction against the part's temperature: with the gauge as it is, and with a gauge as warm as the part."""
    low, high = (
        min(283.15, part_temperature - 5, gauge_temperature),
        min(max(313.15, part_temperature + 5, gauge_temperature), part.hottest),
    )
    temperatures = [low + (high - low) * i / 12 for i in range(13)]

    def by(t, gauge):
        return (
            warm_reading.at_reference(reading, part.mean_alpha(t), gauge_alpha, t, gauge, REFERENCE) - reading
        )

    return Plot(
        "What warmth adds to the reading, to be taken off again",
        say("The correction is {c} here.", c=correction),
        Axis("Temperature of the part", DEGREES_C),
        Axis("Correction", SIZE),
        (
            Series("gauge as it is", tuple((t, by(t, gauge_temperature)) for t in temperatures)),
            Series("gauge as warm", tuple((t, by(t, t)) for t in temperatures), "dashed"),
        ),
        ((part_temperature, float(correction), "here"),),
    )
