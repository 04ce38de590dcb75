"""Bore in a lifter's body for a plunger unit: what to hone it to, what wall is left, and what pressing the unit in would do."""

from calc.core.conformance import past
from calc.core.drawing import Area, Dimension, Drawing, Label, Line, box
from calc.core.kinds import LENGTH, MODULUS, RATIO, STRESS
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
)
from calc.formulas import press_fit as fit
from calc.reference import cautions, sources
from calc.reference.materials import MATERIALS
from calc.stations.lifters import BODIES
from calc.stations.shared import honing
from calc.stations.shared.own_material import own_grade, own_values

SIZE, FINE, WALL, MPA, SHARE, TIMES = (
    form(LENGTH, 3),
    form(LENGTH, 4),
    form(LENGTH, 2),
    form(STRESS, 1),
    form(RATIO, 0, "%", "%"),
    form(RATIO, 3),
)
SLIP, PRESS = "slip", "press"
NEAR_YIELD = 0.9  # common practice, no source: nearer than a tenth, the doubt of the readings alone decides


class Out(Outputs):
    target = Output("Hone the body's bore to", "D_w", SIZE, main=True)
    stock = Output("To come off", "a", SIZE, main=True)
    wall = Output("Wall left, thinnest", "w", WALL, main=True)
    clearance_now = Output("Unit in the bore as it is: clearance, minus for grip", "C_now", SIZE)
    pressure = Output("Contact pressure, pressed in", "p", MPA)
    hoop = Output("Hoop stress at the body's bore", "σ_h", form(STRESS, 0))
    body_used = Output("Body: share of its yield used", "U_b", SHARE)
    unit_used = Output("Unit: share of its yield used", "U_u", SHARE)
    growth = Output("Body's outside grows by", "ΔD_o", FINE)
    closing = Output("Plunger's bore closes by", "ΔD_i", FINE)
    plunger_left = Output("Plunger clearance left", "C_p", FINE)
    case_left = Output("Clearance of the body in the case", "C_c", SIZE)


