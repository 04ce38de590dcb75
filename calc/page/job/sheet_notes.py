"""The size sheet below its sizes: how to read them, what was corrected and done, what is to be checked and
ordered."""

from collections.abc import Sequence

from calc.job.record import current, done
from calc.job.ticks import is_tick, ticks
from calc.job.verdicts import Row
from calc.page.html import Html, children, el
from calc.page.job.sheet_marks import CORRECTED, STAGES, WARM, WORN, Where, corrected, day, is_warm, shape
from calc.reference.engine import Engine
from calc.stations import index as stations
from calc.stations.shared.checks import Check


def notes(job: dict, rows: list[Row], engine: Engine | None) -> Html:
    """How to read the table, what was corrected, and what to do about each size that is not simply in
    order."""
    said = (
        "± is the doubt of a reading (k = 2); one without it is taken as exact. “In order” is at least 95 %"
        " sure (ISO 14253-1)."
    )
    if any(row.received for row in rows):
        said += " Parts as received are held against the wear limit, where there is one."
    if any(is_warm(reading) for reading in current(job).values()):
        said += f" {WARM} Read warm, brought to 20 °C."
    if any(row.was_worn for row in rows):
        said += f" {WORN} Was worn past its limit."
    lines = [
        el("li", f"{CORRECTED} ", _correction(engine, key, told)) for key, told in corrected(job).items()
    ]
    lines += _to_do(rows)
    return el("div", el("p", said), el("ul", *lines) if lines else None, class_="sheet-notes")


def _to_do(rows: list[Row]) -> list[Html]:
    """A line for all places of a size of which the same is said."""
    left: dict[tuple[str, str, str, str], list[Row]] = {}
    for row in rows:
        if row.state != "pass":
            left.setdefault((row.label, row.state, row.words.plain(), row.do.plain()), []).append(row)
    return [
        el(
            "li",
            shape(state) if state else None,
            el("b", _of(label, ", ".join(row.place for row in alike if row.place)), ": "),
            alike[0].words,
            ". ",
            alike[0].do,
        )
        for (label, state, *_), alike in left.items()
    ]


def _of(*words: str) -> str:
    return " ".join(filter(None, words))


def _correction(engine: Engine | None, where: Where, told: list[dict]) -> str:
    """What a reading was before, until when, by whom and why it was changed."""
    id, place, stage = where
    label = engine.features[id].label if engine and id in engine.features else id
    steps = [
        f"{old['text'] or 'nothing'} until {_of(day(new['at']), new['by'])}, {new['why']}"
        for old, new in zip(told, told[1:])
    ]
    back = "" if told[-1]["text"] else "; taken back"
    return f"{_of(label, place)}, {STAGES[stage].lower()}: was {'; '.join(steps)}{back}."


def what_was_done(job: dict) -> Html | None:
    """But the checks that were ticked off, which are marked where they stand."""
    standing = [el("li", line.text) for line in done(job) if not line.struck and not is_tick(line)]
    return el("section", el("h2", "Done"), el("ul", *standing)) if standing else None


def checks(job: dict, found: Sequence[Check]) -> Html:
    """A line for each, with a box to tick."""
    ticked = ticks(job)
    return el(
        "section",
        el("h2", "Check before closing up, in this order (how: overleaf)"),
        el("ol", *(_check(check, ticked.get(check.id)) for check in found), class_="sheet-checks"),
    )


def _check(check: Check, ticked: dict | None) -> Html:
    by = ", ".join(filter(None, (day(ticked["at"]), ticked["by"]))) if ticked else ""
    left = len(check.unread)
    not_read = "" if not left else f"{left} not measured" if left < check.places else "not measured"
    told = [check.said, check.setting, not_read, f"ticked off {by}" if ticked else ""]
    said = [one for one in told if one]
    return el(
        "li",
        el("b", check.title),
        *(x for n, one in enumerate(said) for x in ((", " if n else ": "), one)),
        class_="ticked" if ticked else None,
    )


def how_to(found: Sequence[Check]) -> Html:
    """How each check is made, and what of it can be done at home."""
    lines = (
        el(
            "li",
            el("b", check.title, ". "),
            check.do,
            children(" ", el("span", "At home: ", class_="by-whom"), check.home) if check.home else None,
            children(" ", el("span", "Only the shop can: ", class_="by-whom"), check.shop)
            if check.shop
            else None,
        )
        for check in found
    )
    return el(
        "section",
        el("h2", "How each check is made"),
        el("ol", *lines, class_="sheet-how"),
        class_="sheet-overleaf",
    )


def order(job: dict) -> Html:
    lines = [
        el(
            "li",
            shape(row.state) if row.state != "pass" else None,
            el("b", row.part, f" {', '.join(row.places)}" if row.places else "", ": ", row.size),
            ". ",
            el("span", row.because, ". ", class_="because"),
            row.do,
        )
        for row in stations.orders(job)
    ]
    nothing = el("p", "These sizes call for nothing to be ordered.")
    return el("section", el("h2", "To order by size"), el("ul", *lines) if lines else nothing)
