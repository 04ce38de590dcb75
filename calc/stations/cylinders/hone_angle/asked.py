"""What is asked of a hone: the bore, its stroke, how often it goes up and down, and how fast it turns."""

from calc.core.working import Number
from calc.declare.calculator import Inputs, choice, given, limit, measured
from calc.stations.shared.forms import DEGREES, ROUGH, SIZE, TURNS

SINGLE, PAIRS = "single", "pairs"
CRANK, EVEN = "crank", "even"
READ, REACH = "read", "reach"


class In(Inputs):
    bore: Number = measured(
        "Bore",
        "D",
        SIZE,
        tool="a bore gauge",
        hard="20 to 300 mm",
        usual="60 to 130 mm",
        feature="cylinder.bore",
        stands_in=True,
        stage="",
        example="88 mm",
    )
    strokes: Number = measured(
        "Strokes a minute",
        "n_s",
        TURNS,
        tool="a watch",
        hard="1 1/min to 600 1/min",
        usual="20 1/min to 250 1/min",
        hint="By hand too: count half a minute.",
        example="110 1/min",
    )
    counted: str = choice(
        "Counted are",
        {SINGLE: "single strokes, up one and down one", PAIRS: "pairs, up and down together"},
        must=True,
        example=SINGLE,
    )
    spindle: Number = measured(
        "Spindle",
        "n",
        TURNS,
        tool="the machine's plate or a counter",
        hard="1 1/min to 2000 1/min",
        usual="50 1/min to 500 1/min",
        example="130 1/min",
    )
    drive: str = choice(
        "Stroke is driven",
        {CRANK: "by a crank, fastest in the middle", EVEN: "evenly, by hand or oil"},
        must=True,
        example=CRANK,
    )
    stroke_by: str = choice(
        "Stroke is",
        {READ: "read on the machine", REACH: "what bore, stones and overrun ask for"},
        default=READ,
    )
    stroke: Number = measured(
        "Stroke",
        "L",
        ROUGH,
        tool="a rule",
        hard="5 to 600 mm",
        usual="30 to 200 mm",
        when=("stroke_by", READ),
        example="95 mm",
    )
    length: Number = measured(
        "Bore, length to be honed",
        "L_z",
        ROUGH,
        tool="a rule",
        hard="10 to 600 mm",
        usual="60 to 250 mm",
        when=("stroke_by", REACH),
        example="133 mm",
    )
    stones: Number = measured(
        "Stones, length",
        "L_s",
        ROUGH,
        tool="a rule",
        hard="5 to 300 mm",
        usual="30 to 120 mm",
        when=("stroke_by", REACH),
        example="60 mm",
    )
    overrun: Number = given(
        "Stones out of the bore, at each end",
        "L_o",
        ROUGH,
        hard="0 to 150 mm",
        usual="8 to 40 mm",
        when=("stroke_by", REACH),
        assumed=("20 mm", "a third of a stone of 60 mm; common practice, no source"),
        hint="A third of the stone, as a rule: less leaves the ends narrow, more makes them bell-mouthed.",
    )
    wanted: Number = given(
        "Angle wanted",
        "β_w",
        DEGREES,
        hard="5 to 150°",
        usual="25 to 75°",
        feature="cylinder.cross_hatch",
        fold=True,
        assumed=("50°", "common practice for iron, no source"),
    )
    end: Number = given(
        "Told near the end, so far from it",
        "e",
        ROUGH,
        hard="0 to 300 mm",
        usual="2 to 40 mm",
        fold=True,
        assumed=("10 mm", "where the top ring turns back, about; it decides nothing"),
    )
    low: Number = limit(
        "Angle, least",
        "β_min",
        DEGREES,
        feature="cylinder.cross_hatch",
        which="low",
        hard="5 to 150°",
        usual="25 to 75°",
    )
    high: Number = limit(
        "Angle, most",
        "β_max",
        DEGREES,
        feature="cylinder.cross_hatch",
        which="high",
        hard="5 to 150°",
        usual="25 to 75°",
    )
