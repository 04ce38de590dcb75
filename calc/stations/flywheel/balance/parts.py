"""The part's own unbalance apart from its arbor's, and what comes off at one place or at two."""

import math
from typing import NamedTuple

from calc.core.result import impossible
from calc.core.working import PI, Number, constant, greatest, sin, sqrt, step
from calc.formulas.planar import Vector, polar
from calc.reference import sources
from calc.stations.flywheel.balance.asked import FACE, LEAST_APART, LIGHT, SHARE, In
from calc.stations.flywheel.balance.hole import Drill, Hole, drill_of, hole_of
from calc.stations.flywheel.balance.told import Out
from calc.stations.flywheel.grade import GRAMS, MOMENT, permitted_unbalance
from calc.stations.shared.forms import COARSE

NONE = Hole(*(constant("", "", shape, 0.0) for shape in (GRAMS, COARSE, COARSE)))


class Found(NamedTuple):
    """`angles` are those of the holes; one where it is drilled at the heavy spot itself."""

    left: Number
    heavy: Number
    permitted: Number
    arbor: Number
    holes: tuple[Hole, ...]
    angles: tuple[Number, ...]
    drill: Drill


def found_of(i: In) -> Found:
    own, arbor = _apart(i)
    left = Out.left(own.size(), sources.INDEXING if i.turned is not None else None)
    heavy = Out.heavy(own.direction())
    whole = permitted_unbalance(i.mass, i.grade, i.speed)
    if i.plane == SHARE:
        whole = whole * i.other_to_mass / i.planes_apart
    drill = drill_of(i)
    moments, angles = _places(i, left, heavy)
    return Found(
        left,
        heavy,
        Out.permitted(whole, sources.BALANCE_GRADE),
        Out.arbor(arbor.size(), sources.INDEXING) if arbor else Out.arbor(0.0),
        tuple(hole_of(i, drill, moment) for moment in moments),
        angles,
        drill,
    )


def _apart(i: In) -> tuple[Vector, Vector | None]:
    """The part's own, and what arbor and machine put in: that turns round against the part's mark."""
    read = polar(i.reading, i.at).named("u", "As read", MOMENT)
    own, arbor = read, None
    if i.turned is not None and i.turned_at is not None:
        turned = polar(i.turned, i.turned_at).named("v", "Turned on the arbor", MOMENT)
        own, arbor = read.plus(turned).scaled(0.5), read.less(turned).scaled(0.5)
    if i.shows == LIGHT:
        own = own.scaled(-1.0)
    return own.named("w", "Part's own", MOMENT), arbor


def _places(i: In, left: Number, heavy: Number) -> tuple[tuple[Number, ...], tuple[Number, ...]]:
    """Unbalance to come off at each place, kg·m, and the places' angles."""
    if i.first is None or i.second is None:
        return (left,), (heavy,)
    between = sin(i.second - i.first)
    if abs(float(between)) < math.sin(LEAST_APART):
        raise impossible(
            "second",
            "is {b}, too nearly in line with the first, {a}, to share anything; give one 5° to 175° from it",
            a=i.first,
            b=i.second,
        )
    one = left * sin(i.second - heavy) / between
    two = left * sin(heavy - i.first) / between
    if min(float(one), float(two)) < -1e-9 * float(left):
        raise impossible(
            "second",
            "is {b}: the heavy spot at {h} does not lie between that and {a}; give a place on either side"
            " of it, less than 180° apart",
            a=i.first,
            b=i.second,
            h=heavy,
        )
    return (
        step("U_a1", "Off at the first place", MOMENT, greatest(one, 0.0)),
        step("U_a2", "Off at the second place", MOMENT, greatest(two, 0.0)),
    ), (i.first, i.second)


def told_of(i: In, found: Found) -> tuple[Number, ...]:
    """The outputs besides those that `Found` has."""
    one = found.holes[0]
    two = found.holes[1] if len(found.holes) > 1 else NONE
    mass = Out.mass_one(one.mass, sources.DRILLED)
    flat = one.mass if i.how == FACE else found.left / i.radius
    return (
        Out.offset(found.left / i.mass),
        mass,
        Out.mass_two(two.mass),
        Out.shoulder(one.shoulder, sources.DRILLED),
        Out.tip(one.tip, sources.DRILLED),
        Out.shoulder_two(two.shoulder),
        Out.tip_two(two.tip),
        Out.through(sqrt(4 * flat / (PI * found.drill.density * i.wall))),
    )
