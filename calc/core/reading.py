"""Reading what people type: numbers, fractions, angles, doubts, with or without a unit.

Text is read as a fraction and becomes a float once, at the very end, so "1 31/64 in" is the float nearest to
0.037703125 m.

    read("1 31/64 in", LENGTH).value       0.037703125
    read("54.987 mm ± 4 µm", LENGTH).doubt 4e-06
"""

import re
from dataclasses import dataclass
from fractions import Fraction

from calc.core.kinds import ANGLE, COUNT, KINDS, LENGTH, RATIO, TEMPERATURE, Kind, Unit
from calc.core.spelling import (
    SAID,
    UNDECIDED,
    canonical_spelling,
    evened,
    every_spelling,
    spellings_of,
    unit_among,
)
from calc.core.writing import gap, stated, write


@dataclass(frozen=True)
class Entry:
    """What was read: SI value, the unit it was given in, what was taken where the text
    left a choice ("" if nothing), the stated doubt in SI (None if none), the text, and
    whether it named its unit."""

    value: float
    unit: Unit
    note: str
    doubt: float | None
    text: str
    named: bool = True


class EntryError(ValueError):
    """An entry that cannot be read.

    code: empty, not-a-number, several-numbers, two-ways, unknown-unit, wrong-kind, not-finite,
    out-of-range (below absolute zero), too-long, bad-fraction, bad-angle or bad-doubt.  `problem` says what
                                                                                         is wrong and
                                                                                         `accepted` what to
                                                                                         give instead, each a
                                                                                         clause of plain text
                                                                                         without a full stop.
    """

    def __init__(self, code: str, problem: str, accepted: str):
        super().__init__(f"{problem}; {accepted}.")
        self.code = code
        self.problem = problem
        self.accepted = accepted


LONGEST = 100
"""An entry longer than this many characters is refused unread."""


def read(
    text: str, kind: Kind, unit: Unit | None = None, possible: tuple[float, float] | None = None
) -> Entry:
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


def quantity(text: str, kind: Kind) -> float:
    """The SI value of a quantity in a declaration or data file, such as "37.9 mm".

    Stricter than `read`, as nobody is there to see a note: the unit must be named
    (unless the kind needs none, or the value is 0) and nothing may be left to choose.
    """
    entry = _read(text, kind, kind.metric)
    if entry.note:
        raise EntryError("not-a-number", f"{quoted(text)} can be read in two ways", _accepted(kind))
    # 0 is 0 in every unit but a temperature's
    if not entry.named and kind.metric.symbol and (entry.value or kind is TEMPERATURE):
        raise EntryError("unknown-unit", f"{quoted(text)} names no unit", _accepted(kind))
    return entry.value


def readings(text: str, kinds) -> list[tuple[Kind, Entry]]:
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
    found, errors = [], [(3, unknown)]
    for kind in kinds:
        try:
            entry = _read(text, kind, kind.metric)
        except EntryError as error:
            # −460 °F is not taken for a difference because it cannot be a temperature
            if error.code == "out-of-range":
                raise
            undecided = error.accepted != _accepted(kind)
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


def _read(text, kind, default, possible=None):
    if not isinstance(text, str):
        raise EntryError("not-a-number", f"{quoted(repr(text))} is not text", _accepted(kind))
    if len(text) > LONGEST:
        raise EntryError("too-long", f"{quoted(text)} is {len(text)} characters long", _accepted(kind))
    plain = evened(text)
    if not plain:
        raise EntryError("empty", "nothing was given", _accepted(kind))
    parts = _DOUBT.split(plain)
    if len(parts) > 2:
        raise EntryError("bad-doubt", f"{quoted(text)} has more than one ±", _accepted_doubt(kind))
    if len(parts) == 2:
        first, last = parts
        if first.startswith("(") and last.count(")") == 1 and ")" not in first:  # (54.987 ± 0.004) mm
            first, last = first[1:], last.replace(")", " ")
        value, doubt, notes = _with_doubt(text, first.strip(), last.strip(), kind, default, possible)
    else:
        value, doubt = _number(plain, kind, default, possible), None
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
        raise EntryError("not-a-number", f"{quoted(text)} is not a whole number", _accepted(kind))
    return Entry(number, value.unit, " ".join(notes), doubt, text, value.named)


