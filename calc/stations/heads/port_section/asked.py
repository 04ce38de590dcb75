"""What is asked of a port and the manifold on it."""

from calc.core.working import Number
from calc.declare.calculator import Inputs, choice, given, measured, which_valve
from calc.stations.heads.cylinder import cylinder_bore, stroke
from calc.stations.heads.port_section.told import METRES
from calc.stations.shared.forms import COARSE, TURNS

ROUND, OVAL, D = "round", "oval", "d"
SHAPES = {
    ROUND: "round",
    OVAL: "oval: straight sides, half-round ends",
    D: "D: half-round roof on straight sides, flat floor",
}
SAME = "same"
INTAKE = "intake"


class In(Inputs):
    valve: str = which_valve(
        "Gas goes from the manifold into the head, or out of the head into the manifold."
    )
    shape: str = choice("Shape of the port", SHAPES, must=True, example=OVAL)
    width: Number = measured(
        "Port, width",
        "w",
        COARSE,
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
        COARSE,
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
        COARSE,
        tool="a calliper",
        hard="10 to 90 mm",
        usual="20 to 55 mm",
        feature="port.manifold_width_{valve}",
        stage="",
    )
    manifold_height: Number = measured(
        "Manifold, height",
        "h_m",
        COARSE,
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
        COARSE,
        tool="blue on the gasket, both prints laid over each other",
        hard="-15 to 15 mm",
        usual="-2 to 2 mm",
        hint="Middle to middle, seen from outside; minus to the left.",
        example="0.00 mm",
    )
    above: Number = measured(
        "Manifold sits higher by",
        "y_m",
        COARSE,
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
        fold=True,
    )
    manifold_shape: str = choice(
        "Shape of the manifold", {SAME: "as the port", **SHAPES}, fold=True, assumed=(SAME, "as the port")
    )
    corner: Number = measured(
        "Radius of a D's lower corners",
        "r",
        COARSE,
        tool="radius gauges",
        hard="0 to 45 mm",
        usual="2 to 15 mm",
        fold=True,
        assumed=("6.00 mm", "counts only for a D; common practice, no source"),
    )
    bore: Number = cylinder_bore()
    stroke: Number = stroke()
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
        COARSE,
        hard="0.05 to 5 mm",
        usual="0.1 to 1 mm",
        fold=True,
        assumed=("0.30 mm", "common practice, no source"),
    )
    most_drop: Number = given(
        "Step falling away, most",
        "o_max",
        COARSE,
        hard="0.05 to 10 mm",
        usual="0.2 to 2 mm",
        fold=True,
        assumed=("1.00 mm", "common practice, no source"),
    )
