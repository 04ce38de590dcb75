"""Camshafts: measured, reground, timed, and all that moves between lobe and valve."""

TITLE = "Cam"
PURPOSE = "Lobes measured and reground, timing, rockers and pushrods, room to the piston."
CALCULATORS = (
    "lift-table",
    "cam-regrind",
    "valve-timing",
    "cam-phase",
    "mesh-backlash",
    "valve-to-piston",
    "valve-float",
    "rocker-lift",
    "pushrod-length",
    "lash-hot",
)
