"""The record of a job: which sizes were read off which part, when, by whom. Plain data, written as JSON.

    {"format": "sizebook-job", "version": 2, "id": "k3J9", "name": "Orchard frost fan", "engine": "TS-16",
     "received": "two heads", "started": "2026-11-25T09:12+01:00", "by": "Tern Street", "sheet": "5f0c21aa",
     "done": [{"line": "1b6a8cec", "text": "Mains ground", "at": "2026-11-25T14:02+01:00", "by": "MK"}],
     "readings": [{"feature": "crank.main_journal", "place": "2", "stage": "finished", "text": "54.987 mm",
                   "at": "2026-11-25T14:15+01:00", "by": "MK", "why": ""}]}

A reading is a text that names its unit, as it was typed: values are read from it, so whatever carries the
text carries the size to the last bit. A warm one tells the temperatures of part and gauge and the material
beside it (part, gauge, of). Readings are only ever added: of those with the same feature, place and stage the
last one counts, the others are its history. One with an empty text takes back what was read. So it is with
the lines of what was done: each has a name of its own (`line`), and an entry of that line with an empty text
strikes it. `sheet` marks the limits as they were at the last reading, so that other ones are noticed.

No function changes the job that it is given. What cannot be used raises `JobError`, one sentence.
"""

import re
from dataclasses import dataclass
from difflib import get_close_matches

from calc.core.kinds import TEMPERATURE
from calc.core.reading import quoted
from calc.declare.warm import WARM
from calc.job.checking import checked, checked_entries, checked_reading, feature_of, not_too_long, sheet_of
from calc.job.contents import (
    BESIDE,
    FORMAT,
    MOST_DONE,
    MOST_READINGS,
    MOST_STRUCK,
    STAGES,
    VERSION,
    JobError,
    NoReason,
    check_text,
    check_time,
    name_of_line,
)
from calc.job.texts import self_contained
from calc.job.value import name_in, number
from calc.reference import engine as engines
from calc.reference.sheet_row import MOST_PLACES


def new(id: str, name: str, engine: str, received: str, at: str, by: str = "") -> dict:
    """A job without readings. `id` is the caller's, random; `at` an ISO 8601 time, kept to the minute; `by`
    whose shop."""
    return checked(
        {
            "format": FORMAT,
            "version": VERSION,
            "id": id,
            "name": _tidy(name),
            "engine": _tidy(engine),
            "received": _tidy(received),
            "started": _minute("The job's start", at),
            "by": _tidy(by),
            "done": [],
            "readings": [],
        }
    )


def add_reading(
    job: dict,
    feature: str,
    place: str,
    stage: str,
    text: str,
    at: str,
    by: str,
    why: str = "",
    *,
    part: str = "",
    gauge: str = "",
    of: str = "",
) -> dict:
    """The job with one more reading. `text` names its unit and may carry a doubt (expanded, k = 2); "" takes
    back what was read.

    What replaces another reading says why; the same text by the same hand once more changes nothing. `part`
    and `gauge` are the temperatures of a warm reading, `of` the part's material.
    """
    told = dict(
        feature=feature, place=place, stage=stage, text=text, by=by, why=why, part=part, gauge=gauge, of=of
    )
    made = _as_told(job, told, at)
    where, before = name_in(job, feature, place), _replaced(job, feature, place, stage)
    if (
        before
        and not made["why"]
        and all(made.get(key) == before.get(key) for key in ("text", "by", *BESIDE))
    ):
        return job  # a second tap
    _check_correction(before, made, where)
    if made["text"]:
        number(job, made)  # a temperature or material that cannot be used is told here
    if len(job["readings"]) >= MOST_READINGS:
        raise JobError(f"This job has {MOST_READINGS} readings, and no more are kept; start a second job.")
    return _marked(not_too_long({**job, "readings": [*job["readings"], made]}))


def _as_told(job: dict, told: dict, at: str) -> dict:
    """The reading that somebody tells, looked at, its texts such that they mean the same wherever they go."""
    feature, place, stage = told["feature"], told["place"], told["stage"]
    for what, value in told.items():
        check_text(f"The reading's {what}", value, what)
    told = {
        key: value if key in ("feature", "place", "stage") else _tidy(value) for key, value in told.items()
    }
    where, on_sheet = name_in(job, feature, place), feature_of(job, feature)
    if stage not in STAGES:
        raise JobError(f"{where}: {quoted(stage)} is no stage of a reading; give {', '.join(STAGES)}.")
    known = any((r["feature"], r["place"]) == (feature, place) for r in job["readings"])
    if not known:  # what is there can always be corrected
        _check_feature(job, feature, place)
    if told["text"]:
        told["text"] = self_contained(told["text"], on_sheet.form.kind if on_sheet else None, where)
    for part in WARM:
        if told[part]:
            told[part] = self_contained(told[part], TEMPERATURE, f"{where}, {WARM[part]}")
    return checked_reading(job, told | {"at": _minute(where, at)}, where)


