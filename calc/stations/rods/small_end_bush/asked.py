"""What is asked: sizes of pin, bush and rod, the limits that they are held to, heat and faces."""

from calc.declare.calculator import Inputs, Number, Rows, given, limit, measured
from calc.stations.shared.asked import friction_of, grip_wanted, material_of, roughness_of
from calc.stations.shared.forms import DEGREES_C, ROUGH, SIZE
from calc.stations.shared.own_material import own_values

BUSHES, ROD, PIN = ("bronze", "aluminium-bronze", "copper-nickel-silicon"), "forged-steel", "bearing-steel"


class In(Inputs):
    pin: Number = measured(
        "Piston pin, largest",
        "d",
        SIZE,
        tool="a micrometer, where it runs in the bush",
        hard="8 to 60 mm",
        usual="14 to 40 mm",
        feature="piston.pin",
        of=PIN,
    )
    bush_outside: Number = measured(
        "Bush outside",
        "D_b",
        SIZE,
        tool="a micrometer",
        hard="9 to 80 mm",
        usual="16 to 50 mm",
        feature="rod.bush_outside",
        of="bush_material",
        stage="finished",
    )
    rod_bore: Number = measured(
        "Small-end bore without bush",
        "D_s",
        SIZE,
        tool="a bore gauge set in a ring",
        hard="9 to 80 mm",
        usual="16 to 50 mm",
        feature="rod.small_end_bore",
        of=ROD,
        stage="finished",
    )
    supplied_bore: Number = measured(
        "Bore of the bush, as it comes",
        "D_0",
        SIZE,
        tool="a small bore gauge",
        hard="6 to 60 mm",
        usual="13 to 40 mm",
        feature="rod.bush_supplied_bore",
        stage="",
        hint="A rolled bush: measure it in a ring.",
    )
    honed: Number | None = measured(
        "Bore as honed, smallest",
        "D_read",
        SIZE,
        tool="a bore gauge set in a ring",
        hard="6 to 60 mm",
        usual="13 to 40 mm",
        hint="Empty until it is honed; then the clearances are of this reading.",
    )
    wanted_clearance: Number = given(
        "Pin clearance wanted",
        "c_w",
        SIZE,
        hard="0.001 to 0.2 mm",
        usual="0.005 to 0.03 mm",
        feature="rod.pin_clearance",
        fold=True,
    )
    rod_wall: Number = measured(
        "Least wall of the rod's eye",
        "w",
        ROUGH,
        tool="a calliper, at the thinnest place",
        hard="1 to 30 mm",
        usual="2.5 to 10 mm",
        feature="rod.small_end_wall",
        stage="",
        fold=True,
    )
    length: Number = measured(
        "Length of the fit",
        "b",
        ROUGH,
        tool="a calliper",
        hard="5 to 80 mm",
        usual="15 to 40 mm",
        feature="rod.small_end_length",
        fold=True,
    )
    least_cold: Number = limit(
        "Pin clearance of a fresh bush, least",
        "c_cold",
        SIZE,
        feature="rod.pin_clearance",
        which="low",
        hard="0 to 0.1 mm",
        usual="0.003 to 0.02 mm",
    )
    most_clearance: Number = limit(
        "Pin clearance of a fresh bush, most",
        "c_max",
        SIZE,
        feature="rod.pin_clearance",
        which="high",
        hard="0.005 to 0.3 mm",
        usual="0.01 to 0.06 mm",
    )
    least_clearance: Number = given(
        "Pin clearance running, least",
        "c_min",
        SIZE,
        hard="0 to 0.1 mm",
        usual="0.003 to 0.02 mm",
        fold=True,
        assumed=("0.005 mm", "room for oil; common practice, no source"),
    )
    least_wall: Number = given(
        "Wall of the bush, least",
        "t_min",
        SIZE,
        hard="0.2 to 10 mm",
        usual="0.8 to 3 mm",
        fold=True,
        assumed=("1.0 mm", "common practice, no source"),
    )
    least_grip: Number = grip_wanted("0.010 mm", "Roughness pressed flat.")
    bush_material: str = material_of("Bush, material", BUSHES, feature="rod.bush_alloy", example="bronze")
    own: Rows = own_values("bush", "rod")
    rod_temperature: Number = given(
        "Rod's eye and bush, running",
        "T_r",
        DEGREES_C,
        hard="-60 to 300 °C",
        usual="60 to 200 °C",
        feature="rod.small_end_running_temperature",
        fold=True,
        assumed="common practice, no source",
    )
    pin_temperature: Number = given(
        "Pin temperature, running",
        "T_p",
        DEGREES_C,
        hard="-60 to 150 °C",
        usual="60 to 150 °C",
        feature="piston.pin_running_temperature",
        fold=True,
        assumed="common practice, no source",
    )
    bush_roughness: Number = roughness_of("bush", "Rz_b", "4 µm", "turned fine")
    bore_roughness: Number = roughness_of("rod's bore", "Rz_s", "4 µm", "bored fine")
    friction: Number = friction_of("bush in rod", "Oiled about 0.1.")
