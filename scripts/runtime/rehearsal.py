"""What calculators can be asked, run inside the runtime when the site is built: by `inside.py`, which packs
what is imported on the way, and by `remember.mjs`, which keeps the memory that it leaves and finds what of
the program it runs.
"""

import gc
import json
import random  # noqa: F401  which a woken Python seeds anew (docs/assets/js/python.mjs)
import sys
import zipimport
from importlib import import_module
from itertools import cycle

from calc.declare.calculator import Calculator
from calc.declare.grid import Grid
from calc.page import live
from calc.page.live import answer
from calc.reference.engine import DEMO, engine
from calc.stations import index as stations

# A reader types anything; the entries take turns in being given one of these.
TYPED = (
    "",
    "  ",
    "abc",
    "0",
    "-1",
    "1e400",
    "nan",
    "37,9",
    "1 2 3",
    "1 31/64 in",
    "5 kg",
    "37.9 ± 0.01",
    "9" * 5000,
)


# As a reader asks who has read nothing else: by the demo engine's sheet, which then is at hand and asks for
# nothing more.
STANDING = {"engine": DEMO, "which": "", "job": {}}


def ask(calculator, entries, system, standing=None):
    """As a page does, its working unfolded."""
    first = json.loads(
        answer(
            json.dumps(
                {
                    "call": "evaluate",
                    "calculator": calculator.id,
                    "first": True,
                    "entries": entries,
                    "system": system,
                    "standing": standing,
                }
            )
        )
    )
    if "more" in first:
        answer(json.dumps({"call": "rest"}))


def read(calculator) -> dict:
    """Entries as a reader has them who has read all: the example's, in their own units."""
    entries = {}
    for declared in calculator.inputs:
        if isinstance(declared, Grid):
            entries |= {declared.cells[place].name: text for place, text in declared.default_texts.items()}
        elif text := declared.default_text("metric"):
            entries[declared.name] = text
    return entries


def work_one(core: list[str]) -> None:
    """Import the modules `core`, work one example, and unload its calculator, which comes back with its
    station's part: the rest would add much to the memory that it leaves, and save little time."""
    for name in core:
        import_module(name)
    for standing in (None, STANDING):
        ask(stations.find(stations.ids()[0]), {}, "metric", standing)
    live._rest = None
    for name in [name for name in sys.modules if name.startswith("calc.") and name not in core]:
        above, _, own = name.rpartition(".")
        delattr(sys.modules[above], own)
        del sys.modules[name]
    for name in stations.STATIONS:
        del stations.station(name).__path__[:-1]
    for known in (sys.path_importer_cache, zipimport._zip_directory_cache):
        for path in [path for path in known if "/station-" in path]:
            del known[path]
    gc.collect()
    if left := [each.id for each in gc.get_objects() if isinstance(each, Calculator)]:
        raise AssertionError(
            f"{', '.join(left)} would stay in every reader's memory: something still refers to it."
        )


def rehearse() -> None:
    """Ask every calculator for its example, and with each entry spoilt, in both unit systems, and whether
    sizes are right."""
    typed = cycle((*TYPED, "37.5", "37.5 ± 0.01 mm", "1 31/64"))
    for feature in engine(DEMO).features.values():
        for stage, system in (("", "metric"), ("received", "inch")):
            asked = {"engine": DEMO, "feature": feature.id, "stage": stage, "text": next(typed)}
            answer(json.dumps({"call": "size", "system": system, **asked}))
    typed, standings = cycle(TYPED), cycle((None, STANDING))
    for calculator in stations.every():
        for system in ("metric", "inch"):
            for standing in (None, STANDING):
                ask(calculator, {}, system, standing)
            ask(calculator, {"no such entry": "1"}, system)
            for entry in calculator.inputs:
                ask(calculator, {entry.name: next(typed)}, system, next(standings))
        for kind in ("intake", "exhaust"):
            ask(calculator, read(calculator), "metric", {**STANDING, "which": kind})
