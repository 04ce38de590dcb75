"""What a torque makes of a bolt: preload and its spread by friction, stress, share of yield, and the other way round."""

from calc.core.advice import at_least, at_most
from calc.core.conformance import past
from calc.core.drawing import Axis, Plot, Series
from calc.core.kinds import AREA, LENGTH, RATIO, STRESS, TORQUE
from calc.core.result import Table, impossible, note, say, warning
from calc.core.working import PI, constant, form, greatest, sqrt, step
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
from calc.formulas import bolt_torque as bolt
from calc.reference import cautions, sources
from calc.reference.standards.threads import THREADS, stress_area
from calc.stations.shared import thread_sizes as sizes
from calc.stations.shared.clamped import CYLINDER, KN, clamps, hot_over_cold, hot_preload, known_hot
from calc.stations.shared.thread_sizes import SIZE

NM, FRICTION, SHARE, MPA, SMALL = (
    form(TORQUE, 1),
    form(RATIO, 3),
    form(RATIO, 0, "%", "%"),
    form(STRESS, 0),
    form(LENGTH, 2),
)
CLASSES = {  # least yield, MPa: ISO 898-1 and ISO 3506-1, SAE J429; from memory
    "5.6": ("5.6", 300),
    "8.8": ("8.8", 640),
    "10.9": ("10.9", 940),
    "12.9": ("12.9", 1100),
    "a2-70": ("A2-70, stainless", 450),
    "grade-5": ("Grade 5", 634),
    "grade-8": ("Grade 8", 896),
}
THICK_8_8 = 660e6  # Pa, class 8.8 over 16 mm
STATES = (
    ("A: wax or molybdenum paste", 0.04, 0.10),
    ("B: oiled or greased", 0.08, 0.16),
    ("C: dry, as it came", 0.14, 0.24),
)  # VDI 2230-1, table A5, from memory
USUAL_BEARING = 1.3  # × d: mean of a hexagon's face and a medium hole
TORQUE, PRELOAD = "torque", "preload"
TARGET = 0.9  # of yield, torsion counted: VDI 2230


class Out(Outputs):
    preload = Output("Preload", "F", KN, main=True)
    torque = Output("Torque", "T", NM, main=True)
    low = Output("Preload, rough end of the band", "F_low", KN)
    high = Output("Preload, slippery end of the band", "F_high", KN)
    hot = Output("Preload hot, slippery end", "F_hot", KN)
    stress = Output("Stress, pull and twist together", "σ_v", MPA)
    used = Output("Share of yield used", "U", SHARE)
    used_high = Output("Share of yield used, slippery end and hot", "U_high", SHARE, main=True)
    most = Output("Preload at 90 % of yield", "F_90", KN)
    torque_most = Output("Torque at 90 % of yield", "T_90", NM)
    nut_factor = Output("Nut factor that this friction makes", "K_n", FRICTION)
    lost = Output("Share of the torque that rubs away", "R", SHARE)


