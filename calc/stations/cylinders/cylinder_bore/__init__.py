"""Bores of a set of cylinders: whether they stay, and the first oversize at which all of them clean up."""

from calc.core.working import constant, step
from calc.declare.calculator import Answer, answer, calculator
from calc.formulas.warm_reading import GAUGE_ALPHA
from calc.reference import cautions, sources
from calc.stations.cylinders.cylinder_bore.asked import In, refuse_limits_crossed
from calc.stations.cylinders.cylinder_bore.bore import bores_of
from calc.stations.cylinders.cylinder_bore.drawing import worn_bore
from calc.stations.cylinders.cylinder_bore.lot import lot_of
from calc.stations.cylinders.cylinder_bore.pair import pairs_of
from calc.stations.cylinders.cylinder_bore.remarks import remarks_on
from calc.stations.cylinders.cylinder_bore.table import bore_by_bore
from calc.stations.cylinders.cylinder_bore.told import Out
from calc.stations.cylinders.cylinder_bore.verdict import limits_of, verdict_on
from calc.stations.shared.forms import ALPHA, STRAIN
from calc.stations.shared.growth import reference_temperature


@calculator(
    "cylinder-bore",
    "Cylinder bores",
    In,
    Out,
    purpose="Do these bores stay, or to which oversize do all four go, and what clearance have the pistons?",
    finds=(
        "cylinder bore",
        "rebore",
        "oversize piston",
        "piston clearance",
        "piston to wall clearance",
        "worn cylinder",
        "cylinder taper",
        "cylinder boring",
        "barrel wear",
        "ring ridge",
    ),
    sources=(
        sources.OLD_AXIS,
        sources.TWO_POINT,
        sources.SIZE_AT_20,
        sources.THERMAL,
        sources.PRACTICE,
        sources.INVENTED,
    ),
    cautions=(cautions.SPINNING, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def cylinder_bore(i: In) -> Answer:
    """Readings brought to 20 °C; bored about the old axis each cleans up at 2·largest − smallest at the
    latest,
    a hone that follows the bore at its largest; all go to the first oversize whose middle leaves at least
    0.02 mm on the diameter past that.

    Two-point diameters bound the circle about the old axis between the largest and 2·largest − smallest: the
    upper end is taken. Oversizes are evenly apart. Clearance by plain expansion is told and judges nothing.
    """
    refuse_limits_crossed(i)
    reference = reference_temperature()
    gauge = constant("α_g", "Expansion of the gauge, steel", ALPHA, GAUGE_ALPHA, sources.GAUGE_STEEL)
    at_20 = step(
        "f_20",
        "Size at 20 °C over size as read",
        STRAIN,
        (1 + gauge * (i.gauge_temperature - reference))
        / (1 + i.barrel_expansion * (i.barrel_temperature - reference)),
        sources.SIZE_AT_20,
    )
    lot = lot_of(i, bores_of(i, at_20))
    pairs = pairs_of(i, lot, reference)
    warm = Out.warm(lot.largest / at_20 - lot.largest)
    return answer(
        lot.oversize,
        lot.low,
        lot.high,
        lot.aim,
        lot.clean,
        lot.stock,
        lot.most_off,
        lot.largest,
        lot.smallest,
        warm,
        lot.wear,
        lot.oval,
        lot.taper,
        pairs.clearance,
        pairs.most,
        pairs.hot,
        pairs.closes,
        verdict=verdict_on(i, lot, pairs),
        limits=limits_of(i, lot, pairs),
        remarks=remarks_on(i, lot, pairs, warm),
        tables=lambda: (bore_by_bore(lot),),
        figures=lambda: (worn_bore(i, lot),),
    )
