"""Grip of a valve-seat ring in its pocket: cold, and with ring and head each at its own running temperature."""
import math

from calc import cautions, sources
from calc.advice import at_least, at_most
from calc.calculator import Limit, Output, Outputs, answer, calculator, choice, given, measured, number
from calc.conformance import past
from calc.drawing import Area, Axis, Dimension, Drawing, Line, Plot, Series, box
from calc.formulas import press_fit as fit
from calc.growth import growth, reference_temperature
from calc.materials import MATERIALS, REFERENCE
from calc.quantity import FORCE, LENGTH, MODULUS, RATIO, ROUGHNESS, STRESS, TEMPERATURE
from calc.result import impossible, note, say, warning
from calc.working import form, greatest, least, step

SIZE, SMALL, TEMP, MPA, SHARE = form(LENGTH, 3), form(LENGTH, 1), form(TEMPERATURE, 0), form(STRESS, 1), form(RATIO, 0, "%", "%")
RINGS = ("sintered-iron", "high-chrome-iron", "grey-iron", "cobalt-alloy", "aluminium-bronze", "copper-nickel-silicon")
HEADS = ("al-si-t6", "al-si-cu-t6", "grey-iron")
NEAR_YIELD = 0.9  # common practice, no source: nearer than a tenth, the doubt of the readings alone decides

THIN = number("", "", SMALL, 1.5e-3)  # rings are two to six millimetres thick; common practice, no source


class Out(Outputs):
    interference = Output("Interference, cold", "δ", SIZE, main=True, rises="ring_outside", falls="pocket_bore")
    interference_hot = Output("Interference left, running", "δ_hot", SIZE, main=True,
                              rises="ring_outside ring_temperature", falls="pocket_bore head_temperature ring_roughness pocket_roughness")
    interference_stopped = Output("Interference left, stopped hot", "δ_stop", SIZE,
                                  rises="ring_outside", falls="pocket_bore ring_roughness pocket_roughness")
    pressure = Output("Contact pressure, cold", "p", MPA, rises="ring_outside head_wall", falls="ring_bore ring_roughness pocket_roughness")
    pressure_hot = Output("Contact pressure, running", "p_hot", MPA,
                          rises="ring_outside head_wall", falls="ring_bore head_temperature ring_roughness pocket_roughness")
    ring_hoop = Output("Hoop stress at the ring's bore, cold", "σ_r", form(STRESS, 0),
                       rises="ring_roughness pocket_roughness", falls="ring_outside head_wall")
    head_hoop = Output("Hoop stress at the pocket, cold", "σ_h", form(STRESS, 0),
                       rises="ring_outside", falls="ring_bore head_wall ring_roughness pocket_roughness")
    ring_used = Output("Ring: share of its yield used, at worst", "U_r", SHARE,
                       rises="ring_outside head_wall", falls="head_temperature ring_roughness pocket_roughness")
    head_used = Output("Head: share of its yield used, at worst", "U_h", SHARE,
                       rises="ring_outside", falls="ring_bore ring_roughness pocket_roughness")
    hold = Output("Force that holds the ring, cold", "F", form(FORCE, 0),
                  rises="ring_outside depth head_wall friction", falls="ring_bore ring_roughness pocket_roughness")
    hold_hot = Output("Force that holds the ring, running", "F_hot", form(FORCE, 0),
                      rises="ring_outside depth head_wall friction", falls="ring_bore head_temperature ring_roughness pocket_roughness")
    ring_wanted = Output("Ring outside that holds in this pocket, least", "D_want", SIZE,
                         rises="pocket_bore ring_roughness pocket_roughness least_grip", falls="ring_temperature")
    ring_most = Output("Ring outside that this pocket bears, most", "D_most", SIZE, rises="pocket_bore ring_roughness pocket_roughness")


@calculator(
    "seat-fit", "Seat ring in its pocket", Out,
    purpose="Does this ring hold in this pocket, cold and running, without ring or head giving way?",
    finds=("valve seat interference", "seat insert press fit", "shrink fit of a seat", "loose seat", "dropped seat", "pocket bore size", "oversize seat ring"),
    sources=(sources.LAME, sources.MISES, sources.THERMAL, sources.MATERIALS, sources.PRACTICE),
    cautions=(cautions.HOT_HEAD, cautions.BRITTLE_RING, cautions.MAKER_FIRST, cautions.AIRCRAFT))