class In(Inputs):
    known: str = choice("Given is", {TORQUE: "The torque", PRELOAD: "The preload wanted"}, default=TORQUE)
    torque: Number = given(
        "Torque",
        "T_g",
        NM,
        hard="0.1 to 2000 N·m",
        usual="1 to 400 N·m",
        when=("known", TORQUE),
        hint="Used where the torque is given.",
        example="22 N·m",
    )
    wanted: Number = given(
        "Preload wanted",
        "F_g",
        KN,
        hard="0.05 to 1000 kN",
        usual="0.5 to 300 kN",
        when=("known", PRELOAD),
        hint="Used where the preload is given.",
        example="13 kN",
    )
    thread: str = choice("Thread", sizes.SIZES, must=True, example="M10x1.5")
    strength: str = choice(
        "Class of the bolt or stud",
        {id: words for id, (words, _) in CLASSES.items()},
        must=True,
        example="8.8",
    )
    clamped: str = clamps()
    thread_friction: Number = given(
        "Friction in the thread",
        "µ_G",
        FRICTION,
        hard="0.03 to 0.5",
        usual="0.06 to 0.25",
        assumed=("0.12", "oiled; common practice, no source"),
        hint="Oiled about 0.12, dry 0.14 to 0.24.",
    )
    head_friction: Number = given(
        "Friction under nut or head",
        "µ_K",
        FRICTION,
        hard="0.03 to 0.5",
        usual="0.06 to 0.25",
        assumed=("0.12", "oiled; common practice, no source"),
    )
    hot: Number = hot_over_cold()
    hot_force: Number | None = known_hot()
    needed: Number | None = given(
        "Preload that the joint needs, least", "F_n", KN, hard="0.05 to 1000 kN", fold=True
    )
    nut_factor: Number | None = given(
        "Nut factor, instead of friction",
        "K",
        FRICTION,
        hard="0.08 to 0.35",
        usual="0.1 to 0.3",
        fold=True,
        hint=(
            "Torque over preload times nominal diameter; taken as the same friction in thread and under the"
            " nut."
        ),
    )
    bearing: Number | None = measured(
        "Mean diameter that nut or head rubs on",
        "D_b",
        SMALL,
        tool="a calliper: half of outside plus hole",
        hard="2 to 80 mm",
        fold=True,
        hint="Left empty, 1.3 diameters, as of a hexagon.",
    )
    yields: Number | None = given(
        "Yield stress, instead of the class",
        "R_g",
        MPA,
        hard="50 to 2500 MPa",
        usual="200 to 1400 MPa",
        fold=True,
    )
    spread: Number = given(
        "Friction may be off by",
        "w",
        form(RATIO, 0, "%", "%"),
        hard="0 to 60 %",
        usual="10 to 40 %",
        fold=True,
        assumed=("25 %", "common practice, no source"),
    )


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
    """Preload from torque by ISO 16047, stress as VDI 2230 counts it: pull and twist together, at the end of tightening.

    Friction is what decides, and nobody knows it to better than a quarter: the band is shown. Elastic up to the yield that the
    class promises; beyond, the preload shown is more than there is. Judged as it is tightened, and hot with half the twist left, both at
    the slippery end. Settling is not in it.
    """
    size = THREADS[i.thread]
    P, d = sizes.pitch(size), sizes.nominal(size)
    d_2 = sizes.known("d_2", "Basic pitch diameter", size.pitch_diameter, sizes.standard(size))
    area = constant("A_s", "Stress area", form(AREA, 2), stress_area(size), sources.STRESS_AREA)
    d_s = step("d_s", "Diameter of that area", SIZE, sqrt(4 * area / PI), sources.STRESS_AREA)
    rub = step(
        "D_K",
        "Mean diameter under nut or head",
        SMALL,
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
    if i.nut_factor is None:
        mu_g, mu_k = i.thread_friction, i.head_friction
    else:
        mu_g = mu_k = step(
            "µ",
            "Friction that the nut factor means",
            FRICTION,
            bolt.friction_of(i.nut_factor, d, P, d_2, rub),
            sources.ISO_16047,
        )
        if mu_g <= 0:
            raise impossible(
                "nut_factor",
                "is {k}, less than the slope of the thread alone takes; give more",
                k=i.nut_factor,
            )
    base = CLASSES[i.strength][1] * 1e6
    R = (
        constant(
            "R_p",
            "Yield stress",
            MPA,
            THICK_8_8 if i.strength == "8.8" and size.d > 0.016 + 1e-9 else base,
            sources.BOLT_CLASSES,
        )
        if i.yields is None
        else i.yields
    )

    def per_force(slip=1.0, tag="", words=""):
        thread_lever = step(
            f"a{tag}",
            f"Torque in the thread over preload{words}",
            SIZE,
            bolt.thread_lever(P, d_2, mu_g * slip),
            sources.ISO_16047,
        )
        return thread_lever, step(
            f"b{tag}",
            f"Torque over preload{words}",
            SIZE,
            thread_lever + rub / 2 * (mu_k * slip),
            sources.ISO_16047,
        )

    (thread_lever, lever), (_, rough), (lever_g_high, slippery) = (
        per_force(),
        per_force(1 + i.spread, "_r", ", rough end"),
        per_force(1 - i.spread, "_s", ", slippery end"),
    )
    if i.known == TORQUE:
        T = Out.torque(i.torque)
        F = Out.preload(T / lever, sources.ISO_16047)
    else:
        F = Out.preload(i.wanted)
        T = Out.torque(F * lever, sources.ISO_16047)
    low, high = Out.low(T / rough, sources.ISO_16047), Out.high(T / slippery, sources.ISO_16047)
    twist = step("κ", "Shear over tension", FRICTION, bolt.twist(d_s, thread_lever), sources.VDI_2230)
    twist_high = step(
        "κ_s", "Shear over tension, slippery end", FRICTION, bolt.twist(d_s, lever_g_high), sources.VDI_2230
    )
    stress = Out.stress(bolt.together(F / area, twist), sources.VDI_2230)
    hottest = Out.hot(hot_preload(F, i.clamped, i.hot, i.hot_force, high), sources.PRACTICE)
    tightening = step(
        "σ_s",
        "Stress at the slippery end while it is tightened",
        MPA,
        bolt.together(high / area, twist_high),
        sources.VDI_2230,
    )
    running = step(
        "σ_h",
        "Stress at the slippery end hot: half the twist is left",
        MPA,
        sqrt((hottest / area) ** 2 + 3 * (twist_high / 2 * (high / area)) ** 2),
        sources.VDI_2230,
    )
    used, used_high = Out.used(stress / R), Out.used_high(greatest(tightening, running) / R, sources.VDI_2230)
    most = Out.most(TARGET * R * area / bolt.together(1, twist), sources.VDI_2230)
    torque_most = Out.torque_most(most * lever, sources.ISO_16047)

    def knm(value):
        return constant("", "", KN, value)

    as_set = _safe(float(R), float(area), d_s, lever_g_high, slippery)
    safe = at_most(
        min(
            as_set,
            _safe_hot(
                float(R),
                float(area),
                float(twist_high),
                float(slippery),
                float(T),
                float(hottest - high),
                i.hot_force is None,
            ),
        ),
        NM,
    )
    where = "hot and slippery" if running > tightening else "when slippery"
    if past(used_high, 1):
        verdict = (
            "fail",
            say("May yield: {u} of yield " + where, u=used_high),
            say(
                "Do not use that torque. At most {t} keeps even a slippery one at 90 %; a stronger class, or"
                " the maker's own torque and state of the thread, may allow more.",
                t=safe,
            ),
        )
    elif i.needed is not None and low < i.needed:
        enough = float(i.needed) * float(rough)
        verdict = (
            "fail",
            say("Too slack: {f} when rough", f=low),
            say(
                (
                    "{n} is needed. Clean and oil the thread so that it slips as told, then {t} makes it even"
                    " at the rough end."
                    if enough <= float(safe)
                    else (
                        "{n} is needed, and no torque gives it safely: a rough one takes {t}, and a slippery"
                        " one bears no more than {safe}. It takes a larger or stronger bolt, or friction that"
                        " is better known."
                    )
                ),
                n=i.needed,
                t=at_least(enough, NM),
                safe=safe,
            ),
        )
    elif past(used_high, TARGET):
        verdict = (
            "attention",
            say("Near yield: {u} " + where, u=used_high),
            say(
                "It holds at {t}, with nothing to spare. Tighten it in steps with a wrench that was checked,"
                " and do not oil what the maker wants dry.",
                t=T,
            ),
        )
    else:
        headline = (
            say("Preload {f}, {u} of yield at most", f=F, u=used_high)
            if i.known == TORQUE
            else say("Torque {t}: {u} of yield at most", t=T, u=used_high)
        )
        verdict = (
            "pass",
            headline,
            say(
                "Expect {low} to {high}"
                + (", and up to {hot} hot" if hottest > high else "")
                + ". Clean thread and face, oil as the maker says, tighten in two or three steps.",
                low=low,
                high=high,
                hot=hottest,
            ),
        )
    states = []
    for words, slick, stiff in STATES:
        F_most, F_least = (
            float(T) / float(bolt.lever(size.P, size.pitch_diameter, float(rub), mu, mu))
            for mu in (slick, stiff)
        )
        states.append(
            (
                words,
                f"{slick:.2f} to {stiff:.2f}",
                say("{a} to {b}", a=knm(F_least), b=knm(F_most)),
                constant("", "", SHARE, float(_share(F_most, slick, size, float(area), float(R)))),
            )
        )
    return answer(
        F,
        T,
        low,
        high,
        hottest,
        stress,
        used,
        used_high,
        most,
        torque_most,
        Out.nut_factor(lever / d),
        Out.lost(1 - P / (2 * PI) / lever, sources.ISO_16047),
        verdict=verdict,
        limits=(
            Limit("the stress when slippery", used_high, high=1),
            Limit("the stress when slippery", used_high, high=TARGET, level="attention"),
            *((Limit("the preload when rough", low, low=i.needed),) if i.needed is not None else ()),
        ),
        remarks=(
            note("Oil on a thread whose torque was given dry adds about half to the preload: see the table."),
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
                    "Nut factors are told for one bolt, one finish and one oil: they move by a quarter and"
                    " more."
                )
                if i.nut_factor is not None
                else None
            ),
            (
                warning(
                    "Torque under {t} can hardly be set with a wrench: use a screwdriver with a scale.",
                    t=constant("", "", NM, 2.0),
                )
                if float(T) < 2
                else None
            ),
        ),
        tables=(
            Table(
                "The same torque in other states",
                ("Thread and face", "Friction", "Preload", "Share of yield, at most"),
                tuple(states),
                tuple(
                    "fail" if float(row[3]) > 1 else "attention" if float(row[3]) > TARGET else "pass"
                    for row in states
                ),
            ),
        ),
        figures=(plot(float(T), F, low, high, float(lever), float(rough), float(slippery), float(most), T),),
    )


