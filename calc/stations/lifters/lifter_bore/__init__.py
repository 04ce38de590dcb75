"""Bore in a lifter's body for a plunger unit: what to hone it to, what wall is left, and what pressing the
unit in would do."""

from calc.declare.calculator import Answer, answer, calculator
from calc.formulas import press_fit as fit
from calc.reference import cautions, sources
from calc.reference.materials import MATERIALS
from calc.stations.lifters.lifter_bore.asked import PRESS, UNIT, In
from calc.stations.lifters.lifter_bore.bore import bore_wanted
from calc.stations.lifters.lifter_bore.drawing import section
from calc.stations.lifters.lifter_bore.press import pressed_in
from calc.stations.lifters.lifter_bore.told import Out
from calc.stations.lifters.lifter_bore.verdict import limits_of, remarks_on, verdict_on
from calc.stations.shared.own_material import own_grade


@calculator(
    "lifter-bore",
    "Bore for a plunger unit",
    In,
    Out,
    purpose=(
        "What must the body be honed to, is there wall enough, and does a pressed unit still let its plunger"
        " move?"
    ),
    finds=(
        "solid to hydraulic",
        "convert a lifter",
        "hollow lifter",
        "bore a lifter body",
        "plunger unit fit",
        "hone a lifter",
        "tappet conversion",
        "press fit of an insert",
    ),
    sources=(sources.LAME, sources.MISES, sources.MATERIALS, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.CUTTING, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def lifter_bore(i: In) -> Answer:
    """Body and unit as two thick cylinders (Lamé, plane stress), elastic, smooth, both at the same
    temperature.

    Steel and iron grow nearly alike, so the fit stays as warm oil finds it. Stresses are those of the bore
    wanted, and once it is honed to within its limits those of the bore that is there; slipped in there are
    none. The body is taken as a ring with its thinnest wall.
    """
    material, unit = (own_grade(MATERIALS[id], row) for id, row in zip((i.body_material, UNIT), i.own))
    bore = bore_wanted(i)
    press = pressed_in(i, material, unit, bore)
    return answer(
        bore.target,
        bore.stock,
        bore.wall,
        bore.clearance_now,
        press.pressure,
        Out.hoop(fit.outer_joint_hoop(press.pressure, press.joint.size, bore.outside), sources.LAME),
        press.body_used,
        press.unit_used,
        press.growth,
        press.closing,
        press.plunger_left,
        press.case_left,
        verdict=verdict_on(i, bore, press),
        limits=limits_of(i, bore, press),
        remarks=remarks_on(i, bore, press),
        cautions=(cautions.PRESS_TRAPPED,) if i.fit_wanted == PRESS else (),
        figures=lambda: (section(i, bore.wall),),
    )
