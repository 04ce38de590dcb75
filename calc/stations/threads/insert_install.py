"""A thread insert in a case or head: hole and tap for it, how deep, how far from the edge, and whether the parent metal holds the stud."""

from math import floor

from calc.core.conformance import past
from calc.core.drawing import Area, Dimension, Drawing, Label, Line
from calc.core.kinds import AREA, LENGTH, RATIO, STRESS, TEMPERATURE
from calc.core.result import impossible, note, say, warning
from calc.core.working import PI, constant, form, greatest, step, tan
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
from calc.formulas.screw_threads import SHEAR_SHARE, hole_shear_area
from calc.reference import cautions, sources
from calc.reference.materials import MATERIALS, REFERENCE
from calc.reference.standards import drills
from calc.reference.standards.threads import HEIGHT, THREADS, external, internal
from calc.stations.shared import thread_sizes as sizes
from calc.stations.shared.clamped import CYLINDER, clamps, hot_over_cold, hot_preload, known_hot
from calc.stations.shared.forms import KILONEWTON as KN
from calc.stations.shared.thread_sizes import SIZE

SMALL, TIMES, MPA = form(LENGTH, 2), form(RATIO, 2), form(STRESS, 0)
KINDS = {"wire": "Wire thread insert", "solid": "Solid thin-wall insert", "key": "Key-locking insert"}
PARENTS = ("mg-az91", "al-si-t6", "al-si-cu-t6", "grey-iron", "ductile-iron")
LIGHT = ("mg-az91", "al-si-t6", "al-si-cu-t6")
SOFT_EDGE, SOFT_EDGE_WISHED, HARD_EDGE = (
    1.5,
    2.0,
    1.0,
)  # common practice, no source: × d in light metal; × the insert's outside anywhere
POINT = 118  # degrees, of a usual drill
DRILL_OVER = (
    0.02  # pitches over the basic minor diameter: common practice, no source; nearer, and the tap binds
)
DEEPEST = 1.0  # pitches under the face: deeper, and the stud's first turns hold nothing
UNTOLD = "none"


class Out(Outputs):
    drill = Output("Drill", "D_d", SMALL, main=True)
    pull = Output("Pull that the parent's thread bears", "F_p", KN, main=True)
    safety = Output("That over the preload", "S", TIMES, main=True)
    force = Output("Preload at the most: slippery and hot", "F_max", KN)
    minor = Output("Hole to be tapped, basic minor diameter", "D_1", SIZE)
    pitch_diameter = Output("Tap, basic pitch diameter", "D_2", SIZE)
    major = Output("Tap, basic major diameter", "D_t", SIZE)
    countersink = Output("Countersink, across", "D_c", SMALL)
    setting = Output("Insert's top under the face", "s", SMALL)
    tapped = Output("Full threads down to", "t_t", SMALL)
    drilled = Output("Drilled down to, without the point", "t_d", SMALL)
    left = Output("Metal left under the point, or under the insert", "f", SMALL)
    edge_least = Output("Centre to edge, least", "e_min", SMALL)
    area = Output("Area that would shear", "A", form(AREA, 0))


