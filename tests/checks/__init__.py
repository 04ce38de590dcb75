"""Numbers from outside the project that the formulas must agree with, and which way results go, kept as data.

The same rows are tested and printed on the pages of sources. What checks `calc/<path>.py` stands in `tests/checks/<path>.py` and is found
by that: a list `CHECKS` of numbers, and for a calculator its `TRENDS`, {output: Trend}. It imports nothing but the project, so that a
build can read it.
"""
from collections.abc import Callable
from dataclasses import dataclass
from functools import cache
from importlib import import_module
from pathlib import Path

from calc.core.spelling import unit_spelled
from calc.core.writing import to_unit
from calc.declare.calculator import evaluate
from calc.stations.index import find

HERE = Path(__file__).parent

KINDS = {
    "library": "worked by a general-purpose library, by another method than ours",
    "standard": "value of a published standard",
    "handbook": "value or worked example of a handbook",
    "limit": "analytic limit or identity",
}


@dataclass(frozen=True)
class Check:
    """One number to agree with.

    subject    what is computed, as a heading: "Press fit"
    what       which number of it, with its unit: "pressure in the joint, MPa"
    inputs     name → number; the names say the unit ("joint_mm"); or name → text, as entered in a calculator. `got` is called with them
    expected   the outside number, in the unit of `what`
    tolerance  largest difference allowed, same unit; half the last digit that the source gives, or the source's own scatter
    got        computes the number with the project's formulas
    source     where `expected` comes from, as a reader would look it up; "from memory" where no copy was open
    kind       one of KINDS
    """
    subject: str
    what: str
    inputs: dict[str, float | str]
    expected: float
    tolerance: float
    got: Callable[..., float]
    source: str
    kind: str

    def __post_init__(self):
        if self.kind not in KINDS:
            raise ValueError(f"{self.subject}: kind is {self.kind!r}; use one of {', '.join(KINDS)}")
        if not self.tolerance > 0 or not self.source:
            raise ValueError(f"{self.subject}, {self.what}: needs a tolerance above 0 and a source")


@dataclass(frozen=True)
class Trend:
    """The inputs that physics says a result never falls or never rises with, the rest held, anywhere within the accepted ranges:
    "ring_outside head_wall"; "fins.2" is the second column of a grid, "fins" all of them."""
    rises: str = ""
    falls: str = ""

    @property
    def ways(self) -> dict[str, int]:
        """1 for each input that it rises with, −1 for each that it falls with. ValueError for one that is named twice."""
        named = [*self.rises.split(), *self.falls.split()]
        if len(set(named)) < len(named):
            raise ValueError("an input is named twice")
        return dict.fromkeys(self.rises.split(), 1) | dict.fromkeys(self.falls.split(), -1)


@cache
def tables() -> dict:
    """The modules of this folder, by the module of `calc` that they check."""
    found = {}
    for path in sorted(HERE.rglob("*.py")):
        inside = path.relative_to(HERE).with_suffix("").parts
        if inside[-1] != "__init__":
            found[".".join(("calc", *inside))] = import_module(".".join(("tests", "checks", *inside)))
    return found


def rows_of(module: str) -> list[Check]:
    """The outside numbers of a module of `calc`, by its name."""
    return list(getattr(tables().get(module), "CHECKS", ()))


def trends_of(module: str) -> dict[str, Trend]:
    """Which way the results of a calculator's module go, by output."""
    return dict(getattr(tables().get(module), "TRENDS", {}))


def every() -> list[Check]:
    return [check for module in tables() for check in rows_of(module)]


def asked(id: str, output: str, unit: str = "") -> Callable[..., float]:
    """A function of entries that evaluates the calculator as a reader asks it, with texts, and gives one output, counted in `unit`;
    a bare ratio without one."""

    def got(**entries) -> float:
        calculator = find(id)
        found = evaluate(calculator, entries)[output]
        return to_unit(found, unit_spelled(calculator.output[output].form.kind, unit)) if unit else found

    return got
