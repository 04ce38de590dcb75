"""The torque that keeps even a slippery bolt at 90 % of yield, as it is tightened and hot. Floats, SI."""

from math import sqrt

from calc.core.advice import Told, at_most
from calc.formulas import bolt_torque
from calc.stations.shared.bolts import TARGET
from calc.stations.shared.forms import TIGHTENING
from calc.stations.threads.torque_preload.bolt import Bolt
from calc.stations.threads.torque_preload.stress import Stress
from calc.stations.threads.torque_preload.tightening import Tightening


def safe_torque(bolt: Bolt, made: Tightening, stress: Stress, hot_known: bool) -> Told:
    """`hot_known`: was the hot preload told, so that heat adds the same whatever the torque?"""
    target = TARGET * float(bolt.yields) * float(bolt.area)
    twist, slippery = float(stress.twist_slippery), float(made.slippery.nut)
    added = float(stress.hot - made.high)
    if hot_known:
        hot = _hot_with(added, target, twist)
    else:
        hot = _hot_by(added / float(made.torque) * slippery, target, twist)
    cold = target / float(bolt_torque.together(1, twist))
    return at_most(min(cold, hot) * slippery, TIGHTENING)


def _hot_by(share: float, target: float, twist: float) -> float:
    """Preload that reaches the target once heat has added that share of it, half of the twist left, N."""
    return target / sqrt((1 + share) ** 2 + 3 / 4 * twist**2)


def _hot_with(added: float, target: float, twist: float) -> float:
    """The same where heat adds a force of its own, N; 0 where that alone is too much."""
    q = 3 / 4 * twist**2
    inside = added**2 - (1 + q) * (added**2 - target**2)
    return max(0.0, (sqrt(max(inside, 0.0)) - added) / (1 + q))
