"""Outside numbers for press fits. Those marked library are worked anew in test_press_fit.py."""
from calc.formulas import press_fit as fit
from tests.checks import Check

MM, GPA, MPA = 1e-3, 1e9, 1e6
BVP = "scipy solve_bvp on u″ + u′/r − u/r² = 0 in two rings, joined at equal radial stress"
MIDDLE = ("bore_mm", "joint_mm", "outside_mm", "interference_mm", "inner_GPa", "inner_nu", "outer_GPa", "outer_nu")
RINGS = {  # diameters
    "iron ring in aluminium, thick wall": (31.0, 38.0, 60.0, 0.100, 110, 0.26, 72, 0.33),
    "hard ring in aluminium, thin wall": (33.0, 39.0, 52.0, 0.120, 205, 0.29, 70, 0.33),
    "ring of 37 mm": (30.0, 37.0, 60.0, 0.100, 150, 0.26, 72, 0.33),
    "ring of 33 mm": (27.0, 33.0, 50.0, 0.120, 205, 0.29, 71, 0.33),
}


def ring(name: str, **more) -> dict:
    return dict(zip(MIDDLE, RINGS[name], strict=True)) | more


def pressure(bore_mm, joint_mm, outside_mm, interference_mm, inner_GPa, inner_nu, outer_GPa, outer_nu):
    stiff = fit.joint_compliance(bore_mm * MM, joint_mm * MM, outside_mm * MM, inner_GPa * GPA, inner_nu, outer_GPa * GPA, outer_nu)
    return fit.contact_pressure(interference_mm * MM, joint_mm * MM, stiff) / MPA


def bore_hoop(**r):
    return fit.inner_bore_hoop(pressure(**r), r["bore_mm"], r["joint_mm"])


def joint_hoop(**r):
    return fit.inner_joint_hoop(pressure(**r), r["bore_mm"], r["joint_mm"])


def outer_hoop(**r):
    return fit.outer_joint_hoop(pressure(**r), r["joint_mm"], r["outside_mm"])


def warm_interference(interference_mm, joint_mm, inner_alpha, outer_alpha, rise_K):
    return fit.interference_at(interference_mm, joint_mm, inner_alpha * rise_K, outer_alpha * rise_K)


def warm_pressure(inner_alpha, outer_alpha, rise_K, **r):
    left = warm_interference(r["interference_mm"], r["joint_mm"], inner_alpha, outer_alpha, rise_K)
    return pressure(**r | {"interference_mm": left})


def head_temperature(joint_mm, interference_mm, clearance_mm, outer_alpha, inner_alpha=0.0, ring_C=20.0):
    strain = fit.outer_strain_for_clearance(interference_mm, clearance_mm, joint_mm, fit.free_strain(inner_alpha, ring_C, 20.0))
    return fit.temperature_for(strain, outer_alpha, 20.0)


def yield_pressure(yield_MPa, joint_over_outside):
    return fit.outer_yield_pressure(yield_MPa, joint_over_outside, 1.0)


P, A, B, C = "pressure in the joint, MPa", "hoop stress at the ring's bore, MPa", "hoop stress at the ring's outside, MPa", \
    "hoop stress at the bore of the wall, MPa"
WARM = dict(inner_alpha=11e-6, outer_alpha=21.5e-6, rise_K=180.0)
SOLID = dict(bore_mm=0.0, joint_mm=20.0, outside_mm=1e9, interference_mm=0.02, inner_GPa=200, inner_nu=0.3, outer_GPa=200, outer_nu=0.3)

CHECKS = [
    Check("Press fit", P, ring("iron ring in aluminium, thick wall"), 32.903, 0.0005, pressure, BVP, "library"),
    Check("Press fit", A, ring("iron ring in aluminium, thick wall"), -196.74, 0.005, bore_hoop, BVP, "library"),
    Check("Press fit", B, ring("iron ring in aluminium, thick wall"), -163.83, 0.0051, joint_hoop, BVP, "library"),  # −163.835
    Check("Press fit", C, ring("iron ring in aluminium, thick wall"), 76.98, 0.005, outer_hoop, BVP, "library"),
    Check("Press fit", P, ring("hard ring in aluminium, thin wall"), 36.721, 0.0005, pressure, BVP, "library"),
    Check("Press fit", P, ring("ring of 37 mm"), 40.927, 0.0005, pressure, BVP, "library"),
    Check("Press fit", A, ring("ring of 37 mm"), -238.93, 0.005, bore_hoop, BVP, "library"),
    Check("Press fit", B, ring("ring of 37 mm"), -198.00, 0.005, joint_hoop, BVP, "library"),
    Check("Press fit", C, ring("ring of 37 mm"), 91.155, 0.0005, outer_hoop, BVP, "library"),
    Check("Press fit", P, ring("ring of 33 mm"), 57.092, 0.0005, pressure, BVP, "library"),
    Check("Press fit", A, ring("ring of 33 mm"), -345.41, 0.005, bore_hoop, BVP, "library"),
    Check("Press fit", B, ring("ring of 33 mm"), -288.32, 0.005, joint_hoop, BVP, "library"),
    Check("Press fit", C, ring("ring of 33 mm"), 145.22, 0.005, outer_hoop, BVP, "library"),
    Check("Press fit", "interference left when both are 180 K warmer, mm", dict(interference_mm=0.1, joint_mm=37.0) | WARM,
          0.03007, 0.000005, warm_interference, BVP + ", with free thermal strain", "library"),
    Check("Press fit", "pressure left when both are 180 K warmer, MPa", ring("ring of 37 mm", **WARM),
          12.307, 0.0005, warm_pressure, BVP + ", with free thermal strain", "library"),
    Check("Press fit", "pressure round a solid shaft in an endless wall of one material, MPa", SOLID,
          100.0, 1e-6, pressure, "limit p = E·δ/(4R)", "limit"),
    Check("Shrink fit", "head temperature for 0.05 mm clearance, ring at 20 °C, °C",
          dict(joint_mm=37.0, interference_mm=0.10, clearance_mm=0.05, outer_alpha=21.5e-6),
          208.561, 0.0005, head_temperature, "free growth d·α·ΔT = δ + c", "limit"),
    Check("Shrink fit", "head temperature for 0.05 mm clearance, ring in dry ice, °C",
          dict(joint_mm=37.0, interference_mm=0.10, clearance_mm=0.05, outer_alpha=21.5e-6, inner_alpha=11e-6, ring_C=-78.0),
          158.421, 0.0005, head_temperature, "free growth d·α·ΔT = δ + c, shared by head and ring", "limit"),
    Check("Press fit", "yield pressure in a very thick wall ÷ yield stress", dict(yield_MPa=1.0, joint_over_outside=1e-6),
          3 ** -0.5, 1e-9, yield_pressure, "pure shear at the bore of an endless wall: σ_y/√3 (von Mises)", "limit"),
    Check("Press fit", "yield pressure in a thin wall of t/R = 0.001 ÷ yield stress", dict(yield_MPa=1.0, joint_over_outside=1 / 1.001),
          0.001, 2e-6, yield_pressure, "thin shell: σ_y·t/R", "limit"),
]
