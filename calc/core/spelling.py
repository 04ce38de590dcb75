"""A unit by any spelling that people use for it."""

import re
from functools import cache

from calc.core.kinds import KINDS, Kind, Unit

SAID = {
    ("length", "tenth"): "Took a tenth as a ten-thousandth of an inch (0.0001 in).",
    ("length", "tenths"): "Took tenths as ten-thousandths of an inch (0.0001 in).",
    ("length", "mil"): "Took a mil as a thousandth of an inch (0.001 in).",
    ("length", "mils"): "Took mils as thousandths of an inch (0.001 in).",
    **{("force", word): f"Took {word} as pounds-force (lbf)." for word in ("lb", "lbs", "pound", "pounds")},
    ("force", "kg"): "Took kg as kilograms-force (kgf).",
    **{("torque", f"kg·{arm}"): f"Took kg·{arm} as kgf·{arm}." for arm in ("m", "cm")},
    **{("torque", f"{arm}·kg"): f"Took {arm}·kg as kgf·{arm}." for arm in ("m", "cm")},
    ("stiffness", "kg/mm"): "Took kg/mm as kgf/mm.",
    ("pressure", "kg/cm2"): "Took kg/cm² as kgf/cm².",
    ("stress", "kg/mm2"): "Took kg/mm² as kgf/mm².",
    ("flow rate", "sccm"): "Took sccm as cm³/min of gas at 0 °C and 1 atm.",
    (
        "leak rate",
        "sccm",
    ): "Took sccm as cm³/min of gas at 0 °C and 1 atm; at 20 °C it is 7 % more throughput.",
}

# Spellings that cannot be decided: refused, with what to write instead.
_GALLON = "may be a US or an imperial gallon", "write US gal or imp gal"
_QUART = "may be a US or an imperial quart", "write US qt or imp qt"
_PINT = "may be a US or an imperial pint", "write US pt or imp pt"
_GALLON_RATE = "may be in US or in imperial gallons", "write US gal/min, imp gal/min or L/min"
_OUNCE = "may be a US or an imperial fluid ounce", "write ml"
_GAUGE = (
    "says gauge or absolute, which is for the name of the field to say",
    "give the plain unit, such as 36.3 psi or 250 kPa",
)
UNDECIDED = {
    "volume": {
        **dict.fromkeys(("gal", "gallon", "gallons"), _GALLON),
        **dict.fromkeys(("qt", "qts", "quart", "quarts"), _QUART),
        **dict.fromkeys(("pt", "pts", "pint", "pints"), _PINT),
        **dict.fromkeys(("fl·oz", "floz"), _OUNCE),
    },
    "flow rate": dict.fromkeys(("gpm", "gph", "gal/min", "gal/h"), _GALLON_RATE),
    "pressure": dict.fromkeys(("psig", "psia", "barg", "bara", "bar·g", "bar·a", "bar·abs"), _GAUGE),
}


_SUPERSCRIPT = str.maketrans("⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻", "0123456789+-")
_SUBSCRIPT = str.maketrans("₀₁₂₃₄₅₆₇₈₉", "0123456789")
_VULGAR = {
    "½": "1/2",
    "⅓": "1/3",
    "⅔": "2/3",
    "¼": "1/4",
    "¾": "3/4",
    "⅕": "1/5",
    "⅖": "2/5",
    "⅗": "3/5",
    "⅘": "4/5",
    "⅙": "1/6",
    "⅚": "5/6",
    "⅐": "1/7",
    "⅛": "1/8",
    "⅜": "3/8",
    "⅝": "5/8",
    "⅞": "7/8",
    "⅑": "1/9",
    "⅒": "1/10",
}
_PLAIN = str.maketrans(
    {
        **{mark: " " + fraction for mark, fraction in _VULGAR.items()},
        **dict.fromkeys(
            "\t\n\r\u00a0\u2002\u2003\u2004\u2005\u2006\u2007\u2008\u2009\u200a\u202f\u205f\u3000", " "
        ),
        **dict.fromkeys("−‐‑–", "-"),
        **dict.fromkeys("⁄∕", "/"),
        **dict.fromkeys("⋅∙•", "·"),
        **dict.fromkeys("′’‘ʹ´", "'"),
        **dict.fromkeys("″”“ʺ", '"'),
        **dict.fromkeys("º˚", "°"),
        "μ": "µ",
        "℃": "°C",
        "℉": "°F",
        "\u212a": "K",
    }
)
_RAISED_FRACTION = re.compile("([⁰¹²³⁴-⁹]+)[⁄/]([₀-₉]+)")
_RAISED = re.compile("[⁰¹²³⁴-⁹⁺⁻]+")


