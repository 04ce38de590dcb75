"""Big ends whose faces were cut: does honing clean them up, what comes off where, and what becomes of the centre distances."""

import math
from typing import NamedTuple

from calc.core.advice import at_least, at_most
from calc.core.conformance import past
from calc.core.drawing import Area, Drawing, Label, Line, arc
from calc.core.kinds import LENGTH
from calc.core.result import Table, impossible, note, say, warning
from calc.core.working import Number, constant, form, sqrt, step
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
)
from calc.formulas import split_bore
from calc.reference import cautions, sources
from calc.stations.rods import RODS
from calc.stations.shared.honing import bored_first, plan

SIZE, COARSE = form(LENGTH, 3), form(LENGTH, 2)
PLANE, MIDWAY = "plane", "midway"
APART = 1e-3  # m: readings of one bore, or a reading and the size wanted, further apart than this are not of one big end
MOST_CUT = 0.5e-3  # m off one face
ALIKE = 0.5e-6  # m: cuts nearer to each other than this are told as one
MUCH_CUT = (
    0.15e-3  # m off one face: more, and bolts bottom and the notch gets shallow; common practice, no source
)
OFF_JOINT = 0.01e-3  # m: centre off the joint by more is remarked on; common practice, no source
STRETCHED = 0.05e-3  # m out of round; common practice, no source


class Out(Outputs):
    clean = Output("Cleans up all round at", "D_c", SIZE, main=True)
    least_stock = Output("Least to hone off, one side", "s_min", SIZE, main=True)
    spread = Output("Longest less shortest centre distance", "Δ", SIZE, main=True)
    stock_rod = Output("To hone off in the rod, along it", "s_r", SIZE)
    stock_cap = Output("To hone off in the cap, along it", "s_c", SIZE)
    stock_side = Output("To hone off at the parting line, each side", "s_p", SIZE)
    most_stock = Output("Most to hone off, one side", "s_max", SIZE)
    round_before = Output("Out of round before, at most", "e", SIZE)
    cut_along = Output("Bore along the rod once cut, shortest", "D_k", SIZE)
    offset = Output("New centre off the parting line, at most", "c_max", SIZE)
    lost = Output("Centre distance lost, at most", "q", SIZE)
    shortest = Output("Shortest centre distance, then", "L_min", SIZE)
    longest = Output("Longest centre distance, then", "L_max", SIZE)


class Rod(NamedTuple):
    """One rod as read and as it comes out."""

    name: str
    readings: tuple
    bore: tuple  # oval, in floats
    cuts: tuple
    along: Number  # bore along the rod once cut
    clean: Number
    where: float  # direction of the least stock, rad from the rod
    stocks: tuple  # rod, cap, side
    round: Number
    centre: Number
    lost: Number
    length: Number


class In(Inputs):
    bores: Rows = grid(
        "Bores before the cut, bolted up",
        rows=RODS,
        columns=(
            column("Along the rod", "D_a", SIZE, hard="20 to 120 mm", usual="35 to 80 mm"),
            column("60° right of it", "D_r", SIZE, hard="20 to 120 mm", usual="35 to 80 mm"),
            column("60° left of it", "D_l", SIZE, hard="20 to 120 mm", usual="35 to 80 mm"),
        ),
        least=1,
        tool="a bore gauge set in a ring",
        hint="Bolts at full torque. Right and left as you look at the number, small end up.",
        example=(
            "56.030; 56.012; 56.010 | 56.026; 56.011; 56.012 | 56.033; 56.012; 56.013 | 56.021; 56.010;"
            " 56.011"
        ),
    )
    cuts: Rows = grid(
        "Cut off the faces",
        rows=RODS,
        columns=(
            column("Rod", "a", SIZE, hard="0 to 0.5 mm", usual="0 to 0.15 mm"),
            column("Cap", "b", SIZE, hard="0 to 0.5 mm", usual="0 to 0.15 mm"),
            column(
                "Centre distance before",
                "L",
                COARSE,
                hard="50 to 400 mm",
                usual="90 to 220 mm",
                optional=True,
                feature="rod.centre_distance",
            ),
        ),
        least=1,
        tool="a micrometer over each half, before and after",
        hint="Planned or done; 0 where a face is not cut. Centre distance may stay empty.",
        example="0.04; 0.04; 137.02 | 0.04; 0.04; 137.01 | 0.05; 0.05; 137.02 | 0.04; 0.04; 137.01",
    )
    wanted: Number = given(
        "Hone to",
        "D_w",
        SIZE,
        hard="20 to 120 mm",
        usual="35 to 80 mm",
        feature="rod.big_end_bore",
        hint="Middle of the limits, as a rule.",
    )
    centred: str = choice(
        "New bore is centred",
        {PLANE: "on the new parting line", MIDWAY: "midway, as a hone finds it"},
        hint="A bore cut from the faces, or one honed as it lies. Alike where rod and cap lose the same.",
        default=PLANE,
    )
    low: Number = limit(
        "Finished bore, least",
        "D_min",
        SIZE,
        feature="rod.big_end_bore",
        which="low",
        hard="20 to 120 mm",
        usual="35 to 80 mm",
    )
    high: Number = limit(
        "Finished bore, most",
        "D_max",
        SIZE,
        feature="rod.big_end_bore",
        which="high",
        hard="20 to 120 mm",
        usual="35 to 80 mm",
    )
    nominal_length: Number = given(
        "Centre distance, where none is read",
        "L_0",
        COARSE,
        hard="50 to 400 mm",
        usual="90 to 220 mm",
        feature="rod.centre_distance",
        fold=True,
    )
    least_length: Number = limit(
        "Centre distance allowed, least",
        "L_a",
        COARSE,
        feature="rod.centre_distance",
        which="low",
        hard="0 to 400 mm",
    )
    most_spread: Number = given(
        "Centre distances may differ by",
        "Δ_a",
        SIZE,
        hard="0 to 2 mm",
        usual="0.02 to 0.3 mm",
        fold=True,
        assumed=("0.05 mm", "common practice, no source"),
        hint="0.05 mm within a set; common practice, no source.",
    )


