"""What is asked of a leak-down test: both gauges, the tester's orifice, where air was heard, the limits."""

from calc.core.kinds import PRESSURE, RATIO
from calc.core.working import Number, form
from calc.declare.calculator import Inputs, choice, given, limit, measured
from calc.stations.cylinders.cylinder_leak_down.told import KPA
from calc.stations.shared.forms import COARSE, DEGREES_C, ROUGH, SIZE

WARM, COLD = "warm", "cold"
NOWHERE, INTAKE, EXHAUST, FILLER, NEIGHBOUR, JOINT = (
    "nowhere",
    "intake",
    "exhaust",
    "filler",
    "neighbour",
    "joint",
)
HEARD = {
    NOWHERE: "not looked for yet",
    INTAKE: "the carburettor or intake",
    EXHAUST: "the exhaust",
    FILLER: "the oil filler or breather",
    NEIGHBOUR: "the neighbour's plug hole, on the same head",
    JOINT: "the joint of head and cylinder, as bubbles",
}


class In(Inputs):
    supply: Number = measured(
        "Supply, before the orifice",
        "p_1",
        KPA,
        tool="the tester's first gauge",
        hard="20 to 1400 kPa",
        usual="200 to 700 kPa",
        hint="While the air flows.",
        example="550 kPa",
    )
    left: Number = measured(
        "Left in the cylinder",
        "p_2",
        KPA,
        tool="the tester's second gauge",
        hard="1 to 1400 kPa",
        hint="Piston at the top of its compression stroke, both valves shut. Where it shows nothing, type 1"
        " kPa.",
        example="515 kPa",
    )
    orifice: Number = given(
        "Orifice of your tester, across",
        "d_o",
        COARSE,
        hard="0.2 to 6 mm",
        usual="0.8 to 2 mm",
        hint="Try it with pin gauges, or ask its maker: without it the two gauges say little.",
        example="1.00 mm",
    )
    engine: str = choice("Engine is", {WARM: "warm, just stopped", COLD: "cold"}, default=WARM)
    heard: str = choice("Air is heard at", HEARD, default=NOWHERE)
    good: Number = limit(
        "Pressure left, good",
        "p_n",
        KPA,
        feature="cylinder.leak_down",
        which="low",
        hard="1 to 1400 kPa",
        usual="100 to 700 kPa",
    )
    worn: Number = limit(
        "Pressure left, limit",
        "p_w",
        KPA,
        feature="cylinder.leak_down",
        which="wear",
        hard="1 to 1400 kPa",
        usual="100 to 700 kPa",
    )
    sheet_supply: Number = given(
        "Limits are for a supply of",
        "p_s1",
        KPA,
        hard="20 to 1400 kPa",
        usual="200 to 700 kPa",
        feature="cylinder.leak_down_supply",
        fold=True,
    )
    sheet_orifice: Number = given(
        "Limits are for an orifice of",
        "d_s",
        COARSE,
        hard="0.2 to 6 mm",
        usual="0.8 to 2 mm",
        feature="cylinder.leak_down_orifice",
        fold=True,
    )
    gauge_doubt: Number = given(
        "Gauges may differ by",
        "u_p",
        form(PRESSURE, 1),
        hard="0 to 50 kPa",
        usual="0.5 to 15 kPa",
        fold=True,
        assumed=("2 kPa", "two gauges tried against each other, plug hole shut; common practice, no source"),
    )
    discharge: Number = given(
        "Discharge coefficient of both holes",
        "C_d",
        form(RATIO, 2),
        hard="0.5 to 1",
        usual="0.6 to 0.98",
        fold=True,
        assumed=("0.85", "a short hole with a tapered way in; counts for the flow only; from memory"),
    )
    room: Number = given(
        "Pressure of the room",
        "p_a",
        form(PRESSURE, 1),
        hard="50 to 120 kPa",
        usual="85 to 105 kPa",
        fold=True,
        assumed=("101.3 kPa", "sea level"),
        hint="About 1.2 kPa less for each 100 m of height.",
    )
    temperature: Number = given(
        "Air of the supply",
        "T_1",
        DEGREES_C,
        hard="-40 to 80 °C",
        usual="0 to 40 °C",
        fold=True,
        assumed=("20 °C", "room heat"),
    )
    bore: Number = given(
        "Bore",
        "D",
        SIZE,
        hard="20 to 200 mm",
        usual="60 to 130 mm",
        feature="cylinder.bore",
        fold=True,
        assumed=("88 mm", "a usual engine; only for the force on the piston"),
    )
    stroke: Number = given(
        "Stroke",
        "S",
        COARSE,
        hard="20 to 200 mm",
        usual="50 to 120 mm",
        feature="crank.stroke",
        fold=True,
        assumed=("69 mm", "a usual engine; only for the turning of the crank"),
    )
    rod: Number = given(
        "Rod, centre to centre",
        "l",
        ROUGH,
        hard="40 to 400 mm",
        usual="100 to 200 mm",
        feature="rod.centre_distance",
        fold=True,
        assumed=("137 mm", "a usual engine; only for the turning of the crank"),
    )
