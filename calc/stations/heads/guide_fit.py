"""Valve guide and stem: the guide's grip in the head, how far its bore closes, the clearance cold and hot, and how far the valve rocks."""

import math

from calc.core.advice import at_least, at_most
from calc.core.conformance import past
from calc.core.drawing import Area, Axis, Dimension, Drawing, Line, Plot, Series, box
from calc.core.kinds import FORCE, LENGTH, RATIO, ROUGHNESS, STRESS, TEMPERATURE
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
    limit,
    measured,
    which_valve,
)
from calc.formulas import press_fit as fit
from calc.reference import cautions, sources
from calc.reference.materials import MATERIALS, REFERENCE
from calc.stations.shared.growth import growth, reference_temperature
from calc.stations.shared.own_material import own_grade, own_values
from calc.stations.shared.ring_in_wall import (
    Joint,
    Part,
    at_heat,
    bearing_interference,
    bore_moved,
    compliance,
    poissons_ratio,
    stiffness,
    window,
)
from calc.stations.shared.yielding import lost_and_room

SIZE, FINE, SMALL, TEMP, MPA, SHARE, TIMES = (
    form(LENGTH, 3),
    form(LENGTH, 4),
    form(LENGTH, 1),
    form(TEMPERATURE, 0),
    form(STRESS, 1),
    form(RATIO, 0, "%", "%"),
    form(RATIO, 2),
)
GUIDES = ("bronze", "aluminium-bronze", "copper-nickel-silicon", "grey-iron", "sintered-iron")
HEADS = ("al-si-t6", "al-si-cu-t6", "grey-iron")
STEMS = ("valve-steel", "austenitic-valve-steel")
FITTED, NEW = "fitted", "new"
CUT, STAYS = "cut", "stays"
MUCH = 0.5e-3  # m: more than this to ream is another guide's bore; common practice, no source
DISAGREE = 0.02e-3  # m: clearances by sizes and by rocking further apart than this are not of one guide; common practice, no source
SLIDES = 0.005e-3  # m: a guide that keeps less may slide when seats are driven in beside it; common practice, no source


class Out(Outputs):
    clearance = Output("Clearance, cold", "c", SIZE, main=True)
    clearance_hot = Output("Clearance, running", "c_hot", SIZE, main=True)
    interference = Output("Interference", "δ", SIZE, main=True)
    clearance_first = Output("Clearance while the stem alone is hot", "c_1", SIZE)
    rocking = Output("Rocking that this clearance gives", "r", SIZE)
    clearance_rocking = Output("Clearance that the rocking shows", "c_r", SIZE)
    rocking_worn = Output("Rocking at the worn clearance", "r_max", SIZE)
    closing = Output("Bore closes when pressed in by", "ΔD", SIZE)
    bore_pressed = Output("Bore once pressed in", "D_1", SIZE)
    ream = Output("Bore for the clearance wanted: ream to", "D_R", SIZE)
    to_ream = Output("To come off by reaming", "a", SIZE)
    interference_hot = Output("Interference left, running", "δ_hot", SIZE)
    interference_oven = Output("Interference left in the oven", "δ_oven", SIZE)
    grip_lost = Output("Interference gone for good once it has run", "δ_lost", FINE)
    grip_left = Output("Interference left after that, least", "δ_left", SIZE)
    pressure = Output("Contact pressure, cold", "p", MPA)
    guide_used = Output("Guide: share of its yield used", "U_g", SHARE)
    head_used = Output("Head: share of its yield used", "U_h", SHARE)
    force = Output("Force that presses the guide in", "F", form(FORCE, 0))
    guide_wanted = Output("Guide outside that holds in this hole, least", "D_want", SIZE)
    guide_most = Output("Guide outside that this hole bears, most", "D_most", SIZE)


def rocking_factor(height, length):
    """Dial reading over clearance, from one side to the other: 1 + 2a/L.

    A stem that leans touches at both ends of the guide, so over the length L its axis crosses by the clearance c. At a height a beyond
    the end it stands c/2 + a·c/L off the middle, and as much on the other side when it leans back. Lean is small: second order left out.
    """
    return 1 + 2 * height / length


