"""A thread in thin sheet: rivet nut, clinch nut, tapped collar or sheet-metal screw; its hole, and what sheet and thread bear."""

from calc.core.conformance import past
from calc.core.drawing import Area, Dimension, Drawing, Label, Line
from calc.core.kinds import AREA, FORCE, LENGTH, RATIO, STRESS, TORQUE
from calc.core.result import impossible, note, say, warning
from calc.core.working import PI, constant, form, greatest, least, sqrt, step
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
    measured,
)
from calc.formulas.screw_threads import hole_shear_area
from calc.reference import cautions, sources
from calc.reference.standards.threads import THREADS, external, internal, stress_area
from calc.stations.shared import thread_sizes as sizes

SMALL, N, NM, MPA, TIMES = form(LENGTH, 2), form(FORCE, 0), form(TORQUE, 1), form(STRESS, 0), form(RATIO, 1)
RIVET, CLINCH, COLLAR, SCREW = "rivet-nut", "clinch-nut", "collar", "screw"
WAYS = {
    RIVET: "Rivet nut",
    CLINCH: "Clinch nut, pressed in",
    COLLAR: "Collar drawn up and tapped",
    SCREW: "Sheet-metal screw",
}
SHEETS = {
    "steel": ("Steel sheet, soft", 300),
    "aluminium": ("Aluminium sheet, half hard", 220),
    "stainless": ("Stainless sheet", 550),
}  # tensile, MPa: typical, from memory
MACHINE = ("M3x0.5", "M4x0.7", "M5x0.8", "M6x1", "M8x1.25", "M10x1.5")
SCREWS = {  # ISO 1478: outside, core, pitch, mm; from memory
    "ST2.9": (2.90, 2.18, 1.1),
    "ST3.5": (3.53, 2.64, 1.3),
    "ST4.2": (4.22, 3.10, 1.4),
    "ST4.8": (4.80, 3.58, 1.6),
    "ST5.5": (5.46, 4.17, 1.8),
    "ST6.3": (6.25, 4.88, 1.8),
}
NUTS = {  # usual inserts, mm, from memory: hole of a rivet nut; hole of a clinch nut and the least sheet for it
    "M3x0.5": (5.0, 4.25, 1.0),
    "M4x0.7": (6.0, 5.4, 1.0),
    "M5x0.8": (7.0, 6.4, 1.0),
    "M6x1": (9.0, 8.75, 1.4),
    "M8x1.25": (11.0, 10.5, 1.4),
    "M10x1.5": (13.0, 14.0, 2.3),
}
# All of these are common practice, no source.
SHEAR = 0.6  # shear strength over tensile
PUSHED = 0.2  # of the sheet's shear round a clinch nut that it takes to push it back out
TURNED = {RIVET: 0.2, CLINCH: 0.35}  # of the torque that would shear the sheet round the nut
EDGE = {
    RIVET: 1.5,
    CLINCH: 1.3,
    COLLAR: 1.5,
    SCREW: 1.5,
}  # centre to edge over hole, hole, collar's outside; screws (AISI S100): over the screw
WALL = 0.65  # a collar's wall over the sheet's thickness
STRETCH = {
    "steel": 0.8,
    "aluminium": 0.5,
    "stainless": 0.8,
}  # growth of the pilot hole at which a collar tears
NUT_FACTOR = 0.2  # dry
PROOF = 580e6  # Pa, proof stress of a screw 8.8 up to 16 mm (ISO 898-1, from memory): what the sheet may bear beyond it, no usual screw does
ENOUGH = {"pull": 2.0, "torque": 1.25}
TURNS = 1.5  # fewer than that, and it is no thread


class Out(Outputs):
    hole = Output("Hole", "D_h", SMALL, main=True)
    pull = Output("Pull that it bears", "F_p", N, main=True)
    turn = Output("Torque at which it turns or strips", "T_t", NM, main=True)
    edge_least = Output("Centre to edge, least", "e_min", SMALL)
    across = Output("Outside of nut, collar or screw in the sheet", "D_a", SMALL)
    turns = Output("Turns of thread that hold", "n", TIMES)
    pull_share = Output("Pull borne over pull asked", "S_F", TIMES)
    turn_share = Output("Torque borne over torque asked", "S_T", TIMES)


