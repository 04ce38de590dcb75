"""Outside numbers for the length of pushrods. Those marked library are worked anew in test_pushrod_length.py."""
from tests.checks import Check, Trend, asked

CHAIN = "chain of lengths along the pushrod: case −, cylinder shim +, head −, base circle's radius +"
# a stand raised counts more than its shim: the tip stays below, the rocker turns, and its cup rises by shim ÷ ratio beside
STAND = "the chain, and 0.50 mm + 0.50 mm × 36/40 for the stand"
CLOSED = "scipy brentq on the closed loop of the linkage of rocker-lift"
ARM = "arm at ±10° of square and a mean of 5°, sines and cosines"


def changed(**more):
    return dict(how="changed", fitted="270 mm", ratio="1.1111111", travel="0.5 mm") | more


ALL = changed(case_cut="0.30 mm", shims="0.25 mm", head_cut="0.40 mm", base="0.43 mm", stand="0.50 mm")
# contact shut and at full lift of an arm of 40 mm at 15° and −5°: 40·cos; its lift 40·(sin 15° + sin 5°)
LEANING = dict(how="checked", rods="270 mm; 8.637033 mm; 9.847788 mm", lift="13.839 mm", arm="40 mm", ratio="1.1", fitted="270 mm")
CHECKS = [
    Check("pushrod-length", "longer after case 0.30, shim 0.25, head 0.40, base circle 0.43, stand 0.50, mm", ALL, 0.93, 1e-6, asked("pushrod-length", "longer", "mm"), STAND, "limit"),
    Check("pushrod-length", "the stand as it was, base circle 0.83, mm", ALL | dict(stand="0 mm", base="0.83 mm"), 0.38, 1e-9, asked("pushrod-length", "longer", "mm"), CHAIN, "limit"),
    Check("pushrod-length", "longer, stand raised 0.50 mm by itself, the arm's turning counted, mm", changed(stand="0.50 mm"), 0.9522, 5e-3, asked("pushrod-length", "longer", "mm"), CLOSED, "library"),
    Check("pushrod-length", "longer, base circle's radius less 0.50 mm, mm", changed(base="0.50 mm"), 0.49996, 1e-4, asked("pushrod-length", "longer", "mm"), CLOSED, "library"),
    Check("pushrod-length", "longer, stem's tip 0.60 mm higher: by the rule, mm", changed(tip="0.60 mm"), -0.54, 1e-6, asked("pushrod-length", "longer", "mm"), "rise × 36/40", "limit"),
    Check("pushrod-length", "the same, the arm's turning counted, mm", changed(tip="0.60 mm"), -0.5438, 5e-3, asked("pushrod-length", "longer", "mm"), CLOSED, "library"),
    Check("pushrod-length", "shaft higher, arm at 15° shut and −5° open, mm", LEANING, 3.43327, 1e-4, asked("pushrod-length", "up", "mm"), ARM, "limit"),
]

TRENDS = {
    "length": Trend(rises="rods.1 shims base stand press", falls="case_cut head_cut tip"),
}
