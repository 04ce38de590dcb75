"""A flywheel's section, read ring by ring from the bore outwards."""

from collections.abc import Iterable
from typing import Any, NamedTuple

from calc.core.result import impossible
from calc.core.working import Number
from calc.declare.fields import column, grid
from calc.stations.shared.forms import COARSE, ROUGH

ROWS = 8
TOUCHING = 2e-5  # m: rings that are read so far apart meet


class Ring(NamedTuple):
    """Diameters, thickness, and where its face begins on the engine's side; m."""

    inner: Number
    outer: Number
    thickness: Number
    begins: float

    def holds(self, diameter: float) -> bool:
        return float(self.inner) <= diameter <= float(self.outer)


def section_of(hint: str, example: str) -> Any:
    """Input: the section as a grid."""
    return grid(
        "Section, from the bore outwards",
        tuple(map(str, range(1, ROWS + 1))),
        (
            column("From diameter", "D_i", ROUGH, hard="0 to 900 mm", usual="20 to 400 mm"),
            column("To diameter", "D_o", ROUGH, hard="5 to 900 mm", usual="40 to 450 mm"),
            column("Thickness", "t", COARSE, hard="1 to 200 mm", usual="5 to 80 mm"),
            column("Begins", "z", COARSE, hard="-100 to 200 mm", usual="-30 to 60 mm", optional=True),
        ),
        least=1,
        tool="a calliper, thickness by a micrometer or over a plate",
        hint=hint
        + " Begins: how far its face on the engine's side stands back from the hub's; empty, it is level.",
        example=example,
    )


def rings_of(rows: Iterable[tuple | None]) -> list[Ring]:
    """The rings in their order; refuses a section with a gap, or with a ring inside out."""
    found: list[Ring] = []
    for n, row in enumerate(rows, 1):
        if row is None:
            continue
        inner, outer, thickness, begins = row
        if inner >= outer:
            raise impossible(
                f"section.{n}.2",
                "is {o}, not more than where its ring begins, {i}; give more",
                o=outer,
                i=inner,
            )
        if found and abs(float(inner - found[-1].outer)) > TOUCHING:
            raise impossible(
                f"section.{n}.1",
                "is {i}, and the ring before it ends at {o}; give {o}, or a ring between them",
                i=inner,
                o=found[-1].outer,
            )
        found.append(Ring(inner, outer, thickness, 0.0 if begins is None else float(begins)))
    return found
