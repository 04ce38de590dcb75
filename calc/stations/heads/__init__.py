"""Heads: seats, guides, valves, springs, chambers, ports and fins."""

TITLE = "Heads"
PURPOSE = "Seats, guides, valves and springs, chambers and ports, leak tests, fins."
CALCULATORS = (
    "guide-fit",
    "seat-fit",
    "seat-shrink",
    "seat-cut",
    "stem-height",
    "valve-spring",
    "chamber-volume",
    "port-section",
    "valve-flow-area",
    "leak-test",
    "fin-cooling",
)
MODULES = {"leak-test": "head_leak"}  # a file called leak_test.py is taken for a test by every tool
VALVES = tuple(
    f"{cylinder} {kind}" for cylinder in (1, 2, 3, 4) for kind in ("intake", "exhaust")
)  # as readings of all are listed
HEADS = ("al-si-t6", "al-si-cu-t6", "grey-iron")  # materials of heads
