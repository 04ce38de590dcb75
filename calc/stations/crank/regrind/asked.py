"""What is asked of a worn crank: its journals as read, its bow, what shells are sold, and what it is held
to."""

from typing import Any

from calc.core.result import impossible
from calc.declare.calculator import Inputs, Number, Rows, choice, column, given, grid, limit, measured
from calc.stations.shared.forms import COARSE, SIZE

MAINS, PINS = ("1", "2", "3", "4"), ("1", "2", "3", "4")
ONE_SIDE, EVEN = "one-side", "even"
# m: a journal so much larger than its largest limit is another one's reading; common practice, no source
LARGER = 0.05e-3
APART = 1e-3  # m: readings of one journal further apart are not of one journal


def _journals(label: str, letter: str, rows: tuple[str, ...], least: int, example: str, hint: str) -> Any:
    """Grid: each journal at both ends, where it is smallest and square to that."""
    columns = tuple(
        column(words, f"{letter}_{way}", SIZE, hard="15 to 120 mm", usual="35 to 80 mm")
        for words, way in (
            ("One end, smallest", "a"),
            ("Square to that", "b"),
            ("Other end, smallest", "c"),
            ("Square to this", "e"),
        )
    )
    return grid(
        label, rows=rows, columns=columns, least=least, tool="a micrometer", hint=hint, example=example
    )


def _limit_of(words: str, symbol: str, kind: str, which: str) -> Any:
    """Limit of the standard journal."""
    return limit(
        words,
        symbol,
        SIZE,
        feature=f"crank.{kind}_journal",
        which=which,
        hard="15 to 120 mm",
        usual="35 to 80 mm",
    )


def _undersize(words: str, symbol: str, kind: str, which: str, hint: str = "") -> Any:
    return limit(
        words,
        symbol,
        SIZE,
        feature=f"crank.{kind}_journal",
        which=which,
        hard="0.05 to 5 mm",
        usual="0.2 to 1.6 mm",
        hint=hint,
    )


def _unworn(words: str, symbol: str) -> Any:
    return measured(
        words,
        symbol,
        SIZE,
        tool="a micrometer with narrow faces",
        hard="15 to 120 mm",
        usual="35 to 80 mm",
        fold=True,
        hint=(
            "The ring beside a fillet, or before an oil groove, that no shell touches. Else the largest size"
            " as made counts."
        ),
    )


def _form_limit(words: str, symbol: str, of: str, which: str) -> Any:
    return limit(
        words,
        symbol,
        SIZE,
        feature=f"crank.journal_{of}",
        which=which,
        hard="0 to 0.5 mm",
        usual="0.002 to 0.05 mm",
    )


