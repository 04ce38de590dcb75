"""The record of a job: which sizes were read off which part, when, by whom. Plain data, written as JSON.

    {"format": "sizebook-job", "version": 2, "id": "k3J9", "name": "Orchard frost fan", "engine": "TS-16", "sheet": "5f0c21aa",
     "received": "two heads, crank", "started": "2026-11-25T09:12+01:00", "by": "Tern Street Engine Works",
     "done": [{"line": "1b6a8cec", "text": "Mains ground", "at": "2026-11-25T14:02+01:00", "by": "MK"}],
     "readings": [{"feature": "crank.main_journal", "place": "2", "stage": "finished", "text": "54.987 mm ± 0.004 mm",
                   "at": "2026-11-25T14:15+01:00", "by": "MK", "why": ""}]}

A reading is a text that names its unit, as it was typed: values are read from it, so whatever carries the text carries the size to the
last bit. A warm one tells the temperatures of part and gauge and the material beside it (part, gauge, of). Readings are only ever
added: of those with the same feature, place and stage the last one counts, the others are its history. One with an empty text takes
back what was read. So it is with the lines of what was done: each has a name of its own (`line`), which whoever strikes it gives, and
an entry of that line with an empty text strikes it. `sheet` marks the limits of these features as they were at the last reading, so that other ones since then are noticed.

No function changes the job that it is given. What cannot be used raises `JobError`, one sentence.
"""

import json
import re
from dataclasses import dataclass
from datetime import datetime
from difflib import get_close_matches
from functools import lru_cache
from zlib import crc32

from calc import __version__
from calc.core.conformance import COVERAGE
from calc.core.kinds import KINDS, LENGTH, TEMPERATURE, Kind
from calc.core.reading import Entry, EntryError, quoted, read, with_article
from calc.core.result import Refused
from calc.core.working import Number, constant, form
from calc.core.writing import decimals_for
from calc.declare.inputs import WARM, Quantity
from calc.reference import engine as engines
from calc.reference.materials import MATERIALS

FORMAT, VERSION = "sizebook-job", 2
WRITER = "written_by"  # which handbook wrote the file
STAGES = {"received": "as received", "finished": "as finished", "assembly": "at assembly"}

MOST_READINGS, MOST_DONE, MOST_STRUCK = (
    5000,
    100,
    300,
)  # readings; lines of what was done; how often one is struck or put back
MOST_TEXT, LONGEST_FILE, MOST_BYTES, DEEPEST = (
    2_000_000,
    6_000_000,
    10_000_000,
    30,
)  # characters of all texts together, of a file; bytes of it; how deep its parts stand in each other
_LONGEST = {
    "id": 64,
    "name": 120,
    "engine": 40,
    "sheet": 8,
    "received": 600,
    "by": 60,
    "done": 400,
    "feature": engines.LONGEST_NAME,
    "place": engines.LONGEST_PLACE,
    "stage": 20,
    "text": 100,
    "why": 200,
    "part": 40,
    "gauge": 40,
    "of": 40,
    "line": 40,
}
LONGEST_WHY = _LONGEST["why"]
_JOB = ("format", "version", "id", "name", "engine", "received", "started", "by", "done", "readings")
_KEYS = (*_JOB[:5], "sheet", *_JOB[5:8])  # their order in a file, but for the lists
_MARK = ("sheet",)  # only where the handbook had the sheet
_READING = ("feature", "place", "stage", "text", "at", "by", "why")
_BESIDE = (*WARM, "of")  # only where something is told
_DONE = ("line", "text", "at", "by")
_UNSEEN = re.compile("[\x00-\x08\x0b-\x1f\x7f-\x9f\ud800-\udfff]")  # no page and no file can hold these
_TIME = re.compile(
    r"[0-9]{4}-[0-9]{2}-[0-9]{2}(T([01][0-9]|2[0-3]):[0-5][0-9](:[0-5][0-9](\.[0-9]{1,6})?)?(Z|[+-]([01][0-9]|2[0-3]):[0-5][0-9])?)?"
)
_BARE = re.compile(r"[-−+±0-9.,/()eE\s]*")  # names no unit
_ID, _SHEET = re.compile("[A-Za-z0-9_-]+"), re.compile("[0-9a-f]{8}")


