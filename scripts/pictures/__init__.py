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
from scripts.pictures import chambers, measuring, rods, seats, springs, valves
from scripts.pictures.sheet import Sheet

PICTURES: dict[str, Callable[[Sheet], Drawing]] = {
    "bore-gauge-rocked": measuring.bore_gauge_rocked,
    "bore-places": measuring.bore_places,
    "pocket-places": measuring.pocket_places,
    "journal-places": measuring.journal_places,
    "micrometer-square": measuring.micrometer_square,
    "valve-rocked": valves.valve_rocked,
    "valve-margin": valves.valve_margin,
    "valve-rolled": springs.valve_rolled,
    "stem-height": valves.stem_height,
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
    "chamber-filled": chambers.chamber_filled,
    "sealing-step": chambers.sealing_step,
    "guide-boss": chambers.guide_boss,
    "port-step": chambers.port_step,
    "leak-ways": chambers.leak_ways,
    "rod-directions": rods.rod_directions,
    "big-end-places": rods.big_end_places,
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
