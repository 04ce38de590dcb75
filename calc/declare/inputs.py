"""What a calculator asks for: quantities, choices and grids, each able to read an entry or refuse it in one sentence."""

import math
import re
from dataclasses import dataclass, replace
from difflib import get_close_matches
from fractions import Fraction
from functools import cached_property
from typing import Any

from calc.core.advice import Told, at_least, rounded
from calc.core.conformance import COVERAGE
from calc.core.kinds import EXPANSION, TEMPERATURE
from calc.core.reading import EntryError, quantity, quoted, read
from calc.core.result import InputError, Refused, Remark, say
from calc.core.working import Form, Number, constant, form, step
from calc.core.writing import from_unit, stated, to_unit
from calc.formulas.warm_reading import (
    ALPHA_DOUBT,
    GAUGE_ALPHA,
    at_reference,
    expansion_doubt,
    temperature_doubt,
)
from calc.reference import engine
from calc.reference.materials import MATERIALS, REFERENCE, OutsideTable
from calc.reference.sources import THERMAL

WARM = {
    "part": "part temperature",
    "gauge": "gauge temperature",
}  # what may be told beside a measured length: entry name.part
_WARM_RANGE = (quantity("-60 °C", TEMPERATURE), quantity("150 °C", TEMPERATURE))


@dataclass(frozen=True)
class Origin:
    """Where a value comes from. `kind`: read (typed now), job (when, by whom), sheet (the engine's), assumed (common practice, for a reason),
    example (nothing but the demonstration), missed (still to be read), none (does not count). `words` say which, by whom or why; `stage`
    is that of a job's reading."""

    kind: str
    words: str = ""
    stage: str = ""


READ, EXAMPLE, MISSED, ASSUMED, NONE = (
    Origin(kind) for kind in ("read", "example", "missed", "assumed", "none")
)


@dataclass(frozen=True)
class Taken:
    """An input as it was taken: its entry texts by part name, the value, whether the reader entered it, its standard doubt, where it
    comes from, and of one that stands in all that the engine's sheet allows it (least and greatest, SI)."""

    input: object
    texts: dict
    value: object
    entered: bool
    notes: tuple = ()
    doubts: tuple = ()  # (index path into value, standard uncertainty in SI)
    doubt_told: bool = False  # a doubt stood behind its ±, be it none
    origin: Origin = EXAMPLE
    span: tuple = ()
    meant: tuple = ()  # (index path into value, what may have been meant instead of an unusual number, as a text to type)

    @property
    def called(self) -> str:
        """What it is called within a sentence; of a grid that is not whole, the cell that comes next."""
        words = self.notes[0] if self.notes and self.origin is MISSED else self.input.label
        return words[:1].lower() + words[1:]

    @property
    def read(self) -> tuple:
        """Names of the entries that were filled: its own, or cells of a grid, all of them where it was filled as a whole."""
        if isinstance(self.input, Grid) and self.text.strip():
            return (self.input.name, *(cell.name for cell in self.input.cells.values()))
        return tuple(
            f"{self.input.name}.{part}" if part else self.input.name
            for part, text in self.texts.items()
            if text.strip()
        )

    @property
    def text(self) -> str:
        return self.texts.get("", "")


