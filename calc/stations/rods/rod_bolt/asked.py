"""What is asked of rod bolts."""

from calc.core.kinds import COUNT, MASS
from calc.core.working import form
from calc.declare.calculator import Inputs, Number, choice, given, limit, measured
from calc.reference.standards.threads import THREADS
from calc.stations.shared import bolts
from calc.stations.shared.forms import (
    COARSE,
    FRICTION,
    GPA,
    KILONEWTON,
    ROUGH,
    ROUGH_TIMES,
    SIZE,
    TIGHTENING,
    TURNS,
)
from calc.stations.shared.thread_sizes import SIZES

TORQUE, STRETCH = "torque", "stretch"
ENDS, FREE = "ends", "free"
ROD_THREADS = {id: words for id, words in SIZES.items() if 0.006 <= THREADS[id].d <= 0.0130}
GRAMS = form(MASS, 0)


class In(Inputs):
    known: str = choice("The maker gives", {TORQUE: "the torque", STRETCH: "the stretch"}, default=TORQUE)
    torque: Number = given(
        "Torque",
        "T_g",
        TIGHTENING,
        hard="1 to 300 N·m",
        usual="10 to 90 N·m",
        feature="torque.rod_nut",
        when=("known", TORQUE),
        hint="Used where the torque is given.",
    )
    least_torque: Number | None = limit(
        "Torque allowed, least",
        "T_min",
        TIGHTENING,
        feature="torque.rod_nut",
        which="low",
        hard="0 to 300 N·m",
        usual="10 to 90 N·m",
        when=("known", TORQUE),
    )
    most_torque: Number | None = limit(
        "Torque allowed, most",
        "T_max",
        TIGHTENING,
        feature="torque.rod_nut",
        which="high",
        hard="1 to 300 N·m",
        usual="10 to 90 N·m",
        when=("known", TORQUE),
    )
    stretch: Number = measured(
        "Stretch",
        "ΔL_g",
        SIZE,
        tool="a micrometer over the bolt's ends, free and tight",
        hard="0.005 to 1 mm",
        usual="0.03 to 0.25 mm",
        feature="rod.bolt_stretch",
        must=True,
        stage="finished",
        when=("known", STRETCH),
        hint="Used where the stretch is given.",
    )
    read_over: str = choice(
        "Stretch is",
        {ENDS: "over the bolt's ends, head and nut in it", FREE: "of what lies free between head and nut"},
        hint="A micrometer over both ends reads the head and the thread in the nut too.",
        default=ENDS,
    )
    thread: str = choice("Thread", ROD_THREADS, must=True, example="M9x1")
    strength: str = choice("Class of the bolt", bolts.NAMES, must=True, example="10.9")
    speed: Number = given(
        "Highest speed",
        "n",
        TURNS,
        hard="100 1/ to 15000 1/min",
        usual="1500 1/ to 7500 1/min",
        feature="crank.top_speed",
        hint="The highest that it may ever see.",
        fold=True,
    )
    thread_friction: Number = bolts.thread_friction("Oiled about 0.12.", fold=True)
    head_friction: Number = bolts.head_friction(fold=True)
    spread: Number = bolts.friction_spread("Stretch is taken as read to 5 %.")
    bearing: Number | None = bolts.bearing_diameter("6 to 40 mm")
    shank: Number = measured(
        "Shank, diameter",
        "d_S",
        COARSE,
        tool="a micrometer",
        hard="3 to 16 mm",
        usual="5 to 13 mm",
        feature="rod.bolt_shank",
        fold=True,
    )
    shank_length: Number = measured(
        "Shank, length under the head",
        "l_S",
        ROUGH,
        tool="a calliper",
        hard="0 to 120 mm",
        usual="15 to 70 mm",
        feature="rod.bolt_shank_length",
        fold=True,
    )
    thread_length: Number = measured(
        "Free thread, to the nut",
        "l_G",
        ROUGH,
        tool="a calliper",
        hard="0.5 to 80 mm",
        usual="2 to 30 mm",
        feature="rod.bolt_free_thread",
        fold=True,
        hint="What lies free only: nothing inside head or nut.",
    )
    stiffness: Number = given(
        "Stiffness of the bolt's steel",
        "E",
        GPA,
        hard="90 to 240 GPa",
        usual="195 to 215 GPa",
        fold=True,
        assumed=("205 GPa", "of any steel bolt"),
    )
    piston_mass: Number = measured(
        "Piston with pin, rings and clips",
        "m_K",
        GRAMS,
        tool="a balance",
        hard="20 to 5000 g",
        usual="200 to 1200 g",
        feature="piston.mass",
        stage="",
        fold=True,
    )
    small_end: Number = measured(
        "Small end of the rod, hung level",
        "m_S",
        GRAMS,
        tool="a balance",
        hard="10 to 3000 g",
        usual="60 to 600 g",
        feature="rod.small_end_mass",
        stage="",
        fold=True,
    )
    big_end: Number = measured(
        "Big end of the rod, hung level, with cap",
        "m_B",
        GRAMS,
        tool="a balance",
        hard="20 to 5000 g",
        usual="150 to 1200 g",
        feature="rod.big_end_mass",
        stage="",
        fold=True,
    )
    cap: Number = measured(
        "Cap alone",
        "m_C",
        GRAMS,
        tool="a balance",
        hard="5 to 3000 g",
        usual="50 to 500 g",
        feature="rod.cap_mass",
        stage="",
        fold=True,
    )
    throw: Number = given(
        "Throw",
        "r",
        COARSE,
        hard="10 to 120 mm",
        usual="25 to 55 mm",
        feature="crank.throw",
        fold=True,
        hint="Half the stroke.",
    )
    rod_length: Number = given(
        "Rod, centre to centre",
        "l",
        COARSE,
        hard="50 to 400 mm",
        usual="90 to 220 mm",
        feature="rod.centre_distance",
        fold=True,
    )
    bolts: Number = given(
        "Bolts in a cap",
        "z",
        form(COUNT, 0),
        hard="2 to 4",
        usual="2 to 4",
        fold=True,
        assumed=("2", "as nearly every rod has"),
    )
    joint_share: Number = given(
        "Share of the pull that a bolt feels",
        "Φ",
        FRICTION,
        hard="0 to 0.9",
        usual="0.1 to 0.4",
        fold=True,
        assumed=("0.25", "a soft bolt in a stiff joint; common practice, no source"),
        hint="Soft bolt in a stiff joint 0.15 to 0.3; common practice, no source.",
    )
    crush: Number = given(
        "Force that closes the shells, for each bolt",
        "F_S",
        KILONEWTON,
        hard="0 to 50 kN",
        usual="0 to 6 kN",
        feature="rod.shell_crush",
        fold=True,
        hint="What the shells' crush takes of the preload.",
    )
    least_margin: Number = given(
        "Clamp wanted over what opens the joint",
        "S_w",
        ROUGH_TIMES,
        hard="1 to 10",
        usual="1.2 to 4",
        fold=True,
        assumed=("1.5", "common practice, no source"),
    )
