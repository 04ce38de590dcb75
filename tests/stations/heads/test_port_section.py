"""Ports: sections against their integrals, steps against what plane geometry says, verdicts and refusals."""

import math
from itertools import product

import pytest
import sympy
from hypothesis import assume, given
from hypothesis import strategies as st
from scipy.integrate import quad

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.formulas.sections import d_area, d_perimeter, oval_area, oval_perimeter
from calc.reference import engine
from calc.stations.heads.port_section import port_section
from calc.stations.heads.port_section.edge import Section
from tests.checks.stations.heads.port_section import CHECKS
from tests.formulas.test_sections import width_at

MM = 1e-3


def test_checks_are_what_integration_finds():
    stated = {c.what: c.expected for c in CHECKS}
    assert quad(width_at, -16, 16, (36, 32, 5), points=[-11, -2])[0] == pytest.approx(
        stated["area of a D 36 by 32 mm, corners of 5 mm, mm²"], abs=0.0005
    )
    assert quad(lambda y: 6 + 2 * math.sqrt(225 - y * y), -15, 15)[0] == pytest.approx(
        stated["area of a slot 36 by 30 mm, mm²"], abs=0.0005
    )
    t = sympy.symbols("t")
    way = (
        sympy.integrate(18, (t, 0, sympy.pi))
        + 2 * sympy.integrate(5, (t, 0, sympy.pi / 2))
        + 2 * (32 - 18 - 5)
        + (36 - 2 * 5)
    )
    assert float(way) == pytest.approx(stated["way round that D, mm"], abs=0.00005)


def polygon(points):
    """Area and way round a closed polygon."""
    pairs = list(zip(points, (*points[1:], points[0])))
    return sum(ax * by - bx * ay for (ax, ay), (bx, by) in pairs) / 2, sum(
        math.hypot(bx - ax, by - ay) for (ax, ay), (bx, by) in pairs
    )


sizes = st.integers(100, 900).map(lambda tenths: tenths / 10 * MM)


@given(st.sampled_from(["oval", "d"]), sizes, sizes, st.floats(0, 1))
def test_outline_encloses_the_area_that_is_told(shape, w, h, share):
    assume(shape != "d" or h >= w / 2)
    r = share * min(w / 2, h - w / 2) if shape == "d" else 0.0
    area, way = polygon(Section(shape, w, h, r).outline())
    assert area == pytest.approx(d_area(w, h, r) if shape == "d" else oval_area(w, h), rel=2e-4)
    assert way == pytest.approx(d_perimeter(w, h, r) if shape == "d" else oval_perimeter(w, h), rel=2e-4)


@pytest.mark.parametrize("shape, r", [("oval", 0.0), ("d", 0.004), ("d", 0.0)])
def test_points_of_an_outline_lie_on_it(shape, r):
    section = Section(shape, 0.036, 0.030, r, 0.001, -0.002)
    assert max(map(abs, section.depths(section.outline()))) < 1e-12


@pytest.mark.parametrize(
    "point, depth",
    [
        ((0, -10), 5),
        ((10, -12), 3),
        ((13, 0), 5),
        ((0, 0), 15),
        ((17, -14), 3 - math.hypot(2, 2)),
        ((0, 20), -5),
    ],
)
def test_depth_in_a_d_is_the_way_to_its_nearest_side(point, depth):
    """A D 36 by 30 mm with corners of 3 mm: by ruler. (The roof's circle stands on the middle of its width, 3 mm under the middle of its height.)"""
    section = Section("d", 0.036, 0.030, 0.003)
    x, y = (c * MM for c in point)
    by_roof = 18 - math.hypot(point[0], point[1] + 3) if point[1] >= -3 else None
    assert section.depths([(x, y)])[0] / MM == pytest.approx(
        by_roof if by_roof is not None else depth, abs=1e-9
    )


@given(
    sizes,
    sizes,
    st.integers(-30, 30).map(lambda tenths: tenths / 10 * MM),
    st.integers(-30, 30).map(lambda tenths: tenths / 10 * MM),
)
def test_step_of_two_circles_is_along_the_line_of_their_middles(a, b, x, y):
    off = math.hypot(x, y)
    assert Section("round", b, b).stands_in(Section("round", a, a, 0, x, y)) == pytest.approx(
        max(0, min((a - b) / 2 + off, a / 2 if off < b / 2 else 1)), abs=3e-7
    )


