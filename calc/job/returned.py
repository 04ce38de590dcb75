"""A job's sheet that comes back from whoever bolted the engine together: which of its readings and lines of
what was done the job itself has not, and the job with them.

Both are states of one job, and readings are only ever added, so what is new at a feature, place and stage are
the sheet's readings behind the last one that the job knows. They are taken over as they are, to the last
character; one that stands for another size in the job says in its `why` which sheet it came with, and what
the job had stays in the history. So it is with the entries of what was done: new are those of a line that the
job has not, and those that strike a line or put it back, behind the last one that both have.
"""

from dataclasses import dataclass, replace
from datetime import UTC, datetime

from calc.declare.warm import WARM
from calc.job import contents, record

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
    """(what the sheet has and the job has not, what of it stays out because the job has a later reading
    there), in the sheet's order.

    `named` says which sheet it is, in the words that a correction's reason begins with.
    """
    if not belongs(job, sheet):
        return [], []
    ours, theirs = _by_spot(job), _by_spot(sheet)
    new: dict[int, New] = {}  # by their number in the sheet
    late: dict[int, New] = {}
    for spot, numbered in theirs.items():
        mine = [reading for _, reading in ours.get(spot, ())]
        known = {_identity(reading) for reading in mine}
        begin = max(
            (n for n, (_, reading) in enumerate(numbered, 1) if _identity(reading) in known), default=0
        )
        last, own, found = mine[-1] if mine else None, bool(mine), {}
        for number, reading in numbered[begin:]:
            if _size(reading) == _size(last or {"text": ""}):
                continue  # the same once more, or nothing to take back
            why = f"{named}: {reading['why']}".removesuffix(": ") if own else reading["why"]
            found[number] = New({**reading, "why": why[: contents.LONGEST_WHY]}, last)
            last, own = reading, False
        ahead = (
            found
            and mine
            and _identity(mine[-1]) not in {_identity(reading) for _, reading in numbered}
            and last
            and _when(mine[-1]) > _when(last)
        )
        (late if ahead else new).update(found)
    return [new[number] for number in sorted(new)], [late[number] for number in sorted(late)]


def done(job: dict, sheet: dict) -> tuple[list[record.Line], list[record.Line]]:
    """(the lines of what was done that stand otherwise on the sheet than in the job, as they are there and
    with the entries that the job has not; those of them for which the job has no room), in the sheet's order.
    Of a line that both have changed the job's word stays.
    """
    if not belongs(job, sheet):
        return [], []
    ours = {line.line: line for line in record.done(job)}
    new: list[record.Line] = []
    beyond: list[record.Line] = []
    room, left = contents.MOST_DONE - len(ours), contents.MOST_DONE + contents.MOST_STRUCK - len(job["done"])
    for line in record.done(sheet):
        mine = ours.get(line.line)
        if (
            mine is None
            and line.struck
            or mine
            and (bool(mine.struck), mine.text) == (bool(line.struck), line.text)
        ):
            continue
        if mine and any(entry not in line.entries for entry in mine.entries):
            continue
        entries = tuple(entry for entry in line.entries if not mine or entry not in mine.entries)
        fits = (mine or room > 0) and len(entries) <= left
        (new if fits else beyond).append(replace(line, entries=entries))
        room, left = room - (fits and not mine), left - fits * len(entries)
    return new, beyond


def take_over(job: dict, sheet: dict, named: str) -> dict:
    """The job with what the sheet has and it has not; the same job where that is nothing."""
    (new, _), (lines, _) = compare(job, sheet, named), done(job, sheet)
    if new:
        job = record.add_readings(job, [one.reading for one in new])
    return record.add_entries(job, [entry for line in lines for entry in line.entries]) if lines else job


def _by_spot(job: dict) -> dict:
    """{(feature, place, stage): [(its number in the job, reading)]}"""
    found: dict = {}
    for number, reading in enumerate(job["readings"]):
        found.setdefault((reading["feature"], reading["place"], reading["stage"]), []).append(
            (number, reading)
        )
    return found


def _size(reading: dict) -> tuple:
    return tuple(reading.get(key, "") for key in _SIZE)


def _identity(reading: dict) -> tuple:
    """By what a reading is known again, whatever reason it was given on the way."""
    return (*_size(reading), reading["at"], reading["by"])


def _when(reading: dict) -> datetime:
    at = datetime.fromisoformat(reading["at"])
    return at if at.tzinfo else at.replace(tzinfo=UTC)
