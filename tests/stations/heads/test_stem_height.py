"""Stem heights: the least grinding against an optimiser, verdicts, refusals, and what sinking and grinding do to tip and spring."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import LinearConstraint, linprog, milp

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.page.drawing import extent
from calc.reference import engine
from calc.stations.heads import VALVES
from calc.stations.heads.stem_height import stem_height
from calc.stations.heads.stem_height.room import plan
from tests.checks.stations.heads.stem_height import SETS, heights
from tests.corners import corners

MM = 1e-3


def least_work(mm, low=44.80, high=45.20, spread=0.25, tip_most=np.inf, sink_most=np.inf):
    """Least sunk, then least off the tips, by scipy's linear solver: each stem down by a tip cut or up by a seat cut, all in one window."""
    n = len(mm)
    rows, bounds = [], []
    for i, h in enumerate(mm):  # unknowns: tips, sinks, foot of the window
        row = np.zeros(2 * n + 1)
        row[i], row[n + i], row[-1] = -1, 1, -1
        rows.append(row)
        bounds.append((-h, spread - h))  # 0 <= h - tip + sink - foot <= spread
        inside = np.zeros(2 * n + 1)
        inside[i], inside[n + i] = -1, 1
        rows.append(inside)
        bounds.append((low - h, high - h))
    cost = np.concatenate(
        [np.ones(n), np.ones(n) * 1000, [0]]
    )  # no gain at all the tips together is worth as much more off one seat
    limits = ([0] * 2 * n + [-np.inf], [tip_most] * n + [sink_most] * n + [np.inf])
    return milp(cost, constraints=LinearConstraint(np.array(rows), *zip(*bounds)), bounds=limits)


@pytest.mark.parametrize("name", SETS)
def test_checks_are_what_the_solver_finds(name):
    mm, tip, sink = SETS[name]
    found, n = least_work(mm), len(mm)
    assert found.success
    assert (max(found.x[:n]), max(found.x[n : 2 * n])) == pytest.approx((tip, sink), abs=1e-6)


levels = st.lists(st.integers(4460, 4560).map(lambda h: h / 100), min_size=1, max_size=8)


def work(found):
    """Tips and sinks of the table, mm; a dash is none."""
    return [
        [0.0 if isinstance(row[c], str) else float(row[c]) / MM for row in found.tables[0].rows]
        for c in (2, 3)
    ]


@given(levels)
def test_no_plan_sinks_less_nor_with_as_little_sunk_grinds_less(mm):
    found = stem_height(**heights(*mm), tip_most="3 mm", sink_most="3 mm")
    tips, sinks = work(found)
    best = least_work(mm)
    assert sum(tips) + sum(sinks) == pytest.approx(best.x[: 2 * len(mm)].sum(), abs=1e-6)
    assert sum(sinks) == pytest.approx(best.x[len(mm) : 2 * len(mm)].sum(), abs=1e-6)


@given(levels)
def test_after_the_work_all_stand_within_limits_and_spread_and_no_more_is_to_do(mm):
    found = stem_height(**heights(*mm), tip_most="3 mm", sink_most="3 mm")
    tips, sinks = work(found)
    after = [h - t + z for h, t, z in zip(mm, tips, sinks)]
    assert (
        min(after) >= 44.80 - 1e-6 and max(after) <= 45.20 + 1e-6 and max(after) - min(after) <= 0.25 + 1e-6
    )
    assert found["spread_after"] / MM == pytest.approx(max(after) - min(after), abs=1e-6)
    assert all(t < 1e-6 or z < 1e-6 for t, z in zip(tips, sinks))
    again = stem_height(**heights(*(round(h, 9) for h in after)), fitted_off="3 mm")
    assert again["tip"] == pytest.approx(0, abs=2e-9) and again["sink"] == pytest.approx(0, abs=2e-9)


