"""What is asked: lift, valve, seat and throat; for an intake, engine and air too."""

from calc.declare.calculator import Inputs, Number, given, measured, which_valve
from calc.stations.heads.cylinder import cylinder_bore, stroke
from calc.stations.shared.forms import COARSE, DEGREES_C, TENTHS_OF_DEGREE, TIMES, TURNS

INTAKE = "intake"


class In(Inputs):
    valve: str = which_valve("The Mach index is judged for the intake only.")
    lift: Number = measured(
        "Valve lift, full",
        "L",
        COARSE,
        tool="a dial gauge on the retainer",
        hard="0 to 30 mm",
        usual="5 to 15 mm",
        feature="valve.lift",
        stage="",
    )
    valve_head: Number = measured(
        "Valve head diameter",
        "D",
        COARSE,
        tool="a calliper",
        hard="10 to 80 mm",
        usual="25 to 55 mm",
        feature="head.valve_head_{valve}",
    )
    seat_inner: Number = measured(
        "Seat, inner edge",
        "D_i",
        COARSE,
        tool="a calliper on the dyed seat",
        hard="6 to 79 mm",
        usual="20 to 52 mm",
        feature="head.seat_inner_{valve}",
    )
    throat: Number = measured(
        "Throat under the seat",
        "D_t",
        COARSE,
        tool="a telescopic gauge, at the narrowest place",
        hard="5 to 79 mm",
        usual="18 to 50 mm",
        feature="port.throat_{valve}",
        stage="",
    )
    stem: Number = measured(
        "Stem in the throat",
        "D_s",
        COARSE,
        tool="a micrometer",
        hard="2 to 20 mm",
        usual="5 to 12 mm",
        feature="valve.stem_{valve}",
    )
    engine_speed: Number = given(
        "Engine speed",
        "n",
        TURNS,
        hard="100 1/ to 12000 1/min",
        usual="1500 1/ to 7500 1/min",
        feature="crank.top_speed",
        when=("valve", INTAKE),
        fold=True,
    )
    seat_angle: Number = given(
        "Seat angle",
        "β",
        TENTHS_OF_DEGREE,
        hard="15 to 65°",
        usual="30 to 46°",
        feature="head.seat_angle",
        fold=True,
        hint="From the plane square to the stem.",
    )
    bore: Number = cylinder_bore(when=("valve", INTAKE))
    stroke: Number = stroke(when=("valve", INTAKE))
    flow_coefficient: Number = given(
        "Flow coefficient, mean over the opening",
        "C_i",
        TIMES,
        hard="0.1 to 0.7",
        usual="0.28 to 0.45",
        fold=True,
        hint="Of the valve head's area. A flow bench tells.",
        assumed=("0.35", "0.3 to 0.4 for two valves; from memory"),
        when=("valve", INTAKE),
    )
    temperature: Number = given(
        "Air at the valve",
        "T",
        DEGREES_C,
        hard="-40 to 200 °C",
        usual="0 to 80 °C",
        fold=True,
        assumed=("40 °C", "warmed by the port; common practice, no source"),
        when=("valve", INTAKE),
    )
    most_mach: Number = given(
        "Mach index, most",
        "Z_max",
        TIMES,
        hard="0.1 to 1.5",
        usual="0.4 to 0.7",
        fold=True,
        assumed=("0.60", "filling falls off above it; common practice, no source"),
        when=("valve", INTAKE),
    )
