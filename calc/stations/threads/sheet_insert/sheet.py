"""The sheet's metal: what it bears."""

from typing import NamedTuple

from calc.core.working import Number, constant, step
from calc.reference import sources
from calc.stations.shared.forms import MPA
from calc.stations.threads.sheet_insert.asked import In
from calc.stations.threads.sheet_insert.sold import SHEETS

SHEAR = 0.6  # shear strength over tensile; common practice, no source


class Sheet(NamedTuple):
    ultimate: Number
    shear: Number


def sheet_of(i: In) -> Sheet:
    ultimate = i.tensile
    if ultimate is None:
        tensile = SHEETS[i.alloy][1] * 1e6
        ultimate = constant("R_m", "Tensile strength of the sheet", MPA, tensile, sources.MATERIALS)
    shear = step("τ", "Shear strength of the sheet", MPA, SHEAR * ultimate, sources.PRACTICE)
    return Sheet(ultimate, shear)
