"""Measuring: is this number right? Readings, doubts, limits, and the trade's arithmetic."""

TITLE = "Measuring"
PURPOSE = "Is this number right? Doubt and limits, warm readings, round and straight, fits, sums of sizes."
CALCULATORS = (
    "reading-verdict",
    "gauge-uncertainty",
    "size-at-20",
    "round-and-taper",
    "stack-up",
    "iso-fit",
    "sine-bar",
    "bolt-circle",
    "taper",
    "units",
)
