"""What is asked: both readings, time and volume, the leak allowed, and what temperature and gauge may do."""

from calc.core.kinds import PRESSURE, TEMPERATURE_DIFFERENCE, VOLUME
from calc.core.working import form
from calc.declare.calculator import Inputs, Number, choice, given, measured, which_valve
from calc.stations.heads.head_leak.told import FLOWS, KPA, WHOLE_SECONDS
from calc.stations.shared.forms import DEGREES_C, KELVINS, ROUGH

SEAT, TOLD = "seat", "told"
PRESSURE_INSIDE, VACUUM = "pressure", "vacuum"


class In(Inputs):
    start: Number = measured(
        "Pressure at the start, from the room's",
        "p_1",
        KPA,
        tool="the gauge, pump shut off",
        hard="0.1 to 1000 kPa",
        usual="5 to 400 kPa",
        hint="Above the room's under pressure, below it under vacuum: no minus sign.",
        example="60 kPa",
    )
    end: Number = measured(
        "Pressure at the end, from the room's",
        "p_2",
        KPA,
        tool="the same gauge",
        hard="0 to 1000 kPa",
        example="59.2 kPa",
    )
    time: Number = measured(
        "Time between the readings",
        "t",
        WHOLE_SECONDS,
        tool="a watch",
        hard="1 s to 24 h",
        usual="10 s to 30 min",
        example="60 s",
    )
    volume: Number = given(
        "Volume tested, with its hoses",
        "V",
        form(VOLUME, 0),
        hard="1 cm³ to 1000 L",
        usual="20 cm³ to 20 L",
        hint="Fill port, cup and hoses with water from a measuring glass.",
        example="250 cm³",
    )
    mode: str = choice(
        "Test with", {PRESSURE_INSIDE: "pressure inside", VACUUM: "vacuum inside"}, default=VACUUM
    )
    allowed_by: str = choice(
        "Leak allowed",
        {SEAT: "by the length of the seat", TOLD: "told by the maker or the customer"},
        default=SEAT,
    )
    valve: str = which_valve(when=("allowed_by", SEAT))
    warming: Number = given(
        "Air inside warmed meanwhile by",
        "ΔT",
        KELVINS,
        hard="-40 to 40 K",
        usual="-0.5 to 0.5 K",
        assumed=("0 K", "as warm as before"),
        hint="By a thermometer in the volume or on its wall. Minus where it cooled.",
    )
    limit: Number = given(
        "Leak allowed, where it is told",
        "q_told",
        FLOWS,
        hard="0.01 to 10000 cm³/min",
        usual="0.5 to 500 cm³/min",
        when=("allowed_by", TOLD),
        hint="As air at 0 °C and 1 atm.",
        example="5 cm³/min",
    )
    seat: Number = measured(
        "Seat, diameter where the valve lies",
        "d_s",
        ROUGH,
        tool="a calliper",
        hard="3 to 150 mm",
        usual="15 to 60 mm",
        feature="head.valve_head_{valve}",
        stage="",
        fold=True,
        when=("allowed_by", SEAT),
    )
    for_length: Number = given(
        "Leak allowed for each 100 mm round the seat",
        "q_100",
        FLOWS,
        hard="0.01 to 10000 cm³/min",
        usual="2 to 500 cm³/min",
        fold=True,
        when=("allowed_by", SEAT),
        assumed=("25 cm³/min", "common practice, no source"),
        hint="Testers on the bench often pass more. Seats of one head are best judged against each other.",
    )
    warming_doubt: Number = given(
        "Warming that may have gone unseen",
        "u_T",
        form(TEMPERATURE_DIFFERENCE, 2),
        hard="0 to 20 K",
        usual="0.05 to 2 K",
        fold=True,
        assumed=("0.3 K", "a head that has lain in the room overnight; common practice, no source"),
        hint="Either way.",
    )
    gauge_doubt: Number = given(
        "Doubt of one reading of the gauge",
        "u_p",
        KPA,
        hard="0.001 to 20 kPa",
        usual="0.01 to 5 kPa",
        fold=True,
        assumed=("0.1 kPa", "half of the finest division of a usual gauge"),
        hint="Half of the finest division that you can tell.",
    )
    temperature: Number = given(
        "Air inside, at the start",
        "T_1",
        DEGREES_C,
        hard="-40 to 120 °C",
        usual="5 to 40 °C",
        fold=True,
        assumed=("20 °C", "room heat"),
    )
    room: Number = given(
        "Pressure of the room",
        "p_a",
        form(PRESSURE, 1),
        hard="50 to 120 kPa",
        usual="85 to 105 kPa",
        fold=True,
        assumed=("101.3 kPa", "sea level"),
        hint="What a barometer shows on the spot: about 1.2 kPa less for each 100 m of height.",
    )
