"""The oil hole of a hydraulic lifter: how much it lets in, and whether that fills it in time."""

from calc.core.result import Remark, note, warning
from calc.declare.calculator import Answer, Limit, answer, calculator
from calc.formulas import small_hole
from calc.reference import cautions, sources
from calc.stations.lifters.oil_hole.asked import In
from calc.stations.lifters.oil_hole.drills import Drills
from calc.stations.lifters.oil_hole.feed import Feed, feed_of
from calc.stations.lifters.oil_hole.told import Out
from calc.stations.lifters.oil_hole.verdict import verdict_on


@calculator(
    "oil-hole",
    "Oil hole of a lifter",
    In,
    Out,
    purpose=(
        "Does this hole let in, at this pressure and heat, what the plunger has lost, in the time that"
        " there is?"
    ),
    finds=(
        "lifter oil feed",
        "drill a lifter for oil",
        "noisy on starting",
        "lifter does not pump up",
        "oil hole size",
        "low oil pressure",
        "orifice flow of oil",
    ),
    sources=(
        sources.HAGEN_POISEUILLE,
        sources.HOLE_LOSS,
        sources.WALTHER,
        sources.OIL_GRADES,
        sources.OIL_GROWTH,
        sources.PRACTICE,
        sources.INVENTED,
    ),
    cautions=(cautions.CUTTING, cautions.HOT_OIL, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def oil_hole(i: In) -> Answer:
    """Steady flow through a short hole, wall friction and edge loss in series.

    The check valve and the way to the hole take nothing. Past a Reynolds number of 2000 the wall's friction
    is more than laminar; in a hole of a few diameters the edge then takes nearly all of the pressure, and in
    a long one less flows than shown.
    """
    feed = feed_of(i)
    drills = Drills(i, feed)
    return answer(
        feed.fill,
        feed.window,
        feed.share,
        feed.running,
        feed.flow,
        feed.reynolds,
        feed.wall_share,
        feed.viscosity,
        verdict=verdict_on(i, feed, drills),
        limits=(
            Limit("the time to fill", feed.share, high=1),
            Limit("the share of the time used", feed.share, high=i.most_share, level="attention"),
            Limit("the time until it is full", feed.running, high=i.most_running, level="attention"),
            Limit("the hole's width beside its groove", i.hole, high=i.groove, level="attention"),
        ),
        remarks=_remarks_on(i, feed),
        tables=lambda: (drills.table(),),
        figures=lambda: (drills.plot(),),
    )


def _remarks_on(i: In, feed: Feed) -> tuple[Remark | None, ...]:
    laminar = feed.reynolds < small_hole.LAMINAR
    oil = (
        "Thick oil: the wall takes {s} of the pressure, so twice the diameter lets in up to sixteen times as"
        " much."
        if feed.wall_share > 0.5
        else "Thin oil: the edge takes most of the pressure and the wall only {s}, so twice the diameter lets"
        " in about four times as much."
    )
    return (
        note(f"{oil} Flow in the hole is {'laminar' if laminar else 'turbulent'}.", s=feed.wall_share),
        warning("In so long a hole friction is higher than that of laminar flow: less flows than shown.")
        if feed.reynolds > small_hole.LAMINAR and float(feed.wall_share) > 0.2
        else None,
        note(
            "Dirt blocks a hole as small as this: blow it through and try it with a pin gauge before it"
            " goes in."
        )
        if float(i.hole) < 1e-3
        else None,
    )
