"""Snap ring that keeps a plunger unit in its body: what ring, groove and lip bear, and whether the ring sits."""
from calc.reference import cautions, sources
from calc.core.advice import at_least
from calc.declare.calculator import Limit, Output, Outputs, answer, calculator, choice, given, limit, measured, number
from calc.core.conformance import past
from calc.core.drawing import Area, Dimension, Drawing, box
from calc.stations.lifters import BODIES
from calc.reference.materials import MATERIALS, REFERENCE
from calc.core.kinds import FORCE, LENGTH, RATIO, STRESS
from calc.core.result import impossible, note, say, warning
from calc.core.working import PI, form, least, sqrt, step

SIZE, BORE, LOAD, MPA, SHARE, TIMES = form(LENGTH, 2), form(LENGTH, 3), form(FORCE, 0), form(STRESS, 0), form(RATIO, 0, "%", "%"), form(RATIO, 1)
NEAR = 0.8  # share of the capacity from which it is too near; common practice, no source
SHORT_LIP = 3.0  # groove depths: DIN 472, from memory


class Out(Outputs):
    capacity = Output("Thrust that it bears", "F_b", LOAD, main=True, rises="groove ring lip ring_shear", falls="ring_safety groove_safety")
    used = Output("Share of that used", "U", SHARE, main=True, rises="load impact ring_safety groove_safety", falls="groove ring lip ring_shear")
    depth = Output("Depth of the groove", "t", SIZE, main=True, rises="groove", falls="bore")
    ring_capacity = Output("Thrust that the ring bears, sheared", "F_r", LOAD, rises="bore ring ring_shear", falls="ring_safety")
    groove_capacity = Output("Thrust that the groove's wall bears, pressed", "F_g", LOAD, rises="groove", falls="bore groove_safety")
    lip_capacity = Output("Thrust that the lip bears, sheared", "F_l", LOAD, rises="groove lip", falls="groove_safety")
    lip_ratio = Output("Lip over depth of the groove", "q", TIMES, rises="bore lip", falls="groove")
    wall = Output("Wall behind the groove", "w", SIZE, rises="body", falls="groove")
    overhang = Output("Ring stands out of its groove by", "o", SIZE, rises="bore breadth", falls="groove")
    play = Output("Play of the ring in its groove", "c", SIZE, rises="width", falls="ring")


def annulus(inner, outer):
    """Area between two diameters, m²."""
    return PI / 4 * (outer ** 2 - inner ** 2)


@calculator(
    "ring-groove", "Snap ring and its groove", Out,
    purpose="Do ring, groove and lip bear the valve train's load, and does the ring sit deep enough and reach far enough?",
    finds=("retaining ring", "circlip groove", "snap ring thrust load", "lifter snap ring", "groove depth", "ring came out", "lip of a groove"),
    sources=(sources.SNAP_RING, sources.MATERIALS, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.SNAP_RING, cautions.CUTTING, cautions.MAKER_FIRST, cautions.AIRCRAFT))
