"""What is checked of any engine, whatever was worked on."""

from calc.core.result import as_text
from calc.job.view import View
from calc.stations.shared.checks import Check


def passages_clean(view: View) -> Check | None:
    return Check(
        "Every passage clean",
        "Metal left by machining goes through the bearings first.",
        as_text(
            "Flush and blow through every oil hole and blind thread until a white rag stays white."
            " Goggles on."
        ),
        home="Bottle brush and pipe cleaners, hot water with washing-up liquid or a solvent, a lamp: light"
        " shows through each straight passage, and the last rag comes out white.",
    )


def parts_in_their_places(view: View) -> Check | None:
    if not view.any("rod", "valve", "head", "piston", "crankcase", "lifter"):
        return None
    return Check(
        "Each part to its own place",
        "They were sized to each other.",
        as_text(
            "Lay them out by their numbers; caps on their own rods, numbers together."
            if view.has("rod")
            else "Lay them out by their numbers."
        ),
        home="Egg boxes, bags and a felt pen: nothing lies on the bench without its number.",
    )


def turned_through(view: View) -> Check | None:
    oil = (
        "oil pressure made by a hand pump: new or refaced lifter feet are not cranked"
        if view.any("lifter", "cam")
        else "turned by the starter without ignition until there is oil pressure"
    )
    return Check(
        "Turned through by hand",
        "A tight spot that you feel now is a seized part later.",
        as_text(f"Two whole turns, plugs out. Then oil in, and {oil}."),
        home="A spanner on the crank's nut: the same pull all the way round, no click, no scrape.",
    )
