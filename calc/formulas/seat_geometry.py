"""The valve seat as three cones: the seat itself, a flatter cut above it, a steeper cut towards the throat.

Every angle is measured from the plane square to the stem (so a 45° seat is 45° either way, but a 30° seat is
flat and a 60° throat cut steep), in radians. Depth runs along the stem, from the face of the ring or head
into the port. Every width across is a diameter. A cone is known by its angle and its *face diameter*: where
it breaks out, or would, in the face at depth 0.

Plane geometry; the only source is the right triangle. Needs upper < seat < throat, each from 0 to 90°: equal
angles have no edge between them and divide by zero. An upper angle of 0 is a flat face, a throat angle of 90°
a straight bore.

Lengths in m.
"""

from dataclasses import dataclass
from typing import cast

from calc.core.working import Value, cos, greatest, least, sin, tan

# one cone


def slant_width(outer: Value, inner: Value, angle: Value) -> Value:
    """Width of the band along its face, m: (D_o − D_i)/(2 cos θ). What a bar gauge or a dyed contact band
    shows."""
    return (outer - inner) / (2 * cos(angle))


def inner_for_width(outer: Value, width: Value, angle: Value) -> Value:
    """Inner diameter of a band of that width along the face, m."""
    return outer - 2 * width * cos(angle)


def height(outer: Value, inner: Value, angle: Value) -> Value:
    """Height along the stem between two diameters of one cone, m."""
    return (outer - inner) / 2 * tan(angle)


def depth_at(diameter: Value, face_diameter: Value, angle: Value) -> Value:
    """Depth below the face at which a cone has that diameter, m; negative above the face."""
    return height(face_diameter, diameter, angle)


def face_diameter(diameter: Value, depth: Value, angle: Value) -> Value:
    """Where the cone that has `diameter` at `depth` breaks out in the face, m. Needs an angle above 0."""
    return diameter + 2 * depth / tan(angle)


def axial_of_normal(removed: Value, angle: Value) -> Value:
    """Depth along the stem of a layer measured square to the cone's face, m: n/cos θ."""
    return removed / cos(angle)


# two cones


def edge_diameter(face_a: Value, angle_a: Value, face_b: Value, angle_b: Value) -> Value:
    """Diameter of the edge in which two cones meet, m, from their face diameters."""
    return (face_a * tan(angle_a) - face_b * tan(angle_b)) / (tan(angle_a) - tan(angle_b))


def outer_shift(feed: Value, seat_angle: Value, upper_angle: Value) -> Value:
    """How far the outer edge moves when one cutter goes `feed` deeper, m of diameter: 2a/(tan θ − tan θ_up).

    Outwards for the seat cutter, inwards for the upper one.
    """
    return 2 * feed / (tan(seat_angle) - tan(upper_angle))


def inner_shift(feed: Value, seat_angle: Value, throat_angle: Value) -> Value:
    """How far the inner edge moves when one cutter goes `feed` deeper, m of diameter: 2a/(tan θ_lo − tan θ).

    Inwards for the seat cutter, outwards for the throat one.
    """
    return 2 * feed / (tan(throat_angle) - tan(seat_angle))


def feed_for_outer(shift: Value, seat_angle: Value, upper_angle: Value) -> Value:
    """Feed that moves the outer edge by `shift` of diameter, m: of the upper cutter to bring it in, of the
    seat's to widen."""
    return shift * (tan(seat_angle) - tan(upper_angle)) / 2


def feed_for_inner(shift: Value, seat_angle: Value, throat_angle: Value) -> Value:
    """Feed that moves the inner edge by `shift` of diameter, m: of the throat cutter to bring it out, of the
    seat's to widen."""
    return shift * (tan(throat_angle) - tan(seat_angle)) / 2


def seat_feed_needed(
    outer: Value,
    inner: Value,
    wanted_outer: Value,
    wanted_inner: Value,
    seat_angle: Value,
    upper_angle: Value,
    throat_angle: Value,
) -> Value:
    """Least feed of the seat cutter after which the other two alone reach the wanted edges, m. 0 where none
    is needed.

    The upper cut can only bring the outer edge in and the throat cut the inner edge out; what has to move the
    other way, the seat cutter must do, and every bit of it sinks the valve.
    """
    return greatest(
        0.0,
        feed_for_outer(wanted_outer - outer, seat_angle, upper_angle),
        feed_for_inner(inner - wanted_inner, seat_angle, throat_angle),
    )


