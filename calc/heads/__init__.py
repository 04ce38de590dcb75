"""Heads: seats, guides, valves, springs, chambers, ports and fins."""
TITLE = "Heads"
PURPOSE = "Seats, guides, valves and springs, chambers and ports, leak tests."
CALCULATORS = ("seat-fit", "seat-shrink", "seat-cut", "leak-test")