def _replaced(job: dict, feature: str, place: str, stage: str) -> dict | None:
    """The reading that a new one there takes the place of; None where there is none, or it was taken back."""
    before = _last(job).get((feature, place, stage))
    return before if before and before["text"] else None


def add_readings(job: dict, readings: list) -> dict:
    """The job with readings of another state of it, taken over as they are."""
    return checked(_marked({**job, "readings": [*job["readings"], *readings]}))


def add_done(job: dict, text: str, at: str = "", by: str = "", line: str = "") -> dict:
    """The job with one more line of what was done, `at` a time or "" where nobody told it. The same words of
    the same minute and hand are a second tap. `line` names one that is known by more than its words: it is
    put back where it was struck."""
    at, by, text = _minute("A line of what was done", at) if at else "", _tidy(by), _tidy(text)
    check_text("A line of what was done", text, "done")
    known = done(job)
    if line and any(one.line == line for one in known):
        return unstrike(job, line, at, by)
    if at and any((one.text, one.at, one.by) == (text, at, by) and not one.struck for one in known):
        return job
    if len(known) >= MOST_DONE:
        raise JobError(
            f"This job has {MOST_DONE} lines of what was done, and no more are kept; start a second job."
        )
    return _with_entry(
        job,
        {
            "line": line or name_of_line(text, at, by, {one.line for one in known}),
            "text": text,
            "at": at,
            "by": by,
        },
    )


def strike(job: dict, line: str, at: str, by: str) -> dict:
    """The job with a line of what was done struck, by its name; the line stays in the history. One that is
    struck already stays so."""
    return _said_of_line(job, line, at, by, strikes=True)


def unstrike(job: dict, line: str, at: str, by: str) -> dict:
    """The job with a line that was struck put back."""
    return _said_of_line(job, line, at, by, strikes=False)


def _said_of_line(job: dict, name: str, at: str, by: str, strikes: bool) -> dict:
    line = next((line for line in done(job) if line.line == name), None)
    if line is None:
        raise JobError("This line of what was done is not in the job; look at the job once more.")
    if bool(line.struck) == strikes:
        return job  # a second tap, or another tab was faster
    if len(job["done"]) >= MOST_DONE + MOST_STRUCK:
        raise JobError(
            f"Lines of this job were struck and put back {MOST_STRUCK} times, and no more is kept; start a"
            " second job."
        )
    return _with_entry(
        job,
        {
            "line": name,
            "text": "" if strikes else line.text,
            "at": _minute("What is struck", at),
            "by": _tidy(by),
        },
    )


def _with_entry(job: dict, entry: dict) -> dict:
    return not_too_long({**job, "done": checked_entries([*job["done"], entry])})


def add_entries(job: dict, entries: list) -> dict:
    """The job with entries of what was done of another state of it, taken over as they are."""
    return checked({**job, "done": [*job["done"], *entries]})


def change(job: dict, **fields) -> dict:
    """The job with another name, engine, received or by. A reading is corrected by adding one, a line of what
    was done is struck."""
    for key in fields:
        if key not in ("name", "engine", "received", "by"):
            raise JobError(f"A job's {key} cannot be changed; what can is its name, engine, received and by.")
    changed = checked({**job, **{key: _tidy(value) for key, value in fields.items()}})
    return changed if changed["engine"] == job["engine"] else checked(_marked(changed))


def current(job: dict) -> dict:
    """{(feature, place, stage): the reading that counts} in the order of the engine's sheet; what it does not
    know comes last."""
    last, sheet = _last(job), sheet_of(job)
    places = (
        {id: {place: i for i, place in enumerate(feature.places)} for id, feature in sheet.features.items()}
        if sheet
        else {}
    )
    order, stages = {id: i for i, id in enumerate(places)}, list(STAGES)
    seen: dict[str, int] = {}
    for feature, *_ in last:
        seen.setdefault(feature, len(seen))

    def rank(key):
        feature, place, stage = key
        return (
            order.get(feature, len(order) + seen[feature]),
            places.get(feature, {}).get(place, MOST_PLACES),
            place,
            stages.index(stage),
        )

    return {key: last[key] for key in sorted(last, key=rank) if last[key]["text"]}


