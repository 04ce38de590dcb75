"""How hot the head and how cold the ring must be for a seat ring to drop into its pocket."""

from calc.core.result import Limit, impossible
from calc.core.working import constant
from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.reference.materials import MATERIALS, Material
from calc.stations.heads.seat_shrink.asked import In
from calc.stations.heads.seat_shrink.baths import EASY, FREEZING, at, plot, worth_of_chilling
from calc.stations.heads.seat_shrink.drop import Fitting, drop_in
from calc.stations.heads.seat_shrink.told import Out
from calc.stations.heads.seat_shrink.verdict import remarks_on, verdict_on
from calc.stations.shared.forms import SIZE
from calc.stations.shared.own_material import own_grade


@calculator(
    "seat-shrink",
    "Heat to fit a seat ring",
    In,
    Out,
    purpose=(
        "How hot must the head be, and how cold the ring, for the ring to drop in, and what may be lost"
        " before it sticks?"
    ),
    finds=(
        "shrink fit temperature",
        "heat the head",
        "freeze the seat ring",
        "dry ice",
        "liquid nitrogen",
        "assembly clearance",
        "oven temperature",
    ),
    sources=(sources.THERMAL, sources.MATERIALS, sources.PRACTICE),
    cautions=(
        cautions.HOT_HEAD,
        cautions.OVEN,
        cautions.BRITTLE_RING,
        cautions.MAKER_FIRST,
        cautions.AIRCRAFT,
    ),
)
def seat_shrink(i: In) -> Answer:
    """Free growth of pocket and ring from the 20 °C at which both were measured, each with its own mean
    coefficient.

    First order: leaves out interference × growth, less than a micrometre. Says nothing of how fast heat goes
    from head to ring.
    """
    ring, head = (own_grade(MATERIALS[id], row) for id, row in zip((i.ring_material, i.head_material), i.own))
    refuse_what_heat_cannot_do(i, head)
    drop = drop_in(i, ring, head)
    fitting = Fitting(ring, head, *map(float, (i.pocket_bore, drop.grip, i.clearance)))
    temper = head.limit_temperature
    easy = at(temper - float(EASY)) if temper else None
    return answer(
        drop.needed,
        drop.margin,
        drop.may_cool,
        drop.may_warm,
        drop.clearance_in,
        drop.clearance_limit,
        drop.grip,
        verdict=verdict_on(i, drop, fitting, easy),
        limits=(
            Limit("the heat of the head", drop.margin, low=0.0),
            Limit("the temper of the head", drop.needed, high=easy, level="attention"),
        ),
        remarks=remarks_on(i, drop, fitting),
        cautions=(cautions.FROZEN_RING,) if i.ring_temperature < FREEZING or drop.margin < 0 else (),
        tables=lambda: (worth_of_chilling(fitting, i.head_limit, easy),),
        figures=lambda: (plot(fitting, float(i.ring_temperature), drop.needed, i.head_limit),),
    )


def refuse_what_heat_cannot_do(i: In, head: Material) -> None:
    """Raises where the ring would drop in cold, is too large for any heat, or the heat is past what is held
    of the head."""
    if i.ring_outside <= i.pocket_bore:
        raise impossible(
            "ring_outside",
            "is {ring}, not larger than the pocket {pocket}, so that it would drop in cold and hold nothing;"
            " give more than {pocket}",
            ring=i.ring_outside,
            pocket=i.pocket_bore,
        )
    most_grip = i.pocket_bore / 50
    if i.ring_outside - i.pocket_bore > most_grip:
        raise impossible(
            "ring_outside",
            "is {ring}, {d} over the pocket {pocket}, more than heat can make up; give {most} or less, or"
            " measure both again",
            ring=i.ring_outside,
            d=constant("", "", SIZE, float(i.ring_outside - i.pocket_bore)),
            pocket=i.pocket_bore,
            most=constant("", "", SIZE, float(i.pocket_bore + most_grip)),
        )
    if float(i.head_limit) > head.hottest:
        raise impossible(
            "head_limit",
            "is {t}, and properties of {name} are held only up to {top}; give {top} or less, or another"
            " material",
            t=i.head_limit,
            name=head.name,
            top=at(head.hottest),
        )
