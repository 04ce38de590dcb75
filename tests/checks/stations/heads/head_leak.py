"""Outside numbers for the leak test, asked of the calculator. Those marked library are worked anew in test_leak_test.py."""
from math import exp

from tests.checks import Check, Trend, asked

HAND = "V·Δp/t by hand; units converted with pint"
TEST = dict(mode="pressure", volume="2.5 L", start="60 kPa", end="58.5 kPa", time="60 s")
# A vacuum that falls off by a hundredth: the throughput at its start is V/t·0.01·Δp, chosen to be 0.0625 Pa·m³/s.
FALL = dict(mode="vacuum", room="101.325 kPa", start="61.325 kPa", end=f"{61.325 * exp(-0.01)!r} kPa", time="60 s")
HOLE = FALL | dict(volume=f"{0.0625 * 60 / 0.01 / 61325 * 1000!r} L")
CHOKED = FALL | dict(volume=f"{4.6962e-5 * 287.055 * 293.15 * 60 / 0.01 / 61325 * 1000!r} L", allowed_by="told", limit="10000 cm³/min")
DECAY = dict(mode="pressure", volume="2 L", start="50 kPa", end="37.0409 kPa", time="600 s")

CHECKS = [
    Check("leak-test", "mean throughput, mbar·L/s", TEST, 0.625, 1e-9, asked("leak-test", "rate", "mbar·L/s"), HAND, "library"),
    Check("leak-test", "mean leak at 0 °C, cm³/min", TEST, 34.485, 0.0005, asked("leak-test", "mean", "cm³/min"), HAND, "library"),
    Check("leak-test", "mean leak at 20 °C, cm³/min", TEST, 37.01, 0.005, asked("leak-test", "mean_20", "cm³/min"), HAND, "library"),
    Check("leak-test", "leak at the start of a decay, at 0 °C, cm³/min", DECAY, 1e-6 * 50e3 / 101325 * 60e6 * 273.15 / 293.15, 0.0002,
          asked("leak-test", "leak", "cm³/min"), "scipy solve_ivp: 1 mm³/s per Pa from 50 kPa leaves 37.0409 kPa after 600 s in 2 L", "library"),
    Check("leak-test", "pressure that 1 K fakes at 100 kPa, Pa", dict(mode="vacuum", room="101 kPa", start="1 kPa", end="0.99 kPa"), 341.1, 0.05,
          asked("leak-test", "kelvin_pressure", "Pa"), "p·ΔT/T", "limit"),
    Check("leak-test", "pressure that 1 K fakes at one atmosphere, Pa", dict(mode="pressure", room="100 kPa", start="1.325 kPa", end="1.3 kPa"), 345.6, 0.05,
          asked("leak-test", "kelvin_pressure", "Pa"), "p·ΔT/T", "limit"),
    Check("leak-test", "hole into vacuum for 0.0625 Pa·m³/s, mm", HOLE, 0.06288, 0.00002, asked("leak-test", "hole", "mm"),
          "API 520 sizing equation of the fluids library (its constant is rounded: 0.05 %)", "library"),
    Check("leak-test", "hole that is choked at 4.6962·10⁻⁵ kg/s, mm", CHOKED, 0.5, 0.000005, asked("leak-test", "hole", "mm"),
          "Saint-Venant–Wantzel, choked closed form A·p₀·√(κ/RT)·(2/(κ+1))^((κ+1)/(2(κ−1)))", "limit"),
    Check("leak-test", "its leak at 0 °C, cm³/min", CHOKED, 2179.0 * 1.2929 / 1.29224, 0.5, asked("leak-test", "leak", "cm³/min"),
          "the same: 2179 cm³/min with real dry air of 1.2929 kg/m³, taken to ideal air of 1.29224", "limit"),
]

TRENDS = {
    "doubt": Trend(rises="volume warming_doubt gauge_doubt", falls="time"),
    "mean": Trend(rises="start", falls="end"),
    "mean_20": Trend(rises="start", falls="end"),
    "rate": Trend(rises="start", falls="end"),
    "loss": Trend(rises="start", falls="end"),
    "least_loss": Trend(rises="warming_doubt gauge_doubt room", falls="temperature"),
    "kelvin_pressure": Trend(rises="room", falls="temperature"),
    "kelvin_leak": Trend(rises="volume room", falls="time temperature"),
    "hole": Trend(rises="start volume", falls="end time"),
    "ratio": Trend(rises="room", falls="start"),
    "allowed": Trend(rises="limit seat for_length"),
    "time_to_tell": Trend(
        rises="volume warming_doubt gauge_doubt room",
        falls="limit seat for_length temperature",
    ),
}
