"""How calculators write what they ask and tell: the forms that more than one of them uses, by name."""

from calc.core.kinds import (
    ANGLE,
    AREA,
    EXPANSION,
    FORCE,
    LENGTH,
    MODULUS,
    RATIO,
    ROTATION,
    ROUGHNESS,
    STRESS,
    TEMPERATURE,
    TEMPERATURE_DIFFERENCE,
    TIME,
    TORQUE,
)
from calc.core.working import form

# lengths, from the finest: a tenth of a micrometre, a micrometre, a hundredth, a tenth of a millimetre
FINE, SIZE, COARSE, ROUGH = form(LENGTH, 4), form(LENGTH, 3), form(LENGTH, 2), form(LENGTH, 1)
SECTION = form(AREA, 2)  # of a bolt or a wire

NEWTON, KILONEWTON = form(FORCE, 0), form(FORCE, 1, "kN", "lbf")
TIGHTENING = form(TORQUE, 1)
MPA, GPA = form(STRESS, 0), form(MODULUS, 0)
CONTACT = form(STRESS, 1)  # pressure in a joint: less than a strength, so finer
RZ = form(ROUGHNESS, 1)

SHARE, FINE_SHARE = form(RATIO, 0, "%", "%"), form(RATIO, 2, "%", "%")
TIMES, ROUGH_TIMES = form(RATIO, 2), form(RATIO, 1)  # one over the other
FRICTION = form(RATIO, 3)
STRAIN = form(RATIO, 5)

DEGREES_C = form(TEMPERATURE, 0)
KELVINS, WHOLE_KELVINS = form(TEMPERATURE_DIFFERENCE, 1), form(TEMPERATURE_DIFFERENCE, 0)
ALPHA = form(EXPANSION, 1)  # growth with heat

DEGREES, TENTHS_OF_DEGREE, FINE_DEGREES = form(ANGLE, 0), form(ANGLE, 1), form(ANGLE, 4)
SECONDS = form(TIME, 1)
TURNS = form(ROTATION, 0)  # a minute
