"""What an evaluated calculator says, as data: no HTML, no unit system chosen yet."""

import math
import re
from copy import copy
from dataclasses import dataclass, field, fields, is_dataclass, replace
from functools import cache
from itertools import combinations
from typing import Any

from calc.core.conformance import DUST
from calc.core.working import Form, Number, origins

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
    values: dict

    def parts(self) -> list:
        """Strings and what stands between them, in turn."""
        return [
            self.values[part] if i % 2 else part
            for i, part in enumerate(re.split(r"\{(\w+)\}", self.template))
        ]

    def plain(self, system: str = "metric") -> str:
        return "".join(
            p.text(system) if isinstance(p, Number) else p.plain(system) if isinstance(p, Text) else str(p)
            for p in self.parts()
        )


def say(template: str, **values) -> Text:
    """A sentence with quantities: `say("{left} is left of the grip", left=number)`."""
    text = Text(template, values)
    # a placeholder without a value, or one that is not a plain name, is the author's slip: fail where it was
    # written
    if any("{" in words or "}" in words for words in text.parts()[::2]):
        raise KeyError(f"a placeholder is only a name in braces: {template}")
    return text


def as_text(words: "str | Text") -> Text:
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

    def __post_init__(self):
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


def note(template: str, **values) -> Remark:
    return Remark("note", say(template, **values))


def warning(template: str, **values) -> Remark:
    return Remark("warning", say(template, **values))


@dataclass(frozen=True)
class Table:
    """Rows that a calculator judges one by one, or that a page lists. Cells are strings, Texts or Numbers;
    `states` gives each row's verdict state; a `sortable` table may be put in the order of any column by its
    reader."""

    title: str
    columns: tuple
    rows: tuple
    states: tuple = ()
    sortable: bool = False


@dataclass(frozen=True)
class Limit:
    """What decides a verdict: a number that must not lie below `low` nor above `high`. `words` say what lies
    within: "the grip left hot". `level` is what comes of it outside: "fail", or "attention"."""

    words: str
    number: Number
    low: "Number | float | None" = None
    high: "Number | float | None" = None
    level: str = "fail"

    def __post_init__(self):
        if self.level not in ("fail", "attention"):
            raise ValueError(f"a limit decides between pass and fail or attention, not {self.level!r}")

    def margins(self) -> tuple:
        """How far above its lower and below its upper bound the number lies, negative outside, None where
        there is no bound. SI floats."""
        return (
            None if self.low is None else float(self.number) - float(self.low),
            None if self.high is None else float(self.high) - float(self.number),
        )


@dataclass(frozen=True)
class Answer:
    """What a calculator's function returns."""

    numbers: tuple
    verdict: Verdict
    remarks: tuple = ()
    figures: tuple = ()
    tables: tuple = ()
    cautions: tuple = ()  # those that only this result calls for
    limits: tuple = ()


# A verdict as a calculator gives it to `answer`: its state, the headline, what to do.
Judged = tuple[str, str | Text, str | Text]


def answer(
    *numbers: Number, verdict: Judged, remarks=(), figures=(), tables=(), cautions=(), limits=()
) -> Answer:
    """Bundle outputs with `verdict=(state, headline, do)`, words as str or `say(...)`.

    `limits` are the `Limit`s that decide between passing and failing, or passing and looking again: where
    readings carry a doubt, they tell whether the verdict can be given at all.
    """
    state, headline, do = verdict
    if not all(isinstance(n, Number) for n in numbers):
        raise TypeError("every output is named by its declaration: answer(Out.size(...), ...)")
    return Answer(
        numbers,
        Verdict(state, as_text(headline), as_text(do)),
        tuple(r for r in remarks if r),
        tuple(f for f in figures if f),
        tuple(t for t in tables if t),
        tuple(cautions),
        tuple(limits),
    )


def tell_apart(answer: Answer) -> Answer:
    """The same answer, in which what misses a limit does not read as right, nor one number as another that it
    stands beside: wherever these numbers stand, they get the decimals that it takes to differ, their distance
    those that it takes to differ from nothing. The answer given keeps its own numbers, as a constant of a
    calculator's may be one of them."""
    apart = [*_missed(answer.limits), *_alike(answer)]
    if not apart:
        return answer
    numbers = {id(number): number for number in _numbers(answer)}
    forms = {key: shape for key, number in numbers.items() if (shape := _finer(number, apart)) != number.form}
    made = {}
    # what led to a number is older than the number
    for number in sorted(origins(numbers.values()), key=lambda n: n.order):
        if id(number) in forms or not made.keys().isdisjoint(map(id, number.args)):
            made[id(number)] = new = copy(number)
            new.args, new.form = (
                tuple(made.get(id(n), n) for n in number.args),
                forms.get(id(number), number.form),
            )
    return _with(answer, made)


def _missed(limits) -> list:
    """Each number that lies outside of a limit, with the limit (SI) and the dimensions of both."""
    return [
        (float(limit.number), float(bound), getattr(limit.number, "dims", None))
        for limit in limits
        for bound, margin in zip((limit.low, limit.high), limit.margins())
        if margin is not None and margin < -DUST
    ]