class In(Inputs):
    bore: Number = measured(
        "Body's bore, as it is, largest",
        "D",
        SIZE,
        tool="a small bore gauge set in a ring",
        hard="4 to 60 mm",
        usual="10 to 32 mm",
        of="body_material",
        example="17.480 mm",
    )
    unit_outside: Number = measured(
        "Plunger unit, outside",
        "D_u",
        SIZE,
        tool="a micrometer",
        hard="4 to 60 mm",
        usual="10 to 32 mm",
        feature="lifter.unit_outside",
        of="bearing-steel",
        stage="finished",
    )
    body: Number = measured(
        "Body, outside, smallest",
        "D_o",
        SIZE,
        tool="a micrometer",
        hard="6 to 80 mm",
        usual="12 to 40 mm",
        feature="lifter.body",
        of="body_material",
    )
    fit_wanted: str = choice(
        "The unit is", {SLIP: "slipped in, held by a snap ring", PRESS: "pressed in"}, default=SLIP
    )
    runout: Number = measured(
        "Runout of the bore",
        "r",
        WALL,
        tool="a dial gauge in the bore, body turned in a vee block",
        hard="0 to 2 mm",
        usual="0 to 0.1 mm",
        hint="Full reading.",
        example="0.03 mm",
    )
    slip: Number = given(
        "Clearance wanted, slipped in",
        "C_w",
        SIZE,
        hard="0.002 to 0.2 mm",
        usual="0.008 to 0.04 mm",
        feature="lifter.unit_clearance",
        fold=True,
        when=("fit_wanted", SLIP),
    )
    least_slip: Number = limit(
        "Clearance allowed, slipped in, least",
        "C_w,min",
        SIZE,
        feature="lifter.unit_clearance",
        which="low",
        hard="0 to 0.2 mm",
        usual="0.002 to 0.03 mm",
        when=("fit_wanted", SLIP),
    )
    most_slip: Number = limit(
        "Clearance allowed, slipped in, most",
        "C_w,max",
        SIZE,
        feature="lifter.unit_clearance",
        which="high",
        hard="0.002 to 0.3 mm",
        usual="0.01 to 0.06 mm",
        when=("fit_wanted", SLIP),
    )
    grip: Number = given(
        "Interference wanted, pressed in",
        "δ_w",
        SIZE,
        hard="0.001 to 0.1 mm",
        usual="0.002 to 0.02 mm",
        fold=True,
        when=("fit_wanted", PRESS),
        assumed=("0.005 mm", "common practice, no source"),
    )
    tolerance: Number = given(
        "Bore may be off by, either way",
        "b",
        SIZE,
        hard="0.001 to 0.05 mm",
        usual="0.002 to 0.01 mm",
        fold=True,
        when=("fit_wanted", PRESS),
        assumed=("0.005 mm", "what a careful hone holds; common practice, no source"),
    )
    most_hone: Number = given(
        "Hone takes off at most",
        "a_max",
        SIZE,
        hard="0.005 to 0.5 mm",
        usual="0.02 to 0.1 mm",
        fold=True,
        assumed=(honing.MOST, honing.WHY),
    )
    least_hone: Number = given(
        "Left for the hone, at least",
        "a_min",
        SIZE,
        hard="0.002 to 0.2 mm",
        usual="0.01 to 0.05 mm",
        fold=True,
        assumed=(
            honing.LEAST,
            "less does not clean up what the boring tool left; common practice, no source",
        ),
    )
    least_wall: Number = limit(
        "Wall, least",
        "w_min",
        WALL,
        feature="lifter.wall",
        which="wear",
        hard="0.2 to 10 mm",
        usual="0.8 to 3 mm",
    )
    body_material: str = choice(
        "Body, material",
        {id: MATERIALS[id].name for id in BODIES},
        feature="lifter.alloy",
        fold=True,
        example="forged-steel",
    )
    own: Rows = own_values("body", "unit")
    plunger_bore: Number = measured(
        "Plunger's bore in the unit",
        "D_b",
        FINE,
        tool="an air or bore gauge set in a ring",
        hard="2 to 58 mm",
        usual="6 to 30 mm",
        feature="lifter.plunger_bore",
        stage="",
        fold=True,
    )
    plunger: Number = measured(
        "Plunger",
        "D_p",
        FINE,
        tool="a comparator set with gauge blocks",
        hard="2 to 58 mm",
        usual="6 to 30 mm",
        feature="lifter.plunger",
        stage="",
        fold=True,
    )
    least_plunger: Number = limit(
        "Plunger clearance, least",
        "C_p,min",
        FINE,
        feature="lifter.plunger_clearance_pressed",
        which="low",
        hard="0.0005 to 0.05 mm",
        usual="0.002 to 0.015 mm",
    )
    lifter_hole: Number = measured(
        "Lifter bore in the case",
        "D_c",
        SIZE,
        tool="a small bore gauge set in a ring",
        hard="6 to 81 mm",
        usual="12 to 41 mm",
        feature="crankcase.lifter_bore",
        fold=True,
    )
    least_case: Number = given(
        "Clearance in the case, least",
        "C_c,min",
        SIZE,
        hard="0 to 0.2 mm",
        usual="0.01 to 0.05 mm",
        fold=True,
        assumed=("0.020 mm", "room for oil; common practice, no source"),
    )


