"""What is asked of the cam's gears: a dial on a tooth round the wheel, or the distance of crank and cam."""

from calc.core.kinds import RATIO
from calc.core.working import form
from calc.declare.calculator import Inputs, Number, Rows, choice, column, given, grid, limit, measured
from calc.stations.shared.forms import ROUGH, SIZE, TENTHS_OF_DEGREE

DIAL, DISTANCE = "dial", "distance"
CODE = form(RATIO, 0)
PLACES = ("1", "2", "3", "4", "5", "6", "7", "8")


class In(Inputs):
    how: str = choice(
        "Found by",
        {DIAL: "a dial, at several places round the gear", DISTANCE: "the distance of crank and cam"},
        default=DIAL,
    )
    readings: Rows = grid(
        "Dial",
        rows=PLACES,
        columns=(column("Play", "y", SIZE, hard="0 to 2 mm", usual="0 to 0.4 mm"),),
        least=3,
        tool="a dial gauge square to a tooth, crank held",
        hint=(
            "Case bolted up. Rock the cam without pushing it along, write the whole swing down, turn the"
            " crank on an even part of a turn of the cam, and so round."
        ),
        example="0.030 | 0.036 | 0.041 | 0.044 | 0.040 | 0.034 | 0.027 | 0.026",
        when=("how", DIAL),
    )
    dial_radius: Number = measured(
        "Cam's centre to the dial's tip",
        "r_d",
        ROUGH,
        tool="a calliper",
        hard="10 to 300 mm",
        usual="30 to 150 mm",
        example="69.0 mm",
        hint="On a tooth, the gear's pitch radius; on a lever, the lever.",
        when=("how", DIAL),
    )
    distance: Number = measured(
        "Crank to cam, centres",
        "a",
        SIZE,
        tool="bars in both bores and a micrometer over them",
        hard="30 to 300 mm",
        usual="60 to 160 mm",
        feature="crankcase.cam_distance",
        stage="finished",
        when=("how", DISTANCE),
    )
    code: Number = given(
        "Size code of the gear at hand",
        "n",
        CODE,
        hard="-20 to 20",
        usual="-8 to 8",
        example="0",
        hint="As stamped on it. Plus is larger, and takes play away.",
    )
    radius: Number = given(
        "Pitch radius of the cam's gear",
        "r_w",
        ROUGH,
        hard="10 to 300 mm",
        usual="30 to 150 mm",
        feature="cam.gear_radius",
        fold=True,
    )
    helix: Number = given(
        "Helix of the gears",
        "β",
        TENTHS_OF_DEGREE,
        hard="0° to 45°",
        usual="0° to 35°",
        feature="cam.gear_helix",
        fold=True,
    )
    pressure: Number = given(
        "Pressure angle, square to the tooth",
        "α_n",
        TENTHS_OF_DEGREE,
        hard="10° to 30°",
        usual="14° to 25°",
        fold=True,
        assumed=("20°", "the standard rack of ISO 53"),
    )
    unlike: Number = given(
        "Play may differ round the gear by",
        "v_n",
        SIZE,
        hard="0.001 to 0.5 mm",
        usual="0.01 to 0.1 mm",
        fold=True,
        assumed=("0.030 mm", "more is a gear or a journal that runs out; common practice, no source"),
    )
    step: Number = limit(
        "One step of the size code, in pitch radius",
        "s",
        SIZE,
        feature="cam.gear_step",
        which="nominal",
        hard="0.001 to 0.2 mm",
        usual="0.005 to 0.05 mm",
    )
    last: Number = limit(
        "Largest size code sold, plus and minus",
        "n_l",
        CODE,
        feature="cam.gear_last",
        which="nominal",
        hard="0 to 20",
        usual="1 to 10",
    )
    drawn: Number = limit(
        "Crank to cam, as drawn",
        "a_0",
        SIZE,
        feature="crankcase.cam_distance",
        which="nominal",
        hard="30 to 300 mm",
        usual="60 to 160 mm",
        when=("how", DISTANCE),
    )
    aim: Number = limit(
        "Backlash, as drawn",
        "j_0",
        SIZE,
        feature="cam.gear_backlash",
        which="nominal",
        hard="0 to 0.5 mm",
        usual="0.005 to 0.15 mm",
    )
    low: Number = limit(
        "Backlash, least",
        "j_min",
        SIZE,
        feature="cam.gear_backlash",
        which="low",
        hard="0 to 0.5 mm",
        usual="0 to 0.1 mm",
    )
    high: Number = limit(
        "Backlash, most of new gears",
        "j_max",
        SIZE,
        feature="cam.gear_backlash",
        which="high",
        hard="0 to 1 mm",
        usual="0.02 to 0.2 mm",
    )
    worn: Number = limit(
        "Backlash, worn out at",
        "j_v",
        SIZE,
        feature="cam.gear_backlash",
        which="wear",
        hard="0.01 to 2 mm",
        usual="0.05 to 0.4 mm",
    )
