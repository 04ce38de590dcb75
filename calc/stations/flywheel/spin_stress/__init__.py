"""Stress in a flywheel of stepped section at its highest speed, against its strength."""

from calc.core.drawing import Axis, Plot, Series
from calc.core.kinds import LENGTH
from calc.core.result import Remark, note, say, warning
from calc.core.working import form
from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.flywheel.section import rings_of
from calc.stations.flywheel.spin_stress.asked import In
from calc.stations.flywheel.spin_stress.disc import Found, found_in
from calc.stations.flywheel.spin_stress.told import Out
from calc.stations.flywheel.spin_stress.verdict import limits_of, verdict_on
from calc.stations.shared.forms import CONTACT

POINTS = 24  # of a curve, in each ring


@calculator(
    "spin-stress",
    "Stress in a spinning flywheel",
    In,
    Out,
    purpose="Does this section bear the highest speed at which it will run?",
    finds=(
        "flywheel burst",
        "burst speed",
        "rotating disc",
        "hoop stress",
        "centrifugal stress",
        "is a lightened flywheel safe",
        "overspeed",
    ),
    sources=(
        sources.STEPPED_DISC,
        sources.FLAT_DISC,
        sources.HALVES,
        sources.MEAN_HOOP,
        sources.KIRSCH,
        sources.MATERIALS,
        sources.PRACTICE,
        sources.INVENTED,
    ),
    cautions=(cautions.FLYWHEEL_BURST, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def spin_stress(i: In) -> Answer:
    """Plane stress in rings of even thickness that share displacement and radial force where they meet,
    both
    edges free; strength by the mean hoop stress and by the greatest, at a hole three times that beside it.

    The ring gear is left out: shrunk on, it holds the rim together. So are corners, bolts, and the heat
    of the
    clutch, which is why the factors are large. Never a reason to run faster than the maker allows.
    """
    rings = rings_of(i.section)
    found = found_in(i, rings)
    return answer(
        *found.told,
        verdict=verdict_on(i, found),
        limits=limits_of(i, found),
        remarks=_remarks_on(i, found),
        figures=lambda: (over_diameter(found),),
    )


def _remarks_on(i: In, found: Found) -> tuple[Remark | None, ...]:
    flat = found.told[9]
    return (
        warning(
            "The greatest stress, {p}, is above the {f} of a flat disc of that bore and outside: a heavy"
            " rim hangs on"
            " a thin web.",
            p=found.peak,
            f=flat,
        )
        if float(found.peak) > 1.02 * float(flat)
        else None,
        note(
            "No holes are told, so one is counted where the stress is greatest: three times as much at"
            " its edge."
        )
        if i.circle is None
        else None,
        note(
            "Not in it: the clutch's heat, which pulls at the friction face as it cools, sharp corners,"
            " and faults in"
            " the casting. That is what the factors are for."
        ),
    )


def over_diameter(found: Found) -> Plot:
    """Hoop and radial stress from the bore to the outside."""
    hoop, radial = [], []
    for n, (inner, outer, _) in enumerate(found.disc.steps):
        for k in range(POINTS + 1):
            there = found.disc.at(inner + (outer - inner) * k / POINTS, n)
            hoop.append((2 * there.radius, there.hoop))
            radial.append((2 * there.radius, there.radial))
    most = found.disc.greatest_hoop()
    return Plot(
        "Stress from bore to rim",
        say(
            "Hoop stress is greatest, {p}, at a diameter of {d}; it jumps where thickness does not.",
            p=found.peak,
            d=found.told[1],
        ),
        Axis("Diameter", form(LENGTH, 0)),
        Axis("Stress", CONTACT),
        (Series("round the disc", tuple(hoop)), Series("outwards", tuple(radial), "dashed")),
        ((2 * most.radius, most.hoop, "greatest"),),
    )
