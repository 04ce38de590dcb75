"""What is asked of an oil hole."""

from calc.core.kinds import PRESSURE, VOLUME
from calc.core.working import Number, form
from calc.declare.calculator import Inputs, choice, given, measured
from calc.stations.shared.forms import COARSE, DEGREES, DEGREES_C, FINE, SECONDS, SHARE, SIZE, TIMES, TURNS
from calc.stations.shared.oil_asked import (
    COOL_TEMPERATURE,
    COOL_VISCOSITY,
    DENSITY_AT_15,
    WARM_TEMPERATURE,
    WARM_VISCOSITY,
)
from calc.stations.shared.oil_at import CHOICES


class In(Inputs):
    hole: Number = measured(
        "Hole",
        "d",
        COARSE,
        tool="pin gauges",
        hard="0.2 to 8 mm",
        usual="0.6 to 3 mm",
        feature="lifter.oil_hole",
        stage="finished",
    )
    pressure: Number = given(
        "Oil pressure at the lifter, idling",
        "p",
        form(PRESSURE, 0),
        hard="1 to 2000 kPa",
        usual="30 to 600 kPa",
        hint="Above what stands in the lifter: the gauge's reading, or less at the far end of the gallery.",
        example="100 kPa",
    )
    oil: str = choice("Oil", CHOICES, must=True, example="sae-20w-50")
    oil_temperature: Number = given(
        "Oil temperature",
        "T",
        DEGREES_C,
        hard="-30 to 180 °C",
        usual="-20 to 130 °C",
        hint="Try the coldest start as well as the hottest idle.",
        example="100 °C",
    )
    sink: Number = given(
        "Plunger sinks in one opening",
        "z",
        SIZE,
        hard="0.0005 to 5 mm",
        usual="0.001 to 0.3 mm",
        hint="From “Leak-down of a plunger”, with a margin for a worn one.",
        example="0.020 mm",
    )
    wall: Number = measured(
        "Length of the hole",
        "L",
        COARSE,
        tool="a calliper: the wall where it goes through",
        hard="0.2 to 40 mm",
        usual="0.8 to 10 mm",
        feature="lifter.oil_hole_length",
        fold=True,
    )
    plunger: Number = measured(
        "Plunger",
        "D_p",
        FINE,
        tool="a micrometer",
        hard="3 to 60 mm",
        usual="8 to 30 mm",
        feature="lifter.plunger",
        stage="",
        fold=True,
    )
    groove: Number = measured(
        "Oil groove of the body, width",
        "b",
        COARSE,
        tool="a calliper",
        hard="0.5 to 20 mm",
        usual="1.5 to 8 mm",
        feature="lifter.oil_groove",
        fold=True,
    )
    speed: Number = given(
        "Engine speed",
        "n",
        TURNS,
        hard="50 1/ to 12000 1/min",
        usual="100 1/ to 6000 1/min",
        feature="crank.idle_speed",
        fold=True,
    )
    meeting: Number = given(
        "Hole and gallery meet for, at the crank",
        "α_m",
        DEGREES,
        hard="5 to 720°",
        usual="120 to 500°",
        feature="lifter.feed_angle",
        fold=True,
        hint="While the valve is shut, out of 720°.",
    )
    most_share: Number = given(
        "Share of the time that may be used",
        "U_max",
        SHARE,
        hard="1 to 100 %",
        usual="20 to 80 %",
        fold=True,
        assumed=("50 %", "a half; common practice, no source"),
    )
    empty: Number = given(
        "Oil that an empty lifter takes",
        "V_e",
        form(VOLUME, 2),
        hard="0.01 to 50 cm³",
        usual="0.2 to 5 cm³",
        feature="lifter.oil_volume",
        fold=True,
    )
    most_running: Number = given(
        "Noise accepted until it is full",
        "t_r,max",
        SECONDS,
        hard="0.1 to 600 s",
        usual="2 to 60 s",
        fold=True,
        assumed=("10 s", "common practice, no source"),
    )
    discharge: Number = given(
        "Discharge coefficient of the edge",
        "C",
        TIMES,
        hard="0.3 to 1",
        usual="0.6 to 0.85",
        fold=True,
        assumed=("0.65", "a sharp edge; handbooks, from memory"),
        hint="0.62 sharp and thin, 0.8 in a hole of two diameters' length.",
    )
    cool_temperature: Number = COOL_TEMPERATURE
    cool_viscosity: Number = COOL_VISCOSITY
    warm_temperature: Number = WARM_TEMPERATURE
    warm_viscosity: Number = WARM_VISCOSITY
    density: Number = DENSITY_AT_15
