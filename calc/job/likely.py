"""What a job is likely to say, the likeliest last: the dictionaries with which codes are deflated, by the
version of the code.

They never change: codes on paper need them.
"""

FIELD = "\x1f"  # parts one from the next

_FEATURES = """torque: head_nut case_nut rod_nut
chamber: mouth volume
port: width_intake height_intake manifold_width_intake manifold_height_intake throat_intake
spring: wire mean_diameter active_turns total_turns free_length installed_height shim seat_load open_load
lifter: lash unit_outside unit_hole unit_clearance plunger plunger_bore plunger_clearance plunger_land travel preload oil_hole ring groove groove_width groove_depth lip pushrod body clearance
head: seat_ring_bore_intake seat_ring_bore_exhaust seat_pocket_wall valve_head_intake valve_head_exhaust valve_face_width valve_margin_intake valve_margin_exhaust seat_width_intake seat_width_exhaust valve_angle seat_angle seat_upper_angle seat_throat_angle stem_rise rocker_height stem_height seat_pocket_depth seat_ring_outside_exhaust seat_pocket_exhaust seat_ring_outside_intake seat_pocket_intake guide_hole
valve: length tip_to_retainer tip_ground lift stem_exhaust stem_intake
guide: length interference clearance_exhaust clearance_intake outside bore
flywheel: mass runout
cam: lobe_lift base_circle end_float clearance journal
piston: mass compression_height groove ring_width ring_side_clearance ring_gap pin_clearance clearance pin_bore pin diameter
cylinder: length shim register_clearance register bore
rod: mass big_end_mass small_end_mass cap_mass bolt_stretch bend twist width side_clearance centre_distance small_end_bore bush_outside bush_interference bush_bore pin_clearance bearing_clearance shell_wall big_end_bore
crankcase: deck_height seat_height cam_bore spigot_bore lifter_bore main_clearance main_shell_wall main_housing
crank: stroke throw rod_journal_length fillet bow end_float_shim end_float rod_journal main_journal"""
_LIKELY = (
    (
        "gearbox flywheel cam lifters springs pushrods pistons cylinders valves guides case halves four rods"
        " two heads, crank"
    ),
    "RC-40",
    "TS-16",
    (
        "new rings fitted, faced, balanced, replaced, reamed, lapped, line bored, bored, honed to size,"
        " polished, ground 0.50 mm under, ground 0.25 mm under, Mains and rod journals ground "
    ),
    "Guides replaced",
    "Seats cut",
    "Cylinders bored",
    "Big ends resized",
    "Small-end bushes pressed in and honed",
    "Flywheel faced",
    "Threads mended with inserts",
    "wrong place",
    "typed wrong",
    "was warm",
    "measured again",
    "forged-steel",
    "al-si-t6",
    "24 °C",
    "22 °C",
    *(f"{cylinder} {side}" for cylinder in range(1, 5) for side in ("intake", "exhaust")),
    "1",
    "2",
    "3",
    "4",
    "rrrrrrrr",
    "aaaaaaaa",
    "rfrfrfrf",
    "ffffffff",
    " g",
    " N",
    " N·m",
    " cm³",
    "°",
    " thou",
    " in ± 0.0005 in",
    " in ± 0.0001 in",
    " in ± 0.0002 in",
    " µm",
    " mm ± 0.05 mm",
    " mm ± 0.02 mm",
    " mm ± 0.01 mm",
    " mm ± 0.005 mm",
    " mm ± 0.006 mm",
    " mm ± 0.002 mm",
    " mm ± 0.003 mm",
    " mm ± 0.004 mm",
    "d3",
    "d5",
    "e1",
    "f7",
    "2027-01-01T08:00+00:00",
    "2026-11-25T09:00+01:00",
)
_SINCE_2 = """head: seat_inner_intake seat_inner_exhaust guide_wall
guide: supplied_bore
chamber: step_cut
port: width_exhaust height_exhaust manifold_width_exhaust manifold_height_exhaust throat_exhaust
piston: height
rod: small_end_wall small_end_length bush_supplied_bore bolt_shank bolt_shank_length bolt_free_thread pad_beyond_big_end pad_beyond_small_end pad_loss_big_end pad_loss_small_end offset"""

_SINCE_3 = """valve: mass_intake mass_exhaust way_intake way_exhaust edge_room
spring: mass retainer_mass
cylinder: round taper cross_hatch leak_down
piston: pocket_depth dome top_land top_land_height groove_second ring_width_second ring_gap_second groove_oil ring_width_oil ring_gap_oil
rod: big_end_wall shell_proud
crank: main_journal_length journal_round journal_taper hardness oil_hole_edge index_error rod_room journal_roughness mass
crankcase: saddle_line cam_distance main_housing_wall main_shell_proud spigot_depth spigot_wall stud_along stud_up stud_hole cylinder_spacing land seat_flatness seat_tilt parting_flatness dowel_clearance deck_slope
cam: lobe_taper nose_radius core gear_backlash duration centre_intake centre_exhaust
lifter: mass
rocker: arm_valve arm_pushrod tip_over_shaft sweep contact_run adjuster shaft bush pushrod_mass pushrod_bow tube_length
flywheel: register face_thickness root_thickness step gear_seat gear_bore"""


def _ids(lines: str):
    return (
        f"{group}.{name}"
        for group, _, names in (line.partition(":") for line in lines.splitlines())
        for name in names.split()
    )


DICTIONARIES = {"1": FIELD.join((*_ids(_FEATURES), *_LIKELY)).encode()}
DICTIONARIES["2"] = FIELD.join(_ids(_SINCE_2)).encode() + FIELD.encode() + DICTIONARIES["1"]
DICTIONARIES["3"] = FIELD.join(_ids(_SINCE_3)).encode() + FIELD.encode() + DICTIONARIES["2"]
