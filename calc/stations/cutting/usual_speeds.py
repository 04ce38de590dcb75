"""Cutting speeds that the trade uses, by what is cut and with what.

All from memory, common practice, no source: the tool maker's table goes before them.
"""

from typing import NamedTuple

HSS, CARBIDE = "hss", "carbide"
TOOLS = {CARBIDE: "Carbide", HSS: "High-speed steel"}


class Cut(NamedTuple):
    """Name of what is cut, and lowest and highest usual speed, m/min, with each tool."""

    name: str
    speeds: dict[str, tuple[float, float]]


CUTS = {
    "aluminium": Cut("Aluminium casting", {CARBIDE: (200, 400), HSS: (60, 120)}),
    "magnesium": Cut("Magnesium casting, dry", {CARBIDE: (200, 400), HSS: (60, 150)}),
    "iron": Cut("Grey cast iron", {CARBIDE: (60, 90), HSS: (15, 25)}),
    "seat": Cut("Seat ring, fitted", {CARBIDE: (15, 30), HSS: (5, 10)}),
    "steel": Cut("Forged steel", {CARBIDE: (80, 150), HSS: (15, 25)}),
    "bronze": Cut("Bronze", {CARBIDE: (100, 200), HSS: (25, 50)}),
}
