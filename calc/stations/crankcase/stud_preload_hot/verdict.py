"""Do stud and thread bear the hot preload at the slippery end, and is enough left in frost at the rough?"""

from calc.core.advice import at_least, at_most
from calc.core.conformance import past
from calc.core.result import Judged, Limit, Text, say
from calc.stations.crankcase.stud_preload_hot.asked import In
from calc.stations.crankcase.stud_preload_hot.joint import Joint
from calc.stations.crankcase.stud_preload_hot.worst import OVER_GAS, SAFE_PULL, Worst
from calc.stations.shared.bolts import TARGET
from calc.stations.shared.forms import KILONEWTON


def limits_of(found: Worst) -> tuple[Limit, ...]:
    pull = found.safety
    gas = found.over_gas
    return (
        Limit("the preload left", found.left, low=0),
        Limit("the stud's stress", found.used, high=1),
        Limit("the stud's stress", found.used, high=TARGET, level="attention"),
        *(
            ()
            if pull is None
            else (
                Limit("the thread in the case", pull, low=1),
                Limit("the thread in the case", pull, low=SAFE_PULL, level="attention"),
            )
        ),
        *(
            ()
            if gas is None
            else (
                Limit("the preload over the gas", gas, low=1),
                Limit("the preload over the gas", gas, low=OVER_GAS, level="attention"),
            )
        ),
    )


def verdict_on(i: In, joint: Joint, found: Worst) -> Judged:
    return _fails(i, found) or _worth_a_look(i, found) or _bears(i, joint, found)


def _serving(found: Worst) -> Text:
    if float(found.serves_from) < float(found.serves_to):
        return say(
            "A cold preload of {a} to {b} serves hot and in frost.",
            a=at_least(found.serves_from, KILONEWTON),
            b=at_most(found.serves_to, KILONEWTON),
        )
    return say(
        "No cold preload serves both hot and in frost: a thinner waist makes the stud softer, a stronger"
        " class or"
        " a longer insert lets it bear more, and friction that is better known narrows the band."
    )


def _fails(i: In, found: Worst) -> Judged | None:
    serving = _serving(found)
    if past(found.used, 1):
        return (
            "fail",
            say("Stud may yield hot: {u} of yield", u=found.used),
            say(
                "{worst} pulls at it when its thread was slippery. {serving}",
                worst=found.worst,
                serving=serving,
            ),
        )
    if i.pull is not None and found.safety is not None and past(1, found.safety):
        return (
            "fail",
            say("Pulls its thread out hot: {w}, {p} borne", w=found.worst, p=i.pull),
            say(
                "Fit a longer insert, or one of larger outside, before you tighten it. {serving}",
                serving=serving,
            ),
        )
    if i.gas is not None and found.over_gas is not None and past(1, found.over_gas):
        return (
            "fail",
            say("Lets go: {f} left, gas pulls {g}", f=found.slackest, g=i.gas),
            say(
                "The joint opens and leaks, and the stud is worked until it breaks. {serving}",
                serving=serving,
            ),
        )
    if past(0, found.left):
        return (
            "fail",
            say("Slack: nothing is left of the preload"),
            say("With a rough thread the parts part when they are cold. {serving}", serving=serving),
        )
    return None


def _worth_a_look(i: In, found: Worst) -> Judged | None:
    serving = _serving(found)
    if past(found.used, TARGET):
        return (
            "attention",
            say("Near yield hot: {u}", u=found.used),
            say(
                "It holds with nothing to spare: tighten with a wrench that was checked. {serving}",
                serving=serving,
            ),
        )
    if i.pull is not None and found.safety is not None and past(SAFE_PULL, found.safety):
        return (
            "attention",
            say("Thread in the case near its end: {s} times the pull", s=found.safety),
            say("Twice is wanted: a longer insert, or less preload. {serving}", serving=serving),
        )
    if i.gas is not None and found.over_gas is not None and past(OVER_GAS, found.over_gas):
        return (
            "attention",
            say("Little left: {s} times the gas's pull", s=found.over_gas),
            say("Half as much again is wanted. {serving}", serving=serving),
        )
    return None


def _bears(i: In, joint: Joint, found: Worst) -> Judged:
    first = joint.warming > joint.running
    return (
        "pass",
        say("{c} cold is {h} running", c=i.preload, h=joint.running),
        say(
            "Set it cold. Take {most}"
            + (", its most on the first warm-up," if first else "")
            + " as the hot preload to the insert and to the torque. With a slippery thread it may reach {w},"
            " with a rough one fall to {s}. Tighten again, one nut at a time, once it has been hot and is"
            " quite cold.",
            most=joint.warming if first else joint.running,
            w=found.worst,
            s=found.slackest,
        ),
    )
