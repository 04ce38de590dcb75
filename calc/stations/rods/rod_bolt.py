"""Rod bolts: preload from torque or stretch, the pull of piston and rod at top dead centre, and what holds the cap shut."""

from calc.core.conformance import past
from calc.core.drawing import Axis, Plot, Series
from calc.core.kinds import (
    ACCELERATION,
    AREA,
    COMPLIANCE,
    COUNT,
    FORCE,
    LENGTH,
    MASS,
    MODULUS,
    RATIO,
    ROTATION,
    STRESS,
    TORQUE,
)
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
    limit,
    measured,
)
from calc.formulas import bolt_torque as bolt
from calc.formulas import rod_load
from calc.reference import cautions, sources
from calc.reference.standards.threads import THREADS, stress_area
from calc.stations.shared import thread_sizes as sizes
from calc.stations.shared.bolts import CLASSES, TARGET, USUAL_BEARING

SIZE, SMALL, KN, NM, FRICTION, SHARE, MPA, GRAMS, SPEED, TIMES = (
    form(LENGTH, 3),
    form(LENGTH, 1),
    form(FORCE, 1, "kN", "lbf"),
    form(TORQUE, 1),
    form(RATIO, 3),
    form(RATIO, 0, "%", "%"),
    form(STRESS, 0),
    form(MASS, 0),
    form(ROTATION, 0),
    form(RATIO, 1),
)
TORQUE_KNOWN, STRETCH_KNOWN = "torque", "stretch"
ENDS, FREE = "ends", "free"
ROD_THREADS = {id: words for id, words in sizes.SIZES.items() if 0.006 <= THREADS[id].d <= 0.0130}
STRETCH_SPREAD = (
    0.05  # of the preload: what a stretch read to a hundredth leaves open; common practice, no source
)


class Out(Outputs):
    preload = Output("Preload of a bolt", "F", KN, main=True)
    margin = Output("Clamp over what opens the joint", "S", TIMES, main=True)
    used = Output("Share of yield used, at most", "U", SHARE, main=True)
    torque = Output("Torque", "T", NM)
    stretch = Output("Stretch of the bolt", "ΔL", SIZE)
    low = Output("Preload, low end of the band", "F_low", KN)
    high = Output("Preload, high end of the band", "F_high", KN)
    acceleration = Output("Acceleration of the piston at top dead centre", "a_p", form(ACCELERATION, 0))
    load = Output("Pull on the cap's joint", "F_A", KN)
    load_bolt = Output("Pull for each bolt", "F_1", KN)
    clamp = Output("Clamp left for each bolt, at least", "F_K", KN)
    speed_open = Output("Speed at which the cap lifts", "n_o", SPEED)


