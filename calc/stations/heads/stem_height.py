"""Stem heights of a set of heads: what comes off the tips, what the seats must sink, and the shims that keep the springs' height."""

from typing import NamedTuple

from calc.core.conformance import past
from calc.core.drawing import Area, Axis, Dimension, Drawing, Line, Plot, Series, box, coils
from calc.core.kinds import COUNT, LENGTH
from calc.core.result import Table, impossible, note, say, warning
from calc.core.working import Number, constant, form, greatest, step
from calc.declare.calculator import (
    Answer,
    Inputs,
    Limit,
    Output,
    Outputs,
    Rows,
    answer,
    calculator,
    column,
    given,
    grid,
    limit,
    measured,
)
from calc.reference import cautions, sources
from calc.stations.heads import VALVES

SIZE = form(LENGTH, 2)
FINE = 1e-12  # m: nearer than this to a limit is on it, as the limits themselves count it (calc.conformance.DUST)


class Out(Outputs):
    spread = Output("Highest less lowest", "Δ", SIZE, main=True)
    tip = Output("Most to take off a tip", "t_max", SIZE, main=True)
    sink = Output("Most to sink a seat", "z_max", SIZE, main=True)
    highest = Output("Highest stem, above the height wanted", "h_+", SIZE)
    lowest = Output("Lowest stem, above the height wanted", "h_−", SIZE)
    bottom = Output("All stems to stand from", "a", SIZE)
    top = Output("All stems to stand up to", "b", SIZE)
    spread_after = Output("Highest less lowest, then", "Δ_1", SIZE)
    fitted_most = Output("Tallest fitted height, then, without shims", "f_max", SIZE)
    shim = Output("Thickest shim under a spring", "u_max", SIZE)


class Valve(NamedTuple):
    """One valve as read, and what to do to it."""

    name: str
    height: Number  # as read
    length: Number | None
    level: Number  # as compared with the others
    tip: Number
    sink: Number
    fitted: Number  # height of the spring, once the seat is sunk
    shim: Number  # 0 where the spring's height is right


class In(Inputs):
    heights: Rows = grid(
        "Stem heights",
        rows=VALVES,
        columns=(
            column("Height", "H", SIZE, hard="5 to 150 mm", usual="25 to 80 mm", feature="head.stem_height"),
            column(
                "Length of the valve",
                "L",
                form(LENGTH, 1),
                hard="10 to 300 mm",
                usual="60 to 160 mm",
                optional=True,
                feature="valve.length",
            ),
        ),
        least=1,
        tool="a depth gauge",
        hint=(
            "From the spring's bed, without washers or shims, to the tip, valve pressed on its seat. An"
            " exhaust valve that has run is measured in its length too."
        ),
        example="45.05 | 44.98 | 45.10 | 45.02 | 44.96 | 45.08 | 45.00 | 45.06",
    )
    low: Number = limit(
        "Height allowed, least",
        "H_min",
        SIZE,
        feature="head.stem_height",
        which="low",
        hard="5 to 150 mm",
        usual="25 to 80 mm",
        fold=False,
    )
    high: Number = limit(
        "Height allowed, most",
        "H_max",
        SIZE,
        feature="head.stem_height",
        which="high",
        hard="5 to 150 mm",
        usual="25 to 80 mm",
        fold=False,
    )
    most_spread: Number = given(
        "May differ from each other by",
        "Δ_max",
        SIZE,
        hard="0 to 5 mm",
        usual="0.05 to 1 mm",
        assumed=("0.25 mm", "common practice, no source"),
    )
    wanted: Number = given(
        "Height wanted",
        "H_w",
        SIZE,
        hard="5 to 150 mm",
        usual="25 to 80 mm",
        feature="head.stem_height",
        fold=True,
    )
    tip_most: Number = limit(
        "A tip may lose, at most",
        "t_a",
        SIZE,
        feature="valve.tip_ground",
        which="wear",
        hard="0 to 3 mm",
        usual="0.1 to 1 mm",
        hint=(
            "From now on: less by what was ground off before. Only the outermost skin is hard, and the rocker"
            " must clear keepers and retainer."
        ),
    )
    sink_most: Number = limit(
        "A seat may be sunk, at most",
        "z_a",
        SIZE,
        feature="head.seat_may_sink",
        which="nominal",
        hard="0 to 3 mm",
        usual="0 to 1 mm",
        hint=(
            "From now on: what ring, band and valve edge leave, as the cutting of a seat shows. 0 where no"
            " seat is to be touched."
        ),
    )
    length_most: Number | None = limit(
        "Valve's length, most",
        "L_max",
        form(LENGTH, 1),
        feature="valve.length",
        which="high",
        hard="10 to 300 mm",
        usual="60 to 160 mm",
        hint="Of a new one. Counts where lengths are read.",
    )
    exhaust_higher: Number = given(
        "Exhaust stems stand higher by design by",
        "Δ_e",
        SIZE,
        hard="-20 to 20 mm",
        usual="-3 to 3 mm",
        fold=True,
        assumed=("0 mm", "both alike, unless the maker says"),
        hint="Minus where they stand lower. Limits and height wanted are the intake's.",
    )
    tip_to_retainer: Number = measured(
        "Tip above the spring's upper bearing",
        "c",
        SIZE,
        tool="a depth gauge, retainer and keepers on the valve",
        hard="0.5 to 40 mm",
        usual="3 to 20 mm",
        feature="valve.tip_to_retainer",
        fold=True,
        hint="As it is before the tip is ground.",
    )
    fitted_height: Number = given(
        "Fitted height of the spring wanted",
        "f_w",
        SIZE,
        hard="5 to 120 mm",
        usual="25 to 60 mm",
        feature="spring.installed_height",
        fold=True,
    )
    fitted_off: Number = given(
        "Fitted height may be off by, either way",
        "f_a",
        SIZE,
        hard="0 to 3 mm",
        usual="0.1 to 1 mm",
        fold=True,
        assumed=("0.3 mm", "common practice, no source"),
    )


