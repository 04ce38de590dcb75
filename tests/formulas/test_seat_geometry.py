"""Seat cutting against sympy's geometry, plain line intersections, and what must always be so."""

from math import cos, hypot, pi, radians, sin, tan

import numpy as np
import pytest
import sympy
from hypothesis import assume, given
from hypothesis import strategies as st

from calc.formulas import seat_geometry as seat
from tests.checks.formulas.seat_geometry import SEATS


def cutter(through, depth, degrees):
    """One cone as a line in the section (radius, depth), exactly: it gets narrower going down."""
    t = sympy.tan(sympy.rad(sympy.nsimplify(degrees)))
    radius = sympy.nsimplify(through) / 2
    return sympy.Line(sympy.Point(radius, depth), sympy.Point(radius - 1, depth + t))


@pytest.mark.parametrize("row", SEATS.values(), ids=SEATS)
def test_fed_seat_cutter_meets_the_other_cuts_where_sympy_says(row):
    outer, inner, angle, upper, throat, feed = row
    t = sympy.tan(sympy.rad(sympy.nsimplify(angle)))
    depth = (sympy.nsimplify(outer) - sympy.nsimplify(inner)) / 2 * t
    fed = cutter(outer, sympy.nsimplify(feed), angle)
    new_outer = 2 * fed.intersection(cutter(outer, 0, upper))[0]
    new_inner = 2 * fed.intersection(cutter(inner, depth, throat))[0]
    a, u, lo = radians(angle), radians(upper), radians(throat)
    assert outer + seat.outer_shift(feed, a, u) == pytest.approx(float(new_outer.x), abs=1e-10)
    assert inner - seat.inner_shift(feed, a, lo) == pytest.approx(float(new_inner.x), abs=1e-10)
    # Width of the new band: distance between the two edges.
    assert seat.slant_width(float(new_outer.x), float(new_inner.x), a) == pytest.approx(
        float((new_outer / 2).distance(new_inner / 2)), abs=1e-10
    )


def test_sinking_moves_the_stem_by_the_feed_and_other_cuts_do_not():
    """The valve is let down on the seat by hand: find where its cone touches, before and after, with sympy's lines."""
    outer, _, angle, upper, throat, feed = SEATS["30° seat, 15° and 60°, fed 0.1 mm"]
    axis = sympy.Line((0, 0), (0, 1))
    before = cutter(outer, 0, angle).intersection(axis)[0].y
    after = cutter(outer, sympy.nsimplify(feed), angle).intersection(axis)[0].y
    assert seat.stem_rise(feed, 0.0, radians(angle)) == pytest.approx(float(after - before))


def test_stem_rise_adds_seat_and_valve():
    assert seat.stem_rise(0.1, 0.05, radians(60)) == pytest.approx(0.1 + 0.1)  # n/cos 60° = 2n


def test_thirty_degrees_from_the_plane_is_flat():
    """Trap: degrees from the axis instead of the plane. A 30° band 3 mm across the diameter is 0.866 mm high, not 2.598."""
    assert seat.height(40.0, 37.0, radians(30)) == pytest.approx(1.5 / 3**0.5)
    assert seat.height(40.0, 37.0, radians(60)) == pytest.approx(1.5 * 3**0.5)


def test_straight_throat_bore_does_not_move_the_inner_edge():
    """Limit of the throat angle: 90° from the plane is a plain bore, which meets every seat at its own diameter."""
    assert seat.inner_shift(0.3, radians(45), pi / 2) == pytest.approx(0.0, abs=1e-15)


angles = st.floats(20.0, 70.0)


@st.composite
def three_angles(draw):
    """Upper < seat < throat, in radians, never closer than 5°."""
    upper = draw(st.floats(0.0, 60.0))
    angle = draw(st.floats(upper + 5, 75.0))
    throat = draw(st.floats(angle + 5, 88.0))
    return radians(upper), radians(angle), radians(throat)


bands = st.tuples(st.floats(20.0, 60.0), st.floats(0.3, 3.0))  # outer diameter, width


