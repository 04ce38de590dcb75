"""Free growth of a part with heat, as lines of a calculator's working."""

from calc.core.kinds import EXPANSION, RATIO, TEMPERATURE
from calc.core.result import impossible
from calc.core.working import Number, constant, form, step
from calc.formulas.press_fit import free_strain
from calc.reference.materials import REFERENCE, Material, OutsideTable
from calc.reference.sources import MATERIALS, THERMAL

_TEMP = form(TEMPERATURE, 0)


def reference_temperature() -> Number:
    """The 20 °C at which sizes are stated (ISO 1), under its name."""
    return constant("T_0", "Reference temperature", _TEMP, REFERENCE, THERMAL)


def growth(
    material: Material, temperature: Number, reference: Number, letter: str, words: str, field: str
) -> Number:
    """Thermal strain of a part from the reference temperature; `letter` and `words` name the part, `field`
    the input to blame where the temperature (K) lies past what is held of the material."""
    try:
        alpha = material.mean_alpha(temperature)
    except OutsideTable:
        raise impossible(
            field,
            "is {t}, and properties of {name} are held only up to {top}; give less, or another material",
            t=temperature,
            name=material.name,
            top=constant("", "", _TEMP, material.hottest),
        ) from None
    mean = constant(f"α_{letter}", f"Mean expansion of the {words}", form(EXPANSION, 1), alpha, MATERIALS)
    return step(
        f"ε_{letter}",
        f"Growth of the {words}",
        form(RATIO, 5),
        free_strain(mean, temperature, reference),
        THERMAL,
    )