@calculator(
    "big-end-resize",
    "Resize the big end",
    In,
    Out,
    purpose=(
        "Do these big ends clean up to size after the cut, how much must be honed off where, and do their"
        " centre distances still agree?"
    ),
    finds=(
        "rod resizing",
        "recondition connecting rods",
        "big end out of round",
        "cap grinding",
        "cut the cap",
        "hone the big end",
        "rod bore",
        "centre distance",
        "rod length",
        "stretched rod",
    ),
    sources=(sources.SPLIT_BORE, sources.TWO_POINT, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.ROD_SCRAP, cautions.CUTTING, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def big_end_resize(i: In) -> Answer:
    """Each bore as an oval through its three readings, cut and closed up again; the circle that cleans it up, by trial all round.

    Exact plane geometry of two arcs for a round bore; the width at the parting line of an oval that leans is within 0.1 µm. Odd
    lobes, taper along the bore, and what the bolts do to a bore that is not tight are not in it.
    """
    if i.high <= i.low:
        raise impossible(
            "high",
            "is {high}, not more than the least finished bore, {low}; give more than {low}",
            high=i.high,
            low=i.low,
        )
    if not i.low <= i.wanted <= i.high:
        raise impossible(
            "wanted",
            "is {w}, not within the finished limits; give {low} to {high}",
            w=i.wanted,
            low=i.low,
            high=i.high,
        )
    rods = []
    for r, (name, row) in enumerate(zip(RODS, i.bores)):
        if row is None:
            continue
        if float(max(row, key=float) - min(row, key=float)) > APART:
            raise impossible(
                f"bores.{r + 1}.1",
                "rod {n} reads {a} to {b}, more than a millimetre apart; give three readings of one bore",
                n=name,
                a=min(row, key=float),
                b=max(row, key=float),
            )
        if max(abs(float(d - i.wanted)) for d in row) > APART:
            raise impossible(
                f"bores.{r + 1}.1",
                "rod {n} reads {d}, more than a millimetre from the size wanted, {w}; give readings of this"
                " big end",
                n=name,
                d=row[0],
                w=i.wanted,
            )
        rods.append(_rod(name, row, i.cuts[r], i.wanted, i.centred, i.nominal_length))

    def extreme(pick, what):
        return getattr(pick(rods, key=lambda rod: float(getattr(rod, what))), what)

    worst = max(rods, key=lambda rod: float(rod.clean))
    clean = Out.clean(worst.clean)
    least_stock = Out.least_stock((i.wanted - clean) / 2)
    shortest, longest = Out.shortest(extreme(min, "length")), Out.longest(extreme(max, "length"))
    spread = Out.spread(longest - shortest)
    stocks = [out(stock) for out, stock in zip((Out.stock_rod, Out.stock_cap, Out.stock_side), worst.stocks)]
    most_stock = Out.most_stock(max((s for rod in rods for s in rod.stocks), key=float))
    out_of_round = Out.round_before(extreme(max, "round"))
    off = max((rod.centre for rod in rods), key=lambda c: abs(float(c)))
    uncut = [rod for rod in rods if not any(map(float, rod.cuts))]
    short = min(rods, key=lambda rod: float(rod.length))
    smallest, largest = (pick((d for rod in rods for d in rod.readings), key=float) for pick in (min, max))
    as_they_are = len(uncut) == len(rods) and i.low <= smallest and largest <= i.high
    if (
        as_they_are
        and not past(clean, i.high)
        and not past(spread, i.most_spread)
        and not past(i.least_length, short.length)
    ):
        verdict = (
            "pass",
            say("In limits as they are: {e} out of round", e=out_of_round),
            "Leave these bores alone. Write them down by number, with the torque at which they were read.",
        )
    elif past(clean, i.high):
        verdict = (
            "fail",
            say("Rod {n} does not clean up: {d}", n=worst.name, d=clean),
            _remedy(worst, i.wanted, i.high, i.centred, i.least_length),
        )
    elif past(i.least_length, short.length):
        verdict = (
            "fail",
            say("Rod {n} too short: {L}", n=short.name, L=short.length),
            say(
                (
                    "{q} went. Cut less off the rod and more off its cap: the cap's cut costs no length,"
                    " where the bore is centred on the parting line."
                    if not past(i.least_length, short.length + short.lost)
                    else (
                        "It was too short before any cut, and length does not come back. Do not cut it: look"
                        " for another rod."
                    )
                ),
                q=short.lost,
            ),
        )
    elif past(spread, i.most_spread):
        verdict = (
            "attention",
            say("Centres {s} apart, {a} allowed", s=spread, a=i.most_spread),
            (
                "Cut the longest rods to the shortest, within the limits, or look among spare rods for one"
                " that is alike."
            ),
        )
    elif past(clean, i.wanted):
        verdict = (
            "attention",
            say("Cleans up only at {d}", d=clean),
            say(
                "Rod {n} needs that. Hone it to between {d} and {high}, or cut its faces a little more if the"
                " tight place lies along the rod.",
                n=worst.name,
                d=clean,
                high=i.high,
            ),
        )
    else:
        verdict = (
            "pass",
            say("Cleans up at {d}, centres {s} apart", d=clean, s=spread),
            say(
                "Bolts at full torque, then hone to {w}. Measure in three directions, {low} to {high}.",
                w=i.wanted,
                low=i.low,
                high=i.high,
            ),
        )
    missed = [name for name, bore, cut in zip(RODS, i.bores, i.cuts) if bore is None and cut is not None]
    return answer(
        clean,
        least_stock,
        spread,
        *stocks,
        most_stock,
        out_of_round,
        Out.cut_along(extreme(min, "along")),
        Out.offset(abs(off)),
        Out.lost(extreme(max, "lost")),
        shortest,
        longest,
        verdict=verdict,
        limits=(
            Limit("the bore's cleaning up", clean, high=i.high),
            Limit("the shortest rod", shortest, low=i.least_length),
            Limit("the spread of centre distances", spread, high=i.most_spread, level="attention"),
            (
                Limit("the bores as they are", smallest, low=i.low, level="attention")
                if as_they_are
                else Limit("the stock left for the hone", clean, high=i.wanted, level="attention")
            ),
        ),
        remarks=(
            note(
                "A cut narrows the bore along the rod only. At the parting line the bore stays as wide as it"
                " was, and there the hone finds least."
            ),
            note(
                "A gauge that touches at two points does not see a bore with three lobes: turn it on the last"
                " rod and look for a place that rocks."
            ),
            (
                warning(
                    "The new centre lies {c} off the parting line, and the two shells no longer meet on a"
                    " diameter: cut rod and cap alike.",
                    c=constant("", "", SIZE, abs(float(off))),
                )
                if abs(float(off)) > OFF_JOINT
                else None
            ),
            (
                warning("{s} a side is much for a hone. {plan}", s=most_stock, plan=plan(i.wanted, SIZE))
                if bored_first(2 * most_stock)
                else None
            ),
            (
                warning(
                    "{e} out of round: a rod stretched so far was overloaded, or its shells turned. Look for"
                    " cracks before any work goes into it.",
                    e=out_of_round,
                )
                if float(out_of_round) > STRETCHED
                else None
            ),
            (
                note("Rod {n} has a cut and no bores, and is left out.", n=" and ".join(missed))
                if missed
                else None
            ),
        ),
        tables=(_table(rods, i.wanted, i.high, i.least_length),),
        figures=(section(worst, i.wanted),),
    )


def _rod(name, readings, cut, wanted, centred, nominal_length) -> Rod:
    D_a, D_r, D_l = readings
    none = constant(f"a_{name}", f"Cut off rod {name}", SIZE, 0.0)
    a, b, before = cut or (none, constant(f"b_{name}", f"Cut off cap {name}", SIZE, 0.0), None)
    before = nominal_length if before is None else before

    def line(symbol, label, expression, source=None):
        return step(
            f"{symbol},{name}" if "_" in symbol else f"{symbol}_{name}",
            f"{label}, rod {name}",
            SIZE,
            expression,
            source,
        )

    bore = split_bore.oval(*map(float, readings))
    side = line("D_s", "Bore at the parting line", split_bore.across(D_a, D_r, D_l), sources.TWO_POINT)
    along = line("D_k", "Bore along the rod, cut", D_a - a - b, sources.SPLIT_BORE)
    c = (
        line("c", "New centre above the parting line", (b - a) / 2, sources.SPLIT_BORE)
        if centred == MIDWAY
        else constant(f"c_{name}", f"New centre above the parting line, rod {name}", SIZE, 0.0)
    )
    distance, where = split_bore.farthest(bore, float(a), float(b), float(c))
    reach = constant(
        f"r_{name}",
        f"Farthest place of the bore from the new centre, by trial, rod {name}",
        SIZE,
        distance,
        sources.SPLIT_BORE,
    )
    smaller = a if a <= b else b
    half = line(
        "w",
        "Parting line's farthest edge from the new centre",
        sqrt((side / 2) ** 2 - smaller**2 + c**2),
        sources.SPLIT_BORE,
    )
    stocks = (
        line("s_r", "To hone off in the rod", wanted / 2 - (D_a / 2 - a - c)),
        line("s_c", "To hone off in the cap", wanted / 2 - (D_a / 2 - b + c)),
        line("s_p", "To hone off at the parting line", wanted / 2 - half),
    )
    _, stretch, lean = split_bore.oval(D_a, D_r, D_l)
    return Rod(
        name,
        readings,
        bore,
        (a, b),
        along,
        line("D_c", "Cleans up at", 2 * reach),
        where,
        stocks,
        line("e", "Out of round before", 2 * sqrt(stretch**2 + lean**2), sources.TWO_POINT),
        c,
        line("q", "Centre distance lost", a + c, sources.SPLIT_BORE),
        line("L'", "Centre distance, then", before - a - c, sources.SPLIT_BORE),
    )


def _remedy(rod, wanted, high, centred, least_length):
    if past(wanted - 2 * rod.stocks[2], high):
        return say(
            "It is too wide at the parting line, where no cut of the faces narrows it. Scrap it, unless the"
            " maker has shells of a larger outside."
        )
    # to the size wanted, or where the sides are wider, to theirs: no cut that a rod bears narrows those; else to the upper limit
    aims = max(float(wanted), float(wanted - 2 * rod.stocks[2])), float(high)
    enough = [more for aim in aims if (more := _more(rod, aim / 2, centred)) is not None]
    if not enough:
        return say(
            "A wider place beside the parting line stays, however much the faces are cut. Measure again; if"
            " it is so, scrap it."
        )
    a, b = map(float, rod.cuts)

    def left_by(off_rod, off_cap):
        return rod.length - constant("", "", SIZE, (off_rod + off_cap) / 2 if centred == MIDWAY else off_rod)

    long_enough = [cuts for cuts in enough if not past(least_length, left_by(*cuts))]
    if not long_enough:
        return say(
            "It is too long along the rod, and the cut that cleans it up leaves {L} of centre distance, less"
            " than the {least} allowed. Measure it again; if it is so, look for another rod.",
            L=at_most(left_by(*enough[-1]), SIZE),
            least=least_length,
        )
    off_rod, off_cap = next(
        ((x, y) for x, y in long_enough if max(a + x, b + y) <= MUCH_CUT), long_enough[-1]
    )
    length = left_by(off_rod, off_cap)
    left = say("That leaves {L} of centre distance.", L=at_most(length, SIZE))
    if abs(off_rod - off_cap) < ALIKE:
        return say(
            "It is too long along the rod. Cut {m} more off each face. {left}",
            m=at_least(max(off_rod, off_cap), SIZE),
            left=left,
        )
    cuts = say(
        " and ".join(
            words
            for words, more in (("{r} more off the rod", off_rod), ("{c} more off the cap", off_cap))
            if more
        ),
        r=at_least(off_rod, SIZE),
        c=at_least(off_cap, SIZE),
    )
    return say("It is too long along the rod. Cut {cuts}. {left}", cuts=cuts, left=left)


def _more(rod, radius, centred):
    """What must further come off rod and cap so that a circle of that radius cleans up. Centred on the parting line no face is cut in
    vain: only the rod's costs length; midway between the two cuts both cost the same, so they go together."""
    a, b = map(float, rod.cuts)
    if centred == MIDWAY:
        more = split_bore.more_cut(rod.bore, a, b, radius, MOST_CUT, float(rod.centre))
        return None if more is None else (more, more)
    off_rod = split_bore.more_cut(rod.bore, a, b + MOST_CUT, radius, MOST_CUT, cap=0)
    off_cap = split_bore.more_cut(rod.bore, a + MOST_CUT, b, radius, MOST_CUT, rod=0)
    return None if off_rod is None or off_cap is None else (off_rod, off_cap)


def _where(angle):
    """Words for a direction from the rod's own, as a reading would be called."""
    degrees = abs(math.degrees(angle))
    if degrees > 80 and degrees < 100:
        return "parting line"
    half = "rod" if degrees < 90 else "cap"
    return (
        f"{half}, along it"
        if min(degrees, 180 - degrees) < 10
        else f"{half}, {round(min(degrees, 180 - degrees), -1):.0f}° {'right' if angle > 0 else 'left'}"
    )


def _table(rods, wanted, high, least_length) -> Table:
    rows = tuple(
        (
            rod.name,
            rod.clean,
            constant("", "", SIZE, float(wanted - rod.clean) / 2),
            _where(rod.where),
            constant("", "", SIZE, float(rod.stocks[0] + rod.stocks[1])),
            rod.lost,
            rod.length,
        )
        for rod in rods
    )
    states = tuple(
        (
            "fail"
            if past(rod.clean, high) or past(least_length, rod.length)
            else "attention"
            if past(rod.clean, wanted)
            else "pass"
        )
        for rod in rods
    )
    return Table(
        "Rod by rod",
        (
            "Rod",
            "Cleans up at",
            "Least stock, one side",
            "There",
            "Stock along the rod",
            "Centre distance lost",
            "Centre distance, then",
        ),
        rows,
        states,
    )


def section(rod, wanted) -> Drawing:
    """The big end seen along the crank: the bore as cut and bolted up, and the circle that it is honed to."""
    R, c = float(wanted) / 2, float(rod.centre)
    a, b = map(float, rod.cuts)
    halves = split_bore.surface(rod.bore, a, b, 96)
    thickest = max(abs(R - math.hypot(x, y - c)) for half in halves for x, y in half)
    times = max(1, math.floor(0.16 * R / max(thickest, 1e-6)))

    def drawn(x, y):
        r = math.hypot(x, y - c)
        return x / r * (R - times * (R - r)), (y - c) / r * (R - times * (R - r))

    rod_half, cap_half = ([drawn(*place) for place in half] for half in halves)
    outer = 1.32 * R
    shank = 0.34 * R
    shapes = (
        Area((*arc((0, 0), outer, 0, math.pi), *reversed(rod_half)), "a"),
        Area((*arc((0, 0), outer, 0, -math.pi), *cap_half), "b"),
        Line(((-shank, 1.28 * R), (-0.8 * shank, 1.75 * R)), "outline"),
        Line(((shank, 1.28 * R), (0.8 * shank, 1.75 * R)), "outline"),
        Line(arc((0, 0), R, 0, 2 * math.pi, 96), "band"),
        Line(((0, -1.45 * R), (0, 1.8 * R)), "centre"),
        Line(((-1.5 * R, 0), (1.5 * R, 0)), "centre"),
        Label((0, 0.52 * R), say("{s} in the rod", s=rod.stocks[0]), target=(0, R)),
        Label((0, -0.58 * R), say("{s} in the cap", s=rod.stocks[1]), target=(0, -R)),
        Label((0.05 * R, 0.12 * R), say("{s} at the sides", s=rod.stocks[2]), target=(R, 0)),
    )
    return Drawing(
        f"Rod {rod.name}: what the hone takes off",
        say(
            "Big end of rod {n}, small end up: the bore as cut, and the circle of {w} that it is honed to."
            " {r} come off in the rod, {c} in the cap, {p} on each side at the parting line.",
            n=rod.name,
            w=wanted,
            r=rod.stocks[0],
            c=rod.stocks[1],
            p=rod.stocks[2],
        ),
        shapes,
        say("stock drawn {n} times as thick; outside of the rod is the example's", n=str(times)),
    )
