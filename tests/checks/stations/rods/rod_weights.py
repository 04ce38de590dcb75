"""Outside numbers for end weights, asked of the calculator. Those marked library are worked anew in test_rod_weights.py."""
from tests.checks import Check, Trend, asked

BEAM = "numpy linalg.solve: reactions of a beam on two supports, with point masses taken off at the pads"
SETS = {  # big, small of rod 1 and 2, centre distance, pads beyond the centres, mm -> off the big end's pad, off the small end's pad of rod 1, g
    "both ends": ((403.0, 161.5, 400.0, 160.0, 137.0, 42.0, 18.0), (2.497462, 2.002538)),
    "big end only": ((406.0, 160.0, 400.0, 160.0, 130.0, 40.0, 20.0), (4.736842, 1.263158)),
    "long pads": ((404.0, 166.0, 400.0, 160.0, 120.0, 60.0, 40.0), (4.0, 6.0)),
}


def pair(b1, s1, b2, s2, L, eb, es):
    return dict(weights=f"{b1}; {s1} | {b2}; {s2}", centre_distance=f"{L} mm", beyond_big=f"{eb} mm", beyond_small=f"{es} mm", most_big="100 g", most_small="100 g")


EQUAL = dict(weights="400; 160 | 400; 160 | 400; 160 | 400; 160")
CHECKS = [
    *(Check("rod-weights", f"off the {words} pad, g", pair(*given), value, 1e-5, asked("rod-weights", output, "g"), BEAM, "library")
      for given, values in SETS.values() for value, output, words in zip(values, ("off_big", "off_small"), ("big end's", "small end's"), strict=True)),
    Check("rod-weights", "off the big end's pad of equal rods, g", EQUAL, 0.0, 1e-12, asked("rod-weights", "off_big", "g"), "equal rods lose nothing", "limit"),
    Check("rod-weights", "off a pad that lies at the bore's centre, g", pair(403, 160, 400, 160, 137, 0, 0), 3.0, 1e-9, asked("rod-weights", "off_big", "g"), "no lever: what the end is over", "limit"),
]

TRENDS = {
    "off_big": Trend(rises="beyond_small", falls="beyond_big"),
    "off_small": Trend(rises="beyond_big", falls="beyond_small"),
}
