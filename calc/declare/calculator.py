"""One declaration per calculator, and the one way to evaluate it.

A calculator is a function of what a class of `Inputs` declares; a class of `Outputs` names its results. Form, checks on input, page,
command, schema and the tests' sweep all read this declaration.

    class In(Inputs):
        pocket_bore: Number = measured("Pocket bore", "D_p", SIZE, tool="a bore gauge", hard="5 to 120 mm", example="37.9 mm")

    class Out(Outputs):
        grip = Output("Interference", "δ", SIZE, main=True)

    @calculator("seat-fit", "Seat ring in its pocket", In, Out, purpose="...", finds=("press fit",), sources=(LAME,), cautions=(HOT,))
    def seat_fit(i: In) -> Answer:
        return answer(Out.grip(i.ring_outside - i.pocket_bore), verdict=("pass", "Holds", "Fit it."))
"""

import inspect
from collections.abc import Callable
from dataclasses import dataclass, field, replace
from difflib import get_close_matches
from functools import cached_property
from math import isfinite
from typing import Any, get_args

from calc.core.reading import quoted
from calc.core.result import (
    Answer,
    Impossible,
    InputError,
    Limit,
    Refused,
    Remark,
    Result,
    Verdict,
    answer,
    as_text,
    say,
    tell_apart,
)
from calc.core.working import Form, Number, origins, step, steps_behind
from calc.declare import doubt
from calc.declare.inputs import (
    MISSED,
    NONE,
    READ,
    Choice,
    Grid,
    Quantity,
    Taken,
    choice,
    column,
    given,
    grid,
    hand_over_doubts,
    limit,
    measured,
    which_valve,
)
from calc.declare.open_input import any_of
from calc.declare.standing import (
    Standing,
    awaited,
    fails_anyway,
    listed,
    never_better,
    own_limits,
    told_without,
    walk,
)

__all__ = [
    "Answer",
    "Calculator",
    "Inputs",
    "Limit",
    "Number",
    "Output",
    "Outputs",
    "Rows",
    "answer",
    "any_of",
    "calculator",
    "choice",
    "column",
    "evaluate",
    "given",
    "grid",
    "limit",
    "measured",
    "which_valve",
]


Rows = tuple[
    tuple[Number, ...], ...
]  # of a grid; a row that may stay empty is None then, and so is a cell of an optional column


class DeclarationError(TypeError):
    """A calculator declared wrongly; names the calculator, the parameter and what is missing."""


@dataclass
class Output:
    """A result: label, symbol, form (kind, sensible decimals, units). Called with an expression it names that expression.

    A result that is of whatever kind the entry was has no form in its declaration, and is given one with each expression.

    `feature` names the size of the part, on an engine's data sheet, that the result is and no gauge reads directly: a job can keep it.
    """

    label: str
    symbol: str
    form: Form | None
    main: bool = False
    help: str = ""
    feature: str = ""
    key: str = field(default="", init=False)

    def __set_name__(self, owner, name):
        self.key = name

    def __call__(self, expression, source=None, form=None) -> Number:
        return step(self.symbol, self.label, form or self.form, expression, source, self.key)


class Inputs:
    """Base of what a calculator asks for: fields in the order of its form, each annotated with what the function gets of it.

        class In(Inputs):
            pocket_bore: Number = measured("Pocket bore", "D_p", SIZE, tool="a bore gauge", hard="5 to 120 mm", example="37.48 mm")
            bearing: Number | None = measured(...)  # may stay empty

    A class may stand on another: the fields of its base come first. An instance holds their values.
    """

    _all: tuple = ()

    def __init_subclass__(cls):
        super().__init_subclass__()
        annotated, found = inspect.get_annotations(cls), []
        for name, kind in annotated.items():
            declared = vars(cls).get(name)
            if not hasattr(declared, "take"):
                raise DeclarationError(
                    f"{cls.__module__}: {name} is not declared with measured, given or choice"
                )
            if isinstance(declared, Quantity):
                optional = type(None) in get_args(kind)
                declared = replace(declared, optional=optional, stands_in=declared.stands_in and not optional)
            found.append(replace(declared, name=name))
        if forgotten := [
            name for name, value in vars(cls).items() if hasattr(value, "take") and name not in annotated
        ]:
            raise DeclarationError(f"{cls.__module__}: {forgotten[0]} says no type, such as Number")
        cls._all = (*cls._all, *found)

    def __init__(self, **values):
        self.__dict__.update(values)

    @classmethod
    def all(cls) -> tuple:
        return cls._all


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
    function: Callable[[Any], Answer]
    asks: type[Inputs]
    outputs: tuple

    @property
    def inputs(self) -> tuple:
        return self.asks.all()

    @cached_property
    def input(self) -> dict:
        return {i.name: i for i in self.inputs}

    @cached_property
    def output(self) -> dict:
        return {o.key: o for o in self.outputs}

    def __call__(self, **entries) -> Result:
        return evaluate(self, entries)


