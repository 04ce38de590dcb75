"""Outside numbers for the leak test. Those marked library are worked anew in test_leak.py."""
from math import pi

from calc.formulas import leak
from tests.checks import Check

LITRE, MINUTE, CM3, MM2 = 1e-3, 60.0, 1e-6, 1e-6
ZERO, ROOM = 273.15, 293.15
CODE = "API 520 sizing equation of the fluids library"


def standard_cm3_min(volume_l, loss_Pa, time_s, test_K, standard_K):
    rate = leak.leak_rate(volume_l * LITRE, loss_Pa, time_s)
    return leak.standard_flow(rate, test_K, standard_K) / CM3 * MINUTE


def mbar_litre(volume_l, loss_Pa, time_s):
    return leak.leak_rate(volume_l * LITRE, loss_Pa, time_s) * 10


def hole_mm2(rate, up_Pa, down_Pa, test_K):
    return leak.hole_area(rate, up_Pa, down_Pa, test_K) / MM2


def hole_mm(**test):
    return leak.hole_diameter(hole_mm2(**test))


def mass_flow(area_mm2, up_Pa, down_Pa, test_K, R=leak.AIR_CONSTANT):
    return leak.mass_flow(area_mm2 * MM2, up_Pa, down_Pa, test_K, gas_constant=R)


def hole_flow(diameter_mm, up_Pa, test_K, R):
    return mass_flow(pi / 4 * diameter_mm ** 2, up_Pa, 0.0, test_K, R)


def hole_standard_cm3_min(density_kg_m3, **hole):
    return hole_flow(**hole) / density_kg_m3 / CM3 * MINUTE


def after(start_Pa, conductance_m3_s, volume_l, time_s):
    return leak.difference_after(start_Pa, conductance_m3_s, volume_l * LITRE, time_s)


TEST = dict(volume_l=2.5, loss_Pa=1500.0, time_s=60.0)
# With R = 287.05; our 287.055 (28.9647 g/mol) gives 4.6961, in the fifth digit below.
HOLE = dict(diameter_mm=0.5, up_Pa=101325.0, test_K=ROOM, R=287.05)

CHECKS = [
    Check("Leak test", "throughput, mbar·l/s", TEST, 0.625, 1e-9, mbar_litre, "V·Δp/t by hand; 1 Pa·m³/s = 10 mbar·l/s", "limit"),
    Check("Leak test", "flow referred to 20 °C, cm³/min", TEST | dict(test_K=ROOM, standard_K=ROOM),
          37.01, 0.005, standard_cm3_min, "ideal gas; units converted with pint", "library"),
    Check("Leak test", "flow referred to 0 °C, cm³/min", TEST | dict(test_K=ROOM, standard_K=ZERO),
          34.485, 0.0005, standard_cm3_min, "ideal gas; units converted with pint", "library"),
    Check("Leak test", "pressure faked by 1 K at 100 kPa, Pa", dict(pressure=100e3, temperature_change=1.0, temperature=ROOM),
          341.1, 0.05, leak.drift_pressure, "p·ΔT/T", "limit"),
    Check("Leak test", "pressure faked by 1 K at one atmosphere, Pa", dict(pressure=101325.0, temperature_change=1.0, temperature=ROOM),
          345.6, 0.05, leak.drift_pressure, "p·ΔT/T", "limit"),
    Check("Leak test", "hole into vacuum for 0.0625 Pa·m³/s, mm²", dict(rate=0.0625, up_Pa=101325.0, down_Pa=40e3, test_K=ROOM),
          0.0031054, 0.0000016, hole_mm2, CODE + " (its constant is rounded: 0.05 %)", "library"),
    Check("Leak test", "diameter of that hole, mm", dict(rate=0.0625, up_Pa=101325.0, down_Pa=40e3, test_K=ROOM),
          0.06288, 0.00002, hole_mm, CODE + " (its constant is rounded: 0.05 %)", "library"),
    Check("Leak test", "choked flow of 800 mm², kg/s", dict(area_mm2=800.0, up_Pa=101325.0, down_Pa=0.0, test_K=ROOM),
          0.19133, 0.0001, mass_flow, CODE + " (its constant is rounded: 0.05 %)", "library"),
    Check("Leak test", "flow of 600 mm² at 94 325 Pa in the throat, kg/s", dict(area_mm2=600.0, up_Pa=101325.0, down_Pa=94325.0, test_K=ROOM),
          0.074981, 0.00004, mass_flow, "CoolProp, isentropic expansion of real air (0.02 % above the ideal gas)", "library"),
    Check("Leak test", "choked flow of a 0.5 mm hole, kg/s", HOLE, 4.6962e-5, 5e-10, hole_flow,
          "Saint-Venant–Wantzel, choked closed form A·p₀·√(κ/RT)·(2/(κ+1))^((κ+1)/(2(κ−1)))", "limit"),
    Check("Leak test", "the same at 0 °C and one atmosphere, cm³/min", HOLE | dict(density_kg_m3=1.2929), 2179.0, 0.5,
          hole_standard_cm3_min, "the same, with dry air of 1.2929 kg/m³", "limit"),
    Check("Leak test", "critical pressure ratio of air", dict(kappa=1.4), 0.528282, 5e-7, leak.critical_ratio, "fluids library, P_critical_flow", "library"),
    Check("Leak test", "pressure difference after 600 s, Pa", dict(start_Pa=50e3, conductance_m3_s=1e-6, volume_l=2.0, time_s=600.0),
          37040.9, 0.05, after, "scipy solve_ivp on dΔp/dt = −C·Δp/V", "library"),
]
