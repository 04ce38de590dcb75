"""What is asked: ring and pocket, how cold the one and how hot the other may be, and the clearance wanted."""

from calc.declare.calculator import Number, Rows, given
from calc.stations.heads.seat_ring import RingInPocket, material_of_head, material_of_ring
from calc.stations.shared.forms import DEGREES_C, SIZE
from calc.stations.shared.own_material import own_values


class In(RingInPocket):
    ring_temperature: Number = given(
        "Ring temperature, when it goes in",
        "T_r",
        DEGREES_C,
        hard=("-196 to 60 °C", "liquid nitrogen boils at −196 °C"),
        must=True,
        hint=(
            "In the room 20 °C, out of a freezer −18 °C, out of dry ice −78 °C, out of liquid nitrogen −196"
            " °C. The colder, the cooler the head may stay."
        ),
        example="-196 °C",
    )
    head_limit: Number = given(
        "Head may be heated to, at most",
        "T_max",
        DEGREES_C,
        hard="60 to 350 °C",
        usual="100 to 200 °C",
        assumed=(
            "200 °C",
            "edge of the temper of a heat-treated aluminium casting; common practice, no source",
        ),
        hint="The maker's word first. An hour at 200 °C is the edge; 160 to 175 °C leave the temper alone.",
        fold=True,
    )
    clearance: Number = given(
        "Clearance wanted to drop the ring in",
        "c",
        SIZE,
        hard="0 to 0.3 mm",
        usual="0.03 to 0.1 mm",
        fold=True,
        assumed=("0.05 mm", "lets a ring fall square; common practice, no source"),
        hint="On the diameter.",
    )
    ring_material: str = material_of_ring()
    head_material: str = material_of_head()
    own: Rows = own_values("ring", "head")