def calculator(id, title, inputs, outputs, *, purpose, finds=(), sources=(), cautions=()):
    """Declare a calculator; the decorated name becomes the `Calculator`. Its station is the package that it stands in."""

    def declare(function):
        if not inputs.all():
            raise DeclarationError(f"{id}: no inputs")
        for i in inputs.all():
            _check_input(id, i, {i.name: i for i in inputs.all()})
        if not outputs.all():
            raise DeclarationError(f"{id}: no outputs")
        station = function.__module__.split(".")[-2]
        return Calculator(
            id,
            title,
            station,
            purpose,
            tuple(finds),
            tuple(sources),
            tuple(cautions),
            function,
            inputs,
            outputs.all(),
        )

    return declare


def _check_input(id, declared, inputs) -> None:
    """Raises where an input could not be worked without its reader: the example has nothing for it, or it counts for what is never asked."""
    default = declared.default
    if not default and not declared.feature and not getattr(declared, "optional", False):
        raise DeclarationError(f"{id}: {declared.name} has neither an example nor a feature to take it from")
    if isinstance(declared, Choice) and default not in declared.options:
        raise DeclarationError(
            f"{id}: {declared.name} begins with {default!r}, which is not one of"
            f" {', '.join(declared.options)}"
        )
    if getattr(declared, "limit", "") and default:
        raise DeclarationError(
            f"{id}: {declared.name} is a limit, which comes from an engine's sheet or the reader and has no"
            " default"
        )
    _check_when(id, declared, inputs)


def _check_when(id, declared, inputs) -> None:
    """Raises where an input counts only for what its choice does not offer, or with a reading that is always taken."""
    choice_name, *options = getattr(declared, "when", ()) or ("",)
    if choice_name and not options and getattr(inputs.get(choice_name), "optional", False):
        return
    if choice_name and (
        not isinstance(inputs.get(choice_name), Choice)
        or not options
        or not set(options) <= set(inputs[choice_name].options)
    ):
        raise DeclarationError(
            f"{id}: {declared.name} counts when {choice_name} is {', '.join(options) or 'nothing'}, which is"
            " no choice of this calculator"
        )


def evaluate(
    calculator: Calculator,
    entries: dict[str, str] | None = None,
    system: str = "metric",
    standing: Standing | None = None,
) -> Result:
    """Evaluate with the reader's entries (texts, by input name).

    What is not entered takes the value of the worked example; with a `standing` it is worth what its declaration says of an unread
    input instead, and the verdict may be that something is still to be read, or not judged (see `calc.declare.standing`).

    A text without a unit is read in `system`'s unit. Beside an input's own entry there may be others, named with a point behind
    its name: the cells of a grid, the temperatures of a warm reading. Raises `Refused` with one sentence for each entry that
    cannot be used.
    """
    taken = _take(calculator, entries or {}, system, standing)
    values = {t.input.name: t.value for t in taken}
    if standing is None:
        return _told(calculator, taken, *_judged(calculator, values, taken))
    own = own_limits(taken, standing, _chosen(taken))
    if missed := [t for t in taken if t.origin is MISSED]:
        return _partly(calculator, taken, values, missed, standing, own)
    try:
        found, verdict, doubts = _judged(calculator, values, taken)
    except Refused as refused:  # what was read does not go together with what stands in for something unread: that is to be read
        unread = {
            t.input.name: t
            for t in taken
            if (not t.entered and t.origin.kind in ("sheet", "assumed") or t.value is None)
            and isinstance(t.input, Quantity)
        }
        if not all(e.code == "impossible" and e.field in unread for e in refused.errors):
            raise
        return _partly(calculator, taken, values, [unread[e.field] for e in refused.errors], standing, own)
    turning = ()
    if spans := [t for t in taken if t.span]:
        walked = walk(
            lambda moved: _work(calculator, moved),
            lambda moved, answer: _weighed(calculator, moved, taken, answer)[0],
            values,
            spans,
            found,
            verdict,
        )
        doubts = {
            key: doubts.get(key, 0.0) + spread
            for key, spread in walked.spread.items()
            if doubts.get(key, 0.0) + spread
        }
        if turning := walked.turning:
            verdict = _turned([t for t in spans if t.input.name in turning], standing)
    return _told(
        calculator, taken, found, never_better(verdict, own, standing), doubts, standing, own, turning
    )


