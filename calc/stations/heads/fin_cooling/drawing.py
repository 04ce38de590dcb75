"""Three fins of each casting side by side, and the heat that each sheds over the air's coefficient."""

from calc.core.drawing import Area, Axis, Dimension, Drawing, Label, Plot, Points, Series
from calc.core.kinds import CONDUCTANCE, HEAT_TRANSFER
from calc.core.result import say
from calc.core.working import Number, form
from calc.formulas.fins import shed, warmed
from calc.stations.heads.fin_cooling.asked import CASTINGS
from calc.stations.heads.fin_cooling.casting import Casting, Fins


def _comb(fins: Fins, left: float) -> tuple[Points, list[float], float]:
    """Three fins on their wall, from `left` on: the areas, and where they end."""
    t, length, g = map(float, fins[1:])
    wall = max(0.35 * length, 2 * t)
    places = [left + g / 2 + i * (t + g) for i in range(3)]
    right = left + 3 * (t + g)
    outline = [(left, -wall), (left, 0.0)]
    for x in places:
        outline += [(x, 0.0), (x, length), (x + t, length), (x + t, 0.0)]
    return (*outline, (right, 0.0), (right, -wall)), places, right


def three_fins_of_each(this: Fins, other: Fins) -> Drawing:
    first, a, end = _comb(this, 0.0)
    apart = max(0.35 * end, 0.6 * float(this.length), 0.6 * float(other.length))
    second, b, _ = _comb(other, end + apart)
    shapes: list[Area | Dimension | Label] = []
    for fins, outline, places, hatch, name in (
        (this, first, a, "a", CASTINGS[0]),
        (other, second, b, "b", CASTINGS[1]),
    ):
        t, length = float(fins.thickness), float(fins.length)
        shapes += [
            Area(outline, hatch),
            Dimension((places[2] + t, 0.0), (places[2] + t, length), fins.length, -0.25 * apart, "L"),
            Label(((outline[0][0] + outline[-1][0]) / 2, outline[0][1] - 0.3 * apart), name),
        ]
    return Drawing(
        "Three fins of each",
        say(
            "Section through three fins: this one {t} thick, {l} long, {g} apart; the other {a} thick, {b}"
            " long, {c} apart.",
            t=this.thickness,
            l=this.length,
            g=this.gap,
            a=other.thickness,
            b=other.length,
            c=other.gap,
        ),
        tuple(shapes),
        "to scale, side by side",
    )


def heat_plot(this: Casting, other: Casting, width: Number, even: Number) -> Plot:
    """Heat per kelvin over the air's coefficient, for both."""
    end = 1.3 * max(float(this.coefficient), float(other.coefficient))

    def line(casting: Casting) -> Points:
        points = []
        for n in range(1, 41):
            h = end * n / 40
            to_cold_air = shed(*casting.fins.plain, float(width), h, float(casting.conductivity))
            points.append((h, float(warmed(to_cold_air, float(casting.air_takes)))))
        return tuple(points)

    return Plot(
        "Heat per kelvin over the air's coefficient",
        say(
            "This one sheds {a} per kelvin, the other {b}; they shed alike when the other's coefficient is"
            " {h}.",
            a=this.per_kelvin,
            b=other.per_kelvin,
            h=even,
        ),
        Axis("Air's coefficient", form(HEAT_TRANSFER, 0)),
        Axis("Heat per kelvin", form(CONDUCTANCE, 1)),
        (Series("this one", line(this)), Series("the other", line(other), "dashed")),
        tuple((float(one.coefficient), float(one.per_kelvin), "") for one in (this, other)),
    )
