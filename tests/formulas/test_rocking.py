"""A stem leaned in its bore until both ends touch."""

from math import cos, tan

import pytest
from scipy.optimize import brentq

from calc.formulas.rocking import rocking_factor


def leaned(clearance, stem, length, height):
    """Full reading of a dial on a straight-sided stem that is turned in its bore until both ends touch, to one side and the other."""
    bore = stem + clearance
    angle = brentq(
        lambda t: stem / cos(t) + length * tan(t) - bore, 0, 0.2
    )  # width across, and what the far end has moved aside
    # on the middle line of the guide the axis stands in the middle; the dial touches the side of the stem at its height
    side = (length / 2 + height) * tan(angle) + stem / 2 / cos(angle)
    other = -(length / 2 + height) * tan(angle) + stem / 2 / cos(angle)
    return side - other


@pytest.mark.parametrize("clearance, height", [(0.02, 0), (0.05, 10), (0.1, 35), (0.3, 60), (0.6, 100)])
def test_rocking_is_that_of_a_stem_that_leans_in_its_bore(clearance, height):
    assert clearance * rocking_factor(height, 46.0) == pytest.approx(
        leaned(clearance, 8.0, 46.0, height), rel=3e-3
    )
