"""What is asked of a crushed plastic strip: the scale on its packet, its width, and what it is held to."""

from typing import NamedTuple

from calc.core.result import impossible
from calc.core.working import Number
from calc.declare.calculator import Inputs, Rows, column, given, grid, limit, measured
from calc.stations.crank import shells
from calc.stations.crank.shells import MAIN, ROD
from calc.stations.shared.forms import COARSE, SIZE

MARKS = tuple(f"mark {n}" for n in range(1, 9))
IF_MAIN, IF_ROD = ("bearing", MAIN), ("bearing", ROD)


class In(Inputs):
    bearing: str = shells.which_bearing(ROD)
    scale: Rows = grid(
        "Scale printed on the packet",
        MARKS,
        (
            column("Clearance", "c", SIZE, hard="0.005 to 1 mm", usual="0.015 to 0.25 mm"),
            column("Width", "w", COARSE, hard="0.2 to 25 mm", usual="0.5 to 8 mm"),
        ),
        least=2,
        tool="a calliper on the printed bars",
        hint="Of this very packet: another strip is of another thickness. Any two marks or more.",
        example="0.025; 2.83 | 0.038; 1.86 | 0.051; 1.39 | 0.064; 1.10 | 0.076; 0.93",
    )
    widest: Number = measured(
        "Strip where it is widest",
        "w_max",
        COARSE,
        tool="the packet's scale or a calliper",
        hard="0.2 to 25 mm",
        usual="0.5 to 8 mm",
        must=True,
        example="1.57 mm",
        hint="Dry, away from the joint and from the oil hole, at full torque; nothing turned.",
    )
    narrowest: Number | None = measured(
        "Strip at the end where it is narrowest",
        "w_min",
        COARSE,
        tool="the packet's scale or a calliper",
        hard="0.2 to 25 mm",
        usual="0.5 to 8 mm",
    )
    main_low: Number = shells.clearance_limit(MAIN, "low", IF_MAIN)
    main_high: Number = shells.clearance_limit(MAIN, "high", IF_MAIN)
    main_worn: Number = shells.clearance_limit(MAIN, "wear", IF_MAIN)
    rod_low: Number = shells.clearance_limit(ROD, "low", IF_ROD)
    rod_high: Number = shells.clearance_limit(ROD, "high", IF_ROD)
    rod_worn: Number = shells.clearance_limit(ROD, "wear", IF_ROD)
    most_taper: Number | None = limit(
        "Taper of a journal, most",
        "k_max",
        SIZE,
        feature="crank.journal_taper",
        which="wear",
        hard="0 to 0.2 mm",
        usual="0.005 to 0.05 mm",
    )
    main_opens: Number | None = shells.opens(MAIN, IF_MAIN)
    rod_opens: Number | None = shells.opens(ROD, IF_ROD)
    doubt: Number = given(
        "A strip is out by, at most ±",
        "U",
        SIZE,
        hard="0.002 to 0.05 mm",
        usual="0.005 to 0.02 mm",
        fold=True,
        assumed=("0.010 mm", "a plastic strip read by eye; common practice, no source"),
    )


class Held(NamedTuple):
    """What the chosen bearing is held to."""

    low: Number
    high: Number
    worn: Number
    opens: Number | None


def held_to(i: In) -> Held:
    """Raises Impossible where the limits are crossed."""
    low, high, worn, opens = (getattr(i, f"{i.bearing}_{name}") for name in ("low", "high", "worn", "opens"))
    if high < low:
        raise impossible(
            f"{i.bearing}_high", "is {h}, less than the least, {l}; give {l} or more", h=high, l=low
        )
    return Held(low, high, high if worn < high else worn, opens)


def marks_of(i: In) -> tuple[tuple[Number, Number], ...]:
    """Marks of the scale as clearance and width, from the widest on. Raises Impossible where the clearance
    does not rise as the width falls, or where the strip lies beyond the scale."""
    rows = [(n, row) for n, row in enumerate(i.scale) if row is not None]
    ordered = sorted(rows, key=lambda row: -float(row[1][1]))
    for (_, (c_1, w_1)), (n, (c_2, w_2)) in zip(ordered, ordered[1:]):
        if w_2 >= w_1 or c_2 <= c_1:
            raise impossible(
                f"scale.{n + 1}.2",
                "{c} at {w} does not go with {d} at {v}: a wider strip is less clearance; give the marks as"
                " they are printed",
                c=c_2,
                w=w_2,
                d=c_1,
                v=w_1,
            )
    marks = tuple((c, w) for _, (c, w) in ordered)
    for name, width in (("widest", i.widest), ("narrowest", i.narrowest)):
        if width is not None:
            _refuse_beyond(name, width, marks)
    if i.narrowest is not None and i.narrowest > i.widest:
        raise impossible(
            "narrowest",
            "is {n}, wider than the widest place, {w}; give {w} or less",
            n=i.narrowest,
            w=i.widest,
        )
    return marks


def _refuse_beyond(name: str, width: Number, marks: tuple[tuple[Number, Number], ...]) -> None:
    (least, wide), (most, narrow) = marks[0], marks[-1]
    if width > wide:
        raise impossible(
            name,
            "is {w}, wider than the widest mark, {m}: less than {c}, and past this strip; do not turn the"
            " engine, and give a width within the scale of a thinner strip",
            w=width,
            m=wide,
            c=least,
        )
    if width < narrow:
        raise impossible(
            name,
            "is {w}, narrower than the last mark, {m}: more than {c}, and past this strip; give a width"
            " within the scale of a thicker strip",
            w=width,
            m=narrow,
            c=most,
        )
