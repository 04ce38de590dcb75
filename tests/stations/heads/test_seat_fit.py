"""The fit of a seat ring against the equation of the thick cylinder, its verdicts and refusals, and what must always be so."""

import re
from itertools import product

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.formulas import press_fit as fit
from calc.reference.engine import engine
from calc.reference.materials import MATERIALS
from calc.stations.heads.seat_fit import seat_fit
from calc.stations.heads.seat_ring import RINGS
from tests.checks.stations.heads.seat_fit import CASES, COLUMNS, FOUND, SMOOTH, ring
from tests.formulas.test_past_yield import stepped
from tests.formulas.test_press_fit import two_rings

MM, MPA = 1e-3, 1e6


def growth(material, celsius):
    """Free strain from 20 °C, written out from the table's own numbers: mean coefficient of 20 to 100 °C, growing with heat."""
    rise = celsius - 20
    return material.alpha / (1 + 80 * material.alpha_growth) * rise * (1 + material.alpha_growth * rise)


@pytest.mark.parametrize("case", CASES)
def test_checks_are_what_the_boundary_value_solver_finds(case):
    """scipy's solve_bvp on both rings, cold and hot, with free thermal strain in the equation itself."""
    pocket, outside, bore, wall, ring_id, head_id, ring_hot, head_hot = CASES[case]
    inner, outer = MATERIALS[ring_id], MATERIALS[head_id]
    grip = (outside - pocket) * MM

    def solved(e_ring, e_head, strain_ring, strain_head):
        return two_rings(
            bore * MM,
            pocket * MM,
            (pocket + 2 * wall) * MM,
            grip,
            e_ring,
            inner.nu,
            e_head,
            outer.nu,
            strain_ring,
            strain_head,
        )

    cold_ring, cold_head = solved(inner.E, outer.E, 0.0, 0.0)
    hot_ring, _ = solved(
        inner.E * (1 - inner.modulus_fall * (ring_hot - 20)),
        outer.E * (1 - outer.modulus_fall * (head_hot - 20)),
        growth(inner, ring_hot),
        growth(outer, head_hot),
    )
    left = (grip + pocket * MM * (growth(inner, t) - growth(outer, head_hot)) for t in (ring_hot, head_hot))
    found = (
        -cold_ring(pocket * MM)[1] / MPA,
        cold_ring(bore * MM)[0] / MPA,
        cold_head(pocket * MM)[0] / MPA,
        next(left) / MM,
        -hot_ring(pocket * MM)[1] / MPA,
        next(left) / MM,
    )
    for got, stated, (output, *_, tolerance) in zip(found, FOUND[case], COLUMNS, strict=True):
        assert got == pytest.approx(stated, abs=tolerance), output


def test_share_of_yield_is_von_mises_at_the_worst_place_of_the_solution():
    pocket, outside, bore, wall, ring_id, head_id, *_ = CASES["intake of the example"]
    inner, outer = MATERIALS[ring_id], MATERIALS[head_id]
    in_ring, in_head = two_rings(
        bore * MM,
        pocket * MM,
        (pocket + 2 * wall) * MM,
        (outside - pocket) * MM,
        inner.E,
        inner.nu,
        outer.E,
        outer.nu,
    )

    def mises(stress):
        hoop, radial = stress
        return (hoop**2 - hoop * radial + radial**2) ** 0.5

    worst_ring = max(mises(in_ring(bore * MM + i / 50 * (pocket - bore) * MM)) for i in range(51))
    worst_head = max(mises(in_head(pocket * MM + i / 50 * 2 * wall * MM)) for i in range(51))
    cold = seat_fit(**ring(*CASES["intake of the example"][:6], 20, 20))
    assert cold["head_used"] == pytest.approx(worst_head / 200e6, rel=1e-5)  # Al–Si T6, 200 MPa
    assert cold["ring_used"] == pytest.approx(
        worst_ring / (1.3 * 380e6), rel=1e-5
    )  # sintered iron, 380 MPa, 1.3 times in compression


