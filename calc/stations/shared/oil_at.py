"""Viscosity of an oil at its temperature, as lines of a calculator's working."""

from collections.abc import Callable
from typing import NamedTuple

from calc.core.kinds import DENSITY, EXPANSION, KINEMATIC_VISCOSITY, RATIO
from calc.core.result import Impossible, impossible
from calc.core.working import Number, constant, form, step
from calc.formulas import oil
from calc.reference.sources import OIL_GRADES, OIL_GROWTH, WALTHER
from calc.stations.shared.forms import DEGREES_C

POINTS = "points"
GRADES = {id: name for id, (name, *_) in oil.GRADES.items()}
CHOICES = GRADES | {POINTS: "two points of a data sheet"}
NU, LINE = form(KINEMATIC_VISCOSITY, 2), form(RATIO, 5)
THINNEST, THICKEST = 2e-6, 0.1  # m²/s: between these the straight line is trusted
APART = 10.0  # K: points nearer than this do not carry a line


class DataSheet(NamedTuple):
    """Two points of a data sheet: each a temperature and the kinematic viscosity there."""

    cool: Number
    thick: Number
    warm: Number
    thin: Number


class Oil(NamedTuple):
    kinematic: Number
    dynamic: Number
    density: Number


def oil_at(
    grade: str,
    temperature: Number,
    points: DataSheet,
    density: Number,
    dynamic: Callable[..., Number],
    mark: str = "",
    field: str = "oil_temperature",
) -> Oil:
    """Oil of a grade, or through the points of a data sheet, at a temperature; `density` is that at 15 °C.

    `dynamic` names the dynamic viscosity. Where a calculator has two oils, `mark` tells the symbols of the
    second apart. The points do not count for a grade.

    The calculator's inputs are those of `calc.stations.shared.oil_asked`, and `field` the temperature. Raises
    Impossible where the points carry no line, or the oil is too thin or too thick for one.
    """
    if grade == POINTS:
        _refuse_no_line(points)
    else:
        points = _points_of(grade, mark)
    cool, thick, warm, thin = points
    slope = step(f"B_w{mark}", "Fall of Walther's line", LINE, oil.slope(thick, cool, thin, warm), WALTHER)
    height = step(f"A_w{mark}", "Height of Walther's line", LINE, oil.height(thick, cool, slope), WALTHER)
    _refuse_off_the_line(
        float(height) - float(slope) * float(oil.log_temperature(float(temperature))), temperature, field
    )
    kinematic = step(
        f"ν{_under(mark)}",
        "Viscosity of the oil, kinematic",
        NU,
        oil.viscosity(temperature, height, slope),
        WALTHER,
    )
    warmed = _warm_density(density, temperature, mark)
    return Oil(kinematic, dynamic(kinematic * warmed, WALTHER), warmed)


def _points_of(grade: str, mark: str) -> DataSheet:
    """What a grade is held to have at 40 and 100 °C."""
    _, at_40, at_100 = oil.GRADES[grade]
    cool, warm = (
        constant(f"T_{n}", f"Temperature of point {n}", DEGREES_C, celsius + 273.15, OIL_GRADES)
        for n, celsius in ((1, 40), (2, 100))
    )
    thick, thin = (
        constant(f"ν_{n}{mark}", f"Viscosity of the grade at {words}", NU, value * 1e-6, OIL_GRADES)
        for n, words, value in ((1, "40 °C", at_40), (2, "100 °C", at_100))
    )
    return DataSheet(cool, thick, warm, thin)


def _refuse_no_line(points: DataSheet) -> None:
    """Raises where two points lie too near to each other, or an oil gets thicker as it gets warmer."""
    if float(points.warm) - float(points.cool) < APART:
        raise impossible(
            "warm_temperature",
            "is {b}, less than 10 K above the cooler point, {a}; give more",
            a=points.cool,
            b=points.warm,
        )
    if points.thin >= points.thick:
        raise impossible(
            "warm_viscosity",
            "is {b}, not less than at the cooler point, {a}, but an oil gets thinner as it gets warmer; give"
            " less",
            a=points.thick,
            b=points.thin,
        )


def _refuse_off_the_line(place: float, temperature: Number, field: str) -> None:
    """Raises where the oil, at that `place` of Walther's line, is too thin or too thick for it."""

    def refused(words: str, limit: float) -> Impossible:
        viscosity = constant("", "", form(KINEMATIC_VISCOSITY, 0), limit)
        return impossible(field, "is {t}, where this oil is " + words, t=temperature, v=viscosity)

    if place < oil.walther(THINNEST):
        raise refused("thinner than {v}, past what ASTM D341 holds for in this form; give less", THINNEST)
    if place > oil.walther(THICKEST):
        raise refused("thicker than {v}; give more", THICKEST)


def _warm_density(density: Number, temperature: Number, mark: str) -> Number:
    reference = constant("T_15", "Temperature of the density given", DEGREES_C, 288.15, OIL_GROWTH)
    growth = constant(
        "β", "Growth of oil by volume", form(EXPANSION, 4, "1/K", "1/°F"), oil.GROWTH, OIL_GROWTH
    )
    return step(
        f"ρ{_under(mark)}",
        "Density of the oil, warm",
        form(DENSITY, 0),
        oil.density_at(density, temperature, reference, growth),
        OIL_GROWTH,
    )


def _under(mark: str) -> str:
    return f"_{mark}" if mark else ""