def counting(job: dict) -> dict:
    """What `current` gives, in the order in which it was read: for one question the sheet's order is not
    worth its time."""
    return {key: reading for key, reading in _last(job).items() if reading["text"]}


def _last(job: dict) -> dict:
    return {(reading["feature"], reading["place"], reading["stage"]): reading for reading in job["readings"]}


def histories(job: dict) -> dict:
    """{(feature, place, stage): every reading there, the first one first; those taken back too}: one walk for
    whoever needs many of them."""
    found: dict = {}
    for reading in job["readings"]:
        found.setdefault((reading["feature"], reading["place"], reading["stage"]), []).append(reading)
    return found


def history(job: dict, feature: str, place: str, stage: str) -> list:
    """Every reading of one feature, place and stage, the first one first; those taken back too."""
    return [r for r in job["readings"] if (r["feature"], r["place"], r["stage"]) == (feature, place, stage)]


@dataclass(frozen=True)
class Line:
    """A line of what was done: its words as they were last, when and by whom it was written down, the entry
    that struck it (None while it stands), and all its entries, the first one first."""

    line: str
    text: str
    at: str
    by: str
    struck: dict | None
    entries: tuple


def done(job: dict) -> list[Line]:
    """Every line of what was done, in the order in which they were written down; those that were struck
    too."""
    by_line: dict = {}
    for entry in job["done"]:
        by_line.setdefault(entry["line"], []).append(entry)
    return [
        Line(
            name,
            [e["text"] for e in told if e["text"]][-1],
            told[0]["at"],
            told[0]["by"],
            None if told[-1]["text"] else told[-1],
            tuple(told),
        )
        for name, told in by_line.items()
    ]


def sheet_changed(job: dict) -> bool:
    """Has the engine's data sheet other limits for what was read than at the last reading? What was right
    then may not be so now."""
    sheet = sheet_of(job)
    return bool(sheet and "sheet" in job and job["sheet"] != _mark(sheet, job))


def _marked(job: dict) -> dict:
    sheet = sheet_of(job)
    return {key: job[key] for key in job if key != "sheet"} | (
        {"sheet": _mark(sheet, job)} if sheet and job["readings"] else {}
    )


def _mark(sheet: "engines.Engine", job: dict) -> str:
    return sheet.mark({reading["feature"] for reading in job["readings"]})


def _check_feature(job: dict, id: str, place: str) -> None:
    """Refuses what the engine's sheet does not know; anything goes where there is no sheet."""
    sheet = sheet_of(job)
    if sheet is None:
        return
    if id not in sheet.features:
        near = get_close_matches(id, sheet.features, 3)
        raise JobError(
            f"{quoted(id)} is no feature of {sheet.name}; "
            + (f"nearest are {', '.join(near)}." if near else "give one of its data sheet.")
        )
    feature = sheet.features[id]
    if place in (feature.places or ("",)):
        return
    if not feature.places:
        raise JobError(
            f"{feature.label}: there is only one, and {quoted(place)} is no place of it; leave the place"
            " empty."
        )
    raise JobError(
        f"{feature.label}: {quoted(place) + ' is no place of it' if place else 'its place is not told'}; give"
        f" one of {', '.join(feature.places)}."
    )


def _check_correction(before: dict | None, made: dict, where: str) -> None:
    if before is None and not made["text"]:
        raise JobError(
            f"{where} has no reading {STAGES[made['stage']]} to take back; give a size with its unit."
        )
    if before and not made["why"]:
        raise NoReason(
            f"{where} was read as {quoted(before['text'])} {STAGES[made['stage']]} before; say why it is"
            f" {quoted(made['text'])} now, such as measured again."
        )


def _tidy(text):
    """Without what a form or a file of another system brings along."""
    return text.replace("\r\n", "\n").strip() if isinstance(text, str) else text


def _minute(where: str, at: str) -> str:
    """A time without its seconds, which nobody needs and every code would carry."""
    check_time(where, at)
    return re.sub(r"(T[0-9]{2}:[0-9]{2}):[0-9.]+", r"\1", at)
