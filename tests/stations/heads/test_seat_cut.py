"""Cutting a seat: against a simulated cut and sympy's lines, its verdicts, refusals and drawings, and what must always be so."""

from itertools import product
from math import atan2, cos, degrees, hypot, radians, tan

import numpy as np
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from calc.core.drawing import Area, Dimension, Line
from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.reference.engine import demo
from calc.stations.heads.seat_cut import seat_cut
from tests.checks.stations.heads.seat_cut import FED
from tests.formulas.test_seat_geometry import cutter

MM = 1e-3
RING = dict(ring_outside=37.605, ring_bore=31.0, ring_height=6.5)
DEFAULT = (
    dict(
        valve_head=35.0,
        seat_outer=34.4,
        seat_inner=31.4,
        seat_depth=0.35,
        band_width=1.5,
        from_edge=0.7,
        seat_angle=45.0,
        upper_angle=30.0,
        throat_angle=60.0,
        valve_angle=45.0,
        valve_face=2.8,
        clean_up=0.05,
        least_depth=0.0,
    )
    | RING
)


def entries(sizes):
    return {name: f"{value!r}{'°' if name.endswith('_angle') else ' mm'}" for name, value in sizes.items()}


@pytest.mark.parametrize("case", FED)
def test_checks_are_what_sympys_lines_give(case):
    """The published cases: seat cutter fed into a seat with 30° and 60° cuts; edges are where the lines meet."""
    from sympy import nsimplify, rad
    from sympy import tan as exact_tan

    given_entries, feed, outer, inner = FED[case]
    was_outer, was_inner = (
        nsimplify(given_entries[name].removesuffix(" mm")) for name in ("seat_outer", "seat_inner")
    )
    fed = cutter(was_outer, nsimplify(feed), 45)
    low = (was_outer - was_inner) / 2 * exact_tan(rad(45))
    assert float(2 * fed.intersection(cutter(was_outer, 0, 30))[0].x) == pytest.approx(outer, abs=5e-5)
    assert float(2 * fed.intersection(cutter(was_inner, low, 60))[0].x) == pytest.approx(inner, abs=5e-5)


class Lathe:
    """A ring cut on a fine grid: the depth of its surface over the radius, in mm. No formula of ours in it.

    A cutter is a cone let down along the axis: it goes in from where it first touches and leaves the deeper of itself and what was there.
    """

    def __init__(self, s, cells=40001):
        self.r = np.linspace(s["ring_bore"] / 2, s["ring_outside"] / 2, cells)
        seat = s["seat_depth"] + (s["seat_outer"] / 2 - self.r) * tan(radians(s["seat_angle"]))
        upper = s["seat_depth"] + (s["seat_outer"] / 2 - self.r) * tan(radians(s["upper_angle"]))
        low = s["seat_depth"] + (s["seat_outer"] - s["seat_inner"]) / 2 * tan(radians(s["seat_angle"]))
        throat = low + (s["seat_inner"] / 2 - self.r) * tan(radians(s["throat_angle"]))
        inside = self.r < s["seat_inner"] / 2 if s["seat_outer"] > s["seat_inner"] else np.zeros(cells, bool)
        self.depth = np.where(
            self.r > s["seat_outer"] / 2, np.maximum(upper, 0.0), np.where(inside, throat, seat)
        )
        if s["seat_outer"] == s["seat_inner"]:
            self.depth = np.zeros(cells)  # a ring that was never cut is flat

    def cone(self, angle):
        return -self.r * tan(radians(angle))

    def touch(self, cone):
        return np.min(self.depth - cone)

    def cut(self, angle, feed):
        cone = self.cone(angle)
        cone = cone + self.touch(cone) + feed
        self.depth = np.maximum(self.depth, cone)
        return cone

    def valve(self, s):
        """Depth of the edge of a valve let down onto the ring."""
        face = (self.r <= s["valve_head"] / 2) & (
            self.r >= s["valve_head"] / 2 - s["valve_face"] * cos(radians(s["valve_angle"]))
        )
        height = (s["valve_head"] / 2 - self.r) * tan(radians(s["valve_angle"]))
        return np.min((self.depth - height)[face])