# valve and seat


def stem_rise(seat_feed: Value, face_removed: Value, valve_angle: Value) -> Value:
    """How far the stem tip rises, m: feed of the seat cutter along the stem + layer ground square off the
    valve's face.

    The upper and throat cuts do not move the valve.
    """
    return seat_feed + axial_of_normal(face_removed, valve_angle)


def valve_face_inner(valve_outside: Value, face_width: Value, valve_angle: Value) -> Value:
    """Inner diameter of the valve's ground face, m; `face_width` along the face."""
    return inner_for_width(valve_outside, face_width, valve_angle)


def contact_outer(seat_outer: Value, valve_outside: Value) -> Value:
    """Outer diameter of the band in which seat and valve can touch, m: neither reaches past the other."""
    return least(seat_outer, valve_outside)


def contact_inner(seat_inner: Value, valve_inner: Value) -> Value:
    """Inner diameter of the band in which seat and valve can touch, m."""
    return greatest(seat_inner, valve_inner)


def overhang(valve_outside: Value, outer: Value, valve_angle: Value) -> Value:
    """Valve face left outside the contact band, along the face, m; negative where the seat reaches past the
    valve's edge."""
    return slant_width(valve_outside, outer, valve_angle)


def margin_left(margin: Value, face_removed: Value, valve_angle: Value) -> Value:
    """Thickness of the valve's straight edge after grinding `face_removed` square off its face, m."""
    return margin - axial_of_normal(face_removed, valve_angle)


def band_depth(valve_outside: Value, valve_depth: Value, outer: Value, seat_angle: Value) -> Value:
    """Depth of the band's outer edge below the face, m, where the closed valve's face edge lies at
    `valve_depth`.

    For valve and seat of one angle: they are then one cone.
    """
    return valve_depth + height(valve_outside, outer, seat_angle)


def contact_diameter(valve_angle: Value, seat_angle: Value, outer: Value, inner: Value) -> Value:
    """Where a valve and a seat of unlike angles touch first, m of diameter; `outer` where they are alike and
    the band carries.

    With the seat the steeper of the two the gap closes outwards, so the outer edge touches; with the valve
    steeper, the inner.
    """
    return outer if seat_angle >= valve_angle else inner


def gap_across(width: Value, valve_angle: Value, seat_angle: Value) -> Value:
    """Gap at the band's other edge, square to the valve's face, m; `width` along the seat's face. 0 for like
    angles."""
    return width * sin(cast(Value, abs(seat_angle - valve_angle)))


# the section, for drawing


@dataclass(frozen=True)
class Cut:
    """One cone as cut: from (top diameter, top depth) down to (bottom diameter, bottom depth). m, depth below
    the face."""

    angle: Value
    top: Value
    top_depth: Value
    bottom: Value
    bottom_depth: Value


@dataclass(frozen=True)
class Section:
    """Three cuts of a seat, from the face to the throat bore."""

    upper: Cut
    seat: Cut
    throat: Cut


def section(
    outer: Value,
    inner: Value,
    outer_depth: Value,
    throat_bore: Value,
    seat_angle: Value,
    upper_angle: Value,
    throat_angle: Value,
) -> Section:
    """Cuts that leave a band from `outer` to `inner` whose outer edge lies `outer_depth` below the face.

    The upper cut starts in the face at `upper.top` (it must not pass the ring's outside), the throat cut ends
    at `throat.bottom_depth` in the bore of the throat (it must not pass the ring's depth). throat_bore ≤
    inner, upper_angle > 0.
    """
    inner_depth = outer_depth + height(outer, inner, seat_angle)
    return Section(
        Cut(upper_angle, face_diameter(outer, outer_depth, upper_angle), 0.0, outer, outer_depth),
        Cut(seat_angle, outer, outer_depth, inner, inner_depth),
        Cut(
            throat_angle,
            inner,
            inner_depth,
            throat_bore,
            inner_depth + height(inner, throat_bore, throat_angle),
        ),
    )