class In(Inputs):
    stage: str = choice("The guide is", {FITTED: "in the head", NEW: "new, to be pressed in"}, default=FITTED)
    valve: str = which_valve()
    seat: str = choice(
        "Its seat is",
        {CUT: "to be cut", STAYS: "left as it is"},
        hint="A pilot stands in the guide while a seat is cut.",
        when=("stage", FITTED),
        default=CUT,
    )
    stem: Number = measured(
        "Stem, smallest",
        "d",
        SIZE,
        tool="a micrometer, at three heights where it runs in the guide",
        hard="3 to 20 mm",
        usual="5 to 13 mm",
        feature="valve.stem_{valve}",
    )
    guide_bore: Number = measured(
        "Guide bore, fitted, largest",
        "D",
        SIZE,
        tool="a small bore gauge, at both ends and in the middle, in two directions",
        hard="3 to 20.5 mm",
        usual="5 to 13.5 mm",
        feature="guide.bore",
        when=("stage", FITTED),
    )
    rocking: Number | None = measured(
        "Rocking of the valve, side to side",
        "r_read",
        form(LENGTH, 2),
        tool="a dial gauge on the valve's edge, in the direction of the rocker",
        hard="0 to 5 mm",
        usual="0.02 to 1.5 mm",
        hint="Full reading.",
        when=("stage", FITTED),
    )
    dial_height: Number = given(
        "Dial beyond the guide's end by",
        "h_d",
        SMALL,
        hard="0 to 200 mm",
        usual="5 to 120 mm",
        feature="guide.rock_lever",
        when=("rocking",),
        hint=(
            "Along the stem, from the guide's end to the valve's edge: valve less guide, less what of the"
            " stem stands out at the other end. Counts only with the rocking."
        ),
    )
    guide_hole: Number = measured(
        "Hole in the head",
        "D_h",
        SIZE,
        tool="a bore gauge set in a ring",
        hard="6 to 40 mm",
        usual="9 to 22 mm",
        feature="head.guide_hole",
        of="head_material",
        stage="finished",
        when=("stage", NEW),
    )
    guide_outside: Number = measured(
        "Guide outside",
        "D_g",
        SIZE,
        tool="a micrometer",
        hard="6 to 40 mm",
        usual="9 to 22 mm",
        feature="guide.outside",
        of="guide_material",
        stage="finished",
        when=("stage", NEW),
    )
    supplied_bore: Number = measured(
        "Bore of the new guide, as it comes",
        "D_0",
        SIZE,
        tool="a small bore gauge",
        hard="2 to 20 mm",
        usual="4.5 to 13 mm",
        feature="guide.supplied_bore",
        stage="",
        when=("stage", NEW),
    )
    guide_length: Number = measured(
        "Guide length",
        "L",
        SMALL,
        tool="a calliper",
        hard="10 to 120 mm",
        usual="25 to 80 mm",
        feature="guide.length",
        fold=True,
    )
    worn_clearance: Number = limit(
        "Clearance at which it is worn",
        "c_max",
        SIZE,
        feature="guide.clearance_{valve}",
        which="wear",
        hard="0.01 to 1 mm",
        usual="0.06 to 0.4 mm",
    )
    most_new: Number = limit(
        "Clearance of a guide as made, most",
        "c_new",
        SIZE,
        feature="guide.clearance_{valve}",
        which="high",
        hard="0.005 to 1 mm",
        usual="0.02 to 0.2 mm",
        hint="A pilot asks for it.",
        when=("seat", CUT),
    )
    least_new: Number = limit(
        "Clearance of a guide as made, least",
        "c_low",
        SIZE,
        feature="guide.clearance_{valve}",
        which="low",
        hard="0 to 0.5 mm",
        usual="0.005 to 0.1 mm",
        when=("stage", NEW),
    )
    least_stem: Number | None = limit(
        "Stem as made, least",
        "d_low",
        SIZE,
        feature="valve.stem_{valve}",
        which="low",
        hard="3 to 20 mm",
        usual="5 to 13 mm",
        when=("stage", NEW),
        hint="A new guide is not reamed to a worn stem.",
    )
    wanted_clearance: Number = given(
        "Clearance wanted, new",
        "c_w",
        SIZE,
        hard="0.005 to 0.5 mm",
        usual="0.02 to 0.12 mm",
        feature="guide.clearance_{valve}",
        fold=True,
        when=("stage", NEW),
    )
    least_hot: Number = given(
        "Clearance running, least",
        "c_min",
        SIZE,
        hard="0 to 0.2 mm",
        usual="0.005 to 0.05 mm",
        fold=True,
        assumed=("0.010 mm", "room for oil; common practice, no source"),
    )
    stem_temperature: Number = given(
        "Stem temperature, running",
        "T_s",
        TEMP,
        hard="-60 to 600 °C",
        usual="60 to 550 °C",
        feature="valve.stem_running_temperature_{valve}",
        fold=True,
        assumed="common practice, no source",
        hint="At the guide's hot end.",
    )
    guide_temperature: Number = given(
        "Guide temperature, running",
        "T_g",
        TEMP,
        hard="-60 to 400 °C",
        usual="60 to 300 °C",
        feature="guide.running_temperature_{valve}",
        fold=True,
        assumed="common practice, no source",
    )
    head_temperature: Number = given(
        "Head round the guide, running",
        "T_h",
        TEMP,
        hard="-60 to 400 °C",
        usual="60 to 230 °C",
        feature="head.guide_running_temperature_{valve}",
        fold=True,
        assumed="common practice, no source",
    )
    oven_temperature: Number = given(
        "Head in the oven while seats are fitted",
        "T_o",
        TEMP,
        hard="20 to 300 °C",
        usual="100 to 230 °C",
        fold=True,
        assumed=("200 °C", "as hot as a heat-treated head may get; common practice, no source"),
    )
    stem_material: str = choice(
        "Stem, material",
        {id: MATERIALS[id].name for id in STEMS},
        feature="valve.alloy_{valve}",
        fold=True,
        example="valve-steel",
    )
    guide_material: str = choice(
        "Guide, material",
        {id: MATERIALS[id].name for id in GUIDES},
        feature="guide.alloy",
        fold=True,
        example="bronze",
    )
    head_material: str = choice(
        "Head, material",
        {id: MATERIALS[id].name for id in HEADS},
        feature="head.alloy",
        fold=True,
        example="al-si-cu-t6",
    )
    own: Rows = own_values("guide", "head")
    hole_fitted: Number = given(
        "Hole of the guide that is in the head",
        "D_h,in",
        SIZE,
        hard="6 to 40 mm",
        usual="9 to 22 mm",
        feature="head.guide_hole",
        fold=True,
        hint="As made: it cannot be measured there.",
        when=("stage", FITTED),
    )
    outside_fitted: Number = given(
        "Outside of the guide that is in the head",
        "D_g,in",
        SIZE,
        hard="6 to 40 mm",
        usual="9 to 22 mm",
        feature="guide.outside",
        fold=True,
        hint="As made.",
        when=("stage", FITTED),
    )
    head_wall: Number = measured(
        "Least wall round the hole",
        "w",
        SMALL,
        tool="a calliper, at the thinnest place",
        hard="1 to 60 mm",
        usual="3 to 25 mm",
        feature="head.guide_wall",
        stage="",
        fold=True,
    )
    guide_roughness: Number = given(
        "Roughness of the guide, Rz",
        "Rz_g",
        form(ROUGHNESS, 1),
        hard="0 to 40 µm",
        usual="0 to 16 µm",
        fold=True,
        assumed=("4 µm", "ground; common practice, no source"),
    )
    hole_roughness: Number = given(
        "Roughness of the hole, Rz",
        "Rz_h",
        form(ROUGHNESS, 1),
        hard="0 to 40 µm",
        usual="0 to 16 µm",
        fold=True,
        assumed=("6.3 µm", "reamed; common practice, no source"),
    )
    least_grip: Number = given(
        "Interference wanted, least",
        "δ_min",
        SIZE,
        hard="0 to 0.2 mm",
        usual="0.003 to 0.05 mm",
        fold=True,
        hint="Cold and running, roughness pressed flat.",
        assumed=("0.010 mm", "common practice, no source"),
        when=("stage", NEW),
    )
    friction: Number = given(
        "Friction of guide in head",
        "µ",
        TIMES,
        hard="0.02 to 0.6",
        usual="0.06 to 0.25",
        fold=True,
        hint="Oiled about 0.1, dry up to 0.2.",
        assumed=("0.12", "common practice, no source"),
        when=("stage", NEW),
    )


