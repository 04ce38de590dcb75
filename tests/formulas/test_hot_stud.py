"""A stud that is warmer or colder than what it clamps: bars assembled node by node, the aluminium head and iron cylinder of an air-cooled engine, and limits."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.formulas import hot_stud

GPA, MM = 1e9, 1e-3
# length, section, modulus, expansion, warming. Worked once with numpy 2.4.6, bars with thermal loads: 24716 N of 14000 N
STUD = ((20 * MM, 58.0e-6, 205 * GPA, 11.5e-6, 75), (165 * MM, 50.3e-6, 205 * GPA, 11.5e-6, 110))
CLAMPED = (
    (110 * MM, 900e-6, 110 * GPA, 11e-6, 170),
    (60 * MM, 700e-6, 71 * GPA, 21.5e-6, 160),
    (15 * MM, 1200e-6, 45 * GPA, 26e-6, 80),
)


def by_assembly(cold, stud, clamped):
    """Stud and clamped parts as two chains of bars between case (held) and nut (free), with initial and thermal strains: K·u = f.

    The stud is made `short` of what it clamps by as much as gives the cold preload."""
    short = cold * sum(L / (A * E) for L, A, E, *_ in (*stud, *clamped))
    nodes = len(stud) + len(clamped) - 1  # free ones: each chain's inner nodes, and the nut that both share
    K, f = np.zeros((nodes + 1, nodes + 1)), np.zeros(nodes + 1)
    nut = nodes
    forces = []
    first = 1
    for chain, initial in ((stud, short), (clamped, 0.0)):
        here = [0, *range(first, first + len(chain) - 1), nut]
        first += len(chain) - 1
        for n, ((L, A, E, alpha, warm), a, b) in enumerate(zip(chain, here, here[1:])):
            k, free = E * A / L, L * alpha * warm - (initial if n == 0 else 0.0)  # free change of length
            K[np.ix_((a, b), (a, b))] += k * np.array([[1, -1], [-1, 1]])
            f[a] -= k * free
            f[b] += k * free
            forces.append((chain is stud, k, a, b, free))
    u = np.zeros(nodes + 1)
    u[1:] = np.linalg.solve(K[1:, 1:], f[1:])
    of_stud = [k * (u[b] - u[a] - free) for own, k, a, b, free in forces if own]
    assert of_stud == pytest.approx([of_stud[0]] * len(of_stud))
    return of_stud[0]


def test_an_iron_cylinder_under_an_aluminium_head():
    assert hot_stud.preload(14000, STUD, CLAMPED) == pytest.approx(24716, abs=0.5)
    assert 1 / hot_stud.give(p[:3] for p in STUD) == pytest.approx(56549e3, rel=1e-5) and 1 / hot_stud.give(
        p[:3] for p in CLAMPED
    ) == pytest.approx(385190e3, rel=1e-5)


@given(st.floats(5e3, 40e3), st.floats(50, 130), st.floats(80, 200))
def test_assembled_bars_agree(cold, stud_warm, clamped_warm):
    stud, clamped = (
        [(*part[:4], warm) for part in parts] for parts, warm in ((STUD, stud_warm), (CLAMPED, clamped_warm))
    )
    assembled = by_assembly(cold, stud, clamped)
    assert hot_stud.preload(cold, stud, clamped) == pytest.approx(max(assembled, 0.0), rel=1e-9, abs=1e-4)


def test_nothing_changes_where_all_grow_alike_and_all_is_lost_in_frost():
    alike = [(L, A, E, 11.5e-6, 100) for L, A, E, *_ in (*STUD, *CLAMPED)]
    assert hot_stud.growth(alike) == pytest.approx(11.5e-6 * 100 * 0.370)
    assert hot_stud.preload(14000, alike[:2], [(0.185, 900e-6, 110 * GPA, 11.5e-6, 100)]) == pytest.approx(
        14000
    )
    assert hot_stud.preload(500, STUD, [(*part[:4], -100) for part in CLAMPED]) == 0


def test_half_as_much_again_is_what_heat_makes_of_an_air_cooled_cylinder_s_stud():
    """The factor that calculators take for want of the parts' sizes; cylinder 160 °C, head 150 °C, stud 100 °C, from 20 °C: 19.5 kN of an
    M10 become 29.8 kN in a cylinder of 110 mm and a head of 60 mm whose sections are as those above, within a twentieth."""
    stud = ((170 * MM, 58.0e-6, 205 * GPA, 11.5e-6, 80),)
    clamped = ((110 * MM, 900e-6, 110 * GPA, 11e-6, 140), (60 * MM, 700e-6, 71 * GPA, 21.5e-6, 130))
    assert hot_stud.preload(19.5e3, stud, clamped) / 19.5e3 == pytest.approx(1.5, abs=0.08)