def _with_doubt(text, first, last, kind, default, possible):
    """Value, SI doubt and notes of an entry with a ± in it."""
    if not first or not last:
        raise EntryError(
            "bad-doubt", f"{quoted(text)} needs a number on both sides of the ±", _accepted_doubt(kind)
        )
    value = _number(first, kind, default, possible)
    try:
        doubt = _number(last, kind, value.unit)
    except EntryError as error:
        if error.code in ("not-a-number", "several-numbers"):
            raise EntryError("bad-doubt", f"{quoted(last)} is not a doubt", _accepted_doubt(kind)) from None
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
        value = _number(first, kind, doubt.unit, possible)
        notes = value.notes + doubt.notes + [f"Took {doubt.unit.symbol} for both {first} and its doubt."]
    if doubt.number < 0:
        raise EntryError("bad-doubt", f"{quoted(text)} has a doubt below zero", _accepted_doubt(kind))
    return value, _to_float(doubt.number * doubt.unit.factor, text, kind), notes


@dataclass
class _Number:
    number: Fraction  # in the unit
    unit: Unit
    named: bool  # whether the text named the unit
    notes: list[str]


# After the sign, whole numbers with a fraction, or digits with marks and perhaps an exponent.
_NUMBER = re.compile(
    r"""
    (?P<sign>[+-]?)\ ?
    (?: (?: (?P<whole>[0-9]+) [ -] )? (?P<top>[0-9]+) / (?P<under>[0-9]+) (?![0-9.,/])
      | (?P<digits> [1-9][0-9]{0,2} (?:\ [0-9]{3})+ (?![0-9]) (?:[.,][0-9]*)?
                  | [0-9][0-9.,]*
                  | [.,][0-9]+ )
        (?: [eE](?P<power>[+-]?[0-9]+)
          | \ ?[×x*·]\ ?10 (?: \^(?P<raised>[+-]?[0-9]+) | (?P<signed>[+-][0-9]+) ) )?
    )""",
    re.VERBOSE,
)
_GROUPED = re.compile(r"[0-9]{1,3}(?:([.,])[0-9]{3})(?:\1[0-9]{3})*")
_LIST = re.compile(r"[0-9]+\.[0-9]+(?:,[0-9]+\.[0-9]+)+|[0-9]+,[0-9]+(?:\.[0-9]+,[0-9]+)+")
_ENDLESS = re.compile(r"[+-]? ?(?:nan|inf|infinity|∞)(?![a-z])", re.IGNORECASE)
_MORE_NUMBERS = re.compile(r"(?:^|[ ;,/&+x×:|-]|to|and|or)[.,]?[0-9]|['\"°][0-9]|,[ ]|[a-zµ²³]\ [+-]?[0-9]")
_MORE_FRACTION = re.compile(r"[ 0-9]*/ ?[0-9]")
_UNIT_LIKE = re.compile(r"[A-Za-zµ°%‰\"'][A-Za-z0-9µ°%‰\"'/·^ .()*-]{0,23}")
_PROPORTION = re.compile(r"([0-9]+(?:[.,][0-9]+)?) ?: ?([0-9]+(?:[.,][0-9]+)?)")  # 1:10, 8.5 : 1
_INCH_MADE = {"in", "ft", "thou", "tenth", "µin"}


