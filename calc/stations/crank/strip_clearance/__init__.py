"""A crushed plastic strip: the clearance that its width tells, and whether that can be told at all."""

from calc.declare.calculator import Answer, answer, calculator
from calc.formulas.crushed_strip import gap
from calc.reference import cautions, sources
from calc.stations.crank.strip_clearance.asked import In, held_to, marks_of
from calc.stations.crank.strip_clearance.drawing import curve
from calc.stations.crank.strip_clearance.told import Out
from calc.stations.crank.strip_clearance.verdict import Found, limits_of, remarks_on, verdict_on


@calculator(
    "strip-clearance",
    "Clearance by a plastic strip",
    In,
    Out,
    purpose="What clearance does this crushed plastic strip show, and can it tell whether that is right?",
    finds=(
        "plastic gauging strip",
        "crushed strip",
        "gauging strip",
        "oil clearance at home",
        "bearing clearance without a bore gauge",
    ),
    sources=(sources.STRIP_SECTION, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.MAKER_FIRST, cautions.AIRCRAFT),
    about_doubt=True,
)
def strip_clearance(i: In) -> Answer:
    """The strip keeps its section: between two printed marks 1/clearance goes straight with the width.

    Reads one place round the bearing, between faces that are fitted: what the shells' crush opens the housing
    by is taken off before it is held to the sheet. Within its own doubt of a limit it cannot tell.
    """
    held, marks = held_to(i), marks_of(i)
    read = Out.read(gap(i.widest, marks), sources.STRIP_SECTION)
    far = gap(i.widest if i.narrowest is None else i.narrowest, marks)
    opens = 0.0 if held.opens is None else held.opens
    tight, loose = Out.sizes(read - opens), Out.loose(far - opens)
    found = Found(held, tight, loose, Out.taper(loose - tight))
    return answer(
        read,
        tight,
        loose,
        found.taper,
        verdict=verdict_on(i, found),
        decides=limits_of(i, found),
        remarks=remarks_on(i, found),
        figures=lambda: (curve(marks, i.widest, read),),
    )
