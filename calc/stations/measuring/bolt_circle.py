"""Where the holes of a pitch circle stand, as co-ordinates to dial or type in, and the distance between neighbours."""
import math

from calc.reference import sources
from calc.declare.calculator import Limit, Output, Outputs, answer, calculator, choice, given, number
from calc.core.conformance import past
from calc.core.drawing import Dimension, Drawing, Label, Line, arc
from calc.formulas import trigonometry as trig
from calc.core.kinds import ANGLE, COUNT, LENGTH
from calc.core.result import Table, impossible, note, say
from calc.core.working import form

PLACE, DEGREES = form(LENGTH, 3), form(ANGLE, 4)


class Out(Outputs):
    chord = Output("Centre to centre of neighbours", "c", PLACE, main=True, rises="pitch_circle", falls="holes")
    web = Output("Metal left between neighbours", "w", form(LENGTH, 2), main=True, rises="pitch_circle", falls="holes hole")
    over_pins = Output("Over pins in two neighbours", "m", PLACE, rises="pitch_circle hole", falls="holes")
    pitch = Output("Angle from hole to hole", "θ", DEGREES, falls="holes")


@calculator(
    "bolt-circle", "Holes on a pitch circle", Out,
    purpose="Where does each hole stand, and how far is it to the next?",
    finds=("bolt circle", "pitch circle", "PCD", "hole pattern", "drill co-ordinates", "flange holes"),
    sources=(sources.TRIANGLE, sources.PRACTICE))
def bolt_circle(
    holes: given("Number of holes", "N", form(COUNT, 0), hard=("2", "120"), usual=("3", "36")) = "6",
    pitch_circle: given("Pitch circle", "D", PLACE, hard=("1 mm", "5000 mm"), hint="Its diameter, through the middles of the holes.") = "120 mm",
    hole: given("Hole, diameter", "d", form(LENGTH, 2), hard=("0 mm", "2000 mm"), hint="Across each hole.") = "8.5 mm",
    first: given("First hole at", "φ", DEGREES, hard=("-360°", "360°"), assumed="on the X axis", hint="From the X axis, against the clock.") = "0°",
    centre_x: given("Centre, X", "X_0", PLACE, hard=("-5000 mm", "5000 mm"), fold=True, assumed="counted from the middle") = "0 mm",
    centre_y: given("Centre, Y", "Y_0", PLACE, hard=("-5000 mm", "5000 mm"), fold=True, assumed="counted from the middle") = "0 mm",
    sense: choice("Count the holes", {"against": "against the clock", "with": "with the clock"}, fold=True, assumed="as angles are counted") = "against",
):
    """Equal spacing on one circle. X = X₀ + (D/2)·cos φₙ, Y = Y₀ + (D/2)·sin φₙ."""
    if hole >= pitch_circle:
        raise impossible("hole", "is {d}, and the holes would meet in the middle of a pitch circle of {D}; give less than {D}", d=hole, D=pitch_circle)
    chord = Out.chord(trig.chord(pitch_circle, holes), sources.TRIANGLE)
    web = Out.web(chord - hole)
    places = _places(float(pitch_circle), round(float(holes)), float(first), float(centre_x), float(centre_y), 1 if sense == "against" else -1)
    if web <= 0:
        verdict = ("fail", say("Holes run into each other: {w}", w=web), say("Take a hole of less than {c}, fewer holes, or a larger pitch circle.", c=chord))
    elif past(hole / 2, web):
        verdict = ("attention", say("Only {w} left between holes", w=web), "Less than half a hole's diameter: ask whether the part bears it before you drill. Common practice, no source.")
    else:
        verdict = ("pass", say("Next hole {c} away", c=chord), "Spot all holes first, measure over pins in two neighbours and across, and only then drill.")
    shown = [tuple(number("", "", shape, value) for shape, value in zip((DEGREES.with_decimals(2), PLACE, PLACE), place)) for place in places]
    return answer(
        chord, web, Out.over_pins(chord + hole), Out.pitch(trig.hole_pitch(holes), sources.TRIANGLE),
        verdict=verdict, limits=(Limit("the metal between the holes", web, low=0),),
        remarks=(note("X = X₀ + D/2·cos φ and Y = Y₀ + D/2·sin φ, φ larger by θ from hole to hole{way}.", way="" if sense == "against" else ", here smaller"),),
        tables=(Table("Holes", ("Hole", "Angle", "X", "Y"), tuple((str(n), *row) for n, row in enumerate(shown, 1))),),
        figures=(_drawing(places, float(pitch_circle) / 2, float(hole) / 2, float(centre_x), float(centre_y), holes, pitch_circle, chord),))


def _places(diameter, holes, first, x, y, sense) -> list[tuple[float, float, float]]:
    """Angle (0 up to a turn), X and Y of each hole."""
    turn = 2 * math.pi
    angles = [(first + sense * n * trig.hole_pitch(holes)) % turn for n in range(holes)]
    angles = [0.0 if turn - a < 1e-9 else a for a in angles]
    return [(a, x + diameter / 2 * math.cos(a), y + diameter / 2 * math.sin(a)) for a in angles]


def _drawing(places, radius, hole, x, y, holes, pitch_circle, chord) -> Drawing:
    """The pattern to scale, the first holes numbered."""
    turn, beyond = 2 * math.pi, radius + max(hole * 1.6, radius * 0.12)
    shapes = [Line(arc((x, y), radius, 0, turn, 96), "centre"), Line(((x - beyond, y), (x + beyond, y)), "centre"), Line(((x, y - beyond), (x, y + beyond)), "centre")]
    shapes += [Line(arc((hx, hy), hole, 0, turn), "outline") for _, hx, hy in places if hole]
    shapes += [Line(((x + (radius - c) * math.cos(a), y + (radius - c) * math.sin(a)), (x + (radius + c) * math.cos(a), y + (radius + c) * math.sin(a))), "thin")
               for a, _, _ in places for c in (max(hole * 1.3, radius * 0.03),)]
    inner = radius - max(hole * 1.3, radius * 0.03) - radius * 0.1
    aside = 0.1  # rad, so that a number does not stand on a centre line
    shapes += [Label((x + inner * math.cos(a + aside), y + inner * math.sin(a + aside) - radius * 0.03), str(n))
               for n, (a, _, _) in enumerate(places, 1) if len(places) <= 24 or n <= 2]
    shapes += [Dimension((x - radius, y), (x + radius, y), pitch_circle, -beyond * 1.12, "D")]
    return Drawing("Pitch circle", say("{n} holes evenly on a circle of {D}, neighbours {c} apart.", n=holes, D=pitch_circle, c=chord), tuple(shapes))
