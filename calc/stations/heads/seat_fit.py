"""Grip of a valve-seat ring in its pocket: cold, while the engine warms up, running, and stopped hot, and what of it is lost for good."""

import math
from typing import NamedTuple

from calc.core.advice import at_least, at_most
from calc.core.conformance import past
from calc.core.drawing import Area, Axis, Dimension, Drawing, Line, Plot, Series, box
from calc.core.kinds import FORCE, LENGTH, MODULUS, RATIO, ROUGHNESS, STRESS, TEMPERATURE
from calc.core.result import impossible, note, say, warning
from calc.core.working import constant, form, greatest, least, step
from calc.declare.calculator import (
    Answer,
    Inputs,
    Limit,
    Number,
    Output,
    Outputs,
    Rows,
    answer,
    calculator,
    choice,
    given,
    measured,
    which_valve,
)
from calc.formulas import press_fit as fit
from calc.reference import cautions, sources
from calc.reference.materials import MATERIALS, REFERENCE
from calc.stations.shared.growth import growth, reference_temperature
from calc.stations.shared.own_material import own_grade, own_values

SIZE, SMALL, TEMP, MPA, SHARE = (
    form(LENGTH, 3),
    form(LENGTH, 1),
    form(TEMPERATURE, 0),
    form(STRESS, 1),
    form(RATIO, 0, "%", "%"),
)
RINGS = (
    "sintered-iron",
    "high-chrome-iron",
    "grey-iron",
    "cobalt-alloy",
    "aluminium-bronze",
    "copper-nickel-silicon",
)
HEADS = ("al-si-t6", "al-si-cu-t6", "grey-iron")

THIN = constant("", "", SMALL, 1.5e-3)  # rings are two to six millimetres thick; common practice, no source


class Out(Outputs):
    interference = Output("Interference, cold", "δ", SIZE, main=True)
    interference_hot = Output("Interference left, running", "δ_hot", SIZE, main=True)
    interference_stopped = Output("Interference left, stopped hot", "δ_stop", SIZE, main=True)
    lost = Output("Interference lost for good, by yielding", "δ_lost", SIZE)
    spare = Output("Interference to spare before ring or head gives way", "δ_sp", SIZE)
    pressure = Output("Contact pressure, cold", "p", MPA)
    pressure_hot = Output("Contact pressure, running", "p_hot", MPA)
    ring_hoop = Output("Hoop stress at the ring's bore, cold", "σ_r", form(STRESS, 0))
    head_hoop = Output("Hoop stress at the pocket, cold", "σ_h", form(STRESS, 0))
    ring_used = Output("Ring: share of its first yield, at worst", "U_r", SHARE)
    head_used = Output("Head: share of its first yield, at worst", "U_h", SHARE)
    hold = Output("Force that holds the ring, cold", "F", form(FORCE, 0))
    hold_hot = Output("Force that holds the ring, running", "F_hot", form(FORCE, 0))
    ring_wanted = Output("Ring outside that holds in this pocket, least", "D_want", SIZE)
    ring_most = Output("Ring outside before anything yields, most", "D_most", SIZE)


class Case(NamedTuple):
    """Ring and head at their temperatures: interference before anything yielded, that at which something begins to and at which it gives
    way, the shares of first yield, and what is lost for good."""

    when: str
    bears: object
    begins: object
    gives_way: object
    ring_used: object
    head_used: object
    lost: object
    give: object  # interference per diameter that a unit of pressure takes up
    weaker: str  # the part that gives way


