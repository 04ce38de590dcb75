"""Tables for pages: standards, materials and shop practice, worked by the same code as the calculators.

    /// table | iso-286 holes
    ///

A new table is one function in `TABLES`. Cells are bare numbers; the unit stands once, in the head.
"""

from collections.abc import Callable

from calc.core.kinds import EXPANSION, LENGTH, MODULUS
from calc.core.reading import in_si
from calc.core.result import Table
from calc.core.working import Form, form
from calc.formulas.screw_threads import FULL_CUT, drill_for
from calc.page.html import Html, both, children, el
from calc.reference.materials import MATERIALS, REFERENCE
from calc.reference.standards import drills, iso_286
from calc.reference.standards.threads import THREADS, Zone, external, internal

EDGE, DEVIATION, SIZE = form(LENGTH, 0, "mm", "in"), form(LENGTH, 0, "µm", "thou"), form(LENGTH, 3)
SMALLEST, LARGEST = 3, 180  # mm: from a valve stem to the largest bore of an engine like these
HOLES = ("G7", "H6", "H7", "H8", "K7", "N7", "P7")
SHAFTS = ("f7", "g6", "h6", "k6", "n6", "p6", "r6", "s6", "u6")
ENGINE_THREADS = (
    "M6x1",
    "M7x1",
    "M8x1.25",
    "M8x1",
    "M9x1",
    "M10x1.5",
    "M10x1.25",
    "M10x1",
    "M12x1.75",
    "M12x1.5",
    "M12x1.25",
    "M14x1.5",
    "M14x1.25",
    "M16x1.5",
    "M18x1.5",
    "10-24",
    "10-32",
    "1/4-20",
    "1/4-28",
    "5/16-18",
    "5/16-24",
    "3/8-16",
    "3/8-24",
    "7/16-14",
    "7/16-20",
    "1/2-13",
    "1/2-20",
)
TAP_SHARE = 0.75  # of full thread, common practice, no source
# common practice, no source
UNDERSIZES = ("0.25 mm", "0.50 mm", "0.75 mm", "1.00 mm", "0.010 in", "0.020 in", "0.030 in", "0.040 in")


def iso_286_holes() -> Table:
    return _limits("Limits of holes, from the nominal size", HOLES)


def iso_286_shafts() -> Table:
    return _limits("Limits of shafts, from the nominal size", SHAFTS)


def it_grades() -> Table:
    rows = []
    for low, high in zip(iso_286.BANDS, iso_286.BANDS[1:]):
        rows.append(
            (
                _band(low, high),
                *(
                    _bare(DEVIATION, iso_286.standard_tolerance(grade, high / 1000))
                    for grade in iso_286.GRADES
                ),
            )
        )
    return Table(
        "Standard tolerances", (_head("Over, to"), *(f"IT{grade}" for grade in iso_286.GRADES)), tuple(rows)
    )


def materials() -> Table:
    """Expansion from 20 to 100 °C, and what that does to 50 mm in 10 K."""
    expansion, stiffness, rise = form(EXPANSION, 1), form(MODULUS, 0), 10
    rows = [
        (
            m.name,
            _bare(expansion, m.alpha),
            _bare(DEVIATION, 0.05 * m.strain_at(REFERENCE + rise)),
            _bare(stiffness, m.E),
        )
        for m in MATERIALS.values()
    ]
    return Table(
        "Materials: typical values",
        (
            "Material",
            _with_unit("Expansion,", expansion),
            children(
                both("50 mm grow in 10 K,", "1.969 in grow in 18 °F,"),
                " ",
                both(DEVIATION.metric.symbol, DEVIATION.inch.symbol),
            ),
            _with_unit("Stiffness,", stiffness),
        ),
        tuple(rows),
        sortable=True,
    )


def undersizes() -> Table:
    rows = []
    for called in UNDERSIZES:
        less = in_si(called, LENGTH)
        rows.append(
            (called.replace(" ", "\u00a0"), _bare(SIZE, less), _bare(SIZE.with_decimals(4), less / 2))
        )
    return Table(
        "Regrind undersizes",
        (
            "Called",
            _with_unit("Journal smaller by,", SIZE),
            _with_unit("Off each side, and shell wall thicker by,", SIZE),
        ),
        tuple(rows),
    )


