"""Fins against scipy's boundary-value solver; verdicts, remarks, and what must always be so."""

import fluids
import numpy as np
import pytest
from scipy.integrate import solve_bvp, solve_ivp
from scipy.optimize import brentq

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.stations.heads.fin_cooling import fin_cooling
from tests.checks.stations.heads.fin_cooling import CHECKS, IRON, THICK

THIS, OTHER = (14, 2e-3, 22e-3, 4.5e-3, 0.2), (15, 2e-3, 24e-3, 4.0e-3, 0.2)


def solved(h, k, t, length, tip=False):
    """Efficiency of a fin from its temperature: T'' = m²·T, root at 1; insulated tip at L + t/2, or a tip that sheds heat at L."""
    end = length if tip else length + t / 2
    m2 = 2 * h / (k * t)
    x = np.linspace(0, end, 40)
    s = solve_bvp(
        lambda x, y: np.vstack((y[1], m2 * y[0])),
        lambda a, b: np.array([a[0] - 1, b[1] + (h / k * b[0] if tip else 0)]),
        x,
        np.vstack((np.ones_like(x), np.zeros_like(x))),
        tol=1e-10,
        max_nodes=100_000,
    )
    return -s.y[1, 0] * k * t / (h * 2 * (length + t / 2))


def conductance(sizes, h, k):
    count, t, length, gap, width = sizes
    return h * count * width * (gap + 2 * (length + t / 2) * solved(h, k, t, length))


def with_warming(sizes, h, k, speed, path=0.2):
    """Heat per kelvin over the entering air: the air followed along the fins by solve_ivp, its share of the wall's heat growing as it takes it up."""
    count, t, length, gap, width = sizes
    takes = 1.093 * 1007 * speed * count * gap * length * width / path
    per_metre = conductance(sizes, h, k) / path
    return (
        takes
        * solve_ivp(
            lambda x, share: per_metre * (1 - share) / takes, (0, path), [0.0], rtol=1e-11, atol=1e-13
        ).y[0, -1]
    )


def expected(what):
    return next(c.expected for c in CHECKS if c.what == what)


def test_checks_are_what_the_boundary_value_solver_finds():
    for case, what in (
        (THICK, "efficiency of a fin"),
        (IRON, "efficiency of a poorer fin"),
        (THICK | dict(thickness_mm=2.5), "efficiency of a third"),
    ):
        found = solved(case["h"], case["k"], case["thickness_mm"] * 1e-3, case["length_mm"] * 1e-3)
        assert found == pytest.approx(expected(what), abs=5e-6)
    assert solved(60, 160, 2e-3, 25e-3, tip=True) == pytest.approx(
        expected("efficiency of the first with a tip that sheds heat"), abs=5e-6
    )
    one, two = with_warming(THIS, 60, 150, 10.0), with_warming(OTHER, 57, 150, 10.0)
    assert one * 150 == pytest.approx(expected("heat of 14 fins of 2 by 22 mm, W"), abs=0.005)
    assert two * 150 == pytest.approx(expected("heat of 15 fins of 2 by 24 mm, W"), abs=0.005)
    assert 100 * (two / one - 1) == pytest.approx(expected("the second over the first, %"), abs=5e-5)
    d_this, d_other = (2 * gap * length / (gap + length) for _, _, length, gap, _ in (THIS, OTHER))
    slow = with_warming(OTHER, 57, 150, 10 * (d_other / d_this) ** (5 / 7))
    assert 100 * (slow / one - 1) == pytest.approx(
        expected("the same with a fan that gives no more pressure, %"), abs=5e-5
    )
    assert brentq(lambda h: with_warming(OTHER, h, 150, 10.0) - one, 40, 70) == pytest.approx(
        expected("coefficient at which they are alike, W/(m²·K)"), abs=5e-5
    )


