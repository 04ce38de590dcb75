"""A round cap against slices of the ball."""

import math

import pytest
from scipy.integrate import quad
from scipy.optimize import brentq

from calc.formulas.round_cap import cap_depth

CM3 = 1e-6


@pytest.mark.parametrize("volume, area", [(56.0, 6361.7), (30.0, 4000.0), (120.0, 5000.0), (300.0, 5000.0)])
def test_cap_has_the_volume_that_was_given(volume, area):
    """Slices of the ball, added up by scipy's quad, over the mouth that was given; the depth found by scipy's brentq."""
    a2 = area * 1e-6 / math.pi

    def held(h):
        radius = (a2 + h * h) / (2 * h)
        return quad(lambda y: math.pi * (2 * radius * y - y * y), 0, h)[0]

    depth = brentq(lambda h: held(h) - volume * CM3, 1e-4, 1.0)
    assert cap_depth(volume * CM3, area * 1e-6) == pytest.approx(depth, rel=1e-9)
