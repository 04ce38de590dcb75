"""A sheet-metal screw, that forms its own thread."""

from calc.core.conformance import past
from calc.core.result import Judged, say
from calc.core.working import Number, constant, least, step
from calc.declare.calculator import Limit
from calc.reference import sources
from calc.stations.shared.forms import COARSE, TIMES
from calc.stations.threads.sheet_insert.asked import In
from calc.stations.threads.sheet_insert.made import NUT_FACTOR, Made
from calc.stations.threads.sheet_insert.sheet import Sheet
from calc.stations.threads.sheet_insert.sold import SCREWS
from calc.stations.threads.sheet_insert.told import Out


def screw(i: In, sheet: Sheet) -> Made:
    named = zip(("d", "d_c", "P"), ("Screw's outside", "Screw's core", "Screw's pitch"), SCREWS[i.thread])
    outside, core, pitch = (
        constant(symbol, label, COARSE, value * 1e-3, sources.ISO_1478) for symbol, label, value in named
    )
    bite = step(
        "y",
        "How far up its thread the hole reaches",
        TIMES,
        least(0.15 + 0.2 * (i.thickness / constant("t_1", "One millimetre", COARSE, 1e-3)), 0.75),
        sources.PRACTICE,
    )
    hole = Out.hole(core + (outside - core) * bite, sources.PRACTICE)
    pull = Out.pull(0.85 * i.thickness * outside * sheet.ultimate, sources.AISI_S100)
    thickest = 1.5 * pitch
    return Made(
        hole,
        Out.across(outside, sources.ISO_1478),
        core,
        Out.turns(i.thickness / pitch),
        pull,
        Out.turn(NUT_FACTOR * outside * pull, sources.PRACTICE),
        (Limit("the sheet that the screw goes through", i.thickness, high=thickest),),
        _fault(i.thickness, thickest),
    )


def _fault(thickness: Number, thickest: Number) -> Judged | None:
    if not past(thickness, thickest):
        return None
    return (
        "fail",
        say("Sheet too thick: the screw seizes"),
        (
            "Its thread is cold-formed, and in so thick a sheet it breaks off. Tap the sheet for a machine"
            " screw."
        ),
    )
