"""Line boring: farthest places by points, best lines by linear programming, sizes by fractions, verdicts, refusals."""

import math
from fractions import Fraction

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import linprog

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.formulas import best_fit
from calc.reference.engine import engine
from calc.stations.crankcase.line_bore import line_bore
from tests.checks.stations.crankcase.line_bore import (
    BENT,
    CUT,
    GEARS,
    OFF_THE_BAR,
    STANDING,
    THREE,
    UNLIKE,
    saddles,
)
from tests.corners import corners

MM = 1e-3
TRUE = "0; 0; 0 | 123; 0; 0 | 246; 0; 0"
GOOD = dict(bores="65.010; 65.010 | 65.012; 65.008 | 65.011; 65.009", line=TRUE)


def test_a_saddle_cleans_up_at_its_farthest_place_among_14400():
    turn = np.linspace(0, 2 * np.pi, 14_400, endpoint=False)
    x, y = 0.012 + 65.021 / 2 * np.cos(turn), 0.018 + 65.034 / 2 * np.sin(turn)
    assert line_bore(**OFF_THE_BAR)["clean"] / MM == pytest.approx(2 * np.hypot(x, y).max(), abs=1e-5)
    careless, bound = 65.034 + 2 * 0.018, 65.034 + 2 * math.hypot(0.012, 0.018)
    assert careless < line_bore(**OFF_THE_BAR)["clean"] / MM < bound


def least_deviation(places, heights):
    """Largest deviation of the best line, by linear programming: unknowns start, slope, deviation."""
    A = [[sign, sign * z, -1] for z in places for sign in (1, -1)]
    b = [sign * h for h in heights for sign in (1, -1)]
    found = linprog([0, 0, 1], A_ub=A, b_ub=b, bounds=[(None, None)] * 2 + [(0, None)], method="highs")
    return found.fun


@given(st.lists(st.integers(-60, 60), min_size=3, max_size=5), st.integers(40, 160))
def test_the_best_line_is_that_of_linear_programming(heights, apart):
    places = [apart * (k + 0.1 * k**2) for k in range(len(heights))]
    line = best_fit.best_line(list(zip(places, map(float, heights))))
    assert line.most == pytest.approx(least_deviation(places, heights), abs=1e-6)
    assert max(abs(h - line.at(z)) for z, h in zip(places, heights)) == pytest.approx(line.most, abs=1e-9)


def least_clean(places, centres, bores):
    """Smallest size at which all clean up, by linear programming over 1440 places of each: unknowns where the
    bar starts and how it leans, both ways, and the radius."""
    turn = np.linspace(0, 2 * np.pi, 1440, endpoint=False)
    A, b = [], []
    for z, (x, y), (along, across) in zip(places, centres, bores):
        r = (along + across) / 4 - (along - across) / 4 * np.cos(2 * turn)
        uy, ux = np.cos(turn), np.sin(turn)
        A.append(np.stack([-ux, -ux * z, -uy, -uy * z, -np.ones_like(turn)], 1))
        b.append(-(r + ux * x + uy * y))
    found = linprog([0, 0, 0, 0, 1], np.vstack(A), np.hstack(b), bounds=[(None, None)] * 5, method="highs")
    return 2 * found.fun


def test_the_check_of_unlike_saddles_is_that_of_linear_programming():
    assert least_clean(*UNLIKE) == pytest.approx(65.06018, abs=5e-6)


@settings(max_examples=25)
@given(
    st.lists(
        st.tuples(st.integers(-40, 40), st.integers(-40, 40), st.integers(0, 40), st.integers(0, 40)),
        min_size=3,
        max_size=5,
    )
)
def test_no_bar_cuts_less_than_the_one_that_is_told(saddle):
    places = [90 * k + 7 * k**2 for k in range(len(saddle))]
    centres = [(x / 1000, y / 1000) for x, y, *_ in saddle]
    bores = [(65 + a / 1000, 65 + c / 1000) for *_, a, c in saddle]
    entries = dict(
        bores=" | ".join(f"{a:.3f}; {c:.3f}" for a, c in bores),
        line=" | ".join(f"{z}; {x}; {y}" for z, (x, y) in zip(places, centres)),
    )
    least = least_clean(places, centres, bores)
    told = {bar: line_bore(**entries, bar=bar)["clean"] / MM for bar in ("least", "best", "ends", "read")}
    assert told["least"] == pytest.approx(least, abs=2e-5)
    assert min(told.values()) > told["least"] - 2e-5


