"""What pulls at a rod's cap, and how its bolts give.

SI units. The crank turns evenly, the rod's mass is split onto its two bores as a balance shows it (which
keeps mass and centre of mass, and is exact at the dead centres).
"""

from calc.core.working import PI, Value


def pin_acceleration(throw: Value, speed: Value) -> Value:
    """Acceleration of the crankpin towards the crank's middle, rω², m/s²; `speed` in turns a second."""
    return throw * (2 * PI * speed) ** 2


def top_acceleration(pin_acceleration: Value, throw: Value, rod_length: Value) -> Value:
    """Acceleration of the piston at top dead centre, towards the crank: rω²(1 + r/l), exact there. r < l."""
    return pin_acceleration * (1 + throw / rod_length)


def joint_pull(
    reciprocating: Value, turning: Value, piston_acceleration: Value, pin_acceleration: Value
) -> Value:
    """Force across the joint of the big end at top dead centre without gas, N.

    It holds back all that hangs on the rod's side of the joint: piston and small end, and the big end without
    its cap. The cap is driven by the journal that it lies on, and does not load its own bolts.
    """
    return reciprocating * piston_acceleration + turning * pin_acceleration


def bolt_give(
    shank_length: Value, shank_area: Value, thread_length: Value, thread_area: Value, modulus: Value
) -> Value:
    """Stretch for a unit of force, m/N: shank and free thread as springs in series."""
    return (shank_length / shank_area + thread_length / thread_area) / modulus


# × d: lengths that stand for a hexagon's head and for the thread inside the nut (VDI 2230-1, from memory)
HEAD, IN_NUT = (0.5, 0.5)


def ends_give(diameter: Value, nominal_area: Value, core_area: Value, modulus: Value) -> Value:
    """What a micrometer over the bolt's ends reads besides, m/N: the head, as a stub of the bolt's diameter,
    and the core within the nut.

    Half a diameter stands for each. The nut's own give is not in it: it moves along the bolt and lengthens
    nothing between the ends.
    """
    return (HEAD * diameter / nominal_area + IN_NUT * diameter / core_area) / modulus