class In(Inputs):
    thread: str = choice("Thread of the stud", sizes.SIZES, must=True, example="M10x1.5")
    casting: str = choice(
        "Hole is in",
        {"crankcase": "The crankcase", "head": "A cylinder head"},
        must=True,
        example="crankcase",
    )
    parent: str = choice(
        "Its metal", {id: MATERIALS[id].name for id in PARENTS}, feature="{casting}.alloy", example="mg-az91"
    )
    clamped: str = clamps()
    length: Number = given(
        "Insert's length, in diameters",
        "q",
        form(RATIO, 2),
        hard="0.5 to 4",
        usual="1 to 3",
        hint="A wire insert's nominal length, set.",
        example="2.5",
    )
    metal: Number = measured(
        "Metal from face to far side",
        "m",
        SMALL,
        tool="a calliper or depth gauge",
        hard="2 to 300 mm",
        usual="8 to 120 mm",
        hint="To whatever lies under the hole first: outside, oil way, spigot bore.",
        example="40 mm",
    )
    edge: Number = measured(
        "Centre of the hole to the nearest edge",
        "e",
        SMALL,
        tool="a calliper",
        hard="1 to 300 mm",
        usual="5 to 100 mm",
        hint="Or to the next hole's wall.",
        example="20 mm",
    )
    preload: Number = given(
        "Preload wanted of the stud, cold",
        "F",
        KN,
        hard="0.1 to 400 kN",
        usual="1 to 120 kN",
        hint="Where only the torque is known, the torque calculator tells it.",
        example="13 kN",
    )
    kind: str = choice("Insert", KINDS, must=True, example="wire")
    outside: str = choice(
        "Thread on the outside of a solid insert",
        {UNTOLD: "(wire insert: follows from the stud's)"} | sizes.SIZES,
        must=True,
        when=("kind", "solid", "key"),
        example=UNTOLD,
    )
    way: str = choice("Hole is", {"blind": "blind", "through": "right through"}, default="blind")
    slip: Number = given(
        "Preload of a slippery thread over that wanted",
        "k_s",
        TIMES,
        hard="1 to 2",
        usual="1.1 to 1.5",
        fold=True,
        assumed=("1.25", "friction a quarter less than meant; common practice, no source"),
        hint="The torque calculator tells both; 1 where the stud's stretch is read.",
    )
    hot: Number = hot_over_cold()
    hot_force: Number | None = known_hot()
    under: Number = given(
        "Insert's top under the face, in pitches",
        "n_s",
        form(RATIO, 2),
        hard="-4 to 6",
        usual="0.25 to 1",
        fold=True,
        assumed=("0.5", "common practice, no source"),
        hint="Common practice: a quarter to one pitch.",
    )
    lead: Number = given(
        "Lead of the tap, in pitches",
        "n_l",
        form(RATIO, 1),
        hard="0.5 to 10",
        usual="1.5 to 5",
        fold=True,
        assumed=("2", "a bottoming tap"),
        when=("way", "blind"),
        hint="Bottoming tap about 2, plug tap 4 to 5.",
    )
    floor_least: Number = given(
        "Metal wanted under the hole",
        "f_min",
        SMALL,
        hard="0 to 50 mm",
        usual="1 to 10 mm",
        fold=True,
        assumed=("2 mm", "common practice, no source"),
    )
    temperature: Number = given(
        "Running temperature round the hole",
        "T",
        form(TEMPERATURE, 0),
        hard="-40 to 200 °C",
        usual="20 to 180 °C",
        feature="{casting}.running_temperature",
        hint="A case about 90 to 110 °C, a head 150 °C and more at its studs.",
    )
    safety_least: Number = given(
        "Hot pull over preload wanted",
        "S_min",
        TIMES,
        hard="1 to 10",
        usual="1.25 to 4",
        fold=True,
        assumed=("2", "common practice, no source"),
    )


