"""Outside numbers for ring gaps, asked of the calculator. Those marked library are worked anew in test_ring_gap.py."""
from tests.checks import Check, Trend, asked

COLD = dict(rings="0.38; 1.984; 2.040", bore="88.010 mm", largest="", smallest="")
IRON = COLD | dict(bore_running="170 °C", ring_running="220 °C", bore_expansion="11 µm/(m·K)", ring_expansion="11.5 µm/(m·K)")
WORN = IRON | dict(largest="88.090 mm")
WANTED = IRON | dict(bore="92.000 mm", bore_running="180 °C", ring_running="240 °C", ring_expansion="12 µm/(m·K)", spare="0.10 mm")
CIRCLES = "lengths of both circles, exact products"

CHECKS = [
    Check("ring-gap", "gap left of 0.38 mm, iron bore 170 °C, ring 220 °C, mm", IRON, 0.20115, 5e-6, asked("ring-gap", "hot", "mm"), CIRCLES, "limit"),
    Check("ring-gap", "gap that just closes there, mm", IRON, 0.17931, 5e-6, asked("ring-gap", "closes", "mm"), CIRCLES, "limit"),
    Check("ring-gap", "the same ring in an aluminium bore, mm", IRON | dict(bore_expansion="21 µm/(m·K)"), 0.61589, 5e-6, asked("ring-gap", "hot", "mm"), CIRCLES, "limit"),
    Check("ring-gap", "gap where the bore is worn to 88.090 mm, mm", WORN, 0.63133, 5e-6, asked("ring-gap", "top", "mm"), "circumference: π times the wear", "limit"),
    Check("ring-gap", "cold gap that leaves 0.10 mm, 92 mm bore 180 °C, ring 240 °C, mm", WANTED, 0.35341, 5e-6, asked("ring-gap", "wanted", "mm"), "scipy brentq on the gap hot", "library"),
    Check("ring-gap", "that in thousandths of the bore", WANTED, 3.8414, 5e-5, asked("ring-gap", "share", "‰"), "scipy brentq on the gap hot", "library"),
    Check("ring-gap", "gap where all stays at 20 °C, mm", IRON | dict(bore_running="20 °C", ring_running="20 °C"), 0.38, 1e-9, asked("ring-gap", "hot", "mm"), "nothing grows", "limit"),
]

TRENDS = {
    "hot": Trend(rises="rings.1 bore_running", falls="ring_running"),
    "gap": Trend(rises="rings.1"),
    "top": Trend(rises="rings.1"),
    "closes": Trend(rises="ring_running", falls="bore_running"),
    "wanted": Trend(rises="spare ring_running", falls="bore_running"),
    "share": Trend(rises="spare ring_running", falls="bore_running"),
}
