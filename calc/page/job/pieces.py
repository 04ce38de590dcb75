"""What the views of a job are put together from."""

import re
from functools import lru_cache
from zlib import crc32

from calc.core.conformance import COVERAGE
from calc.core.reading import EntryError
from calc.core.result import VERDICT_WORDS
from calc.declare.warm import WARM
from calc.job import contents, files, record, texts
from calc.job.checking import feature_of, sheet_of
from calc.job.contents import JobError
from calc.job.parts import PARTS, parts_of
from calc.job.verdicts import CHANGED
from calc.page.html import Html, both, children, el, value
from calc.reference.engine import engine as engine_named

MONTHS = "Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec".split()
REASONS = ("Measured again", "Misread before", "Machined since", "Another part")
QUIET = {"novalidate": True, "autocomplete": "off"}  # of a form: the browser neither checks nor fills it in
SHORT = {"received": "received", "finished": "finished", "assembly": "at assembly"}


# --- The job ---------------------------------------------------------------------------------------

MOST_KEPT = 16
_kept: dict = {}  # text → its job, the latest last


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
    """The part of a reply that gives back a job: its text, and by what the same state of it is known again."""
    text = files.written(job)
    _keep(text, job)  # it is asked for next
    return {"job": text, "name": job["name"], "origin": f"{job['id']} {crc32(text.encode()):08x}"}


def at_field(field: str, code: str, sentence: str) -> JobError:
    """A refusal that belongs to one field of a form."""
    error = JobError(sentence)
    error.field, error.code = field, code
    return error


