"""A job's sheet that comes back from whoever bolted the engine together: which of its readings and lines of what was done the job itself
has not, and the job with them.

Both are states of one job, and readings are only ever added, so what is new at a feature, place and stage are the sheet's readings
behind the last one that the job knows. They are taken over as they are, to the last character; one that stands for another size in the
job says in its `why` which sheet it came with, and what the job had stays in the history. So it is with the lines of what was done, which are added
at the end and bear no time: new are those behind the last one that both have. A line before it that the job has not was struck there.
"""
from dataclasses import dataclass
from datetime import datetime, timezone

from calc.inputs import WARM
from calc.job import record

_SIZE = ("text", *WARM, "of")


@dataclass(frozen=True)
class New:
    """A reading as the job would take it, and the one that it replaces there (None where it is the first)."""
    reading: dict
    before: dict | None


def belongs(job: dict, sheet: dict) -> bool:
    """Do both tell of the same job?"""
    return (job["id"], job["engine"]) == (sheet["id"], sheet["engine"])


def compare(job: dict, sheet: dict, named: str) -> tuple[list[New], list[New]]:
    """(what the sheet has and the job has not, what of it stays out because the job has a later reading there), in the sheet's order.

    `named` says which sheet it is, in the words that a correction's reason begins with.
    """
    if not belongs(job, sheet):
        return [], []
    ours, theirs = _by_spot(job), _by_spot(sheet)
    new, late = {}, {}  # by their number in the sheet
    for spot, numbered in theirs.items():
        mine = [reading for _, reading in ours.get(spot, ())]
        known = {_identity(reading) for reading in mine}
        begin = max((n for n, (_, reading) in enumerate(numbered, 1) if _identity(reading) in known), default=0)
        last, own, found = mine[-1] if mine else None, bool(mine), {}
        for number, reading in numbered[begin:]:
            if _size(reading) == _size(last or {"text": ""}):
                continue  # the same once more, or nothing to take back
            why = f"{named}: {reading['why']}".removesuffix(": ") if own else reading["why"]
            found[number] = New({**reading, "why": why[:record.LONGEST_WHY]}, last)
            last, own = reading, False
        ahead = found and mine and _identity(mine[-1]) not in {_identity(reading) for _, reading in numbered} and _when(mine[-1]) > _when(last)
        (late if ahead else new).update(found)
    return [new[number] for number in sorted(new)], [late[number] for number in sorted(late)]


def done(job: dict, sheet: dict) -> tuple[list[str], list[str]]:
    """(the lines of what was done that the sheet has and the job has not, those of them for which the job has no room), in the sheet's order."""
    if not belongs(job, sheet):
        return [], []
    begin = max((n for n, line in enumerate(sheet["done"], 1) if line in job["done"]), default=0)
    new, room = sheet["done"][begin:], record.MOST_DONE - len(job["done"])
    return new[:room], new[room:]


def take_over(job: dict, sheet: dict, named: str) -> dict:
    """The job with what the sheet has and it has not; the same job where that is nothing."""
    (new, _), (lines, _) = compare(job, sheet, named), done(job, sheet)
    if new:
        job = record.add_readings(job, [one.reading for one in new])
    return record.change(job, done=[*job["done"], *lines]) if lines else job


def _by_spot(job: dict) -> dict:
    """{(feature, place, stage): [(its number in the job, reading)]}"""
    found: dict = {}
    for number, reading in enumerate(job["readings"]):
        found.setdefault((reading["feature"], reading["place"], reading["stage"]), []).append((number, reading))
    return found


def _size(reading: dict) -> tuple:
    return tuple(reading.get(key, "") for key in _SIZE)


def _identity(reading: dict) -> tuple:
    """By what a reading is known again, whatever reason it was given on the way."""
    return (*_size(reading), reading["at"], reading["by"])


def _when(reading: dict) -> datetime:
    at = datetime.fromisoformat(reading["at"])
    return at if at.tzinfo else at.replace(tzinfo=timezone.utc)
