"""The table of the size sheet: each size with its limits, and under it a line for each place."""

import math
import re
from itertools import groupby

from calc.core.reading import EntryError
from calc.core.result import VERDICT_WORDS
from calc.core.writing import to_unit, write
from calc.job.texts import read_size
from calc.job.verdicts import Judged, Row
from calc.page.html import Html, both, children, el
from calc.page.job.sheet_marks import (
    CORRECTED,
    STAGES,
    SYSTEMS,
    WARM,
    WORN,
    Where,
    corrected,
    is_warm,
    shape,
    where,
)
from calc.reference.engine import STANDARD, Engine, Feature, Step


def sizes(job: dict, rows: list[Row], engine: Engine | None, stages: list[str]) -> Html:
    head = el(
        "tr",
        el("th", "Place", scope="col"),
        *(el("th", STAGES[stage], " ±", scope="col", colspan="2", class_="n") for stage in stages),
        el("th", "Verdict", scope="col"),
    )
    marked = set(corrected(job))
    bodies = []
    for id, alike in groupby(rows, key=lambda row: row.feature):
        feature = engine.features.get(id) if engine else None
        bodies.append(_body(feature, list(alike), stages, marked))
    return el(
        "div",
        el("table", el("thead", head), *bodies),
        class_="sheet-sizes" + (" wide" if len(stages) > 2 else ""),
        tabindex="0",
        role="group",
        aria_label="Sizes",
    )


def _body(feature: Feature | None, rows: list[Row], stages: list[str], marked: set[Where]) -> Html:
    of = el(
        "th",
        el("b", rows[0].label),
        " ",
        _limits(feature, rows),
        colspan=2 + 2 * len(stages),
        scope="rowgroup",
    )
    return el("tbody", el("tr", of, class_="of"), *(_row(feature, row, stages, marked) for row in rows))


def _row(feature: Feature | None, row: Row, stages: list[str], marked: set[Where]) -> Html:
    cells = [_judged(feature, getattr(row, stage), _marks(row, stage, marked)) for stage in stages]
    verdict = children(shape(row.state), VERDICT_WORDS[row.state]) if row.state else el("span", "not judged")
    return el(
        "tr",
        el("td", row.place or "\u2013", class_="place"),
        *cells,
        el("td", verdict, class_="verdict"),
        class_=f"is-{row.state or 'none'}",
    )


def _marks(row: Row, stage: str, marked: set[Where]) -> str:
    judged = getattr(row, stage)
    reading = judged.reading if judged else None
    return (
        (CORRECTED if reading and where(reading) in marked else "")
        + (WARM if reading and is_warm(reading) else "")
        + (WORN if row.was_worn and stage == "received" else "")
    )


# --- Limits -------------------------------------------------------------------------------------


def _limits(feature: Feature | None, rows: list[Row]) -> Html | str:
    """What the size is judged by: the limits of the size that it was finished to, and the wear limit that it
    was received with."""
    if feature is None:
        return "not on a data sheet here"
    now = {judged.step for row in rows if (judged := row.assembly or row.finished)}
    said = [_span(feature.at(step), step) for step in _by_size(now or {row.step for row in rows})]
    received = {row.received.step for row in rows if row.received}
    if received or (feature.low, feature.high) == (None, None):
        alone = not any(said)
        said += [_worn(feature.at(step), step, alone) for step in _by_size(received or {STANDARD})]
    if all(row.derived for row in rows):
        said.append("worked out")
    parts = [one for one in said if one]
    return children(*(x for n, part in enumerate(parts) for x in (("; ", part) if n else (part,))))


def _by_size(steps: set[Step]) -> list[Step]:
    return sorted(steps, key=lambda step: (abs(step.offset), step.offset))


def _span(feature: Feature, step: Step) -> Html | str:
    form, low, high, name = feature.form, feature.low, feature.high, _named(step)
    if low is not None and high is not None:
        return children(both(*(f"{form.bare(low, s)}–{form.write(high, s)}" for s in SYSTEMS)), name)
    if high is not None:
        return children("up to ", both(*(form.write(high, s) for s in SYSTEMS)), name)
    if low is not None:
        return children("from ", both(*(form.write(low, s) for s in SYSTEMS)), name)
    if feature.wear is not None:
        return ""
    return children("nominal ", both(*(form.write(feature.nominal, s) for s in SYSTEMS)), name)


def _worn(feature: Feature, step: Step, alone: bool) -> Html | str:
    """The wear limit; behind the limits as made it has their unit."""
    wear, form = feature.wear, feature.form
    if wear is None:
        return ""
    written = (form.write(wear, s) if alone else form.bare(wear, s) for s in SYSTEMS)
    return children("worn at ", both(*written), _named(step))


def _named(step: Step) -> str:
    """The undersize or oversize."""
    return f" ({step.name})" if step.offset else ""


# --- A size -------------------------------------------------------------------------------------


def _judged(feature: Feature | None, judged: Judged | None, marks: str) -> Html:
    """Size and doubt as two cells, digit for digit as they were typed where the unit is the reader's."""
    if judged is None:
        return children(el("td", class_="n"), el("td", class_="pm"))
    if feature is None or judged.value is None:
        return el("td", judged.reading["text"] if judged.reading else "", marks, class_="n", colspan="2")
    shown, doubts = [], []
    for system in SYSTEMS:
        typed = _typed_in(system, feature, judged.reading)
        shown.append(typed or (judged.value.form or feature.form).bare(float(judged.value), system))
        doubts.append(f"±\u2009{_doubt(judged.U, feature, system, bool(typed))}" if judged.U else "")
    return children(el("td", both(*shown), class_="n"), el("td", both(*doubts), marks, class_="pm"))


def _typed_in(system: str, feature: Feature, reading: dict | None) -> str:
    """The digits as they were typed, where they alone tell the whole size in that system: not those of
    5.4987e1 mm, 44° 54′ or 4½ in, and not those of a warm reading."""
    if reading is None or is_warm(reading):
        return ""
    form, digits = feature.form, _digits(reading["text"])
    typed = read_size(reading["text"], form.kind, form.metric)
    if typed.unit != form.unit(system):
        return ""
    try:
        return digits if read_size(digits, form.kind, typed.unit).value == typed.value else ""
    except EntryError:
        return ""


def _digits(text: str) -> str:
    """The number of a typed size, without unit and doubt: "54.987 mm ± 4 µm" → 54.987, "1 31/64 in" → 1
    31/64."""
    found = re.match(r"\s*\(?\s*([+\-−]?\s?[\d.,/ \u00a0\u202f]*\d)", text)
    return found[1].replace("-", "−").replace(",", ".") if found else text.strip()


def _doubt(U: float, feature: Feature, system: str, typed: bool) -> str:
    """A doubt as it was typed, or to two figures in the other unit system."""
    unit = feature.form.difference.unit(system)
    decimals = max(0, (5 if typed else 1) - math.floor(math.log10(to_unit(U, unit))))
    return write(U, unit, decimals).rstrip("0").rstrip(".")
