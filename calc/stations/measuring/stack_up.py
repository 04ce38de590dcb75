"""What a chain of sizes adds up to: worst case, root sum of squares, and how many would fit."""

from calc.core.conformance import DUST, past
from calc.core.drawing import Axis, Plot, Series
from calc.core.kinds import RATIO
from calc.core.result import Table, impossible, note, say, warning
from calc.core.working import constant, form, step
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
    column,
    given,
    grid,
)
from calc.formulas import stack
from calc.reference import cautions, sources
from calc.stations.shared.forms import COARSE, FINE, FINE_SHARE, SHARE, SIZE

WAY = form(RATIO, 0)
SHAPES = {
    "uniform": "Anywhere within its tolerance",
    "normal": "Mostly near the middle (tolerance = ± 3 standard deviations)",
}
RUNS = 10_000
MOST = 0.9973  # the share within ± 3 standard deviations of a normal size
BINS = 24


class Out(Outputs):
    least_gap = Output("Least gap, worst case", "G_min", SIZE, main=True)
    greatest_gap = Output("Greatest gap, worst case", "G_max", SIZE, main=True)
    within = Output("Share within the limits", "P", FINE_SHARE, main=True)
    gap = Output("Gap with every size at its middle", "G", SIZE)
    root = Output("Root sum of squares of the tolerances, ±", "t_q", SIZE)
    deviation = Output("Standard deviation of the gap", "σ", FINE)
    most = Output("99.73 % of gaps lie within ±", "t_99", SIZE)
    simulated = Output(f"Share within the limits, simulated {RUNS} times", "P_s", FINE_SHARE)
    error = Output("Standard error of the simulated share", "u_s", FINE_SHARE)


class In(Inputs):
    chain: Rows = grid(
        "Chain",
        rows=tuple(map(str, range(1, 9))),
        columns=(
            column("Size", "N", COARSE, hard="-5000 to 5000 mm"),
            column("Plus", "p", SIZE, hard="-50 to 50 mm"),
            column("Minus", "m", SIZE, hard="-50 to 50 mm"),
            column("Way", "w", WAY, hard="-1 to 1"),
        ),
        least=2,
        hint=(
            "Go round the gap from one side to the other. Way: 1 where the size opens the gap, −1 where it"
            " closes it. Minus is typed without its sign. The example is the deck height of the invented"
            " engine: case and cylinder, less throw, rod and piston."
        ),
        example=(
            "101.70; 0.05; 0.05; 1 | 110.00; 0.02; 0.02; 1 | 34.50; 0.025; 0.025; -1 | 137.00; 0.05; 0.05; -1"
            " | 39.00; 0.03; 0.03; -1"
        ),
    )
    low: Number | None = given("Gap, at least", "L", SIZE, hard="-50000 to 50000 mm", example="1.00 mm")
    high: Number | None = given("Gap, at most", "H", SIZE, hard="-50000 to 50000 mm", example="1.40 mm")
    shape: str = choice(
        "Each size lies",
        SHAPES,
        fold=True,
        assumed=("uniform", "few parts, or parts picked by hand"),
        hint="Few parts, or parts picked by hand: anywhere. A long run of one machine: near the middle.",
    )
    wanted: Number = given(
        "Share of sets that must fit",
        "P_w",
        FINE_SHARE,
        hard="1 to 100 %",
        usual="90 to 100 %",
        fold=True,
        assumed=("99.73 %", "± 3 standard deviations; common practice, no source"),
    )