@calculator(
    "guide-fit",
    "Valve guide and stem",
    In,
    Out,
    purpose=(
        "Is the guide worn or too tight, cold and running; and for a new one: does it hold, and what must it"
        " be reamed to?"
    ),
    finds=(
        "valve guide clearance",
        "stem clearance",
        "valve rock",
        "valve wobble",
        "guide wear",
        "guide reaming",
        "guide interference",
        "press fit of a guide",
        "stuck valve",
        "valve guide replacement",
    ),
    sources=(
        sources.ROCKING,
        sources.LAME,
        sources.MISES,
        sources.THERMAL,
        sources.MATERIALS,
        sources.PRACTICE,
        sources.INVENTED,
    ),
    cautions=(cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def guide_fit(i: In) -> Answer:
    """Guide and head as two thick cylinders (Lamé, plane stress), each at one temperature; the stem at its own.

    The clearance running counts how stem and guide grow, and how the bore of the guide as it is reamed opens again as the head's grip
    eases. Elastic; where one yields, what grip is gone for good is that of an elastic, then plastic ring, and pressure and closing are
    less than shown.
    """
    guide, head = (
        own_grade(MATERIALS[id], row) for id, row in zip((i.guide_material, i.head_material), i.own)
    )
    steel = MATERIALS[i.stem_material]
    new = i.stage == NEW
    bore, name, hole, around = (
        (i.supplied_bore, "supplied_bore", i.guide_hole, i.guide_outside)
        if new
        else (i.guide_bore, "guide_bore", i.hole_fitted, i.outside_fitted)
    )
    for other, words in ((around, "the guide's outside"), (hole, "the hole in the head")):
        if bore >= other:
            raise impossible(
                name, "is {d}, not smaller than " + words + ", {o}; give less than {o}", d=bore, o=other
            )
    if not new and i.stem >= i.guide_bore:
        raise impossible(
            "stem",
            "is {d}, not smaller than the guide's bore, {D}, so that it would not go in; give less than {D}",
            d=i.stem,
            D=i.guide_bore,
        )
    ream = Out.ream(i.stem + i.wanted_clearance)
    for other, words in ((around, "its outside of"), (hole, "the hole of")):
        if new and ream >= other:
            raise impossible(
                "stem",
                "is {d}, so that the guide would be reamed to {D}, right through "
                + words
                + " {o}; give less",
                d=i.stem,
                D=ream,
                o=other,
            )
    final = ream if new else i.guide_bore

    # the guide in the head
    reference = reference_temperature()
    outside = step("D_o", "Outside of the head's ring round the hole", SIZE, hole + 2 * i.head_wall)
    stem_growth = growth(steel, i.stem_temperature, reference, "s", "stem", "stem_temperature")
    guide_growth = growth(guide, i.guide_temperature, reference, "g", "guide", "guide_temperature")
    head_growth = growth(head, i.head_temperature, reference, "h", "head", "head_temperature")

    # pressed in as it comes: the thinner the guide is reamed, the less it presses, so this is the harder case
    shapes = (
        step("s_g", "Shape of the guide", TIMES, fit.inner_shape(bore, hole), sources.LAME),
        step("s_h", "Shape of the head round it", TIMES, fit.outer_shape(hole, outside), sources.LAME),
    )
    joint = Joint(Part(guide, "g", "guide"), Part(head, "h", "head"), bore, hole, outside, shapes)
    parts = joint.ring, joint.wall
    at = i.guide_temperature, i.head_temperature
    ratios = poissons_ratio(parts[0]), poissons_ratio(parts[1])
    cold_moduli = stiffness(parts[0]), stiffness(parts[1])
    hot_moduli = stiffness(parts[0], at[0], ",hot"), stiffness(parts[1], at[1], ",hot")
    cold_give = compliance(shapes, cold_moduli, ratios)
    hot_give = compliance(shapes, hot_moduli, ratios)
    grip = Out.interference(around - hole)
    loss, bearing = bearing_interference(grip, i.guide_roughness, i.hole_roughness)
    hot = Out.interference_hot(fit.interference_at(bearing, hole, guide_growth, head_growth), sources.THERMAL)
    oven = Out.interference_oven(
        fit.interference_at(
            bearing,
            hole,
            growth(guide, i.oven_temperature, reference, "g,o", "guide in the oven", "oven_temperature"),
            growth(head, i.oven_temperature, reference, "h,o", "head in the oven", "oven_temperature"),
        ),
        sources.THERMAL,
    )
    pressure = Out.pressure(fit.contact_pressure(bearing, hole, cold_give), sources.LAME)
    pressure_hot = step(
        "p_hot", "Contact pressure, running", MPA, fit.contact_pressure(hot, hole, hot_give), sources.LAME
    )

    cold = at_heat(joint, "cold", "cold", (REFERENCE, REFERENCE), bearing, cold_give, cold_moduli)
    warm = at_heat(joint, "hot", "hot", at, hot, hot_give, hot_moduli)
    guide_used, head_used = (
        out(greatest(pressure / cold.begins[n], pressure_hot / warm.begins[n]), sources.MISES)
        for n, out in enumerate((Out.guide_used, Out.head_used))
    )
    guide_wanted, guide_most = window(joint, loss, i.least_grip, cold, warm, Out.guide_wanted, Out.guide_most)
    gone, room = lost_and_room(joint, cold, warm)
    lost = Out.grip_lost(gone)
    left = Out.grip_left(least(bearing, hot) - lost)

    # its bore, and the stem in it
    closing = Out.closing(-fit.inner_bore_change(pressure, bore, hole, cold_moduli[0]), sources.LAME)
    pressed = Out.bore_pressed(i.supplied_bore - closing if new else final)
    stock = ream - pressed
    to_ream = Out.to_ream(greatest(stock, 0.0))
    clearance = Out.clearance(final - i.stem)
    # once reamed it is a thinner guide: its bore moves with the change of grip as that one's does
    thin = step("s_g,r", "Shape of the guide, as reamed", TIMES, fit.inner_shape(final, hole), sources.LAME)
    reamed = joint._replace(bore=final)
    moved = [
        bore_moved(
            f"u{tag}",
            f"Bore of the reamed guide moved by its grip{words}",
            reamed,
            grips,
            compliance((thin, shapes[1]), moduli, ratios),
            moduli[0],
        )
        for tag, words, grips, moduli in (
            ("_c", "", bearing, cold_moduli),
            ("_h", ", running", hot, hot_moduli),
        )
    ]
    opening = step("ΔD_hot", "Bore opens again, running, by", SIZE, moved[1] - moved[0])
    stem_hot = step("d_hot", "Stem, running", SIZE, i.stem * (1 + stem_growth), sources.THERMAL)
    running = Out.clearance_hot(final * (1 + guide_growth) + opening - stem_hot, sources.THERMAL)
    first = Out.clearance_first(final - stem_hot, sources.THERMAL)
    factor = step(
        "k_r", "Rocking over clearance", TIMES, rocking_factor(i.dial_height, i.guide_length), sources.ROCKING
    )
    by_sizes = Out.rocking(clearance * factor, sources.ROCKING)
    rocked = i.rocking is not None and not new
    by_rocking = Out.clearance_rocking(i.rocking / factor if rocked else clearance, sources.ROCKING)
    judged = step("c_j", "The larger of the two clearances", SIZE, greatest(clearance, by_rocking))

    part, share = ("Head", head_used) if head_used > guide_used else ("Guide", guide_used)
    cracks, gives = part == "Head" and head.brittle, share > 1
    _, when = min((bearing, "cold"), (hot, "when running"), key=lambda pair: float(pair[0]))
    pilot = i.seat == CUT
    tight = (
        Limit("the clearance when running", running, low=0),
        Limit("the room for oil when running", running, low=i.least_hot, level="attention"),
        Limit("the clearance while warming up", first, low=0, level="attention"),
    )
    if new:
        verdict = _of_new(
            grip,
            bearing,
            left,
            when,
            part,
            share,
            cracks,
            gives,
            lost,
            room,
            running,
            first,
            stock,
            to_ream,
            ream,
            i.least_grip,
            i.least_hot,
            clearance,
            i.least_new,
            i.most_new,
            guide_wanted,
            guide_most,
            i.stem,
            i.least_stem,
        )
        limits = (
            Limit("the grip left", left, low=i.least_grip),
            Limit("what head and guide bear", room, low=0),
            Limit("the head's stress", head_used, high=1, level="fail" if head.brittle else "attention"),
            Limit("the guide's stress", guide_used, high=1, level="attention"),
            Limit("what is left to ream", stock, low=0, level="attention"),
            Limit("the clearance wanted", clearance, low=i.least_new, high=i.most_new, level="attention"),
            *tight,
            *(
                (Limit("the stem that it is reamed to", i.stem, low=i.least_stem, level="attention"),)
                if i.least_stem is not None
                else ()
            ),
        )
    else:
        apart = step("Δc", "The two clearances differ by", SIZE, abs(clearance - by_rocking))
        verdict = _of_fitted(
            judged,
            clearance,
            by_rocking,
            apart,
            running,
            first,
            i.worn_clearance,
            i.most_new if pilot else None,
            i.least_hot,
        )
        limits = (
            Limit("the clearance", judged, high=i.worn_clearance),
            *tight,
            Limit("the likeness of sizes and rocking", apart, high=DISAGREE, level="attention"),
            *((Limit("the guide for a pilot", judged, high=i.most_new, level="attention"),) if pilot else ()),
        )
    return answer(
        clearance,
        running,
        grip,
        first,
        by_sizes,
        by_rocking,
        Out.rocking_worn(i.worn_clearance * factor, sources.ROCKING),
        closing,
        pressed,
        ream,
        to_ream,
        hot,
        oven,
        lost,
        left,
        pressure,
        guide_used,
        head_used,
        Out.force(fit.holding_force(pressure, i.friction, hole, i.guide_length), sources.FRICTION_HOLD),
        guide_wanted,
        guide_most,
        verdict=verdict,
        limits=limits,
        remarks=(
            (
                note(
                    "The largest bore and the smallest stem were asked for, because they decide whether it is"
                    " worn. For the tightest place, type the smallest bore and the largest stem."
                )
                if not new
                else note("The bore closes by {c}: ream after pressing, never before.", c=closing)
            ),
            (
                warning(
                    "{a} is much for a reamer: is this the guide for this stem? Guides come to size, or a few"
                    " tenths under; common practice, no source.",
                    a=to_ream,
                )
                if new and past(to_ream, MUCH)
                else None
            ),
            (
                note(
                    "Its grip in the head is worked out from hole and outside as made: the guide is in, and"
                    " neither can be measured."
                )
                if not new
                else None
            ),
            (
                warning(
                    "In an oven at {t} only {d} of grip is left: it may slide while seats are fitted. Note"
                    " how far it stands out before, and measure that again after.",
                    t=i.oven_temperature,
                    d=oven,
                )
                if 0 < float(oven) < SLIDES
                else (
                    warning(
                        "In an oven at {t} no grip is left: it may slide while seats are fitted. Note how far"
                        " it stands out before, and measure that again after.",
                        t=i.oven_temperature,
                    )
                    if oven <= 0 < bearing
                    else None
                )
            ),
            (
                warning("Past yield the real pressure, and the closing of the bore, are less than shown.")
                if new and gives and not cracks
                else None
            ),
            (
                warning(
                    "{name} begins to lose its temper above {t}.",
                    name=head.name,
                    t=constant("", "", TEMP, head.limit_temperature),
                )
                if head.limit_temperature and float(i.head_temperature) > head.limit_temperature
                else None
            ),
            (
                note(
                    "While the stem alone is hot, {c} are left at most that close: warm the engine up before"
                    " it is loaded.",
                    c=first,
                )
                if 0 < first < i.least_hot
                else None
            ),
        ),
        cautions=(
            (cautions.HOT_HEAD, cautions.PRESS_TRAPPED, cautions.CUTTING, cautions.BERYLLIUM) if new else ()
        ),
        figures=(
            section(hole, around, final, i.stem, i.guide_length, i.head_wall),
            lean(final, i.stem, clearance, i.guide_length, i.dial_height, by_sizes),
            warming(
                i.stem,
                final,
                bearing,
                hole,
                (thin, shapes[1]),
                steel,
                guide,
                head,
                *map(float, (i.stem_temperature, i.guide_temperature, i.head_temperature)),
                running,
                first,
            ),
        ),
    )


def _of_new(
    grip,
    bearing,
    left,
    when,
    part,
    share,
    cracks,
    gives,
    lost,
    room,
    running,
    first,
    stock,
    to_ream,
    ream,
    least_grip,
    least_hot,
    clearance,
    least_new,
    most_new,
    guide_wanted,
    guide_most,
    stem,
    least_stem,
):
    small, large = math.ceil(float(guide_wanted) * 1e6) / 1e6, math.floor(float(guide_most) * 1e6) / 1e6
    other = (
        say(
            "For this hole take a guide of {w} to {m}.",
            w=at_least(guide_wanted, SIZE),
            m=at_most(guide_most, SIZE),
        )
        if small <= large
        else say(
            "No guide serves this hole as it runs: what holds hot already overloads it. Look for one that"
            " grows more, or a thicker wall."
        )
    )
    do_not = say("Do not fit this guide. {other}", other=other)
    if grip <= 0:
        return (
            "fail",
            say("Falls in: guide {d} under the hole", d=constant("", "", SIZE, -float(grip))),
            do_not,
        )
    if bearing <= 0:
        return "fail", say("No grip: roughness takes up all {d}", d=grip), do_not
    if cracks and gives:
        return "fail", say("Head may crack: {s} of its strength", s=share), do_not
    if room < 0:
        return "fail", say(part + " gives way: {d} too much", d=constant("", "", SIZE, -float(room))), do_not
    if left <= 0:
        return "fail", say("Comes loose: {d} left " + when, d=left), do_not
    if past(least_grip, left):
        return (
            "fail",
            say("Little grip: {d} left " + when, d=left),
            say("Measure both again. If it stays, do not fit this guide. {other}", other=other),
        )
    if running <= 0:
        return (
            "fail",
            say("Stem seizes: {c} left when running", c=running),
            "Ream larger: type more clearance. Look at the temperatures too.",
        )
    if gives:
        return (
            "attention",
            say(part + " yields a little: {d} lost", d=lost),
            say(
                "{left} of grip are left for good, and it holds. Measure both again. {other}",
                left=left,
                other=other,
            ),
        )
    if past(least_hot, running):
        return (
            "attention",
            say("Tight when running: {c} left", c=running),
            say("{least} were wanted. Ream larger by what is missing.", least=least_hot),
        )
    if first <= 0:
        return (
            "attention",
            say("Tight while warming up: {c} left", c=first),
            (
                "A stem at full heat in a cold guide would seize. Ream larger: type that much more clearance,"
                " unless the maker's is this one."
            ),
        )
    if past(least_new, clearance):
        return (
            "attention",
            say("Tighter than as made: {c}, {m} at least", c=clearance, m=least_new),
            "Type more clearance, unless the maker's is this one.",
        )
    if past(clearance, most_new):
        return (
            "attention",
            say("Wider than as made: {c}, {m} at most", c=clearance, m=most_new),
            (
                "Type less clearance. A pilot stands in it when the seat is cut, and what a guide is given"
                " now it has lost already."
            ),
        )
    if stock <= 0:
        return (
            "attention",
            say("Nothing to ream: bore already {d} larger", d=constant("", "", SIZE, -float(stock))),
            "Take a guide that comes with a smaller bore, or measure this one again once it is in.",
        )
    if least_stem is not None and past(least_stem, stem):
        return (
            "attention",
            say("Worn stem: {d}, as made {m} at least", d=stem, m=least_stem),
            (
                "A guide reamed to it is too tight for the next valve. Ream for the valve that is to stay:"
                " measure a new one, or leave the reaming until it is there."
            ),
        )
    return (
        "pass",
        say("Press it in, then ream to {D}", D=ream),
        say(
            "Warm the head, press the guide in square to its stop, let it cool. Only then measure the bore"
            " and ream out {a}.",
            a=to_ream,
        ),
    )


def _of_fitted(judged, clearance, by_rocking, apart, running, first, worn, most_new, least_hot):
    """`most_new` is what a pilot asks for, None where none is to stand in it."""
    if past(judged, worn):
        return (
            "fail",
            say("Worn: {c} of clearance, {w} allowed", c=judged, w=worn),
            (
                "Try a new valve in it. If that rocks too much as well, fit a new guide; if not, the stem was"
                " worn."
            ),
        )
    if running <= 0:
        return (
            "fail",
            say("Seizes: {c} left when running", c=running),
            "Do not run it. Ream the guide, or find the valve that belongs in it.",
        )
    if past(least_hot, running):
        return (
            "attention",
            say("Tight when running: {c} left", c=running),
            say(
                "{least} were wanted. Clean the guide, measure again, then ream by what is missing.",
                least=least_hot,
            ),
        )
    if first <= 0:
        return (
            "attention",
            say("Tight while warming up: {c} left", c=first),
            (
                "A stem at full heat in a cold guide would seize. Ream the guide by that much, unless the"
                " maker's clearance is this one."
            ),
        )
    if past(apart, DISAGREE):
        return (
            "attention",
            say("Sizes show {c}, rocking {r}", c=clearance, r=by_rocking),
            (
                "The ends are wider than was measured, or the dial stood elsewhere. Measure the bore at both"
                " ends, and the two lengths again."
                if by_rocking > clearance
                else (
                    "Less rocking than the sizes allow: oil or carbon in the guide, or the dial stood"
                    " elsewhere. Clean and measure again."
                )
            ),
        )
    if most_new is not None and past(judged, most_new):
        return (
            "attention",
            say("Serves the valve, not a pilot: {c}", c=judged),
            say(
                "As made it has {m} at most. In this one a pilot that slips in leans, and a tapered or"
                " spreading one stands as crooked as the guide is worn. Fit a new guide before you cut the"
                " seat; if only the stem is worn, measure with a new valve.",
                m=most_new,
            ),
        )
    return (
        "pass",
        say("Good: {c} cold, {h} when running", c=clearance, h=running),
        (
            "Leave the guide in. Write stem and bore down for this valve."
            if most_new is None
            else (
                "Leave the guide in, and write stem and bore down. For the seat: a pilot that goes in by hand"
                " and does not shake."
            )
        ),
    )


def section(guide_hole, guide_outside, bore, stem, length, wall) -> Drawing:
    """Guide in the head with its stem, cut through the axis; port below."""
    hole, outside, inside, radius, L, w = (
        float(guide_hole) / 2,
        float(guide_outside) / 2,
        float(bore) / 2,
        float(stem) / 2,
        float(length),
        float(wall),
    )
    shapes = [Area(box(-radius, -0.25 * L, radius, 1.3 * L), "")]
    for side in (-1, 1):
        shapes += [
            Area(tuple((side * x, y) for x, y in box(hole, 0.12 * L, hole + w, 0.82 * L)), "a"),
            Area(tuple((side * x, y) for x, y in box(inside, 0, hole, L)), "b"),
        ]
    edge = hole + w
    return Drawing(
        "Guide in the head",
        say(
            "Section through head, guide and stem: hole {h}, guide outside {o}, bore {D}, stem {d}, guide {L}"
            " long.",
            h=guide_hole,
            o=guide_outside,
            D=bore,
            d=stem,
            L=length,
        ),
        (
            *shapes,
            Line(((0, -0.35 * L), (0, 1.4 * L)), "centre"),
            Dimension((-inside, L), (inside, L), bore, 0.12 * L, "D"),
            Dimension((-outside, L), (outside, L), guide_outside, 0.36 * L, "D_g"),
            Dimension((-radius, -0.25 * L), (radius, -0.25 * L), stem, -0.1 * L, "d"),
            Dimension((-hole, 0.12 * L), (hole, 0.12 * L), guide_hole, -0.62 * L, "D_h"),
            Dimension((edge, 0), (edge, L), length, -0.12 * L, "L"),
        ),
    )


def lean(bore, stem, clearance, length, dial_height, reading) -> Drawing:
    """The stem leaning to both sides in its guide: where the dial's reading comes from."""
    d, L, a = float(stem), float(length), float(dial_height)
    wide = L / 10
    times = max(1, round(wide / max(float(clearance), 1e-9)))
    top = L + a

    def at(y, side):
        return side * wide * (y / L - 0.5)

    walls = [
        Area(tuple((side * x, y) for x, y in box((d + wide) / 2, 0, (d + wide) / 2 + 0.12 * L, L)), "b")
        for side in (-1, 1)
    ]
    stems = [
        (
            side,
            tuple(
                (at(y, side) + edge * d / 2, y)
                for edge, y in ((-1, 0), (1, 0), (1, top + 0.08 * L), (-1, top + 0.08 * L))
            ),
        )
        for side in (-1, 1)
    ]
    right, left = at(top, 1) + d / 2, at(top, -1) + d / 2
    return Drawing(
        "How far the valve rocks",
        say(
            "A stem with {c} of clearance leans to both sides in a guide of {L}; {a} beyond its end the dial"
            " shows {r}.",
            c=clearance,
            L=length,
            a=dial_height,
            r=reading,
        ),
        (
            *walls,
            *(Area(points, "") for side, points in stems if side > 0),
            *(Line((*points, points[0]), "hidden") for side, points in stems if side < 0),
            Line(((0, -0.1 * L), (0, top + 0.2 * L)), "centre"),
            Dimension((left, top), (right, top), reading, 0.2 * L, "r"),
            Dimension((-(d + wide) / 2 - 0.12 * L, 0), (-(d + wide) / 2 - 0.12 * L, L), length, 0.1 * L, "L"),
            *(
                (
                    Dimension(
                        (-(d + wide) / 2 - 0.12 * L, L),
                        (-(d + wide) / 2 - 0.12 * L, top),
                        dial_height,
                        0.1 * L,
                        "h_d",
                    ),
                )
                if a
                else ()
            ),
        ),
        say("lengths to scale, clearance drawn {n} times as wide", n=str(times)),
    )


def warming(
    stem, bore, bearing, joint, shapes, steel, guide, head, stem_hot, guide_hot, head_hot, running, first
) -> Plot | None:
    """Clearance over the stem's temperature: guide and head warming in proportion, and still cold."""
    if abs(stem_hot - REFERENCE) < 1:
        return None  # a stem that stays cold has nothing to show
    d, D, grip, J, a, b = map(float, (stem, bore, bearing, joint, *shapes))

    def closed(share):
        t_guide, t_head = (REFERENCE + share * (t - REFERENCE) for t in (guide_hot, head_hot))
        E = guide.modulus_at(t_guide)
        give = fit.compliance(a, b, E, guide.nu, head.modulus_at(t_head), head.nu)
        left = fit.interference_at(grip, J, guide.strain_at(t_guide), head.strain_at(t_head))
        return D * (1 + guide.strain_at(t_guide)) + fit.inner_bore_change(
            fit.contact_pressure(left, J, give), D, J, E
        )

    shares = [i / 20 for i in range(21)]
    stems = [REFERENCE + s * (stem_hot - REFERENCE) for s in shares]
    pressed = closed(0.0) - D  # what pressing in took: the bore was measured after it
    together = tuple((t, closed(s) - pressed - d * (1 + steel.strain_at(t))) for s, t in zip(shares, stems))
    alone = tuple((t, D - d * (1 + steel.strain_at(t))) for t in stems)
    return Plot(
        "Clearance as the engine warms up",
        say(
            "{c} are left when running, {f} if the stem were hot and the guide still cold.",
            c=running,
            f=first,
        ),
        Axis("Stem", TEMP),
        Axis("Clearance", SIZE),
        (
            Series("", together),
            Series("guide still cold", alone, "dashed"),
            Series("seizes below", tuple((t, 0.0) for t in (stems[0], stems[-1])), "limit"),
        ),
        ((stem_hot, float(running), "running"),),
    )
