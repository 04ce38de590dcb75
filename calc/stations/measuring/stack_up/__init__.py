"""What a chain of sizes adds up to: worst case, root sum of squares, and how many would fit."""

from calc.core.result import Remark, impossible, note, warning
from calc.core.working import constant
from calc.declare.calculator import Answer, Limit, answer, calculator
from calc.formulas import stack
from calc.reference import cautions, sources
from calc.stations.measuring.stack_up.asked import UNIFORM, In
from calc.stations.measuring.stack_up.drawing import spread_of
from calc.stations.measuring.stack_up.gap import Gap, gap_of, link_by_link, links_of
from calc.stations.measuring.stack_up.share import share_of
from calc.stations.measuring.stack_up.told import Out
from calc.stations.measuring.stack_up.verdict import verdict_on
from calc.stations.shared.forms import FINE_SHARE


@calculator(
    "stack-up",
    "A chain of sizes",
    In,
    Out,
    purpose=(
        "Which gap do these parts leave together, at worst and as a rule, and how many such sets would fit?"
    ),
    finds=(
        "tolerance stack",
        "stack-up",
        "worst case",
        "root sum square",
        "RSS",
        "Monte Carlo",
        "deck height",
        "end float",
        "yield",
    ),
    sources=(sources.STACK, sources.INVENTED, sources.PRACTICE),
    cautions=(cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def stack_up(i: In) -> Answer:
    """Independent sizes, each within its own tolerance; a lopsided tolerance is first moved to its middle.

    The share is exact for either shape; the simulation, with a fixed seed, is there to check it and to be
    checked.
    """
    if i.low is not None and i.high is not None and i.low >= i.high:
        raise impossible("low", "is {low}, not below {high}; give less than {high}", low=i.low, high=i.high)
    links = links_of(i)
    gap = gap_of(links, i.shape)
    share = share_of(i, gap)
    return answer(
        gap.least,
        gap.greatest,
        share.within,
        gap.middle,
        gap.root,
        gap.deviation,
        share.most,
        share.simulated,
        share.error,
        verdict=verdict_on(i, links, gap, share.within),
        limits=(
            Limit("the least gap", gap.least, low=i.low),
            Limit("the greatest gap", gap.greatest, high=i.high),
        ),
        remarks=_remarks_on(i, gap),
        tables=lambda: (link_by_link(links, gap),),
        figures=lambda: (spread_of(i, gap, share),),
    )


def _remarks_on(i: In, gap: Gap) -> tuple[Remark | None, ...]:
    over = [n for n, row in enumerate(i.chain, 1) if row is not None and row[2] < 0]
    root = float(gap.root)
    return (
        warning(
            "Of size {i} the minus is below zero, and both limits are taken to lie over the size. If it was"
            " only typed with its sign, leave the sign out.",
            i=" and ".join(map(str, over)),
        )
        if over
        else None,
        note(
            "Root sum of squares holds {p} of such gaps, not 99.73 %: it is meant for sizes that lie near"
            " their middle.",
            p=constant("", "", FINE_SHARE, stack.share_within(-root, root, gap.halves, i.shape)),
        )
        if i.shape == UNIFORM and root > 0
        else None,
        note(
            "Shares hold for many sets of parts. For the one set on the bench, measure its sizes and type"
            " them with no tolerance, or measure the gap."
        ),
    )
