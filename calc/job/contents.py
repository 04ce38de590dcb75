"""What a job's record is made of: its keys and their order, how long a text may be, and how they are
refused."""

import json
import re
from datetime import datetime
from zlib import crc32

from calc.core.reading import quoted
from calc.declare.warm import WARM
from calc.reference.sheet import LONGEST_NAME
from calc.reference.sheet_row import LONGEST_PLACE

FORMAT, VERSION = "sizebook-job", 2
WRITER = "written_by"  # which handbook wrote the file
STAGES = {"received": "as received", "finished": "as finished", "assembly": "at assembly"}
# readings; lines of what was done; how often one is struck or put back
MOST_READINGS, MOST_DONE, MOST_STRUCK = (5000, 100, 300)
# characters of all texts together, of a file; bytes of it; how deep its parts stand in each other
MOST_TEXT, LONGEST_FILE, MOST_BYTES, DEEPEST = (2_000_000, 6_000_000, 10_000_000, 30)
LONGEST = {
    "id": 64,
    "name": 120,
    "engine": 40,
    "sheet": 8,
    "received": 600,
    "by": 60,
    "done": 400,
    "feature": LONGEST_NAME,
    "place": LONGEST_PLACE,
    "stage": 20,
    "text": 100,
    "why": 200,
    "part": 40,
    "gauge": 40,
    "of": 40,
    "line": 40,
}
LONGEST_WHY = LONGEST["why"]
JOB_KEYS = ("format", "version", "id", "name", "engine", "received", "started", "by", "done", "readings")
ORDER = (*JOB_KEYS[:5], "sheet", *JOB_KEYS[5:8])  # their order in a file, but for the lists
MARK_KEYS = ("sheet",)  # only where the handbook had the sheet
READING_KEYS = ("feature", "place", "stage", "text", "at", "by", "why")
BESIDE = (*WARM, "of")  # only where something is told
DONE_KEYS = ("line", "text", "at", "by")
_UNSEEN = re.compile("[\x00-\x08\x0b-\x1f\x7f-\x9f\ud800-\udfff]")  # no page and no file can hold these
_TIME = re.compile(
    r"[0-9]{4}-[0-9]{2}-[0-9]{2}(T([01][0-9]|2[0-3]):[0-5][0-9](:[0-5][0-9](\.[0-9]{1,6})?)?(Z|[+-]([01][0-9]|2[0-3]):[0-5][0-9])?)?"
)
NAME_MARKS, SHEET_MARK = re.compile("[A-Za-z0-9_-]+"), re.compile("[0-9a-f]{8}")


class JobError(ValueError):
    """What is wrong, and what would be accepted, in one sentence."""


class NoReason(JobError):
    """A correction that does not say why."""


def name_of_line(text: str, at: str, by: str, known) -> str:
    """What a new line is called: the same wherever the same is written down, and unlike those that are
    `known`."""
    n, name = 0, _mark_of(text, at, by)
    while name in known:
        n += 1
        name = _mark_of(text, at, by, n)
    return name


def _mark_of(*told) -> str:
    return f"{crc32(json.dumps(told).encode()):08x}"


def check_keys(where: str, data: dict, keys: tuple, more: tuple = ()) -> None:
    for key in keys:
        if key not in data:
            raise JobError(f"{where} is not whole: its {key} is missing.")
    for key in data:
        if key not in keys + more:
            raise JobError(f"{where} has {quoted(str(key))}, which this form of a job has not.")


def check_text(where: str, value, key: str) -> None:
    if not isinstance(value, str):
        raise JobError(f"{where} is not a text.")
    if len(value) > LONGEST[key]:
        raise JobError(f"{where} has {len(value)} characters; give at most {LONGEST[key]}.")
    if odd := _UNSEEN.search(value):
        raise JobError(f"{where} holds a character that cannot be shown (U+{ord(odd[0]):04X}); leave it out.")


def check_time(where: str, value) -> None:
    try:
        if isinstance(value, str) and _TIME.fullmatch(value) and datetime.fromisoformat(value):
            return
    except ValueError:  # the 30th of February
        pass
    raise JobError(
        f"{where} has the time {quoted(str(value)[:60])}; give a day and an hour such as"
        " 2026-11-25T14:15+01:00."
    )
