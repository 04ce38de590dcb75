"""What is asked: the lifter, its bore at the gallery and at both ends, the oil, and what the pump gives."""

from typing import Any

from calc.core.kinds import FLOW, PRESSURE, RATIO
from calc.core.working import form
from calc.declare.calculator import Inputs, Number, choice, given, limit, measured
from calc.stations.shared.forms import DEGREES_C, ROUGH, SHARE, SIZE, TIMES
from calc.stations.shared.oil_asked import (
    COOL_TEMPERATURE,
    COOL_VISCOSITY,
    DENSITY_AT_15,
    WARM_TEMPERATURE,
    WARM_VISCOSITY,
)
from calc.stations.shared.oil_at import CHOICES


def _end(label: str, symbol: str, example: str, hint: str) -> Any:
    return measured(
        label,
        symbol,
        SIZE,
        tool="a small bore gauge",
        hard="5 to 60 mm",
        usual="10 to 32 mm",
        example=example,
        feature="crankcase.lifter_bore",
        stage="",
        hint=hint,
    )


def _length(label: str, symbol: str, feature: str) -> Any:
    return given(
        label,
        symbol,
        ROUGH,
        hard="1 to 100 mm",
        usual="4 to 40 mm",
        feature=feature,
        fold=True,
        hint="From the gallery's hole to that end, as far as the lifter covers it.",
    )


class In(Inputs):
    gallery: Number = measured(
        "Lifter bore, at the gallery",
        "D_g",
        SIZE,
        tool="a small bore gauge set in a ring",
        hard="5 to 60 mm",
        usual="10 to 32 mm",
        feature="crankcase.lifter_bore",
        hint="Just beside the gallery's hole, the largest across.",
    )
    cam_end: Number = _end("Lifter bore, at the cam's end", "D_i", "21.022 mm", "The largest across.")
    tube_end: Number = _end(
        "Lifter bore, at the pushrod's end", "D_o", "21.034 mm", "Mostly the bell mouth: the largest across."
    )
    lifter: Number = measured(
        "Lifter body, smallest",
        "d",
        SIZE,
        tool="a micrometer",
        hard="5 to 60 mm",
        usual="10 to 32 mm",
        feature="lifter.body",
        hint="The one that goes into this bore.",
    )
    worn: Number = limit(
        "Lifter's clearance at which it is worn",
        "C_max",
        SIZE,
        feature="lifter.clearance",
        which="wear",
        hard="0.02 to 0.5 mm",
        usual="0.05 to 0.2 mm",
    )
    pump: Number = limit(
        "Pump gives, hot and idling",
        "Q_p",
        form(FLOW, 0),
        feature="crankcase.pump_idle_flow",
        which="nominal",
        hard="100 to 100000 cm³/min",
        usual="500 to 20000 cm³/min",
        hint="Its displacement times its speed, less what a worn pump loses.",
    )
    pressure: Number = given(
        "Oil pressure at the gallery, hot and idling",
        "p",
        form(PRESSURE, 0),
        hard="5 to 1000 kPa",
        usual="30 to 500 kPa",
        feature="crankcase.idle_oil_pressure",
        fold=True,
        assumed=("100 kPa", "common practice, no source"),
    )
    cam_length: Number = _length(
        "Length that seals, gallery to the cam's end", "L_i", "crankcase.lifter_seal_cam"
    )
    tube_length: Number = _length(
        "Length that seals, gallery to the pushrod's end", "L_o", "crankcase.lifter_seal_tube"
    )
    eccentricity: Number = given(
        "Lifter off centre",
        "ε",
        TIMES,
        hard="0 to 1",
        fold=True,
        assumed=("0.80", "the cam pushes it aside; common practice, no source"),
        hint="0 in the middle, 1 touching where it is narrowest.",
    )
    bores: Number = given(
        "Lifter bores on the gallery",
        "n",
        form(RATIO, 0),
        hard="1 to 32",
        usual="4 to 16",
        fold=True,
        assumed=("8", "an engine of four cylinders"),
    )
    oil: str = choice(
        "Oil in the engine", CHOICES, fold=True, assumed=("sae-20w-50", "common practice, no source")
    )
    oil_temperature: Number = given(
        "Oil's temperature",
        "T",
        DEGREES_C,
        hard="-30 to 180 °C",
        usual="60 to 130 °C",
        feature="crankcase.oil_temperature",
        fold=True,
        assumed=("100 °C", "common practice, no source"),
    )
    cool_temperature: Number = COOL_TEMPERATURE
    cool_viscosity: Number = COOL_VISCOSITY
    warm_temperature: Number = WARM_TEMPERATURE
    warm_viscosity: Number = WARM_VISCOSITY
    density: Number = DENSITY_AT_15
    fair: Number = given(
        "Share of the pump's flow that may leak here",
        "S_1",
        SHARE,
        hard="1 to 90 %",
        usual="5 to 30 %",
        fold=True,
        assumed=("20 %", "common practice, no source"),
    )
    most: Number = given(
        "Share at which the bearings go short",
        "S_2",
        SHARE,
        hard="2 to 95 %",
        usual="20 to 50 %",
        fold=True,
        assumed=("35 %", "common practice, no source"),
    )
