"""The shop's stations: their calculators, what they check and what they order, by explicit list.

Each is imported when it is asked for.
"""

from dataclasses import replace
from difflib import get_close_matches
from importlib import import_module
from typing import TYPE_CHECKING

from calc.declare.calculator import Calculator

if TYPE_CHECKING:  # a page without a job needs nothing of jobs
    from calc.job.verdicts import Row
    from calc.stations.shared.checks import Check
    from calc.stations.shared.orders.order import Order

STATIONS = (
    "measuring",
    "heads",
    "cylinders",
    "rods",
    "crank",
    "crankcase",
    "flywheel",
    "cam",
    "lifters",
    "threads",
    "cutting",
)

# in the order in which an engine is closed
CHECKS = (
    "shared.every_engine.passages_clean",
    "shared.every_engine.parts_in_their_places",
    "crank.checks.straight",
    "crankcase.checks.main_bearings",
    "crankcase.checks.shells_seated",
    "crankcase.checks.camshaft",
    "crankcase.checks.cam_gear",
    "rods.checks.straight",
    "rods.checks.weights",
    "rods.checks.bearings",
    "rods.checks.nuts",
    "rods.checks.side_clearance",
    "lifters.checks.free_in_the_case",
    "crankcase.checks.stud_seals",
    "crankcase.checks.case_nuts",
    "crankcase.checks.turning_torque",
    "crankcase.checks.end_float",
    "cylinders.checks.ring_gaps",
    "cylinders.checks.pistons",
    "cylinders.checks.rings_on",
    "cylinders.checks.pistons_round",
    "cylinders.checks.deck_height",
    "heads.checks.valves_tight",
    "heads.checks.valves_free",
    "heads.checks.stem_heights",
    "heads.checks.chambers_alike",
    "cam.checks.rockers",
    "cam.checks.valves_clear",
    "cylinders.checks.tubes_sealed",
    "heads.checks.nuts",
    "lifters.checks.lash_or_travel",
    "crankcase.checks.flywheel",
    "flywheel.checks.clutch_step",
    "shared.every_engine.turned_through",
)

# in the order in which an engine is built; then what sets a height, what is worn out, what words name
ORDERS = (
    "crankcase.orders.MAIN_SHELLS",
    "rods.orders.BIG_END_SHELLS",
    "cylinders.orders.PISTONS",
    "rods.orders.SMALL_END_BUSHES",
    "heads.orders.SEAT_RINGS_INTAKE",
    "heads.orders.SEAT_RINGS_EXHAUST",
    "heads.orders.GUIDES",
    "heads.orders.VALVES_INTAKE",
    "heads.orders.VALVES_EXHAUST",
    "lifters.orders.LIFTERS",
    "cam.orders.CAM_GEAR",
    "cylinders.orders.SHIMS",
    "crankcase.orders.END_FLOAT_SHIMS",
    "heads.orders.SPRING_SHIMS",
    "heads.orders.WORN",
    "cylinders.orders.WORN",
    "rods.orders.WORN",
    "crankcase.orders.WORN",
    "flywheel.orders.WORN",
    "cam.orders.WORN",
    "lifters.orders.WORN",
    "threads.orders.INSERTS",
)


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


def checks(job: dict, rows: "list[Row] | None" = None) -> "list[Check]":
    """What whoever bolts the engine together must check, for exactly the parts of a job, in order.

    `rows` are the job's verdicts, where they are at hand. An engine without a sheet here gets the checks
    that
    need no size.
    """
    from calc.job.verdicts import judge
    from calc.job.view import View

    view = View(job, judge(job) if rows is None else rows)
    made = {path: named(path)(view) for path in CHECKS}
    return [replace(check, id=id_of(path)) for path, check in made.items() if check]


def id_of(path: str) -> str:
    """What a check is called in a link, and in a job that tells that it was made: "rods-nuts", and
    "passages-clean" of those of every engine. A job on paper knows it by that, so it stays."""
    return path.removeprefix("shared.every_engine.").replace(".checks.", "-").replace("_", "-")


def orders(job: dict) -> "list[Order]":
    """What the job's sizes say is to be ordered, in order. Empty where there is nothing to say."""
    from calc.job.sizes import Sizes

    sizes = Sizes(job)
    rows: list[Order] = []
    for ordered in map(named, ORDERS):
        rows += ordered.rows(sizes, tuple(rows))
    return rows


def named(path: str):
    """A check or an order by its path in this package: "rods.checks.straight"."""
    module, _, name = path.rpartition(".")
    return getattr(import_module(f"calc.stations.{module}"), name)
