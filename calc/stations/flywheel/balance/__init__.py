"""Unbalance of a part against what its grade permits, and the holes that take it out."""

from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.flywheel.balance.asked import In, refuse_impossible
from calc.stations.flywheel.balance.drawing import from_the_end
from calc.stations.flywheel.balance.parts import found_of, told_of
from calc.stations.flywheel.balance.told import Out
from calc.stations.flywheel.balance.verdict import limits_of, remarks_on, verdict_on


@calculator(
    "balance",
    "Permitted unbalance, and drilling it out",
    In,
    Out,
    purpose="May this unbalance stay, and if not, where and how deep is it drilled?",
    finds=(
        "balancing",
        "dynamic balance",
        "static balance",
        "balance a crankshaft",
        "balance a flywheel",
        "residual unbalance",
        "imbalance",
        "balance grade",
        "heavy spot",
        "arbor error",
        "balance drilling",
    ),
    sources=(
        sources.BALANCE_GRADE,
        sources.INDEXING,
        sources.DRILLED,
        sources.MATERIALS,
        sources.PRACTICE,
        sources.INVENTED,
    ),
    cautions=(cautions.IN_ITS_PLANE, cautions.CUTTING, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def balance(i: In) -> Answer:
    """Permitted: grade × mass ÷ angular speed, or the share of one of two planes, in proportion to the
    other plane's distance from the centre of mass. The part's own unbalance is half the vector sum of two
    readings, turned by 180° on the arbor between them; half their difference is the arbor's.

    Holes are a cylinder and the cone of the drill's point; in a rim their metal sits at falling radii.
    """
    refuse_impossible(i)
    found = found_of(i)
    return answer(
        found.left,
        found.heavy,
        found.permitted,
        found.arbor,
        *told_of(i, found),
        verdict=verdict_on(i, found),
        limits=limits_of(found),
        remarks=remarks_on(i, found),
        figures=lambda: (from_the_end(i, found),),
    )
