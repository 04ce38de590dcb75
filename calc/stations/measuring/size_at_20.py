"""The size that a warm part has at 20 °C, and what the doubt of the temperatures is worth."""
from calc.reference import cautions, sources
from calc.declare.calculator import Limit, Output, Outputs, answer, calculator, choice, given, measured, number
from calc.core.conformance import past
from calc.core.drawing import Axis, Plot, Series
from calc.formulas import warm_reading
from calc.reference.materials import MATERIALS, REFERENCE
from calc.core.kinds import EXPANSION, LENGTH, RATIO, TEMPERATURE, TEMPERATURE_DIFFERENCE
from calc.core.result import note, say, warning
from calc.core.working import form, sqrt

SIZE, FINE, TEMP, KELVINS, ALPHA = form(LENGTH, 3), form(LENGTH, 4), form(TEMPERATURE, 1), form(TEMPERATURE_DIFFERENCE, 1), form(EXPANSION, 1)
SHARE = form(RATIO, 0, "%", "%")
# 1/K, mean between about 10 and 40 °C; all but steel typical of gauge makers' papers, from memory
GAUGES = {"steel": ("Steel", warm_reading.GAUGE_ALPHA), "carbide": ("Hard metal", 4.5e-6), "ceramic": ("Zirconia ceramic", 9.5e-6),
          "compensated": ("Shows as if it were at 20 °C", 0.0)}
SOAKED = 5.0  # K between part and gauge, common practice: past it neither is at one temperature all through
UNLIKE = 3e-6  # 1/K: past it, 10 K are worth 3 µm in 100 mm


class Out(Outputs):
    size = Output("Size at 20 °C", "L_20", SIZE, main=True, rises="reading gauge_temperature", falls="part_temperature")
    correction = Output("Correction", "c", SIZE, main=True, rises="gauge_temperature", falls="part_temperature")
    doubt = Output("Doubt of warmth, ±", "U", FINE, main=True, rises="reading part_doubt gauge_doubt alpha_doubt")
    from_temperature = Output("Of it from the temperatures, ±", "U_t", FINE, rises="reading part_doubt gauge_doubt")
    from_expansion = Output("Of it from the part's expansion, ±", "U_α", FINE, rises="reading alpha_doubt")
    per_kelvin = Output("One kelvin of the part is worth", "c_1", FINE, rises="reading")


@calculator(
    "size-at-20", "Size at 20 °C", Out,
    purpose="What is the size at 20 °C, when part or gauge were warm, and how much do their temperatures leave open?",
    finds=("temperature compensation", "thermal expansion correction", "warm part measures large", "reference temperature", "cold morning", "hot part from the washer"),
    sources=(sources.SIZE_AT_20, sources.GAUGE_STEEL, sources.MATERIALS, sources.PRACTICE),
    cautions=(cautions.MAKER_FIRST, cautions.AIRCRAFT))
