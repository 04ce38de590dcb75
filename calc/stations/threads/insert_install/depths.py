"""How deep the insert stands, the hole is tapped and drilled, and what metal is left under it."""

from typing import NamedTuple

from calc.core.result import impossible
from calc.core.working import PI, Number, step, tan
from calc.reference import sources
from calc.stations.shared.forms import COARSE
from calc.stations.threads.insert_install.asked import BLIND, In
from calc.stations.threads.insert_install.hole import Hole
from calc.stations.threads.insert_install.told import Out

POINT = 118  # degrees, of a usual drill


class Depths(NamedTuple):
    """From the face down; `body` is the insert's length, `whole` that on which its threads are whole."""

    setting: Number
    body: Number
    whole: Number
    tapped: Number
    drilled: Number
    left: Number


def depths_of(i: In, hole: Hole) -> Depths:
    setting = Out.setting(i.under * hole.stud_pitch, sources.PRACTICE)
    body = step("L", "Insert's length", COARSE, i.length * hole.nominal)
    whole = step("L_e", "Length on which threads are whole", COARSE, body - hole.pitch, sources.PRACTICE)
    if whole <= 0:
        raise impossible("length", "is {q}, no more than its own half-formed ends; give more", q=i.length)
    if i.way != BLIND:
        tapped, drilled = Out.tapped(i.metal), Out.drilled(i.metal)
        return Depths(setting, body, whole, tapped, drilled, Out.left(i.metal - setting - body))
    tapped = Out.tapped(setting + body + hole.pitch, sources.PRACTICE)
    drilled = Out.drilled(tapped + i.lead * hole.pitch, sources.PRACTICE)
    point = step("h", "Height of the drill's point", COARSE, hole.drill / 2 / tan(PI * (POINT / 2 / 180)))
    return Depths(setting, body, whole, tapped, drilled, Out.left(i.metal - drilled - point))