def test_the_best_bar_halves_what_the_ends_leave():
    found = line_bore(**BENT)
    assert found["off_along"] / MM == pytest.approx(
        least_deviation([0, 70, 140], [0, 0.030, 0.006]), abs=1e-9
    )
    assert line_bore(**BENT, bar="ends")["clean"] == pytest.approx(
        found["clean"] + found["gained"], abs=1e-12
    )


def test_cut_faces_leave_two_arcs():
    R, f = 65.015 / 2, 0.05
    turn = np.linspace(-np.pi / 2, np.pi / 2, 100_001)
    x, y = R * np.cos(turn) - f, R * np.sin(turn)
    kept = x >= 0
    assert line_bore(**CUT)["clean"] / MM == pytest.approx(2 * np.hypot(x[kept], y[kept]).max(), abs=1e-5)
    assert line_bore(**CUT)["narrow"] / MM == pytest.approx(2 * x.max(), abs=1e-9)


def test_the_next_oversize_by_fractions():
    cleans = [Fraction(n, 1000) for n in (65_412, 65_455, 65_438)]
    low, high = Fraction(65), Fraction(65_019, 1000)
    over = next(o for o in (Fraction(0), Fraction(1, 2), Fraction(1)) if max(cleans) <= high + o)
    found = line_bore(**THREE)
    aim = (max(low + over, max(cleans)) + high + over) / 2
    assert found["oversize"] / MM == pytest.approx(float(over)) and found["aim"] / MM == pytest.approx(
        float(aim)
    )
    for output, clean in (("stock_worst", max(cleans)), ("stock_best", min(cleans))):
        assert found[output] / MM == pytest.approx(float((aim - clean) / 2), abs=1e-9)


def test_backlash_by_tooth_thickness_on_the_working_circle():
    """From the teeth themselves: thickness at a radius, of gears without profile shift."""
    z, m, helix, normal = (29, 58), 2.0, math.radians(22), math.radians(20)
    m_t, alpha = m / math.cos(helix), math.atan(math.tan(normal) / math.cos(helix))

    def play(a):
        total = 0.0
        for teeth in z:
            r, base = m_t * teeth / 2, m_t * teeth / 2 * math.cos(alpha)
            R = a * teeth / sum(z)
            at = math.acos(base / R)
            total += R * (math.pi * m_t / 2 / r + 2 * ((math.tan(alpha) - alpha) - (math.tan(at) - at)))
        return 2 * math.pi * a / sum(z) - total

    gained = play(STANDING + 0.05) - play(STANDING)
    found = line_bore(**GEARS)
    assert found["backlash_more"] / MM == pytest.approx(gained, abs=1e-7)
    assert found["backlash_normal"] / MM == pytest.approx(
        gained * math.cos(normal) * math.cos(helix), abs=1e-7
    )


