"""How good is a reading? The doubt that repeats, gauge and temperature leave, source by source."""

from calc.core.kinds import COUNT
from calc.core.result import Limit, Remark, note, warning
from calc.core.working import Number, constant, form
from calc.declare.calculator import Answer, answer, calculator
from calc.formulas import uncertainty
from calc.reference import cautions, sources
from calc.stations.measuring.gauge_uncertainty.asked import In
from calc.stations.measuring.gauge_uncertainty.budget import budget_of, table_of
from calc.stations.measuring.gauge_uncertainty.told import Out
from calc.stations.measuring.gauge_uncertainty.verdict import GOOD, verdict_on
from calc.stations.shared.forms import TIMES

PROBABILITY = 0.95


@calculator(
    "gauge-uncertainty",
    "How good is this reading?",
    In,
    Out,
    about_doubt=True,
    purpose="Which doubt goes with a size that was read several times, and what makes most of it?",
    finds=(
        "measurement uncertainty",
        "uncertainty budget",
        "repeatability",
        "gauge capability",
        "Welch-Satterthwaite",
        "coverage factor",
        "how accurate is my micrometer",
    ),
    sources=(sources.GUM, sources.GAUGE_STEEL, sources.PRACTICE, sources.MATERIALS),
    cautions=(cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def gauge_uncertainty(i: In) -> Answer:
    """Standard uncertainties of independent sources, their root sum of squares, and Student's t for 95 %.

    Degrees of freedom are Welch and Satterthwaite's. Only the repeats have few of these; papers and estimates
    are taken as sure of themselves.
    """
    readings = [row[0] for row in i.readings if row is not None]
    n = constant("n", "Readings", form(COUNT, 0), len(readings))
    mean = Out.mean(uncertainty.mean(readings))
    spread = Out.spread(uncertainty.spread(readings, mean), sources.GUM)
    budget = budget_of(i, spread, n)
    total = Out.standard(uncertainty.combined([part.u for part in budget]), sources.GUM)
    freedom = Out.freedom(uncertainty.effective_freedom(total, [(budget[0].u, n - 1)]), sources.GUM)
    factor = Out.factor(
        constant(
            "t_95",
            "Student's t for 95 %",
            TIMES,
            uncertainty.coverage_factor(PROBABILITY, float(freedom)),
            sources.GUM,
        )
    )
    expanded = Out.expanded(factor * total, sources.GUM)
    share = Out.of_tolerance(expanded / i.tolerance)
    return answer(
        mean,
        expanded,
        share,
        total,
        spread,
        freedom,
        factor,
        verdict=verdict_on(i, mean, expanded, share, total, budget),
        decides=(Limit("the share of the tolerance", share, high=GOOD, level="attention"),),
        remarks=_remarks_on(i, readings, n, mean, factor),
        tables=lambda: (table_of(budget, total),),
    )


def _remarks_on(
    i: In, readings: list[Number], n: Number, mean: Number, factor: Number
) -> tuple[Remark | None, ...]:
    return (
        note(
            "All readings are alike: the step of the gauge hides what spread there is, and stands in for it."
        )
        if len(set(map(float, readings))) == 1
        else None,
        note(
            "With {n} readings the spread itself is not well known, hence a factor of {k} instead of 2.",
            n=n,
            k=factor,
        )
        if factor > 2.2
        else None,
        warning(
            "The readings are near {x}, and the size of the part is given as {size}: which is right?",
            x=mean,
            size=i.size,
        )
        if float(mean) > float(i.size) / 2 and abs(float(mean - i.size)) > 0.1 * float(i.size)
        else None,
        note(
            "The shape of the part, dirt and a bent gauge are not in it. A reading at another place is"
            " another size."
        ),
    )
