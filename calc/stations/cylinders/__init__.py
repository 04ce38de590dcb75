"""Cylinders and pistons: bored, honed, paired, their rings and gaps, deck and compression."""

TITLE = "Cylinders"
PURPOSE = "Bores, pistons, pins and rings, deck and compression, leak-down."
CALCULATORS = (
    "cylinder-bore",
    "hone-angle",
    "ring-gap",
    "set-pairing",
    "deck-height",
    "compression",
    "cylinder-leak-down",
)
