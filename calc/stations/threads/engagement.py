"""What a threaded hole and its bolt hold, which strips first, and how long the engagement must be for the bolt to break before."""

from calc.core.advice import at_least
from calc.core.conformance import past
from calc.core.drawing import Axis, Plot, Series
from calc.core.kinds import AREA, FORCE, LENGTH, RATIO, STRESS
from calc.core.result import impossible, note, say, warning
from calc.core.working import PI, constant, form, greatest, least, step
from calc.declare.calculator import (
    Answer,
    Inputs,
    Limit,
    Number,
    Output,
    Outputs,
    answer,
    calculator,
    choice,
    given,
)
from calc.formulas import screw_threads as screw
from calc.reference import cautions, sources
from calc.reference.materials import MATERIALS
from calc.reference.standards.threads import stress_height
from calc.stations.shared.thread_sizes import FITS, SIZES, known, nominal, pair, pitch, standard

LONG, LOAD, SURFACE, STRENGTH = form(LENGTH, 1), form(FORCE, 1, "kN", "lbf"), form(AREA, 1), form(STRESS, 0)
PARENTS = (
    "al-si-t6",
    "al-si-cu-t6",
    "mg-az91",
    "grey-iron",
    "ductile-iron",
    "forged-steel",
    "bronze",
    "brass",
)
BOLTS = {
    "4.6": "4.6",
    "8.8": "8.8",
    "10.9": "10.9",
    "12.9": "12.9",
    "g2": "SAE grade 2",
    "g5": "SAE grade 5",
    "g8": "SAE grade 8",
}
STRENGTHS = {
    "4.6": (400e6, 0.6),
    "8.8": (800e6, 0.8),
    "10.9": (1040e6, 0.9),
    "12.9": (1220e6, 0.9),  # ISO 898-1: R_m least, yield as a share
    "g2": (510e6, 0.77),
    "g5": (827e6, 0.77),
    "g8": (1034e6, 0.87),
}  # SAE J429: 74, 120 and 150 ksi
LARGER = {
    "8.8": (0.016, 830e6, 660 / 830),
    "g2": (0.01905, 414e6, 0.6),
}  # the same over a diameter, m: ISO 898-1 over 16 mm; SAE J429 over 3/4 in, 60 ksi
STRONGEST = (  # × the least strength: 8.8 may have 320 HV, 10.9 380 HV (ISO 898-1, as a fastener dealer prints it), at about 3.1 MPa a point
    "1.25"
)
LEAST_TURNS = 1.5  # fewer full turns are no thread: the formulas want whole ones


class Out(Outputs):
    hole_strips = Output("Force that strips the hole's thread", "F_n", LOAD, main=True)
    bolt_breaks = Output("Force that breaks the bolt", "F_b", LOAD, main=True)
    wanted = Output("Length for the bolt to break first, least", "L_w", LONG, main=True)
    bolt_strips = Output("Force that strips the bolt's thread", "F_s", LOAD)
    hole_area = Output("Shear area of the hole's thread", "A_n", SURFACE)
    bolt_area = Output("Shear area of the bolt's thread", "A_s", SURFACE)
    stress_area = Output("Bolt's tensile stress area", "A_t", SURFACE)
    used = Output("Stripping force over breaking force", "k", form(RATIO, 2))
    strong = Output("Force that breaks the strongest bolt of its class", "F_b,max", LOAD)


class In(Inputs):
    size: str = choice("Thread", SIZES, must=True, example="M8x1.25")
    length: Number = given(
        "Length of full threads engaged",
        "L",
        LONG,
        hard="0.7 to 100 mm",
        usual="3 to 60 mm",
        hint="Whole turns that touch: without chamfers, run-out and the bolt's point.",
        example="16 mm",
    )
    parent: str = choice(
        "Metal round the hole", {id: MATERIALS[id].name for id in PARENTS}, must=True, example="al-si-cu-t6"
    )
    bolt_class: str = choice("Class of the bolt", BOLTS, must=True, example="8.8")
    pull: Number | None = given(
        "Preload hot, if you know it",
        "F_h",
        LOAD,
        hard="0.05 to 1000 kN",
        usual="0.5 to 300 kN",
        hint=(
            "Of a stud that clamps an air-cooled cylinder: half as much again as cold; common practice, no"
            " source."
        ),
    )
    parent_strength: Number | None = given(
        "Hole's tensile strength, if you know it",
        "R_own",
        STRENGTH,
        hard="30 to 2000 MPa",
        usual="100 to 1500 MPa",
        fold=True,
    )
    bolt_strength: Number | None = given(
        "Bolt's tensile strength, most, if you know it",
        "R_bolt",
        STRENGTH,
        hard="100 to 2200 MPa",
        usual="300 to 1600 MPa",
        fold=True,
    )
    strongest: Number = given(
        "Strongest bolt of the class, over the weakest",
        "k_R",
        form(RATIO, 2),
        hard="1 to 2",
        usual="1.1 to 1.8",
        fold=True,
        assumed=(STRONGEST, "by the most hardness that ISO 898-1 allows 8.8"),
        hint="Counts where the class is told. The softer the class, the more: up to 1.8 for 4.6.",
    )
    shear: Number = given(
        "Shear strength, of the tensile",
        "k_τ",
        form(RATIO, 2),
        hard="0.3 to 0.9",
        usual="0.5 to 0.7",
        fold=True,
        assumed=(str(screw.SHEAR_SHARE), "FED-STD-H28, on the safe side"),
        hint="0.5 by FED-STD-H28; tests lie nearer to 0.6 for most metals.",
    )
    fit: str = choice("Class", FITS, fold=True, assumed=("usual", "what is sold unless another is asked for"))


