"""How hot the head and how cold the ring must be for a seat ring to drop into its pocket."""

from calc.core.advice import at_most
from calc.core.drawing import Axis, Plot, Series
from calc.core.kinds import EXPANSION, LENGTH, RATIO, TEMPERATURE, TEMPERATURE_DIFFERENCE
from calc.core.result import Table, impossible, note, say, warning
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
from calc.reference.materials import COLDEST, MATERIALS, REFERENCE, Material, OutsideTable
from calc.stations.heads import HEADS
from calc.stations.heads.seat_ring import RINGS
from calc.stations.shared.own_material import own_grade, own_values

SIZE, TEMP, KELVINS, STRAIN = (
    form(LENGTH, 3),
    form(TEMPERATURE, 0),
    form(TEMPERATURE_DIFFERENCE, 0),
    form(RATIO, 5),
)


def _at(kelvin: float):
    return constant("", "", TEMP, kelvin)


FREEZING, WARM = _at(273.15), _at(353.15)
BATHS = (
    ("the room", _at(293.15)),
    ("a freezer", _at(255.15)),
    ("dry ice", _at(195.15)),
    ("liquid nitrogen", _at(77.15)),
)  # warmest first
READING = constant(
    "", "", KELVINS, 10.0
)  # common practice, no source: what a contact thermometer on a hot casting may be off
# Below the heat at which an alloy loses its temper: an hour at that heat is its edge (A356's strength falls fast above about 200 °C: Modern
# Casting, June 2023), so that ovens are set 25 to 40 K lower; common practice, no source.
EASY = constant("", "", KELVINS, 25.0)


