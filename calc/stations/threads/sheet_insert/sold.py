"""Threads, screws, nuts and sheets as they are sold."""

SHEETS = {
    "steel": ("Steel sheet, soft", 300),
    "aluminium": ("Aluminium sheet, half hard", 220),
    "stainless": ("Stainless sheet", 550),
}  # tensile, MPa: typical, from memory
MACHINE = ("M3x0.5", "M4x0.7", "M5x0.8", "M6x1", "M8x1.25", "M10x1.5")
SCREWS = {  # ISO 1478: outside, core, pitch, mm; from memory
    "ST2.9": (2.90, 2.18, 1.1),
    "ST3.5": (3.53, 2.64, 1.3),
    "ST4.2": (4.22, 3.10, 1.4),
    "ST4.8": (4.80, 3.58, 1.6),
    "ST5.5": (5.46, 4.17, 1.8),
    "ST6.3": (6.25, 4.88, 1.8),
}
# Usual ones, mm, from memory: hole of a rivet nut; hole of a clinch nut and the least sheet for it.
NUTS = {
    "M3x0.5": (5.0, 4.25, 1.0),
    "M4x0.7": (6.0, 5.4, 1.0),
    "M5x0.8": (7.0, 6.4, 1.0),
    "M6x1": (9.0, 8.75, 1.4),
    "M8x1.25": (11.0, 10.5, 1.4),
    "M10x1.5": (13.0, 14.0, 2.3),
}
