"""Does it drop on without harm to its teeth, and does it stay where it is?"""

from calc.core.advice import at_least
from calc.core.conformance import past
from calc.core.result import Judged, say
from calc.core.working import Number, step
from calc.declare.calculator import Limit
from calc.stations.flywheel.ring_gear_shrink.asked import AWAY, TORCH, In
from calc.stations.flywheel.ring_gear_shrink.joint import Joint
from calc.stations.shared.forms import DEGREES_C, MPA


def allowed(i: In, joint: Joint) -> Number:
    return step("σ_max", "Pull allowed in the ring gear", MPA, i.yield_share * joint.strength)


def verdict_on(i: In, joint: Joint, most: Number) -> Judged:
    return _does_not_fit(i, joint) or _not_so(i) or _look_again(i, joint, most) or _fits(joint)


def limits_of(i: In, joint: Joint, most: Number) -> tuple[Limit, ...]:
    return (
        Limit("the interference", joint.interference, low=i.low, high=i.high),
        Limit("the heat", joint.heat, high=i.hottest),
        Limit("the pull in the ring gear", joint.worst_hoop, high=joint.strength),
        Limit("the interference at speed", joint.remaining, low=0.0),
        Limit("the pull in the ring gear", joint.worst_hoop, high=most, level="attention"),
        Limit("the grip at speed", joint.left, low=i.grip_share, level="attention"),
    )


def _does_not_fit(i: In, joint: Joint) -> Judged | None:
    if past(i.low, joint.interference):
        return (
            "fail",
            say("Too loose: {d}, {l} wanted", d=joint.interference, l=i.low),
            "Do not fit it: it turns on its seat when the starter bites. Read both again at the same"
            " warmth, then take"
            " another ring gear. A seat is not built up, and a loose ring is not welded or pinned.",
        )
    if past(joint.interference, i.high):
        return (
            "fail",
            say("Too tight: {d}, {h} allowed", d=joint.interference, h=i.high),
            "Read both again at the same warmth. If it stays, it is the wrong ring gear, or the bore is"
            " turned out to"
            " size; it would need too much heat and might crack.",
        )
    if past(joint.heat, i.hottest):
        return (
            "fail",
            say("Too hot for its teeth: {t}, {m} allowed", t=joint.heat, m=i.hottest),
            "Chill the flywheel in a freezer and type its temperature, or do with less clearance and"
            " quicker hands."
            " Never heat it further: soft teeth are gone in a month.",
        )
    if past(joint.worst_hoop, joint.strength):
        return (
            "fail",
            say("Ring gear yields: {s} of {r}", s=joint.worst_hoop, r=joint.strength),
            "Do not fit it: it would stretch and come loose. Take one with less interference or a"
            " thicker body.",
        )
    if past(0.0, joint.remaining):
        return (
            "fail",
            say("Loose at {n}", n=i.speed),
            "Do not fit it for that speed: it turns on its seat and throws the flywheel out of balance."
            " Take a ring"
            " gear with more interference, or a slower engine.",
        )
    return None


def _not_so(i: In) -> Judged | None:
    if i.chamfer == AWAY:
        return (
            "attention",
            "Turn it round: chamfers face the pinion",
            "Once it is on, it does not come off whole. Chamfered ends face the side from which the"
            " starter's pinion"
            " comes.",
        )
    if i.heated == TORCH:
        return (
            "attention",
            "Not with a torch: take an oven",
            "A torch draws the temper of the teeth where it stands while the other side is still too"
            " small, and nobody"
            " sees it. An oven, or a hot plate with the ring lying flat, warms it all round.",
        )
    return None


def _look_again(i: In, joint: Joint, most: Number) -> Judged | None:
    if past(joint.worst_hoop, most):
        return (
            "attention",
            say("Pulled hard: {s}, over {m}", s=joint.worst_hoop, m=most),
            "It holds, but little more is left before it yields. Ask its maker for the fit, and look for"
            " cracks at the"
            " roots of the teeth once it is cold.",
        )
    if past(i.grip_share, joint.left):
        return (
            "attention",
            say("At speed {q} of grip left, {w} wanted", q=joint.left, w=i.grip_share),
            "Stay below that speed, or take a ring gear with more interference.",
        )
    return None


def _fits(joint: Joint) -> Judged:
    return (
        "pass",
        say("Heat it to {t}", t=at_least(joint.heat, DEGREES_C)),
        "Keep it at that heat for half an hour, so that it is as hot inside. Lay it on in one go,"
        " chamfers to the"
        " pinion's side, press it against its shoulder, and hold it there until it grips. Let it cool in"
        " still air.",
    )
