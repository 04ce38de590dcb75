"""What is asked before a valve seat is cut: valve, present seat, band wanted, angles, limits, ring."""

from calc.core.working import Number
from calc.declare.calculator import Inputs, given, limit, measured, which_valve
from calc.stations.heads.seat_cut.told import DEGREES
from calc.stations.heads.seat_ring import ring_bore, ring_outside
from calc.stations.shared.forms import COARSE, SIZE


class In(Inputs):
    valve: str = which_valve()
    valve_head: Number = measured(
        "Valve head diameter",
        "D_v",
        COARSE,
        tool="a calliper",
        hard="10 to 80 mm",
        usual="25 to 55 mm",
        feature="head.valve_head_{valve}",
    )
    seat_outer: Number = measured(
        "Present seat, outer edge",
        "D_s",
        COARSE,
        tool="a calliper on the dyed seat",
        hard="8 to 88 mm",
        usual="24 to 56 mm",
        hint="A new ring that was never cut: give its bore for both edges, and 0 for the depth.",
        example="34.40 mm",
    )
    seat_inner: Number = measured(
        "Present seat, inner edge",
        "d_s",
        COARSE,
        tool="a calliper on the dyed seat",
        hard="4 to 88 mm",
        usual="20 to 54 mm",
        example="31.40 mm",
    )
    seat_depth: Number = measured(
        "Present seat, depth of its outer edge",
        "t_s",
        COARSE,
        tool="a depth gauge",
        hard="0 to 15 mm",
        usual="0 to 3 mm",
        hint="Below the ring's face, along the stem.",
        example="0.35 mm",
    )
    valve_margin: Number = measured(
        "Valve edge, thickness",
        "m",
        COARSE,
        tool="a calliper",
        hard="0.1 to 6 mm",
        usual="0.8 to 3 mm",
        feature="head.valve_margin_{valve}",
        hint="The straight part between face and head, as it is now.",
    )
    stem_risen: Number = measured(
        "Stem tip risen since new, so far",
        "s_0",
        COARSE,
        tool="a depth gauge, against the height when new",
        hard="-3 to 5 mm",
        usual="-0.3 to 1 mm",
        feature="head.stem_rise",
        hint="With the valve lying on the seat as it is now. On a new ring that was never cut it is below 0.",
    )
    band_width: Number = given(
        "Band wanted, width",
        "w",
        COARSE,
        hard="0.3 to 5 mm",
        usual="1 to 2.5 mm",
        feature="head.seat_width_{valve}",
        hint="Along the seat's face, as seen with dye.",
        fold=True,
    )
    from_edge: Number = given(
        "Band wanted, in from the valve's edge",
        "e_o",
        COARSE,
        hard="0 to 5 mm",
        usual="0.4 to 1.5 mm",
        assumed=("0.7 mm", "0.5 to 1 mm in from the edge is common practice, no source"),
        hint="Along the valve's face.",
        fold=True,
    )
    seat_angle: Number = given(
        "Seat angle",
        "θ",
        DEGREES,
        hard="10 to 75°",
        usual="30 to 46°",
        feature="head.seat_angle",
        fold=True,
        hint="From the plane square to the stem, as are all angles here.",
    )
    upper_angle: Number = given(
        "Upper angle",
        "θ_u",
        DEGREES,
        hard="5 to 70°",
        usual="15 to 35°",
        feature="head.seat_upper_angle",
        fold=True,
        hint="The flatter cut above the seat.",
    )
    throat_angle: Number = given(
        "Throat angle",
        "θ_t",
        DEGREES,
        hard="15 to 89°",
        usual="55 to 75°",
        feature="head.seat_throat_angle",
        fold=True,
        hint="The steeper cut towards the port.",
    )
    valve_angle: Number = given(
        "Valve face angle",
        "θ_v",
        DEGREES,
        hard="10 to 75°",
        usual="29 to 46°",
        feature="head.valve_angle",
        fold=True,
    )
    valve_face: Number = measured(
        "Valve face, width",
        "b_v",
        COARSE,
        tool="a calliper, along the face",
        hard="0.5 to 10 mm",
        usual="1.5 to 4 mm",
        feature="head.valve_face_width",
        stage="",
        fold=True,
    )
    face_ground: Number = given(
        "Still to be ground off the valve's face",
        "n_v",
        COARSE,
        hard="0 to 2 mm",
        usual="0 to 0.3 mm",
        fold=True,
        assumed=("0 mm", "nothing: the valve's face is ground already"),
        hint="Square to the face.",
    )
    clean_up: Number = given(
        "Seat cutter, least feed to clean up",
        "a_c",
        SIZE,
        hard="0 to 2 mm",
        usual="0 to 0.3 mm",
        fold=True,
        assumed=("0.05 mm", "what a worn seat usually takes; common practice, no source"),
        hint="Along the stem, until the seat is bright all round.",
    )
    least_depth: Number = given(
        "Band's outer edge below the ring's face, at least",
        "t_min",
        COARSE,
        hard="0 to 10 mm",
        usual="0 to 2 mm",
        fold=True,
        assumed=("0 mm", "no depth is asked for"),
        hint="For a new ring: what sets the valve at its height.",
    )
    most_rise: Number = limit(
        "Stem tip may rise since new, at most",
        "s_max",
        COARSE,
        feature="head.stem_rise",
        which="wear",
        hard="0 to 5 mm",
        usual="0.3 to 2 mm",
        hint="What tip, spring shims and valve gear can make up.",
    )
    least_margin: Number = limit(
        "Valve edge wanted, least",
        "m_min",
        COARSE,
        feature="head.valve_margin_{valve}",
        which="wear",
        hard="0.1 to 4 mm",
        usual="0.5 to 2 mm",
        hint="0.8 mm intake and 1 mm exhaust are common practice, no source.",
    )
    least_room: Number = given(
        "Valve face wanted clear on both sides of the band",
        "e_min",
        COARSE,
        hard="0 to 2 mm",
        usual="0.2 to 1 mm",
        fold=True,
        assumed=("0.4 mm", "common practice, no source"),
    )
    ring_outside: Number = ring_outside(fold=True)
    ring_bore: Number = ring_bore()
    ring_height: Number = measured(
        "Ring height",
        "h",
        COARSE,
        tool="a calliper",
        hard="1 to 30 mm",
        usual="4 to 12 mm",
        feature="head.seat_pocket_depth",
        stage="finished",
        fold=True,
    )
