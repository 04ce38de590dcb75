"""Limits of threads that stand in tables elsewhere, row by row. All sizes and grades are held against formulas in test_threads.py."""
from calc.reference.standards.drills import INCHES
from calc.reference.standards.threads import INCH, MM, THREADS, external, internal, stress_area
from tests.checks import Check

UN = "screw_thread_lib 0.0.6 (PyPI), ASME_UN_2A2B_dict, copied there from ASME B1.1-2019"
UN_MEMORY = "ASME B1.1, table of limits of size, from memory"
M = "ISO 965-2 / ASME B1.13M, table of limits of size, from memory"
AREAS = "ISO 898-1, table of nominal stress areas, from memory"
DRILLS = "bd_warehouse 0.4.0 (PyPI), drill_sizes.csv"
UN_COPY = "ASME B1.1-2003, table 2, read in a transcription"
_LIMITS = {"6g": external, "1A": external, "2A": external, "3A": external, "6H": internal, "1B": internal, "2B": internal, "3B": internal}


def limit(thread, name, which, end, unit):
    return getattr(getattr(_LIMITS[name](THREADS[thread], name), which), end) / unit


def _rows(source, kind, unit, words, tolerance, *rows):
    for thread, name, which, low, high in rows:
        for end, expected in (("low", low), ("high", high)):
            if expected is not None:
                yield Check("Thread limits", f"{which} diameter {name}, {'least' if end == 'low' else 'most'}, {words}", {"thread": thread}, expected, tolerance,
                            lambda thread, name=name, which=which, end=end: limit(thread, name, which, end, unit), source, kind)