@dataclass(frozen=True)
class Quantity:
    """An input that is a number with a unit.

    `hard` is (least, most) or (least, most, why): refused outside. `usual` is (least, most): remarked on outside. `tool` says what
    measures it (empty for a value that is chosen or known); `feature` names the engine feature that it measures; `of` names the
    material of the part, or the choice input that does, so that a warm reading can be brought to 20 °C. An `optional` one may be
    left empty: its value is then None. `doubt_of` names the reading whose expanded doubt this is: one written behind its ± is
    taken here, and carried no further.

    What an input is worth that nobody entered (see `calc.declare.standing`): one that `must` be read is missed; a `limit` (low, high, wear or
    nominal of its feature) and a value of the engine come from the engine's sheet; a size that `stands_in` is counted with all that the
    sheet allows it, as folded ones with a feature are; what is `assumed`, for the reason that it says, keeps its default; any other is missed.
    One that counts only `when` a choice is of some kind, ("stage", "new"), is none otherwise; one that is missed only when another was
    read, ("rocking",), is none where neither was and the sheet does not know it.
    A reading of a feature is held against that feature's own limits: at the `stage` "received" against wear, "finished" against those as made;
    with none, "", it is not: what the calculator itself judges, or a size that may be worked on within the limits of another.
    """

    label: str
    symbol: str
    form: Form
    hard: tuple
    usual: tuple = ()
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
    when: tuple = ()
    name: str = ""
    default: str = ""

    @property
    def measured(self) -> bool:
        return bool(self.tool)

    def feature_for(self, chosen: dict) -> str:
        """The feature's id for what was chosen: valve.stem_{valve} is that of an intake or of an exhaust valve."""
        return for_chosen(self.feature, chosen)

    @cached_property
    def hard_range(self) -> tuple[float, float]:
        return quantity(self.hard[0], self.form.kind), quantity(self.hard[1], self.form.kind)

    @cached_property
    def usual_range(self) -> tuple[float, float] | None:
        return tuple(quantity(x, self.form.kind) for x in self.usual) if self.usual else None

    @cached_property
    def default_value(self) -> float | None:
        """SI value of the worked example: the default, or what the demo engine's sheet says of the feature; None where the example
        leaves it empty."""
        return self.example({})

    def example(self, chosen: dict) -> float | None:
        """The same for what was chosen: an exhaust valve's sizes where the example is worked for one."""
        if self.default and not ("{" in self.feature and chosen):
            return quantity(self.default, self.form.kind)
        found = engine.demo().features.get(self.feature_for(chosen)) if self.feature else None
        size = getattr(found, self.limit or "nominal") if found else None
        if size is None and self.default:
            return quantity(self.default, self.form.kind)
        if size is None and not self.optional:
            raise KeyError(
                f"{self.name} has no default, and {engine.DEMO} no {self.limit or 'nominal'} of"
                f" {self.feature_for(chosen)}"
            )
        return size

    def default_text(self, system: str) -> str:
        """The default as it stands in the form's field in that system, without unit."""
        return "" if self.default_value is None else self.form.bare(self.default_value, system)

    def number(self, value: float) -> Number:
        return constant(self.symbol, self.label, self.form, value, key=self.name)

    @property
    def parts(self) -> tuple[str, ...]:
        """Names behind the input's own that an entry may have."""
        return tuple(WARM) if self.of else ()

    def take(self, texts: dict[str, str], system: str, chosen: dict[str, str]) -> Taken:
        """Read the entry and what is told beside it; raises `Refused`."""
        if self.optional and (not texts[""].strip() if "" in texts else self.example(chosen) is None):
            return Taken(self, texts, None, bool(texts))
        doubt_told, entry = False, None
        if "" in texts:
            entry = self._read(texts[""], system)
            value, notes, u = self.number(entry.value), (entry.note,) if entry.note else (), _standard(entry)
            doubt_told = entry.doubt is not None
        else:
            value, notes, u = self.number(self.example(chosen)), (), 0.0
        told = {part: text for part, text in texts.items() if part and text.strip()}
        if told:
            value, u = self._at_reference(value, u, told, system, chosen)
        meant = self._meant(entry, system) if entry else ""
        self.check(
            float(value),
            quoted(entry.text) if entry and entry.named and entry.unit != self.form.unit(system) else "",
            meant,
        )
        return Taken(
            self,
            texts,
            value,
            bool(texts),
            notes,
            (((), u),) if u else (),
            doubt_told,
            meant=(((), meant),) if meant else (),
        )

    def _read(self, text, system):
        try:
            return read(text, self.form.kind, self.form.unit(system), self.hard_range)
        except EntryError as error:
            raise Refused(
                [
                    self.refusal(
                        error.code,
                        say("{problem}; {accepted}", problem=error.problem, accepted=error.accepted),
                    )
                ]
            ) from None

    def _at_reference(self, reading, u, told, system, chosen):
        """The reading brought to 20 °C, and its standard doubt with that of the temperatures and of the part's expansion. Where no doubt
        is told at all, the reading is taken as it is."""
        material = MATERIALS[chosen.get(self.of, self.of)]
        temperatures, doubts = {}, {}
        for part, words in WARM.items():
            try:
                entry = (
                    read(told[part], TEMPERATURE, TEMPERATURE.unit(system), _WARM_RANGE)
                    if part in told
                    else None
                )
            except EntryError as error:
                raise Refused(
                    [
                        self.refusal(
                            error.code,
                            say(
                                f"{words}: " + "{problem}; {accepted}",
                                problem=error.problem,
                                accepted=error.accepted,
                            ),
                            part,
                        )
                    ]
                ) from None
            temperatures[part], doubts[part] = (entry.value, _standard(entry)) if entry else (REFERENCE, 0.0)
            if not _WARM_RANGE[0] <= temperatures[part] <= _WARM_RANGE[1]:
                raise Refused(
                    [
                        self.refusal(
                            "out-of-range",
                            say(
                                f"{words} " + "{t} is no temperature to measure at; give {low} to {high}",
                                **{
                                    key: constant("", "", form(TEMPERATURE, 0), value)
                                    for key, value in zip(
                                        ("t", "low", "high"), (temperatures[part], *_WARM_RANGE)
                                    )
                                },
                            ),
                            part,
                        )
                    ]
                )
        try:
            alpha = material.mean_alpha(temperatures["part"])
        except OutsideTable as error:
            raise Refused([self.refusal("out-of-range", say("{why}", why=str(error)), "part")]) from None
        expansion = form(EXPANSION, 1)
        numbers = [
            constant(f"α_{letter}", words, expansion, a, THERMAL)
            for letter, words, a in (
                ("part", f"Expansion of {material.name}", alpha),
                ("gauge", "Expansion of a steel gauge", GAUGE_ALPHA),
            )
        ]
        degrees = [
            constant(f"t_{part}", words.capitalize(), form(TEMPERATURE, 1), temperatures[part])
            for part, words in WARM.items()
        ]
        zero = constant("T_0", "Reference temperature", form(TEMPERATURE, 0), REFERENCE)
        read_as = constant(
            f"{self.symbol}{',' if '_' in self.symbol else '_'}read",
            f"{self.label}, as read",
            self.form,
            float(reading),
        )
        value = step(
            self.symbol,
            f"{self.label} at 20 °C",
            self.form,
            at_reference(read_as, *numbers, *degrees, zero),
            THERMAL,
            self.name,
        )
        size = abs(float(reading))
        if not u and not any(doubts.values()):
            return value, 0.0
        return value, math.hypot(
            u,
            temperature_doubt(size, alpha, GAUGE_ALPHA, doubts["part"], doubts["gauge"]),
            expansion_doubt(size, alpha, ALPHA_DOUBT / COVERAGE, temperatures["part"], REFERENCE),
        )

    def _meant(self, entry, system) -> str:
        """A bare number that is not usual here, with the unit of the other system where it would be: 1.4756 in a field in millimetres
        was read off an inch tool."""
        own, other = (self.form.unit(s) for s in (system, "inch" if system == "metric" else "metric"))
        low, high = self.usual_range or self.hard_range
        if entry.named or own == other or low <= entry.value <= high:
            return ""
        text = f"{entry.text.strip()}{'' if other.symbol in '°′″' else ' '}{other.symbol}"
        try:
            meant = read(text, self.form.kind, own, self.hard_range).value
        except EntryError:
            return ""
        return text if low <= meant <= high else ""

    def check(self, value: float, typed: str = "", meant: str = ""):
        """Raises `Refused` where the value lies outside the hard range; the sentence tells what was `typed` where that was in another unit,
        and what may have been `meant`."""
        low, high = self.hard_range
        if low <= value <= high:
            return
        why = f" ({self.hard[2]})" if len(self.hard) > 2 else ""
        side, limit = ("below", "{low}") if value < low else ("above", "{high}")
        got, offer = (
            "{typed} ({got})" if typed else "{got}",
            (", or {meant} if that was meant" if meant else ""),
        )
        raise Refused(
            [
                replace(
                    self.refusal(
                        "out-of-range",
                        say(
                            got
                            + " is "
                            + side
                            + " "
                            + limit
                            + ", past what this calculator can answer for"
                            + why
                            + "; give {low} to {high}"
                            + offer,
                            typed=typed,
                            meant=meant,
                            **self._beside(value, low, high),
                        ),
                    ),
                    suggestion=meant,
                )
            ]
        )

    def _beside(self, value, low, high) -> dict:
        """A value and the range that it misses, as they are told: what is read here and typed again is accepted."""
        texts = {"low": {}, "high": {}, "got": {}}
        for system in ("metric", "inch"):
            unit, places = self.form.unit(system), self.form.places(system)
            ends, exact = [], Fraction(repr(to_unit(value, unit)))
            for name, limit, inwards in (("low", low, math.ceil), ("high", high, math.floor)):
                ends.append(rounded(limit, self.form, system, inwards))
                texts[name][system] = stated(from_unit(float(ends[-1]), unit), unit, places)
            enough = next(
                (more for more in range(places, places + 18) if not ends[0] <= round(exact, more) <= ends[1]),
                places,
            )  # to tell it from the limit
            texts["got"][system] = stated(value, unit, enough)
        return {name: Told(value, texts[name]) for name in texts}

    def refusal(self, code: str, text, part: str = "") -> InputError:
        return InputError(
            f"{self.name}.{part}" if part else self.name,
            code,
            say(f"{self.label}: " + text.template.rstrip(".") + ".", **text.values),
        )

    def usual_remarks(self, taken: Taken):
        value = None if taken.value is None else float(taken.value)
        if value is not None and self.usual_range and not self.usual_range[0] <= value <= self.usual_range[1]:
            again, meant = (
                "measure again" if self.measured else "look at it again",
                dict(taken.meant).get((), ""),
            )
            yield Remark(
                "warning",
                say(
                    "{label} {got} is outside the usual {low} to {high}: {again} before you trust what"
                    " follows." + " Did you mean {meant}?" * bool(meant),
                    again=again,
                    label=self.label,
                    meant=meant,
                    **self._beside(value, *self.usual_range),
                ),
                self.name,
                meant,
            )