def test_hot_share_of_yield_counts_the_yield_of_that_heat():
    """A head at 200 °C bears 150 of the 240 MPa that it bears cold: the same pressure uses more of it."""
    warm = seat_fit(**ring(38, 38.1, 31, 11, "high-chrome-iron", "al-si-cu-t6", 350, 200))
    k = 38 / 60
    assert warm["head_used"] == pytest.approx(
        warm["pressure_hot"] * (3 + k**4) ** 0.5 / (1 - k**2) / 150e6, rel=1e-9
    )


SOFT = dict(valve="exhaust", head_material="al-si-t6")


def test_what_yields_is_followed_and_agrees_with_the_load_stepped_through():
    """The exhaust ring in plain T6 at 190 °C: pressure and loss by finite elements that step through the pocket's opening."""
    found = seat_fit(**SOFT, ring_warming="20 °C")
    head, joint, outside = MATERIALS["al-si-t6"], 33.5 * MM, 51.5 * MM
    E = head.E * (1 - head.modulus_fall * 170)
    opened = fit.outer_joint_change(found["pressure_hot"], joint, outside, E, head.nu) + found["lost"]
    strength = 140e6 + (60e6 - 140e6) * 40 / 55  # at 190 °C, between 150 and 205 of the table
    assert found["lost"] > 0
    assert stepped(
        joint / 2 / MM, outside / 2 / MM, strength / 1e9, E / 1e9, head.nu, opened / 2 / MM, 0
    ) * 1e9 == pytest.approx(found["pressure_hot"], rel=0.01)


def test_what_is_lost_in_one_heat_is_lost_in_all_of_them():
    soft, hard = seat_fit(**SOFT), seat_fit(valve="exhaust", own="|; ; ; 2000 MPa", head_material="al-si-t6")
    assert soft["lost"] > 0 == hard["lost"]
    for output in ("interference_hot", "interference_stopped"):
        assert hard[output] - soft[output] == pytest.approx(soft["lost"])


def test_first_yield_is_looked_at_and_only_a_wall_that_gives_way_fails():
    """The sheet's exhaust ring at the hint's 300 °C once read “Head yields: do not fit”; it keeps nearly all of its grip."""
    hot = seat_fit(**SOFT, head_temperature="180 °C", ring_temperature="300 °C")
    assert (
        hot.verdict.state == "attention" and hot["head_used"] > 1 and hot["interference_stopped"] > 0.04 * MM
    )
    assert (
        hot.verdict.headline.plain() == f"Head yields a little: {hot['lost'] / MM:.4f} mm lost"
        and hot["lost"] < 0.002 * MM
    )
    hotter = seat_fit(**SOFT, head_temperature="200 °C", ring_temperature="320 °C")
    assert hotter.verdict.state == "attention" and 0.02 * MM < hotter["interference_stopped"] < 0.035 * MM
    assert (
        seat_fit(**SOFT, head_temperature="200 °C", ring_temperature="380 °C").verdict.headline.plain()
        == "Head gives way when running"
    )


def test_a_hot_ring_in_a_cool_head_presses_hardest():
    """Warming up: ring 230 °C in a head still at 60 °C grips by 0.158 mm (growths worked by hand), more than cold or running."""
    found = seat_fit(valve="exhaust")
    warm = (
        33.61
        - 33.5
        - 0.00824
        + 33.5 * (growth(MATERIALS["sintered-iron"], 230) - growth(MATERIALS["al-si-cu-t6"], 60))
    )
    assert warm == pytest.approx(0.158, abs=0.001)
    assert next(float(s) for s in found.working if s.symbol == "δ_w") == pytest.approx(warm * MM, rel=1e-6)
    assert any("cold start" in r.text.plain() for r in found.remarks)
    assert seat_fit(valve="exhaust", ring_warming="400 °C").verdict.state != "pass"


SHEETS = [("TS-16", "intake"), ("TS-16", "exhaust"), ("RC-40", "intake")]


