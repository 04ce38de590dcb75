"""Three cuts that put a contact band of the wanted width at the wanted place on the valve's face."""

import math
from dataclasses import dataclass

from calc.core.conformance import past
from calc.core.drawing import Area, Dimension, Drawing, Label, Line, clip
from calc.core.kinds import ANGLE, LENGTH
from calc.core.result import Table, impossible, note, say
from calc.core.working import constant, form, greatest, least, step
from calc.declare.calculator import (
    Answer,
    Inputs,
    Limit,
    Number,
    Output,
    Outputs,
    answer,
    calculator,
    given,
    limit,
    measured,
    which_valve,
)
from calc.formulas import seat_geometry as seat
from calc.reference import cautions, sources

SIZE, FEED, DEGREES = form(LENGTH, 2), form(LENGTH, 3), form(ANGLE, 1)
APART = math.radians(5)  # nearer angles leave no edge that can be seen
MISMATCH = math.radians(2)  # a valve further off was ground for another seat
BLANK = 0.05e-3  # m: a seat no wider than this is a ring that was never cut
NARROWEST = 0.31e-3  # m: hardly more than the least band that can be asked for
# Common practice, no source:
EDGE = constant(
    "", "", SIZE, 0.2e-3
)  # a band nearer to the valve's edge lies on the hottest and thinnest part of it
LAND = constant("", "", SIZE, 0.3e-3)  # a thinner lip of the ring outside the upper cut chips and glows


class Out(Outputs):
    outer = Output("Outer edge of the band, cut to", "D_o", SIZE, main=True)
    inner = Output("Inner edge of the band, cut to", "D_i", SIZE, main=True)
    rise = Output("Stem tip rises by", "s", FEED, main=True)
    seat_feed = Output("Feed of the seat cutter", "a_s", FEED)
    upper_feed = Output("Feed of the upper cutter", "a_u", FEED)
    throat_feed = Output("Feed of the throat cutter", "a_t", FEED)
    present_width = Output("Present band, width", "w_0", SIZE)
    room_inside = Output("Valve face left inside the band", "e_i", SIZE)
    upper_top = Output("Upper cut breaks out in the ring's face at", "D_u", SIZE)
    land = Output("Ring left outside the upper cut", "l", SIZE)
    below = Output("Bore of the ring left below the throat cut", "h_b", SIZE)
    valve_depth = Output("Valve's edge below the ring's face", "z", SIZE)
    touch = Output("Valve touches first at", "D_c", SIZE)
    gap = Output("Gap at the other edge of the band", "g", FEED)
    margin_left = Output("Edge of the valve left", "m_left", SIZE)
    rise_total = Output("Stem tip risen since new, then", "s_all", SIZE)