@calculator(
    "engagement",
    "Length of engagement",
    In,
    Out,
    purpose="Does the bolt break before the thread strips, and how much thread does it take?",
    finds=(
        "stripped thread",
        "thread stripping",
        "shear area",
        "length of engagement",
        "stud in aluminium",
        "pulled stud",
        "bolt strength",
        "thread depth",
    ),
    sources=(
        sources.H28,
        sources.STRESS_AREA,
        sources.BOLT_CLASSES,
        sources.MATERIALS,
        sources.ISO_965,
        sources.ASME_B1_1,
    ),
    cautions=(cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def engagement(i: In) -> Answer:
    """Shear areas of both threads at least material (FED-STD-H28/2B), with half of the tensile strength for shear, cold and pulled straight.

    All turns are taken to share the load. Beyond about two diameters the first turns carry most of it, and more length adds
    little. Strengths are typical: a casting that has run hot holds less.
    """
    thread, hole, bolt = pair(i.size, i.fit)
    source, material = standard(thread), MATERIALS[i.parent]
    if float(i.length) < LEAST_TURNS * thread.P:
        raise impossible(
            "length",
            "is {l}, fewer than one and a half turns of {thread}, which is no thread; give at least {least}",
            l=i.length,
            thread=thread.words,
            least=constant("", "", LONG.with_decimals(2), LEAST_TURNS * thread.P),
        )
    d, P = nominal(thread), pitch(thread)
    major, pitch_least = (
        known("d_min", "Bolt's outside, least", bolt.major.low, source),
        known("d_2,min", "Bolt's pitch diameter, least", bolt.pitch.low, source),
    )
    minor, pitch_most = (
        known("D_1,max", "Hole's bore, most", hole.minor.high, source),
        known("D_2,max", "Hole's pitch diameter, most", hole.pitch.high, source),
    )
    rm, yields = STRENGTHS[i.bolt_class]
    if i.bolt_class in LARGER and thread.d > LARGER[i.bolt_class][0] + 1e-9:
        _, rm, yields = LARGER[i.bolt_class]
    weak = (
        constant(
            "R_n", f"Tensile strength of {material.name}", STRENGTH, material.ultimate, sources.MATERIALS
        )
        if i.parent_strength is None
        else i.parent_strength
    )
    strong = (
        constant(
            "R_m", f"Tensile strength of a bolt {BOLTS[i.bolt_class]}", STRENGTH, rm, sources.BOLT_CLASSES
        )
        if i.bolt_strength is None
        else i.bolt_strength
    )
    hole_area = Out.hole_area(screw.hole_shear_area(P, i.length, major, pitch_most), sources.H28)
    bolt_area = Out.bolt_area(screw.bolt_shear_area(P, i.length, pitch_least, minor), sources.H28)
    core = step(
        "d_t",
        "Diameter of the stress area",
        form(LENGTH, 3),
        d - stress_height(thread) * P,
        sources.STRESS_AREA,
    )
    area = Out.stress_area(PI / 4 * core**2, sources.STRESS_AREA)
    hole_strips = Out.hole_strips(i.shear * weak * hole_area, sources.H28)
    bolt_strips = Out.bolt_strips(i.shear * strong * bolt_area, sources.H28)
    breaks = Out.bolt_breaks(strong * area, sources.STRESS_AREA)
    strips = step("F_min", "Force that strips the weaker thread", LOAD, least(hole_strips, bolt_strips))
    used = Out.used(strips / breaks)
    strong_breaks = Out.strong(
        breaks * i.strongest if i.bolt_strength is None else breaks, sources.BOLT_CLASSES
    )
    # a stronger bolt has a stronger thread too: only the hole's must outlast the strongest
    wanted = Out.wanted(i.length * greatest(strong_breaks / hole_strips, breaks / bolt_strips))
    turns = float(i.length) / thread.P
    return answer(
        hole_strips,
        breaks,
        wanted,
        bolt_strips,
        hole_area,
        bolt_area,
        area,
        used,
        strong_breaks,
        verdict=_verdict(
            used, yields, hole_strips, bolt_strips, strips, breaks, strong_breaks, wanted, thread, i.pull
        ),
        limits=(
            Limit("the thread's strength over the bolt's yield", used, low=yields),
            *(
                (Limit("the pull that is borne", least(strips, breaks), low=i.pull),)
                if i.pull is not None
                else ()
            ),
            Limit("the bolt's breaking first", i.length, low=float(wanted), level="attention"),
        ),
        remarks=(
            (
                warning(
                    "Longer than two diameters: the first turns carry most of the load, and the last add"
                    " little to it."
                )
                if float(i.length) > 2 * thread.d * (1 + 1e-9)
                else None
            ),
            (
                warning(
                    "Only {n} turns: one damaged turn takes a good part of the strength.",
                    n=constant("", "", form(RATIO, 1), turns),
                )
                if turns < 4
                else None
            ),
            note(
                "The force that breaks the bolt counts once. Tightening uses about three quarters of its"
                " yield; the maker's torque has the last word."
            ),
            (
                note(
                    "A casting that has run hot holds less. An old thread that was stripped once,"
                    " cross-threaded or corroded is not counted here."
                )
                if i.parent in ("al-si-t6", "al-si-cu-t6", "mg-az91")
                else None
            ),
        ),
        figures=(_plot(i.length, hole_strips, bolt_strips, breaks, wanted, thread),),
    )


def _verdict(used, yields, hole_strips, bolt_strips, strips, breaks, strong, wanted, thread, pull):
    which = "hole's" if hole_strips <= bolt_strips else "bolt's"
    need = at_least(wanted, LONG)
    longer = (
        "Engage {w} or more."
        if which == "bolt's"
        else (
            "Engage {w} or more, or fit a wire thread insert."
            if float(wanted) <= 2 * thread.d
            else (
                "Length alone does not help, it would take {w}: fit a wire thread insert, a larger thread, or"
                " a weaker bolt by the maker's data."
            )
        )
    )
    if pull is not None and past(pull, breaks):
        return (
            "fail",
            say("Bolt breaks hot: bears {b}", b=breaks),
            say(
                "{p} pulls at it. Take a larger or a stronger bolt, or less preload if the maker allows it.",
                p=pull,
            ),
        )
    if pull is not None and past(pull, strips):
        return (
            "fail",
            say(which.capitalize() + " thread strips hot: bears {f}", f=strips),
            say("{p} pulls at it. " + longer, p=pull, w=need),
        )
    if past(yields, used):
        return (
            "fail",
            say(which.capitalize() + " thread strips first, at {f}", f=strips),
            say(
                "The bolt would not even yield. " + longer + " Do not tighten it to the bolt's torque.",
                w=need,
            ),
        )
    if past(1, used):
        return (
            "attention",
            say("Bolt may yield, then the " + which + " thread strips"),
            say(
                "No bolt of its class breaks before. Overtightened, the thread strips at {f}. " + longer,
                f=strips,
                w=need,
            ),
        )
    if past(strong, hole_strips):
        return (
            "attention",
            say("May strip: a strong bolt bears {b}", b=strong),
            say(
                "The hole's thread strips at {f}. The weakest bolt of the class breaks before, the strongest"
                " does not. " + longer,
                f=hole_strips,
                w=need,
            ),
        )
    return (
        "pass",
        (
            say("Bolt breaks first, at {f} to {s}", f=breaks, s=strong)
            if strong > breaks
            else say("Bolt breaks first, at {f}", f=breaks)
        ),
        say("Thread is spared: a broken bolt can be replaced. {w} of full threads would be enough.", w=need),
    )


def _plot(length, hole_strips, bolt_strips, breaks, wanted, thread) -> Plot:
    L = float(length)
    start, end = LEAST_TURNS * thread.P, max(1.5 * L, min(1.5 * float(wanted), 3 * thread.d))
    top = 1.2 * max(float(breaks), min(float(hole_strips), float(bolt_strips)) * end / L)

    def line(force):
        """Stripping force over length, as far as the figure goes."""
        until = max(min(end, top * L / float(force)), 1.01 * start)
        return tuple((x, float(force) * x / L) for x in (start, until))

    return Plot(
        "Force over length of engagement",
        say(
            "At {l} the hole's thread strips at {n}, the bolt's at {s}; the bolt breaks at {b}.",
            l=length,
            n=hole_strips,
            s=bolt_strips,
            b=breaks,
        ),
        Axis("Full threads engaged", LONG),
        Axis("Force", LOAD),
        (
            Series("hole strips", line(hole_strips)),
            Series("bolt strips", line(bolt_strips), "dashed"),
            Series("bolt breaks", ((start, float(breaks)), (end, float(breaks))), "limit"),
        ),
        ((L, min(float(hole_strips), float(bolt_strips)), "yours"),),
    )