class In(Inputs):
    valve: str = which_valve()
    pocket_bore: Number = measured(
        "Pocket bore",
        "D_p",
        SIZE,
        tool="a bore gauge set in a ring",
        hard="10 to 90 mm",
        usual="25 to 60 mm",
        feature="head.seat_pocket_{valve}",
        of="head_material",
        stage="finished",
    )
    ring_outside: Number = measured(
        "Ring outside",
        "D_r",
        SIZE,
        tool="a micrometer",
        hard="10 to 90 mm",
        usual="25 to 60 mm",
        feature="head.seat_ring_outside_{valve}",
        of="ring_material",
        stage="finished",
    )
    ring_bore: Number = measured(
        "Ring bore",
        "d_r",
        form(LENGTH, 2),
        tool="a calliper or bore gauge",
        hard="4 to 88 mm",
        feature="head.seat_ring_bore_{valve}",
        stage="finished",
        fold=True,
    )
    depth: Number = measured(
        "Depth of the fit",
        "h",
        form(LENGTH, 2),
        tool="a depth gauge",
        hard="1 to 30 mm",
        usual="4 to 12 mm",
        feature="head.seat_pocket_depth",
        stage="finished",
        fold=True,
        hint="The length on which ring and pocket touch, without the lead.",
    )
    head_wall: Number = measured(
        "Least wall round the pocket",
        "w",
        SMALL,
        tool="a calliper, at the thinnest place",
        hard="1 to 100 mm",
        usual="3 to 25 mm",
        feature="head.seat_pocket_wall",
        stage="",
        fold=True,
        hint="Towards the other seat, the plug or a stud.",
    )
    ring_material: str = choice(
        "Ring, material",
        {id: MATERIALS[id].name for id in RINGS},
        fold=True,
        feature="head.seat_ring_alloy_{valve}",
        example="sintered-iron",
    )
    head_material: str = choice(
        "Head, material",
        {id: MATERIALS[id].name for id in HEADS},
        fold=True,
        feature="head.alloy",
        example="al-si-cu-t6",
    )
    own: Rows = own_values("ring", "head")
    ring_temperature: Number = given(
        "Ring temperature, running",
        "T_r",
        TEMP,
        hard="-60 to 600 °C",
        usual="80 to 450 °C",
        fold=True,
        feature="head.seat_ring_temperature_{valve}",
        hint=(
            "Intake rings run near 200 to 250 °C, exhaust rings 300 °C and more; common practice, no source."
        ),
    )
    head_temperature: Number = given(
        "Head at the pocket, running",
        "T_h",
        TEMP,
        hard="-60 to 400 °C",
        usual="80 to 230 °C",
        fold=True,
        feature="head.pocket_temperature_{valve}",
        hint="At an exhaust pocket up to 200 to 230 °C, from memory.",
    )
    ring_warming: Number = given(
        "Ring temperature, warming up",
        "T_r,w",
        TEMP,
        hard="-60 to 600 °C",
        usual="80 to 350 °C",
        fold=True,
        feature="head.seat_ring_warming_{valve}",
        hint="The hottest while the head is still cool, after a cold start into full load.",
    )
    head_warming: Number = given(
        "Head at the pocket, warming up",
        "T_h,w",
        TEMP,
        hard="-60 to 400 °C",
        usual="20 to 150 °C",
        fold=True,
        feature="head.pocket_warming",
    )
    ring_roughness: Number = given(
        "Roughness of the ring, Rz",
        "Rz_r",
        form(ROUGHNESS, 1),
        hard="0 to 40 µm",
        usual="0 to 16 µm",
        fold=True,
        assumed=("4 µm", "ground ring; common practice, no source"),
    )
    pocket_roughness: Number = given(
        "Roughness of the pocket, Rz",
        "Rz_p",
        form(ROUGHNESS, 1),
        hard="0 to 40 µm",
        usual="0 to 16 µm",
        fold=True,
        assumed=("6.3 µm", "pocket bored with a sharp tool; common practice, no source"),
    )
    friction: Number = given(
        "Friction of ring on head",
        "µ",
        form(RATIO, 2),
        hard="0.02 to 0.6",
        usual="0.08 to 0.25",
        fold=True,
        assumed=("0.12", "dry iron in aluminium; common practice, no source"),
        hint="Dry iron in aluminium about 0.1 to 0.2.",
    )
    least_grip: Number = given(
        "Interference wanted, least",
        "δ_min",
        SIZE,
        hard="0 to 0.3 mm",
        usual="0.005 to 0.06 mm",
        fold=True,
        assumed=("0.015 mm", "common practice, no source"),
        hint="Cold, warming up, running, and stopped hot, after what yielding has taken.",
    )


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
    """Grip of a seat ring, judged as two thick cylinders (Lamé, plane stress), the head taken as a ring with the least wall.

    One temperature in each part. Cold; warming up, when a hot ring in a cool head presses hardest; running; and just after stopping,
    when the ring has come down to the head's heat while the head is still hot: then an iron ring holds least. What yields is followed
    (von Mises, no hardening): the most that one of them takes of the interference is gone in all of them.
    """
    ring, head = (own_grade(MATERIALS[id], row) for id, row in zip((i.ring_material, i.head_material), i.own))
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
    reference = reference_temperature()
    outside = step(
        "D_o", "Outside of the head's ring round the pocket", SIZE, i.pocket_bore + 2 * i.head_wall
    )
    a = step(
        "a", "Shape of the ring", form(RATIO, 3), fit.inner_shape(i.ring_bore, i.pocket_bore), sources.LAME
    )
    b = step(
        "b",
        "Shape of the head round it",
        form(RATIO, 3),
        fit.outer_shape(i.pocket_bore, outside),
        sources.LAME,
    )
    grip = Out.interference(i.ring_outside - i.pocket_bore)
    loss = step(
        "δ_z",
        "Interference lost to roughness",
        SIZE,
        fit.roughness_loss(i.ring_roughness, i.pocket_roughness),
        sources.ROUGHNESS_LOSS,
    )
    bearing = step("δ_e", "Interference that bears", SIZE, grip - loss)

    def case(tag, when, temperatures, fields) -> Case:
        """What the joint is like with ring and head at those temperatures."""
        parts = tuple(zip((ring, head), "rh", ("ring", "head"), temperatures, fields))
        bears = (
            bearing
            if tag == "cold"
            else step(
                f"δ_{tag}",
                f"Interference {when}, if nothing yielded",
                SIZE,
                fit.interference_at(
                    bearing,
                    i.pocket_bore,
                    *(
                        growth(part, t, reference, f"{letter},{tag}", f"{words} {when}", field)
                        for part, letter, words, t, field in parts
                    ),
                ),
                sources.THERMAL,
            )
        )
        elastic = [
            constant(
                f"{symbol}_{letter},{tag}", f"{label} of the {words} {when}", shape, value, sources.MATERIALS
            )
            for part, letter, words, t, _ in parts
            for symbol, label, shape, value in (
                ("E", "Stiffness", form(MODULUS, 0), part.modulus_at(t)),
                ("ν", "Poisson's ratio", form(RATIO, 2), part.nu),
            )
        ]
        give = fit.compliance(a, b, *elastic)
        strength = [
            constant(
                f"R_{letter},{tag}",
                f"Yield stress of the {words} {when}",
                form(STRESS, 0),
                value,
                sources.MATERIALS,
            )
            for letter, words, value in (
                ("r", "ring", ring.compressive_yield_at(temperatures[0])),
                ("h", "head", head.yield_at(temperatures[1])),
            )
        ]
        first = (
            step(
                f"p_r,{tag}",
                f"Pressure at which the ring begins to yield {when}",
                MPA,
                fit.inner_yield_pressure(strength[0], i.ring_bore, i.pocket_bore),
                sources.MISES,
            ),
            step(
                f"p_h,{tag}",
                f"Pressure at which the head begins to yield {when}",
                MPA,
                fit.outer_yield_pressure(strength[1], i.pocket_bore, outside),
                sources.MISES,
            ),
        )
        pressed = step(
            f"p_e,{tag}",
            f"Contact pressure {when}, if nothing yielded",
            MPA,
            fit.contact_pressure(bears, i.pocket_bore, give),
            sources.LAME,
        )
        through = {
            "Ring": fit.inner_plastic_pressure(strength[0], i.ring_bore, i.pocket_bore),
            "Head": fit.outer_plastic_pressure(strength[1], i.pocket_bore, outside),
        }
        weaker = min(through, key=through.get)
        taken_up = (
            through[weaker] * float(i.pocket_bore) * float(give)
            + fit.inner_set(through[weaker], i.ring_bore, i.pocket_bore, strength[0], elastic[0])
            + fit.outer_set(through[weaker], i.pocket_bore, outside, strength[1], elastic[2])
        )
        lost = constant("", "", SIZE, 0.0)
        if pressed > least(*first):
            real = constant(
                f"p_y,{tag}",
                f"Contact pressure {when}, counting what yields",
                MPA,
                fit.pressure_past_yield(
                    bears, i.ring_bore, i.pocket_bore, outside, give, *strength, elastic[0], elastic[2]
                ),
                sources.PAST_YIELD,
            )
            lost = step(
                f"δ_l,{tag}",
                f"Interference lost for good {when}",
                SIZE,
                fit.grip_lost(bears, real, i.pocket_bore, give),
                sources.PAST_YIELD,
            )
        return Case(
            when,
            bears,
            step(
                f"δ_y,{tag}",
                f"Interference at which something begins to yield {when}",
                SIZE,
                fit.interference_for(least(*first), i.pocket_bore, give),
                sources.LAME,
            ),
            constant(
                f"δ_p,{tag}",
                f"Interference at which the {weaker.lower()} gives way {when}",
                SIZE,
                taken_up,
                sources.PAST_YIELD,
            ),
            pressed / first[0],
            pressed / first[1],
            lost,
            give,
            weaker,
        )

    cold, warming, running, stopped = cases = (
        case("cold", "cold", (reference, reference), ("ring_temperature", "head_temperature")),
        case("w", "while warming up", (i.ring_warming, i.head_warming), ("ring_warming", "head_warming")),
        case(
            "run",
            "when running",
            (i.ring_temperature, i.head_temperature),
            ("ring_temperature", "head_temperature"),
        ),
        case(
            "s",
            "when stopped hot",
            (i.head_temperature, i.head_temperature),
            ("head_temperature", "head_temperature"),
        ),
    )
    lost = Out.lost(greatest(*(c.lost for c in cases)))
    spare = Out.spare(least(*(c.gives_way - c.bears for c in cases)))
    hot, stop = Out.interference_hot(running.bears - lost), Out.interference_stopped(stopped.bears - lost)
    left, when = min(
        ((step("δ_1", "Interference left of all, at least", SIZE, c.bears - lost), c.when) for c in cases),
        key=lambda pair: float(pair[0]),
    )
    pressure = Out.pressure(fit.contact_pressure(bearing - cold.lost, i.pocket_bore, cold.give), sources.LAME)
    pressure_hot = Out.pressure_hot(fit.contact_pressure(hot, i.pocket_bore, running.give), sources.LAME)
    ring_used, head_used = (
        Out.ring_used(greatest(*(c.ring_used for c in cases)), sources.MISES),
        Out.head_used(greatest(*(c.head_used for c in cases)), sources.MISES),
    )
    wanted = Out.ring_wanted(
        i.pocket_bore + loss + i.least_grip + greatest(*(bearing - c.bears for c in cases[1:]), 0.0)
    )
    most = Out.ring_most(i.pocket_bore + loss + least(*(c.begins + (bearing - c.bears) for c in cases)))
    part, share = ("Head", head_used) if head_used > ring_used else ("Ring", ring_used)
    hardest = min(cases, key=lambda c: float(c.gives_way - c.bears))

    window = math.ceil(float(wanted) * 1e6) <= math.floor(
        float(most) * 1e6
    )  # in whole micrometres, taken inwards

    def advise(words):
        """What to do, and which ring would serve: the window within which the verdict is in order, taken inwards in either unit."""
        if window:
            return say(
                words + " By its grip this pocket takes a ring of {w} to {m}.",
                w=at_least(wanted, SIZE),
                m=at_most(most, SIZE),
            )
        return (
            words
            + " No ring holds in this pocket as it runs without something yielding. Look for a ring that"
            " grows more, a thicker wall, or less heat; or type rings in between and see what grip they"
            " keep."
        )

    if grip <= 0:
        verdict = (
            "fail",
            say("Falls in: ring {d} under the pocket", d=constant("", "", SIZE, -float(grip))),
            advise("Do not fit this ring."),
        )
    elif bearing <= 0:
        verdict = (
            "fail",
            say("No grip: roughness takes up all {d}", d=grip),
            advise("Do not fit this ring."),
        )
    elif head.brittle and head_used > 1:
        verdict = (
            "fail",
            say("Head may crack: {s} of its strength", s=head_used),
            advise("Do not fit this ring."),
        )
    elif spare <= 0:
        verdict = (
            "fail",
            say(hardest.weaker + " gives way " + hardest.when),
            advise("Do not fit this ring: it yields right through, and the grip goes with it."),
        )
    elif left <= 0:
        verdict = ("fail", say("Comes loose: {d} left " + when, d=left), advise("Do not fit this ring."))
    elif past(i.least_grip, left):
        verdict = ("fail", say("Too little grip: {d} left " + when, d=left), advise("Do not fit this ring."))
    elif share > 1:
        verdict = (
            "attention",
            say(part + " yields a little: {l} lost", l=lost.shown(4)),
            say(
                "Grip enough is left: {left} "
                + when
                + ". Measure both again; within the maker's limits it may be fitted. {other}",
                left=left,
                other=(
                    say(
                        "A ring of {w} to {m} would not yield.",
                        w=at_least(wanted, SIZE),
                        m=at_most(most, SIZE),
                    )
                    if window
                    else "No ring that holds here stays free of it."
                ),
            ),
        )
    else:
        verdict = (
            "pass",
            say("Holds: {d} left " + when, d=left),
            (
                "Fit it. “Heat to fit a seat ring” tells how hot the head must be; have everything at hand"
                " first."
            ),
        )
    hold_hot = Out.hold_hot(
        fit.holding_force(pressure_hot, i.friction, i.pocket_bore, i.depth), sources.FRICTION_HOLD
    )
    limit = head.limit_temperature
    return answer(
        grip,
        hot,
        stop,
        lost,
        spare,
        pressure,
        pressure_hot,
        Out.ring_hoop(fit.inner_bore_hoop(pressure, i.ring_bore, i.pocket_bore), sources.LAME),
        Out.head_hoop(fit.outer_joint_hoop(pressure, i.pocket_bore, outside), sources.LAME),
        ring_used,
        head_used,
        Out.hold(fit.holding_force(pressure, i.friction, i.pocket_bore, i.depth), sources.FRICTION_HOLD),
        hold_hot,
        wanted,
        most,
        verdict=verdict,
        limits=(
            Limit("the least grip left", left, low=i.least_grip),
            Limit("the strength of ring and head", spare, low=0),
            Limit(
                "first yield of the head", head_used, high=1, level="fail" if head.brittle else "attention"
            ),
            Limit("first yield of the ring", ring_used, high=1, level="attention"),
        ),
        remarks=(
            (
                warning(
                    "Interference of {d} is more than one part in 150 of the bore: were pocket and ring read"
                    " at the same place, and from the same engine?",
                    d=grip,
                )
                if grip > i.pocket_bore / 150
                else None
            ),
            (
                warning(
                    "The ring's wall is {w}, and rings have {thin} at least; common practice, no source. When"
                    " running it grips with {F} only: was its bore read right?",
                    w=constant("", "", form(LENGTH, 2), float(i.ring_outside - i.ring_bore) / 2),
                    thin=THIN,
                    F=hold_hot,
                )
                if past(2 * THIN, i.ring_outside - i.ring_bore)
                else None
            ),
            (
                note(
                    "What yields in one heat is gone in all of them: {l} are taken off cold, running and"
                    " stopped hot. The pressures count it.",
                    l=lost,
                )
                if lost > 0
                else None
            ),
            (
                note(
                    "A cold start straight into full load presses the pocket hardest: a hot ring in a cool"
                    " head. Warm the engine up gently, and let it cool gently."
                )
                if hardest is warming
                or max(map(float, (warming.ring_used, warming.head_used)))
                >= max(map(float, (ring_used, head_used)))
                else None
            ),
            (
                warning(
                    "{name} begins to lose its temper above {t}.",
                    name=head.name,
                    t=constant("", "", TEMP, limit),
                )
                if limit and float(i.head_temperature) > limit
                else None
            ),
            note(
                "The wall round a pocket is not even. The thinnest was taken: pressure and grip come out on"
                " the low side, the stress in that wall about right."
            ),
        ),
        figures=(
            section(i.pocket_bore, i.ring_outside, i.ring_bore, i.depth, i.head_wall),
            grip_plot(
                float(bearing - lost),
                float(i.pocket_bore),
                ring,
                head,
                float(i.ring_temperature),
                float(i.head_temperature),
                hot,
                stop,
                i.least_grip,
            ),
        ),
    )


