"""How many sets of such parts would fit: worked out, and simulated to check it."""

from functools import lru_cache
from typing import NamedTuple

from calc.core.conformance import DUST
from calc.core.working import Number, constant, step
from calc.formulas import stack
from calc.reference import sources
from calc.stations.measuring.stack_up.asked import WAY, In
from calc.stations.measuring.stack_up.gap import Gap
from calc.stations.measuring.stack_up.told import RUNS, Out
from calc.stations.shared.forms import FINE_SHARE, SIZE

# A key in a size that is no tolerance asks for the same spread again.
_half_width = lru_cache(maxsize=8)(stack.half_width)
_simulated = lru_cache(maxsize=2)(stack.simulate)
MOST = 0.9973  # the share within ± 3 standard deviations of a normal size


class Share(NamedTuple):
    """Of sets that fit, worked out and simulated, and the ± that holds most gaps.

    `bounds` are the limits from the gap's middle (m), infinite where there is none; `deviations` those of the
    simulated gaps (m).
    """

    within: Number
    simulated: Number
    error: Number
    most: Number
    bounds: tuple[float, float]
    deviations: list[float]


def share_of(i: In, gap: Gap) -> Share:
    low, high = bounds = (
        float("-inf") if i.low is None else float(i.low) - float(gap.middle),
        float("inf") if i.high is None else float(i.high) - float(gap.middle),
    )
    exact = stack.share_within(low, high, gap.halves, i.shape)
    deviations = _simulated(tuple(gap.halves), i.shape, RUNS)
    least, greatest = low - DUST, high + DUST
    hits = len([d for d in deviations if least <= d <= greatest])
    within = Out.within(
        constant(
            "F(H) − F(L)", "Distribution of the sum, between the limits", FINE_SHARE, exact, sources.STACK
        )
    )
    simulated = Out.simulated(constant("k", "Fitted", WAY, hits) / constant("n", "Tried", WAY, RUNS))
    # two hits and two misses more, so that all fitting does not read as certainty (Agresti and Coull)
    fair = step(
        "P_4", "The same with two hits and two misses added", FINE_SHARE, (simulated * RUNS + 2) / (RUNS + 4)
    )
    error = Out.error((fair * (1 - fair) / RUNS) ** 0.5)
    most = Out.most(
        constant(
            "F⁻¹(0.9973)",
            "Distribution of the sum, reversed at 99.73 %",
            SIZE,
            _half_width(MOST, tuple(gap.halves), i.shape),
            sources.STACK,
        )
    )
    return Share(within, simulated, error, most, bounds, deviations)
