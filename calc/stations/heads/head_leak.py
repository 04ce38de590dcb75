"""Leak of a closed volume from the change of its pressure, told apart from what temperature and gauge may fake."""

from calc.core.advice import at_least
from calc.core.drawing import Axis, Plot, Series
from calc.core.kinds import (
    FLOW,
    LEAK,
    LENGTH,
    PRESSURE,
    RATIO,
    SPECIFIC_HEAT,
    TEMPERATURE,
    TEMPERATURE_DIFFERENCE,
    TIME,
    VOLUME,
)
from calc.core.result import impossible, note, say, warning
from calc.core.working import PI, constant, form, greatest, step
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
    which_valve,
)
from calc.formulas import leak as gas
from calc.reference import cautions, sources

KPA, FLOWS, CC, KELVINS, TEMP, ABSOLUTE, SECONDS = (
    form(PRESSURE, 2),
    form(FLOW, 1),
    form(VOLUME, 0),
    form(TEMPERATURE_DIFFERENCE, 1),
    form(TEMPERATURE, 0),
    form(TEMPERATURE, 2, "K", "K"),
    form(TIME, 0),
)
SEAT, TOLD = "seat", "told"
LONGEST = 1800.0  # s: a longer test is another day's weather; common practice, no source
ATMOSPHERE = constant("p_n", "Standard atmosphere", KPA, gas.ATMOSPHERE, sources.STANDARD_FLOW)
ZERO = constant("T_n", "Reference temperature of the flow", ABSOLUTE, 273.15, sources.STANDARD_FLOW)
TWENTY = constant("T_20", "The other reference temperature", ABSOLUTE, 293.15, sources.STANDARD_FLOW)
AIR = constant("R", "Gas constant of air", form(SPECIFIC_HEAT, 1), gas.AIR_CONSTANT, sources.ORIFICE)
LENGTH_OF_SEAT = constant("l_100", "Length of seat that the leak allowed is told for", form(LENGTH, 0), 0.1)
ONE_KELVIN = constant("ΔT_1", "One kelvin", KELVINS, 1.0)


