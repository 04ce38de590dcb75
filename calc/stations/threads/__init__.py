"""Threads: their limits, drills and wires, and what they hold."""

TITLE = "Threads"
PURPOSE = "Limits and drills, wires, length of engagement, inserts, torque, threads in sheet."
CALCULATORS = (
    "thread-limits",
    "tap-drill",
    "engagement",
    "three-wire",
    "insert-install",
    "torque-preload",
    "sheet-insert",
)
