"""The saddles as they were read, cut and closed up again: where the bar lies among them, and what cleans
them up."""

import math
from typing import NamedTuple

from calc.core.conformance import past
from calc.core.result import Source
from calc.core.working import Number, constant, greatest, least
from calc.formulas import best_fit, split_bore
from calc.formulas.least_bar import Bore, least_bar
from calc.reference import sources
from calc.stations.crankcase.line_bore.asked import BEST, ENDS, LEAST, READ, SADDLES, In
from calc.stations.crankcase.line_bore.told import Out
from calc.stations.shared.forms import SIZE

# Directions tried round each half of a bore: the farthest place is found to within a hundredth of a
# micrometre.
STEPS = 120


class Saddle(NamedTuple):
    """One saddle. `halves` are the places of its bore from its own centre, in metres: x to the cam, y to
    the right."""

    name: str
    place: Number
    along: Number
    across: Number
    x: Number
    y: Number
    halves: tuple[split_bore.Half, split_bore.Half]


class Bar(NamedTuple):
    """Where a bar lies: heights over the place along the crank, towards the cam and to the right, and how far
    the saddles' centres stray from it."""

    x: best_fit.Line
    y: best_fit.Line

    def off(self, saddle: Saddle) -> tuple[float, float]:
        """From the bar to the saddle's centre, m."""
        z = float(saddle.place)
        return float(saddle.x) - self.x.at(z), float(saddle.y) - self.y.at(z)

    def clean(self, saddle: Saddle) -> float:
        """Diameter at which the saddle cleans up about this bar: twice its farthest place."""
        dx, dy = self.off(saddle)
        return 2 * max(math.hypot(x + dx, y + dy) for half in saddle.halves for x, y in half)


class Saddles(NamedTuple):
    """`clean_each` are about the bar chosen, in the order of the saddles."""

    each: list[Saddle]
    bar: Bar
    clean_each: list[Number]
    clean: Number
    first_clean: Number
    farthest: Number
    strays: list[Number]
    ends_off: Number
    gained: Number
    smallest: Number
    largest: Number
    narrow: Number
    by_ends: Number  # what cleans up about a bar through the end saddles
    wasted: float  # m that another place of the bar would save
    told: tuple[Number, ...]  # outputs that only stand in the list
    cut: bool


def saddles_of(i: In) -> Saddles:
    each = [_saddle(n, bore, line, i) for n, bore, line in zip(SADDLES, i.bores, i.line) if bore and line]
    best, ends = _best(each), _ends(each)
    least_cut = _least_cut(each, best)
    bar = {LEAST: least_cut, BEST: best, ENDS: ends, READ: _as_read()}[i.bar]
    cleans = [
        _told("D_c", f"Cleans up at, saddle {s.name}", bar.clean(s), s.name, sources.FARTHEST) for s in each
    ]
    strays = [
        _told("e", f"Off the best line, saddle {s.name}", math.hypot(*best.off(s)), s.name) for s in each
    ]
    at_ends = constant(
        "e_0", "Farthest saddle off the line of the ends", SIZE, max(math.hypot(*ends.off(s)) for s in each)
    )
    by_ends, by_least = (
        constant(
            f"D_{mark}",
            f"Cleans up about the bar {words}",
            SIZE,
            max(b.clean(s) for s in each),
            sources.FARTHEST,
        )
        for mark, words, b in (("E", "through the ends", ends), ("L", "where least is cut", least_cut))
    )
    cut = i.cut_right + i.cut_left
    readings = [float(d) for s in each for d in (s.along, s.across)]
    return Saddles(
        each,
        bar,
        cleans,
        Out.clean(greatest(*cleans)),
        least(*cleans),
        Out.farthest(greatest(*strays)),
        strays,
        Out.ends_off(at_ends),
        Out.gained(by_ends - by_least),
        constant("D_1", "Smallest reading of a saddle", SIZE, min(readings)),
        constant("D_2", "Largest reading of a saddle", SIZE, max(readings)),
        Out.narrow(least(*(s.across for s in each)) - cut, sources.SPLIT_BORE),
        by_ends,
        float(greatest(*cleans) - by_least),
        _lines(each, best, bar),
        float(cut) > 0,
    )


def _saddle(name: str, bore: tuple[Number, ...], line: tuple[Number, ...], i: In) -> Saddle:
    along, across = bore
    a, b = float(along), float(across)
    oval = ((a + b) / 2, (b - a) / 2, 0.0)
    halves = split_bore.surface(oval, float(i.cut_right), float(i.cut_left), STEPS)
    return Saddle(name, line[0], along, across, line[1], line[2], halves)


def _best(each: list[Saddle]) -> Bar:
    return Bar(
        best_fit.best_line([(float(s.place), float(s.x)) for s in each]),
        best_fit.best_line([(float(s.place), float(s.y)) for s in each]),
    )


def _least_cut(each: list[Saddle], best: Bar) -> Bar:
    """The best line itself where no other bar cuts less."""
    bores = [
        Bore(float(s.place), float(s.x), float(s.y), tuple(p for half in s.halves for p in half))
        for s in each
    ]
    found = Bar(*least_bar(bores))

    def cut(bar: Bar) -> float:
        return max(bar.clean(s) for s in each)

    return found if past(cut(best), cut(found)) else best


def _ends(each: list[Saddle]) -> Bar:
    first, last = each[0], each[-1]

    def through(a: Number, b: Number) -> best_fit.Line:
        slope = float(b - a) / float(last.place - first.place)
        return best_fit.Line(float(a) - slope * float(first.place), slope, 0.0)

    return Bar(through(first.x, last.x), through(first.y, last.y))


def _as_read() -> Bar:
    return Bar(best_fit.Line(0.0, 0.0, 0.0), best_fit.Line(0.0, 0.0, 0.0))


def _told(
    symbol: str, label: str, value: float, name: str, source: Source = sources.LEAST_DEVIATION
) -> Number:
    mark = "," if "_" in symbol else "_"
    return constant(f"{symbol}{mark}{name}", label, SIZE, value, source)


def _lines(each: list[Saddle], best: Bar, bar: Bar) -> tuple[Number, ...]:
    """Deviations in each plane, and where the bar chosen lies at both ends."""
    first, last = float(each[0].place), float(each[-1].place)
    found = [
        Out.off_along(
            constant("m_x", "Largest deviation along the split", SIZE, best.x.most), sources.LEAST_DEVIATION
        ),
        Out.off_across(
            constant("m_y", "Largest deviation across the split", SIZE, best.y.most), sources.LEAST_DEVIATION
        ),
    ]
    for output, line, place, mark in (
        (Out.first_along, bar.x, first, "b_1"),
        (Out.first_across, bar.y, first, "b_2"),
        (Out.last_along, bar.x, last, "b_3"),
        (Out.last_across, bar.y, last, "b_4"),
    ):
        found.append(output(constant(mark, f"{output.label}, by trial", SIZE, line.at(place))))
    return tuple(found)
