"""Every reading of a job with its verdict, its history, and the ways to correct it."""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from functools import cache
from html import escape

from calc.job import record
from calc.job.checking import feature_of
from calc.job.contents import STAGES
from calc.job.verdicts import Row
from calc.page.html import Html, children, el, value
from calc.page.job.forms import QUIET, field, message, reasons
from calc.page.job.pieces import SHORT, chip, limits, reading, what_group, when_read, who

MOST_WHOLE = 1000  # sizes that are shown with history and forms: more would fill a phone


@dataclass(frozen=True)
class _Shown:
    """What is shown of a job, and how: `told` are its readings by their place (record.histories), None where
    the page has no room for them; they are corrected at these `stages`."""

    job: dict
    told: dict[tuple[str, str, str], list[dict]] | None
    now: str
    stages: tuple[str, ...]


def readings(job: dict, rows: list[Row], now: str, stages: tuple[str, ...] = tuple(STAGES)) -> Html:
    """Every reading with its verdict, by groups of the sheet; unfolded, its history and the ways to correct
    it at these `stages`."""
    whole = _Shown(job, record.histories(job), now, stages)
    short = replace(whole, told=None)
    groups: dict[str, list[Html]] = {}
    for n, row in enumerate(rows):
        groups.setdefault(_group(row.feature), []).append(_row(whole if n < MOST_WHOLE else short, row))
    for n, last in enumerate(_without_size(job, rows), len(rows)):
        groups.setdefault(_group(last["feature"]), []).append(_gone(whole if n < MOST_WHOLE else short, last))
    return el(
        "div",
        *(
            children(el("h3", what_group(group)), el("ul", *found, class_="job-readings"))
            for group, found in groups.items()
        ),
    )


def _group(feature: str) -> str:
    return feature.partition(".")[0]


def _without_size(job: dict, rows: list[Row]) -> list[dict]:
    """The last reading of each place that has no row: all that was read there was taken back."""
    shown = {(row.feature, row.place) for row in rows}
    last = {(one["feature"], one["place"]): one for one in job["readings"]}
    return [one for spot, one in last.items() if spot not in shown]


def _row(shown: _Shown, row: Row) -> Html:
    stage = (
        SHORT[row.last.stage]
        + ("" if row.last.reading else ", worked out")
        + (", was worn" if row.was_worn else "")
    )
    head = _head(
        row.label, row.place, el("span", _size(shown.job, row), class_="job-size num"), stage, row.state
    )
    body = [
        el("p", row.words, ". ", row.do),
        el("p", *limits(shown.job, row.feature, row.step), class_="job-limits") if shown.told else None,
    ]
    if row.was_worn and row.received:
        body.append(el("p", "As received: ", row.received.words, ".", class_="job-limits"))
    return _unfolds(
        row.feature, row.place, row.state, head, *body, *_histories(shown, row.feature, row.place, row.label)
    )


def _size(job: dict, row: Row) -> Html:
    last = row.last
    if last.reading:
        return reading(job, last.reading)
    if last.U and last.value is not None and last.value.form:
        return children(last.value, el("span", " ± ", value(last.value.form.difference, last.U)))
    return children(last.value)


def _gone(shown: _Shown, last: dict) -> Html:
    """A place of which all that was read was taken back: it has no size, but it has its history."""
    id, place = last["feature"], last["place"]
    feature = feature_of(shown.job, id)
    label = feature.label if feature else id
    size = el("span", "taken back", class_="job-size")
    return _unfolds(
        id,
        place,
        "",
        _head(label, place, size, when_read(last, shown.now), "", "no size"),
        el("p", *limits(shown.job, id), class_="job-limits"),
        *_histories(shown, id, place, label),
    )


def _head(label: str, place: str, size: Html, stage: str, state: str, unjudged: str = "not judged") -> Html:
    return el(
        "summary",
        el("span", label, " ", el("span", place, class_="job-place") if place else None, class_="job-label"),
        size,
        el("span", stage, class_="job-stage"),
        chip(state) if state else el("span", unjudged, class_="chip chip-none"),
    )


def _unfolds(feature: str, place: str, state: str, head: Html, *body: Html | None) -> Html:
    return el(
        "li",
        el("details", head, *body, data_keep=f"{feature} {place}"),
        class_=f"job-reading job-is-{state or 'none'}",
    )


def _histories(shown: _Shown, id: str, place: str, label: str) -> Iterator[Html]:
    if shown.told is None:
        yield el(
            "p",
            f"The history of the first {MOST_WHOLE} sizes is shown here; that of this one is in the job's"
            " file.",
            class_="job-limits",
        )
        return
    for stage in STAGES:
        if its := shown.told.get((id, place, stage)):
            yield _history(shown.job, stage, its, shown.now)
            if stage in shown.stages:
                yield _correct(id, place, label, stage, its)


def _history(job: dict, stage: str, told: list[dict], now: str) -> Html:
    """All that was read at one place and stage, the last first."""
    lines = []
    for n, one in enumerate(reversed(told)):
        what = reading(job, one) if one["text"] else "taken back"
        why = children(": ", one["why"]) if one["why"] else None
        by = el("span", who(one["at"], one["by"], now), why, class_="job-who")
        lines.append(el("li", what if n == 0 else el("s", what), " ", by))
    return el(
        "div",
        el("h4", STAGES[stage].capitalize()),
        el("ol", *lines, class_="job-history", reversed=True),
        class_="job-stages",
    )


def _correct(id: str, place: str, label: str, stage: str, its: list[dict]) -> Html:
    form = _correction(stage, bool(its[-1]["text"]))
    for blank, told in (
        ("\x01", "-".join(("correct", id.replace(".", "-"), place.replace(" ", "-"), stage))),
        ("\x02", id),
        ("\x03", place),
        ("\x04", f"{label} {place}"),
        ("\x05", str(len(its))),
    ):
        form = form.replace(blank, escape(told))
    return Html(form)


@cache
def _correction(stage: str, there: bool) -> str:
    """The form that corrects a reading, with blanks for what a job has thousands of: characters that no text
    of a job holds."""
    key = "\x01"
    hidden = [
        el("input", type="hidden", name=name, value=value)
        for name, value in (("feature", "\x02"), ("place", "\x03"), ("stage", stage), ("shown", "\x05"))
    ]
    return str(
        el(
            "details",
            el("summary", "Correct it" if there else "Put a size in its place"),
            el(
                "form",
                *hidden,
                field(
                    key, "It is", "text", label=f"\x04, {STAGES[stage]}", inputmode="decimal", maxlength=100
                ),
                *reasons(key),
                el(
                    "div",
                    el("button", "Correct", type="submit", class_="go"),
                    el("button", "Take it back", type="submit", value="take-back") if there else None,
                    class_="job-buttons",
                ),
                message(key, ""),
                data_job_call="add",
                data_job_form=key,
                **QUIET,
                class_="job-form",
            ),
            data_keep=key,
            class_="job-correct",
        )
    )
