"""Flywheels: what may be taken off, at which speed that still holds, ring gear and clutch face; balancing."""

TITLE = "Flywheel"
PURPOSE = "Lightening, the speed that a section bears, ring gear, clutch step, balancing."
CALCULATORS = (
    "lighten",
    "spin-stress",
    "ring-gear-shrink",
    "clutch-step",
    "balance",
    "balance-trial",
    "balance-two-plane",
)