CHECKS = [
    *_rows(UN, "library", INCH, "in", 5e-6,
           ("10-24", "2A", "major", 0.1818, 0.1890), ("10-24", "2A", "pitch", 0.1586, 0.1619), ("10-24", "2B", "minor", 0.145, 0.155), ("10-24", "2B", "pitch", 0.1629, 0.1672),
           ("10-32", "2A", "major", 0.1831, 0.1891), ("10-32", "2A", "pitch", 0.1658, 0.1688), ("10-32", "2B", "minor", 0.156, 0.164), ("10-32", "2B", "pitch", 0.1697, 0.1736),
           ("1/4-20", "2A", "major", 0.2408, 0.2489), ("1/4-20", "2A", "pitch", 0.2127, 0.2164), ("1/4-20", "2A", "minor", None, 0.1948), ("1/4-20", "2B", "minor", 0.196, 0.207),
           ("1/4-20", "2B", "pitch", 0.2175, 0.2224), ("1/4-28", "2A", "major", 0.2425, 0.2490), ("1/4-28", "2A", "pitch", 0.2225, 0.2258), ("1/4-28", "2B", "minor", 0.211, 0.220),
           ("1/4-28", "2B", "pitch", 0.2268, 0.2311), ("1/2-13", "2A", "major", 0.4876, 0.4985), ("1/2-13", "2A", "pitch", 0.4435, 0.4485), ("1/2-13", "2B", "minor", 0.417, 0.434),
           ("1/2-13", "2B", "pitch", 0.4500, 0.4565), ("1/2-20", "2A", "pitch", 0.4619, 0.4662), ("1/2-20", "2B", "pitch", 0.4675, 0.4731), ("3/4-10", "2A", "major", 0.7353, 0.7482),
           ("3/4-10", "2A", "pitch", 0.6773, 0.6832), ("3/4-10", "2B", "pitch", 0.6850, 0.6927), ("3/4-16", "2A", "pitch", 0.7029, 0.7079), ("3/4-16", "2B", "minor", 0.682, 0.696),
           ("1-8", "2A", "major", 0.9830, 0.9980), ("1-8", "2A", "pitch", 0.9101, 0.9168), ("1-8", "2B", "minor", 0.865, 0.890), ("1-8", "2B", "pitch", 0.9188, 0.9276),
           ("1-12", "2A", "pitch", 0.9382, 0.9441), ("1-12", "2B", "pitch", 0.9459, 0.9535)),
    *_rows(UN_MEMORY, "standard", INCH, "in", 5e-6,
           ("3/8-16", "2A", "pitch", 0.3287, 0.3331), ("3/8-16", "2A", "major", 0.3643, 0.3737), ("3/8-16", "2B", "pitch", 0.3344, 0.3401), ("5/16-18", "2A", "pitch", 0.2712, 0.2752),
           ("5/16-18", "2A", "major", 0.3026, 0.3113), ("5/16-18", "2B", "pitch", 0.2764, 0.2817), ("1/4-20", "3B", "minor", 0.1960, 0.2067), ("1/4-20", "3A", "pitch", 0.2147, 0.2175)),
    *_rows(UN_MEMORY, "standard", INCH, "in", 5e-6,
           ("1/4-20", "1A", "major", 0.2367, 0.2489), ("1/4-20", "1A", "pitch", 0.2108, 0.2164), ("1/4-20", "1B", "pitch", 0.2175, 0.2248), ("1/2-13", "1A", "major", 0.4822, 0.4985),
           ("1/2-13", "1A", "pitch", 0.4411, 0.4485), ("3/8-16", "1A", "major", 0.3595, 0.3737), ("1-8", "1A", "major", 0.9755, 0.9980),
           ("4-40", "2B", "minor", 0.0849, 0.0939), ("6-32", "2B", "minor", 0.104, 0.114), ("10-24", "3B", "minor", 0.1450, 0.1555), ("10-32", "3B", "minor", 0.1560, 0.1641),
           ("1/4-28", "3B", "minor", 0.2110, 0.2190), ("5/16-18", "3B", "minor", 0.2520, 0.2630), ("5/16-24", "3B", "minor", 0.2670, 0.2754), ("3/8-16", "3B", "minor", 0.3070, 0.3182),
           ("3/8-24", "3B", "minor", 0.3300, 0.3372), ("7/16-14", "3B", "minor", 0.3600, 0.3717), ("7/16-20", "3B", "minor", 0.3830, 0.3916), ("1/2-13", "3B", "minor", 0.4170, 0.4284),
           ("1/2-20", "3B", "minor", 0.4460, 0.4537), ("9/16-12", "3B", "minor", 0.4720, 0.4843), ("9/16-18", "3B", "minor", 0.5020, 0.5106), ("3/4-10", "3B", "minor", 0.6420, 0.6545),
           ("7/8-9", "3B", "minor", 0.7550, 0.7681), ("1-8", "3B", "minor", 0.8650, 0.8797), ("1-12", "3B", "minor", 0.9100, 0.9198)),
    *_rows(UN_COPY, "standard", INCH, "in", 5e-6,
           ("5/8-11", "2A", "major", 0.6113, 0.6234), ("5/8-11", "2A", "pitch", None, 0.5644), ("5/8-11", "2B", "minor", 0.527, 0.546), ("5/8-11", "3B", "minor", 0.5270, 0.5391), ("5/8-11", "1A", "major", 0.6052, 0.6234),
           ("5/8-18", "2B", "minor", 0.565, 0.578), ("5/8-18", "3B", "minor", 0.5650, 0.5730), ("5/8-18", "2A", "major", 0.6149, 0.6236), ("5/8-18", "1A", "major", 0.6105, 0.6236)),
    *_rows(M, "standard", MM, "mm", 5e-5,
           ("M6x1", "6H", "pitch", 5.350, 5.500), ("M6x1", "6H", "minor", 4.917, 5.153), ("M6x1", "6g", "major", 5.794, 5.974), ("M6x1", "6g", "pitch", 5.212, 5.324),
           ("M8x1.25", "6H", "pitch", 7.188, 7.348), ("M8x1.25", "6H", "minor", 6.647, 6.912), ("M8x1.25", "6g", "major", 7.760, 7.972), ("M8x1.25", "6g", "pitch", 7.042, 7.160),
           ("M10x1.5", "6H", "pitch", 9.026, 9.206), ("M10x1.5", "6H", "minor", 8.376, 8.676), ("M10x1.5", "6g", "major", 9.732, 9.968), ("M10x1.5", "6g", "pitch", 8.862, 8.994),
           ("M12x1.75", "6H", "pitch", 10.863, 11.063), ("M12x1.75", "6H", "minor", 10.106, 10.441), ("M12x1.75", "6g", "major", 11.701, 11.966), ("M12x1.75", "6g", "pitch", 10.679, 10.829),
           ("M14x1.5", "6H", "pitch", 13.026, 13.216), ("M14x1.5", "6H", "minor", 12.376, 12.676), ("M14x1.5", "6g", "pitch", 12.854, 12.994), ("M14x1.5", "6g", "major", 13.732, 13.968),
           ("M9x1", "6H", "minor", 7.917, 8.153), ("M9x1.25", "6H", "pitch", 8.188, 8.348), ("M10x1.25", "6H", "pitch", 9.188, 9.348), ("M10x1.25", "6H", "minor", 8.647, 8.912),
           ("M10x1", "6H", "pitch", 9.350, 9.500), ("M11x1.5", "6H", "minor", 9.376, 9.676), ("M12x1.5", "6H", "pitch", 11.026, 11.216), ("M12x1.25", "6H", "pitch", 11.188, 11.368),
           ("M12x1", "6H", "pitch", 11.350, 11.510), ("M14x2", "6H", "pitch", 12.701, 12.913), ("M14x2", "6H", "minor", 11.835, 12.210), ("M14x2", "6g", "major", 13.682, 13.962),
           ("M3x0.5", "6g", "major", 2.874, 2.980), ("M3x0.5", "6g", "pitch", 2.580, 2.655), ("M4x0.7", "6g", "major", 3.838, 3.978), ("M4x0.7", "6g", "pitch", 3.433, 3.523),
           ("M5x0.8", "6g", "major", 4.826, 4.976), ("M5x0.8", "6g", "pitch", 4.361, 4.456), ("M6x0.75", "6g", "pitch", 5.391, 5.491), ("M7x1", "6g", "major", 6.794, 6.974),
           ("M8x1", "6g", "pitch", 7.212, 7.324), ("M9x1", "6g", "pitch", 8.212, 8.324), ("M9x1.25", "6g", "pitch", 8.042, 8.160), ("M10x1.25", "6g", "pitch", 9.042, 9.160)),
    *(Check("Tensile stress area", "A_s, mm²", {"thread": thread}, area, 0.05 if area < 100 else 0.5, lambda thread: stress_area(THREADS[thread]) * 1e6, AREAS, "standard")
      for thread, area in (("M6x1", 20.1), ("M8x1.25", 36.6), ("M10x1.5", 58.0), ("M12x1.75", 84.3), ("M14x1.5", 125), ("M10x1.25", 61.2), ("M12x1.5", 88.1))),
    *(Check("Tensile stress area", "A_s, in²", {"thread": thread}, area, 6e-5, lambda thread: stress_area(THREADS[thread]) / INCH ** 2, "ASME B1.1, table of stress areas, from memory", "standard")
      for thread, area in (("1/4-20", 0.0318), ("3/8-16", 0.0775), ("1/2-13", 0.1419))),
    *(Check("Drills", f"drill {name}, in", {"name": name}, size, 0.00051, lambda name: next(d.size for d in INCHES if d.name == name) / INCH, DRILLS, "library")
      for name, size in (("#7", 0.201), ("#1", 0.228), ("#10", 0.193), ("#29", 0.136), ("#36", 0.1065), ("#60", 0.04), ("A", 0.234), ("F", 0.257), ("I", 0.272), ("Q", 0.332), ("U", 0.368), ("Z", 0.413))),
]
