"""Outside areas and forces of threads, asked of the calculator."""
from tests.checks import Check, Trend, asked

UN = "screw_thread_lib 0.0.6 (PyPI), formulas of FED-STD-H28/2B with sizes of ASME B1.1-2019"
AREAS = "ISO 898-1, table of nominal stress areas, from memory"
LOADS = "ISO 898-1, table of least breaking forces, rounded down to three figures, from memory"

CHECKS = [
    *(Check("engagement", f"{what}, in²", {"size": size, "length": "0.5 in"}, expected, tolerance, asked("engagement", output, "in²"), UN, "library")
      for size, output, what, expected, tolerance in (("1/4-20", "hole_area", "shear area of the hole", 0.26949, 5.1e-6), ("1/4-20", "bolt_area", "shear area of the bolt", 0.18398, 5.1e-6),
                                                      ("1/4-20", "stress_area", "stress area", 0.031821, 5.1e-7), ("1/2-13", "hole_area", "shear area of the hole", 0.56174, 5.1e-6),
                                                      ("1/2-13", "bolt_area", "shear area of the bolt", 0.38947, 5.1e-6), ("1/2-13", "stress_area", "stress area", 0.1419, 5.1e-5))),
    Check("engagement", "stress area of M12×1.75, mm²", {"size": "M12x1.75"}, 84.3, 0.05, asked("engagement", "stress_area", "mm²"), AREAS, "standard"),
    *(Check("engagement", "force that breaks the bolt, kN", {"size": size, "bolt_class": grade}, expected, 0.1, asked("engagement", "bolt_breaks", "kN"), LOADS, "standard")
      for size, grade, expected in (("M8x1.25", "8.8", 29.2), ("M6x1", "10.9", 20.9), ("M10x1.5", "10.9", 60.3))),
]

TRENDS = {
    "hole_strips": Trend(rises="length parent_strength shear"),
    "bolt_breaks": Trend(rises="bolt_strength"),
    "wanted": Trend(rises="bolt_strength strongest", falls="parent_strength shear"),
    "bolt_strips": Trend(rises="length bolt_strength shear"),
    "hole_area": Trend(rises="length"),
    "bolt_area": Trend(rises="length"),
    "used": Trend(rises="length parent_strength shear", falls="bolt_strength"),
    "strong": Trend(rises="bolt_strength strongest"),
}
