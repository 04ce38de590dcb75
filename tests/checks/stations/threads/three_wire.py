"""Outside readings over wires, asked of the calculator."""
from tests.checks import Check, Trend, asked

WIRES = "Machinery's Handbook, best wire P/√3, from memory"
LEAD = "Machinery's Handbook, helix correction ½·W·tan²λ·cos 30°·cot 30°, from memory"

CHECKS = [
    *(Check("three-wire", "best wire, mm", {"size": size, "wire": wire, "reading": reading}, expected, 5e-6, asked("three-wire", "best", "mm"), WIRES, "handbook")
      for size, wire, reading, expected in (("M10x1.5", "0.866 mm", "10.23 mm", 0.86603), ("M6x1", "0.577 mm", "6.15 mm", 0.57735))),
    Check("three-wire", "pitch diameter of M10×1.5, mm", {"reading": "10.2310 mm", "wire": "0.86603 mm"}, 8.93013, 1e-5, asked("three-wire", "pitch_diameter", "mm"),
          "Machinery's Handbook, M − 3W + 0.86603·P less the helix correction, from memory", "handbook"),
    Check("three-wire", "taken off for the lead of M10×1.5, µm", {}, 1.816, 0.01, asked("three-wire", "lead", "µm"), LEAD, "handbook"),
]

TRENDS = {
    "pitch_diameter": Trend(rises="reading", falls="wire"),
    "low": Trend(rises="wire"),
    "high": Trend(rises="wire"),
    "lead": Trend(rises="wire"),
}