def ring_groove(
    *,  # so that sizes of the engine and sizes of the example may stand in the order of the work
    groove: measured("Groove, across its bottom", "D_g", SIZE, tool="a groove calliper", hard=("4 mm", "80 mm"), usual=("10 mm", "36 mm"), feature="lifter.groove", stage="finished"),
    bore: measured("Bore", "D", BORE, tool="a small bore gauge", hard=("4 mm", "80 mm"), usual=("10 mm", "32 mm"), feature="lifter.unit_hole", stage="finished"),
    width: measured("Groove, width", "m", SIZE, tool="gauge blocks", hard=("0.2 mm", "6 mm"), usual=("0.7 mm", "2.5 mm"), feature="lifter.groove_width", stage="finished"),
    ring: measured("Ring, thickness", "s", SIZE, tool="a micrometer", hard=("0.2 mm", "6 mm"), usual=("0.6 mm", "2.5 mm"), feature="lifter.ring", stage="finished"),
    lip: measured("Lip outside the groove", "n", SIZE, tool="a depth gauge", hard=("0.1 mm", "20 mm"), usual=("1 mm", "8 mm"), feature="lifter.lip", stage="finished"),
    load: given("Load on the ring", "F", LOAD, hard=("1 N", "20000 N"), usual=("50 N", "3000 N"), feature="lifter.ring_load", hint="Seat load of the valve spring times the rocker's ratio is on the safe side."),
    impact: given("Blows count as", "k", TIMES, hard=("1", "20"), usual=("2", "6"), fold=True, assumed="common practice, no source", hint="Times the load, for a valve train that floats.") = "3.0",
    breadth: measured("Ring, breadth", "e", SIZE, tool="a calliper, from its outside to its inside", hard=("0.2 mm", "10 mm"), usual=("0.8 mm", "4 mm"), feature="lifter.ring_breadth", fold=True),
    body: measured("Body, outside", "D_o", BORE, tool="a micrometer", hard=("5 mm", "100 mm"), usual=("12 mm", "40 mm"), feature="lifter.body", fold=True),
    body_material: choice("Body, material", {id: MATERIALS[id].name for id in BODIES}, feature="lifter.alloy", fold=True) = "forged-steel",
    ring_shear: given("Shear strength of the ring", "τ_r", MPA, hard=("100 MPa", "2000 MPa"), usual=("600 MPa", "1100 MPa"), fold=True, assumed="hard spring steel, from memory") = "900 MPa",
    ring_safety: given("Safety of the ring", "S_r", TIMES, hard=("1", "10"), usual=("2", "4"), fold=True, assumed="common practice, no source") = "3.0",
    groove_safety: given("Safety of groove and lip", "S_g", TIMES, hard=("1", "10"), usual=("1.5", "4"), fold=True, assumed="common practice, no source") = "2.0",
    least_depth: given("Groove depth, least", "t_min", SIZE, hard=("0.05 mm", "5 mm"), usual=("0.3 mm", "1.5 mm"), fold=True, assumed="a third of the ring's breadth; common practice, no source") = "0.50 mm",
    least_wall: limit("Wall behind the groove, least", "w_min", SIZE, feature="lifter.groove_wall", which="wear", hard=("0.1 mm", "10 mm"), usual=("0.6 mm", "3 mm")),
    least_overhang: given("Ring must stand out by, at least", "o_min", SIZE, hard=("0.05 mm", "5 mm"), usual=("0.3 mm", "2 mm"), fold=True, assumed="common practice, no source", hint="More than the chamfer of the part that it holds.") = "0.60 mm",
    least_play: given("Play of the ring, least", "c_min", SIZE, hard=("0 mm", "0.5 mm"), usual=("0.02 mm", "0.1 mm"), fold=True, assumed="common practice, no source") = "0.04 mm",
    most_play: given("Play of the ring, most", "c_max", SIZE, hard=("0.01 mm", "2 mm"), usual=("0.1 mm", "0.4 mm"), fold=True, assumed="common practice, no source") = "0.20 mm",
):
    """Square ring, square groove, load even all round. A sprung ring with a gap, or a corner that is rounded, bears less.

    The lip is judged in shear at the groove's bottom; a short one bends as well, which is why it must be three depths long.
    """
    material = MATERIALS[body_material]
    if bore >= groove:
        raise impossible("groove", "is {g}, not larger than the bore, {d}; give more", g=groove, d=bore)
    if groove >= body:
        raise impossible("groove", "is {g}, through the body's outside, {o}; give less", g=groove, o=body)
    if 2 * breadth >= groove:
        raise impossible("breadth", "is {e}, half of the groove's {g} or more, so that the ring has no hole; give less", e=breadth, g=groove)
    if ring >= width:
        raise impossible("ring", "is {s}, and does not go into a groove of {m}; give less", s=ring, m=width)
    if least_play >= most_play:
        raise impossible("most_play", "is {b}, not more than the least, {a}; give more", a=least_play, b=most_play)
    depth = Out.depth((groove - bore) / 2)
    yields = number("R_e", "Yield stress of the body, pressed", MPA, material.compressive_yield_at(REFERENCE), sources.MATERIALS)
    pulled = number("R_p", "Yield stress of the body, pulled", MPA, material.yield_20, sources.MATERIALS)
    by_ring = Out.ring_capacity(PI * bore * ring * ring_shear / ring_safety, sources.SNAP_RING)
    by_groove = Out.groove_capacity(annulus(bore, groove) * yields / groove_safety, sources.SNAP_RING)
    by_lip = Out.lip_capacity(PI * groove * lip * pulled / sqrt(3) / groove_safety, sources.MISES)
    capacity = Out.capacity(least(by_ring, by_groove, by_lip))
    weakest = min((by_ring, "Ring shears"), (by_groove, "Groove gives way"), (by_lip, "Lip shears"), key=lambda pair: float(pair[0]))[1]
    thrust = step("F_k", "Load with its blows", LOAD, impact * load)
    used = Out.used(thrust / capacity)
    ratio, wall, overhang, play = Out.lip_ratio(lip / depth), Out.wall((body - groove) / 2), Out.overhang(breadth - depth), Out.play(width - ring)

    if used > 1:
        verdict = ("fail", say(weakest + ": {u} of what it bears", u=used), "Do not run it. A thicker ring, a deeper groove or more lip, whichever is the weakest; or less load.")
    elif past(least_overhang, overhang):
        verdict = ("fail", say("Ring holds too little: {o} stands out", o=overhang), say("It must reach {least} over the unit. Take a broader ring.", least=least_overhang))
    elif past(least_depth, depth):
        verdict = ("fail", say("Groove shallow: {t}, {least} wanted", t=depth, least=least_depth), say("Cut it to {g} across its bottom, while {w} of wall stay behind it.", g=at_least(bore + 2 * least_depth, SIZE), w=least_wall))
    elif past(least_wall, wall):
        verdict = ("fail", say("Wall behind it thin: {w}, {least} wanted", w=wall, least=least_wall), "Take another body. A crack begins in the corner of this groove.")
    elif past(least_play, play):
        verdict = ("attention", say("Ring tight in its groove: {c}", c=play), "It may not spring out all the way. Stone the ring flat and thinner, or widen the groove.")
    elif past(play, most_play):
        verdict = ("attention", say("Ring loose in its groove: {c}", c=play), "It hammers the groove wide. Take a thicker ring.")
    elif past(SHORT_LIP, ratio):
        verdict = ("attention", say("Lip short: {q} times the depth", q=ratio), say("Three times are wanted: {n}, else it bends off.", n=at_least(SHORT_LIP * depth, SIZE)))
    elif used > NEAR:
        verdict = ("attention", say("Little to spare: {u} used", u=used), "Look at the load again, and at the corner of the groove: a round one bears less.")
    else:
        verdict = ("pass", say("Holds {F}, {k} come", F=capacity, k=thrust), "Fit it, turn it once round in its groove by hand, and see that it has sprung out all round.")
    return answer(
        capacity, used, depth, by_ring, by_groove, by_lip, ratio, wall, overhang, play,
        verdict=verdict,
        limits=(Limit("the load borne", used, high=1), Limit("the depth of the groove", depth, low=least_depth), Limit("the wall behind the groove", wall, low=least_wall),
                Limit("the ring's reach", overhang, low=least_overhang), Limit("the ring's play", play, low=least_play, high=most_play, level="attention"),
                Limit("the lip", ratio, low=SHORT_LIP, level="attention"), Limit("what is left of the load borne", used, high=NEAR, level="attention")),
        remarks=(
            note("The weakest of the three: " + {"Ring shears": "the ring.", "Groove gives way": "the groove's wall.", "Lip shears": "the lip."}[weakest]),
            warning("{name} breaks without warning: a groove with sharp corners halves what its lip bears.", name=material.name) if material.brittle else None,
        ),
        figures=(section(bore, groove, width, ring, lip, body, breadth, depth),))