# Every verdict: state, headline, entries.
BASE = "14; 2; 22; 4.5"
VERDICTS = {
    "good": ("pass", "Sheds 5.3 % to 6.9 % more at the same heat", {}),
    "less": ("fail", "Sheds less: −2.8 %", dict(alloy_other="grey-iron")),
    "hardly more": (
        "attention",
        "Hardly more: 3.7 %, 5.0 % wanted",
        dict(fins=f"{BASE} | 14; 2; 23; 4.5", air_other="60 W/(m²·K)"),
    ),
    "hardly more, by the fan": (
        "attention",
        "Hardly more: 3.2 % to 6.1 %, 5.0 % wanted",
        dict(speed="5 m/s"),
    ),
    "narrow": (
        "attention",
        "24.0 % more, if air still enters 2.80 mm",
        dict(fins=f"{BASE} | 19; 2; 24; 2.8", air_other="60 W/(m²·K)"),
    ),
    "deep": (
        "attention",
        "118.8 % more, if air still enters 4.50 mm",
        dict(fins=f"{BASE} | 14; 3; 60; 4.5", air_other="60 W/(m²·K)"),
    ),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    state, words, entries = VERDICTS[name]
    verdict = fin_cooling(**entries).verdict
    assert (verdict.state, verdict.headline.plain()) == (state, words)


def test_remarks():
    def told(**entries):
        return " ".join(r.text.plain() for r in fin_cooling(**entries).remarks)

    assert "closer fins do not keep it" in told() and "It will be less" not in told()
    assert "It will be less" in told(air_other="")
    assert "It will be less" not in told(
        air_other="", fins=f"{BASE} | 14; 2; 26; 4.5"
    )  # no closer than before
    assert "deep, narrow channel" in told(**VERDICTS["narrow"][2]) and "a tenth to a fifth" in told(
        **VERDICTS["narrow"][2]
    )
    assert "deep, narrow channel" not in told() and "a tenth to a fifth" not in told()
    assert (
        "same height of wall: 91.0 mm and 108.0 mm" in told(fins=f"{BASE} | 18; 2; 24; 4.0")
        and "same height" not in told()
    )


def test_at_the_coefficient_told_the_gain_is_gone():
    even = fin_cooling()["even"]
    again = fin_cooling(air_other=f"{even!r} W/(m²·K)")
    assert again["change"] == pytest.approx(0, abs=1e-12)
    assert fin_cooling()["may_fall"] == pytest.approx(1 - even / 60)


def test_the_same_casting_twice_sheds_the_same():
    same = fin_cooling(fins=f"{BASE} | {BASE}", air_other="")
    assert (
        same["change"] == 0 and same["even"] == pytest.approx(60) and same["heat_this"] == same["heat_other"]
    )


def test_a_warmer_wall_sheds_more_and_changes_nothing_else():
    a, b = fin_cooling(), fin_cooling(hotter="300 K")
    assert b["heat_this"] == pytest.approx(2 * a["heat_this"]) and b["change"] == pytest.approx(a["change"])


def test_inches_give_the_same():
    metric = evaluate(
        fin_cooling, dict(fins="14; 2.032; 22.86; 4.572 | 15; 2.032; 25.4; 3.81", width="203.2 mm")
    )
    inch = evaluate(fin_cooling, dict(fins="14; 0.08; 0.9; 0.18 | 15; 0.08; 1; 0.15", width="8"), "inch")
    for output in metric.outputs:
        assert inch[output] == pytest.approx(metric[output], rel=1e-9), output


def test_drawing_is_to_the_sizes_that_were_given():
    drawing, plot = fin_cooling().figures
    first, second = (s.points for s in drawing.shapes if hasattr(s, "hatch"))
    assert max(y for _, y in first) == pytest.approx(22e-3) and max(y for _, y in second) == pytest.approx(
        24e-3
    )
    xs = sorted({round(x, 9) for x, y in first if y > 0})
    assert xs[1] - xs[0] == pytest.approx(2e-3) and xs[2] - xs[1] == pytest.approx(4.5e-3)
    assert plot.marks[0][:2] == pytest.approx((60, fin_cooling()["heat_this"] / 150))


def test_the_airs_own_warming_takes_part_of_the_gain_and_fast_air_gives_it_back():
    """Limit: air that flows so fast that it stays cold sheds what fins alone do; slow air leaves as warm as the wall, and the fins no longer count."""
    slow, usual, fast = (fin_cooling(speed=f"{v} m/s") for v in (0.5, 10, 80))
    cold = conductance(THIS, 60, 150), conductance(OTHER, 57, 150)
    assert fast["heat_this"] / 150 == pytest.approx(cold[0], rel=0.04) and fast["change"] == pytest.approx(
        cold[1] / cold[0] - 1, abs=0.002
    )
    assert usual["change"] < fast["change"] and usual["change_least"] < usual["change"]
    assert slow["warmer_this"] == pytest.approx(150, abs=0.2) and slow["change"] == pytest.approx(
        15 * 4.0 * 24 / (14 * 4.5 * 22) - 1, abs=0.001
    )
    assert usual["heat_this"] == pytest.approx(1.093 * 1007 * 10 * 14 * 4.5e-3 * 22e-3 * usual["warmer_this"])


def test_a_fan_of_the_same_pressure_blows_slower_through_closer_fins():
    """The fluids library's Blasius friction: the speed at which the other's channel takes the pressure that this one's does; no faster through wider ones."""

    def pressure(speed, gap, length):
        d = 2 * gap * length / (gap + length)
        return fluids.friction.Blasius(speed * d / 1.8e-5) / d * speed**2

    found = brentq(lambda v: pressure(v, 4.0, 24.0) - pressure(10.0, 4.5, 22.0), 1, 20)
    assert fin_cooling()["speed_other"] == pytest.approx(found, rel=1e-9)
    assert fin_cooling(fins=f"{BASE} | 12; 2; 26; 6")["speed_other"] == pytest.approx(10.0)


def test_air_that_parts_round_a_cylinder_stays_cooler():
    whole, halves = fin_cooling(), fin_cooling(path="100 mm")
    assert (
        halves["heat_this"] == pytest.approx(with_warming(THIS, 60, 150, 10.0, 0.1) * 150)
        and halves["heat_this"] > whole["heat_this"]
    )
    with pytest.raises(Refused, match="longer than the fins run"):
        fin_cooling(path="201 mm")