def evened(text: str) -> str:
    """One character for each meaning: marks, dashes, spaces and raised digits evened out."""
    text = _RAISED_FRACTION.sub(
        lambda m: f" {m[1].translate(_SUPERSCRIPT)}/{m[2].translate(_SUBSCRIPT)}", text
    )
    text = _RAISED.sub(lambda m: "^" + m[0].translate(_SUPERSCRIPT), text)
    text = text.translate(_SUBSCRIPT).translate(_PLAIN).replace("''", '"').replace("**", "^")
    # what a copied text brings along unseen
    return re.sub(" +", " ", text).strip(" \ufeff\u200b\u200e\u200f")


_JOIN = re.compile(r"\.? ?[-·*×._] ?| ")


def canonical_spelling(plain: str) -> str:
    """A unit as it is looked up: "·" for every join, no brackets, no raised mark, no last full stop."""
    if plain.count("(") == plain.count(")"):
        plain = plain.replace("(", "").replace(")", "")
    plain = re.sub(" ?([/:]) ?", r"\1", plain.replace("^", "").replace("./", "/"))
    plain = plain.removesuffix(".").removeprefix("-")
    return _JOIN.sub("·", plain)


@cache
def spellings_of(kind: Kind) -> tuple[dict[str, Unit], dict[str, list[tuple[str, Unit]]]]:
    """Two tables for a kind: spelling -> unit, and spelling in small letters -> [(spelling, unit)]."""
    exact: dict[str, Unit] = {}
    for unit in kind.units:
        for spelling in (unit.symbol, *unit.spellings):
            spelling = canonical_spelling(evened(spelling))
            for variant in (spelling, spelling.replace("·", "")):
                if variant and exact.setdefault(variant, unit) is not unit:
                    raise ValueError(f"{variant} stands for two units of {kind.name}")
    folded: dict[str, list[tuple[str, Unit]]] = {}
    for spelling, unit in exact.items():
        folded.setdefault(spelling.lower(), []).append((spelling, unit))
    return exact, folded


@cache
def every_spelling() -> dict[str, Kind]:
    """Every spelling, exactly as written -> the kind it is most at home in: the first
    that has it as a symbol, else the first that has it at all."""
    table: dict[str, Kind] = {}
    for kind in KINDS.values():
        for unit in kind.units:
            table.setdefault(canonical_spelling(evened(unit.symbol)), kind)
    for kind in KINDS.values():
        for spelling in spellings_of(kind)[0]:
            table.setdefault(spelling, kind)
    return table


_SHORT_WORD = re.compile(r"(?<![^\W\d_])[mM][^\W\d_]{0,3}(?![^\W\d_])")


def _same_prefix(typed: str, spelling: str) -> bool:
    """Whether folding the case keeps milli and mega apart.

    A short word that begins with m or M keeps its first letter as typed, unless the
    whole is in capitals (MM, MBAR): then it can only be the capital form of the small one.
    """
    if typed.isupper() and sum(map(str.isalpha, typed)) > 1:
        return True
    return all(typed[m.start()] == spelling[m.start()] for m in _SHORT_WORD.finditer(spelling))


def unit_among(kind: Kind, canonical: str) -> Unit | None:
    exact, folded = spellings_of(kind)
    if canonical in exact:
        return exact[canonical]
    near = folded.get(canonical.lower(), [])
    if len({unit.symbol for _, unit in near}) != 1:
        return None
    return next((unit for spelling, unit in near if _same_prefix(canonical, spelling)), None)


def unit_spelled(kind: Kind, spelling: str) -> Unit | None:
    """The unit of a kind that is spelled so, or None.

    Capitals are taken as written first.  Failing that they are disregarded, but
    only where one unit alone fits and never so that a milli becomes a mega or the
    other way round.
    """
    return unit_among(kind, canonical_spelling(evened(spelling)))


def unit_named(kind: Kind, spelling: str) -> Unit:
    """The same for a name that the program itself says; ValueError where there is no such unit."""
    unit = unit_spelled(kind, spelling)
    if unit is None:
        raise ValueError(f"{kind.name} has no unit {spelling!r}")
    return unit
