"""The oil hole of a hydraulic lifter: how much it lets in, and whether the lifter is filled in the time that there is."""

import math

from calc.core.drawing import Axis, Plot, Series
from calc.core.kinds import AREA, VOLUME
from calc.core.result import Table, note, say, warning
from calc.core.working import constant, form, step
from calc.declare.calculator import Answer, Limit, answer, calculator
from calc.formulas import annular_gap, small_hole
from calc.reference import cautions, sources
from calc.stations.lifters.oil_hole.asked import In
from calc.stations.lifters.oil_hole.told import FLOWS, MILLIS, TENTH_SHARE, Out
from calc.stations.shared.forms import COARSE, DEGREES, SECONDS
from calc.stations.shared.oil_at import Points, oil_at

FULL_TURN, CYCLE = (constant("", "", DEGREES, turns * 2 * math.pi) for turns in (1, 2))


HOLES = (0.5e-3, 0.8e-3, 1.0e-3, 1.2e-3, 1.5e-3, 2.0e-3)  # m: drills at hand


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
    """Steady flow through a short hole, wall friction and edge loss in series; the check valve and the way to the hole take nothing.

    Past a Reynolds number of 2000 the wall's friction is more than laminar; in a hole of a few diameters the edge then takes nearly all
    of the pressure, and in a long one less flows than shown.
    """
    _, µ, ρ = oil_at(
        i.oil,
        i.oil_temperature,
        Points(i.cool_temperature, i.cool_viscosity, i.warm_temperature, i.warm_viscosity),
        i.density,
        Out.viscosity,
    )
    by_wall = step(
        "Q_w",
        "Flow that the wall alone would let through",
        FLOWS,
        small_hole.wall_flow(i.hole, i.wall, µ, i.pressure),
        sources.HAGEN_POISEUILLE,
    )
    by_edge = step(
        "Q_e",
        "Flow that the edge alone would let through",
        FLOWS,
        small_hole.edge_flow(i.hole, ρ, i.pressure, i.discharge),
        sources.HOLE_LOSS,
    )
    flow = Out.flow(small_hole.flow(by_wall, by_edge), sources.HOLE_LOSS)
    wall_share = Out.wall_share(flow / by_wall)
    reynolds = Out.reynolds(small_hole.reynolds(flow, i.hole, ρ, µ))
    area = step("A", "Area of the plunger", form(AREA, 1), annular_gap.plunger_area(i.plunger))
    lost = step("V", "Oil lost in one opening", form(VOLUME, 5), area * i.sink)
    fill = Out.fill_time(lost / flow)
    window = Out.window(i.meeting / FULL_TURN / i.speed)
    share = Out.share(fill / window)
    running = Out.running_time(i.empty / flow * (CYCLE / i.meeting))

    def by(d):
        """(flow, share of the time, running until full) of a hole of that diameter; nothing else changed."""
        q = small_hole.flow(
            small_hole.wall_flow(d, *map(float, (i.wall, µ, i.pressure))),
            small_hole.edge_flow(d, *map(float, (ρ, i.pressure, i.discharge))),
        )
        return q, float(lost) / q / float(window), float(running) * float(flow) / q

    def serves(d):
        _, used, until = by(d)
        return used <= float(i.most_share) and until <= float(i.most_running) and d < float(i.groove)

    fitting = [d for d in HOLES if serves(d)]
    best, which = (max, "largest") if i.hole >= i.groove else (min, "smallest")
    other = (
        say(
            "Of the usual drills {d} is the " + which + " that serves.",
            d=constant("", "", COARSE, best(fitting)),
        )
        if fitting
        else "No usual drill serves: more oil pressure, or less leak at the plunger."
    )
    if share > 1:
        verdict = (
            "fail",
            say(
                "Starves: needs {t}, has {w}",
                t=fill.held_to(None, float(window)),
                w=window.held_to(float(fill), None),
            ),
            say("It goes down a little more each turn, and collapses. {other}", other=other),
        )
    elif share > i.most_share:
        verdict = (
            "attention",
            say("Barely fills: {s} of the time used", s=share),
            say("A worn plunger would starve it. {other}", other=other),
        )
    elif running > i.most_running:
        verdict = (
            "attention",
            say("Slow to fill: {t} of running", t=running),
            say("It stays noisy that long after it has run empty. {other}", other=other),
        )
    elif i.hole >= i.groove:
        verdict = (
            "attention",
            say("Hole {d} as wide as its groove", d=i.hole),
            say(
                "Its edges weaken the body and drain the groove as it passes the bore's end. {other}",
                other=other,
            ),
        )
    else:
        verdict = (
            "pass",
            say("Fills in {t} of {w}", t=fill, w=window),
            "Drill it, take off the burr inside as well, and see that it stays in the case at full lift.",
        )
    return answer(
        fill,
        window,
        share,
        running,
        flow,
        reynolds,
        wall_share,
        µ,
        verdict=verdict,
        limits=(
            Limit("the time to fill", share, high=1),
            Limit("the share of the time used", share, high=i.most_share, level="attention"),
            Limit("the time until it is full", running, high=i.most_running, level="attention"),
            Limit("the hole's width beside its groove", i.hole, high=i.groove, level="attention"),
        ),
        remarks=(
            note(
                (
                    "Thick oil: the wall takes {s} of the pressure, so twice the diameter lets in up to"
                    " sixteen times as much."
                    if wall_share > 0.5
                    else (
                        "Thin oil: the edge takes most of the pressure and the wall only {s}, so twice the"
                        " diameter lets in about four times as much."
                    )
                )
                + " Flow in the hole is "
                + ("laminar." if reynolds < small_hole.LAMINAR else "turbulent."),
                s=wall_share,
            ),
            (
                warning("So long a hole has more friction than laminar flow has: less flows than shown.")
                if reynolds > small_hole.LAMINAR and float(wall_share) > 0.2
                else None
            ),
            (
                note(
                    "Dirt does what size does not: a hole this small is blown through and pinned before it"
                    " goes in."
                )
                if float(i.hole) < 1e-3
                else None
            ),
        ),
        tables=(_table(by, serves, float(i.most_share)),),
        figures=(_plot(by, float(i.hole), fill, window),),
    )


def _table(by, serves, most_share) -> Table:
    rows, states = [], []
    for d in HOLES:
        q, used, until = by(d)
        rows.append(
            tuple(
                constant("", "", shape, x)
                for shape, x in ((COARSE, d), (FLOWS, q), (TENTH_SHARE, used), (SECONDS, until))
            )
        )
        states.append("pass" if serves(d) else "fail" if used > 1 else "attention")
    return Table(
        "Other drills",
        ("Hole", "Flow", "Share of the time", "Until an empty one is full"),
        tuple(rows),
        tuple(states),
    )


def _plot(by, hole, fill, window) -> Plot:
    """Time to fill over the hole's diameter."""
    sizes = [hole * (0.6 + 0.05 * i) for i in range(21)]
    return Plot(
        "Time to fill against the hole",
        say("{t} for this hole, out of {w}.", t=fill, w=window),
        Axis("Hole", COARSE),
        Axis("Time to fill", MILLIS),
        (Series("", tuple((d, by(d)[1] * float(window)) for d in sizes)),),
        ((hole, float(fill), "this one"),),
    )