@calculator(
    "insert-install",
    "Thread insert in a case or head",
    In,
    Out,
    purpose="What do I drill and tap for this insert, how deep, and does the metal round it hold the stud?",
    finds=(
        "wire thread insert",
        "thread repair",
        "pulled stud",
        "stripped thread",
        "STI tap",
        "stud hole",
        "key-locking insert",
        "threaded bush",
        "edge distance",
        "pull-out",
    ),
    sources=(
        sources.STI,
        sources.H28,
        sources.ISO_965,
        sources.ASME_B1_1,
        sources.MATERIALS,
        sources.PRACTICE,
    ),
    cautions=(cautions.MAKER_FIRST, cautions.CUTTING, cautions.AIRCRAFT),
)
def insert_install(i: In) -> Answer:
    """Sizes of the tapped hole, depths from the face, edge distance by common practice, and the pull at which the parent's thread shears.

    Wire inserts: the tapped hole is the stud's thread at a nominal diameter of d + 1.299·P. Full engagement is the insert's length
    less a pitch for its half-formed ends. Shear area at least material (FED-STD-H28/2), shear strength as half of the tensile, less
    as the alloy's yield falls with heat. The insert's own data go before all of it.
    """
    inner, metals = THREADS[i.thread], MATERIALS[i.parent]
    P, d = sizes.pitch(inner), sizes.nominal(inner)
    major, pitch_o, play_major, play_pitch = _outer(inner, i.kind, i.outside, P, d)
    pitch_diameter = Out.pitch_diameter(major - 0.75 * HEIGHT * pitch_o, sources.STI)
    minor = Out.minor(major - 1.25 * HEIGHT * pitch_o, sources.STI)
    if i.edge <= major / 2:
        raise impossible(
            "edge",
            "is {e}, and the tapped hole of {D} would cut into the edge; give more than {r}",
            e=i.edge,
            D=major,
            r=constant("", "", SMALL, float(major) / 2),
        )
    drill = Out.drill(
        constant(
            "D_s",
            "Next drill that is sold",
            SMALL,
            _drill(float(minor), float(pitch_o), inner.system),
            sources.DRILLS,
        ),
        sources.DRILLS,
    )

    setting = Out.setting(i.under * P, sources.PRACTICE)
    body = step("L", "Insert's length", SMALL, i.length * d)
    full = step("L_e", "Length on which threads are whole", SMALL, body - pitch_o, sources.PRACTICE)
    if full <= 0:
        raise impossible("length", "is {q}, no more than its own half-formed ends; give more", q=i.length)
    if i.way == "blind":
        tapped = Out.tapped(setting + body + pitch_o, sources.PRACTICE)
        drilled = Out.drilled(tapped + i.lead * pitch_o, sources.PRACTICE)
        point = step("h", "Height of the drill's point", SMALL, drill / 2 / tan(PI * (POINT / 2 / 180)))
        left = Out.left(i.metal - drilled - point)
    else:
        tapped, drilled = Out.tapped(i.metal), Out.drilled(i.metal)
        left = Out.left(i.metal - setting - body)
    soft = i.parent in LIGHT
    edge_least = Out.edge_least(
        greatest(HARD_EDGE * major, SOFT_EDGE * d) if soft else HARD_EDGE * major, sources.PRACTICE
    )
    edge_wished = step(
        "e_w",
        "Centre to edge, better",
        SMALL,
        greatest(HARD_EDGE * major, SOFT_EDGE_WISHED * d) if soft else edge_least,
        sources.PRACTICE,
    )

    major_least = step("D_t,min", "Insert's outside, least", SIZE, major - play_major, sources.H28)
    pitch_most = step(
        "D_2,max", "Hole's pitch diameter, most", SIZE, pitch_diameter + play_pitch, sources.H28
    )
    area = Out.area(hole_shear_area(pitch_o, full, major_least, pitch_most), sources.H28)
    ultimate = constant(
        "R_m", f"Tensile strength of the {metals.name}", MPA, metals.ultimate, sources.MATERIALS
    )
    yield_hot, yield_cold = (
        constant(f"R_{word}", f"Its yield stress, {words}", MPA, metals.yield_at(t), sources.MATERIALS)
        for word, words, t in (("hot", "running", i.temperature), ("20", "at 20 °C", REFERENCE))
    )
    shear = step(
        "τ", "Its shear strength, running", MPA, SHEAR_SHARE * ultimate * yield_hot / yield_cold, sources.H28
    )
    pull = Out.pull(area * shear, sources.H28)
    slippery = step("F_s", "Preload where the thread is slippery", KN, i.slip * i.preload, sources.PRACTICE)
    force = Out.force(hot_preload(i.preload, i.clamped, i.hot, i.hot_force, slippery), sources.PRACTICE)
    safety = Out.safety(pull / force)

    verdict = _verdict(
        i.way,
        setting,
        i.under,
        left,
        i.floor_least,
        i.edge,
        edge_least,
        edge_wished,
        pull,
        force,
        safety,
        i.safety_least,
        d,
        i.length,
        inner,
        drill,
    )
    creeps = metals.limit_temperature
    return answer(
        drill,
        pull,
        safety,
        force,
        minor,
        pitch_diameter,
        major,
        Out.countersink(major + 0.25 * pitch_o, sources.PRACTICE),
        setting,
        tapped,
        drilled,
        left,
        edge_least,
        area,
        verdict=verdict,
        limits=(
            Limit("the metal left under the hole", left, low=0),
            Limit("the distance to the edge", i.edge, low=edge_least),
            Limit("the depth under the face", setting, low=0),
            Limit("the pull over the preload", safety, low=1),
            Limit("the pull over the preload", safety, low=i.safety_least, level="attention"),
            Limit("the distance to the edge", i.edge, low=edge_wished, level="attention"),
            *(
                (Limit("the metal left under the hole", left, low=i.floor_least, level="attention"),)
                if i.way == "blind"
                else ()
            ),
        ),
        remarks=(
            note(
                "The insert's own data sheet goes before these sizes: makers' inserts of one thread differ."
            ),
            (
                note(
                    "A wire insert's outside follows from the stud's thread: the thread chosen for a solid"
                    " one was not used."
                )
                if i.kind == "wire" and i.outside != UNTOLD
                else None
            ),
            (
                warning(
                    "A stressed thread in {name} creeps from {t} on: expect to tighten it again, and keep the"
                    " preload low.",
                    name=metals.name,
                    t=constant("", "", form(TEMPERATURE, 0), creeps),
                )
                if i.parent == "mg-az91" and float(i.temperature) >= creeps - 1e-9
                else None
            ),
            (
                note(
                    "Head and cylinder grow more than the stud: hot it pulls {k} times as hard as it was"
                    " set.",
                    k=i.hot,
                )
                if i.clamped == CYLINDER and i.hot_force is None
                else None
            ),
            (
                warning(
                    "A solid insert is stiffer than a wire one and needs its holes square: set it under a"
                    " drill press or a bush."
                )
                if i.kind != "wire"
                else None
            ),
        ),
        cautions=(cautions.MAGNESIUM,) if i.parent == "mg-az91" else (),
        figures=(
            section(
                *map(float, (drill, major, d, setting, body, tapped, drilled, i.metal, i.edge)),
                i.way == "blind",
                dict(d=drill, s=setting, L=body, t=tapped, td=drilled, m=i.metal, e=i.edge),
            ),
        ),
    )