def with_unit(text: str, shape, system: str, label: str, at: str) -> str:
    """An entry with its unit named: a bare number is in the unit that the field shows."""
    unit = shape.unit(system)
    try:
        meant = texts.read_size(text, shape.kind, unit)
    except EntryError as error:
        raise at_field(at, error.code, f"{label}: {error.problem}; {error.accepted}.") from None
    for said in (text, f"{text.rstrip()}{'' if unit.symbol in '°′″' else ' '}{unit.symbol}"):
        try:
            whole = texts.self_contained(said, shape.kind, label)
            again = texts.read_size(whole, shape.kind, shape.kind.metric)
        except (JobError, EntryError):
            continue
        if (again.value, again.doubt) == (meant.value, meant.doubt):
            return whole
    raise at_field(
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


def day(at: str, now: str = "") -> str:
    """ "25 Nov", with its year where it is another one than now's."""
    found = re.match(r"(\d{4})-(\d\d)-(\d\d)", at)
    if not found:
        return ""
    year, month, date = found.groups()
    return f"{int(date)} {MONTHS[int(month) - 1]}" + ("" if now.startswith(year) else f" {year}")


def hour(at: str, now: str = "") -> str:
    time = re.search(r"T(\d\d:\d\d)", at)
    return day(at, now) + (f" {time[1]}" if time else "")


def what_group(group: str) -> str:
    return group.replace("_", " ").capitalize()


# --- HTML ------------------------------------------------------------------------------------------


def chip(state: str) -> Html:
    """A verdict in a word, with its shape."""
    return el("span", VERDICT_WORDS[state], class_=f"chip chip-{state}")


def tally(rows: list) -> Html | None:
    """How many sizes stand how."""
    found = [
        (state, n)
        for state in ("fail", "attention", "unsure", "pass")
        if (n := sum(row.state == state for row in rows))
    ]
    return (
        el(
            "ul",
            *(el("li", el("strong", n, class_="num"), " ", chip(state)) for state, n in found),
            class_="job-tally",
        )
        if found
        else None
    )


def reading(job: dict, told: dict) -> Html:
    """A reading as it was written; a reader of the other units sees it worked out in those."""
    beside = [f"{WARM[part]} {told[part]}" for part in WARM if part in told]
    if beside:
        return children(
            el("span", told["text"], class_="num"),
            el("span", " read warm: ", ", ".join(beside), class_="job-warm"),
        )
    try:
        number, u = record.number(job, told)
        return _written(told["text"], number.form, float(number), u)
    except (JobError, EntryError):
        return el("span", told["text"], class_="num")


@lru_cache(maxsize=8192)
def _written(text: str, shape, number: float, u: float) -> Html:
    unit = texts.read_size(text, shape.kind, shape.metric).unit
    if unit not in (shape.metric, shape.inch) or shape.metric == shape.inch:
        return el("span", text, class_="num")
    other = "metric" if unit == shape.inch else "inch"
    turned = shape.write(number, other) + (f" ± {shape.difference.write(COVERAGE * u, other)}" if u else "")
    return el("span", both(*((turned, text) if other == "metric" else (text, turned))), class_="num")


def limits(job: dict, id: str, step=None):
    """What the sheet allows, in words; at an undersize or oversize where the part has one."""
    feature = feature_of(job, id)
    if feature is None:
        return [f"{id}: not on a data sheet of this handbook, so it is not judged."]
    if step is not None:
        feature = feature.at(step)
    parts = []
    if feature.low is not None and feature.high is not None:
        parts.append(
            children(
                "made ",
                both(
                    *(
                        f"{feature.form.bare(feature.low, s)} to {feature.form.write(feature.high, s)}"
                        for s in ("metric", "inch")
                    )
                ),
            )
        )
    elif feature.low is not None or feature.high is not None:
        parts.append(
            children(
                "made up to " if feature.low is None else "made from ",
                value(feature.form, feature.high if feature.low is None else feature.low),
            )
        )
    else:
        parts.append(children("nominal ", value(feature.form, feature.nominal)))
    if feature.wear is not None:
        parts.append(children("worn out at ", value(feature.form, feature.wear)))
    return ["Data sheet: ", *[x for n, part in enumerate(parts) for x in ((", " if n else ""), part)], "."]


def message(form: str, name: str) -> Html:
    """The place of one sentence below a field; that of the form itself has no name."""
    return el(
        "p",
        id=f"{form}-{name or 'all'}-message",
        class_="message",
        data_message_for=name,
        role=None if name else "alert",
        hidden=True,
    )


def field(form: str, words: str, name: str, *, hint: str = "", label: str = "", **attributes) -> Html:
    id = f"{form}-{name}"
    entry = el(
        "input",
        type="text",
        id=id,
        name=name,
        autocomplete="off",
        aria_label=label or None,
        aria_describedby=f"{id}-message" + (f" {id}-hint" if hint else ""),
        **attributes,
    )
    return el(
        "div",
        el("label", words, for_=id),
        el("div", entry, class_="entry"),
        message(form, name),
        el("p", hint, id=f"{id}-hint", class_="hint") if hint else None,
        class_="field",
    )


def received_field(form: str, sheets: list, engine: str, value: str = "") -> Html:
    """The parts received: words, and the parts of the engines' data sheets to tick, which write theirs into those words (job.mjs).

    `engine` is the one that is chosen. A part that not every one of the sheets has names those that have it.
    """
    ticks = []
    for part in PARTS:
        having = [sheet.name for sheet in sheets if part in parts_of(sheet)]
        if having:
            ticks.append(
                el(
                    "label",
                    el(
                        "input",
                        type="checkbox",
                        data_job_part=part.word,
                        data_called=part.called,
                        data_engines=" ".join(having) if len(having) < len(sheets) else None,
                        checked=part.named_in(value),
                    ),
                    part.word,
                    class_="job-pick",
                    hidden=engine not in having,
                )
            )
    return el(
        "div",
        field(
            form,
            "Parts received",
            "received",
            hint="Such as: two heads, crank, four rods.",
            maxlength=600,
            value=value or None,
        ),
        (
            el(
                "fieldset",
                el("legend", "Tick what came, or write it above"),
                *ticks,
                class_="job-which job-parts",
            )
            if ticks
            else None
        ),
        class_="job-received",
    )


def start_form(names, by: str = "", engine: str = "", shop: str = "", asleep: bool = False) -> Html:
    """Two taps from nothing to a job: its name, and Start. Engine and shop are those of the job before; `asleep` until a script wakes it."""
    choose = el(
        "div",
        el("label", "Engine", for_="start-engine"),
        el(
            "div",
            el(
                "select",
                *(el("option", name, value=name, selected=name == engine) for name in names),
                id="start-engine",
                name="engine",
                aria_describedby="start-engine-message",
            ),
            class_="entry",
        ),
        message("start", "engine"),
        class_="field",
    )
    return el(
        "form",
        el("input", type="hidden", name="shop", value=shop),
        el(
            "div",
            field(
                "start",
                "What you call it",
                "name",
                hint="The customer or the machine, such as: orchard frost fan.",
                maxlength=120,
            ),
            choose,
            received_field(
                "start",
                [engine_named(name) for name in names],
                engine if engine in names else next(iter(names), ""),
            ),
            field(
                "start",
                "Your initials",
                "initials",
                hint="They stand beside every reading that you keep.",
                maxlength=12,
                value=by or None,
            ),
            class_="fields",
        ),
        el(
            "div",
            el("button", "Start this job", type="submit", disabled=asleep, class_="go"),
            class_="job-buttons",
        ),
        message("start", ""),
        data_job_call="new",
        data_job_form="start",
        **QUIET,
        class_="job-form",
    )
