"""Viscosity of an oil at its temperature, as lines of a calculator's working."""

from typing import NamedTuple

from calc.core.kinds import DENSITY, EXPANSION, KINEMATIC_VISCOSITY, RATIO, TEMPERATURE
from calc.core.result import impossible
from calc.core.working import Number, constant, form, step
from calc.formulas import oil
from calc.reference.sources import OIL_GRADES, OIL_GROWTH, WALTHER

POINTS = "points"
GRADES = {id: name for id, (name, *_) in oil.GRADES.items()}
CHOICES = GRADES | {POINTS: "two points of a data sheet"}
TEMP, NU = form(TEMPERATURE, 0), form(KINEMATIC_VISCOSITY, 2)
THINNEST, THICKEST = 2e-6, 0.1  # m²/s: between these the straight line is trusted
APART = 10.0  # K: points nearer than this do not carry a line


class Oil(NamedTuple):
    kinematic: Number
    dynamic: Number
    density: Number


def oil_at(
    grade, temperature, cool, thick, warm, thin, density, dynamic, mark="", field="oil_temperature"
) -> Oil:
    """Oil of a grade, or through the points (cool, thick) and (warm, thin), at a temperature; `density` is that at 15 °C,
    `dynamic` names the dynamic viscosity. Where a calculator has two oils, `mark` tells the symbols of the second apart.

    The points do not count for a grade. The calculator's inputs are called cool_temperature, cool_viscosity, warm_temperature,
    warm_viscosity, and `field` the temperature.
    """
    if grade != POINTS:
        _, at_40, at_100 = oil.GRADES[grade]
        cool, warm = (
            constant(f"T_{n}", f"Temperature of point {n}", TEMP, celsius + 273.15, OIL_GRADES)
            for n, celsius in ((1, 40), (2, 100))
        )
        thick, thin = (
            constant(f"ν_{n}{mark}", f"Viscosity of the grade at {words}", NU, value * 1e-6, OIL_GRADES)
            for n, words, value in ((1, "40 °C", at_40), (2, "100 °C", at_100))
        )
    elif float(warm) - float(cool) < APART:
        raise impossible(
            "warm_temperature",
            "is {b}, less than 10 K above the cooler point, {a}; give more",
            a=cool,
            b=warm,
        )
    elif thin >= thick:
        raise impossible(
            "warm_viscosity",
            "is {b}, not less than at the cooler point, {a}, but an oil gets thinner as it gets warmer; give"
            " less",
            a=thick,
            b=thin,
        )
    slope = step(
        f"B_w{mark}", "Fall of Walther's line", form(RATIO, 5), oil.slope(thick, cool, thin, warm), WALTHER
    )
    height = step(
        f"A_w{mark}", "Height of Walther's line", form(RATIO, 5), oil.height(thick, cool, slope), WALTHER
    )
    place = float(height) - float(slope) * float(oil.log_temperature(float(temperature)))
    for ends, words in (
        (
            place < oil.walther(THINNEST),
            "thinner than {v}, past what ASTM D341 holds for in this form; give less",
        ),
        (place > oil.walther(THICKEST), "thicker than {v}; give more"),
    ):
        if ends:
            raise impossible(
                field,
                "is {t}, where this oil is " + words,
                t=temperature,
                v=constant(
                    "", "", form(KINEMATIC_VISCOSITY, 0), THINNEST if "thinner" in words else THICKEST
                ),
            )
    kinematic = step(
        f"ν{_under(mark)}",
        "Viscosity of the oil, kinematic",
        NU,
        oil.viscosity(temperature, height, slope),
        WALTHER,
    )
    reference = constant("T_15", "Temperature of the density given", TEMP, 288.15, OIL_GROWTH)
    growth = constant(
        "β", "Growth of oil by volume", form(EXPANSION, 4, "1/K", "1/°F"), oil.GROWTH, OIL_GROWTH
    )
    rho = step(
        f"ρ{_under(mark)}",
        "Density of the oil, warm",
        form(DENSITY, 0),
        oil.density_at(density, temperature, reference, growth),
        OIL_GROWTH,
    )
    return Oil(kinematic, dynamic(kinematic * rho, WALTHER), rho)


def _under(mark):
    return f"_{mark}" if mark else ""
