"""How good is a reading? The doubt that repeats, gauge and temperature leave, source by source."""

from typing import NamedTuple

from calc.core.kinds import COUNT, LENGTH, RATIO
from calc.core.result import Table, note, say, warning
from calc.core.working import Number, constant, form, step
from calc.declare.calculator import (
    Answer,
    Inputs,
    Output,
    Outputs,
    Rows,
    answer,
    calculator,
    choice,
    column,
    given,
    grid,
    measured,
)
from calc.formulas import uncertainty
from calc.formulas.warm_reading import GAUGE_ALPHA
from calc.reference import cautions, sources
from calc.reference.materials import MATERIALS
from calc.stations.shared.forms import ALPHA, FINE, KELVINS, ROUGH, SHARE, SIZE, TIMES

MICRO = form(LENGTH, 2, "µm", "µin")
PROBABILITY = 0.95
GOOD = 0.25  # common practice: the expanded doubt no more than a quarter of the tolerance
HOPELESS = (
    0.5 / 1.96
)  # standard uncertainty over tolerance: past it no reading, not even in the middle, is within at 95 %
ALPHA_DOUBT = 1e-6  # 1/K, half width: ISO 3650 allows a steel gauge block as much (from memory), and a part's alloy is known no better
MEAN, ONE = "mean", "one"


class Out(Outputs):
    mean = Output("Mean of readings", "x", SIZE, main=True)
    expanded = Output("Doubt at 95 %, ±", "U", FINE, main=True)
    of_tolerance = Output("Takes of the tolerance", "U_T", SHARE, main=True)
    standard = Output("Standard uncertainty, all together", "u_c", MICRO)
    spread = Output("Spread of single readings (standard deviation)", "s", MICRO)
    freedom = Output("Effective degrees of freedom, a million at most", "ν_eff", form(RATIO, 1))
    factor = Output("Coverage factor for 95 %", "k", TIMES)


class In(Inputs):
    readings: Rows = grid(
        "Readings",
        rows=tuple(map(str, range(1, 11))),
        columns=(column("Reading", "x", SIZE, hard="-2000 to 2000 mm"),),
        least=2,
        tool="the gauge lifted off and set anew each time",
        hint="All at the same place of the same part. Five are good, ten are better.",
        example="54.992 | 54.994 | 54.993 | 54.993 | 54.995",
    )
    tolerance: Number = given(
        "Tolerance to be judged with it",
        "T",
        SIZE,
        hard="0.0001 to 100 mm",
        hint="Upper less lower limit.",
        example="0.015 mm",
    )
    resolution: Number = given(
        "Smallest step of the gauge",
        "r",
        FINE,
        hard="0.00001 to 1 mm",
        usual="0.0001 to 0.02 mm",
        hint="What you can read: half a division if you estimate halves.",
        example="0.001 mm",
    )
    calibration: Number = given(
        "Doubt of the gauge, ±",
        "U_g",
        FINE,
        hard="0 to 1 mm",
        usual="0.0005 to 0.03 mm",
        hint="From its calibration paper, or its permitted error.",
        example="0.002 mm",
    )
    master: Number | None = given(
        "Doubt of ring or block that it is set to, ±",
        "U_m",
        FINE,
        hard="0 to 1 mm",
        hint="For a gauge that is set before it is used.",
    )
    size: Number = measured(
        "Size of the part",
        "L",
        ROUGH,
        tool="whatever is at hand",
        hard="0.1 to 2000 mm",
        hint="What warmth makes grow; a gauge may show a difference only.",
        example="55.0 mm",
    )
    apart: Number = given(
        "Part and gauge may differ by, ±",
        "Δ",
        KELVINS,
        hard="0 to 40 K",
        usual="0.2 to 5 K",
        fold=True,
        assumed=("1 K", "after a while side by side; common practice, no source"),
        hint="After an hour side by side 0.5 K; held in the hand 3 K and more; common practice, no source.",
    )
    off: Number = given(
        "Both may be off 20 °C by, ±",
        "θ",
        KELVINS,
        hard="0 to 40 K",
        usual="0.5 to 15 K",
        fold=True,
        assumed=("3 K", "a heated shop; common practice, no source"),
        hint="Uncorrected. Zero if you bring the size to 20 °C.",
    )
    material: str = choice(
        "Material of the part", {id: m.name for id, m in MATERIALS.items()}, must=True, example="forged-steel"
    )
    reported: str = choice(
        "What is written down",
        {MEAN: "The mean of these readings", ONE: "One reading, taken like these"},
        default=MEAN,
    )
    coverage: Number = given(
        "Coverage factor of both papers",
        "k_g",
        TIMES,
        hard="1 to 4",
        usual="1.7 to 3.2",
        fold=True,
        assumed=("2", "as calibration papers state it"),
        hint="2 unless the paper says another.",
    )