@pytest.mark.parametrize("name, valve", SHEETS)
def test_every_corner_of_a_sheets_own_limits_is_in_order(name, valve):
    """What the sheet allows as made must not be refused by the page: pocket, ring, bore, depth and wall each at both ends."""
    sheet = engine(name)
    features = {
        "pocket_bore": f"seat_pocket_{valve}",
        "ring_outside": f"seat_ring_outside_{valve}",
        "ring_bore": f"seat_ring_bore_{valve}",
        "depth": "seat_pocket_depth",
        "head_wall": "seat_pocket_wall",
    }
    ends = [(sheet.feature(f"head.{id}").low, sheet.feature(f"head.{id}").high) for id in features.values()]
    for corner in product(*ends):
        found = evaluate(
            seat_fit,
            {input: f"{size / MM!r} mm" for input, size in zip(features, corner)},
            standing=Standing(sheet, valve),
        )
        assert found.verdict.state == "pass", (
            corner,
            found.verdict.headline.plain(),
            found.verdict.do.plain(),
        )


@pytest.mark.parametrize("name, valve", SHEETS)
def test_pocket_and_ring_are_read_and_the_rest_stands_in_by_the_sheet(name, valve):
    sheet = engine(name)
    read = {
        input: f"{sheet.feature(f'head.{id}_{valve}').nominal / MM!r} mm"
        for input, id in (("pocket_bore", "seat_pocket"), ("ring_outside", "seat_ring_outside"))
    }
    assert evaluate(seat_fit, read, standing=Standing(sheet, valve)).verdict.state == "pass"
    assert (
        evaluate(
            seat_fit, dict(list(read.items())[:1]), standing=Standing(sheet, valve)
        ).verdict.headline.plain()
        == "ring outside"
    )
    if valve == "intake":
        assert evaluate(seat_fit, read, standing=Standing(sheet)).verdict.headline.plain() == "valve"


def test_one_material_at_one_heat_keeps_its_interference():
    """Limit: equal expansion at equal temperatures leaves the grip as it is, to first order."""
    same = seat_fit(**ring(40, 40.05, 33, 12, "grey-iron", "grey-iron", 200, 200))
    assert same["interference_hot"] == same["interference_stopped"] == pytest.approx(0.05 * MM)


def test_inches_give_the_same_as_millimetres():
    metric = seat_fit(pocket_bore="37.338 mm", ring_outside="37.465 mm", ring_bore="30.861 mm")
    inch = seat_fit(pocket_bore="1.470 in", ring_outside="1.475 in", ring_bore="1 43/200 in")
    for output in metric.outputs:
        assert inch[output] == pytest.approx(metric[output], rel=1e-12), output


