"""What is asked of a face: what is read where, from what, and what the face is held to."""

from calc.core.result import impossible
from calc.declare.calculator import Inputs, Number, Rows, choice, column, given, grid, limit, measured
from calc.stations.shared.forms import ROUGH, SIZE

PLACES = ("1", "2", "3", "4", "5", "6", "7", "8")
SEAT, PARTING = "seat", "parting"
ROUND, ANYWHERE = "round", "anywhere"
DEPTH, HEIGHT = "depth", "height"


class In(Inputs):
    face: str = choice(
        "Face", {SEAT: "a cylinder's seat", PARTING: "the parting face of a half"}, default=SEAT
    )
    layout: str = choice(
        "Places lie", {ROUND: "evenly round a circle", ANYWHERE: "where their x and y say"}, default=ROUND
    )
    across: Number = measured(
        "Width of the circle of places",
        "D",
        ROUGH,
        tool="a rule",
        hard="10 to 500 mm",
        usual="60 to 200 mm",
        when=("layout", ROUND),
        example="104 mm",
    )
    reads: str = choice(
        "A larger reading is",
        {DEPTH: "a lower place, as of a depth gauge", HEIGHT: "a higher place, as of a dial or height gauge"},
        default=DEPTH,
    )
    readings: Rows = grid(
        "Readings",
        rows=PLACES,
        columns=(
            column("Reading", "r", SIZE, hard="-50 to 300 mm", usual="-1 to 150 mm"),
            column(
                "x, to the right", "x", ROUGH, hard="-600 to 600 mm", usual="-300 to 300 mm", optional=True
            ),
            column("y, up", "y", ROUGH, hard="-600 to 600 mm", usual="-300 to 300 mm", optional=True),
        ),
        least=4,
        tool="a depth or dial gauge from a straight datum",
        hint=(
            "With the clock as you look at the face, the first on top. A seat from a bar in the saddles or"
            " a plate square to it; x and y only where the places lie anywhere."
        ),
        example="0.010 | 0.014 | 0.018 | 0.016 | 0.020 | 0.012 | 0.008 | 0.006",
    )
    allowance: Number = given(
        "The cutter goes deeper than the lowest place by",
        "q",
        SIZE,
        hard="0 to 0.3 mm",
        usual="0 to 0.05 mm",
        fold=True,
        assumed=("0.010 mm", "places lie between those that were read; common practice, no source"),
    )
    seat_flat_good: Number = limit(
        "Seat out of flat, good",
        "f_n",
        SIZE,
        feature="crankcase.seat_flatness",
        which="high",
        hard="0 to 0.5 mm",
        usual="0.005 to 0.05 mm",
        when=("face", SEAT),
    )
    seat_flat_most: Number = limit(
        "Seat out of flat, limit",
        "f_v",
        SIZE,
        feature="crankcase.seat_flatness",
        which="wear",
        hard="0 to 1 mm",
        usual="0.01 to 0.1 mm",
        when=("face", SEAT),
    )
    tilt_good: Number = limit(
        "Seat's tilt, good",
        "t_n",
        SIZE,
        feature="crankcase.seat_tilt",
        which="high",
        hard="0 to 0.5 mm",
        usual="0.005 to 0.05 mm",
        when=("face", SEAT),
    )
    tilt_most: Number = limit(
        "Seat's tilt, limit",
        "t_v",
        SIZE,
        feature="crankcase.seat_tilt",
        which="wear",
        hard="0 to 1 mm",
        usual="0.01 to 0.1 mm",
        when=("face", SEAT),
    )
    parting_good: Number = limit(
        "Parting face out of flat, good",
        "p_n",
        SIZE,
        feature="crankcase.parting_flatness",
        which="high",
        hard="0 to 0.5 mm",
        usual="0.01 to 0.06 mm",
        when=("face", PARTING),
    )
    parting_most: Number = limit(
        "Parting face out of flat, limit",
        "p_v",
        SIZE,
        feature="crankcase.parting_flatness",
        which="wear",
        hard="0 to 1 mm",
        usual="0.02 to 0.12 mm",
        when=("face", PARTING),
    )


def refuse_what_does_not_go_together(i: In) -> None:
    pairs = (
        [("seat_flat_most", i.seat_flat_good, i.seat_flat_most), ("tilt_most", i.tilt_good, i.tilt_most)]
        if i.face == SEAT
        else [("parting_most", i.parting_good, i.parting_most)]
    )
    for field, good, most in pairs:
        if most < good:
            raise impossible(field, "is {v}, less than what is good, {n}; give {n} or more", v=most, n=good)
    if i.layout == ROUND:
        filled = [row is not None for row in i.readings]
        if not all(filled[: sum(filled)]):
            gap = filled.index(False)
            raise impossible(
                f"readings.{PLACES[gap]}.1",
                "is empty between others, so that the places are not even; read it, or give the places'"
                " x and y",
            )
    if i.layout == ANYWHERE:
        for n, row in zip(PLACES, i.readings):
            if row is not None and (row[1] is None or row[2] is None):
                column_missed = 2 if row[1] is None else 3
                raise impossible(
                    f"readings.{n}.{column_missed}",
                    "place {n} has no {what}; give it, or choose that the places lie round a circle",
                    n=n,
                    what="x" if row[1] is None else "y",
                )