class JobError(ValueError):
    """What is wrong, and what would be accepted, in one sentence."""


class NoReason(JobError):
    """A correction that does not say why."""


# --- Making and adding ----------------------------------------------------------------------


def new(id: str, name: str, engine: str, received: str, at: str, by: str = "") -> dict:
    """A job without readings. `id` is the caller's, random; `at` an ISO 8601 time, kept to the minute; `by` whose shop."""
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
    """The job with one more reading. `text` names its unit and may carry a doubt (expanded, k = 2); "" takes back what was read.

    What replaces another reading says why; the same text by the same hand once more changes nothing. `part` and `gauge` are the
    temperatures of a warm reading, `of` the part's material.
    """
    told = {
        "feature": feature,
        "place": place,
        "stage": stage,
        "text": text,
        "by": by,
        "why": why,
        "part": part,
        "gauge": gauge,
        "of": of,
    }
    for what, value in told.items():
        _check_text(f"The reading's {what}", value, what)
    told = {
        what: _tidy(value) if what not in ("feature", "place", "stage") else value
        for what, value in told.items()
    }
    where, on_sheet = _name(job, feature, place), feature_of(job, feature)
    if stage not in STAGES:
        raise JobError(f"{where}: {quoted(stage)} is no stage of a reading; give {', '.join(STAGES)}.")
    if not any(
        (r["feature"], r["place"]) == (feature, place) for r in job["readings"]
    ):  # what is there can always be corrected
        _check_feature(job, feature, place)
    if told["text"]:
        told["text"] = self_contained(told["text"], on_sheet.form.kind if on_sheet else None, where)
    for part in WARM:
        if told[part]:
            told[part] = self_contained(told[part], TEMPERATURE, f"{where}, {WARM[part]}")
    made = _reading(job, told | {"at": _minute(where, at)}, where)
    before = next(
        (
            r
            for r in reversed(job["readings"])
            if (r["feature"], r["place"], r["stage"]) == (feature, place, stage)
        ),
        None,
    )
    before = before if before and before["text"] else None
    if (
        before
        and not made["why"]
        and all(made.get(key) == before.get(key) for key in ("text", "by", *_BESIDE))
    ):
        return job  # a second tap
    _check_correction(before, made, where)
    if made["text"]:
        number(job, made)  # a temperature or material that cannot be used is told here
    if len(job["readings"]) >= MOST_READINGS:
        raise JobError(f"This job has {MOST_READINGS} readings, and no more are kept; start a second job.")
    return _marked(_not_too_long({**job, "readings": [*job["readings"], made]}))


def add_readings(job: dict, readings: list) -> dict:
    """The job with readings of another state of it, taken over as they are."""
    return checked(_marked({**job, "readings": [*job["readings"], *readings]}))


def add_done(job: dict, text: str, at: str = "", by: str = "") -> dict:
    """The job with one more line of what was done, `at` a time or "" where nobody told it. The same words of the same minute and hand are a second tap."""
    at, by, text = _minute("A line of what was done", at) if at else "", _tidy(by), _tidy(text)
    _check_text("A line of what was done", text, "done")
    known = done(job)
    if at and any((line.text, line.at, line.by) == (text, at, by) and not line.struck for line in known):
        return job
    if len(known) >= MOST_DONE:
        raise JobError(
            f"This job has {MOST_DONE} lines of what was done, and no more are kept; start a second job."
        )
    return _with_entry(
        job,
        {"line": name_of_line(text, at, by, {line.line for line in known}), "text": text, "at": at, "by": by},
    )


def strike(job: dict, line: str, at: str, by: str) -> dict:
    """The job with a line of what was done struck, by its name; the line stays in the history. One that is struck already stays so."""
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
    return _not_too_long({**job, "done": _entries([*job["done"], entry])})


def add_entries(job: dict, entries: list) -> dict:
    """The job with entries of what was done of another state of it, taken over as they are."""
    return checked({**job, "done": [*job["done"], *entries]})


