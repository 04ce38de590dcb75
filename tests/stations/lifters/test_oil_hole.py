"""Oil hole against the fluids library; verdicts, and what must always be so."""

from math import pi, sqrt

import fluids
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import brentq

from calc.core.result import Refused
from calc.stations.lifters.oil_hole import oil_hole
from calc.stations.lifters.oil_hole.drills import HOLES
from tests.checks.stations.lifters.oil_hole import CASES, COLUMNS, FOUND
from tests.corners import corners
from tests.stations.lifters.test_plunger_leak import viscosity


@pytest.mark.parametrize("case", CASES)
def test_checks_are_what_the_library_finds(case):
    """Speed at which laminar friction and the edge's loss together take the pressure."""
    hole, length, pressure, celsius, discharge = CASES[case]
    d, rho = hole * 1e-3, 880 / (1 + 0.0007 * (celsius - 15))
    mu = viscosity((100, 11.5), celsius) * rho

    def friction(v):
        return fluids.dP_from_K(
            K=fluids.K_from_f(
                fd=fluids.friction_laminar(fluids.Reynolds(V=v, D=d, rho=rho, mu=mu)), L=length * 1e-3, D=d
            ),
            rho=rho,
            V=v,
        )

    def edge(v):
        return fluids.dP_from_K(K=1 / discharge**2, rho=rho, V=v)

    speed = brentq(lambda v: friction(v) + edge(v) - pressure * 1e3, 1e-9, 100, xtol=1e-14)
    found = (
        speed * pi / 4 * d**2 * 1e9,
        fluids.Reynolds(V=speed, D=d, rho=rho, mu=mu),
        friction(speed) / (pressure * 1e3),
    )
    for got, stated, (output, *_, tolerance) in zip(found, FOUND[case], COLUMNS, strict=True):
        assert got == pytest.approx(stated, abs=tolerance), output


