"""May the unbalance that a trial mass has shown stay, and if not, what goes where?"""

from calc.core.conformance import past
from calc.core.result import Judged, Remark, note, say, warning
from calc.declare.calculator import Limit
from calc.stations.flywheel.balance_trial.asked import AMPLITUDES, SAME, In
from calc.stations.flywheel.balance_trial.influence import Found

SMALL, LARGE = (
    0.3,
    10.0,
)  # answer over the first reading: the trial mass too small, too large; common practice
ALIKE = 0.15  # common practice, no source


def verdict_on(i: In, found: Found) -> Judged:
    if not past(found.unbalance, found.permitted):
        return _stays(found)
    over = say("Out of balance: {u}, {p} permitted", u=found.unbalance, p=found.permitted)
    if disagree(found):
        return (
            "fail",
            over,
            say(
                "The four runs do not agree with each other: read all of them again at one speed before you"
                " add anything. If it stays, about {m} goes to {a}.",
                m=found.correction,
                a=found.place,
            ),
        )
    return (
        "fail",
        over,
        say(
            "Take the trial mass off. Add {m} at {a}, radius {R}, or take as much off opposite, at {h}. Run"
            " again: {v} at most.",
            m=found.correction,
            a=found.place,
            R=i.radius,
            h=found.heavy,
            v=found.vibration,
        ),
    )


def _stays(found: Found) -> Judged:
    if disagree(found):
        return (
            "attention",
            say(
                "Small, {u} of {p} permitted, but the four runs disagree",
                u=found.unbalance,
                p=found.permitted,
            ),
            "Read all four again at one speed, the trial mass at the same radius each time.",
        )
    return (
        "pass",
        say("Balanced: {u} of {p} permitted", u=found.unbalance, p=found.permitted),
        "Take the trial mass off and leave the part as it was before. Write down speed, reading and grade.",
    )


def disagree(found: Found) -> bool:
    """Whether four runs tell two sizes of the unbalance that differ by more than they should."""
    return abs(found.agreement - 1) > ALIKE


def limits_of(found: Found) -> tuple[Limit, ...]:
    return (Limit("the unbalance", found.unbalance, high=found.permitted),)


def remarks_on(i: In, found: Found) -> tuple[Remark | None, ...]:
    share = float(found.answer) / float(i.before)
    return (
        (
            warning(
                "The trial mass changed the reading by only {a} against {v}: the answer is coarse. Take a"
                " larger one.",
                a=found.answer,
                v=i.before,
            )
            if share < SMALL
            else None
        ),
        (
            note(
                "The trial mass is many times the part's own unbalance. Try again with a smaller one, after"
                " the first correction."
            )
            if share > LARGE
            else None
        ),
        (
            warning(
                "Three runs give {u}, the first run alone more or less by {d}: one of the four was read"
                " at another speed, or the part shifted.",
                u=found.unbalance,
                d=f"{abs(found.agreement - 1):.0%}".replace("%", " %"),
            )
            if i.method == AMPLITUDES and disagree(found)
            else None
        ),
        (
            note(
                "With phase and angles counted in different senses the mass goes to a wrong place. If the"
                " check run is worse, turn that round and reckon again."
            )
            if i.method != AMPLITUDES and i.sense == SAME
            else None
        ),
        note(
            "One plane serves a disc such as a flywheel or clutch by itself. A crank, or all of them"
            " together, wants two planes."
        ),
        note("Stay clear of a speed at which the stand itself shakes: there the answer is not linear."),
    )
