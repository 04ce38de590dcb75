"""Pitch diameter of an external thread from a reading over three wires."""

from math import pi

from calc.core.drawing import Area, Drawing, Label, Line, arc, clip
from calc.core.kinds import LENGTH, RATIO
from calc.core.result import impossible, note, say, warning
from calc.core.working import form, step
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
    measured,
)
from calc.formulas import screw_threads as screw
from calc.reference import sources
from calc.reference.standards.threads import HEIGHT
from calc.stations.shared.thread_sizes import FITS, NOTHING, SIZE, SIZES, known, length, pair, pitch, standard

WIRE = form(LENGTH, 4)
THINNEST, THICKEST = (
    0.505,
    1.01,
)  # of the pitch: thinner wires sink below the crests, thicker ones touch past the flanks (ASME B1.2)
MATTERS = 2e-6  # m: what lies below it, a shop's micrometer does not show


class Out(Outputs):
    pitch_diameter = Output("Pitch diameter", "d_2", SIZE, main=True)
    best = Output("Best wire", "w_best", WIRE, main=True)
    low = Output("Reading for the least pitch diameter", "M_min", SIZE)
    high = Output("Reading for the most pitch diameter", "M_max", SIZE)
    lead = Output("Taken off for the lead of the thread", "c_λ", WIRE)
    play = Output("Wire: its error counts in the pitch diameter by", "k_w", form(RATIO, 2))


class In(Inputs):
    reading: Number = measured(
        "Reading over the wires",
        "M",
        SIZE,
        tool="a micrometer, all three wires in place",
        hard="2 to 35 mm",
        usual="3 to 30 mm",
        example="10.228 mm",
    )
    wire: Number = measured(
        "Wire",
        "w",
        WIRE,
        tool="a micrometer, or the paper that came with the wires",
        hard="0.2 to 4 mm",
        usual="0.25 to 3.2 mm",
        example="0.8660 mm",
    )
    size: str = choice("Thread", SIZES, must=True, example="M10x1.5")
    fit: str = choice("Class", FITS, fold=True, assumed=("usual", "what is sold unless another is asked for"))


@calculator(
    "three-wire",
    "Measuring over three wires",
    In,
    Out,
    purpose="What is the pitch diameter of this thread, read over three wires?",
    finds=(
        "thread wires",
        "measurement over wires",
        "best wire size",
        "pitch diameter",
        "effective diameter",
        "stud thread",
        "three wires",
    ),
    sources=(sources.THREE_WIRES, sources.ISO_965, sources.ASME_B1_1),
)
def three_wire(i: In) -> Answer:
    """Pitch diameter of a bolt's thread of 60°, one start, at 20 °C; the lead angle is counted, the flattening of the wires is not.

    All three wires are of one size. A wire that is wrong by 1 µm makes the pitch diameter wrong by 3.
    """
    thread, _, bolt = pair(i.size, i.fit)
    for wrong, words in (
        (float(i.wire) < THINNEST * thread.P, "too thin to stand out of"),
        (float(i.wire) > THICKEST * thread.P, "too thick for the flanks of"),
    ):
        if wrong:
            raise impossible(
                "wire",
                "is {w}, " + words + " {thread}; give {low} to {high}, best {best}",
                w=i.wire,
                thread=thread.words,
                low=_wire(THINNEST * thread.P),
                high=_wire(THICKEST * thread.P),
                best=_wire(screw.best_wire(thread.P)),
            )
    P = pitch(thread)
    basic = known("d_2,0", "Basic pitch diameter", thread.pitch_diameter, standard(thread))
    lead = step("t_λ", "Tangent of the lead angle", form(RATIO, 5), screw.lead_tangent(P, basic))
    factor = Out.play(screw.wire_factor(lead), sources.THREE_WIRES)
    found = Out.pitch_diameter(
        screw.pitch_diameter_over_wires(i.reading, P, i.wire, factor), sources.THREE_WIRES
    )
    least, most = (
        known(f"d_2,{end}", f"Pitch diameter, {words}", value, standard(thread))
        for end, words, value in (("min", "least", bolt.pitch.low), ("max", "most", bolt.pitch.high))
    )
    low, high = (
        out(screw.over_wires(limit, P, i.wire, factor), sources.THREE_WIRES)
        for out, limit in ((Out.low, least), (Out.high, most))
    )
    if abs(float(found) - thread.pitch_diameter) > 0.4 * thread.P:
        raise impossible(
            "reading",
            "is {m}, far from what {thread} reads; measure again with {low} to {high} in mind, or choose the"
            " thread that it belongs to",
            m=i.reading,
            thread=thread.words,
            low=low,
            high=high,
        )
    correction = Out.lead((factor - 3) * i.wire, sources.THREE_WIRES)
    best = Out.best(screw.best_wire(P), sources.THREE_WIRES)
    return answer(
        found,
        best,
        low,
        high,
        correction,
        factor,
        verdict=_verdict(bolt, found, least, most),
        limits=(Limit("the pitch diameter", found, low=float(least), high=float(most)),),
        remarks=(
            (
                note(
                    "The lead matters here: left out, the pitch diameter comes out {c} too large.",
                    c=correction,
                )
                if float(correction) > MATTERS
                else note("Left out, the lead would make {c}, less than a micrometer shows.", c=correction)
            ),
            (
                warning(
                    "This wire touches away from the pitch line, where an error of the flank's angle shows:"
                    " the best one is {best}.",
                    best=best,
                )
                if abs(float(i.wire) / screw.best_wire(thread.P) - 1) > 0.05
                else None
            ),
            note(
                "The doubt of the wire counts three times, that of the micrometer once: write ± behind both,"
                " and do not screw down harder than the wires' paper says."
            ),
        ),
        figures=(_drawing(thread, i.reading, i.wire, found),),
    )


