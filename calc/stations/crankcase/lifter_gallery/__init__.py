"""A lifter bore at its oil gallery: its clearance there, its bell mouth, and what it takes of the oil."""

from calc.core.result import Remark, note
from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.crankcase.lifter_gallery.asked import In
from calc.stations.crankcase.lifter_gallery.drawing import section
from calc.stations.crankcase.lifter_gallery.leak import Leak, leak_of, refuse_no_gap
from calc.stations.crankcase.lifter_gallery.told import Out
from calc.stations.crankcase.lifter_gallery.verdict import limits_of, verdict_on

BELL = 1.5  # times the clearance at the gallery: wider at an end is a bell mouth


@calculator(
    "lifter-gallery",
    "Lifter bore at the gallery",
    In,
    Out,
    purpose="Does this lifter bore stay, or does it want a larger lifter or a bush for the oil it loses?",
    finds=(
        "lifter bore wear",
        "lifter bore clearance",
        "tappet bore",
        "bush a lifter bore",
        "oversize lifters",
        "bell mouth",
        "low oil pressure",
        "oil leak at the lifters",
    ),
    sources=(
        sources.ANNULAR_GAP,
        sources.WALTHER,
        sources.OIL_GRADES,
        sources.OIL_GROWTH,
        sources.PRACTICE,
        sources.INVENTED,
    ),
    cautions=(cautions.HOT_OIL, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def lifter_gallery(i: In) -> Answer:
    """Laminar flow along the gap to both ends, each a straight taper from the gallery; strips round it in
    series along, the lifter parallel to the bore.

    A bell mouth leaks as its narrow part. Case and lifter are taken as they were measured; warm, a magnesium
    case opens by a few micrometres more.
    """
    refuse_no_gap(i)
    found = leak_of(i)
    return answer(
        *found[:-1],
        verdict=verdict_on(i, found),
        limits=limits_of(i, found),
        remarks=_remarks_on(i, found),
        figures=lambda: (section(i, found),),
    )


def _remarks_on(i: In, found: Leak) -> tuple[Remark | None, ...]:
    return (
        note(
            "A bell mouth leaks as its narrow part, not as its mean: what counts is the reading at the"
            " gallery. But it"
            " lets the lifter tilt, and a tilted foot wears its lobe."
        )
        if float(found.widest) > BELL * float(found.clearance)
        else None,
        note("The leak goes as the cube of the gap: a quarter more clearance doubles it."),
    )
