"""A set of rods weighed end for end: what must come off which pad so that all match the lightest at both
ends."""

from calc.core.result import Remark, note, warning
from calc.core.working import constant
from calc.declare.calculator import Answer, Limit, answer, calculator
from calc.reference import cautions, sources
from calc.stations.rods.rod_weights.asked import In
from calc.stations.rods.rod_weights.drawing import beam
from calc.stations.rods.rod_weights.rod import Rod
from calc.stations.rods.rod_weights.rods import apart, rods_of
from calc.stations.rods.rod_weights.table import rod_by_rod
from calc.stations.rods.rod_weights.told import GRAMS, Out
from calc.stations.rods.rod_weights.verdict import verdict_on

# kg: ends whose sum is off the whole by more were not weighed level; common practice, no source
NOT_LEVEL = 1e-3


@calculator(
    "rod-weights",
    "End weights of a set of rods",
    In,
    Out,
    purpose="How far are the rods apart at each end, and what comes off which pad to make them alike?",
    finds=(
        "rod balancing",
        "weight of connecting rods",
        "big end weight",
        "small end weight",
        "match rods",
        "reciprocating mass",
        "balance pads",
    ),
    sources=(sources.TWO_SUPPORTS, sources.PRACTICE),
    cautions=(cautions.ROD_SCRAP, cautions.SPINNING, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def rod_weights(i: In) -> Answer:
    """Each rod as a beam on its two bores; both ends brought down to the lightest of the set by metal off the
    pads.

    Exact where rods are weighed level and held at the centres of their bores. Pads are taken as points. Where
    a pad has not enough, what it has is taken off, and the spread that stays is shown.
    """
    rods = rods_of(i)
    return answer(
        rods.off_big,
        rods.off_small,
        rods.spread_big,
        rods.spread_small,
        Out.spread_whole(apart(rod.whole for rod in rods.each)),
        rods.big_after,
        rods.small_after,
        Out.whole_after(apart(rod.whole_after for rod in rods.each)),
        Out.lightest(min((rod.whole_after for rod in rods.each), key=float)),
        verdict=verdict_on(i, rods),
        limits=(
            Limit("the spread of end weights", rods.worst, high=i.allowed, level="attention"),
            Limit("the spread that the pads leave", rods.left, high=i.allowed),
        ),
        remarks=(
            note(
                "A gram off a pad beyond the bore takes more than a gram off that end, and makes the"
                " other heavier: the list allows for both."
            ),
            _not_level(rods.each),
        ),
        tables=lambda: (rod_by_rod(rods, i),),
        figures=lambda: (beam(i.centre_distance, i.beyond_big, i.beyond_small),),
    )


def _not_level(rods: list[Rod]) -> Remark | None:
    off = {rod.name: abs(float(rod.whole - rod.weighed)) for rod in rods if rod.weighed is not None}
    odd = {name: by for name, by in off.items() if by > NOT_LEVEL}
    if not odd:
        return None
    return warning(
        "Both ends of rod {n} together are {d} off the whole: weigh again, level, hung at the"
        " bores' centres.",
        n=" and ".join(odd),
        d=constant("", "", GRAMS, max(odd.values())),
    )
