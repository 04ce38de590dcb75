"""What is asked of a ring gear that is to be shrunk on: both diameters, heat, section, speed."""

from calc.declare.calculator import Inputs, Number, Rows, choice, given, limit, measured
from calc.stations.flywheel.lighten.asked import IRONS
from calc.stations.shared.asked import friction_of, material_of
from calc.stations.shared.forms import COARSE, DEGREES_C, ROUGH, SHARE, SIZE, TURNS
from calc.stations.shared.own_material import own_values

PINION, AWAY = "pinion", "away"
OVEN, PLATE, TORCH = "oven", "plate", "torch"


class In(Inputs):
    seat: Number = measured(
        "Ring gear's seat",
        "D",
        COARSE,
        tool="a large micrometer, at three places",
        hard="50 to 900 mm",
        usual="180 to 400 mm",
        feature="flywheel.gear_seat",
        of="material",
        stage="finished",
    )
    bore: Number = measured(
        "Ring gear's bore",
        "d",
        COARSE,
        tool="an inside micrometer, at three places",
        hard="50 to 900 mm",
        usual="180 to 400 mm",
        feature="flywheel.gear_bore",
        of="gear_material",
        stage="finished",
    )
    chamfer: str = choice(
        "The teeth are chamfered on the side",
        {PINION: "from which the starter's pinion comes", AWAY: "away from the starter's pinion"},
        must=True,
        example=PINION,
        hint="Lay it on the flywheel cold and look, before it is heated.",
    )
    heated: str = choice(
        "It is heated",
        {OVEN: "in an oven", PLATE: "on a hot plate, all round", TORCH: "with a torch"},
        must=True,
        example=OVEN,
    )
    clearance: Number = given(
        "Clearance wanted to drop it on",
        "c",
        COARSE,
        hard="0.02 to 2 mm",
        usual="0.1 to 0.5 mm",
        fold=True,
        assumed=("0.25 mm", "common practice, no source"),
    )
    flywheel_temperature: Number = given(
        "Flywheel's temperature",
        "T_f",
        DEGREES_C,
        hard="-80 to 60 °C",
        usual="-60 to 35 °C",
        fold=True,
        hint="Chilled, it needs less heat in the ring gear.",
        assumed=("20 °C", "as it lies in the shop"),
    )
    hottest: Number = given(
        "Hottest that its teeth may be",
        "T_max",
        DEGREES_C,
        hard="80 to 400 °C",
        usual="180 to 250 °C",
        feature="flywheel.gear_heat",
        fold=True,
        assumed="hardened teeth lose hardness from about 250 °C; common practice, no source",
    )
    low: Number = limit(
        "Interference, least",
        "δ_min",
        COARSE,
        feature="flywheel.gear_interference",
        which="low",
        hard="0.01 to 3 mm",
        usual="0.15 to 0.6 mm",
    )
    high: Number = limit(
        "Interference, most",
        "δ_max",
        COARSE,
        feature="flywheel.gear_interference",
        which="high",
        hard="0.01 to 3 mm",
        usual="0.15 to 0.8 mm",
    )
    speed: Number = given(
        "Highest speed",
        "n",
        TURNS,
        hard="100 1/ to 20000 1/min",
        usual="1000 1/ to 9000 1/min",
        feature="crank.top_speed",
        fold=True,
    )
    hub: Number = given(
        "Flywheel's own bore",
        "D_b",
        SIZE,
        hard="0 to 500 mm",
        usual="20 to 120 mm",
        feature="flywheel.register",
        fold=True,
    )
    root: Number = given(
        "Ring gear, diameter under the teeth",
        "D_r",
        ROUGH,
        hard="55 to 950 mm",
        usual="190 to 420 mm",
        feature="flywheel.gear_root",
        fold=True,
    )
    outside: Number = given(
        "Ring gear, over the teeth",
        "D_o",
        ROUGH,
        hard="55 to 960 mm",
        usual="190 to 430 mm",
        feature="flywheel.outside",
        fold=True,
    )
    width: Number = given(
        "Ring gear's width",
        "b",
        ROUGH,
        hard="2 to 60 mm",
        usual="8 to 20 mm",
        feature="flywheel.gear_width",
        fold=True,
    )
    material: str = material_of("Flywheel, material", IRONS, feature="flywheel.alloy", example="grey-iron")
    gear_material: str = material_of(
        "Ring gear, material",
        ("forged-steel", "ductile-iron"),
        feature="flywheel.gear_alloy",
        example="forged-steel",
    )
    own: Rows = own_values("flywheel", "ring gear")
    friction: Number = friction_of("ring gear on its seat", "Dry and clean.")
    yield_share: Number = given(
        "Share of its yield that the ring gear may bear",
        "q_R",
        SHARE,
        hard="10 to 100 %",
        usual="50 to 80 %",
        fold=True,
        assumed=("70 %", "common practice, no source"),
    )
    grip_share: Number = given(
        "Share of the grip that must be left at speed",
        "q_p",
        SHARE,
        hard="5 to 100 %",
        usual="40 to 80 %",
        fold=True,
        assumed=("50 %", "common practice, no source"),
    )
