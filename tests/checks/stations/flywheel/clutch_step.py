"""Outside numbers for a clutch's step, asked of the calculator. Those marked library are worked anew in test_clutch_step.py."""
from tests.checks import Check, Trend, asked

ENERGY = "scipy 1.17.1: strain energy of the coned disc integrated and differentiated"
SUM = "sum of forces; the pressure plate follows the friction face by the cut"
LINING = "scipy 1.17.1: quad over the lining"
LIMITS = dict(low="9.95 mm", high="10.05 mm", thickness="18 mm", thinnest="16.5 mm", lies="below", lining_outside="200 mm", lining_inside="136 mm", friction="0.35")
DISC = LIMITS | dict(steps="10.40 | 10.40 | 10.40", cover="diaphragm", clamp="", outside="215 mm", inside="170 mm", thick="2.6 mm", cone="4.5 mm", flattened="4.6 mm")
COILS = LIMITS | dict(steps="10.40 | 10.40 | 10.40", cover="coils", springs="9", rate="24.0 N/mm", load="620 N")
AS_NEW = DISC | dict(steps="10.00 | 10.00 | 10.00", clamp="4300 N")


def _of(entries, what, output, expected, tolerance, unit, source, kind="library"):
    return Check("clutch-step", what, entries, expected, tolerance, asked("clutch-step", output, unit), source, kind)


CHECKS = [
    # the closed form's two series are rounded to one constant: within 1 % of the energy
    _of(DISC, "clamp load of a coned disc 215/170 mm, 2.6 mm thick, 4.5 mm free, pressed flat by 4.6 mm, N", "before", 4301, 43, "N", ENERGY),
    _of(DISC, "the same opened by 0.4 mm, N", "after", 4491, 45, "N", ENERGY),
    _of(DISC, "change of its clamp load, %", "change", 4.415, 0.05, "%", ENERGY),
    _of(COILS, "clamp load of nine coil springs of 620 N, N", "before", 5580, 1e-6, "N", SUM, "limit"),
    _of(COILS, "the same, of 24.0 N/mm, friction face cut by 0.40 mm and the cover's not, N", "after", 5493.6, 1e-6, "N", SUM, "limit"),
    _of(COILS, "change of the clamp load, the same, %", "change", -1.5484, 5e-5, "%", SUM, "limit"),
    _of(COILS, "cut off the cover's face, the same, mm", "cut_cover", 0.4, 1e-9, "mm", SUM, "limit"),
    _of(AS_NEW, "mean radius of a lining 200/136 mm, even wear, mm", "radius", 84.0, 1e-9, "mm", LINING),
    _of(AS_NEW, "torque of two faces, 4300 N, friction 0.35, N·m", "torque", 252.84, 5e-3, "N·m", LINING),
]

TRENDS = {
    "step": Trend(rises="steps"),
    "left": Trend(rises="thickness"),
    "before": Trend(rises="springs load clamp"),
    "radius": Trend(rises="lining_outside lining_inside"),
    "torque": Trend(rises="friction lining_outside lining_inside"),
}
