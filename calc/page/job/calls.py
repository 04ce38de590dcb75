"""A job in the browser: what can be asked about it, and the HTML of its pages. Judgements come from `calc.job`.

`answer` takes a request {"call": "job-…", …} and gives a reply; both are JSON-ready. A job travels as its text, which only
`calc.job.record` reads, so that what a device stores is what was checked here. Imported only once a job is asked for.
"""

from datetime import datetime
from functools import cache
from html import escape

from calc.core.result import Refused
from calc.declare.warm import WARM
from calc.job import files, record
from calc.job.checking import feature_of, sheet_of
from calc.job.contents import STAGES, JobError, NoReason
from calc.job.verdicts import judge, judge_one
from calc.page.html import Html, both, children, el, value
from calc.page.job import fields as job_fields
from calc.page.job import returned as job_returned
from calc.page.job.pieces import (
    QUIET,
    REASONS,
    SHORT,
    about_sheet,
    at_field,
    chip,
    count,
    day,
    field,
    hour,
    job_of,
    limits,
    made,
    message,
    reading,
    received_field,
    start_form,
    tally,
    what_group,
    with_unit,
)

MOST_WHOLE = 1000  # sizes that are shown with history and forms: more would fill a phone


def answer(asked: dict) -> dict:
    """The reply to a request: {"ok": true, …} or {"ok": false, "errors": [{"field", "code", "message"}]}."""
    try:
        return {"ok": True, "errors": [], **CALLS[asked["call"]](asked)}
    except JobError as error:
        return _refused(
            [
                {
                    "field": getattr(error, "field", None),
                    "code": getattr(error, "code", "job"),
                    "message": str(error),
                }
            ]
        )
    except Refused as refused:
        return _refused(
            [
                {"field": e.field, "code": e.code, "message": e.sentence(asked["system"])}
                for e in refused.errors
            ]
        )


def _refused(errors: list) -> dict:
    return {"ok": False, "html": {}, "errors": errors}


# --- Changing a job ---------------------------------------------------------------------------


def _new(asked: dict) -> dict:
    if not asked["name"].strip():
        raise at_field(
            "name", "empty", "Give the job a name that you will know it by, such as the customer's."
        )
    return made(
        record.new(
            asked["id"], asked["name"], asked["engine"], asked["received"], asked["now"], asked["shop"]
        )
    )


def _add(asked: dict) -> dict:
    """A reading typed on the job's own page, or its correction."""
    job, text = job_of(asked["job"]), asked.get("text", "")
    feature = feature_of(job, asked["feature"])
    if not text.strip():
        raise at_field(
            "text",
            "empty",
            f"{feature.label if feature else asked['feature']}: is empty; type what you read.",
        )
    spot = asked["feature"], asked.get("place", ""), asked["stage"]
    _check_unchanged(job, asked, spot)
    if feature:
        text = with_unit(text, feature.form, asked["system"], feature.label, "text")
        if feature.places and not asked.get("place"):
            raise at_field("place", "place", f"{feature.label}: say which one it is.")
    added = _added(job, asked, text)
    return made(added) | {"html": {"kept": _kept(added, *spot)}}


def _take_back(asked: dict) -> dict:
    job = job_of(asked["job"])
    _check_unchanged(job, asked, (asked["feature"], asked.get("place", ""), asked["stage"]))
    return made(_added(job, asked, ""))