@dataclass(frozen=True)
class Choice:
    """An input that is one of several named options. `options` maps id to words; `exact` where capitals tell options apart (a
    hole H7, a shaft h7).

    What nobody chose: what `must` be chosen is missed; a material of the engine (`feature`) comes from the engine's sheet; what is
    `assumed` keeps its default, and is told with the verdict. Any other is a question put to the calculator, whose first answer
    stands where all see it. `which` tells which of several parts is meant (intake or exhaust): it is chosen once for a page.
    """

    label: str
    options: dict
    hint: str = ""
    fold: bool = False
    exact: bool = False
    must: bool = False
    assumed: str = ""
    feature: str = ""
    which: bool = False
    when: tuple = ()
    name: str = ""
    default: str = ""
    symbol: str = ""
    measured = False
    parts = ()

    def feature_for(self, chosen: dict) -> str:
        return for_chosen(self.feature, chosen)

    def default_text(self, system: str) -> str:
        return self.default

    @property
    def default_value(self) -> str:
        return self.default

    def example(self, chosen: dict) -> str:
        """What the worked example has for what was chosen: the material of an exhaust valve where it is worked for one."""
        found = engine.demo().materials.get(self.feature_for(chosen)) if "{" in self.feature else None
        return found if found in self.options else self.default

    def take(self, texts: dict[str, str], system: str, chosen: dict[str, str]) -> Taken:
        if "" not in texts:
            return Taken(self, texts, self.example(chosen), False)
        text = texts[""].strip()
        ids = (
            [text]
            if text in self.options
            else (
                []
                if self.exact
                else [id for id, words in self.options.items() if _plain(text) in (_plain(words), _plain(id))]
            )
        )
        if len(ids) != 1:
            what = f"{quoted(text)} is not a choice" if text else "is empty"
            raise Refused(
                [
                    InputError(
                        self.name,
                        "unknown-choice",
                        say(
                            "{label}: {what}; choose one of {accepted}.",
                            label=self.label,
                            what=what,
                            accepted=self._near(text),
                        ),
                    )
                ]
            )
        return Taken(self, texts, ids[0], True)

    def _near(self, text: str) -> str:
        """The options; the nearest three where there are too many for a sentence."""
        if len(self.options) <= 12:
            return ", ".join(self.options)
        folded = {_plain(id): id for id in self.options}
        begun = [
            id for key, id in folded.items() if text and re.match(re.escape(_plain(text)) + r"(?![\d.])", key)
        ]  # "M8" is the beginning of M8x1.25
        close = [folded[key] for key in get_close_matches(_plain(text), folded, 3, 0.3)]
        near = list(dict.fromkeys([*begun, *close]))[:3] or list(self.options)[:3]
        return f"{len(self.options)}, such as {', '.join(near)}"

    def usual_remarks(self, taken: Taken):
        return ()


