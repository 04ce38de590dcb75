"""An input that is a number with a unit: read off a part, chosen, known, or told by the engine's sheet."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass
from fractions import Fraction
from functools import cache, cached_property, partial

from calc.core.advice import Told, rounded
from calc.core.kinds import Unit
from calc.core.reading import Entry, EntryError, in_si, quoted, read
from calc.core.result import Refused, Remark, Text, refused, say
from calc.core.working import Form, Number, constant
from calc.core.writing import from_unit, stated, to_unit
from calc.declare.choice import for_chosen
from calc.declare.taken import Input, Taken
from calc.declare.warm import WARM, at_20, standard_doubt, temperatures
from calc.reference import engine
from calc.reference.materials import MATERIALS, OutsideTable


@dataclass(frozen=True)
class Quantity(Input):
    """An input that is a number with a unit.

    `hard` is (least, most) or (least, most, why): refused outside. `usual` is (least, most): remarked on
    outside. `tool` says what measures it (empty for a value that is chosen or known); `feature` names the
    engine feature that it measures; `of` names the material of the part, or the choice input that does, so
    that a warm reading can be brought to 20 °C. An `optional` one may be left empty: its value is then None.
    `doubt_of` names the reading whose expanded doubt this is: one written behind its ± is taken here, and
    carried no further.

    What an input is worth that nobody entered (see `calc.declare.standing`): one that `must` be read is
    missed; a `limit` (low, high, wear or nominal of its feature) and a value of the engine come from the
    engine's sheet; a size that `stands_in` is counted with all that the sheet allows it, as folded ones with
    a feature are; what is `assumed`, for the reason that it says, keeps its default; any other is missed. One
    that counts only `when` a choice is of some kind, ("stage", "new"), is none otherwise; one that is missed
    only when another was read, ("rocking",), is none where neither was and the sheet does not know it. A
    reading of a feature is held against that feature's own limits: at the `stage` "received" against wear,
    "finished" against those as made; with none, "", it is not: what the calculator itself judges, or a size
    that may be worked on within the limits of another.
    """

    label: str
    symbol: str
    form: Form
    hard: tuple[str, ...]
    usual: tuple[str, ...] = ()
    tool: str = ""
    feature: str = ""
    of: str = ""
    hint: str = ""
    fold: bool = False
    optional: bool = False
    doubt_of: str = ""
    must: bool = False
    stands_in: bool = False
    assumed: str = ""
    limit: str = ""
    stage: str = "received"
    when: tuple[str, ...] = ()
    name: str = ""
    default: str = ""

    @property
    def measured(self) -> bool:
        return bool(self.tool)

    def feature_for(self, chosen: dict[str, str]) -> str:
        """The feature's id for what was chosen: valve.stem_{valve} is that of an intake or of an exhaust
        valve."""
        return for_chosen(self.feature, chosen)

    @cached_property
    def hard_range(self) -> tuple[float, float]:
        return in_si(self.hard[0], self.form.kind), in_si(self.hard[1], self.form.kind)

    @cached_property
    def usual_range(self) -> tuple[float, float] | None:
        if not self.usual:
            return None
        return in_si(self.usual[0], self.form.kind), in_si(self.usual[1], self.form.kind)

    @cached_property
    def default_value(self) -> float | None:
        """SI value of the worked example: the default, or what the demo engine's sheet says of the feature;
        None where the example leaves it empty."""
        return self.example({})

    def example(self, chosen: dict[str, str]) -> float | None:
        """The same for what was chosen: an exhaust valve's sizes where the example is worked for one."""
        if self.default and not ("{" in self.feature and chosen):
            return in_si(self.default, self.form.kind)
        found = engine.demo().features.get(self.feature_for(chosen)) if self.feature else None
        size: float | None = getattr(found, self.limit or "nominal") if found else None
        if size is None and self.default:
            return in_si(self.default, self.form.kind)
        if size is None and not self.optional:
            raise KeyError(
                f"{self.name} has no default, and {engine.DEMO} no {self.limit or 'nominal'} of"
                f" {self.feature_for(chosen)}"
            )
        return size

    def default_text(self, system: str) -> str:
        return "" if self.default_value is None else self.form.bare(self.default_value, system)

    def number(self, value: float) -> Number:
        return constant(self.symbol, self.label, self.form, value, key=self.name)

    @property
    def parts(self) -> tuple[str, ...]:
        return tuple(WARM) if self.of else ()

    def take(self, texts: dict[str, str], system: str, chosen: dict[str, str]) -> Taken:
        example = None if "" in texts else self.example(chosen)
        if self.optional and (not texts[""].strip() if "" in texts else example is None):
            return Taken(self, texts, None, bool(texts))
        entry = self._read(texts[""], system) if "" in texts else None
        value = self.number(entry.value if entry else example or 0.0)
        u = standard_doubt(entry) if entry else 0.0
        told = {part: text for part, text in texts.items() if part and text.strip()}
        if told:
            value, u = self._at_20(value, u, told, system, chosen)
        meant = self._meant(entry, system) if entry else ""
        other_unit = entry and entry.named and entry.unit != self.form.unit(system)
        self.check(float(value), quoted(entry.text) if entry and other_unit else "", meant)
        return Taken(
            self,
            texts,
            value,
            bool(texts),
            notes=(entry.note,) if entry and entry.note else (),
            doubts=(((), u),) if u else (),
            doubt_told=entry is not None and entry.doubt is not None,
            meant=(((), meant),) if meant else (),
        )

    def _read(self, text: str, system: str) -> Entry:
        try:
            return read(text, self.form.kind, self.form.unit(system), self.hard_range)
        except EntryError as error:
            sentence = say("{problem}; {accepted}", problem=error.problem, accepted=error.accepted)
            raise self.refused(error.code, sentence) from None

    def _at_20(
        self, reading: Number, u: float, told: dict[str, str], system: str, chosen: dict[str, str]
    ) -> tuple[Number, float]:
        """The reading brought to 20 °C, and its standard doubt, m."""
        at = temperatures(told, system, self.refused)
        try:
            return at_20(reading, self.form, u, at, MATERIALS[chosen.get(self.of, self.of)])
        except OutsideTable as error:
            raise self.refused("out-of-range", say("{why}", why=str(error)), "part") from None

    def _meant(self, entry: Entry, system: str) -> str:
        """A bare number that is not usual here, with the unit of the other system where it would be: 1.4756
        in a field in millimetres was read off an inch tool."""
        own, other = (self.form.unit(s) for s in (system, "inch" if system == "metric" else "metric"))
        low, high = self.usual_range or self.hard_range
        if entry.named or own == other or low <= entry.value <= high:
            return ""
        text = _with_symbol(entry.text, other)
        try:
            meant = read(text, self.form.kind, own, self.hard_range).value
        except EntryError:
            return ""
        return text if low <= meant <= high else ""

    def check(self, value: float, typed: str = "", meant: str = "") -> None:
        """Raises `Refused` where the value lies outside the hard range; the sentence tells what was `typed`
        where that was in another unit, and what may have been `meant`."""
        low, high = self.hard_range
        if low <= value <= high:
            return
        got = "{typed} ({got})" if typed else "{got}"
        passed = "below {low}" if value < low else "above {high}"
        why = f" ({self.hard[2]})" if len(self.hard) > 2 else ""
        offer = ", or {meant} if that was meant" if meant else ""
        sentence = say(
            f"{got} is {passed}, past what this calculator can answer for{why};"
            f" give {{low}} to {{high}}{offer}",
            typed=typed,
            meant=meant,
            **self._beside(value, low, high),
        )
        raise self.refused("out-of-range", sentence, suggestion=meant)

    def _beside(self, value: float, low: float, high: float) -> dict[str, Told]:
        """A value and the range that it misses, as they are told: what is read here and typed again is
        accepted."""

        @cache
        def texts(system: str) -> dict[str, str]:
            unit, places = self.form.unit(system), self.form.places(system)
            exact = Fraction(repr(to_unit(value, unit)))
            ends = [
                rounded(limit, self.form, system, inwards)
                for limit, inwards in ((low, math.ceil), (high, math.floor))
            ]
            # to tell it from the limit
            enough = next(
                (more for more in range(places, places + 18) if not ends[0] <= round(exact, more) <= ends[1]),
                places,
            )
            least, most = (stated(from_unit(float(end), unit), unit, places) for end in ends)
            return {"low": least, "high": most, "got": stated(value, unit, enough)}

        def text(name: str, system: str) -> str:
            return texts(system)[name]

        return {name: Told(value, partial(text, name)) for name in ("low", "high", "got")}

    def refused(self, code: str, sentence: Text, part: str = "", suggestion: str = "") -> Refused:
        """The error of this input's entry, or of a `part` of it; its label is put in front of the
        sentence."""
        return refused(
            f"{self.name}.{part}" if part else self.name,
            code,
            f"{self.label}: " + sentence.template.rstrip(".") + ".",
            suggestion,
            **sentence.values,
        )

    def usual_remarks(self, taken: Taken) -> Iterable[Remark]:
        value = None if taken.value is None else float(taken.value)
        if value is None or not self.usual_range or self.usual_range[0] <= value <= self.usual_range[1]:
            return
        meant = dict(taken.meant).get((), "")
        words = (
            "{label} {got} is outside the usual {low} to {high}: {again} before you trust what follows."
            + " Did you mean {meant}?" * bool(meant)
        )
        sentence = say(
            words,
            again="measure again" if self.measured else "look at it again",
            label=self.label,
            meant=meant,
            **self._beside(value, *self.usual_range),
        )
        yield Remark("warning", sentence, self.name, meant)


def _with_symbol(text: str, unit: Unit) -> str:
    return f"{text.strip()}{'' if unit.symbol in '°′″' else ' '}{unit.symbol}"


def with_unit(text: str, shape: Form) -> str:
    """An entry that a page makes, with its unit named, so that it means the same in either unit system."""
    if not text.strip():
        return text
    metric, inch = (read(text, shape.kind, shape.unit(system)) for system in ("metric", "inch"))
    return (
        text if (metric.value, metric.doubt) == (inch.value, inch.doubt) else f"{text} {shape.metric.symbol}"
    )
