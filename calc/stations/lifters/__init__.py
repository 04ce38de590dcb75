"""Lifters: from solid to hydraulic, the plunger's leak and travel, its oil, the ring that keeps it in."""

TITLE = "Lifters"
PURPOSE = "From solid to hydraulic: bore, plunger, oil hole, snap ring, travel."
CALCULATORS = ("lifter-bore", "oil-hole", "ring-groove", "plunger-leak", "plunger-travel")
BODIES = ("forged-steel", "bearing-steel", "ductile-iron", "grey-iron")  # materials of lifter bodies