def seat_fit(
    pocket_bore: measured("Pocket bore", "D_p", SIZE, tool="a bore gauge set in a ring", hard=("10 mm", "90 mm"), usual=("25 mm", "60 mm"),
                          feature="head.seat_pocket_intake", of="head_material"),
    ring_outside: measured("Ring outside", "D_r", SIZE, tool="a micrometer", hard=("10 mm", "90 mm"), usual=("25 mm", "60 mm"),
                           feature="head.seat_ring_outside_intake", of="ring_material"),
    ring_bore: measured("Ring bore", "d_r", form(LENGTH, 2), tool="a calliper or bore gauge", hard=("4 mm", "88 mm"), feature="head.seat_ring_bore_intake"),
    depth: measured("Depth of the fit", "h", form(LENGTH, 2), tool="a depth gauge", hard=("1 mm", "30 mm"), usual=("4 mm", "12 mm"),
                    feature="head.seat_pocket_depth", hint="The length on which ring and pocket touch, without the lead."),
    head_wall: measured("Least wall round the pocket", "w", SMALL, tool="a calliper, at the thinnest place", hard=("1 mm", "100 mm"),
                        usual=("3 mm", "25 mm"), feature="head.seat_pocket_wall", hint="Towards the other seat, the plug or a stud."),
    ring_material: choice("Ring", {id: MATERIALS[id].name for id in RINGS}, fold=True) = "sintered-iron",
    head_material: choice("Head", {id: MATERIALS[id].name for id in HEADS}, fold=True) = "al-si-t6",
    ring_temperature: given("Ring, running", "T_r", TEMP, hard=("-60 °C", "600 °C"), usual=("80 °C", "450 °C"), fold=True,
                            hint="Intake rings run near 200 to 250 °C, exhaust rings 300 °C and more; common practice, no source.") = "230 °C",
    head_temperature: given("Head at the pocket, running", "T_h", TEMP, hard=("-60 °C", "400 °C"), usual=("80 °C", "230 °C"), fold=True) = "180 °C",
    ring_roughness: given("Roughness of the ring, Rz", "Rz_r", form(ROUGHNESS, 1), hard=("0 µm", "40 µm"), usual=("0 µm", "16 µm"), fold=True) = "4 µm",
    pocket_roughness: given("Roughness of the pocket, Rz", "Rz_p", form(ROUGHNESS, 1), hard=("0 µm", "40 µm"), usual=("0 µm", "16 µm"), fold=True) = "6.3 µm",
    friction: given("Friction of ring on head", "µ", form(RATIO, 2), hard=("0.02", "0.6"), usual=("0.08", "0.25"), fold=True,
                    hint="Dry iron in aluminium about 0.1 to 0.2.") = "0.12",
    least_grip: given("Interference wanted, least", "δ_min", SIZE, hard=("0 mm", "0.3 mm"), usual=("0.005 mm", "0.06 mm"), fold=True,
                      hint="Cold, running, and stopped hot. Common practice, no source.") = "0.015 mm",
):
    """Grip of a seat ring, judged as two thick cylinders (Lamé, plane stress), the head taken as a ring with the least wall.

    Elastic; one temperature in each part. Past yield the pressure shown is more than there really is. Cold, running, and just
    after stopping, when the ring has come down to the head's heat while the head is still hot: then an iron ring holds least.
    """
    ring, head = MATERIALS[ring_material], MATERIALS[head_material]
    if ring_bore >= ring_outside:
        raise impossible("ring_bore", "is {bore}, not smaller than the ring's outside {outside}; give less than {outside}", bore=ring_bore, outside=ring_outside)
    if ring_bore >= pocket_bore:
        raise impossible("ring_bore", "is {bore}, not smaller than the pocket {pocket}; give less than {pocket}", bore=ring_bore, pocket=pocket_bore)
    reference = reference_temperature()
    outside = step("D_o", "Outside of the head's ring round the pocket", SIZE, pocket_bore + 2 * head_wall)
    a = step("a", "Shape of the ring", form(RATIO, 3), fit.inner_shape(ring_bore, pocket_bore), sources.LAME)
    b = step("b", "Shape of the head round it", form(RATIO, 3), fit.outer_shape(pocket_bore, outside), sources.LAME)

    def give(hot):
        """Interference that a unit of pressure takes up, per diameter."""
        parts = []
        for material, letter, temperature in ((ring, "r", ring_temperature), (head, "h", head_temperature)):
            E = material.modulus_at(temperature) if hot else material.E
            parts += [number(f"E_{letter}{',hot' if hot else ''}", f"Stiffness of the {material.name}", form(MODULUS, 0), E, sources.MATERIALS),
                      number(f"ν_{letter}", f"Poisson's ratio of the {material.name}", form(RATIO, 2), material.nu, sources.MATERIALS)]
        return fit.compliance(a, b, *parts)

    def yield_pressures(hot):
        """Pressure at which each part begins to yield, by von Mises, where it is loaded most."""
        when = "hot" if hot else "cold"
        limits = (ring.compressive_yield_at(ring_temperature if hot else REFERENCE), head.yield_at(head_temperature if hot else REFERENCE))
        limits = [number(f"R_{letter},{when}", f"Yield stress of the {part.name}, {when}", form(STRESS, 0), limit, sources.MATERIALS)
                  for limit, letter, part in zip(limits, "rh", (ring, head))]
        return (step(f"p_r,{when}", f"Pressure at which the ring begins to yield, {when}", MPA, fit.inner_yield_pressure(limits[0], ring_bore, pocket_bore), sources.MISES),
                step(f"p_h,{when}", f"Pressure at which the head begins to yield, {when}", MPA, fit.outer_yield_pressure(limits[1], pocket_bore, outside), sources.MISES))

    grip = Out.interference(ring_outside - pocket_bore)
    loss = step("δ_z", "Interference lost to roughness", SIZE, fit.roughness_loss(ring_roughness, pocket_roughness), sources.ROUGHNESS_LOSS)
    bearing = step("δ_e", "Interference that bears", SIZE, grip - loss)
    ring_growth = growth(ring, ring_temperature, reference, "r", "ring", "ring_temperature")
    head_growth = growth(head, head_temperature, reference, "h", "head", "head_temperature")
    ring_stopped = growth(ring, head_temperature, reference, "r,stop", "ring at the head's heat", "head_temperature")
    hot = Out.interference_hot(fit.interference_at(bearing, pocket_bore, ring_growth, head_growth), sources.THERMAL)
    stopped = Out.interference_stopped(fit.interference_at(bearing, pocket_bore, ring_stopped, head_growth), sources.THERMAL)
    cold_give, hot_give = give(False), give(True)
    pressure = Out.pressure(fit.contact_pressure(bearing, pocket_bore, cold_give), sources.LAME)
    pressure_hot = Out.pressure_hot(fit.contact_pressure(hot, pocket_bore, hot_give), sources.LAME)
    cold_yield, hot_yield = yield_pressures(False), yield_pressures(True)
    ring_used, head_used = (out(greatest(pressure / cold, pressure_hot / warm), sources.MISES) for out, cold, warm in zip(
        (Out.ring_used, Out.head_used), cold_yield, hot_yield))
    borne_cold = step("δ_y", "Interference at which yield begins, cold", SIZE, fit.interference_for(least(*cold_yield), pocket_bore, cold_give), sources.LAME)
    borne_hot = step("δ_y,hot", "Interference at which yield begins, running", SIZE, fit.interference_for(least(*hot_yield), pocket_bore, hot_give), sources.LAME)
    wanted = Out.ring_wanted(pocket_bore + loss + least_grip + greatest(bearing - hot, bearing - stopped, 0.0))
    most = Out.ring_most(pocket_bore + loss + least(borne_cold, borne_hot + (bearing - hot)))

    left, when = min((bearing, "cold"), (hot, "when running"), (stopped, "when stopped hot"), key=lambda pair: float(pair[0]))
    part, share = ("Head", head_used) if head_used > ring_used else ("Ring", ring_used)

    def advise(words):
        """What to do, and which ring would serve: the window in whole micrometres, taken inwards."""
        small, large = math.ceil(float(wanted) * 1e6) / 1e6, math.floor(float(most) * 1e6) / 1e6
        if small <= large:
            return say(words + " For this pocket take a ring of {w} to {m}.", w=at_least(wanted, SIZE), m=at_most(most, SIZE))
        return words + " No ring serves this pocket as it runs: what holds hot already overloads it. Look for a ring that grows more, a thicker wall, or less heat."
    if grip <= 0:
        verdict = ("fail", say("Falls in: ring {d} under the pocket", d=number("", "", SIZE, -float(grip))), advise("Do not fit this ring."))
    elif bearing <= 0:
        verdict = ("fail", say("No grip: roughness takes up all {d}", d=grip), advise("Do not fit this ring."))
    elif left <= 0:
        verdict = ("fail", say("Comes loose: {d} left " + when, d=left), advise("Do not fit this ring."))
    elif share > 1:
        verdict = ("fail", say(part + (" may crack" if part == "Head" and head.brittle else " yields") + ": {s} of its strength", s=share), advise("Do not fit this ring."))
    elif past(least_grip, left):
        verdict = ("attention", say("Little grip: {d} left " + when, d=left), advise("Measure both again."))
    elif share > NEAR_YIELD:
        verdict = ("attention", say("Holds, but near yield: {s} used", s=share), advise("Measure both again."))
    else:
        verdict = ("pass", say("Holds: {d} left when running", d=hot), "Fit it. “Heat to fit a seat ring” tells how hot the head must be; have everything at hand first.")
    hold_hot = Out.hold_hot(fit.holding_force(pressure_hot, friction, pocket_bore, depth), sources.FRICTION_HOLD)
    limit = head.limit_temperature
    return answer(
        grip, hot, stopped, pressure, pressure_hot, Out.ring_hoop(fit.inner_bore_hoop(pressure, ring_bore, pocket_bore), sources.LAME),
        Out.head_hoop(fit.outer_joint_hoop(pressure, pocket_bore, outside), sources.LAME), ring_used, head_used,
        Out.hold(fit.holding_force(pressure, friction, pocket_bore, depth), sources.FRICTION_HOLD),
        hold_hot, wanted, most,
        verdict=verdict,
        limits=(Limit("the least grip left", left, low=0), Limit("the head's stress", head_used, high=1), Limit("the ring's stress", ring_used, high=1)),
        remarks=(
            warning("Interference of {d} is more than one part in 150 of the bore: were pocket and ring read at the same place, and from the same engine?", d=grip)
            if grip > pocket_bore / 150 else None,
            warning("The ring's wall is {w}, and rings have {thin} at least; common practice, no source. When running it grips with {F} only: was its bore read right?",
                    w=number("", "", form(LENGTH, 2), float(ring_outside - ring_bore) / 2), thin=THIN, F=hold_hot) if past(2 * THIN, ring_outside - ring_bore) else None,
            warning("Past yield the real pressure is less than shown, and part of the interference is gone for good once the head has been hot.")
            if share > 1 else None,
            warning("{name} begins to lose its temper above {t}.", name=head.name, t=number("", "", TEMP, limit)) if limit and float(head_temperature) > limit else None,
            note("The wall round a pocket is not even. The thinnest was taken: pressure and grip come out on the low side, the stress in that wall about right."),
        ),
        figures=(section(pocket_bore, ring_outside, ring_bore, depth, head_wall), grip_plot(
            float(bearing), float(pocket_bore), ring, head, float(ring_temperature), float(head_temperature), hot, stopped, least_grip)))