@calculator(
    "lifter-bore",
    "Bore for a plunger unit",
    In,
    Out,
    purpose=(
        "What must the body be honed to, is there wall enough, and does a pressed unit still let its plunger"
        " move?"
    ),
    finds=(
        "solid to hydraulic",
        "convert a lifter",
        "hollow lifter",
        "bore a lifter body",
        "plunger unit fit",
        "hone a lifter",
        "tappet conversion",
        "press fit of an insert",
    ),
    sources=(sources.LAME, sources.MISES, sources.MATERIALS, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.CUTTING, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def lifter_bore(i: In) -> Answer:
    """Body and unit as two thick cylinders (Lamé, plane stress), elastic, smooth, both at the same temperature.

    Steel and iron grow nearly alike, so the fit stays as warm oil finds it. Stresses are those of the bore wanted, and once it is
    honed to within its limits those of the bore that is there; slipped in there are none. The body is taken as a ring with its thinnest wall.
    """
    material, unit = (
        own_grade(MATERIALS[id], row) for id, row in zip((i.body_material, "bearing-steel"), i.own)
    )
    pressed = i.fit_wanted == PRESS
    if i.plunger_bore >= i.unit_outside:
        raise impossible(
            "plunger_bore",
            "is {d}, not smaller than the unit's outside, {D}; give less",
            d=i.plunger_bore,
            D=i.unit_outside,
        )
    if i.plunger >= i.plunger_bore:
        raise impossible(
            "plunger", "is {p}, not smaller than its bore, {b}; give less", p=i.plunger, b=i.plunger_bore
        )
    if i.body >= i.lifter_hole:
        raise impossible(
            "body", "is {d}, not smaller than its bore in the case, {D}; give less", d=i.body, D=i.lifter_hole
        )
    if not pressed and not i.least_slip <= i.slip <= i.most_slip:
        raise impossible(
            "slip",
            "is {s}, not within the clearance allowed; give {a} to {b}",
            s=i.slip,
            a=i.least_slip,
            b=i.most_slip,
        )
    target = Out.target(i.unit_outside - i.grip if pressed else i.unit_outside + i.slip)
    widest = greatest(i.bore, target)
    outside = step("D_e", "Outside of a ring with the thinnest wall", SIZE, i.body - i.runout)
    for name, value in (("bore", i.bore), ("unit_outside", target)):
        if value >= outside:
            raise impossible(
                name,
                "leaves no wall: a bore of {d} in a body of {D} with {r} of runout; give less",
                d=value,
                D=i.body,
                r=i.runout,
            )
    if i.least_hone >= i.most_hone:
        raise impossible(
            "least_hone",
            "is {a}, not less than the hone takes off at most, {b}; give less",
            a=i.least_hone,
            b=i.most_hone,
        )
    if pressed and target <= i.plunger_bore:
        raise impossible("grip", "is {g}, as much as the unit's own wall; give less", g=i.grip)
    stock = Out.stock(target - i.bore)
    wall = Out.wall((outside - widest) / 2)
    now = Out.clearance_now(i.bore - i.unit_outside)

    largest = least(target + i.tolerance, i.unit_outside) if pressed else i.unit_outside + i.most_slip
    too_large = past(i.bore, largest) or pressed and not past(i.unit_outside, i.bore)
    done = not too_large and (not past(stock, i.tolerance) if pressed else not past(i.least_slip, now))
    joint, words = (i.bore, "bore as it is") if pressed and done else (target, "bore wanted")
    if pressed and joint <= i.plunger_bore:
        raise impossible(
            "unit_outside",
            "is {D}, and in a bore of {b} nothing is left of its wall round the plunger's bore, {d}; give"
            " more",
            D=i.unit_outside,
            b=joint,
            d=i.plunger_bore,
        )
    interference = step("δ", f"Interference in the {words}", SIZE, greatest(i.unit_outside - joint, 0.0))
    shapes = (
        step("s_u", "Shape of the unit", TIMES, fit.inner_shape(i.plunger_bore, joint), sources.LAME),
        step("s_b", "Shape of the body", TIMES, fit.outer_shape(joint, outside), sources.LAME),
    )
    e_unit, nu_unit, e_body, nu_body = (
        constant(symbol, words, shape, value, sources.MATERIALS)
        for symbol, words, shape, value in (
            ("E_u", "Stiffness of the unit", form(MODULUS, 0), unit.E),
            ("ν_u", "Poisson's ratio of the unit", form(RATIO, 2), unit.nu),
            ("E_b", "Stiffness of the body", form(MODULUS, 0), material.E),
            ("ν_b", "Poisson's ratio of the body", form(RATIO, 3), material.nu),
        )
    )
    pressure = Out.pressure(
        fit.contact_pressure(interference, joint, fit.compliance(*shapes, e_unit, nu_unit, e_body, nu_body)),
        sources.LAME,
    )
    yields = (
        constant("R_b", "Yield stress of the body", form(STRESS, 0), material.yield_20, sources.MATERIALS),
        constant(
            "R_u",
            "Yield stress of the unit",
            form(STRESS, 0),
            unit.compressive_yield_at(293.15),
            sources.MATERIALS,
        ),
    )
    body_used = Out.body_used(
        pressure
        / step(
            "p_b",
            "Pressure at which the body begins to yield",
            MPA,
            fit.outer_yield_pressure(yields[0], joint, outside),
            sources.MISES,
        ),
        sources.MISES,
    )
    unit_used = Out.unit_used(
        pressure
        / step(
            "p_u",
            "Pressure at which the unit begins to yield",
            MPA,
            fit.inner_yield_pressure(yields[1], i.plunger_bore, joint),
            sources.MISES,
        ),
        sources.MISES,
    )
    growth = Out.growth(fit.outer_outside_change(pressure, joint, outside, e_body), sources.LAME)
    closing = Out.closing(-fit.inner_bore_change(pressure, i.plunger_bore, joint, e_unit), sources.LAME)
    plunger_left = Out.plunger_left(i.plunger_bore - closing - i.plunger)
    case_left = Out.case_left(i.lifter_hole - i.body - growth)

    over = constant("", "", SIZE, -float(stock))
    share = constant("", "", SHARE, float(greatest(body_used, unit_used)))
    if past(i.least_wall, wall):
        verdict = (
            "fail",
            say("Wall too thin: {w}, {least} wanted", w=wall, least=i.least_wall),
            "Do not cut. Take a body with more outside or a straighter bore, or a slimmer unit.",
        )
    elif pressed and share > 1:
        part = "Body" if body_used >= unit_used else "Unit"
        verdict = (
            "fail",
            say(
                part
                + (" may crack" if part == "Body" and material.brittle else " yields")
                + ": {s} of its strength",
                s=share,
            ),
            "Do not press it in. Type less interference, or slip it in and hold it by a ring.",
        )
    elif past(i.least_plunger, plunger_left):
        verdict = (
            "fail",
            say("Plunger binds: {c} left, {least} wanted", c=plunger_left, least=i.least_plunger),
            (
                say(
                    "Pressing closes its bore by {d}. "
                    + (
                        "Hone on to {D}, and measure again."
                        if done and past(stock, 0.0)
                        else "Type less interference, or slip the unit in."
                    ),
                    d=closing,
                    D=target,
                )
                if pressed
                else "Measure both again, clean and at one temperature. If it stays, another unit."
            ),
        )
    elif past(i.least_case, case_left):
        verdict = (
            "fail",
            say("Body binds in the case: {c} left", c=case_left),
            say(
                "{least} are wanted"
                + (" and pressing takes {g}" if pressed else "")
                + ". Take another body, or hone the case where its maker allows it.",
                least=i.least_case,
                g=growth,
            ),
        )
    elif too_large:
        verdict = (
            "fail",
            say("Bore too large by {d}", d=over),
            (
                "Measure again, both warm alike. If it stays, a larger unit or another body: no plating, no"
                " glue."
            ),
        )
    elif pressed and share > NEAR_YIELD:
        verdict = (
            "attention",
            say("Near yield: {s} used", s=share),
            "Measure body and unit again, and type less interference.",
        )
    elif done:
        verdict = (
            "pass",
            say("Done: the bore fits, {w} of wall", w=wall),
            "Stop honing. Wash until a white rag stays white, then measure again with its unit.",
        )
    elif honing.bored_first(stock, i.most_hone):
        verdict = (
            "attention",
            say("Bore first: {a} to come off", a=stock),
            honing.plan(target, SIZE, i.least_hone, i.most_hone),
        )
    elif past(i.least_hone, stock):
        verdict = (
            "attention",
            say("Little left to hone: {a}", a=stock),
            (
                "It may not clean up. Look at the bore under a glass: where tool marks would stay, take"
                " another body."
            ),
        )
    else:
        verdict = (
            "pass",
            say("Hone {a} off, to {D}", a=stock, D=target),
            (
                "Short strokes, oil, and a look every few; let it cool before you measure. Leave a"
                " cross-hatch, no polish."
            ),
        )
    return answer(
        target,
        stock,
        wall,
        now,
        pressure,
        Out.hoop(fit.outer_joint_hoop(pressure, joint, outside), sources.LAME),
        body_used,
        unit_used,
        growth,
        closing,
        plunger_left,
        case_left,
        verdict=verdict,
        limits=(
            Limit("the wall left", wall, low=i.least_wall),
            Limit("the bore", i.bore, high=largest),
            Limit("the plunger's clearance", plunger_left, low=i.least_plunger),
            Limit("the clearance in the case", case_left, low=i.least_case),
            Limit("the body's stress", body_used, high=1),
            Limit("the unit's stress", unit_used, high=1),
            Limit("the margin of the body's stress", body_used, high=NEAR_YIELD, level="attention"),
            Limit("the margin of the unit's stress", unit_used, high=NEAR_YIELD, level="attention"),
            *(
                ()
                if done
                else (Limit("what comes off", stock, low=i.least_hone, high=i.most_hone, level="attention"),)
            ),
        ),
        remarks=(
            (
                note(
                    "Pressed in, the unit's bore closes: a plunger with {c} of clearance keeps {l}.",
                    c=constant("", "", FINE, float(i.plunger_bore - i.plunger)),
                    l=plunger_left,
                )
                if pressed
                else note(
                    "Slipped in it bears no stress. What holds it is the snap ring: “Snap ring and its"
                    " groove” works that out."
                )
            ),
            (
                warning(
                    "A hardened or chilled body is hard only so deep. Ask its maker before you bore through"
                    " the hard layer."
                )
                if past(stock, i.most_hone)
                else None
            ),
        ),
        cautions=(cautions.PRESS_TRAPPED,) if pressed else (),
        figures=(section(i.bore, i.unit_outside, i.body, i.plunger_bore, i.plunger, wall, float(i.runout)),),
    )


def section(bore, unit_outside, body, plunger_bore, plunger, wall, runout) -> Drawing:
    """Body with unit and plunger, cut through the axis, cam's end below."""
    o, d, u, i, p = (float(x) / 2 for x in (body, bore, unit_outside, plunger_bore, plunger))
    u = min(u, d)
    i, p = min(i, 0.97 * u), min(p, 0.97 * u, i)
    H, foot, bottom = 2.6 * o, 0.35 * o, 0.25 * u
    shapes = []
    for side in (-1, 1):
        shapes += [
            Area(tuple((side * x, y) for x, y in box(d, foot, o, H)), "a"),
            Area(tuple((side * x, y) for x, y in box(i, foot + bottom, u, 0.9 * H)), "b"),
        ]
    shapes += [
        Area(box(-o, 0, o, foot), "a"),
        Area(box(-u, foot, u, foot + bottom), "b"),
        Area(box(-p, 0.4 * H, p, 0.86 * H), "c"),
        Line(((0, -0.3 * o), (0, H + 0.3 * o)), "centre"),
    ]
    return Drawing(
        "Body with its plunger unit",
        say(
            "Section of a body of {o} with a bore of {d}, a unit of {u} in it and a plunger of {p}; {w} of"
            " wall is left.",
            o=body,
            d=bore,
            u=unit_outside,
            p=plunger,
            w=wall,
        ),
        (
            *shapes,
            Dimension((-d, H), (d, H), bore, 0.35 * o, "D"),
            Dimension((-o, H), (o, H), body, 0.85 * o, "D_o"),
            Dimension((-p, 0), (p, 0), plunger, -0.4 * o, "D_p"),
            Dimension((-u, 0), (u, 0), unit_outside, -0.9 * o, "D_u"),
            Label((1.2 * o, 0.5 * H), say("w {w}", w=wall), "start", ((d + o) / 2, 0.5 * H)),
        ),
    )