@dataclass(frozen=True)
class Column:
    """One column of a grid: what is read there, as for `Quantity`. A cell of an `optional` one may be empty in a filled row."""

    label: str
    symbol: str
    form: Form
    hard: tuple
    usual: tuple = ()
    optional: bool = False
    feature: str = ""  # whose places the rows are named after


@dataclass(frozen=True)
class Grid:
    """An input of several rows: eight valves, four chambers, a chain of sizes.

    As text, rows stand on lines of their own or are parted by |, cells by ; or a tab; a column pasted from elsewhere fits as it
    is. A cell may be entered by itself as name.row.column, counted from 1. Rows left empty are skipped as long as `least` rows
    are filled; the value is one tuple of Numbers a row, None for a skipped row and for an empty cell of an optional column.
    """

    label: str
    rows: tuple
    columns: tuple
    least: int
    tool: str = ""
    feature: str = ""
    hint: str = ""
    fold: bool = False
    when: tuple = ()
    name: str = ""
    default: str = ""
    symbol: str = ""

    @property
    def measured(self) -> bool:
        return bool(self.tool)

    @property
    def optional(self) -> bool:
        """One that may be left quite empty."""
        return self.least == 0

    @property
    def parts(self) -> tuple[str, ...]:
        return tuple(f"{r + 1}.{c + 1}" for r in range(len(self.rows)) for c in range(len(self.columns)))

    @cached_property
    def cells(self) -> dict:
        """Each cell as a quantity of its own, by (row, column)."""
        return {
            (r, c): Quantity(
                f"{self.label}, {row}" + (f", {column.label}" if len(self.columns) > 1 else ""),
                _cell_symbol(column.symbol, row),
                column.form,
                column.hard,
                column.usual,
                self.tool,
                optional=column.optional,
                name=f"{self.name}.{r + 1}.{c + 1}",
            )
            for r, row in enumerate(self.rows)
            for c, column in enumerate(self.columns)
        }

    @cached_property
    def default_texts(self) -> dict:
        """The example's entry in each filled cell, with its unit where it names one."""
        return {place: text for place, text in self._split(self.default).items() if text}

    @cached_property
    def default_value(self) -> tuple:
        return self._rows(
            {
                place: read(text, self.cells[place].form.kind, self.cells[place].form.metric).value
                for place, text in self.default_texts.items()
            }
        )

    def default_text(self, system: str) -> str:
        return " | ".join(
            "; ".join(
                "" if row is None or row[c] is None else self.cells[r, c].form.bare(row[c], system)
                for c in range(len(self.columns))
            )
            for r, row in enumerate(self.default_value)
        )

    def take(self, texts: dict[str, str], system: str, chosen: dict[str, str]) -> Taken:
        values, told = self._cells_read(texts, system, chosen)
        for r in range(len(self.rows)):
            missing = [
                self.cells[r, c]
                for c, column in enumerate(self.columns)
                if (r, c) not in values and not column.optional
            ]
            if missing and (self._started(values, r) or self.least == len(self.rows)):
                leave = ", or leave the whole row empty" if self.least < len(self.rows) else ""
                raise Refused(
                    [
                        InputError(
                            missing[0].name,
                            "empty",
                            say(
                                "{label}: is empty; give {what}.",
                                label=missing[0].label,
                                what=f"a {missing[0].form.kind.name}{leave}",
                            ),
                        )
                    ]
                )
        rows = self._rows(values)
        filled = sum(row is not None for row in rows)
        if filled < self.least:
            got = (
                "no row is" if not filled else "only one row is" if filled == 1 else f"only {filled} rows are"
            )
            raise Refused(
                [
                    InputError(
                        self.name,
                        "too-few",
                        say(
                            "{label}: {got} filled; give at least {least}.",
                            label=self.label,
                            got=got,
                            least=self.least,
                        ),
                    )
                ]
            )
        return Taken(self, texts, rows, bool(texts), **told)

    def partly(self, texts: dict[str, str], system: str, chosen: dict[str, str]) -> Taken:
        """As it was taken while cells of it are still to be read: what was read among what the example has there, and in the note what comes next."""
        values, told = self._cells_read({"": "", **texts}, system, chosen)
        short = [
            self.cells[r, c].label
            for r in range(len(self.rows))
            for c, column in enumerate(self.columns)
            if (r, c) not in values
            and not column.optional
            and (self._started(values, r) or self.least == len(self.rows))
        ]
        filled = sum(self._started(values, r) for r in range(len(self.rows)))
        words = short[0] if short else f"{self.label}, {self.least - filled} more"
        return Taken(self, texts, self._rows(self.example_cells | values), True, **told | {"notes": (words,)})

    @property
    def example_cells(self) -> dict:
        """The example's cells as numbers, by their place."""
        return {
            (r, c): self.cells[r, c].number(x)
            for r, row in enumerate(self.default_value)
            if row
            for c, x in enumerate(row)
            if x is not None
        }

    def example(self, chosen: dict) -> tuple:
        """The example's rows, as a calculator takes them."""
        return self._rows(self.example_cells)

    def _cells_read(self, texts: dict[str, str], system: str, chosen: dict[str, str]) -> tuple:
        """Values of the cells that are filled by their place, and what is told beside them: notes, doubts and what may have been meant."""
        entered = dict(self.default_texts) if "" not in texts else self._split(texts[""])
        by_default = set(entered) if "" not in texts else set()
        for part, text in texts.items():
            if part:
                row, column = part.split(".")
                place = int(row) - 1, int(column) - 1
                entered[place] = text
                by_default.discard(place)
        values, notes, doubts, meant, errors = {}, [], [], [], []
        for place, text in entered.items():
            if not text.strip():
                continue
            try:
                cell = self.cells[place]
                taken = cell.take({"": text}, "metric" if place in by_default else system, chosen)
                values[place] = taken.value
                notes += taken.notes
                doubts += [(place, u) for _, u in taken.doubts]
                meant += [(place, text) for _, text in taken.meant]
            except Refused as refused:
                errors += refused.errors
        if errors:
            raise Refused(errors)
        return values, {"notes": tuple(notes), "doubts": tuple(doubts), "meant": tuple(meant)}

    def preset(self, presets: dict[str, str]) -> dict:
        """What a page enters by itself, {name or name.row.column: text}, as the text of each cell that it speaks of."""
        texts = {}
        if self.name in presets:
            texts = dict.fromkeys(self.cells, "") | self._split(presets[self.name])
        return texts | {
            place: presets[cell.name] for place, cell in self.cells.items() if cell.name in presets
        }

    def _started(self, values: dict, r: int) -> bool:
        return any((r, c) in values for c in range(len(self.columns)))

    def _rows(self, values: dict) -> tuple:
        return tuple(
            tuple(values.get((r, c)) for c in range(len(self.columns))) if self._started(values, r) else None
            for r in range(len(self.rows))
        )

    def _split(self, text: str) -> dict:
        """Cells of a text. More rows or cells than there are is an error; one row of many fits a grid of one column."""
        lines = [line for line in text.replace("|", "\n").split("\n")]
        while lines and not lines[-1].strip():
            lines.pop()
        table = [_filled(line.replace("\t", ";").split(";")) for line in lines]
        if len(self.columns) == 1 and len(table) == 1:
            table = [[cell] for cell in table[0]]
        elif len(self.rows) == 1 and all(len(row) == 1 for row in table):
            table = [[row[0] for row in table]]
        if len(table) > len(self.rows) or any(len(row) > len(self.columns) for row in table):
            wanted = f"{self.least} to {len(self.rows)}" if self.least < len(self.rows) else len(self.rows)
            raise Refused(
                [
                    InputError(
                        self.name,
                        "too-many",
                        say(
                            "{label}: has {rows} rows of up to {cells}; give {wanted} rows of {columns}.",
                            label=self.label,
                            rows=len(table),
                            cells=max(map(len, table)),
                            wanted=wanted,
                            columns=len(self.columns),
                        ),
                    )
                ]
            )
        return {(r, c): cell.strip() for r, row in enumerate(table) for c, cell in enumerate(row)}

    def usual_remarks(self, taken: Taken):
        meant = dict(taken.meant)
        for r, row in enumerate(taken.value):
            for c, value in enumerate(row or ()):
                if value is None:
                    continue
                cell = self.cells[r, c]
                yield from cell.usual_remarks(
                    Taken(cell, {}, value, True, meant=(((), meant.get((r, c), "")),))
                )


