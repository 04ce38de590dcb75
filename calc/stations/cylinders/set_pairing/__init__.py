"""Which part goes into which bore, and which parts of those at hand belong together."""

from typing import NamedTuple

from calc.core.conformance import past
from calc.core.drawing import Area, Dimension, Drawing, Label, Line, box
from calc.core.result import Judged, Remark, Table, impossible, note, say
from calc.core.working import Number, greatest, least, step
from calc.declare.calculator import Answer, Limit, Output, Outputs, Rows, answer, calculator
from calc.reference import cautions, sources
from calc.stations.cylinders.set_pairing.asked import BORES, CC, FORCES, GRAMS, LOAD, MASSES, PAIR, PARTS, In
from calc.stations.cylinders.set_pairing.choosing import pairing, together
from calc.stations.shared.forms import SIZE


class Out(Outputs):
    tight = Output("Least clearance", "c_k", SIZE, main=True)
    loose = Output("Most clearance", "c_g", SIZE, main=True)
    masses = Output("Chosen by weight, they differ by", "s_m", GRAMS)
    volumes = Output("Chosen by volume, they differ by", "s_V", CC)
    forces = Output("Chosen by load, they differ by", "s_F", LOAD)


class Pairs(NamedTuple):
    """`each`: bore, part, clearance."""

    each: list[tuple[str, str, Number]]
    tight: Number
    loose: Number

    @property
    def told(self) -> str:
        return ", ".join(f"{part} into {bore}" for bore, part, _ in self.each)


class Set(NamedTuple):
    chosen: list[tuple[str, tuple[Number, ...]]]
    left: list[str]
    spread: Number

    @property
    def told(self) -> str:
        return ", ".join(name for name, _ in self.chosen)