@given(levels, st.floats(0.0, 0.5))
def test_sinking_all_seats_alike_raises_stems_and_springs_by_as_much(mm, sunk):
    def open_to_all(mm):
        return stem_height(**heights(*mm), low="20 mm", high="90 mm", most_spread="5 mm")

    before, after = open_to_all(mm), open_to_all([h + sunk for h in mm])
    for output in ("highest", "lowest", "fitted_most"):
        assert after[output] - before[output] == pytest.approx(sunk * MM, abs=1e-9)
    assert after["spread"] == pytest.approx(before["spread"], abs=1e-9)


# Every verdict: state, headline, entries.
VERDICTS = {
    "even": ("pass", "Even: 0.14 mm apart, all in limits", {}),
    "on the limits": ("pass", "Even: 0.25 mm apart, all in limits", heights(44.95, 45.20)),
    "on the limit, exhaust higher": (
        "pass",
        "Even: 0.10 mm apart, all in limits",
        heights(45.1, 45.4) | dict(exhaust_higher="0.2 mm", fitted_off="3 mm"),
    ),  # 45.4 − 0.2 = 45.2, as decimals
    "tip too much": ("fail", "1 intake too high: 0.80 mm off its tip", {"heights.1.1": "46 mm"}),
    "seat too much": ("fail", "3 exhaust too low: 0.70 mm to sink", {"heights.6.1": "44.1 mm"}),
    "in limits, uneven, and no tip may give it": (
        "fail",
        "1 intake too high: 0.28 mm off its tip",
        heights(45.19, 44.81) | dict(most_spread="0.1 mm", tip_most="0.1 mm", sink_most="0 mm"),
    ),
    "much to do, and it serves": ("fail", "Out of limits: 2 of 2", heights(45.76, 44.43)),
    "grown long": (
        "attention",
        "2 exhaust has stretched: 112.5 mm, 112.2 mm when new",
        {"heights.4.2": "112.5 mm"},
    ),
    "grown long and too high": (
        "fail",
        "2 exhaust has stretched: 112.5 mm, 112.2 mm when new",
        {"heights.4.1": "45.3 mm", "heights.4.2": "112.5 mm"},
    ),
    "no seat may be touched": (
        "fail",
        "1 exhaust too low: 0.05 mm to sink",
        heights(45.0, 44.75) | dict(sink_most="0 mm"),
    ),
    "one out": ("fail", "Out of limits: 1 of 8", {"heights.1.1": "45.5 mm"}),
    "two out": ("fail", "Out of limits: 2 of 8", {"heights.1.1": "45.38 mm", "heights.2.1": "44.74 mm"}),
    "uneven": ("attention", "Uneven: 0.30 mm apart", heights(44.85, 45.15, 45.10)),
    "springs too tall": (
        "attention",
        "Heights right; 8 of the springs too tall",
        dict(tip_to_retainer="8 mm"),
    ),
    "spring too short": (
        "attention",
        "Heights right; spring 3 intake too short",
        dict(tip_to_retainer="8.8 mm"),
    ),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    state, words, entries = VERDICTS[name]
    verdict = stem_height(**entries).verdict
    assert (verdict.state, verdict.headline.plain()) == (state, words)


def test_a_spring_too_short_from_the_bare_bed_is_not_cured_by_shims():
    """Heights are read from the bed without shims: 44.96 − 8.80 = 36.16 is all that it has, 0.34 less than wanted."""
    found = stem_height(tip_to_retainer="8.8 mm")
    assert (
        found.verdict.do.plain()
        == "It has 36.16 mm with no shim at all. Look whether retainer and keepers belong to this valve, and check that its coils do not bind."
    )
    assert float(found.tables[0].rows[4][4]) / MM == pytest.approx(-0.34)


def possible(mm, low, high, spread, tip_most, sink_most):
    """Whether any work at all serves, by scipy's linear programming: is there a foot of the window that all can reach?"""
    n = len(mm)
    above = np.hstack([-np.eye(n), np.eye(n), -np.ones((n, 1))])  # h − tip + sink − foot: 0 to the spread
    return (
        linprog(
            np.zeros(2 * n + 1),
            np.vstack([above, -above]),
            np.concatenate([spread - np.array(mm), np.array(mm)]),
            bounds=[(0, tip_most)] * n + [(0, sink_most)] * n + [(low, high - spread)],
        ).status
        == 0
    )


@pytest.mark.parametrize("tip_most, sink_most, spread", [(0.60, 0.50, 0.25), (0.15, 0.10, 0.10)])
def test_no_head_that_can_be_saved_is_condemned(tip_most, sink_most, spread):
    """Some thousand random heads: the plan keeps within what tips and seats may give just where linear programming finds a way."""
    rng = np.random.default_rng(7)
    saved = 0
    for _ in range(1500):
        mm = np.round(rng.uniform(44.8 - 1.2 * sink_most, 45.2 + 1.2 * tip_most, rng.integers(2, 9)), 2)
        start, end = (
            x / MM
            for x in plan(
                [h * MM for h in mm],
                44.80 * MM,
                45.20 * MM,
                spread * MM,
                45.00 * MM,
                tip_most * MM,
                sink_most * MM,
            )
        )
        within = max(mm - end) <= tip_most + 1e-6 and max(start - mm) <= sink_most + 1e-6
        solvable = possible(mm, 44.80, 45.20, spread, tip_most + 1e-6, sink_most + 1e-6)
        assert within == solvable, mm
        saved += solvable
    assert 150 < saved < 1450


def test_tips_go_before_seats_and_seats_only_where_tips_have_no_more_to_give():
    """One high and one low: the tip of the one or the seat of the other brings them together; the tip goes first."""
    free = stem_height(**heights(44.88, 45.18))
    assert (free["tip"] / MM, free["sink"] / MM) == pytest.approx((0.05, 0.0), abs=1e-9)
    tied = stem_height(**heights(44.88, 45.18), tip_most="0.02 mm")
    assert (tied["tip"] / MM, tied["sink"] / MM) == pytest.approx((0.02, 0.03), abs=1e-9)
    many = stem_height(
        **heights(44.88, 45.18, 45.18, 45.18)
    )  # three tips rather than one seat: what is cut off a seat is gone for good
    assert (many["tip"] / MM, many["sink"] / MM) == pytest.approx((0.05, 0.0), abs=1e-9)
    far = stem_height(**heights(45.76, 44.43))
    assert (far["tip"] / MM, far["sink"] / MM) == pytest.approx((0.60, 0.48))


@pytest.mark.parametrize(
    "entries",
    [
        {"heights.6.1": "44.70 mm"},
        {"heights.3.1": "44.1 mm"},
        {"heights.2.1": "44.80 mm", "heights.1.1": "45.10 mm"},
    ],
)
def test_a_lone_low_valve_is_measured_again_before_anything_is_cut(entries):
    found = stem_height(**entries)
    do = found.verdict.do.plain()
    assert found.verdict.state != "pass" and (
        do.startswith("Measure ")
        and "as long as a new one? Does blue show" in do
        or "Do not cut it for that: look first" in do
    )
    assert not stem_height(**heights(44.7, 44.72, 45.0)).verdict.do.plain().startswith("Measure ")


def test_a_valve_that_has_grown_is_not_ground_but_replaced():
    """A stretched exhaust valve stands high: nothing is told to be taken off its tip, and a doubt that may hide it leaves it open."""
    found = stem_height(**{"heights.4.1": "45.15 mm", "heights.4.2": "112.4 mm"})
    assert "drops its head next" in found.verdict.do.plain() and "tip" not in found.verdict.do.plain()
    assert stem_height(**{"heights.4.2": "112.1 mm"}).verdict.state == "pass"
    assert stem_height(**{"heights.4.2": "112.1 ± 0.2 mm"}).verdict.state == "unsure"


def test_every_set_that_the_sheet_allows_is_in_order_where_it_is_even():
    for height, tip, length in corners("head.stem_height", "valve.tip_to_retainer", "valve.length"):
        found = stem_height(
            heights=" | ".join([f"{height}; {length}"] * 8), tip_to_retainer=tip, fitted_off="0.3 mm"
        )
        assert found.verdict.state == "pass", (height, tip, found.verdict.headline.plain())


def test_what_to_do_says_which_work_and_what_may_still_be_taken():
    assert stem_height(**{"heights.1.1": "45.5 mm"}).verdict.do.plain() == (
        "Take the tips down as in the table, a little at a time, and measure again. After that a tip may still lose 0.30 mm, a seat 0.50 mm."
    )
    assert (
        stem_height(**{"heights.1.1": "45.38 mm", "heights.2.1": "44.74 mm"})
        .verdict.do.plain()
        .startswith("Take the tips down and sink the seats as in the table")
    )


def test_each_valve_is_judged_in_its_row():
    found = stem_height(**{"heights.1.1": "45.5 mm", "heights.8.1": ""})
    (table,) = found.tables
    assert [row[0] for row in table.rows] == list(VALVES[:7])
    assert table.states == ("fail", *["pass"] * 6)
    tip, sink, shim, fitted, off = table.rows[0][2:]
    assert (float(tip) / MM, sink, float(shim) / MM, float(fitted) / MM, float(off) / MM) == (
        pytest.approx(0.30),
        "–",
        pytest.approx(0.5),
        pytest.approx(37.0),
        pytest.approx(0.5),
    )


def test_grinding_the_tip_leaves_the_spring_where_it_was():
    """The shim for a sunk valve is what it sank by, whatever comes off its tip."""
    found = stem_height(**{"heights.1.1": "45.5 mm"})
    ground = stem_height(**{"heights.1.1": "45.2 mm"}, tip_to_retainer="8.2 mm", fitted_off="0.35 mm")
    assert found["fitted_most"] == pytest.approx(ground["fitted_most"]) and found["shim"] == pytest.approx(
        ground["shim"]
    )


def test_a_seat_that_is_to_be_sunk_lets_its_spring_out_by_as_much():
    """Read 44.70: the spring is 36.20 high, and 36.30 once the seat is sunk by 0.10."""
    _, _, _, sink, _, fitted, _ = stem_height(**heights(44.7, 45.0)).tables[0].rows[0]
    assert (float(sink) / MM, float(fitted) / MM) == (pytest.approx(0.10), pytest.approx(36.30))


def test_exhaust_stems_may_stand_higher_by_design():
    higher = [
        h + 1.5 * (i % 2) for i, h in enumerate((45.05, 44.98, 45.10, 45.02, 44.96, 45.08, 45.00, 45.06))
    ]
    found = stem_height(**heights(*higher), exhaust_higher="1.5 mm", fitted_off="2 mm")
    assert found["spread"] == pytest.approx(stem_height()["spread"]) and found.verdict.state == "pass"
    assert stem_height(**heights(*higher), fitted_off="2 mm").verdict.state == "fail"


def test_one_valve_far_from_the_others_is_asked_after():
    def warned(**entries):
        return [r.text.plain() for r in stem_height(**entries).remarks if r.level == "warning"]

    assert warned(**{"heights.4.1": "45.6 mm"}) == [
        "2 exhaust stands 0.50 mm from the next one. One valve alone out of line is more often the wrong valve, or one not on its seat, than a sunk seat."
    ]
    assert not warned() and not warned(**heights(44.9, 45.5))
    alone = stem_height(**heights(45.0)).verdict
    assert (alone.state, alone.headline.plain()) == (
        "attention",
        "One stem alone: 45.00 mm, within its limits",
    ) and "Measure the others" in alone.do.plain()


REFUSALS = [
    (
        "high",
        dict(high="44.8 mm"),
        "Height allowed, most: is 44.80 mm, not more than the least height, 44.80 mm; give more than 44.80 mm.",
    ),
    (
        "wanted",
        dict(wanted="45.5 mm"),
        "Height wanted: is 45.50 mm, not within the heights allowed; give 44.80 mm to 45.20 mm.",
    ),
    (
        "heights.2.1",
        {"heights.2.1": "8.5 mm"},
        "Stem heights: 1 exhaust is 8.50 mm, and its tip stands 8.50 mm above the spring, which leaves no room for one; give more than 8.50 mm.",
    ),
]


@pytest.mark.parametrize("field, entries, sentence", REFUSALS)
def test_refusal(field, entries, sentence):
    with pytest.raises(Refused) as refused:
        stem_height(**entries)
    assert [(e.field, e.sentence()) for e in refused.value.errors] == [(field, sentence)]


def test_inches_give_the_same():
    metric = evaluate(stem_height, dict(heights="45.085 | 44.958 | 45.0596"))
    inch = evaluate(stem_height, dict(heights="1.775 | 1.770 | 1.774"), "inch")
    for output in metric.outputs:
        assert inch[output] == pytest.approx(metric[output], rel=1e-9, abs=1e-12), output


def test_a_doubt_that_reaches_the_limit_leaves_it_open():
    assert stem_height(**{"heights.3.1": "45.17 ± 0.02 mm"}).verdict.state == "pass"
    found = stem_height(**{"heights.3.1": "45.17 ± 0.06 mm"})
    assert found.verdict.state == "unsure" and "the highest stem" in found.verdict.headline.plain()


def test_drawing_stands_at_the_heights_of_the_valve_that_needs_most():
    drawing, plot = stem_height(**{"heights.4.1": "45.6 mm"}).figures
    assert drawing.title == "Valve 2 exhaust: stem height and spring"
    stem = max(
        (s for s in drawing.shapes if getattr(s, "hatch", None) == ""),
        key=lambda s: max(y for _, y in extent(s)),
    )
    assert max(y for _, y in stem.points) == pytest.approx(45.6 * MM)
    wires = [y for s in drawing.shapes if getattr(s, "hatch", None) == "c" for _, y in extent(s)]
    assert max(wires) == pytest.approx(37.1 * MM) and min(wires) == pytest.approx(0.6 * MM)  # on its shim
    points = next(s for s in plot.series if s.style == "points").points
    assert points[3] == (4, pytest.approx(45.6 * MM)) and len(points) == 8


def test_work_that_is_told_carries_its_dangers():
    assert "spinning" in {c.id for c in stem_height(**heights(45.3, 45.0)).cautions} and "spinning" not in {
        c.id for c in stem_height().cautions
    }


def test_no_limit_of_one_engine_judges_another():
    read = dict(heights="45.05 mm | 44.98 mm | 45.10 mm")
    assert evaluate(stem_height, read, standing=Standing(engine.engine("TS-16"))).verdict.state == "pass"
    assert (
        "height allowed, least"
        in evaluate(stem_height, read, standing=Standing(engine.engine("RC-40"))).verdict.headline.plain()
    )


def test_a_valve_whose_tip_was_ground_as_this_page_allows_is_no_scrap():
    """By the invented sheet a valve of 111.8 mm as made may lose 0.6 mm at its tip: 111.2 mm is its shortest."""

    def in_hand(length):
        return evaluate(
            stem_height,
            {"heights.1.1": "45.0", "heights.1.2": length, "heights.2.1": "45.0"},
            standing=Standing(engine.engine("TS-16")),
        ).verdict

    sheet = engine.engine("TS-16").features
    assert sheet["valve.length"].wear == pytest.approx(
        sheet["valve.length"].low - sheet["valve.tip_ground"].wear
    )
    assert in_hand("111.5").state == in_hand("111.2").state == "pass" and in_hand("111.1").state == "fail"
