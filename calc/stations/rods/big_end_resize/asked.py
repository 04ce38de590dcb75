"""What is asked of big ends whose faces were cut, or are to be."""

from calc.core.result import impossible
from calc.declare.calculator import Inputs, Number, Rows, choice, column, given, grid, limit
from calc.stations.rods import RODS
from calc.stations.shared.forms import COARSE, SIZE

PLANE, MIDWAY = "plane", "midway"
# m: readings of one bore, or a reading and the size wanted, further apart than this are not of one big end
APART = 1e-3


class In(Inputs):
    bores: Rows = grid(
        "Bores before the cut, bolted up",
        rows=RODS,
        columns=(
            column("Along the rod", "D_a", SIZE, hard="20 to 120 mm", usual="35 to 80 mm"),
            column("60° right of it", "D_r", SIZE, hard="20 to 120 mm", usual="35 to 80 mm"),
            column("60° left of it", "D_l", SIZE, hard="20 to 120 mm", usual="35 to 80 mm"),
        ),
        least=1,
        tool="a bore gauge set in a ring",
        hint="Bolts at full torque. Right and left as you look at the number, small end up.",
        example=(
            "56.030; 56.012; 56.010 | 56.026; 56.011; 56.012 | 56.033; 56.012; 56.013 | 56.021; 56.010;"
            " 56.011"
        ),
    )
    cuts: Rows = grid(
        "Cut off the faces",
        rows=RODS,
        columns=(
            column("Rod", "a", SIZE, hard="0 to 0.5 mm", usual="0 to 0.15 mm"),
            column("Cap", "b", SIZE, hard="0 to 0.5 mm", usual="0 to 0.15 mm"),
            column(
                "Centre distance before",
                "L",
                COARSE,
                hard="50 to 400 mm",
                usual="90 to 220 mm",
                optional=True,
                feature="rod.centre_distance",
            ),
        ),
        least=1,
        tool="a micrometer over each half, before and after",
        hint="Planned or done; 0 where a face is not cut. Centre distance may stay empty.",
        example="0.04; 0.04; 137.02 | 0.04; 0.04; 137.01 | 0.05; 0.05; 137.02 | 0.04; 0.04; 137.01",
    )
    wanted: Number = given(
        "Hone to",
        "D_w",
        SIZE,
        hard="20 to 120 mm",
        usual="35 to 80 mm",
        feature="rod.big_end_bore",
        hint="Middle of the limits, as a rule.",
        fold=True,
    )
    centred: str = choice(
        "New bore is centred",
        {PLANE: "on the new parting line", MIDWAY: "midway, as a hone finds it"},
        hint="A bore cut from the faces, or one honed as it lies. Alike where rod and cap lose the same.",
        default=PLANE,
    )
    low: Number = limit(
        "Finished bore, least",
        "D_min",
        SIZE,
        feature="rod.big_end_bore",
        which="low",
        hard="20 to 120 mm",
        usual="35 to 80 mm",
    )
    high: Number = limit(
        "Finished bore, most",
        "D_max",
        SIZE,
        feature="rod.big_end_bore",
        which="high",
        hard="20 to 120 mm",
        usual="35 to 80 mm",
    )
    nominal_length: Number = given(
        "Centre distance, where none is read",
        "L_0",
        COARSE,
        hard="50 to 400 mm",
        usual="90 to 220 mm",
        feature="rod.centre_distance",
        fold=True,
    )
    least_length: Number = limit(
        "Centre distance allowed, least",
        "L_a",
        COARSE,
        feature="rod.centre_distance",
        which="low",
        hard="0 to 400 mm",
    )
    most_spread: Number = given(
        "Centre distances may differ by",
        "Δ_a",
        SIZE,
        hard="0 to 2 mm",
        usual="0.02 to 0.3 mm",
        fold=True,
        assumed=("0.05 mm", "common practice, no source"),
        hint="0.05 mm within a set; common practice, no source.",
    )


def refuse_limits_crossed(i: In) -> None:
    if i.high <= i.low:
        raise impossible(
            "high",
            "is {high}, not more than the least finished bore, {low}; give more than {low}",
            high=i.high,
            low=i.low,
        )
    if not i.low <= i.wanted <= i.high:
        raise impossible(
            "wanted",
            "is {w}, not within the finished limits; give {low} to {high}",
            w=i.wanted,
            low=i.low,
            high=i.high,
        )


def refuse_other_bore(place: int, readings: tuple[Number, ...], wanted: Number) -> None:
    """Readings that are not of one big end, or not of this one; `place` counts the rods from 0."""
    smallest, largest = min(readings, key=float), max(readings, key=float)
    if float(largest - smallest) > APART:
        raise impossible(
            f"bores.{place + 1}.1",
            "rod {n} reads {a} to {b}, more than a millimetre apart; give three readings of one bore",
            n=RODS[place],
            a=smallest,
            b=largest,
        )
    if max(abs(float(d - wanted)) for d in readings) > APART:
        raise impossible(
            f"bores.{place + 1}.1",
            "rod {n} reads {d}, more than a millimetre from the size wanted, {w}; give readings of this"
            " big end",
            n=RODS[place],
            d=readings[0],
            w=wanted,
        )
