"""Snap ring that keeps a plunger unit in its body: what ring, groove and lip bear, and whether the ring sits."""

from calc.core.advice import at_least
from calc.core.conformance import past
from calc.core.result import impossible, note, say, warning
from calc.core.working import PI, constant, least, sqrt, step
from calc.declare.calculator import Answer, Limit, answer, calculator
from calc.reference import cautions, sources
from calc.reference.materials import MATERIALS, REFERENCE
from calc.stations.lifters.ring_groove.asked import In
from calc.stations.lifters.ring_groove.drawing import section
from calc.stations.lifters.ring_groove.told import Out
from calc.stations.shared.forms import COARSE, MPA, NEWTON

NEAR = 0.8  # share of the capacity from which it is too near; common practice, no source


SHORT_LIP = 3.0  # groove depths: DIN 472, from memory


def annulus(inner, outer):
    """Area between two diameters, m²."""
    return PI / 4 * (outer**2 - inner**2)


@calculator(
    "ring-groove",
    "Snap ring and its groove",
    In,
    Out,
    purpose=(
        "Do ring, groove and lip bear the valve train's load, and does the ring sit deep enough and reach far"
        " enough?"
    ),
    finds=(
        "retaining ring",
        "circlip groove",
        "snap ring thrust load",
        "lifter snap ring",
        "groove depth",
        "ring came out",
        "lip of a groove",
    ),
    sources=(sources.SNAP_RING, sources.MATERIALS, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.SNAP_RING, cautions.CUTTING, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def ring_groove(i: In) -> Answer:
    """Square ring, square groove, load even all round. A sprung ring with a gap, or a corner that is rounded, bears less.

    The lip is judged in shear at the groove's bottom; a short one bends as well, which is why it must be three depths long.
    """
    material = MATERIALS[i.body_material]
    if i.bore >= i.groove:
        raise impossible("groove", "is {g}, not larger than the bore, {d}; give more", g=i.groove, d=i.bore)
    if i.groove >= i.body:
        raise impossible("groove", "is {g}, through the body's outside, {o}; give less", g=i.groove, o=i.body)
    if 2 * i.breadth >= i.groove:
        raise impossible(
            "breadth",
            "is {e}, half of the groove's {g} or more, so that the ring has no hole; give less",
            e=i.breadth,
            g=i.groove,
        )
    if i.ring >= i.width:
        raise impossible(
            "ring", "is {s}, and does not go into a groove of {m}; give less", s=i.ring, m=i.width
        )
    if i.least_play >= i.most_play:
        raise impossible(
            "most_play", "is {b}, not more than the least, {a}; give more", a=i.least_play, b=i.most_play
        )
    depth = Out.depth((i.groove - i.bore) / 2)
    yields = constant(
        "R_e",
        "Yield stress of the body, pressed",
        MPA,
        material.compressive_yield_at(REFERENCE),
        sources.MATERIALS,
    )
    pulled = constant("R_p", "Yield stress of the body, pulled", MPA, material.yield_20, sources.MATERIALS)
    by_ring = Out.ring_capacity(PI * i.bore * i.ring * i.ring_shear / i.ring_safety, sources.SNAP_RING)
    by_groove = Out.groove_capacity(annulus(i.bore, i.groove) * yields / i.groove_safety, sources.SNAP_RING)
    by_lip = Out.lip_capacity(PI * i.groove * i.lip * pulled / sqrt(3) / i.groove_safety, sources.MISES)
    capacity = Out.capacity(least(by_ring, by_groove, by_lip))
    weakest = min(
        (by_ring, "Ring shears"),
        (by_groove, "Groove gives way"),
        (by_lip, "Lip shears"),
        key=lambda pair: float(pair[0]),
    )[1]
    thrust = step("F_k", "Load with its blows", NEWTON, i.impact * i.load)
    used = Out.used(thrust / capacity)
    ratio, wall, overhang, play = (
        Out.lip_ratio(i.lip / depth),
        Out.wall((i.body - i.groove) / 2),
        Out.overhang(i.breadth - depth),
        Out.play(i.width - i.ring),
    )

    if used > 1:
        verdict = (
            "fail",
            say(weakest + ": {u} of what it bears", u=used),
            (
                "Do not run it. A thicker ring, a deeper groove or more lip, whichever is the weakest; or"
                " less load."
            ),
        )
    elif past(i.least_overhang, overhang):
        verdict = (
            "fail",
            say("Ring holds too little: {o} stands out", o=overhang),
            say("It must reach {least} over the unit. Take a broader ring.", least=i.least_overhang),
        )
    elif past(i.least_depth, depth):
        verdict = (
            "fail",
            say("Groove shallow: {t}, {least} wanted", t=depth, least=i.least_depth),
            say(
                "Cut it to {g} across its bottom, while {w} of wall stay behind it.",
                g=at_least(i.bore + 2 * i.least_depth, COARSE),
                w=i.least_wall,
            ),
        )
    elif past(i.least_wall, wall):
        verdict = (
            "fail",
            say("Wall behind it thin: {w}, {least} wanted", w=wall, least=i.least_wall),
            "Take another body. A crack begins in the corner of this groove.",
        )
    elif past(i.least_play, play):
        verdict = (
            "attention",
            say("Ring tight in its groove: {c}", c=play),
            "It may not spring out all the way. Stone the ring flat and thinner, or widen the groove.",
        )
    elif past(play, i.most_play):
        verdict = (
            "attention",
            say("Ring loose in its groove: {c}", c=play),
            "It hammers the groove wide. Take a thicker ring.",
        )
    elif past(SHORT_LIP, ratio):
        verdict = (
            "attention",
            say("Lip short: {q} times the depth", q=ratio),
            say("Three times are wanted: {n}, else it bends off.", n=at_least(SHORT_LIP * depth, COARSE)),
        )
    elif used > NEAR:
        verdict = (
            "attention",
            say("Little to spare: {u} used", u=used),
            "Look at the load again, and at the corner of the groove: a round one bears less.",
        )
    else:
        verdict = (
            "pass",
            say("Holds {F}, {k} come", F=capacity, k=thrust),
            "Fit it, turn it once round in its groove by hand, and see that it has sprung out all round.",
        )
    return answer(
        capacity,
        used,
        depth,
        by_ring,
        by_groove,
        by_lip,
        ratio,
        wall,
        overhang,
        play,
        verdict=verdict,
        limits=(
            Limit("the load borne", used, high=1),
            Limit("the depth of the groove", depth, low=i.least_depth),
            Limit("the wall behind the groove", wall, low=i.least_wall),
            Limit("the ring's reach", overhang, low=i.least_overhang),
            Limit("the ring's play", play, low=i.least_play, high=i.most_play, level="attention"),
            Limit("the lip", ratio, low=SHORT_LIP, level="attention"),
            Limit("what is left of the load borne", used, high=NEAR, level="attention"),
        ),
        remarks=(
            note(
                "The weakest of the three: "
                + {
                    "Ring shears": "the ring.",
                    "Groove gives way": "the groove's wall.",
                    "Lip shears": "the lip.",
                }[weakest]
            ),
            (
                warning(
                    "{name} breaks without warning: a groove with sharp corners halves what its lip bears.",
                    name=material.name,
                )
                if material.brittle
                else None
            ),
        ),
        figures=(section(i.bore, i.groove, i.width, i.ring, i.lip, i.body, i.breadth, depth),),
    )
