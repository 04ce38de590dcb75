"""Outside numbers for grinding a crank, asked of the calculator. Those marked library are worked anew in test_regrind.py."""
from tests.checks import Check, Trend, asked

INSCRIBED = "scipy linprog: largest circle within the worn outline, 7200 points, its centre held or free"
EXACT = "exact fractions, undersizes tried one by one"


def alike(main, pin=(51.990, 51.990, 51.990, 51.990)):
    """All mains of these four readings, all rod journals of those."""
    def text(four):
        return "; ".join(f"{x:.6f}" for x in four)
    return dict(mains=" | ".join([text(main)] * 3), pins=" | ".join([text(pin)] * 4))


ONE_SIDED = alike((54.940, 55.000, 54.940, 55.000)) | dict(main_unworn="55.000 mm", bow="0 mm")  # r = 27.5 − 0.060·max(0, cos t)² mm
OVAL = alike((54.990,) * 4, (51.978, 52.008, 51.978, 52.008)) | dict(wear="even")
THREE = dict(mains="54.961; 54.972; 54.958; 54.970 | 54.949; 54.965; 54.951; 54.966 | 54.969; 54.974; 54.966; 54.972", main_unworn="54.985 mm", bow="0.03 mm")
CHECKS = [
    Check("regrind", "worn 0.060 mm on one side: largest circle about the old axis, mm", ONE_SIDED, 54.88, 1e-6, asked("regrind", "main_clean", "mm"), INSCRIBED, "library"),
    Check("regrind", "the same, where the axis may move: the smallest reading, mm", ONE_SIDED | dict(wear="even"), 54.94, 1e-6, asked("regrind", "main_clean", "mm"), INSCRIBED, "library"),
    Check("regrind", "an oval of 52.008 by 51.978 mm about its own axis, mm", OVAL, 51.978, 1e-9, asked("regrind", "pin_clean", "mm"), "an ellipse's inscribed circle is its short axis", "limit"),
    Check("regrind", "three mains with 0.03 mm of bow clean up at, mm", THREE, 54.883, 1e-9, asked("regrind", "main_clean", "mm"), EXACT, "limit"),
    Check("regrind", "their undersize, mm", THREE, 0.25, 1e-9, asked("regrind", "main_undersize", "mm"), EXACT, "limit"),
    Check("regrind", "finished, least, mm", THREE, 54.735, 1e-9, asked("regrind", "main_low", "mm"), EXACT, "limit"),
    Check("regrind", "finished, most, mm", THREE, 54.750, 1e-9, asked("regrind", "main_high", "mm"), EXACT, "limit"),
    Check("regrind", "least stock a side, to the middle, mm", THREE, 0.07025, 1e-9, asked("regrind", "main_stock", "mm"), EXACT, "limit"),
    Check("regrind", "shell thicker by, mm", THREE, 0.125, 1e-9, asked("regrind", "main_shell", "mm"), "half the undersize: the journal is smaller on both sides", "limit"),
]

TRENDS = {
    "main_clean": Trend(falls="bow main_unworn"),
    "pin_clean": Trend(falls="pin_unworn"),
    "depth": Trend(rises="bow"),
}