def with_unit(text: str, shape: Form) -> str:
    """An entry that a page makes, with its unit named, so that it means the same in either unit system."""
    if not text.strip():
        return text
    metric, inch = (read(text, shape.kind, shape.unit(system)) for system in ("metric", "inch"))
    return (
        text if (metric.value, metric.doubt) == (inch.value, inch.doubt) else f"{text} {shape.metric.symbol}"
    )


def _plain(text: str) -> str:
    """An option as it is compared: capitals and × or x alike, as a thread is written one way on paper and another on a keyboard."""
    return re.sub(r"(?<=\d)\s*[x×]\s*(?=\d)", "x", text.casefold())


def _filled(cells):
    """Cells of a line without the empty ones at its end, which a pasted block brings along."""
    while len(cells) > 1 and not cells[-1].strip():
        cells = cells[:-1]
    return cells


def _cell_symbol(symbol, row):
    """H_2 in row "2" or "main 2", H_2i in row "2 intake"."""
    words = row.split()
    short = words[0] + words[1][0] if len(words) > 1 and words[0].isdigit() else words[-1]
    return f"{symbol}{',' if '_' in symbol else '_'}{short}" if symbol else ""


def _standard(entry) -> float:
    """Standard uncertainty of an entry: a doubt written behind ± is the expanded one (GUM, common form)."""
    return (entry.doubt or 0.0) / COVERAGE


