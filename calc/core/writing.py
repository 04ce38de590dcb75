"""Writing numbers as people read them.

write(0.0379, LENGTH.inch, 4)          '1.4921'
stated(0.0379, LENGTH.metric, 2)       '37.90 mm'
"""

from decimal import ROUND_HALF_EVEN, Decimal
from fractions import Fraction
from math import isfinite

from calc.core.kinds import Unit


def from_unit(number: float, unit: Unit) -> float:
    """SI value of a number in a unit: the float nearest to number × factor + offset."""
    if not isfinite(number):
        return float(number)
    return float(_decimal_of(number) * unit.factor + unit.offset)


def _decimal_of(number: float) -> Fraction:
    """The number that a float was written as: 0.1 is a tenth, not the nearest binary fraction."""
    return Fraction(repr(float(number)))


def to_unit(value: float, unit: Unit) -> float:
    """The number that an SI value is in a unit.

    Of the numbers that stand for the same SI float, a short one (15 digits or fewer) is
    given where there is one, so that 293.15 K is 20.0 °C and a fraction of an inch comes
    back as it was read.
    """
    if not isfinite(value):
        return float(value)
    value = float(value)
    number = float((Fraction(value) - unit.offset) / unit.factor)
    short = float(f"{number:.15g}")
    return short if from_unit(short, unit) == value else number


def write(value: float, unit: Unit, decimals: int) -> str:
    """An SI value as a number in a unit, without the unit's symbol (see `stated`).

    Rounded half to even (ISO 80000-1, rule A) from the decimal that `to_unit` gives, of
    which twelve digits count: a half that arithmetic missed by the last bits is still one,
    and computers whose sines differ there write the same.  The minus sign is "−", digits are not grouped, and
                                                            zero has no sign.  A value that would be written
                                                            with zeros alone gets one decimal more; if that is
                                                            zeros again, it is
    below a twentieth of the last decimal asked for and is written as zero.  From 10⁹ on
    a number is written with six digits and a power of ten, "1.23457×10⁹", and so is a small
    one of which more than fifteen decimals are asked for, "2.54×10⁻²²".
    """
    if not isfinite(value):
        raise ValueError(f"{value} cannot be written as a size.")
    number = to_unit(value, unit)
    exact = Decimal(repr(number))
    digits = max(12, exact.adjusted() + decimals + 4)
    if digits < 16:
        exact = Decimal(f"{number:.{digits}g}")
    if abs(exact) >= 10**9 or exact and decimals > 15 and abs(exact) < Decimal("1e-9"):
        mantissa, power = f"{exact:.5e}".split("e")
        if exact.adjusted() < 0:
            mantissa = mantissa.rstrip("0").rstrip(".")
        raised = str(int(power)).translate(str.maketrans("0123456789-", "⁰¹²³⁴⁵⁶⁷⁸⁹⁻"))
        text = f"{mantissa}×10{raised}"
    else:
        decimals = max(0, decimals)
        text = _rounded(exact, decimals)
        if exact and not text.strip("-0."):
            longer = _rounded(exact, decimals + 1)
            text = longer if longer.strip("-0.") else text.lstrip("-")
    return text.replace("-", "−")


def _rounded(exact: Decimal, decimals: int) -> str:
    return f"{exact.quantize(Decimal(1).scaleb(-decimals), ROUND_HALF_EVEN):f}"


def stated(value: float, unit: Unit, decimals: int) -> str:
    """An SI value with its unit, "37.90 mm": no space before ° ′ ″, none behind a bare number."""
    return f"{write(value, unit, decimals)}{gap(unit)}{unit.symbol}"


def gap(unit: Unit) -> str:
    return "" if unit.symbol in ("", "°", "′", "″") else " "


def decimals_of(value: float, unit: Unit, digits: int) -> int:
    """Decimals that show so many significant digits of an SI value in a unit, without needless zeros."""
    exponent = Decimal(f"{to_unit(value, unit):.{digits}g}").normalize().as_tuple().exponent
    return max(0, -int(exponent))


def decimals_for(unit: Unit, decimals: int, reference: Unit) -> int:
    """Decimals in `unit` that show no less than `decimals` do in `reference`.

    decimals + ⌈log₁₀(unit / reference)⌉, not below 0: 0.01 mm goes with four decimals of
    an inch, 0.001 mm with five.
    """
    ratio = unit.factor / reference.factor
    more = 0
    while Fraction(10) ** more < ratio:
        more += 1
    while Fraction(10) ** (more - 1) >= ratio:
        more -= 1
    return max(0, decimals + more)


def figures(value: float, digits: int) -> str:
    """A pure number with as many significant digits as are needed, `digits` at most: 0.8, −2, 2.5×10⁻⁶."""
    mantissa, e, power = f"{float(f'{value:.12g}'):.{digits}g}".partition("e")  # as `write` does it
    raised = "×10" + str(int(power)).translate(str.maketrans("0123456789-", "⁰¹²³⁴⁵⁶⁷⁸⁹⁻")) if e else ""
    return mantissa.replace("-", "−") + raised
