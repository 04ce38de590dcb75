"""The gap that a chain of sizes leaves."""

from typing import NamedTuple

from calc.core.result import Table, impossible
from calc.core.working import Number, constant, step
from calc.formulas import stack
from calc.reference import sources
from calc.stations.measuring.stack_up.asked import In
from calc.stations.measuring.stack_up.told import Out
from calc.stations.shared.forms import SHARE, SIZE


class Link(NamedTuple):
    """A size of the chain by its row, from 1: its middle and half its tolerance.

    `way` is 1 where it opens the gap, −1 where it closes it.
    """

    row: int
    middle: Number
    half: Number
    way: Number


class Gap(NamedTuple):
    """With every size at its middle, at worst, as root sum of squares and standard deviation have it.

    `halves` are half the tolerances of its sizes (m).
    """

    middle: Number
    worst: Number
    least: Number
    greatest: Number
    root: Number
    deviation: Number
    halves: list[float]


def links_of(i: In) -> list[Link]:
    return [_link(n, *row) for n, row in enumerate(i.chain, 1) if row is not None]


def _link(row: int, size: Number, plus: Number, minus: Number, way: Number) -> Link:
    if abs(float(way)) != 1:
        raise impossible(
            "chain",
            "row {row} has the way {way}; give 1 where the size opens the gap, −1 where it closes it",
            row=row,
            way=way,
        )
    if plus + minus < 0:
        raise impossible(
            "chain",
            "row {row} has plus {plus} and minus {minus}, its upper limit under its lower one; give plus"
            " and minus that leave a tolerance",
            row=row,
            plus=plus,
            minus=minus,
        )
    middle = step(f"M_{row}", f"Middle of size {row}", SIZE, size + (plus - minus) / 2)
    half = step(f"t_{row}", f"Half its tolerance, {row}", SIZE, (plus + minus) / 2)
    return Link(row, middle, half, way)


def gap_of(links: list[Link], shape: str) -> Gap:
    halves = [link.half for link in links]
    middle = Out.gap(sum(link.way * link.middle for link in links), sources.STACK)
    worst = step("t_w", "Worst case, ±", SIZE, stack.worst(halves), sources.STACK)
    least, greatest = Out.least_gap(middle - worst), Out.greatest_gap(middle + worst)
    root = Out.root(stack.root_sum_square(halves), sources.STACK)
    deviation = Out.deviation(stack.standard_deviation(root, shape), sources.STACK)
    return Gap(middle, worst, least, greatest, root, deviation, list(map(float, halves)))


def link_by_link(links: list[Link], gap: Gap) -> Table:
    worst, root = float(gap.worst), float(gap.root)

    def row(link: Link) -> tuple:
        half = float(link.half)
        return (
            f"{link.row} {'+' if link.way > 0 else '−'}",
            link.middle,
            link.half,
            constant("", "", SHARE, half / worst if worst else 0.0),
            constant("", "", SHARE, (half / root) ** 2 if root else 0.0),
        )

    return Table(
        "What each size adds", ("Size", "Middle", "±", "Of worst case", "Of variance"), tuple(map(row, links))
    )
