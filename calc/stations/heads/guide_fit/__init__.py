"""Valve guide and stem: the guide's grip in the head, how far its bore closes, the clearance cold and hot,
and how far the valve rocks."""

from calc.core.working import step
from calc.declare.calculator import Answer, answer, calculator
from calc.formulas import press_fit as fit
from calc.reference import cautions, sources
from calc.reference.materials import MATERIALS
from calc.stations.heads.guide_fit.asked import In
from calc.stations.heads.guide_fit.clearance import stem_in_guide
from calc.stations.heads.guide_fit.drawing import lean, section
from calc.stations.heads.guide_fit.grip import guide_in_head
from calc.stations.heads.guide_fit.remarks import remarks_on_fitted, remarks_on_new
from calc.stations.heads.guide_fit.sizes import sizes_of
from calc.stations.heads.guide_fit.told import Out
from calc.stations.heads.guide_fit.verdict import limits_of, verdict_on
from calc.stations.heads.guide_fit.warming import clearance_warming_up
from calc.stations.shared.forms import SIZE
from calc.stations.shared.growth import growth, reference_temperature
from calc.stations.shared.own_material import own_grade

ON_FITTING = (cautions.HOT_HEAD, cautions.PRESS_TRAPPED, cautions.CUTTING, cautions.BERYLLIUM)


@calculator(
    "guide-fit",
    "Valve guide and stem",
    In,
    Out,
    purpose=(
        "Is the guide worn or too tight, cold and running; and for a new one: does it hold, and what must it"
        " be reamed to?"
    ),
    finds=(
        "valve guide clearance",
        "stem clearance",
        "valve rock",
        "valve wobble",
        "guide wear",
        "guide reaming",
        "guide interference",
        "press fit of a guide",
        "stuck valve",
        "valve guide replacement",
    ),
    sources=(
        sources.ROCKING,
        sources.LAME,
        sources.MISES,
        sources.THERMAL,
        sources.MATERIALS,
        sources.PRACTICE,
        sources.INVENTED,
    ),
    cautions=(cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def guide_fit(i: In) -> Answer:
    """Guide and head as two thick cylinders (Lamé, plane stress), each at one temperature; the stem at its
    own.

    The clearance running counts how stem and guide grow, and how the bore of the guide as it is reamed opens
    again as the head's grip eases. Elastic; where one yields, what grip is gone for good is that of an
    elastic, then plastic ring, and pressure and closing are less than shown.
    """
    guide, head = (
        own_grade(MATERIALS[id], row) for id, row in zip((i.guide_material, i.head_material), i.own)
    )
    steel = MATERIALS[i.stem_material]
    sizes = sizes_of(i)
    reference = reference_temperature()
    outside = step("D_o", "Outside of the head's ring round the hole", SIZE, sizes.hole + 2 * i.head_wall)
    stem_growth = growth(steel, i.stem_temperature, reference, "s", "stem", "stem_temperature")
    guide_growth = growth(guide, i.guide_temperature, reference, "g", "guide", "guide_temperature")
    head_growth = growth(head, i.head_temperature, reference, "h", "head", "head_temperature")
    grip = guide_in_head(i, sizes, guide, head, outside, guide_growth, head_growth, reference)
    stem = stem_in_guide(i, sizes, grip, stem_growth, guide_growth)
    remarks_on = remarks_on_new if sizes.new else remarks_on_fitted
    return answer(
        stem.cold,
        stem.running,
        grip.interference,
        stem.first,
        stem.rocking,
        stem.by_rocking,
        Out.rocking_worn(i.worn_clearance * stem.factor, sources.ROCKING),
        stem.closing,
        stem.pressed,
        sizes.ream,
        stem.to_ream,
        grip.hot.interference,
        grip.oven,
        grip.lost,
        grip.left,
        grip.pressure,
        grip.used[0],
        grip.used[1],
        Out.force(
            fit.holding_force(grip.pressure, i.friction, sizes.hole, i.guide_length), sources.FRICTION_HOLD
        ),
        *grip.serving,
        verdict=verdict_on(i, sizes, grip, stem),
        limits=limits_of(i, sizes, grip, stem),
        remarks=remarks_on(i, grip, stem),
        cautions=ON_FITTING if sizes.new else (),
        figures=lambda: (section(i, sizes), lean(i, stem), clearance_warming_up(i, sizes, grip, stem, steel)),
    )