@given(bands, angles)
def test_width_and_height_are_two_sides_of_the_triangle(band, degrees):
    (outer, width), angle = band, radians(degrees)
    inner = seat.inner_for_width(outer, width, angle)
    assert seat.slant_width(outer, inner, angle) == pytest.approx(width)
    assert hypot((outer - inner) / 2, seat.height(outer, inner, angle)) == pytest.approx(width)


@given(three_angles(), bands, st.floats(0.0, 2.0), st.floats(-1.0, 1.0), st.floats(0.3, 3.0))
def test_told_feeds_give_the_wanted_width_at_the_wanted_place(three, band, outer_depth, move, wanted_width):
    """Cut by cut as lines in the section, intersected by a linear solver: wanted edges come back exactly, least sinking."""
    (upper, angle, throat), (outer, width) = three, band
    inner = seat.inner_for_width(outer, width, angle)
    wanted_outer = outer + move
    wanted_inner = seat.inner_for_width(wanted_outer, wanted_width, angle)
    sink = seat.seat_feed_needed(outer, inner, wanted_outer, wanted_inner, angle, upper, throat)
    up = seat.feed_for_outer(outer + seat.outer_shift(sink, angle, upper) - wanted_outer, angle, upper)
    low = seat.feed_for_inner(wanted_inner - (inner - seat.inner_shift(sink, angle, throat)), angle, throat)
    assert sink >= 0 and up >= -1e-9 and low >= -1e-9
    assert min(sink, up, low) == pytest.approx(0.0, abs=1e-9)  # nothing is cut for nothing

    def meet(line_a, line_b):
        """Lines r·tan θ + depth = constant."""
        (ta, ca), (tb, cb) = line_a, line_b
        return np.linalg.solve([[ta, 1.0], [tb, 1.0]], [ca, cb])

    inner_depth = outer_depth + width * sin(angle)
    seat_line = (tan(angle), outer / 2 * tan(angle) + outer_depth + sink)
    upper_line = (tan(upper), outer / 2 * tan(upper) + outer_depth + up)
    throat_line = (tan(throat), inner / 2 * tan(throat) + inner_depth + low)
    top, bottom = meet(seat_line, upper_line), meet(seat_line, throat_line)
    assert 2 * top[0] == pytest.approx(wanted_outer, abs=1e-6)
    assert 2 * bottom[0] == pytest.approx(wanted_inner, abs=1e-6)
    assert hypot(*(top - bottom)) == pytest.approx(wanted_width, abs=1e-6)


@given(three_angles(), bands)
def test_narrowing_both_edges_and_sinking_back_gives_the_old_band(three, band):
    """The feeds are each other's reverse: narrow by the two other cuts, then sink until the band is as wide as before."""
    (upper, angle, throat), (outer, width) = three, band
    inner = seat.inner_for_width(outer, width, angle)
    narrowed = outer - seat.outer_shift(0.05, angle, upper), inner + seat.inner_shift(0.05, angle, throat)
    back = (
        narrowed[0] + seat.outer_shift(0.05, angle, upper),
        narrowed[1] - seat.inner_shift(0.05, angle, throat),
    )
    assert seat.slant_width(*back, angle) == pytest.approx(width)


@given(three_angles(), bands, st.floats(0.1, 2.0))
def test_section_is_one_unbroken_line_of_the_right_slopes(three, band, depth):
    (upper, angle, throat), (outer, width) = three, band
    assume(upper > radians(1))
    inner = seat.inner_for_width(outer, width, angle)
    section = seat.section(outer, inner, depth, inner - 1.0, angle, upper, throat)
    assert (section.upper.bottom, section.upper.bottom_depth) == (section.seat.top, section.seat.top_depth)
    assert (section.seat.bottom, section.seat.bottom_depth) == (section.throat.top, section.throat.top_depth)
    for cut in (section.upper, section.seat, section.throat):
        assert (cut.bottom_depth - cut.top_depth) / ((cut.top - cut.bottom) / 2) == pytest.approx(
            tan(cut.angle)
        )
    # The edges are those of the cones as known by their face diameters.
    faces = [
        seat.face_diameter(c.bottom, c.bottom_depth, c.angle)
        for c in (section.upper, section.seat, section.throat)
    ]
    assert faces[0] == pytest.approx(section.upper.top)
    assert seat.edge_diameter(faces[0], upper, faces[1], angle) == pytest.approx(outer)
    assert seat.edge_diameter(faces[1], angle, faces[2], throat) == pytest.approx(inner)
    assert seat.depth_at(inner, faces[1], angle) == pytest.approx(section.seat.bottom_depth)


