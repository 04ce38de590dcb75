"""A spinning flywheel: against finite elements, closed forms and limits; verdicts, refusals, whose speed counts."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import solve_bvp

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.formulas import rotating_disc
from calc.reference.engine import engine
from calc.stations.flywheel.spin_stress import spin_stress
from tests.checks.formulas.rotating_disc import STEPS_1, STEPS_2
from tests.checks.stations.flywheel.spin_stress import FIRST, FLAT, OWN, SECOND

E, MPA = 110e9, 1e6


def elements(steps, rpm, rho=7150.0, nu=0.26, each=60):
    """Finite elements with quadratic shape functions along the radius, m, N: nodes and how far they move."""
    edges = (
        np.concatenate([np.linspace(a, b, each, endpoint=False) for a, b, _ in steps] + [[steps[-1][1]]])
        / 1e3
    )
    thick = np.repeat([h / 1e3 for *_, h in steps], each)
    count = len(thick)
    K, F = np.zeros((2 * count + 1,) * 2), np.zeros(2 * count + 1)
    nodes = np.empty(2 * count + 1)
    nodes[::2], nodes[1::2] = edges, (edges[:-1] + edges[1:]) / 2
    D = E / (1 - nu**2) * np.array([[1, nu], [nu, 1]])
    for n, h in enumerate(thick):
        a, b = edges[n], edges[n + 1]
        for s, w in zip(*np.polynomial.legendre.leggauss(3)):
            r, half = (a + b) / 2 + s * (b - a) / 2, (b - a) / 2
            N = np.array([s * (s - 1) / 2, 1 - s * s, s * (s + 1) / 2])
            B = np.vstack([np.array([s - 0.5, -2 * s, s + 0.5]) / half, N / r])
            at = slice(2 * n, 2 * n + 3)
            K[at, at] += w * half * h * r * B.T @ D @ B
            F[at] += w * half * h * rho * (2 * np.pi * rpm / 60) ** 2 * r * r * N
    return nodes, np.linalg.solve(K, F)


@pytest.mark.parametrize("steps, rpm, entries", [(STEPS_1, 6000, FIRST), (STEPS_2, 6500, SECOND)])
def test_stepped_discs_by_finite_elements(steps, rpm, entries):
    nodes, u = elements(steps, rpm)
    found = spin_stress(**entries)
    assert found["bore"] == pytest.approx(E * u[0] / nodes[0], rel=2e-4)  # one stress alone at a free edge
    assert found["rim"] == pytest.approx(E * u[-1] / nodes[-1], rel=2e-4)
    assert found["growth"] == pytest.approx(2 * u[-1], rel=2e-4)
    disc = rotating_disc.spinning([tuple(x / 1e3 for x in row) for row in steps], 7150.0, rpm / 60, E, 0.26)
    moved = [disc.at(r).growth for r in nodes]
    assert np.allclose(moved, u, rtol=3e-4)


def test_flat_and_tapered_discs_by_a_boundary_value_problem():
    def solved(inner, outer, t_in, t_out, rpm, rho=7150.0, nu=0.26):
        load = rho * (2 * np.pi * rpm / 60) ** 2

        def h(r):
            return t_in + (t_out - t_in) * (r - inner) / (outer - inner)

        def slope(r, y):  # y: displacement, pull on a unit of edge
            radial = y[1] / h(r)
            strain = (1 - nu**2) / E * radial - nu * y[0] / r
            hoop = E * y[0] / r + nu * radial
            return np.vstack([strain, h(r) * (hoop - radial) / r - load * h(r) * r])

        r = np.linspace(inner, outer, 200)
        out = solve_bvp(
            slope,
            lambda a, b: np.array([a[1], b[1]]),
            r,
            np.vstack([1e-5 + 0 * r, 0 * r]),
            tol=1e-8,
            max_nodes=50000,
        )
        return E * out.y[0][0] / inner / MPA, E * out.y[0][-1] / outer / MPA

    assert solved(0.03, 0.14, 0.02, 0.02, 6000) == pytest.approx((45.56, 12.306), abs=2e-3)
    assert solved(0.03, 0.138, 0.03, 0.012, 6500) == pytest.approx((39.683, 11.292), abs=2e-3)
    assert spin_stress(**FLAT)["bore"] / MPA == pytest.approx(
        solved(0.03, 0.14, 0.02, 0.02, 6000)[0], rel=1e-4
    )


radii = st.lists(st.integers(10, 200), min_size=3, max_size=5, unique=True).map(sorted)


@given(radii, st.lists(st.integers(3, 60), min_size=4, max_size=4), st.integers(500, 9000))
def test_halves_balance_and_edges_are_free(edges, thick, rpm):
    steps = [(a / 1e3, b / 1e3, h / 1e3) for a, b, h in zip(edges, edges[1:], thick)]
    disc = rotating_disc.spinning(steps, 7200.0, rpm / 60, E, 0.26)
    scale = disc.greatest_hoop().hoop
    assert disc.at(steps[0][0], 0).radial == pytest.approx(0, abs=1e-9 * scale)
    assert disc.at(steps[-1][1]).radial == pytest.approx(0, abs=1e-9 * scale)
    pull = 0.0
    for n, (a, b, h) in enumerate(steps):
        s, w = np.polynomial.legendre.leggauss(20)
        r = (a + b) / 2 + s * (b - a) / 2
        pull += sum(w * (b - a) / 2 * h * np.array([disc.at(x, n).hoop for x in r]))
        assert scale >= max(disc.at(x, n).hoop for x in r) * (1 - 1e-12)
        if n:
            assert steps[n - 1][2] * disc.at(a, n - 1).radial == pytest.approx(
                h * disc.at(a, n).radial, abs=1e-9 * scale
            )
    area = sum(h * (b - a) for a, b, h in steps)
    assert pull / area == pytest.approx(rotating_disc.mean_hoop(steps, 7200.0, rpm / 60), rel=1e-6)


@given(radii, st.integers(3, 60))
def test_cut_into_rings_a_flat_disc_stays_what_it_is(edges, thick):
    steps = [(a / 1e3, b / 1e3, thick / 1e3) for a, b in zip(edges, edges[1:])]
    disc = rotating_disc.spinning(steps, 7200.0, 100.0, E, 0.3)
    a, b = edges[0] / 1e3, edges[-1] / 1e3
    assert disc.greatest_hoop().hoop == pytest.approx(rotating_disc.flat_bore_hoop(a, b, 7200.0, 100.0, 0.3))
    assert disc.at(b).hoop == pytest.approx(rotating_disc.flat_rim_hoop(a, b, 7200.0, 100.0, 0.3))


def test_a_hole_doubles_and_a_hole_beside_the_middle_trebles():
    solid = spin_stress(**OWN | dict(section="0; 280; 20", speed="6000", strength="250 MPa"))
    pin = spin_stress(**OWN | dict(section="0.1; 280; 20", speed="6000", strength="250 MPa"))
    assert pin["bore"] == pytest.approx(2 * solid["peak"], rel=1e-5)
    assert rotating_disc.at_a_hole(10.0, 0.0) == 30.0 and rotating_disc.at_a_hole(10.0, 10.0) == 20.0
    assert pin["hole"] == pytest.approx(3 * pin["peak"])
    told = spin_stress(**OWN | dict(section="60; 280; 20", speed="6000", strength="250 MPa", circle="100 mm"))
    disc = rotating_disc.spinning([(0.03, 0.14, 0.02)], 7150.0, 100.0, E, 0.26)
    assert told["hole"] == pytest.approx(3 * disc.at(0.05).hoop - disc.at(0.05).radial)


def judged(**entries):
    verdict = spin_stress(**entries).verdict
    return verdict.state, verdict.headline.plain()


@pytest.mark.parametrize(
    "entries, state, words",
    [
        ({}, "pass", "Bears 4500 1/min: bursts at 4."),
        (dict(speed="5500"), "pass", "Bears 5500 1/min: bursts at 3."),
        (dict(speed="5501"), "fail", "Does not run: 5501 1/min, 5500 1/min allowed"),
        (dict(looked="cracked", speed="500"), "fail", "Does not run: it is cracked"),
        (dict(looked="not-tried"), "attention", "Not yet: nobody looked for cracks"),
        (dict(looked="heat-checks"), "attention", "Not yet: heat cracks in the friction face"),
        (dict(looked="not-tried", speed="5600"), "fail", "Does not run: 5600 1/min"),
        (
            dict(speed="10000", maker="10000", strength="150 MPa"),
            "fail",
            "Too weak: bursts at 1.67 times, 2.0 wanted",
        ),
        (
            dict(section="40; 120; 18 | 120; 212; 5 | 212; 262; 28", speed="7000", maker="7000", circle="45"),
            "fail",
            "Too weak: strength 1.",
        ),
    ],
)
def test_verdict(entries, state, words):
    found = judged(**entries)
    assert found[0] == state and found[1].startswith(words), found


def test_a_heavy_rim_on_a_thin_web_is_worse_than_a_flat_disc():
    assert 53 < spin_stress(**SECOND)["flat"] / MPA < 54 and spin_stress(**SECOND)["bore"] / MPA > 69
    assert any("hangs on a thin web" in r.text.plain() for r in spin_stress(**SECOND).remarks)
    assert not any("hangs on a thin web" in r.text.plain() for r in spin_stress(**FLAT).remarks)


READ = dict(
    section="40; 120; 18 | 120; 212; 18 | 212; 256; 20 | 256; 262; 16; 12", looked="sound", circle="80 mm"
)


def test_without_its_maker_s_speed_it_is_not_judged():
    def verdict(name, **more):
        return evaluate(spin_stress, READ | more, standing=Standing(engine(name) if name else None)).verdict

    assert verdict("TS-16").state == "pass"
    for name in ("RC-40", ""):
        found = verdict(name, speed="3000", material="grey-iron")
        assert found.state == "unjudged" and "maker's highest speed" in found.headline.plain()
        assert verdict(name, speed="3000", material="grey-iron", maker="4000").state == "pass"
        assert verdict(name, speed="4001", material="grey-iron", maker="4000").state == "fail"
    assert verdict("TS-16", looked="").state == "awaited"


def test_whatever_is_worked_out_it_never_advises_more_than_the_maker():
    strong = spin_stress(material="forged-steel", strength="1500 MPa", speed="5600").verdict
    assert strong.state == "fail" and "No calculation allows more" in strong.do.plain()
    assert "5500 1/min stays the limit" in spin_stress().verdict.do.plain()


@pytest.mark.parametrize(
    "entries, what",
    [
        (dict(speed="5480 ± 100"), "the highest speed"),
        (
            dict(speed="9000", maker="10000", strength="177 ± 10 MPa", least_factor="1.5", circle="240 mm"),
            "bursting",
        ),
    ],
)
def test_a_doubt_that_reaches_a_limit_leaves_it_open(entries, what):
    found = spin_stress(**entries)
    assert found.verdict.state == "unsure" and what in found.verdict.headline.plain(), found.verdict


@pytest.mark.parametrize(
    "entries, field, words",
    [
        (dict(circle="30 mm"), "circle", "has no metal"),
        (dict(speed="0"), "speed", "below 100"),
        (dict(speed="35 m/s"), "speed", "a speed"),
        (dict(section="40; 120; 18 | 100; 262; 18"), "section.2.1", "the ring before it"),
        (dict(strength="5 MPa"), "strength", "below 80"),
    ],
)
def test_refusals(entries, field, words):
    with pytest.raises(Refused) as refused:
        spin_stress(**entries)
    (error,) = refused.value.errors
    assert error.field == field and words in str(error), str(error)


def test_inches_give_the_same():
    metric = evaluate(spin_stress, READ | dict(section="50.8; 203.2; 25.4 | 203.2; 254; 38.1", speed="3000"))
    inch = evaluate(
        spin_stress, READ | dict(section="2; 8; 1 | 8; 10; 1.5", speed="3000", circle="80 mm"), "inch"
    )
    for output in metric.outputs:
        assert inch[output] == pytest.approx(metric[output], rel=1e-9), output


def test_the_plot_has_the_greatest_stress_where_it_says():
    found = spin_stress()
    (plot,) = found.figures
    assert max(y for _, y in plot.series[0].points) == pytest.approx(found["peak"], rel=1e-6)
    assert plot.marks[0][:2] == pytest.approx((found["peak_at"], found["peak"]))
