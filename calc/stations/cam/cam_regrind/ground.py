"""The lobe as it is ground: its circle and lift, what comes off where, and what its foot meets."""

from typing import NamedTuple

from calc.core.result import impossible
from calc.core.working import Number, constant, greatest, least, step
from calc.formulas.flat_foot import off_axis, radius_at, sharpest, steepest
from calc.reference import sources
from calc.stations.cam.cam_regrind.asked import HYDRAULIC, JOURNAL, PLAN, SAME, In
from calc.stations.cam.cam_regrind.told import Out
from calc.stations.shared.forms import COARSE, SIZE, TIMES


class Ground(NamedTuple):
    """Lengths in m; None where what it hangs on is not known, or is not asked."""

    read: Number
    base: Number
    lift: Number
    make_up: Number
    lash: Number
    heel_off: Number
    flank_off: Number
    nose_off: Number
    valve_lift: Number
    more: Number
    half: Number
    taper: Number | None
    hard: Number | None  # layer left where most is gone
    base_least: Number | None  # smallest base circle over what stands beside it
    curve: Number | None  # least radius of curvature
    face: Number | None  # what a flat foot must measure across
    stands: Number  # adjuster off its middle, or plunger pressed in


def ground_of(i: In) -> Ground:
    if i.nose <= i.heel:
        raise impossible(
            "nose",
            "is {n}, not more than across the heel, {h}; measure from the heel to the nose's top",
            n=i.nose,
            h=i.heel,
        )
    along = (
        i.nose if i.how == PLAN else step("H_m", "Heel to nose, mean of edges", SIZE, (i.nose + i.other) / 2)
    )
    if along <= i.heel:
        raise impossible(
            "other",
            "is {o}: with the first edge's reading that is no lift over a heel of {h}; measure both edges"
            " again",
            o=i.other,
            h=i.heel,
        )
    read = Out.read(along - i.heel)
    base, lift = _planned(i) if i.how == PLAN else (Out.base(1 * i.heel), Out.lift(1 * read))
    make_up = Out.make_up((i.base_made - base) / 2, sources.SMALLER_LOBE)
    heel_off = Out.heel_off((i.base_made - base) / 2)
    nose_off = Out.nose_off(heel_off + i.lift_made - lift, sources.SMALLER_LOBE)
    valve_lift = Out.valve_lift(lift * i.ratio if i.lifters == HYDRAULIC else lift * i.ratio - i.lash)
    more = Out.more((lift - i.lift_made) * i.ratio)
    curve, face = _foot(i, base, lift, heel_off)
    return Ground(
        read,
        base,
        lift,
        make_up,
        Out.lash(make_up * i.ratio, sources.CHAIN_ALONG_PUSHROD),
        heel_off,
        Out.flank_off((heel_off + nose_off) / 2),
        nose_off,
        valve_lift,
        more,
        Out.half(more / 2),
        None if i.how == PLAN else step("t", "Lobe taper, edge to edge", SIZE, abs(i.nose - i.other)),
        _layer_left(i, heel_off, nose_off),
        _base_least(i),
        curve,
        face,
        _stands(i, make_up),
    )


def _planned(i: In) -> tuple[Number, Number]:
    """The largest lobe of that lift that lies within the worn one: its circle within the heel, its nose
    within the nose."""
    top = step("R_n", "Nose from the cam's axis, as read", SIZE, i.nose - i.heel / 2)
    radius = least(i.heel / 2, top - i.new_lift) - i.pit - i.stock
    if float(radius) <= 0:
        raise impossible(
            "new_lift",
            "is {l}, which leaves no base circle in this lobe; give less, or read the lobe again",
            l=i.new_lift,
        )
    return Out.base(2 * radius, sources.SMALLER_LOBE), Out.lift(1 * i.new_lift)


def _layer_left(i: In, heel_off: Number, nose_off: Number) -> Number | None:
    if i.hard_depth is None:
        return None
    return step(
        "k_l", "Hardened layer left, least", COARSE, i.hard_depth - greatest(heel_off, nose_off, 0 * heel_off)
    )


def _base_least(i: In) -> Number | None:
    beside = [d for d in (i.core, i.journal if i.reach == JOURNAL else None) if d is not None]
    if not beside:
        return None
    return step("D_min", "Smallest base circle over what stands beside", SIZE, greatest(*beside) + 2 * i.room)


def _foot(i: In, base: Number, lift: Number, off: Number) -> tuple[Number | None, Number | None]:
    """Least radius of curvature, and how wide a flat foot must be. The same lobe ground smaller all round is
    a curve parallel to the old one: each radius is less by what comes off."""
    if i.law == SAME:
        if i.nose_radius is None:
            return None, None
        return step("ρ", "Radius of the nose then", COARSE, i.nose_radius - off, sources.SMALLER_LOBE), None
    sharp = constant(
        "x_s", "Where it is sharpest, share of the flank, by search", TIMES, sharpest(i.law, float(i.flank))
    )
    steep = constant("x_f", "Where it is steepest, by search", TIMES, steepest(i.law))
    curve = step(
        "ρ",
        "Least radius of curvature under a flat foot",
        COARSE,
        radius_at(i.law, base / 2, lift, i.flank, sharp),
        sources.FLAT_FOOT,
    )
    face = step(
        "d_n",
        "Flat foot must measure across at least",
        COARSE,
        2 * off_axis(i.law, lift, i.flank, steep),
        sources.FLAT_FOOT,
    )
    return curve, face


def _stands(i: In, make_up: Number) -> Number:
    if i.lifters == HYDRAULIC:
        return step("v_n", "Plunger pressed in then", COARSE, i.preload - make_up)
    return step("e_n", "Adjuster off its middle then", COARSE, i.screwed + make_up)
