"""May this unbalance stay, and if not, where and how deep is it drilled?"""

from calc.core.conformance import past
from calc.core.result import Judged, Remark, note, say, warning
from calc.core.working import constant
from calc.declare.calculator import Limit
from calc.stations.flywheel.balance.asked import RIM, In
from calc.stations.flywheel.balance.hole import Hole
from calc.stations.flywheel.balance.parts import Found
from calc.stations.flywheel.grade import MOMENT
from calc.stations.shared.forms import COARSE, ROUGH, TENTHS_OF_DEGREE


def verdict_on(i: In, found: Found) -> Judged:
    if not past(found.left, found.permitted):
        return (
            "pass",
            say("Balanced: {u} left of {p} permitted", u=found.left, p=found.permitted),
            "Leave it so, and write down reading, grade and speed. Mark the parts' places before they are"
            " put together.",
        )
    over = say("Out of balance: {u}, {p} permitted", u=found.left, p=found.permitted)
    if i.turned is None:
        return (
            "fail",
            over,
            say(
                "Turn the part by 180° on its arbor and read again before you drill: the arbor's own error is"
                " still in this. If it stays, {drill}.",
                drill=_drilled(i, found),
            ),
        )
    if too_deep(i, found):
        return (
            "fail",
            over,
            say(
                "Do not drill it so: {z} deep to the tip leaves less than {r} of {t}. Take a larger drill, or"
                " share it between two places on either side of {phi}.",
                z=_deepest(found),
                r=i.left_behind,
                t=i.wall,
                phi=found.heavy,
            ),
        )
    return (
        "fail",
        over,
        say(
            "Drill to three quarters of this depth, read again, then the rest: {drill}.",
            drill=_drilled(i, found),
        ),
    )


def _drilled(i: In, found: Found):
    one = _one(i, found.holes[0], found.angles[0])
    if len(found.holes) == 1:
        return one
    return say("{one}; and {two}", one=one, two=_one(i, found.holes[1], found.angles[1]))


def _one(i: In, hole: Hole, angle):
    tip, at = constant("", "", COARSE, hole.tip), constant("", "", TENTHS_OF_DEGREE, angle)
    if not float(hole.shoulder):
        return say("at {phi} the point of the drill alone, {z} deep", phi=at, z=tip)
    return say(
        "at {phi} a hole of {D}, {h} deep to the shoulder, {z} to the tip, {into}",
        phi=at,
        D=i.drill,
        h=constant("", "", COARSE, hole.shoulder),
        z=tip,
        into="into the rim" if i.how == RIM else "into the face",
    )


def _deepest(found: Found):
    return constant("", "", COARSE, max(float(hole.tip) for hole in found.holes))


def too_deep(i: In, found: Found) -> bool:
    """Whether a hole leaves less metal under its tip than is to be left."""
    return any(past(hole.tip, i.wall - i.left_behind) for hole in found.holes)


def limits_of(found: Found) -> tuple[Limit, ...]:
    return (Limit("the unbalance", found.left, high=found.permitted),)


def remarks_on(i: In, found: Found) -> tuple[Remark | None, ...]:
    turned = i.turned is not None
    return (
        (
            warning(
                "Arbor and machine alone show {a}, more than is permitted: true up or clean the arbor, and"
                " read every part both ways.",
                a=found.arbor,
            )
            if turned and past(found.arbor, found.permitted)
            else None
        ),
        (
            None
            if turned
            else note(
                "Not turned on its arbor: what the arbor is out by is in this reading, whether it shows as"
                " too much or hides something. At this mass each {e} off centre puts in {u}.",
                e=constant("", "", COARSE, 1e-5),
                u=constant("", "", MOMENT, 1e-5 * float(i.mass)),
            )
        ),
        (
            warning(
                "Larger holes than the metal bears would be needed, if it were drilled as told: {z} of {t}.",
                z=_deepest(found),
                t=i.wall,
            )
            if too_deep(i, found) and past(found.left, found.permitted) and not turned
            else None
        ),
        note(
            "Never drill a counterweight's neck, a fillet, an oil way, the friction face, beside a bolt hole"
            " or under the ring gear. Steel masses come off a clutch cover only where its maker puts them."
        ),
        (
            note(
                "In the rim the drill goes to smaller radii: reckoned at {R} all along it would be too"
                " shallow.",
                R=constant("", "", ROUGH, i.radius),
            )
            if i.how == RIM
            else None
        ),
    )