@calculator(
    "stem-height",
    "Stem heights",
    In,
    Out,
    purpose=(
        "Do the stems stand even and within limits, and if not, what comes off which tip or seat, and which"
        " spring needs a shim?"
    ),
    finds=(
        "valve stem height",
        "stem protrusion",
        "installed height",
        "fitted height",
        "tip grinding",
        "sunk valves",
        "spring shim",
        "valve seat depth",
        "stem projection",
        "stretched valve",
    ),
    sources=(sources.STEM_MOVES, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.SPRING, cautions.SODIUM, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def stem_height(i: In) -> Answer:
    """Each stem compared with the limits and with the others; the work that brings all of them within both.

    A tip ground by t lowers the stem by t and leaves the spring where it is; a seat sunk by z raises the stem by z and lets the
    spring out by z. A seat sunk costs ring, edge and chamber for good: of all ways the one that sinks seats least, then takes least off tips.
    """
    if i.high <= i.low:
        raise impossible(
            "high",
            "is {high}, not more than the least height, {low}; give more than {low}",
            high=i.high,
            low=i.low,
        )
    if not i.low <= i.wanted <= i.high:
        raise impossible(
            "wanted",
            "is {w}, not within the heights allowed; give {low} to {high}",
            w=i.wanted,
            low=i.low,
            high=i.high,
        )
    read = []
    for r, (name, row) in enumerate(zip(VALVES, i.heights)):
        if row is None:
            continue
        if row[0] <= i.tip_to_retainer:
            raise impossible(
                f"heights.{r + 1}.1",
                "{name} is {h}, and its tip stands {c} above the spring, which leaves no room for one; give"
                " more than {c}",
                name=name,
                h=row[0],
                c=i.tip_to_retainer,
            )
        lifted = i.exhaust_higher and name.endswith("exhaust")
        read.append(
            (
                name,
                row[0],
                row[1],
                (
                    step(
                        f"H'_{row[0].symbol[2:]}",
                        f"Height of {name}, counted as an intake",
                        SIZE,
                        row[0] - i.exhaust_higher,
                    )
                    if lifted
                    else row[0]
                ),
            )
        )
    start, end = plan(
        [float(level) for *_, level in read],
        float(i.low),
        float(i.high),
        float(i.most_spread),
        float(i.wanted),
        float(i.tip_most),
        float(i.sink_most),
    )
    bottom = Out.bottom(constant("a_t", "Lowest place of a stem, by trial", SIZE, start))
    top = Out.top(bottom + constant("w", "Room for all stems", SIZE, end - start))

    def valve(name, height, length, level):
        short = height.symbol[2:]
        tip = step(
            f"t_{short}",
            f"To come off the tip of {name}",
            SIZE,
            greatest(level - top, 0.0),
            sources.STEM_MOVES,
        )
        sink = step(
            f"z_{short}",
            f"To sink the seat of {name}",
            SIZE,
            greatest(bottom - level, 0.0),
            sources.STEM_MOVES,
        )
        fitted = step(
            f"f_{short}",
            f"Fitted height of {name}, then",
            SIZE,
            height + sink - i.tip_to_retainer,
            sources.STEM_MOVES,
        )
        off = fitted - i.fitted_height
        return Valve(
            name,
            height,
            length,
            level,
            tip,
            sink,
            fitted,
            off if abs(float(off)) > float(i.fitted_off) + FINE else constant("", "", SIZE, 0.0),
        )

    valves = [valve(*each) for each in read]

    def extreme(pick, what):
        return pick(valves, key=lambda v: float(getattr(v, what)))

    above, below = extreme(max, "level"), extreme(min, "level")
    spread = Out.spread(above.level - below.level)
    ground, sunk = extreme(max, "tip"), extreme(max, "sink")
    tip, sink = Out.tip(ground.tip), Out.sink(sunk.sink)
    after = {v.name: v.level - v.tip + v.sink for v in valves}
    last, first = (pick(after.values(), key=float) for pick in (max, min))
    tallest, shimmed = extreme(max, "fitted"), extreme(max, "shim")
    tight = extreme(min, "shim")
    shim = Out.shim(greatest(shimmed.fitted - i.fitted_height, 0.0) if float(shimmed.shim) > 0 else 0.0)

    out_of_limits = [v for v in valves if past(i.low, v.level) or past(v.level, i.high)]
    uneven = [v for v in valves if float(v.tip) > FINE or float(v.sink) > FINE]
    shims = [v for v in valves if float(v.shim) > 0]
    work = " and ".join(
        words
        for words, any_ in (("take the tips down", float(tip) > FINE), ("sink the seats", float(sink) > FINE))
        if any_
    )
    do = say(
        work.capitalize()
        + " as in the table, a little at a time, and measure again. After that a tip may still lose {t}, a"
        " seat {z}.",
        t=constant("", "", SIZE, max(float(i.tip_most - tip), 0.0)),
        z=constant("", "", SIZE, max(float(i.sink_most - sink), 0.0)),
    )
    odd = _odd_one(valves, i.low, i.high, i.most_spread)
    if odd is not None and odd is below:
        do = say(
            "Measure {name} again first, pressed down and turned on its seat. Is it the right valve, and as"
            " long as a new one? Does blue show that it lies? Only when all that is right: {do}",
            name=odd.name,
            do=say(do.template[0].lower() + do.template[1:], **do.values),
        )
    longest = (
        max((v for v in valves if v.length is not None), key=lambda v: float(v.length), default=None)
        if i.length_most is not None
        else None
    )
    if float(tip) > float(i.tip_most) + FINE:
        verdict = (
            "fail",
            say("{name} too high: {t} off its tip", name=ground.name, t=tip),
            say(
                "A tip may lose {most}. Do not grind it thin: the valve lies too deep. Try a new valve; if"
                " that stands as high, fit a new ring.",
                most=i.tip_most,
            ),
        )
    elif float(sink) > float(i.sink_most) + FINE:
        verdict = (
            "fail",
            say("{name} too low: {z} to sink", name=sunk.name, z=sink),
            say(
                "A seat may go {most} deeper. Do not cut it for that: look first whether this is the right"
                " valve, how long it is, and whether it lies on its seat.",
                most=i.sink_most,
            ),
        )
    elif out_of_limits:
        verdict = (
            "fail",
            say("Out of limits: {n} of {all}", n=str(len(out_of_limits)), all=str(len(valves))),
            do,
        )
    elif uneven:
        verdict = ("attention", say("Uneven: {s} apart", s=spread), do)
    elif shims:
        verdict = (
            "attention",
            say("Heights right; {n} of the springs too tall", n=str(len(shims))),
            "Put the shims of the table under them, and measure every fitted height with the shims in place.",
        )
    elif float(tight.shim) < 0:
        verdict = (
            "attention",
            say("Heights right; spring {name} too short", name=tight.name),
            say(
                "It has {f} with no shim at all. Look whether retainer and keepers belong to this valve, and"
                " check that its coils do not bind.",
                f=tight.fitted,
            ),
        )
    elif len(valves) == 1:
        verdict = (
            "attention",
            say("One stem alone: {H}, within its limits", H=valves[0].height),
            "Measure the others: what counts besides is that they stand even.",
        )
    else:
        verdict = (
            "pass",
            say("Even: {s} apart, all in limits", s=spread),
            (
                "Write them down by valve. After any more cutting, measure again: a seat sunk raises its stem"
                " by as much."
            ),
        )
    if longest is not None and past(longest.length, i.length_most):
        verdict = (
            "fail" if verdict[0] == "fail" else "attention",
            say(
                "{name} has grown long: {L}, {most} when new",
                name=longest.name,
                L=longest.length,
                most=i.length_most,
            ),
            (
                "Do not fit it again, and grind nothing for it: a valve that stretches drops its head next,"
                " and this is the one warning. Look at its neck, fit a new one, and measure that."
            ),
        )
    shown = max(valves, key=lambda v: (float(v.tip + v.sink), float(v.shim), abs(float(v.level - i.wanted))))
    return answer(
        spread,
        tip,
        sink,
        Out.highest(above.level - i.wanted),
        Out.lowest(below.level - i.wanted),
        bottom,
        top,
        Out.spread_after(last - first),
        Out.fitted_most(tallest.fitted),
        shim,
        verdict=verdict,
        limits=(
            Limit("the highest stem", above.level, high=i.high),
            Limit("the lowest stem", below.level, low=i.low),
            Limit("the evenness", spread, high=i.most_spread, level="attention"),
            *(
                (Limit("the length of the valve", longest.length, high=i.length_most, level="attention"),)
                if longest is not None
                else ()
            ),
        ),
        remarks=(
            note(
                "Grinding a tip leaves its spring as it was; sinking a seat, or grinding the valve's face,"
                " lets the spring out by as much as the stem rises."
            ),
            (
                note(
                    "A tip ground before stands less than {c} above its spring: then measure that valve by"
                    " valve, or the fitted height itself.",
                    c=i.tip_to_retainer,
                )
                if shims or float(tight.shim) < 0
                else None
            ),
            _alone(valves, i.most_spread),
        ),
        tables=(_table(valves, i.wanted, i.low, i.high),),
        cautions=(cautions.SPINNING,) if float(tip) > FINE else (),
        figures=(assembly(shown, i.tip_to_retainer), _plot(valves, i.low, i.high, i.wanted)),
    )


def plan(levels, low, high, spread, wanted, tip_most, sink_most) -> tuple:
    """From where to where all stems should stand: a window no wider than `spread` within low…high.

    First, no tip or seat gives more than it may; then least off the seats; then least off the tips; then nearest to the height wanted. Metres.
    Each of these bends only where a stem meets an end of the window, or where a tip or seat has no more to give: the best place is one of those.
    """
    wide = min(spread, high - low)
    bends = [
        place
        for level in levels
        for place in (level, level - wide, level - tip_most - wide, level + sink_most)
    ]
    places = {min(max(a, low), high - wide) for a in (wanted - wide / 2, *bends)}

    def cost(a):
        tips, sinks = (
            [max(level - a - wide, 0.0) for level in levels],
            [max(a - level, 0.0) for level in levels],
        )
        over = sum(t > tip_most + FINE for t in tips) + sum(z > sink_most + FINE for z in sinks)
        return over, round(sum(sinks), 9), round(sum(tips), 9), round(abs(a + wide / 2 - wanted), 9), a

    bottom = min(places, key=cost)
    return bottom, bottom + wide


def _odd_one(valves, low, high, most_spread):
    """The one valve of three or more that is out of line while all others are in order among themselves, None where there is no such one."""

    def in_order(some):
        levels = [v.level for v in some]
        return not any(past(low, x) or past(x, high) for x in levels) and not past(
            max(levels, key=float) - min(levels, key=float), most_spread
        )

    if len(valves) < 3 or in_order(valves):
        return None
    ends = (min(valves, key=lambda v: float(v.level)), max(valves, key=lambda v: float(v.level)))
    alone = [end for end in ends if in_order([v for v in valves if v is not end])]
    return max(
        alone,
        key=lambda end: min(abs(float(end.level - v.level)) for v in valves if v is not end),
        default=None,
    )


def _alone(valves, most_spread):
    """A warning where one valve of three or more stands far from all others."""
    gaps = (
        {v.name: min(abs(float(v.level - other.level)) for other in valves if other is not v) for v in valves}
        if len(valves) > 2
        else {}
    )
    name = max(gaps, key=gaps.get, default="")
    return (
        warning(
            "{name} stands {s} from the next one. One valve alone out of line is more often the wrong valve,"
            " or one not on its seat, than a sunk seat.",
            name=name,
            s=constant("", "", SIZE, gaps[name]),
        )
        if name and gaps[name] > float(most_spread)
        else None
    )


def _table(valves, wanted, low, high) -> Table:
    def cell(x):
        return constant("", "", SIZE, float(x)) if abs(float(x)) > FINE else "–"

    rows = tuple(
        (
            v.name,
            v.height,
            cell(v.tip),
            cell(v.sink),
            cell(v.shim),
            v.fitted,
            constant("", "", SIZE, float(v.level - wanted)),
        )
        for v in valves
    )
    states = tuple(
        (
            "fail"
            if past(low, v.level) or past(v.level, high)
            else "attention"
            if any(abs(float(x)) > FINE for x in (v.tip, v.sink, v.shim))
            else "pass"
        )
        for v in valves
    )
    return Table(
        "Valve by valve, what to do",
        (
            "Valve",
            "Height",
            "Off the tip",
            "Sink seat",
            "Shim, − too short by",
            "Fitted height, then",
            "Off the height wanted",
        ),
        rows,
        states,
    )


def assembly(valve, tip_to_retainer) -> Drawing:
    """A valve with its spring in section: the spring's bed at height 0, the tip at the stem height."""
    mm = 1e-3
    tip, bearing, shim = (
        float(valve.height),
        float(valve.height - tip_to_retainer),
        max(float(valve.shim), 0.0),
    )
    stem, guide, wire, coil, deep = 4 * mm, 6.5 * mm, 4 * mm, 27 * mm, -14 * mm
    wide = (coil + wire) / 2
    shapes = [
        *coils(0.0, shim, bearing - shim, wire, coil, 4.5, 6.5),
        Area(
            (
                (-stem, deep),
                (stem, deep),
                (stem, tip - 0.5 * mm),
                (stem - 0.5 * mm, tip),
                (0.5 * mm - stem, tip),
                (-stem, tip - 0.5 * mm),
            ),
            "",
        ),
    ]
    for side in (-1, 1):
        shapes += [
            Area(tuple((side * x, y) for x, y in points), hatch)
            for points, hatch in (
                (box(guide, deep, 1.35 * wide, 0), "a"),
                (box(stem, deep, guide, min(9 * mm, 0.3 * bearing)), "b"),
                (
                    (
                        (stem, bearing),
                        (wide, bearing),
                        (wide, bearing + 2.5 * mm),
                        (stem, bearing + 2.5 * mm),
                    ),
                    "b",
                ),
            )
        ]
        shapes += [Area(tuple((side * x, y) for x, y in box(guide, 0, wide, shim)), "solid")] if shim else []
    left, right = -1.35 * wide, wide
    return Drawing(
        say("Valve {name}: stem height and spring", name=valve.name).plain(),
        say(
            "Section through spring and guide: the tip of {name} stands {h} above the spring's bed, the"
            " spring is {f} high, the tip {c} above it.",
            name=valve.name,
            h=valve.height,
            f=constant("", "", SIZE, bearing),
            c=tip_to_retainer,
        ),
        (
            *shapes,
            Line(((0, deep - 3 * mm), (0, tip + 4 * mm)), "centre"),
            Dimension((left, 0), (left, tip), valve.height, 5 * mm, "H"),
            Line(((left, tip), (0, tip)), "thin"),
            Dimension((right, 0), (right, bearing), constant("", "", SIZE, bearing), -9 * mm, "f"),
            Dimension((right, bearing), (right, tip), tip_to_retainer, -16 * mm, "c"),
            Line(((0, tip), (right, tip)), "thin"),
        ),
        "heights to scale; widths are the example's",
    )


def _plot(valves, low, high, wanted) -> Plot:
    """The stems beside each other, with their limits."""

    def level(x):
        return ((1, float(x)), (len(valves), float(x)))

    return Plot(
        "Stems beside each other",
        say(
            "The stems stand from {a} to {b}; {low} to {high} are allowed.",
            a=min((v.level for v in valves), key=float),
            b=max((v.level for v in valves), key=float),
            low=low,
            high=high,
        ),
        Axis("Valve, as listed", form(COUNT, 0)),
        Axis("Height", SIZE),
        (
            Series("wanted", level(wanted), "dashed"),
            Series("least", level(low), "limit"),
            Series("most", level(high), "limit"),
            Series("", tuple((i, float(v.level)) for i, v in enumerate(valves, 1)), "points"),
        ),
    )
