"""What is asked of a warm part and its gauge."""

from calc.core.kinds import TEMPERATURE
from calc.core.working import Number, form
from calc.declare.calculator import Inputs, choice, given, measured
from calc.formulas import warm_reading
from calc.reference.materials import MATERIALS
from calc.stations.shared.forms import FINE, KELVINS, SHARE, SIZE

TEMP = form(TEMPERATURE, 1)
# 1/K, mean between about 10 and 40 °C; all but steel typical of gauge makers' papers, from memory
GAUGES = {
    "steel": ("Steel", warm_reading.GAUGE_ALPHA),
    "carbide": ("Hard metal", 4.5e-6),
    "ceramic": ("Zirconia ceramic", 9.5e-6),
    "compensated": ("Shows as if it were at 20 °C", 0.0),
}


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
