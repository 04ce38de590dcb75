"""What is asked: sizes of ring, pocket and wall, materials, heat while warming up and running, faces."""

from calc.declare.calculator import Number, Rows, given, measured
from calc.stations.heads.seat_ring import RingInPocket, material_of_head, material_of_ring, ring_bore
from calc.stations.shared.asked import friction_of, grip_wanted, roughness_of
from calc.stations.shared.forms import COARSE, DEGREES_C, ROUGH
from calc.stations.shared.own_material import own_values


class In(RingInPocket):
    ring_bore: Number = ring_bore()
    depth: Number = measured(
        "Depth of the fit",
        "h",
        COARSE,
        tool="a depth gauge",
        hard="1 to 30 mm",
        usual="4 to 12 mm",
        feature="head.seat_pocket_depth",
        stage="finished",
        fold=True,
        hint="The length on which ring and pocket touch, without the lead.",
    )
    head_wall: Number = measured(
        "Least wall round the pocket",
        "w",
        ROUGH,
        tool="a calliper, at the thinnest place",
        hard="1 to 100 mm",
        usual="3 to 25 mm",
        feature="head.seat_pocket_wall",
        stage="",
        fold=True,
        hint="Towards the other seat, the plug or a stud.",
    )
    ring_material: str = material_of_ring()
    head_material: str = material_of_head()
    own: Rows = own_values("ring", "head")
    ring_temperature: Number = given(
        "Ring temperature, running",
        "T_r",
        DEGREES_C,
        hard="-60 to 600 °C",
        usual="80 to 450 °C",
        fold=True,
        feature="head.seat_ring_temperature_{valve}",
        hint=(
            "Intake rings run near 200 to 250 °C, exhaust rings 300 °C and more; common practice, no source."
        ),
    )
    head_temperature: Number = given(
        "Head at the pocket, running",
        "T_h",
        DEGREES_C,
        hard="-60 to 400 °C",
        usual="80 to 230 °C",
        fold=True,
        feature="head.pocket_temperature_{valve}",
        hint="At an exhaust pocket up to 200 to 230 °C, from memory.",
    )
    ring_warming: Number = given(
        "Ring temperature, warming up",
        "T_r,w",
        DEGREES_C,
        hard="-60 to 600 °C",
        usual="80 to 350 °C",
        fold=True,
        feature="head.seat_ring_warming_{valve}",
        hint="The hottest while the head is still cool, after a cold start into full load.",
    )
    head_warming: Number = given(
        "Head at the pocket, warming up",
        "T_h,w",
        DEGREES_C,
        hard="-60 to 400 °C",
        usual="20 to 150 °C",
        fold=True,
        feature="head.pocket_warming",
    )
    ring_roughness: Number = roughness_of("ring", "Rz_r", "4 µm", "ground ring")
    pocket_roughness: Number = roughness_of("pocket", "Rz_p", "6.3 µm", "pocket bored with a sharp tool")
    friction: Number = friction_of(
        "ring on head",
        "Dry iron in aluminium about 0.1 to 0.2.",
        why="dry iron in aluminium; common practice, no source",
        usual="0.08 to 0.25",
    )
    least_grip: Number = grip_wanted(
        "0.015 mm",
        "Cold, warming up, running, and stopped hot, after what yielding has taken.",
        hard="0 to 0.3 mm",
        usual="0.005 to 0.06 mm",
    )
