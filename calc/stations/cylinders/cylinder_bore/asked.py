"""What is asked of a set of cylinders: their bores at three heights, how warm they were, the pistons that
run in
them, and what they are held to."""

from typing import Any

from calc.core.result import impossible
from calc.core.working import Number
from calc.declare.calculator import Inputs, Rows, choice, column, given, grid, limit, measured
from calc.stations.shared.forms import ALPHA, COARSE, DEGREES_C, SIZE

CYLINDERS, HEIGHTS = ("1", "2", "3", "4"), ("top", "middle", "bottom")
OLD, FREE = "old", "free"
BORES, USUAL = "20 to 200 mm", "60 to 130 mm"
WARM = "-20 to 150 °C"


def _limit_of(
    words: str, symbol: str, feature: str, which: str, hard: str, usual: str, hint: str = ""
) -> Any:
    return limit(words, symbol, SIZE, feature=feature, which=which, hard=hard, usual=usual, hint=hint)


def _bore(words: str, symbol: str, which: str) -> Any:
    return _limit_of(words, symbol, "cylinder.bore", which, BORES, USUAL)


def _oversize(words: str, symbol: str, which: str) -> Any:
    hint = "On the diameter, as pistons are sold."
    return _limit_of(words, symbol, "cylinder.bore", which, "0.05 to 10 mm", "0.2 to 2 mm", hint)


def _form(words: str, symbol: str, of: str, which: str) -> Any:
    return _limit_of(words, symbol, f"cylinder.{of}", which, "0 to 0.5 mm", "0.005 to 0.1 mm")


def _clearance(words: str, symbol: str, which: str) -> Any:
    return _limit_of(words, symbol, "piston.clearance", which, "0 to 1 mm", "0.02 to 0.2 mm")


