"""Pictures of the work, for the step that a hand gets wrong: `/// drawing | bore-gauge-rocked`.

A picture is a function of a data sheet that gives a `Drawing`; a new one is entered here, once. They are
made when a page is built and are no part of what a browser runs.
"""

from __future__ import annotations

from collections.abc import Callable
from difflib import get_close_matches

from calc.core.drawing import Drawing
from calc.page.figure import figure
from calc.page.html import Html, el
from calc.reference import engine
from scripts.pictures import (
    balancing,
    bearings,
    cam,
    chambers,
    closing,
    crank,
    crankcase,
    cutting,
    cylinders,
    decks,
    flywheel,
    guides,
    lifters,
    measuring,
    rockers,
    rods,
    seats,
    sheet_metal,
    springs,
    threads,
    valves,
)
from scripts.pictures.sheet import Sheet

PICTURES: dict[str, Callable[[Sheet], Drawing]] = {
    "lobe-across": cam.lobe_across,
    "wheel-one-way": cam.wheel_one_way,
    "lobe-taper": cam.lobe_taper,
    "lobe-all-round": cam.lobe_all_round,
    "cylinder-held": cylinders.cylinder_held,
    "cylinder-places": cylinders.cylinder_places,
    "hone-hatch": cylinders.hone_hatch,
    "ring-square": cylinders.ring_square,
    "ring-filed": cylinders.ring_filed,
    "wheel-rung": cutting.wheel_rung,
    "wheel-flanges": cutting.wheel_flanges,
    "bar-held": cutting.bar_held,
    "shell-dowel": closing.shell_dowel,
    "gear-marks": closing.gear_marks,
    "three-shims": closing.three_shims,
    "lip-spot-faced": closing.lip_spot_faced,
    "stud-breaks-through": closing.stud_breaks_through,
    "nuts-outward": closing.nuts_outward,
    "flywheel-zones": flywheel.zones,
    "flywheel-set-up": flywheel.set_up,
    "flywheel-corners": flywheel.corners,
    "ring-gear-side": flywheel.gear_side,
    "ring-gear-heated": flywheel.gear_heated,
    "clutch-faces": flywheel.faces,
    "bore-gauge-rocked": measuring.bore_gauge_rocked,
    "bore-places": measuring.bore_places,
    "pocket-places": measuring.pocket_places,
    "journal-places": measuring.journal_places,
    "micrometer-square": measuring.micrometer_square,
    "made-and-worn": measuring.made_and_worn,
    "half-angle": measuring.half_angle,
    "guide-places": guides.guide_places,
    "valve-rocked": valves.valve_rocked,
    "valve-margin": valves.valve_margin,
    "guide-drilled": guides.guide_drilled,
    "guide-pressed": guides.guide_pressed,
    "reamer-turned": guides.reamer_turned,
    "valve-rolled": springs.valve_rolled,
    "stem-height": valves.stem_height,
    "tip-ground": valves.tip_ground,
    "spring-square": springs.spring_square,
    "spring-height": springs.spring_height,
    "full-lift-room": springs.full_lift_room,
    "keepers": springs.keepers,
    "pilot-leans": seats.pilot_leans,
    "pocket-walls": seats.pocket_walls,
    "ring-lead": seats.ring_lead,
    "ring-on-floor": seats.ring_on_floor,
    "seat-angles": seats.seat_angles,
    "blue-bands": seats.blue_bands,
    "seat-runout": seats.seat_runout,
    "gap-turned": seats.gap_turned,
    "pencil-lines": seats.pencil_lines,
    "chamber-filled": chambers.chamber_filled,
    "sealing-step": chambers.sealing_step,
    "guide-boss": chambers.guide_boss,
    "port-step": chambers.port_step,
    "leak-ways": chambers.leak_ways,
    "gallery-open": crankcase.gallery_open,
    "seat-swept": crankcase.seat_swept,
    "saddle-places": crankcase.saddle_places,
    "bar-line": crankcase.bar_line,
    "hole-wall": crankcase.hole_wall,
    "seat-narrow": crankcase.seat_narrow,
    "deck-read": decks.deck_read,
    "shims-pair": decks.shims_pair,
    "crown-filled": decks.crown_filled,
    "crank-at-top": decks.crank_at_top,
    "leak-down-ways": decks.leak_down_ways,
    "rod-marks": rods.rod_marks,
    "rod-directions": rods.rod_directions,
    "big-end-cut": rods.big_end_cut,
    "big-end-places": rods.big_end_places,
    "rods-honed": rods.rods_honed,
    "rod-hung": rods.rod_hung,
    "shell-crush": rods.shell_crush,
    "strip-crushed": rods.strip_crushed,
    "turned-on-arbor": balancing.turned_on_arbor,
    "marks-over-joints": balancing.marks_over_joints,
    "where-metal-comes-off": balancing.where_metal_comes_off,
    "crank-in-blocks": crank.crank_in_blocks,
    "circle-in-worn-journal": crank.circle_in_worn_journal,
    "fillets": crank.fillets,
    "oil-hole-edges": crank.oil_hole_edges,
    "offset-journal": crank.offset_journal,
    "stroke-moves": crank.stroke_moves,
    "shell-wall-read": bearings.shell_wall_read,
    "shell-on-dowel": bearings.shell_on_dowel,
    "shells-worn": bearings.shells_worn,
    "cam-marks": rockers.cam_marks,
    "clay-cut": rockers.clay_cut,
    "half-lift-square": rockers.half_lift_square,
    "tip-marks": rockers.tip_marks,
    "lifter-foot": lifters.lifter_foot,
    "lifter-oil-hole": lifters.lifter_oil_hole,
    "ring-in-groove": lifters.ring_in_groove,
    "pitch-gauge": threads.pitch_gauge,
    "three-wires": threads.three_wires,
    "full-turns": threads.full_turns,
    "drill-square": threads.drill_square,
    "insert-seated": threads.insert_seated,
    "insert-pulled": threads.insert_pulled,
    "torque-oil": threads.torque_oil,
    "torque-order": threads.torque_order,
    "rivet-nut": sheet_metal.rivet_nut,
    "collar-side": sheet_metal.collar_side,
    "fins-measured": sheet_metal.fins_measured,
}


def picture(name: str, sheet: str = engine.DEMO) -> Drawing:
    """A picture with the sizes of an engine's sheet. KeyError, naming those that there are, for an unknown
    one."""
    if name not in PICTURES:
        near = get_close_matches(name, PICTURES, 3)
        hint = f"did you mean {' or '.join(near)}?" if near else f"there are {', '.join(PICTURES)}"
        raise KeyError(f"there is no picture {name!r}; {hint}")
    return PICTURES[name](Sheet(engine.engine(sheet)))


def picture_html(name: str, anchor: str, sheet: str = engine.DEMO) -> Html:
    """The same as a figure with its caption; `anchor` is free on the page."""
    return el(
        "div", figure(picture(name, sheet), anchor), class_="picture", id=anchor, data_search_exclude=True
    )
