"""The doubt of a reading, source by source."""

from typing import NamedTuple

from calc.core.result import Table
from calc.core.working import Number, Value, constant, step
from calc.formulas import uncertainty
from calc.formulas.warm_reading import GAUGE_ALPHA
from calc.reference import sources
from calc.reference.materials import MATERIALS, Material
from calc.stations.measuring.gauge_uncertainty.asked import MEAN, In
from calc.stations.measuring.gauge_uncertainty.told import MICRO
from calc.stations.shared.forms import ALPHA, SHARE, TIMES

# 1/K, half width: ISO 3650 allows a steel gauge block as much (from memory), and an alloy is known no better
ALPHA_DOUBT = 1e-6
NORMAL, FLAT = "normal", "flat"


class Part(NamedTuple):
    """A line of the budget: the ± in length is u times the divisor."""

    words: str
    u: Number
    shape: str
    divisor: float
    advice: str


def budget_of(i: In, spread: Number, n: Number) -> list[Part]:
    """What repeats, gauge and warmth leave, the repeats first; `spread` is the deviation of `n` readings."""
    part_alpha, gauge_alpha, unknown = _expansions(MATERIALS[i.material])
    return [_repeats(i, spread, n), *_of_the_gauge(i), *_of_warmth(i, part_alpha, gauge_alpha, unknown)]


def _part(symbol: str, words: str, u: Value, shape: str, divisor: Value, advice: str) -> Part:
    named = step(symbol, f"Standard uncertainty: {words[0].lower()}{words[1:]}", MICRO, u, sources.GUM)
    return Part(words, named, shape, float(divisor), advice)


def _expansions(material: Material) -> tuple[Number, Number, Number]:
    """Of the part and of a steel gauge, and how well either is known."""
    return (
        constant("α_p", f"Expansion of {material.name}", ALPHA, material.alpha_20, sources.MATERIALS),
        constant("α_g", "Expansion of a steel gauge", ALPHA, GAUGE_ALPHA, sources.GAUGE_STEEL),
        constant("δ", "Neither expansion is known better than ±", ALPHA, ALPHA_DOUBT, sources.GAUGE_STEEL),
    )


def _repeats(i: In, spread: Number, n: Number) -> Part:
    many = i.reported == MEAN
    return _part(
        "u_r",
        "Repeats",
        uncertainty.of_mean(spread, n) if many else spread,
        NORMAL,
        float(n) ** 0.5 if many else 1,
        "Clean both faces, seek the same drag each time, steady the part; then take more readings.",
    )


def _of_the_gauge(i: In) -> list[Part]:
    """Its step and its paper; once more for a gauge that is set to a ring or a block."""
    resolution, root_3 = uncertainty.resolution, 3**0.5
    parts = [
        _part("u_d", "Step of the gauge", resolution(i.resolution), FLAT, root_3, "Read a finer gauge."),
        _part(
            "u_g",
            "The gauge itself",
            i.calibration / i.coverage,
            NORMAL,
            i.coverage,
            "Take a gauge with a better paper, or set this one to a block near the size.",
        ),
    ]
    if i.master is None:
        return parts
    return [
        *parts,
        _part("u_s", "Step, as it is set", resolution(i.resolution), FLAT, root_3, "Set a finer gauge."),
        _part(
            "u_m",
            "Ring or block",
            i.master / i.coverage,
            NORMAL,
            i.coverage,
            "Set the gauge to a better ring or block.",
        ),
    ]


def _of_warmth(i: In, part_alpha: Number, gauge_alpha: Number, unknown: Number) -> list[Part]:
    return [
        _part(
            "u_a",
            "Part and gauge unequally warm",
            uncertainty.unequal_warmth(i.size, part_alpha, i.apart),
            FLAT,
            3**0.5,
            "Let part and gauge lie side by side for longer, and hold neither in the hand.",
        ),
        _part(
            "u_o",
            "Both off 20 °C",
            uncertainty.room_warmth(i.size, part_alpha, gauge_alpha, unknown, i.off),
            FLAT,
            3**0.5,
            "Read the temperatures, and bring the size to 20 °C.",
        ),
    ]


def table_of(budget: list[Part], total: Number) -> Table:
    """Every source with its share of the variance; `total` is the standard uncertainty of all together."""

    def row(part: Part) -> tuple:
        u = float(part.u)
        return (
            part.words,
            constant("", "", SHARE, (u / float(total)) ** 2),
            part.u,
            constant("", "", MICRO, u * part.divisor),
            constant("", "", TIMES, part.divisor),
            part.shape,
        )

    return Table(
        "What makes the doubt",
        ("Source", "Share", "Standard uncertainty", "±", "Divided by", "Shape"),
        tuple(map(row, budget)),
    )
