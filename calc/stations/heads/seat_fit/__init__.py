"""Grip of a valve-seat ring in its pocket: cold, while the engine warms up, running, and stopped hot, and
what of it is lost for good."""

from calc.core.result import impossible
from calc.core.working import step
from calc.declare.calculator import Answer, answer, calculator
from calc.formulas import press_fit as fit
from calc.reference import cautions, sources
from calc.reference.materials import MATERIALS, Material
from calc.stations.heads.seat_fit.asked import In
from calc.stations.heads.seat_fit.drawing import grip_plot, section
from calc.stations.heads.seat_fit.grip import grip_in_pocket
from calc.stations.heads.seat_fit.told import Out
from calc.stations.heads.seat_fit.verdict import limits_of, remarks_on, verdict_on
from calc.stations.shared.forms import FRICTION, SIZE
from calc.stations.shared.own_material import own_grade
from calc.stations.shared.ring_in_wall import Joint, Part


@calculator(
    "seat-fit",
    "Seat ring in its pocket",
    In,
    Out,
    purpose=(
        "Does this ring hold in this pocket, cold, warming up, running and stopped hot, without ring or head"
        " giving way?"
    ),
    finds=(
        "valve seat interference",
        "seat insert press fit",
        "shrink fit of a seat",
        "loose seat",
        "dropped seat",
        "pocket bore size",
        "oversize seat ring",
    ),
    sources=(
        sources.LAME,
        sources.MISES,
        sources.PAST_YIELD,
        sources.THERMAL,
        sources.MATERIALS,
        sources.PRACTICE,
    ),
    cautions=(cautions.HOT_HEAD, cautions.BRITTLE_RING, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def seat_fit(i: In) -> Answer:
    """Grip of a seat ring, judged as two thick cylinders (Lamé, plane stress), the head taken as a ring with
    the least wall.

    One temperature in each part. Cold; warming up, when a hot ring in a cool head presses hardest; running;
    and just after stopping, when the ring has come down to the head's heat while the head is still hot: then
    an iron ring holds least. What yields is followed (von Mises, no hardening): the most that one of them
    takes of the interference is gone in all of them.
    """
    ring, head = (own_grade(MATERIALS[id], row) for id, row in zip((i.ring_material, i.head_material), i.own))
    refuse_impossible_bores(i)
    joint = ring_and_pocket(i, ring, head)
    grip = grip_in_pocket(i, joint)
    hold_hot = Out.hold_hot(
        fit.holding_force(grip.pressure_hot, i.friction, i.pocket_bore, i.depth), sources.FRICTION_HOLD
    )
    return answer(
        grip.interference,
        grip.hot,
        grip.stop,
        grip.lost,
        grip.spare,
        grip.pressure,
        grip.pressure_hot,
        Out.ring_hoop(fit.inner_bore_hoop(grip.pressure, i.ring_bore, i.pocket_bore), sources.LAME),
        Out.head_hoop(fit.outer_joint_hoop(grip.pressure, i.pocket_bore, joint.outside), sources.LAME),
        grip.ring_used,
        grip.head_used,
        Out.hold(fit.holding_force(grip.pressure, i.friction, i.pocket_bore, i.depth), sources.FRICTION_HOLD),
        hold_hot,
        *grip.serving,
        verdict=verdict_on(i, head, grip),
        limits=limits_of(i, head, grip),
        remarks=remarks_on(i, head, grip, hold_hot),
        figures=lambda: (section(i), grip_plot(i, ring, head, grip)),
    )


def refuse_impossible_bores(i: In) -> None:
    """Raises where the ring would have no wall."""
    if i.ring_bore >= i.ring_outside:
        raise impossible(
            "ring_bore",
            "is {bore}, not smaller than the ring's outside {outside}; give less than {outside}",
            bore=i.ring_bore,
            outside=i.ring_outside,
        )
    if i.ring_bore >= i.pocket_bore:
        raise impossible(
            "ring_bore",
            "is {bore}, not smaller than the pocket {pocket}; give less than {pocket}",
            bore=i.ring_bore,
            pocket=i.pocket_bore,
        )


def ring_and_pocket(i: In, ring: Material, head: Material) -> Joint:
    """The head taken as a ring with the least wall."""
    outside = step(
        "D_o", "Outside of the head's ring round the pocket", SIZE, i.pocket_bore + 2 * i.head_wall
    )
    shapes = (
        step("a", "Shape of the ring", FRICTION, fit.inner_shape(i.ring_bore, i.pocket_bore), sources.LAME),
        step(
            "b", "Shape of the head round it", FRICTION, fit.outer_shape(i.pocket_bore, outside), sources.LAME
        ),
    )
    return Joint(
        Part(ring, "r", "ring"), Part(head, "h", "head"), i.ring_bore, i.pocket_bore, outside, shapes
    )
