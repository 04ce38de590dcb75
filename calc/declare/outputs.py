"""What a calculator finds, declared as a class of named results."""

from dataclasses import dataclass, field

from calc.core.result import Source
from calc.core.working import Form, Number, Value, step


@dataclass
class Output:
    """A result: label, symbol, form (kind, sensible decimals, units). Called with an expression it names that
    expression.

    A result that is of whatever kind the entry was has no form in its declaration, and is given one with each
    expression.

    `feature` names the size of the part, on an engine's data sheet, that the result is and no gauge reads
    directly: a job can keep it.
    """

    label: str
    symbol: str
    form: Form | None
    main: bool = False
    help: str = ""
    feature: str = ""
    key: str = field(default="", init=False)

    def __set_name__(self, owner: type, name: str) -> None:
        self.key = name

    def __call__(self, expression: Value, source: Source | None = None, form: Form | None = None) -> Number:
        shape = form or self.form
        if shape is None:
            raise TypeError(f"{self.key} has no form of its own, and was given none")
        return step(self.symbol, self.label, shape, expression, source, self.key)


class Outputs:
    """Base of a calculator's named results, in the order in which they are shown."""

    @classmethod
    def all(cls) -> tuple[Output, ...]:
        return tuple(v for v in vars(cls).values() if isinstance(v, Output))
