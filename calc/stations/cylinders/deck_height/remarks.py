"""What is to be known beside the shims."""

from calc.core.result import Remark, note, warning
from calc.core.working import constant
from calc.stations.cylinders.deck_height.asked import In
from calc.stations.cylinders.deck_height.barrels import Barrel, Head
from calc.stations.shared.forms import SIZE


def _apart(heads: list[Head]) -> float:
    """How far the middles of the decks of two heads are apart with their shims, m; 0 where one was read."""
    middles = [sum(float(deck) for deck in head.decks) / len(head.decks) for head in heads]
    return max(middles) - min(middles) if len(middles) > 1 else 0.0


def remarks_on(i: In, barrels: list[Barrel], heads: list[Head]) -> tuple[Remark | None, ...]:
    alone = [head.name for head in heads if len(head.barrels) == 1]
    return (
        note(
            "Only one cylinder of that head was read, {n}. Read the other before shims are ordered: one head"
            " stands on both.",
            n=" and ".join(alone),
        )
        if alone
        else None,
        warning("No limit is known for how far a piston may lean: its slope is not judged.")
        if i.most_slope is None and i.good_slope is None
        else None,
        warning(
            "The piston of {n} stands proud: turn the crank by hand until shims are in.",
            n=" and ".join(barrel.name for barrel in barrels if barrel.now < 0),
        )
        if any(barrel.now < 0 for barrel in barrels)
        else None,
        warning(
            "Shims differ under {n}: the head then stands on one cylinder more than on the other, and leaks.",
            n=" and ".join(
                head.name for head in heads if len({barrel.fitted for barrel in head.barrels}) > 1
            ),
        )
        if any(len({barrel.fitted for barrel in head.barrels}) > 1 for head in heads)
        else None,
        note(
            "The decks of the two heads are {d} apart, so their ratios differ too. Within limits it runs; the"
            " nearer they are, the more evenly.",
            d=constant("", "", SIZE, _apart(heads)),
        )
        if _apart(heads) > float(i.most_spread)
        else None,
        note(
            "Shims change the ratio and how far pushrods reach: work out both with the shims that you choose."
        ),
    )
