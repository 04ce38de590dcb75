"""What an evaluated calculator says, as data: no HTML, no unit system chosen yet."""
import math
import re
from dataclasses import dataclass, field

from calc.conformance import DUST
from calc.working import Number

VERDICT_WORDS = {"pass": "In order", "fail": "Not in order", "attention": "Look again", "unsure": "Cannot tell", "awaited": "Still to be read", "unjudged": "Not judged"}


@dataclass(frozen=True)
class Text:
    """A sentence with quantities, or other sentences, in it: `Text("Bore {d} is large", {"d": number})`; the unit system is chosen
    when it is written."""
    template: str
    values: dict

    def parts(self) -> list:
        """Strings and what stands between them, in turn."""
        return [self.values[part] if i % 2 else part for i, part in enumerate(re.split(r"\{(\w+)\}", self.template))]

    def plain(self, system: str = "metric") -> str:
        return "".join(p.text(system) if isinstance(p, Number) else p.plain(system) if isinstance(p, Text) else str(p) for p in self.parts())


def say(template: str, **values) -> Text:
    """A sentence with quantities: `say("{left} is left of the grip", left=number)`."""
    text = Text(template, values)
    # a placeholder without a value, or one that is not a plain name, is the author's slip: fail where it was written
    if any("{" in words or "}" in words for words in text.parts()[::2]):
        raise KeyError(f"a placeholder is only a name in braces: {template}")
    return text


def as_text(words: "str | Text") -> Text:
    return words if isinstance(words, Text) else Text(words.replace("{", "(").replace("}", ")"), {})


@dataclass(frozen=True)
class Source:
    """Where a formula or value comes from. `kind`: standard, handbook, analytic, common practice, maker, invented.

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
    """`state`: pass, fail, attention or unsure, awaited where something must be read first, unjudged where a limit is not known; what the
    number means in words, and what to do next."""
    state: str
    headline: Text
    do: Text

    def __post_init__(self):
        if self.state not in VERDICT_WORDS:
            raise ValueError(f"no verdict state {self.state!r}")


@dataclass(frozen=True)
class Remark:
    """`level`: note or warning. `field` names the input it speaks of, if one."""
    level: str
    text: Text
    field: str = ""


def note(template: str, **values) -> Remark:
    return Remark("note", say(template, **values))


def warning(template: str, **values) -> Remark:
    return Remark("warning", say(template, **values))


@dataclass(frozen=True)
class Table:
    """Rows that a calculator judges one by one, or that a page lists. Cells are strings, Texts or Numbers; `states` gives each
    row's verdict state; a `sortable` table may be put in the order of any column by its reader."""
    title: str
    columns: tuple
    rows: tuple
    states: tuple = ()
    sortable: bool = False


@dataclass(frozen=True)
class Limit:
    """What decides a verdict: a number that must not lie below `low` nor above `high`. `words` say what lies within:
    "the grip left hot". `level` is what comes of it outside: "fail", or "attention"."""
    words: str
    number: Number
    low: "Number | float | None" = None
    high: "Number | float | None" = None
    level: str = "fail"

    def __post_init__(self):
        if self.level not in ("fail", "attention"):
            raise ValueError(f"a limit decides between pass and fail or attention, not {self.level!r}")

    def margins(self) -> tuple:
        """How far above its lower and below its upper bound the number lies, negative outside, None where there is no bound. SI floats."""
        return (None if self.low is None else float(self.number) - float(self.low),
                None if self.high is None else float(self.high) - float(self.number))


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


def answer(*numbers: Number, verdict: tuple, remarks=(), figures=(), tables=(), cautions=(), limits=()) -> Answer:
    """Bundle outputs with `verdict=(state, headline, do)`, words as str or `say(...)`.

    `limits` are the `Limit`s that decide between passing and failing, or passing and looking again: where readings carry a doubt,
    they tell whether the verdict can be given at all.
    """
    state, headline, do = verdict
    if not all(isinstance(n, Number) for n in numbers):
        raise TypeError("every output is named by its declaration: answer(Out.size(...), ...)")
    return Answer(numbers, Verdict(state, as_text(headline), as_text(do)), tuple(r for r in remarks if r),
                  tuple(f for f in figures if f), tuple(t for t in tables if t), tuple(cautions), tuple(limits))


def tell_apart(answer: Answer) -> None:
    """Write what failed a limit, and how far, so that it does not read as right: wherever these numbers stand in the answer, they get
    the decimals that it takes to differ from the limit, the distance those that it takes to differ from nothing, and the limit its own
    where it is finer than it is usually written."""
    failed = [(limit.number, float(bound)) for limit in answer.limits for bound, margin in zip((limit.low, limit.high), limit.margins()) if margin is not None and margin < -DUST]
    if not failed:
        return
    said = [answer.verdict.headline, answer.verdict.do, *(remark.text for remark in answer.remarks), *(cell for table in answer.tables for row in table.rows for cell in row)]
    for number in (*answer.numbers, *(limit.number for limit in answer.limits), *(number for part in said for number in _numbers(part))):
        for what, bound in failed:
            if getattr(number, "form", None) is None or number.dims != getattr(what, "dims", number.dims):  # a limit's number may be a plain one
                continue
            if float(number) == float(what):
                number.form = number.form.apart_from(bound)
            elif float(number) == bound:
                number.form = number.form.apart_from(float(what))
            elif math.isclose(abs(float(number)), abs(float(what) - bound), rel_tol=1e-9):
                number.form = number.form.apart_from(0.0)


def _numbers(said):
    if isinstance(said, Number):
        yield said
    elif isinstance(said, Text):
        for value in said.values.values():
            yield from _numbers(value)


@dataclass(frozen=True)
class InputError(ValueError):
    """One refused entry. `str()` is the sentence in metric units; `sentence(system)` in either."""
    field: str
    code: str
    text: Text

    def sentence(self, system: str = "metric") -> str:
        return self.text.plain(system)

    def __str__(self):
        return self.sentence()


class Refused(ValueError):
    """Entries that a calculator does not accept; carries one `InputError` for each bad field."""

    def __init__(self, errors):
        self.errors = tuple(errors)
        super().__init__(" ".join(map(str, self.errors)))


class Impossible(ValueError):
    """Raised inside a calculator when entries that are each fine do not go together."""

    def __init__(self, field: str, text: Text):
        self.field, self.text = field, text
        super().__init__(text.plain())


def impossible(field: str, template: str, **values) -> Impossible:
    """`raise impossible("ring_bore", "is {bore}, not smaller than ...; give less than {outside}", ...)`; the label is put in front."""
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
    doubts: dict[str, float] = field(default_factory=dict)  # expanded uncertainty (k = 2) of outputs, SI, where readings have one
    standing: object = None  # calc.standing.Standing of a reader's entries; None: what was not entered is the example's
    own: tuple = ()  # of calc.standing.OwnLimits
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
        used = self.standing and self.standing.sheet and (self.own or any(t.origin.kind == "sheet" for t in self.taken))
        return self.standing.sheet if used else None

    def __getitem__(self, output: str) -> float:
        """SI value of an output."""
        return float(self.outputs[output])
