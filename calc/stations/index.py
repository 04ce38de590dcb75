"""The shop's stations and their calculators, by explicit list; a calculator is imported when it is asked for."""

from difflib import get_close_matches
from importlib import import_module

from calc.declare.calculator import Calculator

STATIONS = ("measuring", "heads", "rods", "lifters", "threads")


def station(name: str):
    """The station's package: its TITLE, PURPOSE and CALCULATORS (ids in the order of the work)."""
    return import_module(f"calc.stations.{name}")


def ids() -> list[str]:
    """Every calculator's id, station by station."""
    return [id for name in STATIONS for id in station(name).CALCULATORS]


def find(id: str) -> Calculator:
    """The calculator of that id; raises KeyError naming the nearest ids."""
    for name in STATIONS:
        if id in station(name).CALCULATORS:
            module = getattr(station(name), "MODULES", {}).get(id, id.replace("-", "_"))
            return getattr(import_module(f"calc.stations.{name}.{module}"), id.replace("-", "_"))
    near = get_close_matches(id, ids(), 3)
    raise KeyError(
        f"there is no calculator {id!r}; "
        + (f"the nearest are {', '.join(near)}" if near else f"there are {', '.join(ids())}")
        + "."
    )


def every() -> list[Calculator]:
    return [find(id) for id in ids()]
