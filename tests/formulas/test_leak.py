"""Leak test against general-purpose libraries, the energy equation, simulated tests, and limits."""

from math import exp, pi, sqrt

import fluids
import pint
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from scipy.integrate import solve_ivp

from calc.formulas import leak

AIR = 28.9647  # g/mol, the molar mass behind leak.AIR_CONSTANT
ATM = 101325.0


def test_gas_constant_is_that_of_the_stated_molar_mass():
    """R = 8.314462618 J/(mol·K), exact in the SI since 2019."""
    assert leak.AIR_CONSTANT == pytest.approx(8.314462618 / AIR * 1000, rel=1e-5)


@pytest.mark.parametrize("up, down", [(ATM, 0.0), (ATM, 50e3), (300e3, ATM)])
def test_choked_hole_against_api_520(up, down):
    """fluids gives the area for a flow; its constant is rounded to four digits."""
    area = fluids.API520_A_g(m=1e-5, T=293.15, Z=1.0, MW=AIR, k=1.4, P1=up, P2=down, Kd=1.0)
    assert leak.mass_flow(area, up, down, 293.15) == pytest.approx(1e-5, rel=6e-4)


HELIUM = dict(kappa=5 / 3, gas_constant=8314.462618 / 4.0026)


def test_another_gas_against_api_520_and_iso_5167():
    """Helium, choked and not: both fluids, both formulas; one atom to the molecule, so κ = 5/3."""
    area = fluids.API520_A_g(m=1e-5, T=293.15, Z=1.0, MW=4.0026, k=5 / 3, P1=300e3, P2=ATM, Kd=1.0)
    expansibility = fluids.nozzle_expansibility(D=1.0, Do=1e-3, P1=120e3, P2=ATM, k=5 / 3)
    slow = 1e-6 * expansibility * sqrt(2 * 120e3 / HELIUM["gas_constant"] / 293.15 * (120e3 - ATM))
    for hole, up, mass, rel in ((area, 300e3, 1e-5, 6e-4), (1e-6, 120e3, slow, 1e-9)):
        assert leak.mass_flow(hole, up, ATM, 293.15, **HELIUM) == pytest.approx(mass, rel=rel)
        assert leak.hole_area(
            mass * HELIUM["gas_constant"] * 293.15, up, ATM, 293.15, **HELIUM
        ) == pytest.approx(hole, rel=rel)


@pytest.mark.parametrize("up, down", [(ATM, 55e3), (ATM, 80e3), (ATM, 100e3), (150e3, ATM), (120e3, ATM)])
def test_hole_not_choked_against_iso_5167_nozzle(up, down):
    """fluids: nozzle_expansibility of ISO 5167-3 for a vanishing nozzle in a wide pipe, m = A·ε·√(2ρΔp)."""
    expansibility = fluids.nozzle_expansibility(D=1.0, Do=1e-3, P1=up, P2=down, k=1.4)
    density = up / leak.AIR_CONSTANT / 293.15
    assert leak.mass_flow(1e-6, up, down, 293.15) == pytest.approx(
        1e-6 * expansibility * sqrt(2 * density * (up - down)), rel=1e-9
    )


@pytest.mark.parametrize("ratio", [0.55, 0.7, 0.9, 0.99])
def test_hole_not_choked_against_the_energy_equation(ratio):
    """Isentropic expansion step by step: temperature, speed from the heat given up, density, density × speed."""
    t = 293.15 * ratio ** (0.4 / 1.4)
    speed = sqrt(2 * 1.4 / 0.4 * leak.AIR_CONSTANT * (293.15 - t))
    density = ratio * ATM / leak.AIR_CONSTANT / t
    assert leak.mass_flow(2e-6, ATM, ratio * ATM, 293.15) == pytest.approx(2e-6 * density * speed, rel=1e-12)


def test_flow_has_no_step_at_the_critical_ratio_and_is_flat_below():
    """Both sides of the switch, the choked closed form, and the greatest flow found by search."""
    critical = leak.critical_ratio()
    assert critical == pytest.approx(fluids.P_critical_flow(1.0, 1.4), rel=1e-12)
    choked = sqrt(1.4) * (2 / 2.4) ** (2.4 / 0.8)
    assert leak.flow_function(critical) == pytest.approx(choked, rel=1e-12)
    assert leak.flow_function(critical * (1 + 1e-6)) == pytest.approx(choked, rel=1e-9)
    assert leak.flow_function(0.0) == leak.flow_function(0.3) == leak.flow_function(critical)
    assert max(leak.flow_function(r / 1000) for r in range(1001)) == pytest.approx(choked, rel=1e-9)
    assert leak.flow_function(1.0) == 0.0


def test_small_pressures_flow_like_water():
    """Limit: for Δp ≪ p the gas is incompressible, m = A√(2ρΔp)."""
    density = ATM / leak.AIR_CONSTANT / 293.15
    assert leak.mass_flow(1e-6, ATM + 10, ATM, 293.15) == pytest.approx(
        1e-6 * sqrt(2 * density * 10), rel=2e-4
    )


def test_conversions_against_pint():
    u = pint.UnitRegistry()
    rate = leak.leak_rate(2.5e-3, 1500.0, 60.0)
    assert rate == pytest.approx((2.5 * u.litre * 15 * u.millibar / u.minute).to("Pa m^3 / s").magnitude)
    flow = leak.standard_flow(rate, 293.15, 273.15) * u.metre**3 / u.second
    moles = rate * u.pascal * u.metre**3 / u.second / (u.molar_gas_constant * 293.15 * u.kelvin)
    standard = moles * u.molar_gas_constant * 273.15 * u.kelvin / u.atmosphere
    assert flow.to("cm^3/min").magnitude == pytest.approx(standard.to("cm^3/min").magnitude)


