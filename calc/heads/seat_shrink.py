"""How hot the head and how cold the ring must be for a seat ring to drop into its pocket."""
from calc import cautions, sources
from calc.calculator import Output, Outputs, answer, calculator, choice, given, measured, number
from calc.drawing import Axis, Plot, Series
from calc.formulas import press_fit as fit
from calc.heads.seat_fit import HEADS, RINGS
from calc.materials import MATERIALS, REFERENCE, Material, OutsideTable
from calc.quantity import EXPANSION, LENGTH, RATIO, TEMPERATURE, TEMPERATURE_DIFFERENCE, quantity
from calc.result import Table, impossible, note, say, warning
from calc.working import form, greatest, step

SIZE, TEMP, KELVINS, STRAIN = form(LENGTH, 3), form(TEMPERATURE, 0), form(TEMPERATURE_DIFFERENCE, 0), form(RATIO, 5)
COOLANTS = (("the room", 293.15), ("a freezer", 255.15), ("dry ice", 195.15), ("liquid nitrogen", 77.15))  # K: 20, −18, −78, −196 °C
COLDEST = COOLANTS[-1][1]
READING = 10.0  # K, common practice, no source: what a surface thermometer on a hot casting may be off


class Out(Outputs):
    head_temperature = Output("Head temperature needed", "T_h", TEMP, main=True)
    margin = Output("Left below the limit of the head", "ΔT_m", KELVINS, main=True)
    head_may_cool = Output("Head may cool before the ring sticks", "ΔT_h", KELVINS, main=True)
    ring_may_warm = Output("Ring may warm before it sticks", "ΔT_r", KELVINS)
    clearance_hand = Output("Clearance when the ring goes in", "c_in", SIZE)
    clearance_limit = Output("Clearance with the head at its limit", "c_max", SIZE)
    interference = Output("Interference, cold", "δ", SIZE)


@calculator(
    "seat-shrink", "Heat to fit a seat ring", Out,
    purpose="How hot must the head be, and how cold the ring, for the ring to drop in, and how long is there before it sticks?",
    finds=("shrink fit temperature", "heat the head", "freeze the seat ring", "dry ice", "liquid nitrogen", "assembly clearance", "oven temperature"),
    sources=(sources.THERMAL, sources.MATERIALS, sources.PRACTICE),
    cautions=(cautions.HOT_HEAD, cautions.BRITTLE_RING, cautions.MAKER_FIRST, cautions.AIRCRAFT))
