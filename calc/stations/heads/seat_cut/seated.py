"""The valve on its seat, before and after the cut: where it touches, how deep it lies, its stem's rise."""

from typing import NamedTuple

from calc.core.result import impossible
from calc.core.working import Number, Value, step
from calc.formulas import seat_geometry as seat
from calc.reference import sources
from calc.stations.heads.seat_cut.asked import In
from calc.stations.heads.seat_cut.cuts import Cuts
from calc.stations.heads.seat_cut.told import Out
from calc.stations.shared.forms import COARSE

BLANK = 0.05e-3  # m: a seat no wider than this is a ring that was never cut


class Seated(NamedTuple):
    touch: Number  # diameter at which the valve touches first
    valve_depth: Number  # of its edge below the ring's face
    gap: Number  # at the band's other edge
    room_inside: Number  # valve face left inside the band
    rise: Number
    rise_total: Number
    margin_left: Number
    new_ring: bool
    judged: bool  # is the rise known? On an uncut ring the valve lies high: 0 is what nobody measured


def inside_of_valve_face(i: In) -> Number:
    """Inner diameter of the valve's ground face; refused where there is none."""
    inner = step(
        "D_v,i",
        "Inner edge of the valve's face",
        COARSE,
        seat.valve_face_inner(i.valve_head, i.valve_face, i.valve_angle),
        sources.SEAT_PLANES,
    )
    if inner <= 0:
        raise impossible(
            "valve_face",
            "is {b}, and reaches past the middle of a valve of {d}; give less",
            b=i.valve_face,
            d=i.valve_head,
        )
    return inner


def seated(i: In, cuts: Cuts, valve_inner: Number) -> Seated:
    touch_before = step(
        "D_c,0",
        "Valve touches at, before",
        COARSE,
        _touching(i, i.seat_outer, i.seat_inner, valve_inner),
        sources.SEAT_PLANES,
    )
    valve_before = step(
        "z_0",
        "Valve's edge below the ring's face, before",
        COARSE,
        _resting(i, i.seat_outer, touch_before, i.seat_depth),
        sources.SEAT_PLANES,
    )
    touch = Out.touch(_touching(i, cuts.outer, cuts.inner, valve_inner), sources.SEAT_PLANES)
    valve_depth = Out.valve_depth(_resting(i, cuts.outer, touch, cuts.depth), sources.SEAT_PLANES)
    gap = Out.gap(seat.gap_across(i.band_width, i.valve_angle, i.seat_angle), sources.SEAT_PLANES)
    room_inside = Out.room_inside(
        seat.slant_width(cuts.inner, valve_inner, i.valve_angle), sources.SEAT_PLANES
    )
    rise = Out.rise(
        seat.stem_rise(valve_depth - valve_before, i.face_ground, i.valve_angle), sources.SEAT_PLANES
    )
    rise_total = Out.rise_total(i.stem_risen + rise)
    margin_left = Out.margin_left(
        seat.margin_left(i.valve_margin, i.face_ground, i.valve_angle), sources.SEAT_PLANES
    )
    new_ring = float(i.seat_outer - i.seat_inner) < BLANK
    judged = not new_ring or i.stem_risen < 0
    return Seated(touch, valve_depth, gap, room_inside, rise, rise_total, margin_left, new_ring, judged)


def _touching(i: In, outer: Number, inner: Number, valve_inner: Number) -> Value:
    """Diameter at which the valve touches a seat with these edges first."""
    return seat.contact_diameter(
        i.valve_angle,
        i.seat_angle,
        seat.contact_outer(outer, i.valve_head),
        seat.contact_inner(inner, valve_inner),
    )


def _resting(i: In, outer: Number, touch: Number, depth: Number) -> Number:
    """Depth of the valve's edge below the ring's face, of the seat's outer edge at `depth`."""
    on_seat, on_valve = (
        seat.height(outer, touch, i.seat_angle),
        seat.height(i.valve_head, touch, i.valve_angle),
    )
    return depth + on_seat - on_valve
