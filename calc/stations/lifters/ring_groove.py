"""Snap ring that keeps a plunger unit in its body: what ring, groove and lip bear, and whether the ring sits."""

from calc.core.advice import at_least
from calc.core.conformance import past
from calc.core.drawing import Area, Dimension, Drawing, box
from calc.core.kinds import RATIO
from calc.core.result import impossible, note, say, warning
from calc.core.working import PI, constant, form, least, sqrt, step
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
from calc.reference import cautions, sources
from calc.reference.materials import MATERIALS, REFERENCE
from calc.stations.lifters import BODIES
from calc.stations.shared.forms import COARSE, MPA, NEWTON, SHARE, SIZE

TENTHS = form(RATIO, 1)
NEAR = 0.8  # share of the capacity from which it is too near; common practice, no source
SHORT_LIP = 3.0  # groove depths: DIN 472, from memory


class Out(Outputs):
    capacity = Output("Thrust that it bears", "F_b", NEWTON, main=True)
    used = Output("Share of that used", "U", SHARE, main=True)
    depth = Output("Depth of the groove", "t", COARSE, main=True)
    ring_capacity = Output("Thrust that the ring bears, sheared", "F_r", NEWTON)
    groove_capacity = Output("Thrust that the groove's wall bears, pressed", "F_g", NEWTON)
    lip_capacity = Output("Thrust that the lip bears, sheared", "F_l", NEWTON)
    lip_ratio = Output("Lip over depth of the groove", "q", TENTHS)
    wall = Output("Wall behind the groove", "w", COARSE)
    overhang = Output("Ring stands out of its groove by", "o", COARSE)
    play = Output("Play of the ring in its groove", "c", COARSE)


def annulus(inner, outer):
    """Area between two diameters, m²."""
    return PI / 4 * (outer**2 - inner**2)