def simulate(s, found):
    """The three feeds, in the order of the table, and what they leave: edges of the seat's cone, place of the valve before and after."""
    ring = Lathe(s)
    before = ring.valve(s)
    seat = ring.cut(s["seat_angle"], found["seat_feed"] / MM)
    for angle, feed in ((s["upper_angle"], found["upper_feed"]), (s["throat_angle"], found["throat_feed"])):
        ring.cut(angle, feed / MM)
    band = ring.r[np.abs(ring.depth - seat) < 1e-9]
    return ring, 2 * band.max(), 2 * band.min(), before, ring.valve(s)


@st.composite
def jobs(draw):
    """Rings, seats and wanted bands that belong together, angles from flat to steep."""
    s = dict(DEFAULT)
    s["seat_angle"] = s["valve_angle"] = draw(st.sampled_from((30.0, 45.0, 60.0)))
    s["upper_angle"] = s["seat_angle"] - draw(st.floats(8, 20))
    s["throat_angle"] = s["seat_angle"] + draw(st.floats(8, 20))
    s["valve_angle"] += draw(st.sampled_from((0.0, 0.0, -1.0, 1.0)))
    s["from_edge"] = draw(st.floats(0.2, 1.2))
    s["band_width"] = draw(st.floats(0.5, 1.6))
    s["clean_up"] = draw(st.floats(0.0, 0.1))
    if draw(st.booleans()):
        s["seat_outer"] = s["seat_inner"] = s["ring_bore"]
        s["seat_depth"], s["least_depth"] = 0.0, draw(st.floats(0.0, 0.5))
    else:
        s["seat_depth"] = draw(st.floats(0.0, 0.6))
        s["seat_outer"] = draw(st.floats(33.0, 34.8))
        s["seat_inner"] = draw(st.floats(31.1, 32.5))
    return s


@given(jobs())
def test_simulated_cut_leaves_the_band_that_was_asked_for(s):
    try:
        found = seat_cut(**entries(s))
    except Refused:
        assume(False)
    assume(found["land"] > 0.02 * MM and found["below"] > 0.02 * MM)
    ring, outer, inner, before, after = simulate(s, found)
    grid = 4 * (ring.r[1] - ring.r[0])
    assert outer == pytest.approx(found["outer"] / MM, abs=grid)
    assert inner == pytest.approx(found["inner"] / MM, abs=grid)
    assert hypot(outer - inner, (outer - inner) * tan(radians(s["seat_angle"]))) / 2 == pytest.approx(
        s["band_width"], abs=3 * grid
    )
    # the upper cone's run-out in the face, and the end of the throat cut in the bore
    assert 2 * ring.r[ring.depth > 1e-9].max() == pytest.approx(
        max(found["upper_top"], found["outer"]) / MM, abs=grid
    )
    assert s["ring_height"] - ring.depth[0] == pytest.approx(found["below"] / MM, abs=3 * grid)
    # the valve let down on it
    if (
        s["valve_face"] * cos(radians(s["valve_angle"])) > (s["valve_head"] - s["seat_inner"]) / 2
        and s["seat_outer"] > s["seat_inner"]
    ):
        assert found["rise"] / MM == pytest.approx(after - before, abs=3 * grid)
    assert after == pytest.approx(found["valve_depth"] / MM, abs=3 * grid)


@given(jobs())
def test_no_less_of_the_seat_cutter_would_do(s):
    """The seat cutter sinks the valve, so it takes the least: cleaning up, or what an edge or the depth needs."""
    try:
        found = seat_cut(**entries(s))
    except Refused:
        assume(False)
    feed = found["seat_feed"] / MM
    assume(feed > s["clean_up"] + 0.01)
    ring = Lathe(s)
    cone = ring.cut(s["seat_angle"], feed - 0.005)
    depth = np.interp(found["outer"] / MM / 2, ring.r, cone)
    reached = ring.r[np.abs(ring.depth - cone) < 1e-9]
    short_outside, short_inside = (
        2 * reached.max() < found["outer"] / MM,
        2 * reached.min() > found["inner"] / MM,
    )
    assert short_outside or short_inside or depth < s["least_depth"]


