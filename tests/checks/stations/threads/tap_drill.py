"""Outside drills and shares of thread, asked of the calculator."""
from tests.checks import Check, Trend, asked

CHART = "bd_warehouse 0.4.0 (PyPI), tap_hole_sizes.csv, soft metal"
HANDBOOK = "Machinery's Handbook, definition of the percentage of thread, from memory"

CHECKS = [
    *(Check("tap-drill", "drill, mm", {"size": size}, expected, 1e-6, asked("tap-drill", "drill", "mm"), CHART, "library")
      for size, expected in (("M3x0.5", 2.5), ("M4x0.7", 3.3), ("M5x0.8", 4.2), ("M6x1", 5.0), ("M8x1.25", 6.8), ("M9x1", 8.0), ("M10x1.5", 8.5), ("M12x1.5", 10.5), ("M14x1.5", 12.5))),
    *(Check("tap-drill", "drill, in", {"size": size, "drills": "inch"}, expected, 1e-6, asked("tap-drill", "drill", "in"), CHART, "library")
      for size, expected in (("1/4-20", 0.201), ("5/16-18", 0.257), ("1/2-13", 27 / 64), ("10-24", 0.1495))),
    Check("tap-drill", "thread that 6.8 mm leaves of M8×1.25", {"own": "6.8 mm"}, 0.73901, 5e-6, asked("tap-drill", "share"), HANDBOOK + "; 1.2 mm over 1.299·P", "handbook"),
    Check("tap-drill", "the same, of the height to the basic bore", {"own": "6.8 mm"}, 0.88681, 5e-6, asked("tap-drill", "share_of_height"), HANDBOOK + "; 1.2 mm over 1.0825·P", "handbook"),
]

TRENDS = {
    "drill": Trend(rises="own", falls="wanted"),
    "share": Trend(rises="wanted", falls="own"),
    "share_of_height": Trend(rises="wanted", falls="own"),
    "bore": Trend(rises="own", falls="wanted"),
}
