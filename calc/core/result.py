"""What an evaluated calculator says, as data: no HTML, no unit system chosen yet."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from functools import lru_cache
from typing import Any

from calc.core.working import Number

VERDICT_WORDS = {
    "pass": "In order",
    "fail": "Not in order",
    "attention": "Look again",
    "unsure": "Cannot tell",
    "awaited": "Still to be read",
    "unjudged": "Not judged",
}


@dataclass(frozen=True)
class Text:
    """A sentence with quantities, or other sentences, in it: `Text("Bore {d} is large", {"d": number})`; the
    unit system is chosen when it is written."""

    template: str
    values: dict[str, Any]

    def parts(self) -> list[Any]:
        """Strings and what stands between them, in turn."""
        return [self.values[part] if i % 2 else part for i, part in enumerate(_pieces(self.template))]

    def plain(self, system: str = "metric") -> str:
        return "".join(
            p.text(system) if isinstance(p, Number) else p.plain(system) if isinstance(p, Text) else str(p)
            for p in self.parts()
        )


@lru_cache(maxsize=1024)
def _pieces(template: str) -> list[str]:
    """Words and names of what stands between them, in turn."""
    return re.split(r"\{(\w+)\}", template)


def say(template: str, **values: Any) -> Text:
    """A sentence with quantities: `say("{left} is left of the grip", left=number)`."""
    text = Text(template, values)
    # a placeholder without a value, or one that is not a plain name, is the author's slip: fail where it was
    # written
    if any("{" in words or "}" in words for words in text.parts()[::2]):
        raise KeyError(f"a placeholder is only a name in braces: {template}")
    return text


def as_text(words: str | Text) -> Text:
    return words if isinstance(words, Text) else Text(words.replace("{", "(").replace("}", ")"), {})


@dataclass(frozen=True)
class Source:
    """Where a formula or value comes from. `kind`: standard, handbook, analytic, common practice, maker,
    invented.

    `name` is the word or two that stand beside a line of working.
    """

    id: str
    text: str
    kind: str
    from_memory: bool = True
    name: str = ""

    @property
    def short(self) -> str:
        return self.name or self.id.replace("-", " ")


@dataclass(frozen=True)
class Caution:
    """A hazard of the work and what to do about it."""

    id: str
    text: str


@dataclass(frozen=True)
class Verdict:
    """`state`: pass, fail, attention or unsure, awaited where something must be read first, unjudged where a
    limit is not known; what the number means in words, and what to do next."""

    state: str
    headline: Text
    do: Text

    def __post_init__(self) -> None:
        if self.state not in VERDICT_WORDS:
            raise ValueError(f"no verdict state {self.state!r}")


@dataclass(frozen=True)
class Remark:
    """`level`: note or warning. `field` names the input it speaks of, if one; `suggestion` is what may have
    been meant there, to be typed."""

    level: str
    text: Text
    field: str = ""
    suggestion: str = ""


def note(template: str, **values: Any) -> Remark:
    return Remark("note", say(template, **values))


def warning(template: str, **values: Any) -> Remark:
    return Remark("warning", say(template, **values))


@dataclass(frozen=True)
class Table:
    """Rows that a calculator judges one by one, or that a page lists. Cells are strings, Texts or Numbers;
    `states` gives each row's verdict state; a `sortable` table may be put in the order of any column by its
    reader."""

    title: str
    columns: tuple[Any, ...]
    rows: tuple[tuple[Any, ...], ...]
    states: tuple[str, ...] = ()
    sortable: bool = False


@dataclass(frozen=True)
class Limit:
    """What decides a verdict: a number that must not lie below `low` nor above `high`. `words` say what lies
    within: "the grip left hot". `level` is what comes of it outside: "fail", or "attention"."""

    words: str
    number: Number
    low: Number | float | None = None
    high: Number | float | None = None
    level: str = "fail"

    def __post_init__(self) -> None:
        if self.level not in ("fail", "attention"):
            raise ValueError(f"a limit decides between pass and fail or attention, not {self.level!r}")

    def margins(self) -> tuple[float | None, float | None]:
        """How far above its lower and below its upper bound the number lies, negative outside, None where
        there is no bound. SI floats."""
        return (
            None if self.low is None else float(self.number) - float(self.low),
            None if self.high is None else float(self.high) - float(self.number),
        )


Shown = Callable[[], Iterable[Any]]
"""Makes what stands below a verdict, once that is to be seen."""


@dataclass(frozen=True)
class Answer:
    """What a calculator's function returns."""

    numbers: tuple[Number, ...]
    verdict: Verdict
    remarks: tuple[Remark, ...] = ()
    figures: Shown = tuple  # of Drawing or Plot of calc.core.drawing
    tables: Shown = tuple  # of Table
    cautions: tuple[Caution, ...] = ()  # those that only this result calls for
    limits: tuple[Limit, ...] = ()
    decides: tuple[Limit, ...] = ()


