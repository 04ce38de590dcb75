"""A port's mouth and the manifold on it: area, gas speed, and the step where the two meet."""

import math
from dataclasses import dataclass

from calc.core.advice import at_most
from calc.core.conformance import past
from calc.core.drawing import Area, Axis, Dimension, Drawing, Label, Line, Plot, Series, arc
from calc.core.kinds import AREA, LENGTH, RATIO, ROTATION, SPEED, VOLUME
from calc.core.result import Table, impossible, note, say, warning
from calc.core.working import PI, constant, form, greatest, least, sqrt
from calc.declare.calculator import (
    Answer,
    Inputs,
    Limit,
    Number,
    Output,
    Outputs,
    answer,
    calculator,
    choice,
    given,
    measured,
    which_valve,
)
from calc.reference import cautions, sources

SIZE, FACE, METRES, TURNS = form(LENGTH, 2), form(AREA, 0), form(SPEED, 1, "m/s", "ft/s"), form(ROTATION, 0)
ROUND, OVAL, D = "round", "oval", "d"
SHAPES = {
    ROUND: "round",
    OVAL: "oval: straight sides, half-round ends",
    D: "D: half-round roof on straight sides, flat floor",
}
SAME = "same"
INTAKE, EXHAUST = "intake", "exhaust"
NOTHING = 5e-6  # m: less than this is not seen at a joint


class Out(Outputs):
    area = Output("Area of the port", "A", FACE, main=True)
    speed = Output("Gas speed, mean over the stroke", "u", METRES, main=True)
    facing = Output("Largest step that faces the flow", "f", SIZE, main=True)
    drop = Output("Largest step that falls away from the flow", "o", SIZE)
    perimeter = Output("Way round the port's edge", "U", form(LENGTH, 1))
    hydraulic = Output("Hydraulic diameter", "d_h", SIZE)
    equal_round = Output("Round port of the same area", "d_e", SIZE)
    manifold_area = Output("Area of the manifold", "A_m", FACE)
    ratio = Output("Manifold's area ÷ port's", "φ", form(RATIO, 3))
    piston_speed = Output("Mean piston speed", "S_p", METRES)
    swept = Output("Swept by one cylinder", "V_h", form(VOLUME, 1))
    speed_limit = Output("Engine speed at which the gas comes to its limit", "n_u", TURNS)


def oval_area(width, height):
    """Slot with half-round ends, of that width and height over all, m²."""
    short, long = least(width, height), greatest(width, height)
    return PI / 4 * short**2 + short * (long - short)


def oval_perimeter(width, height):
    short, long = least(width, height), greatest(width, height)
    return PI * short + 2 * (long - short)


def d_area(width, height, radius):
    """Half circle over the whole width on a rectangle whose two lower corners are rounded, m². Height of half the width at least."""
    return PI / 8 * width**2 + width * (height - width / 2) - (2 - PI / 2) * radius**2


def d_perimeter(width, height, radius):
    return (1 + PI / 2) * width + 2 * (height - width / 2) - (4 - PI) * radius


