"""Threads: their limits, drills and wires, and what they hold."""
TITLE = "Threads"
PURPOSE = "Limits and drills, wires, length of engagement."
CALCULATORS = ("thread-limits", "tap-drill", "engagement", "three-wire")