def _verdict(bolt, found, least, most):
    if float(found) < float(least) - NOTHING:
        return (
            "fail",
            say("Pitch diameter under {c} by {by}", c=bolt.name, by=length(float(least) - float(found))),
            (
                "Do not use it: a worn or stretched thread does not come back. Measure at two more places"
                " first, then fit a new one."
            ),
        )
    if float(found) > float(most) + NOTHING:
        return (
            "fail",
            say("Pitch diameter over {c} by {by}", c=bolt.name, by=length(float(found) - float(most))),
            (
                "Look for dirt under a wire and for plating. If it stays, chase it with a die; do not force"
                " it in."
            ),
        )
    return (
        "pass",
        say("Pitch diameter within {c}: {d}", c=bolt.name, d=found),
        say(
            "{a} to {b} are allowed. Read it at three places along, and turned by a right angle.",
            a=least,
            b=most,
        ),
    )


def _wire(value):
    return known("", "", value, None, WIRE)


def _drawing(thread, reading, wire, found) -> Drawing:
    """Two flanks above and one below, cut along the axis, with the wires in them; the bolt's body is shortened, or little would be seen of the wires."""
    P, H, w = thread.P, HEIGHT * thread.P, float(wire)
    core = 1.6 * P  # drawn half thickness of the bolt at its pitch line
    shapes, up = [], []
    centre = (
        core - H / 2 + w
    )  # a wire of radius w/2 between flanks of 30°: (w/2)/sin 30° above the sharp groove's bottom
    for i in range(-3, 4):
        x = i * P
        up += [
            (x - P / 2 + P / 16, core + 3 * H / 8),
            (x - P / 8, core - H / 4),
            (x + P / 8, core - H / 4),
            (x + P / 2 - P / 16, core + 3 * H / 8),
        ]
    down = [(x + P / 2, -y) for x, y in up]
    left, right = -2.4 * P, 2.4 * P
    shapes.append(Area(clip((*up, *reversed(down)), left, -2 * core, right, 2 * core), "a"))
    for x, y in ((0, centre), (P, centre), (P / 2, -centre)):
        shapes.append(Area(arc((x, y), w / 2, 0, 2 * pi, 40), ""))
        shapes.append(Line(arc((x, y), w / 2, 0, 2 * pi, 40)))
    top = centre + w / 2
    shapes += [
        Line(((left - 0.3 * P, core), (right + 0.3 * P, core)), "centre"),
        Line(((left - 0.3 * P, -core), (right + 0.3 * P, -core)), "centre"),
        Line(((-1.2 * P, top), (2.2 * P, top)), "thin"),
        Line(((-1.2 * P, -top), (2.2 * P, -top)), "thin"),
        Label((-0.1 * P, top + 0.25 * P), say("M {m}", m=reading)),
        Label((left - 0.35 * P, core - 0.1 * P), "pitch line", "end"),
    ]
    return Drawing(
        "Three wires in the thread",
        say(
            "Two wires above and one below: reading {m} with wires of {w}, pitch diameter {d}.",
            m=reading,
            w=wire,
            d=found,
        ),
        tuple(shapes),
        "the bolt is drawn thinner than it is, wires and thread are to one scale",
    )
