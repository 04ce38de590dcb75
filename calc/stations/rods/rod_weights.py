"""A set of rods weighed end for end: what must come off which pad so that all match the lightest at both ends."""

import math
from typing import NamedTuple

from calc.core.conformance import past
from calc.core.drawing import Area, Dimension, Drawing, Label, Line, arc, box
from calc.core.kinds import LENGTH, MASS, RATIO
from calc.core.result import Table, note, say, warning
from calc.core.working import Number, constant, form, greatest, least, step
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
from calc.stations.rods import RODS

GRAMS, SMALL = form(MASS, 1), form(LENGTH, 1)
NOT_LEVEL = 1e-3  # kg: ends that sum up to more or less than the whole by this were not weighed level; common practice, no source
FINE = 0.05e-3  # kg: what a balance to a tenth of a gram shows as nothing


class Out(Outputs):
    off_big = Output("Most to take off a big end's pad", "m_b", GRAMS, main=True)
    off_small = Output("Most to take off a small end's pad", "m_s", GRAMS, main=True)
    spread_big = Output("Big ends apart, now", "Δ_b", GRAMS)
    spread_small = Output("Small ends apart, now", "Δ_s", GRAMS)
    spread_whole = Output("Whole rods apart, now", "Δ_w", GRAMS)
    big_after = Output("Big ends apart, then", "Δ_b1", GRAMS)
    small_after = Output("Small ends apart, then", "Δ_s1", GRAMS)
    whole_after = Output("Whole rods apart, then", "Δ_w1", GRAMS)
    lightest = Output("Lightest rod, then", "W_1", GRAMS)


class Rod(NamedTuple):
    name: str
    big: Number
    small: Number
    weighed: Number | None
    off_big: Number
    off_small: Number
    big_after: Number
    small_after: Number

    @property
    def whole(self):
        return self.big + self.small

    @property
    def whole_after(self):
        return self.big_after + self.small_after


def off_pads(over_big, over_small, beyond_big, beyond_small):
    """Metal to take off the pads so that the ends' readings fall by `over_big` and `over_small`.

    A pad that lies beyond its bore's centre, by a share of the centre distance, weighs more on its own end than it is, and lifts the
    other: both balances of moments, solved. The two add up to what the readings are over.
    """
    both = 1 + beyond_big + beyond_small
    return (over_big * (1 + beyond_small) + over_small * beyond_small) / both, (
        over_small * (1 + beyond_big) + over_big * beyond_big
    ) / both


class In(Inputs):
    weights: Rows = grid(
        "Weights, other end hung level",
        rows=RODS,
        columns=(
            column(
                "Big end", "B", GRAMS, hard="20 to 5000 g", usual="150 to 1200 g", feature="rod.big_end_mass"
            ),
            column(
                "Small end",
                "S",
                GRAMS,
                hard="10 to 3000 g",
                usual="60 to 600 g",
                feature="rod.small_end_mass",
            ),
            column(
                "Whole",
                "W",
                GRAMS,
                hard="30 to 8000 g",
                usual="200 to 1800 g",
                optional=True,
                feature="rod.mass",
            ),
        ),
        least=2,
        tool="a balance",
        hint="Each with its cap, bolts and bush. Whole rod, to check, may stay empty.",
        example="399.6; 160.4; 560.0 | 400.1; 160.1; 560.2 | 399.8; 160.6; 560.4 | 399.5; 160.2; 559.7",
    )
    allowed: Number = given(
        "Ends may differ by",
        "Δ_a",
        GRAMS,
        hard="0 to 50 g",
        usual="0.2 to 5 g",
        assumed=("1.0 g", "common practice, no source"),
        hint="1 g at each end; common practice, no source.",
    )
    most_big: Number = limit(
        "Big end's pad may lose, at most",
        "m_B",
        GRAMS,
        feature="rod.pad_loss_big_end",
        which="wear",
        hard="0 to 200 g",
        usual="0 to 20 g",
        hint="What the pad leaves: less, where it was ground before.",
    )
    most_small: Number = limit(
        "Small end's pad may lose, at most",
        "m_S",
        GRAMS,
        feature="rod.pad_loss_small_end",
        which="wear",
        hard="0 to 200 g",
        usual="0 to 12 g",
        hint="What the pad leaves: less, where it was ground before.",
    )
    centre_distance: Number = measured(
        "Centre distance",
        "L",
        SMALL,
        tool="a rod gauge",
        hard="50 to 400 mm",
        usual="90 to 220 mm",
        feature="rod.centre_distance",
        fold=True,
    )
    beyond_big: Number = measured(
        "Big end's pad beyond its centre by",
        "e_b",
        SMALL,
        tool="a rule",
        hard="0 to 120 mm",
        usual="15 to 70 mm",
        feature="rod.pad_beyond_big_end",
        fold=True,
    )
    beyond_small: Number = measured(
        "Small end's pad beyond its centre by",
        "e_s",
        SMALL,
        tool="a rule",
        hard="0 to 80 mm",
        usual="5 to 40 mm",
        feature="rod.pad_beyond_small_end",
        fold=True,
    )


