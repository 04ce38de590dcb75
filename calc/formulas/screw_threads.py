"""Threads of 60°: what they hold, how far a drill leaves them, and what three wires read over them.

Lengths in m, forces in N, stresses in Pa, shares as ratios; written for floats and traced numbers alike.
"""

from calc.core.working import PI, Value, sqrt

# 1.299: what a thread of 100 % takes off the diameter, over the pitch, in the American handbooks' count
FULL_CUT = 0.75 * sqrt(3)
FULL_HEIGHT = 0.625 * sqrt(3)  # 1.0825: the same down to the basic minor diameter
# Machinery's Handbook for forming taps: 0.0068 per cent of thread; they raise about as much as they push in
FULL_FORMED = 0.68


# what a thread holds

# shear strength over tensile as FED-STD-H28/2B takes it, from memory; tests of most metals lie nearer to 0.6
SHEAR_SHARE = 0.5


def hole_shear_area(pitch: Value, length: Value, bolt_major_least: Value, hole_pitch_most: Value) -> Value:
    """Area that shears when the hole's thread strips, m², both parts at least material (FED-STD-H28/2B,
    2a)."""
    return (
        PI / pitch * length * bolt_major_least * (pitch / 2 + (bolt_major_least - hole_pitch_most) / sqrt(3))
    )


def bolt_shear_area(pitch: Value, length: Value, bolt_pitch_least: Value, hole_minor_most: Value) -> Value:
    """Area that shears when the bolt's thread strips, m², both parts at least material (FED-STD-H28/2B,
    4a)."""
    return (
        PI / pitch * length * hole_minor_most * (pitch / 2 + (bolt_pitch_least - hole_minor_most) / sqrt(3))
    )


# what a drill leaves


def drill_for(nominal: Value, pitch: Value, share: Value, full: Value) -> Value:
    """Drill that leaves a share of thread, m; `full` is one of the constants above."""
    return nominal - full * share * pitch


def share_of_thread(nominal: Value, pitch: Value, drill: Value, full: Value) -> Value:
    """Share of thread that a drill leaves: 0 where the drill is as large as the thread."""
    return (nominal - drill) / (full * pitch)


# three wires


def best_wire(pitch: Value) -> Value:
    """Wire that touches the flanks at the pitch line, m: (P/2)/cos 30°."""
    return pitch / sqrt(3)


def lead_tangent(pitch: Value, pitch_diameter: Value) -> Value:
    """Tangent of the lead angle at the pitch diameter, one start."""
    return pitch / (PI * pitch_diameter)


def wire_factor(lead: Value) -> Value:
    """Wire diameters that the reading is larger by than the sharp grooves' bottoms: 1 + √(4 + 3·tan²λ), 3
    without lead (ASME B1.2)."""
    return 1 + sqrt(4 + 3 * lead**2)


def over_wires(pitch_diameter: Value, pitch: Value, wire: Value, factor: Value) -> Value:
    """Reading over three wires, m."""
    return pitch_diameter + factor * wire - pitch * sqrt(3) / 2


def pitch_diameter_over_wires(reading: Value, pitch: Value, wire: Value, factor: Value) -> Value:
    """The reverse: pitch diameter from the reading, m."""
    return reading - factor * wire + pitch * sqrt(3) / 2
