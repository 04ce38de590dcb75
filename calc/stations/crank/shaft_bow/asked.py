"""What is asked of a shaft whose bow is read: the dial at the middle, turn by turn."""

from calc.core.result import impossible
from calc.declare.calculator import Inputs, Number, Rows, column, grid, limit
from calc.stations.shared.forms import SIZE

PLACES = ("0°", "45°", "90°", "135°", "180°", "225°", "270°", "315°")
QUARTERS = (0, 2, 4, 6)  # rows that make an even set by themselves


class In(Inputs):
    readings: Rows = grid(
        "Dial at the middle main",
        rows=PLACES,
        columns=(column("Dial", "y", SIZE, hard="-5 to 5 mm", usual="-0.5 to 0.5 mm"),),
        least=4,
        tool="a dial gauge, crank on blocks",
        hint=(
            "Ends in blocks, tip on top, clear of the oil hole. Turn the crank against the clock as you look"
            " at it, angles from a mark; more is a higher journal. All eight, or 0, 90, 180 and 270°."
        ),
        example="0.000 | 0.003 | 0.009 | 0.012 | 0.010 | 0.006 | 0.001 | -0.002",
    )
    good: Number = limit(
        "Bow of a good crank, full reading",
        "b_n",
        SIZE,
        feature="crank.bow",
        which="high",
        hard="0.001 to 1 mm",
        usual="0.01 to 0.1 mm",
    )
    worn: Number = limit(
        "Bow, full reading, limit",
        "b_w",
        SIZE,
        feature="crank.bow",
        which="wear",
        hard="0.001 to 1 mm",
        usual="0.01 to 0.2 mm",
    )
    oval_most: Number | None = limit(
        "Journal out of round, worn",
        "Δ_w",
        SIZE,
        feature="crank.journal_round",
        which="wear",
        hard="0.001 to 0.5 mm",
        usual="0.005 to 0.05 mm",
    )


def even_set(i: In) -> list[tuple[int, Number]]:
    """The readings that stand at even angles round the shaft, with their rows. Raises where they do not."""
    read = [(n, row[0]) for n, row in enumerate(i.readings) if row is not None]
    rows = tuple(n for n, _ in read)
    if len(rows) == len(PLACES) or rows == QUARTERS:
        return read
    missing = next(n for n in range(len(PLACES)) if n not in rows and (len(rows) > 4 or n in QUARTERS))
    raise impossible(
        f"readings.{missing + 1}.1",
        "is empty, so that the angles are not even; give all eight, or only those at 0, 90, 180 and 270°",
    )
