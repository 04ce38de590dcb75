"""What is asked of a plunger and its leak-down test."""

from calc.core.working import Number
from calc.declare.calculator import Inputs, choice, given, limit, measured
from calc.stations.shared.forms import COARSE, DEGREES, DEGREES_C, FINE, NEWTON, ROUGH, SECONDS, TIMES, TURNS
from calc.stations.shared.oil_asked import (
    COOL_TEMPERATURE,
    COOL_VISCOSITY,
    DENSITY_AT_15,
    WARM_TEMPERATURE,
    WARM_VISCOSITY,
)
from calc.stations.shared.oil_at import CHOICES, GRADES, POINTS

SINK = "usual; only for how far it sinks in the running engine"
# workshop procedures use thin test fluid only, under 50 lbf, and time 20 to 90 or 20 to 110 s; found in
# public material
TEST_FLUIDS = ("iso-vg-10", POINTS)


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
        hint="The tester's own thin fluid: the times accepted do not hold for engine oil.",
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
        fold=True,
    )
    travel: Number = given(
        "Travel that is timed",
        "s",
        COARSE,
        hard="0.05 to 20 mm",
        usual="0.5 to 5 mm",
        feature="lifter.leak_down_travel",
        fold=True,
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
        "Plunger off centre",
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