@calculator(
    "gauge-uncertainty",
    "How good is this reading?",
    In,
    Out,
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
    """Standard uncertainties of independent sources, their root sum of squares, and Student's factor for 95 % with Welch and
    Satterthwaite's degrees of freedom. Only the repeats have few of these; papers and estimates are taken as sure of themselves.
    """
    x = [row[0] for row in i.readings if row is not None]
    n = constant("n", "Readings", form(COUNT, 0), len(x))
    mean = Out.mean(uncertainty.mean(x))
    spread = Out.spread(uncertainty.spread(x, mean), sources.GUM)
    part_alpha = constant(
        "α_p",
        f"Expansion of {MATERIALS[i.material].name}",
        ALPHA,
        MATERIALS[i.material].alpha_20,
        sources.MATERIALS,
    )
    gauge_alpha = constant("α_g", "Expansion of a steel gauge", ALPHA, GAUGE_ALPHA, sources.GAUGE_STEEL)
    unknown = constant(
        "δ", "Neither expansion is known better than ±", ALPHA, ALPHA_DOUBT, sources.GAUGE_STEEL
    )
    many = i.reported == MEAN

    def part(symbol, words, u, shape, divisor, advice):
        return Part(
            words,
            step(symbol, f"Standard uncertainty: {words[0].lower()}{words[1:]}", MICRO, u, sources.GUM),
            shape,
            float(divisor),
            advice,
        )

    repeats = part(
        "u_r",
        "Repeats",
        uncertainty.of_mean(spread, n) if many else spread,
        "normal",
        len(x) ** 0.5 if many else 1,
        "Clean both faces, seek the same drag each time, steady the part; then take more readings.",
    )
    parts = [
        repeats,
        part(
            "u_d",
            "Step of the gauge",
            uncertainty.resolution(i.resolution),
            "flat",
            3**0.5,
            "Read a finer gauge.",
        ),
        part(
            "u_g",
            "The gauge itself",
            i.calibration / i.coverage,
            "normal",
            i.coverage,
            "Take a gauge with a better paper, or set this one to a block near the size.",
        ),
        *(
            ()
            if i.master is None
            else (
                part(
                    "u_s",
                    "Step, as it is set",
                    uncertainty.resolution(i.resolution),
                    "flat",
                    3**0.5,
                    "Set a finer gauge.",
                ),
                part(
                    "u_m",
                    "Ring or block",
                    i.master / i.coverage,
                    "normal",
                    i.coverage,
                    "Set the gauge to a better ring or block.",
                ),
            )
        ),
        part(
            "u_a",
            "Part and gauge unequally warm",
            uncertainty.unequal_warmth(i.size, part_alpha, i.apart),
            "flat",
            3**0.5,
            "Let part and gauge lie side by side for longer, and hold neither in the hand.",
        ),
        part(
            "u_o",
            "Both off 20 °C",
            uncertainty.room_warmth(i.size, part_alpha, gauge_alpha, unknown, i.off),
            "flat",
            3**0.5,
            "Read the temperatures, and bring the size to 20 °C.",
        ),
    ]
    total = Out.standard(uncertainty.combined([p.u for p in parts]), sources.GUM)
    freedom = Out.freedom(uncertainty.effective_freedom(total, [(repeats.u, n - 1)]), sources.GUM)
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
    worst = max(parts, key=lambda p: float(p.u))
    return answer(
        mean,
        expanded,
        share,
        total,
        spread,
        freedom,
        factor,
        verdict=_verdict(many, mean, expanded, share, float(total) > float(i.tolerance) * HOPELESS, worst),
        remarks=(
            (
                note(
                    "All readings are alike: the step of the gauge hides what spread there is, and stands in"
                    " for it."
                )
                if len(set(map(float, x))) == 1
                else None
            ),
            (
                note(
                    "With {n} readings the spread itself is not well known, hence a factor of {k} instead"
                    " of 2.",
                    n=n,
                    k=factor,
                )
                if factor > 2.2
                else None
            ),
            (
                warning(
                    "The readings are near {x}, and the size of the part is given as {size}: which is right?",
                    x=mean,
                    size=i.size,
                )
                if float(mean) > float(i.size) / 2 and abs(float(mean - i.size)) > 0.1 * float(i.size)
                else None
            ),
            note(
                "Does not know the form of the part, dirt, or a bent gauge. A reading at another place is"
                " another size."
            ),
        ),
        tables=(
            Table(
                "What makes the doubt",
                ("Source", "Share", "Standard uncertainty", "±", "Divided by", "Shape"),
                tuple(
                    (
                        p.words,
                        constant("", "", SHARE, (float(p.u) / float(total)) ** 2),
                        p.u,
                        constant("", "", MICRO, float(p.u) * p.divisor),
                        constant("", "", TIMES, p.divisor),
                        p.shape,
                    )
                    for p in parts
                ),
            ),
        ),
    )


class Part(NamedTuple):
    """A line of the budget: the ± in length is u times the divisor."""

    words: str
    u: Number
    shape: str
    divisor: float
    advice: str


def _verdict(many, mean, expanded, share, hopeless, worst):
    if hopeless:
        return (
            "fail",
            say("Too coarse: takes {s} of the tolerance", s=share),
            say(
                "With this doubt no reading could be accepted. Most of it comes from “{words}”. {advice}",
                words=worst.words.lower(),
                advice=worst.advice,
            ),
        )
    if share > GOOD:
        return (
            "attention",
            say("Coarse: takes {s} of the tolerance", s=share),
            say(
                "Use it well inside the limits only. Most of the doubt comes from “{words}”. {advice}",
                words=worst.words.lower(),
                advice=worst.advice,
            ),
        )
    return (
        "pass",
        say("Good to ± {U}", U=expanded),
        say(
            (
                "Write it behind the reading, {x} ± {U}; every calculator takes it so."
                if many
                else "Write ± {U} behind the one reading; every calculator takes it so."
            ),
            x=mean.shown(4),
            U=expanded,
        ),
    )
