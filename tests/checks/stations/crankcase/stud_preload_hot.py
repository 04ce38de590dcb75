"""Outside numbers for a stud's hot preload, asked of the calculator. Those marked library are worked anew in test_stud_preload_hot.py."""
from tests.checks import Check, Trend, asked

BARS = "numpy: bars assembled node by node with thermal loads, growth and stiffness as the materials' table gives them"
COLD = dict(stud_temperature="20 °C", cylinder_temperature="20 °C", head_temperature="20 °C", case_temperature="20 °C", stud_warming="20 °C", frost="20 °C")
CASE_STUD = dict(cylinder="0 mm", head="0 mm", case="120 mm", case_section="900 mm²", shank="12 mm", thread="M12x1.75", thread_length="10 mm")
CHECKS = [
    Check("stud-preload-hot", "preload running, kN", {}, 21.89521, 5e-5, asked("stud-preload-hot", "running", "kN"), BARS, "library"),
    Check("stud-preload-hot", "preload on the first warm-up, kN", {}, 25.22618, 5e-5, asked("stud-preload-hot", "warming", "kN"), BARS, "library"),
    Check("stud-preload-hot", "preload at −20 °C, kN", {}, 11.67417, 5e-5, asked("stud-preload-hot", "frozen", "kN"), BARS, "library"),
    Check("stud-preload-hot", "through stud of a magnesium case, running, kN", CASE_STUD, 24.00742, 5e-5, asked("stud-preload-hot", "running", "kN"), BARS, "library"),
    Check("stud-preload-hot", "preload where all is at 20 °C, kN", COLD, 13.0, 1e-9, asked("stud-preload-hot", "running", "kN"), "nothing grows", "limit"),
    Check("stud-preload-hot", "heat adds nothing where all is at 20 °C, kN", COLD, 0.0, 1e-9, asked("stud-preload-hot", "change", "kN"), "nothing grows", "limit"),
    Check("stud-preload-hot", "worst where friction is known and all is at 20 °C, kN", COLD | dict(spread="0 %"), 13.0, 1e-9, asked("stud-preload-hot", "worst", "kN"), "no band, no heat", "limit"),
]

TRENDS = {
    "running": Trend(rises="preload cylinder_temperature head_temperature case_temperature cylinder_section head_section case_section", falls="stud_temperature"),
    "worst": Trend(rises="preload cylinder_temperature head_temperature case_temperature band spread", falls="stud_warming"),
    "slackest": Trend(rises="preload", falls="spread"),
    "warming": Trend(rises="preload cylinder_temperature head_temperature case_temperature", falls="stud_warming"),
    "frozen": Trend(rises="preload"),
    "change": Trend(rises="cylinder_temperature head_temperature case_temperature", falls="stud_temperature"),
    "stud_rate": Trend(rises="shank", falls="cylinder head case"),
    "joint_rate": Trend(rises="cylinder_section head_section case_section", falls="cylinder head case"),
    "grip": Trend(rises="cylinder head case"),
    "used": Trend(rises="preload cylinder_temperature head_temperature case_temperature"),
    "stress": Trend(rises="preload cylinder_temperature head_temperature case_temperature"),
    "serves_from": Trend(rises="gas"),
    "serves_to": Trend(rises="pull", falls="cylinder_temperature head_temperature case_temperature band"),
}
