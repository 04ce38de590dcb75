"""Outside numbers for clearances by a plastic strip, asked of the calculator. Those marked library are worked anew in test_strip_clearance.py."""
from tests.checks import Check, Trend, asked

BOTH = dict(widest="1.45 mm", narrowest="1.25 mm")
CHECKS = [
    Check("strip-clearance", "clearance that a strip 1.57 mm wide shows, mm", {}, 0.045092, 5e-7, asked("strip-clearance", "read", "mm"), "numpy.interp of 1/clearance over the width", "library"),
    Check("strip-clearance", "the same of a strip that keeps its section, mm", {}, 0.045, 1e-4, asked("strip-clearance", "read", "mm"), "section of a strip 0.30 mm thick over 1.57 mm", "limit"),
    Check("strip-clearance", "taper, 1.45 mm at one end and 1.25 mm at the other, mm", BOTH, 0.0078, 2e-4, asked("strip-clearance", "taper", "mm"), "constant section: 0.0487 and 0.0565 mm", "limit"),
]

TRENDS = {
    "read": Trend(falls="widest"),
    "sizes": Trend(falls="widest rod_opens"),
    "loose": Trend(falls="narrowest rod_opens"),
    "taper": Trend(falls="narrowest"),
}