def section(pocket_bore, ring_outside, ring_bore, depth, head_wall) -> Drawing:
    """Ring in its pocket, cut through the axis."""
    bore, inside, deep = float(pocket_bore) / 2, float(ring_bore) / 2, float(depth)
    outer, floor = bore + float(head_wall), deep * 0.9
    port = inside * 0.94
    shapes = []
    for side in (-1, 1):
        shapes += [
            Area(
                tuple(
                    (side * x, y)
                    for x, y in (
                        (bore, 0),
                        (outer, 0),
                        (outer, -deep - floor),
                        (port, -deep - floor),
                        (port, -deep),
                        (bore, -deep),
                    )
                ),
                "a",
            ),
            Area(tuple((side * x, y) for x, y in box(inside, -deep, bore, 0)), "b"),
        ]
    return Drawing(
        "Ring in its pocket",
        say(
            "Section through head and ring: pocket {p}, ring outside {o}, ring bore {i}, depth {h}, wall"
            " {w}.",
            p=pocket_bore,
            o=ring_outside,
            i=ring_bore,
            h=depth,
            w=head_wall,
        ),
        (
            *shapes,
            Line(((0, deep * 0.5), (0, -deep - floor * 1.3)), "centre"),
            Dimension((-inside, -deep * 0.5), (inside, -deep * 0.5), ring_bore, 0, "d_r"),
            Dimension((-bore, 0), (bore, 0), ring_outside, deep * 0.75, "D_r"),
            Dimension((-bore, 0), (bore, 0), pocket_bore, deep * 1.7, "D_p"),
            Dimension((outer, -deep), (outer, 0), depth, -deep * 0.6, "h"),
        ),
    )


