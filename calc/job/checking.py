"""A job that came from anywhere, looked at whole: what cannot be kept is refused in one sentence."""

from calc.core.kinds import TEMPERATURE
from calc.core.reading import EntryError, quoted
from calc.declare.warm import WARM
from calc.job.contents import (
    BESIDE,
    DONE_KEYS,
    FORMAT,
    JOB_KEYS,
    MARK_KEYS,
    MOST_DONE,
    MOST_READINGS,
    MOST_STRUCK,
    MOST_TEXT,
    NAME_MARKS,
    ORDER,
    READING_KEYS,
    SHEET_MARK,
    STAGES,
    VERSION,
    JobError,
    NoReason,
    check_keys,
    check_text,
    check_time,
)
from calc.job.older import OLDER
from calc.job.texts import entry_of, kind_of, reads
from calc.reference import engine as engines


def sheet_of(job: dict) -> "engines.Engine | None":
    """The data sheet of the job's engine, None where this handbook has not got it. JobError where it has one
    that cannot be used."""
    try:
        return engines.engine(job["engine"])
    except KeyError:
        return None
    except engines.SheetError as error:
        raise JobError(str(error)) from None


def feature_of(job: dict, id: str) -> "engines.Feature | None":
    """A feature of the job's engine, None where its sheet, or the feature on it, is not in this handbook."""
    sheet = sheet_of(job)
    return sheet.features.get(id) if sheet else None


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
            data = OLDER[old](data)
    except (KeyError, TypeError, AttributeError):
        raise JobError(f"This job of form {version} is damaged: not all its parts are there.") from None
    check_keys("This job", data, JOB_KEYS, MARK_KEYS)
    for key in ("id", "name", "engine", "received", "by"):
        check_text(f"The job's {key}", data[key], key)
    if not NAME_MARKS.fullmatch(data["id"]):
        raise JobError(f"The job's id {quoted(data['id'])} cannot be used; give letters, digits, _ and -.")
    if "sheet" in data:
        check_text("The job's sheet", data["sheet"], "sheet")
        if not SHEET_MARK.fullmatch(data["sheet"]):
            raise JobError(
                f"The mark of the job's data sheet, {quoted(data['sheet'])}, is none; give eight hexadecimal"
                " digits, or leave it out."
            )
    sheet = f"the name of a data sheet, such as {engines.DEMO}"
    for key, wanted in (("name", "what you know it by"), ("engine", sheet)):
        if not data[key].strip():
            raise JobError(f"The job's {key} is empty; give {wanted}.")
    check_time("The job's start", data["started"])
    for key, most in (("done", MOST_DONE + MOST_STRUCK), ("readings", MOST_READINGS)):
        if not isinstance(data[key], list):
            raise JobError(f"The job's {key} is not a list.")
        if len(data[key]) > most:
            raise JobError(f"The job's {key} has {len(data[key])} lines; give at most {most}.")
    entries = checked_entries(data["done"])
    readings = [checked_reading(data, r, f"Reading {i}") for i, r in enumerate(data["readings"], 1)]
    return not_too_long(
        {key: data[key] for key in ORDER if key in data} | {"done": entries, "readings": readings}
    )


def not_too_long(job: dict) -> dict:
    long = sum(len(value) for one in (*job["done"], *job["readings"]) for value in one.values())
    if long > MOST_TEXT:
        raise JobError(f"This job holds {long} characters; no more than {MOST_TEXT} are kept.")
    return job


def checked_entries(data: list) -> list:
    """The entries of what was done, looked at, their keys in order."""
    lines = set()
    for entry in data:
        if not isinstance(entry, dict):
            raise JobError("A line of what was done is none.")
        check_keys("A line of what was done", entry, DONE_KEYS)
        for key in ("line", "text", "by"):
            check_text("A line of what was done", entry[key], "done" if key == "text" else key)
        if entry["at"] != "":
            check_time("A line of what was done", entry["at"])
        if not NAME_MARKS.fullmatch(entry["line"]):
            raise JobError(
                f"A line of what was done is called {quoted(entry['line'])}; give letters, digits, _ and -."
            )
        if not entry["text"].strip() and (entry["text"] or entry["line"] not in lines):
            raise JobError("A line of what was done is empty; say it in words, or leave it out.")
        lines.add(entry["line"])
    if len(lines) > MOST_DONE:
        raise JobError(f"The job's done has {len(lines)} lines; give at most {MOST_DONE}.")
    return [{key: entry[key] for key in DONE_KEYS} for entry in data]


def checked_reading(job: dict, data, where: str) -> dict:
    """One reading, looked at, its keys in order. One of another kind than the sheet's, which may have
    changed, is kept."""
    if not isinstance(data, dict):
        raise JobError(f"{where} is not a reading.")
    check_keys(where, data, READING_KEYS, BESIDE)
    for key, value in data.items():
        if key != "at":
            check_text(f"{where}, {key}", value, key)
    check_time(where, data["at"])
    if not engines.FEATURE.fullmatch(data["feature"]):
        raise JobError(
            f"{where} is of {quoted(data['feature'])}, which is no feature; give one such as"
            " crank.main_journal."
        )
    if data["stage"] not in STAGES:
        raise JobError(f"{where} is at {quoted(data['stage'])}, which is no stage; give {', '.join(STAGES)}.")
    feature = feature_of(job, data["feature"])
    if data["text"] and not (feature and reads(data["text"], feature.form.kind)):
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
                entry_of(data[key], TEMPERATURE)
            except EntryError as error:
                raise JobError(f"{where}, {key}: {error.problem}; {error.accepted}.") from None
    return {key: data[key] for key in READING_KEYS + BESIDE if key in READING_KEYS or data.get(key)}
