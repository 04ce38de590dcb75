"""A job's file: JSON with a check sum, whatever stands in it read in bounded time and room."""

import json
import re
from zlib import crc32

from calc import __version__
from calc.core.reading import quoted
from calc.job.checking import checked
from calc.job.contents import (
    BESIDE,
    DEEPEST,
    DONE_KEYS,
    LONGEST,
    LONGEST_FILE,
    MOST_BYTES,
    MOST_DONE,
    MOST_READINGS,
    MOST_STRUCK,
    ORDER,
    READING_KEYS,
    WRITER,
    JobError,
)


def dump(job: dict) -> str:
    """The job's file: JSON with a check sum."""
    return written(checked(job))


def written(job: dict) -> str:
    """The file of a job that came from a function of this module, and so was looked at. It says which
    handbook wrote it, which is no part of the job: whoever writes it next says its own."""
    head = [f" {_plain(key)}: {_plain(job[key])}" for key in ORDER if key in job]
    lists = [
        f" {_plain(key)}: ["
        + ",".join(f"\n  {_plain(one)}" for one in job[key])
        + ("\n ]" if job[key] else "]")
        for key in ("done", "readings")
    ]
    by = f' "{WRITER}": {_plain(f"Sizebook {__version__}")}'
    return "{\n" + ",\n".join([*head[:2], by, *head[2:], *lists, f' "check": "{_check(job)}"']) + "\n}\n"


def load(text: str | bytes) -> dict:
    """The job of a file. Raises JobError where it is damaged, foreign or of a newer form; an older form is
    brought to this one."""
    try:
        if isinstance(text, bytes):
            if len(text) > MOST_BYTES:
                raise JobError(
                    f"This is no job's file: it has {len(text)} bytes, and no job has more than {MOST_BYTES}."
                )
            text = text.decode("utf-8-sig")
        if len(text) > LONGEST_FILE:
            raise JobError(
                f"This is no job's file: it has {len(text)} characters, and no job has more than"
                f" {LONGEST_FILE}."
            )
        _check_marks(text)
        data = json.loads(
            text.removeprefix("\ufeff"),
            object_pairs_hook=_once,
            parse_constant=_no_constant,
            parse_int=_whole,
            parse_float=_short,
        )
        said = data.pop("check", None) if isinstance(data, dict) else None
        writer = data.pop(WRITER, "") if isinstance(data, dict) else ""
        if type(writer) is not str or len(writer) > LONGEST["by"]:
            raise JobError(f"This job's {WRITER} is no name of a handbook; take it out, or give a text.")
        if said is not None and said != _check(data):
            raise JobError(
                "This job's file was changed or damaged after it was written: its check sum does not fit;"
                " take the file as it was, or leave out its check."
            )
    except JobError:
        raise
    except UnicodeDecodeError:
        raise JobError("This is no job's file: it is not text in UTF-8.") from None
    except json.JSONDecodeError as error:
        what = "is empty" if not text.strip() else f"is not JSON, or was cut short (line {error.lineno})"
        raise JobError(f"This is no job's file: it {what}; give a file that was exported here.") from None
    return checked(data)


# A string, or a mark that parts what stands around it. Possessive: no text makes it go back, or remember
# where it was.
_MARKS = re.compile(r'"[^"\\]*+(?:\\.[^"\\]*+)*+"?|[\[\]{}:,]', re.DOTALL)
_MOST_MARKS = (
    MOST_READINGS * (4 * len(READING_KEYS + BESIDE) + 3)
    + (MOST_DONE + MOST_STRUCK) * (4 * len(DONE_KEYS) + 3)
    + 200
)


def _check_marks(text: str) -> None:
    """Refuses what holds more, or deeper, than any job, before it is parsed: deep JSON ends Python in a
    browser, and a list of millions of nothings fills it."""
    depth = 0
    for n, found in enumerate(_MARKS.finditer(text)):
        if n > _MOST_MARKS:
            raise JobError("This is no job's file: it has more parts than any job.")
        mark = text[found.start()]
        if mark in "[{":
            depth += 1
            if depth > DEEPEST:
                raise JobError("This is no job's file: its parts stand inside each other too deep.")
        elif mark in "]}":
            depth -= 1


def _once(pairs: list) -> dict:
    made: dict = {}
    for key, value in pairs:
        if key in made:
            raise JobError(f"This is no job's file: {quoted(key)} stands in it twice at one place.")
        made[key] = value
    return made


def _no_constant(name):
    raise JobError(f"This is no job's file: {name} stands in it, which is no size.")


def _short(digits: str) -> float:
    if len(digits) > 60:
        raise JobError("This is no job's file: it holds a number beyond all sizes.")
    return float(digits)


def _whole(digits: str) -> int:
    _short(digits)
    return int(digits)


_plain = json.JSONEncoder(ensure_ascii=False).encode
_sorted = json.JSONEncoder(sort_keys=True, separators=(",", ":")).encode


def _check(data) -> str:
    """Check sum over what the file says, whatever its spaces and the order of its keys."""
    found = 0
    for piece in _pieces(data, 2):
        found = crc32(piece.encode(), found)
    return f"{found:08x}"


def _pieces(data, deep: int):
    """The JSON of the check sum, a reading at a time: as a whole it would stand there thrice."""
    if not deep or not isinstance(data, (dict, list)) or not data:
        yield _sorted(data)
        return
    named = isinstance(data, dict)
    for n, key in enumerate(sorted(data) if named else range(len(data))):
        yield ("," if n else "{" if named else "[") + (f"{_sorted(key)}:" if named else "")
        yield from _pieces(data[key], deep - 1)
    yield "}" if named else "]"