class In(Inputs):
    valve: str = which_valve()
    valve_head: Number = measured(
        "Valve head diameter",
        "D_v",
        SIZE,
        tool="a calliper",
        hard="10 to 80 mm",
        usual="25 to 55 mm",
        feature="head.valve_head_{valve}",
    )
    seat_outer: Number = measured(
        "Present seat, outer edge",
        "D_s",
        SIZE,
        tool="a calliper on the dyed seat",
        hard="8 to 88 mm",
        usual="24 to 56 mm",
        hint="A new ring that was never cut: give its bore for both edges, and 0 for the depth.",
        example="34.40 mm",
    )
    seat_inner: Number = measured(
        "Present seat, inner edge",
        "d_s",
        SIZE,
        tool="a calliper on the dyed seat",
        hard="4 to 88 mm",
        usual="20 to 54 mm",
        example="31.40 mm",
    )
    seat_depth: Number = measured(
        "Present seat, depth of its outer edge",
        "t_s",
        SIZE,
        tool="a depth gauge",
        hard="0 to 15 mm",
        usual="0 to 3 mm",
        hint="Below the ring's face, along the stem.",
        example="0.35 mm",
    )
    valve_margin: Number = measured(
        "Valve edge, thickness",
        "m",
        SIZE,
        tool="a calliper",
        hard="0.1 to 6 mm",
        usual="0.8 to 3 mm",
        feature="head.valve_margin_{valve}",
        hint="The straight part between face and head, as it is now.",
    )
    stem_risen: Number = measured(
        "Stem tip risen since new, so far",
        "s_0",
        SIZE,
        tool="a depth gauge, against the height when new",
        hard="-3 to 5 mm",
        usual="-0.3 to 1 mm",
        feature="head.stem_rise",
        hint="With the valve lying on the seat as it is now. On a new ring that was never cut it is below 0.",
    )
    band_width: Number = given(
        "Band wanted, width",
        "w",
        SIZE,
        hard="0.3 to 5 mm",
        usual="1 to 2.5 mm",
        feature="head.seat_width_{valve}",
        hint="Along the seat's face, as seen with dye.",
    )
    from_edge: Number = given(
        "Band wanted, in from the valve's edge",
        "e_o",
        SIZE,
        hard="0 to 5 mm",
        usual="0.4 to 1.5 mm",
        assumed=("0.7 mm", "0.5 to 1 mm in from the edge is common practice, no source"),
        hint="Along the valve's face.",
    )
    seat_angle: Number = given(
        "Seat angle",
        "θ",
        DEGREES,
        hard="10 to 75°",
        usual="30 to 46°",
        feature="head.seat_angle",
        fold=True,
        hint="From the plane square to the stem, as are all angles here.",
    )
    upper_angle: Number = given(
        "Upper angle",
        "θ_u",
        DEGREES,
        hard="5 to 70°",
        usual="15 to 35°",
        feature="head.seat_upper_angle",
        fold=True,
        hint="The flatter cut above the seat.",
    )
    throat_angle: Number = given(
        "Throat angle",
        "θ_t",
        DEGREES,
        hard="15 to 89°",
        usual="55 to 75°",
        feature="head.seat_throat_angle",
        fold=True,
        hint="The steeper cut towards the port.",
    )
    valve_angle: Number = given(
        "Valve face angle",
        "θ_v",
        DEGREES,
        hard="10 to 75°",
        usual="29 to 46°",
        feature="head.valve_angle",
        fold=True,
    )
    valve_face: Number = measured(
        "Valve face, width",
        "b_v",
        SIZE,
        tool="a calliper, along the face",
        hard="0.5 to 10 mm",
        usual="1.5 to 4 mm",
        feature="head.valve_face_width",
        stage="",
        fold=True,
    )
    face_ground: Number = given(
        "Still to be ground off the valve's face",
        "n_v",
        SIZE,
        hard="0 to 2 mm",
        usual="0 to 0.3 mm",
        fold=True,
        assumed=("0 mm", "nothing: the valve's face is ground already"),
        hint="Square to the face.",
    )
    clean_up: Number = given(
        "Seat cutter, least feed to clean up",
        "a_c",
        FEED,
        hard="0 to 2 mm",
        usual="0 to 0.3 mm",
        fold=True,
        assumed=("0.05 mm", "what a worn seat usually takes; common practice, no source"),
        hint="Along the stem, until the seat is bright all round.",
    )
    least_depth: Number = given(
        "Band's outer edge below the ring's face, at least",
        "t_min",
        SIZE,
        hard="0 to 10 mm",
        usual="0 to 2 mm",
        fold=True,
        assumed=("0 mm", "no depth is asked for"),
        hint="For a new ring: what sets the valve at its height.",
    )
    most_rise: Number = limit(
        "Stem tip may rise since new, at most",
        "s_max",
        SIZE,
        feature="head.stem_rise",
        which="wear",
        hard="0 to 5 mm",
        usual="0.3 to 2 mm",
        hint="What tip, spring shims and valve gear can make up.",
    )
    least_margin: Number = limit(
        "Valve edge wanted, least",
        "m_min",
        SIZE,
        feature="head.valve_margin_{valve}",
        which="wear",
        hard="0.1 to 4 mm",
        usual="0.5 to 2 mm",
        hint="0.8 mm intake and 1 mm exhaust are common practice, no source.",
    )
    least_room: Number = given(
        "Valve face wanted clear on both sides of the band",
        "e_min",
        SIZE,
        hard="0 to 2 mm",
        usual="0.2 to 1 mm",
        fold=True,
        assumed=("0.4 mm", "common practice, no source"),
    )
    ring_outside: Number = measured(
        "Ring outside",
        "D_r",
        FEED,
        tool="a micrometer",
        hard="10 to 90 mm",
        usual="25 to 60 mm",
        feature="head.seat_ring_outside_{valve}",
        stage="finished",
        fold=True,
    )
    ring_bore: Number = measured(
        "Ring bore",
        "d_r",
        SIZE,
        tool="a calliper or bore gauge",
        hard="4 to 88 mm",
        feature="head.seat_ring_bore_{valve}",
        stage="finished",
        fold=True,
    )
    ring_height: Number = measured(
        "Ring height",
        "h",
        SIZE,
        tool="a calliper",
        hard="1 to 30 mm",
        usual="4 to 12 mm",
        feature="head.seat_pocket_depth",
        stage="finished",
        fold=True,
    )


