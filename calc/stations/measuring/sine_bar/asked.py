"""What is asked of a sine bar."""

from calc.core.kinds import ANGLE
from calc.core.working import Number, form
from calc.declare.calculator import Inputs, given
from calc.stations.shared.forms import COARSE, FINE, FINE_DEGREES

ARC_SECONDS = form(ANGLE, 1, "″")


class In(Inputs):
    length: Number = given(
        "Sine bar, roll to roll",
        "L",
        COARSE,
        hard="20 to 1000 mm",
        usual="100 to 300 mm",
        hint="As engraved on the bar.",
        example="100 mm",
    )
    angle: Number = given(
        "Angle wanted",
        "α",
        FINE_DEGREES,
        hard=(
            "0 to 60°",
            "steeper than that, one micrometre of blocks changes the angle too much: set 90° less the"
            " angle instead",
        ),
        usual="0 to 45°",
        hint="In degrees, or in degrees, minutes and seconds: 5° 30' 15\".",
        example="5.5°",
    )
    blocks: Number | None = given(
        "Blocks under the roll", "h_b", FINE, hard="0 to 900 mm", hint="To learn which angle they set."
    )
    allowed: Number = given(
        "Angle may be off by",
        "Δ",
        ARC_SECONDS,
        hard="0.1 to 3600″",
        fold=True,
        assumed=("10″", "common practice, no source"),
        hint="A good bar on good blocks holds 5 to 10 seconds; common practice, no source.",
    )
