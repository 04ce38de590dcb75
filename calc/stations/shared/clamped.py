"""What a stud's preload becomes in heat, asked alike by every calculator that is judged with it."""

from typing import Any

from calc.core.result import Remark, note
from calc.core.working import Number, step
from calc.declare.calculator import choice, given
from calc.stations.shared.forms import KILONEWTON, TIMES

CYLINDER, OTHER = "cylinder", "other"
CLAMPS = {CYLINDER: "An air-cooled cylinder with its head", OTHER: "Anything else"}
HOT = "1.5"  # see tests/formulas/test_hot_stud.py: two springs, cylinder 160 °C, head 150 °C, stud 100 °C


def clamps() -> Any:
    """Input: what the stud clamps."""
    return choice(
        "What it clamps",
        CLAMPS,
        must=True,
        example=CYLINDER,
        hint="Head and cylinder get hotter than their studs and stretch them.",
    )


def hot_over_cold() -> Any:
    """Input: how much more a stud of an air-cooled cylinder pulls at heat."""
    return given(
        "Preload hot over cold",
        "k_h",
        TIMES,
        hard="1 to 3",
        usual="1.2 to 1.8",
        fold=True,
        assumed=(HOT, "a stud of an air-cooled cylinder; common practice, no source"),
        when=("clamped", CYLINDER),
    )


def known_hot() -> Any:
    """Input: the hot preload itself."""
    return given(
        "Preload hot, if you know it",
        "F_h,own",
        KILONEWTON,
        hard="0.05 to 1000 kN",
        usual="0.5 to 300 kN",
        fold=True,
        hint="“Preload of a stud, hot and in frost” works it out, of this cold preload.",
    )


def hot_preload(cold: Number, clamped: str, factor: Number, known: Number | None, slippery: Number) -> Number:
    """Preload at heat of a stud that friction let become tighter (`slippery`) than it was meant to be,
    `cold`: heat adds the same."""
    if known is not None:
        return step("F_h", "Preload hot, slippery thread", KILONEWTON, known + (slippery - cold))
    if clamped == CYLINDER:
        return step("F_h", "Preload hot, slippery thread", KILONEWTON, slippery + (factor - 1) * cold)
    return slippery


def grows_more(clamped: str, factor: Number, known: Number | None) -> Remark | None:
    """What is remarked where a hot preload was counted by its factor."""
    if clamped != CYLINDER or known is not None:
        return None
    return note(
        "Head and cylinder grow more than the stud: hot it pulls {k} times as hard as it was set.", k=factor
    )