def name_of_line(text: str, at: str, by: str, known) -> str:
    """What a new line is called: the same wherever the same is written down, and unlike those that are `known`."""
    n, name = 0, _mark_of(text, at, by)
    while name in known:
        n += 1
        name = _mark_of(text, at, by, n)
    return name


def _mark_of(*told) -> str:
    return f"{crc32(json.dumps(told).encode()):08x}"


def change(job: dict, **fields) -> dict:
    """The job with another name, engine, received or by. A reading is corrected by adding one, a line of what was done is struck."""
    for key in fields:
        if key not in ("name", "engine", "received", "by"):
            raise JobError(f"A job's {key} cannot be changed; what can is its name, engine, received and by.")
    changed = checked({**job, **{key: _tidy(value) for key, value in fields.items()}})
    return changed if changed["engine"] == job["engine"] else checked(_marked(changed))


# --- Looking ----------------------------------------------------------------------------------


def current(job: dict) -> dict:
    """{(feature, place, stage): the reading that counts} in the order of the engine's sheet; what it does not know comes last."""
    last, sheet = _last(job), sheet_of(job)
    places = (
        {id: {place: i for i, place in enumerate(feature.places)} for id, feature in sheet.features.items()}
        if sheet
        else {}
    )
    order, seen, stages = {id: i for i, id in enumerate(places)}, {}, list(STAGES)
    for feature, place, _ in last:
        seen.setdefault(feature, len(seen))

    def rank(key):
        feature, place, stage = key
        return (
            order.get(feature, len(order) + seen[feature]),
            places.get(feature, {}).get(place, engines.MOST_PLACES),
            place,
            stages.index(stage),
        )

    return {key: last[key] for key in sorted(last, key=rank) if last[key]["text"]}


def counting(job: dict) -> dict:
    """What `current` gives, in the order in which it was read: for one question the sheet's order is not worth its time."""
    return {key: reading for key, reading in _last(job).items() if reading["text"]}


def _last(job: dict) -> dict:
    return {(reading["feature"], reading["place"], reading["stage"]): reading for reading in job["readings"]}


def histories(job: dict) -> dict:
    """{(feature, place, stage): every reading there, the first one first; those taken back too}: one walk for whoever needs many of them."""
    found: dict = {}
    for reading in job["readings"]:
        found.setdefault((reading["feature"], reading["place"], reading["stage"]), []).append(reading)
    return found


def history(job: dict, feature: str, place: str, stage: str) -> list:
    """Every reading of one feature, place and stage, the first one first; those taken back too."""
    return [r for r in job["readings"] if (r["feature"], r["place"], r["stage"]) == (feature, place, stage)]


@dataclass(frozen=True)
class Line:
    """A line of what was done: its words as they were last, when and by whom it was written down, the entry that struck it (None
    while it stands), and all its entries, the first one first."""

    line: str
    text: str
    at: str
    by: str
    struck: dict | None
    entries: tuple


def done(job: dict) -> list[Line]:
    """Every line of what was done, in the order in which they were written down; those that were struck too."""
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


def sheet_of(job: dict) -> "engines.Engine | None":
    """The data sheet of the job's engine, None where this handbook has not got it. JobError where it has one that cannot be used."""
    try:
        return engines.engine(job["engine"])
    except KeyError:
        return None
    except engines.SheetError as error:
        raise JobError(str(error)) from None


def sheet_changed(job: dict) -> bool:
    """Has the engine's data sheet other limits for what was read than at the last reading? What was right then may not be so now."""
    sheet = sheet_of(job)
    return bool(sheet and "sheet" in job and job["sheet"] != _mark(sheet, job))


def feature_of(job: dict, id: str) -> "engines.Feature | None":
    """A feature of the job's engine, None where its sheet, or the feature on it, is not in this handbook."""
    sheet = sheet_of(job)
    return sheet.features.get(id) if sheet else None


