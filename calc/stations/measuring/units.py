"""One quantity in every unit that it is written in."""

from fractions import Fraction

from calc.core.kinds import ANGLE, COUNT, KINDS, LENGTH, Kind, Unit
from calc.core.reading import with_article
from calc.core.result import Table, note, say
from calc.core.working import Form, constant
from calc.core.writing import decimals_of, figures, to_unit
from calc.declare.calculator import (
    Answer,
    Inputs,
    Number,
    Output,
    Outputs,
    answer,
    any_of,
    calculator,
    choice,
)
from calc.formulas.trigonometry import degrees_minutes_seconds
from calc.reference import sources

TOLD = tuple(kind for kind in KINDS.values() if kind is not COUNT)
BY_UNIT = "unit"
DIGITS = 10


class Out(Outputs):
    metric = Output("In the usual metric unit", "q_m", None, main=True)
    inch = Output("In the usual inch unit", "q_in", None, main=True)


class In(Inputs):
    value: Number = any_of(
        "Quantity",
        "q",
        TOLD,
        by="kind",
        hint="With its unit: 1 31/64 in, 26 ft·lb, 35 psi, 68 °F, 45° 30' 36\".",
        example="1 31/64 in",
    )
    kind: str = choice(
        "It is",
        {BY_UNIT: "what the unit says", **{k.name: with_article(k.name) for k in TOLD}},
        hint="Only needed where one unit serves two quantities: lb, °C, MPa.",
        default=BY_UNIT,
    )


@calculator(
    "units",
    "Units",
    In,
    Out,
    purpose="What is this quantity in every other unit?",
    finds=(
        "convert",
        "conversion",
        "inch to mm",
        "thou to mm",
        "psi to bar",
        "foot-pounds to newton metres",
        "Fahrenheit",
        "fraction of an inch",
    ),
    sources=(sources.SP_811,),
)
def units(i: In) -> Answer:
    """Exact factors (NIST SP 811), carried as fractions; written with ten digits.

    No range: what can be read can be converted.
    """
    assert i.value.form, "what is entered has a form"
    found = i.value.form.kind
    rows = [
        (unit.symbol or "as a number", figures(to_unit(float(i.value), unit), DIGITS)) for unit in found.units
    ]
    if found is ANGLE:
        rows.append(("degrees, minutes, seconds", degrees_minutes_seconds(i.value)))
    if found is LENGTH:
        rows.append(("inches and 64ths", _sixty_fourths(float(i.value))))
    other = found.inch if i.value.form.metric == found.metric else found.metric
    metric, inch = (
        out(i.value, form=_form(found, unit, float(i.value), 6))
        for out, unit in ((Out.metric, found.metric), (Out.inch, found.inch))
    )
    return answer(
        metric,
        inch,
        verdict=(
            "pass",
            say(
                "{v} is {other}",
                v=i.value,
                other=constant("", "", _form(found, other, float(i.value), 8), float(i.value)),
            ),
            say(
                "Taken as {kind}: {v}. Copy the number with its unit.",
                kind=with_article(found.name),
                v=i.value,
            ),
        ),
        remarks=(note("Rounded once, at the end, to ten digits; the factors are exact."),),
        tables=lambda: (Table("The same quantity", ("Unit", "Number"), tuple(rows)),),
    )


def _form(kind: Kind, unit: Unit, value: float, digits: int) -> Form:
    """One unit in both systems, with so many digits and no needless zeros."""
    return Form(kind, decimals_of(value, unit, digits), unit, unit)


def _sixty_fourths(value: float) -> str:
    """The nearest 64th of an inch, and what it is off."""
    inches = Fraction(to_unit(value, LENGTH.inch)).limit_denominator(10**12)
    near = Fraction(round(inches * 64), 64)
    whole, rest = divmod(abs(near), 1)
    text = " ".join(
        filter(
            None,
            (str(whole) if whole or not rest else "", f"{rest.numerator}/{rest.denominator}" if rest else ""),
        )
    )
    off = float((inches - near) * 1000)
    return f"{'−' if near < 0 else ''}{text} in" + (
        "" if abs(off) < 0.005 else f", {'+' if off > 0 else '−'}{abs(off):.2f} thou"
    )
