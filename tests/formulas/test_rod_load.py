"""What pulls at a cap against the slider-crank differentiated and Newton's law; what a bolt gives against its strain summed up along it."""

import pytest
import sympy
from scipy.integrate import quad

from calc.formulas import rod_load

CRANKS = [
    ("0.0345", "0.137", 75),
    ("0.0392", "0.137", 83),
    ("0.05", "0.09", 20),
]  # throw and rod in m, turns a second


@pytest.mark.parametrize("throw, rod, speed", CRANKS)
def test_accelerations_are_the_second_derivatives_at_top_dead_centre(throw, rod, speed):
    """sympy: the crankpin goes round, the piston stays a rod's length from it."""
    t, r, l = sympy.symbols("t"), sympy.Rational(throw), sympy.Rational(rod)
    w = 2 * sympy.pi * speed
    piston, pin = r * sympy.cos(w * t) + sympy.sqrt(l**2 - r**2 * sympy.sin(w * t) ** 2), r * sympy.cos(w * t)
    of_piston, of_pin = (-float(sympy.diff(x, t, 2).subs(t, 0)) for x in (piston, pin))
    got = rod_load.pin_acceleration(float(throw), speed)
    assert got == pytest.approx(of_pin, rel=1e-12)
    assert rod_load.top_acceleration(got, float(throw), float(rod)) == pytest.approx(of_piston, rel=1e-12)


def test_pull_is_mass_times_acceleration_of_each_end():
    """Newton, by hand: 0.59 kg at 9600 m/s² and 0.27 kg at 7700 m/s² are 5664 N and 2079 N."""
    assert rod_load.joint_pull(0.59, 0.27, 9600.0, 7700.0) == pytest.approx(5664 + 2079)


def test_bolt_gives_what_its_strain_makes_along_it():
    """scipy: strain F/(E·A) of a pull of 1 N summed up over 40 mm of shank of 8 mm, then 12 mm of thread of 38.6 mm²."""
    shank = 3.141592653589793 / 4 * 8e-3**2
    give = quad(lambda x: 1 / (205e9 * (shank if x < 40e-3 else 38.6e-6)), 0, 52e-3, points=[40e-3])[0]
    assert rod_load.bolt_give(40e-3, shank, 12e-3, 38.6e-6, 205e9) == pytest.approx(give, rel=1e-9)