def number(job: dict, reading: dict) -> tuple[Number, float]:
    """What a reading says: its value (SI, at 20 °C where it was warm) and its standard uncertainty (0 where no doubt is told).

    Raises JobError where the text is not of the feature's kind, and where a warm reading cannot be brought to 20 °C.
    """
    feature, where = feature_of(job, reading["feature"]), _name(job, reading["feature"], reading["place"])
    if feature:
        kind, shape, label = feature.form.kind, feature.form, feature.label
    else:
        kind = kind_of(reading["text"])
        if kind is None:
            raise JobError(f"{where}: {quoted(reading['text'])} cannot be read.")
        shape, label = form(kind, _decimals(reading["text"], kind)), reading["feature"]
    beside = {part: reading[part] for part in WARM if part in reading}
    if not beside:
        try:
            entry = _entry(reading["text"], kind)
        except EntryError as error:
            raise JobError(f"{where}: {error.problem}; {error.accepted}.") from None
        return constant("", label, shape, entry.value), (entry.doubt or 0.0) / COVERAGE
    of = reading.get("of", "")
    if of not in MATERIALS:
        raise JobError(
            f"{where} was read warm, and {quoted(of)} is no material of this handbook; give one of"
            f" {', '.join(MATERIALS)}."
        )
    if kind.dims != (1, 0, 0, 0):
        raise JobError(
            f"{where} tells a temperature, which only a length is brought to 20 °C from; leave it out."
        )
    try:
        return _cooled(label, shape, of, reading["text"], tuple(beside.items()))
    except Refused as refused:
        raise JobError(str(refused.errors[0]).replace(label, where, 1)) from None


@lru_cache(maxsize=8192)
def _cooled(label: str, shape, of: str, text: str, beside: tuple) -> tuple[Number, float]:
    """A length that was read warm, at 20 °C, and its standard uncertainty."""
    taken = _warm(label, shape, of).take({"": text, **dict(beside)}, "metric", {})
    return taken.value, dict(taken.doubts).get((), 0.0)


@lru_cache(maxsize=256)
def _warm(label: str, shape, of: str) -> Quantity:
    return Quantity(label, "", shape, ("-1 m", "1 m"), of=of)


# --- Texts of readings ------------------------------------------------------------------------


def self_contained(text: str, kind: Kind | None, where: str = "Reading") -> str:
    """The text such that it means the same wherever it goes: its unit named, a decimal point. `kind` None: whatever its unit is of."""
    kind = kind or kind_of(text)
    if kind is None:
        raise JobError(
            f"{where}: {quoted(text)} is no size with its unit; give one such as 37.48 mm ± 0.01 mm or 32"
            " N·m."
        )
    try:
        entry = _entry(text, kind)
    except EntryError as error:
        raise JobError(f"{where}: {error.problem}; {error.accepted}.") from None
    symbol = entry.unit.symbol
    plain = re.sub(r"(?<=[0-9])[ \u00a0\u202f](?=[0-9]{3})", "", text.replace(",", "."))
    for said in (
        text,
        plain,
        *(f"{said}{'' if symbol in '°′″' else ' '}{symbol}" for said in (text, plain) if said[-1:].isdigit()),
    ):
        if not _reads(said, kind):
            continue
        again = _entry(said, kind)
        if (
            (again.value, again.doubt) == (entry.value, entry.doubt)
            and not again.note
            and not (symbol and said[-1].isdigit())
        ):
            return said
    return text


@lru_cache(maxsize=4096)
def kind_of(text: str) -> Kind | None:
    """The kind of quantity that a text with its unit is most likely of, None where it is none: a unit written as its own symbol goes
    before another spelling, and a bare number is of a kind that has no unit."""
    if _BARE.fullmatch(text):
        likely = tuple(kind for kind in KINDS.values() if not kind.metric.symbol)
    else:
        likely = _kinds_like(_DENOMINATOR.sub(_nines, _DIGIT.sub("1", text))) or tuple(KINDS.values())
    kinds = [kind for kind in likely if _reads(text, kind)]
    return min(
        kinds, key=lambda kind: not text.rstrip().endswith(_entry(text, kind).unit.symbol), default=None
    )


