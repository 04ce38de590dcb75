"""Whatever a reader may enter in a calculator: strategies that draw entries within the ranges that it accepts."""

import math

from hypothesis import strategies as st

from calc.core.kinds import TEMPERATURE
from calc.core.reading import EntryError, read
from calc.core.writing import to_unit
from calc.declare.choice import Choice
from calc.declare.grid import Grid
from calc.declare.open_input import Open
from calc.declare.quantity import Quantity

DEGREES = ["", "20", "35 °C", "−10 °C", "90 °F", "21 ± 0.5 °C"]  # of the part or the gauge of a warm reading


def entries(calculator, most=6):
    """Entries for some of the inputs of a calculator, all of them acceptable by themselves: for a few, anywhere within their ranges,
    or for twice as many about the example, as those that go together lie."""
    anywhere = _some(calculator, most, None)
    return st.one_of(
        anywhere, anywhere, *(_some(calculator, 2 * most, about) for about in (1e-2, 1e-3, 1e-4))
    )


def _some(calculator, most, about):
    texts = {}
    for i in calculator.inputs:
        if isinstance(i, Choice):
            texts[i.name] = st.sampled_from(sorted(i.options))
        elif isinstance(i, Open):
            texts[i.name] = st.sampled_from(i.kinds).flatmap(any_number)
        elif isinstance(i, Grid):
            texts |= {cell.name: one_number(cell, example, about) for cell, example in numbers(i)}
        else:
            texts[i.name] = one_number(i, i.default_value, about)
            if i.optional:
                texts[i.name] = st.one_of(texts[i.name], st.just(""))
            texts |= {f"{i.name}.{part}": st.sampled_from(DEGREES) for part in i.parts}
    names = st.lists(st.sampled_from(sorted(texts)), max_size=min(most, len(texts)), unique=True)
    return names.flatmap(lambda names: st.fixed_dictionaries({name: texts[name] for name in names}))


def numbers(declared):
    """Every single number that an input asks for, itself or its cells, with the value of the example (None where it is left empty)."""
    if isinstance(declared, Quantity):
        yield declared, declared.default_value
    elif isinstance(declared, Grid):
        for (r, c), cell in declared.cells.items():
            row = declared.default_value[r]
            yield cell, None if row is None else row[c]


def one_number(declared, example, about=None):
    """An entry for one number, in any unit, with a doubt now and then where it is measured; `about` the example or anywhere."""
    kind = declared.form.kind
    drawn = values(declared, example, about)
    if is_count(declared):
        return drawn.map(lambda x: str(round(x)))
    low, high = declared.hard_range
    units = [u for u in kind.units if reads(u, kind) and (u.symbol or not declared.form.metric.symbol)]

    def text(draw):
        value, unit, doubt = draw
        entry = written(value, unit)
        if not low <= read(entry, kind).value <= high:  # rounding in that unit led outside
            entry = written((low + high) / 2, unit)
        if doubt and declared.measured and not unit.offset:
            entry = f"{entry} ± {doubt * (high - low) / float(unit.factor):.3g} {unit.symbol}".strip()
        return entry

    doubts = [0, 0, 0, 1e-5, 1e-3] if about is None else [*[0] * 11, 1e-5]  # each costs two more evaluations
    return st.tuples(drawn, st.sampled_from(units), st.sampled_from(doubts)).map(text)


def values(declared, example, about=None):
    """Numbers within the hard range, in SI: within a share `about` of the example, or anywhere."""
    places = neighbourhoods(declared, example)
    return (
        st.one_of(places)
        if about is None or example is None
        else places[0]
        if is_count(declared)
        else _within(declared, example, about)
    )


def neighbourhoods(declared, example) -> list:
    """Numbers within the hard range by where they lie: close to the example, near it, anywhere (evenly, and by magnitude), at the ends."""
    low, high = declared.hard_range
    if is_count(declared):
        return [st.integers(math.ceil(low), min(math.floor(high), math.ceil(low) + 60)).map(float)]
    middle = low if example is None else example
    anywhere = st.floats(low, high).map(lambda x: x if abs(x) > 1e-12 else max(low, 0.0))
    by_magnitude = (
        st.floats(0, 1).map(lambda x: min(max(low * (high / low) ** x, low), high)) if low > 0 else anywhere
    )
    return [
        _within(declared, middle, 1e-3),
        _within(declared, middle, 0.05),
        anywhere,
        by_magnitude,
        st.sampled_from([low, high, *(declared.usual_range or ())]),
    ]


def _within(declared, middle, share):
    low, high = declared.hard_range
    size = share * (abs(middle) or high - low)
    return st.floats(-1, 1).map(lambda x: min(max(middle + x * size if abs(x) > 1e-9 else middle, low), high))


def is_count(declared) -> bool:
    return declared.form.kind.name == "count"


def written(value, unit):
    return f"{to_unit(value, unit)!r} {unit.symbol}".strip()


def reads(unit, kind):
    """Whether a number with that symbol is read as it stands, without a note that something was taken for another."""
    try:
        return not read(f"1.5 {unit.symbol}".strip(), kind).note and kind.name != "count"
    except EntryError:
        return False


def any_number(kind):
    """A number in some unit of a kind, as it is typed into an input of many kinds."""
    units = [u.symbol for u in kind.units if u.symbol and reads(u, kind)]
    least = 0 if kind is TEMPERATURE else -1e6  # there is nothing below absolute zero
    return st.tuples(
        st.floats(least, 1e6).map(lambda x: f"{x if abs(x) > 1e-6 else 0:.6g}"),
        st.sampled_from(units or ["mm"]),
    ).map(" ".join)
