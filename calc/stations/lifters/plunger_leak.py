"""Leak-down of a hydraulic lifter: how fast the plunger goes down under load as its oil leaks past it."""

import math

from calc.core.advice import at_least, at_most
from calc.core.drawing import Area, Axis, Dimension, Drawing, Label, Line, Plot, Series, box
from calc.core.kinds import AREA, DYNAMIC_VISCOSITY, FLOW, SPEED, STRESS, TIME, VOLUME
from calc.core.result import impossible, note, say, warning
from calc.core.working import constant, form, step
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
    limit,
    measured,
)
from calc.formulas import annular_gap as gap
from calc.reference import cautions, sources
from calc.stations.shared.forms import (
    COARSE,
    DEGREES,
    DEGREES_C,
    FINE,
    NEWTON,
    ROUGH,
    SECONDS,
    SIZE,
    TIMES,
    TURNS,
)
from calc.stations.shared.oil_asked import (
    COOL_TEMPERATURE,
    COOL_VISCOSITY,
    DENSITY_AT_15,
    WARM_TEMPERATURE,
    WARM_VISCOSITY,
)
from calc.stations.shared.oil_at import CHOICES, GRADES, POINTS, Points, oil_at

LEAKS = form(FLOW, 3)
SINK = "usual; only for how far it sinks in the running engine"
WIDEST = 0.01  # of the diameter: diametral clearance up to which the gap counts as narrow
FULL_TURN = constant("", "", DEGREES, 2 * math.pi)
TEST_FLUIDS = (
    "iso-vg-10",
    POINTS,
)  # workshop procedures use thin test fluid only, under 50 lbf, and time 20 to 90 or 20 to 110 s; found in public material
TURBULENT = 2000.0  # Reynolds number above which a gap's flow need not stay laminar


class Out(Outputs):
    time = Output("Leak-down time", "t", SECONDS, main=True)
    clearance = Output("Clearance, diametral", "C", FINE, main=True)
    leakage = Output("Leak past the plunger under the load", "Q", LEAKS)
    pressure = Output("Pressure under the plunger", "Δp", form(STRESS, 2))
    viscosity = Output("Viscosity of the oil", "µ", form(DYNAMIC_VISCOSITY, 2))
    time_centred = Output("Leak-down time, plunger in the middle", "t_0", SECONDS)
    time_touching = Output("Leak-down time, plunger touching one side", "t_1", SECONDS)
    clearance_least = Output("Clearance that would take the longest time accepted", "C_min", FINE)
    clearance_most = Output("Clearance that would take the shortest time accepted", "C_max", FINE)
    sink = Output("Plunger sinks in one opening of the valve, engine running", "z", SIZE)
    reynolds = Output("Reynolds number in the gap", "Re", TIMES)


class In(Inputs):
    bore: Number = measured(
        "Plunger's bore",
        "D_b",
        FINE,
        tool="an air or bore gauge set in a ring",
        hard="3 to 60 mm",
        usual="8 to 30 mm",
        feature="lifter.plunger_bore",
        of="bearing-steel",
        stage="",
    )
    plunger: Number = measured(
        "Plunger",
        "D_p",
        FINE,
        tool="a comparator set with gauge blocks",
        hard="3 to 60 mm",
        usual="8 to 30 mm",
        feature="lifter.plunger",
        of="bearing-steel",
        stage="",
        hint="Each plunger with its own bore: they are matched, never mixed.",
    )
    oil: str = choice(
        "Fluid in the tester",
        CHOICES,
        must=True,
        hint="The tester's own thin fluid: engine oil in the cup tells nothing that any band is for.",
        example="iso-vg-10",
    )
    oil_temperature: Number = given(
        "Fluid's temperature",
        "T",
        DEGREES_C,
        hard="-30 to 180 °C",
        usual="5 to 60 °C",
        hint="Read in the cup, when the time is taken.",
        example="20 °C",
    )
    load: Number = given(
        "Load on the plunger",
        "F",
        NEWTON,
        hard="5 to 5000 N",
        usual="50 to 1000 N",
        feature="lifter.leak_down_load",
        hint="The tester's weight, less what the plunger's own spring bears. 50 lbf is usual.",
    )
    travel: Number = given(
        "Travel that is timed",
        "s",
        COARSE,
        hard="0.05 to 20 mm",
        usual="0.5 to 5 mm",
        feature="lifter.leak_down_travel",
    )
    length: Number = measured(
        "Plunger, length that seals",
        "L",
        ROUGH,
        tool="a calliper",
        hard="1 to 100 mm",
        usual="4 to 40 mm",
        feature="lifter.plunger_land",
        fold=True,
    )
    eccentricity: Number = given(
        "Plunger off the middle",
        "ε",
        TIMES,
        hard="0 to 1",
        fold=True,
        assumed=("0.50", "half way off; common practice, no source"),
        hint="0 in the middle, 1 touching one side.",
    )
    least_time: Number = limit(
        "Leak-down time, shortest accepted",
        "t_min",
        SECONDS,
        feature="lifter.leak_down",
        which="low",
        hard="0.1 to 600 s",
        usual="2 to 120 s",
        hint="The maker's, with the maker's fluid, weight and travel.",
    )
    most_time: Number = limit(
        "Leak-down time, longest accepted",
        "t_max",
        SECONDS,
        feature="lifter.leak_down",
        which="high",
        hard="0.2 to 3600 s",
        usual="10 to 600 s",
    )
    running_oil: str = choice(
        "Oil in the engine",
        GRADES,
        fold=True,
        assumed=("sae-20w-50", SINK),
        hint="For how far the plunger sinks in the running engine, and for nothing else.",
    )
    running_temperature: Number = given(
        "Oil temperature, engine running",
        "T_r",
        DEGREES_C,
        hard="-30 to 180 °C",
        usual="5 to 130 °C",
        feature="crankcase.oil_temperature",
        fold=True,
        assumed=("100 °C", SINK),
    )
    running_load: Number = given(
        "Load while the valve is open, mean",
        "F_m",
        NEWTON,
        hard="5 to 9000 N",
        usual="150 to 2000 N",
        feature="lifter.running_load",
        fold=True,
        assumed=("495 N", SINK),
        hint="Mean of the spring's load shut and open, times the rocker's ratio.",
    )
    speed: Number = given(
        "Engine speed",
        "n",
        TURNS,
        hard="50 1/ to 12000 1/min",
        usual="500 1/ to 6000 1/min",
        feature="crank.idle_speed",
        fold=True,
        assumed=("850 1/min", SINK),
        hint="Idling is the worst: the valve is open longest.",
    )
    open_angle: Number = given(
        "Valve open for, at the crank",
        "α_o",
        DEGREES,
        hard="90 to 400°",
        usual="200 to 320°",
        feature="cam.open_angle",
        fold=True,
        assumed=("260°", SINK),
    )
    cool_temperature: Number = COOL_TEMPERATURE
    cool_viscosity: Number = COOL_VISCOSITY
    warm_temperature: Number = WARM_TEMPERATURE
    warm_viscosity: Number = WARM_VISCOSITY
    density: Number = DENSITY_AT_15


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