def _outer(inner, kind, outside, P, d):
    """The thread that is tapped into the parent: basic major diameter, pitch, and what the pair's limits take off on each side."""
    if kind == "wire":
        major = Out.major(d + 1.5 * HEIGHT * P, sources.STI)
        thread, pitch = inner, P
    elif outside == UNTOLD:
        raise impossible(
            "outside",
            "is not told, and a solid insert may have any; choose what its packet says, such as M14x1.5",
        )
    else:
        thread = THREADS[outside]
        if thread.root <= inner.d:
            raise impossible(
                "outside",
                "is {o}, which leaves no wall round {i}; choose a larger one",
                o=thread.words,
                i=inner.words,
            )
        pitch = sizes.known("P_o", "Pitch of the insert's outside", thread.P, sizes.standard(thread))
        major = Out.major(
            sizes.known("D_o", "Nominal diameter of the insert's outside", thread.d, sizes.standard(thread)),
            sizes.standard(thread),
        )
    classes = sizes.CLASSES["usual"][thread.system]
    bolt, hole = external(thread, classes[1]), internal(thread, classes[0])
    source = sizes.standard(thread)
    return (
        major,
        pitch,
        sizes.known(
            "a_d", f"Outside under its nominal size, {classes[1]} at most", thread.d - bolt.major.low, source
        ),
        sizes.known(
            "a_2",
            f"Hole's pitch diameter over its nominal size, {classes[0]} at most",
            hole.pitch.high - thread.pitch_diameter,
            source,
        ),
    )


def _drill(minor, pitch, system) -> float:
    """The next drill a fiftieth of the pitch or more over the basic minor diameter; that size itself, to be bored, where none is so large."""
    sold = drills.LISTS["metric" if system == "metric" else "inch"]
    wanted = minor + DRILL_OVER * pitch
    return next((drill.size for drill in sold if drill.size >= wanted - 1e-9), wanted)


