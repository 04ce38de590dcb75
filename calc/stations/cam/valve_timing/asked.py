"""What is asked of a cam's timing: four events, or durations and centres."""

from typing import Any

from calc.declare.calculator import Inputs, Number, choice, given, limit, measured
from calc.stations.shared.forms import COARSE, TENTHS_OF_DEGREE

EVENTS, LOBES = "events", "lobes"
_WHEEL = "a degree wheel and a dial gauge"


def _event(label: str, symbol: str, example: str, hint: str = "") -> Any:
    return measured(
        label,
        symbol,
        TENTHS_OF_DEGREE,
        tool=_WHEEL,
        hard="-90 to 150°",
        usual="-30 to 90°",
        example=example,
        hint=hint,
        when=("known", EVENTS),
    )


def _duration(label: str, symbol: str) -> Any:
    return measured(
        label,
        symbol,
        TENTHS_OF_DEGREE,
        tool=_WHEEL,
        hard="150 to 360°",
        usual="180 to 320°",
        feature="cam.duration",
        when=("known", LOBES),
    )


def _centre(label: str, symbol: str, feature: str) -> Any:
    return measured(
        label,
        symbol,
        TENTHS_OF_DEGREE,
        tool=_WHEEL,
        hard="60 to 150°",
        usual="95 to 125°",
        feature=feature,
        stage="",  # the verdict holds it against the same limits, and knows what is done next
        when=("known", LOBES),
    )


def _limit(label: str, symbol: str, feature: str, which: str) -> Any:
    return limit(
        label, symbol, TENTHS_OF_DEGREE, feature=feature, which=which, hard="60 to 150°", usual="95 to 125°"
    )


class In(Inputs):
    known: str = choice(
        "Known are",
        {EVENTS: "the four events", LOBES: "durations and lobe centres"},
        default=EVENTS,
        hint="One gives the other.",
    )
    intake_opens: Number = _event(
        "Intake opens before top dead centre",
        "IO",
        "1°",
        "All four in degrees of the crank. Minus where it lies on the other side of its dead centre.",
    )
    intake_closes: Number = _event("Intake closes after bottom dead centre", "IC", "35°")
    exhaust_opens: Number = _event("Exhaust opens before bottom dead centre", "EO", "39°")
    exhaust_closes: Number = _event("Exhaust closes after top dead centre", "EC", "-3°")
    intake_duration: Number = _duration("Intake open for", "D_i")
    exhaust_duration: Number = _duration("Exhaust open for", "D_e")
    intake_centre: Number = _centre("Intake centre after top dead centre", "C_i", "cam.centre_intake")
    exhaust_centre: Number = _centre("Exhaust centre before top dead centre", "C_e", "cam.centre_exhaust")
    checking: Number | None = given(
        "Lift at which all this is told",
        "h_c",
        COARSE,
        hard="0 to 5 mm",
        usual="0 to 2 mm",
        feature="cam.checking_lift",
        fold=True,
        hint="It changes nothing here; at another lift the events are other ones.",
    )
    intake_low: Number = _limit("Intake centre, least", "C_i,min", "cam.centre_intake", "low")
    intake_high: Number = _limit("Intake centre, most", "C_i,max", "cam.centre_intake", "high")
    exhaust_low: Number = _limit("Exhaust centre, least", "C_e,min", "cam.centre_exhaust", "low")
    exhaust_high: Number = _limit("Exhaust centre, most", "C_e,max", "cam.centre_exhaust", "high")
