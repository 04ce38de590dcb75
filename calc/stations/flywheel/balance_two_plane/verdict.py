"""May what is in both planes stay, and if not, what goes where?"""

from calc.core.conformance import past
from calc.core.result import Judged, Remark, note, say, warning
from calc.declare.calculator import Limit
from calc.stations.flywheel.balance_two_plane.asked import In
from calc.stations.flywheel.balance_two_plane.planes import Plane

COARSE_CONDITION = 8.0  # past it a slip in reading comes out several times as large; common practice


def verdict_on(i: In, a: Plane, b: Plane) -> Judged:
    out = [(name, plane) for name, plane in (("A", a), ("B", b)) if past(plane.unbalance, plane.permitted)]
    if not out:
        return (
            "pass",
            say("Balanced: {a} left in A, {b} in B", a=a.unbalance, b=b.unbalance),
            "Take the trial mass off. Scribe the marks over every joint, and write down who was balanced with"
            " whom.",
        )
    name, worst = max(
        out, key=lambda found: float(found[1].unbalance) / max(float(found[1].permitted), 1e-12)
    )
    return (
        "fail",
        say("Out of balance in {n}: {u}, {p} permitted", n=name, u=worst.unbalance, p=worst.permitted),
        say(
            "Trial mass off. Add both: {ma} in A at {pa}, radius {ra}, and {mb} in B at {pb}, radius {rb}; or"
            " take as much off opposite. Then run again.",
            ma=a.mass,
            pa=a.place,
            ra=i.radius_a,
            mb=b.mass,
            pb=b.place,
            rb=i.radius_b,
        ),
    )


def limits_of(a: Plane, b: Plane) -> tuple[Limit, ...]:
    return (
        Limit("the unbalance in A", a.unbalance, high=a.permitted),
        Limit("the unbalance in B", b.unbalance, high=b.permitted),
    )


def remarks_on(condition: float) -> tuple[Remark | None, ...]:
    return (
        (
            warning(
                "Both planes do nearly the same at the bearings: a slip in a reading comes out several times"
                " as large. Choose planes farther apart, or correct half of it and run again."
            )
            if condition > COARSE_CONDITION
            else None
        ),
        note(
            "One plane corrected by itself, from its own bearing, does not come to rest: what is added there"
            " shakes the other bearing too. Add both masses, then run."
        ),
        note("A driven plate that is not centred, or a cover that is not on its marks, is in this reading."),
    )
