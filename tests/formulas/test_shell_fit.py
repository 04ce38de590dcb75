"""Shells in their housing against the equation of the thick cylinder, and what must always be so."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.formulas import shell_fit
from tests.checks.formulas.shell_fit import CASE, EYE, GPA, HOT, MM, SHELL, SOFT, bore_of, pressed
from tests.formulas.test_press_fit import two_rings

CASES = {
    "steel eye": EYE,
    "magnesium case": CASE,
    "soft case": SOFT,
    "soft case, hot": SOFT | HOT,
    "small and thick": dict(bore=40.0, wall=5.0, outside=60.0, proud=0.05, E=72.0, nu=0.33),
}


@pytest.mark.parametrize("name", CASES)
def test_the_boundary_value_solver_finds_the_same_bore(name):
    """Radial displacement of the shell's bore as the solver has it, on the shell before it was pressed in."""
    x = dict(CASES[name])
    strains = x.pop("housing_strain", 0.0), x.pop("shell_strain", 0.0)
    grip = x["crush"] * MM if "crush" in x else shell_fit.interference(x["proud"] * MM)
    bore = (x["bore"] - 2 * x["wall"]) * MM
    inner, _ = two_rings(
        bore, x["bore"] * MM, x["outside"] * MM, grip, SHELL[0] * GPA, SHELL[1], x["E"] * GPA, x["nu"],
        strains[1], strains[0],
    )  # fmt: skip
    p = pressed(**x, housing_strain=strains[0], shell_strain=strains[1])[0]
    assert -inner(x["bore"] * MM)[1] == pytest.approx(p, rel=2e-6)
    # the free shell is larger by the grip; its bore's strain is hoop over stiffness, and heat
    free = bore + grip
    closed = free * (1 + inner(bore)[0] / (SHELL[0] * GPA) + strains[1]) / MM
    assert bore_of(**x, housing_strain=strains[0], shell_strain=strains[1]) == pytest.approx(closed, abs=6e-5)


@given(st.floats(0.001, 0.08), st.floats(1, 6), st.floats(5, 40))
def test_no_more_than_the_whole_interference_opens_the_housing(proud, wall, around):
    p, opened, thickened = pressed(60.0, wall, 60.0 + 2 * around, 45.0, 0.35, proud=proud)
    grip = shell_fit.interference(proud * MM)
    assert 0 < opened < grip and 0 < thickened < 0.2 * grip
    assert shell_fit.mean_hoop(p, 60 * MM, wall * MM) < 0


def test_a_rigid_housing_is_not_opened_and_the_shell_has_all_the_strain():
    p, opened, _ = pressed(58.0, 0.05, 80.0, 1e9, 0.0, proud=0.030)
    assert opened < 1e-10
    # thin ring in a rigid housing: −E·2a/(πD), 68.162 MPa
    assert shell_fit.mean_hoop(p, 58 * MM, 0.05 * MM) / 1e6 == pytest.approx(-68.162, rel=2e-3)
