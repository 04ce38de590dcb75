"""Outside numbers for the finish that a feed leaves, asked of the calculator; the profile's own are in tests/checks/formulas/turned_profile.py."""
from tests.checks import Check, Trend, asked
from tests.checks.formulas.turned_profile import ENVELOPE

EDGE = dict(feed="0.3 mm", nose="0.4 mm", end_edge="5°", wanted="6.3 µm")
CHECKS = [
    Check("boring-finish", "Ra at 0.3 mm, nose 0.4 mm, end edge 5°, µm", EDGE, 4.120, 5e-4, asked("boring-finish", "mean", "µm"), ENVELOPE, "library"),
    Check("boring-finish", "the same, peak to valley, µm", EDGE, 15.17, 5e-3, asked("boring-finish", "height", "µm"), ENVELOPE, "library"),
    Check("boring-finish", "feed for Ra 0.10 µm with a nose of 1.6 mm, mm", dict(feed="0.05 mm", nose="1.6 mm", end_edge="30°", wanted="0.10 µm"), 0.07064, 2e-5, asked("boring-finish", "most", "mm"), "√(18·√3·r·Ra), limit of small feeds", "limit"),
]

TRENDS = {
    "mean": Trend(rises="feed", falls="nose"),
    "height": Trend(rises="feed", falls="nose"),
    "most": Trend(rises="wanted nose"),
}
