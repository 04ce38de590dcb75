"""How much goes, how well that is known, through what hole, and how much may."""

from typing import NamedTuple

from calc.core.kinds import LENGTH, SPECIFIC_HEAT, TEMPERATURE
from calc.core.result import impossible
from calc.core.working import PI, Number, Value, constant, form, greatest, step
from calc.formulas import leak as gas
from calc.reference import sources
from calc.stations.heads.head_leak.asked import SEAT, VACUUM, In
from calc.stations.heads.head_leak.told import KPA, THROUGHPUT, Out
from calc.stations.shared.forms import KELVINS

ABSOLUTE, WHOLE_LENGTH = form(TEMPERATURE, 2, "K", "K"), form(LENGTH, 0)
ATMOSPHERE = constant("p_n", "Standard atmosphere", KPA, gas.ATMOSPHERE, sources.STANDARD_FLOW)
ZERO = constant("T_n", "Reference temperature of the flow", ABSOLUTE, 273.15, sources.STANDARD_FLOW)
TWENTY = constant("T_20", "The other reference temperature", ABSOLUTE, 293.15, sources.STANDARD_FLOW)
AIR = constant("R", "Gas constant of air", form(SPECIFIC_HEAT, 1), gas.AIR_CONSTANT, sources.ORIFICE)
LENGTH_OF_SEAT = constant("l_100", "Length of seat that the leak allowed is told for", WHOLE_LENGTH, 0.1)
ONE_KELVIN = constant("ΔT_1", "One kelvin", KELVINS, 1.0)


class Air(NamedTuple):
    """The air inside, absolute: pressures and temperatures at the start and at the end."""

    start: Number
    end: Number
    cold: Number
    warm: Number

    def flow(self, throughput: Value, reference: Number) -> Value:
        """A throughput as a volume flow at 1 atm and a reference temperature."""
        return gas.standard_flow(throughput, self.cold, reference, ATMOSPHERE)


class Leak(NamedTuple):
    """`at_start` and `limit_rate` are throughputs, at the start and at the limit; `least_loss` is what
    temperature and gauge may fake."""

    loss: Number
    least_loss: Number
    rate: Number
    at_start: Number
    leak: Number
    doubt: Number
    fake: Number
    ratio: Number
    hole: Number
    allowed: Number
    limit_rate: Number
    time_to_tell: Number
    mean: Number
    mean_20: Number
    kelvin_leak: Number


def air_inside(i: In) -> Air:
    """Raises where a vacuum is told that is deeper than the room's pressure."""
    vacuum = i.mode == VACUUM
    for name, value in (("start", i.start), ("end", i.end)):
        if vacuum and value >= i.room:
            raise impossible(
                name,
                "is {p}, and no vacuum is deeper than the pressure of the room, {room}; give less",
                p=value,
                room=i.room,
            )
    start, end = (
        step(
            f"p_{letter}",
            f"Pressure inside at the {word}, absolute",
            KPA,
            i.room - value if vacuum else i.room + value,
        )
        for letter, word, value in (("s", "start", i.start), ("e", "end", i.end))
    )
    cold = step("T_s", "Air inside at the start, absolute", ABSOLUTE, i.temperature)
    warm = step("T_e", "Air inside at the end, absolute", ABSOLUTE, cold + i.warming)
    return Air(start, end, cold, warm)


def leak_of(i: In) -> Leak:
    """The leak at the start is that of a loss which falls off with its pressure. Raises where the gauge could
    not tell it."""
    air = air_inside(i)
    change = gas.pressure_loss(*air)
    loss = Out.loss(-change if i.mode == VACUUM else change, sources.GAS_LAW)
    least_loss = Out.least_loss(gas.least_loss(air.start, i.warming_doubt, air.cold, i.gauge_doubt))
    if i.start <= least_loss:
        raise impossible(
            "start",
            "is {p}, no more than temperature and gauge alone may show, {fake}; give more, or a finer gauge",
            p=i.start,
            fake=least_loss,
        )
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
        THROUGHPUT,
        gas.rate_at(gas.conductance(i.volume, i.start, left, i.time), i.start),
        sources.PRESSURE_CHANGE,
    )
    leak = Out.leak(air.flow(at_start, ZERO), sources.STANDARD_FLOW)
    doubt = Out.doubt(air.flow(gas.leak_rate(i.volume, least_loss, i.time), ZERO) * i.start / left)
    fake = Out.kelvin_pressure(gas.drift_pressure(air.start, ONE_KELVIN, air.cold), sources.GAS_LAW)
    ratio, hole = hole_that_leaks_so(i, air, at_start)
    allowed, limit_rate = leak_allowed(i, air)
    time_to_tell = Out.time_to_tell(gas.time_to_tell(i.volume, limit_rate, least_loss))
    mean = Out.mean(air.flow(rate, ZERO), sources.STANDARD_FLOW)
    mean_20 = Out.mean_20(air.flow(rate, TWENTY), sources.STANDARD_FLOW)
    kelvin_leak = Out.kelvin_leak(air.flow(gas.leak_rate(i.volume, fake, i.time), ZERO))
    return Leak(
        loss,
        least_loss,
        rate,
        at_start,
        leak,
        doubt,
        fake,
        ratio,
        hole,
        allowed,
        limit_rate,
        time_to_tell,
        mean,
        mean_20,
        kelvin_leak,
    )


def hole_that_leaks_so(i: In, air: Air, throughput: Number) -> tuple[Number, Number]:
    """Pressure behind a round hole over that before it, and the diameter through which so much goes."""
    up, down = (i.room, air.start) if i.mode == VACUUM else (air.start, i.room)
    ratio = Out.ratio(down / up)
    area = gas.hole_area(greatest(throughput, 0.0), up, down, air.cold, gas_constant=AIR)
    return ratio, Out.hole(gas.hole_diameter(area), sources.ORIFICE)


def leak_allowed(i: In, air: Air) -> tuple[Number, Number]:
    """As a flow, by the length of the seat or as told, and as a throughput."""
    round_it = step("l_s", "Length round the seat", WHOLE_LENGTH, PI * i.seat)
    allowed = Out.allowed(i.for_length * (round_it / LENGTH_OF_SEAT) if i.allowed_by == SEAT else i.limit)
    throughput = allowed * ATMOSPHERE * air.cold / ZERO
    return allowed, step("Q_max", "Throughput allowed", THROUGHPUT, throughput, sources.STANDARD_FLOW)
