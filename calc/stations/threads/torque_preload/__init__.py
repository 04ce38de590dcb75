"""What a torque makes of a bolt: preload and its spread by friction, stress, share of yield, and the other
way round."""

from calc.core.result import Remark, note, warning
from calc.core.working import PI, constant
from calc.declare.calculator import Answer, Limit, answer, calculator
from calc.reference import cautions, sources
from calc.stations.shared.bolts import TARGET
from calc.stations.shared.clamped import grows_more
from calc.stations.shared.forms import TIGHTENING
from calc.stations.threads.torque_preload.asked import In
from calc.stations.threads.torque_preload.bolt import bolt_of
from calc.stations.threads.torque_preload.drawing import preload_over_torque
from calc.stations.threads.torque_preload.states import other_states
from calc.stations.threads.torque_preload.stress import Stress, stress_in
from calc.stations.threads.torque_preload.tightening import Tightening, tightening
from calc.stations.threads.torque_preload.told import Out
from calc.stations.threads.torque_preload.verdict import verdict_on


@calculator(
    "torque-preload",
    "Torque and preload",
    In,
    Out,
    purpose="What preload does this torque make, and how far from yield does it leave the bolt?",
    finds=(
        "bolt torque",
        "tightening torque",
        "clamp load",
        "preload",
        "nut factor",
        "K factor",
        "friction of thread",
        "oiled or dry",
        "stretch",
        "yield of a stud",
    ),
    sources=(
        sources.ISO_16047,
        sources.VDI_2230,
        sources.STRESS_AREA,
        sources.BOLT_CLASSES,
        sources.PRACTICE,
    ),
    cautions=(cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def torque_preload(i: In) -> Answer:
    """Preload from torque by ISO 16047, stress as VDI 2230 counts it: pull and twist together, at the end of
    tightening.

    Friction is what decides, and nobody knows it to better than a quarter: the band is shown. Elastic up to
    the yield that the class promises; beyond, the preload shown is more than there is. Judged as it is
    tightened, and hot with half the twist left, both at the slippery end. Settling is not in it.
    """
    bolt = bolt_of(i)
    made = tightening(i, bolt.turned)
    stress = stress_in(bolt, made, i)
    return answer(
        made.preload,
        made.torque,
        made.low,
        made.high,
        stress.hot,
        stress.meant,
        stress.used,
        stress.used_most,
        stress.most,
        stress.torque_most,
        Out.nut_factor(made.meant.nut / bolt.nominal),
        Out.lost(1 - bolt.turned.pitch / (2 * PI) / made.meant.nut, sources.ISO_16047),
        verdict=verdict_on(i, bolt, made, stress),
        limits=_limits_of(i, made, stress),
        remarks=_remarks_on(i, made),
        tables=lambda: (other_states(float(made.torque), bolt),),
        figures=lambda: (preload_over_torque(made, stress.most),),
    )


def _limits_of(i: In, made: Tightening, stress: Stress) -> tuple[Limit, ...]:
    needed = () if i.needed is None else (Limit("the preload when rough", made.low, low=i.needed),)
    return (
        Limit("the stress when slippery", stress.used_most, high=1),
        Limit("the stress when slippery", stress.used_most, high=TARGET, level="attention"),
        *needed,
    )


def _remarks_on(i: In, made: Tightening) -> tuple[Remark | None, ...]:
    return (
        note("Oil on a thread whose torque was given dry adds about half to the preload: see the table."),
        grows_more(i.clamped, i.hot, i.hot_force),
        (
            warning(
                "A nut factor holds for one bolt, one finish and one oil: with others it is off by a"
                " quarter and more."
            )
            if i.nut_factor is not None
            else None
        ),
        (
            warning(
                "Torque under {t} can hardly be set with a wrench: use a screwdriver with a scale.",
                t=constant("", "", TIGHTENING, 2.0),
            )
            if float(made.torque) < 2
            else None
        ),
    )
