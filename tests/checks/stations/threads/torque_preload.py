"""Outside numbers for torque and preload, asked of the calculator."""
from tests.checks import Check, Trend, asked

VDI = "VDI 2230-1, table A1, 8.8, µ = 0.12, from memory"
EXACT = "mechanics of the wedge with the lead angle and the flank's, worked exactly"
M8, M10 = dict(thread="M8x1.25", bearing="10.3 mm"), dict(thread="M10x1.5", bearing="12.8 mm")


def rod(preload, thread, bearing, mu_g, mu_k):
    return dict(known="preload", wanted=preload, thread=thread, bearing=bearing, thread_friction=mu_g, head_friction=mu_k)


ROD, STUD = rod("22 kN", "M9x1", "11.75 mm", "0.12", "0.12"), rod("17 kN", "M8x1.25", "10.3 mm", "0.14", "0.10")

CHECKS = [
    Check("torque-preload", "preload at 90 % of yield, M8, kN", M8, 18.6, 0.05, asked("torque-preload", "most", "kN"), VDI, "standard"),
    Check("torque-preload", "preload at 90 % of yield, M10, kN", M10, 29.6, 0.05, asked("torque-preload", "most", "kN"), VDI, "standard"),
    Check("torque-preload", "torque at 90 % of yield, M8, N·m", M8, 24.6, 0.15, asked("torque-preload", "torque_most", "N·m"), VDI + " (with its rounded 0.16 and 0.58)", "standard"),
    Check("torque-preload", "torque at 90 % of yield, M10, N·m", M10, 48.0, 0.5, asked("torque-preload", "torque_most", "N·m"), VDI, "standard"),
    Check("torque-preload", "torque for 22 kN, M9×1, N·m", ROD, 31.732, 0.002, asked("torque-preload", "torque", "N·m"), "ISO 16047 worked by hand", "standard"),
    Check("torque-preload", "torque for 17 kN, M8, N·m", STUD, 22.008, 0.002, asked("torque-preload", "torque", "N·m"), "ISO 16047 worked by hand", "standard"),
    Check("torque-preload", "the same, M9×1, N·m", ROD, 31.825, 0.15, asked("torque-preload", "torque", "N·m"), EXACT, "limit"),
    Check("torque-preload", "the same, M8, N·m", STUD, 22.134, 0.15, asked("torque-preload", "torque", "N·m"), EXACT, "limit"),
]

TRENDS = {
    "preload": Trend(rises="torque wanted", falls="thread_friction head_friction nut_factor bearing"),
    "torque": Trend(rises="torque wanted thread_friction head_friction nut_factor bearing"),
    "low": Trend(rises="torque wanted", falls="thread_friction head_friction nut_factor bearing spread"),
    "high": Trend(rises="torque wanted spread"),
    "hot": Trend(rises="torque wanted spread hot hot_force"),
    "stress": Trend(rises="torque wanted"),
    "used": Trend(rises="torque wanted", falls="yields"),
    "used_high": Trend(rises="torque wanted spread hot hot_force", falls="yields"),
    "most": Trend(rises="yields", falls="thread_friction nut_factor"),
    "torque_most": Trend(rises="head_friction yields"),
    "nut_factor": Trend(rises="thread_friction head_friction nut_factor bearing"),
    "lost": Trend(rises="thread_friction head_friction"),
}
