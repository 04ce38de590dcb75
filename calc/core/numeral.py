"""One number with or without a unit, as people write it."""

import re
from collections.abc import Callable
from dataclasses import dataclass
from fractions import Fraction

from calc.core.entry import EntryError, accepted, quoted, with_article
from calc.core.kinds import ANGLE, COUNT, KINDS, LENGTH, RATIO, Kind, Unit
from calc.core.spelling import SAID, UNDECIDED, canonical_spelling, every_spelling, spellings_of, unit_among
from calc.core.writing import write

Range = tuple[float, float]
"""Least and most, SI."""


@dataclass
class Numeral:
    """A number as it was written: in its unit, whether the text named that, and what was taken where it left
    a choice."""

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


def one_number(plain: str, kind: Kind, default: Unit, possible: Range | None = None) -> Numeral:
    """One number with or without a unit, from text that `evened` has evened out."""
    if kind is ANGLE:
        parts = _degrees_minutes_seconds(plain)
        if parts is not None:
            return Numeral(parts, kind.metric, True, [])
    if kind is RATIO and (proportion := _PROPORTION.fullmatch(plain)):
        over, under = (_decimal(part, plain, kind)[0] for part in proportion.groups())
        if under == 0:
            raise EntryError("bad-fraction", f"{quoted(plain)} divides by zero", accepted(kind))
        return Numeral(over / under, kind.metric, True, [])
    match = _NUMBER.match(plain)
    if not match:
        if _ENDLESS.match(plain):
            raise EntryError("not-finite", f"{quoted(plain)} is not a size", accepted(kind))
        raise EntryError("not-a-number", f"{quoted(plain)} is not a number", accepted(kind))
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
            raise EntryError("not-finite", f"{quoted(plain)} is beyond all sizes", accepted(kind))
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
    return Numeral(-number if match["sign"] == "-" else number, unit, bool(rest), notes)


def _fraction(match: re.Match[str], plain: str, kind: Kind) -> Fraction:
    whole, top, under = (int(match[part] or 0) for part in ("whole", "top", "under"))
    if under == 0:
        raise EntryError("bad-fraction", f"{quoted(plain)} divides by zero", accepted(kind))
    if match["whole"] and top >= under:
        raise EntryError(
            "bad-fraction",
            f"{quoted(plain)} has a fraction of one or more behind a whole number",
            accepted(kind),
        )
    return whole + Fraction(top, under)


def _decimal(
    digits: str, plain: str, kind: Kind, may_be: Callable[[Fraction], bool] | None = None
) -> tuple[Fraction, list[str]]:
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
                    "several-numbers", f"{quoted(plain)} is more than one number", accepted(kind)
                )
            raise EntryError("not-a-number", f"{quoted(plain)} is not a number", accepted(kind))
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


def _named_unit(plain: str, rest: str, kind: Kind) -> tuple[Unit, list[str]]:
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
            accepted(kind),
        )
    if _MORE_FRACTION.match(rest):
        raise EntryError(
            "bad-fraction", f"{quoted(plain)} is not a fraction of whole numbers", accepted(kind)
        )
    if _MORE_NUMBERS.search(rest):
        raise EntryError("several-numbers", f"{quoted(plain)} is more than one number", accepted(kind))
    if _UNIT_LIKE.fullmatch(rest) and rest not in ("x", "e", "E"):
        problem = f"{quoted(rest)} is not a unit of {kind.name}"
        if canonical.lower() in spellings_of(kind)[1]:
            problem += " as it is written, for capitals matter here"
        raise EntryError("unknown-unit", problem, accepted(kind))
    raise EntryError("not-a-number", f"{quoted(plain)} is not a number", accepted(kind))


_SEXAGESIMAL = re.compile(
    r"""
    (?P<sign>[+-]?)\ ?
    (?: (?P<d>[0-9]+(?:[.,][0-9]+)?)\ ?(?:°|degrees?|degs?|d)\ ? )?
    (?: (?P<m>[0-9]+(?:[.,][0-9]+)?)\ ?(?:'|minutes?|mins?|m)\ ? )?
    (?: (?P<s>[0-9]+(?:[.,][0-9]+)?)\ ?(?:"|seconds?|secs?|s)\ ? )?
    """,
    re.VERBOSE | re.IGNORECASE,
)


def _degrees_minutes_seconds(plain: str) -> Fraction | None:
    """Degrees from two or three of degrees, minutes and seconds; None if the text is not that."""
    match = _SEXAGESIMAL.fullmatch(plain)
    if match is None:
        return None
    given = [match[part] for part in "dms" if match[part]]
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
        raise EntryError("bad-angle", f"{quoted(plain)} {wrong}", accepted(ANGLE))
    degrees = values["d"] + values["m"] / 60 + values["s"] / 3600
    return -degrees if match["sign"] == "-" else degrees
