"""Outside numbers for chambers, asked of the calculator. Those marked library are worked anew in test_chamber_volume.py."""
from tests.checks import Check, Trend, asked

OPEN = dict(low="20 cm³", high="200 cm³", most_cut="5 mm")
STEP = OPEN | dict(mouth="90 mm", cut="0.5 mm", readings="60 cm³")
WATER = "water of 998.207 kg/m³ at 20 °C and 995.649 at 30 °C (CRC Handbook, from memory)"
ETHANOL = "ethanol of 789.3 kg/m³ at 20 °C and 780.8 at 30 °C (CRC Handbook, from memory)"

CHECKS = [
    Check("chamber-volume", "volume that 0.50 mm off a step of 90 mm takes, cm³", STEP, 3.1809, 0.00005, asked("chamber-volume", "taken", "cm³"), "π/4·90²·0.5 mm³, straight wall", "limit"),
    Check("chamber-volume", "60 cm³ after that cut, cm³", STEP, 60 - 3.1809, 0.00005, asked("chamber-volume", "smallest", "cm³"), "π/4·90²·0.5 mm³, straight wall", "limit"),
    Check("chamber-volume", "cut that takes 3.1809 cm³ off a mouth of 90 mm, mm", OPEN | dict(mouth="90 mm", readings="63.1809 cm³", wanted="60 cm³"), 0.5, 0.00001, asked("chamber-volume", "cut_wanted", "mm"),
          "the reverse of that cut", "limit"),
    Check("chamber-volume", "chamber filled with 56 cm³ of water that warmed from 20 to 30 °C, cm³", dict(readings="56 cm³", warming="10 K", liquid="water"), 56 * 998.207 / 995.649, 0.005,
          asked("chamber-volume", "largest", "cm³"), WATER, "handbook"),
    Check("chamber-volume", "chamber filled with 56 cm³ of spirit that warmed from 20 to 30 °C, cm³", OPEN | dict(readings="56 cm³", warming="10 K", liquid="spirit"), 56 * 789.3 / 780.8, 0.01,
          asked("chamber-volume", "largest", "cm³"), ETHANOL, "handbook"),
    Check("chamber-volume", "chamber of 70.00 cm³, as read with a mouth whose area is 50 cm², after a cut of 1 mm, cm³", OPEN | dict(readings="70 cm³", mouth_area="50 cm²", cut="1 mm"), 65.0, 1e-9,
          asked("chamber-volume", "smallest", "cm³"), "50 cm² × 0.1 cm", "limit"),
]

TRENDS = {
    "smallest": Trend(rises="readings warming", falls="cut mouth mouth_area"),
    "largest": Trend(rises="readings warming", falls="cut mouth mouth_area"),
    "mean": Trend(rises="readings warming", falls="cut mouth mouth_area"),
    "taken": Trend(rises="cut mouth mouth_area"),
    "tenth": Trend(rises="mouth mouth_area"),
    "grind": Trend(rises="cut wanted"),
    "cut_wanted": Trend(rises="readings warming", falls="wanted mouth mouth_area"),
    "cut_most": Trend(rises="readings warming", falls="low mouth mouth_area"),
    "kelvin": Trend(rises="readings", falls="cut"),
    "film": Trend(rises="mouth mouth_area"),
}
