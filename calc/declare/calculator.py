"""One declaration per calculator, and the one way to evaluate it. All that a calculator is declared with is
imported from here.

A calculator is a function of what a class of `Inputs` declares; a class of `Outputs` names its results. Form,
checks on input, page, command, schema and the tests' sweep all read this declaration.

    class In(Inputs):
        pocket_bore: Number = measured(
            "Pocket bore", "D_p", SIZE, tool="a bore gauge", hard="5 to 120 mm", example="37.9 mm"
        )

    class Out(Outputs):
        grip = Output("Interference", "δ", SIZE, main=True)

    @calculator(
        "seat-fit", "Seat ring in its pocket", In, Out, purpose="...", sources=(LAME,), cautions=(HOT,)
    )
    def seat_fit(i: In) -> Answer:
        return answer(Out.grip(i.ring_outside - i.pocket_bore), verdict=("pass", "Holds", "Fit it."))
"""

from collections.abc import Callable, Iterable
from typing import Any

from calc.core.result import Answer, Caution, Limit, Source, answer
from calc.core.working import Number
from calc.declare.declaration import Declaration
from calc.declare.evaluation import evaluate
from calc.declare.fields import choice, column, given, grid, limit, measured, which_valve
from calc.declare.grid import Rows
from calc.declare.inputs import DeclarationError, Inputs, check
from calc.declare.open_input import any_of
from calc.declare.outputs import Output, Outputs
from calc.declare.result import Result

__all__ = [
    "Answer",
    "Calculator",
    "DeclarationError",
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


class Calculator(Declaration):
    """A declared calculator; called with entries by input name, it evaluates them."""

    def __call__(self, **entries: str) -> Result:
        return evaluate(self, entries)


def calculator(
    id: str,
    title: str,
    inputs: type[Inputs],
    outputs: type[Outputs],
    *,
    purpose: str,
    finds: Iterable[str] = (),
    sources: Iterable[Source] = (),
    cautions: Iterable[Caution] = (),
    about_doubt: bool = False,
) -> Callable[[Callable[[Any], Answer]], Calculator]:
    """Declare a calculator; the decorated name becomes the `Calculator`. Its station is the package that it
    stands in. `about_doubt` where its verdict is about the doubt of a reading itself, and is not decided by
    its limits alone."""

    def declare(function: Callable[[Any], Answer]) -> Calculator:
        check(id, inputs)
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
            about_doubt,
        )

    return declare
