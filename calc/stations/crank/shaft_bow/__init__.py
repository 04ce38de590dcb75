"""Bow of a crank, from a dial over one turn of its middle journal, apart from that journal's own oval."""

from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.crank.shaft_bow.asked import In, even_set
from calc.stations.crank.shaft_bow.circle import circle_of
from calc.stations.crank.shaft_bow.drawing import journal_off_axis, over_a_turn
from calc.stations.crank.shaft_bow.told import Out
from calc.stations.crank.shaft_bow.verdict import limits_of, remarks_on, verdict_on


@calculator(
    "shaft-bow",
    "Bow of a crank",
    In,
    Out,
    purpose="Is this crank bent, which way, and how much of what the dial shows is the journal's own oval?",
    finds=(
        "bent crankshaft",
        "crank runout",
        "crankshaft straightness",
        "straighten the crank",
        "total indicator reading",
        "TIR",
        "dial on the centre main",
        "bent shaft",
    ),
    sources=(sources.HARMONICS, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def shaft_bow(i: In) -> Answer:
    """What goes round once with the shaft is its bow, what goes round twice the journal's oval: least
    squares at eight even angles, or at four.

    The full reading of a round journal is twice its axis's distance from the axis of the ends. Lobes of three
    and more are not in it, nor what the ends' own shape does in the blocks.
    """
    read = even_set(i)
    found = circle_of(read)
    return answer(
        found.whole,
        found.bow,
        found.high,
        found.oval,
        found.total,
        verdict=verdict_on(i, found),
        limits=limits_of(i, found),
        remarks=remarks_on(i, found),
        figures=lambda: (journal_off_axis(found), over_a_turn(read, found)),
    )