VERDICTS = {
    "in line": ("pass", "In line and in size: 0.000 mm off", GOOD),
    "the example": ("pass", "Bore to 0.50 mm oversize, 65.510 mm", {}),
    "pounded wide": (
        "attention",
        "Saddles worn to 65.025 mm, within their limit",
        GOOD | dict(bores="65.025; 65.010 | 65.012; 65.008 | 65.011; 65.009"),
    ),
    "a little out of line": (
        "attention",
        "Saddles 0.015 mm out of line, within limits",
        GOOD | dict(line="0; 0; 0 | 123; 0.030; 0 | 246; 0; 0"),
    ),
    "in size, out of line": (
        "pass",
        "Bore to 0.50 mm oversize, 65.510 mm",
        GOOD | dict(line="0; 0; 0 | 123; 0.058; 0 | 246; 0; 0", backlash=""),
    ),
    "in part": ("attention", "Cleans up in part of 0.50 mm oversize", saddles(65.480, 65.480, 0.012)),
    "in part of the size they have": (
        "attention",
        "Cleans up in part of its limits",
        saddles(64.995, 65.005, 0.005),
    ),
    "the last": ("attention", "Last oversize: 1.00 mm", saddles(65.540, 65.540)),
    "no size": (
        "fail",
        "Cleans up at no oversize: 66.070 mm",
        dict(bores="66.01; 66.01 | 66.01; 66.01 | 66.01; 66.01", line="0; 0; 0 | 123; 0.060; 0 | 246; 0; 0"),
    ),
    "size unknown": (
        "attention",
        "Cleans up at 65.100 mm: oversize unknown",
        saddles(65.100, 65.100, step="", last=""),
    ),
    "moved to the cam": ("attention", "Crank moves 0.035 mm to the cam", saddles(65.1, 65.1, -0.035)),
    "moved from the cam": ("attention", "Crank moves 0.035 mm from the cam", saddles(65.1, 65.1, 0.035)),
    "gears bind": (
        "fail",
        "Cam's gears bind: backlash −0.004 mm",
        saddles(65.1, 65.1, -0.030, backlash="0.020 mm", most_moved="0.05 mm"),
    ),
    "little backlash": (
        "attention",
        "Little backlash at the cam: 0.006 mm",
        saddles(65.1, 65.1, -0.030, backlash="0.030 mm"),
    ),
    "much backlash": (
        "attention",
        "Much backlash at the cam: 0.064 mm",
        saddles(65.1, 65.1, 0.030, backlash="0.040 mm"),
    ),
    "faces cut, finished at the size they have": (
        "pass",
        "Finish to 65.010 mm: the same shells",
        saddles(65.000, 65.030, cut_right="0.02 mm", cut_left="0.02 mm"),
    ),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    state, words, entries = VERDICTS[name]
    verdict = line_bore(**entries).verdict
    assert (verdict.state, verdict.headline.plain()) == (state, words)


def test_a_good_case_at_every_corner_of_the_sheet_is_in_order():
    for (bore,) in corners("crankcase.main_housing"):
        for off in ("0", "0.010 mm"):
            line = f"0; 0; 0 | 123; {off}; 0 | 246; 0; 0"
            read = dict(bores=" | ".join([f"{bore}; {bore}"] * 3), line=line)
            assert evaluate(line_bore, read, standing=Standing(engine("TS-16"))).verdict.state == "pass", read


def test_a_saddle_bored_before_is_judged_at_its_oversize():
    for over in ("65.505", "66.010"):
        found = line_bore(bores=" | ".join([f"{over}; {over}"] * 3), line=TRUE)
        assert found.verdict.state == "pass" and found.verdict.headline.plain().startswith("In line")


def test_limits_come_from_the_engine_s_sheet_or_from_the_reader():
    typed = dict(low="66.675", high="66.695", line_new="0.01", line_worn="0.025")
    read = dict(bores=" | ".join(["66.685; 66.685"] * 3), line=TRUE)
    by = {
        name: evaluate(line_bore, read if name else GOOD, standing=Standing(engine(name) if name else None))
        for name in ("TS-16", "RC-40", "")
        if name != "TS-16"
    }
    assert all(found.verdict.state == "unjudged" for found in by.values())
    assert evaluate(line_bore, GOOD, standing=Standing(engine("TS-16"))).verdict.state == "pass"
    assert evaluate(line_bore, read | typed, standing=Standing(engine("RC-40"))).verdict.state == "pass"
    assert evaluate(line_bore, {}, standing=Standing(engine("TS-16"))).verdict.state == "awaited"


@pytest.mark.parametrize(
    "entries, what",
    [
        (GOOD | dict(bores="65.018 ± 0.004; 65.010 | 65.012; 65.008 | 65.011; 65.009"), "largest"),
        (GOOD | dict(line="0; 0; 0 | 123; 0.019 ± 0.004; 0 | 246; 0; 0"), "line"),
        (dict(bores="65.515 ± 0.01; 65.4 | 65.4; 65.4 | 65.4; 65.4", line=TRUE), "cleaning up"),
    ],
)
def test_a_doubt_that_reaches_a_limit_leaves_it_open(entries, what):
    found = line_bore(**entries)
    assert found.verdict.state == "unsure" and what in found.verdict.headline.plain()


@pytest.mark.parametrize(
    "entries, field, words",
    [
        (GOOD | dict(bores="64.4; 65 | 65; 65 | 65; 65"), "bores.1.1", "more than 0.5 mm from any size"),
        (GOOD | dict(line="0; 0; 0 | 123; 0; 0 | 123; 0; 0"), "line.3.1", "not beyond the one before it"),
        (GOOD | dict(bores=GOOD["bores"] + " | 65.01; 65.01"), "line.4.1", "saddle 4 has no line"),
        (GOOD | dict(bores="65; 65 | 65; 65"), "bores", "at least 3"),
        (dict(low="65.02 mm"), "low", "not below the most"),
        (dict(line_worn="0.005 mm"), "line_worn", "less than a good line's"),
        (dict(cut_right="-0.1 mm"), "cut_right", "below 0"),
    ],
)
def test_refusals(entries, field, words):
    with pytest.raises(Refused) as refused:
        line_bore(**entries)
    (error,) = refused.value.errors
    assert error.field == field and words in str(error), str(error)


micrometres = st.integers(-60, 60).map(lambda n: n / 1000)


@given(st.lists(micrometres, min_size=6, max_size=6))
def test_where_the_bar_was_laid_to_read_does_not_matter(offs):
    """Shifted and tilted with its readings, the case is the same: only the bar's place is told otherwise."""
    places = (0, 100, 260)

    def found(shift, tilt):
        rows = [
            f"{z}; {x + shift + tilt * z / 260:.6f}; {y - shift:.6f}"
            for z, x, y in zip(places, offs[::2], offs[1::2])
        ]
        return line_bore(bores=" | ".join(["65.04; 65.03"] * 3), line=" | ".join(rows))

    here, there = found(0.0, 0.0), found(0.05, -0.04)
    for output in ("clean", "farthest", "gained", "oversize"):
        assert here[output] == pytest.approx(there[output], abs=1e-8), (
            output
        )  # 0.01 µm: directions that are tried


@given(st.lists(micrometres, min_size=3, max_size=3))
def test_no_saddle_cleans_up_before_twice_its_offset(offs):
    found = line_bore(
        bores=" | ".join(["65.04; 65.04"] * 3),
        line=" | ".join(f"{z}; {x}; 0" for z, x in zip((0, 100, 260), offs)),
    )
    assert found["clean"] / MM == pytest.approx(65.04 + 2 * found["off_along"] / MM, abs=1e-5)


def test_inches_give_the_same():
    metric = dict(
        bores=" | ".join(["65.0494; 65.0240"] * 3), line="0; 0; 0 | 127; 0.0254; 0 | 254; 0; 0.0127"
    )
    inch = dict(bores=" | ".join(["2.5610; 2.5600"] * 3), line="0; 0; 0 | 5; 0.0010; 0 | 10; 0; 0.0005")
    first, second = evaluate(line_bore, metric), evaluate(line_bore, inch, "inch")
    for output in first.outputs:
        assert second[output] == pytest.approx(first[output], rel=1e-9, abs=1e-12), output


def test_the_hand_is_told_where_the_bar_lies():
    """At the first saddle and the last, from the reading's zero: the line through both is that of the dual."""
    do = line_bore(**BENT | dict(bores="65.05; 65.05 | 65.05; 65.05 | 65.05; 65.05")).verdict.do.plain()
    assert (
        "0.014 mm to the cam and 0.000 mm to the right of where it read zero at the first saddle, 0.020 mm"
        in do
    )


def test_what_another_bar_costs_and_what_a_cut_does_is_told():
    told = [r.text.plain() for r in line_bore(**BENT, bar="ends").remarks]
    assert any("would clean up 0.027 mm smaller" in words for words in told)
    told = [r.text.plain() for r in line_bore(**CUT).remarks if r.level == "warning"]
    assert any("takes 0.100 mm off every bore across the split" in words for words in told)


def test_drawing_shows_the_middle_off_the_bar():
    (drawing,) = line_bore(**BENT, bar="ends").figures
    dots = [s for s in drawing.shapes if getattr(s, "hatch", None) == "solid"]
    first, middle, last = dots[:3]
    assert (
        middle.centre[1] < min(first.centre[1], last.centre[1])
        and "times as large" in drawing.exaggerated.plain()
    )