_DIGIT, _DENOMINATOR = (
    re.compile(r"(?<![A-Za-zµ^])(?:[1-9]|0(?![.,])|(?<=[0-9])0)"),
    re.compile(r"(?<=/)[01]+"),
)


def _nines(found) -> str:
    return "9" * len(found[0])


@lru_cache(maxsize=1024)
def _kinds_like(shape: str) -> tuple:
    """The kinds that read a text with these marks and units; its digits are not looked at, so that thousands of sizes ask this a few times."""
    return tuple(kind for kind in KINDS.values() if _reads(shape, kind))


def _reads(text: str, kind: Kind) -> bool:
    try:
        return bool(_entry(text, kind))
    except EntryError:
        return False


def read_size(text: str, kind: Kind, unit=None) -> Entry:
    """What a reading says, as `calc.quantity.read` does. No length on these engines is a metre: the comma in "54,987 mm" is a decimal one."""
    return read(text, kind, unit, (-1.0, 1.0) if kind is LENGTH else None)


@lru_cache(maxsize=16384)
def _entry(text: str, kind: Kind) -> Entry:
    """What the text says in either system of units; EntryError where it says nothing, or something else in each."""
    metric, inch = (read_size(text, kind, kind.unit(system)) for system in ("metric", "inch"))
    if (metric.value, metric.doubt) != (inch.value, inch.doubt):
        raise EntryError(
            "unknown-unit",
            f"{quoted(text)} names no unit",
            f"give {with_article(kind.name)} such as {kind.example}",
        )
    return metric


def _decimals(text: str, kind: Kind) -> int:
    """How many decimals of the metric unit show a reading no coarser than it was written."""
    entry = _entry(text, kind)
    written = re.match(r"[^0-9]*[0-9]+[.,]([0-9]+)", text)
    return decimals_for(kind.metric, min(len(written[1]), 9) if written else 0, entry.unit)


def _marked(job: dict) -> dict:
    sheet = sheet_of(job)
    return {key: job[key] for key in job if key != "sheet"} | (
        {"sheet": _mark(sheet, job)} if sheet and job["readings"] else {}
    )


def _mark(sheet: "engines.Engine", job: dict) -> str:
    return sheet.mark({reading["feature"] for reading in job["readings"]})


def _name(job: dict, feature: str, place: str) -> str:
    known = feature_of(job, feature)
    return f"{known.label if known else feature} {place}".strip()


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
    _check_time(where, at)
    return re.sub(r"(T[0-9]{2}:[0-9]{2}):[0-9.]+", r"\1", at)


# --- Files ------------------------------------------------------------------------------------


def dump(job: dict) -> str:
    """The job's file: JSON with a check sum."""
    return written(checked(job))


def written(job: dict) -> str:
    """The file of a job that came from a function of this module, and so was looked at. It says which handbook wrote it, which is no part
    of the job: whoever writes it next says its own."""
    head = [f" {_plain(key)}: {_plain(job[key])}" for key in _KEYS if key in job]
    lists = [
        f" {_plain(key)}: ["
        + ",".join(f"\n  {_plain(one)}" for one in job[key])
        + ("\n ]" if job[key] else "]")
        for key in ("done", "readings")
    ]
    by = f' "{WRITER}": {_plain(f"Sizebook {__version__}")}'
    return "{\n" + ",\n".join([*head[:2], by, *head[2:], *lists, f' "check": "{_check(job)}"']) + "\n}\n"


def load(text: str | bytes) -> dict:
    """The job of a file. Raises JobError where it is damaged, foreign or of a newer form; an older form is brought to this one."""
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
        if type(writer) is not str or len(writer) > _LONGEST["by"]:
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


