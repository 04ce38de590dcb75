"""What is asked of a part that is balanced by a trial mass: readings before and with it, and who it is."""

from typing import Any

from calc.core.kinds import SPEED
from calc.core.result import impossible
from calc.core.working import form
from calc.declare.calculator import Inputs, Number, choice, given, measured
from calc.stations.flywheel.grade import GRAMS, grade_limit, rotor_mass, top_speed
from calc.stations.shared.forms import DEGREES, ROUGH

PHASE, AMPLITUDES = "phase", "amplitudes"
SAME, AGAINST = "same", "against"
VIBRATION = form(SPEED, 2, "mm/s", "in/s")
PHASE_TOOL, AMPLITUDE_TOOL = "a pick-up with a mark reader", "a pick-up on the bearing"
AROUND = "-360 to 360°"
LEAST_ANSWER = 0.02  # of the first reading; less is no answer of the machine


def vibration(label: str, symbol: str, **more: Any) -> Any:
    """A reading of the pick-up; only how readings compare counts, so any steady unit serves."""
    return measured(
        label, symbol, VIBRATION, tool=AMPLITUDE_TOOL, hard="0 to 1000 mm/s", usual="0 to 100 mm/s", **more
    )


def phase(label: str, symbol: str, **more: Any) -> Any:
    return measured(label, symbol, DEGREES, tool=PHASE_TOOL, hard=AROUND, **more)


class In(Inputs):
    method: str = choice(
        "Read with",
        {PHASE: "amplitude and phase, two runs", AMPLITUDES: "amplitude alone, four runs"},
        default=PHASE,
    )
    mass: Number = rotor_mass("All that turns", "8.60 kg")
    before: Number = vibration(
        "Without trial mass",
        "V_0",
        example="1.90 mm/s",
        hint="All runs at the same speed, at the same bearing, with the pick-up untouched.",
    )
    before_at: Number = phase("Without trial mass: phase", "ψ_0", when=("method", PHASE), example="34°")
    trial: Number = given(
        "Trial mass",
        "m_t",
        GRAMS,
        hard="0.01 to 500 g",
        usual="0.5 to 50 g",
        example="8.00 g",
        hint="Weighed with its screw or clamp.",
    )
    trial_radius: Number = given(
        "Radius of the trial mass",
        "r_t",
        ROUGH,
        hard="5 to 500 mm",
        usual="30 to 200 mm",
        example="110 mm",
        hint="To the middle of the mass.",
    )
    trial_at: Number = given(
        "Trial mass at the angle",
        "α_t",
        DEGREES,
        hard=AROUND,
        when=("method", PHASE),
        example="20°",
        hint="From the mark on the part.",
    )
    with_trial: Number = vibration("With trial mass", "V_1", when=("method", PHASE), example="19.41 mm/s")
    with_trial_at: Number = phase("With trial mass: phase", "ψ_1", when=("method", PHASE), example="350°")
    sense: str = choice(
        "Phase is counted",
        {SAME: "in the same sense as angles on the part", AGAINST: "against it, as a lag"},
        default=SAME,
        when=("method", PHASE),
        hint="Try it: a mass moved on by 90° must move the phase of its own answer on by 90°.",
    )
    at_0: Number = vibration("Trial mass at 0°", "V_1", when=("method", AMPLITUDES), example="19.80 mm/s")
    at_120: Number = vibration("Trial mass at 120°", "V_2", when=("method", AMPLITUDES), example="19.41 mm/s")
    at_240: Number = vibration("Trial mass at 240°", "V_3", when=("method", AMPLITUDES), example="16.77 mm/s")
    radius: Number = given(
        "Radius of the correction", "R", ROUGH, hard="5 to 500 mm", usual="30 to 200 mm", example="110 mm"
    )
    speed: Number = top_speed()
    grade: Number = grade_limit()


def refuse_impossible(i: In) -> None:
    if not float(i.before):
        raise impossible("before", "is nothing, so that there is nothing to balance; give what was read")
