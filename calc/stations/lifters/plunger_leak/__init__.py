"""Leak-down of a hydraulic lifter: how fast the plunger goes down under load as its oil leaks past it."""

import math

from calc.core.advice import at_least, at_most
from calc.core.kinds import AREA, DYNAMIC_VISCOSITY, SPEED, TIME, VOLUME
from calc.core.result import impossible, note, say, warning
from calc.core.working import constant, form, step
from calc.declare.calculator import Answer, Limit, answer, calculator
from calc.formulas import annular_gap as gap
from calc.reference import cautions, sources
from calc.stations.lifters.plunger_leak.asked import TEST_FLUIDS, In
from calc.stations.lifters.plunger_leak.drawing import section, time_plot
from calc.stations.lifters.plunger_leak.told import Out
from calc.stations.shared.forms import DEGREES, FINE
from calc.stations.shared.oil_at import Points, oil_at

WIDEST = 0.01  # of the diameter: diametral clearance up to which the gap counts as narrow


FULL_TURN = constant("", "", DEGREES, 2 * math.pi)


TURBULENT = 2000.0  # Reynolds number above which a gap's flow need not stay laminar


@calculator(
    "plunger-leak",
    "Leak-down of a plunger",
    In,
    Out,
    purpose="Does this plunger go down in the time accepted, neither collapsing nor failing to bleed?",
    finds=(
        "leak-down test",
        "bleed down",
        "collapsed lifter",
        "noisy lifter",
        "plunger clearance",
        "hydraulic tappet leak",
        "lifter tick",
        "pump-up",
    ),
    sources=(
        sources.ANNULAR_GAP,
        sources.WALTHER,
        sources.OIL_GRADES,
        sources.OIL_GROWTH,
        sources.PRACTICE,
        sources.INVENTED,
    ),
    cautions=(cautions.HOT_OIL, cautions.SNAP_RING, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def plunger_leak(i: In) -> Answer:
    """Laminar flow in a narrow gap whose plunger stands parallel to its bore; one oil temperature; the check valve is tight.

    The check valve's own leak, air in the oil and a tapered bore all make it faster than shown.
    """
    if i.plunger >= i.bore:
        raise impossible(
            "plunger",
            "is {p}, not smaller than its bore, {b}, so that it does not go in; give less",
            p=i.plunger,
            b=i.bore,
        )
    clearance = Out.clearance(i.bore - i.plunger)
    if float(clearance) > WIDEST * float(i.bore):
        raise impossible(
            "plunger",
            "is {p}, and {c} of clearance is no longer a narrow gap in {b}; give more, or measure both again",
            p=i.plunger,
            c=clearance,
            b=i.bore,
        )
    if i.least_time >= i.most_time:
        raise impossible(
            "most_time",
            "is {b}, not more than the shortest accepted, {a}; give more",
            a=i.least_time,
            b=i.most_time,
        )
    points = Points(i.cool_temperature, i.cool_viscosity, i.warm_temperature, i.warm_viscosity)
    _, µ, ρ = oil_at(i.oil, i.oil_temperature, points, i.density, Out.viscosity)
    thin = oil_at(
        i.running_oil,
        i.running_temperature,
        points,
        i.density,
        _running_viscosity,
        "r",
        "running_temperature",
    ).dynamic
    c = step("c", "Clearance, radial", FINE, clearance / 2)
    mean = step("d", "Middle of the gap", FINE, (i.bore + i.plunger) / 2)
    area = step("A", "Area of the plunger", form(AREA, 1), gap.plunger_area(i.plunger))
    pressure = Out.pressure(i.load / area)

    leakage = Out.leakage(gap.leak(mean, c, i.length, µ, pressure, i.eccentricity), sources.ANNULAR_GAP)
    volume = step("V", "Oil displaced in the travel timed", form(VOLUME, 4), area * i.travel)
    time = Out.time(volume / leakage)
    times_off = gap.eccentric(i.eccentricity)
    centred = Out.time_centred(time * times_off, sources.ANNULAR_GAP)
    touching = Out.time_touching(centred / gap.eccentric(1.0), sources.ANNULAR_GAP)
    least_c, most_c = (
        Out.clearance_least(gap.clearance_for(clearance, time, i.most_time)),
        Out.clearance_most(gap.clearance_for(clearance, time, i.least_time)),
    )
    running = step(
        "w",
        "Speed at which it sinks, engine running",
        form(SPEED, 7),
        gap.sink_speed(gap.leak(mean, c, i.length, thin, i.running_load / area, i.eccentricity), i.plunger),
        sources.ANNULAR_GAP,
    )
    open_time = step("t_o", "Time that the valve is open", form(TIME, 4), i.open_angle / FULL_TURN / i.speed)
    sink = Out.sink(running * open_time)
    reynolds = Out.reynolds(gap.reynolds(leakage, mean, ρ, µ), sources.ANNULAR_GAP)

    in_test_fluid = i.oil in TEST_FLUIDS
    if (
        not in_test_fluid
    ):  # no maker's band is for it: neither a good time nor a bad one says anything of this plunger
        verdict = (
            "attention",
            say("No test fluid: these {t} compare with nothing", t=time),
            (
                "The times accepted are told for the tester's own thin fluid. Wash the last of the oil out,"
                " fill the tester with that, and test again; change no plunger for this time."
            ),
        )
    elif time < i.least_time:
        verdict = (
            "fail",
            say("Leaks too fast: {t}, {least} wanted", t=time, least=i.least_time),
            say(
                "Wash plunger, bore and check valve, bleed it and test again. If it stays, this bore wants a"
                " plunger of {p} or more.",
                p=at_least(i.bore - most_c, FINE),
            ),
        )
    elif time > i.most_time:
        verdict = (
            "attention",
            say("Leaks too slowly: {t}, {most} accepted", t=time, most=i.most_time),
            say(
                "It will hardly bleed down on a valve that grows, and dirt will stick it. Was the fluid as"
                " warm as typed, and none of the engine's oil left in it? Else a plunger of {p} or less.",
                p=at_most(i.bore - least_c, FINE),
            ),
        )
    else:
        verdict = (
            "pass",
            say("Leaks down in {t}, as it should", t=time),
            (
                "Keep plunger and bore together. Write the time down with fluid and temperature: only tests"
                " made alike can be compared."
            ),
        )
    return answer(
        time,
        clearance,
        leakage,
        pressure,
        µ,
        centred,
        touching,
        least_c,
        most_c,
        sink,
        reynolds,
        verdict=verdict,
        limits=(
            (
                Limit("the leak-down time", time, low=i.least_time),
                Limit("the leak-down time", time, high=i.most_time, level="attention"),
            )
            if in_test_fluid
            else ()
        ),
        remarks=(
            note(
                "Where the plunger stands in its bore is not known: anything from {a} to {b} may be read on"
                " one and the same lifter.",
                a=touching,
                b=centred,
            ),
            note(
                "Time goes as one over the cube of the clearance: {m} more on the diameter halves it.",
                m=constant("", "", FINE, float(clearance) * (2 ** (1 / 3) - 1)),
            ),
            (
                warning(
                    "A band is told for the tester's own thin fluid at room heat: engine oil in the cup, cold"
                    " or hot, compares with nothing."
                )
                if not in_test_fluid
                else None
            ),
            (
                warning(
                    "Flow in the gap need not stay laminar at this Reynolds number: the real leak is less"
                    " than shown."
                )
                if float(reynolds) > TURBULENT
                else None
            ),
        ),
        figures=(
            section(i.bore, i.plunger, i.length, i.load, i.travel, pressure),
            time_plot(
                float(clearance), float(centred), float(i.eccentricity), i.least_time, i.most_time, time
            ),
        ),
    )


def _running_viscosity(expression, source):
    return step(
        "µ_r", "Viscosity of the engine's oil, running", form(DYNAMIC_VISCOSITY, 2), expression, source
    )
