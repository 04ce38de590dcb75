"""Which undersize: circles within worn outlines, verdicts, refusals, both sheets and none, the ends of the sheet's limits."""

from fractions import Fraction

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import linprog

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.reference.engine import engine
from calc.stations.crank.regrind import regrind
from tests.checks.stations.crank.regrind import THREE, alike

MM = 1e-3
GOOD = (51.990,) * 4
STAY = alike((54.990,) * 4)


def inscribed(outline, free):
    """Diameter of the largest circle within a round, convex outline: farthest it may reach along each outward normal."""
    t = np.linspace(0, 2 * np.pi, 7200, endpoint=False)
    x, y = outline(t) * np.cos(t), outline(t) * np.sin(t)
    nx, ny = np.roll(y, -1) - y, x - np.roll(x, -1)
    long = np.hypot(nx, ny)
    nx, ny = nx / long, ny / long
    far = nx * x + ny * y
    found = linprog(
        [0, 0, -1],
        A_ub=np.column_stack((nx, ny, np.ones_like(nx))),
        b_ub=far,
        bounds=[(None, None) if free else (0, 0)] * 2 + [(0, None)],
    )
    return -2 * found.fun


def test_checks_are_the_largest_circles_within_the_outline():
    def one_sided(t):
        return 27.5 - 0.060 * np.maximum(0, np.cos(t)) ** 2

    assert inscribed(one_sided, free=False) == pytest.approx(54.88, abs=2e-5)
    assert inscribed(one_sided, free=True) == pytest.approx(54.94, abs=2e-5)


@given(st.integers(1, 200).map(lambda n: n / 1000), st.integers(0, 100).map(lambda n: n / 1000))
def test_no_circle_told_ever_reaches_past_the_outline(wear, bow):
    """The pin's wear on one side and a bow on the same: about the moved axis each point of the outline lies outside the circle."""
    found = regrind(
        **alike((round(55 - wear, 6), 55.000, round(55 - wear, 6), 55.000))
        | dict(main_unworn="55 mm", bow=f"{bow!r} mm")
    )
    t = np.linspace(0, 2 * np.pi, 720)
    r = 27.5 - wear * np.maximum(0, np.cos(t)) ** 2
    shortest = np.hypot(r * np.cos(t) - bow / 2, r * np.sin(t)).min()
    worst = np.hypot(r * np.cos(t) + bow / 2, r * np.sin(t)).min()
    assert found["main_clean"] / MM <= 2 * min(shortest, worst) + 2e-3 * (wear + bow)


def test_the_first_undersize_is_the_first_in_fractions():
    mains = [[Fraction(x) for x in row.split(";")] for row in THREE["mains"].split("|")]
    clean = min(
        2 * min(row) - Fraction("54.985") - (Fraction("0.03") if n == 1 else 0) for n, row in enumerate(mains)
    )
    first = next(u for u in map(Fraction, ("0.25", "0.5", "0.75", "1")) if Fraction("54.985") - u <= clean)
    assert (clean, first) == (Fraction("54.883"), Fraction("0.25"))


