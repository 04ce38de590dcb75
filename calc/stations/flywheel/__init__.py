"""Flywheels: what may be taken off, at which speed that still holds, ring gear and clutch face."""

TITLE = "Flywheel"
PURPOSE = "Lightening, and the speed that a section bears."
CALCULATORS = ("lighten", "spin-stress")