def _verdict(
    way,
    setting,
    under,
    left,
    floor_least,
    edge,
    edge_least,
    edge_wished,
    pull,
    force,
    safety,
    safety_least,
    d,
    length,
    inner,
    drill,
):
    def size(value):
        return constant("", "", SMALL, abs(float(value)))

    if setting < 0:
        return (
            "fail",
            say("Stands {x} above the face", x=size(setting)),
            (
                "Set it a quarter to one pitch under the face, or the joint is clamped on the insert and"
                " pulls it out."
            ),
        )
    if past(0.0, left):
        longest = (
            floor((float(length) - (float(floor_least) * (way == "blind") - float(left)) / float(d)) * 4) / 4
        )
        shorter = (
            say("An insert of {q} diameters would do.", q=f"{longest:g}")
            if longest >= 1
            else "No insert of one diameter or more goes in here."
        )
        if way == "blind":
            return (
                "fail",
                say("Breaks through by {x}", x=size(left)),
                say("Do not drill. {shorter}", shorter=shorter),
            )
        return (
            "fail",
            say("Stands out below by {x}", x=size(left)),
            say("Take a shorter one. {shorter}", shorter=shorter),
        )
    if past(edge_least, edge):
        return (
            "fail",
            say("Too near the edge by {x}", x=size(edge_least - edge)),
            say(
                "The wall would bulge or crack. {least} is needed: move the hole, take an insert with a"
                " smaller outside, or have metal built up.",
                least=edge_least,
            ),
        )
    if past(1, safety):
        return (
            "fail",
            say(
                "Pulls out: bears {p} of {f}",
                p=pull.held_to(float(force), None),
                f=force.held_to(None, float(pull)),
            ),
            "Take a longer insert, one with a larger outside, or less preload if the maker allows it.",
        )
    if past(safety_least, safety):
        return (
            "attention",
            say("Bears {s} times the stud's pull only", s=safety),
            say(
                "{w} times is wanted of {f}, the most it pulls. A longer insert, or a larger outside, gives"
                " more.",
                w=safety_least,
                f=force,
            ),
        )
    if way == "blind" and past(floor_least, left):
        return (
            "attention",
            say("Only {x} left under the hole", x=left),
            (
                "Drill to a stop, and look for an oil way behind it. A bottoming tap with a shorter lead"
                " leaves more."
            ),
        )
    if past(edge_wished, edge):
        return (
            "attention",
            say("Near the edge: {e}", e=edge),
            say(
                "It will do, but {w} is better in light metal. Use a sharp tap, and no driver that spreads"
                " the insert.",
                w=edge_wished,
            ),
        )
    if not 0.25 <= under <= DEEPEST:
        return (
            "attention",
            say("Insert's top {s} under the face", s=setting),
            (
                "Common practice is a quarter to one pitch: higher, and it can rise into the joint; deeper,"
                " and metal above it carries nothing."
            ),
        )
    return (
        "pass",
        say("Goes in, bears {s} times the stud's pull", s=safety),
        say(
            "Drill {d}, square to the face, to {how}; countersink, tap with the insert's own tap, blow out,"
            " and set it.",
            d=drill,
            how="a stop" if way == "blind" else "the far side",
        ),
    )


def section(drill, major, d, setting, body, tapped, drilled, metal, edge, blind, numbers) -> Drawing:
    """Hole and insert cut through the axis, the nearest edge to the right."""
    r, R, inside, wall = drill / 2, major / 2, d / 2, -max(1.3 * major, min(edge, 2 * major))
    point = r / 1.6643  # tan 59°
    far = min(edge, 3 * major)  # a far edge is drawn broken off: nothing happens there
    halves, inserts = [], []
    for x in (wall, far):
        side = -1 if x < 0 else 1
        corner = ((side * r, -drilled),)
        foot = (
            ((side * r * (drilled + point - metal) / point, -metal), *corner)
            if blind and drilled < metal
            else ((side * r, -metal),)
        )
        halves.append(((side * r, 0), (x, 0), (x, -metal), *foot))
        top, bottom = -setting, -setting - body
        inserts.append(
            Area(((side * inside, top), (side * R, top), (side * R, bottom), (side * inside, bottom)), "b")
        )
        end = min(tapped, metal)
        inserts.append(Line(((side * R, 0), (side * R, -end), (side * r, -end)), "thin"))
    whole = blind and drilled + point <= metal  # both halves meet under the point
    parent = (
        (
            Area(
                (
                    (-r, 0),
                    (wall, 0),
                    (wall, -metal),
                    (far, -metal),
                    (far, 0),
                    (r, 0),
                    (r, -drilled),
                    (0, -drilled - point),
                    (-r, -drilled),
                ),
                "a",
            ),
        )
        if whole
        else tuple(Area(half, "a") for half in halves)
    )
    high = 0.22 * metal
    dims = (
        [Dimension((0, 0), (far, 0), numbers["e"], high * 0.7, "e")]
        if far == edge
        else [Label((far, high * 0.5), say("edge at {e}", e=numbers["e"]), "end")]
    )
    if blind:
        dims += [
            Dimension((wall, -tapped), (wall, 0), numbers["t"], 0.25 * major, "t_t"),
            Dimension((wall, -drilled), (wall, 0), numbers["td"], 0.75 * major, "t_d"),
        ]
    dims.append(
        Label((wall, high * 0.6), say("s {s}", s=numbers["s"]), "start", (-(inside + R) / 2, -setting))
    )
    return Drawing(
        "Insert in its hole",
        say(
            "Section: hole drilled {d} and {td} deep, tapped to {t}; an insert of {L} stands {s} under the"
            " face, {e} from the edge, in {m} of metal.",
            **numbers,
        ),
        (
            *parent,
            *inserts,
            Line(((0, high), (0, -metal - high * 0.5)), "centre"),
            *dims,
            Dimension((far, -setting - body), (far, -setting), numbers["L"], -0.35 * major, "L"),
            Dimension((-r, -metal), (r, -metal), numbers["d"], -high, "D_d"),
        ),
    )
