"""One rod of the set: its bore as an oval through three readings, cut and closed up again, and what cleans it
up."""

from typing import NamedTuple

from calc.core.result import Source
from calc.core.working import Number, constant, sqrt, step
from calc.formulas import split_bore
from calc.reference import sources
from calc.stations.rods.big_end_resize.asked import MIDWAY
from calc.stations.shared.forms import SIZE


class Rod(NamedTuple):
    """One rod as read and as it comes out."""

    name: str
    readings: tuple[Number, ...]
    bore: split_bore.Oval
    cuts: tuple[Number, Number]
    along: Number  # bore along the rod once cut
    clean: Number
    where: float  # direction of the least stock, rad from the rod
    stocks: tuple[Number, Number, Number]  # rod, cap, side
    round: Number
    centre: Number
    lost: Number
    length: Number


def rod_of(
    name: str,
    readings: tuple[Number, ...],
    cut: tuple | None,
    wanted: Number,
    centred: str,
    nominal_length: Number,
) -> Rod:
    """`cut` is what comes off rod and cap, and the centre distance before, which may be None."""
    D_a, D_r, D_l = readings
    a, b, before = cut or _uncut(name)
    bore = split_bore.oval(float(D_a), float(D_r), float(D_l))
    side = _line(name, "D_s", "Bore at the parting line", split_bore.across(D_a, D_r, D_l), sources.TWO_POINT)
    along = _line(name, "D_k", "Bore along the rod, cut", D_a - a - b, sources.SPLIT_BORE)
    c = _centre(name, a, b, centred)
    distance, where = split_bore.farthest(bore, float(a), float(b), float(c))
    reach = constant(
        f"r_{name}",
        f"Farthest place of the bore from the new centre, by trial, rod {name}",
        SIZE,
        distance,
        sources.SPLIT_BORE,
    )
    stocks = _stocks(name, wanted, D_a, side, (a, b), c)
    _, stretch, lean = split_bore.oval(D_a, D_r, D_l)
    return Rod(
        name,
        readings,
        bore,
        (a, b),
        along,
        _line(name, "D_c", "Cleans up at", 2 * reach),
        where,
        stocks,
        _line(name, "e", "Out of round before", 2 * sqrt(stretch**2 + lean**2), sources.TWO_POINT),
        c,
        _line(name, "q", "Centre distance lost", a + c, sources.SPLIT_BORE),
        _line(
            name,
            "L'",
            "Centre distance, then",
            (nominal_length if before is None else before) - a - c,
            sources.SPLIT_BORE,
        ),
    )


def _line(rod: str, symbol: str, label: str, expression: Number, source: Source | None = None) -> Number:
    mark = "," if "_" in symbol else "_"
    return step(f"{symbol}{mark}{rod}", f"{label}, rod {rod}", SIZE, expression, source)


def _uncut(name: str) -> tuple[Number, Number, None]:
    return (
        constant(f"a_{name}", f"Cut off rod {name}", SIZE, 0.0),
        constant(f"b_{name}", f"Cut off cap {name}", SIZE, 0.0),
        None,
    )


def _centre(name: str, a: Number, b: Number, centred: str) -> Number:
    """New centre above the parting line, where a came off the rod and b off its cap."""
    if centred == MIDWAY:
        return _line(name, "c", "New centre above the parting line", (b - a) / 2, sources.SPLIT_BORE)
    return constant(f"c_{name}", f"New centre above the parting line, rod {name}", SIZE, 0.0)


def _stocks(
    name: str, wanted: Number, along: Number, side: Number, cuts: tuple[Number, Number], c: Number
) -> tuple[Number, Number, Number]:
    """To hone off in rod, cap and at the parting line, of a bore that was so wide along the rod and at its
    side before the cuts."""
    a, b = cuts
    smaller = a if a <= b else b
    half = _line(
        name,
        "w",
        "Parting line's farthest edge from the new centre",
        sqrt((side / 2) ** 2 - smaller**2 + c**2),
        sources.SPLIT_BORE,
    )
    return (
        _line(name, "s_r", "To hone off in the rod", wanted / 2 - (along / 2 - a - c)),
        _line(name, "s_c", "To hone off in the cap", wanted / 2 - (along / 2 - b + c)),
        _line(name, "s_p", "To hone off at the parting line", wanted / 2 - half),
    )
