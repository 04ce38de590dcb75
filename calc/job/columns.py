"""A job by columns, as its code packs it, and back.

What is deflated stands by columns, in UTF-8: fields are parted by U+001F and columns by U+001E, which no text
of a job can hold. A field like the one above it is left empty, and an empty one that is not is U+001D. The
columns, after the job's own line (id, name, engine, sheet, received, started, by): feature, place, stage (one
letter each, nothing between), number (a letter for how many characters it shares with the number before it of
that feature, then the others), the rest of the text, at (minutes since the line above where it is written
alike), by, why, part, gauge, of; then the entries of what was done: line (left empty where it is the name
that a new line with these words gets, else the name), text, at, by. Form 1 had what was done, as bare texts,
at the end of the job's own line.
"""

import re
from datetime import datetime, timedelta

from calc.job.contents import FORMAT, MOST_DONE, MOST_READINGS, MOST_STRUCK, MOST_TEXT, STAGES, name_of_line
from calc.job.likely import FIELD

_COLUMN, _EMPTY = "\x1e", "\x1d"
_LETTERS = {stage[0]: stage for stage in STAGES}
_HEAD = ("id", "name", "engine", "sheet", "received", "started", "by")
_TOLD = ("by", "why", "part", "gauge", "of")
_MOST_COLUMNS = 1 + 6 + len(_TOLD) + 4


def columns_of(job: dict) -> str:
    rows = job["readings"]
    cut = [_digits(row["text"]) for row in rows]
    return _COLUMN.join(
        (
            FIELD.join(job.get(key, "") for key in _HEAD),
            _sparse(row["feature"] for row in rows),
            _sparse(row["place"] for row in rows),
            "".join(row["stage"][0] for row in rows),
            _shared(rows, [row["text"][:n] for row, n in zip(rows, cut)]),
            _sparse(row["text"][n:] for row, n in zip(rows, cut)),
            _sparse(_since([job["started"], *(row["at"] for row in rows)])),
            *(_sparse(row.get(key, "") for row in rows) for key in _TOLD),
            *_done(job["done"], job["started"]),
        )
    )


def _digits(text: str) -> int:
    """How many characters of a size are its number."""
    found = re.match(r"[0-9.]{0,25}", text)
    return found.end() if found else 0


def _done(entries: list, started: str):
    """The columns of what was done."""
    known: set[str] = set()
    lines = []
    for entry in entries:
        lines.append(
            ""
            if entry["line"] not in known
            and entry["line"] == name_of_line(entry["text"], entry["at"], entry["by"], known)
            else entry["line"]
        )
        known.add(entry["line"])
    return (
        FIELD.join(lines),
        FIELD.join(entry["text"] for entry in entries),
        _sparse(_since([started, *(entry["at"] for entry in entries)])),
        _sparse(entry["by"] for entry in entries),
    )


def _entries(started: str, lines: str, texts: str, at: str, by: str) -> list:
    """The entries of what was done, from their columns; a first entry has a text, so no text is no entry."""
    told = _parted(texts, FIELD, MOST_DONE + MOST_STRUCK) if texts else []
    names = _parted(lines, FIELD, MOST_DONE + MOST_STRUCK) if told else []
    known: set[str] = set()
    entries = []
    times, people = _times(started, _full(at, len(told))), _full(by, len(told))
    for name, text, at, by in zip(names, told, times, people, strict=True):  # taken above
        name = name or name_of_line(text, at, by, known)
        known.add(name)
        entries.append({"line": name, "text": text, "at": at, "by": by})
    return entries


def job_of(text: str, form: int) -> dict:
    if len(text) > MOST_TEXT + 200_000:
        raise ValueError("more text than any job has")
    head, feature, place, stages, numbers, rest, at, *told = _parted(text, _COLUMN, _MOST_COLUMNS)
    told, done = (told, []) if form == 1 else (told[: len(_TOLD)], told[len(_TOLD) :])
    told_once = _parted(head, FIELD, len(_HEAD) + (MOST_DONE if form == 1 else 0))
    if len(stages) > MOST_READINGS:
        raise ValueError("more readings than any job has")
    own = {
        key: text for key, text in zip(_HEAD, told_once[: len(_HEAD)], strict=True) if text or key != "sheet"
    }
    many = len(stages)
    features = _full(feature, many)
    columns = {
        "feature": features,
        "place": _full(place, many),
        "stage": [_LETTERS[letter] for letter in stages],
        "text": [a + b for a, b in zip(_unshared(features, numbers), _full(rest, many), strict=True)],
        "at": _times(own["started"], _full(at, many)),
        **{key: _full(column, many) for key, column in zip(_TOLD, told, strict=True)},
    }
    rows = [dict(zip(columns, row)) for row in zip(*columns.values(), strict=True)]
    return {
        "format": FORMAT,
        "version": form,
        **own,
        "done": told_once[len(_HEAD) :] if form == 1 else _entries(own["started"], *done),
        "readings": rows,
    }


def _parted(text: str, mark: str, most: int) -> list:
    """Counted before it is parted: eight million fields of nothing are eight megabytes, and a list of them
    many times that."""
    if text.count(mark) >= most:
        raise ValueError("more parts than any job has")
    return text.split(mark)


def _sparse(values) -> str:
    fields, above = [], ""
    for value in values:
        fields.append("" if value == above else value or _EMPTY)
        above = value
    return FIELD.join(fields).rstrip(FIELD)


def _full(column: str, many: int) -> list:
    values, above = [], ""
    for field in _parted(column, FIELD, max(many, 1)) + [""] * (many - 1 - column.count(FIELD)):
        above = above if field == "" else "" if field == _EMPTY else field
        values.append(above)
    return values if many else []


def _shared(rows: list, numbers: list) -> str:
    told: list[str] = []
    before: dict[str, str] = {}
    for row, number in zip(rows, numbers):
        last = before.get(row["feature"], "")
        same = next((i for i, (a, b) in enumerate(zip(last, number)) if a != b), min(len(last), len(number)))
        told.append(chr(ord("a") + same) + number[same:])
        before[row["feature"]] = number
    return "".join(told)


def _unshared(features: list, column: str) -> list:
    numbers: list[str] = []
    before: dict[str, str] = {}
    if len(column) > 30 * len(features):  # a letter and up to 25 characters each
        raise ValueError("more numbers than readings")
    for feature, told in zip(features, re.findall(r"[a-z][0-9.]*", column), strict=True):
        before[feature] = before.get(feature, "")[: ord(told[0]) - ord("a")] + told[1:]
        numbers.append(before[feature])
    return numbers


_MINUTE = len("2026-11-25T09:12")
_FAR = 10**9  # minutes: nineteen centuries and more are not counted, and no digits beyond are read


def _since(times: list):
    """Minutes since the time before, where both are written alike from the seconds on; else the time
    itself."""
    for before, at in zip(times, times[1:]):
        alike = len(before) > _MINUTE - 1 < len(at) and before[_MINUTE:] == at[_MINUTE:]
        minutes = (_naive(at) - _naive(before)) // timedelta(minutes=1) if alike else 0
        yield str(minutes) if alike and abs(minutes) < _FAR else at


def _times(started: str, fields: list) -> list:
    times = [started]
    for field in fields:
        if re.fullmatch("-?[0-9]{1,10}", field):
            field = (_naive(times[-1]) + timedelta(minutes=int(field))).isoformat(timespec="minutes") + times[
                -1
            ][_MINUTE:]
        times.append(field)
    return times[1:]


def _naive(at: str) -> datetime:
    return datetime.fromisoformat(at[:_MINUTE])