def hand_over_doubts(taken: dict) -> None:
    """Give each input that asks for the doubt of a reading the one behind that reading's ±, in place. Raises `Refused` where
    both carry one."""
    for name, own in taken.items():
        reading = taken.get(getattr(own.input, "doubt_of", ""))
        if reading is None or not (reading.doubts or reading.doubt_told):
            continue
        if own.text.strip():
            raise Refused(
                [
                    own.input.refusal(
                        "twice",
                        say(
                            "is given here and behind the ± of {reading}; give it in one place",
                            reading=reading.input.label,
                        ),
                    )
                ]
            )
        u = sum(u for _, u in reading.doubts)  # one, or none where it was told as nothing
        if not u and own.input.hard_range[0] > 0:
            raise Refused(
                [
                    own.input.refusal(
                        "out-of-range",
                        say(
                            "is told as none behind the ± of {reading}, and no reading is without one; give"
                            " {least} or more",
                            reading=reading.input.label,
                            least=at_least(own.input.hard_range[0], own.input.form),
                        ),
                    )
                ]
            )
        own.input.check(COVERAGE * u)
        taken[name] = replace(
            own,
            value=own.input.number(COVERAGE * u),
            origin=reading.origin,
            notes=(f"Taken from behind the ± of {reading.input.label}.",),
        )
        taken[reading.input.name] = replace(reading, doubts=())


