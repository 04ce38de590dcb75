"""Crankcases: opened, line-bored, decked, given larger cylinders and new threads, and closed again."""

TITLE = "Crankcase"
PURPOSE = "Saddles in line, end float, faces, larger cylinders, studs, closing."
CALCULATORS = (
    "face-plane",
    "line-bore",
    "deck-cut",
    "spigot-bore",
    "lifter-gallery",
    "stud-preload-hot",
    "end-float",
    "pair-clearance",
)