def seat_shrink(
    pocket_bore: measured("Pocket bore", "D_p", SIZE, tool="a bore gauge set in a ring", hard=("10 mm", "90 mm"), usual=("25 mm", "60 mm"),
                          feature="head.seat_pocket_intake"),
    ring_outside: measured("Ring outside", "D_r", SIZE, tool="a micrometer", hard=("10 mm", "90 mm"), usual=("25 mm", "60 mm"),
                           feature="head.seat_ring_outside_intake"),
    ring_temperature: given("Ring, when it goes in", "T_r", TEMP, hard=("-196 °C", "60 °C", "liquid nitrogen boils at −196 °C"),
                            hint="In the room 20 °C, from a freezer −18 °C, from dry ice −78 °C, from liquid nitrogen −196 °C.") = "-78 °C",
    head_limit: given("Head may be heated to, at most", "T_max", TEMP, hard=("60 °C", "350 °C"), usual=("100 °C", "230 °C"),
                      hint="The maker's word first. A heat-treated aluminium casting begins to lose its temper near 200 °C.") = "200 °C",
    clearance: given("Clearance wanted to drop the ring in", "c", SIZE, hard=("0 mm", "0.3 mm"), usual=("0.03 mm", "0.1 mm"), fold=True,
                     hint="On the diameter. 0.05 mm lets a ring fall square; common practice, no source.") = "0.05 mm",
    ring_material: choice("Ring", {id: MATERIALS[id].name for id in RINGS}, fold=True) = "sintered-iron",
    head_material: choice("Head", {id: MATERIALS[id].name for id in HEADS}, fold=True) = "al-si-t6",
):
    """Free growth of pocket and ring from the 20 °C at which both were measured, each with its own mean coefficient.

    First order: leaves out interference × growth, less than a micrometre. Says nothing of how fast heat goes from head to ring.
    """
    ring, head = MATERIALS[ring_material], MATERIALS[head_material]
    if ring_outside <= pocket_bore:
        raise impossible("ring_outside", "is {ring}, not larger than the pocket {pocket}, so that it would fall in cold and hold nothing; give more than {pocket}",
                         ring=ring_outside, pocket=pocket_bore)
    if head_limit.value > head.hottest:
        raise impossible("head_limit", "is {t}, and properties of {name} are held only up to {top}; give {top} or less",
                         t=head_limit, name=head.name, top=_temperature(head.hottest))
    reference = number("T_0", "Reference temperature", TEMP, REFERENCE, sources.THERMAL)

    def growth(material, temperature, letter, words):
        mean = number(f"α_{letter}", f"Mean expansion of the {words}", form(EXPANSION, 1), material.mean_alpha(temperature), sources.MATERIALS)
        return step(f"ε_{letter}", f"Growth of the {words}", STRAIN, fit.free_strain(mean, temperature, reference), sources.THERMAL)

    def temperature(material, strain, letter, words):
        mean = number(f"α_{letter}", f"Mean expansion of the {words}", form(EXPANSION, 1), _mean_alpha_for(material, strain), sources.MATERIALS)
        return fit.temperature_for(strain, mean, reference)

    grip = Out.interference(ring_outside - pocket_bore)
    ring_growth = growth(ring, ring_temperature, "r", "ring when it goes in")
    wanted = step("ε_h", "Growth that the pocket needs", STRAIN,
                  greatest(fit.outer_strain_for_clearance(grip, clearance, pocket_bore, ring_growth), 0.0), sources.THERMAL)
    needed = Out.head_temperature(temperature(head, wanted, "h", "head at that heat"), sources.THERMAL)
    margin = Out.margin(head_limit - needed)
    at_hand = Out.clearance_hand(-fit.interference_at(grip, pocket_bore, ring_growth, wanted), sources.THERMAL)
    stuck_head = step("ε_h,s", "Growth of the pocket at which the ring sticks", STRAIN, fit.outer_strain_for_clearance(grip, 0.0, pocket_bore, ring_growth))
    may_cool = Out.head_may_cool(needed - temperature(head, stuck_head, "h,s", "head as the ring sticks"))
    stuck_ring = step("ε_r,s", "Growth of the ring at which it sticks", STRAIN, wanted - grip / pocket_bore)
    may_warm = Out.ring_may_warm(temperature(ring, stuck_ring, "r,s", "ring as it sticks") - ring_temperature)
    most = growth(head, head_limit, "h,max", "pocket at the limit")
    at_limit = Out.clearance_limit(-fit.interference_at(grip, pocket_bore, ring_growth, most), sources.THERMAL)

    def head_for(ring_at):
        """Head temperature needed with the ring at another temperature, K."""
        strain = max(fit.outer_strain_for_clearance(float(grip), float(clearance), float(pocket_bore), ring.strain_at(ring_at)), 0.0)
        return fit.temperature_for(strain, _mean_alpha_for(head, strain), REFERENCE)

    chill = None
    if margin < 0:
        strain = head.strain_at(head_limit) - (float(grip) + float(clearance)) / float(pocket_bore)
        chill = _temperature(ring.temperature_for(strain)) if strain >= ring.strain_at(COLDEST) else None
        if chill:
            words, cold = next((c for c in COOLANTS if head_for(c[1]) <= float(head_limit)))
            verdict = ("fail", say("Over the limit: the head would need {t}", t=needed),
                       say("Chill the ring. From " + words + " at {cold} the head needs {t}; with the head at its limit {limit}, {chill} or colder is enough.",
                           cold=_temperature(cold), t=_temperature(head_for(cold)), limit=head_limit, chill=chill))
        else:
            room = float(pocket_bore) * (head.strain_at(head_limit) - ring.strain_at(COLDEST)) - float(clearance)
            verdict = ("fail", say("Does not go in even at {cold}", cold=_temperature(COLDEST)),
                       say("Do not drive it. Measure both again. The largest ring that drops in, chilled in liquid nitrogen and with the head at its limit, is {d}.",
                           d=number("", "", SIZE, float(pocket_bore) + room))
                       if room > 0 else
                       say("Do not drive it. No ring drops into this pocket with {c} to spare and the head at {limit}: ask for less clearance.", c=clearance, limit=head_limit))
    elif needed <= REFERENCE * _ONE_KELVIN:
        verdict = ("pass", "No heat needed: the cold ring drops in", say(
            "Warm the head until it is dry, so that no frost forms in the pocket. There is {c} to spare at first; hold the ring down until it grips.", c=at_hand))
    elif margin < READING * _ONE_KELVIN:
        verdict = ("attention", say("Heat to {t}: close to the limit", t=needed),
                   say("A surface thermometer may be off by {off}, and only {m} are left. Check it in boiling water, or chill the ring more.",
                       off=number("", "", KELVINS, READING), m=margin))
    else:
        verdict = ("pass", say("Heat the head to {t}", t=needed), say(
            "Soak it at that heat all through. Read it beside the pocket, with a surface thermometer or a temperature crayon. "
            "Then ring in, at once and square, and hold it down until it grips: it sticks when the head has cooled {k}.", k=may_cool))
    own = head.limit_temperature
    beyond = float(needed) > head.hottest
    return answer(
        needed, margin, may_cool, may_warm, at_hand, at_limit, grip,
        verdict=verdict,
        remarks=(
            warning("{name} begins to lose its temper above {t}, and the limit given is {limit}: an hour there costs strength for good.",
                    name=head.name, t=_temperature(own), limit=head_limit) if own and head_limit.value > own else None,
            warning("No expansion of {name} is held above {t}; the head temperature is drawn out from there and rough.", name=head.name, t=_temperature(head.hottest))
            if beyond else None,
            note("Frost on a chilled ring takes up the clearance: wipe it off dry, and carry the ring from the cold to the pocket in one move.")
            if ring_temperature < 273.15 * _ONE_KELVIN else None,
            note("How fast a ring warms is not computed here: it is a matter of seconds. Have the driver, its guide and gauntlets at hand, the lead of the ring downwards, and try the moves once cold."),
        ),
        cautions=(cautions.FROZEN_RING,) if ring_temperature < 273.15 * _ONE_KELVIN or margin < 0 else (),
        tables=(Table("What chilling the ring is worth", ("Ring from", "at", "Head needs", "Left below the limit"),
                      tuple((words, _temperature(t), _temperature(head_for(t)), number("", "", KELVINS, float(head_limit) - head_for(t))) for words, t in COOLANTS),
                      tuple("pass" if head_for(t) <= float(head_limit) - READING else "attention" if head_for(t) <= float(head_limit) else "fail" for _, t in COOLANTS)),),
        figures=(_plot(head_for, float(ring_temperature), needed, head_limit),))


_ONE_KELVIN = number("", "", KELVINS, 1.0)


def _temperature(kelvin: float):
    return number("", "", TEMP, kelvin)


def _mean_alpha_for(material: Material, strain) -> float:
    """Mean coefficient that goes with a free strain, 1/K; past the material's table that of its nearer end."""
    try:
        return material.mean_alpha(material.temperature_for(strain))
    except OutsideTable:
        return material.mean_alpha(material.hottest if float(strain) > 0 else quantity("-200 °C", TEMPERATURE))


def _plot(head_for, ring_at, needed, head_limit) -> Plot:
    """Head temperature needed over the ring's, with the head's limit."""
    low, high = COLDEST, max(REFERENCE, ring_at)
    curve = tuple((t, head_for(t)) for t in (low + (high - low) * i / 24 for i in range(25)))
    return Plot("Head temperature needed, by the ring's", say("Falls as the ring gets colder; {t} for the ring as given, the head's limit is {limit}.", t=needed, limit=head_limit),
                Axis("Ring, when it goes in", TEMP), Axis("Head", TEMP),
                (Series("", curve), Series("limit of the head", ((low, float(head_limit)), (high, float(head_limit))), "limit")),
                ((ring_at, float(needed), "this ring"),))