def section(bore, groove, width, ring, lip, body, breadth, depth) -> Drawing:
    """One side of the body, cut through the axis: the unit pushes the ring against the lip."""
    d, g, m, s, n, o, e = float(bore) / 2, float(groove) / 2, float(width), float(ring), float(lip), float(body) / 2, float(breadth)
    below = max(2.5 * m, n)
    wall = ((d, n + m), (d, n + m + below), (o, n + m + below), (o, 0), (d, 0), (d, n), (g, n), (g, n + m))
    wall = tuple((x, -y) for x, y in wall)
    inner = max(g - e, g - 0.9 * g)
    shapes = [Area(wall, "a"), Area(box(inner, -n - s, g, -n), "b"), Area(box(d - 1.6 * (g - inner), -n - m - 0.8 * below, d, -n - s), "c")]
    return Drawing(
        "Groove, ring and lip", say("Section of one wall: groove {m} wide and {t} deep, {n} from the end; ring {s} thick and {e} broad.", m=width, t=depth, n=lip, s=ring, e=breadth),
        (*shapes, Dimension((o, -n), (o, 0), lip, -0.5 * m - 0.1 * n, "n"), Dimension((o, -n - m), (o, -n), width, -2.2 * m - 0.4 * n, "m"),
         Dimension((d, 0), (g, 0), depth, 0.8 * m, "t")))
