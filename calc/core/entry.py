"""What was read of an entry, and what is said of one that cannot be read."""

from dataclasses import dataclass

from calc.core.kinds import TEMPERATURE, Kind, Unit


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


def with_article(name: str) -> str:
    """A kind's name as it stands in a sentence: a length, an angle."""
    return f"{'an' if name[0] in 'aeiou' else 'a'} {name}"


def accepted(kind: Kind) -> str:
    """What to give instead, as a clause."""
    return f"give {with_article(kind.name)} such as {kind.example}"


def accepted_doubt(kind: Kind) -> str:
    """The same for an entry with a ± in it."""
    number = kind.example.split(",")[0].split(" or ")[0]
    return f"give a value and its doubt, such as {number} ± {'1 K' if kind is TEMPERATURE else '0.01'}"


def quoted(text: str) -> str:
    """The text in quotation marks for a message: printable, on one line, 40 characters at most."""
    text = "".join(c if c.isprintable() else " " if c.isspace() else "\ufffd" for c in text[:200]).strip()
    return f'"{text if len(text) <= 40 else text[:39] + "…"}"'
