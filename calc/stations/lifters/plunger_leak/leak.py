"""How fast the oil leaks past a plunger, in the tester and in the running engine."""

import math
from typing import NamedTuple

from calc.core.kinds import AREA, DYNAMIC_VISCOSITY, SPEED, TIME, VOLUME
from calc.core.result import Source, impossible
from calc.core.working import Number, Value, constant, form, step
from calc.formulas import annular_gap
from calc.reference import sources
from calc.stations.lifters.plunger_leak.asked import In
from calc.stations.lifters.plunger_leak.told import Out
from calc.stations.shared.forms import DEGREES, FINE
from calc.stations.shared.oil_at import DataSheet, oil_at

WIDEST = 0.01  # of the diameter: diametral clearance up to which the gap counts as narrow
FULL_TURN = constant("", "", DEGREES, 2 * math.pi)


class Leak(NamedTuple):
    """Times as read, with the plunger in the middle and touching one side.

    The clearances least and most are those that would take the times accepted; `sink` is how far the plunger
    goes down in one opening of the valve, engine running.
    """

    clearance: Number
    pressure: Number
    viscosity: Number
    leakage: Number
    time: Number
    centred: Number
    touching: Number
    clearance_least: Number
    clearance_most: Number
    sink: Number
    reynolds: Number


class _Gap(NamedTuple):
    """Between plunger and bore: its radial clearance, its middle diameter, and the plunger's area."""

    radial: Number
    middle: Number
    area: Number


def refuse_no_gap(i: In) -> None:
    """Raises where plunger and bore leave no narrow gap, or no time is accepted."""
    if i.plunger >= i.bore:
        raise impossible(
            "plunger",
            "is {p}, not smaller than its bore, {b}, so that it does not go in; give less",
            p=i.plunger,
            b=i.bore,
        )
    clearance = i.bore - i.plunger
    if float(clearance) > WIDEST * float(i.bore):
        raise impossible(
            "plunger",
            "is {p}, and {c} of clearance is no longer a narrow gap in {b}; give more, or measure both again",
            p=i.plunger,
            c=constant("", "", FINE, float(clearance)),
            b=i.bore,
        )
    if i.least_time >= i.most_time:
        raise impossible(
            "most_time",
            "is {b}, not more than the shortest accepted, {a}; give more",
            a=i.least_time,
            b=i.most_time,
        )


def leak_of(i: In) -> Leak:
    clearance = Out.clearance(i.bore - i.plunger)
    points = DataSheet(i.cool_temperature, i.cool_viscosity, i.warm_temperature, i.warm_viscosity)
    _, viscosity, density = oil_at(i.oil, i.oil_temperature, points, i.density, Out.viscosity)
    running = oil_at(
        i.running_oil,
        i.running_temperature,
        points,
        i.density,
        _running_viscosity,
        "r",
        "running_temperature",
    ).dynamic
    gap = _Gap(
        step("c", "Clearance, radial", FINE, clearance / 2),
        step("d", "Middle of the gap", FINE, (i.bore + i.plunger) / 2),
        step("A", "Area of the plunger", form(AREA, 1), annular_gap.plunger_area(i.plunger)),
    )
    pressure = Out.pressure(i.load / gap.area)
    leakage = Out.leakage(_leak(i, gap, viscosity, pressure), sources.ANNULAR_GAP)
    volume = step("V", "Oil displaced in the travel timed", form(VOLUME, 4), gap.area * i.travel)
    time = Out.time(volume / leakage)
    centred = Out.time_centred(time * annular_gap.eccentric(i.eccentricity), sources.ANNULAR_GAP)
    touching = Out.time_touching(centred / annular_gap.eccentric(1.0), sources.ANNULAR_GAP)
    least = Out.clearance_least(annular_gap.clearance_for(clearance, time, i.most_time))
    most = Out.clearance_most(annular_gap.clearance_for(clearance, time, i.least_time))
    sink = _sink(i, gap, running)
    reynolds = Out.reynolds(
        annular_gap.reynolds(leakage, gap.middle, density, viscosity), sources.ANNULAR_GAP
    )
    return Leak(clearance, pressure, viscosity, leakage, time, centred, touching, least, most, sink, reynolds)


def _leak(i: In, gap: _Gap, viscosity: Number, pressure: Number) -> Value:
    return annular_gap.leak(gap.middle, gap.radial, i.length, viscosity, pressure, i.eccentricity)


def _sink(i: In, gap: _Gap, viscosity: Number) -> Number:
    """What the plunger goes down while its valve is open, engine running."""
    speed = step(
        "w",
        "Speed at which it sinks, engine running",
        form(SPEED, 7),
        annular_gap.sink_speed(_leak(i, gap, viscosity, i.running_load / gap.area), i.plunger),
        sources.ANNULAR_GAP,
    )
    open_time = step("t_o", "Time that the valve is open", form(TIME, 4), i.open_angle / FULL_TURN / i.speed)
    return Out.sink(speed * open_time)


def _running_viscosity(expression: Number, source: Source) -> Number:
    return step(
        "µ_r", "Viscosity of the engine's oil, running", form(DYNAMIC_VISCOSITY, 2), expression, source
    )
