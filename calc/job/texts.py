"""Texts of readings: each names its unit and means the same wherever it goes; what it says as a number."""

import re
from functools import lru_cache

from calc.core.kinds import KINDS, LENGTH, Kind
from calc.core.reading import Entry, EntryError, quoted, read, with_article
from calc.core.working import Number
from calc.core.writing import decimals_for
from calc.declare.quantity import Quantity
from calc.job.contents import JobError

_BARE = re.compile(r"[-−+±0-9.,/()eE\s]*")  # names no unit


@lru_cache(maxsize=8192)
def cooled(label: str, shape, of: str, text: str, beside: tuple) -> tuple[Number, float]:
    """A length that was read warm, at 20 °C, and its standard uncertainty."""
    taken = _warm(label, shape, of).take({"": text, **dict(beside)}, "metric", {})
    return taken.value, dict(taken.doubts).get((), 0.0)


@lru_cache(maxsize=256)
def _warm(label: str, shape, of: str) -> Quantity:
    return Quantity(label, "", shape, ("-1 m", "1 m"), of=of)


def self_contained(text: str, kind: Kind | None, where: str = "Reading") -> str:
    """The text such that it means the same wherever it goes: its unit named, a decimal point. `kind` None:
    whatever its unit is of."""
    kind = kind or kind_of(text)
    if kind is None:
        raise JobError(
            f"{where}: {quoted(text)} is no size with its unit; give one such as 37.48 mm ± 0.01 mm or 32"
            " N·m."
        )
    try:
        entry = entry_of(text, kind)
    except EntryError as error:
        raise JobError(f"{where}: {error.problem}; {error.accepted}.") from None
    symbol = entry.unit.symbol
    plain = re.sub(r"(?<=[0-9])[ \u00a0\u202f](?=[0-9]{3})", "", text.replace(",", "."))
    for said in (
        text,
        plain,
        *(f"{said}{'' if symbol in '°′″' else ' '}{symbol}" for said in (text, plain) if said[-1:].isdigit()),
    ):
        if not reads(said, kind):
            continue
        again = entry_of(said, kind)
        if (
            (again.value, again.doubt) == (entry.value, entry.doubt)
            and not again.note
            and not (symbol and said[-1].isdigit())
        ):
            return said
    return text


@lru_cache(maxsize=4096)
def kind_of(text: str) -> Kind | None:
    """The kind of quantity that a text with its unit is most likely of, None where it is none: a unit written
    as its own symbol goes before another spelling, and a bare number is of a kind that has no unit."""
    if _BARE.fullmatch(text):
        likely = tuple(kind for kind in KINDS.values() if not kind.metric.symbol)
    else:
        likely = _kinds_like(_DENOMINATOR.sub(_nines, _DIGIT.sub("1", text))) or tuple(KINDS.values())
    kinds = [kind for kind in likely if reads(text, kind)]
    return min(
        kinds, key=lambda kind: not text.rstrip().endswith(entry_of(text, kind).unit.symbol), default=None
    )


_DIGIT, _DENOMINATOR = (
    re.compile(r"(?<![A-Za-zµ^])(?:[1-9]|0(?![.,])|(?<=[0-9])0)"),
    re.compile(r"(?<=/)[01]+"),
)


def _nines(found) -> str:
    return "9" * len(found[0])


@lru_cache(maxsize=1024)
def _kinds_like(shape: str) -> tuple:
    """The kinds that read a text with these marks and units; its digits are not looked at, so that thousands
    of sizes ask this a few times."""
    return tuple(kind for kind in KINDS.values() if reads(shape, kind))


def reads(text: str, kind: Kind) -> bool:
    try:
        return bool(entry_of(text, kind))
    except EntryError:
        return False


def read_size(text: str, kind: Kind, unit=None) -> Entry:
    """What a reading says, as `calc.quantity.read` does. No length on these engines is a metre: the comma in
    "54,987 mm" is a decimal one."""
    return read(text, kind, unit, (-1.0, 1.0) if kind is LENGTH else None)


@lru_cache(maxsize=16384)
def entry_of(text: str, kind: Kind) -> Entry:
    """What the text says in either system of units; EntryError where it says nothing, or something else in
    each."""
    metric, inch = (read_size(text, kind, kind.unit(system)) for system in ("metric", "inch"))
    if (metric.value, metric.doubt) != (inch.value, inch.doubt):
        raise EntryError(
            "unknown-unit",
            f"{quoted(text)} names no unit",
            f"give {with_article(kind.name)} such as {kind.example}",
        )
    return metric


def decimals_in(text: str, kind: Kind) -> int:
    """How many decimals of the metric unit show a reading no coarser than it was written."""
    entry = entry_of(text, kind)
    written = re.match(r"[^0-9]*[0-9]+[.,]([0-9]+)", text)
    return decimals_for(kind.metric, min(len(written[1]), 9) if written else 0, entry.unit)