# Every verdict: state, headline, entries.
OUT = dict(
    valve="exhaust", width="36 mm", height="30 mm", manifold_width="35.4 mm", manifold_height="29.4 mm"
)  # the intake's sizes, the other way
VERDICTS = {
    "good": ("pass", "Gas at 71.0 m/s, no step faces it", {}),
    "small step": ("pass", "Gas at 71.0 m/s, step of 0.20 mm faces it", dict(manifold_width="36.4 mm")),
    "step on the limit": ("pass", "Gas at 71.0 m/s, step of 0.30 mm faces it", OUT),
    "step": ("fail", "Step of 0.50 mm faces the flow, 0.30 mm allowed", dict(manifold_width="37 mm")),
    "step, exhaust": (
        "fail",
        "Step of 0.50 mm faces the flow, 0.30 mm allowed",
        OUT | dict(manifold_width="35 mm"),
    ),
    "sits aside": ("fail", "Step of 0.50 mm faces the flow, 0.30 mm allowed", dict(aside="0.8 mm")),
    "fast": ("attention", "Fast gas: 102.6 m/s, 90.0 m/s at most", dict(engine_speed="6500 1/min")),
    "slow": ("attention", "Slow gas: 31.6 m/s, 45.0 m/s at least", dict(engine_speed="2000 1/min")),
    "widens": ("attention", "Widens by 1.50 mm at the joint, 1.00 mm allowed", dict(manifold_width="33 mm")),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    state, words, entries = VERDICTS[name]
    verdict = port_section(**entries).verdict
    assert (verdict.state, verdict.headline.plain()) == (state, words)


@pytest.mark.parametrize(
    "name, advice",
    [
        ("step", "Open the head at the joint until it nowhere stands inside the manifold"),
        ("step, exhaust", "Open the manifold at the joint until it nowhere stands inside the head"),
        ("sits aside", "Move the manifold first: it sits 0.80 mm off the middle. Then open the head"),
        ("fast", "Good up to 5704 1/min. For more speed the port wants 1011 mm²"),
        ("widens", "Open the manifold to within 1.00 mm of the head, or leave it."),
    ],
)
def test_what_to_do_names_the_part_to_work_on(name, advice):
    assert advice in port_section(**VERDICTS[name][2]).verdict.do.plain()


def test_the_area_that_is_advised_brings_the_speed_to_its_limit():
    fast = port_section(engine_speed="6500 1/min")
    wanted = fast["area"] * fast["speed"] / 90
    assert f"{wanted * 1e6:.0f} mm²" in fast.verdict.do.plain()
    wide = math.sqrt(4 * wanted / math.pi) * 1000
    assert port_section(
        shape="round", width=f"{wide} mm", manifold_width=f"{wide} mm", engine_speed="6500 1/min"
    )["speed"] == pytest.approx(90, rel=1e-9)
    assert port_section(engine_speed=f"{port_section()['speed_limit'] * 60 - 1e-6!r} 1/min")[
        "speed"
    ] == pytest.approx(90, abs=1e-6)


def test_each_side_is_told_and_judged():
    (table,) = port_section(aside="0.8 mm").tables
    assert [(row[0], round(float(row[1]) / MM, 3)) for row in table.rows] == [
        ("top", 0.3),
        ("bottom", 0.3),
        ("left", 1.1),
        ("right", -0.5),
    ]
    assert table.states == ("pass", "pass", "attention", "fail")
    (exhaust,) = port_section(**OUT, aside="0.8 mm").tables
    assert [float(row[1]) for row in exhaust.rows] == pytest.approx([-float(row[1]) for row in table.rows])
    (limit,) = port_section(
        manifold_width="36.6 mm", manifold_height="30 mm"
    ).tables  # (36.6 − 36)/2 = 0.30, which is allowed
    assert limit.states == ("pass",) * 4


def test_a_step_between_the_sides_is_found():
    found = port_section(manifold_shape="d", corner="2 mm")
    assert found["facing"] > 4 * MM and any(
        "lies between the four sides" in r.text.plain() for r in found.remarks
    )
    assert not any("lies between" in r.text.plain() for r in port_section(manifold_width="37 mm").remarks)


def test_a_manifold_of_the_port_s_own_size_makes_no_step():
    alike = port_section(manifold_width="36 mm", manifold_height="30 mm")
    assert (alike["facing"], alike["drop"], alike["ratio"]) == (0, 0, 1)


# whose sizes, whose limits


def in_hand(**entries):
    return evaluate(port_section, entries, standing=Standing(engine.demo()))


@pytest.mark.parametrize("valve", ["intake", "exhaust"])
def test_all_corners_of_the_sheet_are_in_order(valve):
    sizes = engine.demo().features
    names = {
        name: sizes[f"port.{name}_{valve}"]
        for name in ("width", "height", "manifold_width", "manifold_height")
    }
    for corner in product(*((f.low, f.high) for f in names.values())):
        entries = {name: f"{size!r} m" for name, size in zip(names, corner)}
        verdict = in_hand(**entries, valve=valve, shape="oval", aside="0", above="0").verdict
        assert verdict.state == "pass", (verdict.headline.plain(), entries)


def test_a_manifold_that_nobody_read_makes_no_passing_joint():
    """Left empty it was taken as the port: no step faced it, whatever it was."""
    read = dict(
        valve="intake",
        shape="oval",
        width="36 mm",
        height="30 mm",
        manifold_width="35.4 mm",
        manifold_height="29.4 mm",
        aside="0",
        above="0",
    )
    for missing in read:
        assert (
            in_hand(**{name: text for name, text in read.items() if name != missing}).verdict.state
            == "awaited"
        ), missing
    assert in_hand(**read).verdict.state == "pass"


def test_a_doubt_that_can_make_the_gas_too_fast_leaves_it_open():
    """At 5700 a minute the gas goes 89.9 m/s of 90, and half a millimetre of width is 1.3 % of that."""
    assert port_section(engine_speed="5700 1/min").verdict.state == "pass"
    found = port_section(engine_speed="5700 1/min", width="36 ± 0.5 mm", manifold_width="35 mm").verdict
    assert found.state == "unsure" and "the gas speed" in found.headline.plain()


REFUSALS = [
    (
        "height",
        dict(shape="d", width="40 mm", height="19 mm"),
        "Port, height: is 19.00 mm, less than the half-round roof takes of a D 40.00 mm wide; give half of the width or more, or choose the oval.",
    ),
    (
        "manifold_height",
        dict(manifold_shape="d", manifold_width="40 mm", manifold_height="19 mm"),
        "Manifold, height: is 19.00 mm, less than the half-round roof takes of a D 40.00 mm wide; give half of the width or more, or choose the oval.",
    ),
    (
        "corner",
        dict(shape="d", corner="13 mm"),
        "Radius of a D's lower corners: is 13.00 mm, more than the straight sides of a D 36.00 mm wide and 30.00 mm high leave; give 12.00 mm or less.",
    ),
    (
        "aside",
        dict(aside="15 mm", width="28 mm"),
        "Manifold sits to the right by: is 15.00 mm, so that the two hardly meet; give less than half of the smaller, 14.00 mm.",
    ),
    (
        "most_speed",
        dict(most_speed="45 m/s"),
        "Gas speed, most: is 45.0 m/s, not more than the least, 45.0 m/s; give more than 45.0 m/s.",
    ),
]


@pytest.mark.parametrize("field, entries, sentence", REFUSALS)
def test_refusal(field, entries, sentence):
    with pytest.raises(Refused) as refused:
        port_section(**entries)
    assert [(e.field, e.sentence()) for e in refused.value.errors] == [(field, sentence)]


def test_inches_give_the_same():
    metric = evaluate(port_section, dict(width="35.56 mm", manifold_width="34.925 mm", bore="88.9 mm"))
    inch = evaluate(port_section, dict(width="1.4", manifold_width="1 3/8", bore="3.5"), "inch")
    for output in metric.outputs:
        assert inch[output] == pytest.approx(metric[output], rel=1e-9, abs=1e-12), output


def test_a_doubt_that_reaches_the_limit_leaves_it_open():
    found = port_section(manifold_width="36.5 ± 0.2 mm")
    assert found.verdict.state == "unsure" and "the step" in found.verdict.headline.plain()


@given(sizes, sizes, st.integers(1000, 6000))
def test_half_the_speed_is_half_the_gas_speed_and_it_falls_with_the_area(a, b, rpm):
    assume(abs(a - b) > 1e-6)
    small, large = (
        port_section(shape="round", width=f"{w!r} m", manifold_width=f"{w!r} m", engine_speed=f"{rpm} 1/min")
        for w in sorted((a, b))
    )
    assert small["speed"] > large["speed"]
    assert small["speed"] * small["area"] == pytest.approx(large["speed"] * large["area"], rel=1e-12)
    assert port_section(
        shape="round", width=f"{a!r} m", manifold_width=f"{a!r} m", engine_speed=f"{2 * rpm} 1/min"
    )["piston_speed"] == pytest.approx(2 * small["piston_speed"], rel=1e-12)


def test_drawing_shows_both_to_scale():
    drawing, plot = port_section(aside="0.5 mm").figures
    port, manifold = drawing.shapes[0].points, drawing.shapes[1].points
    assert max(x for x, _ in port) == pytest.approx(18 * MM) and max(y for _, y in port) == pytest.approx(
        15 * MM
    )
    assert max(x for x, _ in manifold) == pytest.approx((17.7 + 0.5) * MM)
    ((x, y, words),) = plot.marks
    assert words == "now" and y == pytest.approx(
        plot.series[0].points[1][1] * x / plot.series[0].points[1][0]
    )
