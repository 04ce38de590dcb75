"""Compression of one cylinder: what the piston sweeps, what is left over it, and what gives another ratio."""

from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.cylinders.compression.asked import In
from calc.stations.cylinders.compression.drawing import over_the_piston
from calc.stations.cylinders.compression.remarks import remarks_on
from calc.stations.cylinders.compression.table import worth_of_readings
from calc.stations.cylinders.compression.told import Out
from calc.stations.cylinders.compression.verdict import limits_of, verdict_on
from calc.stations.cylinders.compression.volumes import volumes_of, wanted_of


@calculator(
    "compression",
    "Compression ratio",
    In,
    Out,
    purpose=(
        "What is this cylinder's compression ratio, is it that of the engine's sheet, and which chamber or"
        " shim gives another?"
    ),
    finds=(
        "compression ratio",
        "displacement",
        "swept volume",
        "capacity",
        "cubic capacity",
        "dome volume",
        "dished piston",
        "crown volume",
        "barrel shims for a ratio",
    ),
    sources=(sources.COMPRESSION, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.MAKER_FIRST, cautions.SOLVENT, cautions.AIRCRAFT),
)
def compression(i: In) -> Answer:
    """Geometric ratio, (swept + left) ÷ left, of the bore and stroke that were read.

    Left over the piston: the chamber as the burette gave it, the flat space down to the plane of the crown's
    edge, a step wider than the bore that the plate did not cover, less the crown. The space round the top
    land is told and not counted. Each way back is put back exactly: the chamber or the deck that is told
    gives the ratio wanted.
    """
    v = volumes_of(i)
    wanted = wanted_of(i, v)
    return answer(
        v.ratio,
        v.left,
        v.swept,
        v.displacement,
        v.crown,
        v.deck,
        v.step,
        v.land,
        v.ratio_land,
        wanted.chamber,
        wanted.deck,
        wanted.shim,
        verdict=verdict_on(i, v, wanted),
        limits=limits_of(i, v, wanted),
        remarks=remarks_on(i, v),
        tables=lambda: (worth_of_readings(i, v),),
        figures=lambda: (over_the_piston(i, v),),
    )
