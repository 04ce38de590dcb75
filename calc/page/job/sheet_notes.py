"""The size sheet below its sizes: how to read them, what was corrected and done, what is to be checked and
ordered."""

from calc.job.record import current, done
from calc.job.verdicts import Row
from calc.page.html import Html, children, el
from calc.page.job.sheet_marks import CORRECTED, STAGES, WARM, WORN, Where, corrected, day, is_warm, shape
from calc.reference.engine import Engine
from calc.stations import index as stations


def notes(job: dict, rows: list[Row], engine: Engine | None) -> Html:
    """How to read the table, what was corrected, and what to do about each size that is not simply in
    order."""
    said = (
        "± expanded doubt, k = 2; a reading without one is taken as it is. As received is judged by the wear"
        " limit, else by the limits; proven at 95 % (ISO 14253-1)."
    )
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
    standing = [el("li", line.text) for line in done(job) if not line.struck]
    return el("section", el("h2", "Done"), el("ul", *standing)) if standing else None


def checks(job: dict, rows: list[Row]) -> Html:
    lines = (
        el(
            "li",
            el("b", check.title, ". "),
            check.do,
            children(" On this sheet: ", check.said, ".") if check.said else None,
        )
        for check in stations.checks(job, rows)
    )
    return el(
        "section", el("h2", "Check before closing up, in this order"), el("ol", *lines, class_="sheet-checks")
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
    nothing = el("p", "Nothing that these sizes tell.")
    return el("section", el("h2", "To order by size"), el("ul", *lines) if lines else nothing)
