"""What is asked of a guide and its stem: sizes, the limits they are held to, heat, materials, faces."""

from calc.core.working import Number
from calc.declare.calculator import Inputs, Rows, choice, given, limit, measured, which_valve
from calc.stations.shared.asked import friction_of, grip_wanted, material_of, roughness_of
from calc.stations.shared.forms import COARSE, DEGREES_C, ROUGH, SIZE
from calc.stations.shared.own_material import own_values

GUIDES = ("bronze", "aluminium-bronze", "copper-nickel-silicon", "grey-iron", "sintered-iron")
HEADS = ("al-si-t6", "al-si-cu-t6", "grey-iron")
STEMS = ("valve-steel", "austenitic-valve-steel")
FITTED, NEW = "fitted", "new"
CUT, STAYS = "cut", "stays"


class In(Inputs):
    stage: str = choice("The guide is", {FITTED: "in the head", NEW: "new, to be pressed in"}, default=FITTED)
    valve: str = which_valve()
    seat: str = choice(
        "Its seat is",
        {CUT: "to be cut", STAYS: "left as it is"},
        hint="A pilot stands in the guide while a seat is cut.",
        when=("stage", FITTED),
        default=CUT,
    )
    stem: Number = measured(
        "Stem, smallest",
        "d",
        SIZE,
        tool="a micrometer, at three heights where it runs in the guide",
        hard="3 to 20 mm",
        usual="5 to 13 mm",
        feature="valve.stem_{valve}",
    )
    guide_bore: Number = measured(
        "Guide bore, fitted, largest",
        "D",
        SIZE,
        tool="a small bore gauge, at both ends and in the middle, in two directions",
        hard="3 to 20.5 mm",
        usual="5 to 13.5 mm",
        feature="guide.bore",
        when=("stage", FITTED),
    )
    rocking: Number | None = measured(
        "Rocking of the valve, side to side",
        "r_read",
        COARSE,
        tool="a dial gauge on the valve's edge, in the direction of the rocker",
        hard="0 to 5 mm",
        usual="0.02 to 1.5 mm",
        hint="Full reading.",
        when=("stage", FITTED),
    )
    dial_height: Number = given(
        "Dial beyond the guide's end by",
        "h_d",
        ROUGH,
        hard="0 to 200 mm",
        usual="5 to 120 mm",
        feature="guide.rock_lever",
        when=("rocking",),
        hint=(
            "Along the stem, from the guide's end to the valve's edge: length of the valve less that of"
            " the guide, less how far the stem stands out at the other end. Counts only with the rocking."
        ),
    )
    guide_hole: Number = measured(
        "Hole in the head",
        "D_h",
        SIZE,
        tool="a bore gauge set in a ring",
        hard="6 to 40 mm",
        usual="9 to 22 mm",
        feature="head.guide_hole",
        of="head_material",
        stage="finished",
        when=("stage", NEW),
    )
    guide_outside: Number = measured(
        "Guide outside",
        "D_g",
        SIZE,
        tool="a micrometer",
        hard="6 to 40 mm",
        usual="9 to 22 mm",
        feature="guide.outside",
        of="guide_material",
        stage="finished",
        when=("stage", NEW),
    )
    supplied_bore: Number = measured(
        "Bore of the new guide, as it comes",
        "D_0",
        SIZE,
        tool="a small bore gauge",
        hard="2 to 20 mm",
        usual="4.5 to 13 mm",
        feature="guide.supplied_bore",
        stage="",
        when=("stage", NEW),
    )
    guide_length: Number = measured(
        "Guide length",
        "L",
        ROUGH,
        tool="a calliper",
        hard="10 to 120 mm",
        usual="25 to 80 mm",
        feature="guide.length",
        fold=True,
    )
    worn_clearance: Number = limit(
        "Clearance at which it is worn",
        "c_max",
        SIZE,
        feature="guide.clearance_{valve}",
        which="wear",
        hard="0.01 to 1 mm",
        usual="0.06 to 0.4 mm",
    )
    most_new: Number = limit(
        "Clearance of a guide as made, most",
        "c_new",
        SIZE,
        feature="guide.clearance_{valve}",
        which="high",
        hard="0.005 to 1 mm",
        usual="0.02 to 0.2 mm",
        hint="A pilot asks for it.",
        when=("seat", CUT),
    )
    least_new: Number = limit(
        "Clearance of a guide as made, least",
        "c_low",
        SIZE,
        feature="guide.clearance_{valve}",
        which="low",
        hard="0 to 0.5 mm",
        usual="0.005 to 0.1 mm",
        when=("stage", NEW),
    )
    least_stem: Number | None = limit(
        "Stem as made, least",
        "d_low",
        SIZE,
        feature="valve.stem_{valve}",
        which="low",
        hard="3 to 20 mm",
        usual="5 to 13 mm",
        when=("stage", NEW),
        hint="A new guide is not reamed to a worn stem.",
    )
    wanted_clearance: Number = given(
        "Clearance wanted, new",
        "c_w",
        SIZE,
        hard="0.005 to 0.5 mm",
        usual="0.02 to 0.12 mm",
        feature="guide.clearance_{valve}",
        fold=True,
        when=("stage", NEW),
    )
    least_hot: Number = given(
        "Clearance running, least",
        "c_min",
        SIZE,
        hard="0 to 0.2 mm",
        usual="0.005 to 0.05 mm",
        fold=True,
        assumed=("0.010 mm", "room for oil; common practice, no source"),
    )
    stem_temperature: Number = given(
        "Stem temperature, running",
        "T_s",
        DEGREES_C,
        hard="-60 to 600 °C",
        usual="60 to 550 °C",
        feature="valve.stem_running_temperature_{valve}",
        fold=True,
        assumed="common practice, no source",
        hint="At the guide's hot end.",
    )
    guide_temperature: Number = given(
        "Guide temperature, running",
        "T_g",
        DEGREES_C,
        hard="-60 to 400 °C",
        usual="60 to 300 °C",
        feature="guide.running_temperature_{valve}",
        fold=True,
        assumed="common practice, no source",
    )
    head_temperature: Number = given(
        "Head round the guide, running",
        "T_h",
        DEGREES_C,
        hard="-60 to 400 °C",
        usual="60 to 230 °C",
        feature="head.guide_running_temperature_{valve}",
        fold=True,
        assumed="common practice, no source",
    )
    oven_temperature: Number = given(
        "Head in the oven while seats are fitted",
        "T_o",
        DEGREES_C,
        hard="20 to 300 °C",
        usual="100 to 230 °C",
        fold=True,
        assumed=("200 °C", "as hot as a heat-treated head may get; common practice, no source"),
    )
    stem_material: str = material_of(
        "Stem, material", STEMS, feature="valve.alloy_{valve}", example="valve-steel"
    )
    guide_material: str = material_of("Guide, material", GUIDES, feature="guide.alloy", example="bronze")
    head_material: str = material_of("Head, material", HEADS, feature="head.alloy", example="al-si-cu-t6")
    own: Rows = own_values("guide", "head")
    hole_fitted: Number = given(
        "Hole of the guide that is in the head",
        "D_h,in",
        SIZE,
        hard="6 to 40 mm",
        usual="9 to 22 mm",
        feature="head.guide_hole",
        fold=True,
        hint="As made: it cannot be measured there.",
        when=("stage", FITTED),
    )
    outside_fitted: Number = given(
        "Outside of the guide that is in the head",
        "D_g,in",
        SIZE,
        hard="6 to 40 mm",
        usual="9 to 22 mm",
        feature="guide.outside",
        fold=True,
        hint="As made.",
        when=("stage", FITTED),
    )
    head_wall: Number = measured(
        "Least wall round the hole",
        "w",
        ROUGH,
        tool="a calliper, at the thinnest place",
        hard="1 to 60 mm",
        usual="3 to 25 mm",
        feature="head.guide_wall",
        stage="",
        fold=True,
    )
    guide_roughness: Number = roughness_of("guide", "Rz_g", "4 µm", "ground")
    hole_roughness: Number = roughness_of("hole", "Rz_h", "6.3 µm", "reamed")
    least_grip: Number = grip_wanted(
        "0.010 mm", "Cold and running, roughness pressed flat.", when=("stage", NEW)
    )
    friction: Number = friction_of("guide in head", "Oiled about 0.1, dry up to 0.2.", when=("stage", NEW))
