"""Valve springs, from two loads read on a tester or from their sizes: loads as fitted, coil bind, stress, surge, shims, spread."""

import math
from typing import NamedTuple

from calc.core.conformance import past
from calc.core.drawing import Area, Axis, Dimension, Drawing, Label, Line, Plot, Series, box, coils
from calc.core.kinds import (
    DENSITY,
    FORCE,
    FREQUENCY,
    LENGTH,
    MASS,
    MODULUS,
    RATIO,
    ROTATION,
    STIFFNESS,
    STRESS,
)
from calc.core.result import Table, impossible, note, say, warning
from calc.core.working import Number, constant, form, greatest, step
from calc.declare.calculator import (
    Answer,
    Inputs,
    Limit,
    Output,
    Outputs,
    Rows,
    answer,
    calculator,
    choice,
    column,
    given,
    grid,
    limit,
    measured,
)
from calc.formulas import spring
from calc.reference import cautions, sources
from calc.reference.materials import MATERIALS
from calc.stations.heads import VALVES

LOAD, SIZE, RATE, MPA, TURNS, SHARE = (
    form(FORCE, 0),
    form(LENGTH, 2),
    form(STIFFNESS, 2),
    form(STRESS, 0),
    form(RATIO, 2),
    form(RATIO, 0, "%", "%"),
)
HERTZ, SPEED = form(FREQUENCY, 0), form(ROTATION, 0)
LOADS, SIZES = "loads", "sizes"
GROUND = "ground"
LEAST_INDEX, MOST_INDEX = (
    3,
    20,
)  # tighter coils crack in winding, wider ones tangle and buckle (EN 13906-1 has 4 to 20, from memory)
SOLID_SHARE = 0.56  # of the tensile strength may be the stress, without a factor for curvature, when pressed solid: EN 13906-1, from memory
UNLIKE = 0.1  # rate by sizes and rate by loads further apart than this are not of one spring; common practice, no source
ONE = constant("", "", SIZE, 1e-3)


class Out(Outputs):
    seat_load = Output("Seat load, weakest", "F_s", LOAD, main=True)
    open_load = Output("Load at full lift, weakest", "F_o", LOAD, main=True)
    bind_margin = Output("Room to coil bind", "m", SIZE, main=True)
    spread = Output("Seat loads, highest less lowest", "ΔF", LOAD)
    rate = Output("Rate, weakest spring", "k", RATE)
    rate_by_sizes = Output("Rate that wire and turns give", "k_d", RATE)
    free_length = Output("Free length, weakest spring, by its line", "L_0", SIZE)
    solid_length = Output("Length with all coils together", "L_c", SIZE)
    stress = Output("Shear stress at full lift, strongest spring, Wahl", "τ_o", MPA)
    stress_solid = Output("Shear stress pressed solid, strongest spring, Wahl", "τ_c", MPA)
    endurance = Output("Share of an endless life's stress used", "U", SHARE)
    frequency = Output("Natural frequency", "f", HERTZ)
    order = Output("Harmonic of the camshaft that meets it at top speed", "j", form(RATIO, 1))
    surge_speed = Output("Engine speed at which the harmonic wanted meets it", "n_j", SPEED)
    shim_wanted = Output("Shims more, for the seat load wanted", "t_w", SIZE)
    shim_most = Output("Shims more, that coil bind leaves room for", "t_m", SIZE)


class Spring(NamedTuple):
    """One spring's straight line, and its loads as fitted."""

    name: str
    load: Number  # at the first height
    rate: Number
    seat: Number
    open: Number


