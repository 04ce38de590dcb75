"""What is told of a set of rods that was weighed end for end."""

from calc.core.kinds import MASS
from calc.core.working import form
from calc.declare.calculator import Output, Outputs

GRAMS = form(MASS, 1)


class Out(Outputs):
    off_big = Output("Most to take off a big end's pad", "m_b", GRAMS, main=True)
    off_small = Output("Most to take off a small end's pad", "m_s", GRAMS, main=True)
    spread_big = Output("Big ends apart, now", "Δ_b", GRAMS)
    spread_small = Output("Small ends apart, now", "Δ_s", GRAMS)
    spread_whole = Output("Whole rods apart, now", "Δ_w", GRAMS)
    big_after = Output("Big ends apart, then", "Δ_b1", GRAMS)
    small_after = Output("Small ends apart, then", "Δ_s1", GRAMS)
    whole_after = Output("Whole rods apart, then", "Δ_w1", GRAMS)
    lightest = Output("Lightest rod, then", "W_1", GRAMS)
