"""The lobe's lift over the wheel, and the lifter's acceleration with its doubt."""

from calc.core.drawing import Axis, Plot, Series
from calc.core.result import Table, say
from calc.core.working import PI
from calc.stations.cam.lift_table.asked import In, read_of
from calc.stations.cam.lift_table.lobe import Lobe, wheel_at
from calc.stations.cam.lift_table.told import RATE
from calc.stations.shared.forms import SIZE, TENTHS_OF_DEGREE


def plots(i: In, lobe: Lobe) -> tuple[Plot, ...]:
    curve = lobe.curve
    places = curve.places(3)
    x = [wheel_at(i, a) for a in places]
    read = tuple((wheel_at(i, a), h - lobe.base) for a, h in zip(curve.angles, curve.lifts))
    beside = tuple(
        (wheel_at(i, curve.angles[n]), float(h)) for n, (_, _, h) in enumerate(read_of(i)) if h is not None
    )
    lines = [
        Series("lobe", tuple((a, curve.value(p) - lobe.base) for a, p in zip(x, places))),
        Series("read", read, "points"),
        Series("checking lift", ((x[0], float(i.checking)), (x[-1], float(i.checking))), "limit"),
    ]
    if beside:
        lines.append(Series("another lobe", beside, "dashed"))
    square = float(PI * i.speed) ** 2
    told = [curve.told(p, 2) for p in places]
    wheel = Axis("Wheel", TENTHS_OF_DEGREE)
    return (
        Plot(
            "Lift over the wheel",
            say("Lift rises to {l} at {p}; the centre lies at {c}.", l=lobe.lift, p=lobe.peak, c=lobe.centre),
            wheel,
            Axis("Lift", SIZE),
            tuple(lines),
        ),
        Plot(
            "Lifter's acceleration, and what the readings leave in doubt",
            say(
                "Acceleration is {a} at most on the flanks and {n} over the nose.",
                a=lobe.acceleration,
                n=lobe.deceleration,
            ),
            wheel,
            Axis("Acceleration", RATE),
            (
                Series("", tuple((a, t.value * square) for a, t in zip(x, told))),
                Series("doubt", tuple((a, (t.value + t.doubt) * square) for a, t in zip(x, told)), "dashed"),
                Series("", tuple((a, (t.value - t.doubt) * square) for a, t in zip(x, told)), "dashed"),
            ),
        ),
    )


def doubts(lobe: Lobe) -> Table:
    """The numbers themselves stand above it."""
    rows = tuple((label, doubt) for label, _, doubt in lobe.doubts)
    return Table("What the readings leave in doubt", ("Number", "±"), rows)