class In(Inputs):
    known: str = choice(
        "Told is", {TORQUE_KNOWN: "the torque", STRETCH_KNOWN: "the stretch"}, default=TORQUE_KNOWN
    )
    torque: Number = given(
        "Torque",
        "T_g",
        NM,
        hard="1 to 300 N·m",
        usual="10 to 90 N·m",
        feature="torque.rod_nut",
        when=("known", TORQUE_KNOWN),
        hint="Used where the torque is told.",
    )
    least_torque: Number | None = limit(
        "Torque allowed, least",
        "T_min",
        NM,
        feature="torque.rod_nut",
        which="low",
        hard="0 to 300 N·m",
        usual="10 to 90 N·m",
        when=("known", TORQUE_KNOWN),
    )
    most_torque: Number | None = limit(
        "Torque allowed, most",
        "T_max",
        NM,
        feature="torque.rod_nut",
        which="high",
        hard="1 to 300 N·m",
        usual="10 to 90 N·m",
        when=("known", TORQUE_KNOWN),
    )
    stretch: Number = measured(
        "Stretch",
        "ΔL_g",
        SIZE,
        tool="a micrometer over the bolt's ends, free and tight",
        hard="0.005 to 1 mm",
        usual="0.03 to 0.25 mm",
        feature="rod.bolt_stretch",
        must=True,
        stage="finished",
        when=("known", STRETCH_KNOWN),
        hint="Used where the stretch is told.",
    )
    read_over: str = choice(
        "Stretch is",
        {ENDS: "over the bolt's ends, head and nut in it", FREE: "of what lies free between head and nut"},
        hint="A micrometer over both ends reads the head and the thread in the nut too.",
        default=ENDS,
    )
    thread: str = choice("Thread", ROD_THREADS, must=True, example="M9x1")
    strength: str = choice(
        "Class of the bolt", {id: words for id, (words, _) in CLASSES.items()}, must=True, example="10.9"
    )
    speed: Number = given(
        "Highest speed",
        "n",
        SPEED,
        hard="100 1/ to 15000 1/min",
        usual="1500 1/ to 7500 1/min",
        feature="crank.top_speed",
        hint="The highest that it may ever see.",
    )
    thread_friction: Number = given(
        "Friction in the thread",
        "µ_G",
        FRICTION,
        hard="0.03 to 0.5",
        usual="0.06 to 0.25",
        fold=True,
        assumed=("0.12", "oiled; common practice, no source"),
        hint="Oiled about 0.12.",
    )
    head_friction: Number = given(
        "Friction under nut or head",
        "µ_K",
        FRICTION,
        hard="0.03 to 0.5",
        usual="0.06 to 0.25",
        fold=True,
        assumed=("0.12", "oiled; common practice, no source"),
    )
    spread: Number = given(
        "Friction may be off by",
        "w",
        SHARE,
        hard="0 to 60 %",
        usual="10 to 40 %",
        fold=True,
        assumed=("25 %", "common practice, no source"),
        hint="Stretch is taken as read to 5 %.",
    )
    bearing: Number | None = measured(
        "Mean diameter that nut or head rubs on",
        "D_b",
        form(LENGTH, 2),
        tool="a calliper: half of outside plus hole",
        hard="6 to 40 mm",
        fold=True,
        hint="Left empty, 1.3 diameters, as of a hexagon.",
    )
    shank: Number = measured(
        "Shank, diameter",
        "d_S",
        form(LENGTH, 2),
        tool="a micrometer",
        hard="3 to 16 mm",
        usual="5 to 13 mm",
        feature="rod.bolt_shank",
        fold=True,
    )
    shank_length: Number = measured(
        "Shank, length under the head",
        "l_S",
        SMALL,
        tool="a calliper",
        hard="0 to 120 mm",
        usual="15 to 70 mm",
        feature="rod.bolt_shank_length",
        fold=True,
    )
    thread_length: Number = measured(
        "Free thread, to the nut",
        "l_G",
        SMALL,
        tool="a calliper",
        hard="0.5 to 80 mm",
        usual="2 to 30 mm",
        feature="rod.bolt_free_thread",
        fold=True,
        hint="What lies free only: nothing inside head or nut.",
    )
    stiffness: Number = given(
        "Stiffness of the bolt's steel",
        "E",
        form(MODULUS, 0),
        hard="90 to 240 GPa",
        usual="195 to 215 GPa",
        fold=True,
        assumed=("205 GPa", "of any steel bolt"),
    )
    piston_mass: Number = measured(
        "Piston with pin, rings and clips",
        "m_K",
        GRAMS,
        tool="a balance",
        hard="20 to 5000 g",
        usual="200 to 1200 g",
        feature="piston.mass",
        stage="",
        fold=True,
    )
    small_end: Number = measured(
        "Small end of the rod, hung level",
        "m_S",
        GRAMS,
        tool="a balance",
        hard="10 to 3000 g",
        usual="60 to 600 g",
        feature="rod.small_end_mass",
        stage="",
        fold=True,
    )
    big_end: Number = measured(
        "Big end of the rod, hung level, with cap",
        "m_B",
        GRAMS,
        tool="a balance",
        hard="20 to 5000 g",
        usual="150 to 1200 g",
        feature="rod.big_end_mass",
        stage="",
        fold=True,
    )
    cap: Number = measured(
        "Cap alone",
        "m_C",
        GRAMS,
        tool="a balance",
        hard="5 to 3000 g",
        usual="50 to 500 g",
        feature="rod.cap_mass",
        stage="",
        fold=True,
    )
    throw: Number = given(
        "Throw",
        "r",
        form(LENGTH, 2),
        hard="10 to 120 mm",
        usual="25 to 55 mm",
        feature="crank.throw",
        fold=True,
        hint="Half the stroke.",
    )
    rod_length: Number = given(
        "Rod, centre to centre",
        "l",
        form(LENGTH, 2),
        hard="50 to 400 mm",
        usual="90 to 220 mm",
        feature="rod.centre_distance",
        fold=True,
    )
    bolts: Number = given(
        "Bolts in a cap",
        "z",
        form(COUNT, 0),
        hard="2 to 4",
        usual="2 to 4",
        fold=True,
        assumed=("2", "as nearly every rod has"),
    )
    joint_share: Number = given(
        "Share of the pull that a bolt feels",
        "Φ",
        FRICTION,
        hard="0 to 0.9",
        usual="0.1 to 0.4",
        fold=True,
        assumed=("0.25", "a soft bolt in a stiff joint; common practice, no source"),
        hint="Soft bolt in a stiff joint 0.15 to 0.3; common practice, no source.",
    )
    crush: Number = given(
        "Force that closes the shells, for each bolt",
        "F_S",
        KN,
        hard="0 to 50 kN",
        usual="0 to 6 kN",
        feature="rod.shell_crush",
        fold=True,
        hint="What the shells' squeeze takes of the preload.",
    )
    least_margin: Number = given(
        "Clamp wanted over what opens the joint",
        "S_w",
        TIMES,
        hard="1 to 10",
        usual="1.2 to 4",
        fold=True,
        assumed=("1.5", "common practice, no source"),
    )