def test_which_drift_figure_is_right():
    """341 Pa and 346 Pa per kelvin are both quoted for "1 bar": the first belongs to 100 kPa, the second to one atmosphere."""
    assert leak.drift_pressure(100e3, 1.0, 293.15) == pytest.approx(341.12, abs=0.01)
    assert leak.drift_pressure(ATM, 1.0, 293.15) == pytest.approx(345.64, abs=0.01)


def test_reference_temperatures_differ_by_seven_per_cent():
    assert leak.standard_flow(1.0, 293.15, 293.15) / leak.standard_flow(1.0, 293.15, 273.15) == pytest.approx(
        1.0732, abs=1e-4
    )


def test_vacuum_test_counts_the_gain_negative():
    """A head under 60 kPa of vacuum that gained 500 Pa without any drift."""
    loss = leak.pressure_loss(ATM - 60e3, ATM - 60e3 + 500, 293.15, 293.15)
    assert loss == pytest.approx(-500.0)
    assert leak.leak_rate(1e-3, loss, 50.0) == pytest.approx(-0.01)


pressures = st.floats(5e3, 1e6)
temperatures = st.floats(253.0, 333.0)
volumes = st.floats(1e-5, 0.1)
times = st.floats(1.0, 3600.0)


@given(pressures, temperatures, temperatures, volumes, times)
def test_tight_volume_that_warms_or_cools_does_not_leak(pressure, start, end, volume, time):
    """Simulated drift alone: the gas law gives the end pressure, and the corrected loss is nothing."""
    moles = pressure * volume / (8.314462618 * start)
    later = moles * 8.314462618 * end / volume
    assert leak.leak_rate(volume, leak.pressure_loss(pressure, later, start, end), time) == pytest.approx(
        0.0, abs=1e-9 * pressure * volume
    )
    # What the uncorrected reading would have shown is the stated drift, exactly.
    assert later - pressure == pytest.approx(
        leak.drift_pressure(pressure, end - start, start), abs=1e-6 * pressure
    )


@given(pressures, temperatures, temperatures, volumes, times, st.floats(0.0, 0.5))
def test_lost_share_of_gas_is_found_whatever_the_temperature_does(pressure, start, end, volume, time, share):
    later = pressure * (1 - share) * end / start
    found = leak.leak_rate(volume, leak.pressure_loss(pressure, later, start, end), time)
    assert found == pytest.approx(share * pressure * volume / time, rel=1e-6, abs=1e-9 * pressure * volume)


@given(pressures, st.floats(0.0, 0.999), temperatures, st.floats(1e-6, 1e-1), st.floats(0.5, 1.0))
def test_hole_and_flow_are_each_others_reverse(up, ratio, temperature, rate, discharge):
    area = leak.hole_area(rate, up, ratio * up, temperature, discharge)
    mass = leak.mass_flow(area, up, ratio * up, temperature, discharge)
    assert mass * leak.AIR_CONSTANT * temperature == pytest.approx(rate, rel=1e-9)
    assert pi / 4 * leak.hole_diameter(area) ** 2 == pytest.approx(area, rel=1e-12)


@given(st.floats(1e3, 1e5), st.floats(1e-8, 1e-5), st.floats(1e-4, 1e-2), st.floats(10.0, 600.0))
def test_conductance_is_got_back_from_a_simulated_test(difference, conductance, volume, time):
    assume(1e-3 < conductance * time / volume < 5)
    run = solve_ivp(lambda t, y: -conductance * y / volume, (0, time), [difference], rtol=1e-10, atol=1e-6)
    end = run.y[0, -1]
    assert leak.difference_after(difference, conductance, volume, time) == pytest.approx(end, rel=1e-7)
    assert leak.conductance(volume, difference, end, time) == pytest.approx(conductance, rel=1e-5)


@given(st.floats(1e3, 1e5), st.floats(1e-4, 1e-2), times)
def test_small_drop_makes_both_ways_agree(difference, volume, time):
    """Limit: for a small drop the logarithm is the straight line, at the mean driving pressure."""
    end = difference * 0.99
    exact = leak.rate_at(leak.conductance(volume, difference, end, time), (difference + end) / 2)
    assert exact == pytest.approx(leak.leak_rate(volume, difference - end, time), rel=1e-5)
    # and for a large one it is not: the straight line falls short of the rate at the start.
    conductance = leak.conductance(volume, difference, difference * exp(-1), time)
    assert leak.rate_at(conductance, difference) > 1.5 * leak.leak_rate(
        volume, difference * (1 - exp(-1)), time
    )


def test_what_can_be_told_from_drift_and_gauge():
    """0.3 K at 150 kPa and 20 °C is 153.5 Pa; a gauge good to 100 Pa, read twice, 141.4 Pa; together 208.7 Pa."""
    assert leak.least_loss(150e3, 0.3, 293.15) == pytest.approx(153.50, abs=0.01)
    assert leak.least_loss(150e3, 0.3, 293.15, 100.0) == pytest.approx(208.71, abs=0.01)
    assert leak.least_loss(150e3, 0.0, 293.15, 100.0) == pytest.approx(100 * sqrt(2))


@given(volumes, st.floats(1e-6, 1.0), st.floats(1.0, 1e3))
def test_after_the_told_time_the_leak_shows(volume, rate, loss):
    assert leak.leak_rate(volume, loss, leak.time_to_tell(volume, rate, loss)) == pytest.approx(rate)