def section(pocket_bore, ring_outside, ring_bore, depth, head_wall) -> Drawing:
    """Ring in its pocket, cut through the axis."""
    bore, inside, deep = float(pocket_bore) / 2, float(ring_bore) / 2, float(depth)
    outer, floor = bore + float(head_wall), deep * 0.9
    port = inside * 0.94
    shapes = []
    for side in (-1, 1):
        shapes += [Area(tuple((side * x, y) for x, y in ((bore, 0), (outer, 0), (outer, -deep - floor), (port, -deep - floor), (port, -deep), (bore, -deep))), "a"),
                   Area(tuple((side * x, y) for x, y in box(inside, -deep, bore, 0)), "b")]
    return Drawing(
        "Ring in its pocket", say("Section through head and ring: pocket {p}, ring outside {o}, ring bore {i}, depth {h}, wall {w}.",
                                  p=pocket_bore, o=ring_outside, i=ring_bore, h=depth, w=head_wall),
        (*shapes, Line(((0, deep * 0.5), (0, -deep - floor * 1.3)), "centre"),
         Dimension((-inside, -deep * 0.5), (inside, -deep * 0.5), ring_bore, 0, "d_r"),
         Dimension((-bore, 0), (bore, 0), ring_outside, deep * 0.75, "D_r"),
         Dimension((-bore, 0), (bore, 0), pocket_bore, deep * 1.7, "D_p"),
         Dimension((outer, -deep), (outer, 0), depth, -deep * 0.6, "h")))


