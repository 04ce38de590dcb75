"""What is asked of holes on a pitch circle."""

from calc.core.kinds import COUNT
from calc.core.working import Number, form
from calc.declare.calculator import Inputs, choice, given
from calc.stations.shared.forms import COARSE, FINE_DEGREES, SIZE

AGAINST = "against"


class In(Inputs):
    holes: Number = given(
        "Number of holes", "N", form(COUNT, 0), hard="2 to 120", usual="3 to 36", example="6"
    )
    pitch_circle: Number = given(
        "Pitch circle",
        "D",
        SIZE,
        hard="1 to 5000 mm",
        hint="Its diameter, through the middles of the holes.",
        example="120 mm",
    )
    hole: Number = given(
        "Hole, diameter", "d", COARSE, hard="0 to 2000 mm", hint="Across each hole.", example="8.5 mm"
    )
    first: Number = given(
        "First hole at",
        "φ",
        FINE_DEGREES,
        hard="-360 to 360°",
        assumed=("0°", "on the X axis"),
        hint="From the X axis, anticlockwise.",
    )
    centre_x: Number = given(
        "Centre, X",
        "X_0",
        SIZE,
        hard="-5000 to 5000 mm",
        fold=True,
        assumed=("0 mm", "counted from the middle"),
    )
    centre_y: Number = given(
        "Centre, Y",
        "Y_0",
        SIZE,
        hard="-5000 to 5000 mm",
        fold=True,
        assumed=("0 mm", "counted from the middle"),
    )
    sense: str = choice(
        "Count the holes",
        {AGAINST: "anticlockwise", "with": "clockwise"},
        fold=True,
        assumed=(AGAINST, "as angles are counted"),
    )
