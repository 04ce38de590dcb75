"""What is asked of a set that is balanced in two planes: three runs, each read at both bearings."""

from typing import Any

from calc.core.result import impossible
from calc.declare.calculator import Inputs, Number, Rows, choice, column, given, grid
from calc.stations.flywheel.balance_trial.asked import AGAINST, AROUND, SAME, VIBRATION
from calc.stations.flywheel.grade import GRAMS, grade_limit, rotor_mass, top_speed
from calc.stations.shared.forms import DEGREES, ROUGH

RUNS = ("none", "trial in A", "trial in B")


def _mass(plane: str, symbol: str, example: str) -> Any:
    return given(
        f"Trial mass in plane {plane}",
        symbol,
        GRAMS,
        hard="0.01 to 500 g",
        usual="0.5 to 50 g",
        example=example,
    )


def _radius(label: str, symbol: str, example: str) -> Any:
    return given(label, symbol, ROUGH, hard="5 to 500 mm", usual="30 to 200 mm", example=example)


def _angle(plane: str, symbol: str, example: str) -> Any:
    return given(f"Trial mass in plane {plane} at", symbol, DEGREES, hard=AROUND, example=example)


def _column(bearing: str, symbol: str) -> tuple[Any, Any]:
    return (
        column(f"At {bearing}", symbol, VIBRATION, hard="0 to 1000 mm/s", usual="0 to 100 mm/s"),
        column(f"At {bearing}: phase", f"ψ_{bearing}", DEGREES, hard=AROUND),
    )


class In(Inputs):
    readings: Rows = grid(
        "Readings at both bearings",
        rows=RUNS,
        columns=(*_column("A", "V_A"), *_column("B", "V_B")),
        least=3,
        tool="two pick-ups and a mark reader",
        hint=(
            "Bearing A is the one beside plane A. All three runs at one speed; the first trial mass comes off"
            " before the second goes on."
        ),
        example="8.35; 88; 5.80; 262 | 30.10; 60; 32.82; 249 | 87.52; 339; 51.42; 145",
    )
    sense: str = choice(
        "Phase is counted",
        {SAME: "in the same sense as angles on the part", AGAINST: "against it, as a lag"},
        default=SAME,
    )
    trial_a: Number = _mass("A", "m_a", "8.00 g")
    trial_a_radius: Number = _radius("Radius of that", "r_a", "70 mm")
    trial_a_at: Number = _angle("A", "α_a", "0°")
    trial_b: Number = _mass("B", "m_b", "10.00 g")
    trial_b_radius: Number = _radius("Radius of that one", "r_b", "120 mm")
    trial_b_at: Number = _angle("B", "α_b", "90°")
    radius_a: Number = _radius("Radius of the correction in A", "R_A", "70 mm")
    radius_b: Number = _radius("Radius of the correction in B", "R_B", "120 mm")
    mass: Number = rotor_mass("All that turns", "21.00 kg")
    planes_apart: Number = given(
        "Distance of the two planes",
        "L",
        ROUGH,
        hard="20 to 1500 mm",
        usual="100 to 500 mm",
        example="310 mm",
    )
    b_to_mass: Number = given(
        "From plane B to the centre of mass",
        "c",
        ROUGH,
        hard="0 to 1500 mm",
        usual="30 to 400 mm",
        example="105 mm",
        hint="Where the whole set lies level on one edge.",
    )
    speed: Number = top_speed()
    grade: Number = grade_limit()


def refuse_impossible(i: In) -> None:
    if i.b_to_mass > i.planes_apart:
        raise impossible(
            "b_to_mass",
            "is {c}, past plane A, {L} away; give at most {L}, or choose planes on both sides of it",
            c=i.b_to_mass,
            L=i.planes_apart,
        )