MAINS_READ = (
    "54.962; 54.972; 54.964; 54.974 | 54.953; 54.970; 54.958; 54.972 | 54.966; 54.974; 54.969; 54.975"
)
PINS_READ = " | ".join(["51.951; 51.972; 51.955; 51.974"] * 4)
ROUND = "54.992; 54.992; 54.992; 54.992"
VERDICTS = {
    "example": ("pass", "Mains 0.25 mm under, rod journals 0.25 mm", {}),
    "as made": ("pass", "All journals in limits as they are", STAY),
    "pins alone": ("pass", "Mains stay; rod journals 0.25 mm under", dict(mains=STAY["mains"])),
    "mains alone": ("pass", "Rod journals stay; mains 0.25 mm under", dict(pins=STAY["pins"])),
    "worn within": (
        "attention",
        "Rod journals worn, within their limit",
        alike((54.99,) * 4, (51.970, 51.978, 51.971, 51.979)),
    ),
    "worn, the others ground": (
        "attention",
        "Mains worn, rod journals 0.25 mm under",
        dict(mains=" | ".join(["54.970; 54.980; 54.972; 54.980"] * 3)),
    ),
    "in part of the window": ("attention", "Mains clean up in part of 0.25 mm", dict(bow="0.16 mm")),
    "the next one whole": ("pass", "Mains 0.50 mm under, rod journals 0.25 mm", dict(bow="0.18 mm")),
    "last": (
        "attention",
        "Mains at their last undersize: 1.00 mm",
        dict(bow="0.18 mm", mains=" | ".join(["54.240; 54.245; 54.240; 54.245"] * 3), hard_depth="2 mm"),
    ),
    "none": (
        "fail",
        "Mains clean up at no undersize: 53.880 mm",
        dict(mains=" | ".join(["53.950; 53.980; 53.950; 53.980"] * 3)),
    ),
    "skin": ("attention", "Hardened layer left: 0.06 mm", dict(hard_depth="0.2 mm")),
    "no skin": ("attention", "Hardened layer gone", dict(hard_depth="0.1 mm")),
    "sharp fillet": ("fail", "Fillet too small: 2.00 mm, 2.30 mm allowed", dict(wheel="2 mm")),
    "large fillet": ("fail", "Fillet too large: 3.00 mm, 2.70 mm allowed", dict(wheel="3 mm")),
    "fillet stays black": ("attention", "A fillet of 2.50 mm will not clean up", dict(fillet="2.3 mm")),
    "fillet comes clean": ("pass", "Mains 0.25 mm under, rod journals 0.25 mm", dict(fillet="2.4 mm")),
    "bent": ("pass", "Rod journals stay; mains 0.25 mm under", STAY | dict(bow="0.05 mm")),
    "left too large": (
        "pass",
        "Rod journals stay; mains 0.25 mm under",
        alike((54.757,) * 4) | dict(bow="0 mm"),
    ),
    "ground before": (
        "pass",
        "All journals in limits as they are",
        alike((54.742,) * 4, (51.493,) * 4) | dict(hard_depth="0.6 mm"),
    ),
    "undersize unknown": (
        "attention",
        "Mains clean up at 54.886 mm: undersize unknown",
        dict(main_step="", main_last=""),
    ),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    state, words, entries = VERDICTS[name]
    verdict = regrind(**entries).verdict
    assert (verdict.state, verdict.headline.plain()) == (state, words), verdict.do.plain()


def test_what_is_advised_is_in_order_once_it_is_ground():
    found = regrind()
    for end in ("low", "high", "aim"):
        main, pin = (found[f"{kind}_{end}"] / MM for kind in ("main", "pin"))
        done = regrind(**alike((round(main, 6),) * 4, (round(pin, 6),) * 4))
        assert done.verdict.headline.plain() == "All journals in limits as they are", end
        assert done["main_undersize"] == pytest.approx(0.25 * MM)


@pytest.mark.parametrize("name", ["TS-16", "RC-40"])
def test_both_ends_of_the_sheet_are_in_order_at_every_undersize(name):
    sheet = engine(name)
    main, pin = sheet.feature("crank.main_journal"), sheet.feature("crank.rod_journal")
    for step in (0, *(s.offset for s in main.steps)):
        for end in ("low", "high"):
            sizes = tuple(f"{getattr(f, end) + step!r} m" for f in (main, pin))
            found = evaluate(
                regrind,
                dict(
                    mains=" | ".join(["; ".join([sizes[0]] * 4)] * 3),
                    pins=" | ".join(["; ".join([sizes[1]] * 4)] * 4),
                    bow="0 mm",
                    hard_depth="3 mm",
                ),
                standing=Standing(sheet),
            )
            assert found.verdict.state == "pass", (step, end, found.verdict.headline.plain())


REFUSALS = [
    (
        "mains.1.1",
        dict(mains="55.2; 55.2; 55.2; 55.2 | " + ROUND + " | " + ROUND),
        "more than any of this engine has",
    ),
    (
        "pins.2.1",
        dict(
            pins="51.9; 51.9; 51.9; 51.9 | 50; 51.9; 51.9; 51.9 | 51.9; 51.9; 51.9; 51.9 | 51.9; 51.9; 51.9; 51.9"
        ),
        "more than a millimetre apart",
    ),
    ("main_low", dict(main_low="55.01 mm"), "not below the most"),
    ("pin_worn", dict(pin_worn="51.99 mm"), "more than the least as made"),
    ("main_last", dict(main_last="0.2 mm"), "less than the first undersize"),
    ("fillet_low", dict(fillet_low="3 mm"), "more than the most"),
    ("bow", dict(bow="-0.1 mm"), "below 0"),
    ("mains.1.2", dict(mains="54.9 | " + ROUND + " | " + ROUND), "is empty"),
]


@pytest.mark.parametrize("field, entries, words", REFUSALS)
def test_refusal(field, entries, words):
    with pytest.raises(Refused) as refused:
        regrind(**entries)
    assert any(e.field == field and words in e.sentence() for e in refused.value.errors), [
        (e.field, e.sentence()) for e in refused.value.errors
    ]


@given(st.integers(0, 60), st.integers(0, 60))
def test_wear_on_one_side_never_grinds_to_a_larger_size_than_even_wear(a, b):
    readings = (54.985 - a / 1000, 54.985, 54.985 - b / 1000, 54.985)
    one, even = regrind(**alike(readings)), regrind(**alike(readings), wear="even")
    assert one["main_clean"] <= even["main_clean"] + 1e-12
    assert one["main_undersize"] >= even["main_undersize"]


def test_the_bow_costs_the_mains_between_the_blocks_alone():
    straight, bent = regrind(bow="0 mm"), regrind(bow="0.1 mm")
    cleans = [{row[0]: float(row[5]) for row in found.tables[0].rows} for found in (straight, bent)]
    assert {name: round((cleans[0][name] - cleans[1][name]) / MM, 9) for name in cleans[0]} == {
        name: 0.1 if name == "Main 2" else 0 for name in cleans[0]
    }


@pytest.mark.parametrize(
    "entries, what",
    [
        (
            dict(
                mains="54.962; 54.972; 54.964; 54.974 | 54.953; 54.970; 54.958; 54.972 | 54.8755 ± 0.002; 54.974; 54.969; 54.975"
            ),
            "cleaning up of the mains",
        ),
        (
            STAY | dict(pins=STAY["pins"].replace("51.990000", "51.986 ± 0.002 mm", 1)),
            "smallest of the rod journals",
        ),
        (dict(fillet="2.39 ± 0.05 mm"), "fillet"),
    ],
)
def test_a_doubt_that_reaches_a_limit_leaves_it_open(entries, what):
    verdict = regrind(**entries).verdict
    assert verdict.state == "unsure" and what in verdict.headline.plain(), verdict.headline.plain()


def test_inches_give_the_same():
    row, pin = "2.1642; 2.1646; 2.1643; 2.1646", "2.0455; 2.0460; 2.0455; 2.0460"
    inch = evaluate(
        regrind, dict(mains=" | ".join([row] * 3), pins=" | ".join([pin] * 4), bow="0.001"), "inch"
    )

    def metric(text):
        return "; ".join(f"{float(x) * 25.4:.5f} mm" for x in text.split(";"))

    same = evaluate(
        regrind,
        dict(mains=" | ".join([metric(row)] * 3), pins=" | ".join([metric(pin)] * 4), bow="0.0254 mm"),
    )
    for output in same.outputs:
        assert inch[output] == pytest.approx(same[output], rel=1e-9, abs=1e-12), output


def test_limits_and_undersizes_come_from_the_reader_s_own_sheet():
    worn = dict(
        mains=" | ".join(["2.2470; 2.2485; 2.2472; 2.2486"] * 3),
        pins=" | ".join(["1.9970; 1.9985; 1.9972; 1.9986"] * 4),
        bow="0",
    )
    found = evaluate(regrind, worn, "inch", standing=Standing(engine("RC-40")))
    assert (
        found.verdict.state == "pass"
        and found.verdict.headline.plain("inch") == "Mains 0.0100 in under, rod journals 0.0100 in"
    )
    assert any("hardened" in r.text.plain() for r in found.remarks if r.level == "warning")
    assert evaluate(regrind, worn, "inch", standing=Standing(None)).verdict.state == "unjudged"
    assert evaluate(regrind, {}, standing=Standing(engine("TS-16"))).verdict.state == "awaited"


def test_no_size_under_its_limits_is_told_of_what_stays():
    mains, pins = (
        " | ".join(["; ".join([f"{d} mm"] * 4)] * count) for d, count in ((54.990, 3), (51.990, 4))
    )
    found = regrind(mains=mains, pins=pins, bow="0.01 mm")
    assert found.verdict.state == "pass"
    for lot in ("main", "pin"):
        assert found[f"{lot}_low"] <= found[f"{lot}_aim"] <= found[f"{lot}_high"], lot
    assert "ground" not in found.figures[0].title + found.figures[0].exaggerated.plain()


def test_the_drawing_shows_the_worn_side():
    (drawing,) = regrind().figures
    assert "times as thick" in drawing.exaggerated.plain() and "Main 2" in drawing.title


def test_a_fillet_that_was_too_small_may_be_ground_right():
    """2.25 mm is under the sheet's least; with 0.11 mm off a side it may rise to 2.36, and 2.3 is allowed."""
    worn = dict(mains=MAINS_READ, pins=PINS_READ, bow="0.02 mm", fillet="2.25 mm", wheel="2.3 mm")
    assert evaluate(regrind, worn, standing=Standing(engine("TS-16"))).verdict.state == "pass"


def test_what_is_left_unread_is_asked_for():
    standing = Standing(engine("TS-16"))
    for missing, words in (("pins", "rod journals"), ("mains", "main journals"), ("bow", "bow")):
        read = dict(mains=MAINS_READ, pins=PINS_READ, bow="0.02 mm")
        del read[missing]
        verdict = evaluate(regrind, read, standing=standing).verdict
        assert verdict.state == "awaited" and words in verdict.headline.plain().lower(), (
            verdict.headline.plain()
        )


@pytest.mark.parametrize("r, h", [(2.5, 0.11), (2.3, 0.25), (3.0, 0.5)])
def test_the_largest_fillet_takes_no_metal_that_is_not_there(r, h):
    """Cheek along x = 0, the new journal along y = 0, the old one h above it: points of a new fillet of R against the old void."""

    def misses(R):
        t = np.linspace(np.pi, 1.5 * np.pi, 20001)
        x, y = R + R * np.cos(t), R + R * np.sin(t)
        beyond_corner = (x >= r) & (y > h) | (y >= h + r) & (x > 0)
        in_corner = (x < r) & (y < h + r) & (np.hypot(x - r, y - h - r) < r)
        return bool(((beyond_corner | in_corner) & (np.minimum(x, y) > 1e-9)).any())

    assert not misses(r + h - 1e-6) and misses(r + h + 1e-3)


def test_the_fillet_that_is_advised_cleans_up():
    told = regrind(fillet="2.3 mm").verdict.do.plain()
    most = told.split("comes off, ")[1].split(" at most")[0]
    assert regrind(fillet="2.3 mm", wheel=most).verdict.state == "pass"
    assert (
        regrind(fillet="2.3 mm", wheel=f"{float(most.split()[0]) + 0.01:.2f} mm").verdict.state == "attention"
    )


@given(st.integers(0, 1000), st.integers(0, 1000))
def test_more_bow_never_grinds_to_a_larger_size(a, b):
    less, more = (regrind(bow=f"{x / 1000} mm") for x in sorted((a, b)))
    assert more["main_undersize"] >= less["main_undersize"] and more["main_shell"] >= less["main_shell"]
    for output in ("main_clean", "main_low", "main_high", "main_aim"):
        assert more[output] <= less[output] + 1e-12, output
    assert more["pin_clean"] == less["pin_clean"] and more["depth"] >= less["depth"] - 1e-12
