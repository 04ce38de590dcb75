"""Where the holes of a pitch circle stand, as co-ordinates to dial or type in, and the distance between neighbours."""

import math

from calc.core.conformance import past
from calc.core.drawing import Dimension, Drawing, Label, Line, arc
from calc.core.kinds import COUNT
from calc.core.result import Table, impossible, note, say
from calc.core.working import constant, form
from calc.declare.calculator import (
    Answer,
    Inputs,
    Limit,
    Number,
    Output,
    Outputs,
    answer,
    calculator,
    choice,
    given,
)
from calc.formulas import trigonometry as trig
from calc.reference import sources
from calc.stations.shared.forms import COARSE, FINE_DEGREES, SIZE


class Out(Outputs):
    chord = Output("Centre to centre of neighbours", "c", SIZE, main=True)
    web = Output("Metal left between neighbours", "w", COARSE, main=True)
    over_pins = Output("Over pins in two neighbours", "m", SIZE)
    pitch = Output("Angle from hole to hole", "θ", FINE_DEGREES)


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
        hint="From the X axis, against the clock.",
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
        {"against": "against the clock", "with": "with the clock"},
        fold=True,
        assumed=("against", "as angles are counted"),
    )


@calculator(
    "bolt-circle",
    "Holes on a pitch circle",
    In,
    Out,
    purpose="Where does each hole stand, and how far is it to the next?",
    finds=("bolt circle", "pitch circle", "PCD", "hole pattern", "drill co-ordinates", "flange holes"),
    sources=(sources.TRIANGLE, sources.PRACTICE),
)
def bolt_circle(i: In) -> Answer:
    """Equal spacing on one circle. X = X₀ + (D/2)·cos φₙ, Y = Y₀ + (D/2)·sin φₙ."""
    if i.hole >= i.pitch_circle:
        raise impossible(
            "hole",
            "is {d}, and the holes would meet in the middle of a pitch circle of {D}; give less than {D}",
            d=i.hole,
            D=i.pitch_circle,
        )
    chord = Out.chord(trig.chord(i.pitch_circle, i.holes), sources.TRIANGLE)
    web = Out.web(chord - i.hole)
    places = _places(
        float(i.pitch_circle),
        round(float(i.holes)),
        float(i.first),
        float(i.centre_x),
        float(i.centre_y),
        1 if i.sense == "against" else -1,
    )
    if web <= 0:
        verdict = (
            "fail",
            say("Holes run into each other: {w}", w=web),
            say("Take a hole of less than {c}, fewer holes, or a larger pitch circle.", c=chord),
        )
    elif past(i.hole / 2, web):
        verdict = (
            "attention",
            say("Only {w} left between holes", w=web),
            (
                "Less than half a hole's diameter: ask whether the part bears it before you drill. Common"
                " practice, no source."
            ),
        )
    else:
        verdict = (
            "pass",
            say("Next hole {c} away", c=chord),
            "Spot all holes first, measure over pins in two neighbours and across, and only then drill.",
        )
    shown = [
        tuple(
            constant("", "", shape, value)
            for shape, value in zip((FINE_DEGREES.with_decimals(2), SIZE, SIZE), place)
        )
        for place in places
    ]
    return answer(
        chord,
        web,
        Out.over_pins(chord + i.hole),
        Out.pitch(trig.hole_pitch(i.holes), sources.TRIANGLE),
        verdict=verdict,
        limits=(Limit("the metal between the holes", web, low=0),),
        remarks=(
            note(
                "X = X₀ + D/2·cos φ and Y = Y₀ + D/2·sin φ, φ larger by θ from hole to hole{way}.",
                way="" if i.sense == "against" else ", here smaller",
            ),
        ),
        tables=(
            Table(
                "Holes", ("Hole", "Angle", "X", "Y"), tuple((str(n), *row) for n, row in enumerate(shown, 1))
            ),
        ),
        figures=(
            _drawing(
                places,
                float(i.pitch_circle) / 2,
                float(i.hole) / 2,
                float(i.centre_x),
                float(i.centre_y),
                i.holes,
                i.pitch_circle,
                chord,
            ),
        ),
    )


def _places(diameter, holes, first, x, y, sense) -> list[tuple[float, float, float]]:
    """Angle (0 up to a turn), X and Y of each hole."""
    turn = 2 * math.pi
    angles = [(first + sense * n * trig.hole_pitch(holes)) % turn for n in range(holes)]
    angles = [0.0 if turn - a < 1e-9 else a for a in angles]
    return [(a, x + diameter / 2 * math.cos(a), y + diameter / 2 * math.sin(a)) for a in angles]


def _drawing(places, radius, hole, x, y, holes, pitch_circle, chord) -> Drawing:
    """The pattern to scale, the first holes numbered."""
    turn, beyond = 2 * math.pi, radius + max(hole * 1.6, radius * 0.12)
    shapes = [
        Line(arc((x, y), radius, 0, turn, 96), "centre"),
        Line(((x - beyond, y), (x + beyond, y)), "centre"),
        Line(((x, y - beyond), (x, y + beyond)), "centre"),
    ]
    shapes += [Line(arc((hx, hy), hole, 0, turn), "outline") for _, hx, hy in places if hole]
    shapes += [
        Line(
            (
                (x + (radius - c) * math.cos(a), y + (radius - c) * math.sin(a)),
                (x + (radius + c) * math.cos(a), y + (radius + c) * math.sin(a)),
            ),
            "thin",
        )
        for a, _, _ in places
        for c in (max(hole * 1.3, radius * 0.03),)
    ]
    inner = radius - max(hole * 1.3, radius * 0.03) - radius * 0.1
    aside = 0.1  # rad, so that a number does not stand on a centre line
    shapes += [
        Label((x + inner * math.cos(a + aside), y + inner * math.sin(a + aside) - radius * 0.03), str(n))
        for n, (a, _, _) in enumerate(places, 1)
        if len(places) <= 24 or n <= 2
    ]
    shapes += [Dimension((x - radius, y), (x + radius, y), pitch_circle, -beyond * 1.12, "D")]
    return Drawing(
        "Pitch circle",
        say("{n} holes evenly on a circle of {D}, neighbours {c} apart.", n=holes, D=pitch_circle, c=chord),
        tuple(shapes),
    )