def test_thirty_degree_seat_is_flat_and_sixty_steep():
    """Trap: degrees from the stem. A valve of 30° on a band 3 mm across stands 0.866 mm deeper at its inner edge, one of 60° 2.6 mm."""
    sizes = DEFAULT | dict(seat_angle=30.0, valve_angle=30.0, upper_angle=15.0, throat_angle=60.0)
    (band,) = (s.points for s in seat_cut(**entries(sizes)).figures[1].shapes if isinstance(s, Line))
    (x0, y0), (x1, y1) = band
    assert degrees(atan2(y1 - y0, x1 - x0)) == pytest.approx(30.0)


NEW_RING = dict(seat_outer="31 mm", seat_inner="31 mm", seat_depth="0 mm", least_depth="0.6 mm")
VERDICTS = {
    "cut": ("pass", "Cut the band from 34.01 mm to 31.89 mm", {}),
    "cut a new ring": ("pass", "Cut the band from 34.01 mm to 31.89 mm", NEW_RING),
    "new ring, height measured": (
        "pass",
        "Cut the band from 34.01 mm to 31.89 mm",
        NEW_RING | dict(stem_risen="-1.6 mm"),
    ),
    "new ring, stem too high": (
        "fail",
        "Stem too high: 1.11 mm since new",
        NEW_RING | dict(stem_risen="-1 mm"),
    ),
    "too deep for the ring": ("fail", "Upper cut leaves the ring at 37.605 mm", dict(seat_depth="1.0 mm")),
    "below the ring": (
        "fail",
        "Band would lie below the ring",
        dict(ring_height="2.0 mm", seat_depth="0.2 mm", least_depth="0.95 mm"),
    ),
    "at the valve's edge": ("fail", "Band runs to the valve's edge: 0.10 mm left", dict(from_edge="0.1 mm")),
    "off the valve's face": ("fail", "Band runs off the valve's face inside", dict(valve_face="2.0 mm")),
    "thin valve": ("fail", "Valve's edge too thin: 0.65 mm", dict(face_ground="0.6 mm")),
    "stem too high": ("fail", "Stem too high: 0.84 mm since new", dict(stem_risen="0.79 mm")),
    "stem on its limit": (
        "pass",
        "Cut the band from 34.01 mm to 31.89 mm",
        dict(stem_risen="0.55 mm", clean_up="0.25 mm"),
    ),  # 0.55 + 0.25 = 0.80, as decimals
    "valve steeper": ("attention", "Valve touches at the inner edge", dict(valve_angle="46°")),
    "little room inside": ("attention", "Little room beside the band: 0.20 mm", dict(valve_face="2.4 mm")),
    "little room outside": ("attention", "Little room beside the band: 0.30 mm", dict(from_edge="0.3 mm")),
    "thin lip": ("attention", "Thin lip outside the upper cut: 0.16 mm", dict(seat_depth="0.7 mm")),
    "throat through the ring": ("attention", "Throat cut runs out below the ring", dict(throat_angle="85°")),
    "must sink": ("attention", "Seat must sink 0.087 mm to reach", dict(seat_outer="33.6 mm")),
    "interference angle": ("pass", "Cut the band from 34.01 mm to 31.93 mm", dict(seat_angle="46°")),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    state, headline, given_entries = VERDICTS[name]
    verdict = seat_cut(**given_entries).verdict
    assert (verdict.state, verdict.headline.plain()) == (state, headline)


SEATS = {
    "intake": dict(seat_outer="34.40 mm", seat_inner="31.30 mm"),
    "exhaust": dict(seat_outer="30.40 mm", seat_inner="27.15 mm"),
}


def read(sheet, valve, **others):
    """What a reader types of a good part: the sheet's nominal valve, a seat that was cut before."""
    at = {f: sheet.feature(f"head.{f}_{valve}").nominal / MM for f in ("valve_head", "valve_margin")}
    return (
        dict(
            valve_head=f"{at['valve_head']!r} mm",
            valve_margin=f"{at['valve_margin']!r} mm",
            seat_depth="0.35 mm",
            stem_risen="0.1 mm",
        )
        | SEATS[valve]
        | others
    )


@pytest.mark.parametrize("valve", SEATS)
def test_every_corner_of_the_sheets_own_limits_is_in_order(valve):
    """Valve, band, angles and ring each at both ends of what the sheet allows as made."""
    sheet = demo()
    features = dict(
        valve_head=f"valve_head_{valve}",
        valve_margin=f"valve_margin_{valve}",
        valve_face="valve_face_width",
        band_width=f"seat_width_{valve}",
        seat_angle="seat_angle",
        valve_angle="valve_angle",
        ring_outside=f"seat_ring_outside_{valve}",
        ring_bore=f"seat_ring_bore_{valve}",
        ring_height="seat_pocket_depth",
    )
    ends = [(sheet.feature(f"head.{id}").low, sheet.feature(f"head.{id}").high) for id in features.values()]
    for corner in product(*ends):
        sizes = {
            name: f"{degrees(x)!r}°" if name.endswith("_angle") else f"{x / MM!r} mm"
            for name, x in zip(features, corner)
        }
        found = seat_cut(valve=valve, **read(sheet, valve, **sizes))
        assert found.verdict.state == "pass", (sizes, found.verdict.headline.plain())


@pytest.mark.parametrize("valve", SEATS)
def test_limits_are_those_of_the_sheet_and_of_the_valve_in_hand(valve):
    sheet = demo()
    here = Standing(sheet, valve)
    least = sheet.feature(f"head.valve_margin_{valve}").wear / MM
    assert evaluate(seat_cut, read(sheet, valve), standing=here).verdict.state == "pass"
    thin = evaluate(
        seat_cut, read(sheet, valve, valve_margin=f"{least + 0.1!r} mm", face_ground="0.2 mm"), standing=here
    ).verdict
    assert (thin.state, thin.headline.plain()[:23]) == ("fail", "Valve's edge too thin: ")
    assert evaluate(seat_cut, read(sheet, valve, stem_risen="0.79 mm"), standing=here).verdict.state == "fail"


def test_what_the_verdict_is_about_is_asked_for():
    typed = read(demo(), "intake")
    for name in ("valve_head", "valve_margin", "seat_outer", "seat_inner", "seat_depth", "stem_risen"):
        found = evaluate(
            seat_cut, {k: v for k, v in typed.items() if k != name}, standing=Standing(demo(), "intake")
        )
        assert found.verdict.state == "awaited" and found.next == (name,), name


def test_without_a_limit_nothing_is_judged():
    found = evaluate(
        seat_cut,
        read(
            demo(),
            "intake",
            band_width="1.5 mm",
            valve_face="3.4 mm",
            valve_angle="45°",
            seat_angle="45°",
            upper_angle="30°",
            throat_angle="60°",
            ring_outside="37.605 mm",
            ring_bore="31 mm",
            ring_height="6.5 mm",
        ),
        standing=Standing(which="intake"),
    )
    assert found.verdict.state == "unjudged" and set(found.next) == {"most_rise", "least_margin"}


def test_thin_edge_follows_from_the_triangle():
    """0.6 mm square off a 45° face takes 0.6·√2 mm of the edge."""
    assert seat_cut(face_ground="0.6 mm")["margin_left"] / MM == pytest.approx(1.5 - 0.6 * 2**0.5)


@pytest.mark.parametrize(
    "field, given_entries, sentence",
    [
        (
            "ring_bore",
            dict(ring_bore="38 mm"),
            "Ring bore: is 38.00 mm, not smaller than the ring's outside 37.605 mm; give less than 37.605 mm.",
        ),
        (
            "seat_outer",
            dict(seat_outer="38 mm"),
            "Present seat, outer edge: is 38.00 mm, not smaller than the ring's outside 37.605 mm; give less than 37.605 mm.",
        ),
        (
            "seat_inner",
            dict(seat_inner="34.5 mm"),
            "Present seat, inner edge: is 34.50 mm, larger than the seat's outer edge 34.40 mm; give 34.40 mm or less.",
        ),
        (
            "seat_inner",
            dict(seat_inner="30 mm"),
            "Present seat, inner edge: is 30.00 mm, smaller than the bore of the ring 31.00 mm; give 31.00 mm or more.",
        ),
        (
            "valve_head",
            dict(valve_head="31 mm"),
            "Valve head diameter: is 31.00 mm, and falls through a seat of 31.40 mm; give more than 31.40 mm.",
        ),
        (
            "seat_depth",
            dict(seat_depth="6 mm"),
            "Present seat, depth of its outer edge: is 6.00 mm, which puts the seat's inner edge 7.50 mm down in a ring 6.50 mm high; give less, or a higher ring.",
        ),
        (
            "upper_angle",
            dict(upper_angle="42°"),
            "Upper angle: is 42.0°, not 5.0° or more flatter than the seat's 45.0°, so that no edge shows between them; give 40.0° or less.",
        ),
        (
            "throat_angle",
            dict(throat_angle="47°"),
            "Throat angle: is 47.0°, not 5.0° or more steeper than the seat's 45.0°, so that no edge shows between them; give 50.0° or more.",
        ),
        (
            "valve_angle",
            dict(valve_angle="30°"),
            "Valve face angle: is 30.0°, ground for another seat than one of 45.0°; give 43.0° to 47.0°.",
        ),
        (
            "valve_face",
            dict(
                valve_head="12 mm",
                valve_face="10 mm",
                ring_bore="8 mm",
                seat_outer="11 mm",
                seat_inner="9 mm",
                ring_outside="14 mm",
            ),
            "Valve face, width: is 10.00 mm, and reaches past the middle of a valve of 12.00 mm; give less.",
        ),
        (
            "valve_head",
            dict(valve_head="40 mm"),
            "Valve head diameter: is 40.00 mm, which puts the band's outer edge at 39.01 mm, and the ring has metal only from 31.00 mm to 37.605 mm; "
            "give the valve and the ring that belong together, or another place of the band.",
        ),
        (
            "band_width",
            dict(band_width="2.5 mm"),
            "Band wanted, width: is 2.50 mm and would reach in to 30.47 mm, where the bore of the ring, 31.00 mm, has left no metal; give 2.12 mm or less.",
        ),
    ],
)
def test_refusal(field, given_entries, sentence):
    with pytest.raises(Refused) as refused:
        seat_cut(**given_entries)
    assert [(e.field, e.sentence()) for e in refused.value.errors] == [(field, sentence)]


@given(st.floats(0.5, 3.0), st.floats(30.0, 33.9))
def test_width_that_a_refusal_names_is_accepted(edge, bore):
    try:
        seat_cut(band_width="5 mm", from_edge=f"{edge!r} mm", ring_bore=f"{bore!r} mm", seat_inner="34 mm")
    except Refused as refused:
        (error,) = refused.errors
        assume(error.field == "band_width")
        for system, unit in (("metric", "mm"), ("inch", "in")):
            width = error.sentence(system).rsplit("give ")[-1].split(" ")[0]
            seat_cut(
                band_width=f"{width} {unit}",
                from_edge=f"{edge!r} mm",
                ring_bore=f"{bore!r} mm",
                seat_inner="34 mm",
            )


def test_inches_give_the_same_as_millimetres():
    metric = seat_cut(
        valve_head="34.925 mm",
        seat_outer="34.29 mm",
        seat_inner="31.496 mm",
        band_width="1.524 mm",
        from_edge="0.762 mm",
    )
    inch = seat_cut(
        valve_head="1 3/8 in",
        seat_outer="1.350 in",
        seat_inner="1.240 in",
        band_width="60 thou",
        from_edge="0.030 in",
    )
    for output in metric.outputs:
        assert inch[output] == pytest.approx(metric[output], rel=1e-9, abs=1e-12), output


def test_remarks_speak_of_what_is_there():
    def notes(**given_entries):
        return " ".join(r.text.plain() for r in seat_cut(**given_entries).remarks)

    assert "from the plane square to the stem" in notes()
    assert (
        "different angles" not in notes()
        and "they touch on a line, at 34.01 mm, and the other edge of the band stands 0.026 mm open"
        in notes(seat_angle="46°")
    )
    assert "they touch on a line, at 31.91 mm" in notes(valve_angle="46°")  # now the inner edge
    assert (
        "A new ring" in notes(**NEW_RING)
        and "A new ring" not in notes(**NEW_RING, stem_risen="-1.6 mm")
        and "A new ring" not in notes()
    )


def test_table_lists_the_cuts_in_the_order_of_the_work():
    (table,) = seat_cut().tables
    assert [(row[0], row[1].text(), row[2].text()) for row in table.rows] == [
        ("Seat", "45.0°", "0.050 mm"),
        ("Upper", "30.0°", "0.132 mm"),
        ("Throat", "60.0°", "0.229 mm"),
    ]
    assert [row[3] if isinstance(row[3], str) else row[3].plain() for row in table.rows] == [
        "bright all round",
        "outer edge at 34.01 mm",
        "inner edge at 31.89 mm",
    ]


@given(jobs())
def test_drawings_show_the_sizes_that_are_told(s):
    try:
        found = seat_cut(**entries(s))
    except Refused:
        assume(False)
    whole, side = found.figures
    (band,) = (shape.points for shape in side.shapes if isinstance(shape, Line))
    assert [2 * x for x, _ in band] == pytest.approx([found["inner"], found["outer"]])
    across = {d.name: abs(d.end[0] - d.start[0]) for d in whole.shapes if isinstance(d, Dimension)}
    assert across == pytest.approx({"D_o": found["outer"], "D_i": found["inner"]})
    rings = [shape.points for shape in whole.shapes if isinstance(shape, Area) and shape.hatch == "b"]
    xs, ys = zip(*(p for ring in rings for p in ring))
    assert (
        max(xs) == -min(xs) == pytest.approx(s["ring_outside"] / 2 * MM)
        and min(ys) == pytest.approx(-s["ring_height"] * MM)
        and max(ys) <= 1e-12
    )
    for x, y in band:  # both edges of the band lie on the ring that is drawn
        assert min(hypot(x - p, y - q) for p, q in rings[0]) < 1e-9
    # along the faces: the band, and what of the valve's face is left on both sides of it
    along = {
        d.name: hypot(d.end[0] - d.start[0], d.end[1] - d.start[1])
        for d in side.shapes
        if isinstance(d, Dimension)
    }
    assert along["w"] == pytest.approx(s["band_width"] * MM)
    if s["valve_angle"] == s["seat_angle"]:
        assert along["e_o"] == pytest.approx(s["from_edge"] * MM) and along.get("e_i", 0.0) == pytest.approx(
            max(found["room_inside"], 0.0), abs=1e-12
        )
    # the valve: its edge at its height, its face down to the inner edge, and in like angles on the very line of the band
    (valve,) = (shape.points for shape in whole.shapes if isinstance(shape, Area) and not shape.hatch)
    edge, foot = (
        (s["valve_head"] / 2 * MM, -found["valve_depth"]),
        (s["valve_head"] / 2 - s["valve_face"] * cos(radians(s["valve_angle"]))) * MM,
    )
    assert any(p == pytest.approx(edge) for p in valve) and max(y for _, y in valve) == pytest.approx(
        found["margin_left"] - found["valve_depth"]
    )
    inner_edge = min((p for p in valve if p[0] > 0), key=lambda p: abs(p[0] - foot))
    assert inner_edge[0] == pytest.approx(foot) and edge[1] - inner_edge[1] == pytest.approx(
        (edge[0] - foot) * tan(radians(s["valve_angle"]))
    )
    heads = [shape.points for shape in whole.shapes if isinstance(shape, Area) and shape.hatch == "a"]
    assert min(abs(x) for head in heads for x, y in head if y > -s["ring_height"] * MM / 2) == pytest.approx(
        s["ring_outside"] / 2 * MM
    )  # the head begins where the ring ends
    assert not whole.exaggerated and not side.exaggerated


def test_work_that_is_told_carries_its_dangers():
    assert "spinning" in {c.id for c in seat_cut(face_ground="0.1 mm").cautions} and "spinning" not in {
        c.id for c in seat_cut().cautions
    }
