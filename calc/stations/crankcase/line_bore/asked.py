"""What is asked of a case that may be line-bored: saddles, their line, cuts, gears, and what they are
held to."""

from typing import Any

from calc.core.result import impossible
from calc.core.working import constant
from calc.declare.calculator import Inputs, Number, Rows, choice, column, given, grid, limit, measured
from calc.stations.shared.forms import COARSE, ROUGH, SIZE, TENTHS_OF_DEGREE

SADDLES = ("1", "2", "3", "4", "5")
LEAST, BEST, ENDS, READ = "least", "best", "ends", "read"
APART = (
    0.5e-3  # m: a saddle farther from any size that it may have is another one's; common practice, no source
)


def _limit_of(words: str, symbol: str, which: str) -> Any:
    return limit(
        words,
        symbol,
        SIZE,
        feature="crankcase.main_housing",
        which=which,
        hard="20 to 150 mm",
        usual="40 to 90 mm",
    )


def _cut(words: str, symbol: str, hint: str = "") -> Any:
    return given(
        words,
        symbol,
        SIZE,
        hard="0 to 0.5 mm",
        usual="0 to 0.15 mm",
        fold=True,
        hint=hint,
        assumed=("0 mm", "its parting face is not cut"),
    )


class In(Inputs):
    bores: Rows = grid(
        "Saddles, bolted up",
        rows=SADDLES,
        columns=(
            column("Along the split", "D_x", SIZE, hard="20 to 150 mm", usual="40 to 90 mm"),
            column("Across the split", "D_y", SIZE, hard="20 to 150 mm", usual="40 to 90 mm"),
        ),
        least=3,
        tool="a bore gauge set in a ring",
        hint=(
            "From the gears' end on; case at room heat, no shells, all nuts at full torque. Beside the"
            " joint, not on it."
        ),
        example="65.034; 65.028 | 65.048; 65.026 | 65.036; 65.027",
    )
    line: Rows = grid(
        "Line of the saddles",
        rows=SADDLES,
        columns=(
            column("From the first", "z", ROUGH, hard="0 to 800 mm", usual="0 to 500 mm"),
            column("Centre off, to the cam", "x", SIZE, hard="-0.5 to 0.5 mm", usual="-0.1 to 0.1 mm"),
            column("Centre off, to the right", "y", SIZE, hard="-0.5 to 0.5 mm", usual="-0.1 to 0.1 mm"),
        ),
        least=3,
        tool="a dial gauge on a straight bar",
        hint=(
            "Turn the bar and read opposite sides: half their difference is the centre, which lies towards"
            " the wall that is farther off. Right as you look from the gears' end, cam below; minus for"
            " away and left."
        ),
        example="0; 0.000; 0.000 | 123; 0.030; -0.016 | 246; 0.004; 0.002",
    )
    cut_right: Number = _cut(
        "Cut off the right half's parting face", "f_r", "After the readings, done or planned."
    )
    cut_left: Number = _cut("Cut off the left half's parting face", "f_l")
    bar: str = choice(
        "Boring bar lies",
        {
            LEAST: "where least is cut",
            BEST: "in the best line of the centres",
            ENDS: "through the end saddles' centres",
            READ: "where the reading's bar lay",
        },
        default=LEAST,
        hint=(
            "The centres' best line has the least largest deviation in each plane; saddles of unlike sizes"
            " may want another."
        ),
    )
    backlash: Number | None = measured(
        "Backlash of the cam's gears",
        "j",
        SIZE,
        tool="a dial gauge on a tooth, crank held",
        hard="0 to 1 mm",
        usual="0 to 0.2 mm",
        feature="cam.gear_backlash",
        hint="Read before the case was opened; the tightest place of a turn.",
        fold=True,
    )
    cam_distance: Number = measured(
        "Crank to cam, centres, as it is",
        "a",
        SIZE,
        tool="bars in both bores and a micrometer over them",
        hard="30 to 300 mm",
        usual="60 to 160 mm",
        feature="crankcase.cam_distance",
        stage="",
        fold=True,
        assumed="only for how the backlash changes, which hardly hangs on it",
    )
    helix: Number = given(
        "Helix of the gears",
        "β",
        TENTHS_OF_DEGREE,
        hard="0° to 45°",
        usual="0° to 35°",
        feature="cam.gear_helix",
        fold=True,
        assumed="straight teeth have 0°; it changes the backlash's growth by a tenth at most",
    )
    pressure: Number = given(
        "Pressure angle, square to the tooth",
        "α_n",
        TENTHS_OF_DEGREE,
        hard="10° to 30°",
        usual="14° to 25°",
        fold=True,
        assumed=("20°", "the standard rack of ISO 53"),
    )
    low: Number = _limit_of("Standard saddle, least", "D_min", "low")
    high: Number = _limit_of("Standard saddle, most", "D_max", "high")
    worn: Number | None = _limit_of("Standard saddle, worn out at", "D_v", "wear")
    step: Number | None = limit(
        "Outside oversizes of the shells, each by",
        "o",
        COARSE,
        feature="crankcase.main_housing",
        which="step",
        hard="0.05 to 3 mm",
        usual="0.2 to 1.1 mm",
        hint="0.50 mm, or 0.020 in, as a rule; see the shells.",
    )
    last: Number | None = limit(
        "Last outside oversize sold",
        "o_n",
        COARSE,
        feature="crankcase.main_housing",
        which="last",
        hard="0.05 to 5 mm",
        usual="0.2 to 2.1 mm",
    )
    line_new: Number = limit(
        "Saddles out of line, good",
        "e_n",
        SIZE,
        feature="crankcase.saddle_line",
        which="high",
        hard="0.001 to 0.2 mm",
        usual="0.005 to 0.03 mm",
    )
    line_worn: Number = limit(
        "Saddles out of line, limit",
        "e_v",
        SIZE,
        feature="crankcase.saddle_line",
        which="wear",
        hard="0.001 to 0.3 mm",
        usual="0.01 to 0.06 mm",
    )
    most_moved: Number = given(
        "Crank may move to or from the cam by",
        "Δa_max",
        SIZE,
        hard="0 to 0.5 mm",
        usual="0.01 to 0.1 mm",
        fold=True,
        assumed=("0.030 mm", "gears of another size beyond that; common practice, no source"),
    )
    backlash_low: Number | None = limit(
        "Backlash, least",
        "j_min",
        SIZE,
        feature="cam.gear_backlash",
        which="low",
        hard="0 to 0.5 mm",
        usual="0 to 0.1 mm",
    )
    backlash_high: Number | None = limit(
        "Backlash, most",
        "j_max",
        SIZE,
        feature="cam.gear_backlash",
        which="high",
        hard="0 to 1 mm",
        usual="0.02 to 0.2 mm",
    )