def checked(data) -> dict:
    """The job that parsed JSON holds, of the present form; JobError with the reason where it holds none."""
    if not isinstance(data, dict) or data.get("format") != FORMAT:
        raise JobError(f'This is no job of this handbook: it does not say "format": "{FORMAT}".')
    version = data.get("version")
    if type(version) is not int or version < 0:
        raise JobError("This job does not say which form it is of; its version must be a whole number.")
    if version > VERSION:
        raise JobError(
            f"This job is of form {str(version)[:9]}, written by a newer handbook, and this one reads forms"
            f" up to {VERSION}; open it with the newer one."
        )
    try:
        for old in range(version, VERSION):
            data = _OLDER[old](data)
    except (KeyError, TypeError, AttributeError):
        raise JobError(f"This job of form {version} is damaged: not all its parts are there.") from None
    _check_keys("This job", data, _JOB, _MARK)
    for key in ("id", "name", "engine", "received", "by"):
        _check_text(f"The job's {key}", data[key], key)
    if not _ID.fullmatch(data["id"]):
        raise JobError(f"The job's id {quoted(data['id'])} cannot be used; give letters, digits, _ and -.")
    if "sheet" in data:
        _check_text("The job's sheet", data["sheet"], "sheet")
        if not _SHEET.fullmatch(data["sheet"]):
            raise JobError(
                f"The mark of the job's data sheet, {quoted(data['sheet'])}, is none; give eight hexadecimal"
                " digits, or leave it out."
            )
    for key in ("name", "engine"):
        if not data[key].strip():
            raise JobError(
                f"The job's {key} is empty; give"
                f" {'what you know it by' if key == 'name' else 'the name of a data sheet, such as ' + engines.DEMO}."
            )
    _check_time("The job's start", data["started"])
    for key, most in (("done", MOST_DONE + MOST_STRUCK), ("readings", MOST_READINGS)):
        if not isinstance(data[key], list):
            raise JobError(f"The job's {key} is not a list.")
        if len(data[key]) > most:
            raise JobError(f"The job's {key} has {len(data[key])} lines; give at most {most}.")
    entries = _entries(data["done"])
    readings = [_reading(data, r, f"Reading {i}") for i, r in enumerate(data["readings"], 1)]
    return _not_too_long(
        {key: data[key] for key in _KEYS if key in data} | {"done": entries, "readings": readings}
    )


def _not_too_long(job: dict) -> dict:
    long = sum(len(value) for one in (*job["done"], *job["readings"]) for value in one.values())
    if long > MOST_TEXT:
        raise JobError(f"This job holds {long} characters; no more than {MOST_TEXT} are kept.")
    return job


def _entries(data: list) -> list:
    """The entries of what was done, looked at, their keys in order."""
    lines = set()
    for entry in data:
        if not isinstance(entry, dict):
            raise JobError("A line of what was done is none.")
        _check_keys("A line of what was done", entry, _DONE)
        for key in ("line", "text", "by"):
            _check_text("A line of what was done", entry[key], "done" if key == "text" else key)
        if entry["at"] != "":
            _check_time("A line of what was done", entry["at"])
        if not _ID.fullmatch(entry["line"]):
            raise JobError(
                f"A line of what was done is called {quoted(entry['line'])}; give letters, digits, _ and -."
            )
        if not entry["text"].strip() and (entry["text"] or entry["line"] not in lines):
            raise JobError("A line of what was done is empty; say it in words, or leave it out.")
        lines.add(entry["line"])
    if len(lines) > MOST_DONE:
        raise JobError(f"The job's done has {len(lines)} lines; give at most {MOST_DONE}.")
    return [{key: entry[key] for key in _DONE} for entry in data]


def _reading(job: dict, data, where: str) -> dict:
    """One reading, looked at, its keys in order. One of another kind than the sheet's, which may have changed, is kept."""
    if not isinstance(data, dict):
        raise JobError(f"{where} is not a reading.")
    _check_keys(where, data, _READING, _BESIDE)
    for key, value in data.items():
        if key != "at":
            _check_text(f"{where}, {key}", value, key)
    _check_time(where, data["at"])
    if not engines.FEATURE.fullmatch(data["feature"]):
        raise JobError(
            f"{where} is of {quoted(data['feature'])}, which is no feature; give one such as"
            " crank.main_journal."
        )
    if data["stage"] not in STAGES:
        raise JobError(f"{where} is at {quoted(data['stage'])}, which is no stage; give {', '.join(STAGES)}.")
    feature = feature_of(job, data["feature"])
    if data["text"] and not (feature and _reads(data["text"], feature.form.kind)):
        kind = kind_of(data["text"])
        if kind is None or feature and not kind.metric.symbol:
            raise JobError(
                f"{where}: {quoted(data['text'])} is no size with its unit; give one such as"
                f" {feature.form.kind.example if feature else '37.48 mm or 32 N·m'}."
            )
    if not data["text"] and not data["why"].strip():
        raise NoReason(f"{where} is taken back without a reason; say why.")
    for key in WARM:
        if data.get(key):
            try:
                _entry(data[key], TEMPERATURE)
            except EntryError as error:
                raise JobError(f"{where}, {key}: {error.problem}; {error.accepted}.") from None
    return {key: data[key] for key in _READING + _BESIDE if key in _READING or data.get(key)}


