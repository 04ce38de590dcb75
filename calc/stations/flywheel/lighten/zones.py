"""Where it is thinnest: behind the friction face, inside it, and outside it."""

from calc.core.result import impossible
from calc.declare.calculator import Output
from calc.stations.flywheel.lighten.asked import In
from calc.stations.flywheel.lighten.cuts import Cut, Left, least_left
from calc.stations.flywheel.lighten.told import Out
from calc.stations.flywheel.section import Ring


def zones_of(i: In, rings: list[Ring], cuts: list[Cut]) -> tuple[Left, Left, Left]:
    """Behind the friction face, at the root, at the rim; a zone that the section has not is its very
    edge."""
    if i.lining_inside >= i.lining_outside:
        raise impossible(
            "lining_inside",
            "is {a}, not less than its outside, {b}; give less than {b}",
            a=i.lining_inside,
            b=i.lining_outside,
        )
    if i.lining_inside < rings[0].inner or i.lining_outside > rings[-1].outer:
        raise impossible(
            "section",
            "goes from {a} to {b}, and the friction face from {c} to {d} does not lie in it; give all"
            " rings, from"
            " the bore to the rim",
            a=rings[0].inner,
            b=rings[-1].outer,
            c=i.lining_inside,
            d=i.lining_outside,
        )
    first, last, low, high = map(float, (rings[0].inner, rings[-1].outer, i.lining_inside, i.lining_outside))
    return (
        _named(Out.face_left, least_left(rings, cuts, low, high)),
        _named(Out.root_left, least_left(rings, cuts, first, low)),
        _named(Out.rim_left, least_left(rings, cuts, high, last)),
    )


def _named(output: Output, left: Left) -> Left:
    return Left(output(left.thickness), left.at)