class In(Inputs):
    method: str = choice(
        "Work from",
        {LOADS: "two loads read on a tester", SIZES: "wire, coil and turns"},
        hint="For sizes, open the fields that rarely change.",
        default=LOADS,
    )
    loads: Rows = grid(
        "Loads read",
        rows=VALVES,
        columns=(
            column(
                "At the first height",
                "F_1",
                LOAD,
                hard="1 to 5000 N",
                usual="80 to 1500 N",
                feature="spring.seat_load",
            ),
            column(
                "At the second height",
                "F_2",
                LOAD,
                hard="1 to 9000 N",
                usual="150 to 3000 N",
                feature="spring.open_load",
            ),
        ),
        least=1,
        tool="a spring tester",
        when=("method", LOADS),
        hint="At the two heights of the maker's sheet, below. A spring left empty is not judged.",
        example="250; 650 | 248; 647 | 253; 653 | 249; 649 | 251; 651 | 247; 646 | 252; 654 | 250; 650",
    )
    fitted_height: Number = measured(
        "Fitted height, valve shut",
        "h",
        SIZE,
        tool="a telescopic gauge between spring bed and retainer",
        hard="10 to 100 mm",
        usual="25 to 60 mm",
        feature="spring.installed_height",
        stage="",
        hint=(
            "The tallest of the head for the loads, then the shortest for the room to coil bind; without the"
            " shims of the next field."
        ),
    )
    shim: Number = given(
        "Shims to be added under the spring",
        "t",
        SIZE,
        hard="0 to 5 mm",
        usual="0 to 1.5 mm",
        assumed=("0 mm", "no shims"),
    )
    lift: Number = measured(
        "Valve lift",
        "s",
        SIZE,
        tool="a dial gauge on the retainer",
        hard="1 to 25 mm",
        usual="5 to 15 mm",
        feature="valve.lift",
        stage="",
    )
    wire: Number = measured(
        "Wire", "d", SIZE, tool="a micrometer", hard="1 to 10 mm", usual="2 to 6 mm", feature="spring.wire"
    )
    total_turns: Number = given(
        "All turns",
        "n_t",
        TURNS,
        hard="2.5 to 25",
        usual="4 to 12",
        feature="spring.total_turns",
        must=True,
        hint="Counted on the spring, from tip to tip of the wire.",
    )
    ends: str = choice(
        "Ends of the spring",
        {GROUND: "closed and ground flat", "wound": "closed, not ground"},
        assumed=(GROUND, "ground flat, as those of valve springs are"),
        hint="Ends that are not ground stand one and a half turns more in the way.",
    )
    mean_diameter: Number = measured(
        "Mean coil diameter",
        "D",
        SIZE,
        tool="a calliper, outside less one wire",
        hard="5 to 100 mm",
        usual="15 to 45 mm",
        feature="spring.mean_diameter",
        fold=True,
    )
    active_turns: Number = given(
        "Turns that move",
        "n",
        TURNS,
        hard="1 to 24",
        usual="2.5 to 10",
        feature="spring.active_turns",
        fold=True,
        hint="All but those that lie closed at both ends: two fewer with closed and ground ends.",
    )
    free_length: Number = measured(
        "Free length",
        "L_0,read",
        SIZE,
        tool="a calliper",
        hard="11 to 200 mm",
        usual="30 to 80 mm",
        feature="spring.free_length",
        fold=True,
        when=("method", SIZES),
    )
    height_1: Number = given(
        "First height of the readings",
        "h_1",
        SIZE,
        hard="10 to 100 mm",
        usual="25 to 60 mm",
        feature="spring.installed_height",
        fold=True,
        hint=(
            "The maker's, valve shut. The least seat load is judged here first: a shim hides a spring that"
            " has set."
        ),
    )
    height_2: Number = given(
        "Second height of the readings",
        "h_2",
        SIZE,
        hard="5 to 95 mm",
        usual="15 to 50 mm",
        feature="spring.open_height",
        fold=True,
    )
    least_seat: Number = limit(
        "Seat load, least",
        "F_s,min",
        LOAD,
        feature="spring.seat_load",
        which="wear",
        hard="0 to 5000 N",
        usual="80 to 1500 N",
    )
    wanted_seat: Number = given(
        "Seat load wanted",
        "F_s,w",
        LOAD,
        hard="1 to 5000 N",
        usual="80 to 1500 N",
        feature="spring.seat_load",
        fold=True,
    )
    most_seat: Number = limit(
        "Seat load, most",
        "F_s,max",
        LOAD,
        feature="spring.most_seat_load",
        which="nominal",
        hard="1 to 5000 N",
        usual="80 to 1500 N",
        hint="More wears cam and lifters.",
    )
    least_open: Number = limit(
        "Load at full lift, least",
        "F_o,min",
        LOAD,
        feature="spring.open_load",
        which="wear",
        hard="0 to 9000 N",
        usual="150 to 3000 N",
    )
    most_spread: Number = given(
        "Seat loads may differ by",
        "ΔF_max",
        LOAD,
        hard="0 to 2000 N",
        usual="5 to 100 N",
        fold=True,
        assumed=("25 N", "a tenth of the seat load; common practice, no source"),
    )
    least_margin: Number = given(
        "Room to coil bind wanted, least",
        "m_min",
        SIZE,
        hard="0 to 10 mm",
        usual="0.5 to 3 mm",
        fold=True,
        assumed=("1 mm", "common practice, no source"),
        hint="At full lift.",
    )
    modulus: Number = given(
        "Shear modulus of the wire",
        "G",
        form(MODULUS, 1),
        hard="20 to 120 GPa",
        usual="77 to 83 GPa",
        fold=True,
        assumed=("79.3 GPa", "steel wire"),
        hint="Steel wire 78.5 to 81.5 GPa.",
    )
    tensile: Number = given(
        "Tensile strength of the wire",
        "R_m",
        MPA,
        hard="900 to 3000 MPa",
        usual="1500 to 2200 MPa",
        fold=True,
        assumed=("1800 MPa", "oil-tempered wire of this thickness, from memory"),
    )
    peened: str = choice(
        "Surface of the wire",
        {"plain": "not peened, or not known", "peened": "shot-peened, as its maker says"},
        fold=True,
        assumed=("plain", "not known to be shot-peened"),
        hint="A matt look proves nothing: rust and blasting look so too. An old spring counts as not peened.",
    )
    top_speed: Number = given(
        "Top engine speed",
        "n_max",
        SPEED,
        hard="500 1/ to 12000 1/min",
        usual="2500 1/ to 7000 1/min",
        feature="crank.top_speed",
        fold=True,
        hint="The camshaft turns half as fast.",
    )
    least_order: Number = given(
        "Harmonic that may meet the spring, lowest",
        "j_min",
        form(RATIO, 1),
        hard="1 to 40",
        usual="9 to 20",
        fold=True,
        assumed=(
            "13",
            "natural frequency at least 13 times the camshaft's; spring makers' rule, from memory",
        ),
    )