def for_chosen(feature: str, chosen: dict) -> str:
    """A feature's id with what was chosen put in: {valve} is intake where nothing was."""
    return (
        re.sub(r"\{(\w+)\}", lambda found: chosen.get(found[1]) or WHICH[found[1]][0], feature)
        if "{" in feature
        else feature
    )


# --- What a calculator's `Inputs` are declared with -----------------------------------
#
# Each gives the field of a class, whose annotation is what the calculator's function gets: `Number`, or `Number | None` for one that may
# stay empty; `str` for a choice; `Rows` for a grid. So they say `Any`, as the standard library's own `dataclasses.field` does.


def measured(
    label,
    symbol,
    shape,
    *,
    tool,
    hard,
    usual="",
    example="",
    feature="",
    of="",
    hint="",
    fold=False,
    must=False,
    stands_in=None,
    assumed="",
    stage="received",
    when=(),
) -> Any:
    """An input that is read off a part with a tool. `hard` and `usual` are ranges, "5 to 120 mm"; `example` is the worked example's entry."""
    default, why = _first(example, assumed)
    stands_in = bool(feature and fold and not must) if stands_in is None else stands_in
    return Quantity(
        label,
        symbol,
        shape,
        hard_ends(hard),
        ends(usual),
        tool,
        feature,
        of,
        hint,
        fold,
        must=must,
        stands_in=stands_in,
        assumed=why,
        stage=stage,
        when=when,
        default=default,
    )