class In(Inputs):
    groove: Number = measured(
        "Groove, across its bottom",
        "D_g",
        COARSE,
        tool="a groove calliper",
        hard="4 to 80 mm",
        usual="10 to 36 mm",
        feature="lifter.groove",
        stage="finished",
    )
    bore: Number = measured(
        "Bore",
        "D",
        SIZE,
        tool="a small bore gauge",
        hard="4 to 80 mm",
        usual="10 to 32 mm",
        feature="lifter.unit_hole",
        stage="finished",
    )
    width: Number = measured(
        "Groove, width",
        "m",
        COARSE,
        tool="gauge blocks",
        hard="0.2 to 6 mm",
        usual="0.7 to 2.5 mm",
        feature="lifter.groove_width",
        stage="finished",
    )
    ring: Number = measured(
        "Ring, thickness",
        "s",
        COARSE,
        tool="a micrometer",
        hard="0.2 to 6 mm",
        usual="0.6 to 2.5 mm",
        feature="lifter.ring",
        stage="finished",
    )
    lip: Number = measured(
        "Lip outside the groove",
        "n",
        COARSE,
        tool="a depth gauge",
        hard="0.1 to 20 mm",
        usual="1 to 8 mm",
        feature="lifter.lip",
        stage="finished",
    )
    load: Number = given(
        "Load on the ring",
        "F",
        NEWTON,
        hard="1 to 20000 N",
        usual="50 to 3000 N",
        feature="lifter.ring_load",
        hint="Seat load of the valve spring times the rocker's ratio is on the safe side.",
    )
    impact: Number = given(
        "Blows count as",
        "k",
        TENTHS,
        hard="1 to 20",
        usual="2 to 6",
        fold=True,
        assumed=("3.0", "common practice, no source"),
        hint="Times the load, for a valve train that floats.",
    )
    breadth: Number = measured(
        "Ring, breadth",
        "e",
        COARSE,
        tool="a calliper, from its outside to its inside",
        hard="0.2 to 10 mm",
        usual="0.8 to 4 mm",
        feature="lifter.ring_breadth",
        fold=True,
    )
    body: Number = measured(
        "Body, outside",
        "D_o",
        SIZE,
        tool="a micrometer",
        hard="5 to 100 mm",
        usual="12 to 40 mm",
        feature="lifter.body",
        fold=True,
    )
    body_material: str = choice(
        "Body, material",
        {id: MATERIALS[id].name for id in BODIES},
        feature="lifter.alloy",
        fold=True,
        example="forged-steel",
    )
    ring_shear: Number = given(
        "Shear strength of the ring",
        "τ_r",
        MPA,
        hard="100 to 2000 MPa",
        usual="600 to 1100 MPa",
        fold=True,
        assumed=("900 MPa", "hard spring steel, from memory"),
    )
    ring_safety: Number = given(
        "Safety of the ring",
        "S_r",
        TENTHS,
        hard="1 to 10",
        usual="2 to 4",
        fold=True,
        assumed=("3.0", "common practice, no source"),
    )
    groove_safety: Number = given(
        "Safety of groove and lip",
        "S_g",
        TENTHS,
        hard="1 to 10",
        usual="1.5 to 4",
        fold=True,
        assumed=("2.0", "common practice, no source"),
    )
    least_depth: Number = given(
        "Groove depth, least",
        "t_min",
        COARSE,
        hard="0.05 to 5 mm",
        usual="0.3 to 1.5 mm",
        fold=True,
        assumed=("0.50 mm", "a third of the ring's breadth; common practice, no source"),
    )
    least_wall: Number = limit(
        "Wall behind the groove, least",
        "w_min",
        COARSE,
        feature="lifter.groove_wall",
        which="wear",
        hard="0.1 to 10 mm",
        usual="0.6 to 3 mm",
    )
    least_overhang: Number = given(
        "Ring must stand out by, at least",
        "o_min",
        COARSE,
        hard="0.05 to 5 mm",
        usual="0.3 to 2 mm",
        fold=True,
        assumed=("0.60 mm", "common practice, no source"),
        hint="More than the chamfer of the part that it holds.",
    )
    least_play: Number = given(
        "Play of the ring, least",
        "c_min",
        COARSE,
        hard="0 to 0.5 mm",
        usual="0.02 to 0.1 mm",
        fold=True,
        assumed=("0.04 mm", "common practice, no source"),
    )
    most_play: Number = given(
        "Play of the ring, most",
        "c_max",
        COARSE,
        hard="0.01 to 2 mm",
        usual="0.1 to 0.4 mm",
        fold=True,
        assumed=("0.20 mm", "common practice, no source"),
    )


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


def section(bore, groove, width, ring, lip, body, breadth, depth) -> Drawing:
    """One side of the body, cut through the axis: the unit pushes the ring against the lip."""
    d, g, m, s, n, o, e = (
        float(bore) / 2,
        float(groove) / 2,
        float(width),
        float(ring),
        float(lip),
        float(body) / 2,
        float(breadth),
    )
    below = max(2.5 * m, n)
    wall = ((d, n + m), (d, n + m + below), (o, n + m + below), (o, 0), (d, 0), (d, n), (g, n), (g, n + m))
    wall = tuple((x, -y) for x, y in wall)
    inner = max(g - e, g - 0.9 * g)
    shapes = [
        Area(wall, "a"),
        Area(box(inner, -n - s, g, -n), "b"),
        Area(box(d - 1.6 * (g - inner), -n - m - 0.8 * below, d, -n - s), "c"),
    ]
    return Drawing(
        "Groove, ring and lip",
        say(
            "Section of one wall: groove {m} wide and {t} deep, {n} from the end; ring {s} thick and {e}"
            " broad.",
            m=width,
            t=depth,
            n=lip,
            s=ring,
            e=breadth,
        ),
        (
            *shapes,
            Dimension((o, -n), (o, 0), lip, -0.5 * m - 0.1 * n, "n"),
            Dimension((o, -n - m), (o, -n), width, -2.2 * m - 0.4 * n, "m"),
            Dimension((d, 0), (g, 0), depth, 0.8 * m, "t"),
        ),
    )
