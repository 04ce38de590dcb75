"""Reading what people type: numbers, fractions, angles, doubts, with or without a unit.

Text is read as a fraction and becomes a float once, at the very end, so "1 31/64 in" is the float nearest to
0.037703125 m.

    read("1 31/64 in", LENGTH).value       0.037703125
    read("54.987 mm ± 4 µm", LENGTH).doubt 4e-06
"""

import re
from collections.abc import Sequence
from fractions import Fraction
from functools import lru_cache

# Whoever reads entries says what is wrong with them: all of it is imported from here.
from calc.core.entry import Entry as Entry
from calc.core.entry import EntryError as EntryError
from calc.core.entry import accepted, accepted_doubt
from calc.core.entry import quoted as quoted
from calc.core.entry import with_article as with_article
from calc.core.kinds import COUNT, TEMPERATURE, Kind, Unit
from calc.core.numeral import Numeral, Range, one_number
from calc.core.spelling import evened
from calc.core.writing import gap, stated

LONGEST = 100
"""An entry longer than this many characters is refused unread."""


def read(text: str, kind: Kind, unit: Unit | None = None, possible: Range | None = None) -> Entry:
    """Read what a person typed for a quantity of this kind.

    `unit` is taken where the text names none (default: the metric unit of the kind).
    Understood are decimals with point or comma, exponents, spaces between groups of
    three digits, fractions, degrees with minutes and seconds, any usual spelling of a
    unit, and a doubt after ± or +/-.  The doubt takes the value's unit unless it names
    its own; the doubt of a temperature is a difference.

    A choice made for the reader is told in `note`: a fraction without a unit in a
    metric length field is inches.  What cannot be decided raises EntryError, and so does
    everything that is not one number.

    A point is always the decimal mark.  One comma is it too ("37,48"), but before exactly
    three digits it may as well part thousands, and the two differ by a thousand: "1,250" is
    refused unless what it would be in thousands lies outside of what is `possible` (least
    and most, SI).  Two unlike marks ("1,250.5"), or one mark twice ("12,345,678"), can be
    meant in one way only, and are read so; that is told in the note.
    """
    return _read(text, kind, unit or kind.metric, possible)


def in_si(text: str, kind: Kind) -> float:
    """The SI value of a quantity in a declaration or data file, such as "37.9 mm".

    Stricter than `read`, as nobody is there to see a note: the unit must be named
    (unless the kind needs none, or the value is 0) and nothing may be left to choose.
    """
    entry = _read(text, kind, kind.metric)
    if entry.note:
        raise EntryError("not-a-number", f"{quoted(text)} can be read in two ways", accepted(kind))
    # 0 is 0 in every unit but a temperature's
    if not entry.named and kind.metric.symbol and (entry.value or kind is TEMPERATURE):
        raise EntryError("unknown-unit", f"{quoted(text)} names no unit", accepted(kind))
    return entry.value


def readings(text: str, kinds: Sequence[Kind]) -> list[tuple[Kind, Entry]]:
    """Every kind among `kinds` that the text can be meant as, by the unit that it names; the likeliest first.

    A unit written as its own symbol goes before one that is only another spelling (35 lb is a mass before it
    is a force), then the order of `kinds` decides. Where nothing fits, the EntryError says what is wrong with
    the text itself, if anything is.
    """
    unknown = EntryError(
        "unknown-unit",
        f"{quoted(text)} names no unit that is known here",
        f"give a number with its unit, such as {kinds[0].example}",
    )
    found: list[tuple[Kind, Entry]] = []
    errors = [(3, unknown)]
    for kind in kinds:
        try:
            entry = _read(text, kind, kind.metric)
        except EntryError as error:
            # −460 °F is not taken for a difference because it cannot be a temperature
            if error.code == "out-of-range":
                raise
            undecided = error.accepted != accepted(kind)
            errors.append((0 if undecided else _TELLING.get(error.code, 4), error))
        else:
            found += [(kind, entry)] * entry.named
    if not found:
        raise min(errors, key=lambda ranked: ranked[0])[1]
    return sorted(found, key=lambda pair: not text.rstrip().endswith(pair[1].unit.symbol or " "))


# What says most about a text that no kind can read, first.
_TELLING = {
    "empty": 0,
    "too-long": 0,
    "two-ways": 0,
    "not-finite": 1,
    "bad-fraction": 1,
    "bad-angle": 1,
    "bad-doubt": 1,
    "several-numbers": 2,
    "not-a-number": 2,
}


