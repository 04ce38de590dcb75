"""How far a boring bar is pushed aside by the cut, and how much smaller the bore comes out for it."""

from math import pi

from calc.core.conformance import past
from calc.core.drawing import Area, Dimension, Drawing, Line, box
from calc.core.kinds import FEED, FORCE, STRESS
from calc.core.result import Judged, Remark, impossible, note, say
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
    measured,
)
from calc.reference import cautions, sources
from calc.stations.shared.forms import COARSE, FINE, GPA, ROUGH, ROUGH_TIMES, SHARE, SIZE

# modulus, Pa, and the overhang in diameters that does not chatter; from memory, common practice
BARS = {"steel": ("Steel", 210e9, 4.0), "carbide": ("Carbide", 580e9, 6.0)}
# what it takes to cut a chip, Pa of its section, at the fine feeds of boring; from memory
FORCES = {
    "aluminium": ("Aluminium or magnesium", 800e6),
    "iron": ("Grey cast iron", 1500e6),
    "seat": ("Seat ring", 2500e6),
    "steel": ("Forged steel", 2400e6),
    "bronze": ("Bronze", 1000e6),
}
NEWTONS = form(FORCE, 0)
PER_AREA = form(STRESS, 0)


class In(Inputs):
    bar: str = choice("Bar of", {id: each[0] for id, each in BARS.items()}, must=True, example="steel")
    diameter: Number = measured(
        "Bar's diameter",
        "d",
        ROUGH,
        tool="a calliper, at its thinnest",
        hard="2 to 200 mm",
        usual="6 to 80 mm",
        example="40.0 mm",
    )
    hollow: Number = measured(
        "Bored through by",
        "d_i",
        ROUGH,
        tool="a calliper",
        hard="0 to 190 mm",
        usual="0 to 40 mm",
        fold=True,
        assumed=("0.0 mm", "a solid bar"),
    )
    overhang: Number = measured(
        "Overhang, holder to edge",
        "L",
        ROUGH,
        tool="a rule",
        hard="2 to 2000 mm",
        usual="20 to 400 mm",
        example="140.0 mm",
    )
    cut: str = choice("What is cut", {id: each[0] for id, each in FORCES.items()}, must=True, example="iron")
    depth: Number = given(
        "Depth of cut, on the radius",
        "a",
        COARSE,
        hard="0.005 to 10 mm",
        usual="0.05 to 1 mm",
        example="0.20 mm",
    )
    feed: Number = given(
        "Feed",
        "f",
        form(FEED, 3),
        hard="0.005 to 2 mm/rev",
        usual="0.03 to 0.3 mm/rev",
        example="0.080 mm/rev",
    )
    aside: Number = given(
        "Pushed aside with, of the cutting force",
        "q",
        SHARE,
        hard="5 to 200 %",
        usual="30 to 100 %",
        fold=True,
        assumed=("50 %", "nose larger than the cut or a worn edge: up to 100 %; common practice, no source"),
    )
    bearable: Number = given(
        "Bore may come out smaller by",
        "T",
        SIZE,
        hard="0.0005 to 1 mm",
        usual="0.002 to 0.05 mm",
        example="0.010 mm",
        hint="What honing or the next pass takes, or the bore's own tolerance.",
    )


class Out(Outputs):
    smaller = Output("Bore smaller by", "ΔD", FINE, main=True)
    gives = Output("Bar gives", "y", FINE)
    force = Output("Pushed aside by", "F", NEWTONS)
    slender = Output("Overhang over diameter", "λ", ROUGH_TIMES, main=True)