class In(Inputs):
    bores: Rows = grid(
        "Bores",
        rows=tuple(f"{c} {h}" for c in CYLINDERS for h in HEIGHTS),
        columns=(
            column("Across the pin", "D_a", SIZE, hard=BORES, usual=USUAL),
            column("Along the pin", "D_b", SIZE, hard=BORES, usual=USUAL),
        ),
        least=3,
        tool="a bore gauge set in a ring",
        hint=(
            "Top: just below the ridge, where the top ring turns back. Bottom: below where the rings run."
            " Held down as in the engine."
        ),
        example=(
            "88.128; 88.064 | 88.086; 88.041 | 88.022; 88.016 | 88.145; 88.072 | 88.094; 88.046 |"
            " 88.024; 88.014 | 88.119; 88.060 | 88.081; 88.039 | 88.021; 88.015 | 88.133; 88.067 |"
            " 88.090; 88.043 | 88.023; 88.016"
        ),
    )
    barrel_temperature: Number = measured(
        "Barrel, when it was read",
        "t_z",
        DEGREES_C,
        tool="a contact thermometer on bare metal",
        hard=WARM,
        usual="5 to 45 °C",
        assumed=("20 °C", "barrel and gauge have lain side by side"),
        hint="Straight off the hone it is warm and reads large.",
    )
    gauge_temperature: Number = measured(
        "Gauge or its ring then",
        "t_g",
        DEGREES_C,
        tool="the same thermometer",
        hard=WARM,
        usual="5 to 45 °C",
        fold=True,
        assumed=("20 °C", "barrel and gauge have lain side by side"),
    )
    pistons: Rows = grid(
        "Pistons that run in them",
        rows=CYLINDERS,
        columns=(
            column(
                "Across the skirt", "d", SIZE, hard=BORES, usual=USUAL, feature="piston.diameter", stage=""
            ),
        ),
        least=0,
        tool="a micrometer, at the height that the piston's maker says",
        hint="Square to the pin. Where bores are to be machined: those in hand for them, or empty.",
    )
    axis: str = choice(
        "Machined",
        {OLD: "by boring, about the old axis", FREE: "by a hone alone, which follows the worn bore"},
        default=OLD,
        hint="About the old axis, wear on one side costs twice as much.",
    )
    spare: Number = given(
        "Left for the hone after boring, on the diameter",
        "a_h",
        SIZE,
        hard="0.02 to 0.2 mm",
        usual="0.04 to 0.1 mm",
        fold=True,
        assumed=("0.050 mm", "0.05 to 0.08 mm are left; common practice, no source"),
    )
    register: Number | None = measured(
        "Register outside, that goes into the case",
        "D_r",
        SIZE,
        tool="a micrometer",
        hard="25 to 260 mm",
        usual="65 to 150 mm",
        feature="cylinder.register",
        fold=True,
        hint="It says how much wall a larger bore leaves.",
    )
    barrel_expansion: Number = given(
        "Expansion of the barrel",
        "α_z",
        ALPHA,
        hard="8 to 28 µm/(m·K)",
        feature="cylinder.expansion",
        fold=True,
        assumed=("11.0 µm/(m·K)", "grey iron, from memory; an aluminium barrel has about 21"),
    )
    piston_expansion: Number = given(
        "Expansion of the piston",
        "α_k",
        ALPHA,
        hard="8 to 28 µm/(m·K)",
        feature="piston.expansion",
        fold=True,
        assumed=("20.5 µm/(m·K)", "aluminium with 12 % silicon, from memory"),
    )
    barrel_running: Number = given(
        "Barrel, running",
        "t_z1",
        DEGREES_C,
        hard="20 to 350 °C",
        usual="80 to 250 °C",
        feature="cylinder.running_temperature",
        fold=True,
        assumed=("160 °C", "common practice, no source; it decides nothing"),
    )
    skirt_running: Number = given(
        "Piston skirt, running",
        "t_k1",
        DEGREES_C,
        hard="20 to 350 °C",
        usual="80 to 250 °C",
        feature="piston.skirt_running_temperature",
        fold=True,
        assumed=("170 °C", "common practice, no source; it decides nothing"),
    )
    low: Number = _bore("Standard bore, least", "D_min", "low")
    high: Number = _bore("Standard bore, most", "D_max", "high")
    worn: Number | None = _bore("Standard bore, worn out at", "D_w", "wear")
    by: Number | None = _oversize("First oversize", "u_1", "step")
    last: Number | None = _oversize("Last oversize", "u_n", "last")
    round_new: Number | None = _form("Out of round, most as made", "o_1", "round", "high")
    round_worn: Number | None = _form("Out of round, worn out at", "o_w", "round", "wear")
    taper_new: Number | None = _form("Taper, most as made", "k_1", "taper", "high")
    taper_worn: Number | None = _form("Taper, worn out at", "k_w", "taper", "wear")
    least_clearance: Number = _clearance("Piston clearance, least", "c_1", "low")
    most_clearance: Number = _clearance("Piston clearance, most as made", "c_2", "high")
    worn_clearance: Number | None = _clearance("Piston clearance, worn out at", "c_w", "wear")
    least_wall: Number | None = limit(
        "Wall in the case, least",
        "w_min",
        COARSE,
        feature="cylinder.wall",
        which="wear",
        hard="0.5 to 15 mm",
        usual="1.5 to 6 mm",
    )


def refuse_limits_crossed(i: In) -> None:
    """Raises where a lower limit lies above its upper one, or a part as made would be worn out."""
    pairs = (
        ("low", i.low, i.high, "the most"),
        ("high", i.high, i.worn, "what is worn out"),
        ("by", i.by, i.last, "the last oversize"),
        ("round_new", i.round_new, i.round_worn, "what is worn out"),
        ("taper_new", i.taper_new, i.taper_worn, "what is worn out"),
        ("least_clearance", i.least_clearance, i.most_clearance, "the most"),
        ("most_clearance", i.most_clearance, i.worn_clearance, "what is worn out"),
    )
    for name, smaller, larger, what in pairs:
        if smaller is not None and larger is not None and smaller > larger:
            raise impossible(
                name, "is {a}, more than " + what + ", {b}; give {b} or less", a=smaller, b=larger
            )
