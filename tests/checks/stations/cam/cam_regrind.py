"""Outside numbers for a lobe that is ground smaller. Those marked library are worked anew in test_cam_regrind.py."""
import math

from calc.formulas import flat_foot
from tests.checks import Check, Trend, asked

SYMPY = "sympy derivatives of the law; the envelope of the lifter's face, drawn as points, agrees"
DEFINITION = "lift is heel to nose less the base circle's diameter, heel concentric"
INSIDE = "the two lobes drawn as points round one axis: largest circle that nowhere leaves the worn outline (scipy)"


def least_radius(law, lift_mm, rise_deg, radius_mm):
    flank = math.radians(rise_deg)
    return flat_foot.radius_at(law, radius_mm, lift_mm, flank, flat_foot.sharpest(law, flank))


def foot(law, lift_mm, rise_deg, **_):
    return 2 * flat_foot.off_axis(law, lift_mm, math.radians(rise_deg), flat_foot.steepest(law))


def off(**lobe):
    return foot(**lobe) / 2


LOBES = (
    (dict(law="harmonic", lift_mm=8.2, rise_deg=80.0, radius_mm=15.0), 2.4438, 9.225, 18.45),
    (dict(law="cycloid", lift_mm=6.4, rise_deg=85.0, radius_mm=17.5), 5.0173, 8.6281, 17.256),
    (dict(law="cycloid", lift_mm=8.2, rise_deg=72.0, radius_mm=15.0), -10.199, 13.051, 26.101),
)
READ = dict(nose="37.66 mm", heel="29.46 mm")
GROUND = dict(how="ground", nose="36.81 mm", other="36.79 mm", heel="28.60 mm", base_made="29.46 mm", lift_made="8.20 mm", ratio="1.1")
# the heel sound, the nose worn by 0.24: the circle hangs on the nose; the heel worn by 0.20 all round, the nose by less: on the heel
NOSE_WORN = dict(nose="37.96 mm", heel="30.00 mm", new_lift="8.20 mm", pit="0.05 mm", stock="0.10 mm", base_made="30.00 mm", lift_made="8.20 mm")
HEEL_WORN = dict(nose="37.95 mm", heel="29.60 mm", new_lift="8.20 mm", stock="0.10 mm", base_made="30.00 mm", lift_made="8.20 mm")


def at(name, unit="mm"):
    return asked("cam-regrind", name, unit)


CHECKS = [
    *(
        check
        for lobe, radius, away, face in LOBES
        for words in (f"{lobe['law']}, lift {lobe['lift_mm']} mm in {lobe['rise_deg']:g}°, base circle's radius {lobe['radius_mm']:g} mm",)
        for check in (
            Check("cam-regrind", f"least radius under a flat foot, {words}, mm", lobe, radius, 6e-4, least_radius, SYMPY, "library"),
            Check("cam-regrind", f"contact off the axis, {words}, mm", lobe, away, 6e-4, off, SYMPY, "library"),
            Check("cam-regrind", f"foot across, {words}, mm", lobe, face, 6e-4, foot, SYMPY, "library"),
        )
    ),
    Check("cam-regrind", "lift, 37.66 heel to nose, 29.46 across the heel, mm", READ, 8.20, 1e-9, at("read"), DEFINITION, "limit"),
    Check("cam-regrind", "made up, base circle from 29.46 to 28.60, mm", GROUND, 0.43, 1e-9, at("make_up"), DEFINITION, "limit"),
    Check("cam-regrind", "lash that it opens at the valve, ratio 1.1, mm", GROUND, 0.473, 1e-9, at("lash"), DEFINITION, "limit"),
    Check("cam-regrind", "largest base circle, nose worn and pitted, mm", NOSE_WORN, 29.22, 1e-4, at("base"), INSIDE, "library"),
    Check("cam-regrind", "largest base circle, heel worn, mm", HEEL_WORN, 29.40, 1e-4, at("base"), INSIDE, "library"),
    Check("cam-regrind", "off the nose since new, nose worn and pitted, mm", NOSE_WORN, 0.39, 1e-4, at("nose_off"), INSIDE, "library"),
]

TRENDS = {
    "base": Trend(rises="nose", falls="new_lift pit stock"),
    "make_up": Trend(rises="base_made pit stock new_lift", falls="nose"),
    "lash": Trend(rises="base_made pit stock new_lift", falls="nose"),
    "read": Trend(rises="nose", falls="heel"),
    "heel_off": Trend(rises="base_made pit stock new_lift", falls="nose"),
    "nose_off": Trend(rises="base_made lift_made pit stock", falls="nose"),
    "more": Trend(falls="lift_made"),
}