def size_at_20(
    reading: measured("Reading", "L", SIZE, tool="the gauge that the size asks for", hard=("0.01 mm", "3000 mm"), must=True) = "37.500 mm",
    part_temperature: measured("Temperature of the part", "t_p", TEMP, tool="a contact thermometer on bare metal", hard=("-40 °C", "150 °C"), usual=("5 °C", "45 °C")) = "27 °C",
    gauge_temperature: measured("Temperature of the gauge", "t_g", TEMP, tool="the same thermometer", hard=("-40 °C", "150 °C"), usual=("5 °C", "45 °C"),
                                hint="Or of the ring or block that it was set to just before.") = "22 °C",
    material: choice("Material of the part", {id: m.name for id, m in MATERIALS.items()}, must=True) = "al-si-t6",
    gauge: choice("Material of the gauge", {id: words for id, (words, _) in GAUGES.items()}, fold=True, assumed="as most gauges are") = "steel",
    part_doubt: given("Doubt of the part's temperature, ±", "U_p", KELVINS, hard=("0 K", "40 K"), usual=("0.1 K", "10 K"), fold=True, doubt_of="part_temperature", assumed="a contact thermometer; common practice, no source",
                      hint="Or written behind it: 27 ± 1.") = "1 K",
    gauge_doubt: given("Doubt of the gauge's temperature, ±", "U_g", KELVINS, hard=("0 K", "40 K"), usual=("0.1 K", "10 K"), fold=True, doubt_of="gauge_temperature", assumed="the same thermometer; common practice, no source") = "1 K",
    alpha_doubt: given("Doubt of the part's expansion, ±", "U_r", SHARE, hard=("0 %", "50 %"), usual=("1 %", "15 %"), fold=True, assumed="between castings of one alloy; common practice, no source",
                       hint="A few per cent between castings of one alloy.") = "5 %",
    bearable: given("Doubt that you can bear, ±", "U_max", FINE, hard=("0.0001 mm", "10 mm"), optional=True, hint="A quarter of the tolerance at most; common practice.") = "0.005 mm",
):
    """Free growth of part and gauge, each with its mean coefficient from 20 °C to its own temperature, the same all through.

    Doubts are expanded ones, in and out; those of temperatures and expansion are independent.
    """
    part = MATERIALS[material]
    reference = number("T_0", "Reference temperature", TEMP, REFERENCE, sources.SIZE_AT_20)
    alpha = number("α_p", f"Expansion of {part.name}, from 20 °C on", ALPHA, part.mean_alpha(part_temperature), sources.MATERIALS)
    gauge_alpha = number("α_g", "Expansion of the gauge", ALPHA, GAUGES[gauge][1], sources.GAUGE_STEEL)
    size = Out.size(warm_reading.at_reference(reading, alpha, gauge_alpha, part_temperature, gauge_temperature, reference), sources.SIZE_AT_20)
    correction = Out.correction(size - reading)
    temperature = Out.from_temperature(warm_reading.temperature_doubt(reading, alpha, gauge_alpha, part_doubt, gauge_doubt), sources.GUM)
    expansion = Out.from_expansion(warm_reading.expansion_doubt(reading, alpha, alpha_doubt, part_temperature, reference), sources.GUM)
    doubt = Out.doubt(sqrt(temperature ** 2 + expansion ** 2), sources.GUM)
    per_kelvin = Out.per_kelvin(reading * alpha * number("", "", KELVINS, 1.0))
    apart = abs(float(part_temperature) - float(gauge_temperature))
    if bearable is not None and past(doubt, bearable):
        advice = ("Let part and gauge lie side by side until both are near 20 °C: then their expansion counts for nothing." if expansion > temperature else
                  "Read both temperatures better, or let part and gauge lie side by side for an hour.")
        verdict = ("attention", say("Known to ± {u} only", u=doubt), say("You can bear ± {most}. {advice}", most=bearable, advice=advice))
    else:
        verdict = ("pass", say("{L} at 20 °C", L=size), say("Use this size, not the reading. Add ± {u} to the doubt of the gauge.", u=doubt))
    return answer(
        size, correction, doubt, temperature, expansion, per_kelvin,
        verdict=verdict, limits=(Limit("the doubt of warmth", doubt, high=bearable, level="attention"),) if bearable is not None else (),
        remarks=(
            warning("Part and gauge are {k} apart: neither is at one temperature all through. Let them lie side by side, then read both again.", k=number("", "", KELVINS, apart))
            if apart > SOAKED else None,
            note("Lying side by side is not enough here: even as warm as each other, part and gauge grow unlike.") if abs(float(alpha - gauge_alpha)) > UNLIKE else None,
        ),
        figures=(_plot(float(reading), part, GAUGES[gauge][1], float(part_temperature), float(gauge_temperature), correction),))


def _plot(reading, part, gauge_alpha, part_temperature, gauge_temperature, correction) -> Plot:
    """Correction against the part's temperature: with the gauge as it is, and with a gauge as warm as the part."""
    low, high = min(283.15, part_temperature - 5, gauge_temperature), min(max(313.15, part_temperature + 5, gauge_temperature), part.hottest)
    temperatures = [low + (high - low) * i / 12 for i in range(13)]

    def by(t, gauge):
        return warm_reading.at_reference(reading, part.mean_alpha(t), gauge_alpha, t, gauge, REFERENCE) - reading
    return Plot("What warmth adds to the reading, to be taken off again", say("The correction is {c} here.", c=correction),
                Axis("Temperature of the part", form(TEMPERATURE, 0)), Axis("Correction", SIZE),
                (Series("gauge as it is", tuple((t, by(t, gauge_temperature)) for t in temperatures)),
                 Series("gauge as warm", tuple((t, by(t, t)) for t in temperatures), "dashed")),
                ((part_temperature, float(correction), "here"),))
