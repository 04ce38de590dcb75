"""What calculators of bolts share: strength by class, friction, and the torque that makes a preload, as lines
of the working."""

from typing import Any, NamedTuple

from calc.core.result import impossible
from calc.core.working import Number, constant, step
from calc.declare.calculator import given, measured
from calc.formulas import bolt_torque
from calc.reference import sources
from calc.stations.shared.forms import COARSE, FRICTION, MPA, SHARE, SIZE

CLASSES = {  # least yield, MPa: ISO 898-1 and ISO 3506-1, SAE J429; from memory
    "5.6": ("5.6", 300),
    "8.8": ("8.8", 640),
    "10.9": ("10.9", 940),
    "12.9": ("12.9", 1100),
    "a2-70": ("A2-70, stainless", 450),
    "grade-5": ("Grade 5", 634),
    "grade-8": ("Grade 8", 896),
}
NAMES = {id: words for id, (words, _) in CLASSES.items()}
THICK_8_8 = 660e6  # Pa, class 8.8 over 16 mm
USUAL_BEARING = 1.3  # × d: mean of a hexagon's face and a medium hole
TARGET = 0.9  # of yield, torsion counted: VDI 2230


def thread_friction(hint: str, fold: bool = False) -> Any:
    """Input: friction in the thread."""
    return given(
        "Friction in the thread",
        "µ_G",
        FRICTION,
        hard="0.03 to 0.5",
        usual="0.06 to 0.25",
        fold=fold,
        assumed=("0.12", "oiled; common practice, no source"),
        hint=hint,
    )


def head_friction(fold: bool = False) -> Any:
    """Input: friction under nut or head."""
    return given(
        "Friction under nut or head",
        "µ_K",
        FRICTION,
        hard="0.03 to 0.5",
        usual="0.06 to 0.25",
        fold=fold,
        assumed=("0.12", "oiled; common practice, no source"),
    )


def friction_spread(hint: str = "") -> Any:
    """Input: by how much of itself friction may be less or more than told."""
    return given(
        "Friction may be off by",
        "w",
        SHARE,
        hard="0 to 60 %",
        usual="10 to 40 %",
        fold=True,
        assumed=("25 %", "common practice, no source"),
        hint=hint,
    )


def bearing_diameter(hard: str) -> Any:
    """Input `bearing`: the mean diameter that nut or head rubs on; may stay empty."""
    return measured(
        "Mean diameter that nut or head rubs on",
        "D_b",
        COARSE,
        tool="a calliper: half of outside plus hole",
        hard=hard,
        fold=True,
        hint="Left empty, 1.3 diameters, as of a hexagon.",
    )


def rubs_on(bearing: Number | None, nominal: Number) -> Number:
    """The diameter on which nut or head rubs, where none was measured that of a hexagon; refuses one within
    the thread."""
    rub = step(
        "D_K",
        "Mean diameter under nut or head",
        COARSE,
        USUAL_BEARING * nominal if bearing is None else bearing,
        sources.PRACTICE,
    )
    if rub <= nominal:
        raise impossible(
            "bearing",
            "is {b}, not larger than the thread of {d}; give half the sum of the face's outside and its hole",
            b=rub,
            d=nominal,
        )
    return rub


def yield_stress(strength: str, diameter: float) -> Number:
    """Least yield stress of a class, for a thread of that diameter, m."""
    thick = strength == "8.8" and diameter > 0.016 + 1e-9
    return constant(
        "R_p", "Yield stress", MPA, THICK_8_8 if thick else CLASSES[strength][1] * 1e6, sources.BOLT_CLASSES
    )


class Turned(NamedTuple):
    """What is turned as a bolt is tightened: its thread, the face that rubs, and the friction of both."""

    pitch: Number
    pitch_diameter: Number
    bearing: Number
    thread_friction: Number
    head_friction: Number


class Levers(NamedTuple):
    """Torque for each unit of preload, m: in the thread alone, which twists the bolt, and on the nut."""

    thread: Number
    nut: Number


def levers(turned: Turned, slip: Number | float | None = None, mark: str = "", words: str = "") -> Levers:
    """By ISO 16047; `slip` is the friction over that told, `mark` and `words` tell symbol and label of the
    ends of its band."""
    in_thread, under_head = (
        friction if slip is None else friction * slip
        for friction in (turned.thread_friction, turned.head_friction)
    )
    thread = step(
        f"a{mark}",
        f"Torque in the thread over preload{words}",
        SIZE,
        bolt_torque.thread_lever(turned.pitch, turned.pitch_diameter, in_thread),
        sources.ISO_16047,
    )
    return Levers(
        thread,
        step(
            f"b{mark}",
            f"Torque over preload{words}",
            SIZE,
            thread + turned.bearing / 2 * under_head,
            sources.ISO_16047,
        ),
    )


def rough_end(turned: Turned, spread: Number) -> Levers:
    """Levers where friction is more than told by that share of itself."""
    return levers(turned, 1 + spread, "_r", ", rough thread")


def slippery_end(turned: Turned, spread: Number) -> Levers:
    """Levers where it is less."""
    return levers(turned, 1 - spread, "_s", ", slippery thread")
