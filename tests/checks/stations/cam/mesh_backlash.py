"""Outside numbers for the backlash of the cam's gears. Those marked library are worked anew in test_mesh_backlash.py."""
from tests.checks import Check, Trend, asked

TRIANGLES = "similar triangles: reading × 74/92"
INVOLUTE = "exact involute: thickness of both teeth on the working circle, numpy"
LEVER = dict(how="dial", readings="0.21 mm | 0.24 mm | 0.27 mm | 0.25 mm", dial_radius="92 mm", radius="74 mm")


def spur(beyond):
    """Spur pair 18/41 of module 3, 20°, without play at its standard distance, the centres so many mm beyond it."""
    return dict(how="distance", distance=f"{88.5 + beyond} mm", drawn="88.5 mm", aim="0", low="0", helix="0", pressure="20", code="0")


CHECKS = [
    Check("mesh-backlash", "mean on the pitch circle, mm", LEVER, 0.1951, 5e-5, asked("mesh-backlash", "mean", "mm"), TRIANGLES, "limit"),
    Check("mesh-backlash", "it differs by, mm", LEVER, 0.04826, 5e-6, asked("mesh-backlash", "differs", "mm"), TRIANGLES, "limit"),
    Check("mesh-backlash", "play, centres 0.15 mm beyond standard, mm", spur(0.15), 0.11007, 5e-6, asked("mesh-backlash", "mean", "mm"), INVOLUTE, "library"),
    Check("mesh-backlash", "the same by 2·Δa·tan α, mm", spur(0.15) | dict(step="0.15 mm"), 0.10919, 5e-6, asked("mesh-backlash", "each", "mm"), "rule 2·Δa·tan α", "limit"),
]

TRENDS = {
    "least": Trend(rises="readings radius distance aim", falls="dial_radius drawn"),
    "most": Trend(rises="readings radius distance aim", falls="dial_radius drawn"),
    "mean": Trend(rises="readings radius distance aim", falls="dial_radius drawn"),
    "each": Trend(rises="step pressure helix"),
}
