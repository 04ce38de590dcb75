"""How a pair of shells grips its housing, cold and running, and how far that opens the bore: lines of a
calculator's working."""

from typing import NamedTuple

from calc.core.working import Number, constant, step
from calc.declare.calculator import Output
from calc.formulas import press_fit as fit
from calc.formulas import shell_fit
from calc.reference import sources
from calc.reference.materials import REFERENCE, Material
from calc.stations.shared.forms import CONTACT, FINE, SIZE
from calc.stations.shared.growth import growth, reference_temperature
from calc.stations.shared.ring_in_wall import Part, poissons_ratio, stiffness


class Seat(NamedTuple):
    """A pair of shells and what it sits in: the housing's bore, the wall of one shell; how far a shell stands
    proud and the housing's thinnest wall, None where nobody knows; both metals, their temperatures running
    (K), and the inputs to blame for those."""

    bore: Number
    wall: Number
    proud: Number | None
    wall_round: Number | None
    housing: Material
    shell: Material
    temperatures: tuple[Number, Number]
    fields: tuple[str, str]

    @property
    def known(self) -> bool:
        return self.proud is not None and self.wall_round is not None


class Heat(NamedTuple):
    """The fit at one heat. `interference` may be less than nothing: then the shells are loose, and the rest
    is 0."""

    interference: Number
    pressure: Number
    opened: Number
    thickened: Number


class Held(NamedTuple):
    """The fit cold and running, and how far housing and shell grow."""

    cold: Heat
    hot: Heat
    housing_grows: Number
    shell_grows: Number
    outside: Number


class Told(NamedTuple):
    """The results that the calculator has of it; None names a step between."""

    interference: Output | None
    interference_hot: Output | None
    pressure: Output | None
    pressure_hot: Output | None
    opened: Output | None


def held(s: Seat, told: Told) -> Held:
    reference = reference_temperature()
    shell_grows = growth(s.shell, s.temperatures[1], reference, "s", "shells", s.fields[1])
    housing_grows = growth(s.housing, s.temperatures[0], reference, "h", "housing", s.fields[0])
    if s.proud is None or s.wall_round is None:
        none = Heat(
            *(
                constant("", "", form, 0.0) if out is None else out(0.0)
                for out, form in (
                    (told.interference, SIZE),
                    (told.pressure, CONTACT),
                    (told.opened, FINE),
                    (None, FINE),
                )
            )
        )
        hot = none
        if told.interference_hot and told.pressure_hot:
            hot = none._replace(interference=told.interference_hot(0.0), pressure=told.pressure_hot(0.0))
        return Held(none, hot, housing_grows, shell_grows, s.bore)
    outside = step("D_o", "Outside of the housing at its thinnest", SIZE, s.bore + 2 * s.wall_round)
    named = told.interference or _step("δ", "Interference of the shells", SIZE)
    interference = named(shell_fit.interference(s.proud), sources.SHELL_CRUSH)
    warm = (told.interference_hot or _step("δ_hot", "Interference of the shells left, running", SIZE))(
        fit.interference_at(interference, s.bore, shell_grows, housing_grows), sources.THERMAL
    )
    cold = _heat(s, outside, interference, None, told.pressure, told.opened)
    return Held(
        cold,
        _heat(s, outside, warm, s.temperatures, told.pressure_hot, None),
        housing_grows,
        shell_grows,
        outside,
    )


def _step(symbol: str, label: str, shape):
    return lambda value, source=None: step(symbol, label, shape, value, source)


def _heat(
    s: Seat,
    outside: Number,
    interference: Number,
    temperatures: tuple[Number, Number] | None,
    told: Output | None,
    told_opened: Output | None,
) -> Heat:
    """`temperatures` of housing and shells where they run, None where all is at 20 °C."""
    tag, mark, when = ("_hot", ",hot", ", running") if temperatures else ("", "", "")
    at = temperatures or (REFERENCE, REFERENCE)
    housing, shell = Part(s.housing, "h", "housing"), Part(s.shell, "s", "shells")
    E_h, E_s = stiffness(housing, at[0], mark, when), stiffness(shell, at[1], mark, when)
    nu_h, nu_s = poissons_ratio(housing), poissons_ratio(shell)
    give = fit.joint_compliance(s.bore - 2 * s.wall, s.bore, outside, E_s, nu_s, E_h, nu_h)
    pressure = (told or _step(f"p{tag}", f"Pressure of the shells in their housing{when}", CONTACT))(
        fit.contact_pressure(interference, s.bore, give), sources.LAME
    )
    opened = (told_opened or _step(f"u{tag}", f"Shells' grip opens the housing by{when}", FINE))(
        shell_fit.housing_opens(pressure, s.bore, outside, E_h, nu_h), sources.LAME
    )
    thickened = step(
        f"t{tag}",
        f"Twice the shell's wall, thicker by{when}",
        FINE,
        shell_fit.wall_thickens(pressure, s.bore, s.wall, E_s, nu_s),
        sources.LAME,
    )
    return Heat(interference, pressure, opened, thickened)
