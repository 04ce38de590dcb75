"""Outside numbers for resized big ends, asked of the calculator. Those marked library are worked anew in test_big_end_resize.py."""
from tests.checks import Check, Trend, asked

RAYS = "scipy brentq along rays from the new centre to the two halves of the old oval, minimize_scalar for the farthest"
CASES = {  # along, right, left, rod cut, cap cut, centred: mm
    "round, equal cuts": (56.012, 56.012, 56.012, 0.05, 0.05, "plane"),
    "oval": (56.030, 56.012, 56.010, 0.04, 0.04, "plane"),
    "oval, not cut": (56.030, 56.012, 56.010, 0.0, 0.0, "plane"),
    "leaning, unequal cuts": (56.025, 56.018, 56.003, 0.02, 0.10, "midway"),
    "leaning, off the joint": (56.025, 56.018, 56.003, 0.10, 0.03, "midway"),
}
FOUND = {  # smallest circle that cleans up, mm
    "round, equal cuts": 56.0119107,
    "oval": 56.0046129,
    "oval, not cut": 56.0300525,
    "leaning, unequal cuts": 56.0057219,
    "leaning, off the joint": 56.0056968,
}


def rod(along, right, left, a, b, centred, length=137.0):
    return dict(bores=f"{along}; {right}; {left}", cuts=f"{a}; {b}; {length}", centred=centred)


DEEP = dict(bores="30; 30; 30", cuts="0.5; 0.3; 137", wanted="30 mm", low="29.9 mm", high="30.1 mm")
RESIZED = "rod 137.000 mm, 0.05 mm off each face, re-cut on the new parting plane: the rod's cut shortens, the cap's does not"
CHECKS = [
    *(Check("big-end-resize", f"cleans up all round at, {name}, mm", rod(*CASES[name]), value, 2e-6, asked("big-end-resize", "clean", "mm"), RAYS, "library") for name, value in FOUND.items()),
    Check("big-end-resize", "centre distance after both faces lost 0.05 mm, mm", rod(*CASES["round, equal cuts"]), 136.95, 1e-9, asked("big-end-resize", "shortest", "mm"), RESIZED, "limit"),
    Check("big-end-resize", "centre distance after the cap alone lost 0.05 mm, mm", rod(56, 56, 56, 0, 0.05, "plane"), 137.0, 1e-9, asked("big-end-resize", "shortest", "mm"), RESIZED, "limit"),
    Check("big-end-resize", "stock at the parting line, 30 mm bore, 0.5 and 0.3 mm cut, mm", DEEP, 0.00300030, 1e-7, asked("big-end-resize", "stock_side", "mm"), "R − √(R² − b²) of the arc that is cut least, worked to ten digits", "limit"),
    Check("big-end-resize", "bore along the rod, the same, mm", DEEP, 29.2, 1e-9, asked("big-end-resize", "cut_along", "mm"), "2R − a − b", "limit"),
    Check("big-end-resize", "centre distance lost where nothing is cut, mm", rod(56.03, 56.01, 56.01, 0, 0, "midway"), 0.0, 1e-12, asked("big-end-resize", "lost", "mm"), "no cut, no move", "limit"),
]

TRENDS = {
    "least_stock": Trend(rises="wanted"),
    "stock_rod": Trend(rises="wanted"),
    "stock_cap": Trend(rises="wanted"),
    "stock_side": Trend(rises="wanted"),
    "most_stock": Trend(rises="wanted"),
    "cut_along": Trend(rises="bores.1", falls="cuts.1 cuts.2"),
    "lost": Trend(rises="cuts.1"),
    "shortest": Trend(rises="cuts.3 nominal_length", falls="cuts.1"),
    "longest": Trend(rises="cuts.3 nominal_length", falls="cuts.1"),
}
