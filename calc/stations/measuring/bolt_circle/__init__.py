"""Where the holes of a pitch circle stand, as co-ordinates to dial or type in, and how far they are apart."""

from calc.core.conformance import past
from calc.core.result import Judged, Table, impossible, note, say
from calc.core.working import Number, constant
from calc.declare.calculator import Answer, Limit, Output, Outputs, answer, calculator
from calc.formulas import trigonometry as trig
from calc.reference import sources
from calc.stations.measuring.bolt_circle.asked import AGAINST, In
from calc.stations.measuring.bolt_circle.drawing import pattern
from calc.stations.measuring.bolt_circle.places import Place, places_of
from calc.stations.shared.forms import COARSE, FINE_DEGREES, SIZE


class Out(Outputs):
    chord = Output("Centre to centre of neighbours", "c", SIZE, main=True)
    web = Output("Metal left between neighbours", "w", COARSE, main=True)
    over_pins = Output("Over pins in two neighbours", "m", SIZE)
    pitch = Output("Angle from hole to hole", "θ", FINE_DEGREES)


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
    holes = places_of(i)
    return answer(
        chord,
        web,
        Out.over_pins(chord + i.hole),
        Out.pitch(trig.hole_pitch(i.holes), sources.TRIANGLE),
        verdict=_verdict_on(i.hole, chord, web),
        limits=(Limit("the metal between the holes", web, low=0),),
        remarks=(
            note(
                "X = X₀ + D/2·cos φ and Y = Y₀ + D/2·sin φ, φ larger by θ from hole to hole{way}.",
                way="" if i.sense == AGAINST else ", here smaller",
            ),
        ),
        tables=lambda: (_table(holes),),
        figures=lambda: (pattern(i, holes, chord),),
    )


def _verdict_on(hole: Number, chord: Number, web: Number) -> Judged:
    if web <= 0:
        return (
            "fail",
            say("Holes run into each other: {w}", w=web),
            say("Take a hole of less than {c}, fewer holes, or a larger pitch circle.", c=chord),
        )
    if past(hole / 2, web):
        return (
            "attention",
            say("Only {w} left between holes", w=web),
            "Less than half a hole's diameter: ask whether the part bears it before you drill. Common"
            " practice, no source.",
        )
    return (
        "pass",
        say("Next hole {c} away", c=chord),
        "Spot all holes first, measure over pins in two neighbours and across, and only then drill.",
    )


def _table(holes: list[Place]) -> Table:
    shapes = (FINE_DEGREES.with_decimals(2), SIZE, SIZE)
    return Table(
        "Holes",
        ("Hole", "Angle", "X", "Y"),
        tuple(
            (str(n), *(constant("", "", shape, value) for shape, value in zip(shapes, place)))
            for n, place in enumerate(holes, 1)
        ),
    )
