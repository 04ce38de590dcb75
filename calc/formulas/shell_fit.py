"""Bearing shells that are held by their crush: two halves that stand a little proud of the joint, pressed
into a housing that gives.

Each half reaches past the joint by `proud` when its other end is flush, so the closed pair is 2a too long
round its outside, and would be 2a/π too large across it: that is the interference of two elastic rings
(Lamé, plane stress; see `press_fit`). Wall and bore are those of a steel shell; the lining is too thin to
count. A housing is no ring: its weakest section is taken for all of it, which makes it give a little more
than it does.

Lengths in m, all of them diameters but wall and `proud`; stresses in Pa; strains pure, from 20 °C.
"""

from calc.core.working import PI, Value
from calc.formulas import press_fit as fit


def interference(proud: Value) -> Value:
    """Diametral interference of a pair whose halves each stand `proud` of one joint: 2a/π."""
    return 2 * proud / PI


def mean_hoop(pressure: Value, housing: Value, wall: Value) -> Value:
    """Mean hoop stress in the shell's wall, Pa, negative: −p·D/(2t), by balance of a half."""
    return -pressure * housing / (2 * wall)


def housing_opens(pressure: Value, housing: Value, outside: Value, modulus: Value, poisson: Value) -> Value:
    """By how much the shells' grip opens the housing's bore, m."""
    return fit.outer_joint_change(pressure, housing, outside, modulus, poisson)


def wall_thickens(pressure: Value, housing: Value, wall: Value, modulus: Value, poisson: Value) -> Value:
    """By how much twice the shell's wall grows when it is pressed together round its girth, m: some tenths of
    a micrometre."""
    inside = housing - 2 * wall
    return fit.inner_joint_change(pressure, inside, housing, modulus, poisson) - fit.inner_bore_change(
        pressure, inside, housing, modulus
    )


def fitted_bore(
    housing: Value,
    wall: Value,
    opened: Value,
    thickened: Value,
    housing_strain: Value = 0.0,
    shell_strain: Value = 0.0,
) -> Value:
    """Bore of the fitted shells, m: the housing, grown and opened, less twice the wall, grown and thickened.
    Where the shells have come loose both `opened` and `thickened` are 0, and this is the bore that the
    journal finds with the shells pushed against the housing."""
    return housing * (1 + housing_strain) + opened - 2 * wall * (1 + shell_strain) - thickened
