"""Outside numbers for a lifter bore at its gallery, asked of the calculator. Those marked library are worked anew in test_lifter_gallery.py."""
from tests.checks import Check, Trend, asked

SERIES = "scipy quad of 1/c³ along each strip and round the gap"
EVEN = dict(gallery="21.020 mm", cam_end="21.020 mm", tube_end="21.020 mm", lifter="20.980 mm", cam_length="18 mm", tube_length="18 mm")
CHECKS = [
    Check("lifter-gallery", "leak to the pushrod's side, lifter 0.8 aside, cm³/min", dict(), 3.80382, 5e-5, asked("lifter-gallery", "to_tube", "cm³/min"), SERIES, "library"),
    Check("lifter-gallery", "leak to the cam's side, lifter in the middle, cm³/min", dict(eccentricity="0"), 2.24517, 5e-5, asked("lifter-gallery", "to_cam", "cm³/min"), SERIES, "library"),
    Check("lifter-gallery", "an even bore leaks alike to the mean clearance, mm", EVEN, 0.04, 1e-9, asked("lifter-gallery", "alike_tube", "mm"), "no taper", "limit"),
    Check("lifter-gallery", "times as much where it touches an even bore", EVEN | dict(eccentricity="1"), 2.5, 1e-9, asked("lifter-gallery", "aside"), "1 + 1.5·1²", "limit"),
    Check("lifter-gallery", "times as much in the middle", EVEN | dict(eccentricity="0"), 1.0, 1e-12, asked("lifter-gallery", "aside"), "no offset", "limit"),
]

TRENDS = {
    "clearance": Trend(rises="gallery", falls="lifter"),
    "alike_cam": Trend(rises="gallery cam_end", falls="lifter"),
    "alike_tube": Trend(rises="gallery tube_end", falls="lifter"),
    "to_cam": Trend(rises="pressure eccentricity", falls="cam_length"),
    "to_tube": Trend(rises="pressure eccentricity", falls="tube_length"),
    "leak": Trend(rises="pressure eccentricity", falls="cam_length tube_length"),
    "every": Trend(rises="pressure eccentricity bores", falls="cam_length tube_length"),
    "share": Trend(rises="pressure eccentricity bores", falls="cam_length tube_length pump"),
    "aside": Trend(rises="eccentricity"),
    "viscosity": Trend(falls="oil_temperature", rises="density"),
}
