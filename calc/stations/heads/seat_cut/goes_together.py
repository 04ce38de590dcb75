"""Refuses what does not go together: ring, present seat and valve; and the angles."""

import math

from calc.core.result import impossible
from calc.core.working import Number, constant
from calc.formulas import seat_geometry as seat
from calc.stations.heads.seat_cut.asked import In
from calc.stations.heads.seat_cut.told import DEGREES
from calc.stations.shared.forms import COARSE

APART = math.radians(5)  # nearer angles leave no edge that can be seen
MISMATCH = math.radians(2)  # a valve further off was ground for another seat


def check_ring(i: In) -> None:
    """Ring, present seat and valve must go together."""
    if i.ring_bore >= i.ring_outside:
        raise impossible(
            "ring_bore",
            "is {d}, not smaller than the ring's outside {r}; give less than {r}",
            d=i.ring_bore,
            r=i.ring_outside,
        )
    if i.seat_outer >= i.ring_outside:
        raise impossible(
            "seat_outer",
            "is {d}, not smaller than the ring's outside {r}; give less than {r}",
            d=i.seat_outer,
            r=i.ring_outside,
        )
    if i.seat_inner > i.seat_outer:
        raise impossible(
            "seat_inner",
            "is {d}, larger than the seat's outer edge {o}; give {o} or less",
            d=i.seat_inner,
            o=i.seat_outer,
        )
    if i.seat_inner < i.ring_bore:
        raise impossible(
            "seat_inner",
            "is {d}, smaller than the bore of the ring {b}; give {b} or more",
            d=i.seat_inner,
            b=i.ring_bore,
        )
    if i.seat_inner >= i.valve_head:
        raise impossible(
            "valve_head",
            "is {v}, and falls through a seat of {d}; give more than {d}",
            v=i.valve_head,
            d=i.seat_inner,
        )
    low = i.seat_depth + seat.height(i.seat_outer, i.seat_inner, i.seat_angle)
    if low >= i.ring_height:
        raise impossible(
            "seat_depth",
            "is {t}, which puts the seat's inner edge {low} down in a ring {h} high; give less, or a higher"
            " ring",
            t=i.seat_depth,
            low=constant("", "", COARSE, float(low)),
            h=i.ring_height,
        )


def check_angles(i: In) -> None:
    """Upper < seat < throat, far enough apart for an edge, and the valve ground for the seat."""

    def degrees(radians: float) -> Number:
        return constant("", "", DEGREES, radians)

    if float(i.upper_angle) > float(i.seat_angle) - APART:
        raise impossible(
            "upper_angle",
            "is {u}, not {apart} or more flatter than the seat's {s}, so that no edge shows between them;"
            " give {most} or less",
            u=i.upper_angle,
            s=i.seat_angle,
            apart=degrees(APART),
            most=degrees(float(i.seat_angle) - APART),
        )
    if float(i.throat_angle) < float(i.seat_angle) + APART:
        raise impossible(
            "throat_angle",
            "is {t}, not {apart} or more steeper than the seat's {s}, so that no edge shows between them;"
            " give {least} or more",
            t=i.throat_angle,
            s=i.seat_angle,
            apart=degrees(APART),
            least=degrees(float(i.seat_angle) + APART),
        )
    if abs(float(i.valve_angle) - float(i.seat_angle)) > MISMATCH:
        raise impossible(
            "valve_angle",
            "is {v}, ground for another seat than one of {s}; give {low} to {high}",
            v=i.valve_angle,
            s=i.seat_angle,
            low=degrees(float(i.seat_angle) - MISMATCH),
            high=degrees(float(i.seat_angle) + MISMATCH),
        )