@given(bands, st.floats(30.0, 60.0), st.floats(-3.0, 3.0))
def test_unlike_angles_touch_at_the_edge_that_a_slow_descent_finds(band, degrees, difference):
    """Lower the valve's cone on the seat's point by point: the least distance along the stem is where they touch."""
    assume(abs(difference) > 0.05)
    (outer, width), seat_angle, valve_angle = band, radians(degrees), radians(degrees + difference)
    inner = seat.inner_for_width(outer, width, seat_angle)
    across = np.linspace(inner, outer, 201)
    seat_depth = (outer - across) / 2 * tan(seat_angle)
    valve_depth = (outer - across) / 2 * tan(valve_angle)
    lift = seat_depth - valve_depth
    touch = across[np.argmin(lift)]
    assert seat.contact_diameter(valve_angle, seat_angle, outer, inner) == pytest.approx(touch)
    # Gap at the other edge, square to the valve's face: from its height along the stem.
    assert seat.gap_across(width, valve_angle, seat_angle) == pytest.approx(
        (lift.max() - lift.min()) * cos(valve_angle), rel=1e-9
    )


def test_usual_interference_angle_touches_outside():
    """Valve 45°, seat 46°: line contact at the outer edge; 1.5 mm wide, the inner edge stands open by 26 µm."""
    assert seat.contact_diameter(radians(45), radians(46), 40.0, 37.9) == 40.0
    assert seat.gap_across(1.5, radians(45), radians(46)) == pytest.approx(0.0262, abs=0.0001)
    assert seat.contact_diameter(radians(46), radians(45), 40.0, 37.9) == 37.9
    assert (
        seat.contact_diameter(radians(45), radians(45), 40.0, 37.9) == 40.0
    )  # alike: the whole band, told by its outer edge
    assert seat.gap_across(1.5, radians(45), radians(45)) == 0.0


def test_contact_stays_on_valve_and_seat():
    """Valve 41 mm, face 2.5 mm at 45°: its face ends at 37.464 mm."""
    valve_inner = seat.valve_face_inner(41.0, 2.5, radians(45))
    assert valve_inner == pytest.approx(41 - 2**0.5 * 2.5)
    assert seat.contact_outer(40.0, 41.0) == 40.0 and seat.contact_inner(37.0, valve_inner) == valve_inner
    assert seat.contact_outer(42.0, 41.0) == 41.0 and seat.contact_inner(38.0, valve_inner) == 38.0
    assert seat.overhang(41.0, 40.0, radians(45)) == pytest.approx(0.5 * 2**0.5)


def test_margin_shrinks_by_more_than_is_ground_off():
    """Edge 1.2 mm, 0.1 mm off a 45° face: 0.1414 mm of the edge goes."""
    assert seat.margin_left(1.2, 0.1, radians(45)) == pytest.approx(1.2 - 0.1 * 2**0.5)


@given(bands, angles, st.floats(-1.0, 2.0), st.floats(0.0, 2.0))
def test_closed_valve_lies_on_the_seats_own_cone(band, degrees, valve_depth, beyond):
    (outer, _), angle = band, radians(degrees)
    depth = seat.band_depth(outer + beyond, valve_depth, outer, angle)
    face = seat.face_diameter(outer, depth, angle)
    assert seat.depth_at(outer + beyond, face, angle) == pytest.approx(valve_depth, abs=1e-9)
