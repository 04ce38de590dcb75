"""A calculator as it was declared, and its function worked on values."""

from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import cached_property, partial
from math import isfinite
from typing import Any

from calc.core.bare import bare
from calc.core.conformance import DUST
from calc.core.result import Answer, Caution, Impossible, Refused, Source, refused
from calc.declare.inputs import DeclarationError, Inputs
from calc.declare.outputs import Output

Values = dict[str, Any]
"""What the inputs are worth, by name: Number, text of a choice, rows of a grid, None."""


class AtOdds(Exception):
    """A calculator whose verdict is at odds with its own limits: a fault of ours, never of an entry. It is
    told, and no verdict is shown: none is better than a wrong one."""


@dataclass(frozen=True)
class Declaration:
    """`about_doubt`: the verdict is about the doubt of a reading itself, so its limits do not decide it
    alone."""

    id: str
    title: str
    station: str
    purpose: str
    finds: tuple[str, ...]
    sources: tuple[Source, ...]
    cautions: tuple[Caution, ...]
    function: Callable[[Any], Answer]
    asks: type[Inputs]
    outputs: tuple[Output, ...]
    about_doubt: bool = False

    @property
    def inputs(self) -> tuple[Any, ...]:
        return self.asks.all()

    @cached_property
    def input(self) -> dict[str, Any]:
        return {i.name: i for i in self.inputs}

    @cached_property
    def output(self) -> dict[str, Output]:
        return {o.key: o for o in self.outputs}

    def work(self, values: Values) -> Answer:
        """Call the calculator's function; entries that do not go together are refused, by it or by what it
        shows."""
        found: Answer = self._refusing(self.function, self.asks(**values))
        if not all(isfinite(n.value) for n in found.numbers):
            raise self.no_answer("endless")
        outputs = [n.key for n in found.numbers]
        if outputs != list(self.output):
            raise DeclarationError(f"{self.id}: returned {outputs}, declared {list(self.output)}")
        if not self.about_doubt:
            self._check_verdict(found, values)
        figures, tables = (partial(self._refusing, shown) for shown in (found.figures, found.tables))
        return replace(found, figures=figures, tables=tables)

    def elsewhere(self, values: Values) -> Answer:
        """The same for a look at other values: numbers, limits and verdict come out equal, but nothing of it
        is to be told, since its numbers do not know how they were made."""
        return self.work({name: bare(value) for name, value in values.items()})

    def _refusing(self, make: Callable[..., Any], *given: Any) -> Any:
        try:
            return make(*given)
        except Refused:
            raise
        except Impossible as error:
            declared = self.input[error.field.partition(".")[0]]
            words = declared.label + ": " + error.text.template.rstrip(".") + "."
            raise refused(error.field, "impossible", words, **error.text.values) from None
        except (ArithmeticError, ValueError) as error:  # a division by zero, the root of a negative number
            raise self.no_answer(type(error).__name__) from error

    def _check_verdict(self, found: Answer, values: Values) -> None:
        """Raises `AtOdds` where what passes lies outside one of its limits, or what was measured fails within
        all of those that decide between passing and failing: a doubt turns a verdict by its limits only
        (`calc.declare.doubt`), so a fail that none of them knows would stay a firm one, however near."""
        state = found.verdict.state
        margins = [(m, limit) for limit in found.limits for m in limit.margins() if m is not None]
        if state == "pass":
            outside = [limit.words for m, limit in margins if m < -DUST]
            if outside:
                raise self._at_odds(found, f"outside of its limits of {', '.join(outside)}")
        if state == "fail" and any(i.measured and values[i.name] is not None for i in self.inputs):
            if any(m <= DUST for m, limit in margins if limit.level == "fail"):
                return
            raise self._at_odds(found, "within all its limits")

    def _at_odds(self, found: Answer, where: str) -> AtOdds:
        return AtOdds(
            f"{self.title} is at fault: it says “{found.verdict.headline.plain()}” {where}. Do not use its"
            " verdict, and report it with the entries."
        )

    def no_answer(self, why: str) -> Refused:
        """Keeps an arithmetical fault from the reader's eye; the sweep over all calculators holds that it
        never happens."""
        first = self.inputs[0]
        words = "{label}: these entries together give no answer ({why}); give sizes nearer to the usual ones."
        return refused(first.name, "no-answer", words, label=first.label, why=why)
