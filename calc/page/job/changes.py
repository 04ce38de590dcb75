"""The calls that change a job: each gives back its text, or refuses in one sentence at a field."""

from calc.job import files, record, ticks
from calc.job.checking import feature_of
from calc.job.contents import STAGES, JobError, NoReason
from calc.job.verdicts import judge_one
from calc.page.html import Html, el
from calc.page.job.pieces import AtField, chip, job_of, made, reading, with_unit
from calc.stations import index as stations


def new(asked: dict) -> dict:
    if not asked["name"].strip():
        raise AtField(
            "name", "empty", "Give the job a name that you will know it by, such as the customer's."
        )
    return made(
        record.new(
            asked["id"], asked["name"], asked["engine"], asked["received"], asked["now"], asked["shop"]
        )
    )


def read(asked: dict) -> dict:
    """A file's text as a job; refused with the reason where it is none."""
    return made(files.load(asked["text"]))


def change(asked: dict) -> dict:
    """What was changed in the form; the rest stays as it is by now."""
    told = {"name": "name", "received": "received", "shop": "by"}
    fields = {key: asked[name] for name, key in told.items() if name in asked}
    return made(record.change(job_of(asked["job"]), **fields))


def add(asked: dict) -> dict:
    """A reading typed on the job's own page, or its correction."""
    job, text = job_of(asked["job"]), asked.get("text", "")
    feature = feature_of(job, asked["feature"])
    if not text.strip():
        raise AtField(
            "text",
            "empty",
            f"{feature.label if feature else asked['feature']}: is empty; type what you read.",
        )
    spot = asked["feature"], asked.get("place", ""), asked["stage"]
    _check_unchanged(job, asked, spot)
    if feature:
        text = with_unit(text, feature.form, asked["system"], feature.label, "text")
        if feature.places and not asked.get("place"):
            raise AtField("place", "place", f"{feature.label}: say which one it is.")
    added = _added(job, asked, text)
    return made(added) | {"html": {"kept": _kept(added, *spot)}}


def take_back(asked: dict) -> dict:
    """A reading that was none; it stays in the history."""
    job = job_of(asked["job"])
    _check_unchanged(job, asked, (asked["feature"], asked.get("place", ""), asked["stage"]))
    return made(_added(job, asked, ""))


def _check_unchanged(job: dict, asked: dict, spot: tuple[str, str, str]) -> None:
    """A correction is one of the reading that its form shows: it says how many there were."""
    told = record.history(job, *spot)
    if "shown" in asked and len(told) != int(asked["shown"]):
        raise AtField(
            "text",
            "changed",
            "Nothing was kept: another tab has read this size anew meanwhile"
            f" ({told[-1]['text'] or 'taken back'}). Look at what stands there now, then correct that.",
        )


def _added(job: dict, asked: dict, text: str) -> dict:
    try:
        return record.add_reading(
            job,
            asked["feature"],
            asked.get("place", ""),
            asked["stage"],
            text,
            asked["now"],
            asked["by"],
            asked.get("why", ""),
        )
    except JobError as error:
        raise AtField("why" if isinstance(error, NoReason) else "text", "kept", str(error)) from None


def _kept(job: dict, id: str, place: str, stage: str) -> Html | None:
    """On the spot: what was kept, whether it is right, and what to do."""
    row = judge_one(job, id, place)
    if row is None:
        return None
    size = getattr(row, stage)
    return el(
        "p",
        "Kept: ",
        " ".join(filter(None, (row.label, place))),
        ", ",
        reading(job, size.reading),
        " ",
        STAGES[stage],
        ". ",
        chip(size.state) if size.state else None,
        " ",
        size.words,
        ". ",
        size.do,
        class_=f"job-kept job-is-{size.state or 'none'}",
    )


def done(asked: dict) -> dict:
    if not asked["text"].strip():
        raise AtField("text", "empty", "Say in a few words what was done.")
    return made(record.add_done(job_of(asked["job"]), asked["text"], asked["now"], asked["by"]))


def tick(asked: dict) -> dict:
    """A check ticked off, of those that the job asks for by now."""
    job = job_of(asked["job"])
    check = next((one for one in stations.checks(job) if one.id == asked["check"]), None)
    if check is None:
        raise JobError("This check is no longer asked for with what has been read since.")
    return made(ticks.tick(job, check.id, check.title, asked["now"], asked["by"]))


def strike(asked: dict) -> dict:
    """The line of what was done that bears this name, struck, wherever it stands by now."""
    return made(record.strike(job_of(asked["job"]), asked["line"], asked["now"], asked["by"]))


def unstrike(asked: dict) -> dict:
    return made(record.unstrike(job_of(asked["job"]), asked["line"], asked["now"], asked["by"]))