class In(Inputs):
    thickness: Number = measured(
        "Sheet",
        "t",
        SMALL,
        tool="a micrometer, paint off",
        hard="0.3 to 6 mm",
        usual="0.5 to 3 mm",
        example="1 mm",
    )
    way: str = choice("Way of fastening", WAYS, must=True, example=RIVET)
    thread: str = choice(
        "Thread",
        {id: THREADS[id].words for id in MACHINE} | {id: f"{id}, screw for sheet" for id in SCREWS},
        must=True,
        example="M5x0.8",
    )
    alloy: str = choice(
        "Sheet's metal", {id: words for id, (words, _) in SHEETS.items()}, must=True, example="steel"
    )
    torque: Number = given(
        "Torque it will be tightened with",
        "T_g",
        NM,
        hard="0.05 to 100 N·m",
        usual="0.3 to 40 N·m",
        example="2 N·m",
    )
    pull: Number = given(
        "Pull it must bear",
        "F_g",
        N,
        hard="1 to 50000 N",
        usual="10 to 10000 N",
        hint="Weight, shaking and wind together.",
        example="800 N",
    )
    edge: Number = measured(
        "Centre of the hole to the edge",
        "e",
        SMALL,
        tool="a calliper",
        hard="1 to 500 mm",
        usual="4 to 200 mm",
        hint="Or to the next bend.",
        example="15 mm",
    )
    grip_least: Number = given(
        "Rivet nut's grip, least",
        "g_min",
        SMALL,
        hard="0 to 10 mm",
        usual="0.2 to 6 mm",
        when=("way", RIVET),
        hint="From the nut's packet.",
        example="0.5 mm",
    )
    grip_most: Number = given(
        "Rivet nut's grip, most",
        "g_max",
        SMALL,
        hard="0.1 to 15 mm",
        usual="0.5 to 10 mm",
        when=("way", RIVET),
        example="3 mm",
    )
    height: Number = given(
        "Collar's height, sheet and all, over the thickness",
        "z",
        form(RATIO, 2),
        hard="1 to 3",
        usual="1.5 to 2.2",
        when=("way", COLLAR),
        example="1.8",
    )
    tensile: Number | None = given(
        "Sheet's tensile strength, if known",
        "R_g",
        MPA,
        hard="50 to 1500 MPa",
        usual="80 to 800 MPa",
        fold=True,
    )


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
    """Estimates for choosing, from the shear of the sheet; a pull and a twist on a scrap of the same sheet decide.

    Rivet nut: pull shears the sheet at the hole's edge. Clinch nut: pushing it back out takes a fifth of that. Both turn at a share
    of the torque that would shear it. Collar: shear of the tapped thread at least material. Screw: AISI S100. The shares are common practice.
    In all but the last no more than a machine screw of class 8.8 bears by its proof stress, and a torque that makes that pull.
    """
    if (i.thread in SCREWS) != (i.way == SCREW):
        kind, those = (
            ("a screw's own thread, which no nut has", "M3x0.5 to M10x1.5")
            if i.thread in SCREWS
            else ("not a sheet-metal screw", "ST2.9 to ST6.3")
        )
        raise impossible(
            "thread", "{thread} is {kind}; choose one of {those}", thread=i.thread, kind=kind, those=those
        )
    if i.grip_least >= i.grip_most:
        raise impossible(
            "grip_least", "is {a}, not less than the most, {b}; give less", a=i.grip_least, b=i.grip_most
        )
    ultimate = (
        constant("R_m", "Tensile strength of the sheet", MPA, SHEETS[i.alloy][1] * 1e6, sources.MATERIALS)
        if i.tensile is None
        else i.tensile
    )
    shear = step("τ", "Shear strength of the sheet", MPA, SHEAR * ultimate, sources.PRACTICE)
    made = {RIVET: _nut, CLINCH: _nut, COLLAR: _collar, SCREW: _screw}[i.way](
        i.way, i.thread, i.thickness, ultimate, shear, i.height, i.alloy
    )
    hole, across, turns, borne, turned = made.hole, made.across, made.turns, made.pull, made.turn
    edge_least = Out.edge_least(
        EDGE[i.way] * (across if i.way in (COLLAR, SCREW) else hole),
        sources.AISI_S100 if i.way == SCREW else sources.PRACTICE,
    )
    if i.edge <= across / 2:
        raise impossible(
            "edge", "is {e}, and what sits in the hole is {a} across; give more", e=i.edge, a=across
        )
    pull_share, turn_share = Out.pull_share(borne / i.pull), Out.turn_share(turned / i.torque)
    state, headline, do = made.fault or _verdict(
        i.way,
        i.thickness,
        i.grip_least,
        i.grip_most,
        i.edge,
        edge_least,
        borne,
        i.pull,
        pull_share,
        turned,
        i.torque,
        turn_share,
        hole,
        made.screw,
    )
    return answer(
        hole,
        borne,
        turned,
        edge_least,
        across,
        turns,
        pull_share,
        turn_share,
        verdict=(state, headline, do),
        limits=(
            *made.limits,
            *(
                (Limit("the sheet in the nut's grip", i.thickness, low=i.grip_least, high=i.grip_most),)
                if i.way == RIVET
                else ()
            ),
            Limit("the distance to the edge", i.edge, low=edge_least),
            Limit("the pull that it bears", borne, low=i.pull),
            Limit("the torque that it bears", turned, low=i.torque),
        ),
        remarks=(
            note(
                "Pull and torque are estimates from the shear of the sheet. Set one in a scrap of the same"
                " sheet, and twist and pull it until it gives."
            ),
            (
                note(
                    "The nut's own data sheet goes before hole, grip and least sheet: makers' nuts of one"
                    " thread differ."
                )
                if i.way in NUTTED
                else None
            ),
            (
                warning(
                    "A round rivet nut spins in its hole when the screw rusts or is over-tightened, and then"
                    " nothing holds it: in a shroud that comes off often, take one with a hexagon body in a"
                    " hexagon hole."
                )
                if i.way == RIVET
                else None
            ),
            (
                note(
                    "The pull shown is what pushes it back out. Put it on the side away from the screw's"
                    " head: then the screw pulls it into the sheet, and it bears several times that."
                )
                if i.way == CLINCH
                else None
            ),
            (
                warning("A clinch nut must be harder than the sheet: in stainless only a hardened one bites.")
                if i.way == CLINCH and i.alloy == "stainless"
                else None
            ),
            (
                warning("A zinc-plated steel part in aluminium rots when wet: seal it.")
                if i.alloy == "aluminium"
                else None
            ),
        ),
        figures=(
            section(
                i.way,
                *map(float, (i.thickness, hole, across, made.bore, i.height)),
                dict(t=i.thickness, h=hole, a=across),
            ),
        ),
    )


