"""A valve with its spring, and the stems beside each other."""

from calc.core.drawing import Area, Axis, Circle, Dimension, Drawing, Line, Plot, Series, box, coils
from calc.core.kinds import COUNT
from calc.core.result import say
from calc.core.working import Number, constant, form
from calc.stations.heads.stem_height.asked import In
from calc.stations.heads.stem_height.stems import Stems, Valve
from calc.stations.shared.drawings import Points, on_both_sides
from calc.stations.shared.forms import COARSE

MM = 1e-3
# Of a valve and spring such as the example's: only heights are the reader's own.
STEM, GUIDE, WIRE, COIL, DEEP = 4 * MM, 6.5 * MM, 4 * MM, 27 * MM, -14 * MM
WIDE = (COIL + WIRE) / 2


def assembly(valve: Valve, tip_to_retainer: Number) -> Drawing:
    """In section: the spring's bed at height 0, the tip at the stem height."""
    tip, bearing = float(valve.height), float(valve.height - tip_to_retainer)
    left, right = -1.35 * WIDE, WIDE
    spring = constant("", "", COARSE, bearing)
    return Drawing(
        say("Valve {name}: stem height and spring", name=valve.name).plain(),
        say(
            "Section through spring and guide: the tip of {name} stands {h} above the spring's bed, the"
            " spring is {f} high, the tip {c} above it.",
            name=valve.name,
            h=valve.height,
            f=spring,
            c=tip_to_retainer,
        ),
        (
            *_parts(tip, bearing, max(float(valve.shim), 0.0)),
            Line(((0, DEEP - 3 * MM), (0, tip + 4 * MM)), "centre"),
            Dimension((left, 0), (left, tip), valve.height, 5 * MM, "H"),
            Line(((left, tip), (0, tip)), "thin"),
            Dimension((right, 0), (right, bearing), spring, -9 * MM, "f"),
            Dimension((right, bearing), (right, tip), tip_to_retainer, -16 * MM, "c"),
            Line(((0, tip), (right, tip)), "thin"),
        ),
        "heights to scale; widths are the example's",
    )


def _parts(tip: float, bearing: float, shim: float) -> tuple[Area | Circle, ...]:
    """Spring, stem, and on both sides of it head, guide, retainer and shim."""
    chamfer = 0.5 * MM
    stem = (
        (-STEM, DEEP),
        (STEM, DEEP),
        (STEM, tip - chamfer),
        (STEM - chamfer, tip),
        (chamfer - STEM, tip),
        (-STEM, tip - chamfer),
    )
    retainer: Points = (
        (STEM, bearing),
        (WIDE, bearing),
        (WIDE, bearing + 2.5 * MM),
        (STEM, bearing + 2.5 * MM),
    )
    sides = (
        (box(GUIDE, DEEP, 1.35 * WIDE, 0), "a"),
        (box(STEM, DEEP, GUIDE, min(9 * MM, 0.3 * bearing)), "b"),
        (retainer, "b"),
        *(((box(GUIDE, 0, WIDE, shim), "solid"),) if shim else ()),
    )
    return (*coils(0.0, shim, bearing - shim, WIRE, COIL, 4.5, 6.5), Area(stem, ""), *on_both_sides(*sides))


def beside_each_other(i: In, stems: Stems) -> Plot:
    """The stems with their limits."""
    valves = stems.valves

    def level(x: Number) -> Points:
        return ((1, float(x)), (len(valves), float(x)))

    return Plot(
        "Stems beside each other",
        say(
            "The stems stand from {a} to {b}; {low} to {high} are allowed.",
            a=stems.below.level,
            b=stems.above.level,
            low=i.low,
            high=i.high,
        ),
        Axis("Valve, as listed", form(COUNT, 0)),
        Axis("Height", COARSE),
        (
            Series("wanted", level(i.wanted), "dashed"),
            Series("least", level(i.low), "limit"),
            Series("most", level(i.high), "limit"),
            Series("", tuple((n, float(v.level)) for n, v in enumerate(valves, 1)), "points"),
        ),
    )
