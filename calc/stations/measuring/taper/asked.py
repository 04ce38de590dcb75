"""What is asked of a cone."""

from calc.core.kinds import ANGLE, LENGTH, RATIO, SLOPE
from calc.core.working import Number, form
from calc.declare.calculator import Inputs, any_of, given, measured
from calc.stations.shared.forms import COARSE, SIZE

MINUTES = form(ANGLE, 2, "′")


class In(Inputs):
    large: Number = given("Large end", "D", SIZE, hard="0.5 to 1000 mm", example="30 mm")
    length: Number = given(
        "Length between the ends", "L", COARSE, hard="0.5 to 2000 mm", hint="Along the axis.", example="60 mm"
    )
    by: Number = any_of(
        "Small end, or the taper",
        "",
        (LENGTH, RATIO, SLOPE, ANGLE),
        bare=LENGTH,
        hint=(
            "A diameter; or, with its unit, ratio 1:10, taper per foot 0.6 in/ft, or angle of one side to the"
            " axis 2.86°."
        ),
        example="24 mm",
    )
    roller: Number = given(
        "Rollers for gauging",
        "w",
        SIZE,
        hard="0.5 to 100 mm",
        fold=True,
        assumed=("10 mm", "any pair that is alike"),
        hint="Their diameter; both alike.",
    )
    blocks: Number | None = given(
        "Blocks under the upper rollers", "H", SIZE, hard="1 to 500 mm", fold=True, example="30 mm"
    )
    read_low: Number | None = measured(
        "Read over rollers on the plate",
        "R_1",
        SIZE,
        tool="a micrometer, small end down",
        hard="1 to 1500 mm",
        fold=True,
    )
    read_high: Number | None = measured(
        "Read over rollers on the blocks", "R_2", SIZE, tool="a micrometer", hard="1 to 1500 mm", fold=True
    )
    allowed: Number = given(
        "Side may be off by",
        "Δ",
        MINUTES,
        hard="0.02 to 120′",
        fold=True,
        assumed=("1′", "common practice, no source"),
        hint="Common practice, no source.",
    )
