"""What a bolt of a class bears at least, and the share of it at which it yields."""

from calc.reference.standards.threads import Thread

BOLTS = {
    "4.6": "4.6",
    "8.8": "8.8",
    "10.9": "10.9",
    "12.9": "12.9",
    "g2": "SAE grade 2",
    "g5": "SAE grade 5",
    "g8": "SAE grade 8",
}
# R_m least, Pa, and yield as a share of it: ISO 898-1; SAE J429, 74, 120 and 150 ksi.
STRENGTHS = {
    "4.6": (400e6, 0.6),
    "8.8": (800e6, 0.8),
    "10.9": (1040e6, 0.9),
    "12.9": (1220e6, 0.9),
    "g2": (510e6, 0.77),
    "g5": (827e6, 0.77),
    "g8": (1034e6, 0.87),
}
# The same over a diameter, m: ISO 898-1 over 16 mm; SAE J429 over 3/4 in, 60 ksi.
LARGER = {"8.8": (0.016, 830e6, 660 / 830), "g2": (0.01905, 414e6, 0.6)}


def strength_of(bolt_class: str, thread: Thread) -> tuple[float, float]:
    """Least tensile strength, Pa, and yield as a share of it."""
    over, *larger = LARGER.get(bolt_class, (float("inf"), *STRENGTHS[bolt_class]))
    strength, yields = larger if thread.d > over + 1e-9 else STRENGTHS[bolt_class]
    return strength, yields