class In(Inputs):
    mains: Rows = _journals(
        "Main journals",
        "m",
        MAINS,
        3,
        "54.962; 54.972; 54.964; 54.974 | 54.953; 54.970; 54.958; 54.972 | 54.966; 54.974; 54.969; 54.975",
        "Find the smallest direction first. A fourth row where there is a fourth.",
    )
    pins: Rows = _journals(
        "Rod journals",
        "p",
        PINS,
        4,
        "51.951; 51.972; 51.955; 51.974 | 51.948; 51.970; 51.954; 51.972 | 51.956; 51.974; 51.957; 51.975 |"
        " 51.953; 51.973; 51.958; 51.974",
        "The smallest direction is often up and down, with the pin at the top.",
    )
    bow: Number = measured(
        "Bow at the centre main, full reading",
        "b",
        SIZE,
        tool="a dial gauge, crank on blocks",
        hard="0 to 1 mm",
        usual="0 to 0.1 mm",
        feature="crank.bow",
        stage="",
        hint="Over one turn, the end mains in the blocks, without the journal's own oval.",
        example="0.02 mm",
    )
    wear: str = choice(
        "Journals are worn",
        {ONE_SIDE: "on one side, or nobody knows", EVEN: "alike all round"},
        default=ONE_SIDE,
        hint="Wear on one side takes twice as much off the circle that can still be ground.",
    )
    main_unworn: Number | None = _unworn("Main journal where it is not worn", "m_0")
    pin_unworn: Number | None = _unworn("Rod journal where it is not worn", "p_0")
    fillet: Number | None = measured(
        "Fillet as it is",
        "r_0",
        COARSE,
        tool="radius gauges",
        hard="0.2 to 10 mm",
        usual="1 to 5 mm",
        feature="crank.fillet",
        stage="",
        hint="Of the journal with the smallest.",
    )
    wheel: Number | None = given(
        "Radius dressed on the wheel",
        "r",
        COARSE,
        hard="0.2 to 10 mm",
        usual="1 to 5 mm",
        feature="crank.fillet",
        fold=True,
    )
    main_low: Number = _limit_of("Standard main journal, least", "M_min", "main", "low")
    main_high: Number = _limit_of("Standard main journal, most", "M_max", "main", "high")
    pin_low: Number = _limit_of("Standard rod journal, least", "P_min", "rod", "low")
    pin_high: Number = _limit_of("Standard rod journal, most", "P_max", "rod", "high")
    main_worn: Number | None = _limit_of("Standard main journal, worn out at", "M_w", "main", "wear")
    pin_worn: Number | None = _limit_of("Standard rod journal, worn out at", "P_w", "rod", "wear")
    main_step: Number | None = _undersize(
        "Main undersizes, each by", "u_m", "main", "step", "0.25 mm, or 0.010 in, as a rule; see the shells."
    )
    main_last: Number | None = _undersize("Last main undersize sold", "U_m", "main", "last")
    pin_step: Number | None = _undersize("Rod undersizes, each by", "u_p", "rod", "step")
    pin_last: Number | None = _undersize("Last rod undersize sold", "U_p", "rod", "last")
    bow_worn: Number | None = limit(
        "Bow, most",
        "b_max",
        SIZE,
        feature="crank.bow",
        which="wear",
        hard="0 to 1 mm",
        usual="0.01 to 0.2 mm",
    )
    round_new: Number | None = _form_limit("Out of round, as ground", "Δ_r", "round", "high")
    round_worn: Number | None = _form_limit("Out of round, worn", "Δ_rw", "round", "wear")
    taper_new: Number | None = _form_limit("Taper, as ground", "Δ_t", "taper", "high")
    taper_worn: Number | None = _form_limit("Taper, worn", "Δ_tw", "taper", "wear")
    fillet_low: Number | None = limit(
        "Fillet, least", "r_min", COARSE, feature="crank.fillet", which="low", hard="0.2 to 10 mm"
    )
    fillet_high: Number | None = limit(
        "Fillet, most",
        "r_max",
        COARSE,
        feature="crank.fillet",
        which="high",
        hard="0.2 to 10 mm",
        hint="A larger one carries the shell's edge.",
    )
    hard_depth: Number | None = limit(
        "Hardened layer as made, least",
        "h",
        COARSE,
        feature="crank.hard_depth",
        which="low",
        hard="0 to 5 mm",
        usual="0.1 to 3 mm",
    )
    hard_left: Number | None = limit(
        "Hardened layer to be left, least",
        "h_min",
        COARSE,
        feature="crank.hard_left",
        which="nominal",
        hard="0 to 5 mm",
    )


def refuse_limits_crossed(i: In) -> None:
    """Raises where limits, or undersizes, do not go together."""
    for name, low, high in (("main_low", i.main_low, i.main_high), ("pin_low", i.pin_low, i.pin_high)):
        if low >= high:
            raise impossible(
                name, "is {low}, not below the most, {high}; give less than {high}", low=low, high=high
            )
    for name, worn, low in (("main_worn", i.main_worn, i.main_low), ("pin_worn", i.pin_worn, i.pin_low)):
        if worn is not None and worn > low:
            raise impossible(
                name, "is {w}, more than the least as made, {low}; give {low} or less", w=worn, low=low
            )
    for name, last, by in (("main_last", i.main_last, i.main_step), ("pin_last", i.pin_last, i.pin_step)):
        if last is not None and by is not None and last < by:
            raise impossible(
                name, "is {last}, less than the first undersize, {by}; give {by} or more", last=last, by=by
            )
    if i.fillet_low is not None and i.fillet_high is not None and i.fillet_low > i.fillet_high:
        raise impossible(
            "fillet_low",
            "is {low}, more than the most, {high}; give {high} or less",
            low=i.fillet_low,
            high=i.fillet_high,
        )