def _number(plain, kind, default, possible=None):
    """One number with or without a unit, from text that `evened` has evened out."""
    if kind is ANGLE:
        parts = _degrees_minutes_seconds(plain)
        if parts is not None:
            return _Number(parts, kind.metric, True, [])
    if kind is RATIO and (parts := _PROPORTION.fullmatch(plain)):
        over, under = (_decimal(part, plain, kind)[0] for part in parts.groups())
        if under == 0:
            raise EntryError("bad-fraction", f"{quoted(plain)} divides by zero", _accepted(kind))
        return _Number(over / under, kind.metric, True, [])
    match = _NUMBER.match(plain)
    if not match:
        if _ENDLESS.match(plain):
            raise EntryError("not-finite", f"{quoted(plain)} is not a size", _accepted(kind))
        raise EntryError("not-a-number", f"{quoted(plain)} is not a number", _accepted(kind))
    rest = plain[match.end() :].strip()
    unit, notes = _named_unit(plain, rest, kind) if rest else (default, [])
    if match["top"]:
        number = _fraction(match, plain, kind)
        if kind is LENGTH and not rest and default.symbol not in _INCH_MADE:
            unit = kind.inch
            bare = match[0].strip()
            metric = write(float(number * unit.factor) * (-1 if match["sign"] == "-" else 1), default, 3)
            meant = "millimetres were" if default.symbol == "mm" else f"{default.symbol} was"
            notes = [
                f"Took {bare} as inches ({metric} {default.symbol}); "
                f'write "{bare} {default.symbol}" if {meant} meant.'
            ]
    else:
        power = match["power"] or match["raised"] or match["signed"] or "0"
        if len(power.lstrip("+-").lstrip("0")) > 3:
            raise EntryError("not-finite", f"{quoted(plain)} is beyond all sizes", _accepted(kind))
        size = Fraction(10) ** int(power) * (-1 if match["sign"] == "-" else 1)
        number, said = _decimal(
            match["digits"],
            plain,
            kind,
            possible
            and (lambda whole: possible[0] <= whole * size * unit.factor + unit.offset <= possible[1]),
        )
        number *= abs(size)
        notes = said + notes
    return _Number(-number if match["sign"] == "-" else number, unit, bool(rest), notes)


def _fraction(match, plain, kind):
    whole, top, under = (int(match[part] or 0) for part in ("whole", "top", "under"))
    if under == 0:
        raise EntryError("bad-fraction", f"{quoted(plain)} divides by zero", _accepted(kind))
    if match["whole"] and top >= under:
        raise EntryError(
            "bad-fraction",
            f"{quoted(plain)} has a fraction of one or more behind a whole number",
            _accepted(kind),
        )
    return whole + Fraction(top, under)


def _decimal(digits, plain, kind, may_be=None):
    """The number and what was taken, from digits with marks; `may_be` tells of a number whether it can be
    meant (None: any can)."""
    body = digits.replace(" ", "")
    marks = [mark for mark in body if mark in ".,"]
    notes = []
    if " " in digits:
        notes.append(f"Took {digits} as {body.replace(',', '.')}.")
    if len(marks) > 1:  # groups of thousands; the last mark is the decimal one if it differs from the others
        mixed = len(set(marks)) == 2
        head, tail = body.rsplit(marks[-1], 1) if mixed else (body, "")
        if not _GROUPED.fullmatch(head):
            if _LIST.fullmatch(body):
                raise EntryError(
                    "several-numbers", f"{quoted(plain)} is more than one number", _accepted(kind)
                )
            raise EntryError("not-a-number", f"{quoted(plain)} is not a number", _accepted(kind))
        body = re.sub("[.,]", "", head) + ("." + tail if mixed else "")
        notes.append(f"Took {digits} as {body}.")
    elif marks == [","] and " " not in digits and _GROUPED.fullmatch(body) and not body.startswith("0"):
        whole, body = body.replace(",", ""), body.replace(",", ".")
        if may_be is None or may_be(Fraction(whole)):
            raise EntryError(
                "two-ways", f"{quoted(digits)} can be read in two ways", f"write {whole} or {body}"
            )
        notes.append(f"Took {digits} as {body}, with a decimal comma.")
    elif not marks and re.fullmatch("0+[1-9][0-9]*", digits) and kind is not COUNT:
        # nobody writes a nought before a size but for its point: 0005 for .0005
        raise EntryError(
            "two-ways",
            f"{quoted(digits)} may have lost its decimal point",
            f"write it with its point, or {digits.lstrip('0')}",
        )
    return Fraction(body.replace(",", ".").removesuffix(".")), notes