@calculator(
    "bar-deflection",
    "How far a boring bar gives",
    In,
    Out,
    purpose="How much smaller does the bore come out because the bar gives, and is the bar too slender?",
    finds=(
        "boring bar",
        "overhang",
        "tool deflection",
        "spring pass",
        "chatter",
        "length to diameter ratio",
        "tapered bore",
    ),
    sources=(sources.CANTILEVER, sources.PRACTICE),
    cautions=(cautions.CUTTING,),
)
def bar_deflection(i: In) -> Answer:
    """y = F·L³/(3·E·I) of a bar held at one end, the bore smaller by twice that.

    F is a share of depth × feed × what the metal takes to cut, a rough number: within a factor of two. The
    holder's own give is not in it.
    """
    if i.hollow >= i.diameter:
        raise impossible(
            "hollow", "is {a}, not less than the bar's diameter, {b}; give less", a=i.hollow, b=i.diameter
        )
    _, modulus, most = BARS[i.bar]
    E = constant("E", "Modulus of the bar", GPA, modulus, sources.MATERIALS)
    k = constant("k_c", "Force to cut a chip, per area", PER_AREA, FORCES[i.cut][1], sources.PRACTICE)
    stiff = pi / 64 * (i.diameter**4 - i.hollow**4)
    force = Out.force(i.aside * k * i.depth * i.feed)
    gives = Out.gives(force * i.overhang**3 / (3 * E * stiff), sources.CANTILEVER)
    smaller = Out.smaller(2 * gives)
    slender = Out.slender(i.overhang / i.diameter)
    bearable = constant("", "", ROUGH_TIMES, most)
    return answer(
        smaller,
        gives,
        force,
        slender,
        verdict=_verdict_on(i, smaller, slender, bearable),
        limits=(
            Limit("the overhang", slender, high=bearable, level="attention"),
            Limit("what the bore loses", smaller, high=i.bearable, level="attention"),
        ),
        remarks=_remarks_on(),
        figures=lambda: (bar_drawn(i, gives),),
    )


def _verdict_on(i: In, smaller: Number, slender: Number, most: Number) -> Judged:
    if past(slender, most):
        return (
            "attention",
            say("Too slender: overhang {a} diameters, {b} usual", a=slender, b=most),
            "It will chatter (common practice). A thicker bar, a shorter overhang, carbide for steel, or a"
            " sharper and smaller nose.",
        )
    if past(smaller, i.bearable):
        return (
            "attention",
            say("Bore comes out {x} smaller", x=smaller),
            "Take less at the last passes, and run the last one again at the same setting: what the bar gave"
            " comes off then. Measure before the next setting.",
        )
    return (
        "pass",
        say("Stiff enough: bore {x} smaller", x=smaller),
        "Take the last passes all of one depth, so that the bar gives alike in each.",
    )


def _remarks_on() -> tuple[Remark | None, ...]:
    return (
        note(
            "The force is rough: a blunt edge or a hard spot pushes twice as hard. What does not change is"
            " that half as long again an overhang gives more than three times as much."
        ),
        note("A bar held at both ends gives far less; this is one held at its tail only."),
    )


def bar_drawn(i: In, gives: Number) -> Drawing:
    """The bar at its holder, pushed aside, in its bore's direction much larger than it is."""
    L, r, y = float(i.overhang), float(i.diameter) / 2, float(gives)
    times = max(1.0, 0.25 * max(r, 0.1 * L) / y)
    bent = tuple(
        (x, -times * y * (3 * L * x * x - x**3) / (2 * L**3)) for x in (L * n / 16 for n in range(17))
    )
    body = tuple((x, s + r) for x, s in bent) + tuple((x, s - r) for x, s in reversed(bent))
    return Drawing(
        "The bar under its cut",
        say("At its end it is pushed aside by {y}.", y=gives),
        (
            Area(box(-0.25 * L, -1.8 * r, 0.0, 1.8 * r), "a"),
            Area(body, ""),
            Line(((-0.25 * L, 0.0), (1.1 * L, 0.0)), "centre"),
            Dimension((0.0, r), (L, r), i.overhang, 1.4 * r, "L"),
        ),
        say("pushed aside drawn {n} times as far", n=str(round(times))),
    )
