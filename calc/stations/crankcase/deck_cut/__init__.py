"""Cylinder seats of the case cut: what becomes of the deck height, the ratio, the pushrods and the
heads, and which
shim restores them."""

from calc.core.kinds import AREA, LENGTH, VOLUME
from calc.core.result import impossible
from calc.core.working import PI, Number, constant, form, greatest, step
from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.crankcase.deck_cut.asked import BOTH, In
from calc.stations.crankcase.deck_cut.drawing import section
from calc.stations.crankcase.deck_cut.told import Out
from calc.stations.crankcase.deck_cut.verdict import limits_of, remarks_on, verdict_on

CC, FACE = form(VOLUME, 2), form(AREA, 2, "cm²", "in²")
TENTH = 0.1e-3


@calculator(
    "deck-cut",
    "Cut of the cylinder seats",
    In,
    Out,
    purpose=(
        "The case's cylinder seats are cut, or are to be: what becomes of deck height, compression,"
        " pushrods and heads, and which shim restores them?"
    ),
    finds=(
        "deck the case",
        "deck cut",
        "case decking",
        "resurface the case",
        "fly cut the seats",
        "sunken cylinder seats",
        "compression after decking",
        "barrel shims",
    ),
    sources=(sources.DECK_CUT, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.MAGNESIUM, cautions.CUTTING, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def deck_cut(i: In) -> Answer:
    """Everything above the seat comes nearer to the crank by the cut, less what shims more were put in.
    The ratio is that of
    volumes: flat crown, the deck as a disc of the bore.

    A dished or domed piston counts with the chamber. The gap round the top land is left out, before and
    after.
    """
    area = step("A", "Area of the bore", FACE, PI / 4 * i.bore**2)
    swept = step("V_h", "Swept volume", CC, area * i.stroke)
    nearer = Out.nearer(i.cut - i.shim_more)
    deck = Out.deck_then(i.deck - nearer)
    before = step("V_c", "Volume at the top, before", CC, i.chamber + area * i.deck)
    after = step("V_c'", "Volume at the top, then", CC, i.chamber + area * deck)
    for volume, field, words in ((before, "deck", ""), (after, "cut", ", and after the cut")):
        if volume <= 0:
            raise impossible(
                field, "leaves no volume over the piston" + words + "; give less, or measure again"
            )
    ratio = Out.ratio(1 + swept / before, sources.DECK_CUT)
    then = Out.ratio_then(1 + swept / after, sources.DECK_CUT)
    tenth = constant("c_10", "A tenth more", form(LENGTH, 2), TENTH)
    wanted = _cut_wanted(i, area, swept, before, ratio)
    return answer(
        deck,
        then,
        Out.restores(greatest(nearer, 0.0)),
        ratio,
        Out.tenth(swept * area / after**2 * tenth, sources.DECK_CUT),
        nearer,
        Out.pushrods(nearer),
        Out.heads(2 * nearer if i.sides == BOTH else 1 * nearer),
        Out.seat_then(i.seat_height - i.cut),
        wanted,
        Out.deck_wanted(i.deck - wanted),
        Out.most_cut(i.deck + i.shim_more - i.deck_low),
        verdict=verdict_on(i, deck, then, nearer),
        limits=limits_of(i, deck, then),
        remarks=remarks_on(i, nearer, wanted),
        figures=lambda: (section(i, deck),),
    )


def _cut_wanted(i: In, area: Number, swept: Number, before: Number, ratio: Number) -> Number:
    """Cut off the case as it is, without further shims, that raises the ratio by what is wanted."""
    volume = step(
        "V_w", "Volume at the top for the ratio wanted", CC, swept / (ratio + i.gain - 1), sources.DECK_CUT
    )
    return Out.cut_wanted((before - volume) / area)