def _named_unit(plain, rest, kind):
    """The unit that the text behind the number names, and what was taken."""
    canonical = canonical_spelling(rest)
    undecided = UNDECIDED.get(kind.name, {}).get(canonical.lower())
    if undecided:
        raise EntryError("unknown-unit", f"{rest} {undecided[0]}", undecided[1])
    unit = unit_among(kind, canonical) if canonical else None
    if unit:
        said = SAID.get((kind.name, canonical)) or SAID.get((kind.name, canonical.lower()))
        return unit, [said] if said else []
    other = every_spelling().get(canonical) or next(
        (other for other in KINDS.values() if canonical and unit_among(other, canonical)), None
    )
    if other:
        raise EntryError(
            "wrong-kind",
            f"{rest} is {with_article(other.name)}, and {with_article(kind.name)} belongs here",
            _accepted(kind),
        )
    if _MORE_FRACTION.match(rest):
        raise EntryError(
            "bad-fraction", f"{quoted(plain)} is not a fraction of whole numbers", _accepted(kind)
        )
    if _MORE_NUMBERS.search(rest):
        raise EntryError("several-numbers", f"{quoted(plain)} is more than one number", _accepted(kind))
    if _UNIT_LIKE.fullmatch(rest) and rest not in ("x", "e", "E"):
        problem = f"{quoted(rest)} is not a unit of {kind.name}"
        if canonical.lower() in spellings_of(kind)[1]:
            problem += " as it is written, for capitals matter here"
        raise EntryError("unknown-unit", problem, _accepted(kind))
    raise EntryError("not-a-number", f"{quoted(plain)} is not a number", _accepted(kind))


_SEXAGESIMAL = re.compile(
    r"""
    (?P<sign>[+-]?)\ ?
    (?: (?P<d>[0-9]+(?:[.,][0-9]+)?)\ ?(?:°|degrees?|degs?|d)\ ? )?
    (?: (?P<m>[0-9]+(?:[.,][0-9]+)?)\ ?(?:'|minutes?|mins?|m)\ ? )?
    (?: (?P<s>[0-9]+(?:[.,][0-9]+)?)\ ?(?:"|seconds?|secs?|s)\ ? )?
    """,
    re.VERBOSE | re.IGNORECASE,
)


def _degrees_minutes_seconds(plain):
    """Degrees from two or three of degrees, minutes and seconds; None if the text is not that."""
    match = _SEXAGESIMAL.fullmatch(plain)
    given = [match[part] for part in "dms" if match[part]] if match else []
    if len(given) < 2:
        return None
    wrong = None
    if any("." in part or "," in part for part in given[:-1]):
        wrong = "has decimals before its last part"
    elif match["d"] and match["s"] and not match["m"]:
        wrong = "has seconds but no minutes"
    values = {part: Fraction((match[part] or "0").replace(",", ".")) for part in "dms"}
    if values["s"] >= 60 or (match["d"] and values["m"] >= 60):
        wrong = "has minutes or seconds of 60 or more"
    if wrong:
        raise EntryError("bad-angle", f"{quoted(plain)} {wrong}", _accepted(ANGLE))
    degrees = values["d"] + values["m"] / 60 + values["s"] / 3600
    return -degrees if match["sign"] == "-" else degrees


_BEYOND = 10**30


def _to_float(exact, text, kind):
    # Nothing in a workshop is outside of this in SI units, and inside of it every conversion is safe.
    if exact and not Fraction(1, _BEYOND) < abs(exact) < _BEYOND:
        raise EntryError("not-finite", f"{quoted(text)} is beyond all sizes", _accepted(kind))
    return float(exact)


def with_article(name: str) -> str:
    """A kind's name as it stands in a sentence: a length, an angle."""
    return f"{'an' if name[0] in 'aeiou' else 'a'} {name}"


def _accepted(kind):
    return f"give {with_article(kind.name)} such as {kind.example}"


def _accepted_doubt(kind):
    number = kind.example.split(",")[0].split(" or ")[0]
    return f"give a value and its doubt, such as {number} ± {'1 K' if kind is TEMPERATURE else '0.01'}"


def quoted(text):
    """The text in quotation marks for a message: printable, on one line, 40 characters at most."""
    text = "".join(c if c.isprintable() else " " if c.isspace() else "\ufffd" for c in text[:200]).strip()
    return f'"{text if len(text) <= 40 else text[:39] + "…"}"'
