"""Two planes and two bearings: what each trial mass does at both, and which unbalances make the first run."""

import math
from typing import NamedTuple

from calc.core.kinds import RATIO
from calc.core.result import impossible
from calc.core.working import Number, form, step
from calc.formulas.planar import Vector, polar
from calc.reference import sources
from calc.stations.flywheel.balance_trial.asked import AGAINST, LEAST_ANSWER, VIBRATION
from calc.stations.flywheel.balance_two_plane.asked import In
from calc.stations.flywheel.balance_two_plane.told import Out
from calc.stations.flywheel.grade import MOMENT, permitted_unbalance

SHARES = form(RATIO, 4)
WORST = (
    20.0  # condition: past it the two planes do the same at both bearings, within what a reading is good for
)


class Plane(NamedTuple):
    """Unbalance (kg·m), mass to add (kg), its angle (rad), and what is permitted (kg·m)."""

    unbalance: Number
    mass: Number
    place: Number
    permitted: Number


def planes_of(i: In) -> tuple[Plane, Plane, Number]:
    first, in_a, in_b = (_at_both(n, row, i.sense) for n, row in enumerate(i.readings))
    by_a = [
        now.less(before).named(f"d_{at}a", f"By the mass in A, bearing {at}", VIBRATION)
        for now, before, at in zip(in_a, first, "AB")
    ]
    by_b = [
        now.less(before).named(f"d_{at}b", f"By the mass in B, bearing {at}", VIBRATION)
        for now, before, at in zip(in_b, first, "AB")
    ]
    moments = (
        step("T_a", "Trial mass in A × radius", MOMENT, i.trial_a * i.trial_a_radius),
        step("T_b", "Trial mass in B × radius", MOMENT, i.trial_b * i.trial_b_radius),
    )
    condition = _condition(by_a, by_b, moments)
    _refuse_alike(first, by_a, by_b, condition)
    share_a, share_b = _solved(first, by_a, by_b)
    whole = permitted_unbalance(i.mass, i.grade, i.speed)
    own_a = share_a.times(polar(moments[0], i.trial_a_at)).named("w_A", "Unbalance in A", MOMENT)
    own_b = share_b.times(polar(moments[1], i.trial_b_at)).named("w_B", "Unbalance in B", MOMENT)
    size_a, size_b = (
        Out.unbalance_a(own_a.size(), sources.INFLUENCE),
        Out.unbalance_b(own_b.size(), sources.INFLUENCE),
    )
    other = i.planes_apart - i.b_to_mass
    return (
        Plane(
            size_a,
            Out.mass_a(size_a / i.radius_a),
            Out.place_a(own_a.scaled(-1.0).direction()),
            Out.permitted_a(whole * i.b_to_mass / i.planes_apart, sources.BALANCE_GRADE),
        ),
        Plane(
            size_b,
            Out.mass_b(size_b / i.radius_b),
            Out.place_b(own_b.scaled(-1.0).direction()),
            Out.permitted_b(whole * other / i.planes_apart, sources.BALANCE_GRADE),
        ),
        Out.condition(condition),
    )


def _at_both(run: int, row: tuple[Number, ...], sense: str) -> tuple[Vector, Vector]:
    size_a, phase_a, size_b, phase_b = row
    if sense == AGAINST:
        phase_a, phase_b = -phase_a, -phase_b
    return (
        polar(size_a, phase_a).named(f"v_A{run}", f"Run {run + 1}, bearing A", VIBRATION),
        polar(size_b, phase_b).named(f"v_B{run}", f"Run {run + 1}, bearing B", VIBRATION),
    )


def _solved(first: tuple[Vector, Vector], by_a: list[Vector], by_b: list[Vector]) -> tuple[Vector, Vector]:
    """Shares of the trial masses that make the first run, by elimination at bearing A."""
    f = by_a[1].over(by_a[0]).named("f", "Mass in A: bearing B over A", SHARES)
    left = by_b[1].less(f.times(by_b[0])).named("g", "Left of the mass in B", VIBRATION)
    rest = first[1].less(f.times(first[0])).named("h", "Left of the first run", VIBRATION)
    share_b = rest.over(left).named("q_B", "First run over that", SHARES)
    share_a = first[0].less(by_b[0].times(share_b)).over(by_a[0]).named("q_A", "The same in A", SHARES)
    return share_a, share_b


def _condition(by_a: list[Vector], by_b: list[Vector], moments: tuple[Number, Number]) -> float:
    """Largest over smallest answer of the set to unbalances of one size, shared out over the planes in any
    way: the singular values of the 2 × 2 of influence coefficients."""
    (a, c), (b, d) = (
        [complex(float(v.x), float(v.y)) / float(t) for v in by] for by, t in zip((by_a, by_b), moments)
    )
    squares, det = sum(abs(z) ** 2 for z in (a, b, c, d)), abs(a * d - b * c)
    if not det:
        return math.inf
    return (squares + math.sqrt(max(0.0, squares**2 - 4 * det**2))) / (2 * det)


def _refuse_alike(
    first: tuple[Vector, Vector], by_a: list[Vector], by_b: list[Vector], condition: float
) -> None:
    """Raises where a trial mass changed nothing, or where both did the same."""
    most = max(float(v.size()) for v in first)
    for row, plane, by in ((2, "A", by_a), (3, "B", by_b)):
        if max(float(v.size()) for v in by) <= LEAST_ANSWER * most or not float(by[0].size()):
            raise impossible(
                f"readings.{row}.1",
                f"and what stands beside it are next to those of the first run: the trial mass in {plane}"
                " changed nothing; give readings with a larger one",
            )
    if condition > WORST:
        raise impossible(
            "readings.3.1",
            "and what stands beside it tell nothing that the trial mass in A did not: the planes are not told"
            " apart; give readings with planes farther apart, or at another speed",
        )
