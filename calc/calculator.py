"""One declaration per calculator, and the one way to evaluate it.

A calculator is a function whose parameters are annotated with what they are (`measured`, `given`, `choice`) and whose results
are named by a class of `Output`s. Form, checks on input, page, command, schema and the tests' sweep all read this declaration.

    class Out(Outputs):
        grip = Output("Interference", "δ", form(LENGTH, 3), main=True)

    @calculator("seat-fit", "Seat ring in its pocket", Out, purpose="...", finds=("press fit",), sources=(LAME,), cautions=(HOT,))
    def seat_fit(
        pocket_bore: measured("Pocket bore", "D_p", form(LENGTH, 3), tool="bore gauge", hard=("5 mm", "120 mm")) = "37.9 mm",
    ):
        return answer(Out.grip(...), verdict=("pass", "Holds", "Fit it."))
"""
import inspect
from dataclasses import dataclass, field, replace
from functools import cached_property

from calc import engine
from calc.quantity import EntryError, quantity, read
from calc.result import Impossible, InputError, Refused, Remark, Result, Taken, answer, as_text, say
from calc.working import Form, Number, given as given_number, step, steps_behind

__all__ = ["Calculator", "Output", "Outputs", "answer", "calculator", "choice", "evaluate", "given", "measured", "number"]


class DeclarationError(TypeError):
    """A calculator declared wrongly; names the calculator, the parameter and what is missing."""


@dataclass(frozen=True)
class Quantity:
    """An input that is a number with a unit.

    `hard` is (least, most) or (least, most, why): refused outside. `usual` is (least, most): remarked on outside. `tool` says what
    measures it (empty for a value that is chosen or known); `feature` names the engine feature that it measures.
    """
    label: str
    symbol: str
    form: Form
    hard: tuple
    usual: tuple = ()
    tool: str = ""
    feature: str = ""
    hint: str = ""
    fold: bool = False
    name: str = ""
    default: str = ""

    @property
    def measured(self) -> bool:
        return bool(self.tool)

    @cached_property
    def hard_range(self) -> tuple[float, float]:
        return quantity(self.hard[0], self.form.kind), quantity(self.hard[1], self.form.kind)

    @cached_property
    def usual_range(self) -> tuple[float, float] | None:
        return tuple(quantity(x, self.form.kind) for x in self.usual) if self.usual else None

    @cached_property
    def default_value(self) -> float:
        """SI value of the worked example: the default, or the nominal size of the feature on the demo engine's sheet."""
        return quantity(self.default, self.form.kind) if self.default else engine.demo().feature(self.feature).nominal

    def default_text(self, system: str) -> str:
        """The default as it stands in the form's field in that system, without unit."""
        return self.form.bare(self.default_value, system)

    def number(self, value: float) -> Number:
        return given_number(self.symbol, self.label, self.form, value, key=self.name)

    def take(self, text: str, system: str) -> Taken:
        """Read an entry; raises `Refused` with one sentence."""
        try:
            entry = read(text, self.form.kind, self.form.unit(system))
        except EntryError as error:
            raise Refused([self.refusal(error.code, say("{problem}; {accepted}", problem=error.problem, accepted=error.accepted))])
        self.check(entry.value)
        return Taken(self, text, self.number(entry.value), True, entry.note)

    def check(self, value: float):
        """Raises `Refused` where the value lies outside the hard range."""
        low, high = self.hard_range
        if low <= value <= high:
            return
        why = f" ({self.hard[2]})" if len(self.hard) > 2 else ""
        side, limit = ("below", low) if value < low else ("above", high)
        words = {"got": self._exact(value), "limit": self._exact(limit), "low": self._exact(low), "high": self._exact(high)}
        raise Refused([self.refusal("out-of-range", say(
            "{got} is " + side + " {limit}, past what this calculator can answer for" + why + "; give {low} to {high}", **words))])

    def _exact(self, value):
        """The value with enough decimals to tell it from a limit that it just misses, no needless zeros else."""
        number = self.number(value)
        return number.shown(self.form.decimals + 3) if self.form.bare(value, "metric") in (
            self.form.bare(self.hard_range[0], "metric"), self.form.bare(self.hard_range[1], "metric")
        ) and value not in self.hard_range else number

    def refusal(self, code: str, text) -> InputError:
        return InputError(self.name, code, say(f"{self.label}: " + text.template.rstrip(".") + ".", **text.values))

    def usual_remark(self, value: float):
        if not self.usual_range or self.usual_range[0] <= value <= self.usual_range[1]:
            return None
        low, high = map(self.number, self.usual_range)
        return Remark("warning", say("{label} {got} is outside the usual {low} to {high}: measure again before you trust what follows.",
                                     label=self.label, got=self.number(value), low=low, high=high), self.name)


@dataclass(frozen=True)
class Choice:
    """An input that is one of several named options. `options` maps id to words."""
    label: str
    options: dict
    hint: str = ""
    fold: bool = False
    name: str = ""
    default: str = ""
    symbol: str = ""
    feature: str = ""
    measured = False

    def default_text(self, system: str) -> str:
        return self.default

    @property
    def default_value(self) -> str:
        return self.default

    def take(self, text: str, system: str) -> Taken:
        chosen = text.strip()
        if chosen not in self.options:
            by_words = [key for key, words in self.options.items() if words.casefold() == chosen.casefold() or key == chosen.casefold()]
            if len(by_words) != 1:
                accepted = ", ".join(self.options)
                what = f"“{chosen[:40]}” is not a choice" if chosen else "is empty"
                raise Refused([InputError(self.name, "unknown-choice", say("{label}: {what}; choose one of {accepted}.",
                                                                           label=self.label, what=what, accepted=accepted))])
            chosen = by_words[0]
        return Taken(self, text, chosen, True)

    def usual_remark(self, value):
        return None


