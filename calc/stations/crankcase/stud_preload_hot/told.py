"""What comes out: the preload hot, at its worst and at its least, and the cold preload that serves."""

from calc.core.kinds import STIFFNESS
from calc.core.working import form
from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import KILONEWTON, MPA, ROUGH, SHARE

RATE = form(STIFFNESS, 0)


class Out(Outputs):
    running = Output("Preload running", "F_h", KILONEWTON, main=True)
    worst = Output("Preload at its worst: hot, slippery thread", "F_w", KILONEWTON, main=True)
    slackest = Output("Preload at its least: rough thread", "F_l", KILONEWTON, main=True)
    warming = Output("Preload on the first warm-up", "F_1", KILONEWTON)
    frozen = Output("Preload in frost", "F_f", KILONEWTON)
    change = Output("Heat adds, running", "ΔF_h", KILONEWTON)
    stud_rate = Output("Stiffness of the stud", "k_b", RATE)
    joint_rate = Output("Stiffness of what it clamps", "k_c", RATE)
    grip = Output("Length that is clamped", "L", ROUGH)
    stress = Output("Stress at its worst", "σ_w", MPA)
    used = Output("Share of yield used at its worst", "U", SHARE)
    serves_from = Output("Cold preload that serves, least", "F_from", KILONEWTON)
    serves_to = Output("Cold preload that serves, most", "F_to", KILONEWTON)
