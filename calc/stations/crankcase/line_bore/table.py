"""Saddle by saddle: how far off the best line, and at what it cleans up about the bar."""

from calc.core.conformance import past
from calc.core.result import Table
from calc.core.working import constant
from calc.stations.crankcase.line_bore.asked import In
from calc.stations.crankcase.line_bore.saddles import Saddles
from calc.stations.crankcase.line_bore.size import Size
from calc.stations.shared.forms import SIZE


def saddle_by_saddle(i: In, saddles: Saddles, size: Size) -> Table:
    rows, states = [], []
    for s, clean, stray in zip(saddles.each, saddles.clean_each, saddles.strays):
        to_cam, to_right = (constant("", "", SIZE, off) for off in saddles.bar.off(s))
        stock = constant("", "", SIZE, float(size.aim - clean) / 2)
        rows.append((s.name, stray, to_cam, to_right, clean, stock))
        states.append(
            "fail"
            if past(stray, i.line_worn)
            else "attention"
            if past(stray, i.line_new) or past(clean, size.high)
            else "pass"
        )
    return Table(
        "Saddle by saddle",
        (
            "Saddle",
            "Off the best line",
            "Off the bar, to the cam",
            "To the right",
            "Cleans up at",
            "Least stock a side",
        ),
        tuple(rows),
        tuple(states),
    )
