"""What is asked of a cylinder: bore and stroke, the chamber over it, the piston at the top of its stroke."""

from calc.core.kinds import RATIO
from calc.core.working import Number, form
from calc.declare.calculator import Inputs, choice, given, limit, measured
from calc.stations.cylinders.compression.told import CC
from calc.stations.shared.forms import COARSE, ROUGH, SIZE, TIMES

JUDGED, WANTED = "judged", "wanted"
KNOWN, FILLED = "known", "filled"


class In(Inputs):
    aim: str = choice(
        "Asked is",
        {JUDGED: "the ratio as it is", WANTED: "what gives a ratio that is wanted"},
        default=JUDGED,
    )
    wanted: Number = given(
        "Ratio wanted",
        "ε_w",
        TIMES,
        hard="2 to 20",
        usual="5 to 12",
        feature="cylinder.compression_ratio",
        when=("aim", WANTED),
    )
    bore: Number = measured(
        "Bore as it is now",
        "D",
        SIZE,
        tool="a bore gauge set in a ring",
        hard="20 to 200 mm",
        usual="60 to 130 mm",
        feature="cylinder.bore",
        hint="Of this cylinder, rebored or not: it sets what the piston sweeps.",
    )
    stroke: Number = given(
        "Stroke",
        "S",
        COARSE,
        hard="20 to 200 mm",
        usual="50 to 120 mm",
        feature="crank.stroke",
        fold=True,
        hint="A crank whose pins were ground off their centres has another one.",
    )
    chamber: Number = measured(
        "Chamber",
        "V_b",
        CC,
        tool="a burette, under a clear plate",
        hard="5 to 400 cm³",
        usual="25 to 120 cm³",
        feature="chamber.volume",
        stage="",
        hint="Plug and valves fitted.",
    )
    deck: Number = measured(
        "Deck height, crown's edge below the cylinder's face",
        "t",
        COARSE,
        tool="a depth gauge on the pin's axis, both ends, the mean",
        hard="-3 to 15 mm",
        usual="0.5 to 3 mm",
        feature="crankcase.deck_height",
        stage="",
        hint="Cylinder held down on its shims. Minus where the piston stands proud.",
    )
    crown_by: str = choice(
        "Crown is", {KNOWN: "known by its volume", FILLED: "found by filling over the piston"}, default=KNOWN
    )
    dome: Number = measured(
        "Crown above the plane of its edge",
        "V_k0",
        CC,
        tool="the piston's maker, or filling",
        hard="-100 to 100 cm³",
        usual="-30 to 30 cm³",
        feature="piston.dome",
        stage="",
        stands_in=True,
        when=("crown_by", KNOWN),
        hint="A dome counts plus, a bowl and valve reliefs minus; a flat crown is 0.",
    )
    lowered: Number = measured(
        "Crown's edge below the face, when filled",
        "h",
        COARSE,
        tool="a depth gauge on the pin's axis",
        hard="0.2 to 100 mm",
        usual="5 to 30 mm",
        when=("crown_by", FILLED),
        hint="Far enough that no dome touches the plate.",
        example="12.70 mm",
    )
    filled: Number = measured(
        "Filled over the piston then",
        "V_f",
        CC,
        tool="a burette, under a flat plate, grease round the top land",
        hard="1 to 600 cm³",
        usual="10 to 200 cm³",
        when=("crown_by", FILLED),
        example="79.3 cm³",
    )
    step_depth: Number | None = given(
        "Step over the cylinder's face that the plate did not cover",
        "h_s",
        COARSE,
        hard="-10 to 20 mm",
        usual="-1 to 6 mm",
        fold=True,
        hint="Empty where the plate lay where the face comes to rest. A sealing ring counts too, as thick as"
        " it is when tight. Minus where the cylinder goes in past the plate's plane.",
    )
    step_across: Number = measured(
        "That step, across",
        "D_s",
        ROUGH,
        tool="a calliper",
        hard="20 to 250 mm",
        usual="60 to 140 mm",
        feature="chamber.mouth",
        fold=True,
        when=("step_depth",),
        hint="It is wider than the bore.",
    )
    land_height: Number = measured(
        "Top land, height",
        "h_l",
        ROUGH,
        tool="a calliper",
        hard="0 to 40 mm",
        usual="3 to 15 mm",
        feature="piston.top_land_height",
        fold=True,
        assumed=("6.0 mm", "a usual piston; counts only for the ratio with the top land"),
    )
    land_clearance: Number = given(
        "Bore less top land",
        "c_l",
        COARSE,
        hard="0 to 5 mm",
        usual="0.3 to 1.2 mm",
        feature="piston.top_land_clearance",
        fold=True,
        assumed=("0.70 mm", "a usual piston; counts only for the ratio with the top land"),
        hint="On the diameter.",
    )
    cylinders: Number = given(
        "Cylinders of the engine",
        "n",
        form(RATIO, 0),
        hard="1 to 12",
        fold=True,
        assumed=("4", "a horizontally opposed four"),
    )
    low: Number = limit(
        "Ratio, least",
        "ε_min",
        TIMES,
        feature="cylinder.compression_ratio",
        which="low",
        hard="2 to 20",
        usual="5 to 12",
    )
    high: Number = limit(
        "Ratio, most",
        "ε_max",
        TIMES,
        feature="cylinder.compression_ratio",
        which="high",
        hard="2 to 20",
        usual="5 to 12",
    )
    least_deck: Number = limit(
        "Deck height, least",
        "t_min",
        SIZE,
        feature="crankcase.deck_height",
        which="low",
        hard="-3 to 15 mm",
        usual="0.5 to 3 mm",
    )
    most_deck: Number = limit(
        "Deck height, most",
        "t_max",
        SIZE,
        feature="crankcase.deck_height",
        which="high",
        hard="-3 to 15 mm",
        usual="0.5 to 3 mm",
    )
