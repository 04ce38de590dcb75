"""What is asked of a hole that gets a thread insert."""

from calc.declare.calculator import Inputs, Number, choice, given, measured
from calc.stations.shared.asked import material_of
from calc.stations.shared.clamped import clamps, hot_over_cold, known_hot
from calc.stations.shared.forms import COARSE, DEGREES_C, KILONEWTON, ROUGH_TIMES, TIMES
from calc.stations.shared.thread_sizes import SIZES

WIRE, SOLID, KEY = "wire", "solid", "key"
KINDS = {WIRE: "Wire thread insert", SOLID: "Solid thin-wall insert", KEY: "Key-locking insert"}
PARENTS = ("mg-az91", "al-si-t6", "al-si-cu-t6", "grey-iron", "ductile-iron")
BLIND, THROUGH = "blind", "through"
UNTOLD = "none"


class In(Inputs):
    thread: str = choice("Thread of the stud", SIZES, must=True, example="M10x1.5")
    casting: str = choice(
        "Hole is in",
        {"crankcase": "The crankcase", "head": "A cylinder head"},
        must=True,
        example="crankcase",
    )
    parent: str = material_of("Its metal", PARENTS, feature="{casting}.alloy", example="mg-az91", fold=False)
    clamped: str = clamps()
    length: Number = given(
        "Insert's length, in diameters",
        "q",
        TIMES,
        hard="0.5 to 4",
        usual="1 to 3",
        hint="A wire insert's nominal length, set.",
        example="2.5",
    )
    metal: Number = measured(
        "Metal from face to far side",
        "m",
        COARSE,
        tool="a calliper or depth gauge",
        hard="2 to 300 mm",
        usual="8 to 120 mm",
        hint="To whatever lies under the hole first: outside, oil way, spigot bore.",
        example="40 mm",
    )
    edge: Number = measured(
        "Centre of the hole to the nearest edge",
        "e",
        COARSE,
        tool="a calliper",
        hard="1 to 300 mm",
        usual="5 to 100 mm",
        hint="Or to the next hole's wall.",
        example="20 mm",
    )
    preload: Number = given(
        "Preload wanted of the stud, cold",
        "F",
        KILONEWTON,
        hard="0.1 to 400 kN",
        usual="1 to 120 kN",
        hint="Where only the torque is known, the torque calculator tells it.",
        example="13 kN",
    )
    kind: str = choice("Insert", KINDS, must=True, example=WIRE)
    outside: str = choice(
        "Thread on the outside of a solid insert",
        {UNTOLD: "(wire insert: follows from the stud's)"} | SIZES,
        must=True,
        when=("kind", SOLID, KEY),
        example=UNTOLD,
    )
    way: str = choice("Hole is", {BLIND: "blind", THROUGH: "right through"}, default=BLIND)
    slip: Number = given(
        "Preload of a slippery thread over that wanted",
        "k_s",
        TIMES,
        hard="1 to 2",
        usual="1.1 to 1.5",
        fold=True,
        assumed=("1.25", "friction a quarter less than meant; common practice, no source"),
        hint="The torque calculator tells both; 1 where the stud's stretch is read.",
    )
    hot: Number = hot_over_cold()
    hot_force: Number | None = known_hot()
    under: Number = given(
        "Insert's top under the face, in pitches",
        "n_s",
        TIMES,
        hard="-4 to 6",
        usual="0.25 to 1",
        fold=True,
        assumed=("0.5", "common practice, no source"),
        hint="Common practice: a quarter to one pitch.",
    )
    lead: Number = given(
        "Lead of the tap, in pitches",
        "n_l",
        ROUGH_TIMES,
        hard="0.5 to 10",
        usual="1.5 to 5",
        fold=True,
        assumed=("2", "a bottoming tap"),
        when=("way", BLIND),
        hint="Bottoming tap about 2, plug tap 4 to 5.",
    )
    floor_least: Number = given(
        "Metal wanted under the hole",
        "f_min",
        COARSE,
        hard="0 to 50 mm",
        usual="1 to 10 mm",
        fold=True,
        assumed=("2 mm", "common practice, no source"),
    )
    temperature: Number = given(
        "Running temperature round the hole",
        "T",
        DEGREES_C,
        hard="-40 to 200 °C",
        usual="20 to 180 °C",
        feature="{casting}.running_temperature",
        hint="A case about 90 to 110 °C, a head 150 °C and more at its studs.",
    )
    safety_least: Number = given(
        "Hot pull over preload wanted",
        "S_min",
        TIMES,
        hard="1 to 10",
        usual="1.25 to 4",
        fold=True,
        assumed=("2", "common practice, no source"),
    )