def _check_keys(where: str, data: dict, keys: tuple, more: tuple = ()) -> None:
    for key in keys:
        if key not in data:
            raise JobError(f"{where} is not whole: its {key} is missing.")
    for key in data:
        if key not in keys + more:
            raise JobError(f"{where} has {quoted(str(key))}, which this form of a job has not.")


def _check_text(where: str, value, key: str) -> None:
    if not isinstance(value, str):
        raise JobError(f"{where} is not a text.")
    if len(value) > _LONGEST[key]:
        raise JobError(f"{where} has {len(value)} characters; give at most {_LONGEST[key]}.")
    if odd := _UNSEEN.search(value):
        raise JobError(f"{where} holds a character that cannot be shown (U+{ord(odd[0]):04X}); leave it out.")


def _check_time(where: str, value) -> None:
    try:
        if isinstance(value, str) and _TIME.fullmatch(value) and datetime.fromisoformat(value):
            return
    except ValueError:  # the 30th of February
        pass
    raise JobError(
        f"{where} has the time {quoted(str(value)[:60])}; give a day and an hour such as"
        " 2026-11-25T14:15+01:00."
    )


# A string, or a mark that parts what stands around it. Possessive: no text makes it go back, or remember where it was.
_MARKS = re.compile(r'"[^"\\]*+(?:\\.[^"\\]*+)*+"?|[\[\]{}:,]', re.DOTALL)
_MOST_MARKS = (
    MOST_READINGS * (4 * len(_READING + _BESIDE) + 3) + (MOST_DONE + MOST_STRUCK) * (4 * len(_DONE) + 3) + 200
)


def _check_marks(text: str) -> None:
    """Refuses what holds more, or deeper, than any job, before it is parsed: deep JSON ends Python in a browser, and a list of
    millions of nothings fills it."""
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


# --- Older forms --------------------------------------------------------------------------------


def _from_0(old: dict) -> dict:
    """Form 0, of the trials: one line a size with both stages in it, and no history."""
    readings = []
    for size in old["sizes"]:
        _check_keys("A size", size, ("feature",), ("place", "as_received", "as_finished", "at", "by"))
        told = (
            {"feature": size["feature"], "place": str(size.get("place", ""))},
            {"at": size.get("at", old["started"]), "by": size.get("by", ""), "why": ""},
        )
        readings += [
            told[0] | {"stage": stage, "text": size[key]} | told[1]
            for key, stage in (("as_received", "received"), ("as_finished", "finished"))
            if size.get(key)
        ]
    return {
        "format": FORMAT,
        "version": 1,
        "id": old["id"],
        "name": old["customer"],
        "engine": old["engine"],
        "received": old.get("parts", ""),
        "started": old["started"],
        "by": "",
        "done": [],
        "readings": readings,
    }


def _from_1(old: dict) -> dict:
    """Form 1: what was done as bare texts, without a name to strike them by."""
    if not isinstance(old["done"], list):
        return {**old, "version": 2}  # told by whoever looks at it next
    entries: dict = {}
    for text in old["done"][: MOST_DONE + 1]:
        name = name_of_line(text, "", "", entries)
        entries[name] = {"line": name, "text": text, "at": "", "by": ""}
    return {**old, "version": 2, "done": [*entries.values()]}


_OLDER = {0: _from_0, 1: _from_1}
