"""Outside numbers for line boring, asked of the calculator. Those marked library are worked anew in test_line_bore.py."""
import math

from tests.checks import Check, Trend, asked

POINTS = "numpy: farthest of 14 400 points of the bore from the bar"
LINPROG = "scipy linprog: the line of least largest deviation"
ARCS = "numpy: points of both arcs after the cut; the corner at the split lies √(R² − f²) from the new centre"
TRIED = "exact fractions: the sizes tried one by one"
INVOLUTE = "numpy: tooth thickness of both gears on the working circle, exact involute"
ZERO = "0; 0; 0 | 70; 0; 0 | 140; 0; 0"


def saddles(along, across, x=0.0, y=0.0, bar="read", **more):
    """Three saddles alike."""
    bores = " | ".join([f"{along}; {across}"] * 3)
    line = " | ".join(f"{z}; {x}; {y}" for z in (0, 70, 140))
    return dict(bores=bores, line=line, bar=bar, **more)


OFF_THE_BAR = saddles(65.021, 65.034, 0.012, 0.018)
BENT = dict(bores="65.01; 65.01 | 65.01; 65.01 | 65.01; 65.01", line="0; 0; 0 | 70; 0.030; 0 | 140; 0.006; 0")
CUT = saddles(65.015, 65.015, cut_right="0.05 mm", cut_left="0.05 mm")
THREE = dict(bores="65.412; 65.412 | 65.455; 65.455 | 65.438; 65.438", line=ZERO)
STANDING = 87 / math.cos(math.radians(22))  # mm between the axes of gears with 29 and 58 teeth, module 2, helix 22°
# centres and bores of four unlike saddles, mm
UNLIKE = ((0, 90, 187, 291), ((0.0, 0.0), (0.021, -0.014), (-0.006, 0.018), (0.004, 0.001)), ((65.012, 65.008), (65.041, 65.020), (65.030, 65.033), (65.010, 65.010)))
UNLIKE_READ = dict(
    bores=" | ".join(f"{a}; {c}" for a, c in UNLIKE[2]), line=" | ".join(f"{z}; {x}; {y}" for z, (x, y) in zip(*UNLIKE[:2]))
)
GEARS = saddles(65.05, 65.05, 0.05, 0.0, cam_distance=f"{STANDING!r} mm", helix="22°", pressure="20°")

CHECKS = [
    Check("line-bore", "cleans up at, oval and off the bar both ways, mm", OFF_THE_BAR, 65.07455, 1e-5, asked("line-bore", "clean", "mm"), POINTS, "library"),
    Check("line-bore", "best line: largest deviation, mm", BENT, 0.0135, 1e-6, asked("line-bore", "off_along", "mm"), LINPROG, "library"),
    Check("line-bore", "bar through the end saddles: deviation of the middle, mm", BENT, 0.027, 1e-6, asked("line-bore", "ends_off", "mm"), "the middle's 0.030 less half of 0.006", "limit"),
    Check("line-bore", "clean-up gained by the best line, mm", BENT, 0.027, 1e-6, asked("line-bore", "gained", "mm"), LINPROG, "library"),
    Check("line-bore", "least size at which four unlike saddles clean up, mm", UNLIKE_READ, 65.06018, 2e-5, asked("line-bore", "clean", "mm"), "scipy linprog: bar and radius, 1440 places of each saddle", "library"),
    Check("line-bore", "across the split, both faces cut 0.050 mm, mm", CUT, 64.915, 1e-9, asked("line-bore", "narrow", "mm"), ARCS, "limit"),
    Check("line-bore", "cleans up at about the new split, mm", CUT, 65.0149, 5e-5, asked("line-bore", "clean", "mm"), ARCS, "library"),
    Check("line-bore", "next oversize, mm", THREE, 0.5, 1e-9, asked("line-bore", "oversize", "mm"), TRIED, "library"),
    Check("line-bore", "finish to, least, mm", THREE, 65.5, 1e-9, asked("line-bore", "low", "mm"), TRIED, "library"),
    Check("line-bore", "finish to, most, mm", THREE, 65.519, 1e-9, asked("line-bore", "high", "mm"), TRIED, "library"),
    Check("line-bore", "stock a side, worst saddle, mm", THREE, 0.02725, 1e-7, asked("line-bore", "stock_worst", "mm"), TRIED, "library"),
    Check("line-bore", "stock a side, best saddle, mm", THREE, 0.04875, 1e-7, asked("line-bore", "stock_best", "mm"), TRIED, "library"),
    Check("line-bore", "backlash gained by 0.05 mm, transverse, µm", GEARS, 39.34, 0.005, asked("line-bore", "backlash_more", "µm"), INVOLUTE, "library"),
    Check("line-bore", "the same by the rule 2·Δa·tan α_t, µm", GEARS, 39.26, 0.005, asked("line-bore", "backlash_rule", "µm"), "2·0.05 mm·tan 20°/cos 22°", "limit"),
    Check("line-bore", "the same normal to the flank, µm", GEARS, 34.28, 0.005, asked("line-bore", "backlash_normal", "µm"), INVOLUTE, "library"),
]

TRENDS = {
    "clean": Trend(rises="bores.1 bores.2"),
    "narrow": Trend(rises="bores.2", falls="cut_right cut_left"),
    "high": Trend(rises="high"),
    "distance": Trend(rises="cam_distance"),
    "angle": Trend(rises="pressure helix"),
}