def grip_plot(bearing, joint, ring, head, ring_hot, head_hot, hot, stopped, least_grip) -> Plot | None:
    """Interference left over the head's temperature: the ring hotter in proportion, as when running, and as warm as the head."""
    if abs(head_hot - REFERENCE) < 1:
        return None  # a head that stays cold has nothing to show
    running, level = [], []
    for i in range(21):
        t_ring, t_head = (REFERENCE + i / 20 * (t - REFERENCE) for t in (ring_hot, head_hot))
        running.append(
            (t_head, fit.interference_at(bearing, joint, ring.strain_at(t_ring), head.strain_at(t_head)))
        )
        level.append(
            (t_head, fit.interference_at(bearing, joint, ring.strain_at(t_head), head.strain_at(t_head)))
        )
    ends = (running[0][0], running[-1][0])
    return Plot(
        "Interference left as the head warms up",
        say("{d} is left at running heat, {s} when stopped hot.", d=hot, s=stopped),
        Axis("Head at the pocket", TEMP),
        Axis("Interference", SIZE),
        (
            Series("", tuple(running)),
            Series("stopped hot", tuple(level), "dashed"),
            Series("wanted", tuple((t, float(least_grip)) for t in ends), "limit"),
            Series("loose below", tuple((t, 0.0) for t in ends), "limit"),
        ),
        ((head_hot, float(hot), "running"),),
    )
