"""What is checked of lifters before an engine is closed, and of their valves once it is."""

from calc.core.result import as_text
from calc.job.view import View
from calc.stations.shared.checks import Check, asked, size_check


def free_in_the_case(view: View) -> Check | None:
    if not view.has("lifter", "crankcase"):
        return None
    return size_check(
        view,
        "Lifters free in the case",
        "One that sticks holds its valve open.",
        "Each oiled, in its own bore: it must sink by its own weight and turn.",
        "lifter.clearance",
        "crankcase.lifter_bore",
        "lifter.body",
        home="A drop of clean oil and a finger: each sinks slowly by itself, turns, and comes out without"
        " force.",
    )


def lash_or_travel(view: View) -> Check | None:
    if not view.has("lifter") or not view.any("head", "valve"):
        return None
    preload = view.feature("lifter.preload")
    if preload is None or not any(
        feature in ("lifter.preload", "lifter.travel", "lifter.unit_outside") for feature, *_ in view.now
    ):  # no plunger units here
        return size_check(
            view,
            "Valve lash",
            "Too little burns the valve, too much wears the cam.",
            "Cold, each cylinder at the top of its compression.",
            "lifter.lash",
            home="Feeler gauges: the leaf just drags, the next thicker one does not go in.",
        )
    row = view.worst(preload.id)
    place = row.place if row else ""
    entries = {name: view.text(f"lifter.{name}", place) for name in ("preload", "travel", "pushrod")}
    state, said = view.judged("lifter.preload", "lifter.travel")
    return Check(
        "Plungers off both stops",
        "A plunger on its stop holds the valve open or rattles.",
        as_text("Each lifter on its base circle, bled down: how far its plunger is pressed in."),
        preload.tool,
        "plunger-travel",
        {name: text for name, text in entries.items() if text},
        () if row else ("preload",),
        ("lifter.preload", "lifter.travel", "lifter.pushrod"),
        state,
        said,
        place,
        home="The depth rod of a calliper on the plunger, bled down: once at rest, once with the rocker in"
        " place.",
        **asked(view, preload.id),
    )
