"""Does the bolt stay below yield, and is it tight enough at the rough end?"""

from calc.core.advice import at_least
from calc.core.conformance import past
from calc.core.result import Judged, say
from calc.core.working import Number
from calc.stations.shared.bolts import TARGET
from calc.stations.shared.forms import TIGHTENING
from calc.stations.threads.torque_preload.asked import TORQUE, In
from calc.stations.threads.torque_preload.bolt import Bolt
from calc.stations.threads.torque_preload.safe_torque import safe_torque
from calc.stations.threads.torque_preload.stress import Stress
from calc.stations.threads.torque_preload.tightening import Tightening


def verdict_on(i: In, bolt: Bolt, made: Tightening, stress: Stress) -> Judged:
    where = "hot and slippery" if stress.hotter else "when slippery"
    if past(stress.used_most, 1):
        return (
            "fail",
            say("May yield: {u} of yield " + where, u=stress.used_most),
            say(
                "Do not use that torque. At most {t} keeps even a slippery one at 90 %; a stronger class, or"
                " the maker's own torque and state of the thread, may allow more.",
                t=safe_torque(bolt, made, stress, i.hot_force is not None),
            ),
        )
    if i.needed is not None and made.low < i.needed:
        return _too_slack(i.needed, bolt, made, stress, i.hot_force is not None)
    if past(stress.used_most, TARGET):
        return (
            "attention",
            say("Near yield: {u} " + where, u=stress.used_most),
            say(
                "It holds at {t}, with nothing to spare. Tighten it in steps with a wrench that was checked,"
                " and do not oil what the maker wants dry.",
                t=made.torque,
            ),
        )
    headline = (
        say("Preload {f}, {u} of yield at most", f=made.preload, u=stress.used_most)
        if i.known == TORQUE
        else say("Torque {t}: {u} of yield at most", t=made.torque, u=stress.used_most)
    )
    return (
        "pass",
        headline,
        say(
            "Expect {low} to {high}"
            + (", and up to {hot} hot" if stress.hot > made.high else "")
            + ". Clean thread and face, oil as the maker says, tighten in two or three steps.",
            low=made.low,
            high=made.high,
            hot=stress.hot,
        ),
    )


def _too_slack(needed: Number, bolt: Bolt, made: Tightening, stress: Stress, hot_known: bool) -> Judged:
    enough = float(needed) * float(made.rough.nut)
    safe = safe_torque(bolt, made, stress, hot_known)
    return (
        "fail",
        say("Too slack: {f} when rough", f=made.low),
        say(
            (
                "{n} is needed. Clean and oil the thread as was typed, then {t} gives it even with a"
                " rough thread."
                if enough <= float(safe)
                else (
                    "{n} is needed, and no torque gives it safely: a rough one takes {t}, and a slippery"
                    " one bears no more than {safe}. It takes a larger or stronger bolt, or friction that"
                    " is better known."
                )
            ),
            n=needed,
            t=at_least(enough, TIGHTENING),
            safe=safe,
        ),
    )