# Every verdict: state, words that stand in it, entries.
WARM = dict(ring_temperature="230 °C", head_temperature="180 °C")
VERDICTS = {
    "holds": ("pass", "Holds: 0.042 mm left when stopped hot", {}),
    "smaller than the pocket": (
        "fail",
        "Falls in: ring 0.100 mm under the pocket",
        dict(ring_outside="37.400 mm"),
    ),
    "of the pocket's size": (
        "fail",
        "Falls in: ring 0.000 mm under the pocket",
        dict(ring_outside="37.500 mm"),
    ),
    "pressed flat": ("fail", "No grip: roughness takes up all 0.005 mm", dict(ring_outside="37.505 mm")),
    "loose running": (
        "fail",
        "Comes loose: −0.025 mm left when running",
        WARM | dict(ring_outside="37.560 mm", ring_temperature="150 °C"),
    ),
    "loose stopped": (
        "fail",
        "Comes loose: −0.011 mm left when stopped hot",
        WARM | dict(ring_outside="37.560 mm"),
    ),
    "head yields a little": (
        "attention",
        "Head yields a little: 0.",
        WARM | dict(ring_outside="37.660 mm", head_material="al-si-t6"),
    ),
    "head gives way": (
        "fail",
        "Head gives way when running",
        WARM | dict(ring_outside="37.850 mm", head_material="al-si-t6"),
    ),
    "ring yields a little": (
        "attention",
        "Ring yields a little: 0.",
        dict(ring_bore="36.5 mm", ring_outside="37.65 mm"),
    ),
    "ring gives way": (
        "fail",
        "Ring gives way while warming up",
        dict(ring_bore="36.5 mm", ring_outside="37.75 mm"),
    ),
    "iron head": ("fail", "Head may crack: 1", dict(head_material="grey-iron", ring_outside="37.700 mm")),
    "little grip": (
        "fail",
        "Too little grip: 0.009 mm left when stopped hot",
        WARM | dict(ring_outside="37.580 mm"),
    ),
    "little grip cold": (
        "fail",
        "Too little grip: 0.012 mm left ",
        dict(ring_outside="37.520 mm", head_material="grey-iron"),
    ),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    state, words, entries = VERDICTS[name]
    verdict = seat_fit(**entries).verdict
    assert (verdict.state, verdict.headline.plain()[: len(words)]) == (state, words)


def test_ring_that_is_advised_is_in_order():
    """Both ends of the window that a failing fit names, and just outside of it."""
    advised = seat_fit(ring_outside="37.54 mm")
    least, most = advised["ring_wanted"] / MM, advised["ring_most"] / MM
    assert f"takes a ring of {least + 0.0005:.3f} mm to {most - 0.0005:.3f} mm." in advised.verdict.do.plain()
    at_least, at_most = (seat_fit(ring_outside=f"{d!r} mm") for d in (least + 1e-9, most))
    assert (
        at_least["interference_stopped"] == pytest.approx(0.015 * MM, abs=2e-12)
        and at_least.verdict.state == "pass"
    )
    assert max(at_most["head_used"], at_most["ring_used"]) == pytest.approx(1.0, abs=1e-9)
    assert seat_fit(ring_outside=f"{least - 1e-4} mm").verdict.state == "fail"
    assert seat_fit(ring_outside=f"{most + 1e-4} mm").verdict.state == "attention"


def test_pocket_that_no_ring_serves_says_so():
    """A thin-walled soft head that runs hot: what holds stopped hot already yields."""
    none = seat_fit(
        head_wall="3 mm", head_material="al-si-t6", head_temperature="260 °C", ring_temperature="400 °C"
    )
    assert none["ring_wanted"] > none["ring_most"]
    assert (
        none.verdict.state == "fail"
        and "No ring holds in this pocket as it runs without something yielding" in none.verdict.do.plain()
    )


@pytest.mark.parametrize(
    "entries, warned",
    [
        (dict(ring_outside="37.76 mm"), "Interference of 0.260 mm is more than one part in 150 of the bore"),
        (
            dict(ring_bore="37.4 mm"),
            "The ring's wall is 0.10 mm, and rings have 1.5 mm at least",
        ),  # (37.605 − 37.4)/2
        (
            dict(head_temperature="210 °C"),
            "Al–Si–Cu casting alloy, T6 begins to lose its temper above 200 °C",
        ),
    ],
)
def test_warning(entries, warned):
    remarks = [r for r in seat_fit(**entries).remarks if r.level == "warning"]
    assert any(warned in r.text.plain() for r in remarks)
    assert not any(warned[:20] in r.text.plain() for r in seat_fit().remarks)


REFUSALS = [
    (
        "ring_bore",
        dict(ring_bore="37.7 mm"),
        "Ring bore: is 37.70 mm, not smaller than the ring's outside 37.605 mm; give less than 37.605 mm.",
    ),
    (
        "ring_bore",
        dict(ring_bore="37.55 mm"),
        "Ring bore: is 37.55 mm, not smaller than the pocket 37.500 mm; give less than 37.500 mm.",
    ),
    (
        "ring_temperature",
        dict(ring_temperature="550 °C"),
        "Ring temperature, running: is 550 °C, and properties of Sintered iron seat ring are held only up to 500 °C; give less, or another material.",
    ),
    (
        "head_temperature",
        dict(head_temperature="320 °C"),
        "Head at the pocket, running: is 320 °C, and properties of Al–Si–Cu casting alloy, T6 are held only up to 300 °C; give less, or another material.",
    ),
    (
        "head_temperature",
        dict(head_material="grey-iron", head_temperature="350 °C", ring_material="aluminium-bronze"),
        "Head at the pocket, running: is 350 °C, and properties of Aluminium bronze are held only up to 300 °C; give less, or another material.",
    ),
]


@pytest.mark.parametrize("field, entries, sentence", REFUSALS)
def test_refusal(field, entries, sentence):
    with pytest.raises(Refused) as refused:
        seat_fit(**entries)
    assert [(e.field, e.sentence()) for e in refused.value.errors] == [(field, sentence)]


def test_drawing_is_to_the_sizes_that_were_given():
    drawing, plot = seat_fit(pocket_bore="40 mm", ring_outside="40.1 mm", depth="7 mm").figures
    xs, ys = zip(
        *(
            p
            for shape in drawing.shapes
            if hasattr(shape, "hatch") and shape.hatch == "b"
            for p in shape.points
        )
    )
    assert (max(xs), min(xs), max(ys) - min(ys)) == pytest.approx((20 * MM, -20 * MM, 7 * MM))
    assert plot.series[0].points[-1] == pytest.approx((433.15, plot.marks[0][1]))


def test_head_that_stays_cold_has_no_plot():
    assert len(seat_fit(head_temperature="20 °C", ring_temperature="20 °C").figures) == 1


grips = st.floats(0.02, 0.15)  # mm


@given(grips, grips)
def test_more_interference_presses_and_loads_more(a, b):
    assume(abs(a - b) > 1e-6)
    less, more = (seat_fit(ring_outside=f"{37.5 + g!r} mm") for g in sorted((a, b)))
    for output in ("pressure", "interference_hot", "hold", "ring_used", "head_used"):
        assert more[output] > less[output]
    assert (less["ring_wanted"], less["ring_most"]) == pytest.approx(
        (more["ring_wanted"], more["ring_most"])
    )  # it is the pocket that they hang on


@given(grips, grips, st.sampled_from(sorted(RINGS)))
def test_wider_pocket_leaves_less_grip_while_nothing_yields(a, b, ring_material):
    """Free growth alone: δ + D·(ε_r − ε_h), so that of each micrometre of pocket the grip loses nearly a micrometre."""
    assume(abs(a - b) > 1e-6)
    tight, wide = (
        seat_fit(pocket_bore=f"{37.6 - g!r} mm", ring_outside="37.6 mm", ring_material=ring_material)
        for g in sorted((a, b), reverse=True)
    )
    assume(tight["lost"] == wide["lost"] == 0)
    for output in ("interference_hot", "interference_stopped"):
        assert wide[output] - tight[output] == pytest.approx(-abs(a - b) * 1e-3, rel=0.01, abs=1e-12)


@given(st.floats(60, 290), st.floats(60, 290))
def test_hotter_aluminium_holds_an_iron_ring_less(a, b):
    assume(abs(a - b) > 1e-3)
    cooler, hotter = (
        seat_fit(head_temperature=f"{t!r} °C", ring_temperature="300 °C") for t in sorted((a, b))
    )
    assert (
        hotter["interference_hot"] < cooler["interference_hot"]
        and hotter["interference_stopped"] < cooler["interference_stopped"]
    )


@given(st.floats(3, 60), st.floats(3, 60))
def test_thicker_wall_presses_more_and_is_loaded_less(a, b):
    assume(abs(a - b) > 1e-6)
    thin, thick = (seat_fit(head_wall=f"{w!r} mm", **SMOOTH) for w in sorted((a, b)))
    assert thick["pressure"] > thin["pressure"] and thick["head_hoop"] < thin["head_hoop"]


@given(grips, st.floats(30, 400), st.floats(30, 290))
def test_what_is_advised_follows_from_what_is_shown(grip, ring_hot, head_hot):
    """A ring in the window passes; one outside of it never does."""
    found = seat_fit(
        ring_outside=f"{37.5 + grip!r} mm",
        ring_temperature=f"{ring_hot!r} °C",
        head_temperature=f"{head_hot!r} °C",
    )
    inside = found["ring_wanted"] <= (37.5 + grip) * MM <= found["ring_most"]
    assert (found.verdict.state == "pass") == inside


@pytest.mark.parametrize("system", ["metric", "inch"])
def test_both_ends_of_the_window_serve_as_they_are_read(system):
    """Twenty bores, a hundredth apart: a window rounded to the nearest digit let one end in ten or twenty slip, by a tenth of a micrometre."""
    for i in range(20):
        size = {"pocket_bore": f"{37.4 + i / 100:.3f} mm"}
        advised = seat_fit(**size, ring_outside=f"{37.4 + i / 100 + 0.005:.3f} mm").verdict.do.plain(system)
        for end in re.search(r"a ring of ([\d.]+ \w+) to ([\d.]+ \w+)", advised).groups():
            assert seat_fit(**size, ring_outside=end).verdict.state == "pass", end
