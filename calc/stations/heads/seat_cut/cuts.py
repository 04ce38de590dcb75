"""Where the band must lie, and what each of the three cutters takes for that."""

import math
from typing import NamedTuple

from calc.core.result import impossible
from calc.core.working import Number, constant, greatest, least, step
from calc.formulas import seat_geometry as seat
from calc.reference import sources
from calc.stations.heads.seat_cut.asked import In
from calc.stations.heads.seat_cut.told import Out
from calc.stations.shared.forms import COARSE, SIZE

NARROWEST = 0.31e-3  # m: hardly more than the least band that can be asked for


class Cuts(NamedTuple):
    """Diameters and depths below the ring's face of the seat once it is cut, and the feeds that make it."""

    outer: Number
    inner: Number
    present_width: Number
    to_reach: Number  # feed of the seat cutter for edges and depth, were nothing to be cleaned up
    seat_feed: Number
    upper_feed: Number
    throat_feed: Number
    depth: Number  # of the outer edge
    inner_depth: Number
    upper_top: Number  # where the upper cut breaks out in the face
    land: Number  # ring left outside of that
    below: Number  # bore left below the throat cut


def cuts_of(i: In) -> Cuts:
    outer, inner = _band(i)
    present_width = Out.present_width(
        seat.slant_width(i.seat_outer, i.seat_inner, i.seat_angle), sources.SEAT_PLANES
    )
    to_reach = _feed_to_reach(i, outer, inner)
    seat_feed = Out.seat_feed(greatest(i.clean_up, to_reach))
    upper_feed, throat_feed = _other_feeds(i, outer, inner, seat_feed)
    depth = step(
        "t",
        "Band's outer edge below the ring's face",
        COARSE,
        i.seat_depth + seat_feed + seat.height(i.seat_outer, outer, i.seat_angle),
        sources.SEAT_PLANES,
    )
    inner_depth = step(
        "t_i",
        "Band's inner edge below the ring's face",
        COARSE,
        depth + seat.height(outer, inner, i.seat_angle),
        sources.SEAT_PLANES,
    )
    upper_top = Out.upper_top(seat.face_diameter(outer, depth, i.upper_angle), sources.SEAT_PLANES)
    land = Out.land((i.ring_outside - upper_top) / 2)
    below = Out.below(
        i.ring_height - inner_depth - seat.height(inner, i.ring_bore, i.throat_angle), sources.SEAT_PLANES
    )
    return Cuts(
        outer,
        inner,
        present_width,
        to_reach,
        seat_feed,
        upper_feed,
        throat_feed,
        depth,
        inner_depth,
        upper_top,
        land,
        below,
    )


def _band(i: In) -> tuple[Number, Number]:
    """Outer and inner edge of the band; refused where the ring has no metal for it."""
    outer = Out.outer(seat.inner_for_width(i.valve_head, i.from_edge, i.valve_angle), sources.SEAT_PLANES)
    inner = Out.inner(seat.inner_for_width(outer, i.band_width, i.seat_angle), sources.SEAT_PLANES)
    # taken down, so that it fits when read in inches, too
    widest = math.floor(1e5 * float(seat.slant_width(outer, i.ring_bore, i.seat_angle)) - 0.2) / 1e5
    if outer >= i.ring_outside or widest < NARROWEST:
        raise impossible(
            "valve_head",
            "is {v}, which puts the band's outer edge at {o}, and the ring has metal only from {i} to {r};"
            " give the valve and the ring that belong together, or another place of the band",
            v=i.valve_head,
            o=outer,
            i=i.ring_bore,
            r=i.ring_outside,
        )
    if inner < i.ring_bore:
        raise impossible(
            "band_width",
            "is {w} and would reach in to {d}, where the bore of the ring, {b}, has left no metal; give"
            " {most} or less",
            w=i.band_width,
            d=inner,
            b=i.ring_bore,
            most=constant("", "", COARSE, widest),
        )
    return outer, inner


def _feed_to_reach(i: In, outer: Number, inner: Number) -> Number:
    """What the seat cutter must take for the other two to find metal at both edges, and for the band to lie
    as deep as wanted."""
    for_edges = step(
        "a_1",
        "Feed that reaches both edges",
        SIZE,
        seat.seat_feed_needed(
            i.seat_outer, i.seat_inner, outer, inner, i.seat_angle, i.upper_angle, i.throat_angle
        ),
        sources.SEAT_PLANES,
    )
    for_depth = step(
        "a_2",
        "Feed that brings the band down to its depth",
        SIZE,
        i.least_depth - i.seat_depth + seat.height(outer, i.seat_outer, i.seat_angle),
        sources.SEAT_PLANES,
    )
    return step("a_3", "Feed that edges and depth ask for", SIZE, greatest(for_edges, for_depth))


def _other_feeds(i: In, outer: Number, inner: Number, seat_feed: Number) -> tuple[Number, Number]:
    """What upper and throat cutter take off the seat that the seat cutter leaves."""
    run_out = step(
        "D_1",
        "Outer edge after the seat cut",
        COARSE,
        least(
            i.seat_outer + seat.outer_shift(seat_feed, i.seat_angle, i.upper_angle),
            seat.face_diameter(i.seat_outer, i.seat_depth + seat_feed, i.seat_angle),
        ),
        sources.SEAT_PLANES,
    )
    run_in = step(
        "d_1",
        "Inner edge after the seat cut",
        COARSE,
        greatest(i.seat_inner - seat.inner_shift(seat_feed, i.seat_angle, i.throat_angle), i.ring_bore),
        sources.SEAT_PLANES,
    )
    return (
        Out.upper_feed(
            seat.feed_for_outer(run_out - outer, i.seat_angle, i.upper_angle), sources.SEAT_PLANES
        ),
        Out.throat_feed(
            seat.feed_for_inner(inner - run_in, i.seat_angle, i.throat_angle), sources.SEAT_PLANES
        ),
    )