def _turned(turning, standing) -> Verdict:
    """What is said where a size that nobody read can turn the verdict."""
    return Verdict(
        "awaited",
        listed([t.called for t in turning]),
        say(
            "Within what {sheet}’s sheet allows {it}, the verdict can be one or the other.",
            sheet=standing.sheet.name,
            it="it" if len(turning) == 1 else "them",
        ),
    )


def _judged(calculator, values, taken) -> tuple:
    """The calculator's answer, the verdict that the readings' doubts leave standing, and what they are worth in each output."""
    found = _work(calculator, values)
    outputs = [n.key for n in found.numbers]
    if outputs != list(calculator.output):
        raise DeclarationError(f"{calculator.id}: returned {outputs}, declared {list(calculator.output)}")
    return found, *_weighed(calculator, values, taken, found)


def _weighed(calculator, values, taken, found) -> tuple:
    if not any(t.doubts for t in taken):
        return found.verdict, {}
    doubts, verdict = doubt.weigh(lambda moved: _work(calculator, moved), values, taken, found)
    return verdict, doubts


def _told(calculator, taken, found, verdict, doubts, standing=None, own=(), next=()) -> Result:
    if verdict.state not in ("unsure", "awaited"):  # a number in doubt is told no finer than its doubt
        found = tell_apart(replace(found, verdict=verdict))
        verdict = found.verdict
    remarks = [Remark("note", as_text(n), t.input.name) for t in taken for n in t.notes]
    remarks += [r for t in taken if t.entered for r in t.input.usual_remarks(t)]
    steps = steps_behind(found.numbers)
    if not all(isfinite(n.value) for n in steps):
        raise _no_answer(calculator, "endless")
    idle = _idle(taken, found.numbers)
    outputs = {n.key: n for n in found.numbers if n.order not in idle}
    steps = [n for n in steps if n.order not in idle]
    used = [s.source for s in steps if s.source]
    return Result(
        calculator,
        taken,
        outputs,
        verdict,
        tuple(steps),
        (*remarks, *found.remarks),
        tuple(dict.fromkeys((*found.cautions, *calculator.cautions))),
        tuple(dict.fromkeys((*calculator.sources, *used))),
        found.figures,
        found.tables,
        doubts,
        standing,
        own,
        next,
    )


def _idle(taken, numbers) -> set:
    """What does not count keeps its place in the sums only: that, and all that comes of it, is not told. By the order in which numbers
    were made, which a copy keeps; what led to a number is older than the number."""
    idle = {n.order for t in taken if t.origin is NONE for n in _numbers(t.value)}
    if idle:
        for n in sorted(origins(numbers), key=lambda n: n.order):
            if any(each.order in idle for each in n.args):
                idle.add(n.order)
    return idle


def _numbers(value):
    """The numbers of an input's value: its own, or those of a grid's cells. An output may have an input's name, as a torque that is given or found."""
    if isinstance(value, tuple):
        for each in value:
            yield from _numbers(each)
    elif isinstance(value, Number):
        yield value


def _partly(calculator, taken, values, missed, standing, own) -> Result:
    """What can be told while something is missed: the outputs that do not need it, each size by its own limits, and what is to be read."""

    def work(moved):
        return _work(calculator, moved)

    def judge(moved, answer):
        return _weighed(calculator, moved, taken, answer)[0]

    verdict = fails_anyway(missed, work, judge, values) or awaited(missed, standing)
    numbers, doubts = told_without(missed, {name for t in taken for name in t.read}, work, values), {}
    if numbers and any(t.doubts for t in taken):
        weighed, _ = doubt.weigh(work, values, taken, work(values))
        doubts = {n.key: weighed[n.key] for n in numbers}
    return _told(
        calculator,
        taken,
        Answer(numbers, verdict),
        never_better(verdict, own, standing),
        doubts,
        standing,
        own,
        tuple(t.input.name for t in missed),
    )