def measured(label, symbol, shape, *, tool, hard, usual=(), feature="", hint="", fold=False) -> Quantity:
    """An input that is read off a part with a tool."""
    return Quantity(label, symbol, shape, hard, usual, tool, feature, hint, fold)


def given(label, symbol, shape, *, hard, usual=(), feature="", hint="", fold=False) -> Quantity:
    """An input that is chosen, known or read from a drawing."""
    return Quantity(label, symbol, shape, hard, usual, "", feature, hint, fold)


def choice(label, options, *, hint="", fold=False) -> Choice:
    """An input chosen from named options, {id: words}."""
    return Choice(label, dict(options), hint, fold)


def number(symbol, label, shape, value, source=None) -> Number:
    """A named constant inside a calculator (a material's property, a reference temperature)."""
    return given_number(symbol, label, shape, value, source)


@dataclass
class Output:
    """A result: label, symbol, form (kind, sensible decimals, units). Called with an expression it names that expression."""
    label: str
    symbol: str
    form: Form
    main: bool = False
    help: str = ""
    key: str = field(default="", init=False)

    def __set_name__(self, owner, name):
        self.key = name

    def __call__(self, expression, source=None) -> Number:
        return step(self.symbol, self.label, self.form, expression, source, self.key)


class Outputs:
    """Base of a calculator's named results, in the order in which they are shown."""

    @classmethod
    def all(cls) -> tuple[Output, ...]:
        return tuple(v for v in vars(cls).values() if isinstance(v, Output))


@dataclass(frozen=True)
class Calculator:
    id: str
    title: str
    station: str
    purpose: str
    finds: tuple
    sources: tuple
    cautions: tuple
    function: object
    inputs: tuple
    outputs: tuple

    @cached_property
    def input(self) -> dict:
        return {i.name: i for i in self.inputs}

    @cached_property
    def output(self) -> dict:
        return {o.key: o for o in self.outputs}

    def __call__(self, **entries) -> Result:
        return evaluate(self, entries)


def calculator(id, title, outputs, *, purpose, finds=(), sources=(), cautions=()):
    """Declare a calculator; the decorated name becomes the `Calculator`. Its station is the package that it stands in."""
    def declare(function):
        inputs = []
        annotations = inspect.get_annotations(function)
        for parameter in inspect.signature(function).parameters.values():
            declared = annotations.get(parameter.name)
            if not hasattr(declared, "take"):
                raise DeclarationError(f"{id}: parameter {parameter.name} is not declared with measured, given or choice")
            default = "" if parameter.default is parameter.empty else parameter.default
            if not default and not declared.feature:
                raise DeclarationError(f"{id}: {parameter.name} has neither a default nor a feature to take it from")
            inputs.append(replace(declared, name=parameter.name, default=default))
        if not outputs.all():
            raise DeclarationError(f"{id}: no outputs")
        return Calculator(id, title, function.__module__.split(".")[1], purpose, tuple(finds), tuple(sources), tuple(cautions),
                          function, tuple(inputs), outputs.all())
    return declare


def evaluate(calculator: Calculator, entries: dict[str, str] | None = None, system: str = "metric") -> Result:
    """Evaluate with the reader's entries (texts, by input name); what is not entered takes its default.

    A text without a unit is read in `system`'s unit. Raises `Refused` with one sentence for each entry that cannot be used.
    """
    entries = entries or {}
    errors, taken = [], []
    for name in entries:
        if name not in calculator.input:
            errors.append(_unknown_input(calculator, name))
    for declared in calculator.inputs:
        try:
            if declared.name in entries:
                taken.append(declared.take(str(entries[declared.name]), system))
            else:
                value = declared.default_value
                taken.append(Taken(declared, declared.default_text(system), declared.number(value) if isinstance(declared, Quantity) else value, False))
        except Refused as refused:
            errors += refused.errors
    if errors:
        raise Refused(errors)
    try:
        found = calculator.function(**{t.input.name: t.value for t in taken})
    except Impossible as error:
        declared = calculator.input[error.field]
        raise Refused([InputError(declared.name, "impossible", say(declared.label + ": " + error.text.template.rstrip(".") + ".", **error.text.values))])
    except ArithmeticError as error:  # kept from the reader's eye; the sweep over all calculators holds that it never happens
        raise Refused([InputError(calculator.inputs[0].name, "no-answer", say(
            "{label}: these entries together give no answer ({error}); give sizes nearer to the usual ones.",
            label=calculator.inputs[0].label, error=type(error).__name__))])
    outputs = {n.key: n for n in found.numbers}
    if list(outputs) != list(calculator.output):
        raise DeclarationError(f"{calculator.id}: returned {list(outputs)}, declared {list(calculator.output)}")
    remarks = [Remark("note", as_text(t.note), t.input.name) for t in taken if t.note]
    remarks += [r for t in taken if t.entered and (r := t.input.usual_remark(float(t.value) if isinstance(t.value, Number) else t.value))]
    steps = steps_behind(found.numbers)
    used = [s.source for s in steps if s.source]
    return Result(calculator, tuple(taken), outputs, found.verdict, tuple(steps), (*remarks, *found.remarks),
                  tuple(dict.fromkeys((*found.cautions, *calculator.cautions))), tuple(dict.fromkeys((*calculator.sources, *used))),
                  found.figures, found.tables)


def _unknown_input(calculator, name) -> InputError:
    from difflib import get_close_matches
    near = get_close_matches(name, calculator.input, 1)
    hint = f"did you mean {near[0]}?" if near else "give one of " + ", ".join(calculator.input)
    return InputError(name, "unknown-input", say("{name}: {id} has no such input; {hint}" + ("" if near else "."), name=name[:40], id=calculator.id, hint=hint))