@calculator(
    "set-pairing",
    "Pairing a set",
    In,
    Out,
    purpose="Which part goes into which bore, or which of these parts belong together?",
    finds=(
        "match pistons",
        "pistons to bores",
        "matched set",
        "select fit",
        "match chambers",
        "match springs",
        "sort parts",
        "selective assembly",
    ),
    sources=(sources.EVERY_WAY, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def set_pairing(i: In) -> Answer:
    """All ways are tried. Pairs: the worst clearance lies as near to the middle of what is allowed as can
    be, then
    the squares of the rest. Sets: the larger spread of the readings is least, then their sum.

    At most 8 parts.
    """
    pairs = _pairs(i)
    sets = {
        name: _set(i, name, output)
        for name, output in ((MASSES, Out.masses), ("volumes", Out.volumes), (FORCES, Out.forces))
    }
    spreads = [s.spread for s in sets.values()]
    if i.what == PAIR:
        verdict, table = _paired(i, pairs), _pair_table(pairs)
        limits: tuple[Limit, ...] = (
            Limit("the least clearance", pairs.tight, low=i.low),
            Limit("the most clearance", pairs.loose, high=i.high),
        )
    else:
        found, allowed = sets[i.what], getattr(i, f"{i.what}_apart")
        verdict, table = _together(found, allowed), _set_table(found)
        limits = (Limit("how far they differ", found.spread, high=allowed, level="attention"),)
    return answer(
        pairs.tight,
        pairs.loose,
        *spreads,
        verdict=verdict,
        limits=limits,
        remarks=_remarks_on(i, sets),
        tables=lambda: (table,),
        figures=lambda: (_drawing(i, pairs, sets),),
    )


def _pairs(i: In) -> Pairs:
    if i.low > i.high:
        raise impossible("low", "is {a}, more than the most, {b}; give {b} or less", a=i.low, b=i.high)
    bores = [(name, row[0]) for name, row in zip(BORES, i.bores) if row is not None]
    parts = [(name, row[0]) for name, row in zip(PARTS, i.parts) if row is not None]
    if len(parts) < len(bores):
        raise impossible(
            "parts",
            "are {p}, and there are {b} bores; give at least as many parts, or leave bores out",
            p=str(len(parts)),
            b=str(len(bores)),
        )
    wanted = (float(i.low) + float(i.high)) / 2
    chosen = pairing([float(d) for _, d in bores], [float(d) for _, d in parts], wanted)
    each = [
        (bore, parts[k][0], step(f"c_{bore}", f"Clearance of bore {bore}", SIZE, D - parts[k][1]))
        for (bore, D), k in zip(bores, chosen)
    ]
    clearances = [c for _, _, c in each]
    return Pairs(each, Out.tight(least(*clearances)), Out.loose(greatest(*clearances)))


def _set(i: In, field: str, output: Output) -> Set:
    grid: Rows = getattr(i, field)
    rows = [
        (name, tuple(x for x in row if x is not None)) for name, row in zip(PARTS, grid) if row is not None
    ]
    count = round(float(i.count))
    if len(rows) < count:
        raise impossible(
            "count", "is {n}, and {m} parts were read; give at most so many", n=i.count, m=str(len(rows))
        )
    for n, row in enumerate(grid, 1):
        if row is not None and sum(x is not None for x in row) < max(len(r) for _, r in rows):
            raise impossible(
                f"{field}.{n}.2",
                "is empty, and other parts have a second reading; give it for all of them, or for none",
            )
    picked = together([[float(x) for x in row] for _, row in rows], count)
    chosen = [rows[k] for k in picked]
    spreads = [greatest(*column) - least(*column) for column in zip(*(row for _, row in chosen))]
    left = [name for k, (name, _) in enumerate(rows) if k not in picked]
    return Set(chosen, left, output(greatest(*spreads) if len(spreads) > 1 else spreads[0]))


def _paired(i: In, pairs: Pairs) -> Judged:
    tight = min(pairs.each, key=lambda pair: float(pair[2]))
    loose = max(pairs.each, key=lambda pair: float(pair[2]))
    best = say("The best that these allow: {told}.", told=pairs.told)
    if past(i.low, pairs.tight):
        return (
            "fail",
            say("No pairing serves: bore {b} has {c}", b=tight[0], c=pairs.tight),
            say(
                "{low} are wanted. {best} Hone that bore, or find a smaller part for it.",
                low=i.low,
                best=best,
            ),
        )
    if past(pairs.loose, i.high):
        return (
            "fail",
            say("No pairing serves: bore {b} has {c}", b=loose[0], c=pairs.loose),
            say("{high} are allowed. {best} Find a larger part for that bore.", high=i.high, best=best),
        )
    return (
        "pass",
        say("Pairs: clearance {a} to {b}", a=pairs.tight, b=pairs.loose),
        say("{told}. Tag each part with its bore.", told=pairs.told),
    )


def _together(found: Set, allowed: Number) -> Judged:
    if past(found.spread, allowed):
        return (
            "attention",
            say("The closest differ by {s}", s=found.spread),
            say(
                "Those are {told}; {m} are wanted. Look for others, or make the farthest like the rest where"
                " that may be done.",
                told=found.told,
                m=allowed,
            ),
        )
    return (
        "pass",
        say("They belong together: {s} apart", s=found.spread),
        say("Take {told}. Tag them as a set.", told=found.told),
    )


def _remarks_on(i: In, sets: dict[str, Set]) -> tuple[Remark | None, ...]:
    left = sets[i.what].left if i.what != PAIR else []
    return (
        note("Left over: {l}.", l=", ".join(left)) if left else None,
        note("Bores and parts must have had the same heat when they were read.") if i.what == PAIR else None,
        note(
            "This tells only that they are alike. Whether each is within its own limits is judged where it is"
            " measured: all four may be alike, and worn."
        )
        if i.what != PAIR
        else None,
    )


def _pair_table(pairs: Pairs) -> Table:
    return Table("Pair by pair", ("Bore", "Part", "Clearance"), tuple(pairs.each))


def _set_table(found: Set) -> Table:
    columns = ("Part", "Reading", "Second reading")[: 1 + len(found.chosen[0][1])]
    return Table("The chosen ones", columns, tuple((name, *row) for name, row in found.chosen))


def _drawing(i: In, pairs: Pairs, sets: dict[str, Set]) -> Drawing:
    """Bars as long as clearances, or as readings lie over the smallest chosen one."""
    if i.what == PAIR:
        bars = [(f"{part} into {bore}", float(c), c) for bore, part, c in pairs.each]
        words = "Clearance of each pair"
    else:
        first = min(float(row[0]) for _, row in sets[i.what].chosen)
        bars = [(name, float(row[0]) - first, row[0]) for name, row in sets[i.what].chosen]
        words = "The chosen ones, by how much they lie over the smallest"
    most = max([abs(value) for _, value, _ in bars] + [1e-12])
    shapes: list = []
    for n, (name, value, number) in enumerate(bars):
        y, long = -n * 0.016, 0.06 * value / most
        shapes.append(Label((-0.0054, y), name, "end"))
        if abs(long) > 0.03:
            shapes.append(Area(box(min(0, long), y, max(0, long), y + 0.003), "a"))
            shapes.append(Dimension((min(0, long), y + 0.006), (max(0, long), y + 0.006), number))
        else:
            shapes.append(Area(box(min(0, long) - 1e-4, y, max(0, long) + 1e-4, y + 0.003), "a"))
            shapes.append(Label((0.045, y), say("{v}", v=number)))
    shapes.append(Line(((0, 0.01), (0, -0.016 * len(bars) + 0.008)), "outline"))
    return Drawing(words, say("Bars side by side: {w}.", w=words.lower()), tuple(shapes), "bars to one scale")
