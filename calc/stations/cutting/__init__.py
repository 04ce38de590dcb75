"""Cutting: speeds, feeds, bars and grinding wheels."""

TITLE = "Cutting"
PURPOSE = "Speeds and feeds, boring bars, the finish of a bore, grinding wheels."
CALCULATORS = ("wheel-speed", "spindle-speed", "tapping-speed", "boring-finish", "bar-deflection")
