"""The spring between its plates, and its load over its height."""

from calc.core.drawing import Area, Axis, Dimension, Drawing, Label, Line, Plot, Series, Shape, box, coils
from calc.core.result import say
from calc.core.working import Number, constant
from calc.formulas import spring
from calc.stations.heads.valve_spring.asked import SIZES, In
from calc.stations.heads.valve_spring.loads import Loads, Spring
from calc.stations.shared.forms import COARSE, NEWTON


def between_plates(i: In, loads: Loads) -> Drawing:
    """The weakest spring in section between its plates, shut and at full lift."""
    wire, mean = float(i.wire), float(i.mean_diameter)
    plate, wide, apart = 0.8 * wire, mean / 2 + 1.2 * wire, mean + 6 * wire
    shut, full = float(loads.fitted), float(loads.opened)
    full_load = constant("", "", NEWTON, float(loads.weak.open))
    edge = apart + wide
    return Drawing(
        "Weakest spring, shut and at full lift",
        say(
            "Section of the spring between its plates: {h} high with {F} shut, {o} high with {G} at full"
            " lift.",
            h=loads.fitted,
            F=loads.seat,
            o=loads.opened,
            G=full_load,
        ),
        (
            *_pressed(i, 0.0, shut, loads.seat, "shut"),
            *_pressed(i, apart, full, full_load, "full lift"),
            Dimension((-wide, 0), (-wide, shut), loads.fitted, 1.2 * wire, "h_s"),
            Dimension((edge, 0), (edge, full), loads.opened, -1.2 * wire, "h_o"),
            Line(((wide, shut), (apart, shut)), "thin"),
            Dimension((apart - wide, full), (apart - wide, shut), i.lift, 0.8 * wire, "s"),
            Dimension((-mean / 2, 0), (mean / 2, 0), i.mean_diameter, -4 * plate, "D"),
        ),
    )


def _pressed(i: In, x: float, height: float, load: Number, when: str) -> tuple[Shape, ...]:
    """The spring on the axis `x`, pressed to a height between its plates."""
    wire, mean = float(i.wire), float(i.mean_diameter)
    plate, wide = 0.8 * wire, mean / 2 + 1.2 * wire
    return (
        *coils(x, 0.0, height, wire, mean, float(i.active_turns), float(i.total_turns)),
        *(Area(box(x - wide, y, x + wide, y + plate), "a") for y in (-plate, height)),
        Line(((x, -3 * plate), (x, height + 3 * plate)), "centre"),
        Label((x, height + 3.6 * plate), say("{F} " + when, F=load)),
    )


def load_over_height(i: In, loads: Loads) -> Plot:
    """Down to coil bind, with both working points."""
    weak, strong, solid = loads.weak, loads.strong, float(loads.solid)

    def at(height: float, s: Spring) -> tuple[float, float]:
        return height, float(spring.load_at(height, float(s.load), float(i.height_1), float(s.rate)))

    def line(s: Spring) -> tuple[tuple[float, float], ...]:
        return tuple(at(h, s) for h in (solid, float(i.height_1) + float(s.load / s.rate)))

    readings = tuple(at(float(h), s) for s in loads.springs for h in (i.height_1, i.height_2))
    return Plot(
        "Load over height",
        say(
            "The weakest spring has {F} shut and {G} at full lift; its coils touch at {L}.",
            F=constant("", "", NEWTON, float(weak.seat)),
            G=constant("", "", NEWTON, float(weak.open)),
            L=constant("", "", COARSE, solid),
        ),
        Axis("Height of the spring", COARSE),
        Axis("Load", NEWTON),
        (
            Series("", line(weak)),
            Series("", ((solid, 0.0), (solid, line(strong)[0][1])), "limit"),
            *((Series("", line(strong), "dashed"),) if strong.name != weak.name else ()),
            *((Series("", readings, "points"),) if i.method != SIZES else ()),
        ),
        (
            (float(loads.fitted), float(weak.seat), "shut"),
            (float(loads.opened), float(weak.open), "full lift"),
            (*line(weak)[0], "coil bind"),
        ),
    )