NUTTED = (RIVET, CLINCH)


class Made:
    """What a way makes of the sheet: `bore` is the hole through what sits in it; `fault` a verdict where it cannot be made, outside one
    of its own `limits`; `screw` the pull and the torque that a machine screw in it bears."""

    def __init__(self, hole, across, bore, turns, pull, turn, limits, fault, screw=None):
        self.hole, self.across, self.bore, self.turns, self.pull, self.turn = (
            hole,
            across,
            bore,
            turns,
            pull,
            turn,
        )
        self.limits, self.fault, self.screw = limits, fault, screw


def _machine(size, sheet_pull, sheet_turn, source, turn_source):
    """Pull and torque that sheet and machine screw bear together: those of the weaker."""
    proof = step(
        "F_8",
        "What a screw 8.8 bears, by its proof stress",
        N,
        constant("S_p", "Proof stress of a screw 8.8", MPA, PROOF, sources.BOLT_CLASSES)
        * constant("A_s", "Its stress area", form(AREA, 2), stress_area(size), sources.STRESS_AREA),
    )
    twist = NUT_FACTOR * sizes.nominal(size) * proof
    return (
        Out.pull(least(sheet_pull, proof), source),
        Out.turn(least(sheet_turn, twist), turn_source),
        (proof, twist),
    )