@calculator(
    "rod-bolt",
    "Rod bolts at speed",
    In,
    Out,
    purpose=(
        "What preload does this torque or stretch give the rod bolts, and does it hold the cap shut at speed"
        " without yield?"
    ),
    finds=(
        "rod bolt torque",
        "rod bolt stretch",
        "connecting rod bolt",
        "cap lift",
        "inertia load",
        "overspeed",
        "rod nut",
        "bolt elongation",
        "preload",
    ),
    sources=(
        sources.ISO_16047,
        sources.VDI_2230,
        sources.BOLT_SPRINGS,
        sources.SLIDER_CRANK,
        sources.STRESS_AREA,
        sources.BOLT_CLASSES,
        sources.PRACTICE,
        sources.INVENTED,
    ),
    cautions=(cautions.ROD_SCRAP, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def rod_bolt(i: In) -> Answer:
    """Preload by ISO 16047 or from the stretch of shank and thread in series; pull of all that hangs on the rod's half at top dead
    centre between exhaust and intake, when no gas helps.

    The cap's own weight rides on the journal and does not pull at the bolts. The pull is shared evenly; prying of a thin cap, heat
    and settling are not in it. Elastic up to yield.
    """
    if i.throw >= i.rod_length:
        raise impossible(
            "throw",
            "is {r}, not shorter than the rod, {l}, so that the crank could not turn; give less",
            r=i.throw,
            l=i.rod_length,
        )
    if i.cap >= i.big_end:
        raise impossible(
            "cap", "weighs {c}, not less than the big end with it, {b}; give less", c=i.cap, b=i.big_end
        )
    if float(i.bolts) % 1:
        raise impossible("bolts", "is no whole number; give 2, 3 or 4")
    size = THREADS[i.thread]
    P, d = sizes.pitch(size), sizes.nominal(size)
    d_2 = sizes.known("d_2", "Basic pitch diameter", size.pitch_diameter, sizes.standard(size))
    area = constant("A_s", "Stress area of the thread", form(AREA, 2), stress_area(size), sources.STRESS_AREA)
    shank_area = step("A_S", "Area of the shank", form(AREA, 2), PI / 4 * i.shank**2)
    weakest = step("A_0", "The smaller area of the two", form(AREA, 2), least(area, shank_area))
    d_0 = step("d_0", "Diameter of that area", SIZE, sqrt(4 * weakest / PI), sources.VDI_2230)
    rub = step(
        "D_K",
        "Mean diameter under nut or head",
        form(LENGTH, 2),
        USUAL_BEARING * d if i.bearing is None else i.bearing,
        sources.PRACTICE,
    )
    if rub <= d:
        raise impossible(
            "bearing",
            "is {b}, not larger than the thread of {d}; give half the sum of the face's outside and its hole",
            b=rub,
            d=d,
        )
    R = constant("R_p", "Yield stress", MPA, CLASSES[i.strength][1] * 1e6, sources.BOLT_CLASSES)

    def levers(tag="", words="", slip=None):
        in_thread, under_head = (
            friction if slip is None else friction * slip for friction in (i.thread_friction, i.head_friction)
        )
        a = step(
            f"a{tag}",
            f"Torque in the thread over preload{words}",
            SIZE,
            bolt.thread_lever(P, d_2, in_thread),
            sources.ISO_16047,
        )
        return a, step(
            f"b{tag}", f"Torque over preload{words}", SIZE, a + rub / 2 * under_head, sources.ISO_16047
        )

    _, lever = levers()
    free = step(
        "δ",
        "Stretch for each newton, as shank and free thread in series",
        form(COMPLIANCE, 3),
        rod_load.bolt_give(i.shank_length, shank_area, i.thread_length, area, i.stiffness),
        sources.BOLT_SPRINGS,
    )
    core = sizes.known("d_3", "Core of the thread", size.root, sizes.standard(size))
    nominal_area, core_area = (
        step(symbol, label, form(AREA, 2), PI / 4 * diameter**2)
        for symbol, label, diameter in (
            ("A_N", "Area of the nominal diameter", d),
            ("A_3", "Area of the core", core),
        )
    )
    give = (
        step(
            "δ_L",
            "Over the ends, for each newton",
            form(COMPLIANCE, 3),
            free + rod_load.ends_give(d, nominal_area, core_area, i.stiffness),
            sources.VDI_2230,
        )
        if i.read_over == ENDS
        else free
    )
    if i.known == TORQUE_KNOWN:
        F = Out.preload(i.torque / lever, sources.ISO_16047)
        (_, rough), (in_thread_twist, slick) = (
            levers("_r", ", rough end", 1 + i.spread),
            levers("_s", ", slippery end", 1 - i.spread),
        )
        low, high = (
            Out.low(i.torque / rough, sources.ISO_16047),
            Out.high(i.torque / slick, sources.ISO_16047),
        )
    else:
        F = Out.preload(i.stretch / give, sources.BOLT_SPRINGS)
        in_thread_twist, _ = levers(
            "_r", ", rough end", 1 + i.spread
        )  # the pull is told, so a rough thread only adds to the twist
        doubt = constant("w_L", "Stretch may be read wrong by", SHARE, STRETCH_SPREAD, sources.PRACTICE)
        low, high = Out.low(F * (1 - doubt)), Out.high(F * (1 + doubt))
    T, stretched = Out.torque(F * lever, sources.ISO_16047), Out.stretch(F * give, sources.BOLT_SPRINGS)

    pin_acceleration = step(
        "a_c",
        "Acceleration of the crankpin",
        form(ACCELERATION, 0),
        rod_load.pin_acceleration(i.throw, i.speed),
        sources.SLIDER_CRANK,
    )
    piston_acceleration = Out.acceleration(
        rod_load.top_acceleration(pin_acceleration, i.throw, i.rod_length), sources.SLIDER_CRANK
    )
    pull = Out.load(
        rod_load.joint_pull(
            i.piston_mass + i.small_end, i.big_end - i.cap, piston_acceleration, pin_acceleration
        ),
        sources.SLIDER_CRANK,
    )
    each = Out.load_bolt(pull / i.bolts)
    held = step("F_H", "Preload that presses cap on rod, at least", KN, greatest(low - i.crush, 0.0))
    off = step("F_O", "What the pull takes off it", KN, (1 - i.joint_share) * each, sources.VDI_2230)
    margin = Out.margin(held / off, sources.VDI_2230)
    clamp = Out.clamp(greatest(held - off, 0.0), sources.VDI_2230)
    opens = Out.speed_open(i.speed * sqrt(margin), sources.SLIDER_CRANK)
    twisted = step(
        "κ",
        "Shear over tension, " + ("slippery end" if i.known == TORQUE_KNOWN else "rough end"),
        FRICTION,
        bolt.twist(d_0, in_thread_twist),
        sources.VDI_2230,
    )
    tightening = step(
        "σ_M",
        "Stress while it is tightened, at most",
        MPA,
        bolt.together(high / weakest, twisted),
        sources.VDI_2230,
    )
    running = step(
        "σ_B",
        "Stress when running: half the twist is left",
        MPA,
        sqrt(((high + i.joint_share * each) / weakest) ** 2 + 3 * (twisted / 2 * (high / weakest)) ** 2),
        sources.VDI_2230,
    )
    used = Out.used(greatest(tightening, running) / R, sources.VDI_2230)

    told = i.known == TORQUE_KNOWN
    too_little = told and i.least_torque is not None and past(i.least_torque, i.torque)
    too_much = told and i.most_torque is not None and past(i.torque, i.most_torque)
    if past(used, 1):
        verdict = (
            "fail",
            say("Bolt yields: {u} at the high end", u=used),
            (
                "Less torque, or a stronger bolt as the maker allows. A bolt that was pulled so far is not"
                " used again."
            ),
        )
    elif not past(margin, 1):
        verdict = (
            "fail",
            say("Cap lifts from {n} on", n=opens),
            "Do not run it so fast. More preload needs a stronger bolt; a lighter piston helps as much.",
        )
    elif past(used, TARGET):
        verdict = (
            "attention",
            say("Near yield: {u} at the high end", u=used),
            (
                "It holds with nothing to spare. Tighten by stretch, or with a wrench that was checked, and"
                " new bolts each time."
            ),
        )
    elif past(i.least_margin, margin):
        verdict = (
            "attention",
            say("Little clamp: {m} times the pull", m=margin),
            say(
                "{w} times is wanted. An overspeed would open it: from {n} on the cap lifts.",
                w=i.least_margin,
                n=opens,
            ),
        )
    elif too_little or too_much:
        verdict = (
            "attention",
            say(
                "Not the engine's torque: {T}, {least} " + ("at least" if too_little else "at most"),
                T=i.torque,
                least=i.least_torque if too_little else i.most_torque,
            ),
            (
                "The bolt bears it and the cap stays shut, by the friction taken. Set the torque that its"
                " sheet allows, unless bolt or nut are others and their maker says so."
            ),
        )
    else:
        verdict = (
            "pass",
            say("Holds {m} times the pull at {n}", m=margin, n=i.speed),
            say(
                "Tighten both in turn, in two steps. Expect {low} to {high}, and about {s} of stretch.",
                low=low,
                high=high,
                s=stretched,
            ),
        )
    return answer(
        F,
        margin,
        used,
        T,
        stretched,
        low,
        high,
        piston_acceleration,
        pull,
        each,
        clamp,
        opens,
        verdict=verdict,
        limits=(
            Limit("the bolt's stress", used, high=1),
            Limit("the clamp", margin, low=1),
            Limit("the bolt's stress", used, high=TARGET, level="attention"),
            Limit("the clamp", margin, low=i.least_margin, level="attention"),
            *(
                (Limit("the torque", i.torque, low=i.least_torque, high=i.most_torque, level="attention"),)
                if told and (i.least_torque is not None or i.most_torque is not None)
                else ()
            ),
        ),
        remarks=(
            (
                note(
                    "Over the ends a micrometer reads a seventh or so more than the free length stretches:"
                    " the head gives, and the thread inside the nut."
                )
                if i.read_over == ENDS
                else None
            ),
            note("The pull grows with the square of the speed: a tenth more speed is a fifth more pull."),
            (
                warning("Past yield the bolt stays longer, and the preload shown is more than there is.")
                if past(used, 1)
                else None
            ),
        ),
        figures=(
            plot(float(F - i.crush), float(held), float(off), float(i.speed), float(opens), margin, clamp),
        ),
    )


def plot(middle, held, off, speed, opens, margin, clamp) -> Plot:
    """Clamp between cap and rod, for each bolt, over the speed."""
    end = max(1.15 * speed, min(1.1 * opens, 3 * speed))

    def line(start):
        speeds = [end * i / 40 for i in range(41)]
        return tuple((n, start - off * (n / speed) ** 2) for n in speeds)

    return Plot(
        "Clamp over speed",
        say(
            "{c} of clamp are left for each bolt at the highest speed, {m} times what opens the joint.",
            c=clamp,
            m=margin,
        ),
        Axis("Speed", SPEED),
        Axis("Clamp for each bolt", KN),
        (
            Series("", line(held)),
            Series("expected", line(middle), "dashed"),
            Series("cap lifts below", ((0.0, 0.0), (end, 0.0)), "limit"),
        ),
        ((speed, held - off, "yours, at least"),),
    )
