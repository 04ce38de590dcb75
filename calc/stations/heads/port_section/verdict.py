"""Does a step face the flow, is the gas too fast or too slow, does the joint widen?"""

from calc.core.advice import at_most
from calc.core.conformance import past
from calc.core.result import Judged, Limit, impossible, say
from calc.core.working import constant
from calc.stations.heads.port_section.asked import INTAKE, In
from calc.stations.heads.port_section.flow import Flow
from calc.stations.heads.port_section.joint import Joint
from calc.stations.heads.port_section.told import FACE
from calc.stations.shared.forms import COARSE, TURNS

NOTHING = 5e-6  # m: less than this is not seen at a joint


def check_speeds(i: In) -> None:
    if i.most_speed <= i.least_speed:
        raise impossible(
            "most_speed",
            "is {a}, not more than the least, {b}; give more than {b}",
            a=i.most_speed,
            b=i.least_speed,
        )


def verdict_on(i: In, flow: Flow, joint: Joint) -> Judged:
    """State, headline, and what to do; the worst first."""
    return (
        _step(i, joint)
        or _speed(i, flow)
        or _widening(i, joint)
        or (
            "pass",
            (
                say("Gas at {u}, no step faces it", u=flow.speed)
                if float(joint.facing) < NOTHING
                else say("Gas at {u}, step of {f} faces it", u=flow.speed, f=joint.facing)
            ),
            (
                "Smooth it, do not enlarge it. Write width and height down for each port and make the others"
                " the same."
            ),
        )
    )


def _step(i: In, joint: Joint) -> Judged | None:
    if not past(joint.facing, i.most_step):
        return None
    part, mate = _second_and_first(i)
    off = max(abs(float(i.aside)), abs(float(i.above)))
    return (
        "fail",
        say("Step of {f} faces the flow, {m} allowed", f=joint.facing, m=i.most_step),
        say(
            (
                "Move the manifold first: it sits {off} off the middle. Then open "
                if off > NOTHING
                else "Open "
            )
            + part
            + " at the joint until it nowhere stands inside "
            + mate
            + ", and let that run out over ten times its depth.",
            off=constant("", "", COARSE, off),
        ),
    )


def _second_and_first(i: In) -> tuple[str, str]:
    """What the gas goes into, and what it comes from."""
    return ("the head", "the manifold") if i.valve == INTAKE else ("the manifold", "the head")


def _speed(i: In, flow: Flow) -> Judged | None:
    speed = flow.speed
    if speed > i.most_speed:
        return (
            "attention",
            say("Fast gas: {u}, {m} at most", u=speed, m=i.most_speed),
            say(
                "Good up to {n}. For more speed the port wants {a}: see first whether the wall and the valve"
                " can use it.",
                n=at_most(i.engine_speed * i.most_speed / speed, TURNS),
                a=constant("", "", FACE, float(flow.area * speed / i.most_speed)),
            ),
        )
    if speed < i.least_speed:
        return (
            "attention",
            say("Slow gas: {u}, {m} at least", u=speed, m=i.least_speed),
            (
                "Leave the port as it is, or make it smaller by a sleeve or another manifold: a larger one"
                " loses pull at low speed."
            ),
        )
    return None


def _widening(i: In, joint: Joint) -> Judged | None:
    if not past(joint.drop, i.most_drop):
        return None
    part, mate = _second_and_first(i)
    return (
        "attention",
        say("Widens by {o} at the joint, {m} allowed", o=joint.drop, m=i.most_drop),
        say(
            "It does no harm at the edge, but the gas slows down and speeds up again. Open "
            + mate
            + " to within {m} of "
            + part
            + ", or leave it.",
            m=i.most_drop,
        ),
    )


def limits_of(i: In, flow: Flow, joint: Joint) -> tuple[Limit, ...]:
    return (
        Limit("the step", joint.facing, high=i.most_step),
        Limit("the gas speed", flow.speed, low=i.least_speed, high=i.most_speed, level="attention"),
        Limit("the widening", joint.drop, high=i.most_drop, level="attention"),
    )
