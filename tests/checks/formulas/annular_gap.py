"""Outside numbers for the leak along a narrow gap. Those marked library are worked anew in test_annular_gap.py."""
from calc.formulas import annular_gap as gap
from tests.checks import Check

FILM = "scipy quad of the local film c(1 + ε·cos θ) cubed, round the gap"
EXACT = "laminar flow in a concentric annulus, solved exactly (logarithmic profile), the {} taken for d; the narrow gap is {} off"
A = dict(d_mm=16.0, c_um=12.0, L_mm=20.0, mu_Pa_s=0.01, p_MPa=5.0)
B = dict(d_mm=18.0, c_um=6.0, L_mm=25.0, mu_Pa_s=0.03, p_MPa=6.0)


def leak(d_mm, c_um, L_mm, mu_Pa_s, p_MPa, eps=0.0):
    """m³/s times 10⁹: mm³/s."""
    return gap.leak(d_mm * 1e-3, c_um * 1e-6, L_mm * 1e-3, mu_Pa_s, p_MPa * 1e6, eps) * 1e9


def down_time(travel_mm, **case):
    return travel_mm / (gap.sink_speed(leak(**case) * 1e-9, case["d_mm"] * 1e-3) * 1e3)

SERIES = "scipy quad of 1/c³ along each strip and round the gap; closed form for a straight taper agrees"
BELL = dict(d_mm=21.0, near_um=20.0, far_um=45.0, L_mm=18.0, mu_Pa_s=0.012, p_MPa=0.3)


def tapered(d_mm, near_um, far_um, L_mm, mu_Pa_s, p_MPa, eps=0.0):
    """cm³/min; `eps` counts of the narrower clearance."""
    near, far = near_um * 1e-6, far_um * 1e-6
    even = leak(d_mm, gap.alike(near, far) * 1e6, L_mm, mu_Pa_s, p_MPa) * 1e-9
    return even * gap.aside(near, far, eps * min(near, far)) * 60e6


CHECKS = [
    *(Check("Plunger leak", f"leak, plunger {words}, mm³/s", case | dict(eps=eps), value, tolerance, leak, FILM, "library")
      for case, eps, words, value, tolerance in ((A, 0.0, "in the middle", 180.956, 0.0005), (A, 0.5, "half off", 248.814, 0.0005), (A, 1.0, "touching", 452.389, 0.0005),
                                                 (B, 0.0, "in the middle", 8.143, 0.0005), (B, 1.0, "touching", 20.358, 0.0005))),
    Check("Plunger leak", "leak against the exact annulus, mm³/s", A, 180.820, 0.15, leak, EXACT.format("bore", "0.08 %"), "library"),
    Check("Plunger leak", "leak against the exact annulus, mm³/s", B, 8.14572, 0.003, leak, EXACT.format("plunger", "0.03 %"), "library"),
    Check("Plunger leak", "touching over middle", dict(eccentricity=1.0), 2.5, 1e-12, gap.eccentric, "∫(1 + cos θ)³ dθ/2π = 1 + 3/2", "limit"),
    Check("Plunger leak", "time for 0.1 mm, in the middle, s", B | dict(travel_mm=0.1), 3.125, 0.0005, down_time, FILM, "library"),
    Check("Plunger leak", "time for 0.1 mm, touching, s", B | dict(travel_mm=0.1, eps=1.0), 1.25, 0.0005, down_time, FILM, "library"),
    Check("Lifter gallery", "leak of a bell mouth of 20 to 45 µm over 18 mm, cm³/min", BELL, 11.418, 0.0005, tapered, SERIES, "library"),
    Check("Lifter gallery", "the same taken by its mean of 32.5 µm, cm³/min", BELL | dict(near_um=32.5, far_um=32.5), 15.727, 0.0005, tapered, SERIES, "library"),
    Check("Lifter gallery", "even clearance that leaks alike, µm", dict(near_um=20.0, far_um=45.0), 29.21, 0.005, lambda near_um, far_um: gap.alike(near_um * 1e-6, far_um * 1e-6) * 1e6, SERIES, "library"),
    Check("Lifter gallery", "even 30 µm, the lifter 0.8 of it aside, cm³/min", BELL | dict(near_um=30.0, far_um=30.0, eps=0.8), 24.245, 0.0005, tapered, SERIES, "library"),
    Check("Lifter gallery", "even 30 µm, in the middle, cm³/min", BELL | dict(near_um=30.0, far_um=30.0), 12.370, 0.0005, tapered, SERIES, "library"),
    Check("Lifter gallery", "how many times as much 0.8 aside, even gap", dict(near_um=30.0, far_um=30.0, eps=0.8), 1.96, 1e-9, lambda near_um, far_um, eps: gap.aside(near_um * 1e-6, far_um * 1e-6, eps * 30e-6), "1 + 1.5·0.8²", "limit"),
]
