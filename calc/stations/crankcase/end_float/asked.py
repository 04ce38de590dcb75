"""What is asked: the float with trial shims in, those shims, what is in the drawer, and the limits."""

from calc.declare.calculator import Inputs, Number, Rows, choice, column, given, grid, limit, measured
from calc.reference.materials import MATERIALS
from calc.stations.shared.forms import COARSE, DEGREES_C, SIZE

DRAWER, SOLD = "drawer", "sold"
STOCK = {DRAWER: "those in the drawer, each measured", SOLD: "the sizes in which they are sold"}
TRIALS = ("1", "2", "3")
SHIMS = tuple("abcdefghijkl")
STEEL, MAGNESIUM = "forged-steel", "mg-az91"
BODIES = {id: MATERIALS[id].name for id in (MAGNESIUM, "al-si-t6", STEEL)}
HARD, USUAL = "0.02 to 3 mm", "0.1 to 1 mm"


class In(Inputs):
    float_read: Number = measured(
        "Float with the trial shims in",
        "f",
        SIZE,
        tool="a dial gauge on the flywheel, its nut at full torque",
        hard=("0.005 to 5 mm", "with none the crank is pinched, and nobody knows by how much"),
        usual="0.03 to 2 mm",
        example="0.460 mm",
        hint="Push the crank to one end, zero the dial, lever it to the other end, read.",
    )
    trial: Rows = grid(
        "Trial shims",
        rows=TRIALS,
        columns=(column("Thickness", "t", SIZE, hard=HARD, usual=USUAL),),
        least=2,
        tool="a micrometer",
        hint="Two or three, each measured by itself, clean and without a burr.",
        example="0.240; 0.240",
    )
    stock: str = choice(
        "The shims below are",
        STOCK,
        default=DRAWER,
        hint="One in the drawer is fitted once; a size that is sold, as often as wanted.",
    )
    shims: Rows = grid(
        "Shims to choose from",
        rows=SHIMS,
        columns=(column("Thickness", "s", SIZE, hard=HARD, usual=USUAL),),
        least=3,
        tool="a micrometer",
        hint="Out of the drawer: put the trial shims in again if they may be used.",
        example="0.240; 0.240; 0.262; 0.279; 0.301; 0.318; 0.341; 0.360; 0.382",
    )
    after: Number | None = measured(
        "Float read again with the chosen three",
        "f_2",
        SIZE,
        tool="a dial gauge on the flywheel, its nut at full torque",
        hard="0 to 5 mm",
        usual="0.03 to 0.5 mm",
        hint="Empty until they are in; then this reading decides.",
    )
    low: Number = limit(
        "End float, least",
        "f_min",
        SIZE,
        feature="crank.end_float",
        which="low",
        hard="0.005 to 2 mm",
        usual="0.03 to 0.3 mm",
    )
    high: Number = limit(
        "End float, most",
        "f_max",
        SIZE,
        feature="crank.end_float",
        which="high",
        hard="0.01 to 3 mm",
        usual="0.05 to 0.5 mm",
    )
    width: Number = measured(
        "Thrust bearing, face to face",
        "w",
        COARSE,
        tool="a micrometer",
        hard="2 to 80 mm",
        usual="8 to 40 mm",
        feature="crankcase.thrust_width",
        stage="",
        fold=True,
        assumed=("22.00 mm", "a usual thrust bearing; common practice, no source"),
        hint="Over both thrust faces.",
    )
    body: str = choice(
        "What holds the two faces apart",
        BODIES,
        feature="crankcase.thrust_body",
        fold=True,
        assumed=(MAGNESIUM, "a saddle of the case, which grows most"),
        hint="A bearing that is one piece of its own: that piece. Flanged shells: the saddle between them.",
    )
    case_temperature: Number = given(
        "It, running",
        "T_w",
        DEGREES_C,
        hard="-40 to 180 °C",
        usual="60 to 130 °C",
        feature="crankcase.running_temperature",
        fold=True,
        assumed=("100 °C", "common practice, no source"),
    )
    crank_temperature: Number = given(
        "Crank, running",
        "T_k",
        DEGREES_C,
        hard="-40 to 200 °C",
        usual="60 to 150 °C",
        feature="crank.running_temperature",
        fold=True,
        assumed=("100 °C", "common practice, no source"),
    )
    least_warm: Number = given(
        "Float wanted warm, least",
        "f_w",
        SIZE,
        hard="0 to 1 mm",
        usual="0.01 to 0.1 mm",
        fold=True,
        assumed=("0.020 mm", "room for oil; common practice, no source"),
    )