def _safe(R, area, d_s, lever_g, slippery) -> float:
    """Torque at which a slippery bolt stands at the target."""
    return (
        TARGET * R * area / float(bolt.together(1, bolt.twist(float(d_s), float(lever_g)))) * float(slippery)
    )


def _safe_hot(R, area, twist, slippery, T, added, grows) -> float:
    """The same once it is hot, half the twist left. What heat adds grows with the torque where it is counted by a factor (`grows`)."""
    q, most = 3 / 4 * twist**2, TARGET * R * area
    if grows:
        share = added / T * slippery  # of the preload at the slippery end
        return most / sqrt((1 + share) ** 2 + q) * slippery
    inside = added**2 - (1 + q) * (added**2 - most**2)
    return max(0.0, (sqrt(max(inside, 0.0)) - added) / (1 + q)) * slippery


def _share(force, mu, size, area, R) -> float:
    return (
        bolt.together(
            force / area,
            bolt.twist((4 * area / PI) ** 0.5, bolt.thread_lever(size.P, size.pitch_diameter, mu)),
        )
        / R
    )


def plot(at, preload, low, high, lever, rough, slippery, most, torque) -> Plot:
    """Preload over torque, with the band that friction leaves open."""
    end = min(max(1.3 * at, 1.15 * most * slippery), 4 * at)

    def line(per):
        return ((0.0, 0.0), (end, end / per))

    return Plot(
        "Preload over torque",
        say("{T} makes {F}, between {l} and {h} as friction falls.", T=torque, F=preload, l=low, h=high),
        Axis("Torque", NM),
        Axis("Preload", KN),
        (
            Series("", line(lever)),
            Series("rough", line(rough), "dashed"),
            Series("slippery", line(slippery), "dashed"),
            Series("90 % of yield", ((0.0, most), (end, most)), "limit"),
        ),
        ((at, float(preload), "yours"),),
    )
