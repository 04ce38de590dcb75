"""An input that takes any of several kinds of quantity: the unit that is typed tells which."""

from collections.abc import Iterable
from dataclasses import dataclass
from functools import cached_property
from typing import Any

from calc.core.conformance import COVERAGE
from calc.core.kinds import KINDS, RATIO, Kind
from calc.core.reading import Entry, EntryError, read, readings, with_article
from calc.core.result import refused
from calc.core.working import Form, Number, constant
from calc.core.writing import decimals_for, decimals_of
from calc.declare.taken import Input, Taken


@dataclass(frozen=True)
class Open(Input):
    """`kinds` may be meant, the likeliest first; `by` names a choice input that may say which: an option that
    is a kind's name.

    The value is a Number whose form has the kind that was found and the unit that was typed. A bare number is
    taken as of the kind `bare`, and refused where there is none; where the unit could be meant as another
    quantity too, that is said.
    """

    label: str
    symbol: str
    kinds: tuple[Kind, ...]
    by: str = ""
    bare: Kind | None = None
    hint: str = ""
    fold: bool = False
    name: str = ""
    default: str = ""
    feature: str = ""
    when: tuple[str, ...] = ()

    @cached_property
    def default_value(self) -> Number:
        return self._number(*readings(self.default, self.kinds)[0])

    def default_text(self, system: str) -> str:
        """The example's entry with its unit, which belongs to what is typed here."""
        example = self.default_value
        shape = example.sure_form
        kind = shape.kind
        if system == "metric" or shape.metric != kind.metric:
            return self.default
        decimals = decimals_for(kind.inch, max(2, shape.decimals), kind.metric)
        return Form(kind, decimals, kind.inch, kind.inch).write(example.value, system)

    def take(self, texts: dict[str, str], system: str, chosen: dict[str, str]) -> Taken:
        text = texts.get("", self.default)
        try:
            found = self._read(text, system, KINDS.get(chosen.get(self.by, "")))
        except EntryError as error:
            # a bare 0.25 would be taken as of another kind: a ratio is advised as it can be told from one
            accepted = error.accepted
            if self.bare not in (None, RATIO):
                accepted = accepted.replace(RATIO.example, "25 % or 1:4")
            words = self.label + ": {problem}; {accepted}."
            raise refused(self.name, error.code, words, problem=error.problem, accepted=accepted) from None
        (kind, entry), others = found[0], found[1:]
        # MPa is a pressure and a stress, with the same numbers; but 35 lb is one thing as a mass and another
        # as a force
        unlike = [other.name for other, it in others if other.dims != kind.dims or it.value != entry.value]
        notes = [entry.note] if entry.note else []
        if unlike:
            notes.append(
                f"Took {entry.unit.symbol} as {with_article(kind.name)}; it may be"
                f" {' or '.join(map(with_article, unlike))} too."
            )
        return Taken(
            self,
            texts,
            self._number(kind, entry),
            bool(texts),
            tuple(notes),
            (((), entry.doubt / COVERAGE),) if entry.doubt else (),
        )

    def _read(self, text: str, system: str, kind: Kind | None) -> list[tuple[Kind, Entry]]:
        """Kinds that the text can be meant as, and what it is in each. Raises EntryError."""
        if kind:
            return [(kind, read(text, kind, kind.unit(system)))]
        try:
            return readings(text, self.kinds)
        except EntryError as error:
            if not self.bare or error.code != "unknown-unit":
                raise
        try:
            return [(self.bare, read(text, self.bare, self.bare.unit(system)))]
        except EntryError as error:
            *names, last = (kind.name for kind in self.kinds)
            raise EntryError(
                error.code,
                error.problem,
                f"give {with_article(', '.join(names))} or {last}, such as {self.bare.example}",
            ) from None

    def _number(self, kind: Kind, entry: Entry) -> Number:
        places = decimals_of(entry.value, entry.unit, 10)  # as it was typed, ten digits at most
        return constant(
            self.symbol, self.label, Form(kind, places, entry.unit, entry.unit), entry.value, key=self.name
        )

    def check(self, value: float) -> None:
        """No number lies outside its range: what a quantity of any kind may be, its calculator says."""


def any_of(
    label: str,
    symbol: str,
    kinds: Iterable[Kind],
    *,
    by: str = "",
    bare: Kind | None = None,
    example: str = "",
    hint: str = "",
    fold: bool = False,
) -> Any:
    """An input that takes a quantity of any of `kinds`; see `Open`."""
    return Open(label, symbol, tuple(kinds), by, bare, hint, fold, default=example)
