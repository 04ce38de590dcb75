"""What the views of a job are put together from."""

import re
from collections.abc import Sequence
from functools import lru_cache
from zlib import crc32

from calc.core.conformance import COVERAGE
from calc.core.reading import EntryError
from calc.core.result import VERDICT_WORDS
from calc.core.working import Form
from calc.declare.warm import WARM
from calc.job import contents, files, record, texts
from calc.job.checking import feature_of, sheet_of
from calc.job.contents import JobError
from calc.job.value import number
from calc.job.verdicts import CHANGED, Row
from calc.page.html import Html, both, children, el, value
from calc.reference.engine import Feature, Step

MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"]
SHORT = {"received": "received", "finished": "finished", "assembly": "at assembly"}


# --- The job ---------------------------------------------------------------------------------------

MOST_KEPT = 16
_kept: dict[str, dict] = {}  # text → its job, the latest last


def job_of(text: str) -> dict:
    """The job of a text; nobody changes it, so it may be kept."""
    job = _kept.pop(text, None) or files.load(text)
    return _keep(text, job)


def _keep(text: str, job: dict) -> dict:
    _kept[text] = job
    while len(_kept) > 1 and (len(_kept) > MOST_KEPT or sum(map(len, _kept)) > contents.LONGEST_FILE):
        del _kept[next(iter(_kept))]
    return job


def made(job: dict) -> dict:
    """The part of a reply that gives back a job: its text, and by what the same state of it is known
    again."""
    text = files.written(job)
    _keep(text, job)  # it is asked for next
    return {"job": text, "name": job["name"], "origin": f"{job['id']} {crc32(text.encode()):08x}"}


class AtField(JobError):
    """A refusal that belongs to one field of a form."""

    def __init__(self, field: str, code: str, sentence: str) -> None:
        super().__init__(sentence)
        self.field, self.code = field, code


def with_unit(text: str, shape: Form, system: str, label: str, at: str) -> str:
    """An entry with its unit named: a bare number is in the unit that the field shows."""
    unit = shape.unit(system)
    try:
        meant = texts.read_size(text, shape.kind, unit)
    except EntryError as error:
        raise AtField(at, error.code, f"{label}: {error.problem}; {error.accepted}.") from None
    for said in (text, f"{text.rstrip()}{'' if unit.symbol in '°′″' else ' '}{unit.symbol}"):
        try:
            whole = texts.self_contained(said, shape.kind, label)
            again = texts.read_size(whole, shape.kind, shape.kind.metric)
        except (JobError, EntryError):
            continue
        if (again.value, again.doubt) == (meant.value, meant.doubt):
            return whole
    raise AtField(
        at,
        "unknown-unit",
        f"{label}: “{text.strip()[:40]}” cannot be kept as it stands; write it with its unit, such as"
        f" {shape.kind.example}.",
    )


def about_sheet(job: dict) -> Html | None:
    """What whoever trusts the verdicts must know of the engine's data sheet."""
    if sheet_of(job) is None:
        return el(
            "p",
            f"This handbook has no data sheet of {job['engine']}: its readings are kept and shown, and not"
            " judged.",
            class_="job-note",
        )
    return el("p", CHANGED, class_="job-note") if record.sheet_changed(job) else None


# --- Words -----------------------------------------------------------------------------------------


def count(n: int, what: str) -> str:
    return f"{n} {what}" if n == 1 else f"{n} {what}s"


def in_words(names: Sequence[str]) -> str:
    """One, two and three."""
    return " and ".join(filter(None, (", ".join(names[:-1]), *names[-1:])))


def day(at: str, now: str = "") -> str:
    """25 Nov, with its year where it is another one than now's."""
    found = re.match(r"(\d{4})-(\d\d)-(\d\d)", at)
    if not found:
        return ""
    year, month, date = found.groups()
    return f"{int(date)} {MONTHS[int(month) - 1]}" + ("" if now.startswith(year) else f" {year}")


def hour(at: str, now: str = "") -> str:
    """25 Nov 14:15."""
    time = re.search(r"T(\d\d:\d\d)", at)
    return day(at, now) + (f" {time[1]}" if time else "")


def who(at: str, by: str, now: str) -> str:
    """When something was written down, and by whom: 25 Nov 14:15, MK."""
    return ", ".join(filter(None, (hour(at, now), by)))


def when_read(told: dict, now: str) -> str:
    """At what stage something was read, when and by whom: finished, 25 Nov, MK."""
    return ", ".join(filter(None, (SHORT[told["stage"]], day(told["at"], now), told["by"])))


def what_group(group: str) -> str:
    return group.replace("_", " ").capitalize()


# --- HTML ------------------------------------------------------------------------------------------


def chip(state: str) -> Html:
    """A verdict in a word, with its shape."""
    return el("span", VERDICT_WORDS[state], class_=f"chip chip-{state}")


def tally(rows: list[Row]) -> Html | None:
    """How many sizes stand how."""
    lines = [
        el("li", el("strong", n, class_="num"), " ", chip(state))
        for state in ("fail", "attention", "unsure", "pass")
        if (n := sum(row.state == state for row in rows))
    ]
    return el("ul", *lines, class_="job-tally") if lines else None


def reading(job: dict, told: dict) -> Html:
    """A reading as it was written; a reader of the other units sees it worked out in those."""
    beside = [f"{WARM[part]} {told[part]}" for part in WARM if part in told]
    if beside:
        return children(
            el("span", told["text"], class_="num"),
            el("span", " read warm: ", ", ".join(beside), class_="job-warm"),
        )
    try:
        size, u = number(job, told)
        return _written(told["text"], size.form, float(size), u)
    except (JobError, EntryError):
        return el("span", told["text"], class_="num")


@lru_cache(maxsize=8192)
def _written(text: str, shape: Form, number: float, u: float) -> Html:
    unit = texts.read_size(text, shape.kind, shape.metric).unit
    if unit not in (shape.metric, shape.inch) or shape.metric == shape.inch:
        return el("span", text, class_="num")
    other = "metric" if unit == shape.inch else "inch"
    turned = shape.write(number, other) + (f" ± {shape.difference.write(COVERAGE * u, other)}" if u else "")
    return el("span", both(*((turned, text) if other == "metric" else (text, turned))), class_="num")


def limits(job: dict, id: str, step: Step | None = None) -> list[Html | str]:
    """What the sheet allows, in words; at an undersize or oversize where the part has one."""
    feature = feature_of(job, id)
    if feature is None:
        return [f"{id}: not on a data sheet of this handbook, so it is not judged."]
    if step is not None:
        feature = feature.at(step)
    worn = "" if feature.wear is None else children(", worn out at ", value(feature.form, feature.wear))
    return ["Data sheet: ", _made(feature), worn, "."]


def _made(feature: Feature) -> Html:
    shape, low, high = feature.form, feature.low, feature.high
    if low is not None and high is not None:
        metric, inch = (f"{shape.bare(low, s)} to {shape.write(high, s)}" for s in ("metric", "inch"))
        return children("made ", both(metric, inch))
    if high is not None:
        return children("made up to ", value(shape, high))
    if low is not None:
        return children("made from ", value(shape, low))
    return children("nominal ", value(shape, feature.nominal))
