"""What is asked of a crank whose throws are compared: heights over its pins, and which way they lie."""

from calc.core.kinds import ANGLE
from calc.core.result import impossible
from calc.core.working import form
from calc.declare.calculator import Inputs, Number, Rows, choice, column, given, grid, limit
from calc.stations.shared.forms import SIZE

PINS = ("1", "2", "3", "4")
LEFT, RIGHT = "left", "right"
CLOCK, COUNTER = "clock", "counter"
INDEX = form(ANGLE, 2)
LEVEL = 0.5  # sine: throws that lie further off level were not turned level


class In(Inputs):
    heights: Rows = grid(
        "Heights over the rod journals",
        rows=PINS,
        columns=tuple(
            column(words, symbol, SIZE, hard="20 to 600 mm", usual="40 to 350 mm")
            for words, symbol in (
                ("Pin at the top", "h_t"),
                ("Pin at the bottom", "h_b"),
                ("Throws level", "h_l"),
            )
        ),
        least=4,
        tool="a height gauge, crank on blocks",
        hint=(
            "Highest point over each pin, from one plate. Top and bottom: search for the greatest and the"
            " least. Level: clamp the crank once, pin 1 to one side, and read all four without touching it."
        ),
        example=(
            "180.495; 111.493; 145.995 | 180.496; 111.488; 146.020 | 180.500; 111.482; 145.975 | 180.493;"
            " 111.489; 146.030"
        ),
    )
    beside: str = choice(
        "On the side of pin 1 lies",
        {"2": "pin 2", "3": "pin 3", "4": "pin 4"},
        default="4",
        hint="The other two lie across.",
    )
    side: str = choice("Throws level, pin 1 lies", {LEFT: "left", RIGHT: "right"}, default=RIGHT)
    turns: str = choice(
        "As you look at it, the crank runs",
        {CLOCK: "clockwise", COUNTER: "against the clock"},
        default=CLOCK,
        hint="Only this says which pin is early and which late.",
    )
    good: Number = limit(
        "Pin out of its angle, good",
        "δ_n",
        INDEX,
        feature="crank.index_error",
        which="high",
        hard="0.01 to 5°",
        usual="0.05 to 1°",
    )
    worst: Number = limit(
        "Pin out of its angle, limit",
        "δ_w",
        INDEX,
        feature="crank.index_error",
        which="wear",
        hard="0.01 to 5°",
        usual="0.05 to 1°",
    )
    throw_low: Number = limit(
        "Throw, least",
        "r_min",
        SIZE,
        feature="crank.throw",
        which="low",
        hard="5 to 150 mm",
        usual="25 to 60 mm",
        hint="Of the stroke that this crank is to have.",
    )
    throw_high: Number = limit(
        "Throw, most",
        "r_max",
        SIZE,
        feature="crank.throw",
        which="high",
        hard="5 to 150 mm",
        usual="25 to 60 mm",
    )
    most_spread: Number = given(
        "Throws may differ by",
        "Δ_a",
        SIZE,
        hard="0 to 2 mm",
        usual="0.01 to 0.2 mm",
        fold=True,
        assumed=("0.05 mm", "common practice, no source"),
    )


def refuse_impossible(i: In) -> None:
    if i.throw_low >= i.throw_high:
        raise impossible(
            "throw_low",
            "is {low}, not below the most, {high}; give less than {high}",
            low=i.throw_low,
            high=i.throw_high,
        )
    for n, (top, bottom, level) in enumerate(i.heights, 1):
        if top <= bottom:
            raise impossible(
                f"heights.{n}.1",
                "is {top}, not above the height with the pin at the bottom, {bottom}; give the greater one",
                top=top,
                bottom=bottom,
            )
        middle, throw = float(top + bottom) / 2, float(top - bottom) / 2
        if abs(float(level) - middle) > LEVEL * throw:
            raise impossible(
                f"heights.{n}.3",
                "is {h}, where a level throw reads about halfway between {bottom} and {top}; turn the"
                " throws level and give what is read then",
                h=level,
                bottom=bottom,
                top=top,
            )