class Out(Outputs):
    head_temperature = Output("Head temperature needed", "T_h", TEMP, main=True)
    margin = Output("Left below the limit of the head", "ΔT_m", KELVINS, main=True)
    head_may_cool = Output("Head may cool before the ring sticks", "ΔT_h", KELVINS, main=True)
    ring_may_warm = Output("Ring may warm before it sticks", "ΔT_r", KELVINS)
    clearance_in = Output("Clearance as the ring goes in", "c_in", SIZE)
    clearance_limit = Output("Clearance with the head at its limit", "c_max", SIZE)
    interference = Output("Interference, cold", "δ", SIZE)


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
    ring_temperature: Number = given(
        "Ring temperature, when it goes in",
        "T_r",
        TEMP,
        hard=("-196 to 60 °C", "liquid nitrogen boils at −196 °C"),
        must=True,
        hint=(
            "In the room 20 °C, out of a freezer −18 °C, out of dry ice −78 °C, out of liquid nitrogen −196"
            " °C. The colder, the cooler the head may stay."
        ),
        example="-196 °C",
    )
    head_limit: Number = given(
        "Head may be heated to, at most",
        "T_max",
        TEMP,
        hard="60 to 350 °C",
        usual="100 to 200 °C",
        assumed=(
            "200 °C",
            "edge of the temper of a heat-treated aluminium casting; common practice, no source",
        ),
        hint="The maker's word first. An hour at 200 °C is the edge; 160 to 175 °C leave the temper alone.",
    )
    clearance: Number = given(
        "Clearance wanted to drop the ring in",
        "c",
        SIZE,
        hard="0 to 0.3 mm",
        usual="0.03 to 0.1 mm",
        fold=True,
        assumed=("0.05 mm", "lets a ring fall square; common practice, no source"),
        hint="On the diameter.",
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


@calculator(
    "seat-shrink",
    "Heat to fit a seat ring",
    In,
    Out,
    purpose=(
        "How hot must the head be, and how cold the ring, for the ring to drop in, and what may be lost"
        " before it sticks?"
    ),
    finds=(
        "shrink fit temperature",
        "heat the head",
        "freeze the seat ring",
        "dry ice",
        "liquid nitrogen",
        "assembly clearance",
        "oven temperature",
    ),
    sources=(sources.THERMAL, sources.MATERIALS, sources.PRACTICE),
    cautions=(
        cautions.HOT_HEAD,
        cautions.OVEN,
        cautions.BRITTLE_RING,
        cautions.MAKER_FIRST,
        cautions.AIRCRAFT,
    ),
)
def seat_shrink(i: In) -> Answer:
    """Free growth of pocket and ring from the 20 °C at which both were measured, each with its own mean coefficient.

    First order: leaves out interference × growth, less than a micrometre. Says nothing of how fast heat goes from head to ring.
    """
    ring, head = (own_grade(MATERIALS[id], row) for id, row in zip((i.ring_material, i.head_material), i.own))
    if i.ring_outside <= i.pocket_bore:
        raise impossible(
            "ring_outside",
            "is {ring}, not larger than the pocket {pocket}, so that it would drop in cold and hold nothing;"
            " give more than {pocket}",
            ring=i.ring_outside,
            pocket=i.pocket_bore,
        )
    most_grip = i.pocket_bore / 50
    if i.ring_outside - i.pocket_bore > most_grip:
        raise impossible(
            "ring_outside",
            "is {ring}, {d} over the pocket {pocket}, more than heat can make up; give {most} or less, or"
            " measure both again",
            ring=i.ring_outside,
            d=constant("", "", SIZE, float(i.ring_outside - i.pocket_bore)),
            pocket=i.pocket_bore,
            most=constant("", "", SIZE, float(i.pocket_bore + most_grip)),
        )
    if float(i.head_limit) > head.hottest:
        raise impossible(
            "head_limit",
            "is {t}, and properties of {name} are held only up to {top}; give {top} or less, or another"
            " material",
            t=i.head_limit,
            name=head.name,
            top=_at(head.hottest),
        )
    reference = constant("T_0", "Reference temperature", TEMP, REFERENCE, sources.THERMAL)

    def coefficient(alpha, letter, words):
        return constant(
            f"α_{letter}", f"Mean expansion of the {words}", form(EXPANSION, 1), alpha, sources.MATERIALS
        )

    def growth(material, temperature, letter, words):
        alpha = coefficient(material.mean_alpha(temperature), letter, words)
        return step(
            f"ε_{letter}",
            f"Growth of the {words}",
            STRAIN,
            fit.free_strain(alpha, temperature, reference),
            sources.THERMAL,
        )

    def temperature(material, strain, letter, words):
        return fit.temperature_for(
            strain, coefficient(_mean_alpha_for(material, strain), letter, words), reference
        )

    grip = Out.interference(i.ring_outside - i.pocket_bore)
    ring_growth = growth(ring, i.ring_temperature, "r", "ring as it goes in")
    wanted = step(
        "ε_h",
        "Growth that the pocket needs",
        STRAIN,
        greatest(fit.outer_strain_for_clearance(grip, i.clearance, i.pocket_bore, ring_growth), 0.0),
        sources.THERMAL,
    )
    needed = Out.head_temperature(temperature(head, wanted, "h", "head at that heat"), sources.THERMAL)
    margin = Out.margin(i.head_limit - needed)
    most = growth(head, i.head_limit, "h,max", "pocket at the limit")
    clearance_limit = Out.clearance_limit(
        -fit.interference_at(grip, i.pocket_bore, ring_growth, most), sources.THERMAL
    )
    heated = step("T_in", "Head as the ring goes in, at its limit at most", TEMP, least(needed, i.head_limit))
    grown = step("ε_in", "Growth of the pocket as the ring goes in", STRAIN, least(wanted, most))
    clearance_in = Out.clearance_in(
        -fit.interference_at(grip, i.pocket_bore, ring_growth, grown), sources.THERMAL
    )
    head_sticks = step(
        "ε_h,s",
        "Growth of the pocket at which the ring sticks",
        STRAIN,
        ring_growth + grip / i.pocket_bore,
        sources.THERMAL,
    )
    may_cool = Out.head_may_cool(heated - temperature(head, head_sticks, "h,s", "head as the ring sticks"))
    ring_sticks = step(
        "ε_r,s",
        "Growth of the ring at which it sticks",
        STRAIN,
        grown - grip / i.pocket_bore,
        sources.THERMAL,
    )
    may_warm = Out.ring_may_warm(
        temperature(ring, ring_sticks, "r,s", "ring as it sticks") - i.ring_temperature
    )

    def head_for(ring_at) -> float:
        """Head temperature needed with the ring at any temperature, K."""
        strain = max(
            fit.outer_strain_for_clearance(
                float(grip), float(i.clearance), float(i.pocket_bore), ring.strain_at(ring_at)
            ),
            0.0,
        )
        return fit.temperature_for(strain, _mean_alpha_for(head, strain), REFERENCE)

    temper = head.limit_temperature
    easy = _at(temper - float(EASY)) if temper else None
    if margin < 0:
        verdict = _over_the_limit(
            i.pocket_bore, grip, i.clearance, ring, float(most), i.head_limit, easy, needed, head_for
        )
    elif min(may_cool, may_warm) < READING:
        verdict = (
            "attention",
            say("Hardly any room: {c} as the ring goes in", c=clearance_in),
            say(
                "It sticks once the head has cooled {k} or the ring has warmed {r}: no hand is so quick. Ask"
                " for more clearance.",
                k=may_cool,
                r=may_warm,
            ),
        )
    elif float(wanted) == 0:
        verdict = (
            "pass",
            "No heat needed: the cold ring drops in",
            say(
                "There is {c} to spare at first. Warm the head by hand until it is dry, so that no frost"
                " forms in the pocket, and hold the ring down until it grips.",
                c=clearance_in,
            ),
        )
    elif temper and float(needed) > temper:
        verdict = (
            "attention",
            say("Heat to {t} softens the head", t=needed),
            say(
                "{name} begins to lose its temper above {limit}, for good. Chill the ring more; go past"
                " {limit} only if the maker of this head allows it.",
                name=head.name,
                limit=_at(temper),
            ),
        )
    elif temper and needed > easy:
        colder = next(((words, bath) for words, bath in BATHS if head_for(bath) <= float(easy)), None)
        verdict = (
            "attention",
            say("Heat to {t}: near the temper's edge", t=needed.held_to(None, float(easy))),
            say(
                "{colder} If it must be so hot, take it out as soon as it is soaked through.",
                colder=(
                    say(
                        "Chill the ring more: out of {bath} at {at} the head needs {t}.",
                        bath=colder[0],
                        at=colder[1],
                        t=_at(head_for(colder[1])),
                    )
                    if colder
                    else say(
                        "No bath is cold enough to keep the head at {easy}: ask for less clearance.",
                        easy=easy,
                    )
                ),
            ),
        )
    elif margin < READING:
        verdict = (
            "attention",
            say("Heat to {t}, close to the limit", t=needed),
            say(
                "A contact thermometer may be off by {off}. Check yours in boiling water first, or chill the"
                " ring more.",
                off=READING,
            ),
        )
    else:
        verdict = (
            "pass",
            say("Heat the head to {t}", t=needed),
            say(
                "Soak it at that heat all through, and read it in the pocket with a contact thermometer, or"
                " beside it with a temperature crayon. Then ring in, square and in one move, and hold it down"
                " until it grips: it sticks once the head has cooled {k}.",
                k=may_cool,
            ),
        )
    rows = [(words, bath, _at(head_for(bath))) for words, bath in BATHS]
    return answer(
        needed,
        margin,
        may_cool,
        may_warm,
        clearance_in,
        clearance_limit,
        grip,
        verdict=verdict,
        limits=(
            Limit("the heat of the head", margin, low=0.0),
            Limit("the temper of the head", needed, high=easy, level="attention"),
        ),
        remarks=(
            (
                warning(
                    "{name} begins to lose its temper above {t}, and the limit given is {limit}: what is lost"
                    " there is lost for good.",
                    name=head.name,
                    t=_at(temper),
                    limit=i.head_limit,
                )
                if temper and float(i.head_limit) > temper
                else None
            ),
            (
                warning(
                    "Expansion of {name} is held only up to {t}: the head temperature is drawn out from"
                    " there, and rough.",
                    name=head.name,
                    t=_at(head.hottest),
                )
                if float(needed) > head.hottest
                else None
            ),
            (
                note(
                    "Guides loosen in the oven too. Near {t} an iron guide of usual fit keeps hardly any grip"
                    " and may slide while you work: measure the height of each before and after.",
                    t=_at(473.15),
                )
                if heated > WARM
                else None
            ),
            (
                note(
                    "Frost on a chilled ring takes up the clearance: wipe it off, and go from the cold to the"
                    " pocket in one move."
                )
                if i.ring_temperature < FREEZING
                else None
            ),
            note(
                "How fast the ring warms is not computed here; reckon with seconds. The two allowances hold"
                " each alone: while the ring warms, the head cools. Lay out the driver, its guide and the"
                " gauntlets, know which way up the ring goes, and go through the moves once cold."
            ),
        ),
        cautions=(cautions.FROZEN_RING,) if i.ring_temperature < FREEZING or margin < 0 else (),
        tables=(
            Table(
                "What chilling the ring is worth",
                ("Ring out of", "at", "Head needs", "Left below the limit"),
                tuple(
                    (words, bath, t, constant("", "", KELVINS, float(i.head_limit) - float(t)))
                    for words, bath, t in rows
                ),
                tuple(
                    (
                        "fail"
                        if t > i.head_limit
                        else "attention"
                        if i.head_limit - t < READING or temper and t > easy
                        else "pass"
                    )
                    for _, _, t in rows
                ),
            ),
        ),
        figures=(_plot(head_for, float(i.ring_temperature), needed, i.head_limit),),
    )


def _over_the_limit(
    pocket_bore, grip, clearance, ring: Material, pocket_at_limit: float, head_limit, easy, needed, head_for
):
    """Verdict where the head would get too hot: how cold the ring must be, or that cold is not enough either."""
    coldest = BATHS[-1][1]
    ring_growth = pocket_at_limit - (float(grip) + float(clearance)) / float(pocket_bore)
    if ring_growth >= ring.strain_at(coldest):
        heats = (
            *([min(float(easy), float(head_limit) - float(READING))] if easy else ()),
            float(head_limit) - float(READING),
            float(head_limit),
        )  # the better first
        words, bath = next(((w, b) for heat in heats for w, b in BATHS if head_for(b) <= heat), BATHS[-1])
        return (
            "fail",
            say("Over the limit: the head would need {t}", t=needed.held_to(None, float(head_limit))),
            say(
                "Chill the ring. Out of {words} at {bath} the head needs {t}; with the head at its limit of"
                " {limit}, {ring} or colder is enough.",
                words=words,
                bath=bath,
                t=_at(head_for(bath)),
                limit=head_limit,
                ring=at_most(ring.temperature_for(ring_growth), TEMP),
            ),
        )
    largest = float(pocket_bore) * (1 + pocket_at_limit - ring.strain_at(coldest)) - float(clearance)
    do = (
        say(
            "Do not drive it in. Measure both again. Out of liquid nitrogen, and with the head at its limit,"
            " a ring of {d} at most drops in.",
            d=at_most(largest, SIZE),
        )
        if largest > float(pocket_bore)
        else say(
            "Do not drive it in. With {c} to spare and the head at {limit} no ring that holds drops in: ask"
            " for less clearance.",
            c=clearance,
            limit=head_limit,
        )
    )
    return "fail", say("Does not drop in even at {cold}", cold=coldest), do


def _mean_alpha_for(material: Material, strain) -> float:
    """Mean coefficient that goes with a free strain, 1/K; past either end of the material's table that of the end."""
    try:
        return material.mean_alpha(material.temperature_for(strain))
    except OutsideTable:
        return material.mean_alpha(material.hottest if float(strain) > 0 else COLDEST)


def _plot(head_for, ring_at: float, needed, head_limit) -> Plot:
    """Head temperature needed over the ring's, with the head's limit."""
    low, high = float(BATHS[-1][1]), max(REFERENCE, ring_at)
    curve = tuple((t, head_for(t)) for t in (low + (high - low) * i / 24 for i in range(25)))
    return Plot(
        "Head temperature needed, by the ring's",
        say(
            "Falls as the ring gets colder: {t} for this ring, {limit} is the limit of the head.",
            t=needed,
            limit=head_limit,
        ),
        Axis("Ring, when it goes in", TEMP),
        Axis("Head", TEMP),
        (
            Series("", curve),
            Series("limit of the head", ((low, float(head_limit)), (high, float(head_limit))), "limit"),
        ),
        ((ring_at, float(needed), "this ring"),),
    )
