"""What is asked of a chain of sizes."""

from calc.core.kinds import RATIO
from calc.core.working import Number, form
from calc.declare.calculator import Inputs, Rows, choice, column, given, grid
from calc.stations.shared.forms import COARSE, FINE_SHARE, SIZE

WAY = form(RATIO, 0)
UNIFORM, NORMAL = "uniform", "normal"
SHAPES = {
    UNIFORM: "Anywhere within its tolerance",
    NORMAL: "Mostly near the middle (tolerance = ± 3 standard deviations)",
}


class In(Inputs):
    chain: Rows = grid(
        "Chain",
        rows=tuple(map(str, range(1, 9))),
        columns=(
            column("Size", "N", COARSE, hard="-5000 to 5000 mm"),
            column("Plus", "p", SIZE, hard="-50 to 50 mm"),
            column("Minus", "m", SIZE, hard="-50 to 50 mm"),
            column("Way", "w", WAY, hard="-1 to 1"),
        ),
        least=2,
        hint=(
            "Go round the gap from one side to the other. Way: 1 where the size opens the gap, −1 where it"
            " closes it. Minus is typed without its sign. The example is the deck height of the invented"
            " engine: case and cylinder, less throw, rod and piston."
        ),
        example=(
            "101.70; 0.05; 0.05; 1 | 110.00; 0.02; 0.02; 1 | 34.50; 0.025; 0.025; -1 | 137.00; 0.05; 0.05; -1"
            " | 39.00; 0.03; 0.03; -1"
        ),
    )
    low: Number | None = given("Gap, at least", "L", SIZE, hard="-50000 to 50000 mm", example="1.00 mm")
    high: Number | None = given("Gap, at most", "H", SIZE, hard="-50000 to 50000 mm", example="1.40 mm")
    shape: str = choice(
        "Each size lies",
        SHAPES,
        fold=True,
        assumed=(UNIFORM, "few parts, or parts picked by hand"),
        hint="Few parts, or parts picked by hand: anywhere. A long run of one machine: near the middle.",
    )
    wanted: Number = given(
        "Share of sets that must fit",
        "P_w",
        FINE_SHARE,
        hard="1 to 100 %",
        usual="90 to 100 %",
        fold=True,
        assumed=("99.73 %", "± 3 standard deviations; common practice, no source"),
    )