@dataclass(frozen=True)
class Section:
    """One opening about the middle of its width and height, m. Floats: for drawing, and for the step all round the edge."""

    shape: str
    width: float
    height: float
    radius: float = 0.0
    x: float = 0.0
    y: float = 0.0

    def outline(self, fine=180) -> tuple:
        """Points all round, counter-clockwise: so many to each quarter turn, and half as many along each straight side."""
        w, h, r = self.width / 2, self.height / 2, self.radius
        if self.shape == D:
            turns = (
                ((w - r, r - h), r, -0.5, 0.0),
                ((0.0, h - w), w, 0.0, 0.5),
                ((0.0, h - w), w, 0.5, 1.0),
                ((r - w, r - h), r, 1.0, 1.5),
            )
        else:
            s = min(w, h)
            turns = tuple(
                ((cx, cy), s, i / 2, i / 2 + 0.5)
                for i, (cx, cy) in enumerate(((w - s, h - s), (s - w, h - s), (s - w, s - h), (w - s, s - h)))
            )
        arcs = [
            arc((self.x + cx, self.y + cy), radius, start * math.pi, end * math.pi, fine if radius else 1)
            for (cx, cy), radius, start, end in turns
        ]
        points = []
        for turn, after in zip(arcs, (*arcs[1:], arcs[0])):
            (ax, ay), (bx, by) = turn[-1], after[0]
            points += [
                *turn,
                *(
                    (ax + (bx - ax) * i / (fine // 2), ay + (by - ay) * i / (fine // 2))
                    for i in range(1, fine // 2)
                    if math.hypot(bx - ax, by - ay) > 1e-9
                ),
            ]
        return tuple(points)

    def depth(self, point) -> float:
        """How far a point lies within the edge, m; negative outside."""
        w, h, r = self.width / 2, self.height / 2, self.radius
        x, y = abs(point[0] - self.x), point[1] - self.y
        if self.shape != D:
            s = min(w, h)
            return s - math.hypot(max(x - (w - s), 0.0), max(abs(y) - (h - s), 0.0))
        if y >= h - w:
            return w - math.hypot(x, y - (h - w))
        if x > w - r and y < r - h:
            return r - math.hypot(x - (w - r), y - (r - h))
        return min(w - x, y + h)

    def stands_in(self, other: "Section") -> float:
        """How far the edge of this one stands within the opening of the other at the worst place, m, to the nanometre; 0 where it nowhere does."""
        return round(max(0.0, *(other.depth(p) for p in self.outline())), 9)


class In(Inputs):
    valve: str = which_valve(
        "Gas goes from the manifold into the head, or out of the head into the manifold."
    )
    shape: str = choice("Shape of the port", SHAPES, must=True, example=OVAL)
    width: Number = measured(
        "Port, width",
        "w",
        SIZE,
        tool="a calliper, at the joint's face",
        hard="10 to 90 mm",
        usual="20 to 55 mm",
        feature="port.width_{valve}",
        stage="",
        hint="Of a round one: its diameter.",
    )
    height: Number = measured(
        "Port, height",
        "h",
        SIZE,
        tool="a calliper",
        hard="10 to 90 mm",
        usual="20 to 55 mm",
        feature="port.height_{valve}",
        stage="",
        when=("shape", OVAL, D),
    )
    manifold_width: Number = measured(
        "Manifold, width",
        "w_m",
        SIZE,
        tool="a calliper",
        hard="10 to 90 mm",
        usual="20 to 55 mm",
        feature="port.manifold_width_{valve}",
        stage="",
    )
    manifold_height: Number = measured(
        "Manifold, height",
        "h_m",
        SIZE,
        tool="a calliper",
        hard="10 to 90 mm",
        usual="20 to 55 mm",
        feature="port.manifold_height_{valve}",
        stage="",
        hint="Of a round one: its diameter again.",
    )
    aside: Number = measured(
        "Manifold sits to the right by",
        "x_m",
        SIZE,
        tool="blue on the gasket, both prints laid over each other",
        hard="-15 to 15 mm",
        usual="-2 to 2 mm",
        hint="Middle to middle, seen from outside; minus to the left.",
        example="0.00 mm",
    )
    above: Number = measured(
        "Manifold sits higher by",
        "y_m",
        SIZE,
        tool="the same prints",
        hard="-15 to 15 mm",
        usual="-2 to 2 mm",
        hint="Minus where it sits lower.",
        example="0.00 mm",
    )
    engine_speed: Number = given(
        "Engine speed",
        "n",
        TURNS,
        hard="100 1/ to 12000 1/min",
        usual="1500 1/ to 7500 1/min",
        feature="crank.top_speed",
    )
    manifold_shape: str = choice(
        "Shape of the manifold", {SAME: "as the port", **SHAPES}, fold=True, assumed=(SAME, "as the port")
    )
    corner: Number = measured(
        "Radius of a D's lower corners",
        "r",
        SIZE,
        tool="radius gauges",
        hard="0 to 45 mm",
        usual="2 to 15 mm",
        fold=True,
        assumed=("6.00 mm", "counts only for a D; common practice, no source"),
    )
    bore: Number = measured(
        "Cylinder bore",
        "b",
        SIZE,
        tool="a bore gauge",
        hard="40 to 160 mm",
        usual="70 to 110 mm",
        feature="cylinder.bore",
        fold=True,
    )
    stroke: Number = measured(
        "Stroke",
        "s",
        SIZE,
        tool="a height gauge over the journals",
        hard="30 to 160 mm",
        usual="55 to 100 mm",
        feature="crank.stroke",
        fold=True,
    )
    least_speed: Number = given(
        "Gas speed, least",
        "u_min",
        METRES,
        hard="0 to 150 m/s",
        usual="30 to 70 m/s",
        fold=True,
        assumed=("45 m/s", "slower gas lets fuel fall out of the air; common practice, no source"),
    )
    most_speed: Number = given(
        "Gas speed, most",
        "u_max",
        METRES,
        hard="10 to 250 m/s",
        usual="60 to 120 m/s",
        fold=True,
        assumed=("90 m/s", "common practice, no source"),
    )
    most_step: Number = given(
        "Step facing the flow, most",
        "f_max",
        SIZE,
        hard="0.05 to 5 mm",
        usual="0.1 to 1 mm",
        fold=True,
        assumed=("0.30 mm", "common practice, no source"),
    )
    most_drop: Number = given(
        "Step falling away, most",
        "o_max",
        SIZE,
        hard="0.05 to 10 mm",
        usual="0.2 to 2 mm",
        fold=True,
        assumed=("1.00 mm", "common practice, no source"),
    )


@calculator(
    "port-section",
    "Port and manifold",
    In,
    Out,
    purpose="How large is the port, how fast does the gas go through it, and does the manifold leave a step?",
    finds=(
        "port area",
        "port matching",
        "gas speed",
        "port velocity",
        "hydraulic diameter",
        "oval port",
        "D port",
        "manifold step",
        "intake port",
        "exhaust port",
    ),
    sources=(sources.PORT_PLANE, sources.CONTINUITY, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.CUTTING, cautions.MAGNESIUM, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def port_section(i: In) -> Answer:
    """Flat sections of three shapes; continuity for the speed, with gas as thick as in the cylinder and the whole port filled.

    The mean is over one stroke of one cylinder: at mid stroke it goes about 1.6 times as fast. The step is taken all round the
    edge, as the distance from one edge to the other.
    """
    if i.most_speed <= i.least_speed:
        raise impossible(
            "most_speed",
            "is {a}, not more than the least, {b}; give more than {b}",
            a=i.most_speed,
            b=i.least_speed,
        )
    manifold = i.shape if i.manifold_shape == SAME else i.manifold_shape
    for kind, w, h, fields in (
        (i.shape, i.width, i.height, ("height", "corner")),
        (manifold, i.manifold_width, i.manifold_height, ("manifold_height", "corner")),
    ):
        if kind == D:
            if h < w / 2:
                raise impossible(
                    fields[0],
                    "is {h}, less than the half-round roof takes of a D {w} wide; give half of the width or"
                    " more, or choose the oval",
                    h=h,
                    w=w,
                )
            if i.corner > least(w / 2, h - w / 2):
                raise impossible(
                    "corner",
                    "is {r}, more than the straight sides of a D {w} wide and {h} high leave; give {most} or"
                    " less",
                    r=i.corner,
                    w=w,
                    h=h,
                    most=constant(
                        "", "", SIZE, math.floor(min(float(w) / 2, float(h) - float(w) / 2) * 1e5) / 1e5
                    ),
                )
    tall, tall_m = (
        w if kind == ROUND else h
        for kind, w, h in ((i.shape, i.width, i.height), (manifold, i.manifold_width, i.manifold_height))
    )
    for name, off, a, b in (("aside", i.aside, i.width, i.manifold_width), ("above", i.above, tall, tall_m)):
        half = min(float(a), float(b)) / 2
        if abs(float(off)) >= half:
            raise impossible(
                name,
                "is {off}, so that the two hardly meet; give less than half of the smaller, {half}",
                off=off,
                half=constant("", "", SIZE, half),
            )

    area, manifold_area = (
        out(
            PI / 4 * w**2 if kind == ROUND else oval_area(w, h) if kind == OVAL else d_area(w, h, i.corner),
            sources.PORT_PLANE,
        )
        for out, kind, w, h in (
            (Out.area, i.shape, i.width, i.height),
            (Out.manifold_area, manifold, i.manifold_width, i.manifold_height),
        )
    )
    perimeter = Out.perimeter(
        (
            PI * i.width
            if i.shape == ROUND
            else (
                oval_perimeter(i.width, i.height)
                if i.shape == OVAL
                else d_perimeter(i.width, i.height, i.corner)
            )
        ),
        sources.PORT_PLANE,
    )
    piston_speed = Out.piston_speed(2 * i.stroke * i.engine_speed)
    swept = Out.swept(PI / 4 * i.bore**2 * i.stroke)
    speed = Out.speed(2 * i.engine_speed * swept / area, sources.CONTINUITY)
    port_edge = Section(i.shape, float(i.width), float(tall), float(i.corner) if i.shape == D else 0.0)
    manifold_edge = Section(
        manifold,
        float(i.manifold_width),
        float(tall_m),
        float(i.corner) if manifold == D else 0.0,
        float(i.aside),
        float(i.above),
    )
    first, second = (manifold_edge, port_edge) if i.valve == INTAKE else (port_edge, manifold_edge)
    facing = Out.facing(
        constant(
            "f_0",
            "Farthest that the second edge stands in the first opening",
            SIZE,
            second.stands_in(first),
            sources.PORT_PLANE,
        )
    )
    drop = Out.drop(
        constant(
            "o_0",
            "Farthest that the first edge stands in the second opening",
            SIZE,
            first.stands_in(second),
            sources.PORT_PLANE,
        )
    )

    part, mate = ("the head", "the manifold") if i.valve == INTAKE else ("the manifold", "the head")
    off = max(abs(float(i.aside)), abs(float(i.above)))
    if past(facing, i.most_step):
        verdict = (
            "fail",
            say("Step of {f} faces the flow, {m} allowed", f=facing, m=i.most_step),
            say(
                (
                    "Move the manifold first: it sits {off} off the middle. Then open "
                    if off > NOTHING
                    else "Open "
                )
                + part
                + " at the joint until it nowhere stands inside "
                + mate
                + ", and let that run out over ten times its depth.",
                off=constant("", "", SIZE, off),
            ),
        )
    elif speed > i.most_speed:
        verdict = (
            "attention",
            say("Fast gas: {u}, {m} at most", u=speed, m=i.most_speed),
            say(
                "Good up to {n}. For more speed the port wants {a}: see first whether the wall and the valve"
                " can use it.",
                n=at_most(i.engine_speed * i.most_speed / speed, TURNS),
                a=constant("", "", FACE, float(area * speed / i.most_speed)),
            ),
        )
    elif speed < i.least_speed:
        verdict = (
            "attention",
            say("Slow gas: {u}, {m} at least", u=speed, m=i.least_speed),
            (
                "Leave the port as it is, or make it smaller by a sleeve or another manifold: a larger one"
                " loses pull at low speed."
            ),
        )
    elif past(drop, i.most_drop):
        verdict = (
            "attention",
            say("Widens by {o} at the joint, {m} allowed", o=drop, m=i.most_drop),
            say(
                "It does no harm at the edge, but the gas slows down and speeds up again. Open "
                + mate
                + " to within {m} of "
                + part
                + ", or leave it.",
                m=i.most_drop,
            ),
        )
    else:
        verdict = (
            "pass",
            (
                say("Gas at {u}, no step faces it", u=speed)
                if float(facing) < NOTHING
                else say("Gas at {u}, step of {f} faces it", u=speed, f=facing)
            ),
            (
                "Smooth it, do not enlarge it. Write width and height down for each port and make the others"
                " the same."
            ),
        )
    sides = _sides(port_edge, manifold_edge, i.valve)
    worst = min(s for _, s in sides)
    return answer(
        area,
        speed,
        facing,
        drop,
        perimeter,
        Out.hydraulic(4 * area / perimeter, sources.PORT_PLANE),
        Out.equal_round(sqrt(4 * area / PI), sources.PORT_PLANE),
        manifold_area,
        Out.ratio(manifold_area / area),
        piston_speed,
        swept,
        Out.speed_limit(i.most_speed * area / (2 * swept), sources.CONTINUITY),
        verdict=verdict,
        limits=(
            Limit("the step", facing, high=i.most_step),
            Limit("the gas speed", speed, low=i.least_speed, high=i.most_speed, level="attention"),
            Limit("the widening", drop, high=i.most_drop, level="attention"),
        ),
        remarks=(
            (
                warning(
                    "The worst step, {f}, lies between the four sides, where the shapes differ: look at the"
                    " drawing.",
                    f=facing,
                )
                if facing > i.most_step and float(facing) > -worst + 0.05e-3
                else None
            ),
            note(
                "At mid stroke the gas goes about 1.6 times as fast as its mean, and faster still where the"
                " valve is not yet open."
            ),
            note(
                "Gas that leaves a smaller opening into a larger one passes the edge; the other way round it"
                " strikes it. So a step may only fall away."
            ),
            note("The gasket counts as well: its hole must be no smaller than both."),
        ),
        tables=(
            Table(
                "The joint, side by side",
                ("Side", "Second opening wider by"),
                tuple((name, constant("", "", SIZE, s)) for name, s in sides),
                tuple(
                    "fail" if past(-s, i.most_step) else "attention" if past(s, i.most_drop) else "pass"
                    for _, s in sides
                ),
            ),
        ),
        figures=(
            _drawing(
                port_edge, manifold_edge, i.width, i.height if i.shape != ROUND else i.width, facing, drop
            ),
            _plot(float(area), float(swept), i.engine_speed, speed, i.least_speed, i.most_speed),
        ),
    )


def _sides(port, manifold, valve) -> tuple:
    """How much wider the second opening is than the first on each side, m; minus where it faces the flow."""
    way = -1 if valve == INTAKE else 1
    wider, taller = (manifold.width - port.width) / 2, (manifold.height - port.height) / 2
    return tuple(
        (name, way * s)
        for name, s in (
            ("top", taller + manifold.y),
            ("bottom", taller - manifold.y),
            ("left", wider - manifold.x),
            ("right", wider + manifold.x),
        )
    )


def _drawing(port, manifold, width, height, facing, drop) -> Drawing:
    edge = port.outline(16)
    wide, tall = port.width / 2, port.height / 2
    other = manifold.outline(16)
    return Drawing(
        "Port and manifold at their joint, seen from outside",
        say(
            "Port {w} wide and {h} high; the manifold's edge over it. The largest step facing the flow is"
            " {f}, the largest falling away {o}.",
            w=width,
            h=height,
            f=facing,
            o=drop,
        ),
        (
            Area(edge, ""),
            Line((*other, other[0]), "hidden"),
            Line(((-wide * 1.15, 0), (wide * 1.15, 0)), "centre"),
            Line(((0, -tall * 1.15), (0, tall * 1.15)), "centre"),
            Dimension(
                (-wide, -tall * 0.2),
                (wide, -tall * 0.2),
                width,
                tall * 1.2 + max(tall, manifold.height / 2 - manifold.y) * -2.4,
                "w",
            ),
            Dimension(
                (0, -tall), (0, tall), height, -max(wide, manifold.width / 2 + manifold.x) - wide * 0.3, "h"
            ),
            Label((0, tall * 0.45), "port"),
            Label((0, -tall * 0.55), "manifold: broken line"),
        ),
        "to scale",
    )


def _plot(area: float, swept: float, engine_speed, speed, low, high) -> Plot:
    """Gas speed over the engine's speed."""
    end = max(
        1.3 * float(engine_speed),
        (
            1.1 * float(high) * area / (2 * swept)
            if float(high) * area / (2 * swept) < 3 * float(engine_speed)
            else 0.0
        ),
    )

    def level(u):
        return ((0.0, float(u)), (end, float(u)))

    return Plot(
        "Gas speed over engine speed",
        say(
            "At {n} the gas goes {u}; {low} to {high} are wanted.",
            n=engine_speed,
            u=speed,
            low=low,
            high=high,
        ),
        Axis("Engine speed", TURNS),
        Axis("Gas speed", METRES),
        (
            Series("", ((0.0, 0.0), (end, 2 * end * swept / area))),
            Series("least", level(low), "limit"),
            Series("most", level(high), "limit"),
        ),
        ((float(engine_speed), float(speed), "now"),),
    )