# A verdict as a calculator gives it to `answer`: its state, the headline, what to do.
Judged = tuple[str, str | Text, str | Text]


def answer(
    *numbers: Number,
    verdict: Judged,
    remarks: Iterable[Remark | None] = (),
    figures: Shown = tuple,
    tables: Shown = tuple,
    cautions: Iterable[Caution] = (),
    limits: Iterable[Limit] = (),
    decides: Iterable[Limit] = (),
) -> Answer:
    """Bundle outputs with `verdict=(state, headline, do)`, words as str or `say(...)`.

    `figures` and `tables` are functions that make them: of the many times that a calculator is worked for one
    answer only one is shown, and that after its verdict. None among them is dropped.

    `limits` are the `Limit`s that decide between passing and failing, or passing and looking again: where
    readings carry a doubt, they tell whether the verdict can be given at all. A calculator whose verdict
    counts the doubt itself names what it hangs on as what `decides`.
    """
    state, headline, do = verdict
    if not all(isinstance(n, Number) for n in numbers):
        raise TypeError("every output is named by its declaration: answer(Out.size(...), ...)")
    return Answer(
        numbers,
        Verdict(state, as_text(headline), as_text(do)),
        tuple(r for r in remarks if r),
        lambda: tuple(f for f in figures() if f),
        lambda: tuple(t for t in tables() if t),
        tuple(cautions),
        tuple(limits),
        tuple(decides),
    )


@dataclass(frozen=True)
class InputError(ValueError):
    """One refused entry. `str()` is the sentence in metric units; `sentence(system)` in either. `suggestion`
    is what may have been meant, a text that would be accepted."""

    field: str
    code: str
    text: Text
    suggestion: str = ""

    def sentence(self, system: str = "metric") -> str:
        return self.text.plain(system)

    def __str__(self) -> str:
        return self.sentence()


class Refused(ValueError):
    """Entries that a calculator does not accept; carries one `InputError` for each bad field."""

    def __init__(self, errors: Iterable[InputError]) -> None:
        self.errors = tuple(errors)
        super().__init__(" ".join(map(str, self.errors)))


def refused(field: str, code: str, template: str, suggestion: str = "", /, **values: Any) -> Refused:
    """`raise refused("bore", "empty", "{label}: is empty.", label="Bore")`: one entry that is not
    accepted."""
    return Refused([InputError(field, code, say(template, **values), suggestion)])


class Impossible(ValueError):
    """Raised inside a calculator when entries that are each fine do not go together."""

    def __init__(self, field: str, text: Text) -> None:
        self.field, self.text = field, text
        super().__init__(text.plain())


def impossible(field: str, template: str, **values: Any) -> Impossible:
    """`raise impossible("ring_bore", "is {bore}, not smaller than ...; give less than {outside}", ...)`; the
    label is put in front."""
    return Impossible(field, say(template, **values))