@calculator(
    "seat-cut",
    "Cutting a valve seat",
    In,
    Out,
    purpose=(
        "To which diameters must the three cuts go for the band to lie right on the valve, and what does it"
        " cost in stem height?"
    ),
    finds=(
        "valve seat cutting",
        "three angle valve job",
        "seat width",
        "seat angle",
        "contact band",
        "valve margin",
        "interference angle",
        "stem height after seat cutting",
    ),
    sources=(sources.SEAT_PLANES, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.CUTTING, cautions.SODIUM, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def seat_cut(i: In) -> Answer:
    """Plane geometry of three cones on the guide's axis and of the valve's face that rests on them.

    The present upper and throat cuts are taken to have the same angles as the new ones. Feeds run along the stem, each from
    where its cutter touches after the cut before it.
    """
    _check_ring(
        i.ring_outside,
        i.ring_bore,
        i.ring_height,
        i.valve_head,
        i.seat_outer,
        i.seat_inner,
        i.seat_depth,
        i.seat_angle,
    )
    _check_angles(i.seat_angle, i.upper_angle, i.throat_angle, i.valve_angle)
    valve_inner = step(
        "D_v,i",
        "Inner edge of the valve's face",
        SIZE,
        seat.valve_face_inner(i.valve_head, i.valve_face, i.valve_angle),
        sources.SEAT_PLANES,
    )
    if valve_inner <= 0:
        raise impossible(
            "valve_face",
            "is {b}, and reaches past the middle of a valve of {d}; give less",
            b=i.valve_face,
            d=i.valve_head,
        )

    # where the band must lie, and what the seat cutter must take for that
    outer = Out.outer(seat.inner_for_width(i.valve_head, i.from_edge, i.valve_angle), sources.SEAT_PLANES)
    inner = Out.inner(seat.inner_for_width(outer, i.band_width, i.seat_angle), sources.SEAT_PLANES)
    widest = (
        math.floor(1e5 * float(seat.slant_width(outer, i.ring_bore, i.seat_angle)) - 0.2) / 1e5
    )  # taken down, so that it fits when read in inches, too
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
            most=constant("", "", SIZE, widest),
        )
    present_width = Out.present_width(
        seat.slant_width(i.seat_outer, i.seat_inner, i.seat_angle), sources.SEAT_PLANES
    )
    for_edges = step(
        "a_1",
        "Feed that reaches both edges",
        FEED,
        seat.seat_feed_needed(
            i.seat_outer, i.seat_inner, outer, inner, i.seat_angle, i.upper_angle, i.throat_angle
        ),
        sources.SEAT_PLANES,
    )
    for_depth = step(
        "a_2",
        "Feed that brings the band down to its depth",
        FEED,
        i.least_depth - i.seat_depth + seat.height(outer, i.seat_outer, i.seat_angle),
        sources.SEAT_PLANES,
    )
    to_reach = step("a_3", "Feed that edges and depth ask for", FEED, greatest(for_edges, for_depth))
    seat_feed = Out.seat_feed(greatest(i.clean_up, to_reach))

    # the seat after the seat cutter, and what the other two take
    run_out = step(
        "D_1",
        "Outer edge after the seat cut",
        SIZE,
        least(
            i.seat_outer + seat.outer_shift(seat_feed, i.seat_angle, i.upper_angle),
            seat.face_diameter(i.seat_outer, i.seat_depth + seat_feed, i.seat_angle),
        ),
        sources.SEAT_PLANES,
    )
    run_in = step(
        "d_1",
        "Inner edge after the seat cut",
        SIZE,
        greatest(i.seat_inner - seat.inner_shift(seat_feed, i.seat_angle, i.throat_angle), i.ring_bore),
        sources.SEAT_PLANES,
    )
    upper_feed = Out.upper_feed(
        seat.feed_for_outer(run_out - outer, i.seat_angle, i.upper_angle), sources.SEAT_PLANES
    )
    throat_feed = Out.throat_feed(
        seat.feed_for_inner(inner - run_in, i.seat_angle, i.throat_angle), sources.SEAT_PLANES
    )
    depth = step(
        "t",
        "Band's outer edge below the ring's face",
        SIZE,
        i.seat_depth + seat_feed + seat.height(i.seat_outer, outer, i.seat_angle),
        sources.SEAT_PLANES,
    )
    inner_depth = step(
        "t_i",
        "Band's inner edge below the ring's face",
        SIZE,
        depth + seat.height(outer, inner, i.seat_angle),
        sources.SEAT_PLANES,
    )
    upper_top = Out.upper_top(seat.face_diameter(outer, depth, i.upper_angle), sources.SEAT_PLANES)
    land = Out.land((i.ring_outside - upper_top) / 2)
    below = Out.below(
        i.ring_height - inner_depth - seat.height(inner, i.ring_bore, i.throat_angle), sources.SEAT_PLANES
    )

    # the valve on it
    def touching(outer, inner):
        return seat.contact_diameter(
            i.valve_angle,
            i.seat_angle,
            seat.contact_outer(outer, i.valve_head),
            seat.contact_inner(inner, valve_inner),
        )

    def resting(outer, touch, depth):
        return (
            depth + seat.height(outer, touch, i.seat_angle) - seat.height(i.valve_head, touch, i.valve_angle)
        )

    touch_before = step(
        "D_c,0", "Valve touches at, before", SIZE, touching(i.seat_outer, i.seat_inner), sources.SEAT_PLANES
    )
    valve_before = step(
        "z_0",
        "Valve's edge below the ring's face, before",
        SIZE,
        resting(i.seat_outer, touch_before, i.seat_depth),
        sources.SEAT_PLANES,
    )
    touch = Out.touch(touching(outer, inner), sources.SEAT_PLANES)
    valve_depth = Out.valve_depth(resting(outer, touch, depth), sources.SEAT_PLANES)
    gap = Out.gap(seat.gap_across(i.band_width, i.valve_angle, i.seat_angle), sources.SEAT_PLANES)
    room_inside = Out.room_inside(seat.slant_width(inner, valve_inner, i.valve_angle), sources.SEAT_PLANES)
    rise = Out.rise(
        seat.stem_rise(valve_depth - valve_before, i.face_ground, i.valve_angle), sources.SEAT_PLANES
    )
    rise_total = Out.rise_total(i.stem_risen + rise)
    margin_left = Out.margin_left(
        seat.margin_left(i.valve_margin, i.face_ground, i.valve_angle), sources.SEAT_PLANES
    )

    new_ring = float(i.seat_outer - i.seat_inner) < BLANK
    judged = (
        not new_ring or i.stem_risen < 0
    )  # on an uncut ring the valve lies high: 0 is what nobody measured
    if land <= 0:
        verdict = (
            "fail",
            say("Upper cut leaves the ring at {d}", d=i.ring_outside),
            (
                "Do not cut. The seat would lie too deep for this ring: fit a new one, or take an upper angle"
                " nearer to the seat's."
            ),
        )
    elif inner_depth >= i.ring_height:
        verdict = (
            "fail",
            say("Band would lie below the ring"),
            say(
                "Do not cut. The band's inner edge would be {t} down, and the ring is {h} high: fit a new"
                " ring.",
                t=inner_depth,
                h=i.ring_height,
            ),
        )
    elif i.from_edge < EDGE:
        verdict = (
            "fail",
            say("Band runs to the valve's edge: {e} left", e=i.from_edge),
            (
                "Place it further in, with the upper cutter. The edge is the thinnest and hottest part of the"
                " valve."
            ),
        )
    elif room_inside < 0:
        verdict = (
            "fail",
            say("Band runs off the valve's face inside"),
            say(
                "It reaches {e} past the ground face. Take a narrower band, or one nearer to the valve's"
                " edge.",
                e=constant("", "", SIZE, -float(room_inside)),
            ),
        )
    elif past(i.least_margin, margin_left):
        verdict = (
            "fail",
            say("Valve's edge too thin: {m}", m=margin_left),
            say(
                "Do not use this valve: less than {least} glows and burns. Fit another and start again.",
                least=i.least_margin,
            ),
        )
    elif judged and past(rise_total, i.most_rise):
        verdict = (
            "fail",
            say("Stem too high: {s} since new", s=rise_total),
            say("More than {most} is not to be made up at tip and spring. Fit a new ring.", most=i.most_rise),
        )
    elif i.valve_angle > i.seat_angle:
        verdict = (
            "attention",
            say("Valve touches at the inner edge"),
            say(
                "The valve's face is steeper than the seat, so that the gas gets between them. Grind the"
                " valve to {a} or a little less.",
                a=i.seat_angle,
            ),
        )
    elif past(i.least_room, min(room_inside, i.from_edge)):
        verdict = (
            "attention",
            say("Little room beside the band: {e}", e=min(room_inside, i.from_edge)),
            say(
                "{least} were wanted clear on both sides. Take a narrower band, or move it.",
                least=i.least_room,
            ),
        )
    elif land < LAND or below < 0:
        verdict = (
            (
                "attention",
                say("Thin lip outside the upper cut: {l}", l=land),
                "Cut the upper angle last and lightly, and look at the lip: it must not be feathered.",
            )
            if land < LAND
            else (
                "attention",
                say("Throat cut runs out below the ring"),
                (
                    "Stop it at the ring's end and blend the step into the port by hand, or take a flatter"
                    " throat angle."
                ),
            )
        )
    elif seat_feed > i.clean_up and not new_ring:
        verdict = (
            "attention",
            say("Seat must sink {a} to reach", a=seat_feed),
            (
                "More than cleaning up takes. See whether the other seats of the head need as much, and"
                " whether the right valve lies before you."
            ),
        )
    else:
        verdict = (
            "pass",
            say("Cut the band from {o} to {i}", o=outer, i=inner),
            (
                "Seat cutter first, then upper, then throat, as in the table. Blue the valve, press it"
                " straight down without turning: one unbroken band must show."
            ),
        )
    shape = _Shape(
        *map(
            float,
            (
                i.valve_head,
                valve_inner,
                i.valve_angle,
                valve_depth,
                margin_left,
                outer,
                inner,
                depth,
                inner_depth,
                i.upper_angle,
                i.throat_angle,
                i.ring_outside,
                i.ring_bore,
                i.ring_height,
            ),
        )
    )
    return answer(
        outer,
        inner,
        rise,
        seat_feed,
        upper_feed,
        throat_feed,
        present_width,
        room_inside,
        upper_top,
        land,
        below,
        valve_depth,
        touch,
        gap,
        margin_left,
        rise_total,
        verdict=verdict,
        limits=(
            Limit("the ring left outside the upper cut", land, low=0.0),
            Limit("the ring left below the band", i.ring_height - inner_depth, low=0.0),
            Limit("the valve's edge", margin_left, low=i.least_margin),
            Limit("the band's distance from it", i.from_edge, low=EDGE),
            Limit("the valve face left inside the band", room_inside, low=0.0),
            Limit("the height of the stem", rise_total, high=i.most_rise if judged else None),
            Limit(
                "the room beside the band",
                least(room_inside, i.from_edge),
                low=i.least_room,
                level="attention",
            ),
            Limit("the ring's lip outside the upper cut", land, low=LAND, level="attention"),
            Limit("the ring below the throat cut", below, low=0.0, level="attention"),
            Limit(
                "the feed of the seat cutter",
                to_reach,
                high=None if new_ring else i.clean_up,
                level="attention",
            ),
        ),
        remarks=(
            note(
                "Angles are counted from the plane square to the stem: 30° is flat, 60° steep. Where a cutter"
                " is marked from the stem, 30° and 60° change places."
            ),
            (
                note(
                    "A new ring: the rise is counted from the valve lying on it uncut. Measure the stem"
                    " height so, for it to be judged, or go by the valve's edge, {z} below the ring's face.",
                    z=valve_depth,
                )
                if not judged
                else None
            ),
            (
                note(
                    "Valve and seat have unlike angles: a line carries, at {d}, and the other edge of the"
                    " band stands {g} open. Do not lap it away.",
                    d=touch,
                    g=gap,
                )
                if gap > 0
                else None
            ),
        ),
        tables=(
            Table(
                "Cuts, in this order",
                ("Cutter", "Angle", "Feed from first touch", "Cut until"),
                (
                    ("Seat", i.seat_angle, seat_feed, "bright all round"),
                    ("Upper", i.upper_angle, upper_feed, say("outer edge at {d}", d=outer)),
                    ("Throat", i.throat_angle, throat_feed, say("inner edge at {d}", d=inner)),
                ),
            ),
        ),
        cautions=(cautions.SPINNING,) if i.face_ground > 0 else (),
        figures=(
            shape.whole(outer, inner),
            shape.side(i.band_width, i.from_edge, room_inside, (i.upper_angle, i.seat_angle, i.throat_angle)),
        ),
    )


def _check_ring(ring_outside, ring_bore, ring_height, valve_head, outer, inner, depth, angle):
    """Ring, present seat and valve must go together."""
    if ring_bore >= ring_outside:
        raise impossible(
            "ring_bore",
            "is {d}, not smaller than the ring's outside {r}; give less than {r}",
            d=ring_bore,
            r=ring_outside,
        )
    if outer >= ring_outside:
        raise impossible(
            "seat_outer",
            "is {d}, not smaller than the ring's outside {r}; give less than {r}",
            d=outer,
            r=ring_outside,
        )
    if inner > outer:
        raise impossible(
            "seat_inner", "is {d}, larger than the seat's outer edge {o}; give {o} or less", d=inner, o=outer
        )
    if inner < ring_bore:
        raise impossible(
            "seat_inner",
            "is {d}, smaller than the bore of the ring {b}; give {b} or more",
            d=inner,
            b=ring_bore,
        )
    if inner >= valve_head:
        raise impossible(
            "valve_head", "is {v}, and falls through a seat of {d}; give more than {d}", v=valve_head, d=inner
        )
    low = depth + seat.height(outer, inner, angle)
    if low >= ring_height:
        raise impossible(
            "seat_depth",
            "is {t}, which puts the seat's inner edge {low} down in a ring {h} high; give less, or a higher"
            " ring",
            t=depth,
            low=constant("", "", SIZE, float(low)),
            h=ring_height,
        )


def _check_angles(seat_angle, upper_angle, throat_angle, valve_angle):
    """Upper < seat < throat, far enough apart for an edge, and the valve ground for the seat."""

    def degrees(radians):
        return constant("", "", DEGREES, radians)

    if float(upper_angle) > float(seat_angle) - APART:
        raise impossible(
            "upper_angle",
            "is {u}, not {apart} or more flatter than the seat's {s}, so that no edge shows between them;"
            " give {most} or less",
            u=upper_angle,
            s=seat_angle,
            apart=degrees(APART),
            most=degrees(float(seat_angle) - APART),
        )
    if float(throat_angle) < float(seat_angle) + APART:
        raise impossible(
            "throat_angle",
            "is {t}, not {apart} or more steeper than the seat's {s}, so that no edge shows between them;"
            " give {least} or more",
            t=throat_angle,
            s=seat_angle,
            apart=degrees(APART),
            least=degrees(float(seat_angle) + APART),
        )
    if abs(float(valve_angle) - float(seat_angle)) > MISMATCH:
        raise impossible(
            "valve_angle",
            "is {v}, ground for another seat than one of {s}; give {low} to {high}",
            v=valve_angle,
            s=seat_angle,
            low=degrees(float(seat_angle) - MISMATCH),
            high=degrees(float(seat_angle) + MISMATCH),
        )


@dataclass(frozen=True)
class _Shape:
    """Section of valve, seat and ring, for drawing. Diameters, depths below the ring's face, angles in radians; m."""

    valve: float
    valve_inner: float
    valve_angle: float
    valve_depth: float
    margin: float
    outer: float
    inner: float
    depth: float
    inner_depth: float
    upper_angle: float
    throat_angle: float
    ring: float
    bore: float
    height: float

    def ring_half(self) -> tuple:
        """The ring on the right of the axis, cut by the three cones."""
        far, deep = self.ring, 2 * self.height
        return clip(
            (
                (far, (far - self.outer / 2) * math.tan(self.upper_angle) - self.depth),
                (self.outer / 2, -self.depth),
                (self.inner / 2, -self.inner_depth),
                (self.inner / 2 - (deep - self.inner_depth) / math.tan(self.throat_angle), -deep),
                (far, -deep),
            ),
            self.bore / 2,
            -self.height,
            self.ring / 2,
            0.0,
        )

    def valve_half(self) -> tuple:
        """The valve on the right of the axis, from the middle of its head round to the middle of its stem."""
        stem = self.valve * 0.11
        low = -self.valve_depth - (self.valve - self.valve_inner) / 2 * math.tan(self.valve_angle)
        neck = low - (self.valve_inner / 2 - 1.6 * stem) * math.tan(math.radians(20))
        foot = min(neck - 2 * stem, -1.3 * self.height)
        return (
            (0, self.margin - self.valve_depth),
            (self.valve / 2, self.margin - self.valve_depth),
            (self.valve / 2, -self.valve_depth),
            (self.valve_inner / 2, low),
            (max(1.6 * stem, 0), neck),
            (stem, neck - stem),
            (stem, foot),
            (0, foot),
        )

    def head_half(self, wide: float) -> tuple:
        """The head round the ring's pocket."""
        return (
            (self.ring / 2, 0),
            (self.ring / 2 + wide, 0),
            (self.ring / 2 + wide, -1.5 * self.height),
            (self.bore / 2, -1.5 * self.height),
            (self.bore / 2, -self.height),
            (self.ring / 2, -self.height),
        )

    @property
    def band(self) -> tuple:
        return ((self.inner / 2, -self.inner_depth), (self.outer / 2, -self.depth))

    def whole(self, outer, inner) -> Drawing:
        """Both sides, with the diameters to cut to."""

        def both(points):
            return points, tuple((-x, y) for x, y in points)

        right, left = both(self.valve_half())
        top = max(self.margin - self.valve_depth, 0)
        return Drawing(
            "Valve on its seat",
            say(
                "Section through head, ring and valve: the contact band reaches from {i} to {o} across.",
                i=inner,
                o=outer,
            ),
            (
                *(Area(p, "a") for p in both(self.head_half(self.ring * 0.09))),
                *(Area(p, "b") for p in both(self.ring_half())),
                Area((*right, *left[::-1]), ""),
                *(Line(p, "band") for p in both(self.band)),
                Line(((0, top + self.height * 0.3), (0, right[-1][1] - self.height * 0.3)), "centre"),
                Dimension(
                    (-self.outer / 2, -self.depth),
                    (self.outer / 2, -self.depth),
                    outer,
                    top + self.depth + self.height * 0.5,
                    "D_o",
                ),
                Dimension(
                    (-self.inner / 2, -self.inner_depth),
                    (self.inner / 2, -self.inner_depth),
                    inner,
                    right[-1][1] * 0.9 + self.inner_depth,
                    "D_i",
                ),
            ),
        )

    def side(self, band_width, from_edge, room_inside, angles) -> Drawing:
        """One side, larger, with the place of the band on the valve's face and the three angles."""
        margin = 0.04 * self.ring
        left, right = min(self.valve_inner, self.bore, self.inner) / 2 - margin, self.ring / 2 + margin / 2
        deep, top = (
            min(
                self.height,
                self.inner_depth + (self.inner - self.bore) / 2 * math.tan(self.throat_angle) + margin / 2,
            ),
            max(self.margin - self.valve_depth, 0) + margin / 4,
        )
        edge = (self.valve / 2, -self.valve_depth)
        low = (
            self.valve_inner / 2,
            -self.valve_depth - (self.valve - self.valve_inner) / 2 * math.tan(self.valve_angle),
        )
        window = left, -deep, right, top
        near, far = 0.35 * margin, 0.85 * margin
        return Drawing(
            "The three cuts, one side",
            say(
                "Upper, seat and throat cut in section; the band of {w} begins {e} in from the valve's edge,"
                " {i} of the valve's face are left inside it.",
                w=band_width,
                e=from_edge,
                i=room_inside,
            ),
            (
                Area(clip(self.head_half(margin), *window), "a"),
                Area(clip(self.ring_half(), *window), "b"),
                Area(clip(self.valve_half(), *window), ""),
                Line(self.band, "band"),
                Dimension(*self.band, band_width, near, "w"),
                *((Dimension(self.band[1], edge, from_edge, far, "e_o"),) if from_edge > 0 else ()),
                *((Dimension(low, self.band[0], room_inside, far, "e_i"),) if room_inside > 0 else ()),
                *(Label(at, angle, "start") for at, angle in zip(self._beside_cuts(margin), angles)),
            ),
        )

    def _beside_cuts(self, margin) -> tuple:
        """Places in the ring beside the middle of each cut."""
        tops = (
            (min(self.outer + 2 * self.depth / math.tan(self.upper_angle), self.ring) / 2, 0.0),
            (self.outer / 2, -self.depth),
            (self.inner / 2, -self.inner_depth),
            (self.bore / 2, -self.inner_depth - (self.inner - self.bore) / 2 * math.tan(self.throat_angle)),
        )
        return tuple(
            ((a[0] + b[0]) / 2 + margin * 0.3, (a[1] + b[1]) / 2 - margin * 0.35)
            for a, b in zip(tops, tops[1:])
        )
