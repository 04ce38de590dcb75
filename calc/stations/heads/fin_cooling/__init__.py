"""Fins of two castings compared: how well each fin works, what area is really at work, and the heat that it
sheds."""

from calc.core.result import Table
from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.heads.fin_cooling.asked import CASTINGS, In
from calc.stations.heads.fin_cooling.comparison import compared
from calc.stations.heads.fin_cooling.drawing import heat_plot, three_fins_of_each
from calc.stations.heads.fin_cooling.told import Out
from calc.stations.heads.fin_cooling.verdict import limits_of, remarks_on, verdict_on


@calculator(
    "fin-cooling",
    "Fins of two castings",
    In,
    Out,
    purpose=(
        "Does a casting with more or longer fins shed more heat, by how much, and what must the air do"
        " for it?"
    ),
    finds=(
        "cooling fins",
        "fin efficiency",
        "fin area",
        "more fin",
        "cylinder fins",
        "head fins",
        "cooling of a casting",
        "heat shed",
    ),
    sources=(
        sources.FINS,
        sources.COOLING_AIR,
        sources.SAME_PRESSURE,
        sources.MATERIALS,
        sources.PRACTICE,
        sources.INVENTED,
    ),
    cautions=(cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def fin_cooling(i: In) -> Answer:
    """One-dimensional conduction along straight fins of even thickness, one coefficient over the whole of
    each casting.

    The coefficient is the weak part: it hangs on fan, baffles and gap, and is known to a fifth at best, so
    compare two castings rather than believe the watts. Fin end faces and what the walls radiate are left out.
    The air warms along its way; how much of it comes hangs on the fan, between two bounds: as fast through
    the other's gaps, or under no more pressure than before.
    """
    found = compared(i)
    this, other = found.this, found.other
    return answer(
        found.change,
        found.change_least,
        this.heat,
        other.heat,
        this.warmer,
        other.warmer,
        found.speed_other,
        this.efficiency,
        other.efficiency,
        this.overall,
        other.overall,
        this.area,
        other.area,
        this.effective,
        other.effective,
        found.even,
        found.may_fall,
        verdict=verdict_on(i, found),
        limits=limits_of(i, found),
        remarks=remarks_on(i, found),
        tables=lambda: (
            Table(
                "Both castings",
                ("Casting", "Fin efficiency", "At work", "Per kelvin", "Air leaves warmer by"),
                tuple(
                    (name, one.efficiency, one.effective, one.per_kelvin, one.warmer)
                    for name, one in zip(CASTINGS, (this, other))
                ),
            ),
        ),
        figures=lambda: (
            three_fins_of_each(this.fins, other.fins),
            heat_plot(this, other, i.width, found.even),
        ),
    )