def threads() -> Table:
    """Limits of bolt and hole in the usual classes, and the drill that leaves three quarters of thread, of
    either list."""
    rows = []
    for name in ENGINE_THREADS:
        thread = THREADS[name]
        bolt, hole = (
            (external(thread, "6g"), internal(thread, "6H"))
            if thread.system == "metric"
            else (external(thread, "2A"), internal(thread, "2B"))
        )
        ideal = drill_for(thread.d, thread.P, TAP_SHARE, FULL_CUT)
        drill = both(*(_drill(float(ideal), which, hole.minor) for which in ("metric", "inch")))
        rows.append(
            (
                thread.words.removesuffix(" coarse"),
                drill,
                *(_span(zone) for zone in (hole.minor, hole.pitch, bolt.major, bolt.pitch)),
            )
        )
    return Table(
        "Threads of engines: 6g and 6H, or 2A and 2B",
        (
            "Thread",
            "Tap drill",
            *(
                _with_unit(words, SIZE)
                for words in ("Hole, bore", "Hole, pitch diameter", "Bolt, outside", "Bolt, pitch diameter")
            ),
        ),
        tuple(rows),
    )


TABLES: dict[str, Callable[[], Table]] = {
    "iso-286 holes": iso_286_holes,
    "iso-286 shafts": iso_286_shafts,
    "it-grades": it_grades,
    "materials": materials,
    "undersizes": undersizes,
    "threads": threads,
}


def _drill(ideal: float, which: str, hole: Zone) -> str:
    """The drill of a list next to the ideal size, within the hole's limits."""
    low, high = hole.low, hole.high
    assert low is not None and high is not None, "a hole's minor diameter has two limits"
    chosen = drills.choose(ideal, which, lambda size: low - 1e-10 <= size <= high + 1e-10)
    return chosen.name.replace(" ", "\u00a0")


def _limits(title: str, names: tuple[str, ...]) -> Table:
    """Upper over lower limit of each class; bands in which all of them are alike stand as one row."""
    rows, low, until = [], SMALLEST, SMALLEST
    last: list | None = None
    bands = [edge for edge in iso_286.SPLIT_BANDS if SMALLEST < edge <= LARGEST]
    for high in (*bands, 0):  # behind the last, nothing is alike
        zones = [iso_286.zone(name, high / 1000) for name in names] if high else None
        if last and zones != last:
            rows.append(
                (
                    _band(low, until),
                    *(
                        children(_bare(DEVIATION, z.upper, True), el("br"), _bare(DEVIATION, z.lower, True))
                        for z in last
                    ),
                )
            )
            low = until
        last, until = zones, high
    return Table(title, (_head("Over, to"), *names), tuple(rows))


def _head(words: str) -> Html:
    """Head of the column of sizes: their unit, and that of the limits beside them."""
    return children(
        words,
        " ",
        both(EDGE.metric.symbol, EDGE.inch.symbol),
        el("small", both(f"limits in {DEVIATION.metric.symbol}", f"limits in {DEVIATION.inch.symbol}")),
    )


def _band(low: int, high: int) -> Html:
    return both(
        *("–".join(EDGE.bare(edge / 1000, system) for edge in (low, high)) for system in ("metric", "inch"))
    )


def _bare(shape: Form, value: float, signed: bool = False) -> Html:
    """A value without its unit, in both systems; `signed` shows a plus too."""
    plus = "+" if signed and value > 0 else ""
    return both(*(plus + shape.bare(value, system) for system in ("metric", "inch")))


def _span(zone: Zone) -> Html:
    """Least and most of a diameter that has both."""
    assert zone.low is not None and zone.high is not None
    return children(_bare(SIZE, zone.low), "–", _bare(SIZE, zone.high))


def _with_unit(words: str, shape: Form) -> Html:
    return children(words, " ", both(shape.metric.symbol, shape.inch.symbol))
