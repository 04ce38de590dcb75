"""Crankshafts: measured, ground, given a longer stroke, and the bearings they run in."""

TITLE = "Crank"
PURPOSE = "Journals ground, shells and clearance, crush, bow, a longer stroke."
CALCULATORS = (
    "shaft-bow",
    "throw-index",
    "regrind",
    "offset-grind",
    "bearing-clearance",
    "strip-clearance",
    "shell-crush",
)
