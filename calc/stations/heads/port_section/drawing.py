"""Both edges at their joint, and the gas speed over the engine's."""

from calc.core.drawing import Area, Axis, Dimension, Drawing, Label, Line, Plot, Series
from calc.core.result import say
from calc.core.working import Number
from calc.stations.heads.port_section.asked import In
from calc.stations.heads.port_section.flow import Flow
from calc.stations.heads.port_section.joint import Joint
from calc.stations.heads.port_section.openings import Opening
from calc.stations.heads.port_section.told import METRES
from calc.stations.shared.drawings import Points
from calc.stations.shared.forms import TURNS


def port_and_manifold(opening: Opening, joint: Joint) -> Drawing:
    """`opening` is the port's."""
    port, manifold = joint.port, joint.manifold
    wide, tall = port.width / 2, port.height / 2
    other = manifold.outline(16)
    beside = -max(wide, manifold.width / 2 + manifold.x) - wide * 0.3
    below = tall * 1.2 + max(tall, manifold.height / 2 - manifold.y) * -2.4
    return Drawing(
        "Port and manifold at their joint, seen from outside",
        say(
            "Port {w} wide and {h} high; the manifold's edge over it. The largest step facing the flow is"
            " {f}, the largest falling away {o}.",
            w=opening.width,
            h=opening.height,
            f=joint.facing,
            o=joint.drop,
        ),
        (
            Area(port.outline(16), ""),
            Line((*other, other[0]), "hidden"),
            Line(((-wide * 1.15, 0), (wide * 1.15, 0)), "centre"),
            Line(((0, -tall * 1.15), (0, tall * 1.15)), "centre"),
            Dimension((-wide, -tall * 0.2), (wide, -tall * 0.2), opening.width, below, "w"),
            Dimension((0, -tall), (0, tall), opening.height, beside, "h"),
            Label((0, tall * 0.45), "port"),
            Label((0, -tall * 0.55), "manifold: broken line"),
        ),
        "to scale",
    )


def speed_plot(i: In, flow: Flow) -> Plot:
    """Gas speed over the engine's speed, up to where it comes to its limit, if that is near."""
    area, swept, engine_speed = float(flow.area), float(flow.swept), float(i.engine_speed)
    at_limit = float(i.most_speed) * area / (2 * swept)
    end = max(1.3 * engine_speed, 1.1 * at_limit if at_limit < 3 * engine_speed else 0.0)

    def level(u: Number) -> Points:
        return ((0.0, float(u)), (end, float(u)))

    return Plot(
        "Gas speed over engine speed",
        say(
            "At {n} the gas goes {u}; {low} to {high} are wanted.",
            n=i.engine_speed,
            u=flow.speed,
            low=i.least_speed,
            high=i.most_speed,
        ),
        Axis("Engine speed", TURNS),
        Axis("Gas speed", METRES),
        (
            Series("", ((0.0, 0.0), (end, 2 * end * swept / area))),
            Series("least", level(i.least_speed), "limit"),
            Series("most", level(i.most_speed), "limit"),
        ),
        ((engine_speed, float(flow.speed), "now"),),
    )
