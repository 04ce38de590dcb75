"""What a stud's preload becomes in heat, asked alike by every calculator that is judged with it."""

from calc.core.kinds import FORCE, RATIO
from calc.core.working import form, step
from calc.declare.calculator import choice, given

KN = form(FORCE, 1, "kN", "lbf")
CYLINDER, OTHER = "cylinder", "other"
CLAMPS = {CYLINDER: "An air-cooled cylinder with its head", OTHER: "Anything else"}
HOT = "1.5"  # see tests/formulas/test_hot_stud.py: two springs, cylinder 160 °C, head 150 °C, stud 100 °C


def clamps():
    """Input: what the stud clamps."""
    return choice(
        "What it clamps",
        CLAMPS,
        must=True,
        example=CYLINDER,
        hint="Head and cylinder get hotter than their studs and stretch them.",
    )


def hot_over_cold():
    """Input: how much more a stud of an air-cooled cylinder pulls at heat."""
    return given(
        "Preload hot over cold",
        "k_h",
        form(RATIO, 2),
        hard="1 to 3",
        usual="1.2 to 1.8",
        fold=True,
        assumed=(HOT, "a stud of an air-cooled cylinder; common practice, no source"),
        when=("clamped", CYLINDER),
    )


def known_hot():
    """Input: the hot preload itself."""
    return given(
        "Preload hot, if you know it",
        "F_h,own",
        KN,
        hard="0.05 to 1000 kN",
        usual="0.5 to 300 kN",
        fold=True,
        hint="From the sizes and temperatures of stud, cylinder and head.",
    )


def hot_preload(cold, clamped, factor, known, slippery=None):
    """Preload at heat. Heat adds the same to a stud that friction let become tighter or slacker (`slippery`) than it was meant to be, `cold`."""
    at = cold if slippery is None else slippery
    if known is not None:
        return (
            known
            if slippery is None
            else step("F_h", "Preload hot, slippery end", KN, known + (slippery - cold))
        )
    return (
        step(
            "F_h",
            "Preload hot" + (", slippery end" if slippery is not None else ""),
            KN,
            at + (factor - 1) * cold,
        )
        if clamped == CYLINDER
        else at
    )