VERDICTS = {
    "fills": ("pass", "Fills in 0.36 ms of 47.06 ms", {}),
    "starves": (
        "fail",
        "Starves: needs 1841.54 ms, has 10.00 ms",
        dict(hole="0.3 mm", oil_temperature="0 °C", sink="0.05 mm", speed="4000 1/min"),
    ),
    "barely": (
        "attention",
        "Barely fills: 62.6 % of the time used",
        dict(hole="0.3 mm", oil_temperature="0 °C", sink="0.0008 mm"),
    ),
    "slow": (
        "attention",
        "Slow to fill: 108.6 s of running",
        dict(hole="0.5 mm", oil_temperature="0 °C", sink="0.003 mm"),
    ),
    "as wide as its groove": ("attention", "Hole 3.00 mm as wide as its groove", dict(hole="3.00 mm")),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    state, words, entries = VERDICTS[name]
    verdict = oil_hole(**entries).verdict
    assert (verdict.state, verdict.headline.plain()) == (state, words)


def test_drill_that_is_advised_serves_and_the_one_below_does_not():
    entries = dict(oil_temperature="0 °C", sink="0.05 mm")
    advised = (
        oil_hole(**entries, hole="0.5 mm").verdict.do.plain().split("drills ")[1].split(" is the smallest")[0]
    )
    assert oil_hole(**entries, hole=advised).verdict.state == "pass"
    below = max(d for d in HOLES if d * 1e3 < float(advised.split()[0]) - 1e-9)
    assert oil_hole(**entries, hole=f"{below * 1e3!r} mm").verdict.state != "pass"
    assert (
        "No usual drill serves"
        in oil_hole(
            **entries | dict(oil_temperature="-10 °C"), hole="0.5 mm", pressure="2 kPa"
        ).verdict.do.plain()
    )


def test_a_hole_too_wide_for_its_groove_is_not_answered_with_the_narrowest_drill():
    """0.5 mm fills hot and starves cold; of the drills under a groove of 3 mm the widest is 2 mm."""
    assert (
        "Of the usual drills 2.00 mm is the largest that serves." in oil_hole(hole="4 mm").verdict.do.plain()
    )


def test_table_agrees_with_the_calculator():
    (table,) = oil_hole().tables
    for row, state, d in zip(table.rows, table.states, HOLES):
        found = oil_hole(hole=f"{d * 1e3!r} mm")
        assert [float(cell) for cell in row[1:]] == [
            pytest.approx(found[o]) for o in ("flow", "share", "running_time")
        ] and state == found.verdict.state


@pytest.mark.parametrize(
    "entries, sentence",
    [
        (
            dict(
                oil="points",
                cool_temperature="40 °C",
                cool_viscosity="100 mm²/s",
                warm_temperature="100 °C",
                warm_viscosity="200 mm²/s",
            ),
            "Viscosity at the warmer point: is 200.00 mm²/s, not less than at the cooler point, 100.00 mm²/s, but an oil gets thinner as it gets warmer; give less.",
        ),
        (
            dict(oil="iso-vg-10", oil_temperature="150 °C"),
            "Oil temperature: is 150 °C, where this oil is thinner than 2 mm²/s, past what ASTM D341 holds for in this form; give less.",
        ),
        (
            dict(hole="9 mm"),
            "Hole: 9.00 mm is above 8.00 mm, past what this calculator can answer for; give 0.20 mm to 8.00 mm.",
        ),
    ],
)
def test_refusal(entries, sentence):
    with pytest.raises(Refused) as refused:
        oil_hole(**entries)
    assert [e.sentence() for e in refused.value.errors] == [sentence]


def test_what_is_said_of_the_flow():
    def said(**entries):
        return " ".join(r.text.plain() for r in oil_hole(**entries).remarks)

    assert "edge takes most" in said() and "laminar." in said() and "Dirt" not in said()
    assert "wall takes" in said(oil_temperature="-10 °C") and "Dirt" in said(hole="0.9 mm")
    assert "turbulent" in said(
        pressure="600 kPa", oil_temperature="120 °C", hole="2 mm"
    ) and "In so long a hole" in said(
        pressure="1500 kPa", oil_temperature="150 °C", hole="0.8 mm", wall="40 mm"
    )


@given(st.floats(0.4, 2.0), st.floats(1.05, 2), st.floats(0, 120), st.floats(20, 400))
def test_larger_hole_warmer_oil_and_more_pressure_let_more_in(hole, k, celsius, pressure):
    common = dict(hole=f"{hole!r} mm", oil_temperature=f"{celsius!r} °C", pressure=f"{pressure!r} kPa")
    flow = oil_hole(**common)["flow"]
    larger = oil_hole(**common | dict(hole=f"{hole * k!r} mm"))["flow"]
    assert (
        flow * k**2 * (1 - 1e-9) <= larger <= flow * k**4 * (1 + 1e-9)
    )  # between the edge's law and the wall's
    pressed = oil_hole(**common | dict(pressure=f"{pressure * k!r} kPa"))["flow"]
    assert flow * sqrt(k) * (1 - 1e-9) <= pressed <= flow * k * (1 + 1e-9)
    assert oil_hole(**common | dict(oil_temperature=f"{celsius + 5!r} °C"))["flow"] > flow


def test_time_a_hair_past_what_there_is_does_not_read_the_same():
    found = oil_hole(hole="0.3 mm")
    speed = 850 * found["window"] / found["fill_time"] * 1.000002  # at which it just no longer fills
    headline = oil_hole(hole="0.3 mm", speed=f"{speed:.6f} 1/min").verdict.headline.plain()
    needs, has = (float(part.split()[-2]) for part in headline.split(","))
    assert headline.startswith("Starves") and needs > has, headline


def test_every_pair_that_the_sheet_allows_is_in_order():
    for sizes in corners("lifter.oil_hole", "lifter.oil_hole_length", "lifter.plunger", "lifter.oil_groove"):
        found = oil_hole(**dict(zip(("hole", "wall", "plunger", "groove"), sizes)))
        assert found.verdict.state == "pass", (sizes, found.verdict.headline.plain())


def test_which_oil_is_asked():
    assert oil_hole().calculator.input["oil"].must and oil_hole().calculator.input["cool_viscosity"].when == (
        "oil",
        "points",
    )


def test_a_doubt_that_may_make_it_slow_to_fill_leaves_it_open():
    cold = dict(oil_temperature="0 °C", sink="0.003 mm")
    found = oil_hole(**cold, hole="0.94 ± 0.08 mm")
    assert oil_hole(**cold, hole="0.94 mm").verdict.state == "pass" and found.verdict.state == "unsure"
