"""What calculators of bolts share: the same bolt, tightened the same, is told the same by each of them."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.stations.rods.rod_bolt import rod_bolt
from calc.stations.rods.rod_bolt.asked import ROD_THREADS
from calc.stations.shared.bolts import CLASSES, yield_stress
from calc.stations.threads.torque_preload import torque_preload


@given(
    st.sampled_from(sorted(ROD_THREADS)),
    st.sampled_from(sorted(CLASSES)),
    st.floats(5, 80),
    st.floats(0.06, 0.25),
    st.floats(0.06, 0.25),
    st.integers(0, 40),
)
def test_a_rod_bolt_is_tightened_as_any_other(thread, strength, torque, in_thread, under_head, spread):
    told = dict(
        thread=thread,
        strength=strength,
        torque=f"{torque} N·m",
        thread_friction=f"{in_thread}",
        head_friction=f"{under_head}",
        spread=f"{spread} %",
    )
    rod, any_other = rod_bolt(**told), torque_preload(**told)
    for output in ("preload", "torque", "low", "high"):
        assert rod[output] == pytest.approx(any_other[output], rel=1e-12)


@pytest.mark.parametrize(
    "strength, diameter, least",
    [("8.8", 16e-3, 640e6), ("8.8", 18e-3, 660e6), ("10.9", 18e-3, 940e6), ("5.6", 20e-3, 300e6)],
)
def test_yield_by_iso_898_1(strength, diameter, least):
    """Table 3: 8.8 has 640 MPa up to 16 mm and 660 MPa over it; the other classes one value."""
    assert float(yield_stress(strength, diameter)) == least