def _chosen(taken) -> dict:
    return {t.input.name: t.value for t in taken if isinstance(t.input, Choice)}


def _take(calculator, entries, system, standing=None) -> tuple:
    """Every input as it was taken, or `Refused` with all that is wrong, in the order of the form."""
    errors, own = [], {i.name: {} for i in calculator.inputs}
    for name, text in entries.items():
        base, _, part = name.partition(".")
        if base in own and (not part or part in calculator.input[base].parts):
            own[base][part] = str(text)
        else:
            errors.append(_unknown_input(calculator, name))
    taken = {}
    chosen = {
        name: "read"
        for name, texts in own.items()
        if not isinstance(calculator.input[name], Choice) and texts.get("", "").strip()
    }
    for declared in sorted(
        calculator.inputs, key=lambda i: not isinstance(i, Choice)
    ):  # a choice may name another input's material
        try:
            taken[declared.name] = _taken(declared, own[declared.name], system, chosen, standing)
            if isinstance(declared, Choice):
                chosen[declared.name] = taken[declared.name].value
        except Refused as refused:
            errors += refused.errors
            if isinstance(declared, Choice):
                chosen[declared.name] = declared.default
    if errors:
        place = {i.name: n for n, i in enumerate(calculator.inputs)}
        raise Refused(sorted(errors, key=lambda e: place.get(e.field.partition(".")[0], -1)))
    hand_over_doubts(taken)
    return tuple(taken[i.name] for i in calculator.inputs)


def _taken(declared, texts, system, chosen, standing) -> Taken:
    if standing is None:
        taken = declared.take(texts, system, chosen)
        return replace(taken, origin=READ) if taken.entered else taken
    own = texts.values() if isinstance(declared, Grid) else [texts.get("", "")]
    if not any(text.strip() for text in own):
        unread = standing.unread(declared, chosen)
        told = {part: text for part, text in texts.items() if text.strip()}
        return replace(
            unread, texts=told, origin=MISSED if told else unread.origin
        )  # its temperatures alone are no reading
    try:
        taken = declared.take({"": "", **texts} if isinstance(declared, Grid) else texts, system, chosen)
    except Refused as refused:
        if not isinstance(declared, Grid) or any(e.code not in ("empty", "too-few") for e in refused.errors):
            raise
        return replace(declared.partly(texts, system, chosen), origin=MISSED)
    origins = {standing.origin(name) for name in taken.read}
    return replace(taken, origin=origins.pop() if len(origins) == 1 else READ)


def _work(calculator, values):
    """Call the calculator's function; entries that do not go together are refused."""
    try:
        found = calculator.function(calculator.asks(**values))
    except Refused:
        raise
    except Impossible as error:
        declared = calculator.input[error.field.partition(".")[0]]
        raise Refused(
            [
                InputError(
                    error.field,
                    "impossible",
                    say(declared.label + ": " + error.text.template.rstrip(".") + ".", **error.text.values),
                )
            ]
        ) from None
    except (ArithmeticError, ValueError) as error:  # a division by zero, the root of a negative number
        raise _no_answer(calculator, type(error).__name__) from error
    if not all(isfinite(n.value) for n in found.numbers):
        raise _no_answer(calculator, "endless")
    return found


def _no_answer(calculator, why) -> Refused:
    """Keeps an arithmetical fault from the reader's eye; the sweep over all calculators holds that it never happens."""
    first = calculator.inputs[0]
    return Refused(
        [
            InputError(
                first.name,
                "no-answer",
                say(
                    "{label}: these entries together give no answer ({why}); give sizes nearer to the usual"
                    " ones.",
                    label=first.label,
                    why=why,
                ),
            )
        ]
    )


def _unknown_input(calculator, name) -> InputError:
    near = get_close_matches(name, calculator.input, 1)
    hint = f"the nearest is {near[0]}" if near else "give one of " + ", ".join(calculator.input)
    return InputError(
        name,
        "unknown-input",
        say("{name} is not an input of {id}; {hint}.", name=quoted(name), id=calculator.id, hint=hint),
    )
