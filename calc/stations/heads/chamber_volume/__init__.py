"""Combustion chambers measured with a burette: their volumes, what a cut takes, how to make them alike."""

from calc.core.kinds import TEMPERATURE_DIFFERENCE
from calc.core.working import constant, form
from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.heads.chamber_volume.asked import In
from calc.stations.heads.chamber_volume.chambers import chambers_of, check_limits
from calc.stations.heads.chamber_volume.drawing import under_its_plate, volume_over_cut
from calc.stations.heads.chamber_volume.remarks import remarks_on
from calc.stations.heads.chamber_volume.table import chamber_by_chamber
from calc.stations.heads.chamber_volume.told import Out
from calc.stations.heads.chamber_volume.verdict import limits_of, verdict_on
from calc.stations.shared.forms import COARSE

TENTH = constant("t_0.1", "A tenth of a millimetre", COARSE, 0.1e-3)
FILM = constant("t_f", "Grease under the plate", COARSE, 0.05e-3)
KELVIN = constant("ΔT_1", "One kelvin", form(TEMPERATURE_DIFFERENCE, 0), 1.0)


@calculator(
    "chamber-volume",
    "Chamber volume",
    In,
    Out,
    purpose=(
        "Are the chambers alike and within limits, what does a cut take off them, and how much must be ground"
        " out of which?"
    ),
    finds=(
        "cc the heads",
        "combustion chamber volume",
        "burette",
        "chamber matching",
        "fly cut",
        "head skimming",
        "compression ratio of heads",
        "equal chambers",
    ),
    sources=(sources.STRAIGHT_CUT, sources.LIQUIDS, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.SOLVENT, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def chamber_volume(i: In) -> Answer:
    """Volumes as the burette gave them, brought to the warmth of the head; straight walls at the sealing
    step, so a cut takes area × depth.

    The burette counts what left it at its own temperature: liquid that warms in the chamber fills it with
    less. Where the wall leans, the area changes with the cut: good to a few per cent of what is taken.
    """
    check_limits(i)
    chambers = chambers_of(i)
    verdict = verdict_on(i, chambers)
    return answer(
        chambers.smallest,
        chambers.largest,
        chambers.spread,
        Out.mean(sum(c.volume for c in chambers.each) / len(chambers.each)),
        chambers.taken,
        Out.tenth(chambers.mouth * TENTH, sources.STRAIGHT_CUT),
        chambers.grind,
        chambers.cut_wanted,
        chambers.cut_most,
        Out.kelvin(chambers.growth * KELVIN * chambers.largest, sources.LIQUIDS),
        Out.film(chambers.mouth * FILM, sources.STRAIGHT_CUT),
        verdict=verdict,
        limits=limits_of(i, chambers),
        remarks=remarks_on(i, chambers),
        tables=lambda: (chamber_by_chamber(i, chambers),),
        cautions=(cautions.CUTTING, cautions.MAGNESIUM) if i.cut > 0 or verdict[0] != "pass" else (),
        figures=lambda: (under_its_plate(i, chambers), volume_over_cut(i, chambers)),
    )
