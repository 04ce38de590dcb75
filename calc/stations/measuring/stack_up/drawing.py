"""How the gaps of such sets spread."""

from calc.core.drawing import Axis, Plot, Series
from calc.core.kinds import RATIO
from calc.core.result import say
from calc.core.working import form
from calc.formulas import stack
from calc.stations.measuring.stack_up.asked import UNIFORM, In
from calc.stations.measuring.stack_up.gap import Gap
from calc.stations.measuring.stack_up.share import Share
from calc.stations.measuring.stack_up.told import RUNS
from calc.stations.shared.forms import COARSE

BINS = 24


def spread_of(i: In, gap: Gap, share: Share) -> Plot | None:
    """Share of gaps in each of equal steps: exact as a line, simulated as points, with the limits."""
    deviation, middle = float(gap.deviation), float(gap.middle)
    if not deviation:
        return None
    reach = min(sum(gap.halves), 4.5 * deviation) if i.shape == UNIFORM else 4.5 * deviation
    edges = [reach * (2 * n / BINS - 1) for n in range(BINS + 1)]
    below = [stack.share_below(edge, gap.halves, i.shape) for edge in edges]
    centres = [middle + (a + b) / 2 for a, b in zip(edges, edges[1:])]
    exact = [b - a for a, b in zip(below, below[1:])]
    limits = tuple(
        Series(words, ((middle + bound, 0.0), (middle + bound, max(exact))), "limit")
        for words, bound in zip(("at least", "at most"), share.bounds)
        if abs(bound) < 3 * reach
    )
    counted = (k / RUNS for k in _counts(share.deviations, reach))
    return Plot(
        "How the gaps spread: line worked out, points simulated",
        say("Gaps spread about {g}.", g=gap.middle),
        Axis("Gap", COARSE),
        Axis("Share of gaps a step", form(RATIO, 1, "%", "%")),
        (
            Series("", ((middle + edges[0], 0.0), *zip(centres, exact), (middle + edges[-1], 0.0))),
            Series("", tuple(zip(centres, counted)), "points"),
            *limits,
        ),
    )


def _counts(deviations: list[float], reach: float) -> list[int]:
    """How many lie in each step from −reach to reach."""
    counts = [0] * BINS
    for d in deviations:
        place = int((d / reach + 1) / 2 * BINS)
        if 0 <= place < BINS:
            counts[place] += 1
    return counts