def _nut(way, thread, thickness, ultimate, shear, height, alloy):
    rivet, clinch, thinnest = NUTS[thread]
    hole = Out.hole(
        constant(
            "D_u", "Usual hole for it", SMALL, (rivet if way == RIVET else clinch) * 1e-3, sources.PRACTICE
        ),
        sources.PRACTICE,
    )
    full = step(
        "F_s",
        "Pull that would shear the sheet round it",
        N,
        PI * hole * thickness * shear,
        sources.SHEET_SHEAR,
    )
    torque = step(
        "T_s", "Torque that would shear the sheet round it", NM, full * hole / 2, sources.SHEET_SHEAR
    )
    limits, fault = (
        ((Limit("the sheet to grip in", thickness, low=thinnest * 1e-3),) if way == CLINCH else ()),
        None,
    )
    if way == CLINCH and float(thickness) < thinnest * 1e-3 - 1e-9:
        fault = (
            "fail",
            say("Sheet too thin by {x}", x=constant("", "", SMALL, thinnest * 1e-3 - float(thickness))),
            say(
                "A clinch nut of this thread wants {t} at least to grip in. Take a smaller one, or a rivet"
                " nut.",
                t=constant("", "", SMALL, thinnest * 1e-3),
            ),
        )
    d = THREADS[thread].d
    pull, turn, screw = _machine(
        THREADS[thread],
        full if way == RIVET else PUSHED * full,
        TURNED[way] * torque,
        sources.SHEET_SHEAR,
        sources.SHEET_SHEAR,
    )
    turns = Out.turns(
        sizes.known("d", "Nominal diameter", d, sources.ISO_965)
        / sizes.known("P", "Pitch", THREADS[thread].P, sources.ISO_965),
        sources.PRACTICE,
    )
    return Made(hole, Out.across(1.35 * hole, sources.PRACTICE), d, turns, pull, turn, limits, fault, screw)


def _collar(way, thread, thickness, ultimate, shear, height, alloy):
    size = THREADS[thread]
    P, d = sizes.pitch(size), sizes.nominal(size)
    bore = sizes.known("D_1", "Bore to be tapped", size.minor, sources.ISO_965)
    across = Out.across(bore + 2 * (WALL * thickness), sources.PRACTICE)
    ring = step(
        "Q",
        "Collar's outside over its bore, squared",
        form(RATIO, 3),
        (across * across - bore * bore) / (across * across),
    )
    if ring * height >= 1:
        raise impossible(
            "thickness",
            "is {t}, and a collar of {z} times that for {d} takes more metal than the hole has; give thinner"
            " sheet, a lower collar or a larger thread",
            t=thickness,
            z=height,
            d=size.words,
        )
    hole = Out.hole(across * sqrt(1 - ring * height), sources.COLLAR)
    tall = step("h", "Height of the collar", SMALL, height * thickness)
    length = step(
        "L_e", "Thread that is whole in it", SMALL, greatest(tall - P / 2, 0.0 * P), sources.PRACTICE
    )
    turns = Out.turns(length / P)
    bolt = external(size, "6g")
    hole_limits = internal(size, "6H")
    outside = sizes.known("d_min", "Screw's outside, least", bolt.major.low, sources.ISO_965)
    wide = sizes.known("D_2,max", "Thread's pitch diameter, most", hole_limits.pitch.high, sources.ISO_965)
    strips = step(
        "F_t",
        "Pull that strips the collar's thread",
        N,
        hole_shear_area(P, length, outside, wide) * shear,
        sources.H28,
    )
    pull, turn, screw = _machine(size, strips, NUT_FACTOR * d * strips, sources.H28, sources.PRACTICE)
    grown = float(bore) / float(hole) - 1
    limits = (
        Limit("the collar's outside", across, low=d),
        Limit("what the hole grows by", grown, high=STRETCH[alloy]),
        Limit("the turns that hold", turns, low=TURNS),
    )
    fault = None
    if across <= d:
        fault = (
            "fail",
            say("Thread cuts through the collar's wall"),
            say(
                "The collar is {a} outside, the thread {d}. Take a smaller thread or thicker sheet.",
                a=across,
                d=d,
            ),
        )
    elif grown > STRETCH[alloy]:
        fault = (
            "fail",
            say("Collar tears: hole grows by {g}", g=constant("", "", form(RATIO, 0, "%", "%"), grown)),
            say(
                "{m} is about what such sheet bears. Draw a lower collar.",
                m=constant("", "", form(RATIO, 0, "%", "%"), STRETCH[alloy]),
            ),
        )
    elif turns < TURNS:
        fault = (
            "fail",
            say("Only {n} turns hold: no thread", n=turns),
            "One turn and a half is the least that holds. A taller collar, a finer thread, or a nut.",
        )
    return Made(hole, across, bore, turns, pull, turn, limits, fault, screw)


