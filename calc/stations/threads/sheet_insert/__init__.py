"""A thread in thin sheet: rivet nut, clinch nut, tapped collar or sheet-metal screw; its hole, and what sheet
and thread bear."""

from calc.declare.calculator import Answer, Limit, answer, calculator
from calc.reference import cautions, sources
from calc.stations.threads.sheet_insert.asked import (
    CLINCH,
    COLLAR,
    RIVET,
    SCREW,
    In,
    refuse_what_does_not_go_together,
)
from calc.stations.threads.sheet_insert.collar import collar
from calc.stations.threads.sheet_insert.drawing import section
from calc.stations.threads.sheet_insert.edge import edge_least
from calc.stations.threads.sheet_insert.nut import nut
from calc.stations.threads.sheet_insert.remarks import remarks_on
from calc.stations.threads.sheet_insert.screw import screw
from calc.stations.threads.sheet_insert.sheet import sheet_of
from calc.stations.threads.sheet_insert.told import Out
from calc.stations.threads.sheet_insert.verdict import verdict_on

MAKERS = {RIVET: nut, CLINCH: nut, COLLAR: collar, SCREW: screw}


@calculator(
    "sheet-insert",
    "Thread in thin sheet",
    In,
    Out,
    purpose="What hole does it take, will the sheet hold it, and at what torque does it spin or strip?",
    finds=(
        "rivet nut",
        "clinch nut",
        "press nut",
        "extruded hole",
        "sheet metal screw",
        "self-tapping screw",
        "shroud",
        "baffle",
        "spinning nut",
        "stripped sheet",
    ),
    sources=(
        sources.SHEET_SHEAR,
        sources.COLLAR,
        sources.H28,
        sources.BOLT_CLASSES,
        sources.STRESS_AREA,
        sources.ISO_965,
        sources.AISI_S100,
        sources.PRACTICE,
    ),
    cautions=(cautions.MAKER_FIRST, cautions.SHEET),
)
def sheet_insert(i: In) -> Answer:
    """Estimates for choosing, from the shear of the sheet; a pull and a twist on a scrap of the same sheet
    decide.

    Rivet nut: pull shears the sheet at the hole's edge. Clinch nut: pushing it back out takes a fifth of
    that. Both turn at a share of the torque that would shear it. Collar: shear of the tapped thread at least
    material. Screw: AISI S100. The shares are common practice. In all but the last no more than a machine
    screw of class 8.8 bears by its proof stress, and a torque that makes that pull.
    """
    refuse_what_does_not_go_together(i)
    made = MAKERS[i.way](i, sheet_of(i))
    edge = edge_least(i, made)
    pull_share, turn_share = Out.pull_share(made.pull / i.pull), Out.turn_share(made.turn / i.torque)
    grip = Limit("the sheet in the nut's grip", i.thickness, low=i.grip_least, high=i.grip_most)
    return answer(
        made.hole,
        made.pull,
        made.turn,
        edge,
        made.across,
        made.turns,
        pull_share,
        turn_share,
        verdict=made.fault or verdict_on(i, made, edge, pull_share, turn_share),
        limits=(
            *made.limits,
            *((grip,) if i.way == RIVET else ()),
            Limit("the distance to the edge", i.edge, low=edge),
            Limit("the pull that it bears", made.pull, low=i.pull),
            Limit("the torque that it bears", made.turn, low=i.torque),
        ),
        remarks=remarks_on(i),
        figures=lambda: (section(i, made),),
    )