_DOUBT = re.compile(r"±|\+ ?/ ?-|\+-")


def _read(text: str, kind: Kind, default: Unit, possible: Range | None = None) -> Entry:
    if not isinstance(text, str):
        raise EntryError("not-a-number", f"{quoted(repr(text))} is not text", accepted(kind))
    if len(text) > LONGEST:
        raise EntryError("too-long", f"{quoted(text)} is {len(text)} characters long", accepted(kind))
    return _read_text(text, kind, default, possible)


@lru_cache(maxsize=1024)  # a key changes one entry of a form: all others were read at the key before
def _read_text(text: str, kind: Kind, default: Unit, possible: Range | None) -> Entry:
    plain = evened(text)
    if not plain:
        raise EntryError("empty", "nothing was given", accepted(kind))
    parts = _DOUBT.split(plain)
    if len(parts) > 2:
        raise EntryError("bad-doubt", f"{quoted(text)} has more than one ±", accepted_doubt(kind))
    if len(parts) == 2:
        first, last = parts
        if first.startswith("(") and last.count(")") == 1 and ")" not in first:  # (54.987 ± 0.004) mm
            first, last = first[1:], last.replace(")", " ")
        value, doubt, notes = _with_doubt(text, first.strip(), last.strip(), kind, default, possible)
    else:
        value, doubt = one_number(plain, kind, default, possible), None
        notes = value.notes
    number = _to_float(value.number * value.unit.factor + value.unit.offset, text, kind)
    if kind is TEMPERATURE and number < 0:
        raise EntryError(
            "out-of-range",
            f"{quoted(text)} is below absolute zero",
            "give −273.15 °C, −459.67 °F, 0 K or more",
        )
    if kind is TEMPERATURE and value.unit.symbol == "K":
        notes = [
            *notes,
            (
                f"Took {quoted(text)} as a temperature above absolute zero ({stated(number, default, 2)}),"
                " not as a difference."
            ),
        ]
    if kind is COUNT and value.number.denominator != 1:
        raise EntryError("not-a-number", f"{quoted(text)} is not a whole number", accepted(kind))
    return Entry(number, value.unit, " ".join(notes), doubt, text, value.named)


def _with_doubt(
    text: str, first: str, last: str, kind: Kind, default: Unit, possible: Range | None
) -> tuple[Numeral, float, list[str]]:
    """Value, SI doubt and notes of an entry with a ± in it."""
    if not first or not last:
        raise EntryError(
            "bad-doubt", f"{quoted(text)} needs a number on both sides of the ±", accepted_doubt(kind)
        )
    value = one_number(first, kind, default, possible)
    try:
        doubt = one_number(last, kind, value.unit)
    except EntryError as error:
        if error.code in ("not-a-number", "several-numbers"):
            raise EntryError("bad-doubt", f"{quoted(last)} is not a doubt", accepted_doubt(kind)) from None
        raise
    notes = value.notes + doubt.notes
    if doubt.named and not value.named and doubt.unit != value.unit:
        # "54.987 ± 0.004 mm" on an inch page: the unit at the end is for both.  But in
        # "54.987 ± 4 µm" or "20 ± 1 K" it may well be for the doubt alone.
        if doubt.unit not in (kind.metric, kind.inch):
            raise EntryError(
                "bad-doubt",
                f"{quoted(text)} does not say which unit {first} is in",
                f"name both, such as {first}{gap(default)}{default.symbol} ± {last}",
            )
        value = one_number(first, kind, doubt.unit, possible)
        notes = value.notes + doubt.notes + [f"Took {doubt.unit.symbol} for both {first} and its doubt."]
    if doubt.number < 0:
        raise EntryError("bad-doubt", f"{quoted(text)} has a doubt below zero", accepted_doubt(kind))
    return value, _to_float(doubt.number * doubt.unit.factor, text, kind), notes


_BEYOND = 10**30


def _to_float(exact: Fraction, text: str, kind: Kind) -> float:
    # Nothing in a workshop is outside of this in SI units, and inside of it every conversion is safe.
    if exact and not Fraction(1, _BEYOND) < abs(exact) < _BEYOND:
        raise EntryError("not-finite", f"{quoted(text)} is beyond all sizes", accepted(kind))
    return float(exact)
