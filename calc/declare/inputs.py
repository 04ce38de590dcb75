"""What a calculator asks for, declared as a class of typed fields."""

import inspect
from collections.abc import Mapping
from dataclasses import replace
from typing import Any, ClassVar, get_args

from calc.declare.choice import Choice
from calc.declare.quantity import Quantity
from calc.declare.taken import Input


class DeclarationError(TypeError):
    """A calculator declared wrongly; names the calculator, the parameter and what is missing."""


class Inputs:
    """Base of what a calculator asks for: fields in the order of its form, each annotated with what the
    function gets of it.

        class In(Inputs):
            pocket_bore: Number = measured("Pocket bore", "D_p", SIZE, tool="a bore gauge", …)
            bearing: Number | None = measured(...)  # may stay empty

    A class may stand on another: the fields of its base come first. An instance holds their values.
    """

    _all: ClassVar[tuple[Input, ...]] = ()

    def __init_subclass__(cls) -> None:
        super().__init_subclass__()
        annotated = inspect.get_annotations(cls)
        own = [_named(cls, name, kind) for name, kind in annotated.items()]
        for name, value in vars(cls).items():
            if isinstance(value, Input) and name not in annotated:
                raise DeclarationError(f"{cls.__module__}: {name} says no type, such as Number")
        before = (field for base in cls.__bases__ if issubclass(base, Inputs) for field in base._all)
        cls._all = tuple({field.name: field for field in (*before, *own)}.values())

    def __init__(self, **values: Any) -> None:
        self.__dict__.update(values)

    @classmethod
    def all(cls) -> tuple[Any, ...]:
        """The inputs in the order of the form, those of a base first."""
        return cls._all


def _named(cls: type, name: str, kind: Any) -> Any:
    """The input that a field of a class declares, with its name, and told by its type whether it may stay
    empty."""
    declared = vars(cls).get(name)
    if isinstance(declared, Quantity):
        optional = type(None) in get_args(kind)
        return replace(declared, name=name, optional=optional, stands_in=declared.stands_in and not optional)
    if not isinstance(declared, Input):
        raise DeclarationError(f"{cls.__module__}: {name} is not declared with measured, given or choice")
    return replace(declared, name=name)  # type: ignore[type-var]  # every kind of input is a dataclass


def check(id: str, asks: type[Inputs]) -> None:
    """Raises where a calculator asks for nothing, or for what could not be worked without its reader: the
    example has nothing for it, or it counts for what is never asked."""
    if not asks.all():
        raise DeclarationError(f"{id}: no inputs")
    by_name = {i.name: i for i in asks.all()}
    for declared in asks.all():
        _check_example(id, declared)
        _check_when(id, declared, by_name)


def _check_example(id: str, declared: Input) -> None:
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


def _check_when(id: str, declared: Input, inputs: Mapping[str, Input]) -> None:
    """Raises where an input counts only for what its choice does not offer, or with a reading that is always
    taken."""
    name, *options = declared.when or ("",)
    chooser = inputs.get(name)
    if not name or not options and getattr(chooser, "optional", False):
        return
    if not isinstance(chooser, Choice) or not options or not set(options) <= set(chooser.options):
        raise DeclarationError(
            f"{id}: {declared.name} counts when {name} is {', '.join(options) or 'nothing'}, which is no"
            " choice of this calculator"
        )