def _screw(way, thread, thickness, ultimate, shear, height, alloy):
    outside, core, pitch = (
        constant(symbol, label, SMALL, value * 1e-3, sources.ISO_1478)
        for symbol, label, value in zip(
            ("d", "d_c", "P"), ("Screw's outside", "Screw's core", "Screw's pitch"), SCREWS[thread]
        )
    )
    bite = step(
        "y",
        "How far up its thread the hole reaches",
        form(RATIO, 2),
        least(0.15 + 0.2 * (thickness / constant("t_1", "One millimetre", SMALL, 1e-3)), 0.75),
        sources.PRACTICE,
    )
    hole = Out.hole(core + (outside - core) * bite, sources.PRACTICE)
    pull = Out.pull(0.85 * thickness * outside * ultimate, sources.AISI_S100)
    fault = None
    if past(thickness, 1.5 * pitch):
        fault = (
            "fail",
            say("Sheet too thick: the screw seizes"),
            (
                "Its thread is cold-formed, and in so thick a sheet it breaks off. Tap the sheet for a"
                " machine screw."
            ),
        )
    return Made(
        hole,
        Out.across(outside, sources.ISO_1478),
        core,
        Out.turns(thickness / pitch),
        pull,
        Out.turn(NUT_FACTOR * outside * pull, sources.PRACTICE),
        (Limit("the sheet that the screw goes through", thickness, high=1.5 * pitch),),
        fault,
    )