def section(bore, plunger, length, load, travel, pressure) -> Drawing:
    """Plunger in its bore over the oil that bears it; the gap is drawn wide."""
    r, L, s = float(plunger) / 2, float(length), float(travel)
    c = 0.06 * r
    wall, under = 0.3 * r, max(0.5 * L, 0.6 * r)
    shapes = [Area(box(-r, 0, r, L), "b")]
    for side in (-1, 1):
        shapes.append(Area(tuple((side * x, y) for x, y in box(r + c, -under, r + c + wall, 1.1 * L)), "a"))
    shapes.append(Area(box(-r - c - wall, -under - wall, r + c + wall, -under), "a"))
    return Drawing(
        "Plunger on its oil",
        say(
            "Section of a plunger of {p} in a bore of {b}; its {L} of length seal {q} of pressure in the oil"
            " below, under {F}.",
            p=plunger,
            b=bore,
            L=length,
            q=pressure,
            F=load,
        ),
        (
            *shapes,
            Line(((0, -under - 1.6 * wall), (0, 1.25 * L)), "centre"),
            Label((0, 1.32 * L), say("{F}", F=load)),
            Label((0, -0.55 * under), say("{q}", q=pressure)),
            Dimension((r + c + wall, 0), (r + c + wall, L), length, -0.35 * r, "L"),
            Dimension((-r, L), (r, L), plunger, 0.45 * r + 0.32 * L, "D_p"),
            Dimension((-r - c, -under), (r + c, -under), bore, -0.45 * r - wall, "D_b"),
        ),
        "gap drawn wider than it is",
    )


def time_plot(clearance, centred, eccentricity, least_time, most_time, time) -> Plot:
    """Leak-down time against clearance, in the middle, as typed, and touching."""

    def curve(off):
        return tuple(
            (C, centred / gap.eccentric(off) * (clearance / C) ** 3)
            for C in (clearance * (0.72 + i / 24) for i in range(24))
        )

    ends = (curve(0)[0][0], curve(0)[-1][0])
    limits = tuple(
        Series(words, tuple((C, float(t)) for C in ends), "limit")
        for words, t in (("shortest", least_time), ("longest", most_time))
    )
    return Plot(
        "Leak-down time against clearance",
        say(
            "{t} at the clearance measured; shorter than {a} is too fast, longer than {b} too slow.",
            t=time,
            a=least_time,
            b=most_time,
        ),
        Axis("Clearance, diametral", FINE),
        Axis("Time", SECONDS),
        (
            Series("", curve(eccentricity)),
            *((Series("middle", curve(0), "dashed"),) if eccentricity > 0.2 else ()),
            *((Series("touching", curve(1), "dashed"),) if eccentricity < 0.9 else ()),
            *limits,
        ),
        ((clearance, float(time), "this one"),),
    )
