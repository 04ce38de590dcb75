"""An input that takes any of several kinds of quantity: the unit that is typed tells which."""
from dataclasses import dataclass
from functools import cached_property

from calc.conformance import COVERAGE
from calc.inputs import Taken
from calc.quantity import KINDS, EntryError, decimals_for, read, readings, to_unit
from calc.result import InputError, Refused, say
from calc.working import Form, Number, given as given_number


@dataclass(frozen=True)
class Open:
    """`kinds` may be meant, the likeliest first; `by` names a choice input that may say which: an option that is a kind's name.

    The value is a Number whose form has the kind that was found and the unit that was typed. Without a choice a bare number is
    refused, and where the unit could be meant as another quantity too, that is said.
    """
    label: str
    symbol: str
    kinds: tuple
    by: str = ""
    hint: str = ""
    fold: bool = False
    name: str = ""
    default: str = ""
    feature: str = ""
    measured = False
    parts = ()

    @cached_property
    def default_value(self) -> Number:
        return self._number(*readings(self.default, self.kinds)[0])

    def default_text(self, system: str) -> str:
        """The example's entry with its unit, which belongs to what is typed here."""
        example, kind = self.default_value, self.default_value.form.kind
        if system == "metric" or example.form.metric != kind.metric:
            return example.text()
        decimals = decimals_for(kind.inch, max(2, example.form.decimals), kind.metric)
        return Form(kind, decimals, kind.inch, kind.inch).write(example.value, system)

    def take(self, texts: dict[str, str], system: str, chosen: dict[str, str]) -> Taken:
        kind = KINDS.get(chosen.get(self.by, ""))
        text = texts.get("", self.default)
        try:
            found = [(kind, read(text, kind, kind.unit(system)))] if kind else readings(text, self.kinds)
        except EntryError as error:
            raise Refused([InputError(self.name, error.code, say(self.label + ": {problem}; {accepted}.", problem=error.problem, accepted=error.accepted))]) from None
        (kind, entry), others = found[0], found[1:]
        # MPa is a pressure and a stress, with the same numbers; but 35 lb is one thing as a mass and another as a force
        unlike = [other.name for other, it in others if other.dims != kind.dims or it.value != entry.value]
        notes = [entry.note] if entry.note else []
        if unlike:
            notes.append(f"Took {entry.unit.symbol} as a {kind.name}; it may be a {' or a '.join(unlike)} too.")
        return Taken(self, texts, self._number(kind, entry), bool(texts), tuple(notes), (((), entry.doubt / COVERAGE),) if entry.doubt else ())

    def _number(self, kind, entry) -> Number:
        places = len(f"{to_unit(entry.value, entry.unit):.9f}".rstrip("0").partition(".")[2])  # as it was typed, nine decimals at most
        return given_number(self.symbol, self.label, Form(kind, places, entry.unit, entry.unit), entry.value, key=self.name)

    def usual_remarks(self, taken: Taken):
        return ()


def any_of(label: str, symbol: str, kinds, *, by="", hint="", fold=False) -> Open:
    """An input that takes a quantity of any of `kinds`; see `Open`."""
    return Open(label, symbol, tuple(kinds), by, hint, fold)
