"""Outside numbers for thread inserts, asked of the calculator."""
from tests.checks import Check, Trend, asked

STI = "ASME B18.29.2M and DIN 8140-2, geometry of the tapped hole, from memory"
LIBRARY = "screw_thread_lib 0.0.6 (PyPI), ASn_min_FEDSTD_2a with its own ASME B1.1-2019 sizes"


def holes(thread, *row):
    for words, output, value in zip(("minor", "pitch", "major"), ("minor", "pitch_diameter", "major"), row):
        yield Check("insert-install", f"{words} diameter of the hole for a wire insert, mm", {"thread": thread}, value, 6e-4, asked("insert-install", output, "mm"), STI, "standard")


def solid(outside, inside, diameter, pitch):
    """Half an inch of whole threads on a solid insert; the pitch of its half-formed ends comes on top."""
    return {"thread": inside, "kind": "key", "outside": outside, "length": repr((0.5 + pitch) / diameter)}


CHECKS = [
    *holes("M8x1.25", 8.2706, 8.8119, 9.6238), *holes("M6x1", 6.2165, 6.6495, 7.2990),
    *(Check("insert-install", "drill for a wire insert, mm", {"thread": thread}, value, 0.05, asked("insert-install", "drill", "mm"),
            "insert makers' tables of drills, as they generally stand, from memory", "handbook") for thread, value in (("M6x1", 6.3), ("M8x1.25", 8.3), ("M10x1.5", 10.4), ("M12x1.75", 12.5))),
    Check("insert-install", "area that shears round a solid insert of ½-13 outside, in²", solid("1/2-13", "5/16-18", 5 / 16, 1 / 13), 0.56174, 1e-5,
          asked("insert-install", "area", "in²"), LIBRARY, "library"),
    Check("insert-install", "area that shears round a solid insert of M10×1.5 outside, mm²", {"thread": "M6x1", "kind": "solid", "outside": "M10x1.5", "length": "2.75"}, 322.2, 0.1,
          asked("insert-install", "area", "mm²"), "FED-STD-H28/2B, formula 2a, worked by hand with ISO 965-1's 6H/6g: 15 mm whole", "standard"),
    Check("insert-install", "height of a 118° point of a 10.4 mm drill, mm", {"metal": "40 mm", "lead": "2", "length": "2"}, 40 - (0.75 + 20 + 1.5) - 3 - 5.2 * 0.600861, 1e-4,
          asked("insert-install", "left", "mm"), "cot 59° = 0.600861; depths added by hand", "limit"),
]

TRENDS = {
    "pull": Trend(rises="length", falls="temperature"),
    "safety": Trend(rises="length", falls="preload slip hot hot_force temperature"),
    "force": Trend(rises="preload slip hot hot_force"),
    "setting": Trend(rises="under"),
    "tapped": Trend(rises="length metal under"),
    "drilled": Trend(rises="length metal under lead"),
    "left": Trend(rises="metal", falls="length under lead"),
    "area": Trend(rises="length"),
}
