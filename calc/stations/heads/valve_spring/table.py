"""Each spring by itself, as fitted."""

from calc.core.conformance import past
from calc.core.result import Table
from calc.core.working import constant, greatest
from calc.formulas import spring
from calc.stations.heads.valve_spring.asked import In
from calc.stations.heads.valve_spring.loads import Loads, Spring
from calc.stations.heads.valve_spring.told import RATE
from calc.stations.shared.forms import COARSE, NEWTON


def spring_by_spring(i: In, loads: Loads) -> Table:
    def state(s: Spring) -> str:
        if past(i.least_seat, s.load) or past(i.least_seat, s.seat) or past(i.least_open, s.open):
            return "fail"
        uneven = past(s.seat, i.most_seat) or past(loads.stiff.seat - s.seat, i.most_spread)
        return "attention" if uneven else "pass"

    def row(s: Spring) -> tuple:
        shown = (
            (NEWTON, s.seat),
            (NEWTON, s.open),
            (COARSE, greatest((i.wanted_seat - s.seat) / s.rate, 0.0)),
            (RATE, s.rate),
            (COARSE, spring.free_length(s.load, i.height_1, s.rate)),
        )
        return s.name, *(constant("", "", shape, float(x)) for shape, x in shown)

    return Table(
        "Spring by spring, as fitted",
        (
            "Spring",
            "Seat load",
            "At full lift",
            "Shim for the load wanted",
            "Rate",
            "Free length, by its line",
        ),
        tuple(map(row, loads.springs)),
        tuple(map(state, loads.springs)),
    )