def grip_plot(bearing, joint, ring, head, ring_hot, head_hot, hot, stopped, least_grip) -> Plot | None:
    """Interference left over the head's temperature: the ring hotter in proportion, as when running, and as warm as the head."""
    if abs(head_hot - REFERENCE) < 1:
        return None  # a head that stays cold has nothing to show
    running, level = [], []
    for i in range(21):
        t_ring, t_head = (REFERENCE + i / 20 * (t - REFERENCE) for t in (ring_hot, head_hot))
        running.append((t_head, fit.interference_at(bearing, joint, ring.strain_at(t_ring), head.strain_at(t_head))))
        level.append((t_head, fit.interference_at(bearing, joint, ring.strain_at(t_head), head.strain_at(t_head))))
    ends = (running[0][0], running[-1][0])
    return Plot("Interference left as the head warms up", say("{d} is left at running heat, {s} when stopped hot.", d=hot, s=stopped),
                Axis("Head at the pocket", TEMP), Axis("Interference", SIZE),
                (Series("", tuple(running)), Series("stopped hot", tuple(level), "dashed"), Series("wanted", tuple((t, float(least_grip)) for t in ends), "limit"),
                 Series("loose below", tuple((t, 0.0) for t in ends), "limit")),
                ((head_hot, float(hot), "running"),))