@calculator(
    "stack-up",
    "A chain of sizes",
    In,
    Out,
    purpose=(
        "Which gap do these parts leave together, at worst and as a rule, and how many such sets would fit?"
    ),
    finds=(
        "tolerance stack",
        "stack-up",
        "worst case",
        "root sum square",
        "RSS",
        "Monte Carlo",
        "deck height",
        "end float",
        "yield",
    ),
    sources=(sources.STACK, sources.INVENTED, sources.PRACTICE),
    cautions=(cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def stack_up(i: In) -> Answer:
    """Independent sizes, each within its own tolerance; a lopsided tolerance is first moved to its middle.

    The share is exact for either shape; the simulation, with a fixed seed, is there to check it and to be checked.
    """
    if i.low is not None and i.high is not None and i.low >= i.high:
        raise impossible("low", "is {low}, not below {high}; give less than {high}", low=i.low, high=i.high)
    signed, halves, rows = [], [], []
    for n, row in enumerate(i.chain, 1):
        if row is None:
            continue
        size, plus, minus, way = row
        if abs(float(way)) != 1:
            raise impossible(
                "chain",
                "row {row} has the way {way}; give 1 where the size opens the gap, −1 where it closes it",
                row=n,
                way=way,
            )
        if plus + minus < 0:
            raise impossible(
                "chain",
                "row {row} has plus {plus} and minus {minus}, its upper limit under its lower one; give plus"
                " and minus that leave a tolerance",
                row=n,
                plus=plus,
                minus=minus,
            )
        middle = step(f"M_{n}", f"Middle of size {n}", SIZE, size + (plus - minus) / 2)
        halves.append(step(f"t_{n}", f"Half its tolerance, {n}", SIZE, (plus + minus) / 2))
        signed.append(way * middle)
        rows.append((n, middle, halves[-1], way))
    over = [n for n, row in enumerate(i.chain, 1) if row is not None and row[2] < 0]
    gap = Out.gap(sum(signed), sources.STACK)
    all_ways = step("t_w", "Worst case, ±", SIZE, stack.worst(halves), sources.STACK)
    least_gap, greatest_gap = Out.least_gap(gap - all_ways), Out.greatest_gap(gap + all_ways)
    root = Out.root(stack.root_sum_square(halves), sources.STACK)
    deviation = Out.deviation(stack.standard_deviation(root, i.shape), sources.STACK)
    plain = [float(h) for h in halves]
    bounds = tuple(
        default if limit is None else float(limit) - float(gap)
        for limit, default in ((i.low, float("-inf")), (i.high, float("inf")))
    )
    exact = stack.share_within(*bounds, plain, i.shape)
    deviations = stack.simulate(plain, i.shape, RUNS)
    low_end, high_end = bounds[0] - DUST, bounds[1] + DUST
    hits = sum(low_end <= d <= high_end for d in deviations)
    within = Out.within(
        constant(
            "F(H) − F(L)", "Distribution of the sum, between the limits", FINE_SHARE, exact, sources.STACK
        )
    )
    simulated = Out.simulated(constant("k", "Fitted", WAY, hits) / constant("n", "Tried", WAY, RUNS))
    # two hits and two misses more, so that all fitting does not read as certainty (Agresti and Coull)
    fair = step(
        "P_4", "The same with two hits and two misses added", FINE_SHARE, (simulated * RUNS + 2) / (RUNS + 4)
    )
    error = Out.error((fair * (1 - fair) / RUNS) ** 0.5)
    most = Out.most(
        constant(
            "F⁻¹(0.9973)",
            "Distribution of the sum, reversed at 99.73 %",
            SIZE,
            stack.half_width(MOST, plain, i.shape),
            sources.STACK,
        )
    )
    return answer(
        least_gap,
        greatest_gap,
        within,
        gap,
        root,
        deviation,
        most,
        simulated,
        error,
        verdict=_verdict(least_gap, greatest_gap, gap, within, i.wanted, i.low, i.high, rows),
        limits=(
            Limit("the least gap", least_gap, low=i.low),
            Limit("the greatest gap", greatest_gap, high=i.high),
        ),
        remarks=(
            (
                warning(
                    "Of size {i} the minus is below zero, and both limits are taken to lie over the size. If"
                    " it was only typed with its sign, leave the sign out.",
                    i=" and ".join(map(str, over)),
                )
                if over
                else None
            ),
            (
                note(
                    "Root sum of squares holds {p} of such gaps, not 99.73 %: it is meant for sizes that lie"
                    " near their middle.",
                    p=constant(
                        "", "", FINE_SHARE, stack.share_within(-float(root), float(root), plain, i.shape)
                    ),
                )
                if i.shape == "uniform" and root > 0
                else None
            ),
            note(
                "Shares hold for many sets of parts. For the one set on the bench, measure its sizes and type"
                " them with no tolerance, or measure the gap."
            ),
        ),
        tables=(_table(rows, float(all_ways), float(root)),),
        figures=(_plot(gap, plain, i.shape, deviations, bounds, float(deviation)),),
    )


def _verdict(least_gap, greatest_gap, gap, within, wanted, low, high, rows):
    most = max(rows, key=lambda row: float(row[2]))
    heaviest = say("Size {i}, ± {t}, has the most to give.", i=most[0], t=most[2])
    if low is None and high is None:
        return (
            "attention",
            say("Gap from {a} to {b}", a=least_gap, b=greatest_gap),
            "No limit was given, so nothing was judged. Type the least and the greatest gap that will do.",
        )
    if (low is None or not past(low, least_gap)) and (high is None or not past(greatest_gap, high)):
        return (
            "pass",
            say("Always fits: {a} to {b}", a=least_gap, b=greatest_gap),
            "Any set of parts within their limits fits. Measure the gap once all the same.",
        )
    if within >= wanted:
        return (
            "attention",
            say("All but one in {n} fit", n=_one_in(1 - float(within))),
            say(
                "At worst the gap is {a} to {b}: measure it on every set. {heaviest}",
                a=least_gap,
                b=greatest_gap,
                heaviest=heaviest.plain(),
            ),
        )
    off = None if low is None or high is None else float(low + high) / 2 - float(gap)
    if off is not None and abs(off) > 0.05 * float(high - low):
        return (
            "fail",
            say("Too few fit: {p}", p=within),
            say(
                "Before you tighten anything, {way} the gap by {off}, which puts it in the middle of its"
                " limits.",
                way="widen" if off > 0 else "narrow",
                off=constant("", "", SIZE, abs(off)),
            ),
        )
    return (
        "fail",
        say("Too few fit: {p}", p=within),
        say(
            "Tighten tolerances, match parts, or set the gap with a shim. Size {i}, ± {t}, has the most to"
            " give.",
            i=most[0],
            t=most[2],
        ),
    )


def _one_in(share: float) -> str:
    """The reciprocal of a small share, in two figures, rounded to the worse side."""
    if share < 1e-9:
        return "a billion"
    size = 10 ** max(0, len(str(int(1 / share))) - 2)
    return f"{int(1 / share) // size * size:,}".replace(",", "\u202f")


def _table(rows, worst: float, root: float) -> Table:
    return Table(
        "What each size adds",
        ("Size", "Middle", "±", "Of worst case", "Of variance"),
        tuple(
            (
                f"{i} {'+' if way > 0 else '−'}",
                middle,
                half,
                constant("", "", SHARE, float(half) / worst if worst else 0.0),
                constant("", "", SHARE, (float(half) / root) ** 2 if root else 0.0),
            )
            for i, middle, half, way in rows
        ),
    )


def _plot(gap, halves, shape, deviations, bounds, sd: float) -> Plot | None:
    """Share of gaps in each of equal steps: exact as a line, simulated as points, with the limits."""
    if not sd:
        return None
    reach = min(sum(halves), 4.5 * sd) if shape == "uniform" else 4.5 * sd
    edges = [reach * (2 * i / BINS - 1) for i in range(BINS + 1)]
    middle = float(gap)
    counts = [0] * BINS
    for d in deviations:
        place = int((d / reach + 1) / 2 * BINS)
        if 0 <= place < BINS:
            counts[place] += 1
    below = [stack.share_below(edge, halves, shape) for edge in edges]
    centres = [middle + (a + b) / 2 for a, b in zip(edges, edges[1:])]
    exact = [b - a for a, b in zip(below, below[1:])]
    top = max(exact)
    limits = tuple(
        Series(words, ((middle + bound, 0.0), (middle + bound, top)), "limit")
        for words, bound in zip(("at least", "at most"), bounds)
        if abs(bound) < 3 * reach
    )
    return Plot(
        "How the gaps spread: line worked out, points simulated",
        say("Gaps spread about {g}.", g=gap),
        Axis("Gap", COARSE),
        Axis("Share of gaps a step", form(RATIO, 1, "%", "%")),
        (
            Series("", ((middle + edges[0], 0.0), *zip(centres, exact), (middle + edges[-1], 0.0))),
            Series("", tuple(zip(centres, (k / RUNS for k in counts))), "points"),
            *limits,
        ),
    )