def _verdict(
    way,
    thickness,
    grip_least,
    grip_most,
    edge,
    edge_least,
    borne,
    pull,
    pull_share,
    turned,
    torque,
    turn_share,
    hole,
    screw,
):
    def size(value):
        return constant("", "", SMALL, float(value))

    if way == RIVET and thickness < grip_least:
        return (
            "fail",
            say("Sheet too thin by {x} for the grip", x=size(grip_least - thickness)),
            "The upset closes on nothing and the nut stays loose. Take one with a shorter grip.",
        )
    if way == RIVET and thickness > grip_most:
        return (
            "fail",
            say("Sheet too thick by {x} for the grip", x=size(thickness - grip_most)),
            "The nut cannot fold behind it. Take one with a longer grip.",
        )
    if past(edge_least, edge):
        return (
            "fail",
            say("Too near the edge by {x}", x=size(edge_least - edge)),
            say(
                "The sheet bulges or tears out. Keep {e} from centre to edge, or take a smaller thread.",
                e=edge_least,
            ),
        )
    weak = screw is not None and borne >= screw[0], screw is not None and turned >= screw[1]
    if borne < pull:
        return (
            "fail",
            say(("Screw too weak" if weak[0] else "Pulls out") + ": bears {p} of {f}", p=borne, f=pull),
            (
                "Take a larger thread, or more of them."
                if weak[0]
                else "Take a larger thread, thicker sheet, or a plate behind it with a plain nut."
            ),
        )
    if turned < torque:
        return (
            "fail",
            say("Screw gives way at {t}" if weak[1] else "Spins or strips at {t}", t=turned),
            (
                "Less than it will be tightened with. Take a larger thread, or less torque."
                if weak[1]
                else (
                    "Less than it will be tightened with. Take a larger thread, a body that cannot turn, or"
                    " less torque."
                )
            ),
        )
    if pull_share < ENOUGH["pull"]:
        return (
            "attention",
            say("Bears {s} times the pull only", s=pull_share),
            "An estimate wants twice. Try it on a scrap, or use two.",
        )
    if turn_share < ENOUGH["torque"]:
        return (
            "attention",
            say("Torque near the limit of {t}", t=turned),
            "Try it on a scrap first, grease the screw, and tighten by hand.",
        )
    return (
        "pass",
        say("Holds: {s} times the pull", s=pull_share),
        say(
            "{verb} {h}, take off the burr on both sides, and tighten to no more than {t}.",
            verb="Pierce the pilot hole of" if way == COLLAR else "Drill or punch",
            h=hole,
            t=torque,
        ),
    )


def section(way, t, hole, across, bore, height, numbers) -> Drawing:
    """The sheet and what sits in it, cut through the axis; the sheet's upper face is at 0."""
    wide, shapes = 1.4 * across + 4 * t, []
    reach = {RIVET: t + 1.2 * hole, CLINCH: t + 0.6 * hole, COLLAR: height * t, SCREW: t + hole}[way]
    for side in (-1, 1):

        def area(*points, hatch):
            shapes.append(Area(tuple((side * x, y) for x, y in points), hatch))

        a, r, b = across / 2, hole / 2, bore / 2
        if way == COLLAR:
            area((b, 0), (wide, 0), (wide, -t), (a, -t), (a, -reach), (b, -reach), hatch="a")
            continue
        area((r, 0), (wide, 0), (wide, -t), (r, -t), hatch="a")
        if way == RIVET:
            area(
                (b, 0.12 * hole),
                (a, 0.12 * hole),
                (a, 0),
                (r, 0),
                (r, -t),
                (a, -t),
                (a, -t - 0.3 * hole),
                (r, -t - 0.4 * hole),
                (r, -reach),
                (b, -reach),
                hatch="b",
            )
        elif way == CLINCH:
            area((b, 0), (r, 0), (r, -t), (a, -t), (a, -reach), (b, -reach), hatch="b")
        else:
            area(
                (0, 0.4 * across),
                (1.6 * b, 0.4 * across),
                (1.9 * a, 0),
                (b, 0),
                (b, -reach),
                (0, -reach - 0.6 * b),
                hatch="b",
            )
    above = 0.5 * across
    names = {COLLAR: "pilot hole", SCREW: "hole"}
    dims = (
        (Dimension((-hole / 2, -reach), (hole / 2, -reach), numbers["h"], -0.5 * across, "D_h"),)
        if way != COLLAR
        else (Dimension((-across / 2, -reach), (across / 2, -reach), numbers["a"], -0.5 * across, "D_a"),)
    )
    return Drawing(
        WAYS[way],
        say(
            "Section: sheet of {t}, " + names.get(way, "hole") + " {h}, {a} across what sits in it.",
            **numbers,
        ),
        (
            *shapes,
            Line(((0, above), (0, -reach - 0.3 * across)), "centre"),
            *dims,
            Label((-wide, above), say("sheet {t}", t=numbers["t"]), "start", (-0.8 * wide, 0)),
        ),
        "" if way in (COLLAR,) else "hole and sheet to scale, the rest as a sketch",
    )