class Out(Outputs):
    leak = Output("Leak at the start, as air at 0 °C and 1 atm", "q", FLOWS, main=True)
    doubt = Output("Doubt of that, from temperature and gauge", "u", FLOWS, main=True)
    mean = Output("Mean leak, as air at 0 °C and 1 atm", "q_0", FLOWS)
    mean_20 = Output("Mean leak, as air at 20 °C and 1 atm", "q_20", FLOWS)
    rate = Output("Mean leak, as throughput", "Q", form(LEAK, 5))
    loss = Output("Change of pressure that is leak", "Δp_L", KPA)
    least_loss = Output("Change that temperature and gauge may fake", "Δp_u", KPA)
    kelvin_pressure = Output("Change that 1 K fakes", "Δp_1", KPA)
    kelvin_leak = Output("Leak that 1 K fakes in this test", "q_1", FLOWS)
    hole = Output("Round hole that would leak as much", "d", form(LENGTH, 3))
    ratio = Output("Pressure behind the hole ÷ before it", "r", form(RATIO, 2))
    allowed = Output("Leak allowed here, as air at 0 °C and 1 atm", "q_max", FLOWS)
    time_to_tell = Output("Time in which a leak at the limit shows", "t_u", SECONDS)


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
        SECONDS,
        tool="a watch",
        hard="1 s to 24 h",
        usual="10 s to 30 min",
        example="60 s",
    )
    volume: Number = given(
        "Volume tested, with its hoses",
        "V",
        CC,
        hard="1 cm³ to 1000 L",
        usual="20 cm³ to 20 L",
        hint="Fill port, cup and hoses with water from a measuring glass.",
        example="250 cm³",
    )
    mode: str = choice(
        "Test with", {"pressure": "pressure inside", "vacuum": "vacuum inside"}, default="vacuum"
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
        form(LENGTH, 1),
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
        TEMP,
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


@calculator(
    "leak-test",
    "Leak test by pressure or vacuum",
    In,
    Out,
    purpose="Does it leak, how much, through what hole, or is it only the temperature?",
    finds=(
        "vacuum test of valves",
        "pressure decay",
        "leak down",
        "standard cubic centimetres",
        "seat leak",
        "pressure test of a head",
        "crack test with air",
    ),
    sources=(
        sources.PRESSURE_CHANGE,
        sources.GAS_LAW,
        sources.STANDARD_FLOW,
        sources.ORIFICE,
        sources.INVENTED,
    ),
    cautions=(cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def leak_test(i: In) -> Answer:
    """Ideal gas in a rigid volume; a leak that falls off in proportion to the pressure that drives it; the barometer steady.

    Where much is lost through a choked hole, which does not fall off so, the leak at the start comes out too high: safe.

    Doubts of temperature and gauge are added as squares. The hole is ideal (discharge coefficient 1), so the smallest that does it.
    """
    vacuum = i.mode == "vacuum"
    for name, value in (("start", i.start), ("end", i.end)):
        if vacuum and value >= i.room:
            raise impossible(
                name,
                "is {p}, and no vacuum is deeper than the pressure of the room, {room}; give less",
                p=value,
                room=i.room,
            )
    inside = [
        step(
            f"p_{letter}",
            f"Pressure inside at the {word}, absolute",
            KPA,
            i.room - value if vacuum else i.room + value,
        )
        for letter, word, value in (("s", "start", i.start), ("e", "end", i.end))
    ]
    cold = step("T_s", "Air inside at the start, absolute", ABSOLUTE, i.temperature)
    warm = step("T_e", "Air inside at the end, absolute", ABSOLUTE, cold + i.warming)
    change = gas.pressure_loss(*inside, cold, warm)
    loss = Out.loss(-change if vacuum else change, sources.GAS_LAW)
    least_loss = Out.least_loss(gas.least_loss(inside[0], i.warming_doubt, cold, i.gauge_doubt))
    if i.start <= least_loss:
        raise impossible(
            "start",
            "is {p}, no more than what temperature and gauge may fake, {fake}; give more, or a finer gauge",
            p=i.start,
            fake=least_loss,
        )

    def flow(rate, reference):
        return gas.standard_flow(rate, cold, reference, ATMOSPHERE)

    rate = Out.rate(gas.leak_rate(i.volume, loss, i.time), sources.PRESSURE_CHANGE)
    left = step(
        "Δp_2",
        "Pressure from the room's left at the end, without drift",
        KPA,
        greatest(i.start - loss, least_loss),
    )
    at_start = step(
        "Q_1",
        "Throughput at the start pressure",
        form(LEAK, 5),
        gas.rate_at(gas.conductance(i.volume, i.start, left, i.time), i.start),
        sources.PRESSURE_CHANGE,
    )
    leak = Out.leak(flow(at_start, ZERO), sources.STANDARD_FLOW)
    doubt = Out.doubt(flow(gas.leak_rate(i.volume, least_loss, i.time), ZERO) * i.start / left)
    fake = Out.kelvin_pressure(gas.drift_pressure(inside[0], ONE_KELVIN, cold), sources.GAS_LAW)
    up, down = (i.room, inside[0]) if vacuum else (inside[0], i.room)
    ratio = Out.ratio(down / up)
    hole = Out.hole(
        gas.hole_diameter(gas.hole_area(greatest(at_start, 0.0), up, down, cold, gas_constant=AIR)),
        sources.ORIFICE,
    )
    round_it = step("l_s", "Length round the seat", form(LENGTH, 0), PI * i.seat)
    allowed = Out.allowed(i.for_length * (round_it / LENGTH_OF_SEAT) if i.allowed_by == SEAT else i.limit)
    limit_rate = step(
        "Q_max",
        "Throughput allowed",
        form(LEAK, 5),
        allowed * ATMOSPHERE * cold / ZERO,
        sources.STANDARD_FLOW,
    )
    time_to_tell = Out.time_to_tell(gas.time_to_tell(i.volume, limit_rate, least_loss))
    mean = Out.mean(flow(rate, ZERO), sources.STANDARD_FLOW)

    gone = i.start - loss <= least_loss
    longer = float(i.time) * float(doubt) / max(abs(float(allowed - leak)), 1e-12)
    if leak < -doubt:
        verdict = (
            "unsure",
            say("Pressure moved the wrong way"),
            say(
                "No leak does that: the air "
                + ("cooled" if vacuum else "warmed")
                + ", or the pump was still open. Shut it off, let everything become equally warm, and test"
                " again."
            ),
        )
    elif gone and leak - doubt <= allowed:
        verdict = (
            "unsure",
            say("All gone: the test was too long"),
            say("Read again after a time in which about a tenth is lost, and type both readings."),
        )
    elif leak - doubt > allowed:
        verdict = (
            "fail",
            say("Leaks {q}, {limit} allowed", q=leak, limit=allowed),
            (
                "Cup, plug and hoses first: they leak more often than seats. Wipe valve and seat, tap the"
                " stem, turn the valve half round, test again, and see how the other seats do. No seat is cut"
                " for a number alone: find the place by soap water or by ear."
            ),
        )
    elif leak + doubt <= allowed:
        verdict = (
            "pass",
            say("Tight: {q}, {limit} allowed", q=leak, limit=allowed),
            "Write it down with pressure and time: only tests made alike can be compared.",
        )
    elif longer <= LONGEST:
        verdict = (
            "unsure",
            say("Leak or drift? {q} ± {u}", q=leak, u=doubt),
            say(
                "Let everything become equally warm, then test for {t} or longer, with less hose, or with a"
                " finer gauge.",
                t=at_least(longer, SECONDS),
            ),
        )
    else:
        verdict = (
            "unsure",
            say("Leak or drift? {q} ± {u}", q=leak, u=doubt),
            say(
                "Too near to the limit of {limit} for this gauge. Take it as leaking, or test with a finer"
                " gauge.",
                limit=allowed,
            ),
        )
    return answer(
        leak,
        doubt,
        mean,
        Out.mean_20(flow(rate, TWENTY), sources.STANDARD_FLOW),
        rate,
        loss,
        least_loss,
        fake,
        Out.kelvin_leak(flow(gas.leak_rate(i.volume, fake, i.time), ZERO)),
        hole,
        ratio,
        allowed,
        time_to_tell,
        verdict=verdict,
        limits=(Limit("the leak", leak, high=allowed),),
        remarks=(
            (
                note(
                    "The gauge went down by {all}: {drift} of it by temperature, {loss} by leak.",
                    all=_kpa(i.start - i.end),
                    drift=_kpa(i.start - i.end - loss),
                    loss=loss,
                )
                if float(i.warming)
                else None
            ),
            (
                warning(
                    "A change of {t} was taken out by the gas law, as well as the thermometer knew it. Better"
                    " wait until nothing changes.",
                    t=i.warming,
                )
                if abs(float(i.warming)) > 0.5
                else None
            ),
            (
                note(
                    "More than a tenth was lost, and a leak falls off with its pressure: at the start it was"
                    " {q}, in the mean {m}.",
                    q=leak,
                    m=mean,
                )
                if loss > i.start / 10
                else None
            ),
            note(
                "The hole is a measure only: a real leak is a scratch or a crack, longer and larger. The flow"
                " through the hole is "
                + (
                    "not choked: it hangs on both pressures."
                    if float(ratio) > gas.critical_ratio()
                    else (
                        "choked: a deeper vacuum would draw no more."
                        if vacuum
                        else "choked: it grows with the pressure inside alone."
                    )
                )
            ),
        ),
        cautions=(cautions.VACUUM if vacuum else cautions.COMPRESSED_AIR,),
        figures=(_plot(i.start, i.end, i.time, i.volume, loss, at_start, limit_rate, leak),),
    )


def _kpa(pressure):
    return constant("", "", KPA, float(pressure))


def _plot(start, end, time, volume, loss, at_start, limit_rate, leak) -> Plot:
    """Pressure over time: as this leak lets it fall, as one at the limit would, and what was read."""
    p_1, p_2, t, v = map(float, (start, end, time, volume))

    def falling(rate):
        return tuple(
            (x, gas.difference_after(p_1, float(rate) / p_1, v, x)) for x in (t * i / 24 for i in range(25))
        )

    drift = p_1 - p_2 - float(loss)
    return Plot(
        "Pressure over the test",
        say(
            "A leak of {q} would take it from {a} to {b}; {c} was read.",
            q=leak,
            a=start,
            b=_kpa(falling(at_start)[-1][1]),
            c=end,
        ),
        Axis("Time", SECONDS),
        Axis("Pressure from the room's", KPA),
        (
            Series("this leak" if drift else "", falling(at_start)),
            Series("leak at the limit", falling(limit_rate), "limit"),
            *((Series("temperature alone", ((0.0, p_1), (t, p_1 - drift)), "dashed"),) if drift else ()),
        ),
        ((t, p_2, "read"),),
    )