@calculator(
    "rod-weights",
    "End weights of a set of rods",
    In,
    Out,
    purpose="How far are the rods apart at each end, and what comes off which pad to make them alike?",
    finds=(
        "rod balancing",
        "weight of connecting rods",
        "big end weight",
        "small end weight",
        "match rods",
        "reciprocating mass",
        "balance pads",
    ),
    sources=(sources.TWO_SUPPORTS, sources.PRACTICE),
    cautions=(cautions.ROD_SCRAP, cautions.SPINNING, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def rod_weights(i: In) -> Answer:
    """Each rod as a beam on its two bores; both ends brought down to the lightest of the set by metal off the pads.

    Exact where rods are weighed level and held at the centres of their bores. Pads are taken as points. Where a pad has not enough,
    what it has is taken off, and the spread that stays is shown.
    """
    rows = [(name, *row) for name, row in zip(RODS, i.weights) if row is not None]
    light_big, light_small = (min((row[n] for row in rows), key=float) for n in (1, 2))
    share_b = step(
        "β",
        "Big end's pad beyond, as share of the centre distance",
        form(RATIO, 3),
        i.beyond_big / i.centre_distance,
    )
    share_s = step(
        "σ",
        "Small end's pad beyond, as share of the centre distance",
        form(RATIO, 3),
        i.beyond_small / i.centre_distance,
    )

    def rod(name, big, small, weighed):
        over = [
            step(f"x_{letter},{name}", f"{words} of rod {name} over the lightest", GRAMS, own - light)
            for letter, words, own, light in (
                ("b", "Big end", big, light_big),
                ("s", "Small end", small, light_small),
            )
        ]
        wanted = [
            step(
                f"{symbol},{name}",
                f"To come off the {words} pad of rod {name}",
                GRAMS,
                m,
                sources.TWO_SUPPORTS,
            )
            for symbol, words, m in zip(
                ("n_b", "n_s"), ("big end's", "small end's"), off_pads(*over, share_b, share_s)
            )
        ]
        taken = [least(m, most) for m, most in zip(wanted, (i.most_big, i.most_small))]
        return Rod(
            name,
            big,
            small,
            weighed,
            *wanted,
            step(
                f"B'_{name}",
                f"Big end of rod {name}, then",
                GRAMS,
                big - taken[0] * (1 + share_b) + taken[1] * share_s,
                sources.TWO_SUPPORTS,
            ),
            step(
                f"S'_{name}",
                f"Small end of rod {name}, then",
                GRAMS,
                small - taken[1] * (1 + share_s) + taken[0] * share_b,
                sources.TWO_SUPPORTS,
            ),
        )

    rods = [rod(*row) for row in rows]

    def apart(what):
        values = [getattr(r, what) for r in rods]
        return greatest(max(values, key=float) - min(values, key=float), 0.0)

    off_big, off_small = (
        Out.off_big(max((r.off_big for r in rods), key=float)),
        Out.off_small(max((r.off_small for r in rods), key=float)),
    )
    spread_big, spread_small, big_after, small_after = (
        out(apart(what))
        for out, what in (
            (Out.spread_big, "big"),
            (Out.spread_small, "small"),
            (Out.big_after, "big_after"),
            (Out.small_after, "small_after"),
        )
    )
    worst = step("Δ", "The larger spread of the two ends", GRAMS, greatest(spread_big, spread_small))
    left = step("Δ_1", "The larger spread, then", GRAMS, greatest(big_after, small_after))
    if not past(worst, i.allowed):
        verdict = (
            "pass",
            say("Alike: big {b}, small {s} apart", b=spread_big, s=spread_small),
            "Leave them as they are. Write the weights on the tag.",
        )
    elif not past(left, i.allowed):
        verdict = (
            "attention",
            say("Apart by {d}: take off as listed", d=worst),
            (
                "Grind the pads lengthwise, a little at a time, and weigh both ends again: what goes at one"
                " end shows at the other."
            ),
        )
    else:
        verdict = (
            "fail",
            say("Pads run out: {d} stay apart", d=left),
            (
                "The lightest rod does not belong to this set, or the heaviest does not. Look for one that"
                " matches; metal comes off pads and nowhere else."
            ),
        )
    odd = [r for r in rods if r.weighed is not None and abs(float(r.whole - r.weighed)) > NOT_LEVEL]
    return answer(
        off_big,
        off_small,
        spread_big,
        spread_small,
        Out.spread_whole(apart("whole")),
        big_after,
        small_after,
        Out.whole_after(apart("whole_after")),
        Out.lightest(min((r.whole_after for r in rods), key=float)),
        verdict=verdict,
        limits=(
            Limit("the spread of end weights", worst, high=i.allowed, level="attention"),
            Limit("the spread that the pads leave", left, high=i.allowed),
        ),
        remarks=(
            note(
                "Metal off a pad beyond the bore shows as more than itself on that end, and makes the other"
                " heavier: the list counts both."
            ),
            (
                warning(
                    "Both ends of rod {n} together are {d} off the whole: weigh again, level, hung at the"
                    " bores' centres.",
                    n=" and ".join(r.name for r in odd),
                    d=constant("", "", GRAMS, max(abs(float(r.whole - r.weighed)) for r in odd)),
                )
                if odd
                else None
            ),
        ),
        tables=(_table(rods, light_big, light_small, i.allowed, i.most_big, i.most_small),),
        figures=(beam(i.centre_distance, i.beyond_big, i.beyond_small),),
    )


def _table(rods, light_big, light_small, allowed, most_big, most_small) -> Table:
    def cell(m):
        return m if float(m) > FINE else "–"

    rows = tuple(
        (r.name, r.big, r.small, constant("", "", GRAMS, float(r.whole)), cell(r.off_big), cell(r.off_small))
        for r in rods
    )
    states = tuple(
        (
            "fail"
            if r.off_big > most_big or r.off_small > most_small
            else (
                "attention"
                if past(r.big - light_big, allowed) or past(r.small - light_small, allowed)
                else "pass"
            )
        )
        for r in rods
    )
    return Table(
        "Rod by rod, to match the lightest",
        ("Rod", "Big end", "Small end", "Whole", "Off the big end's pad", "Off the small end's pad"),
        rows,
        states,
    )


def beam(centre_distance, beyond_big, beyond_small) -> Drawing:
    """The rod lying level: big end on the balance, small end hung; the pads that may lose metal are filled."""
    L, eb, es = float(centre_distance), float(beyond_big), float(beyond_small)
    big, small = 0.2 * L, 0.09 * L
    pad = 0.03 * L

    def ring(x, r, inner):
        return Area(arc((x, 0), r, 0, 2 * math.pi), "a"), Area(arc((x, 0), inner, 0, 2 * math.pi), "")

    return Drawing(
        "Weighing one end",
        say(
            "Rod level, {L} from bore to bore: the big end on the balance, the small end hung at its centre."
            " Pads lie {b} and {s} beyond the centres.",
            L=centre_distance,
            b=beyond_big,
            s=beyond_small,
        ),
        (
            Area(box(0, -0.05 * L, L, 0.05 * L), "a"),
            *ring(0, 1.35 * big, big),
            *ring(L, 1.55 * small, small),
            Area(box(-eb - pad, -pad, -eb + pad, pad), "solid"),
            Area(box(L + es - pad, -pad, L + es + pad, pad), "solid"),
            Area(((0, -big), (-0.06 * L, -big - 0.14 * L), (0.06 * L, -big - 0.14 * L)), ""),
            Area(box(-0.22 * L, -big - 0.24 * L, 0.22 * L, -big - 0.14 * L), "b"),
            Line(((L, small), (L, 0.5 * L))),
            Label((0, -big - 0.36 * L), "balance"),
            Label((L, 0.54 * L), "hung"),
            Dimension((0, 0), (L, 0), centre_distance, 0.36 * L, "L"),
        ),
        "lengths to scale; the rod's shape is the example's",
    )
