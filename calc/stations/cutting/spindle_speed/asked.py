"""What is asked before a spindle is started."""

from calc.core.kinds import FEED, RATIO, SPEED
from calc.core.working import form
from calc.declare.calculator import Inputs, Number, Rows, choice, column, given, grid, measured
from calc.stations.cutting.usual_speeds import CARBIDE, CUTS, TOOLS
from calc.stations.shared.forms import ROUGH, TURNS

CUTTING_SPEED = form(SPEED, 1, "m/min", "ft/min")
PER_TURN, TEETH = form(FEED, 3), form(RATIO, 0)
STEPS, STEPLESS = "steps", "stepless"
TURNED, MILLED, FACED = "turned", "milled", "faced"


class In(Inputs):
    way: str = choice(
        "It is",
        {
            TURNED: "bored, turned or drilled: one way along the axis",
            MILLED: "milled or fly-cut: the cutter leaves the face at the end",
            FACED: "faced: from the outside in, at one speed of the spindle",
        },
        default=TURNED,
    )
    cut: str = choice("What is cut", {id: cut.name for id, cut in CUTS.items()}, must=True, example="iron")
    tool: str = choice("With", TOOLS, must=True, example=CARBIDE)
    diameter: Number = measured(
        "Diameter that is cut, or of the cutter",
        "d",
        ROUGH,
        tool="a calliper",
        hard="1 to 1500 mm",
        usual="3 to 400 mm",
        example="88.0 mm",
        hint="Where it is largest: the outside of a face, the tips of a fly cutter.",
    )
    speed: Number | None = given(
        "Cutting speed wanted",
        "v_w",
        CUTTING_SPEED,
        hard="1 to 1500 m/min",
        usual="5 to 500 m/min",
        hint="The tool maker's. Left empty, the middle of what is usual counts.",
    )
    drive: str = choice(
        "The spindle is set", {STEPS: "in steps: belts, gears", STEPLESS: "without steps"}, default=STEPS
    )
    steps: Rows = grid(
        "Speeds that the machine has",
        rows=tuple(map(str, range(1, 17))),
        columns=(column("Spindle", "n", TURNS, hard="1 1/ to 60000 1/min"),),
        least=2,
        hint="As they stand on its plate.",
        example="45 | 63 | 90 | 125 | 180 | 250 | 355 | 500 | 710 | 1000",
        when=("drive", STEPS),
    )
    feed: Number = given(
        "Feed, each turn and tip",
        "f",
        PER_TURN,
        hard="0.001 to 5 mm/rev",
        usual="0.02 to 0.5 mm/rev",
        example="0.08 mm/rev",
    )
    tips: Number = given(
        "Tips that cut",
        "z",
        TEETH,
        hard="1 to 40",
        when=("way", MILLED),
        example="1",
        hint="Those that touch the work, not the seats for them.",
    )
    length: Number = measured(
        "Way along the work",
        "L",
        ROUGH,
        tool="a rule",
        hard="0.1 to 5000 mm",
        usual="2 to 500 mm",
        example="112.0 mm",
        hint="With what the tool runs in and out. Of a face that is milled, its own length.",
    )
    inside: Number = measured(
        "Faced down to a diameter of",
        "d_i",
        ROUGH,
        tool="a calliper",
        hard="0 to 1500 mm",
        when=("way", FACED),
        example="60.0 mm",
    )