def refuse_what_does_not_go_together(i: In) -> None:
    """Raises where limits cross, or a saddle was read in one of the two tables only."""
    if i.low >= i.high:
        raise impossible("low", "is {low}, not below the most, {high}; give less", low=i.low, high=i.high)
    if i.worn is not None and i.worn < i.high:
        raise impossible(
            "worn", "is {w}, less than the most as made, {high}; give {high} or more", w=i.worn, high=i.high
        )
    if i.line_worn < i.line_new:
        raise impossible(
            "line_worn", "is {w}, less than a good line's {n}; give {n} or more", w=i.line_worn, n=i.line_new
        )
    if i.step is not None and i.last is not None and i.last < i.step:
        raise impossible(
            "last", "is {last}, less than the first, {by}; give {by} or more", last=i.last, by=i.step
        )
    for place, (bore, line) in enumerate(zip(i.bores, i.line), 1):
        if (bore is None) != (line is None):
            missing, words = ("line", "no line") if line is None else ("bores", "no bores")
            raise impossible(
                f"{missing}.{place}.1",
                "saddle {n} has " + words + "; give both, or leave both of its rows empty",
                n=SADDLES[place - 1],
            )
    _refuse_places(i)
    _refuse_other_size(i)


def _refuse_places(i: In) -> None:
    places = [(n, row[0]) for n, row in zip(SADDLES, i.line) if row is not None]
    for (_, before), (n, place) in zip(places, places[1:]):
        if place <= before:
            raise impossible(
                f"line.{n}.1",
                "saddle {n} lies {z} from the first, not beyond the one before it at {b}; give more",
                n=n,
                z=place,
                b=before,
            )


def _refuse_other_size(i: In) -> None:
    most = constant("", "", SIZE, float(i.high) + (0.0 if i.last is None else float(i.last)))
    for n, row in zip(SADDLES, i.bores):
        for c, reading in enumerate(row or (), 1):
            if float(i.low - reading) > APART or float(reading - most) > APART:
                raise impossible(
                    f"bores.{n}.{c}",
                    "saddle {n} reads {d}, more than 0.5 mm from any size that it may have, {low} to"
                    " {most}; give what is read on this saddle",
                    n=n,
                    d=reading,
                    low=i.low,
                    most=most,
                )
