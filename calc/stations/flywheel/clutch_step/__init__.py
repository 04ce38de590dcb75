"""The step between a clutch's friction face and its cover's face: what to cut, and what it does to the
clamp load."""

from calc.core.drawing import Area, Dimension, Drawing, Label
from calc.core.result import note, say
from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.flywheel.clutch_step.asked import BELOW, DISC, In
from calc.stations.flywheel.clutch_step.clamp import Clutch, clutch_of, refuse_impossible
from calc.stations.flywheel.clutch_step.told import Out
from calc.stations.flywheel.clutch_step.verdict import limits_of, verdict_on


@calculator(
    "clutch-step",
    "Clutch step",
    In,
    Out,
    purpose="Is the step between friction face and cover's face right, and which face is cut by how much?",
    finds=(
        "flywheel step",
        "resurface the flywheel",
        "face the flywheel",
        "clutch slips after resurfacing",
        "clutch cover height",
        "pressure plate clamp load",
        "stepped flywheel",
    ),
    sources=(sources.CONED_DISC, sources.COILS_OPEN, sources.EVEN_WEAR, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.CUTTING, cautions.FLYWHEEL_BURST, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def clutch_step(i: In) -> Answer:
    """Step read less step wanted is what the pressure plate follows; coils lose force by their rate, a
    diaphragm by
    the curve of a coned disc. Torque of two faces at the mean radius of a lining that is worn in.

    The lining's wear and springs that have set are not in it. The maker's curve of a cover goes before
    the disc.
    """
    refuse_impossible(i)
    clutch = clutch_of(i)
    return answer(
        *clutch.told,
        verdict=verdict_on(i, clutch),
        limits=limits_of(i, clutch),
        remarks=(
            note(
                "A diaphragm past the top of its curve clamps harder as it opens, up to that top: the"
                " sign of the"
                " change may surprise. So does the pedal: it is heavier or lighter with it."
            )
            if i.cover == DISC
            else note("Coil springs only ever lose force as they open."),
        ),
        figures=lambda: (faces(i, clutch),),
    )


def faces(i: In, clutch: Clutch) -> Drawing:
    """Rim and web from the side, engine's side below: the step, and the wall behind the friction face."""
    t, h = float(i.thickness), float(clutch.step)
    high = t + h if i.lies == BELOW else max(t - h, 0.2 * t)
    wide = 2.2 * max(t, high)
    return Drawing(
        "Friction face and cover's face",
        say(
            "Part of the section, the engine's side below: the friction face left, {t} thick, the"
            " cover's face right,"
            " {h} {way} it.",
            t=i.thickness,
            h=clutch.step,
            way="above" if i.lies == BELOW else "below",
        ),
        (
            Area(((0, 0), (1.7 * wide, 0), (1.7 * wide, high), (wide, high), (wide, t), (0, t)), "a"),
            Dimension((0.2 * wide, 0), (0.2 * wide, t), i.thickness, 0.0, "t"),
            Dimension((wide, t), (wide, high), clutch.step, -0.95 * wide, "h"),
            Label((0.55 * wide, t + 0.18 * wide), "friction face", "middle"),
            Label((1.35 * wide, high + 0.08 * wide), "cover's face", "middle"),
        ),
    )
