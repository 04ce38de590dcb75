"""From readings with and without a trial mass to the unbalance that was there: with phase, or without."""

from typing import NamedTuple

from calc.core.kinds import RATIO
from calc.core.result import impossible
from calc.core.working import Number, constant, form, sqrt, step
from calc.formulas.planar import Vector, polar
from calc.reference import sources
from calc.stations.flywheel.balance_trial.asked import AGAINST, LEAST_ANSWER, PHASE, VIBRATION, In
from calc.stations.flywheel.balance_trial.told import Out
from calc.stations.flywheel.grade import MOMENT, permitted_unbalance


class Found(NamedTuple):
    """`agreement` is the unbalance by the three runs over that by the first alone; 1 with phase."""

    unbalance: Number
    heavy: Number
    correction: Number
    place: Number
    permitted: Number
    vibration: Number
    answer: Number
    agreement: float


def found_of(i: In) -> Found:
    trial = step("T", "Trial mass × radius", MOMENT, i.trial * i.trial_radius)
    own, answer, agreement = _with_phase(i, trial) if i.method == PHASE else _by_amplitudes(i, trial)
    source = sources.INFLUENCE if i.method == PHASE else sources.FOUR_RUNS
    size = Out.unbalance(own.size(), source)
    permitted = Out.permitted(permitted_unbalance(i.mass, i.grade, i.speed), sources.BALANCE_GRADE)
    return Found(
        size,
        Out.heavy(own.direction()),
        Out.correction(size / i.radius),
        Out.place(own.scaled(-1.0).direction()),
        permitted,
        Out.vibration(answer * permitted / trial),
        answer,
        agreement,
    )


def _with_phase(i: In, trial: Number) -> tuple[Vector, Number, float]:
    first, then = (-i.before_at, -i.with_trial_at) if i.sense == AGAINST else (i.before_at, i.with_trial_at)
    before = polar(i.before, first).named("a", "Before", VIBRATION)
    after = polar(i.with_trial, then).named("b", "With trial mass", VIBRATION)
    by_trial = after.less(before).named("d", "By the trial mass alone", VIBRATION)
    answer = _answering(i, Out.answer(by_trial.size()), "with_trial", i.with_trial)
    ratio = before.over(by_trial).named("q", "Before over that", form(RATIO, 4))
    own = ratio.times(polar(trial, i.trial_at)).named("w", "Unbalance that was there", MOMENT)
    return own, answer, 1.0


def _answering(i: In, answer: Number, field: str, read: Number) -> Number:
    if float(answer) > LEAST_ANSWER * float(i.before):
        return answer
    raise impossible(
        field,
        "is {v}, so that the trial mass changed next to nothing against {v0}; give a reading with a larger"
        " trial mass",
        v=read,
        v0=i.before,
    )


def _by_amplitudes(i: In, trial: Number) -> tuple[Vector, Number, float]:
    """V_i² = V_0² + (kT)² + 2·V_0·kT·cos(α_i − φ): the mean gives kT, the differences the place."""
    runs = (i.at_0, i.at_120, i.at_240)
    squares = [v**2 for v in runs]
    more = (squares[0] + squares[1] + squares[2]) / 3 - i.before**2
    if float(more) <= (LEAST_ANSWER * float(i.before)) ** 2:
        raise impossible(
            "at_0",
            "and the other two are no more on the whole than {v0}, read without the trial mass, which no"
            " part does; read all four again at one speed",
            v0=i.before,
        )
    answer = Out.answer(sqrt(more), sources.FOUR_RUNS)
    root = constant("√3", "Root of three", form(RATIO, 5), 3**0.5)
    own = Vector(
        trial * (2 * squares[0] - squares[1] - squares[2]) / (6 * more),
        trial * (squares[1] - squares[2]) / (2 * root * more),
    ).named("w", "Unbalance that was there", MOMENT)
    alone = trial * i.before / answer
    return own, answer, float(own.size()) / float(alone)