def _alike(answer) -> list:
    """Each two numbers that differ and read the same where one is too much or too little beside the other:
    within a verdict that is not simply in order, and within a warning."""
    told = [answer.verdict] * (answer.verdict.state != "pass") + [
        remark for remark in answer.remarks if remark.level == "warning"
    ]
    return [
        (float(a), float(b), a.dims)
        for said in told
        for a, b in combinations([n for n in _numbers(said) if isinstance(n.form, Form)], 2)
        if a.dims == b.dims and abs(float(a) - float(b)) > DUST * max(1.0, abs(float(a))) and a.reads_as(b)
    ]


def _finer(number, apart):
    """The form that tells a number from the one that it must not be read as, the nearest where there are
    several; its own where there is none."""
    if not isinstance(number.form, Form):
        return number.form
    value, others = float(number), []
    for what, bound, dims in apart:
        if dims in (None, number.dims):
            others += (
                [bound] * (value == what)
                + [what] * (value == bound)
                + [0.0] * math.isclose(abs(value), abs(what - bound), rel_tol=1e-9)
            )
    return (
        number.form.apart_from(min(others, key=lambda other: abs(value - other))) if others else number.form
    )


def _numbers(said):
    """Every number that stands somewhere in what a calculator says."""
    if isinstance(said, Number):
        yield said
    else:
        for part in _within(said).values():
            yield from _numbers(part)


def _with(said, made: dict):
    """The same with other numbers, {id: number}, in their places."""
    if isinstance(said, Number):
        return made.get(id(said), said)
    new = {key: other for key, part in _within(said).items() if (other := _with(part, made)) is not part}
    if not new:
        return said
    if isinstance(said, dict):
        return said | new
    if isinstance(said, (tuple, list)):
        parts = [new.get(i, part) for i, part in enumerate(said)]
        return type(said)._make(parts) if hasattr(said, "_make") else type(said)(parts)
    return replace(said, **new)


_PLAIN = {float, int, bool, str, type(None)}  # the points of a drawing are thousands of these


def _within(said) -> dict:
    """What stands in something that is said, and may hold numbers."""
    if isinstance(said, (tuple, list)):
        return {i: part for i, part in enumerate(said) if type(part) not in _PLAIN}
    if isinstance(said, dict):
        return said
    return {name: part for name in _names(type(said)) if type(part := getattr(said, name)) not in _PLAIN}


@cache
def _names(kind) -> tuple:
    return tuple(f.name for f in fields(kind)) if is_dataclass(kind) and kind is not Form else ()


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

    def __str__(self):
        return self.sentence()


class Refused(ValueError):
    """Entries that a calculator does not accept; carries one `InputError` for each bad field."""

    def __init__(self, errors):
        self.errors = tuple(errors)
        super().__init__(" ".join(map(str, self.errors)))


def refused(field: str, code: str, template: str, suggestion: str = "", /, **values: Any) -> Refused:
    """`raise refused("bore", "empty", "{label}: is empty.", label="Bore")`: one entry that is not
    accepted."""
    return Refused([InputError(field, code, say(template, **values), suggestion)])


class Impossible(ValueError):
    """Raised inside a calculator when entries that are each fine do not go together."""

    def __init__(self, field: str, text: Text):
        self.field, self.text = field, text
        super().__init__(text.plain())


def impossible(field: str, template: str, **values) -> Impossible:
    """`raise impossible("ring_bore", "is {bore}, not smaller than ...; give less than {outside}", ...)`; the
    label is put in front."""
    return Impossible(field, say(template, **values))


@dataclass(frozen=True)
class Result:
    """A calculator evaluated once."""

    calculator: object
    taken: tuple  # of calc.inputs.Taken
    outputs: dict[str, Number]
    verdict: Verdict
    working: tuple[Number, ...]
    remarks: tuple[Remark, ...]
    cautions: tuple[Caution, ...]
    sources: tuple[Source, ...]
    figures: tuple = field(default=())
    tables: tuple[Table, ...] = field(default=())
    # expanded uncertainty (k = 2) of outputs, SI, where readings have one
    doubts: dict[str, float] = field(default_factory=dict)
    # calc.declare.standing.Standing of a reader's entries; None: what was not entered is the example's
    standing: object = None
    own: tuple = ()  # of calc.declare.standing.OwnLimits
    next: tuple = ()  # names of the inputs that are to be read next

    @property
    def example(self) -> bool:
        """Is anything in it nothing but the example's?"""
        return self.standing is None and any(t.origin.kind == "example" for t in self.taken)

    @property
    def stand_ins(self) -> list:
        """What was taken with all that the sheet allows it, and cannot turn the verdict."""
        return [t for t in self.taken if t.span and t.input.name not in self.next]

    @property
    def assumed(self) -> list:
        """What was taken for a reason of common practice."""
        return [t for t in self.taken if t.origin.kind == "assumed" and t.origin.words]

    @property
    def sheet(self):
        """The engine's sheet that anything in it stands on, or None."""
        used = (
            self.standing
            and self.standing.sheet
            and (self.own or any(t.origin.kind == "sheet" for t in self.taken))
        )
        return self.standing.sheet if used else None

    def __getitem__(self, output: str) -> float:
        """SI value of an output."""
        return float(self.outputs[output])
