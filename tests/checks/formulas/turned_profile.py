"""Outside numbers for the profile that a round-nosed edge leaves; worked anew in tests/formulas/test_turned_profile.py."""
import math

from calc.formulas.turned_profile import profile
from tests.checks import Check

ENVELOPE = "numpy 2.4.6: lowest of the tool's edges over neighbouring passes, 200 001 points"


def height(feed_mm, nose_mm, end_edge_deg):
    return 1e6 * profile(feed_mm / 1e3, nose_mm / 1e3, math.radians(end_edge_deg)).height


def mean(feed_mm, nose_mm, end_edge_deg):
    return 1e6 * profile(feed_mm / 1e3, nose_mm / 1e3, math.radians(end_edge_deg)).mean


ARC, EDGE = dict(feed_mm=0.1, nose_mm=0.4, end_edge_deg=10), dict(feed_mm=0.3, nose_mm=0.4, end_edge_deg=5)
FINE = dict(feed_mm=0.004, nose_mm=0.8, end_edge_deg=10)
SUBJECT = "Profile of a turned face"
CHECKS = [
    Check(SUBJECT, "peak to valley, arc alone, µm", ARC, 3.137, 5e-4, height, ENVELOPE, "library"),
    Check(SUBJECT, "Ra, arc alone, µm", ARC, 0.8044, 5e-5, mean, ENVELOPE, "library"),
    Check(SUBJECT, "peak to valley, the end edge cuts too, µm", EDGE, 15.17, 5e-3, height, ENVELOPE, "library"),
    Check(SUBJECT, "Ra, the end edge cuts too, µm", EDGE, 4.120, 5e-4, mean, ENVELOPE, "library"),
    Check(SUBJECT, "peak to valley of a fine feed, f²/(8·r), µm", FINE, 0.0025, 1e-7, height, "limit of small feeds: a parabola", "limit"),
    Check(SUBJECT, "Ra of a fine feed, f²/(18·√3·r), µm", FINE, 0.004**2 / (18 * math.sqrt(3) * 0.8) * 1e3, 1e-7, mean, "limit of small feeds: Ra of a parabola, 1/(18·√3) = 1/31.18", "limit"),
]