@calculator(
    "valve-spring",
    "Valve springs",
    In,
    Out,
    purpose="Do these springs hold the valves, with room left to coil bind, and what does a shim do?",
    finds=(
        "valve spring pressure",
        "spring tester",
        "spring rate",
        "coil bind",
        "installed height",
        "fitted height",
        "spring surge",
        "spring shim",
        "weak spring",
    ),
    sources=(
        sources.SPRING,
        sources.WAHL,
        sources.ENDURANCE,
        sources.SURGE,
        sources.PRACTICE,
        sources.INVENTED,
    ),
    cautions=(cautions.SPRING, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def valve_spring(i: In) -> Answer:
    """Cylindrical spring of constant pitch, load along the axis, ends closed.

    From loads: a straight line through the two readings of each spring. From sizes: EN 13906-1. Bind, stress and surge take the
    wire's sizes both ways. The weakest spring is judged for holding, the strongest for stress.
    """
    index = _index(i.wire, i.mean_diameter)
    if i.active_turns > i.total_turns:
        raise impossible(
            "active_turns",
            "is {n}, more than all turns, {all}; give less",
            n=i.active_turns,
            all=i.total_turns,
        )
    solid = Out.solid_length(spring.solid_length(i.wire, i.total_turns, i.ends == GROUND), sources.SPRING)
    rate_by_sizes = Out.rate_by_sizes(
        spring.rate(i.modulus, i.wire, i.mean_diameter, i.active_turns), sources.SPRING
    )
    if i.height_2 >= i.height_1:
        raise impossible(
            "height_2", "is {b}, not less than the first height, {a}; give less", a=i.height_1, b=i.height_2
        )
    if i.method == LOADS and i.height_2 < solid:
        raise impossible(
            "height_2",
            "is {h}, and {n} turns of {d} stand solid at {solid}; give more, or other turns or wire",
            h=i.height_2,
            n=i.total_turns,
            d=i.wire,
            solid=solid,
        )
    fitted = step("h_s", "Height of the spring with its shims, valve shut", SIZE, i.fitted_height - i.shim)
    opened = step("h_o", "Height of the spring at full lift", SIZE, fitted - i.lift)

    def line(name, short, load, rate):
        seat, full = (
            step(
                f"F_{letter},{short}",
                f"Load of spring {name}, {when}",
                LOAD,
                spring.load_at(height, load, i.height_1, rate),
            )
            for letter, when, height in (("s", "valve shut", fitted), ("o", "full lift", opened))
        )
        return Spring(name, load, rate, seat, full)

    if i.method == SIZES:
        if i.free_length <= i.height_1:
            raise impossible(
                "free_length",
                "is {L}, not longer than the first height, {h}, so that it would bear nothing there; give"
                " more",
                L=i.free_length,
                h=i.height_1,
            )
        springs = [
            line(
                "by its sizes",
                "d",
                step(
                    "F_1",
                    "Load at the first height",
                    LOAD,
                    rate_by_sizes * (i.free_length - i.height_1),
                    sources.SPRING,
                ),
                rate_by_sizes,
            )
        ]
    else:
        springs = [
            line(name, _short(name), row[0], _rate_read(name, r, row, i.height_1, i.height_2))
            for r, (name, row) in enumerate(zip(VALVES, i.loads))
            if row
        ]
    worn = min(springs, key=lambda s: float(s.load))
    weak, soft = (min(springs, key=lambda s: float(getattr(s, what))) for what in ("seat", "open"))
    stiff, strong = (max(springs, key=lambda s: float(getattr(s, what))) for what in ("seat", "open"))
    rate = Out.rate(weak.rate)
    free = Out.free_length(spring.free_length(weak.load, i.height_1, weak.rate))
    if fitted >= free:
        raise impossible(
            "fitted_height",
            "is {h}, and with its shims not less than the length of spring {name} without load, {L}; give"
            " less",
            h=i.fitted_height,
            name=weak.name,
            L=free,
        )
    seat, opens = Out.seat_load(weak.seat), Out.open_load(soft.open)
    margin = Out.bind_margin(opened - solid, sources.SPRING)
    spread = Out.spread(stiff.seat - weak.seat)

    factor = step("K_w", "Wahl's factor", form(RATIO, 4), spring.wahl(index), sources.WAHL)
    shut_stress = step(
        "τ_s",
        "Shear stress, valve shut, strongest spring, Wahl",
        MPA,
        spring.shear_stress(strong.seat, i.wire, i.mean_diameter, factor),
        sources.WAHL,
    )
    stress = Out.stress(spring.shear_stress(strong.open, i.wire, i.mean_diameter, factor), sources.WAHL)
    solid_load = step(
        "F_c",
        "Load pressed solid, strongest spring",
        LOAD,
        spring.load_at(solid, strong.load, i.height_1, strong.rate),
    )
    stress_solid = Out.stress_solid(
        spring.shear_stress(solid_load, i.wire, i.mean_diameter, factor), sources.WAHL
    )
    plain_solid = constant("", "", MPA, float(stress_solid / factor))
    borne = [
        constant(f"τ_{letter}", f"{words} of the wire", MPA, value, sources.ENDURANCE)
        for letter, words, value in zip(
            "am",
            ("Endurance amplitude", "Its mean stress"),
            spring.PEENED if i.peened == "peened" else spring.UNPEENED,
        )
    ]
    endurance = Out.endurance(
        spring.endurance_share(
            (stress - shut_stress) / 2, (stress + shut_stress) / 2, *borne, spring.SHEAR_STRENGTH * i.tensile
        ),
        sources.ENDURANCE,
    )

    density = constant(
        "ρ", "Density of steel", form(DENSITY, 0), MATERIALS["spring-steel"].density, sources.MATERIALS
    )
    mass = step(
        "m_n",
        "Mass of the turns that move",
        form(MASS, 1),
        spring.active_mass(i.wire, i.mean_diameter, i.active_turns, density),
    )
    frequency = Out.frequency(spring.surge_frequency(weak.rate, mass), sources.SURGE)
    order = Out.order(frequency / (i.top_speed / 2))
    surge_speed = Out.surge_speed(2 * frequency / i.least_order)
    shim_wanted = Out.shim_wanted(greatest((i.wanted_seat - weak.seat) / weak.rate, 0.0))
    shim_most = Out.shim_most(greatest(margin - i.least_margin, 0.0))

    spare = constant("", "", SIZE, abs(float(margin)))
    if margin <= 0:
        verdict = (
            "fail",
            say("Coil bind: {m} short at full lift", m=spare),
            (
                "Do not run it: the valve gear breaks. Take out shims, look whether the spring belongs here,"
                " measure the lift."
            ),
        )
    elif past(i.least_seat, worn.load):
        verdict = (
            "fail",
            say("Weak: {F} at {h}, spring {name}", F=worn.load, h=i.height_1, name=worn.name),
            say(
                "There {least} are wanted. Replace it: a shim only hides that it has set.", least=i.least_seat
            ),
        )
    elif past(i.least_seat, weak.seat):
        verdict = (
            "fail",
            say("Seat load low as fitted: {F}", F=seat),
            (
                say(
                    "The spring is good but stands too tall. Shim it by {t}, and measure the height again.",
                    t=shim_wanted,
                )
                if shim_wanted <= shim_most
                else say(
                    "The spring is good but stands too tall, and coil bind leaves room for {t} of shims only."
                    " The valve lies too deep: look at its seat.",
                    t=shim_most,
                )
            ),
        )
    elif past(i.least_open, soft.open):
        verdict = (
            "fail",
            say("Weak at full lift: {F}, spring {name}", F=opens, name=soft.name),
            "Measure lift and fitted height again. If both are right, the spring is too soft: replace it.",
        )
    elif past(i.least_margin, margin):
        verdict = (
            "attention",
            say("Near coil bind: {m} left", m=margin),
            say(
                "{least} were wanted. Take out shims; without any, look whether spring, retainer and lift"
                " belong together.",
                least=i.least_margin,
            ),
        )
    elif endurance > 1:
        verdict = (
            "attention",
            say("Stressed past endless life: {u} used", u=endurance),
            (
                "Such a spring breaks one day. Take less lift or a spring made for this one, and look at old"
                " springs with a magnifier."
            ),
        )
    elif past(stiff.seat, i.most_seat):
        verdict = (
            "attention",
            say(
                "Strong: {F} shut, spring {name}",
                F=constant("", "", LOAD, float(stiff.seat)),
                name=stiff.name,
            ),
            say(
                "More than {most} wears cam and lifters. Take out shims, or change it for one of the set.",
                most=i.most_seat,
            ),
        )
    elif past(spread, i.most_spread):
        verdict = (
            "attention",
            say("Unlike: seat loads {d} apart", d=spread),
            say(
                "Up to {most} is usual. Shim the weak ones as in the table, or change them.",
                most=i.most_spread,
            ),
        )
    elif order < i.least_order:
        verdict = (
            "attention",
            say("May surge: harmonic {j} at top speed", j=order),
            say(
                "From {n} on, a harmonic lower than {least} meets the spring. Keep below it, or fit a spring"
                " with a friction damper or an inner spring.",
                n=surge_speed,
                least=i.least_order,
            ),
        )
    else:
        verdict = (
            "pass",
            say("Hold: {F} shut, {m} to bind", F=seat, m=margin),
            (
                "Fit each to its valve. Measure every fitted height; a valve that lies deeper needs a shim of"
                " as much."
            ),
        )
    return answer(
        seat,
        opens,
        margin,
        spread,
        rate,
        rate_by_sizes,
        free,
        solid,
        stress,
        stress_solid,
        endurance,
        frequency,
        order,
        surge_speed,
        shim_wanted,
        shim_most,
        verdict=verdict,
        limits=(
            Limit("the seat load at the first height", worn.load, low=i.least_seat),
            Limit("the seat load", seat, low=i.least_seat),
            Limit("the load at full lift", opens, low=i.least_open),
            Limit("the room to coil bind", margin, low=0.0),
            Limit("the room to coil bind wanted", margin, low=i.least_margin, level="attention"),
            Limit("the strongest seat load", stiff.seat, high=i.most_seat, level="attention"),
            Limit("the evenness of the loads", spread, high=i.most_spread, level="attention"),
            Limit("the stress", endurance, high=1, level="attention"),
        ),
        remarks=(
            note(
                "All this is at the one height typed. Loads are least at the tallest fitted height of the"
                " head; room to coil bind, stress and the highest load are worst at the shortest: work out"
                " both."
            ),
            note(
                "{one} of shims adds {F} to the weakest spring's load, shut and open, and takes {one} off the"
                " room to coil bind.",
                one=ONE,
                F=constant("", "", LOAD, float(weak.rate) * float(ONE)),
            ),
            *(
                warning(
                    "Spring {name} has {F} at {h}, under the {least} wanted there: replace it too.",
                    name=s.name,
                    F=s.load,
                    h=i.height_1,
                    least=i.least_seat,
                )
                for s in springs
                if past(i.least_seat, s.load) and s is not worn
            ),
            (
                warning(
                    "Wire and turns give {d}, the loads of spring {name} {k}: turns miscounted, outside taken"
                    " for mean diameter, or a coil that lies closed and does not move.",
                    d=rate_by_sizes,
                    name=weak.name,
                    k=rate,
                )
                if abs(float(rate / rate_by_sizes) - 1) > UNLIKE
                else None
            ),
            (
                warning(
                    "Coil is {c} times the wire, outside the usual 4 to 12: look at wire and mean diameter"
                    " again.",
                    c=index,
                )
                if not 4 <= index <= 12
                else None
            ),
            (
                note(
                    "Pressed solid its stress, without Wahl's factor, is {s}, more than 0.56 of the wire's"
                    " strength: never press it solid, not even on the tester.",
                    s=plain_solid,
                )
                if plain_solid > SOLID_SHARE * i.tensile
                else None
            ),
            note("The loads read are not counted.") if i.method == SIZES else None,
            note(
                "A spring wound closer at one end gets stiffer as it closes: two loads give its mean rate"
                " between the two heights, and less above them than shown."
            ),
        ),
        tables=(
            _table(
                springs,
                i.height_1,
                weak,
                i.least_seat,
                i.most_seat,
                i.least_open,
                i.wanted_seat,
                i.most_spread,
                stiff,
            ),
            _harmonics(float(frequency), float(order)),
        ),
        figures=(
            between_plates(
                float(i.wire),
                float(i.mean_diameter),
                float(i.active_turns),
                float(i.total_turns),
                fitted,
                opened,
                i.mean_diameter,
                i.lift,
                seat,
                constant("", "", LOAD, float(weak.open)),
            ),
            load_plot(
                springs,
                weak,
                float(i.height_1),
                float(i.height_2),
                float(solid),
                float(fitted),
                float(opened),
                i.method == LOADS,
            ),
        ),
    )


def _index(wire, mean_diameter):
    """C = D/d, refused where no spring is wound so."""
    index = step("C", "Coil over wire", TURNS, spring.index(wire, mean_diameter))
    if not LEAST_INDEX <= index <= MOST_INDEX:
        ends = [
            constant("", "", SIZE, turn(float(wire) * times * 1e5) / 1e5)
            for turn, times in ((math.ceil, LEAST_INDEX), (math.floor, MOST_INDEX))
        ]
        raise impossible(
            "mean_diameter",
            "is {D}, {c} times the wire of {d}, and springs are wound with 3 to 20; give {low} to {high}, or"
            " another wire",
            D=mean_diameter,
            c=index,
            d=wire,
            low=ends[0],
            high=ends[1],
        )
    return index


def _short(name):
    """3e for 3 exhaust, as the cells of the grid are called."""
    return name[0] + name.split()[1][0]


def _rate_read(name, r, row, height_1, height_2):
    if row[1] <= row[0]:
        raise impossible(
            f"loads.{r + 1}.2",
            "spring {name} has {b} at the second height, not more than {a} at the first, which is taller;"
            " give more",
            name=name,
            a=row[0],
            b=row[1],
        )
    return step(f"k_{_short(name)}", f"Rate of spring {name}", RATE, spring.rate_of(*row, height_1, height_2))


def _table(
    springs, height_1, weak, least_seat, most_seat, least_open, wanted_seat, most_spread, stiff
) -> Table:
    rows, states = [], []
    for s in springs:
        shown = [
            constant("", "", shape, float(x))
            for shape, x in (
                (LOAD, s.seat),
                (LOAD, s.open),
                (SIZE, greatest((wanted_seat - s.seat) / s.rate, 0.0)),
                (RATE, s.rate),
                (SIZE, spring.free_length(s.load, height_1, s.rate)),
            )
        ]
        rows.append((s.name, *shown))
        states.append(
            "fail"
            if past(least_seat, s.load) or past(least_seat, s.seat) or past(least_open, s.open)
            else "attention"
            if past(s.seat, most_seat) or past(stiff.seat - s.seat, most_spread)
            else "pass"
        )
    return Table(
        "Spring by spring, as fitted",
        (
            "Spring",
            "Seat load",
            "At full lift",
            "Shim for the load wanted",
            "Rate",
            "Free length, by its line",
        ),
        tuple(rows),
        tuple(states),
    )


def _harmonics(frequency: float, order: float) -> Table:
    """The highest speeds at which a whole number of waves fits into a turn of the camshaft."""
    first = max(1, math.ceil(order - 1e-9))
    return Table(
        "Speeds at which a harmonic of the cam meets the spring",
        ("Harmonic", "Engine speed"),
        tuple((str(j), constant("", "", SPEED, 2 * frequency / j)) for j in range(first, first + 5)),
    )


def between_plates(wire, mean, active, total, fitted, opened, mean_diameter, lift, seat, load) -> Drawing:
    """The spring in section between its plates, shut and at full lift."""
    plate, wide, apart = 0.8 * wire, mean / 2 + 1.2 * wire, mean + 6 * wire
    shapes = []
    for x, height, force, words in (
        (0.0, float(fitted), seat, "shut"),
        (apart, float(opened), load, "full lift"),
    ):
        shapes += coils(x, 0.0, height, wire, mean, active, total)
        shapes += [Area(box(x - wide, y, x + wide, y + plate), "a") for y in (-plate, height)]
        shapes += [
            Line(((x, -3 * plate), (x, height + 3 * plate)), "centre"),
            Label((x, height + 3.6 * plate), say("{F} " + words, F=force)),
        ]
    edge = apart + wide
    return Drawing(
        "Weakest spring, shut and at full lift",
        say(
            "Section of the spring between its plates: {h} high with {F} shut, {o} high with {G} at full"
            " lift.",
            h=fitted,
            F=seat,
            o=opened,
            G=load,
        ),
        (
            *shapes,
            Dimension((-wide, 0), (-wide, float(fitted)), fitted, 1.2 * wire, "h_s"),
            Dimension((edge, 0), (edge, float(opened)), opened, -1.2 * wire, "h_o"),
            Line(((wide, float(fitted)), (apart, float(fitted))), "thin"),
            Dimension((apart - wide, float(opened)), (apart - wide, float(fitted)), lift, 0.8 * wire, "s"),
            Dimension((-mean / 2, 0), (mean / 2, 0), mean_diameter, -4 * plate, "D"),
        ),
    )


def load_plot(springs, weak, height_1, height_2, solid, fitted, opened, read) -> Plot:
    """Load over height down to coil bind, with both working points."""

    def line(s):
        return tuple(
            (h, float(spring.load_at(h, float(s.load), height_1, float(s.rate))))
            for h in (solid, height_1 + float(s.load / s.rate))
        )

    strong = max(springs, key=lambda s: float(s.open))
    readings = (
        tuple(
            (h, float(spring.load_at(h, float(s.load), height_1, float(s.rate))))
            for s in springs
            for h in (height_1, height_2)
        )
        if read
        else ()
    )
    return Plot(
        "Load over height",
        say(
            "The weakest spring has {F} shut and {G} at full lift; its coils touch at {L}.",
            F=constant("", "", LOAD, float(weak.seat)),
            G=constant("", "", LOAD, float(weak.open)),
            L=constant("", "", SIZE, solid),
        ),
        Axis("Height of the spring", SIZE),
        Axis("Load", LOAD),
        (
            Series("", line(weak)),
            Series("", ((solid, 0.0), (solid, line(strong)[0][1])), "limit"),
            *((Series("", line(strong), "dashed"),) if strong.name != weak.name else ()),
            *((Series("", readings, "points"),) if readings else ()),
        ),
        (
            (fitted, float(weak.seat), "shut"),
            (opened, float(weak.open), "full lift"),
            (*line(weak)[0], "coil bind"),
        ),
    )