def given(
    label,
    symbol,
    shape,
    *,
    hard,
    usual="",
    example="",
    feature="",
    hint="",
    fold=False,
    doubt_of="",
    must=False,
    assumed="",
    when=(),
) -> Any:
    """An input that is chosen, known or read from a drawing; with a `feature`, a value that the engine's sheet knows. What is `assumed`
    is told with its reason: ("0.12", "oiled; common practice, no source"); the reason alone where the example has the sheet's value.
    """
    default, why = _first(example, assumed)
    return Quantity(
        label,
        symbol,
        shape,
        hard_ends(hard),
        ends(usual),
        "",
        feature,
        "",
        hint,
        fold,
        doubt_of=doubt_of,
        must=must,
        assumed=why,
        when=when,
        default=default,
    )


def _first(example, assumed) -> tuple:
    """The entry that stands first, and the reason why it is assumed."""
    return (example, assumed) if isinstance(assumed, str) else assumed


def limit(label, symbol, shape, *, feature, which, hard, usual="", hint="", fold=True, when=()) -> Any:
    """An input that a number is held to: `which` (low, high, wear or nominal) of a feature. It comes from the engine's sheet or from the
    reader, never from a default: where neither says it, nothing is judged by it."""
    return Quantity(
        label,
        symbol,
        shape,
        hard_ends(hard),
        ends(usual),
        "",
        feature,
        "",
        hint,
        fold,
        limit=which,
        when=when,
    )


def choice(
    label,
    options,
    *,
    default="",
    example="",
    hint="",
    fold=False,
    exact=False,
    must=False,
    assumed=(),
    feature="",
    when=(),
) -> Any:
    """An input chosen from named options, {id: words}. A question put to the calculator has a `default`; a fact about the part that `must`
    be chosen, or that the engine's sheet knows, an `example`; what is `assumed` is told with its reason, (id, why).
    """
    first, why = assumed or (default or example, "")
    return Choice(label, dict(options), hint, fold, exact, must, why, feature, when=when, default=first)


WHICH = {
    "valve": ("intake", "exhaust"),
    "casting": ("crankcase", "head"),
}  # what an engine has two kinds of, by the input's name: {valve} in a feature's id


def which_valve(hint="", when=()) -> Any:
    """Intake or exhaust: declared as the input `valve`, it fills {valve} in the features of the other inputs."""
    return Choice(
        "Valve",
        {"intake": "intake", "exhaust": "exhaust"},
        hint,
        must=True,
        which=True,
        when=when,
        default="intake",
    )


def column(label, symbol, shape, *, hard, usual="", optional=False, feature="") -> Column:
    """A column of a grid."""
    return Column(label, symbol, shape, hard_ends(hard), ends(usual), optional, feature)


def grid(
    label, rows, columns, *, example="", least=None, tool="", feature="", hint="", fold=False, when=()
) -> Any:
    """Rows of readings: `rows` are their names, `columns` what is read in each; all rows must be filled unless `least` says fewer."""
    rows, columns = tuple(rows), tuple(columns)
    return Grid(
        label,
        rows,
        columns,
        len(rows) if least is None else least,
        tool,
        feature,
        hint,
        fold,
        when,
        default=example,
    )


_ALONE = re.compile(r"[-−]?[\d.,/ ]+")


def ends(span: str) -> tuple:
    """Both ends of a range with their units: "5 to 120 mm" is ("5 mm", "120 mm"). Nothing for no range."""
    if not span:
        return ()
    low, between, high = span.partition(" to ")
    if not between:
        raise ValueError(f"{span!r} is no range; write it as 5 to 120 mm")
    return low + _ALONE.sub("", high, count=1) if _ALONE.fullmatch(low) else low, high


def hard_ends(span: str | tuple) -> tuple:
    """The same; behind it, where a range is told with its reason, that."""
    return ends(span) if isinstance(span, str) else (*ends(span[0]), span[1])