def _check_unchanged(job: dict, asked: dict, spot: tuple) -> None:
    """A correction is one of the reading that its form shows: it says how many there were."""
    told = record.history(job, *spot)
    if "shown" in asked and len(told) != int(asked["shown"]):
        raise at_field(
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
        raise at_field("why" if isinstance(error, NoReason) else "text", "kept", str(error)) from None


def _kept(job: dict, id: str, place: str, stage: str) -> Html:
    """On the spot: what was kept, whether it is right, and what to do."""
    row = judge_one(job, id, place)
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


def _done(asked: dict) -> dict:
    if not asked["text"].strip():
        raise at_field("text", "empty", "Say in a few words what was done.")
    return made(record.add_done(job_of(asked["job"]), asked["text"], asked["now"], asked["by"]))


def _strike(asked: dict) -> dict:
    """The line of what was done that bears this name, struck, wherever it stands by now."""
    return made(record.strike(job_of(asked["job"]), asked["line"], asked["now"], asked["by"]))


def _unstrike(asked: dict) -> dict:
    return made(record.unstrike(job_of(asked["job"]), asked["line"], asked["now"], asked["by"]))


def _change(asked: dict) -> dict:
    """What was changed in the form; the rest stays as it is by now."""
    fields = {
        of: asked[name]
        for name, of in (("name", "name"), ("received", "received"), ("shop", "by"))
        if name in asked
    }
    return made(record.change(job_of(asked["job"]), **fields))


def _read(asked: dict) -> dict:
    """A file's text as a job; refused with the reason where it is none."""
    return made(files.load(asked["text"]))


# --- The page of jobs -----------------------------------------------------------------------------


def _jobs(asked: dict) -> dict:
    """Everything on the page of jobs: `jobs` are {key, kind, text, kept, exported, changed} of the device, `key` the current one."""
    read, unread = [], []
    for held in asked["jobs"]:
        try:
            read.append((held, job_of(held["text"])))
        except JobError as error:
            unread.append((held, str(error)))
    now = next((pair for pair in read if pair[0]["key"] == asked["key"]), None)
    own = [pair for pair in read if pair[0]["kind"] == "job" and pair != now]
    sheets = [pair for pair in read if pair[0]["kind"] == "sheet" and pair != now]
    newest = max(read, key=_when, default=(None, {"engine": "", "by": ""}))[1]
    start = start_form(asked["engines"], asked["by"], newest["engine"], newest["by"])
    back = [(held, job) for held, job in read if now and held is not now[0]]
    parts = [
        _current(*now, back, asked) if now else None,
        _listed("Other jobs" if now else "Jobs on this device", own, asked),
        _listed("Sheets received", sheets, asked),
        _unread(unread),
        (
            el("details", el("summary", "Start another job"), start, data_keep="start", class_="job-fold")
            if read or unread
            else start
        ),
    ]
    return {"html": {"view": children(*parts)}, "name": now[1]["name"] if now else ""}


def _current(held: dict, job: dict, others: list, asked: dict) -> Html:
    """The job that is worked on; `others` are those among which a sheet of it may have come back."""
    rows = judge(job)
    root = asked["root"]
    sheet = sheet_of(job)
    return el(
        "section",
        el(
            "header",
            el("h2", job["name"], id="job-now", tabindex="-1"),
            el("p", _summary(job, asked["now"]), class_="job-facts"),
            class_="job-head",
        ),
        about_sheet(job),
        tally(rows),
        el(
            "div",
            el("a", "Size sheet", href=f"{root}job/sheet/", class_="go"),
            el("a", "Measure: check a number", href=f"{root}check-a-number/", class_="way"),
            el("button", "Export", type="button", data_job_do="export", data_key=held["key"]),
            class_="job-buttons",
        ),
        *(
            job_returned.offer(job, held["key"], other, its["key"], its["kept"], asked["now"], on_sheet=False)
            for its, other in others
        ),
        _reminder(held, asked),
        (
            readings(job, rows, asked["now"])
            if job["readings"]
            else el(
                "p",
                "No reading yet. Open the calculator for what is in your hand, type what you read, and keep"
                " it with one tap.",
                class_="job-note",
            )
        ),
        (
            el(
                "details",
                el("summary", "Write down a size here"),
                _write_down(job, asked.get("writing", {}), ("received", "finished")),
                data_keep="write",
                class_="job-fold",
            )
            if sheet
            else None
        ),
        _what_was_done(job, asked["now"]),
        _change_form(job, held),
        class_="job-now",
        aria_labelledby="job-now",
    )


def _summary(job: dict, now: str) -> str:
    return ", ".join(
        filter(None, (job["engine"], job["received"], f"started {day(job['started'], now)}", job["by"]))
    )


def _reminder(held: dict, asked: dict) -> Html | None:
    """Where the browser may clear what is kept here, and there is something to lose."""
    exported, changed = held["exported"], held["changed"]
    when = (
        f"Exported {hour(exported, asked['now'])}"
        + (", and changed since." if changed else "; nothing has changed since.")
        if exported
        else "Not exported yet."
    )
    risk = {
        "persistent": "The browser keeps this job until you remove it, but a lost device loses it too.",
        "may-be-cleared": (
            "The browser may clear this job when the handbook was not opened for a while (some after seven"
            " days) or when the device is short of room."
        ),
    }.get(asked["safety"], "The browser does not say how long it keeps this job.")
    return el(
        "p",
        risk,
        " ",
        (
            "A device is no backup: export the job when a day's work is done. "
            if changed or not exported
            else None
        ),
        when,
        class_="job-safety",
        data_urgent=asked["safety"] != "persistent" and (changed or not exported),
    )


def readings(job: dict, rows: list, now: str, stages=tuple(STAGES), correct: bool = True) -> Html:
    """Every reading with its verdict, by groups of the sheet; unfolded, its history and the ways to correct it."""
    groups, told, n = {}, record.histories(job), 0
    for n, row in enumerate(rows):
        groups.setdefault(row.feature.partition(".")[0], []).append(
            _row(job, row, told if n < MOST_WHOLE else None, now, stages, correct)
        )
    shown, last = (
        {(row.feature, row.place) for row in rows},
        {(r["feature"], r["place"]): r for r in job["readings"]},
    )
    for n, ((feature, place), one) in enumerate(last.items(), n):
        if (feature, place) not in shown:
            groups.setdefault(feature.partition(".")[0], []).append(
                _gone(job, one, told if n < MOST_WHOLE else None, now, stages, correct)
            )
    return el(
        "div",
        *(
            children(el("h3", what_group(group)), el("ul", *found, class_="job-readings"))
            for group, found in groups.items()
        ),
    )


def _row(job: dict, row, told: dict | None, now: str, stages, correct: bool) -> Html:
    """`told` are the readings by their place (record.histories), None where the page has no room for them."""
    last = row.last
    shown = (
        reading(job, last.reading)
        if last.reading
        else children(
            last.value, el("span", " ± ", value(last.value.form.difference, last.U)) if last.U else None
        )
    )
    head = el(
        "summary",
        el(
            "span",
            row.label,
            " ",
            el("span", row.place, class_="job-place") if row.place else None,
            class_="job-label",
        ),
        el("span", shown, class_="job-size num"),
        el(
            "span",
            SHORT[last.stage]
            + ("" if last.reading else ", worked out")
            + (", was worn" if row.was_worn else ""),
            class_="job-stage",
        ),
        chip(row.state) if row.state else el("span", "not judged", class_="chip chip-none"),
    )
    body = [
        el("p", row.words, ". ", row.do),
        el("p", *limits(job, row.feature, row.step), class_="job-limits") if told else None,
    ]
    if row.was_worn:
        body.append(el("p", "As received: ", row.received.words, ".", class_="job-limits"))
    body += _histories(job, told, row.feature, row.place, row.label, now, stages, correct)
    return el(
        "li",
        el("details", head, *body, data_keep=f"{row.feature} {row.place}"),
        class_=f"job-reading job-is-{row.state or 'none'}",
    )


def _gone(job: dict, last: dict, told: dict | None, now: str, stages, correct: bool) -> Html:
    """A place of which all that was read was taken back: it has no size, but it has its history."""
    id, place = last["feature"], last["place"]
    feature = feature_of(job, id)
    label = feature.label if feature else id
    head = el(
        "summary",
        el("span", label, " ", el("span", place, class_="job-place") if place else None, class_="job-label"),
        el("span", "taken back", class_="job-size"),
        el(
            "span",
            ", ".join(filter(None, (SHORT[last["stage"]], day(last["at"], now), last["by"]))),
            class_="job-stage",
        ),
        el("span", "no size", class_="chip chip-none"),
    )
    return el(
        "li",
        el(
            "details",
            head,
            el("p", *limits(job, id), class_="job-limits"),
            *_histories(job, told, id, place, label, now, stages, correct),
            data_keep=f"{id} {place}",
        ),
        class_="job-reading job-is-none",
    )


def _histories(
    job: dict, told: dict | None, id: str, place: str, label: str, now: str, stages, correct: bool
):
    if told is None:
        yield el(
            "p",
            f"The history of the first {MOST_WHOLE} sizes is shown here; that of this one is in the job's"
            " file.",
            class_="job-limits",
        )
        return
    for stage in STAGES:
        if its := told.get((id, place, stage)):
            yield _history(job, stage, its, now)
            if correct and stage in stages:
                yield _correct(id, place, label, stage, its)


def _who(at: str, by: str, now: str) -> str:
    return ", ".join(filter(None, (hour(at, now), by)))


def _history(job: dict, stage: str, told: list, now: str) -> Html:
    lines = []
    for n, one in enumerate(reversed(told)):
        who = _who(one["at"], one["by"], now)
        what = reading(job, one) if one["text"] else "taken back"
        why = children(": ", one["why"]) if one["why"] else None
        lines.append(el("li", what if n == 0 else el("s", what), " ", el("span", who, why, class_="job-who")))
    return el(
        "div",
        el("h4", STAGES[stage].capitalize()),
        el("ol", *lines, class_="job-history", reversed=True),
        class_="job-stages",
    )


def _correct(id: str, place: str, label: str, stage: str, its: list) -> Html:
    form = _correction(stage, bool(its[-1]["text"]))
    for blank, told in (
        ("\x01", "-".join(("correct", id.replace(".", "-"), place.replace(" ", "-"), stage))),
        ("\x02", id),
        ("\x03", place),
        ("\x04", f"{label} {place}"),
        ("\x05", str(len(its))),
    ):
        form = form.replace(blank, escape(told))
    return Html(form)


@cache
def _correction(stage: str, there: bool) -> str:
    """The form that corrects a reading, with blanks for what a job has thousands of: characters that no text of a job holds."""
    key = "\x01"
    hidden = [
        el("input", type="hidden", name=name, value=value)
        for name, value in (("feature", "\x02"), ("place", "\x03"), ("stage", stage), ("shown", "\x05"))
    ]
    return str(
        el(
            "details",
            el("summary", "Correct it" if there else "Put a size in its place"),
            el(
                "form",
                *hidden,
                field(
                    key, "It is", "text", label=f"\x04, {STAGES[stage]}", inputmode="decimal", maxlength=100
                ),
                *_reasons(key),
                el(
                    "div",
                    el("button", "Correct", type="submit", class_="go"),
                    el("button", "Take it back", type="submit", value="take-back") if there else None,
                    class_="job-buttons",
                ),
                message(key, ""),
                data_job_call="add",
                data_job_form=key,
                **QUIET,
                class_="job-form",
            ),
            data_keep=key,
            class_="job-correct",
        )
    )


def _reasons(key: str) -> tuple:
    """Why a reading replaces another one."""
    return (
        el(
            "div",
            el("span", "Why?", class_="job-which-words"),
            *(
                el("label", el("input", type="radio", name="why", value=reason), reason, class_="job-pick")
                for reason in REASONS
            ),
            message(key, "why"),
            class_="job-which",
            role="group",
            aria_label="Why is it another size now",
            aria_describedby=f"{key}-why-message",
        ),
        field(key, "Or in your own words", "reason", maxlength=200),
    )


def _write_down(job: dict, asked: dict, stages: tuple, only: tuple = (), key: str = "write") -> Html:
    """A form for a reading that no calculator asks for. Once the feature is chosen it shows places and limits.

    `only` are the features to choose from, all that can be measured where it is empty; `asked` holds what is chosen already. For a
    place that was read before it asks why, once that was refused.
    """
    features, by_group = sheet_of(job).features, {}
    offered = [features[id] for id in only if id in features] or [f for f in features.values() if not f.terms]
    for f in offered:
        by_group.setdefault(f.id.partition(".")[0], []).append(f)
    chosen = asked.get("feature", "")
    feature = next((f for f in offered if f.id == chosen), offered[0] if len(offered) == 1 else None)
    groups = [
        el(
            "optgroup",
            *(el("option", f.label, value=f.id, selected=f is feature) for f in found),
            label=what_group(group),
        )
        for group, found in by_group.items()
    ]
    pick = (
        el(
            "div",
            el("label", "Which size", for_=f"{key}-feature"),
            el(
                "div",
                el(
                    "select",
                    el("option", "Choose…", value="", selected=feature is None),
                    *groups,
                    id=f"{key}-feature",
                    name="feature",
                    data_job_again="write",
                ),
                class_="entry",
            ),
            class_="field",
        )
        if len(offered) > 1
        else el("input", type="hidden", name="feature", value=feature.id)
    )
    rest = None
    if feature:
        rest = children(
            el(
                "p",
                None if len(offered) > 1 else children(el("strong", feature.label), ". "),
                *limits(job, feature.id),
                class_="job-limits",
            ),
            (
                _picks(key, "place", "Which one?", [(p, p) for p in feature.places], asked.get("place", ""))
                if feature.places
                else None
            ),
            (
                _picks(
                    key, "stage", "When?", [(s, STAGES[s]) for s in stages], asked.get("stage") or "finished"
                )
                if len(stages) > 1
                else el("input", type="hidden", name="stage", value=stages[0])
            ),
            field(
                key,
                "What you read",
                "text",
                hint=f"Measure with {feature.tool}." if feature.tool else "",
                inputmode="decimal",
                maxlength=100,
            ),
            el("div", *_reasons(key), data_job_reasons=True, hidden=True),
            el("div", el("button", "Keep", type="submit", class_="go"), class_="job-buttons"),
        )
    hidden = [
        el("input", type="hidden", name=name, value=value)
        for name, value in (("stages", " ".join(stages)), ("only", " ".join(only)), ("form", key))
    ]
    return el(
        "form",
        *hidden,
        el("div", data_job_kept=key, role="status"),
        pick,
        rest,
        message(key, ""),
        data_job_call="add",
        data_job_form=key,
        **QUIET,
        class_="job-form",
    )


def _picks(key: str, name: str, words: str, options: list, chosen: str) -> Html:
    return el(
        "fieldset",
        el("legend", words),
        *(
            el(
                "label",
                el(
                    "input",
                    type="radio",
                    id=f"{key}-{name}-{n}",
                    name=name,
                    value=value,
                    checked=value == chosen,
                ),
                said,
                class_="job-pick",
            )
            for n, (value, said) in enumerate(options)
        ),
        message(key, name),
        class_="job-which",
    )


def _sizes(asked: dict) -> dict:
    """What the job holds of each feature: `html` a line for each place, for a table of limits; `said` in a few words, for a sentence."""
    job = job_of(asked["job"])
    by_feature: dict = {}
    for row in judge(job):
        by_feature.setdefault(row.feature, []).append(row)
    html = {
        id: el(
            "span",
            el(
                "span",
                el("strong", job["name"]),
                ", ",
                " and ".join(dict.fromkeys(SHORT[row.last.stage] for row in rows)),
            ),
            *(
                el(
                    "span",
                    el("b", row.place, " ") if row.place else None,
                    reading(job, row.last.reading) if row.last.reading else row.value,
                    " ",
                    chip(row.state) if row.state not in ("", "pass") else None,
                )
                for row in rows
            ),
            class_="job-sizes",
        )
        for id, rows in by_feature.items()
    }
    return {
        "html": html,
        "said": {id: said for id, rows in by_feature.items() if (said := _said(job, rows))},
        "engine": job["engine"],
    }


def _said(job: dict, rows: list) -> Html | None:
    """A feature's sizes within a sentence: which places, from where to where, at which stage; and what is not in order."""
    alike: dict = {}
    for row in rows:
        if row.value is not None:
            alike.setdefault(SHORT[row.last.stage] + ("" if row.last.reading else ", worked out"), []).append(
                row
            )
    if not alike:
        return None
    told, places = [], feature_of(job, rows[0].feature).places if feature_of(job, rows[0].feature) else ()
    for stage, found in alike.items():
        shape, low, high = (
            found[0].value.form,
            *(pick(float(row.value) for row in found) for pick in (min, max)),
        )
        one = found[0].last.reading if len(found) == 1 else None
        size = (
            reading(job, one)
            if one and not any(part in one for part in WARM)
            else both(
                *(
                    (
                        shape.write(low, s)
                        if shape.write(low, s) == shape.write(high, s)
                        else f"{shape.bare(low, s)} to {shape.write(high, s)}"
                    )
                    for s in ("metric", "inch")
                )
            )
        )
        names = (
            f"all {len(places)}" if 2 < len(found) == len(places) else ", ".join(row.place for row in found)
        )
        if len(names) > 20:
            names = f"{len(found)} of {len(places)}"
        told += ["; " if told else None, size, ", ", stage, ", " if names else None, names]
    wrong: dict = {}
    for row in rows:
        if row.state not in ("", "pass"):
            wrong.setdefault(row.state, []).append(row.place)
    chips = [
        children(" ", chip(state), ": " + ", ".join(filter(None, its)) if len(rows) > 1 else None)
        for state, its in wrong.items()
    ]
    return el(
        "span",
        " [",
        el("span", job["name"], ": ", class_="job-said-name"),
        *told,
        *chips,
        "]",
        class_="job-said",
    )


def _write(asked: dict) -> dict:
    return {
        "html": {
            "write": _write_down(
                job_of(asked["job"]),
                asked,
                tuple(asked["stages"].split()),
                tuple(asked["only"].split()),
                asked["form"],
            )
        }
    }


def _what_was_done(job: dict, now: str) -> Html:
    """Each line bears its own name, so that no tap strikes another one. A struck line keeps its place, and the way back lies in a
    fold: a second tap on the same spot takes nothing more."""
    found = record.done(job)
    lines = [
        el(
            "li",
            el("s", line.text) if line.struck else line.text,
            " ",
            el("span", _who(line.at, line.by, now), class_="job-who"),
            " ",
            (
                el(
                    "details",
                    el("summary", "Struck ", _who(line.struck["at"], line.struck["by"], now)),
                    el(
                        "button",
                        "Put it back",
                        type="button",
                        data_job_call="unstrike",
                        data_line=line.line,
                        aria_label=f"Put back: {line.text}",
                    ),
                    data_keep=f"line {line.line}",
                    class_="job-correct",
                )
                if line.struck
                else el(
                    "button",
                    "Strike",
                    type="button",
                    data_job_call="strike",
                    data_line=line.line,
                    aria_label=f"Strike: {line.text}",
                )
            ),
            class_="job-line",
            data_line=line.line,
        )
        for line in found
    ]
    standing = sum(not line.struck for line in found)
    return el(
        "details",
        el("summary", "What was done", f" ({standing})" if standing else None),
        el("ul", *lines, class_="job-done") if lines else None,
        el(
            "form",
            field(
                "done",
                "One line",
                "text",
                hint="Such as: mains ground to the first undersize.",
                maxlength=400,
            ),
            el("div", el("button", "Add", type="submit", class_="go"), class_="job-buttons"),
            message("done", ""),
            data_job_call="done",
            data_job_form="done",
            **QUIET,
            class_="job-form",
        ),
        data_keep="done",
        class_="job-fold",
    )


def _change_form(job: dict, held: dict) -> Html:
    return el(
        "details",
        el("summary", "Name, parts, remove"),
        el(
            "form",
            el(
                "div",
                field("change", "What you call it", "name", value=job["name"], maxlength=120),
                received_field("change", list(filter(None, [sheet_of(job)])), job["engine"], job["received"]),
                field("change", "Shop, as it stands on the sheet", "shop", value=job["by"], maxlength=60),
                field("change", "Your initials", "initials", maxlength=12, data_job_initials=True),
                class_="fields",
            ),
            el("div", el("button", "Change", type="submit", class_="go"), class_="job-buttons"),
            message("change", ""),
            data_job_call="change",
            data_job_form="change",
            **QUIET,
            class_="job-form",
        ),
        _remove(held),
        data_keep="change",
        class_="job-fold",
    )


def _remove(held: dict) -> Html:
    what = "job" if held["kind"] == "job" else "sheet"
    safe = held["exported"] and not held["changed"]
    return el(
        "details",
        el("summary", f"Remove this {what} from the device"),
        el(
            "p",
            (
                "Its file was exported and holds everything."
                if safe
                else "It was not exported since it last changed: what is removed now is gone for good."
            ),
        ),
        el(
            "div",
            el("button", "Remove it", type="button", data_job_do="remove", data_key=held["key"]),
            class_="job-buttons",
        ),
        data_keep=f"remove {held['key']}",
        class_="job-correct",
    )


def _listed(title: str, pairs: list, asked: dict) -> Html | None:
    if not pairs:
        return None
    return el(
        "section",
        el("h2", title),
        el(
            "ul",
            *(_line(held, job, asked) for held, job in sorted(pairs, key=_when, reverse=True)),
            class_="job-list",
        ),
    )


def _when(pair: tuple) -> datetime:
    """When it came to this device: the moment, not what the clock showed, which goes back an hour in autumn."""
    return datetime.fromisoformat(pair[0]["kept"])


def _line(held: dict, job: dict, asked: dict) -> Html:
    n, twins = (
        len(record.current(job)),
        [h for h in asked["jobs"] if h["key"] != held["key"] and f'"{job["id"]}"' in h["text"]],
    )
    facts = f"{_summary(job, asked['now'])}; {count(n, 'size')}" + (
        f"; came here {hour(held['kept'], asked['now'])}" if twins or held["kind"] == "sheet" else ""
    )
    open_it = (
        el("button", "Work on this", type="button", data_job_do="current", data_key=held["key"])
        if held["kind"] == "job"
        else el("a", "Open", href=f"{asked['root']}job/received/#{held['key']}", class_="way")
    )
    return el(
        "li",
        el("p", el("strong", job["name"]), el("span", facts, class_="job-facts")),
        el(
            "div",
            open_it,
            el("button", "Export", type="button", data_job_do="export", data_key=held["key"]),
            class_="job-buttons",
        ),
        _remove(held),
    )


def _unread(pairs: list) -> Html | None:
    if not pairs:
        return None
    return el(
        "section",
        el("h2", "Cannot be opened"),
        el(
            "ul",
            *(
                el(
                    "li",
                    el("p", reason, " It is left as it is."),
                    el(
                        "div",
                        el(
                            "button",
                            "Export as it is",
                            type="button",
                            data_job_do="export",
                            data_key=held["key"],
                        ),
                        class_="job-buttons",
                    ),
                    _remove(held),
                )
                for held, reason in pairs
            ),
            class_="job-list",
        ),
    )


CALLS = {
    "job-new": _new,
    "job-add": _add,
    "job-take-back": _take_back,
    "job-done": _done,
    "job-strike": _strike,
    "job-unstrike": _unstrike,
    "job-change": _change,
    "job-read": _read,
    "job-keep": job_fields.keep,
    "job-fields": job_fields.fields,
    "job-view": _jobs,
    "job-write": _write,
    "job-sizes": _sizes,
    "job-take-over": job_returned.take_over,
    "job-sheet": lambda asked: _out().shown(asked),
    "job-open": lambda asked: _out().opened(asked),
    "job-received": lambda asked: _out().received({**asked, "readings": readings}),
    "job-check": lambda asked: _out().check({**asked, "write_down": _write_down}),
}


def _out():
    """Imported only where a job leaves the shop: half of all that a job needs."""
    from calc.page.job import sheet_page as job_sheet

    return job_sheet
