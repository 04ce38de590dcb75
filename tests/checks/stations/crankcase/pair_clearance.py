"""Outside numbers for any shaft in any bore, asked of the calculator. Those marked library are worked anew in test_pair_clearance.py."""
from tests.checks import Check, Trend, asked

SAME = dict(bore_metal="forged-steel", shaft_metal="forged-steel", bore_temperature="120 °C", shaft_temperature="120 °C")
HOLE, SHAFT = dict(bore="25.021 mm", bore_most="25.021 mm"), dict(shaft="24.980 mm", shaft_least="24.959 mm")
CHECKS = [
    Check("pair-clearance", "clearance of one metal at one heat over that at 20 °C", SAME, 1.0 + 11.7e-6 * (1 + 4.5e-4 * 100) / (1 + 4.5e-4 * 80) * 100, 1e-9,
          lambda **x: asked("pair-clearance", "running", "mm")(**x) / asked("pair-clearance", "tight", "mm")(**x), "all lengths grow alike: 1 + α·ΔT", "limit"),
    Check("pair-clearance", "most clearance of 25 H7/f7, mm", HOLE | SHAFT, 0.062, 1e-9, asked("pair-clearance", "loose", "mm"), "ISO 286-1, from memory: 25 H7 is +0.021, f7 is −0.020 to −0.041", "standard"),
    Check("pair-clearance", "running clearance, magnesium bore and steel shaft at 100 °C, mm", {}, 0.0686695, 5e-7, asked("pair-clearance", "running", "mm"), "integral of the local coefficients of expansion from 20 °C, by scipy quad", "library"),
]

TRENDS = {
    "tight": Trend(rises="bore", falls="shaft"),
    "loose": Trend(rises="bore bore_most", falls="shaft shaft_least"),
    "running": Trend(rises="bore bore_temperature", falls="shaft shaft_temperature"),
    "running_loose": Trend(rises="bore bore_most bore_temperature", falls="shaft shaft_least shaft_temperature"),
    "change": Trend(rises="bore_temperature", falls="shaft_temperature"),
    "share": Trend(rises="bore", falls="shaft"),
}
